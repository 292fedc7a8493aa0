//! From the bytes that came in to the photo that is kept: checked, decoded, laid on white, shrunk, turned upright
//! and encoded anew. The same bytes give the same photo every time.

use std::io::Cursor;
use std::ops::ControlFlow;

use fast_image_resize::images::{TypedImage, TypedImageRef};
use fast_image_resize::pixels::U8x3;
use fast_image_resize::{FilterType, ResizeAlg, ResizeOptions, Resizer};
use image::codecs::jpeg::JpegDecoder;
use image::codecs::png::PngDecoder;
use image::codecs::webp::WebPDecoder;
use image::metadata::Orientation;
use image::{DynamicImage, ImageDecoder, Limits, RgbImage, Rgba};
use jpeg_encoder::{ColorType, Encoder};
use sha2::{Digest, Sha256};
use units::Hash;

use crate::corners::{Corners, find_corners, straightened};
use crate::sniff::{Format, sniff};
use crate::steps::{GoOn, Steps};
use crate::{PaperError, jpeg, webp};

/// The most bytes that a file may have: 64 MiB.
pub const MAX_FILE_BYTES: u64 = 64 * 1024 * 1024;
/// The most pixels that a picture may have: 100 megapixels.
pub const MAX_PIXELS: u64 = 100_000_000;
/// The most bytes that a picture's pixels may take when unpacked: 512 MiB.
pub const MAX_UNPACKED_BYTES: u64 = 512 * 1024 * 1024;
/// The long side of a kept photo, in pixels, at most.
pub const LONG_SIDE: u32 = 2400;
/// The long side of a thumbnail, in pixels, at most.
pub const THUMB_SIDE: u32 = 320;
/// The JPEG quality of photo and thumbnail, on the usual scale from 1 to 100.
pub const QUALITY: u8 = 85;

/// The steps of a photo: unpacked, shrunk, corners found, straightened, and photo and thumbnail of both pictures written.
const PHOTO_STEPS: u32 = 8;
/// The most bytes that a PNG may use for what is not its pixels, such as texts and a colour profile: 16 MiB.
const MAX_PNG_EXTRAS: u64 = 16 * 1024 * 1024;

/// A photo as the store knows it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Photo {
    /// SHA-256 of the stored JPEG, which is the photo's name.
    pub hash: Hash,
    /// Pixels across, as it is looked at.
    pub width: u32,
    /// Pixels down, as it is looked at.
    pub height: u32,
    /// Bytes of the stored JPEG.
    pub bytes: u64,
}

/// A photo ready to be kept. Only [`prepare`], [`straighten`], [`pages`](crate::pages) and what is named like them make
/// one, so its name always fits its bytes.
#[derive(Debug, Clone, PartialEq)]
pub struct Prepared {
    photo: Photo,
    jpeg: Vec<u8>,
    thumb: Vec<u8>,
    source: Option<Box<Source>>,
}

/// What a paper was cut out of.
#[derive(Debug, Clone, PartialEq)]
struct Source {
    whole: Prepared,
    corners: Corners,
}

impl Prepared {
    /// The photo's name and size.
    pub fn photo(&self) -> Photo {
        self.photo
    }

    /// The JPEG that is to be kept.
    pub fn jpeg(&self) -> &[u8] {
        &self.jpeg
    }

    /// Its thumbnail, a JPEG too.
    pub fn thumb(&self) -> &[u8] {
        &self.thumb
    }

    /// The upright photo as it was taken, where this is the paper on it, straightened. It is to be kept as well,
    /// because it is what proves that nothing was cut off, and what the owner draws other corners on.
    pub fn whole(&self) -> Option<&Prepared> {
        self.source.as_ref().map(|source| &source.whole)
    }

    /// Where on [`Prepared::whole`] the paper's corners were found.
    pub fn corners(&self) -> Option<Corners> {
        self.source.as_ref().map(|source| source.corners)
    }

