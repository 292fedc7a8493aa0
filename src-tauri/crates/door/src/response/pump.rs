//! The Pump.

use serde::{Deserialize, Serialize};
use ts_rs::TS;

use super::{AlarmView, FuelView, Reading, UseView, VehicleLine};

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
    /// What this car can take, what it took last first; never empty.
    pub fuels: Vec<FuelOfferView>,
    /// The last spans from full to full, newest first, at most three of each kind.
    pub used: Vec<LastUseView>,
    /// The line of the reading that was written down last, as long as it was written today: striking it out takes it
    /// back.
    pub undo: Option<String>,
    /// Consumption that has risen and not come back.
    pub watch: Option<AlarmView>,
}

/// One kind that the car can take, and what the form starts with for it: what was used last for this kind.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct FuelOfferView {
    /// `petrol`, `diesel`, `gas` or `electric`.
    pub kind: String,
    /// `litre`, `us-gallon`, `imperial-gallon` or `kilowatt-hour`.
    pub unit: String,
    /// The units that it can be counted in.
    pub units: Vec<String>,
    /// Three letters of ISO 4217; empty as long as nothing with a price was written down.
    pub currency: String,
    /// The price of one unit at the last fill, as it was typed or as it follows; empty when it is not known.
    pub price: String,
    /// How much was taken the last times, newest first, at most five, in the unit of each.
    pub amounts: Vec<AmountTakenView>,
}

/// So much of something.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct AmountTakenView {
    /// The number, with three decimals: `41.300`.
    pub number: String,
    /// `litre`, `us-gallon`, `imperial-gallon` or `kilowatt-hour`.
    pub unit: String,
}

/// What was used from one full tank to the next.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct LastUseView {
    /// Of what.
    pub kind: String,
    /// The day of the full tank with which it ends.
    pub to: String,
    /// How much.
    pub used: UseView,
    /// The key of the unit of consumption.
    pub unit: String,
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
