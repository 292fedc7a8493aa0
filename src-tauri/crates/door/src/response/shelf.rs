//! What stands on the shelf.

use serde::{Deserialize, Serialize};
use ts_rs::TS;

use super::{DatedReading, MeasuredView};

/// The vehicles and the settings.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct ShelfView {
    /// Today, as the door sees it.
    pub today: String,
    /// All vehicles, by name.
    pub vehicles: Vec<VehicleLine>,
    /// The page on which a scanned card opens.
    pub viewer_address: Option<String>,
    /// The fingerprint of this device's key.
    pub fingerprint: String,
    /// The engines that the sheet offers, as keys.
    pub engines: Vec<String>,
    /// The longest name of an item of the owner's own, in characters.
    pub longest_own_name: usize,
    /// The keys of what ignoring an item can cost, the least first.
    pub stakes: Vec<String>,
    /// All items of the catalogue.
    pub catalogue: Vec<CatalogueLine>,
}

/// A vehicle in a list.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct VehicleLine {
    /// Its book.
    pub book: String,
    /// What the household calls it.
    pub name: String,
    /// Make, model and year.
    pub make_model: String,
    /// The key of the engine.
    pub engine: String,
    /// `km` or `mi`.
    pub unit: String,
    /// The newest reading.
    pub reading: Option<DatedReading>,
    /// The day on which this device handed its book over, since when it is read-only here; nothing where it can be
    /// written in.
    pub handed_over: Option<String>,
}

/// An item of the catalogue in a list.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct CatalogueLine {
    /// Its stable number.
    pub number: u32,
    /// Its key; the name stands in the Fluent files under `item-KEY`.
    pub key: String,
    /// The kinds of part or fluid that have an interval of their own, as keys.
    pub kinds: Vec<String>,
    /// The findings that make it due, as keys.
    pub findings: Vec<String>,
    /// What is measured on it, with its limit.
    pub measured: Option<MeasuredView>,
}
