//! The four corners of a paper on a photo: found where they are beyond doubt, and the paper between them straightened.
//!
//! `outline` guesses, on a coarse picture, what might be a paper; `sides` draws each side of a guess exactly, on a finer
//! one; `judge` says whether it is the paper beyond doubt; `straight` makes the paper upright and rectangular.
//!
//! Both pictures hold the least of red, green and blue at each place: white paper is bright in all three, and a table
//! of any colour lacks one.

mod geometry;
mod judge;
mod outline;
mod sides;
mod straight;

use fast_image_resize::FilterType;
use image::{GrayImage, Luma, RgbImage, imageops};

use crate::PaperError;
use crate::prepare::shrunk;

pub use geometry::Point;
use geometry::Quad;
pub(crate) use straight::straightened;

/// The long side of the finer picture, in pixels.
const FINE: u32 = 640;
/// How many times smaller each side of the coarse picture is.
const COARSER: u32 = 2;
/// The long side of the smallest photo on which a paper is looked for, in pixels.
const SMALLEST: u32 = 320;
/// How much the paper is grown from its middle, so that print at its very edge stays whole: 1 % on each side.
const MARGIN: f64 = 1.02;
/// The least area between corners, as a share of the picture.
const LEAST_AREA: f64 = 0.01;
/// The least sine of the turn at a corner: about six degrees from straight on or back.
const LEAST_TURN: f64 = 0.1;

/// The corners of a paper on a photo, in shares of the photo's width and height from its upper left corner, each from
/// 0 to 1; clockwise from the paper's upper left.
///
/// They are always a convex shape with corners that turn, of at least a hundredth of the photo.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Corners([Point; 4]);

impl Corners {
    /// Corners as someone drew them. [`PaperError::Corners`] says that no paper can lie between them.
    pub fn new(points: [Point; 4]) -> Result<Corners, PaperError> {
        let quad = Quad(points);
        let on_photo = |at: &Point| (0.0..=1.0).contains(&at.x) && (0.0..=1.0).contains(&at.y);
        let is_paper = points.iter().all(on_photo)
            && quad.turns().iter().all(|turn| *turn >= LEAST_TURN)
            && quad.area() >= LEAST_AREA;
        if is_paper { Ok(Corners(points)) } else { Err(PaperError::Corners) }
    }

    /// Upper left, upper right, lower right, lower left.
    pub fn points(&self) -> [Point; 4] {
        self.0
    }
}

/// The corners of the paper on an upright photo, a little outside its print; only when they are beyond doubt.
///
/// Beyond doubt means: one bright shape of four straight sides takes at least a fifth of the photo and nowhere reaches
/// its edge; each side is seen along most of its length, is brighter than what lies beside it, and ends where it meets
/// the next; corners lie between 60 and 120 degrees; and nothing else on the photo is as bright.
pub fn find_corners(photo: &RgbImage) -> Option<Corners> {
    if photo.width().max(photo.height()) < SMALLEST {
        return None;
    }
    let smaller = shrunk(photo, FINE, FilterType::Box).ok()?;
    let fine = lightness(smaller.as_ref().unwrap_or(photo));
    let (width, height) = fine.dimensions();
    let coarse = imageops::thumbnail(&fine, (width / COARSER).max(1), (height / COARSER).max(1));
    let up = |whole: u32, part: u32| f64::from(whole) / f64::from(part);
    let (x, y) = (up(width, coarse.width()), up(height, coarse.height()));
    let guesses = outline::candidates(&coarse).into_iter().map(|guess| guess.scaled(x, y));
    let paper = guesses
        .filter_map(|guess| judge::sure(&fine, &guess))
        .max_by(|one, two| one.area().total_cmp(&two.area()))?;
    let shares = paper.grown(MARGIN).scaled(1.0 / f64::from(width), 1.0 / f64::from(height));
    let held = shares.0.map(|at| Point { x: at.x.clamp(0.0, 1.0), y: at.y.clamp(0.0, 1.0) });
    Corners::new(held).ok()
}

/// The least of red, green and blue at each place.
fn lightness(photo: &RgbImage) -> GrayImage {
    let mut light = GrayImage::new(photo.width(), photo.height());
    for (to, from) in light.pixels_mut().zip(photo.pixels()) {
        let [red, green, blue] = from.0;
        *to = Luma([red.min(green).min(blue)]);
    }
    light
}
