//! What is due: each item of the plan, counted from when it was last done, and why.

use std::cmp::Reverse;
use std::collections::BTreeMap;

use units::{Day, Distance};

use super::state::{Limit, State};
use super::{Authority, Interval, ItemRef, Plan, PlannedItem, Stakes, Standing};
use crate::running::{DaySpan, Pace, Track, Travelled};
use crate::vehicle::{Condition, Vehicle};

/// Everything that what is due depends on.
#[derive(Debug, Clone, Copy)]
pub struct Facts<'a> {
    /// The car.
    pub vehicle: &'a Vehicle,
    /// Its plan.
    pub plan: &'a Plan,
    /// What was done, in any order.
    pub done: &'a [Done],
    /// Its readings.
    pub track: &'a Track,
    /// How fast it goes.
    pub pace: &'a Pace,
    /// The day that counts as today.
    pub today: Day,
}

/// An item that was done.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Done {
    /// Which.
    pub item: ItemRef,
    /// When.
    pub day: Day,
    /// How far the car had gone, if the odometer was read.
    pub travelled: Option<Travelled>,
}

/// How one item stands today.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct DueLine {
    /// Which item.
    pub item: ItemRef,
    /// What ignoring it costs.
    pub stakes: Stakes,
    /// Overdue, due, soon, ahead or no record.
    pub state: State,
    /// When it falls due, by whichever comes first; `None` when there is no telling.
    pub due: Option<DaySpan>,
    /// How far the car will have gone when its interval by distance is up.
    pub due_at: Option<Travelled>,
    /// What the instrument now in the car shows then.
    pub due_shown: Option<Distance>,
    /// Which limit comes first; `None` when there is nothing to count from.
    pub first: Option<Limit>,
    /// Why.
    pub why: Why,
}

/// Why an item stands as it does.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Why {
    /// The interval that was used.
    pub interval: Interval,
    /// Who says so.
    pub authority: Authority,
    /// Which phase of the schedule it is from.
    pub phase: Phase,
    /// What it was counted from.
    pub counted_from: CountedFrom,
    /// What tightened it.
    pub tightened_by: Vec<Condition>,
}

/// A phase of a schedule.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Phase {
    /// Up to the first time, where the schedule sets that apart.
    First,
    /// From one time to the next.
    Every,
}

/// What an interval is counted from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum CountedFrom {
    /// The last time it was done.
    LastDone {
        /// When.
        day: Day,
        /// How far the car had gone: as read that day, or worked out from the readings around it.
        travelled: Option<Travelled>,
    },
    /// The first use of a car that the book knows from new.
    FirstUse(Day),
    /// Nothing: it was never recorded.
    Nothing,
}

/// How every active item of the plan stands today.
///
/// In this order: what is overdue and can wreck the engine or hurt someone, what of that kind was never
/// recorded, what else is overdue, due, due soon, never recorded, ahead; within each, by day, then by what
/// ignoring it costs.
pub fn due(facts: &Facts<'_>) -> Vec<DueLine> {
    let last_done = last_done(facts.done);
    let active = facts.plan.items().iter().filter(|planned| planned.standing == Standing::Active);
    let mut lines: Vec<_> =
        active.map(|planned| due_line(facts, planned, last_done.get(&planned.item).copied())).collect();
    lines.sort_by(|a, b| order(a).cmp(&order(b)));
    lines
}

/// The last time each item was done.
fn last_done(done: &[Done]) -> BTreeMap<&ItemRef, &Done> {
    let mut last: BTreeMap<&ItemRef, &Done> = BTreeMap::new();
    for done in done {
        let known = last.entry(&done.item).or_insert(done);
        if (done.day, done.travelled) > (known.day, known.travelled) {
            *known = done;
        }
    }
    last
}

