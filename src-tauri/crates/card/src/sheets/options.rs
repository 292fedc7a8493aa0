//! How a sheet is printed: its size and paper, and what makes its bytes the same each time.

use typst::foundations::{Datetime, Smart};
use typst_pdf::{PdfOptions, PdfStandard, PdfStandards, Timestamp};
use units::Day;

use super::{SheetLayout, SheetPaper, SheetSize};
use crate::CardError;

/// How a sheet is printed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct SheetOptions {
    /// The size of the card.
    pub size: SheetSize,
    /// The paper that it is printed on.
    pub paper: SheetPaper,
    /// When the document was made, in seconds since 1970-01-01 UTC; it stands in the PDF's metadata.
    pub made_at: i64,
    /// What identifies the document from one making to the next, such as the book's id; only its hash is written.
    pub ident: String,
}

impl SheetOptions {
    /// Where the card lies on its paper.
    pub fn layout(&self) -> SheetLayout {
        SheetLayout::new(self.size, self.paper)
    }

    /// PDF/A-2b (ISO 19005-2), dated and identified as these options say.
    pub(super) fn pdf(&self) -> Result<PdfOptions, CardError> {
        pdf_options(&self.ident, self.made_at)
    }
}

/// PDF/A-2b (ISO 19005-2), made at so many seconds since 1970-01-01 UTC.
pub(super) fn pdf_options(ident: &str, made_at: i64) -> Result<PdfOptions, CardError> {
    options(&[PdfStandard::A_2b], ident, made_at)
}

/// PDF/A-2b that is PDF/UA-1 (ISO 14289-1) as well, which any reader aloud can follow.
pub(super) fn tagged_options(ident: &str, made_at: i64) -> Result<PdfOptions, CardError> {
    options(&[PdfStandard::A_2b, PdfStandard::Ua_1], ident, made_at)
}

fn options(standards: &[PdfStandard], ident: &str, made_at: i64) -> Result<PdfOptions, CardError> {
    let standards =
        PdfStandards::new(standards).map_err(|fault| CardError::Setting(fault.message().to_string()))?;
    Ok(PdfOptions {
        ident: Smart::Custom(ident.to_owned()),
        timestamp: utc(made_at).map(Timestamp::new_utc),
        standards,
        ..PdfOptions::default()
    })
}

/// The date and time of day in UTC, none outside the years 1900 to 2199.
fn utc(seconds: i64) -> Option<Datetime> {
    let (year, month, day) = Day::from_epoch(i32::try_from(seconds.div_euclid(86_400)).ok()?).ok()?.ymd();
    let of_day = seconds.rem_euclid(86_400);
    let part = |value: i64| u8::try_from(value).ok();
    Datetime::from_ymd_hms(
        year,
        u8::try_from(month).ok()?,
        u8::try_from(day).ok()?,
        part(of_day / 3600)?,
        part(of_day / 60 % 60)?,
        part(of_day % 60)?,
    )
}
