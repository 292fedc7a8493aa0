//! How a sheet is printed: its size, and what makes its bytes the same each time.

use typst::foundations::{Datetime, Smart};
use typst_pdf::{PdfOptions, PdfStandard, PdfStandards, Timestamp};
use units::Day;

use crate::{CardError, MODULE_MIN_UM, SquareLimit};

/// How a sheet is printed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct SheetOptions {
    /// The size of the sheet.
    pub size: SheetSize,
    /// When the document was made, in seconds since 1970-01-01 UTC; it stands in the PDF's metadata.
    pub made_at: i64,
    /// What identifies the document from one making to the next, such as the book's id; only its hash is written.
    pub ident: String,
}

/// The sizes in which a card is printed.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub enum SheetSize {
    /// ISO 216 A5 across, 210 mm by 148 mm, to be folded once to A6.
    #[default]
    A5Folded,
}

impl SheetSize {
    /// The width in micrometres that the sheet leaves for the square with its quiet zone.
    pub const fn square_width_um(self) -> u32 {
        match self {
            SheetSize::A5Folded => 74_000,
        }
    }

    /// The largest square that the sheet holds with modules of at least 0.40 mm.
    pub fn square_limit(self) -> SquareLimit {
        SquareLimit::within_um(self.square_width_um()).unwrap_or(SquareLimit::LARGEST)
    }

    /// The module in micrometres for a square of `side` modules: as large as the sheet leaves room for, but no
    /// larger than a camera needs.
    pub(super) fn module_um(self, side_with_quiet_zone: u32) -> u32 {
        (self.square_width_um() / side_with_quiet_zone.max(1)).clamp(MODULE_MIN_UM, MODULE_MAX_UM)
    }
}

/// A larger module gains nothing at arm's length and only crowds the words beside it.
const MODULE_MAX_UM: u32 = 800;

impl SheetOptions {
    /// PDF/A-2b (ISO 19005-2), dated and identified as these options say.
    pub(super) fn pdf(&self) -> Result<PdfOptions, CardError> {
        let standards = PdfStandards::new(&[PdfStandard::A_2b])
            .map_err(|fault| CardError::Setting(fault.message().to_string()))?;
        Ok(PdfOptions {
            ident: Smart::Custom(self.ident.clone()),
            timestamp: utc(self.made_at).map(Timestamp::new_utc),
            standards,
            ..PdfOptions::default()
        })
    }
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
