//! What a face may ask: one request a screen, one request a change.
//!
//! Everything typed by a person travels as the text that he typed, so that the door alone decides what it
//! means and a refusal can name the field. Days are `YYYY-MM-DD`. Ids are those that a response gave.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// A question or a change, as JSON with the kind under `ask`.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
#[serde(tag = "ask", rename_all = "kebab-case", deny_unknown_fields)]
pub enum Request {
    /// Which vehicles stand on the shelf, and the settings.
    Shelf,
    /// The Today screen of one vehicle.
    Today {
        /// The vehicle's book.
        book: String,
    },
    /// The visits that the plan proposes for one vehicle.
    Visits {
        /// The vehicle's book.
        book: String,
    },
    /// What it would cost to do an item on another day than the plan proposes.
    Moved {
        /// The vehicle's book.
        book: String,
        /// The item.
        item: ItemForm,
        /// The day, today or later.
        day: String,
    },
    /// The Pump screen: what stands on the pad before the first tap.
    Pump {
        /// The vehicle's book.
        book: String,
    },
    /// The Counter screen: what to get, and the papers in the tray.
    Counter {
        /// The vehicle's book.
        book: String,
    },
    /// The parts that were fitted, and how long they last.
    Parts {
        /// The vehicle's book.
        book: String,
        /// Only those that served this catalogue item.
        #[serde(default)]
        #[ts(optional)]
        item: Option<u32>,
    },
    /// The Bay screen: the jobs that can be chosen, and what a visit form starts with.
    Bay {
        /// The vehicle's book.
        book: String,
    },
    /// The Book screen: the lines of the book, newest first.
    Lines {
        /// The vehicle's book.
        book: String,
        /// Which lines; all when left out.
        #[serde(default)]
        filter: LineFilter,
    },
    /// One line with all its versions.
    Line {
        /// The vehicle's book.
        book: String,
        /// The line.
        subject: String,
    },
    /// The car's own sheet: identity and plan.
    Sheet {
        /// The vehicle's book.
        book: String,
    },
    /// The history card as it would print.
    Card {
        /// The vehicle's book.
        book: String,
        /// What the card shows.
        #[serde(default)]
        options: CardOptions,
    },
    /// What a vehicle identification number says.
    Vin {
        /// As typed.
        vin: String,
    },
    /// Reads the text of a card's square, or the plain text beside it.
    ReadCard {
        /// The text.
        text: String,
    },
    /// Verifies every entry, chain, signature and photo on the shelf.
    Check,
    /// Throws the pages away and works them out again from the entries.
    Rebuild,
    /// Puts a new vehicle on the shelf.
    AddVehicle {
        /// What is known of it.
        vehicle: VehicleForm,
    },
    /// Corrects what is known of a vehicle.
    ChangeVehicle {
        /// The vehicle's book.
        book: String,
        /// All that is known of it now.
        vehicle: VehicleForm,
    },
    /// Writes a reading, with or without fuel.
    TakeReading {
        /// The vehicle's book.
        book: String,
        /// What was read.
        reading: ReadingForm,
        /// The owner has been asked about an implausible reading and wants it kept.
        #[serde(default)]
        keep: bool,
    },
    /// Writes that the instrument was replaced.
    ReplaceInstrument {
        /// The vehicle's book.
        book: String,
        /// The day of the replacement.
        day: String,
        /// What the old instrument showed last.
        old: String,
        /// What the new one showed first.
        new: String,
    },
    /// Writes a visit.
    RecordVisit {
        /// The vehicle's book.
        book: String,
        /// What was done.
        visit: VisitForm,
        /// The owner has been asked about an implausible reading and wants it kept.
        #[serde(default)]
        keep: bool,
    },
    /// Puts a corrected reading in place of an earlier one, which stays readable.
    AmendReading {
        /// The vehicle's book.
        book: String,
        /// The line that is amended.
        subject: String,
        /// The whole reading as it should be.
        reading: ReadingForm,
        /// Why, in the owner's words; may be empty.
        #[serde(default)]
        why: String,
        /// The owner has been asked about an implausible reading and wants it kept.
        #[serde(default)]
        keep: bool,
    },
    /// Puts a corrected visit in place of an earlier one, which stays readable.
    AmendVisit {
        /// The vehicle's book.
        book: String,
        /// The line that is amended.
        subject: String,
        /// The whole visit as it should be.
        visit: VisitForm,
        /// Why, in the owner's words; may be empty.
        #[serde(default)]
        why: String,
        /// The owner has been asked about an implausible reading and wants it kept.
        #[serde(default)]
        keep: bool,
    },
    /// Strikes a line out; it stays readable. A paper is thrown away instead.
    StrikeOut {
        /// The vehicle's book.
        book: String,
        /// The line.
        subject: String,
        /// Why, in the owner's words; may be empty.
        #[serde(default)]
        why: String,
    },
    /// Ties a paper to a visit.
    TiePaper {
        /// The vehicle's book.
        book: String,
        /// The paper's line.
        paper: String,
        /// The visit's line.
        visit: String,
    },
    /// Throws a paper away that belongs to no visit: its line is struck out, and its photo is deleted for good.
    ThrowAway {
        /// The vehicle's book.
        book: String,
        /// The paper's line.
        paper: String,
        /// Why, in the owner's words; may be empty.
        #[serde(default)]
        why: String,
    },
    /// Changes the plan for one item.
    ChangePlan {
        /// The vehicle's book.
        book: String,
        /// The item.
        item: ItemForm,
        /// What holds for it from now on.
        change: PlanForm,
    },
    /// Sets or clears the address of the page on which a scanned card opens.
    SetViewerAddress {
        /// An `https:` address without `#`; nothing clears it.
        address: Option<String>,
    },
    /// Fills an empty shelf with the invented household.
    Demo,
}

/// Which lines of the book are wanted.
#[derive(Debug, Clone, Default, Serialize, Deserialize, TS)]
#[serde(default, deny_unknown_fields)]
pub struct LineFilter {
    /// Only lines of this calendar year.
    #[ts(optional)]
    pub year: Option<i32>,
    /// Only visits with this catalogue item.
    #[ts(optional)]
    pub item: Option<u32>,
    /// Only lines in which this text stands, without regard to case.
    #[ts(optional)]
    pub text: Option<String>,
}

/// What a card shows.
#[derive(Debug, Clone, Default, Serialize, Deserialize, TS)]
#[serde(default, deny_unknown_fields)]
pub struct CardOptions {
    /// Leaves the identification number out.
    pub hide_vin: bool,
    /// The address to use in place of the one in the settings.
    #[ts(optional)]
    pub viewer: Option<String>,
}

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
}

/// Fuel as typed.
#[derive(Debug, Clone, Default, Serialize, Deserialize, TS)]
#[serde(default, deny_unknown_fields)]
pub struct FuelForm {
    /// How much.
    pub volume: String,
    /// `litre`, `us-gallon` or `imperial-gallon`; `litre` when empty.
    pub volume_unit: String,
    /// What it cost in all; may be empty.
    pub total: String,
    /// The currency of the total; may be empty when the total is.
    pub currency: String,
    /// `full`, `part` or `missed` (a fill before this one was not written down); `full` when empty.
    pub fill: String,
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
