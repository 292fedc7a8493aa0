//! What a person typed to hand a book over, as it travels.

use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// A handover as typed.
#[derive(Debug, Clone, Default, Serialize, Deserialize, TS)]
#[serde(default, deny_unknown_fields)]
pub struct HandoverForm {
    /// The day; today when empty.
    pub day: String,
    /// What the instrument shows; may be empty.
    pub reading: String,
    /// To the next owner, at most 2 000 characters; may be empty.
    pub words: String,
    /// The photos and documents stay here.
    pub without_papers: bool,
    /// The owner has been asked about an implausible reading and wants it kept.
    pub keep: bool,
}
