//! Draws the files that the tests take in, down to single segments and chunks.

use image::codecs::jpeg::JpegEncoder;
use image::codecs::webp::WebPEncoder;
use image::{DynamicImage, ImageFormat, Rgb, RgbImage};
use std::io::Cursor;

/// A white picture whose upper left corner, 16 pixels square, is black.
pub fn marked(width: u32, height: u32) -> DynamicImage {
    let ink = |x, y| if x < 16 && y < 16 { Rgb([0; 3]) } else { Rgb([255; 3]) };
    DynamicImage::ImageRgb8(RgbImage::from_fn(width, height, ink))
}

pub fn jpeg(picture: &DynamicImage) -> Vec<u8> {
    let mut bytes = Vec::new();
    picture.write_with_encoder(JpegEncoder::new_with_quality(&mut bytes, 95)).unwrap();
    bytes
}

pub fn png(picture: &DynamicImage) -> Vec<u8> {
    let mut bytes = Vec::new();
    picture.write_to(&mut Cursor::new(&mut bytes), ImageFormat::Png).unwrap();
    bytes
}

/// A picture as a lossless WebP, of one chunk.
pub fn webp(picture: &DynamicImage) -> Vec<u8> {
    let mut bytes = Vec::new();
    picture.write_with_encoder(WebPEncoder::new_lossless(&mut bytes)).unwrap();
    bytes
}

/// [`marked`] of 64 x 48 as the picture of a lossy WebP (RFC 6386).
///
/// Drawn on a browser's canvas and written by its `toBlob` at quality 0.9.
pub const LOSSY: &[u8] =
    b"\x90\x03\0\x9d\x01\x2a\x40\0\x30\0\x3e\x31\x16\x89\x43\x22\x21\x21\x15\x5d\xfc\0\x20\
    \x03\x04\xb4\x80\0\x1c\x5d\x8e\x1d\x64\x44\x44\0\0\0\xfe\xfe\x7c\xe6\xff\xea\x0c\x05\xff\xc6\xb8\0\0\0";

/// Red of 64 x 48 that lets four fifths of the light through, made in the same way: its colour.
pub const GLASS: &[u8] = b"\xf0\x03\0\x9d\x01\x2a\x40\0\x30\0\x3e\x31\x18\x8b\x44\x22\x21\xa1\x11\x54\0\x20\x03\
    \x04\xb3\x80\x3b\0\x7e\0\x7e\0\0\x19\x8d\x17\xf0\x84\x8f\x48\0\xfe\xf7\xa2\x97\xff\xfd\x8c\xc7\xed\x19\xfe\
    \x49\x5f\xff\xfc\x19\x8f\xe0\xcc\x7f\x06\x63\xff\x84\xf5\x56\x22\xa6\0\0\0";

/// Its transparency.
pub const GLASS_ALPHA: &[u8] = b"\x01\x07\xd0\x99\x88\x08\0\x09\xe1\xff\x7a\x31\xa2\xff\xa9\x1f";

/// One chunk of a WebP (RFC 9649, 2.3): type, length, content, and a zero where that is of odd length.
pub fn riff_chunk(kind: &[u8], content: &[u8]) -> Vec<u8> {
    let length = u32::try_from(content.len()).unwrap().to_le_bytes();
    [kind, &length[..], content, &[0][..content.len() % 2]].concat()
}

/// A WebP of these chunks (RFC 9649, 2.4).
pub fn riff(chunks: &[Vec<u8>]) -> Vec<u8> {
    riff_chunk(b"RIFF", &[b"WEBP", &chunks.concat()[..]].concat())
}

/// The extended head of a WebP (RFC 9649, 2.7): flags, and a canvas of that size.
pub fn riff_head(flags: u8, width: u32, height: u32) -> Vec<u8> {
    let (width, height) = ((width - 1).to_le_bytes(), (height - 1).to_le_bytes());
    riff_chunk(b"VP8X", &[&[flags, 0, 0, 0][..], &width[..3], &height[..3]].concat())
}

/// The WebP of one chunk with an extended head of that size before it and another chunk behind it.
pub fn with_riff_chunk(webp: &[u8], (width, height): (u32, u32), kind: &[u8], content: &[u8]) -> Vec<u8> {
    let flags = if kind == b"EXIF" { 0b1000 } else { 0 };
    riff(&[riff_head(flags, width, height), webp[12..].to_vec(), riff_chunk(kind, content)])
}

