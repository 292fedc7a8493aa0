//! A paper made upright and rectangular.

use image::RgbImage;
use imageproc::geometric_transformations::Projection;
use rayon::prelude::*;

use super::Corners;
use super::geometry::{Point, Quad};
use crate::PaperError;
use crate::prepare::LONG_SIDE;

/// How many pixels of a row lie evenly on the photo, to within a thousandth of a pixel: between them nothing is projected.
const STRETCH: u16 = 16;
/// A whole pixel, in the fixed-point numbers of places.
const ONE: i32 = 65_536;

/// The paper between the corners as a rectangle of its own.
///
/// Its proportions are those of the mean of opposite sides, its size that of the longest, so that nothing printed gets
/// smaller; its long side is at most [`LONG_SIDE`]. A paper that was photographed from far aslant stays a little short,
/// because one photo does not tell how far.
pub(crate) fn straightened(photo: &RgbImage, corners: Corners) -> Result<RgbImage, PaperError> {
    let quad = Quad(corners.points()).scaled(f64::from(photo.width()), f64::from(photo.height()));
    let (width, height) = size(&quad);
    let mut paper = RgbImage::new(width, height);
    let projection = projection(&paper, &quad).ok_or(PaperError::Corners)?;
    if photo.width() < 2 || photo.height() < 2 {
        return Err(PaperError::Corners);
    }
    let rows: Vec<_> = (0u16..).zip(paper.as_mut().chunks_exact_mut(3 * width as usize)).collect();
    rows.into_par_iter().for_each(|(down, row)| {
        let place = |across: u16| fixed(projection * (f32::from(across), f32::from(down) + 0.5));
        draw_row(photo, place, row);
    });
    Ok(paper)
}

/// Draws a row of the paper, given where on the photo each place of it is.
fn draw_row(photo: &RgbImage, place: impl Fn(u16) -> (i32, i32), row: &mut [u8]) {
    let mut from = place(0);
    for (stretch, pixels) in (1u16..).zip(row.chunks_mut(3 * STRETCH as usize)) {
        let to = place(stretch * STRETCH);
        draw(photo, from, to, pixels);
        from = to;
    }
}

/// Draws up to [`STRETCH`] pixels that lie evenly on the photo, from the one place to the other.
fn draw(photo: &RgbImage, from: (i32, i32), to: (i32, i32), pixels: &mut [u8]) {
    let step = ((to.0 - from.0) / i32::from(STRETCH), (to.1 - from.1) / i32::from(STRETCH));
    let mut at = (from.0 + step.0 / 2, from.1 + step.1 / 2);
    for pixel in pixels.chunks_exact_mut(3) {
        pixel.copy_from_slice(&seen(photo, at.0, at.1));
        at = (at.0 + step.0, at.1 + step.1);
    }
}

/// The colour at a place, blended from the four pixels round it; the colour at the picture's edge goes on for ever.
///
/// The library's own sampling takes many times as long, because it looks for the picture's edge anew at every colour of
/// every pixel.
fn seen(photo: &RgbImage, x: i32, y: i32) -> [u8; 3] {
    let (x, right) = cell(x, photo.width());
    let (y, down) = cell(y, photo.height());
    let row = 3 * photo.width() as usize;
    let first = y * row + 3 * x;
    let pixels = photo.as_raw();
    let pair = |at: usize| pixels.get(at..at + 6).and_then(<[u8]>::first_chunk::<6>).unwrap_or(&[0; 6]);
    let (upper, lower) = (pair(first), pair(first + row));
    std::array::from_fn(|channel| {
        let across =
            |pair: &[u8; 6]| u32::from(pair[channel]) * (256 - right) + u32::from(pair[channel + 3]) * right;
        // Its highest sum is 255 * 65536 + 32768, whose third byte is the mean.
        (across(upper) * (256 - down) + across(lower) * down + 0x8000).to_le_bytes()[2]
    })
}

/// The pixel whose middle lies at or before a place, the last but one at most, and how far it lies behind, in 256ths.
fn cell(place: i32, side: u32) -> (usize, u32) {
    let behind = u32::try_from(place - ONE / 2).unwrap_or(0) >> 8;
    let whole = (behind >> 8).min(side - 2);
    (whole as usize, (behind - (whole << 8)).min(256))
}

/// A place on a photo in 65 536ths of a pixel, of which the longest photo has fewer than fit.
#[expect(
    clippy::cast_possible_truncation,
    reason = "beyond what fits, the nearest that does is as far outside"
)]
fn fixed((x, y): (f32, f32)) -> (i32, i32) {
    let scaled = |place: f32| (place.clamp(-1000.0, 20_000.0) * 65_536.0) as i32;
    (scaled(x), scaled(y))
}

/// Pixels across and down.
fn size(quad: &Quad) -> (u32, u32) {
    let [upper, right, lower, left] = quad.sides().map(|(from, to)| (to - from).length().max(1.0));
    let (width, height) = (f64::midpoint(upper, lower), f64::midpoint(left, right));
    let larger = (upper.max(lower) / width).max(left.max(right) / height);
    let scale = larger.min(f64::from(LONG_SIDE) / width.max(height));
    (pixels(width * scale), pixels(height * scale))
}

#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "held between 1 and the long side before"
)]
fn pixels(length: f64) -> u32 {
    length.round().clamp(1.0, f64::from(LONG_SIDE)) as u32
}

/// Where on the photo each place of the paper is.
fn projection(paper: &RgbImage, quad: &Quad) -> Option<Projection> {
    let (right, down) = (f64::from(paper.width()), f64::from(paper.height()));
    let corners = [(0.0, 0.0), (right, 0.0), (right, down), (0.0, down)];
    let from = corners.map(|(x, y)| single(Point { x, y }));
    Projection::from_control_points(from, quad.0.map(single))
}

#[expect(clippy::cast_possible_truncation, reason = "a pixel's place needs no more than single precision")]
fn single(at: Point) -> (f32, f32) {
    (at.x as f32, at.y as f32)
}
