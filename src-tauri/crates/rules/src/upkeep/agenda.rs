//! From what is due to what there is to plan and to pay: the turns of every item in the time ahead.

use std::collections::{BTreeMap, BTreeSet};

use units::{Day, Distance, HalfMonths};

use super::visits::HORIZON_MONTHS;
use super::{
    ASSUMED, CountedFrom, DueLine, Effect, Facts, Interval, Item, ItemRef, Job, Phase, Pin, PlannedVisit,
    Seen, Site, Stakes, State, Timing, VisitCost, cost_of_moving, plan_visits,
};
use crate::costs::Price;
use crate::running::DaySpan;

/// How far ahead expected spending looks.
const SPEND_MONTHS: u16 = 12;

/// What keeping the car up is likely to cost in the next twelve months, in minor units of one currency.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Spend {
    /// For every time that is over by then at the latest, each at the least of the prices paid last.
    pub low: i64,
    /// For every time that may fall before then at the earliest, each at the most of them.
    pub high: i64,
    /// How many times something without a known price is likely due by then, what has no record among it.
    pub unpriced: usize,
    /// How many items without a record may be due by then: each counts from today on, in `high` or in `unpriced`.
    pub no_record: usize,
    /// Of how many items in `high` the price is, at least at one of the last times, a share of a bill for several jobs.
    pub estimated: usize,
}

/// Everything that falls due within [`HORIZON_MONTHS`], once for each time.
///
/// The later times of an item are counted from the day on which it is likely due or pinned, one interval apart; by
/// distance an interval is as long as the car takes for it. Where other work does an item along with it, the item has
/// no time of its own, and its next one is counted from there: nobody tests the brake fluid that was renewed last week.
/// An item without a record has no due day and is not planned, unless the owner pinned it: whether it was done is to be
/// found out first. A round of the car is no visit, and what was found on one asks for one and not for all the rounds
/// after it. `price` gives by what an item is planned ([`Price::firm`]), in minor
/// units of one currency.
pub fn jobs(facts: &Facts<'_>, lines: &[DueLine], price: impl Fn(&ItemRef) -> Option<i64>) -> Vec<Job> {
    let end = facts.today.plus(HalfMonths::months(HORIZON_MONTHS));
    let visited =
        || lines.iter().filter(|line| line.is_visited()).filter_map(|line| Some((line, facts.first(line)?)));
    let along = done_along(facts, visited(), end);
    let mut jobs = Vec::new();
    for (line, first) in visited() {
        let next = next_job(facts, line, facts.pin(line), &price);
        let life = life(facts, line);
        let along = along.get(&line.item).map(Vec::as_slice).unwrap_or_default();
        let most = if facts.is_round(&line.item) { 1 } else { MOST_TURNS };
        let turns =
            own_turns(facts, line, first, along, end).into_iter().take_while(|&(turn, _)| turn < most);
        jobs.extend(turns.map(|(turn, due)| match turn {
            0 => next.clone(),
            _ => Job { turn, due, life, pinned: None, ..next.clone() },
        }));
    }
    jobs
}

/// The part of its life within which an item that other work did along needs no work of its own again.
const FRESH: u32 = 4;

/// The places of the jobs for which nothing is left to do in a plan of them, since other work does them along, on the same
/// day or within a quarter of their lives before it (an assumption of this program). What is pinned is done all the same.
pub fn done_along_with(
    facts: &Facts<'_>,
    lines: &[DueLine],
    jobs: &[Job],
    visits: &[PlannedVisit],
) -> BTreeSet<usize> {
    let lines: BTreeMap<&ItemRef, &DueLine> = lines.iter().map(|line| (&line.item, line)).collect();
    let planned = || visits.iter().flat_map(|visit| visit.jobs.iter().map(|&at| (at, visit.day)));
    let mut along = Along::new();
    for (at, day) in planned() {
        for item in facts.does_along(&jobs[at].item) {
            along.entry(item).or_default().extend(lines.get(&jobs[at].item).map(|line| (day, *line)));
        }
    }
    let is_done = |job: &Job, day: Day| {
        let fresh = 0..=i64::from(job.life / FRESH);
        let stays =
            |other: &DueLine| job.turn == 0 && lines.get(&job.item).is_some_and(|own| !ends(other, own));
        along
            .get(&job.item)
            .into_iter()
            .flatten()
            .any(|&(done, other)| fresh.contains(&i64::from(day.days_since(done))) && !stays(other))
    };
    let without_work = planned().filter(|&(at, day)| jobs[at].pinned.is_none() && is_done(&jobs[at], day));
    without_work.map(|(at, _)| at).collect()
}

