//! How an item of the plan stands, and why.

use serde::{Deserialize, Serialize};
use ts_rs::TS;

use super::{IntervalView, ItemView, MeasuredView, Reading};

/// How an item stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "kebab-case")]
pub enum StateKey {
    /// Past its day or its reading.
    Overdue,
    /// Today.
    Due,
    /// Within 30 days or 1 000 km.
    Soon,
    /// Later.
    Ahead,
    /// Nobody ever recorded it.
    NoRecord,
}

/// What comes first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "kebab-case")]
pub enum FirstKey {
    /// The day.
    Time,
    /// The reading.
    Distance,
    /// What was found.
    Finding,
}

/// One item of the plan and how it stands.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct DueView {
    /// The item.
    pub item: ItemView,
    /// How it stands.
    pub state: StateKey,
    /// The day on which it is likely due, by time or by reaching the reading at this car's pace.
    pub day: Option<String>,
    /// The earliest and the latest day that it may fall on; the same where it goes by time alone.
    pub between: Option<SpanView>,
    /// The reading at which it is due, on the present instrument.
    pub reading: Option<Reading>,
    /// Which of the two comes first.
    pub first: Option<FirstKey>,
    /// Why.
    pub why: WhyView,
    /// It is a look that belongs to a round of the car, and to no visit.
    pub round: bool,
    /// It belongs in a workshop.
    pub workshop: bool,
    /// What it costs to ignore: 1 comfort to 5 the engine, 6 safety.
    pub weight: u8,
}

/// The ground on which a due line stands.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct WhyView {
    /// The interval used.
    pub interval: IntervalView,
    /// `handbook`, `owner`, `papers`, `regulation`, `published` or `common-practice`.
    pub source: String,
    /// The published source by name; empty otherwise.
    pub source_name: String,
    /// Which part of the plan holds.
    pub phase: PhaseKey,
    /// What it is counted from; nothing when there is no record.
    pub from: Option<CountedFrom>,
    /// What tightened it, as keys: `short-trips`, `towing`, `dust`, `standing`, `turbo`, `turbo-unknown`.
    pub tightened_by: Vec<String>,
    /// The item that it goes with, where that comes round sooner than this would by itself.
    pub goes_with: Option<ItemView>,
    /// The key of the kind of part or fluid that is fitted, where that brought the interval.
    pub kind: Option<String>,
    /// What was found about it since it was last done.
    pub seen: Option<SeenView>,
}

/// Which part of the plan holds for an item.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "kebab-case")]
pub enum PhaseKey {
    /// The first interval of a new car, before the one that repeats.
    First,
    /// The interval that repeats.
    Every,
    /// Once, after something else was done.
    After,
}

/// From one day to another.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct SpanView {
    /// The earliest day.
    pub early: String,
    /// The latest day.
    pub late: String,
}

/// What was found about an item, and what it does to its next time.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct SeenView {
    /// The day.
    pub day: String,
    /// The key of the finding.
    pub finding: String,
    /// What was measured.
    pub value: Option<MeasuredView>,
    /// `now`, `holds`, `extrapolated` or `none`.
    pub effect: String,
    /// The works among which it leaves the choice; none where it calls for nothing or it is clear what for.
    pub undecided: Vec<ItemView>,
}

/// What an interval is counted from.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
#[serde(tag = "from", rename_all = "kebab-case")]
pub enum CountedFrom {
    /// The day on which it was last done.
    Done {
        /// The day.
        day: String,
        /// The reading that the instrument showed; nothing when nobody wrote it down.
        reading: Option<Reading>,
        /// The visit's line.
        visit: String,
    },
    /// The day of first use.
    FirstUse {
        /// The day.
        day: String,
    },
    /// The day on which another item was done that calls for this one.
    Other {
        /// That item.
        item: ItemView,
        /// The day.
        day: String,
    },
}
