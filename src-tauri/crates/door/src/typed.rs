//! What a person typed, as it travels: text, so that the door alone decides what it means.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};
use ts_rs::TS;

mod handover;
mod trouble;

pub use handover::HandoverForm;
pub use trouble::{AnswerForm, AnswerKey, EndForm, HereForm, ScanForm, TroubleForm};

/// What is known of a vehicle, as typed.
#[derive(Debug, Clone, Default, Serialize, Deserialize, TS)]
#[serde(default, deny_unknown_fields)]
pub struct VehicleForm {
    /// What the household calls it; 1 to 60 characters.
    pub name: String,
    /// Make, model and year as one text; may be empty.
    pub make_model: String,
    /// The vehicle identification number; may be empty.
    pub vin: String,
    /// `petrol`, `diesel`, `petrol-hybrid`, `diesel-hybrid`, `gas`, `electric` or `other`.
    pub engine: String,
    /// `km` or `mi`: what the instrument counts.
    pub unit: String,
    /// The day of first use; may be empty.
    pub first_use: String,
    /// The car has been in this household since it was new, so that nothing was done before the book begins.
    pub bought_new: bool,
    /// What the owner expects to drive in a year, in the unit of the instrument; may be empty.
    pub yearly: String,
    /// How it is driven.
    pub driven: DrivenForm,
    /// What it has (true) and lacks (false), by the keys of the fittings; what is left out is not known.
    pub fitted: BTreeMap<String, bool>,
    /// The numbers of this car that its guides ask for, by the keys of the values, each at most 60 characters.
    pub values: BTreeMap<String, String>,
    /// A first reading to write together with the vehicle; may be empty.
    pub reading: String,
}

/// The four plain questions on how a car is driven.
#[derive(Debug, Clone, Copy, Default, Serialize, Deserialize, TS)]
#[serde(default, deny_unknown_fields)]
#[expect(clippy::struct_excessive_bools, reason = "four independent questions, each answered by yes or no")]
pub struct DrivenForm {
    /// Mostly trips under 8 km or 5 miles, or cold engine.
    pub short_trips: bool,
    /// Often a trailer, a heavy load or long climbs.
    pub towing: bool,
    /// Often dust or unmade roads.
    pub dust: bool,
    /// Much standing traffic or idling.
    pub standing: bool,
}

/// A reading as typed.
#[derive(Debug, Clone, Default, Serialize, Deserialize, TS)]
#[serde(default, deny_unknown_fields)]
pub struct ReadingForm {
    /// The day; today when empty.
    pub day: String,
    /// What the instrument shows, in its own unit.
    pub reading: String,
    /// `actual`, `exceeds-limits` or `not-actual` (49 CFR 580); `actual` when empty.
    pub status: String,
    /// Fuel taken at this reading.
    #[ts(optional)]
    pub fuel: Option<FuelForm>,
    /// The lines of the papers that belong to it.
    pub papers: Vec<String>,
}

/// Fuel as typed. Of amount, price and total any two give the third, and an amount alone will do.
#[derive(Debug, Clone, Default, Serialize, Deserialize, TS)]
#[serde(default, deny_unknown_fields)]
pub struct FuelForm {
    /// `petrol`, `diesel`, `gas` or `electric`; the car's own when empty.
    pub kind: String,
    /// How much; may be empty when price and total are given.
    pub amount: String,
    /// `litre`, `us-gallon`, `imperial-gallon` or `kilowatt-hour`; when empty `kilowatt-hour` for electricity and
    /// `litre` for anything else.
    pub unit: String,
    /// What one unit cost; may be empty.
    pub price: String,
    /// What it cost in all; may be empty.
    pub total: String,
    /// The currency of price and total; may be empty when both are.
    pub currency: String,
    /// `full`, `part` or `missed` (a fill before this one was not written down); `full` when empty.
    pub fill: String,
}

/// What was read off the engine's computer or a meter on a day, as typed.
#[derive(Debug, Clone, Default, Serialize, Deserialize, TS)]
#[serde(default, deny_unknown_fields)]
pub struct MeasuredForm {
    /// The day; today when empty.
    pub day: String,
    /// The values; at least one.
    pub values: Vec<MeasuredValueForm>,
    /// They were pasted from another program and not typed.
    pub pasted: bool,
}

/// A measured value as typed.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(default, deny_unknown_fields)]
pub struct MeasuredValueForm {
    /// The key of what was measured: `short-trim-1`, `long-trim-1`, `short-trim-2`, `long-trim-2`, `coolant`,
    /// `idle-air` or `rest-voltage`.
    pub parameter: String,
    /// The value in its unit, with a point or a comma and at most three decimals.
    pub value: String,
}

/// An item: one of the catalogue, or one of the owner's own.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub enum ItemForm {
    /// The stable number of a catalogue item.
    Catalogue(u32),
    /// The owner's own words for it, 1 to 60 characters.
    Own(String),
}

