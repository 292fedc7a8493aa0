//! Bytes that declare more than they hold are refused before memory is taken.
//!
//! This is a program of its own, with one test, because it watches the most memory that the process ever held.

#![cfg(target_os = "linux")]
#![allow(clippy::unwrap_used)]

use units::cbor::{CborError, DEPTH, decode};

const MIB: usize = 1024 * 1024;

/// The most memory that this process ever held at once, in KiB.
fn most_memory() -> usize {
    let status = std::fs::read_to_string("/proc/self/status").unwrap();
    let line = status.lines().find(|line| line.starts_with("VmHWM:")).unwrap();
    line.split_whitespace().nth(1).unwrap().parse().unwrap()
}

/// A head of this major type that declares a length of `declared`, in nine bytes.
fn head(major: u8, declared: u64) -> Vec<u8> {
    [&[major * 32 + 27][..], &declared.to_be_bytes()].concat()
}

/// Reads bytes and says how many KiB that took at most.
fn taken(bytes: &[u8]) -> (usize, Result<(), CborError>) {
    let before = most_memory();
    let read = decode(bytes).map(drop);
    (most_memory() - before, read)
}

#[test]
fn declared_lengths_take_no_memory() {
    for major in 2..=5 {
        for declared in [1 << 31, 1 << 40, i64::MAX as u64, u64::MAX] {
            let nested = head(4, declared).repeat(DEPTH - 1);
            for bytes in [head(major, declared), [nested, head(major, declared)].concat()] {
                let (grown, read) = taken(&bytes);
                assert_eq!(read, Err(CborError::Malformed));
                assert!(grown < 8 * 1024, "{grown} KiB for major type {major}, declared {declared}");
            }
        }
    }
    // What is read takes a small multiple of the input: the worst is a byte for each value.
    let zeros = [head(4, MIB as u64), vec![0; MIB]].concat();
    let (grown, read) = taken(&zeros);
    assert_eq!(read, Err(CborError::NotDeterministic));
    assert!(grown < 128 * 1024, "{grown} KiB for 1 MiB of zeros");
}
