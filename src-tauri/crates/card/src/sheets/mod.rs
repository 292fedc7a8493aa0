//! The printed sheets: one model, one template, PDF for paper and SVG for the screen.
//!
//! The template draws what the model says and knows no word of its own. Texts reach it as data and are never
//! read as markup.

mod brief;
mod engine;
mod model;
mod options;
mod record;
mod report;
mod size;
mod symbol;
mod text;
mod world;

#[cfg(test)]
mod tests;

use typst_svg::SvgOptions;

use crate::CardError;

pub use brief::{Brief, BriefPart, brief_pdf};
pub use model::{CarLines, Mark, NextLine, ReadingLine, SheetModel, SheetSquare, SheetWords, VisitLine};
pub use options::SheetOptions;
pub use record::{Plot, PlotPoint, PlotTick, RecordLines, WorkGroup, WorkLine, WriterLine};
pub use report::{
    Bar, Bars, ILLEGIBLE_PHOTO_SIDE, REPORT_PHOTO_SIDE, REPORT_PHOTOS_MAX, Report, ReportPart, ReportPhoto,
    ReportVisit, ReportWords, ReportYear, Thumbnail, report_pdf,
};
pub use size::{Extent, SheetLayout, SheetPaper, SheetSize, Turn};

/// The card as PDF/A-2b with its fonts embedded: a pure function of model and options.
pub fn pdf(model: &SheetModel, options: &SheetOptions) -> Result<Vec<u8>, CardError> {
    let document = engine::set(model, options)?;
    typst_pdf::pdf(&document, &options.pdf()?).map_err(|faults| engine::refused(&faults))
}

/// The card as one SVG document a page, from the same template.
pub fn svg(model: &SheetModel, options: &SheetOptions) -> Result<Vec<String>, CardError> {
    let document = engine::set(model, options)?;
    Ok(document.pages().iter().map(|page| typst_svg::svg(page, &SvgOptions::default())).collect())
}