/// One segment of a JPEG (ISO/IEC 10918-1, B.1.1.4): marker, length, content.
pub fn segment(marker: u8, content: &[u8]) -> Vec<u8> {
    let length = u16::try_from(content.len() + 2).unwrap().to_be_bytes();
    [&[0xFF, marker], &length[..], content].concat()
}

/// The JPEG with a segment put right behind its start.
pub fn with_segment(jpeg: &[u8], marker: u8, content: &[u8]) -> Vec<u8> {
    [&jpeg[..2], &segment(marker, content), &jpeg[2..]].concat()
}

/// One chunk of a PNG (ISO/IEC 15948, 5.3): length, type, content, check value.
pub fn chunk(kind: &[u8], content: &[u8]) -> Vec<u8> {
    let length = u32::try_from(content.len()).unwrap().to_be_bytes();
    let checked = [kind, content].concat();
    [&length[..], &checked, &crc(&checked).to_be_bytes()].concat()
}

/// The PNG with a chunk put right behind its header, which takes 33 bytes with the signature.
pub fn with_chunk(png: &[u8], kind: &[u8], content: &[u8]) -> Vec<u8> {
    [&png[..33], &chunk(kind, content), &png[33..]].concat()
}

/// A PNG that is nothing but a header (8 bits, RGB) and the beginning of its pixels.
pub fn png_header(width: u32, height: u32) -> Vec<u8> {
    let header = [&width.to_be_bytes()[..], &height.to_be_bytes(), &[8, 2, 0, 0, 0]].concat();
    [b"\x89PNG\r\n\x1A\n".to_vec(), chunk(b"IHDR", &header), chunk(b"IDAT", &zlib_of_zeros(1000))].concat()
}

/// The cyclic redundancy check of ISO/IEC 15948, annex D, bit by bit.
fn crc(bytes: &[u8]) -> u32 {
    let bit = |crc: u32, _| if crc & 1 == 1 { 0xEDB8_8320 ^ (crc >> 1) } else { crc >> 1 };
    !bytes.iter().fold(u32::MAX, |crc, byte| (0..8).fold(crc ^ u32::from(*byte), bit))
}

/// About `length` zero bytes as a zlib stream (RFC 1950 and 1951) of a 158th of that size.
pub fn zlib_of_zeros(length: u32) -> Vec<u8> {
    let repeats = length / 258;
    let mut bits = Bits::default();
    // A last block with fixed codes: one literal 0, then repeats of 258 bytes at distance 1.
    bits.push_low_first(0b1, 1);
    bits.push_low_first(0b01, 2);
    bits.push(0b0011_0000, 8);
    for _ in 0..repeats {
        bits.push(0b1100_0101, 8);
        bits.push(0b00000, 5);
    }
    bits.push(0b000_0000, 7);
    let adler = ((repeats * 258 + 1) % 65521) << 16 | 1;
    [&[0x78, 0x9C], &bits.low_first()[..], &adler.to_be_bytes()].concat()
}

/// A row of bits, gathered one by one.
#[derive(Default)]
pub struct Bits(Vec<bool>);

impl Bits {
    /// Adds the lowest `count` bits of `value`, the highest of them first.
    pub fn push(&mut self, value: u32, count: u32) {
        self.0.extend((0..count).rev().map(|bit| value >> bit & 1 == 1));
    }

    fn push_low_first(&mut self, value: u32, count: u32) {
        self.0.extend((0..count).map(|bit| value >> bit & 1 == 1));
    }

    /// Packed as deflate does: the first bit is the lowest of its byte.
    fn low_first(&self) -> Vec<u8> {
        self.0.chunks(8).map(|byte| byte.iter().rev().fold(0, |sum, bit| sum << 1 | u8::from(*bit))).collect()
    }

    /// Packed as JPEG does: the first bit is the highest of its byte, the last byte is filled with ones.
    pub fn high_first(&self) -> Vec<u8> {
        let filled =
            |byte: &[bool]| (0..8).fold(0, |sum, at| sum << 1 | u8::from(byte.get(at) != Some(&false)));
        self.0.chunks(8).map(filled).collect()
    }
}

/// The pixels of a JPEG.
pub fn pixels(jpeg: &[u8]) -> RgbImage {
    image::load_from_memory_with_format(jpeg, ImageFormat::Jpeg).unwrap().into_rgb8()
}
