//! The card, as it would print and as it was read.

use serde::{Deserialize, Serialize};
use ts_rs::TS;

use super::{DatedReading, ItemView, Reading, VehicleLine};

/// The card as it would print.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct CardView {
    /// The vehicle.
    pub vehicle: VehicleLine,
    /// The pages, each an SVG picture.
    pub pages: Vec<String>,
    /// Visits on the square.
    pub shown: usize,
    /// Older visits left out of the square.
    pub left_out: usize,
    /// The address in the square; nothing when it holds plain text.
    pub viewer_address: Option<String>,
    /// The text in the square.
    pub text: String,
    /// The fingerprint of the key that signed it.
    pub fingerprint: String,
}

/// What a card says.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct CardReadView {
    /// The day on which it was signed.
    pub signed: String,
    /// The fingerprint of the key.
    pub fingerprint: String,
    /// The key belongs to this device.
    pub own_key: bool,
    /// What the household called the vehicle.
    pub name: String,
    /// Make, model and year.
    pub make_model: String,
    /// The identification number; nothing when hidden.
    pub vin: Option<String>,
    /// The key of the engine.
    pub engine: String,
    /// The latest reading.
    pub reading: DatedReading,
    /// The visits, oldest first.
    pub visits: Vec<CardVisit>,
    /// Visits in the book; more than the list holds when old ones were left out.
    #[ts(type = "number")]
    pub in_book: u64,
}

/// A visit on a card.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct CardVisit {
    /// The day.
    pub day: String,
    /// The reading.
    pub reading: Reading,
    /// What was done; an unknown number has the key `unknown`.
    pub items: Vec<ItemView>,
    /// `owner`, `workshop`, `receipt`, `photo`, `late`, `amended`.
    pub marks: Vec<String>,
}