fn due_line(facts: &Facts<'_>, planned: &PlannedItem, last: Option<&Done>) -> DueLine {
    let counted_from = counted_from(facts, last);
    let (interval, phase) = phase(planned, counted_from);
    let (day, travelled) = counted_from.start();
    let by_time = day.zip(interval.time()).map(|(day, time)| DaySpan::exact(day.plus(time)));
    let due_at = travelled.zip(interval.distance()).map(|(from, by)| from.plus(by.distance()));
    let by_distance = due_at.and_then(|at| reached(facts, at));
    let due = earlier(by_time, by_distance);
    let to_go = due_at.zip(now(facts).or(travelled)).map(|(at, now)| at.since(now));
    DueLine {
        item: planned.item.clone(),
        stakes: planned.stakes,
        state: State::of(due, to_go, facts.today),
        due,
        due_at,
        due_shown: due_at.map(|at| facts.track.shown(at)),
        first: first_limit(by_time, by_distance, due_at),
        why: Why {
            interval,
            authority: planned.authority.clone(),
            phase,
            counted_from,
            tightened_by: planned.tightened_by.clone(),
        },
    }
}

fn counted_from(facts: &Facts<'_>, last: Option<&Done>) -> CountedFrom {
    match (last, facts.vehicle.new_on()) {
        (Some(&Done { day, travelled, .. }), _) => {
            CountedFrom::LastDone { day, travelled: travelled.or_else(|| facts.track.on(day)) }
        }
        (None, Some(first_use)) => CountedFrom::FirstUse(first_use),
        (None, None) => CountedFrom::Nothing,
    }
}

impl CountedFrom {
    /// The day and the distance from which to count.
    fn start(self) -> (Option<Day>, Option<Travelled>) {
        match self {
            CountedFrom::LastDone { day, travelled } => (Some(day), travelled),
            CountedFrom::FirstUse(day) => (Some(day), Some(Travelled::NONE)),
            CountedFrom::Nothing => (None, None),
        }
    }
}

/// The first interval runs from new only; whatever was done once is in its second phase.
fn phase(planned: &PlannedItem, counted_from: CountedFrom) -> (Interval, Phase) {
    match (counted_from, planned.schedule.first) {
        (CountedFrom::FirstUse(_), Some(first)) => (first, Phase::First),
        _ => (planned.schedule.every, Phase::Every),
    }
}

/// When the car went, or will have gone, this far.
fn reached(facts: &Facts<'_>, at: Travelled) -> Option<DaySpan> {
    facts.track.reached(at).map(DaySpan::exact).or_else(|| facts.pace.reaches(at))
}

/// How far the car has likely gone by today, or had by the last reading if it is not known how fast it goes.
fn now(facts: &Facts<'_>) -> Option<Travelled> {
    let estimate = facts.pace.on(facts.today).map(|estimate| estimate.likely);
    estimate.or_else(|| facts.pace.last().map(|point| point.travelled))
}

fn earlier(by_time: Option<DaySpan>, by_distance: Option<DaySpan>) -> Option<DaySpan> {
    match (by_time, by_distance) {
        (Some(time), Some(distance)) => Some(time.or_earlier(distance)),
        (one, other) => one.or(other),
    }
}

fn first_limit(
    by_time: Option<DaySpan>,
    by_distance: Option<DaySpan>,
    due_at: Option<Travelled>,
) -> Option<Limit> {
    match (by_time, by_distance) {
        (Some(time), Some(distance)) if distance.likely < time.likely => Some(Limit::Distance),
        (Some(_), _) => Some(Limit::Time),
        (None, _) => due_at.map(|_| Limit::Distance),
    }
}

/// The line's place in the list.
fn order(line: &DueLine) -> (u8, bool, Option<Day>, Reverse<Stakes>, &ItemRef) {
    let urgency = match line.state {
        State::Overdue if line.stakes.are_grave() => 0,
        State::NoRecord if line.stakes.are_grave() => 1,
        State::Overdue => 2,
        State::Due => 3,
        State::Soon => 4,
        State::NoRecord => 5,
        State::Ahead => 6,
    };
    let day = line.due.map(|due| due.likely);
    // What has no day comes after what has one.
    (urgency, day.is_none(), day, Reverse(line.stakes), &line.item)
}

#[cfg(test)]
#[path = "due_tests.rs"]
mod tests;
