//! One side of a paper, drawn exactly: where brightness drops from paper to table, and how well that is seen.

use image::GrayImage;

use super::geometry::{Line, Point};

/// At how many places along a side its edge is looked for.
const PLACES: u32 = 40;
/// How far to either side of the guess, in pixels.
const REACH: i32 = 14;
/// The least drop of brightness, of 255, that counts as an edge.
const LEAST_DROP: f64 = 8.0;
/// How far beside the line an edge may lie to belong to it, in pixels.
const TOLERANCE: f64 = 1.2;
/// From where to where along a side its edge is looked for, in shares of its length: corners are rounded.
const STRETCH: (f64, f64) = (0.04, 0.96);

/// One side, as it was found.
#[derive(Debug, Clone, Copy)]
pub(super) struct Side {
    /// The line in which it runs.
    pub line: Line,
    /// The share of its places, from 0 to 1, at which the edge is seen.
    pub support: f64,
}

/// Looks for the side near the line from one corner to the next, with the paper to its right.
pub(super) fn find(light: &GrayImage, from: Point, to: Point) -> Option<Side> {
    let places: Vec<Vec<Drop>> =
        along(from, to, STRETCH, PLACES).map(|at| drops(light, at, from, to)).collect();
    let mut line = best_line(&places)?;
    for _ in 0..2 {
        let near: Vec<Point> = places.iter().filter_map(|drops| nearest(drops, &line)).collect();
        line = Line::fitted(&near, line)?;
    }
    let seen = places.iter().filter(|drops| nearest(drops, &line).is_some()).count();
    Some(Side { line, support: share(seen, places.len()) })
}

/// The share of places beyond either corner of a side, whichever is more, at which the edge goes on within a tenth of
/// the side's length.
///
/// Where it does, the paper goes on as well, and what was taken for its end is a shadow or a fold.
pub(super) fn goes_on(light: &GrayImage, from: Point, to: Point) -> f64 {
    let Some(line) = Line::between(from, to) else { return 1.0 };
    let beyond = |stretch| {
        let inside: Vec<Point> = along(from, to, stretch, 10).filter(|at| is_within(light, *at)).collect();
        let on_line = |at: &&Point| {
            drops(light, **at, from, to).into_iter().any(|drop| line.distance(drop.at) < 2.0 * TOLERANCE)
        };
        share(inside.iter().filter(on_line).count(), inside.len())
    };
    beyond((1.025, 1.12)).max(beyond((-0.12, -0.025)))
}

/// The median brightness in a strip beside the line from one corner to the next, from `near` to `far` pixels to its
/// right; a negative distance lies to its left, outside the paper.
pub(super) fn strip(light: &GrayImage, from: Point, to: Point, (near, far): (i32, i32)) -> f64 {
    let Some(inwards) = (to - from).direction().map(Point::turned) else { return 0.0 };
    let places = along(from, to, STRETCH, PLACES);
    let mut seen: Vec<f64> = places
        .flat_map(|at| (near..=far).map(move |step| at + inwards * f64::from(step)))
        .filter(|at| is_within(light, *at))
        .map(|at| brightness(light, at))
        .collect();
    seen.sort_unstable_by(f64::total_cmp);
    seen.get(seen.len() / 2).copied().unwrap_or(0.0)
}

/// Brightness that drops from the paper outwards.
#[derive(Debug, Clone, Copy)]
struct Drop {
    at: Point,
    depth: f64,
}