/// For each item the days on which other work does it along, with that work.
type Along<'a> = BTreeMap<ItemRef, Vec<(Day, &'a DueLine)>>;

/// On which days up to `end` work does other items along, in order.
fn done_along<'a>(facts: &Facts<'_>, lines: impl Iterator<Item = (&'a DueLine, Day)>, end: Day) -> Along<'a> {
    let mut along = Along::new();
    for (line, first) in lines {
        for item in facts.does_along(&line.item) {
            let days =
                turns(facts, line, first).map(|due| due.max(facts.today)).take_while(|day| *day <= end);
            along.entry(item).or_default().extend(days.map(|day| (day, line)));
        }
    }
    for days in along.values_mut() {
        days.sort_by_key(|&(day, _)| day);
    }
    along
}

/// Whether this work also ends what another item is due for: new coolant is no end of the leak that was found at a look,
/// but a new belt is what the look that found it cracked calls for.
fn ends(work: &DueLine, other: &DueLine) -> bool {
    fault(other).is_none_or(|found| fault(work) == Some(found))
}

/// What was found that makes it due at once.
fn fault(line: &DueLine) -> Option<Seen> {
    line.why.seen.filter(|seen| seen.effect == Effect::Now)
}

/// The next time of an item, on the day that the owner chose for it or on its own. What was never recorded is due on
/// the day that was chosen; `price` as in [`jobs`].
fn next_job(
    facts: &Facts<'_>,
    line: &DueLine,
    pinned: Option<Day>,
    price: impl Fn(&ItemRef) -> Option<i64>,
) -> Job {
    let row = facts.row(&line.item);
    let site = row.map_or(Site::Home, Item::site);
    Job {
        item: line.item.clone(),
        turn: 0,
        due: line.due.map(|due| due.likely).or(pinned).unwrap_or(facts.today),
        // What was found to need it now waits no longer than what would leave the car standing.
        stakes: if fault(line).is_some() { line.stakes.max(Stakes::Breakdown) } else { line.stakes },
        site,
        access: row.and_then(|row| row.access),
        // Of a look at home nothing is lost when it comes early but the time that it takes.
        price: price(&line.item).or((!line.renews && site == Site::Home).then_some(0)),
        life: first_life(facts, line),
        most_early: row.and_then(|row| row.most_early),
        pinned,
    }
}

/// What having an item done on the day `to` costs more than the plan of these jobs, and when it falls due by itself:
/// more than leaving its day to the planner, or, where it is not among the jobs, since it was never recorded or is due
/// beyond the horizon, more than not doing it. `price` as in [`jobs`], which gave the jobs.
pub fn cost_of_doing_on(
    facts: &Facts<'_>,
    line: &DueLine,
    jobs: &[Job],
    to: Day,
    price: impl Fn(&ItemRef) -> Option<i64>,
) -> (VisitCost, Day) {
    if let Some(at) = jobs.iter().position(|job| job.item == line.item && job.turn == 0) {
        return (cost_of_moving(jobs, &ASSUMED, facts.today, at, to), jobs[at].due);
    }
    let job = next_job(facts, line, Some(to), price);
    let due = job.due;
    let with: Vec<Job> = jobs.iter().cloned().chain([job]).collect();
    let cost = |jobs: &[Job]| plan_visits(jobs, &ASSUMED, facts.today).cost;
    (cost(&with) - cost(jobs), due)
}

/// What is likely to be spent; `price` gives what an item cost the last times, in minor units of one currency.
///
/// A look round the car whose price is a share of a bill costs nothing by itself, and no look round the car is among
/// what has no price: nobody would write that down.
pub fn spend(facts: &Facts<'_>, lines: &[DueLine], price: impl Fn(&ItemRef) -> Option<Price>) -> Spend {
    let end = facts.today.plus(HalfMonths::months(SPEND_MONTHS));
    let unrecorded = unrecorded(facts, lines);
    let sure = lines.iter().filter(|line| line.due.is_some_and(|due| due.late <= end));
    let done_with_others = done_with(facts, sure);
    let mut spend = Spend { no_record: unrecorded.len(), ..Spend::default() };
    for line in lines {
        let due = if unrecorded.contains(&line.item) { Some(DaySpan::exact(facts.today)) } else { line.due };
        let Some(DaySpan { early, likely, late }) = due else {
            continue;
        };
        // What is due on the last day falls into the year; done today it comes round on that day again, and is the next
        // year's, or what is overdue and comes round every year would be paid for twice.
        let within = |&(turn, due): &(usize, Day)| due < end || (due == end && turn == 0);
        let times = |first: Day| turns(facts, line, first).enumerate().take_while(within).count();
        let Some(price) = price(&line.item).filter(|price| !(line.round && price.estimated)) else {
            let most = if facts.is_round(&line.item) { 1 } else { usize::MAX };
            spend.unpriced += if line.round { 0 } else { times(likely).min(most) };
            continue;
        };
        let costs = |price: i64, times: usize| price.saturating_mul(i64::try_from(times).unwrap_or(i64::MAX));
        let sure = times(late).saturating_sub(usize::from(done_with_others.contains(&line.item)));
        let sure = if line.due.is_some() { sure } else { 0 };
        spend.low = spend.low.saturating_add(costs(price.low, sure));
        spend.high = spend.high.saturating_add(costs(price.high, times(early)));
        spend.estimated += usize::from(price.estimated && times(early) > 0);
    }
    spend
}

/// What counts as done with these.
fn done_with<'a>(facts: &Facts<'_>, lines: impl Iterator<Item = &'a DueLine>) -> BTreeSet<ItemRef> {
    lines.flat_map(|line| facts.does_along(&line.item)).collect()
}

