//! How what was found about an item moves its next time.

use units::{Day, Distance, HalfMonths};

use super::{
    CountedFrom, Facts, Finding, Found, Gauge, Interval, Limit, Measured, Milli, PlannedItem, Timing,
};
use crate::running::Travelled;

/// What was found that counts, and what it did to the next time.
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

impl Seen {
    /// The same without the effect, where another limit comes before the one that was worked out.
    #[must_use]
    pub(super) fn if_it_decides(self, first: Option<Limit>) -> Seen {
        let wears = self.measured.is_some_and(|(_, gauge)| gauge.what.is_wear());
        let decides = !wears || first == Some(Limit::Distance);
        match self.effect {
            Effect::Extrapolated if !decides => Seen { effect: Effect::None, ..self },
            _ => self,
        }
    }
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

/// What was found since an item was done moves the limits of an item that is counted from `start` by `interval`.
///
/// What calls for work counts until the work is done; of a look, and of an item that hurts nobody, until a later look
/// finds it well. Otherwise the last measurement counts, and after that the last look.
pub(super) fn see(
    facts: &Facts<'_>,
    planned: &PlannedItem<'_>,
    found: &[&Found],
    (start, interval): (CountedFrom, Interval),
    bounds: Bounds,
) -> (Bounds, Option<Seen>) {
    let Some(newest) = found.last() else {
        return (bounds, None);
    };
    let seen = |found: &Found, effect| {
        Some(Seen {
            day: found.day,
            finding: found.finding,
            measured: found.value.zip(gauge(planned)),
            effect,
        })
    };
    let drift = drift(facts, planned, found, (start, interval));
    if let Some(calling) = calling(planned, found) {
        // What had worn to its limit before anyone saw the damage has been due since then.
        return match drift.filter(|drift| drift.is_up_before(facts, calling.day)) {
            Some(drift) => (drift.moves(planned, bounds), seen(drift.found, Effect::Extrapolated)),
            None => (Bounds { found: Some(calling.day), ..bounds }, seen(calling, Effect::Now)),
        };
    }
    if let Some(drift) = drift {
        let moved = drift.moves(planned, bounds);
        let effect = if moved == bounds { Effect::None } else { Effect::Extrapolated };
        return (moved, seen(drift.found, effect));
    }
    if newest.finding == Finding::WithinLimits && may_hold(planned) {
        let held = held(place(facts, newest), interval, bounds);
        let holds = bounds.on.is_some() || bounds.at.is_some();
        return (held, seen(newest, if holds { Effect::Holds } else { Effect::None }));
    }
    (bounds, seen(newest, Effect::None))
}

fn gauge(planned: &PlannedItem<'_>) -> Option<Gauge> {
    planned.row.and_then(|row| row.gauge)
}

/// A measurement on its way to its limit.
struct Drift<'a> {
    found: &'a Found,
    gauge: Gauge,
    /// Where it reaches its limit.
    limit: Place,
}

/// The last measurement, unless it has reached its limit, when it calls for work instead.
fn drift<'a>(
    facts: &Facts<'_>,
    planned: &PlannedItem<'_>,
    found: &[&'a Found],
    counted: (CountedFrom, Interval),
) -> Option<Drift<'a>> {
    let gauge = gauge(planned).filter(|gauge| gauge.what.drifts())?;
    let last = found.iter().rfind(|found| found.value.is_some())?.day;
    let of_that_day = found.iter().filter(|found| found.day == last).copied();
    // The one that has worn most tells of all four wheels.
    let newest = of_that_day.filter_map(|found| Some((gauge.left(found.value?), found)));
    let (left, newest) = newest.min_by_key(|&(left, _)| left)?;
    let limit = (left > Milli(0)).then(|| reaches_limit(facts, gauge, newest, found, counted))??;
    Some(Drift { found: newest, gauge, limit })
}

impl Drift<'_> {
    /// Whether it reached its limit before a day.
    fn is_up_before(&self, facts: &Facts<'_>, day: Day) -> bool {
        let (on, at) = self.limit;
        let up = at.map_or(Some(on), |at| facts.reached(at).map(|span| span.likely));
        up.is_some_and(|up| up < day)
    }

    /// What the car wears off by going has gone as far as its measurement says, whatever the catalogue's
    /// distance. Age keeps its limit, which a measurement can only shorten, and so does everything that the
    /// owner's handbook has the say about.
    fn moves(&self, planned: &PlannedItem<'_>, bounds: Bounds) -> Bounds {
        let (on, at) = match self.limit {
            (_, Some(at)) => (None, Some(at)),
            (on, None) => (Some(on), None),
        };
        if at.is_some() && self.gauge.what.is_wear() && planned.authority.is_catalogue() {
            return Bounds { at, ..bounds };
        }
        let earlier_day = [bounds.on, on].into_iter().flatten().min();
        let earlier_at = [bounds.at, at].into_iter().flatten().min();
        Bounds { on: earlier_day, at: earlier_at, found: None }
    }
}

