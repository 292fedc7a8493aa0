//! What is due and what to get for it, as shown.

use book::DoneRow;
use rules::upkeep::{
    self, Authority, Catalogue, DueLine, Effect, Finding, Gauge, Interval, ItemRef, Limit, Milli, Phase,
    PlannedItem, Seen, Source, Stakes, State, Tightener, Timing,
};

use units::{Day, Distance};

use super::places::fingerprint;
use super::show::{bare_item, item_view, part_view, reading_of, unit_key};
use crate::car::{Car, Visit};
use crate::{
    CountedFrom, DueView, FirstKey, IntervalView, LeftOffView, MeasuredView, PhaseKey, PlanLine, Reading,
    SeenView, SpanView, StateKey, WhyView,
};

/// One line of what is due.
pub(crate) fn due_view(line: &DueLine, car: &Car, catalogue: &Catalogue) -> DueView {
    DueView {
        item: item_view(&line.item, catalogue),
        state: state_key(line.state),
        day: line.due.map(|due| due.likely.to_string()),
        between: line.due.map(|due| SpanView { early: due.early.to_string(), late: due.late.to_string() }),
        reading: line.due_shown.map(|shown| reading_of(shown, car.unit())),
        first: line.first.map(|limit| match limit {
            Limit::Time => FirstKey::Time,
            Limit::Distance => FirstKey::Distance,
            Limit::Finding => FirstKey::Finding,
        }),
        why: why_view(line, car, catalogue),
        round: line.round,
        workshop: workshop(&line.item, catalogue),
        weight: weight(line.stakes),
    }
}

pub(crate) fn workshop(item: &ItemRef, catalogue: &Catalogue) -> bool {
    catalogue.row(item).is_some_and(|row| row.workshop)
}

pub(crate) const fn state_key(state: State) -> StateKey {
    match state {
        State::Overdue => StateKey::Overdue,
        State::Due => StateKey::Due,
        State::Soon => StateKey::Soon,
        State::Ahead => StateKey::Ahead,
        State::NoRecord => StateKey::NoRecord,
    }
}

pub(crate) const fn weight(stakes: Stakes) -> u8 {
    stakes.number() + 1
}

fn why_view(line: &DueLine, car: &Car, catalogue: &Catalogue) -> WhyView {
    let (source, source_name) = authority_keys(&line.why.authority);
    WhyView {
        interval: interval_view(line.why.interval),
        source,
        source_name,
        phase: match line.why.phase {
            Phase::First => PhaseKey::First,
            Phase::Every => PhaseKey::Every,
            Phase::After => PhaseKey::After,
        },
        from: counted_from(line, car, catalogue),
        tightened_by: tightener_keys(&line.why.tightened_by),
        goes_with: line.why.goes_with.map(|number| bare_item(number, catalogue)),
        kind: line.why.kind.clone(),
        seen: line.why.seen.map(|seen| seen_view(seen, &line.why.undecided, catalogue)),
    }
}

/// The key of who says so, and the name of the publication or regulation.
pub(crate) fn authority_keys(authority: &Authority) -> (String, String) {
    let (key, name) = match authority {
        Authority::Handbook => ("handbook", ""),
        Authority::Owner => ("owner", ""),
        Authority::Catalogue(Source::Regulation(name)) => ("regulation", name.as_str()),
        Authority::Catalogue(Source::Published(name)) => ("published", name.as_str()),
        Authority::Catalogue(Source::CommonPractice) => ("common-practice", ""),
        Authority::Catalogue(Source::Owner) => ("papers", ""),
    };
    (key.to_owned(), name.to_owned())
}

/// An interval in the unit in which it was printed.
pub(crate) fn interval_view(interval: Interval) -> IntervalView {
    let distance = interval.distance();
    IntervalView {
        distance: distance
            .map(|printed| Reading { count: i64::from(printed.count()), unit: unit_key(printed.unit()) }),
        months: interval.time().map(|time| time.to_string()),
    }
}

fn counted_from(line: &DueLine, car: &Car, catalogue: &Catalogue) -> Option<CountedFrom> {
    match line.why.counted_from {
        upkeep::CountedFrom::Nothing => None,
        upkeep::CountedFrom::FirstUse(day) => Some(CountedFrom::FirstUse { day: day.to_string() }),
        upkeep::CountedFrom::Other { item, day, .. } => {
            Some(CountedFrom::Other { item: bare_item(item, catalogue), day: day.to_string() })
        }
        upkeep::CountedFrom::LastDone { day, .. } => {
            let rows = car.done.iter().filter(|row| row.day == day && does(row, &line.item, catalogue));
            // Of several visits on one day the one that is farthest on counts, and one without a reading last.
            let (shown, row) =
                rows.map(|row| (counted_reading(row, car), row)).max_by_key(|(shown, _)| *shown)?;
            Some(CountedFrom::Done {
                day: day.to_string(),
                reading: shown.map(|shown| reading_of(shown, car.unit())),
                visit: row.visit.to_string(),
            })
        }
    }
}

