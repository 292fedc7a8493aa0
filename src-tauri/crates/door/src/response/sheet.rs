//! The car's sheet.

use serde::{Deserialize, Serialize};
use ts_rs::TS;

use super::{IntervalView, ItemView, Reading, ValueView, VehicleLine};
use crate::{DrivenForm, VehicleForm};

/// The car's sheet.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct SheetView {
    /// The vehicle.
    pub vehicle: VehicleLine,
    /// All that is known of it, as a form can take it back.
    pub form: VehicleForm,
    /// What its identification number says; nothing when there is none.
    pub vin: Option<VinView>,
    /// How it is driven.
    pub driven: DrivenForm,
    /// What the car has and lacks, as far as the plan depends on it.
    pub fitted: Vec<FittedLine>,
    /// The plan.
    pub plan: Vec<PlanLine>,
    /// What the catalogue has that this car does not need.
    pub missing: Vec<MissingLine>,
    /// The instruments that were replaced.
    pub instruments: Vec<InstrumentLine>,
    /// The numbers of this car that its guides ask for.
    pub values: Vec<ValueView>,
}

/// An item of the plan.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct PlanLine {
    /// The item.
    pub item: ItemView,
    /// The interval that holds now; nothing while the owner has not given one, and for what follows another.
    pub interval: Option<IntervalView>,
    /// The first one, where it differs.
    pub first: Option<IntervalView>,
    /// What it follows, where it is done once after something else.
    pub after: Vec<ItemView>,
    /// What tightened it, as keys.
    pub tightened_by: Vec<String>,
    /// The item that it goes with, where that comes round sooner than this would by itself.
    pub goes_with: Option<ItemView>,
    /// The day that the owner chose for its next time.
    pub pinned: Option<String>,
    /// Where it comes from.
    pub source: String,
    /// The published source by name; empty otherwise.
    pub source_name: String,
    /// The owner switched it off.
    pub off: bool,
    /// An earlier owner had switched it off, and nobody has settled it since: it counts again.
    pub left_off: Option<LeftOffView>,
    /// What ignoring it costs, as a key: `comfort`, `economy`, `repair`, `breakdown`, `engine` or `safety`.
    pub stakes: String,
}

/// Who had switched an item off, before the book was handed over.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct LeftOffView {
    /// The day on which he did.
    pub day: String,
    /// The fingerprint of the key of his device.
    pub by: String,
    /// The day of the handover.
    pub handed_over: String,
}

/// An item of the catalogue that this car does not need.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct MissingLine {
    /// The item.
    pub item: ItemView,
    /// How it stands.
    pub state: MissingKey,
    /// The keys of what the car lacks; empty where engines of its kind have no such thing.
    pub lacks: Vec<String>,
}

/// How an item stands that a car does not need.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "kebab-case")]
pub enum MissingKey {
    /// The car has no such thing.
    NotForThisCar,
}

/// Something that cars have or lack.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct FittedLine {
    /// Its key.
    pub key: String,
    /// What the owner said; nothing when he did not.
    pub has: Option<bool>,
}

/// A replaced instrument.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct InstrumentLine {
    /// The day.
    pub day: String,
    /// What the old one showed last.
    pub old: Reading,
    /// What the new one showed first.
    pub new: Reading,
}

/// What a VIN says.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct VinView {
    /// In capitals.
    pub vin: String,
    /// `right` or `wrong`.
    pub check_digit: String,
    /// The digit that would be right, where it is wrong.
    pub expected: Option<String>,
}
