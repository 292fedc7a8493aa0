//! The work itself: guides to the jobs that an owner does, for one car.

use serde::{Deserialize, Serialize};
use ts_rs::TS;

use super::{ItemView, PartView, VehicleLine};

/// The guides that a car has.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct GuidesView {
    /// The vehicle.
    pub vehicle: VehicleLine,
    /// The guides, in the order of the tables.
    pub guides: Vec<GuideLine>,
}

/// A guide in a list.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct GuideLine {
    /// Its key (`guide-KEY`).
    pub key: String,
    /// How long it takes a practised amateur, in minutes.
    pub minutes: u16,
    /// The items that a visit writes as done.
    pub does: Vec<ItemView>,
    /// The items about which it may find something.
    pub finds: Vec<ItemView>,
}

/// A guide for one car. Ids in the words: `guide-KEY-what`, and of its parts `guide-KEY-not-X`,
/// `guide-KEY-step-X`, `guide-KEY-look-X`, `guide-KEY-after-X`.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct GuideView {
    /// The vehicle.
    pub vehicle: VehicleLine,
    /// Its key, its time, and which items it writes.
    pub guide: GuideLine,
    /// What was fitted the last time for the items that it does.
    pub parts: Vec<PartView>,
    /// The keys of what has to be at hand (`tool-KEY`).
    pub tools: Vec<String>,
    /// The keys of what is used up (`supply-KEY`).
    pub supplies: Vec<String>,
    /// The keys of what can hurt someone (`hazard-KEY`).
    pub hazards: Vec<String>,
    /// When to leave it to a workshop.
    pub not: Vec<String>,
    /// What is said before the first step, what kills first.
    pub cautions: Vec<CautionView>,
    /// The steps that this car has.
    pub steps: Vec<StepView>,
    /// Every value that the steps ask for, each once.
    pub values: Vec<ValueView>,
    /// What to look at before closing.
    pub look: Vec<String>,
    /// What may feel odd afterwards.
    pub after: Vec<String>,
    /// The keys of what becomes of what is left over (`disposal-KEY`).
    pub disposal: Vec<String>,
    /// The keys of the guides of this car that belong after it.
    pub then: Vec<String>,
}

/// Something said before the first step.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct CautionView {
    /// Its key (`caution-KEY`, and in a word or two `caution-KEY-name`).
    pub key: String,
    /// It must be acknowledged by itself.
    pub one_by_one: bool,
    /// Who publishes it; at least one.
    pub sources: Vec<OriginView>,
}

/// Where a caution or a typical value comes from.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct OriginView {
    /// `regulation`, `published`, `from-memory` or `common-practice`.
    pub source: String,
    /// Which; empty where it is common practice.
    pub name: String,
}

/// A step for one car.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct StepView {
    /// Its key within the guide, by which progress is kept.
    pub key: String,
    /// The keys of the values to be shown with it.
    pub values: Vec<String>,
}

/// A value that a guide asks for.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ValueView {
    /// Its key (`value-KEY`), by which a vehicle's form holds the car's own.
    pub key: String,
    /// The symbol of the unit in which it is usually given; nothing for what is told in words.
    pub unit: Option<String>,
    /// What is known of it.
    pub known: KnownView,
}

/// What is known of a value for one car.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(tag = "is", rename_all = "kebab-case")]
pub enum KnownView {
    /// The car's own, as the owner typed it.
    Own {
        /// The text.
        text: String,
        /// The symbol of the unit that is to stand behind it: nothing where he typed one himself, or where it has none.
        unit: Option<String>,
    },
    /// Only what is typical; it must be marked so, with its source.
    Typical {
        /// One a case; at least one.
        cases: Vec<TypicalView>,
    },
    /// Nothing: see the handbook.
    Handbook,
}

/// A typical value for one case.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct TypicalView {
    /// When it holds (`typical-KEY`).
    pub case: String,
    /// Between what it lies.
    pub bounds: BoundsView,
    /// The symbol of the unit in which it was printed.
    pub unit: String,
    /// The same in whole newton metres, where it was printed in pound-force feet.
    pub newton_metres: Option<BoundsView>,
    /// Where it comes from.
    pub source: OriginView,
}

/// Between what a value lies: no less than `low` without `high`, just `low` where both are the same.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct BoundsView {
    /// The low end, with a point.
    pub low: String,
    /// The high end.
    pub high: Option<String>,
}
