//! The pages of a PDF as pictures.

use std::sync::Arc;

use hayro::hayro_interpret::InterpreterSettings;
use hayro::hayro_syntax::Pdf;
use hayro::hayro_syntax::page::Page;
use hayro::vello_cpu::Pixmap;
use hayro::vello_cpu::color::palette::css::WHITE;
use hayro::{RenderCache, RenderSettings, render};
use image::{GrayImage, Luma};

use crate::CardError;

/// How many pages are looked at, from the first.
const PAGES_MAX: usize = 20;
/// Pixels an inch: a module of 0.40 mm becomes more than four pixels wide.
const RESOLUTION: f32 = 300.0;
/// Points an inch, the unit of a PDF.
const POINTS: f32 = 72.0;
/// The longest side of a page in pixels; a larger page is set at a lower resolution.
const SIDE_MAX: f32 = 5000.0;

/// The texts of the squares on the first pages.
pub fn squares(bytes: &[u8]) -> Result<Vec<String>, CardError> {
    let pdf = Pdf::new(Arc::new(bytes.to_vec())).map_err(|_| CardError::NoPicture)?;
    let settings = InterpreterSettings::default();
    let mut texts = Vec::new();
    for page in pdf.pages().iter().take(PAGES_MAX) {
        let found = super::squares(picture(page, &settings));
        texts.extend(found.into_iter().filter(|text| !texts.contains(text)).collect::<Vec<_>>());
    }
    Ok(texts)
}

fn picture(page: &Page<'_>, settings: &InterpreterSettings) -> GrayImage {
    let (width, height) = page.render_dimensions();
    let scale = (RESOLUTION / POINTS).min(SIDE_MAX / width.max(height).max(1.0));
    let look =
        RenderSettings { x_scale: scale, y_scale: scale, bg_color: WHITE, ..RenderSettings::default() };
    gray(&render(page, &RenderCache::new(), settings, &look))
}

/// Brightness as ITU-R BT.601 weighs it, in integers.
fn gray(pixmap: &Pixmap) -> GrayImage {
    let pixels = pixmap.data();
    let width = usize::from(pixmap.width());
    GrayImage::from_fn(u32::from(pixmap.width()), u32::from(pixmap.height()), |x, y| {
        let pixel = pixels[y as usize * width + x as usize];
        let sum = 299 * u32::from(pixel.r) + 587 * u32::from(pixel.g) + 114 * u32::from(pixel.b);
        Luma([u8::try_from(sum / 1000).unwrap_or(u8::MAX)])
    })
}
