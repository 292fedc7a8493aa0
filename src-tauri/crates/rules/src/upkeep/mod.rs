//! What a car needs: the catalogue of the trade, the plan for one car, and what is due.

mod agenda;
mod asked;
mod catalogue;
mod due;
mod finding;
mod handed;
mod interval;
mod item;
mod last;
mod plan;
mod seen;
mod state;
mod table;
mod visits;

pub use agenda::{Spend, cost_of_doing_on, done_along_with, jobs, spend};
pub use asked::Asked;
pub use catalogue::Catalogue;
pub use due::{CountedFrom, Done, DueLine, Facts, Phase, Why, due};
pub use finding::{Finding, Found, Gauge, Measured, Milli};
pub use handed::{HandedOn, handed_on};
pub use interval::{Interval, PrintedDistance, Range, Schedule};
pub use item::{
    Access, Action, Caution, Engines, Item, ItemRef, Kind, Missing, OwnName, Source, Stakes, Tightener,
    Timing,
};
pub use plan::{Authority, Pin, Plan, PlanChange, PlannedItem, Setting, Standing};
pub use seen::{Effect, Seen};
pub use state::{Limit, SOON_DAYS, SOON_DISTANCE, State};
pub use visits::{
    ASSUMED, HORIZON_MONTHS, Job, Lateness, PlannedVisit, Site, USUAL, VisitCost, VisitCosts, VisitPlan,
    cost_of_moving, plan_visits, usual_price,
};