/// What was never recorded and may be due, but for what counts as done with other work of that kind.
fn unrecorded(facts: &Facts<'_>, lines: &[DueLine]) -> BTreeSet<ItemRef> {
    let asked = |line: &&DueLine| line.state == State::NoRecord && !line.round;
    let unknown: Vec<&DueLine> = lines.iter().filter(asked).collect();
    let with_others = done_with(facts, unknown.iter().copied());
    let by_itself = |line: &&&DueLine| !with_others.contains(&line.item);
    unknown.iter().filter(by_itself).map(|line| line.item.clone()).collect()
}

/// The most times that an item is planned ahead: once a month. An interval typed too short by a factor of a
/// thousand asks for more than anyone would do.
const MOST_TURNS: u32 = HORIZON_MONTHS as u32;

/// By how many days a later turn may be off, counted in days of months that are not equally long.
const ROUNDED: i32 = 7;

/// The days of an item's times, the next one first; what is overdue counts from today.
fn turns(facts: &Facts<'_>, line: &DueLine, first: Day) -> impl Iterator<Item = Day> {
    let apart = days_apart(facts, line);
    let today = facts.today;
    std::iter::successors(Some(first), move |due| Some((*due).max(today).plus_days(apart?)))
        .take(MOST_TURNS as usize)
}

/// Days from one time of an item to the next; `None` for what is done once, after something else.
fn days_apart(facts: &Facts<'_>, line: &DueLine) -> Option<i32> {
    let days = || i32::try_from(life(facts, line)).unwrap_or(i32::MAX);
    (line.why.phase != Phase::After).then(days)
}

