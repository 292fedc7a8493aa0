//! The Book: its lines and their versions.

use serde::{Deserialize, Serialize};
use ts_rs::TS;

use super::{
    FoundView, FuelView, IntervalView, ItemView, MeasuredValueView, MoneyView, PaperView, PartView, Reading,
    VehicleLine, WriterView,
};
use crate::{PartNoteForm, TroubleForm, VehicleForm};

/// The Book screen.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct LinesView {
    /// The vehicle.
    pub vehicle: VehicleLine,
    /// The lines, newest first.
    pub lines: Vec<BookLine>,
    /// The years in which there are lines, newest first.
    pub years: Vec<i32>,
    /// The items that occur in visits.
    pub items: Vec<ItemView>,
    /// How many entries the book holds.
    pub entries: usize,
    /// How many of them were written by a newer version.
    pub newer: usize,
    /// Who wrote in it from when to when, in the order in which they began.
    pub writers: Vec<WriterView>,
}

/// A line of the book.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct BookLine {
    /// Its subject.
    pub subject: String,
    /// The day that it names.
    pub day: String,
    /// The reading.
    pub reading: Option<Reading>,
    /// What it says.
    pub says: LineContent,
    /// The day on which it was written down.
    pub written: String,
    /// How often it has been amended.
    pub amended: usize,
    /// It was struck out, for this reason.
    pub struck: Option<String>,
}

/// What a line says.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
#[serde(tag = "kind", rename_all = "kebab-case")]
pub enum LineContent {
    /// The vehicle was put on the shelf.
    Vehicle {
        /// What was known of it.
        vehicle: VehicleForm,
    },
    /// A reading.
    Reading {
        /// `actual`, `exceeds-limits` or `not-actual`.
        status: String,
        /// The fuel taken at it.
        fuel: Option<FuelView>,
        /// Its papers.
        papers: Vec<PaperView>,
    },
    /// The instrument was replaced.
    Instrument {
        /// What the old one showed last.
        old: Reading,
        /// What the new one showed first.
        new: Reading,
    },
    /// A visit.
    Visit {
        /// By whom; empty when the owner did it.
        workshop: String,
        /// What was done.
        items: Vec<ItemView>,
        /// What was fitted.
        parts: Vec<PartView>,
        /// What it cost.
        cost: Option<MoneyView>,
        /// The note.
        note: String,
        /// Its papers.
        papers: Vec<PaperView>,
        /// What was found.
        found: Vec<FoundView>,
    },
    /// Something was bought, to be fitted later.
    Bought {
        /// Where; may be empty.
        shop: String,
        /// What.
        parts: Vec<PartView>,
        /// What it cost.
        cost: Option<MoneyView>,
        /// The note.
        note: String,
        /// Its papers.
        papers: Vec<PaperView>,
    },
    /// A part was noted.
    PartNote {
        /// What is noted.
        note: PartNoteForm,
    },
    /// Something was wrong with the car.
    Trouble {
        /// All that is known of it.
        trouble: Box<TroubleForm>,
    },
    /// A paper that belongs to no line.
    Paper {
        /// The paper.
        paper: PaperView,
    },
    /// The plan was changed.
    Plan {
        /// The item.
        item: ItemView,
        /// `handbook`, `off`, `catalogue`, `day` or `any-day`.
        to: String,
        /// The day chosen for the next time.
        day: Option<String>,
        /// The interval that repeats.
        then: Option<IntervalView>,
        /// The first one, where it differs.
        first: Option<IntervalView>,
    },
    /// Values were read off the engine's computer or a meter.
    Measured {
        /// What was read.
        values: Vec<MeasuredValueView>,
        /// They were pasted from another program and not typed.
        pasted: bool,
    },
    /// The book was handed over.
    Handover {
        /// To the next owner; may be empty.
        words: String,
        /// The papers went with the book.
        papers: bool,
        /// The fingerprint of the key that handed it over.
        by: String,
    },
    /// Written by a newer version.
    Newer,
}

/// One line with all its versions, oldest first.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct LineView {
    /// The line as it stands.
    pub line: BookLine,
    /// Every version, the first one included.
    pub versions: Vec<VersionView>,
}

/// A version of a line.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct VersionView {
    /// The day on which it was written.
    pub written: String,
    /// Why, in the owner's words.
    pub why: String,
    /// The day that it names.
    pub day: String,
    /// The reading.
    pub reading: Option<Reading>,
    /// What it says.
    pub says: LineContent,
    /// The SHA-256 of its entry.
    pub hash: String,
}
