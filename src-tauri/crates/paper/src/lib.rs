//! # paper: taking in a photo, and the photo store
//!
//! A receipt is illegible in a year, so its photo is what proves a visit. [`prepare`] turns the bytes that a
//! camera, a file or a paste gave into the one form that is kept: an upright JPEG of bounded size without any
//! metadata, and a thumbnail. [`PhotoStore`] keeps it in a folder under the SHA-256 of its bytes, so that the
//! same photo is the same paper and a changed byte is found.
//!
//! This room knows `units` and nothing else: no book, no entry, no language. It must never
//!
//! - let through where a photo was taken, or with what: nothing but pixels leaves [`prepare`];
//! - trust a size that a file states about itself: every bound below is checked before memory is taken;
//! - show a photo under its name before it is whole and on the disk;
//! - delete anything but the photo that it is told to delete, and what it left half written itself;
//! - read a clock: what counts as left over is told by the time handed to [`PhotoStore::open`].
//!
//! # Bounds
//!
//! A file has at most [`MAX_FILE_BYTES`], a picture at most [`MAX_PIXELS`], and its unpacked pixels take at most
//! [`MAX_UNPACKED_BYTES`]. Beside those pixels the decoder of a progressive JPEG holds its coefficients (six
//! bytes a pixel), that of a WebP its planes (six and a half at most), and a picture with transparency or 16 bits
//! a copy of itself, so that the dearest file that is accepted takes about 1 GiB while it is prepared, and a usual
//! photo of 12 megapixels less than 150 MB.

mod corners;
mod error;
mod files;
mod jpeg;
mod pdf;
mod prepare;
pub mod read;
mod sight;
mod size;
mod sniff;
mod steps;
mod store;
mod text;
mod together;
mod webp;

pub use corners::{Corners, Point, find_corners};
pub use error::{Operation, PaperError};
pub use pdf::{MAX_PAGES, page_count, pages, pages_while};
pub use prepare::{
    LONG_SIDE, MAX_FILE_BYTES, MAX_PIXELS, MAX_UNPACKED_BYTES, Photo, Prepared, QUALITY, THUMB_SIDE,
    check_file_size, corners_on, encode, prepare, prepare_while, straighten,
};
pub use sight::{Progress, Reader};
pub use size::size;
pub use sniff::{Foreign, Format, sniff};
pub use steps::{GoOn, Step};
pub use store::{Kept, LEFT_OVER_AGE, PhotoStore};
pub use text::{Area, Row, Stretch, Text};
