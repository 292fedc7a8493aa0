//! From what is due to what there is to plan and to pay: the turns of every item in the time ahead.

use std::collections::BTreeSet;

use units::{Day, Distance, HalfMonths};

use super::visits::HORIZON_MONTHS;
use super::{
    CountedFrom, DueLine, Effect, Facts, Interval, Item, ItemRef, Job, Phase, Pin, PlannedItem, Site, Timing,
};
use crate::running::DaySpan;

/// How far ahead expected spending looks.
const SPEND_MONTHS: u16 = 12;

/// What keeping the car up is likely to cost in the next twelve months, in minor units of one currency.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Spend {
    /// For every time that is over by then at the latest.
    pub low: i64,
    /// For every time that may fall before then at the earliest.
    pub high: i64,
    /// How many times something without a known price is likely due by then.
    pub unpriced: usize,
}

/// Everything that falls due within [`HORIZON_MONTHS`], once for each time.
///
/// The later times of an item are counted from the day on which it is likely due or pinned, one interval apart; by
/// distance an interval is as long as the car takes for it. An item without a record has no due day and is
/// not planned, unless the owner pinned it: whether it was done is to be found out first. A round of the car
/// is no visit. `price` gives what an item cost the last time, in minor units of one currency.
pub fn jobs(facts: &Facts<'_>, lines: &[DueLine], price: impl Fn(&ItemRef) -> Option<i64>) -> Vec<Job> {
    let end = facts.today.plus(HalfMonths::months(HORIZON_MONTHS));
    let mut jobs = Vec::new();
    for line in lines.iter().filter(|line| !line.round) {
        let planned = facts.plan.item(&line.item);
        let row = planned.and_then(|planned| planned.row);
        let pin = planned.and_then(|planned| pin(planned, line, facts.today));
        let Some(due) = line.due.map(|due| due.likely).or(pin) else {
            continue;
        };
        let job = |turn: u32, due, life| Job {
            item: line.item.clone(),
            turn,
            due,
            stakes: line.stakes,
            site: row.map_or(Site::Home, Item::site),
            access: row.and_then(|row| row.access),
            price: price(&line.item),
            life,
            most_early: row.and_then(|row| row.most_early),
            pinned: pin.filter(|_| turn == 0),
        };
        if pin.unwrap_or(due) <= end {
            jobs.push(job(0, due, first_life(facts, line)));
        }
        let later = (1..).zip(turns(facts, line, pin.unwrap_or(due)).skip(1));
        let later = later.take_while(|&(_, due)| due <= end);
        jobs.extend(later.map(|(turn, due)| job(turn, due, life(facts, line))));
    }
    jobs
}

/// What is likely to be spent; `price` as in [`jobs`].
pub fn spend(facts: &Facts<'_>, lines: &[DueLine], price: impl Fn(&ItemRef) -> Option<i64>) -> Spend {
    let end = facts.today.plus(HalfMonths::months(SPEND_MONTHS));
    let done_with_others = done_with_others(facts, lines, end);
    let mut spend = Spend::default();
    for line in lines {
        let Some(DaySpan { early, likely, late }) = line.due else {
            continue;
        };
        let times = |first: Day| turns(facts, line, first).take_while(|due| *due <= end).count();
        let Some(price) = price(&line.item) else {
            // A look round the car costs nothing that anyone would write down.
            spend.unpriced += if line.round { 0 } else { times(likely) };
            continue;
        };
        let costs = |times: usize| price.saturating_mul(i64::try_from(times).unwrap_or(i64::MAX));
        let sure = times(late).saturating_sub(usize::from(done_with_others.contains(&line.item)));
        spend.low = spend.low.saturating_add(costs(sure));
        spend.high = spend.high.saturating_add(costs(times(early)));
    }
    spend
}

/// What counts as done with something else that is sure to be due by this day.
fn done_with_others(facts: &Facts<'_>, lines: &[DueLine], end: Day) -> BTreeSet<ItemRef> {
    let sure = lines.iter().filter(|line| line.due.is_some_and(|due| due.late <= end));
    let rows = sure.filter_map(|line| facts.plan.item(&line.item)?.row);
    rows.flat_map(|row| row.resets.iter().map(|&number| ItemRef::Catalogue(number))).collect()
}

/// The most times that an item is planned ahead: once a month. An interval typed too short by a factor of a
/// thousand asks for more than anyone would do.
const MOST_TURNS: usize = HORIZON_MONTHS as usize;

/// The days of an item's times, the next one first; what is overdue counts from today.
fn turns(facts: &Facts<'_>, line: &DueLine, first: Day) -> impl Iterator<Item = Day> {
    let apart = i32::try_from(life(facts, line)).unwrap_or(i32::MAX);
    let once = line.why.phase == Phase::After;
    let today = facts.today;
    std::iter::successors(Some(first), move |due| (!once).then(|| (*due).max(today).plus_days(apart)))
        .take(MOST_TURNS)
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

/// The day that the owner chose, as long as it lies ahead and the item was not done since he chose it.
fn pin(planned: &PlannedItem<'_>, line: &DueLine, today: Day) -> Option<Day> {
    let Pin { day, set } = planned.pin?;
    let done = |done: Day| done > set || done >= day;
    let void = matches!(line.why.counted_from, CountedFrom::LastDone { day, .. } if done(day));
    Some(day).filter(|day| *day >= today && !void)
}

#[cfg(test)]
#[path = "agenda_tests.rs"]
mod tests;
