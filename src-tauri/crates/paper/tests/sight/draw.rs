//! Draws photos of slips: letters on paper, and the paper on a table.

use ab_glyph::{Font, FontRef, Glyph, PxScale, ScaleFont, point};
use image::{GrayImage, Luma, Rgb, RgbImage};
use imageproc::geometric_transformations::{Border, Interpolation, Projection, warp_into};

const REGULAR: &[u8] = include_bytes!("../../../card/sheets/fonts/AtkinsonHyperlegibleNext-Regular.ttf");

/// Pixels across a slip.
pub const WIDTH: u32 = 1000;
/// Pixels from one line of a slip to the next.
pub const LINE: u32 = 72;
/// Pixels that stay white at each side of a slip.
const MARGIN: u32 = 70;
/// The height of its letters, in pixels.
const LETTERS: f32 = 50.0;

const PAPER: u8 = 236;

/// A line of a slip: what stands at its left, and what at its right.
pub type Line = (&'static str, &'static str);

/// A slip from an invented shop.
pub const SLIP: &[Line] = &[
    ("THISTLEDOWN MOTOR STORES", ""),
    ("14 Anvil Row, Nether Wick", ""),
    ("Receipt 20417", "2026-03-14"),
    ("Sold by: Wilf", "10:42"),
    ("", ""),
    ("Oil filter QX-4471-B", "£ 11.95"),
    ("Engine oil 5W-30, 5 L", "£ 38.40"),
    ("2 x wiper blade ZP 550/475", "£ 23.10"),
    ("Sump washer M14", "£ 0.85"),
    ("TOTAL", "£ 74.30"),
    ("of which VAT 20 %", "£ 12.38"),
    ("Card", "£ 74.30"),
    ("", ""),
    ("Odometer 98 420 mi", ""),
    ("Keep this slip", "K 61"),
];

/// The slip, flat and level.
pub fn slip(lines: &[Line]) -> GrayImage {
    let height = u32::try_from(lines.len()).unwrap() * LINE + 2 * MARGIN;
    let mut paper = GrayImage::from_pixel(WIDTH, height, Luma([PAPER]));
    let font = FontRef::try_from_slice(REGULAR).unwrap();
    for (at, (left, right)) in (0_u16..).zip(lines) {
        let base = f32::from(at + 1) * LINE as f32 + MARGIN as f32 - 12.0;
        write(&mut paper, &font, left, MARGIN as f32, base);
        let width: f32 = glyphs(&font, right, 0.0, base).1;
        write(&mut paper, &font, right, (WIDTH - MARGIN) as f32 - width, base);
    }
    paper
}

fn write(paper: &mut GrayImage, font: &FontRef, text: &str, left: f32, base: f32) {
    for glyph in glyphs(font, text, left, base).0 {
        let Some(outline) = font.outline_glyph(glyph) else { continue };
        let bounds = outline.px_bounds();
        outline.draw(|x, y, cover| {
            let (x, y) = (x + bounds.min.x as u32, y + bounds.min.y as u32);
            let ink = f32::from(PAPER) - 190.0 * cover.clamp(0.0, 1.0);
            paper.get_pixel_mut(x, y).0 = [ink as u8];
        });
    }
}

/// The glyphs of a line, and how far it reaches.
fn glyphs(font: &FontRef, text: &str, left: f32, base: f32) -> (Vec<Glyph>, f32) {
    let scale = PxScale::from(LETTERS);
    let scaled = font.as_scaled(scale);
    let mut right = left;
    let place = |letter| {
        let id = font.glyph_id(letter);
        let glyph = id.with_scale_and_position(scale, point(right, base));
        right += scaled.h_advance(id);
        glyph
    };
    (text.chars().map(place).collect(), right)
}

/// A photo of that size of the paper on a table, the paper's corners (upper left, upper right, lower right, lower
/// left) at these shares of the photo: with a shadow over it and the grain of a sensor.
pub fn photo(paper: &GrayImage, (width, height): (u32, u32), corners: [(f32, f32); 4]) -> RgbImage {
    let (right, foot) = (paper.width() as f32, paper.height() as f32);
    let from = [(0.0, 0.0), (right, 0.0), (right, foot), (0.0, foot)];
    let to = corners.map(|(x, y)| (x * width as f32, y * height as f32));
    let laid = Projection::from_control_points(from, to).unwrap();
    let mut seen = GrayImage::new(width, height);
    let table = Border::Constant(Luma([70]));
    warp_into(paper, laid, Interpolation::Bilinear, table, &mut seen);
    let mut grain = 1_u32;
    RgbImage::from_fn(width, height, |x, y| {
        grain = grain.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
        let light = 1.0 - 0.35 * (x as f32 / width as f32) * (y as f32 / height as f32);
        let tone = f32::from(seen.get_pixel(x, y).0[0]) * light + (grain >> 28) as f32 - 8.0;
        Rgb([tone, tone * 0.98, tone * 0.93].map(|tone| tone as u8))
    })
}

/// Where a slip lies that was photographed from above, nearly straight.
pub const ALMOST_LEVEL: [(f32, f32); 4] = [(0.16, 0.16), (0.86, 0.18), (0.84, 0.82), (0.14, 0.79)];

/// Where one lies that was photographed from aside, with the camera turned.
pub const SLANTING: [(f32, f32); 4] = [(0.30, 0.12), (0.90, 0.26), (0.74, 0.86), (0.10, 0.73)];
