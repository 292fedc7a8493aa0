//! What a car costs. Money of different currencies is never added up: each has bills of its own.

use serde::{Deserialize, Serialize};
use ts_rs::TS;

use super::{MoneyView, Reading, VehicleLine};

/// What a car costs.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct CostsView {
    /// The vehicle.
    pub vehicle: VehicleLine,
    /// Today.
    pub today: String,
    /// The classes in the order in which they are stacked: `fuel`, `parts`, `work`, `duties`.
    pub classes: Vec<String>,
    /// The currencies in which there are costs, the one used last first.
    pub currencies: Vec<String>,
    /// A bill for each calendar year and currency, oldest first.
    pub years: Vec<BillView>,
    /// A bill for each calendar month and currency, oldest first.
    pub months: Vec<BillView>,
    /// What the distance cost: over the last year, and over everything that is known.
    pub distance: Vec<PerDistanceView>,
    /// How many fills have no price, so that they are missing from every sum.
    pub unpriced_fills: usize,
    /// How many visits with parts or a workshop have no price.
    pub unpriced_visits: usize,
}

/// What a span of days cost in one currency.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct BillView {
    /// The year, `2026`, or the month, `2026-05`.
    pub period: String,
    /// The currency.
    pub currency: String,
    /// How many decimals the currency has, by which its minor units are divided.
    pub decimals: u32,
    /// In the order of the classes.
    pub parts: Vec<BillPartView>,
    /// All together.
    pub total: MoneyView,
    /// The span is over, so that nothing is added any more unless it is written down late.
    pub over: bool,
}

/// What went on one class.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct BillPartView {
    /// `fuel`, `parts`, `work` or `duties`.
    pub class: String,
    /// How much.
    pub money: MoneyView,
    /// The same in minor units, for plots; negative for money that came back.
    #[ts(type = "number")]
    pub minor: i64,
}

/// What one kilometre or mile cost.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct PerDistanceView {
    /// `last-year` or `all`.
    pub period: String,
    /// The first day that counts.
    pub from: String,
    /// The day after the last one that counts: both have a known reading, or lie between two.
    pub to: String,
    /// How far the car went.
    pub distance: Reading,
    /// The currency.
    pub currency: String,
    /// What one unit of the distance cost in all: `0.213`.
    pub total: String,
    /// The same of each class, in the order of the classes.
    pub parts: Vec<PerDistancePartView>,
}

/// What went on one class for each kilometre or mile.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct PerDistancePartView {
    /// `fuel`, `parts`, `work` or `duties`.
    pub class: String,
    /// `0.081`.
    pub number: String,
}
