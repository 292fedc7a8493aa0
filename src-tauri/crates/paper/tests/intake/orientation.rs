//! All eight values of EXIF orientation come out upright.

use image::imageops::FilterType;

use crate::draw::{
    LOSSY, jpeg, marked, pixels, png, riff, riff_chunk, webp, with_chunk, with_riff_chunk, with_segment,
};

/// The corners in which the stored picture's first pixel is seen: left or right, top or bottom.
///
/// Source: Exif 2.32 (CIPA DC-008), tag 0x0112, which says for each value on which side row 0 and column 0 lie.
/// The values from 5 on also swap width and height.
const SEEN: [(u16, &str, &str); 8] = [
    (1, "left", "top"),
    (2, "right", "top"),
    (3, "right", "bottom"),
    (4, "left", "bottom"),
    (5, "left", "top"),
    (6, "right", "top"),
    (7, "right", "bottom"),
    (8, "left", "bottom"),
];

/// A TIFF structure with an orientation and nothing else, in either order of bytes.
fn tiff(orientation: u16, big_endian: bool) -> Vec<u8> {
    let short = |value: u16| if big_endian { value.to_be_bytes() } else { value.to_le_bytes() };
    let long = |value: u32| if big_endian { value.to_be_bytes() } else { value.to_le_bytes() };
    let mut bytes = if big_endian { b"MM".to_vec() } else { b"II".to_vec() };
    bytes.extend(short(42));
    bytes.extend(long(8));
    bytes.extend(short(1));
    // Tag 0x0112, of type SHORT, one value, which fills the first half of its field.
    bytes.extend([short(0x0112), short(3)].concat());
    bytes.extend(long(1));
    bytes.extend([short(orientation), short(0)].concat());
    bytes.extend(long(0));
    bytes
}

fn check_upright(stored: (u32, u32), bytes: &[u8], (value, side, edge): (u16, &str, &str)) {
    let prepared = paper::prepare(bytes).unwrap();
    let seen = pixels(prepared.jpeg());
    let expected = if value < 5 { stored } else { (stored.1, stored.0) };
    assert_eq!(seen.dimensions(), expected, "orientation {value}");
    assert_eq!((prepared.photo().width, prepared.photo().height), expected, "orientation {value}");

    let tiny = image::imageops::resize(&seen, expected.0 / 16, expected.1 / 16, FilterType::Triangle);
    let (right, bottom) = (tiny.width() - 1, tiny.height() - 1);
    for (x, x_name) in [(0, "left"), (right, "right")] {
        for (y, y_name) in [(0, "top"), (bottom, "bottom")] {
            let black = tiny.get_pixel(x, y).0[0] < 128;
            assert_eq!(
                black,
                (x_name, y_name) == (side, edge),
                "orientation {value}, corner {x_name} {y_name}"
            );
        }
    }
}

#[test]
fn jpegs_of_all_orientations_come_out_upright() {
    let plain = jpeg(&marked(64, 48));
    for expected in SEEN {
        for big_endian in [false, true] {
            let exif = [b"Exif\0\0", &tiff(expected.0, big_endian)[..]].concat();
            check_upright((64, 48), &with_segment(&plain, 0xE1, &exif), expected);
        }
    }
}

#[test]
fn pngs_of_all_orientations_come_out_upright() {
    let plain = png(&marked(64, 48));
    for expected in SEEN {
        check_upright((64, 48), &with_chunk(&plain, b"eXIf", &tiff(expected.0, true)), expected);
    }
}

#[test]
fn webps_of_all_orientations_come_out_upright() {
    for plain in [webp(&marked(64, 48)), riff(&[riff_chunk(b"VP8 ", LOSSY)])] {
        for expected in SEEN {
            let turned = with_riff_chunk(&plain, (64, 48), b"EXIF", &tiff(expected.0, false));
            check_upright((64, 48), &turned, expected);
        }
    }
}

#[test]
fn a_picture_that_is_shrunk_is_turned_as_well() {
    let large = marked(64, 48).resize_exact(3200, 2400, FilterType::Nearest);
    let exif = [b"Exif\0\0", &tiff(6, true)[..]].concat();
    let prepared = paper::prepare(&with_segment(&jpeg(&large), 0xE1, &exif)).unwrap();
    let seen = pixels(prepared.jpeg());
    assert_eq!(seen.dimensions(), (1800, 2400));
    assert!(seen.get_pixel(1790, 10).0[0] < 30 && seen.get_pixel(10, 10).0[0] > 225);
    assert_eq!(pixels(prepared.thumb()).dimensions(), (240, 320));
}

#[test]
fn an_orientation_that_makes_no_sense_is_ignored() {
    let plain = jpeg(&marked(64, 48));
    let wrong = [tiff(0, true), tiff(9, false), tiff(6, true)[..12].to_vec(), b"neither".to_vec()];
    for tiff in wrong {
        let exif = [b"Exif\0\0", &tiff[..]].concat();
        check_upright((64, 48), &with_segment(&plain, 0xE1, &exif), (1, "left", "top"));
    }
}
