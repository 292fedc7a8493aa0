//! What is due: each item of the plan, counted from when it was last done, and why.

use std::cmp::Reverse;

use units::{Day, Distance};

use super::last::{Last, LastDone};
use super::seen::{Bounds, Effect, Seen, calling, see};
use super::state::{Limit, State};
use super::{
    Authority, Found, Interval, Item, ItemRef, Plan, PlannedItem, PrintedDistance, Schedule, Stakes,
    Standing, Tightener, Timing,
};
use crate::running::{DaySpan, Pace, Point, Track, Travelled};
use crate::vehicle::Vehicle;

/// Everything that what is due depends on.
#[derive(Debug, Clone, Copy)]
pub struct Facts<'a> {
    /// The car.
    pub vehicle: &'a Vehicle,
    /// Its plan.
    pub plan: &'a Plan<'a>,
    /// What was done, in any order.
    pub done: &'a [Done],
    /// What was found without being done, in any order.
    pub found: &'a [Found],
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
    /// The key of the kind of part or fluid that was fitted, where someone said so.
    pub kind: Option<String>,
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
    /// What the instrument now in the car shows then; `None` where it never showed that, since it was fitted later.
    pub due_shown: Option<Distance>,
    /// Which limit comes first; `None` when there is nothing to count from.
    pub first: Option<Limit>,
    /// It renews, cleans or fills something, and does not only look at it.
    pub renews: bool,
    /// It is a look that belongs to a round of the car, and to no visit.
    pub round: bool,
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
    pub tightened_by: Vec<Tightener>,
    /// The number of the item that it goes with, where that comes round sooner than this would by itself.
    pub goes_with: Option<u32>,
    /// The kind of part or fluid that is fitted, where it brought its own interval.
    pub kind: Option<String>,
    /// What was found about it since it was last done.
    pub seen: Option<Seen>,
    /// The works among which that leaves the choice, where it calls for one and nobody said which.
    pub undecided: Vec<ItemRef>,
}

/// A phase of a schedule.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Phase {
    /// Up to the first time, where the schedule sets that apart.
    First,
    /// From one time to the next.
    Every,
    /// Once, after something else was done.
    After,
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
    /// The first use of a car that the book knows from new, or of a part that can be as old as the car: it was not due yet when the book was begun.
    FirstUse(Day),
    /// The last time that another item was done, which calls for this one.
    Other {
        /// The number of that item.
        item: u32,
        /// When.
        day: Day,
        /// How far the car had gone.
        travelled: Option<Travelled>,
    },
    /// Nothing: it was never recorded.
    Nothing,
}

impl DueLine {
    /// Whether it is worth a visit, and may be given a day: a round of the car is not.
    pub const fn is_visited(&self) -> bool {
        !self.round
    }
}

const DAYS_A_YEAR: i32 = 365;
/// Days within which a car of unknown pace is taken to go as far as something else calls for an item (an assumption of
/// this program): wheels that were off are to be checked by someone who reads no odometer, too.
const AFTER_DAYS: i32 = 14;
/// Of the distance within which something else calls for an item.
const LAPSES_AFTER: i64 = 10;
/// Days: who drives far every day forgets a loose wheel no sooner than others.
const LAPSES_NOT_WITHIN: i32 = 90;

/// How every active item of the plan stands today.
///
/// In this order: what is overdue or due and can wreck the engine or hurt someone, what of that kind was never
/// recorded, what else is overdue, due, due soon, never recorded, ahead; within each, what was found to call for
/// work, since that is known to be wrong and not only late; then by day, then by what ignoring it costs. A round of the car, such as a look at the oil level, is nothing that many write down,
/// so that late or without a record it comes with what is due soon.
pub fn due(facts: &Facts<'_>) -> Vec<DueLine> {
    let last = Last::new(facts.plan, facts.done, facts.found);
    let active = facts.plan.items().iter().filter(|planned| planned.standing == Standing::Active);
    let mut lines: Vec<_> = active.filter_map(|planned| due_line(facts, planned, &last)).collect();
    lines.sort_by(|a, b| order(a).cmp(&order(b)));
    lines
}

