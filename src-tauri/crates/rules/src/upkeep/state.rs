//! In which state an item is today.

use units::{Day, Distance, DistanceUnit};

use crate::running::DaySpan;

/// An item due within this many days is due soon (common practice: time to buy parts and find a day).
pub const SOON_DAYS: i32 = 30;

/// An item due within this distance is due soon (common practice).
pub const SOON_DISTANCE: Distance = Distance::whole(1_000, DistanceUnit::Kilometre);

/// How an item stands today.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum State {
    /// The day has passed, or the reading, even if the odometer stands at the low end of its span.
    Overdue,
    /// Today is the day, or the odometer may have reached the reading: it lies within its span.
    Due,
    /// Within [`SOON_DAYS`] or [`SOON_DISTANCE`].
    Soon,
    /// Later than that.
    Ahead,
    /// Nothing to count from: never recorded, or only without the reading that an interval by distance needs.
    NoRecord,
}

/// What an item falls due by.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Limit {
    /// By time.
    Time,
    /// By distance.
    Distance,
    /// By what was found.
    Finding,
}

impl State {
    /// The state of an item that is due on this day, where that is known, and has this far to go, where it
    /// goes by distance.
    pub(super) fn of(due: Option<DaySpan>, to_go: Option<Distance>, today: Day) -> State {
        if due.is_none() && to_go.is_none() {
            return State::NoRecord;
        }
        match due {
            Some(due) if due.late < today => State::Overdue,
            Some(due) if due.early <= today => State::Due,
            Some(due) if due.likely.days_since(today) <= SOON_DAYS => State::Soon,
            _ if to_go.is_some_and(|to_go| to_go <= SOON_DISTANCE) => State::Soon,
            _ => State::Ahead,
        }
    }
}
