//! The demo: an invented household with two cars and nine years of upkeep, counted back from today.
//!
//! Every person, shop, make and part number is invented, and the same day always gives the same household, so
//! that pictures and tests of it hold. It is told in the forms that a person fills in: it comes in by the same
//! door as everything else.
//!
//! - `people` says who the household is, where it buys, and what it drives; `plans` what it settled for its cars.
//! - `pip` and `barge` say what was done to each car, in the terms of `jobs`; `parts` with what, `looks` what was
//!   found.
//! - `drive` lets the cars go, day by day; `fills`, `visits` and `meter` write down what that gave.
//! - `receipt`, `draw` and `outlines` make the papers.

mod barge;
mod chance;
mod draw;
mod drive;
mod fills;
mod jobs;
mod looks;
mod meter;
mod outlines;
mod parts;
mod people;
mod pip;
mod plans;
mod receipt;
mod tell;
mod visits;

use units::Day;

use crate::{ItemForm, MeasuredForm, PlanForm, ReadingForm, VehicleForm, VisitForm};

pub(crate) use draw::draw;
pub(crate) use receipt::Receipt;

/// One car of the household.
#[derive(Debug, Clone)]
pub(crate) struct DemoCar {
    /// What is known of it.
    pub(crate) vehicle: VehicleForm,
    /// The day on which its book begins.
    pub(crate) begins: Day,
    /// What was written down since, in ascending order of the day on which it was.
    pub(crate) steps: Vec<Step>,
}

/// Something that was written down.
#[derive(Debug, Clone)]
pub(crate) struct Step {
    /// The day on which it was written down; for some, long after the day that it names.
    pub(crate) written: Day,
    /// What.
    pub(crate) what: What,
}

/// What was written down. A mistyped reading stands among them until it is struck out, so that whoever writes
/// these steps has to keep what is asked about.
#[derive(Debug, Clone)]
pub(crate) enum What {
    /// A reading, mostly with fuel.
    Reading(ReadingForm),
    /// What was read off the engine's computer and a meter.
    Measured(MeasuredForm),
    /// A visit, with the receipt that belongs to it.
    Visit { form: VisitForm, receipt: Option<Receipt> },
    /// A receipt that waits in the tray.
    Tray(Receipt),
    /// The visit of an earlier step, as it should have been written.
    AmendVisit { of: usize, form: VisitForm, why: String },
    /// What an earlier step wrote is struck out.
    StrikeOut { of: usize, why: String },
    /// The plan for an item.
    Plan { item: ItemForm, change: PlanForm },
    /// The instrument was replaced.
    Instrument { day: String, old: String, new: String },
}

/// The household as its books stand on `today`.
pub(crate) fn household(today: Day) -> Vec<DemoCar> {
    people::cars(today).iter().map(|car| tell::tell(car, today)).collect()
}

#[cfg(test)]
mod looks_tests;
#[cfg(test)]
mod states_tests;
#[cfg(test)]
mod tests;
