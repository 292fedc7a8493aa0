//! How what was found about an item moves its next time.

use units::{Day, Distance, HalfMonths};

use super::{CountedFrom, Facts, Finding, Found, Gauge, Interval, Milli, PlannedItem, Timing};
use crate::running::Travelled;

/// What was found last, and what it did to the next time.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Seen {
    /// When.
    pub day: Day,
    /// In a word.
    pub finding: Finding,
    /// As measured, with its limit.
    pub measured: Option<(Milli, Gauge)>,
    /// What came of it.
    pub effect: Effect,
}

/// What a finding does to the next time of an item.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Effect {
    /// It is due at once.
    Now,
    /// It holds for another half of its interval after the look.
    Holds,
    /// The measured value reaches its limit then.
    Extrapolated,
    /// None: an interval of the owner's handbook, or one that guards the engine or someone's safety, stands
    /// whatever a look says.
    None,
}

/// The limits by which an item falls due.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Bounds {
    /// By time.
    pub on: Option<Day>,
    /// By distance.
    pub at: Option<Travelled>,
    /// By what was found.
    pub found: Option<Day>,
}

/// What was found last moves the limits of an item that is counted from `start` by `interval`.
pub(super) fn see(
    facts: &Facts<'_>,
    planned: &PlannedItem<'_>,
    found: &[&Found],
    (start, interval): (CountedFrom, Interval),
    bounds: Bounds,
) -> (Bounds, Option<Seen>) {
    let Some((newest, earlier)) = found.split_last() else {
        return (bounds, None);
    };
    let gauge = planned.row.and_then(|row| row.gauge);
    let measured = newest.value.zip(gauge);
    let seen = |effect| Some(Seen { day: newest.day, finding: newest.finding, measured, effect });
    if calls_for_work(planned, newest.finding)
        || measured.is_some_and(|(value, gauge)| gauge.is_reached(value))
    {
        return (Bounds { found: Some(newest.day), ..bounds }, seen(Effect::Now));
    }
    if let Some((value, gauge)) = measured {
        let from = earlier.iter().rev().find_map(|found| Some((place(facts, found), found.value?)));
        let from = from.or_else(|| start.place().map(|place| (place, gauge.fresh)));
        let limit = from.and_then(|from| reach(from, (place(facts, newest), value), gauge));
        if let Some(limit) = limit {
            let bounds = extrapolated(planned, gauge, limit, bounds);
            return (bounds, seen(Effect::Extrapolated));
        }
    }
    if newest.finding == Finding::WithinLimits && may_hold(planned) {
        return (held(place(facts, newest), interval, bounds), seen(Effect::Holds));
    }
    (bounds, seen(Effect::None))
}

/// Whether the finding makes the item due: whatever the catalogue lists and, of an item of the owner's own,
/// everything that is not well.
fn calls_for_work(planned: &PlannedItem<'_>, finding: Finding) -> bool {
    match planned.row {
        Some(row) => row.due_when.contains(&finding),
        None => finding != Finding::WithinLimits,
    }
}

/// A handbook's interval stands, and no look makes a timing belt or brake fluid last.
fn may_hold(planned: &PlannedItem<'_>) -> bool {
    planned.authority.is_catalogue()
        && !planned.stakes.are_grave()
        && matches!(planned.timing, Timing::Every(_))
}

/// A day, and how far the car had gone on it.
type Place = (Day, Option<Travelled>);

fn place(facts: &Facts<'_>, found: &Found) -> Place {
    (found.day, found.travelled.or_else(|| facts.track.on(found.day)))
}

/// Where the straight line through two measurements meets the limit: by distance for what wears, where both
/// distances are known, else by time. `None` when nothing wore between them.
fn reach((from, then): (Place, Milli), (here, now): (Place, Milli), gauge: Gauge) -> Option<Place> {
    let gone = i128::from((then.0 - now.0).abs());
    let left = i128::from((now.0 - gauge.limit.0).abs());
    let wears = (now < then) == (gauge.limit < gauge.fresh);
    if gone == 0 || !wears {
        return None;
    }
    let travelled = from.1.zip(here.1).filter(|_| gauge.what.is_wear());
    if let Some((from, here_at)) = travelled.filter(|(from, to)| to > from) {
        let step = i128::from(here_at.since(from).millimetres());
        let more = i64::try_from(step.saturating_mul(left) / gone).ok()?;
        return Some((here.0, Some(here_at.plus(Distance::from_millimetres(more)))));
    }
    let days = i128::from(here.0.days_since(from.0));
    let more = i32::try_from(days * left / gone).ok().filter(|_| days > 0)?;
    Some((here.0.plus_days(more), None))
}

/// What the car wears off by going has gone as far as its measurement says, whatever the catalogue's
/// distance. Age keeps its limit, which a measurement can only shorten, and so does everything that the
/// owner's handbook has the say about.
fn extrapolated(planned: &PlannedItem<'_>, gauge: Gauge, limit: Place, bounds: Bounds) -> Bounds {
    let (on, at) = match limit {
        (_, Some(at)) => (None, Some(at)),
        (on, None) => (Some(on), None),
    };
    if at.is_some() && gauge.what.is_wear() && planned.authority.is_catalogue() {
        return Bounds { at, ..bounds };
    }
    let earlier_day = [bounds.on, on].into_iter().flatten().min();
    let earlier_at = [bounds.at, at].into_iter().flatten().min();
    Bounds { on: earlier_day, at: earlier_at, found: None }
}

/// Not before half of the interval has run again since the look (an assumption of this program: a part that
/// was well at a look is looked at again before it can have worn out).
fn held((day, travelled): Place, interval: Interval, bounds: Bounds) -> Bounds {
    let half_time = interval.time().map(|time| day.plus(HalfMonths(time.0.div_ceil(2))));
    let half_way = interval
        .distance()
        .zip(travelled)
        .map(|(distance, from)| from.plus(Distance::from_millimetres(distance.distance().millimetres() / 2)));
    Bounds {
        on: bounds.on.map(|on| half_time.map_or(on, |half| on.max(half))),
        at: bounds.at.map(|at| half_way.map_or(at, |half| at.max(half))),
        found: None,
    }
}

#[cfg(test)]
#[path = "seen_tests.rs"]
mod tests;