    /// A picture as it is.
    pub(crate) fn of(picture: &RgbImage, steps: &Steps<'_>) -> Result<Prepared, PaperError> {
        let watched = |made: Result<Vec<u8>, PaperError>| made.and_then(|bytes| steps.pass().map(|()| bytes));
        let (jpeg, thumb) = rayon::join(|| watched(encode(picture)), || watched(encode_thumb(picture)));
        let jpeg = jpeg?;
        let photo = Photo {
            hash: hash_of(&jpeg),
            width: picture.width(),
            height: picture.height(),
            bytes: jpeg.len() as u64,
        };
        Ok(Prepared { photo, jpeg, thumb: thumb?, source: None })
    }
}

/// Turns the bytes of a JPEG, PNG or WebP file into the photo that is kept.
///
/// The picture is turned upright by its EXIF orientation, laid on white where it is transparent, shrunk to
/// [`LONG_SIDE`] (never enlarged) and encoded at [`QUALITY`] in 8-bit RGB. No metadata survives, the colour profile
/// neither: colours are taken as sRGB. Of an animated PNG the still picture is taken;
/// an animated WebP has none and is refused. Where [`find_corners`](crate::find_corners) is sure of the paper's corners,
/// the photo is the paper straightened, and [`Prepared::whole`] the picture that it was on.
///
/// Refused are files of any other format, damaged ones, and those beyond the bounds in the head of this crate.
pub fn prepare(bytes: &[u8]) -> Result<Prepared, PaperError> {
    prepare_while(bytes, &|_| ControlFlow::Continue(()))
}

/// The same as [`prepare`], with `go_on` told how far it is. Where that breaks off, it ends after the step that is under
/// way with [`PaperError::IntakeStopped`].
pub fn prepare_while(bytes: &[u8], go_on: &GoOn<'_>) -> Result<Prepared, PaperError> {
    let steps = Steps::begin(go_on, PHOTO_STEPS)?;
    let upright = upright(bytes, &steps)?;
    // The two pictures have nothing to do with each other, and every device has more than one core. Without corners the
    // whole picture is what is kept, so its work is never in vain.
    let (paper, whole) = rayon::join(|| paper_on(&upright, &steps), || Prepared::of(&upright, &steps));
    let Some((corners, paper)) = paper? else { return whole };
    let source = Some(Box::new(Source { whole: whole?, corners }));
    Ok(Prepared { source, ..paper })
}

/// The paper on a photo, straightened, where its corners are beyond doubt.
fn paper_on(upright: &RgbImage, steps: &Steps<'_>) -> Result<Option<(Corners, Prepared)>, PaperError> {
    let found = find_corners(upright);
    steps.pass()?;
    found.map(|corners| Ok((corners, cut_out(upright, corners, steps)?))).transpose()
}

fn cut_out(upright: &RgbImage, corners: Corners, steps: &Steps<'_>) -> Result<Prepared, PaperError> {
    let straight = straightened(upright, corners)?;
    steps.pass()?;
    Prepared::of(&straight, steps)
}

/// The paper between corners that the owner drew on a kept photo, straightened. The photo itself stays as it is.
pub fn straighten(jpeg: &[u8], corners: Corners) -> Result<Prepared, PaperError> {
    let steps = Steps::unwatched();
    cut_out(&upright(jpeg, &steps)?, corners, &steps)
}

/// The corners of the paper on a kept photo, where they are beyond doubt, as [`find_corners`](crate::find_corners) says.
pub fn corners_on(jpeg: &[u8]) -> Result<Option<Corners>, PaperError> {
    Ok(find_corners(&upright(jpeg, &Steps::unwatched())?))
}

/// The name of a photo: SHA-256 of its bytes.
pub(crate) fn hash_of(jpeg: &[u8]) -> Hash {
    Hash(Sha256::digest(jpeg).into())
}

