//! Photos of drawn slips and of nothing at all, read by the networks that `cargo xtask models` installs.

#![allow(clippy::unwrap_used, clippy::cast_possible_truncation, clippy::cast_precision_loss)]
#![allow(clippy::cast_sign_loss)]

mod draw;
mod hostile;
mod install;
mod read;

use std::ops::ControlFlow;
use std::path::PathBuf;
use std::sync::LazyLock;

use image::RgbImage;
use paper::{Reader, Text, encode};

/// The networks, opened once for all tests.
static READER: LazyLock<Reader> = LazyLock::new(|| Reader::open(&models()).unwrap().unwrap());

/// The folder with the networks, without which nothing here can be tested.
fn models() -> PathBuf {
    let folder = std::env::var_os("WELLKEPT_MODELS").filter(|folder| !folder.is_empty()).map(PathBuf::from);
    let folder =
        folder.expect("WELLKEPT_MODELS is not set; run `cargo xtask models` and set it to target/models");
    assert!(
        Reader::open(&folder).is_ok_and(|reader| reader.is_some()),
        "there are no networks in {}; run `cargo xtask models`",
        folder.display()
    );
    folder
}

/// What is read on a photo.
fn read(photo: &RgbImage) -> Text {
    READER.read(&encode(photo).unwrap(), &mut |_| ControlFlow::Continue(())).unwrap()
}
