//! What the door answers: one whole screen, or what a change has touched.
//!
//! Nothing here is a sentence. Names of items, states and reasons are keys that the face puts into words;
//! days are `YYYY-MM-DD`; a reading carries its unit; money carries its currency and its decimals.

use serde::{Deserialize, Serialize};
use ts_rs::TS;

use crate::request::{DrivenForm, VehicleForm};

/// An answer, as JSON with the kind under `answer`.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
#[serde(tag = "answer", rename_all = "kebab-case")]
pub enum Response {
    /// The vehicles and the settings.
    Shelf(ShelfView),
    /// The Today screen.
    Today(TodayView),
    /// The Pump screen.
    Pump(PumpView),
    /// The Counter screen.
    Counter(CounterView),
    /// The Bay screen.
    Bay(BayView),
    /// The Book screen.
    Lines(LinesView),
    /// One line with its versions.
    Line(LineView),
    /// The car's sheet.
    Sheet(SheetView),
    /// The card as it would print.
    Card(CardView),
    /// What a VIN says.
    Vin(VinView),
    /// What a card says.
    CardRead(CardReadView),
    /// What the check found.
    Check(CheckView),
    /// The pages were worked out again.
    Rebuilt(RebuiltView),
    /// A change was written.
    Written(WrittenView),
}

/// Why the door does not do what was asked; the face puts it into one sentence by `code`.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Refusal {
    /// The key of the sentence, such as `reading-lower`.
    pub code: String,
    /// The field of the form that is meant, as a path such as `visit.parts.0.price`; nothing when none is.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub field: Option<String>,
    /// What the sentence names.
    pub values: std::collections::BTreeMap<String, String>,
    /// Asking again with `keep` will be accepted.
    pub can_keep: bool,
}

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
}

/// An item of the catalogue in a list.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct CatalogueLine {
    /// Its stable number.
    pub number: u32,
    /// Its key; the name stands in the Fluent files under `item-KEY`.
    pub key: String,
}

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

/// The Today screen.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct TodayView {
    /// The vehicle.
    pub vehicle: VehicleLine,
    /// Today.
    pub today: String,
    /// What the odometer is thought to show today; nothing when there is no ground for a guess.
    pub estimate: Option<EstimateView>,
    /// Everything on the plan, most pressing first.
    pub due: Vec<DueView>,
    /// The next visit.
    pub visit: Option<NextVisitView>,
    /// How many papers wait in the tray.
    pub tray: usize,
}

/// What the odometer is thought to show.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct EstimateView {
    /// The likely reading.
    pub likely: Reading,
    /// Hardly less than this.
    pub low: Reading,
    /// Hardly more than this.
    pub high: Reading,
    /// The reading from which it is counted.
    pub since: DatedReading,
    /// How many units a year this car goes, as far as the book tells.
    #[ts(type = "number")]
    pub per_year: i64,
}

/// How an item stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "kebab-case")]
pub enum StateKey {
    /// Past its day or its reading.
    Overdue,
    /// Today.
    Due,
    /// Within 30 days or 1 000 km.
    Soon,
    /// Later.
    Ahead,
    /// Nobody ever recorded it.
    NoRecord,
}

/// What comes first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "kebab-case")]
pub enum FirstKey {
    /// The day.
    Time,
    /// The reading.
    Distance,
}

/// One item of the plan and how it stands.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct DueView {
    /// The item.
    pub item: ItemView,
    /// How it stands.
    pub state: StateKey,
    /// The day on which it is due, by time or by reaching the reading at this car's pace.
    pub day: Option<String>,
    /// The reading at which it is due, on the present instrument.
    pub reading: Option<Reading>,
    /// Which of the two comes first.
    pub first: Option<FirstKey>,
    /// Why.
    pub why: WhyView,
    /// It belongs in a workshop.
    pub workshop: bool,
    /// What it costs to ignore: 1 comfort to 5 the engine, 6 safety.
    pub weight: u8,
}

/// The ground on which a due line stands.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct WhyView {
    /// The interval used.
    pub interval: IntervalView,
    /// `handbook`, `regulation`, `published` or `common-practice`.
    pub source: String,
    /// The published source by name; empty otherwise.
    pub source_name: String,
    /// The first interval of a new car, before the one that repeats.
    pub first_phase: bool,
    /// What it is counted from; nothing when there is no record.
    pub from: Option<CountedFrom>,
    /// The conditions that tightened it, as keys: `short-trips`, `towing`, `dust`, `standing`.
    pub tightened_by: Vec<String>,
}

