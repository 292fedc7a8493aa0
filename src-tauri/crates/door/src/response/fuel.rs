//! What a car uses: its spans from full to full, what they come to, whether work helped, and what is amiss.
//!
//! Consumption crosses the door in the unit that was asked for, as a text with one decimal for tables and in whole
//! hundredths for plots. Changes of consumption are in percent with one decimal: `-2.5` is 2.5 % less.

use serde::{Deserialize, Serialize};
use ts_rs::TS;

use super::{AmountTakenView, DueView, ItemView, Reading, VehicleLine};

/// Everything about what a car uses and how far it goes.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct ConsumptionView {
    /// The vehicle.
    pub vehicle: VehicleLine,
    /// Today.
    pub today: String,
    /// One for each kind that was ever filled in.
    pub kinds: Vec<KindUseView>,
    /// The visits at which something was done to the car, oldest first, to be marked in the plots.
    pub marks: Vec<MarkView>,
    /// The odometer over time.
    pub odometer: OdometerView,
    /// Published figures on what moves consumption apart from work, and what work does.
    pub effects: Vec<EffectView>,
    /// What is odd about the fills.
    pub warnings: Vec<FuelWarningView>,
}

/// A consumption in the unit of its kind.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct UseView {
    /// The number with one decimal: `7.3`.
    pub number: String,
    /// In hundredths of the unit: 725.
    #[ts(type = "number")]
    pub hundredths: i64,
}

/// What the car used of one kind.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct KindUseView {
    /// `petrol`, `diesel`, `gas` or `electric`.
    pub kind: String,
    /// The unit of every consumption: `litres-per-100-km`, `km-per-litre`, `miles-per-us-gallon`,
    /// `miles-per-imperial-gallon`, `kwh-per-100-km` or `miles-per-kwh`.
    pub unit: String,
    /// The units that can be asked for in its place, itself among them.
    pub units: Vec<String>,
    /// A greater number means that the car uses less.
    pub more_is_better: bool,
    /// From full to full, oldest first.
    pub spans: Vec<FuelSpanView>,
    /// Those of which nothing can be said, oldest first.
    pub unused: Vec<UnusedSpanView>,
    /// What they come to; nothing without a span.
    pub figures: Option<FiguresView>,
    /// The mean of each year, oldest first.
    pub years: Vec<YearUseView>,
    /// Whether work helped, newest first.
    pub helped: Vec<HelpedView>,
    /// What watching came to.
    pub watch: WatchView,
}

/// From one full tank to the next.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct FuelSpanView {
    /// The day of the full tank with which it begins.
    pub from: String,
    /// The day of the full tank with which it ends.
    pub to: String,
    /// What the instrument showed at its end.
    pub reading: Reading,
    /// How far the car went.
    pub distance: Reading,
    /// How much was filled in, in the unit in which the last of its fills was typed.
    pub amount: AmountTakenView,
    /// How many fills went into it.
    pub fills: u32,
    /// What was used.
    pub used: UseView,
}

/// From one full tank to the next, where nothing can be said.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct UnusedSpanView {
    /// The day of the full tank with which it begins.
    pub from: String,
    /// The day of the full tank with which it ends.
    pub to: String,
    /// How far the car went by the readings.
    pub distance: Reading,
    /// How much was filled in.
    pub amount: AmountTakenView,
    /// `missed`, `no-distance`, `too-little` or `too-much`.
    pub why: String,
}

/// What spans come to.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct FiguresView {
    /// The last one.
    pub last: DatedUseView,
    /// The mean of all, over the distance.
    pub overall: UseView,
    /// The mean of the last year, over the distance.
    pub last_year: UseView,
    /// The one that used the least.
    pub least: DatedUseView,
    /// The one that used the most.
    pub most: DatedUseView,
}

/// A consumption, and the day on which its span ended.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct DatedUseView {
    /// The day.
    pub to: String,
    /// The consumption.
    pub used: UseView,
}

/// The mean of a year.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct YearUseView {
    /// The calendar year.
    pub year: i32,
    /// The mean over the distance.
    pub used: UseView,
}

/// A visit as a mark in a plot.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct MarkView {
    /// Its line.
    pub subject: String,
    /// The day.
    pub day: String,
    /// What the instrument showed, if someone wrote it down.
    pub reading: Option<Reading>,
    /// What was done.
    pub items: Vec<ItemView>,
}

/// A change that lies between two ends, in 95 cases of 100; in percent with one decimal.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ChangeView {
    /// Its lower end.
    pub low: String,
    /// Its upper end.
    pub high: String,
}