/// How an item stands; `None` for one that follows another and is not called for.
fn due_line(facts: &Facts<'_>, planned: &PlannedItem<'_>, last: &Last<'_>) -> Option<DueLine> {
    let why = why(facts, planned, last)?;
    let (day, travelled) = why.counted_from.start();
    let bounds = Bounds {
        on: day.zip(why.interval.time()).map(|(day, time)| day.plus(time)),
        at: travelled.zip(why.interval.distance()).map(|(from, by)| from.plus(by.distance())),
        found: None,
    };
    let found = last.found_since(facts.plan, planned);
    let (bounds, seen) = see(facts, planned, found, (why.counted_from, why.interval), bounds);
    let by_found = bounds.found.map(DaySpan::exact);
    let by_time = bounds.on.map(DaySpan::exact);
    let in_time =
        || day.filter(|_| why.phase == Phase::After).map(|day| DaySpan::exact(day.plus_days(AFTER_DAYS)));
    let by_distance = bounds.at.and_then(|at| facts.reached(at).or_else(in_time));
    let due = [by_found, by_time, by_distance].into_iter().flatten().reduce(DaySpan::or_earlier);
    let to_go = bounds.at.zip(now(facts).or(travelled)).map(|(at, now)| at.since(now));
    let first = first_limit(by_found, by_time, by_distance, bounds.at);
    let seen = seen.map(|seen| seen.if_it_decides(first));
    let calls = seen.filter(|seen| seen.effect == Effect::Now);
    let undecided = calls.map(|seen| last.undecided(facts.plan, planned, seen.finding)).unwrap_or_default();
    Some(DueLine {
        item: planned.item.clone(),
        stakes: planned.stakes,
        state: State::of(due, to_go, facts.today),
        due,
        due_at: bounds.at,
        due_shown: bounds.at.map(|at| facts.track.shown(at)).filter(|shown| *shown >= Distance::ZERO),
        first,
        renews: planned.row.is_none_or(|row| row.action.mends()),
        round: planned.row.is_some_and(Item::is_round) && seen.is_none_or(|seen| seen.effect != Effect::Now),
        why: Why { seen, undecided, ..why },
    })
}

/// The interval that holds, and what it is counted from.
fn why(facts: &Facts<'_>, planned: &PlannedItem<'_>, last: &Last<'_>) -> Option<Why> {
    let done = last.done(facts.plan, &planned.item);
    match &planned.timing {
        Timing::Every(schedule) => Some(why_every(facts, planned, *schedule, done)),
        Timing::After { items, within } => why_after(facts, planned, (items, *within), last).or_else(|| {
            let found = last.found_since(facts.plan, planned);
            calling(planned, found).map(|_| plain(planned, *within, Phase::After, CountedFrom::Nothing))
        }),
        Timing::Unset => None,
    }
}

fn why_every(
    facts: &Facts<'_>,
    planned: &PlannedItem<'_>,
    schedule: Schedule,
    done: Option<LastDone<'_>>,
) -> Why {
    let counted_from = counted_from(facts, done);
    let kind = done.and_then(|done| done.kind).and_then(|key| planned.kind_fitted(key));
    if let Some((kind, interval, tightened_by)) = kind {
        return Why {
            interval,
            authority: Authority::Catalogue(kind.source.clone()),
            phase: Phase::Every,
            counted_from,
            tightened_by,
            goes_with: None,
            kind: Some(kind.key.clone()),
            seen: None,
            undecided: Vec::new(),
        };
    }
    let counted_from =
        if counted_from == CountedFrom::Nothing { not_yet(facts, schedule) } else { counted_from };
    // The first interval runs from new only; whatever was done once is in its second phase.
    let (interval, phase) = match (counted_from, schedule.first) {
        (CountedFrom::FirstUse(_), Some(first)) => (first, Phase::First),
        _ => (schedule.every, Phase::Every),
    };
    plain(planned, interval, phase, counted_from)
}