/// A visit as typed.
#[derive(Debug, Clone, Default, Serialize, Deserialize, TS)]
#[serde(default, deny_unknown_fields)]
pub struct VisitForm {
    /// The day; today when empty.
    pub day: String,
    /// What the instrument showed; may be empty when nobody wrote it down.
    pub reading: String,
    /// The workshop's name; empty when the owner did it himself.
    pub workshop: String,
    /// What was done; at least one, unless something was found.
    pub items: Vec<ItemForm>,
    /// What was found about items that were not done.
    pub found: Vec<FoundForm>,
    /// What was fitted or filled in.
    pub parts: Vec<PartForm>,
    /// What it cost in all; may be empty.
    pub cost: String,
    /// The currency of the cost and of all prices.
    pub currency: String,
    /// Anything else worth keeping, at most 2 000 characters.
    pub note: String,
    /// The lines of the papers that belong to it.
    pub papers: Vec<String>,
}

/// A part as typed.
#[derive(Debug, Clone, Default, Serialize, Deserialize, TS)]
#[serde(default, deny_unknown_fields)]
pub struct PartForm {
    /// What it is, such as 'oil filter'; may be empty when a number is given.
    pub name: String,
    /// Who made it; may be empty.
    pub maker: String,
    /// The maker's number, as written; may be empty when a name is given.
    pub number: String,
    /// How much or how many; 1 when empty.
    pub quantity: String,
    /// `piece`, `litre`, `set`, `kilogram` or `metre`; `piece` when empty.
    pub measure: String,
    /// What all of it cost; may be empty.
    pub price: String,
    /// The item of the visit that it served; may be left out, and is clear where the visit has one item.
    #[ts(optional)]
    pub item: Option<ItemForm>,
    /// The key of its kind, such as `iridium`, where the item tells kinds apart; may be empty.
    pub kind: String,
}

/// What was bought to be fitted later, as typed.
#[derive(Debug, Clone, Default, Serialize, Deserialize, TS)]
#[serde(default, deny_unknown_fields)]
pub struct BoughtForm {
    /// The day; today when empty.
    pub day: String,
    /// The shop; may be empty.
    pub shop: String,
    /// What was bought; at least one.
    pub parts: Vec<PartForm>,
    /// What it cost in all; may be empty.
    pub cost: String,
    /// The currency of the cost and of all prices.
    pub currency: String,
    /// Anything else worth keeping, at most 2 000 characters.
    pub note: String,
    /// The lines of the papers that belong to it.
    pub papers: Vec<String>,
}

/// A note on a part, as typed.
#[derive(Debug, Clone, Default, Serialize, Deserialize, TS)]
#[serde(default, deny_unknown_fields)]
pub struct PartNoteForm {
    /// Its number.
    pub number: String,
    /// Who makes it; may be empty.
    pub maker: String,
    /// The same part under other numbers.
    pub same: Vec<NumberForm>,
    /// `wrong`, `superseded`, or empty when nothing warns of it.
    pub mark: String,
    /// The number to ask for in its place; may be empty.
    pub instead: String,
    /// Anything else worth keeping, at most 2 000 characters.
    pub note: String,
}

/// A number and who gave it, as typed.
#[derive(Debug, Clone, Default, Serialize, Deserialize, TS)]
#[serde(default, deny_unknown_fields)]
pub struct NumberForm {
    /// Who makes it; may be empty.
    pub maker: String,
    /// The number.
    pub number: String,
}

/// What was found about an item, as typed.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
#[serde(deny_unknown_fields)]
pub struct FoundForm {
    /// About which item.
    pub item: ItemForm,
    /// The key of the finding: `within-limits`, or one of those that the item has.
    pub finding: String,
    /// What was measured, in the unit of the item's measurement; may be empty.
    #[serde(default)]
    pub value: String,
}

/// What holds for an item of the plan.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
#[serde(tag = "to", rename_all = "kebab-case", deny_unknown_fields)]
pub enum PlanForm {
    /// The interval of the owner's handbook.
    Handbook {
        /// The interval that repeats.
        then: IntervalForm,
        /// The first one, where it differs.
        #[ts(optional)]
        first: Option<IntervalForm>,
        /// What ignoring an item of the owner's own costs: `comfort`, `economy`, `repair`, `breakdown`, `engine` or
        /// `safety`. Left out, it stays what it was, at first a repair; of a catalogue item the catalogue says it.
        #[ts(optional)]
        stakes: Option<String>,
    },
    /// Not on this car, or not wanted.
    Off,
    /// The next time is to be on this day; how often it comes round stays as it is.
    Day {
        /// Today or later.
        day: String,
    },
    /// The next time may be on any day.
    AnyDay,
    /// What the catalogue says.
    Catalogue,
}

/// An interval as printed: at least one of the two.
#[derive(Debug, Clone, Default, Serialize, Deserialize, TS)]
#[serde(default, deny_unknown_fields)]
pub struct IntervalForm {
    /// The distance; may be empty.
    pub distance: String,
    /// `km` or `mi`, as it is printed.
    pub unit: String,
    /// Months, with `.5` for a half; may be empty.
    pub months: String,
}