/// The first thing found that calls for work and that no later look has taken back: it has been due since then, however
/// often it was found again.
pub(super) fn calling<'a>(planned: &PlannedItem<'_>, found: &[&'a Found]) -> Option<&'a Found> {
    all_calling(planned, found).next()
}

/// Everything found that calls for work and that no later look has taken back, oldest first.
pub(super) fn all_calling<'a>(
    planned: &PlannedItem<'_>,
    found: &[&'a Found],
) -> impl Iterator<Item = &'a Found> {
    let gauge = gauge(planned);
    // Of several measurements the last one counts, and of those of one day the worst.
    let last_measured = found.iter().rev().find(|found| found.value.is_some()).map(|found| found.day);
    let at_its_limit = move |at: usize| {
        let value = found[at].value.filter(|_| Some(found[at].day) == last_measured);
        value.zip(gauge).is_some_and(|(value, gauge)| gauge.is_reached(value))
    };
    let calls = move |at: &usize| calls_for_work(planned, found[*at].finding) || at_its_limit(*at);
    // No look makes a part well that is to be replaced, but of what is only looked at that is all there is to tell.
    let looks = planned.row.is_some_and(|row| !row.action.mends());
    let stands = move |at: &usize| {
        let well_since =
            |later: &&Found| later.finding == Finding::WithinLimits && later.day > found[*at].day;
        !((looks || !planned.stakes.are_grave()) && found[at + 1..].iter().any(well_since))
    };
    (0..found.len()).filter(calls).filter(stands).map(|at| found[at])
}

/// Whether the finding makes the item due: whatever the catalogue lists and, of an item of the owner's own,
/// everything that is not well.
pub(super) fn calls_for_work(planned: &PlannedItem<'_>, finding: Finding) -> bool {
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
    (found.day, found.travelled.or_else(|| facts.went(found.day)))
}

/// Days that must lie between two measurements before a line is drawn through them: over a few days the error
/// of the gauge is larger than the wear (an assumption of this program).
const DAYS_APART: i32 = 90;

/// Where a measurement goes on to its limit: from the one before it that lies long enough back and shows any wear, else
/// from new, else as fast as its interval wears out all that there was when new: by distance what the car wears off by
/// going, and what ages by time.
fn reaches_limit(
    facts: &Facts<'_>,
    gauge: Gauge,
    newest: &Found,
    found: &[&Found],
    (start, interval): (CountedFrom, Interval),
) -> Option<Place> {
    let here = (place(facts, newest), newest.value?);
    let apart = |found: &&&Found| newest.day.days_since(found.day) >= DAYS_APART;
    let measured = found.iter().rev().filter(apart);
    let measured = measured.filter_map(|found| Some((place(facts, found), found.value?)));
    // What a used car is counted from bounds how old a part can be, and is not when it was new.
    let is_bound = matches!(start, CountedFrom::FirstUse(_)) && facts.vehicle.new_on().is_none();
    let fitted = start.place().filter(|_| !is_bound);
    let new = fitted.map(|place| (place, gauge.fresh));
    measured.chain(new).find_map(|from| reach(from, here, gauge)).or_else(|| {
        // Worn by as much as lies between new and the limit in one interval.
        let begin = fitted.is_none().then(|| before(here.0, interval, gauge.what))??;
        let spent = Milli(here.1.0.saturating_add(gauge.fresh.0).saturating_sub(gauge.limit.0));
        reach((begin, spent), here, gauge)
    })
}

/// The place one interval earlier: by distance for what the car wears off by going, else by time.
fn before((day, travelled): Place, interval: Interval, what: Measured) -> Option<Place> {
    if what.is_wear() {
        let back = Distance::from_millimetres(-interval.distance()?.distance().millimetres());
        return Some((day, Some(travelled?.plus(back))));
    }
    let days = day.plus(interval.time()?).days_since(day);
    Some((day.plus_days(-days), None))
}

/// Where the straight line through two measurements meets the limit: by distance for what wears, where both
/// distances are known, else by time. `None` when nothing wore between them.
fn reach((from, then): (Place, Milli), (here, now): (Place, Milli), gauge: Gauge) -> Option<Place> {
    let gone = (i128::from(then.0) - i128::from(now.0)).abs();
    let left = (i128::from(now.0) - i128::from(gauge.limit.0)).abs();
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
