//! What is due and what to get for it, as shown.

use rules::upkeep::{
    self, Authority, Catalogue, DueLine, Interval, ItemRef, Limit, Phase, PlannedItem, Source, Stakes, State,
};
use rules::vehicle::Condition;
use units::Day;

use super::show::{item_view, part_view, reading_of, unit_key};
use crate::car::{Car, Visit};
use crate::{
    CountedFrom, DueView, FirstKey, GetView, IntervalView, NextVisitView, Reading, StateKey, WhyView,
};

/// One line of what is due.
pub(crate) fn due_view(line: &DueLine, car: &Car, catalogue: &Catalogue) -> DueView {
    DueView {
        item: item_view(&line.item, catalogue),
        state: state_key(line.state),
        day: line.due.map(|due| due.likely.to_string()),
        reading: line.due_shown.map(|shown| reading_of(shown, car.unit())),
        first: line.first.map(|limit| match limit {
            Limit::Time => FirstKey::Time,
            Limit::Distance => FirstKey::Distance,
        }),
        why: why_view(line, car),
        workshop: workshop(&line.item, catalogue),
        weight: weight(line.stakes),
    }
}

pub(crate) fn workshop(item: &ItemRef, catalogue: &Catalogue) -> bool {
    matches!(item, ItemRef::Catalogue(number) if catalogue.item(*number).is_some_and(|item| item.workshop))
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

const fn weight(stakes: Stakes) -> u8 {
    match stakes {
        Stakes::Comfort => 1,
        Stakes::Economy => 2,
        Stakes::Repair => 3,
        Stakes::Breakdown => 4,
        Stakes::Engine => 5,
        Stakes::Safety => 6,
    }
}

fn why_view(line: &DueLine, car: &Car) -> WhyView {
    let (source, source_name) = authority_keys(&line.why.authority);
    WhyView {
        interval: interval_view(line.why.interval),
        source,
        source_name,
        first_phase: line.why.phase == Phase::First,
        from: counted_from(line, car),
        tightened_by: line
            .why
            .tightened_by
            .iter()
            .map(|condition| condition_key(*condition).to_owned())
            .collect(),
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
    };
    (key.to_owned(), name.to_owned())
}

const fn condition_key(condition: Condition) -> &'static str {
    match condition {
        Condition::ShortTrips => "short-trips",
        Condition::Towing => "towing",
        Condition::Dust => "dust",
        Condition::StandingTraffic => "standing",
    }
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

fn counted_from(line: &DueLine, car: &Car) -> Option<CountedFrom> {
    match line.why.counted_from {
        upkeep::CountedFrom::Nothing => None,
        upkeep::CountedFrom::FirstUse(day) => Some(CountedFrom::FirstUse { day: day.to_string() }),
        upkeep::CountedFrom::LastDone { day, .. } => {
            let row = car.done.iter().rev().find(|row| row.item == line.item && row.day == day)?;
            Some(CountedFrom::Done {
                day: day.to_string(),
                reading: row.shown.map(|shown| reading_of(shown, car.unit())),
                visit: row.visit.to_string(),
            })
        }
    }
}

/// The next visit in its first form: everything overdue, due or due soon, on the day on which the first of
/// them falls due, today at the earliest.
pub(crate) fn next_visit(
    lines: &[DueLine],
    visits: &[Visit],
    catalogue: &Catalogue,
    today: Day,
) -> Option<NextVisitView> {
    let pressing = |line: &&DueLine| matches!(line.state, State::Overdue | State::Due | State::Soon);
    let items: Vec<&ItemRef> = lines.iter().filter(pressing).map(|line| &line.item).collect();
    if items.is_empty() {
        return None;
    }
    let days = lines.iter().filter(pressing).filter_map(|line| line.due.map(|due| due.likely));
    let day = days.min().map_or(today, |day| day.max(today));
    Some(NextVisitView {
        day: day.to_string(),
        items: items.iter().map(|item| item_view(item, catalogue)).collect(),
        get: items.iter().flat_map(|item| to_get(item, visits, catalogue)).collect(),
    })
}

/// What was fitted for an item the last time, or a bare line where the book holds no part for it.
fn to_get(item: &ItemRef, visits: &[Visit], catalogue: &Catalogue) -> Vec<GetView> {
    let served = |visit: &&Visit| visit.content.parts.iter().any(|part| part.item.as_ref() == Some(item));
    let Some(visit) = visits.iter().rev().find(served) else {
        // A look or a test needs nothing from the counter.
        let consumes =
            matches!(item, ItemRef::Catalogue(number) if catalogue.item(*number).is_some_and(consumes));
        let line =
            GetView { item: item_view(item, catalogue), part: None, workshop: String::new(), day: None };
        return consumes.then_some(line).into_iter().collect();
    };
    let parts = visit.content.parts.iter().filter(|part| part.item.as_ref() == Some(item));
    parts
        .map(|part| GetView {
            item: item_view(item, catalogue),
            part: Some(part_view(part, catalogue)),
            workshop: visit.content.by.workshop().to_owned(),
            day: Some(visit.content.day.to_string()),
        })
        .collect()
}

fn consumes(item: &upkeep::Item) -> bool {
    use upkeep::Action;
    matches!(item.action, Action::Replace | Action::TopUp)
}

/// The parts that served an item the last time.
pub(crate) fn last_parts(item: &ItemRef, visits: &[Visit], catalogue: &Catalogue) -> Vec<crate::PartView> {
    to_get(item, visits, catalogue).into_iter().filter_map(|get| get.part).collect()
}

/// An item of the plan in a list.
pub(crate) fn plan_line(planned: &PlannedItem, catalogue: &Catalogue) -> crate::PlanLine {
    let (source, source_name) = authority_keys(&planned.authority);
    crate::PlanLine {
        item: item_view(&planned.item, catalogue),
        interval: interval_view(planned.schedule.every),
        first: planned.schedule.first.map(interval_view),
        source,
        source_name,
        off: planned.standing == upkeep::Standing::Off,
    }
}
