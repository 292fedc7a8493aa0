//! The size of a kept photo, read from its header alone.

use std::io::Cursor;

use image::ImageDecoder;
use image::codecs::jpeg::JpegDecoder;

use crate::PaperError;
use crate::sniff::Format;

/// Pixels across and down of a kept photo.
pub fn size(jpeg: &[u8]) -> Result<(u32, u32), PaperError> {
    let decoder = JpegDecoder::new(Cursor::new(jpeg)).map_err(PaperError::decoding(Format::Jpeg))?;
    Ok(decoder.dimensions())
}
