//! Finding and reading the text on a photo, on the device: no byte of a paper leaves it.
//!
//! Two networks do it. One marks where there is text ([`detect`], [`boxes`], [`place`]); each place is then
//! straightened to a strip of fixed height, which the other reads letter by letter ([`recognise`], [`alphabet`]).
//! What was read is put into rows at last, so that an amount stands behind what it is for ([`rows`]).
//!
//! The networks are two files that are installed beside the program ([`models`]); without them there is no
//! [`Reader`], and the paper is typed in by hand as ever.
//!
//! # Bounds
//!
//! Whatever the photo shows, the first network sees at most 736 x 736 pixels of it, the second strips of at most 48 x
//! 2400 pixels, one after the other, and no more than 400 of them. Measured on a photo of nothing but grain, with
//! strips of every width: the opened networks hold 32 MB, 50 MB while they are opened, and reading takes up to 120 MB
//! beside them and beside the decoded photo.

mod alphabet;
mod boxes;
mod detect;
mod models;
mod place;
mod recognise;
mod rows;

use std::io::Cursor;
use std::ops::ControlFlow;
use std::path::Path;

use fast_image_resize::images::{TypedImage, TypedImageRef};
use fast_image_resize::pixels::U8;
use fast_image_resize::{FilterType, ResizeAlg, ResizeOptions, Resizer};
use image::codecs::jpeg::JpegDecoder;
use image::{DynamicImage, GrayImage, ImageDecoder};

use crate::prepare::check_size;
use crate::{Format, PaperError, Text};
use detect::Detector;
use place::TextBox;
use recognise::{Reading, Recogniser};

/// The long side of the photo from which strips are cut, in pixels, at most.
const LONG_SIDE: u32 = 2000;

/// So many of the longest stretches tell which way up the photo is.
const PROBES: usize = 6;

/// A photo that is the right way up is read with at least this certainty, as a rule. Measured on drawn receipts:
/// 0.9 and more upright, 0.67 to 0.78 upside down.
const UPRIGHT: f32 = 0.85;

/// Finds and reads the text on photos.
///
/// One is opened once and serves any number of photos, on any thread.
pub struct Reader {
    detector: Detector,
    recogniser: Recogniser,
}

/// How far reading has come.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Progress {
    /// The photo is being searched for text.
    Looking,
    /// Text was found, and is being read.
    Reading {
        /// How many stretches have been read.
        done: usize,
        /// How many there are.
        of: usize,
    },
}

/// What hears how far reading has come, and may stop it.
type Tell<'a> = &'a mut dyn FnMut(Progress) -> ControlFlow<()>;

/// A place and what was read there.
type Found = (TextBox, Reading);

impl Reader {
    /// Opens the networks in a folder; nothing when neither is there, which is to say that reading is not
    /// installed.
    ///
    /// [`PaperError::Model`] when one of them is missing, damaged or another than this version was made for.
    pub fn open(folder: &Path) -> Result<Option<Reader>, PaperError> {
        let Some((detector, recogniser)) = models::open(folder)? else { return Ok(None) };
        let detector = Detector::new(detector);
        Ok(Some(Reader { detector, recogniser: Recogniser::new(recogniser)? }))
    }

    /// Whether the networks are there; only [`Reader::open`] says whether they can be used.
    pub fn is_installed(folder: &Path) -> bool {
        models::are_there(folder)
    }

    /// Reads the text on a photo, a JPEG as [`prepare`](crate::prepare()) makes it. It need not be the right way up.
    ///
    /// `tell` is called before the search and before each stretch; when it breaks, the answer is
    /// [`PaperError::Stopped`]. The areas are those on the photo as it is, the rows as they are read.
    pub fn read(&self, jpeg: &[u8], tell: Tell) -> Result<Text, PaperError> {
        let photo = grey(jpeg)?;
        heard(tell, Progress::Looking)?;
        let places = self.detector.find(&photo)?;
        let found = self.read_places(&photo, &places, tell)?;
        Ok(rows::rows(&found, photo.dimensions()))
    }

