//! What is said of networks that are not installed, or not as they should be.

use std::fs;
use std::path::Path;

use paper::{PaperError, Reader};

use crate::models;

const DETECTOR: &str = "PP-OCRv6_det_small.onnx";
const RECOGNISER: &str = "PP-OCRv6_rec_small.onnx";

/// The file that opening the networks in a folder complains about.
fn refused(folder: &Path) -> &'static str {
    match Reader::open(folder) {
        Err(PaperError::Model { file, .. }) => file,
        Err(other) => panic!("{other}"),
        Ok(reader) => panic!("opened: {}", reader.is_some()),
    }
}

#[test]
fn without_networks_reading_is_not_installed() {
    let folder = tempfile::tempdir().unwrap();
    assert!(Reader::open(folder.path()).unwrap().is_none());
    assert!(Reader::open(&folder.path().join("nowhere")).unwrap().is_none());
}

#[test]
fn one_network_alone_is_refused() {
    let folder = tempfile::tempdir().unwrap();
    fs::copy(models().join(RECOGNISER), folder.path().join(RECOGNISER)).unwrap();
    assert_eq!(refused(folder.path()), DETECTOR);
}

#[test]
fn a_network_with_one_other_byte_is_refused() {
    let folder = tempfile::tempdir().unwrap();
    fs::copy(models().join(RECOGNISER), folder.path().join(RECOGNISER)).unwrap();
    let mut bytes = fs::read(models().join(DETECTOR)).unwrap();
    bytes[5_000_000] ^= 1;
    fs::write(folder.path().join(DETECTOR), &bytes).unwrap();
    assert_eq!(refused(folder.path()), DETECTOR);
    bytes[5_000_000] ^= 1;
    bytes.push(0);
    fs::write(folder.path().join(DETECTOR), bytes).unwrap();
    assert_eq!(refused(folder.path()), DETECTOR);
}
