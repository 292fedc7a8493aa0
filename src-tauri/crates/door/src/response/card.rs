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
    /// The edge about which the printer has to turn the paper: `long-edge` or `short-edge`.
    pub turn: String,
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

/// What a card says, what follows from that, and what it gives cause to ask.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct CardReadView {
    /// The day on which it was signed.
    pub signed: String,
    /// The fingerprint of the key.
    pub fingerprint: String,
    /// The key belongs to this device.
    pub own_key: bool,
    /// What reading it has shown: `unchanged` since it was signed, `own-key` or `other-key`, `work-not-proved`.
    pub verdicts: Vec<String>,
    /// What the household called the vehicle.
    pub name: String,
    /// Make, model and year.
    pub make_model: String,
    /// The identification number; nothing when hidden.
    pub vin: Option<String>,
    /// The key of the engine.
    pub engine: String,
    /// The day of first use.
    pub first_use: Option<String>,
    /// The latest reading.
    pub reading: DatedReading,
    /// The visits, oldest first.
    pub visits: Vec<CardVisit>,
    /// Visits in the book; more than the list holds when old ones were left out.
    #[ts(type = "number")]
    pub in_book: u64,
    /// What comes next.
    pub next: Vec<CardNext>,
    /// When instruments were replaced.
    pub instruments: Vec<CardInstrument>,
    /// The first 16 bytes of the head of the book, in hexadecimal.
    pub head: Option<String>,
    /// What to ask the seller, the weightiest first.
    pub questions: Vec<CardQuestion>,
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

/// What comes next, as a card says it.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct CardNext {
    /// What will be due.
    pub item: ItemView,
    /// The day by which it is due.
    pub day: Option<String>,
    /// The reading by which it is due.
    pub reading: Option<Reading>,
}

/// A replaced instrument on a card.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct CardInstrument {
    /// The day.
    pub day: String,
    /// What the old one showed last.
    pub old: Reading,
    /// What the new one showed first.
    pub new: Reading,
}

/// A question that a card gives cause to ask: the sentence `viewer-ask-KEY`, and what fills its places.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct CardQuestion {
    /// The key of its sentence.
    pub key: String,
    /// How many.
    pub count: Option<u32>,
    /// Of how many.
    pub of: Option<u32>,
    /// The day that it speaks of, or the first of two.
    pub day: Option<String>,
    /// The reading of that day.
    pub reading: Option<Reading>,
    /// The second day.
    pub then: Option<String>,
    /// The reading of the second day, or of the new instrument.
    pub shown: Option<Reading>,
    /// The items.
    pub items: Vec<ItemView>,
}
