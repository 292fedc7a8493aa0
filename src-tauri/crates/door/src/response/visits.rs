//! The visits ahead, and what to get for them.

use serde::{Deserialize, Serialize};
use ts_rs::TS;

use super::{ItemView, MoneyView, PaidView, PartView, UsedView, VehicleLine, WarningView};
use crate::NumberForm;

/// A visit that the plan proposes.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct PlannedVisitView {
    /// The day that costs least.
    pub day: String,
    /// Where: `home`, `workshop` or `office`. At an office, or an inspection, nothing is done to the car.
    pub site: String,
    /// It is the soonest at which something is done to the car.
    pub next: bool,
    /// What to do together, most pressing first.
    pub items: Vec<VisitItemView>,
    /// What has to be opened up, drained or lifted for more than one of them.
    pub shares: Vec<ShareView>,
    /// How long it takes a practised amateur at home, in minutes; 0 elsewhere.
    pub minutes: u32,
    /// What the parts and the work cost the last time; nothing when no price is known.
    pub cost: Option<MoneyView>,
    /// For how many items no price is known.
    pub unpriced: usize,
    /// For how many items the price is a share of a bill for several jobs.
    pub estimated: usize,
}

/// Something that is opened up once for several items.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct ShareView {
    /// Its key.
    pub access: String,
    /// For how many items.
    pub items: usize,
}

/// An item of a visit that the plan proposes.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct VisitItemView {
    /// The item.
    pub item: ItemView,
    /// The day on which it would fall due by itself.
    pub due: String,
    /// The owner chose the day.
    pub pinned: bool,
    /// It is the next time of this item, and not one after that.
    pub next: bool,
    /// It is a look or a test, which renews nothing.
    pub look: bool,
    /// The key of the guide to it.
    pub guide: Option<String>,
}

/// What keeping the car up is likely to cost in the next twelve months.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct SpendView {
    /// What is due by then in any case, at the least of the prices paid last.
    pub low: MoneyView,
    /// What may be due by then, at the most of them.
    pub high: MoneyView,
    /// How many times something without a known price is likely due, what was never recorded among it.
    pub unpriced: usize,
    /// How many items were never recorded and may be due: they count in `high` or in `unpriced`.
    pub no_record: usize,
    /// For how many items a price is a share of a bill for several jobs.
    pub estimated: usize,
}

/// What it costs to do an item on another day than the plan proposes.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct MovedView {
    /// The item.
    pub item: ItemView,
    /// The day that was asked about.
    pub day: String,
    /// What it adds, in percent of what a usual job on this car costs; 0 when it adds nothing. What being late
    /// can lead to is not in it.
    #[ts(type = "number")]
    pub percent: i64,
    /// The same in money, where prices are known.
    pub extra: Option<MoneyView>,
    /// The day is after the item is due.
    pub late: bool,
    /// What it costs to ignore: 1 comfort to 5 the engine, 6 safety.
    pub weight: u8,
}

/// All visits that the plan proposes.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct VisitsView {
    /// The vehicle.
    pub vehicle: VehicleLine,
    /// Today.
    pub today: String,
    /// The visits of the next 24 months, soonest first.
    pub visits: Vec<PlannedVisitView>,
    /// It is certain that no other plan costs less by the weights of the planner.
    pub proven: bool,
    /// The next twelve months in money; nothing when no price is known.
    pub spend: Option<SpendView>,
}

/// One thing to get at the counter.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct GetView {
    /// For which item.
    pub item: ItemView,
    /// The key of the supply that the guide to the job names; empty for a part of the book.
    pub supply: String,
    /// What was fitted the last time, in the quantity that is needed now; nothing when the book holds no part for it.
    pub part: Option<PartView>,
    /// In what `at_home` and `to_buy` are counted, as in a part; empty when nothing is known of the quantity.
    pub measure: String,
    /// How much of it is at home and not taken by a row above; empty when there is none.
    pub at_home: String,
    /// How much of it is still to be bought; empty when what is at home suffices, or nothing is known of it.
    pub to_buy: String,
    /// Other numbers for the same part.
    pub same: Vec<NumberForm>,
    /// What warns of it.
    pub warning: Option<WarningView>,
    /// Where it was bought or fitted, by the visit's workshop; empty when the owner did it.
    pub workshop: String,
    /// The day of that visit.
    pub day: Option<String>,
    /// What was paid for it the last time that a price was written down, in a shop or at a visit.
    pub paid: Option<PaidView>,
    /// How long what was in before lasted; nothing when the book does not tell.
    pub lasted: Option<UsedView>,
}
