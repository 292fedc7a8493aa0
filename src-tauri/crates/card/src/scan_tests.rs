//! Squares read back from drawn pictures, and files that must be refused within their bounds.

#![allow(clippy::unwrap_used, clippy::cast_possible_truncation, clippy::cast_sign_loss)]

use image::{DynamicImage, Luma};

use super::*;
use crate::{Square, SquareLimit};

/// The square drawn with modules of so many pixels, turned by an angle in degrees, edges smoothed.
fn drawn(square: &Square, module: f64, angle: f64) -> GrayImage {
    let size = f64::from(square.side() + 2 * crate::QUIET_ZONE) * module * 1.1;
    let (sin, cos) = angle.to_radians().sin_cos();
    let half = f64::from(square.side()) / 2.0;
    let is_dark = |x: f64, y: f64| {
        let (x, y) = ((x - size / 2.0) / module, (y - size / 2.0) / module);
        let (x, y) = (x * cos + y * sin + half, y * cos - x * sin + half);
        x >= 0.0 && y >= 0.0 && square.is_dark(x as u32, y as u32)
    };
    GrayImage::from_fn(size as u32, size as u32, |x, y| {
        let points = [(0.25, 0.25), (0.75, 0.25), (0.25, 0.75), (0.75, 0.75)];
        let dark = points.iter().filter(|(dx, dy)| is_dark(f64::from(x) + dx, f64::from(y) + dy)).count();
        Luma([255 - 60 * u8::try_from(dark).unwrap()])
    })
}

fn encoded(picture: GrayImage, format: ImageFormat) -> Vec<u8> {
    let mut bytes = Cursor::new(Vec::new());
    DynamicImage::from(picture).write_to(&mut bytes, format).unwrap();
    bytes.into_inner()
}

#[test]
fn squares_of_all_sizes_are_read_straight_and_turned() {
    for (bytes, module) in [(10, 3.7), (100, 4.2), (600, 3.1), (1400, 5.3), (2300, 3.6)] {
        let text = "Heron 0123456789 abcdefgh".repeat(100)[..bytes].to_owned();
        let square = Square::plain(&text, SquareLimit::LARGEST).unwrap();
        for angle in [0.0, 3.0, 180.0] {
            let png = encoded(drawn(&square, module, angle), ImageFormat::Png);
            assert_eq!(scan(&png).as_deref(), Ok([text.clone()].as_slice()), "{square:?} turned by {angle}");
        }
    }
}

#[test]
fn a_jpeg_is_read_like_a_png() {
    let square = Square::plain("Heron, 98 420 km", SquareLimit::LARGEST).unwrap();
    let jpeg = encoded(drawn(&square, 5.0, 1.0), ImageFormat::Jpeg);
    assert_eq!(scan(&jpeg).unwrap(), ["Heron, 98 420 km"]);
}

#[test]
fn a_text_in_another_script_comes_back() {
    let square = Square::plain("Öl – 車 98 420 km", SquareLimit::LARGEST).unwrap();
    let png = encoded(drawn(&square, 5.0, 0.0), ImageFormat::Png);
    assert_eq!(scan(&png).unwrap(), ["Öl – 車 98 420 km"]);
}

#[test]
fn two_squares_are_both_read_and_the_same_one_once() {
    let side_by_side = |left: &GrayImage, right: &GrayImage| {
        let mut both = GrayImage::from_pixel(left.width() + right.width(), left.height(), Luma([255]));
        imageops::overlay(&mut both, left, 0, 0);
        imageops::overlay(&mut both, right, i64::from(left.width()), 0);
        scan(&encoded(both, ImageFormat::Png)).unwrap()
    };
    let picture = |text| drawn(&Square::plain(text, SquareLimit::LARGEST).unwrap(), 6.0, 0.0);
    let mut both = side_by_side(&picture("one car"), &picture("two car"));
    both.sort();
    assert_eq!(both, ["one car", "two car"]);
    assert_eq!(side_by_side(&picture("one car"), &picture("one car")), ["one car"]);
}

#[test]
fn a_picture_without_a_square_says_so() {
    let blank = encoded(GrayImage::from_pixel(300, 200, Luma([255])), ImageFormat::Png);
    assert_eq!(scan(&blank), Err(CardError::NoSquare));
}

#[test]
fn what_is_no_picture_is_refused() {
    let square = Square::plain("Heron", SquareLimit::LARGEST).unwrap();
    let png = encoded(drawn(&square, 5.0, 0.0), ImageFormat::Png);
    for bytes in
        [b"".as_slice(), b"hello", b"GIF89a\x01\x00\x01\x00\x00\x00\x00;", b"%PDF-1.7\nnothing", &png[..60]]
    {
        assert_eq!(scan(bytes), Err(CardError::NoPicture));
    }
}

/// A header that promises 50 000 by 50 000 pixels, refused without a single one being decoded.
#[test]
fn a_picture_too_large_is_refused_by_its_header() {
    let mut png = encoded(GrayImage::new(1, 1), ImageFormat::Png);
    png[16..20].copy_from_slice(&50_000_u32.to_be_bytes());
    png[20..24].copy_from_slice(&50_000_u32.to_be_bytes());
    let check = crc32(&png[12..29]);
    png[29..33].copy_from_slice(&check.to_be_bytes());
    assert_eq!(scan(&png), Err(CardError::PictureTooLarge { megapixels: 100 }));
}

#[test]
fn a_file_too_large_is_refused_unread() {
    assert_eq!(scan(&vec![0; FILE_MAX + 1]), Err(CardError::FileTooLarge { megabytes: 64 }));
}

/// The check sum of PNG chunks (ISO 3309), bit by bit.
fn crc32(bytes: &[u8]) -> u32 {
    !bytes.iter().fold(u32::MAX, |sum, byte| {
        (0..8).fold(sum ^ u32::from(*byte), |sum, _| (sum >> 1) ^ (0xedb8_8320 * (sum & 1)))
    })
}
