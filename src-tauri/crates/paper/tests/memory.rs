//! Hostile headers and bombs are refused before memory is taken, and a photo takes less than 200 MB.
//!
//! This is a program of its own, with one test, because it watches the most memory that the process ever held.

#![cfg(target_os = "linux")]
#![allow(clippy::unwrap_used)]

#[path = "intake/draw.rs"]
#[allow(dead_code)]
mod draw;

use std::time::SystemTime;

use image::{DynamicImage, Rgb, RgbImage};
use paper::PhotoStore;

use draw::{LOSSY, jpeg, marked, png, png_header, riff, riff_chunk, riff_head, with_chunk, zlib_of_zeros};

/// The most memory that this process ever held at once, in KiB.
fn most_memory() -> u64 {
    let status = std::fs::read_to_string("/proc/self/status").unwrap();
    let line = status.lines().find(|line| line.starts_with("VmHWM:")).unwrap();
    line.split_whitespace().nth(1).unwrap().parse().unwrap()
}

/// Forgets the most memory held so far (`proc_pid_clear_refs(5)`).
fn forget_most_memory() {
    std::fs::write("/proc/self/clear_refs", "5").unwrap();
}

#[test]
fn memory_is_bounded() {
    bombs_take_little();
    a_photo_takes_less_than_200_mb();
}

/// A bright slip on a dark table, with the grain of a sensor, of 12 megapixels.
fn photo() -> Vec<u8> {
    let mut grain = 1u32;
    let picture = RgbImage::from_fn(4032, 3024, |x, y| {
        grain = grain.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
        let noise = u8::try_from(grain >> 28).unwrap();
        let on_slip = (900..3100).contains(&x) && (300..2700).contains(&y);
        let printed = (1000..3000).contains(&x) && (420..2580).contains(&y);
        let stroke = printed && y % 60 < 24 && (x / 9 + y / 60 * 7) % 5 < 2;
        Rgb([if on_slip && !stroke { 230 } else { 70 } + noise; 3])
    });
    jpeg(&DynamicImage::ImageRgb8(picture))
}

fn a_photo_takes_less_than_200_mb() {
    let bytes = photo();
    let folder = tempfile::tempdir().unwrap();
    let store = PhotoStore::open(folder.path(), SystemTime::UNIX_EPOCH).unwrap();
    forget_most_memory();
    let prepared = paper::prepare(&bytes).unwrap();
    store.keep(&prepared).unwrap();
    let most = most_memory();
    assert!(prepared.whole().is_some(), "it must have been straightened");
    println!("{most} KiB with the file of {} bytes", bytes.len());
    assert!(most * 1024 < 200_000_000, "{most} KiB");
}

fn bombs_take_little() {
    let plain = png(&marked(64, 48));
    let packed = zlib_of_zeros(1024 * 1024 * 1024);
    let mut largest = LOSSY.to_vec();
    largest[6..10].copy_from_slice(&[0xFF, 0x3F, 0xFF, 0x3F]);
    let endless = [b"EXIF", &u32::MAX.to_le_bytes()[..]].concat();
    let files = [
        riff(&[riff_chunk(b"VP8 ", &largest)]),
        riff(&[riff_head(0, 64, 48), riff_chunk(b"VP8 ", &largest)]),
        riff(&[riff_head(0b1000, 64, 48), riff_chunk(b"VP8 ", LOSSY), endless]),
        png_header(50_000, 50_000),
        png_header(100_000_000, 1),
        with_chunk(&plain, b"zTXt", &[b"Comment\0\0", &packed[..]].concat()),
        with_chunk(&plain, b"iTXt", &[b"Comment\0\x01\0\0\0", &packed[..]].concat()),
        with_chunk(&plain, b"iCCP", &[b"Profile\0\0", &packed[..]].concat()),
    ];
    let before = most_memory();
    for bytes in files {
        let _ = paper::prepare(&bytes);
    }
    let grown = most_memory() - before;
    assert!(grown < 64 * 1024, "{grown} KiB more");
}
