//! What was verified and worked out again.

use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// What the check found.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct CheckView {
    /// Entries verified.
    pub entries: usize,
    /// Photos verified.
    pub photos: usize,
    /// Photos that an earlier owner kept, so that they are not looked for here.
    pub left: usize,
    /// What is wrong; empty when all is well.
    pub faults: Vec<FaultView>,
}

/// One fault.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct FaultView {
    /// The key of the sentence.
    pub code: String,
    /// The hash of the entry or the photo, or another name of the place.
    pub place: String,
}

/// The pages were worked out again.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct RebuiltView {
    /// Entries folded.
    pub entries: usize,
}
