//! What is known of one trouble.

use std::collections::BTreeSet;

use units::{Day, Distance};

use super::codes::Known;
use super::{Danger, Tool};
use crate::vehicle::Vehicle;

/// What is known of one trouble: the car, what it does, and what was found so far.
///
/// Keys that the tables do not know are passed over, so that a trouble written down by a newer version can
/// still be read; ask [`super::Trouble::symptom`] and its like first where a wrong key must be refused.
#[derive(Debug, Clone, PartialEq)]
pub struct Complaint<'a> {
    /// The car.
    pub vehicle: &'a Vehicle,
    /// The day on which is asked.
    pub today: Day,
    /// How far the car has gone, where known.
    pub distance: Option<Distance>,
    /// Keys of the symptoms that show.
    pub shown: Vec<String>,
    /// Keys of the symptoms that were asked about and do not show; one that stands in `shown` too shows.
    pub absent: Vec<String>,
    /// Codes that were read, with the causes at which they point.
    pub codes: Vec<CodeSign>,
    /// Numbers of the catalogue items that are overdue.
    pub overdue: Vec<u32>,
    /// What was done to the car of late.
    pub worked: Vec<Worked>,
    /// Keys of the causes that this car has had before.
    pub before: Vec<String>,
    /// What the checks said so far, in the order in which they were made.
    pub answers: Vec<Answered>,
    /// Keys of the tools that the owner has besides the usual ones.
    pub owned: BTreeSet<String>,
    /// Keys of usual tools that the owner lacks.
    pub lacking: BTreeSet<String>,
    /// It is dark, or soon will be.
    pub at_night: bool,
}

/// A code that was read.
#[derive(Debug, Clone, PartialEq)]
pub struct CodeSign {
    /// The code as it is said: `P0171`.
    pub code: String,
    /// The keys of the causes at which it points, each with the chance, above 0 and below 1, that the cause
    /// stores this code.
    pub points: Vec<(String, f64)>,
    /// What must be read before any list when it was read.
    pub danger: Option<Danger>,
}

/// An item of the catalogue that was done.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Worked {
    /// The item's number.
    pub item: u32,
    /// How many days before the trouble is asked about.
    pub days: u32,
}

/// What a check said.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Answer {
    /// Something is wrong there.
    Found,
    /// Nothing is wrong there, as far as could be seen.
    NotFound,
    /// It could not be made: it says nothing and is not asked again.
    Skipped,
}

/// A check that was made, or tried.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Answered {
    /// The check's key.
    pub check: String,
    /// What it said.
    pub answer: Answer,
}

impl CodeSign {
    /// What the table of codes says of a code.
    pub fn of(known: &Known) -> CodeSign {
        CodeSign { code: known.code.to_string(), points: known.points(), danger: known.danger }
    }
}

impl<'a> Complaint<'a> {
    /// A car of which nothing is known to be wrong yet.
    pub fn of(vehicle: &'a Vehicle, today: Day) -> Complaint<'a> {
        Complaint {
            vehicle,
            today,
            distance: None,
            shown: Vec::new(),
            absent: Vec::new(),
            codes: Vec::new(),
            overdue: Vec::new(),
            worked: Vec::new(),
            before: Vec::new(),
            answers: Vec::new(),
            owned: BTreeSet::new(),
            lacking: BTreeSet::new(),
            at_night: false,
        }
    }

    /// How old the car is, in years of 365.25 days; `None` when its first use is not known or lies ahead.
    pub(super) fn age(&self) -> Option<f64> {
        let days = self.today.days_since(self.vehicle.first_use?);
        (days >= 0).then(|| f64::from(days) / 365.25)
    }

    /// Whether the owner has a tool, as far as he said.
    pub(super) fn has(&self, tool: &Tool) -> bool {
        self.owned.contains(&tool.key) || tool.usual && !self.lacking.contains(&tool.key)
    }

    /// How often a check was made and found nothing.
    pub(super) fn looks(&self, check: &str) -> usize {
        let nothing = |answered: &&Answered| answered.check == check && answered.answer == Answer::NotFound;
        self.answers.iter().filter(nothing).count()
    }
}
