//! Values read off the engine's computer or a meter.

use serde::{Deserialize, Serialize};
use ts_rs::TS;

use super::VehicleLine;
use crate::MeasuredValueForm;

/// Every value that was measured, by what was measured.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct MeasurementsView {
    /// The vehicle.
    pub vehicle: VehicleLine,
    /// Today.
    pub today: String,
    /// Everything that can be measured, in a fixed order; those without a value too, so that a form can ask for them.
    pub parameters: Vec<ParameterView>,
}

/// One thing that can be measured, with its values.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct ParameterView {
    /// Its key, of `parameter-KEY`: `short-trim-1`, `long-trim-1`, `short-trim-2`, `long-trim-2`, `coolant`,
    /// `idle-air` or `rest-voltage`.
    pub key: String,
    /// The symbol of its unit.
    pub unit: String,
    /// Between what it usually lies.
    pub limits: LimitsView,
    /// The values, oldest first.
    pub points: Vec<MeasuredPoint>,
    /// Every jump to another level, oldest first.
    pub jumps: Vec<JumpView>,
    /// A drift since the last jump, where it matters and cannot be chance.
    pub drift: Option<DriftView>,
    /// There were values enough to tell a jump.
    pub learnt: bool,
}

/// Between what a value usually lies, as text with up to three decimals.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct LimitsView {
    /// Below it something may be wrong.
    pub low: Option<String>,
    /// Above it something may be wrong.
    pub high: Option<String>,
    /// Where the limits come from: `common practice`, or a source by name.
    pub source: String,
}

/// A value on a day.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct MeasuredPoint {
    /// Its line.
    pub subject: String,
    /// The day.
    pub day: String,
    /// As typed, with a point.
    pub value: String,
    /// In thousandths of the unit, for plots.
    #[ts(type = "number")]
    pub milli: i64,
    /// `implausible`, `low`, `high` or `usual`.
    pub judgement: String,
}

/// A measured value in a line of the book.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct MeasuredValueView {
    /// What was measured, of `parameter-KEY`.
    pub parameter: String,
    /// As typed, with a point.
    pub value: String,
    /// The symbol of its unit.
    pub unit: String,
    /// `implausible`, `low`, `high` or `usual`.
    pub judgement: String,
}

/// The values have jumped.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct JumpView {
    /// The day of the first value at the new level.
    pub since: String,
    /// The day of the value at which it was plain.
    pub raised: String,
    /// How far, in the unit: `-4.25`.
    pub size: String,
}

/// The values go up or down, by between so much a year.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct DriftView {
    /// The lower end.
    pub low: String,
    /// The upper end.
    pub high: String,
}

/// What pasted lines say.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct MeasuredReadView {
    /// The values, as the form takes them.
    pub values: Vec<MeasuredValueForm>,
    /// The lines of which nothing is kept.
    pub unread: Vec<String>,
}
