//! Which quadrilaterals might be a paper: the outlines of what is brighter than its surroundings.
//!
//! No single level tells paper from table on every photo, so a dozen are tried. What comes out here is a guess, to
//! within a few pixels; `sides` draws it exactly and `judge` decides.

use image::{GrayImage, Luma};
use imageproc::contours::{BorderType, find_contours};
use imageproc::contrast::{ThresholdType, otsu_level, threshold};
use imageproc::geometry::{contour_area, convex_hull};
use imageproc::morphology::{Mask, grayscale_dilate, grayscale_erode};
use imageproc::point::Point as Pixel;

use super::geometry::{Line, Point, Quad};

/// How many levels of brightness are tried, besides the one that divides the picture best.
const LEVELS: u32 = 10;
/// Print on the paper up to twice as wide as this, in pixels of the coarse picture, does not break it up.
const CLOSING: u8 = 3;
/// The least share of the picture that a paper takes: a fifth.
pub(super) const LEAST_AREA: f64 = 0.2;
/// The least share of its quadrilateral that an outline fills; the rest is rounded corners and curled sides.
const LEAST_FILL: f64 = 0.92;
/// Quadrilaterals whose corners lie no farther apart than this, in pixels, are the same.
const SAME: f64 = 3.0;

/// Every quadrilateral that might be a paper.
pub(super) fn candidates(light: &GrayImage) -> Vec<Quad> {
    let light = without_print(light);
    let mut found: Vec<Quad> = Vec::new();
    for level in levels(&light) {
        if let Some(quad) = brighter_than(&light, level)
            && found.iter().all(|known| known.apart(&quad) > SAME)
        {
            found.push(quad);
        }
    }
    found
}

/// The picture without its thin dark parts: everything brightens to the brightest near it, and what was bright over a
/// wider stretch darkens again. A square is a row of rows, so this is done in rows and then in columns.
fn without_print(light: &GrayImage) -> GrayImage {
    let row = Mask::from_image(&GrayImage::from_pixel(2 * u32::from(CLOSING) + 1, 1, Luma([1])), CLOSING, 0);
    let column =
        Mask::from_image(&GrayImage::from_pixel(1, 2 * u32::from(CLOSING) + 1, Luma([1])), 0, CLOSING);
    let bright = grayscale_dilate(&grayscale_dilate(light, &row), &column);
    grayscale_erode(&grayscale_erode(&bright, &row), &column)
}

/// Levels spread evenly between the darkest and the brightest twentieth of the picture.
fn levels(light: &GrayImage) -> Vec<u8> {
    let mut sorted = light.as_raw().clone();
    sorted.sort_unstable();
    let at = |twentieth: usize| u32::from(sorted.get(sorted.len() * twentieth / 20).copied().unwrap_or(0));
    let (dark, bright) = (at(1), at(19));
    let spread = (1..=LEVELS).map(|step| dark + (bright - dark) * step / (LEVELS + 1));
    let mut levels: Vec<u8> = spread.filter_map(|level| u8::try_from(level).ok()).collect();
    levels.push(otsu_level(light));
    levels.sort_unstable();
    levels.dedup();
    levels
}

/// The quadrilateral round the largest coherent part that is brighter than `level`.
fn brighter_than(light: &GrayImage, level: u8) -> Option<Quad> {
    let mask = threshold(light, level, ThresholdType::Binary);
    let outer =
        find_contours::<i32>(&mask).into_iter().filter(|found| found.border_type == BorderType::Outer);
    let areas = outer.map(|found| (contour_area(&found.points), found.points));
    let (area, outline) = areas.max_by(|one, two| one.0.total_cmp(&two.0))?;
    let all = f64::from(light.width()) * f64::from(light.height());
    if area < LEAST_AREA * all || leaves_the_picture(&outline, light) {
        return None;
    }
    let quad = four_sided(&convex_hull(outline))?;
    (area >= LEAST_FILL * quad.area()).then_some(quad)
}

fn leaves_the_picture(outline: &[Pixel<i32>], light: &GrayImage) -> bool {
    let last = |side: u32| i64::from(side) - 2;
    outline.iter().any(|at| {
        at.x < 2
            || at.y < 2
            || i64::from(at.x) >= last(light.width())
            || i64::from(at.y) >= last(light.height())
    })
}

/// A convex outline made four-sided: again and again the side is left out that adds the least when its two
/// neighbours are drawn on until they meet.
fn four_sided(hull: &[Pixel<i32>]) -> Option<Quad> {
    let mut corners: Vec<Point> =
        hull.iter().map(|at| Point { x: f64::from(at.x) + 0.5, y: f64::from(at.y) + 0.5 }).collect();
    if turns_left(&corners) {
        corners.reverse();
    }
    while corners.len() > 4 {
        let additions = (0..corners.len()).filter_map(|at| addition(&corners, at).map(|added| (at, added)));
        let (at, (_, corner)) = additions.min_by(|one, two| one.1.0.total_cmp(&two.1.0))?;
        let after = (at + 1) % corners.len();
        corners[at] = corner;
        corners.remove(after);
    }
    <[Point; 4]>::try_from(corners).ok().map(|corners| Quad(corners).begun_upper_left())
}

fn turns_left(corners: &[Point]) -> bool {
    let next = corners.iter().cycle().skip(1);
    corners.iter().zip(next).map(|(one, two)| one.cross(*two)).sum::<f64>() < 0.0
}

/// What leaving out the side behind corner `at` adds, and the corner that takes its place.
fn addition(corners: &[Point], at: usize) -> Option<(f64, Point)> {
    let count = corners.len();
    let corner = |step: usize| corners[(at + step) % count];
    let (before, from, to, after) = (corner(count - 1), corner(0), corner(1), corner(2));
    let meet = Line::between(before, from)?.crossing(&Line::between(to, after)?)?;
    let beyond = (meet - from).dot(from - before) >= 0.0 && (meet - to).dot(to - after) >= 0.0;
    beyond.then(|| (((meet - from).cross(to - from)).abs() / 2.0, meet))
}