    /// Reads all places, longest first, after the first few have shown which way up the photo is.
    fn read_places(
        &self,
        photo: &GrayImage,
        places: &[TextBox],
        tell: Tell,
    ) -> Result<Vec<Found>, PaperError> {
        let of = places.len();
        let mut read = |places: &[TextBox], before: usize| {
            let mut found = Vec::with_capacity(places.len());
            for (at, place) in places.iter().enumerate() {
                heard(tell, Progress::Reading { done: before + at, of })?;
                found.push((*place, self.recogniser.read(photo, place)?));
            }
            Ok::<Vec<Found>, PaperError>(found)
        };
        let (probes, rest) = places.split_at(PROBES.min(of));
        let mut found = read(probes, 0)?;
        let mut turned = false;
        if certainty(&found) < UPRIGHT {
            let other = read(&upside_down(probes), 0)?;
            turned = certainty(&other) > certainty(&found);
            found = if turned { other } else { found };
        }
        let rest = if turned { upside_down(rest) } else { rest.to_vec() };
        found.extend(read(&rest, found.len())?);
        found.retain(|(_, reading)| reading.is_text());
        Ok(found)
    }
}

/// The mean certainty, from 0 to 1, each stretch weighted by its length.
fn certainty(found: &[Found]) -> f32 {
    let length: f32 = found.iter().map(|(place, _)| place.length).sum();
    let sum: f32 = found.iter().map(|(place, reading)| place.length * reading.sure).sum();
    if length > 0.0 { sum / length } else { 1.0 }
}

fn upside_down(places: &[TextBox]) -> Vec<TextBox> {
    places.iter().map(TextBox::upside_down).collect()
}

fn heard(tell: Tell, progress: Progress) -> Result<(), PaperError> {
    match tell(progress) {
        ControlFlow::Continue(()) => Ok(()),
        ControlFlow::Break(()) => Err(PaperError::Stopped),
    }
}

/// The photo in shades of grey, its long side at most [`LONG_SIDE`].
fn grey(jpeg: &[u8]) -> Result<GrayImage, PaperError> {
    let refused = PaperError::decoding(Format::Jpeg);
    let decoder = JpegDecoder::new(Cursor::new(jpeg)).map_err(&refused)?;
    let (width, height) = decoder.dimensions();
    check_size(width, height)?;
    let photo = DynamicImage::from_decoder(decoder).map_err(&refused)?.into_luma8();
    let longest = width.max(height);
    if longest <= LONG_SIDE {
        return Ok(photo);
    }
    resized(&photo, scaled(width, LONG_SIDE, longest), scaled(height, LONG_SIDE, longest))
}

/// `side * to / from`, rounded up; `from` is not 0.
fn scaled(side: u32, to: u32, from: u32) -> u32 {
    let scaled = (u64::from(side) * u64::from(to)).div_ceil(u64::from(from));
    u32::try_from(scaled).unwrap_or(u32::MAX)
}

/// The picture in that size, in pixels, neither of them 0.
fn resized(picture: &GrayImage, width: u32, height: u32) -> Result<GrayImage, PaperError> {
    let refused = |error: &dyn std::fmt::Display| PaperError::NotRead(error.to_string());
    let mut smaller = GrayImage::new(width, height);
    let from = TypedImageRef::<U8>::from_buffer(picture.width(), picture.height(), picture)
        .map_err(|error| refused(&error))?;
    let mut to =
        TypedImage::<U8>::from_buffer(width, height, &mut smaller).map_err(|error| refused(&error))?;
    let options = ResizeOptions::new().resize_alg(ResizeAlg::Convolution(FilterType::CatmullRom));
    Resizer::new().resize_typed(&from, &mut to, &options).map_err(|error| refused(&error))?;
    Ok(smaller)
}