/// An interval as printed.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct IntervalView {
    /// The distance in its printed unit.
    pub distance: Option<Reading>,
    /// Months, with `.5` for a half.
    pub months: Option<String>,
}

/// What an interval is counted from.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
#[serde(tag = "from", rename_all = "kebab-case")]
pub enum CountedFrom {
    /// The day on which it was last done.
    Done {
        /// The day.
        day: String,
        /// The reading that the instrument showed; nothing when nobody wrote it down.
        reading: Option<Reading>,
        /// The visit's line.
        visit: String,
    },
    /// The day of first use.
    FirstUse {
        /// The day.
        day: String,
    },
}

/// The next visit, in its first form: everything that is overdue, due or soon.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct NextVisitView {
    /// The day on which the first of them is due, or today when that has passed.
    pub day: String,
    /// What to do together.
    pub items: Vec<ItemView>,
    /// What to get for it.
    pub get: Vec<GetView>,
}

/// One thing to get at the counter.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct GetView {
    /// For which item.
    pub item: ItemView,
    /// What was fitted the last time; nothing when the book holds no part for it.
    pub part: Option<PartView>,
    /// Where it was bought or fitted, by the visit's workshop; empty when the owner did it.
    pub workshop: String,
    /// The day of that visit.
    pub day: Option<String>,
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
}

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

/// Fuel as written.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct FuelView {
    /// How much, in its unit, with three decimals.
    pub volume: String,
    /// `litre`, `us-gallon` or `imperial-gallon`.
    pub volume_unit: String,
    /// What it cost.
    pub total: Option<MoneyView>,
    /// `full`, `part` or `missed`.
    pub fill: String,
}

/// The Counter screen.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct CounterView {
    /// The vehicle.
    pub vehicle: VehicleLine,
    /// What the next visit needs.
    pub get: Vec<GetView>,
    /// The papers that belong to no visit yet, newest first.
    pub tray: Vec<PaperView>,
    /// The visits to which a paper may be tied, newest first, at most 20.
    pub visits: Vec<VisitLine>,
}

/// A visit in a list.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct VisitLine {
    /// Its line.
    pub subject: String,
    /// The day.
    pub day: String,
    /// What was done.
    pub items: Vec<ItemView>,
    /// By whom; empty when the owner did it.
    pub workshop: String,
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
}

/// The Bay screen.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct BayView {
    /// The vehicle.
    pub vehicle: VehicleLine,
    /// Today.
    pub today: String,
    /// The jobs on the plan, most pressing first.
    pub jobs: Vec<JobView>,
    /// The leading digits of the reading.
    pub leading: String,
    /// Workshops named before, most recent first.
    pub workshops: Vec<String>,
    /// The currency used last.
    pub currency: String,
    /// The papers in the tray.
    pub tray: Vec<PaperView>,
}

/// A job that can be chosen.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct JobView {
    /// The item.
    pub item: ItemView,
    /// How it stands.
    pub state: StateKey,
    /// It belongs in a workshop.
    pub workshop: bool,
    /// The keys of the cautions that come before the first step.
    pub cautions: Vec<String>,
    /// The parts fitted the last time.
    pub parts: Vec<PartView>,
}

/// The Book screen.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct LinesView {
    /// The vehicle.
    pub vehicle: VehicleLine,
    /// The lines, newest first.
    pub lines: Vec<BookLine>,
    /// The years in which there are lines, newest first.
    pub years: Vec<i32>,
    /// The items that occur in visits.
    pub items: Vec<ItemView>,
    /// How many entries the book holds.
    pub entries: usize,
    /// How many of them were written by a newer version.
    pub newer: usize,
}

/// A line of the book.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct BookLine {
    /// Its subject.
    pub subject: String,
    /// The day that it names.
    pub day: String,
    /// The reading.
    pub reading: Option<Reading>,
    /// What it says.
    pub says: LineContent,
    /// The day on which it was written down.
    pub written: String,
    /// How often it has been amended.
    pub amended: usize,
    /// It was struck out, for this reason.
    pub struck: Option<String>,
}