/// The times up to `end` at which an item asks for work of its own, with their places among all of its times: other work
/// that does it along on one of these days, in order, takes the place of a time that falls due then or later. A day
/// that the owner chose stands, and so does a fault that the other work does not end.
fn own_turns(
    facts: &Facts<'_>,
    line: &DueLine,
    first: Day,
    along: &[(Day, &DueLine)],
    end: Day,
) -> Vec<(u32, Day)> {
    let apart = days_apart(facts, line);
    let pinned = facts.pin(line).is_some();
    let mut along = along.iter().copied().peekable();
    let mut own = Vec::new();
    let mut due = first;
    for turn in (0..MOST_TURNS).take_while(|turn| *turn == 0 || apart.is_some()) {
        if due > end {
            break;
        }
        let done_by = due.max(facts.today);
        let stays = |work: &DueLine| turn == 0 && (pinned || !ends(work, line));
        // The days of later turns are known to a few days only: months are not equally long.
        let until = if turn == 0 { done_by } else { done_by.plus_days(ROUNDED) };
        let elsewhere = along.next_if(|&(day, work)| day <= until && !stays(work)).map(|(day, _)| day);
        if elsewhere.is_none() {
            own.push((turn, due));
        }
        due = due.max(elsewhere.unwrap_or(done_by).plus_days(apart.unwrap_or_default()));
    }
    own
}

/// Days that what is fitted now lasts: where a measurement says so, from its fitting to its limit.
fn first_life(facts: &Facts<'_>, line: &DueLine) -> u32 {
    let measured = line.why.seen.filter(|seen| seen.effect == Effect::Extrapolated);
    let fitted = line.why.counted_from.place().filter(|_| measured.is_some());
    let days = fitted.zip(line.due).map(|((day, _), due)| due.likely.days_since(day));
    let whole = days.and_then(|days| u32::try_from(days).ok()).filter(|days| *days > 0);
    whole.unwrap_or_else(|| days_of(facts, line.why.interval))
}

/// Days from one time to the next, after the next one.
fn life(facts: &Facts<'_>, line: &DueLine) -> u32 {
    let every = match facts.plan.item(&line.item).map(|planned| &planned.timing) {
        Some(Timing::Every(schedule)) if line.why.phase == Phase::First => schedule.every,
        _ => line.why.interval,
    };
    days_of(facts, every)
}

/// Days that an interval lasts: by time, or by distance at this car's pace, whichever is shorter.
fn days_of(facts: &Facts<'_>, interval: Interval) -> u32 {
    let by_time = interval.time().map(|time| i64::from(facts.today.plus(time).days_since(facts.today)));
    let per_day = facts.pace.per_day().map(Distance::millimetres).filter(|per_day| *per_day > 0);
    let by_distance = interval.distance().zip(per_day);
    let by_distance = by_distance.map(|(distance, per_day)| distance.distance().millimetres() / per_day);
    let days = [by_time, by_distance].into_iter().flatten().min().unwrap_or(i64::MAX);
    u32::try_from(days.max(1)).unwrap_or(u32::MAX)
}

impl<'a> Facts<'a> {
    /// The row of the catalogue; `None` for an item of the owner's own.
    fn row(&self, item: &ItemRef) -> Option<&'a Item> {
        self.plan.item(item).and_then(|planned| planned.row)
    }

    /// What counts as done along with an item.
    fn does_along(&self, item: &ItemRef) -> impl Iterator<Item = ItemRef> + use<'a> {
        self.row(item).into_iter().flat_map(|row| row.resets.iter().map(|&number| ItemRef::Catalogue(number)))
    }

    /// Whether an item belongs to a round of the car by itself, whatever was found on one.
    fn is_round(&self, item: &ItemRef) -> bool {
        self.row(item).is_some_and(Item::is_round)
    }

    /// When an item is next done: on the day that the owner chose, or on the day on which it is likely due.
    fn first(&self, line: &DueLine) -> Option<Day> {
        self.pin(line).or(line.due.map(|due| due.likely))
    }

    /// The day that the owner chose, as long as it lies ahead and the item was not done since he chose it.
    fn pin(&self, line: &DueLine) -> Option<Day> {
        let Pin { day, set } = self.plan.item(&line.item)?.pin?;
        let done = |done: Day| done > set || done >= day;
        let void = matches!(line.why.counted_from, CountedFrom::LastDone { day, .. } if done(day));
        Some(day).filter(|day| *day >= self.today && !void)
    }
}

#[cfg(test)]
#[path = "agenda_tests.rs"]
mod tests;
