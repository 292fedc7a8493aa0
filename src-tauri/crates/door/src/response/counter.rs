//! The Counter, and the parts that were fitted.

use serde::{Deserialize, Serialize};
use ts_rs::TS;

use super::{GetView, ItemView, MoneyView, PaperView, PartView, Reading, VehicleLine};
use crate::NumberForm;

/// The Counter screen.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct CounterView {
    /// The vehicle.
    pub vehicle: VehicleLine,
    /// What the next visit needs.
    pub get: Vec<GetView>,
    /// What waits at home, what was bought last first.
    pub stock: Vec<StockView>,
    /// The papers that belong to no line yet, newest first.
    pub tray: Vec<PaperView>,
    /// The lines to which a paper may be tied, newest first, at most 20.
    pub lines: Vec<TieLine>,
    /// Photos can be read on this device.
    pub reads: bool,
}

/// A line to which a paper can belong.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct TieLine {
    /// Its line.
    pub subject: String,
    /// `visit`, `fill` or `bought`.
    pub kind: String,
    /// The day.
    pub day: String,
    /// What was done; empty where it is no visit.
    pub items: Vec<ItemView>,
    /// The workshop or the shop; empty when nobody said, or the owner did it.
    pub place: String,
    /// What it cost.
    pub cost: Option<MoneyView>,
}

/// A part or a fluid at home.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct StockView {
    /// The line of the last purchase.
    pub line: String,
    /// As it was bought last, with how much is left of it.
    pub part: PartView,
    /// When.
    pub day: String,
    /// Where; may be empty.
    pub shop: String,
    /// Other numbers for the same part.
    pub same: Vec<NumberForm>,
    /// What warns of it.
    pub warning: Option<WarningView>,
    /// What else was noted of it last; may be empty.
    pub note: String,
}

/// Why a part should not be bought again.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct WarningView {
    /// `wrong` or `superseded`.
    pub mark: String,
    /// The number to ask for in its place; may be empty.
    pub instead: String,
}

/// A number that should not be bought again.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct WarnedView {
    /// The number, as it was written.
    pub number: String,
    /// Why.
    pub warning: WarningView,
}

/// The parts of a vehicle.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct PartsView {
    /// The vehicle.
    pub vehicle: VehicleLine,
    /// The parts, the one fitted last first.
    pub parts: Vec<PartLine>,
}

/// A part over all the times it was fitted.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct PartLine {
    /// What it is, as written last; may be empty.
    pub name: String,
    /// Who made it, as written last; may be empty.
    pub maker: String,
    /// Every way in which its number was written, the newest first; empty when it has none.
    pub numbers: Vec<String>,
    /// Other numbers for the same part.
    pub same: Vec<NumberForm>,
    /// What warns of it.
    pub warning: Option<WarningView>,
    /// What else was noted of it last; may be empty.
    pub note: String,
    /// The key of its kind, where someone said which; empty otherwise.
    pub kind: String,
    /// The items that it served.
    pub items: Vec<ItemView>,
    /// How much or how many the last time: `4`, `4.3`.
    pub quantity: String,
    /// `piece`, `litre`, `set`, `kilogram` or `metre`.
    pub measure: String,
    /// What was paid for it the last time that a price was written down, in a shop or at a visit.
    pub paid: Option<PaidView>,
    /// On how many days it was fitted.
    pub times: usize,
    /// The last of these days.
    pub day: String,
    /// Where it was bought or fitted on that day, by the visit's workshop; empty when the owner did it.
    pub workshop: String,
    /// How long the last one lasted: what was in before this one, or this one where another took its place;
    /// nothing when the book does not tell.
    pub lasted: Option<UsedView>,
    /// How long it has been in, the distance as estimated for today; nothing when it is in no more, or when
    /// nobody said which item it served.
    pub present: Option<UsedView>,
}

/// A price that was paid.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct PaidView {
    /// What all of it cost.
    pub price: MoneyView,
    /// For how much or how many.
    pub quantity: String,
    /// `piece`, `litre`, `set`, `kilogram` or `metre`.
    pub measure: String,
    /// When.
    pub day: String,
    /// Where: the shop, or the visit's workshop; empty when the owner did it and nobody said where it was bought.
    pub workshop: String,
}

/// How long something was in the car.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct UsedView {
    /// Whole days.
    pub days: u32,
    /// How far the car went in them, in the unit of its instrument; nothing when that is not known.
    pub distance: Option<Reading>,
}
