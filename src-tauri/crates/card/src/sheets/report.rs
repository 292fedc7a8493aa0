//! The full report: every visit of the book with its parts and receipts, for whoever wants to know all of it.
//!
//! It opens with what a card says, the square included, and its pages bear contents and numbers. What stands in the
//! square is signed; the pages are not, and their words claim no more than that.

use std::io::Cursor;

use image::imageops::FilterType;
use serde::{Serialize, Serializer};
use typst::comemo;
use typst::foundations::{Array, Bytes, Dict, IntoValue, Value};
use typst::visualize::{ExchangeFormat, RasterImage};

use super::options::tagged_options;
use super::{Mark, PlotTick, SheetModel, SheetOptions, engine};
use crate::CardError;

/// A report has at most so many photos. While it is set each takes up to 0.5 MB unpacked, and in the file as many
/// bytes as it came with.
pub const REPORT_PHOTOS_MAX: usize = 600;
/// The longest side of a photo on a report, in pixels.
pub const REPORT_PHOTO_SIDE: u32 = 400;
/// The longest side of a photo on which nothing can be read, in pixels.
///
/// A digit two pixels high cannot be told from another, seen on enlarged receipts. This is enough for print up to an
/// eighth of the photo's long side; the largest on a receipt is taken to be below that (from memory: a printer of 203
/// dots to the inch doubles its 24 dots to 6 mm, on paper 80 mm wide or 58 mm). A photo of nothing but the sum, from so
/// near that its digits are larger than that, is not covered.
pub const ILLEGIBLE_PHOTO_SIDE: u32 = 16;

/// Everything that a report shows.
#[derive(Debug, Clone, Serialize)]
pub struct Report {
    /// What the card on a full page says, save its list of visits.
    pub card: SheetModel,
    /// The first bytes of the head of the book, as a card carries them.
    pub head: String,
    /// How many visits there are, and what is left out, a sentence each.
    pub notes: Vec<String>,
    /// The plot of the readings in words, for who cannot see it.
    pub plot_says: String,
    /// What is drawn beside the readings, such as what the car used each year.
    pub bars: Vec<Bars>,
    /// The visits by year, both the newest first.
    pub years: Vec<ReportYear>,
    /// One sentence: how many visits are too old to be shown; empty where all are.
    pub left_out: String,
    /// What the history gives cause to ask, the weightiest first.
    pub questions: Vec<String>,
    /// The photos, at most [`REPORT_PHOTOS_MAX`].
    pub photos: Vec<Thumbnail>,
    /// The labels.
    pub words: ReportWords,
}

/// Something that is drawn as one bar a year.
#[derive(Debug, Clone, Default, Serialize)]
pub struct Bars {
    /// Its heading, with the unit.
    pub title: String,
    /// The same in words, for who cannot see it.
    pub says: String,
    /// The upper end of the scale, above 0, in whatever [`Bar::at`] counts.
    pub most: i64,
    /// The marks beside it.
    pub ways: Vec<PlotTick>,
    /// The bars, oldest first.
    pub bars: Vec<Bar>,
    /// One sentence under it; may be empty.
    pub note: String,
}

/// One bar.
#[derive(Debug, Clone, Default, Serialize)]
pub struct Bar {
    /// The year.
    pub label: String,
    /// How high it is; what is below 0 is drawn as nothing.
    pub at: i64,
    /// The same in words.
    pub value: String,
    /// The year is not over.
    pub open: bool,
}

/// The visits of a year.
#[derive(Debug, Clone, Default, Serialize)]
pub struct ReportYear {
    /// The year.
    pub name: String,
    /// Its visits, the newest first.
    pub visits: Vec<ReportVisit>,
}

/// A visit with everything that the book says of it.
#[derive(Debug, Clone, Default, Serialize)]
pub struct ReportVisit {
    /// The day.
    pub day: String,
    /// The reading with its unit; empty where nobody wrote one down.
    pub reading: String,
    /// By whom it was done.
    pub who: String,
    /// What it cost, where that is to be told.
    pub cost: Option<String>,
    /// What was done, item by item.
    pub items: Vec<String>,
    /// How well it is recorded.
    pub marks: Vec<Mark>,
    /// One sentence that the line is struck out, and why; nothing where it counts.
    pub struck: Option<String>,
    /// What was fitted.
    pub parts: Vec<ReportPart>,
    /// What was found, the note, and what there is to say of its receipts, a sentence each.
    pub lines: Vec<String>,
    /// Its photos.
    pub photos: Vec<ReportPhoto>,
}

/// A part. What is not known of it is empty.
#[derive(Debug, Clone, Default, Serialize)]
pub struct ReportPart {
    /// What it is, and of which kind.
    pub name: String,
    /// Its maker and number.
    pub number: String,
    /// How much of it.
    pub amount: String,
    /// What it cost, where that is to be told.
    pub price: String,
}