/// What the instrument showed when something was done, if it is the one now in the car and the reading is believed: the
/// number of an earlier one would say nothing beside those of this one, and from a mistyped one nothing was counted.
fn counted_reading(row: &DoneRow, car: &Car) -> Option<Distance> {
    row.shown.filter(|shown| {
        let travelled = car.track.counted(row.day, *shown);
        travelled.is_some_and(|travelled| car.track.shown(travelled) == *shown)
    })
}

/// Whether a row of what was done is the item itself, or one that counts for it.
fn does(row: &DoneRow, item: &ItemRef, catalogue: &Catalogue) -> bool {
    let resets =
        |done: u32, number: u32| catalogue.item(done).is_some_and(|done| done.resets.contains(&number));
    match (&row.item, item) {
        (ItemRef::Catalogue(done), ItemRef::Catalogue(number)) => done == number || resets(*done, *number),
        (done, item) => done == item,
    }
}

fn seen_view(seen: Seen, undecided: &[ItemRef], catalogue: &Catalogue) -> SeenView {
    let effect = match seen.effect {
        Effect::Now => "now",
        Effect::Holds => "holds",
        Effect::Extrapolated => "extrapolated",
        Effect::None => "none",
    };
    SeenView {
        day: seen.day.to_string(),
        finding: finding_key(seen.finding, seen.measured).to_owned(),
        value: seen.measured.map(|(value, gauge)| measured_view(gauge, Some(value))),
        effect: effect.to_owned(),
        undecided: undecided.iter().map(|item| item_view(item, catalogue)).collect(),
    }
}

/// The key of a finding; what was called well and is at its limit by the gauge is said to be so.
pub(crate) fn finding_key(finding: Finding, measured: Option<(Milli, Gauge)>) -> &'static str {
    let at_limit = measured.is_some_and(|(value, gauge)| gauge.is_reached(value));
    if finding == Finding::WithinLimits && at_limit { "at-limit" } else { finding.key() }
}

/// A measured value beside its limit; only the limit where there is no value.
pub(crate) fn measured_view(gauge: Gauge, value: Option<Milli>) -> MeasuredView {
    MeasuredView {
        what: gauge.what.key().to_owned(),
        value: value.map(|value| value.to_string()).unwrap_or_default(),
        limit: gauge.limit.to_string(),
        unit: gauge.what.unit().to_owned(),
    }
}

pub(crate) fn tightener_keys(tightened_by: &[Tightener]) -> Vec<String> {
    tightened_by.iter().map(|tightener| tightener.key().to_owned()).collect()
}

/// The last visit with a part for this item.
pub(super) fn last_served<'a>(item: &ItemRef, car: &'a Car) -> Option<&'a Visit> {
    car.visits.iter().rev().find(|visit| visit.parts_for(item).next().is_some())
}

/// The parts that served an item the last time.
pub(crate) fn last_parts(item: &ItemRef, car: &Car, catalogue: &Catalogue) -> Vec<crate::PartView> {
    let parts = last_served(item, car).into_iter().flat_map(|visit| visit.parts_for(item));
    parts.map(|part| part_view(part, catalogue)).collect()
}

/// An item of the plan in a list.
pub(crate) fn plan_line(planned: &PlannedItem<'_>, car: &Car, catalogue: &Catalogue, today: Day) -> PlanLine {
    let left_off = car.left_off.iter().find(|left| left.item == planned.item);
    let (source, source_name) = authority_keys(&planned.authority);
    let (interval, first, after) = match &planned.timing {
        Timing::Every(schedule) => (Some(schedule.every), schedule.first, &[][..]),
        Timing::After { items, within } => (Some(*within), None, items.as_slice()),
        Timing::Unset => (None, None, &[][..]),
    };
    PlanLine {
        item: item_view(&planned.item, catalogue),
        interval: interval.map(interval_view),
        first: first.map(interval_view),
        after: after.iter().map(|&number| bare_item(number, catalogue)).collect(),
        tightened_by: tightener_keys(&planned.tightened_by),
        goes_with: planned.goes_with.map(|number| bare_item(number, catalogue)),
        pinned: planned.pin.filter(|pin| pin.day >= today).map(|pin| pin.day.to_string()),
        source,
        source_name,
        off: planned.standing == upkeep::Standing::Off,
        left_off: left_off.map(|left| LeftOffView {
            day: left.day.to_string(),
            by: fingerprint(left.writer),
            handed_over: left.handed_over.to_string(),
        }),
        stakes: planned.stakes.key().to_owned(),
    }
}
