//! Hostile headers and bombs are refused before memory is taken.
//!
//! This is a program of its own, with one test, because it watches the most memory that the process ever held.

#![cfg(target_os = "linux")]
#![allow(clippy::unwrap_used)]

#[path = "intake/draw.rs"]
#[allow(dead_code)]
mod draw;

use draw::{LOSSY, marked, png, png_header, riff, riff_chunk, riff_head, with_chunk, zlib_of_zeros};

/// The most memory that this process ever held at once, in KiB.
fn most_memory() -> u64 {
    let status = std::fs::read_to_string("/proc/self/status").unwrap();
    let line = status.lines().find(|line| line.starts_with("VmHWM:")).unwrap();
    line.split_whitespace().nth(1).unwrap().parse().unwrap()
}

#[test]
fn bombs_take_little_memory() {
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
