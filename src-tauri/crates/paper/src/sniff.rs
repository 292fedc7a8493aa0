//! What a file is by its first bytes; what its name claims is not asked.
//!
//! The signatures are those of the formats' own specifications, as listed in the IANA media type registrations
//! and, for the ISO base media family, the registered brands of ISO/IEC 14496-12.

use std::fmt;

use crate::PaperError;

/// A format in which a paper may come in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Format {
    /// ISO/IEC 10918-1.
    Jpeg,
    /// ISO/IEC 15948.
    Png,
    /// RFC 9649, a still picture.
    Webp,
    /// ISO 32000-1, a document of pages.
    Pdf,
}

impl fmt::Display for Format {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Format::Jpeg => "JPEG",
            Format::Png => "PNG",
            Format::Webp => "WebP",
            Format::Pdf => "PDF",
        })
    }
}

/// A format that is recognised, so that its refusal can say what to do, and not kept.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Foreign {
    /// High Efficiency Image File, as many phones write by default.
    Heic,
    /// AV1 Image File.
    Avif,
    /// `WebP` with more than one picture.
    AnimatedWebp,
    /// Graphics Interchange Format.
    Gif,
    /// Windows bitmap.
    Bmp,
    /// TIFF, which camera raw files build on.
    Tiff,
    /// JPEG 2000.
    Jpeg2000,
    /// JPEG XL.
    JpegXl,
    /// Scalable Vector Graphics.
    Svg,
    /// A ZIP archive, or a document format built on one.
    Zip,
    /// MP4, `QuickTime` or another film of the ISO base media family.
    Film,
}

impl Foreign {
    /// What to do instead, as the second half of a sentence.
    pub(crate) fn advice(self) -> &'static str {
        match self {
            Foreign::Heic => "set the camera to JPEG or save the picture as one",
            Foreign::AnimatedWebp => "save one of its pictures",
            Foreign::Zip => "unpack it and choose a photo in it",
            Foreign::Film => "take a photo instead",
            _ => "save the picture as one",
        }
    }
}

impl fmt::Display for Foreign {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Foreign::Heic => "a HEIC picture",
            Foreign::Avif => "an AVIF picture",
            Foreign::AnimatedWebp => "an animated WebP picture",
            Foreign::Gif => "a GIF picture",
            Foreign::Bmp => "a BMP picture",
            Foreign::Tiff => "a TIFF or camera raw picture",
            Foreign::Jpeg2000 => "a JPEG 2000 picture",
            Foreign::JpegXl => "a JPEG XL picture",
            Foreign::Svg => "an SVG drawing",
            Foreign::Zip => "a ZIP archive",
            Foreign::Film => "a film",
        })
    }
}

/// Formats with a fixed first few bytes.
const SIGNATURES: [(&[u8], Foreign); 10] = [
    (b"GIF8", Foreign::Gif),
    (b"PK\x03\x04", Foreign::Zip),
    (b"PK\x05\x06", Foreign::Zip),
    (b"II*\0", Foreign::Tiff),
    (b"MM\0*", Foreign::Tiff),
    (b"BM", Foreign::Bmp),
    (b"\xFF\x0A", Foreign::JpegXl),
    (b"\0\0\0\x0CJXL ", Foreign::JpegXl),
    (b"\0\0\0\x0CjP  ", Foreign::Jpeg2000),
    (b"\xFF\x4F\xFF\x51", Foreign::Jpeg2000),
];

/// The format of `bytes`, by their first ones, if it is one in which a paper may come in.
///
/// A [`Format::Pdf`] is taken in by [`pages`](crate::pages) and kept whole besides, all others by
/// [`prepare`](crate::prepare()).
pub fn sniff(bytes: &[u8]) -> Result<Format, PaperError> {
    if bytes.is_empty() {
        Err(PaperError::Empty)
    } else if bytes.starts_with(b"\xFF\xD8\xFF") {
        Ok(Format::Jpeg)
    } else if bytes.starts_with(b"\x89PNG\r\n\x1A\n") {
        Ok(Format::Png)
    } else if bytes.starts_with(b"RIFF") && bytes.get(8..12) == Some(b"WEBP") {
        Ok(Format::Webp)
    } else if bytes.starts_with(b"%PDF-") {
        Ok(Format::Pdf)
    } else {
        Err(foreign(bytes).map_or(PaperError::Unknown, PaperError::Foreign))
    }
}

fn foreign(bytes: &[u8]) -> Option<Foreign> {
    let signed = SIGNATURES.iter().find(|(signature, _)| bytes.starts_with(signature));
    signed
        .map(|(_, foreign)| *foreign)
        .or_else(|| contained(bytes))
        .or_else(|| is_svg(bytes).then_some(Foreign::Svg))
}

/// The formats of the ISO base media family: its name stands at byte 4, theirs at byte 8.
fn contained(bytes: &[u8]) -> Option<Foreign> {
    if bytes.get(4..8)? != b"ftyp" {
        return None;
    }
    Some(match bytes.get(8..12)? {
        b"heic" | b"heix" | b"heim" | b"heis" | b"hevc" | b"hevx" | b"hevm" | b"hevs" | b"mif1" | b"msf1" => {
            Foreign::Heic
        }
        b"avif" | b"avis" => Foreign::Avif,
        _ => Foreign::Film,
    })
}

/// Whether this is XML whose first element, within the first kilobyte, is `svg`.
fn is_svg(bytes: &[u8]) -> bool {
    let head = String::from_utf8_lossy(&bytes[..bytes.len().min(1024)]);
    let head = head.trim_start_matches('\u{FEFF}').trim_start();
    head.starts_with('<') && head.contains("<svg")
}