/// Makes the thumbnail of a photo that is stored.
pub(crate) fn thumb_of(jpeg: &[u8]) -> Result<Vec<u8>, PaperError> {
    encode_thumb(&upright(jpeg, &Steps::unwatched())?)
}

/// Whether bytes from another device are a JPEG that can be shown: known by its head, no larger than it may be, its end
/// there.
pub(crate) fn check_photo(bytes: &[u8]) -> Result<(), PaperError> {
    match sniff(bytes)? {
        Format::Jpeg => open_jpeg(bytes).map(drop),
        Format::Png | Format::Webp => Err(PaperError::Unknown),
        Format::Pdf => Err(PaperError::Document),
    }
}

fn upright(bytes: &[u8], steps: &Steps<'_>) -> Result<RgbImage, PaperError> {
    let format = sniff(bytes)?;
    check_file_size(bytes.len() as u64)?;
    match format {
        Format::Jpeg => unpack(format, open_jpeg(bytes)?, steps),
        Format::Png => unpack(format, open_png(bytes)?, steps),
        Format::Webp => unpack(format, open_webp(bytes)?, steps),
        Format::Pdf => Err(PaperError::Document),
    }
}

fn open_jpeg(bytes: &[u8]) -> Result<impl ImageDecoder, PaperError> {
    let decoder = JpegDecoder::new(Cursor::new(bytes)).map_err(PaperError::decoding(Format::Jpeg))?;
    // What is too large is said to be so even when it is cut short as well.
    check_pixels(&decoder)?;
    if jpeg::is_whole(bytes) { Ok(decoder) } else { Err(PaperError::CutShort(Format::Jpeg)) }
}

fn open_png(bytes: &[u8]) -> Result<impl ImageDecoder, PaperError> {
    // At this point the limit does not count the pixels, only what the file packs before them.
    PngDecoder::with_limits(Cursor::new(bytes), limits(MAX_PNG_EXTRAS))
        .map_err(PaperError::decoding(Format::Png))
}

fn open_webp(bytes: &[u8]) -> Result<impl ImageDecoder, PaperError> {
    let still = webp::checked(bytes)?;
    WebPDecoder::new(Cursor::new(still)).map_err(PaperError::decoding(Format::Webp))
}

fn limits(max_alloc: u64) -> Limits {
    let mut limits = Limits::no_limits();
    limits.max_alloc = Some(max_alloc);
    limits
}

/// Checks what the header states before any pixel is decoded, then decodes.
fn unpack(format: Format, mut decoder: impl ImageDecoder, steps: &Steps<'_>) -> Result<RgbImage, PaperError> {
    let refused = PaperError::decoding(format);
    check_pixels(&decoder)?;
    let mut limits = limits(MAX_UNPACKED_BYTES);
    limits.reserve(decoder.total_bytes()).map_err(&refused)?;
    decoder.set_limits(limits).map_err(&refused)?;
    // Metadata too damaged to say which way is up is no reason to lose the picture.
    let orientation = decoder.orientation().unwrap_or(Orientation::NoTransforms);
    let image = on_white(DynamicImage::from_decoder(decoder).map_err(&refused)?).into_rgb8();
    steps.pass()?;
    // Shrinking comes before turning, which then has less to move.
    let mut image =
        DynamicImage::ImageRgb8(shrunk(&image, LONG_SIDE, FilterType::CatmullRom)?.unwrap_or(image));
    steps.pass()?;
    image.apply_orientation(orientation);
    Ok(image.into_rgb8())
}

fn check_pixels(decoder: &impl ImageDecoder) -> Result<(), PaperError> {
    let (width, height) = decoder.dimensions();
    check_size(width, height)
}

/// Refuses a file that has, or by its folder is said to have, more than [`MAX_FILE_BYTES`].
pub fn check_file_size(bytes: u64) -> Result<(), PaperError> {
    if bytes > MAX_FILE_BYTES { Err(PaperError::TooLarge { bytes }) } else { Ok(()) }
}

