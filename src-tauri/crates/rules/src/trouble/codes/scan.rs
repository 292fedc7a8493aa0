//! What was read from a scan tool's text.

use std::collections::BTreeSet;

use super::{Code, FreezeFrame, Readiness, Value};

/// How sure a control unit is of a fault.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Status {
    /// Found often enough to be stored and to light the lamp (service 03).
    Confirmed,
    /// Found once, not yet again (service 07).
    Pending,
    /// Stored where no tool can clear it; it goes when the car has tested itself (service 0A).
    Permanent,
    /// The text does not say.
    Unstated,
}

/// A code that was reported.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Reported {
    /// The code.
    pub code: Code,
    /// How sure the control unit is.
    pub status: Status,
    /// The failure type that some tools print behind the code, as in P0171-85: a third byte of the same
    /// fault.
    pub failure_type: Option<u8>,
}

/// Everything that was read.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Scan {
    /// The codes in the order in which they stand, each once a status.
    pub codes: Vec<Reported>,
    /// The lists that the car answered with, even an empty one. What is not in here was not asked, or not
    /// pasted.
    pub answered: BTreeSet<Status>,
    /// The readiness of each control unit that told it, in the order in which they stand.
    pub readiness: Vec<Readiness>,
    /// What was frozen when a code set.
    pub freeze_frames: Vec<FreezeFrame>,
    /// Values of the moment (service 01).
    pub live: Vec<Value>,
    /// What could not be read, or not without a doubt.
    pub notes: Vec<Note>,
}

/// What could not be read, or not without a doubt.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Note {
    /// There is nothing of a scan tool in the text.
    NothingFound,
    /// It looks like a code, and there is none like it; up to 40 characters.
    NotACode(String),
    /// It would be a code with digits for the letters that look like them, or without the gaps in it.
    Misread {
        /// As it stands there; up to 40 characters.
        text: String,
        /// The code that is probably meant.
        meant: Code,
    },
    /// A word such as 'pending' stands behind several codes, and may or may not be meant for this one too.
    StatusUnclear(Code),
    /// Without the lines around it an answer can be read in two ways: as was done, and with the count byte
    /// that CAN puts first and filling at the end, which gives these codes.
    MaybeCounted(Vec<Code>),
    /// An answer ends too early; what is whole was read.
    CutShort(String),
    /// A part of an answer in several parts is not there, or not in its place; what came before it was read.
    PartMissing,
    /// Several control units answered at once and nothing says which part is whose; the first parts were
    /// read.
    PartsMixed,
    /// The tool says that the car gave no answer. An older car also says so when it has nothing to tell.
    NoData,
    /// The tool says that the connection failed, in these words; up to 40 characters.
    LinkFailed(String),
    /// A control unit refused what it was asked.
    Refused {
        /// The service it was asked for.
        service: u8,
        /// Its reason, a number of ISO 14229.
        reason: u8,
    },
    /// The control unit says that it has cleared its codes.
    Cleared,
    /// Bytes that mean nothing here; up to 40 characters.
    Unread(String),
    /// The text was too long, and its end was not read.
    TooLong,
}

impl Status {
    /// Every status.
    pub const ALL: [Status; 4] = [Status::Confirmed, Status::Pending, Status::Permanent, Status::Unstated];

    /// Its name in the words, as in `code-status-pending`.
    pub const fn key(self) -> &'static str {
        match self {
            Status::Confirmed => "confirmed",
            Status::Pending => "pending",
            Status::Permanent => "permanent",
            Status::Unstated => "unstated",
        }
    }

    /// The status of the codes for which this service asks (SAE J1979): 03, 07 and 0A.
    pub const fn of_service(service: u8) -> Option<Status> {
        match service {
            0x03 => Some(Status::Confirmed),
            0x07 => Some(Status::Pending),
            0x0A => Some(Status::Permanent),
            _ => None,
        }
    }
}

impl Note {
    /// Its name in the words, as in `code-note-cut-short`.
    pub const fn key(&self) -> &'static str {
        match self {
            Note::NothingFound => "nothing-found",
            Note::NotACode(_) => "not-a-code",
            Note::Misread { .. } => "misread",
            Note::StatusUnclear(_) => "status-unclear",
            Note::MaybeCounted(_) => "maybe-counted",
            Note::CutShort(_) => "cut-short",
            Note::PartMissing => "part-missing",
            Note::PartsMixed => "parts-mixed",
            Note::NoData => "no-data",
            Note::LinkFailed(_) => "link-failed",
            Note::Refused { .. } => "refused",
            Note::Cleared => "cleared",
            Note::Unread(_) => "unread",
            Note::TooLong => "too-long",
        }
    }
}

impl Scan {
    /// The codes of one status, in the order in which they stand.
    pub fn of(&self, status: Status) -> impl Iterator<Item = Code> + '_ {
        self.codes.iter().filter(move |reported| reported.status == status).map(|reported| reported.code)
    }

    /// Adds a code, once a status.
    pub(super) fn report(&mut self, reported: Reported) {
        let known = self
            .codes
            .iter_mut()
            .find(|known| (known.code, known.status) == (reported.code, reported.status));
        match known {
            Some(known) => known.failure_type = known.failure_type.or(reported.failure_type),
            None => self.codes.push(reported),
        }
    }

    /// Adds a note, once.
    pub(super) fn note(&mut self, note: Note) {
        if !self.notes.contains(&note) {
            self.notes.push(note);
        }
    }

    /// Drops what a code with its status makes superfluous: the same code without one, and the doubt about
    /// it.
    pub(super) fn settle(&mut self) {
        let stated = self.codes.iter().filter(|reported| reported.status != Status::Unstated);
        let stated: BTreeSet<Code> = stated.map(|reported| reported.code).collect();
        self.codes.retain(|reported| reported.status != Status::Unstated || !stated.contains(&reported.code));
        self.notes.retain(|note| !matches!(note, Note::StatusUnclear(code) if stated.contains(code)));
        if *self == Scan::default() {
            self.notes.push(Note::NothingFound);
        }
    }
}

/// The start of a text, for a note.
pub(super) fn short(text: &str) -> String {
    text.trim().chars().take(40).collect()
}

/// Bytes as they are written: `43 01 35`.
pub(super) fn spelled(bytes: &[u8]) -> String {
    let spelled: Vec<_> = bytes.iter().take(13).map(|byte| format!("{byte:02X}")).collect();
    spelled.join(" ")
}
