//! Single values as they cross the door: readings, money, items, parts, papers.

use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// An odometer reading in whole units of its instrument.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Reading {
    /// Whole units.
    #[ts(type = "number")]
    pub count: i64,
    /// `km` or `mi`.
    pub unit: UnitKey,
}

/// The unit of an instrument.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
pub enum UnitKey {
    /// Kilometres.
    #[serde(rename = "km")]
    Km,
    /// International miles.
    #[serde(rename = "mi")]
    Mi,
}

/// A reading and its day.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct DatedReading {
    /// The day.
    pub day: String,
    /// The reading.
    pub reading: Reading,
}

/// Money as a number with its decimals, and its currency.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct MoneyView {
    /// The number with a point: `12.50`.
    pub number: String,
    /// Three letters of ISO 4217.
    pub currency: String,
}

/// An item: one of the catalogue, or one of the owner's own.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(tag = "of", rename_all = "kebab-case")]
pub enum ItemView {
    /// An item of the catalogue.
    Catalogue {
        /// Its stable number.
        number: u32,
        /// Its key.
        key: String,
    },
    /// An item of the owner's own.
    Own {
        /// The owner's words.
        name: String,
    },
}

/// An interval as printed.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct IntervalView {
    /// The distance in its printed unit.
    pub distance: Option<Reading>,
    /// Months, with `.5` for a half.
    pub months: Option<String>,
}

/// A measured value with its unit.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct MeasuredView {
    /// The key of what is measured: `tread`, `pad`, `disc`, `water`, `boiling-point`, `charge`,
    /// `freezing-point`.
    pub what: String,
    /// The value with a point, up to three decimals: `3.1`; empty where only the limit is told.
    pub value: String,
    /// The value at which it is time.
    pub limit: String,
    /// The symbol of the unit.
    pub unit: String,
}

/// What was found about an item.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct FoundView {
    /// The item.
    pub item: ItemView,
    /// The key of the finding.
    pub finding: String,
    /// What was measured.
    pub value: Option<MeasuredView>,
}

/// A part as written.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct PartView {
    /// What it is.
    pub name: String,
    /// Who made it.
    pub maker: String,
    /// The maker's number, as written.
    pub number: String,
    /// How much or how many: `4`, `4.3`.
    pub quantity: String,
    /// `piece`, `litre`, `set`, `kilogram` or `metre`.
    pub measure: String,
    /// What all of it cost.
    pub price: Option<MoneyView>,
    /// The item of the visit that it served, where someone said so.
    pub served: Option<ItemView>,
    /// The key of its kind, where someone said which; empty otherwise.
    pub kind: String,
}

/// Fuel as written.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct FuelView {
    /// `petrol`, `diesel`, `gas` or `electric`.
    pub kind: String,
    /// How much, in its unit, with three decimals.
    pub amount: String,
    /// `litre`, `us-gallon`, `imperial-gallon` or `kilowatt-hour`.
    pub unit: String,
    /// The price of one unit, where it was typed.
    pub price: Option<MoneyView>,
    /// The price of one unit as it follows from amount and total, where it was not typed.
    pub price_follows: Option<MoneyView>,
    /// What it cost.
    pub total: Option<MoneyView>,
    /// `full`, `part` or `missed`.
    pub fill: String,
}

/// A paper.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct PaperView {
    /// Its line.
    pub subject: String,
    /// The SHA-256 of its photo, by which `photo://HASH/full` and `photo://HASH/thumb` give the picture.
    pub hash: String,
    /// Width of the photo in pixels.
    pub width: u32,
    /// Height of the photo in pixels.
    pub height: u32,
    /// The day on which it was filed.
    pub filed: String,
    /// The SHA-256 of the photo before it was straightened; nothing where it is as it was taken.
    pub whole: Option<String>,
    /// Which page of its document it is, from 1; nothing where it is a photo.
    pub page: Option<u32>,
}
