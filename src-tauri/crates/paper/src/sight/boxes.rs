//! From the map of text to boxes around it: each at its own angle, with its reading direction.

#![expect(
    clippy::cast_possible_truncation,
    clippy::cast_precision_loss,
    clippy::cast_sign_loss,
    reason = "a photo has at most 65 535 pixels a side, and a conversion that saturates stays on it"
)]

use image::{GrayImage, Luma};
use imageproc::contours::{BorderType, find_contours};
use imageproc::geometry::min_area_rect;
use imageproc::point::Point;

use super::place::{TextBox, Vector, dot, length};

/// The most boxes that are read on one photo: the longest ones.
pub(super) const MAX_BOXES: usize = 400;

/// Above this probability a point is text.
const TEXT: f32 = 0.3;

/// A box is kept when its points have at least this probability in the mean.
const KEPT: f32 = 0.5;

/// A box is at least so high, in points of the map, before it grows.
const MIN_HEIGHT: f32 = 2.0;

/// Corners are worked out in whole numbers, so in this part of a pixel.
const FINE: f32 = 8.0;

/// How probable it is that there is text, point by point, row by row.
pub(super) struct TextMap {
    pub(super) width: u32,
    pub(super) height: u32,
    pub(super) values: Vec<f32>,
    /// The size of the photo that it is a map of, in pixels.
    pub(super) photo: (u32, u32),
}

impl TextMap {
    fn at(&self, x: u32, y: u32) -> f32 {
        self.values.get((y * self.width + x) as usize).copied().unwrap_or(0.0)
    }

    /// The place on the photo of the middle of a point.
    fn on_photo(&self, x: f32, y: f32) -> Vector {
        let scale = self.scale();
        [(x + 0.5) * scale[0], (y + 0.5) * scale[1]]
    }

    /// Pixels of the photo to a point of the map, across and down.
    fn scale(&self) -> Vector {
        [self.photo.0 as f32 / self.width as f32, self.photo.1 as f32 / self.height as f32]
    }
}

/// The boxes around what is text on the map, the longest first.
pub(super) fn find(map: &TextMap) -> Vec<TextBox> {
    let outlines = outlines(map);
    let tight: Vec<TextBox> = outlines.iter().map(|outline| around(outline, long_side(outline))).collect();
    let heading = heading(&tight);
    let headed = outlines.iter().zip(tight).map(|(outline, tight)| {
        // The tightest box around a single letter lies at any angle, so it is laid along what is read around it.
        let along = if tight.is_long() { facing(tight.along, heading) } else { heading };
        around(outline, along)
    });
    let [across, down] = map.scale();
    let least = MIN_HEIGHT * across.min(down);
    let kept = |place: &TextBox| place.height.min(place.length) >= least && mean(map, place) >= KEPT;
    let mut boxes: Vec<TextBox> = headed.filter(kept).map(|place| place.grown()).collect();
    boxes.sort_by(|one, other| other.length.total_cmp(&one.length));
    boxes.truncate(MAX_BOXES);
    boxes
}

/// The outer outline of each text on the map: points of the photo, in parts of a pixel, each of them once.
fn outlines(map: &TextMap) -> Vec<Vec<Point<i32>>> {
    // The search does not see an outline at the picture's very edge, so there is a rim around the map.
    let is_text = GrayImage::from_fn(map.width + 2, map.height + 2, |x, y| {
        let inside = (1..=map.width).contains(&x) && (1..=map.height).contains(&y);
        Luma([u8::from(inside && map.at(x - 1, y - 1) > TEXT)])
    });
    let outer = find_contours::<i32>(&is_text).into_iter();
    let outer = outer.filter(|outline| outline.border_type == BorderType::Outer);
    let place = |at: &Point<i32>| map.on_photo((at.x - 1) as f32, (at.y - 1) as f32);
    outer.map(|outline| once_each(outline.points.iter().map(place))).collect()
}

/// The search for the tightest box does not bear a point that comes twice.
fn once_each(places: impl Iterator<Item = Vector>) -> Vec<Point<i32>> {
    let mut fine: Vec<_> = places.map(|place| place.map(|part| (part * FINE).round() as i32)).collect();
    fine.sort_unstable();
    fine.dedup();
    fine.into_iter().map(|[x, y]| Point::new(x, y)).collect()
}

/// The direction of the longer side of the tightest box around an outline, of length 1.
fn long_side(outline: &[Point<i32>]) -> Vector {
    if outline.is_empty() {
        return [1.0, 0.0];
    }
    let corners = min_area_rect(outline).map(|corner| [corner.x as f32, corner.y as f32]);
    let side = |from: usize, to: usize| [0, 1].map(|axis| corners[to][axis] - corners[from][axis]);
    let (one, other) = (side(0, 1), side(1, 2));
    let longer = if length(one) >= length(other) { one } else { other };
    if length(longer) > 0.0 { longer.map(|part| part / length(longer)) } else { [1.0, 0.0] }
}

/// The box around an outline whose text is read in this direction.
fn around(outline: &[Point<i32>], along: Vector) -> TextBox {
    let down = [-along[1], along[0]];
    let span = |axis: Vector| {
        let along_axis = outline.iter().map(|point| dot([point.x as f32, point.y as f32], axis) / FINE);
        let (least, most) = along_axis
            .fold((f32::INFINITY, f32::NEG_INFINITY), |(least, most), at| (least.min(at), most.max(at)));
        if least <= most { (least, most) } else { (0.0, 0.0) }
    };
    let ((start, end), (head, foot)) = (span(along), span(down));
    let (behind, below) = (f32::midpoint(start, end), f32::midpoint(head, foot));
    let centre = [0, 1].map(|axis| behind * along[axis] + below * down[axis]);
    TextBox { centre, along, length: end - start, height: foot - head }
}

/// The direction in which most of the text is read: rather to the right, and else down.
///
/// A direction and its opposite count as one, so the mean is that of the doubled angles.
fn heading(boxes: &[TextBox]) -> Vector {
    let doubled = boxes.iter().filter(|place| place.is_long()).fold([0.0, 0.0], |sum: Vector, place| {
        let [x, y] = place.along;
        [sum[0] + place.length * (x * x - y * y), sum[1] + place.length * 2.0 * x * y]
    });
    if length(doubled) == 0.0 {
        return [1.0, 0.0];
    }
    let angle = doubled[1].atan2(doubled[0]) / 2.0;
    [angle.cos(), angle.sin()]
}

/// This direction or its opposite, whichever is nearer to `heading`.
fn facing(along: Vector, heading: Vector) -> Vector {
    if dot(along, heading) < 0.0 { along.map(|part| -part) } else { along }
}

/// The mean probability of the map's points in a box.
fn mean(map: &TextMap, place: &TextBox) -> f32 {
    let area = place.area(map.photo);
    let span = |from: f32, share: f32, side: u32| {
        let (first, end) = (from * side as f32, (from + share) * side as f32);
        first as u32..(end.ceil() as u32).min(side)
    };
    let across = span(area.left, area.width, map.width);
    let points = span(area.top, area.height, map.height).flat_map(|y| across.clone().map(move |x| (x, y)));
    let inside = points.filter(|&(x, y)| place.holds(map.on_photo(x as f32, y as f32)));
    let (sum, count) = inside.fold((0.0, 0.0), |(sum, count), (x, y)| (sum + map.at(x, y), count + 1.0));
    if count > 0.0 { sum / count } else { 0.0 }
}

#[cfg(test)]
#[path = "boxes_tests.rs"]
mod tests;
