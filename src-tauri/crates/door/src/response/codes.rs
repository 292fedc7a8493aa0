//! Trouble codes: what a scan tool's text says, and the life of a code.

use serde::{Deserialize, Serialize};
use ts_rs::TS;

use super::{Reading, UsedView};

/// What a scan tool's text says.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct CodesView {
    /// The codes in the order in which they stand, each once a status.
    pub codes: Vec<CodeView>,
    /// The lists that the car answered with, even an empty one: `confirmed`, `pending`, `permanent`.
    pub answered: Vec<String>,
    /// The readiness of each control unit that told it.
    pub readiness: Vec<ReadinessView>,
    /// What was frozen when a code set.
    pub frames: Vec<FrameView>,
    /// Values of the moment.
    pub live: Vec<ToldView>,
    /// What could not be read, or not without a doubt.
    pub notes: Vec<NoteView>,
}

/// A code.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct CodeView {
    /// As it is printed: `P013A`.
    pub code: String,
    /// The id of its meaning in the words (`code-P0171`); nothing where there is no text here, and the handbook
    /// or a workshop has it.
    pub meaning: Option<String>,
    /// The key of the system that its letter stands for (`code-system-KEY`).
    pub system: String,
    /// `standard`, `maker` or `reserved` (`code-origin-KEY`).
    pub origin: String,
    /// The key of what it is probably about (`code-area-KEY`), a hint only.
    pub area: Option<String>,
    /// How soon it calls for somebody: `watch`, `soon` or `stop` (`code-urgency-KEY`).
    pub urgency: Option<String>,
    /// `confirmed`, `pending`, `permanent` or `unstated` (`code-status-KEY`).
    pub status: String,
    /// The failure type behind the code, as two hexadecimal digits.
    pub failure_type: Option<String>,
    /// The keys of the causes at which it points, the likeliest to store it first.
    pub causes: Vec<String>,
    /// Its life in the book of the car that was asked about; nothing when no scan of the book had it.
    pub life: Option<CodeLife>,
}

/// The life of a code.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct CodeLife {
    /// When it was first seen.
    pub first: SeenAt,
    /// When it was last seen.
    pub last: SeenAt,
    /// How many scans had it.
    pub times: usize,
    /// When it was last cleared.
    pub cleared: Option<SeenAt>,
    /// Each time that it came back.
    pub returns: Vec<CodeReturn>,
    /// All that became of it after it was first seen, in the order in which it happened: each clearing, each time that it
    /// was found gone, each return.
    pub turns: Vec<CodeTurn>,
    /// `present`, `cleared` or `gone` (`code-standing-KEY`).
    pub standing: String,
    /// Since when it is cleared or gone.
    pub since: Option<SeenAt>,
    /// What must be said along with it (`code-warning-KEY`).
    pub warnings: Vec<String>,
}

/// A day, and what the instrument showed on it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct SeenAt {
    /// The day.
    pub day: String,
    /// The reading, where it is known.
    pub reading: Option<Reading>,
}

/// Something that became of a code.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(tag = "is", rename_all = "kebab-case")]
pub enum CodeTurn {
    /// The codes were cleared.
    Cleared {
        /// When.
        at: SeenAt,
    },
    /// A scan did not have it any more, after the car had the time to find it again.
    Gone {
        /// When that scan was made.
        at: SeenAt,
    },
    /// It came back.
    Back(CodeReturn),
}

/// A time at which a code came back.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct CodeReturn {
    /// When it was cleared, or first found gone by itself.
    pub left: SeenAt,
    /// It had been cleared; otherwise it had gone by itself.
    pub was_cleared: bool,
    /// When it was seen again.
    pub back: SeenAt,
    /// How long and how far it had stayed away, at most.
    pub after: UsedView,
}

/// Which of its own tests a car has finished since its codes were last cleared.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ReadinessView {
    /// The engine lamp is lit.
    pub lamp: bool,
    /// How many confirmed codes the control unit counts.
    pub codes: u8,
    /// `spark` or `compression`.
    pub ignition: String,
    /// Every test that this car has.
    pub monitors: Vec<MonitorView>,
    /// All of them are finished.
    pub complete: bool,
    /// How many unfinished tests an inspection in the United States lets pass, by the year of the car's first use (66 FR
    /// 18156 and 40 CFR 85.2222, from memory); nothing where no car was asked about, or its year is not known. Other rules
    /// hold elsewhere.
    pub allowed: Option<usize>,
}

/// A test that the car runs on itself.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct MonitorView {
    /// Its key (`code-monitor-KEY`).
    pub key: String,
    /// It is finished.
    pub finished: bool,
}

/// What a control unit kept of the moment at which a code set.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct FrameView {
    /// Its number; the first is 0.
    pub number: u8,
    /// The code that it belongs to; nothing when the text does not tell.
    pub code: Option<String>,
    /// What was kept.
    pub values: Vec<ToldView>,
}

/// A value that a control unit told.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ToldView {
    /// Its key (`code-value-KEY`).
    pub key: String,
    /// The number with a point.
    pub value: String,
    /// The symbol of its unit.
    pub unit: String,
}

/// What could not be read, or not without a doubt.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct NoteView {
    /// Its key (`code-note-KEY`).
    pub key: String,
    /// What its sentence names, by the names of its places: `text`, `meant`, `code`, `codes`, `service`, `reason`,
    /// `most`.
    pub values: std::collections::BTreeMap<String, String>,
}