/// Refuses a picture that is stated to have more than [`MAX_PIXELS`].
pub(crate) fn check_size(width: u32, height: u32) -> Result<(), PaperError> {
    if u64::from(width) * u64::from(height) > MAX_PIXELS {
        return Err(PaperError::TooManyPixels { width, height });
    }
    Ok(())
}

/// Lays a picture that has transparency on white paper; any other is returned as it is.
fn on_white(image: DynamicImage) -> DynamicImage {
    if !image.color().has_alpha() {
        return image;
    }
    let mut rgba = image.into_rgba8();
    for Rgba([red, green, blue, alpha]) in rgba.pixels_mut() {
        for channel in [red, green, blue] {
            *channel = over_white(*channel, *alpha);
        }
        *alpha = u8::MAX;
    }
    DynamicImage::ImageRgba8(rgba)
}

/// One channel of a colour seen through `alpha` before white, rounded to the nearest.
fn over_white(channel: u8, alpha: u8) -> u8 {
    let (channel, alpha) = (u32::from(channel), u32::from(alpha));
    let sum = channel * alpha + 255 * (255 - alpha);
    u8::try_from((sum + 127) / 255).unwrap_or(u8::MAX)
}

/// The picture shrunk so that its long side is `long_side`; nothing when it is no longer than that.
///
/// The filter is one whose weights are a polynomial: no machine rounds a sine differently.
pub(crate) fn shrunk(
    image: &RgbImage,
    long_side: u32,
    filter: FilterType,
) -> Result<Option<RgbImage>, PaperError> {
    let (width, height) = image.dimensions();
    let longest = width.max(height);
    if longest <= long_side {
        return Ok(None);
    }
    let refused = |error: &dyn std::fmt::Display| PaperError::Encoding(error.to_string());
    let mut smaller = RgbImage::new(scaled(width, long_side, longest), scaled(height, long_side, longest));
    let (to_width, to_height) = smaller.dimensions();
    // Of one kind of pixel, because every kind that could come in would be compiled into this crate.
    let from = TypedImageRef::<U8x3>::from_buffer(width, height, image).map_err(|error| refused(&error))?;
    let mut to = TypedImage::<U8x3>::from_buffer(to_width, to_height, &mut smaller)
        .map_err(|error| refused(&error))?;
    let options = ResizeOptions::new().resize_alg(ResizeAlg::Convolution(filter));
    Resizer::new().resize_typed(&from, &mut to, &options).map_err(|error| refused(&error))?;
    Ok(Some(smaller))
}

/// `side * to / from`, rounded to the nearest and never nothing; `to` is less than `from`.
fn scaled(side: u32, to: u32, from: u32) -> u32 {
    let (side, to, from) = (u64::from(side), u64::from(to), u64::from(from));
    u32::try_from((side * to + from / 2) / from).unwrap_or(u32::MAX).max(1)
}

fn encode_thumb(upright: &RgbImage) -> Result<Vec<u8>, PaperError> {
    let smaller = shrunk(upright, THUMB_SIDE, FilterType::CatmullRom)?;
    encode(smaller.as_ref().unwrap_or(upright))
}

/// A picture of at most 65 535 pixels a side as a JPEG of [`QUALITY`].
pub fn encode(image: &RgbImage) -> Result<Vec<u8>, PaperError> {
    let refused = |error: &dyn std::fmt::Display| PaperError::Encoding(error.to_string());
    let width = u16::try_from(image.width()).map_err(|error| refused(&error))?;
    let height = u16::try_from(image.height()).map_err(|error| refused(&error))?;
    let mut jpeg = Vec::new();
    let encoder = Encoder::new(&mut jpeg, QUALITY);
    encoder.encode(image, width, height, ColorType::Rgb).map_err(|error| refused(&error))?;
    Ok(jpeg)
}
