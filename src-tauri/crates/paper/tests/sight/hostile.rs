//! Whatever a photo shows, reading it ends without a panic and within its bounds.

use std::ops::ControlFlow;

use image::{Rgb, RgbImage};
use paper::{PaperError, encode};

use crate::draw::{ALMOST_LEVEL, SLIP, photo, slip};
use crate::{READER, read};

fn grey(width: u32, height: u32, tone: impl Fn(u32, u32) -> u8) -> RgbImage {
    RgbImage::from_fn(width, height, |x, y| Rgb([tone(x, y); 3]))
}

/// A number that follows from a place and looks like chance (the finaliser of the hash function `MurmurHash3`).
fn chance(x: u32, y: u32) -> u32 {
    let mixed = (x.wrapping_mul(73_856_093) ^ y.wrapping_mul(19_349_663)).wrapping_mul(0x85EB_CA6B);
    let mixed = (mixed ^ mixed >> 13).wrapping_mul(0xC2B2_AE35);
    mixed ^ mixed >> 16
}

#[test]
fn the_smallest_and_the_thinnest() {
    for (width, height) in [(1, 1), (2, 3), (31, 33), (2400, 1), (1, 2400), (2400, 9), (7, 1800)] {
        read(&grey(width, height, |x, y| if (x + y) % 7 < 2 { 20 } else { 235 }));
    }
}

#[test]
fn patterns_that_look_like_writing() {
    read(&grey(900, 700, |x, y| (chance(x, y) >> 24) as u8));
    read(&grey(900, 700, |x, y| (chance(x / 6, y / 9) >> 24) as u8));
    // Rows of strokes, from edge to edge.
    read(&grey(900, 700, |x, y| if y % 30 < 18 && chance(x / 3, y / 30) % 9 < 3 { 0 } else { 255 }));
    // Rings, whose outlines lie in one another.
    read(&grey(800, 800, |x, y| {
        let from = f32::hypot(x as f32 - 400.0, y as f32 - 400.0);
        if from as u32 % 40 < 12 { 0 } else { 255 }
    }));
}

#[test]
fn a_jpeg_with_bytes_changed_is_read_or_refused() {
    let jpeg = encode(&photo(&slip(SLIP), (378, 504), ALMOST_LEVEL)).unwrap();
    let count = u32::try_from(jpeg.len()).unwrap();
    for round in 0..24 {
        let mut changed = jpeg.clone();
        for at in 0..4 {
            changed[(chance(round, at) % count) as usize] = (chance(at, round) >> 24) as u8;
        }
        changed.truncate((count - chance(round, 9) % (count / 8)) as usize);
        // Stopped as soon as there is something to read: the bytes are behind by then.
        let read = READER.read(&changed, &mut |_| ControlFlow::Break(()));
        assert!(read.is_err());
    }
}

#[test]
fn what_is_no_jpeg_is_refused() {
    for bytes in [&b""[..], b"\xFF\xD8", b"\xFF\xD8\xFF\xD9", b"nothing of the kind"] {
        let refused = READER.read(bytes, &mut |_| ControlFlow::Continue(()));
        assert!(!matches!(refused, Ok(_) | Err(PaperError::Stopped)), "{refused:?}");
    }
}
