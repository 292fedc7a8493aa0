//! Reading a card back: a photo or a PDF in, the texts of its squares out.
//!
//! Memory is bounded by the limits below; a picture's size is taken from its header before it is decoded.

mod pages;

use std::io::Cursor;
use std::panic::catch_unwind;

use image::{GrayImage, ImageFormat, ImageReader, imageops};
use rxing::common::HybridBinarizer;
use rxing::multi::MultipleBarcodeReader;
use rxing::qrcode::cpp_port::QrReader;
use rxing::{BarcodeFormat, BinaryBitmap, DecodeHints, Luma8LuminanceSource, RXingResult};

use crate::CardError;

/// The largest file, in bytes.
const FILE_MAX: usize = 64 * MIB;
const MIB: usize = 1024 * 1024;
/// The most pixels of a picture.
const PIXELS_MAX: u64 = 100 * MEGA;
const MEGA: u64 = 1_000_000;
/// A picture with longer sides is also tried at half its size: blur and noise shrink away.
const LARGE_SIDE: u32 = 1600;

/// The texts of all squares that can be read in a PNG or JPEG picture or on the first pages of a PDF, each once,
/// in the order in which they are found.
pub fn scan(bytes: &[u8]) -> Result<Vec<String>, CardError> {
    if bytes.len() > FILE_MAX {
        return Err(CardError::FileTooLarge { megabytes: FILE_MAX / MIB });
    }
    // The decoders of pictures, PDFs and squares are other people's: where one of them gives up on damaged bytes
    // by a panic, nothing of ours is left half done, and the file is refused like any other that cannot be read.
    let texts =
        catch_unwind(|| if bytes.starts_with(b"%PDF-") { pages::squares(bytes) } else { in_picture(bytes) });
    match texts {
        Ok(Ok(texts)) if texts.is_empty() => Err(CardError::NoSquare),
        Ok(texts) => texts,
        Err(_) => Err(CardError::NoPicture),
    }
}

/// The texts in a picture, tried at half its size where the whole gives none.
fn in_picture(bytes: &[u8]) -> Result<Vec<String>, CardError> {
    let whole = picture(bytes)?;
    let (width, height) = whole.dimensions();
    let half = (width.max(height) > LARGE_SIDE)
        .then(|| imageops::thumbnail(&whole, width.div_ceil(2), height.div_ceil(2)));
    let found = squares(whole);
    Ok(if found.is_empty() { half.map(squares).unwrap_or_default() } else { found })
}

/// Decodes a picture whose header promises few enough pixels.
fn picture(bytes: &[u8]) -> Result<GrayImage, CardError> {
    let format = image::guess_format(bytes).map_err(|_| CardError::NoPicture)?;
    if !matches!(format, ImageFormat::Png | ImageFormat::Jpeg) {
        return Err(CardError::NoPicture);
    }
    let reader = || ImageReader::with_format(Cursor::new(bytes), format);
    let (width, height) = reader().into_dimensions().map_err(|_| CardError::NoPicture)?;
    if u64::from(width) * u64::from(height) > PIXELS_MAX {
        return Err(CardError::PictureTooLarge { megapixels: PIXELS_MAX / MEGA });
    }
    reader().decode().map(|picture| picture.to_luma8()).map_err(|_| CardError::NoPicture)
}

/// The texts of the squares in a picture.
fn squares(picture: GrayImage) -> Vec<String> {
    let (width, height) = picture.dimensions();
    let Ok(source) = Luma8LuminanceSource::new(picture.into_raw(), width, height) else {
        return Vec::new();
    };
    let mut bitmap = BinaryBitmap::new(HybridBinarizer::new(source));
    let hints = DecodeHints {
        PossibleFormats: Some([BarcodeFormat::QR_CODE].into()),
        TryHarder: Some(true),
        ..DecodeHints::default()
    };
    let found = QrReader.decode_multiple_with_hints(&mut bitmap, &hints).unwrap_or_default();
    let mut texts: Vec<String> = Vec::new();
    for text in found.iter().map(RXingResult::getText) {
        if !texts.iter().any(|known| known == text) {
            texts.push(text.to_owned());
        }
    }
    texts
}

#[cfg(test)]
#[path = "scan_tests.rs"]
mod tests;