/// Whether the work of a visit helped, or whatever let codes be cleared.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct HelpedView {
    /// The line of the visit or of the trouble.
    pub subject: String,
    /// The day of it.
    pub day: String,
    /// What was done at the visit.
    pub items: Vec<ItemView>,
    /// The codes that were cleared, as far as they were written down; nothing for a visit.
    pub cleared: Option<Vec<String>>,
    /// The answer.
    pub verdict: VerdictView,
    /// By how much more the car used after than before; nothing with fewer than two spans on either side.
    pub change: Option<ChangeView>,
    /// How many spans before counted.
    pub before: u32,
    /// How many spans after counted.
    pub after: u32,
    /// How many other such visits or clearings lie within a tank of this one: the answer is for all of them together.
    pub others_near: usize,
    /// In percent, what the season may have done that the spans do not tell; nothing where it was fitted with them.
    pub season_may_be: Option<String>,
}

/// The answer in a word, with its numbers.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(tag = "verdict", rename_all = "kebab-case")]
pub enum VerdictView {
    /// The car uses less, by between so many percent.
    Better {
        /// At least.
        low: String,
        /// At most.
        high: String,
    },
    /// The car uses more, by between so many percent.
    Worse {
        /// At least.
        low: String,
        /// At most.
        high: String,
    },
    /// If there is a difference, it is no larger than this.
    NoLargerThan {
        /// In percent.
        percent: String,
    },
    /// It takes about so many more tanks to find a difference of 3 %.
    CannotTellYet {
        /// How many; nothing where no number of them will do.
        more: Option<u32>,
    },
}

/// What watching consumption came to.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct WatchView {
    /// There were spans enough: a year of them, and 20.
    pub learnt: bool,
    /// Every shift, oldest first.
    pub alarms: Vec<AlarmView>,
    /// The car uses more since the last of them, and that has not been undone: what to do about it.
    pub standing: Option<StandingView>,
}

/// Consumption has shifted.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct AlarmView {
    /// The day on which the first span after the shift began.
    pub since: String,
    /// The day of the fill at which it was plain.
    pub raised: String,
    /// By how much, most likely; more when positive.
    pub likely: String,
    /// Between which ends.
    pub size: ChangeView,
}

/// A shift that stands, and where it leads.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct StandingView {
    /// The shift.
    pub alarm: AlarmView,
    /// What could explain it and is due, soon due or without a record, most pressing first.
    pub due: Vec<DueView>,
    /// What else could explain it, as keys of `explains-KEY`: `tyre-pressure`, `brakes-dragging`, `thermostat`,
    /// `oxygen-sensor`, `fuel-trims`, `air-filter-carburettor`.
    pub look_at: Vec<String>,
    /// The keys of the symptoms with which to go on in Trouble.
    pub symptoms: Vec<String>,
}

/// The odometer over time, on the distance that the car has gone: a replaced instrument makes no step.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct OdometerView {
    /// Every reading, oldest first.
    pub points: Vec<OdometerPoint>,
    /// Where it is likely to stand: today, and in 90, 180, 270 and 365 days; empty when there is no pace.
    pub ahead: Vec<OdometerAhead>,
    /// How many units a year the car goes; nothing when there is no pace.
    #[ts(type = "number | null")]
    pub per_year: Option<i64>,
}

/// A reading in the plot.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct OdometerPoint {
    /// The day.
    pub day: String,
    /// What the instrument showed.
    pub shown: Reading,
    /// How far the car had gone.
    pub travelled: Reading,
    /// It is so far off that it counts for nothing.
    pub doubtful: bool,
}

/// Where the odometer is likely to stand on a day, as the distance that the car will have gone.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct OdometerAhead {
    /// The day.
    pub day: String,
    /// Hardly less than this.
    pub low: Reading,
    /// Most likely.
    pub likely: Reading,
    /// Hardly more than this.
    pub high: Reading,
}

/// A published figure on what moves consumption: by how much the distance on the same amount changes.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct EffectView {
    /// Its key, of `effect-KEY`.
    pub key: String,
    /// `by`, `up-to`, `between` or `none`.
    pub how: String,
    /// In percent; negative is less far. Nothing where none was found.
    pub percent: Option<i16>,
    /// The other end, where it is between two.
    pub to: Option<i16>,
    /// Where it was published.
    pub source: String,
}

/// Something about a fill that makes one look twice.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(tag = "warning", rename_all = "kebab-case")]
pub enum FuelWarningView {
    /// By a good deal more went in than ever before.
    LargerThanEver {
        /// When.
        day: String,
        /// How much.
        amount: AmountTakenView,
        /// The most that had gone in before.
        before: AmountTakenView,
    },
    /// A later fill has a lower reading.
    ReadingFalls {
        /// The day of the later fill.
        day: String,
    },
    /// A fill is of a kind that this car does not take by its sheet, so that it counts for nothing.
    OtherKind {
        /// When.
        day: String,
    },
}
