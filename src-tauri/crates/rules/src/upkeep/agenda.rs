//! From what is due to what there is to plan and to pay: the turns of every item in the time ahead.

use units::{Day, Distance, HalfMonths};

use super::visits::HORIZON_MONTHS;
use super::{Access, CountedFrom, DueLine, Facts, ItemRef, Job, Phase, Pin, PlannedItem};
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
/// The later times of an item are counted from the day on which it is likely due, one interval apart; by
/// distance an interval is as long as the car takes for it. An item without a record has no due day and is
/// not planned, unless the owner pinned it: whether it was done is to be found out first. A round of the car
/// is no visit, and neither is a day for papers. `price` gives what
/// an item cost the last time, in minor units of one currency.
pub fn jobs(facts: &Facts<'_>, lines: &[DueLine], price: impl Fn(&ItemRef) -> Option<i64>) -> Vec<Job> {
    let end = facts.today.plus(HalfMonths::months(HORIZON_MONTHS));
    let mut jobs = Vec::new();
    for line in lines.iter().filter(|line| !line.round) {
        let planned = facts.plan.item(&line.item);
        let access = planned.and_then(|planned| planned.row).and_then(|row| row.access);
        if access == Some(Access::Papers) {
            continue;
        }
        let pin = planned.and_then(|planned| pin(planned, line, facts.today));
        let Some(due) = line.due.map(|due| due.likely).or(pin) else {
            continue;
        };
        let job = |turn: u32, due| Job {
            item: line.item.clone(),
            turn,
            due,
            stakes: line.stakes,
            access,
            price: price(&line.item),
            life: life(facts, line),
            pinned: pin.filter(|_| turn == 0),
        };
        let turns = (0..).zip(turns(facts, line, due)).take_while(|&(turn, due)| turn == 0 || due <= end);
        jobs.extend(turns.filter(|&(_, due)| due <= end).map(|(turn, due)| job(turn, due)));
    }
    jobs
}

/// What is likely to be spent; `price` as in [`jobs`].
pub fn spend(facts: &Facts<'_>, lines: &[DueLine], price: impl Fn(&ItemRef) -> Option<i64>) -> Spend {
    let end = facts.today.plus(HalfMonths::months(SPEND_MONTHS));
    let mut spend = Spend::default();
    for line in lines {
        let Some(DaySpan { early, likely, late }) = line.due else {
            continue;
        };
        let times = |first: Day| turns(facts, line, first).take_while(|due| *due <= end).count();
        let Some(price) = price(&line.item) else {
            spend.unpriced += times(likely);
            continue;
        };
        let costs = |times: usize| price.saturating_mul(i64::try_from(times).unwrap_or(i64::MAX));
        spend.low = spend.low.saturating_add(costs(times(late)));
        spend.high = spend.high.saturating_add(costs(times(early)));
    }
    spend
}

/// The days of an item's times, the next one first; what is overdue counts from today.
fn turns(facts: &Facts<'_>, line: &DueLine, first: Day) -> impl Iterator<Item = Day> {
    let apart = i32::try_from(life(facts, line)).unwrap_or(i32::MAX);
    let once = line.why.phase == Phase::After;
    let today = facts.today;
    std::iter::successors(Some(first), move |due| (!once).then(|| (*due).max(today).plus_days(apart)))
}

/// Days from one time to the next: by time, or by distance at this car's pace, whichever is shorter.
fn life(facts: &Facts<'_>, line: &DueLine) -> u32 {
    let interval = line.why.interval;
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
    let done = matches!(line.why.counted_from, CountedFrom::LastDone { day, .. } if day >= set);
    Some(day).filter(|day| *day >= today && !done)
}

#[cfg(test)]
#[path = "agenda_tests.rs"]
mod tests;
