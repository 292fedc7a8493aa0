//! What a car needs: the catalogue of the trade, the plan for one car, and what is due.

mod catalogue;
mod due;
mod interval;
mod item;
mod plan;
mod state;

pub use catalogue::Catalogue;
pub use due::{CountedFrom, Done, DueLine, Facts, Phase, Why, due};
pub use interval::{Interval, PrintedDistance, Range, Schedule};
pub use item::{Action, Caution, Engines, Item, ItemRef, OwnName, Source, Stakes};
pub use plan::{Authority, Plan, PlanChange, PlannedItem, Setting, Standing};
pub use state::{Limit, SOON_DAYS, SOON_DISTANCE, State};
