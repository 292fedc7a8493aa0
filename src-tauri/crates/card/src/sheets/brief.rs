//! The brief for the workshop on paper: the very lines that the screen shows.

use serde::Serialize;
use typst::foundations::{Dict, IntoValue};

use super::engine;
use super::options::pdf_options;
use crate::CardError;

/// What stands on a brief.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Brief {
    /// The language of its words, as an IETF tag.
    pub lang: String,
    /// Its title.
    pub title: String,
    /// Its parts, top to bottom.
    pub parts: Vec<BriefPart>,
    /// What is said under all of them.
    pub foot: String,
}

/// A heading with its lines.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct BriefPart {
    /// The heading.
    pub title: String,
    /// The lines.
    pub lines: Vec<String>,
}

/// The brief as PDF/A-2b (ISO 19005-2) on A4, made at so many seconds since 1970-01-01 UTC.
pub fn brief_pdf(brief: &Brief, made_at: i64) -> Result<Vec<u8>, CardError> {
    let model = engine::printable(brief, &brief.lang)?;
    let options = pdf_options(&model, made_at)?;
    let mut inputs = Dict::new();
    inputs.insert("model".into(), model.into_value());
    let document = engine::typeset("brief.typ", inputs)?;
    typst_pdf::pdf(&document, &options).map_err(|faults| engine::refused(&faults))
}

#[cfg(test)]
#[path = "brief_tests.rs"]
mod tests;
