//! A PDF receipt: kept as it is, with a picture of each of its pages, which is a paper like any photo.
//!
//! The library that sets pages bounds neither its memory nor its depth, so [`guard`] looks the file over first, and the
//! pages are set on a thread of their own, whose failure is a refusal.

mod count;
mod guard;
mod scan;

use std::num::NonZeroU16;
use std::ops::ControlFlow;
use std::sync::Arc;
use std::thread;

use hayro::hayro_interpret::InterpreterSettings;
use hayro::hayro_syntax::page::Page;
use hayro::hayro_syntax::{DecryptionError, LoadPdfError, Pdf};
use hayro::vello_cpu::Pixmap;
use hayro::vello_cpu::color::palette::css::WHITE;
use hayro::{RenderCache, RenderSettings, render};
use image::RgbImage;
use image::error::{DecodingError, ImageError, ImageFormatHint, UnsupportedError, UnsupportedErrorKind};

pub use count::page_count;

use crate::PaperError;
use crate::prepare::{LONG_SIDE, Prepared, check_file_size};
use crate::sniff::{Format, sniff};
use crate::steps::{GoOn, Steps};

/// The most pages that a document may have.
pub const MAX_PAGES: usize = 20;

/// The steps of a page: set, and photo and thumbnail written.
const PAGE_STEPS: u32 = 3;
/// The finest resolution of a page, in pixels an inch; a long page is set coarser, so that it fits [`LONG_SIDE`].
const RESOLUTION: f32 = 300.0;
/// Points an inch, the unit of a PDF (ISO 32000-1, 8.3.2.3).
const POINTS: f32 = 72.0;
/// The stack of the thread that sets pages: 64 MiB, of which only what is used is ever taken.
const STACK: usize = 64 * 1024 * 1024;

/// A picture of each page of a PDF, ready to be kept, from the first.
///
/// A page is set at 300 pixels an inch, or coarser where its long side would be more than [`LONG_SIDE`] pixels.
/// Refused are files that are no PDF, encrypted and damaged ones, those of more than [`MAX_PAGES`] pages or
/// [`MAX_FILE_BYTES`](crate::MAX_FILE_BYTES), those whose contents unpack to more than [`MAX_UNPACKED_BYTES`](crate::MAX_UNPACKED_BYTES), and
/// those with a picture of more than [`MAX_PIXELS`](crate::MAX_PIXELS) or in a form (JPEG 2000, JBIG2) whose size cannot
/// be told beforehand.
pub fn pages(bytes: &[u8]) -> Result<Vec<Prepared>, PaperError> {
    pages_while(bytes, &|_| ControlFlow::Continue(()))
}

/// The same as [`pages`], with `go_on` told how far it is. Where that breaks off, it ends after the step that is under
/// way with [`PaperError::IntakeStopped`].
pub fn pages_while(bytes: &[u8], go_on: &GoOn<'_>) -> Result<Vec<Prepared>, PaperError> {
    check_document(bytes)?;
    guard::check(bytes)?;
    let bytes = bytes.to_vec();
    let setter = thread::Builder::new().name("pages".to_owned()).stack_size(STACK);
    thread::scope(|scope| {
        let setting = setter.spawn_scoped(scope, move || set(bytes, go_on));
        let setting = setting.map_err(|refused| PaperError::Encoding(refused.to_string()))?;
        setting.join().unwrap_or_else(|_| Err(damaged("its contents cannot be set")))
    })
}

/// Refuses what is no PDF or too large to be kept as one.
pub(crate) fn check_document(bytes: &[u8]) -> Result<(), PaperError> {
    match sniff(bytes)? {
        Format::Pdf => check_file_size(bytes.len() as u64),
        Format::Jpeg | Format::Png | Format::Webp => Err(PaperError::Unknown),
    }
}

fn set(bytes: Vec<u8>, go_on: &GoOn<'_>) -> Result<Vec<Prepared>, PaperError> {
    let pdf = Pdf::new(Arc::new(bytes)).map_err(|error| match error {
        LoadPdfError::Decryption(DecryptionError::PasswordProtected) => PaperError::Locked,
        LoadPdfError::Decryption(_) => unsupported("an encryption"),
        LoadPdfError::Invalid => damaged("it has no pages that can be found"),
    })?;
    let pages = pdf.pages();
    if pages.is_empty() {
        return Err(damaged("it has no pages"));
    }
    if pages.len() > MAX_PAGES {
        return Err(PaperError::TooManyPages { pages: pages.len() });
    }
    let (settings, cache) = (InterpreterSettings::default(), RenderCache::new());
    let steps =
        Steps::begin(go_on, u32::try_from(pages.len()).unwrap_or(u32::MAX).saturating_mul(PAGE_STEPS))?;
    let prepared = |page| {
        let picture = picture(page, &cache, &settings)?;
        steps.pass()?;
        Prepared::of(&picture, &steps)
    };
    pages.iter().map(prepared).collect()
}

fn picture<'a>(
    page: &'a Page<'a>,
    cache: &RenderCache<'a>,
    settings: &InterpreterSettings,
) -> Result<RgbImage, PaperError> {
    let (width, height) = page.render_dimensions();
    let longest = width.max(height);
    if !(longest.is_finite() && longest >= 1.0) {
        return Err(damaged("a page has no size"));
    }
    let scale = (RESOLUTION / POINTS).min(f32::from(side(f32::INFINITY).get()) / longest);
    let look = RenderSettings {
        x_scale: scale,
        y_scale: scale,
        width: Some(side(width * scale).get()),
        height: Some(side(height * scale).get()),
        bg_color: WHITE,
    };
    opaque(&render(page, cache, settings, &look))
}

/// A side of a page in whole pixels, from 1 to [`LONG_SIDE`].
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "held between 1 and the long side before"
)]
fn side(length: f32) -> NonZeroU16 {
    let longest = u16::try_from(LONG_SIDE).unwrap_or(u16::MAX);
    NonZeroU16::new(length.round().clamp(1.0, f32::from(longest)) as u16).unwrap_or(NonZeroU16::MIN)
}

/// The picture without its transparency, of which none is left: white lies under the whole page.
fn opaque(pixmap: &Pixmap) -> Result<RgbImage, PaperError> {
    let pixels = pixmap.data().iter().flat_map(|pixel| [pixel.r, pixel.g, pixel.b]).collect();
    RgbImage::from_raw(u32::from(pixmap.width()), u32::from(pixmap.height()), pixels)
        .ok_or_else(|| damaged("a page has no picture"))
}

fn damaged(why: &str) -> PaperError {
    let hint = ImageFormatHint::Name("PDF".to_owned());
    PaperError::Broken { format: Format::Pdf, source: ImageError::Decoding(DecodingError::new(hint, why)) }
}

fn unsupported(what: &str) -> PaperError {
    let kind = UnsupportedErrorKind::GenericFeature(what.to_owned());
    let hint = ImageFormatHint::Name("PDF".to_owned());
    let error = UnsupportedError::from_format_and_kind(hint, kind);
    PaperError::Unsupported { format: Format::Pdf, source: ImageError::Unsupported(error) }
}