/// A photo of a visit.
#[derive(Debug, Clone, Default, Serialize)]
pub struct ReportPhoto {
    /// Its place in [`Report::photos`].
    pub at: usize,
    /// What it is, for who cannot see it.
    pub says: String,
}

/// A small photo that can be printed.
#[derive(Debug, Clone)]
pub struct Thumbnail {
    jpeg: Bytes,
    size: (u32, u32),
}

/// The labels of a report in one language, beside those of its card.
#[derive(Debug, Clone, Default, Serialize)]
pub struct ReportWords {
    /// What it is: the title.
    pub title: String,
    /// Head of the contents.
    pub contents: String,
    /// Head of what the history comes to.
    pub summary: String,
    /// Label of the head of the book.
    pub head: String,
    /// What the head of the book is good for, and what is signed and what is not.
    pub head_note: String,
    /// Head of the questions.
    pub ask: String,
    /// What a question is and is not.
    pub ask_note: String,
    /// Said where there is nothing to ask.
    pub no_questions: String,
}

impl Thumbnail {
    /// Takes a JPEG of at most [`REPORT_PHOTO_SIDE`] pixels a side; any other, and one that cannot be unpacked, is
    /// [`CardError::NoPicture`].
    ///
    /// The size that it states is looked at before memory is taken.
    pub fn read(jpeg: Vec<u8>) -> Result<Thumbnail, CardError> {
        let size = image::ImageReader::with_format(Cursor::new(&jpeg), image::ImageFormat::Jpeg)
            .into_dimensions()
            .map_err(|_| CardError::NoPicture)?;
        if size.0.max(size.1) > REPORT_PHOTO_SIDE || size.0.min(size.1) == 0 {
            return Err(CardError::NoPicture);
        }
        let jpeg = Bytes::new(jpeg);
        // Typst remembers what it unpacked, so that this is not done twice.
        RasterImage::plain(jpeg.clone(), ExchangeFormat::Jpg).map_err(|_| CardError::NoPicture)?;
        Ok(Thumbnail { jpeg, size })
    }

    /// The same so small that it shows that there is a paper, and nothing of what it says: of at most
    /// [`ILLEGIBLE_PHOTO_SIDE`] pixels a side. The others are not in the file, however far one zooms.
    pub fn illegible(&self) -> Result<Thumbnail, CardError> {
        let picture = image::load_from_memory_with_format(&self.jpeg, image::ImageFormat::Jpeg)
            .map_err(|_| CardError::NoPicture)?
            .into_rgb8();
        let longest = picture.width().max(picture.height());
        let scaled = |side: u32| (side * ILLEGIBLE_PHOTO_SIDE).div_ceil(longest.max(ILLEGIBLE_PHOTO_SIDE));
        let (width, height) = (scaled(picture.width()), scaled(picture.height()));
        let small = image::imageops::resize(&picture, width, height, FilterType::Triangle);
        let mut jpeg = Cursor::new(Vec::new());
        small.write_to(&mut jpeg, image::ImageFormat::Jpeg).map_err(|_| CardError::NoPicture)?;
        Thumbnail::read(jpeg.into_inner())
    }

    /// Its width and height in pixels.
    pub fn size(&self) -> (u32, u32) {
        self.size
    }
}

/// As its width and height in pixels.
impl Serialize for Thumbnail {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        self.size.serialize(serializer)
    }
}

/// The report on A4 as PDF/A-2b (ISO 19005-2) that is also PDF/UA-1 (ISO 14289-1): tagged, with contents and page
/// numbers. A pure function of model and options, of which size and paper change nothing but the square.
pub fn report_pdf(report: &Report, options: &SheetOptions) -> Result<Vec<u8>, CardError> {
    let pdf = tagged_options(&options.ident, options.made_at)?;
    let document = engine::typeset("report.typ", inputs(report, options)?)?;
    let bytes = typst_pdf::pdf(&document, &pdf).map_err(|faults| engine::refused(&faults));
    // A long report would otherwise stay in memory with all its photos.
    comemo::evict(0);
    bytes
}

fn inputs(report: &Report, options: &SheetOptions) -> Result<Dict, CardError> {
    let mut inputs = Dict::new();
    inputs.insert("model".into(), engine::printable(report, &report.card.lang)?.into_value());
    inputs.insert("square".into(), Value::Content(engine::square(&report.card, options.size)));
    let photos = report.photos.iter().take(REPORT_PHOTOS_MAX);
    let photos: Array = photos.map(|photo| Value::Bytes(photo.jpeg.clone())).collect();
    inputs.insert("photos".into(), photos.into_value());
    Ok(inputs)
}

#[cfg(test)]
#[path = "report_tests.rs"]
mod tests;
