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
    /// Photos and documents on the disk that no entry names, such as those of an intake that was cut off before its
    /// entries were written. [`Request::Rebuild`](crate::Request::Rebuild) clears them away.
    pub unnamed: usize,
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

/// The pages were worked out again, and what no entry names was cleared away.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct RebuiltView {
    /// Entries folded.
    pub entries: usize,
    /// Photos and documents that no entry names, and that were deleted.
    pub cleared: usize,
}
