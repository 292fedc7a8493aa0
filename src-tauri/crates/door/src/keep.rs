//! What the owner wants kept though it can hardly be.

use serde::{Deserialize, Serialize};
use ts_rs::TS;

use crate::Refusal;

/// Which questions about a reading are answered with 'keep it'.
///
/// Whoever asks the owner one after the other sends the codes of those that he has answered, so that the next one is
/// still asked; where nobody can be asked it is all or none.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(untagged)]
pub enum Keep {
    /// Every question, or none.
    Every(bool),
    /// Those with these codes.
    Asked(Vec<String>),
}

impl Keep {
    /// Asks a question that is not answered yet.
    pub(crate) fn ask(&self, question: Refusal) -> Result<(), Refusal> {
        let answered = match self {
            Keep::Every(answered) => *answered,
            Keep::Asked(codes) => codes.contains(&question.code),
        };
        if answered { Ok(()) } else { Err(question.keepable()) }
    }
}

impl Default for Keep {
    fn default() -> Keep {
        Keep::Every(false)
    }
}

impl From<bool> for Keep {
    fn from(every: bool) -> Keep {
        Keep::Every(every)
    }
}