/// The first use of a car whose first years nobody recorded, for what was not due yet when its book was begun, had nothing
/// been done since it was new: what was done later stands in the book. Of what has been due for a year it is likelier that
/// nobody wrote it down than that nobody did it (an assumption of this program).
fn not_yet(facts: &Facts<'_>, schedule: Schedule) -> CountedFrom {
    let first = schedule.first.unwrap_or(schedule.every);
    let a_year_ago = facts.today.plus_days(-DAYS_A_YEAR);
    let begun = facts.vehicle.kept_since.map_or(facts.today, |day| day.min(facts.today)).max(a_year_ago);
    // Where its pace is not known, the reading nearest to that day tells what there is to know.
    let points = facts.track.points();
    let read =
        || points.iter().find(|point| point.day >= begun).or(points.last()).map(|point| point.travelled);
    let went = facts.went(begun).or_else(read);
    let lay_ahead = |new: &Day| {
        let by_distance = |printed: PrintedDistance| {
            went.is_some_and(|went| went < Travelled::NONE.plus(printed.distance()))
        };
        first.time().is_none_or(|time| new.plus(time) > begun) && first.distance().is_none_or(by_distance)
    };
    facts.vehicle.first_use.filter(lay_ahead).map_or(CountedFrom::Nothing, CountedFrom::FirstUse)
}

/// What another item calls for, until it is done on that day or later.
fn why_after(
    facts: &Facts<'_>,
    planned: &PlannedItem<'_>,
    (items, within): (&[u32], Interval),
    last: &Last<'_>,
) -> Option<Why> {
    let done = |&item: &u32| Some((last.done(facts.plan, &ItemRef::Catalogue(item))?, item));
    let (call, item) = items.iter().filter_map(done).max_by_key(|(done, _)| (done.day, done.travelled))?;
    // Done on the same day it was part of the work, which helps only where no way has to be gone first.
    let at_once = planned.row.is_some_and(Item::serves_at_once);
    let answers = |own: LastDone<'_>| {
        (own.day, own.travelled) > (call.day, call.travelled) || (at_once && own.day == call.day)
    };
    let answered = last.done(facts.plan, &planned.item).is_some_and(answers);
    let travelled = call.travelled.or_else(|| facts.went(call.day));
    let counted_from = CountedFrom::Other { item, day: call.day, travelled };
    let called_for = !answered && !lapsed(facts, call.day, travelled, within);
    called_for.then(|| plain(planned, within, Phase::After, counted_from))
}

/// Whether it has no meaning any more to do what something else called for: after a year, or ten times the
/// distance if that took three months (assumptions of this program).
fn lapsed(facts: &Facts<'_>, day: Day, travelled: Option<Travelled>, within: Interval) -> bool {
    let gone = now(facts).zip(travelled).map(|(now, then)| now.since(then).millimetres());
    let far = within.distance().map(|within| within.distance().millimetres().saturating_mul(LAPSES_AFTER));
    let is_far = gone.zip(far).is_some_and(|(gone, far)| gone > far);
    let days = facts.today.days_since(day);
    days > DAYS_A_YEAR || (is_far && days > LAPSES_NOT_WITHIN)
}

fn plain(planned: &PlannedItem<'_>, interval: Interval, phase: Phase, counted_from: CountedFrom) -> Why {
    Why {
        interval,
        authority: planned.authority.clone(),
        phase,
        counted_from,
        tightened_by: planned.tightened_by.clone(),
        goes_with: planned.goes_with,
        kind: None,
        seen: None,
        undecided: Vec::new(),
    }
}

fn counted_from(facts: &Facts<'_>, last: Option<LastDone<'_>>) -> CountedFrom {
    match (last, facts.vehicle.new_on()) {
        (Some(LastDone { day, travelled, .. }), _) => {
            CountedFrom::LastDone { day, travelled: travelled.or_else(|| facts.went(day)) }
        }
        (None, Some(first_use)) => CountedFrom::FirstUse(first_use),
        (None, None) => CountedFrom::Nothing,
    }
}

