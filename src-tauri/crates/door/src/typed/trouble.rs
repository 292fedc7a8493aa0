//! What a person typed of a trouble, as it travels.

use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// A trouble as typed: at least one of `words`, `symptoms` and `scans` says something.
#[derive(Debug, Clone, Default, Serialize, Deserialize, TS)]
#[serde(default, deny_unknown_fields)]
pub struct TroubleForm {
    /// The day on which it was noticed; today when empty.
    pub day: String,
    /// What the instrument showed then; may be empty.
    pub reading: String,
    /// The complaint in the owner's own words, at most 2 000 characters.
    pub words: String,
    /// When it happens, in the owner's own words, at most 2 000 characters.
    pub when: String,
    /// The keys of the symptoms that show.
    pub symptoms: Vec<String>,
    /// The keys of the symptoms that were asked about and do not show.
    pub absent: Vec<String>,
    /// What scan tools said, in the order in which it was read.
    pub scans: Vec<ScanForm>,
    /// What the checks said so far, in the order in which they were made.
    pub answers: Vec<AnswerForm>,
    /// What is asked of a workshop, in the owner's own words, at most 2 000 characters.
    pub asked: String,
    /// How it ended; left out while it has not.
    #[ts(optional)]
    pub end: Option<EndForm>,
}

/// What a scan tool said, as typed or pasted.
#[derive(Debug, Clone, Default, Serialize, Deserialize, TS)]
#[serde(default, deny_unknown_fields)]
pub struct ScanForm {
    /// The day on which it was read; today when empty.
    pub day: String,
    /// What the instrument showed then; may be empty.
    pub reading: String,
    /// Its text, at most 8 000 characters; may be empty when the codes were only cleared.
    pub text: String,
    /// The codes were cleared after it was read.
    pub cleared: bool,
}

/// A check that was made, or tried.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(deny_unknown_fields)]
pub struct AnswerForm {
    /// The check's key.
    pub check: String,
    /// What it said.
    pub answer: AnswerKey,
}

/// What a check said.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "kebab-case")]
pub enum AnswerKey {
    /// Something is wrong there.
    Found,
    /// Nothing is wrong there, as far as could be seen.
    NotFound,
    /// It could not be made.
    Skipped,
}

/// How a trouble ended, as typed.
#[derive(Debug, Clone, Default, Serialize, Deserialize, TS)]
#[serde(default, deny_unknown_fields)]
pub struct EndForm {
    /// The day; today when empty.
    pub day: String,
    /// The line of the visit that ended it; empty where it went without one.
    pub visit: String,
    /// The key of what was the cause; empty where nobody found out, or it is none of the table.
    pub cause: String,
}

/// What the owner has to work with, and whether it is dark: asked anew each time, and not written down.
#[derive(Debug, Clone, Default, Serialize, Deserialize, TS)]
#[serde(default, deny_unknown_fields)]
pub struct HereForm {
    /// It is dark, or soon will be.
    pub at_night: bool,
    /// The keys of the tools that he has besides the usual ones.
    pub owned: Vec<String>,
    /// The keys of the usual tools that he lacks.
    pub lacking: Vec<String>,
}