/// Every place near `at` where brightness drops outwards, across the line from one corner to the next.
fn drops(light: &GrayImage, at: Point, from: Point, to: Point) -> Vec<Drop> {
    let Some(along) = (to - from).direction() else { return Vec::new() };
    let outwards = along.turned() * -1.0;
    let across = |step: i32| {
        let middle = at + outwards * f64::from(step);
        [-1.0, 0.0, 1.0].iter().map(|beside| brightness(light, middle + along * *beside)).sum::<f64>() / 3.0
    };
    let profile: Vec<f64> = (-REACH - 3..=REACH + 3).map(across).collect();
    let depths: Vec<f64> = profile
        .windows(7)
        .map(|seen| (seen[0] + seen[1] + seen[2] - seen[4] - seen[5] - seen[6]) / 3.0)
        .collect();
    let peaks = depths.windows(3).zip(-REACH + 1..);
    peaks
        .filter(|(seen, _)| seen[1] >= LEAST_DROP && seen[1] > seen[0] && seen[1] >= seen[2])
        .map(|(seen, step)| {
            let exact = f64::from(step) + summit(seen);
            Drop { at: at + outwards * exact, depth: seen[1] }
        })
        .collect()
}

/// How far from the middle of three heights the parabola through them has its summit.
fn summit(heights: &[f64]) -> f64 {
    let bend = heights[0] - 2.0 * heights[1] + heights[2];
    if bend < 0.0 { ((heights[0] - heights[2]) / 2.0 / bend).clamp(-0.5, 0.5) } else { 0.0 }
}

/// Of all lines through one edge near the start and one near the end, that which most edges lie on.
fn best_line(places: &[Vec<Drop>]) -> Option<Line> {
    let third = places.len() / 3;
    let starts = places[..third].iter().flatten();
    let ends = || places[places.len() - third..].iter().flatten();
    let pairs = starts.flat_map(|start| ends().filter_map(|end| Line::between(start.at, end.at)));
    let rated = pairs.map(|line| (rating(places, &line), line));
    rated.max_by(|one, two| one.0.total_cmp(&two.0)).map(|(_, line)| line)
}

/// How many places have an edge on the line; among equals the deeper ones count.
fn rating(places: &[Vec<Drop>], line: &Line) -> f64 {
    let near = |drop: &&Drop| line.distance(drop.at) < TOLERANCE;
    places.iter().filter_map(|drops| drops.iter().find(near)).map(|drop| 1.0 + drop.depth / 255.0).sum()
}

fn nearest(drops: &[Drop], line: &Line) -> Option<Point> {
    let distances = drops.iter().map(|drop| (line.distance(drop.at), drop.at));
    let (distance, at) = distances.min_by(|one, two| one.0.total_cmp(&two.0))?;
    (distance < TOLERANCE).then_some(at)
}

/// Points spread evenly from one share of the way to another.
fn along(from: Point, to: Point, (first, last): (f64, f64), count: u32) -> impl Iterator<Item = Point> {
    let step = (last - first) / f64::from(count - 1);
    (0..count).map(move |place| from + (to - from) * (first + step * f64::from(place)))
}

/// A part as a share of all; of nothing it is nothing.
fn share(part: usize, of: usize) -> f64 {
    let count = |number| f64::from(u32::try_from(number).unwrap_or(u32::MAX));
    count(part) / count(of.max(1))
}

fn is_within(light: &GrayImage, at: Point) -> bool {
    at.x >= 0.0 && at.y >= 0.0 && at.x <= f64::from(light.width()) && at.y <= f64::from(light.height())
}

/// Brightness at a place, from 0 to 255, evened out between the four pixels round it; the picture's edge goes on
/// for ever.
fn brightness(light: &GrayImage, at: Point) -> f64 {
    let (x, right) = pixel(at.x - 0.5, light.width());
    let (y, down) = pixel(at.y - 0.5, light.height());
    let (x_next, y_next) = ((x + 1).min(light.width() - 1), (y + 1).min(light.height() - 1));
    let value = |x, y| f64::from(light.get_pixel(x, y).0[0]);
    let upper = value(x, y) * (1.0 - right) + value(x_next, y) * right;
    let lower = value(x, y_next) * (1.0 - right) + value(x_next, y_next) * right;
    upper * (1.0 - down) + lower * down
}

/// The pixel in which a coordinate lies, and how far beyond its middle.
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "held between 0 and the side before"
)]
fn pixel(coordinate: f64, side: u32) -> (u32, f64) {
    let held = coordinate.clamp(0.0, f64::from(side - 1));
    (held.floor() as u32, held.fract())
}