impl Facts<'_> {
    /// How far the car had gone on a day without a reading: between two readings, or likely since the last one.
    pub(super) fn went(&self, day: Day) -> Option<Travelled> {
        let since_the_last = |last: &Point| last.day < day;
        self.track.on(day).or_else(|| {
            self.pace.last().as_ref().filter(|last| since_the_last(last))?;
            self.pace.on(day).map(|estimate| estimate.likely)
        })
    }

    /// When the car went, or will have gone, this far. A last reading that is not believed does not count.
    pub(super) fn reached(&self, at: Travelled) -> Option<DaySpan> {
        let believed =
            self.pace.doubtful().is_none() || self.pace.last().is_some_and(|last| last.travelled >= at);
        let went = self.track.reached(at).filter(|_| believed);
        went.map(DaySpan::exact).or_else(|| self.pace.reaches(at))
    }
}

impl CountedFrom {
    /// The day and the distance from which to count.
    fn start(self) -> (Option<Day>, Option<Travelled>) {
        match self.place() {
            Some((day, travelled)) => (Some(day), travelled),
            None => (None, None),
        }
    }

    /// The same, where there is one.
    pub(super) fn place(self) -> Option<(Day, Option<Travelled>)> {
        match self {
            CountedFrom::LastDone { day, travelled } | CountedFrom::Other { day, travelled, .. } => {
                Some((day, travelled))
            }
            CountedFrom::FirstUse(day) => Some((day, Some(Travelled::NONE))),
            CountedFrom::Nothing => None,
        }
    }
}

/// How far the car has likely gone by today, or had by the last reading if it is not known how fast it goes.
fn now(facts: &Facts<'_>) -> Option<Travelled> {
    let estimate = facts.pace.on(facts.today).map(|estimate| estimate.likely);
    estimate.or_else(|| facts.pace.last().map(|point| point.travelled))
}

fn first_limit(
    by_found: Option<DaySpan>,
    by_time: Option<DaySpan>,
    by_distance: Option<DaySpan>,
    due_at: Option<Travelled>,
) -> Option<Limit> {
    let spans = [(by_found, Limit::Finding), (by_time, Limit::Time), (by_distance, Limit::Distance)];
    let dated = spans.into_iter().filter_map(|(span, limit)| Some((span?.likely, limit)));
    let first = dated.min_by_key(|&(day, _)| day).map(|(_, limit)| limit);
    first.or_else(|| due_at.map(|_| Limit::Distance))
}

/// The line's place in the list.
fn order(line: &DueLine) -> (u8, bool, bool, Option<Day>, bool, Reverse<Stakes>, &ItemRef) {
    let urgency = match line.state {
        State::Overdue | State::Due | State::NoRecord if line.round => 5,
        State::Overdue | State::Due if line.stakes == Stakes::Safety => 0,
        State::Overdue | State::Due if line.stakes.are_grave() => 1,
        State::NoRecord if line.stakes.are_grave() => 2,
        State::Overdue => 3,
        State::Due => 4,
        State::Soon => 5,
        State::NoRecord => 6,
        State::Ahead => 7,
    };
    let day = line.due.map(|due| due.likely);
    // What has no day comes after what has one.
    // Of what was never recorded, a part that nobody renewed tells more than a look that nobody wrote down, and
    // an engine that stops dead more than what a look can still find.
    let unknown = line.state == State::NoRecord;
    let stakes = if unknown && line.stakes == Stakes::Engine { Stakes::Safety } else { line.stakes };
    let found = line.why.seen.is_some_and(|seen| seen.effect == Effect::Now);
    (urgency, day.is_none(), !found, day, unknown && !line.renews, Reverse(stakes), &line.item)
}

#[cfg(test)]
#[path = "due_tests.rs"]
mod tests;

#[cfg(test)]
#[path = "due_properties_tests.rs"]
mod properties_tests;