/// What a line says.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
#[serde(tag = "kind", rename_all = "kebab-case")]
pub enum LineContent {
    /// The vehicle was put on the shelf.
    Vehicle {
        /// What was known of it.
        vehicle: VehicleForm,
    },
    /// A reading.
    Reading {
        /// `actual`, `exceeds-limits` or `not-actual`.
        status: String,
        /// The fuel taken at it.
        fuel: Option<FuelView>,
    },
    /// The instrument was replaced.
    Instrument {
        /// What the old one showed last.
        old: Reading,
        /// What the new one showed first.
        new: Reading,
    },
    /// A visit.
    Visit {
        /// By whom; empty when the owner did it.
        workshop: String,
        /// What was done.
        items: Vec<ItemView>,
        /// What was fitted.
        parts: Vec<PartView>,
        /// What it cost.
        cost: Option<MoneyView>,
        /// The note.
        note: String,
        /// Its papers.
        papers: Vec<PaperView>,
    },
    /// A paper that belongs to no visit.
    Paper {
        /// The paper.
        paper: PaperView,
    },
    /// The plan was changed.
    Plan {
        /// The item.
        item: ItemView,
        /// `handbook`, `off` or `catalogue`.
        to: String,
        /// The interval that repeats.
        then: Option<IntervalView>,
        /// The first one, where it differs.
        first: Option<IntervalView>,
    },
    /// Written by a newer version.
    Newer,
}

/// One line with all its versions, oldest first.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct LineView {
    /// The line as it stands.
    pub line: BookLine,
    /// Every version, the first one included.
    pub versions: Vec<VersionView>,
}

/// A version of a line.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct VersionView {
    /// The day on which it was written.
    pub written: String,
    /// Why, in the owner's words.
    pub why: String,
    /// The day that it names.
    pub day: String,
    /// The reading.
    pub reading: Option<Reading>,
    /// What it says.
    pub says: LineContent,
    /// The SHA-256 of its entry.
    pub hash: String,
}

/// The car's sheet.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct SheetView {
    /// The vehicle.
    pub vehicle: VehicleLine,
    /// All that is known of it, as a form can take it back.
    pub form: VehicleForm,
    /// What its identification number says; nothing when there is none.
    pub vin: Option<VinView>,
    /// How it is driven.
    pub driven: DrivenForm,
    /// The plan.
    pub plan: Vec<PlanLine>,
    /// The instruments that were replaced.
    pub instruments: Vec<InstrumentLine>,
}

/// An item of the plan.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct PlanLine {
    /// The item.
    pub item: ItemView,
    /// The interval that holds now.
    pub interval: IntervalView,
    /// The first one, where it differs.
    pub first: Option<IntervalView>,
    /// Where it comes from.
    pub source: String,
    /// The published source by name; empty otherwise.
    pub source_name: String,
    /// The owner switched it off.
    pub off: bool,
}

/// A replaced instrument.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct InstrumentLine {
    /// The day.
    pub day: String,
    /// What the old one showed last.
    pub old: Reading,
    /// What the new one showed first.
    pub new: Reading,
}

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

/// What a VIN says.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct VinView {
    /// In capitals.
    pub vin: String,
    /// `right` or `wrong`.
    pub check_digit: String,
    /// The digit that would be right, where it is wrong.
    pub expected: Option<String>,
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

/// What the check found.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct CheckView {
    /// Entries verified.
    pub entries: usize,
    /// Photos verified.
    pub photos: usize,
    /// What is wrong; empty when all is well.
    pub faults: Vec<FaultView>,
}

/// One fault.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct FaultView {
    /// The key of the sentence.
    pub code: String,
    /// The hash of the entry or the photo, or another name of the place.
    pub place: String,
}

/// The pages were worked out again.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct RebuiltView {
    /// Entries folded.
    pub entries: usize,
}

/// A change was written.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct WrittenView {
    /// The book in which it stands; of the demo, the first.
    pub book: String,
    /// The line.
    pub subject: String,
    /// Warnings that did not keep it from being written, as keys: `vin-check-digit`.
    pub warnings: Vec<String>,
}
