//! The Pump.

use serde::{Deserialize, Serialize};
use ts_rs::TS;

use super::{FuelView, Reading, VehicleLine};

/// The Pump screen.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct PumpView {
    /// The vehicle.
    pub vehicle: VehicleLine,
    /// Today.
    pub today: String,
    /// The leading digits that will not have changed since the last reading.
    pub leading: String,
    /// How many digits a whole reading is likely to have.
    pub digits: usize,
    /// The last readings, newest first, at most five.
    pub last: Vec<ReadingLine>,
    /// The currency and the unit of volume used last.
    pub currency: String,
    /// `litre`, `us-gallon` or `imperial-gallon`.
    pub volume_unit: String,
}

/// A reading in a list.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct ReadingLine {
    /// Its line.
    pub subject: String,
    /// The day.
    pub day: String,
    /// The reading.
    pub reading: Reading,
    /// `actual`, `exceeds-limits` or `not-actual`.
    pub status: String,
    /// The fuel taken at it.
    pub fuel: Option<FuelView>,
}
