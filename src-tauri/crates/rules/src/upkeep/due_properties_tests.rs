//! What holds of every car: harder driving, a turbocharger and bad findings never make anything due later.
#![allow(clippy::unwrap_used)]

use proptest::prelude::*;
use proptest::test_runner::TestCaseError;

use super::*;
use crate::running::Reading;
use crate::testing::{day, km, new_car, read};
use crate::upkeep::{Catalogue, Finding, Gauge, Milli, PrintedDistance};
use crate::vehicle::{Condition, EngineKind, Equipment, Fitting};

/// One thing in the book of an invented car: of an item, so many days after the start.
type Event<T> = (u32, i32, T);

/// What was done, each with the place of the kind of part among those of the item's row; 0 for none.
type Work = Vec<Event<usize>>;

/// What was found, each with the place of the finding among those of the item's row, where 0 is that all is well,
/// and how much of what there is to wear was gone, in percent, where it was measured.
type Looks = Vec<Event<(usize, Option<i64>)>>;

fn event<T: std::fmt::Debug>(what: impl Strategy<Value = T>) -> impl Strategy<Value = Event<T>> {
    (1_u32..70, 0_i32..3_500, what)
}

fn work(least: usize) -> impl Strategy<Value = Work> {
    prop::collection::vec(event(0_usize..6), least..60)
}

fn looks() -> impl Strategy<Value = Looks> {
    prop::collection::vec(event((0_usize..8, prop::option::of(0_i64..120))), 0..40)
}

/// Findings that call for work, and no measured value.
fn bad_looks() -> impl Strategy<Value = Looks> {
    prop::collection::vec(event((1_usize..8, Just(None))), 0..40)
}

fn conditions() -> impl Strategy<Value = Vec<Condition>> {
    prop::sample::subsequence(Condition::ALL.to_vec(), 0..=4)
}

/// A car of any engine, of whose fittings some are said to be there or not; how it is driven comes later.
fn any_car() -> impl Strategy<Value = Vehicle> {
    let engine = prop::sample::select(EngineKind::ALL.to_vec());
    let said = prop::collection::vec(prop::option::of(any::<bool>()), Fitting::ALL.len());
    (engine, said, any::<bool>()).prop_map(|(engine, said, known_from_new)| {
        let equipment = Fitting::ALL.into_iter().zip(said);
        let equipment = equipment.fold(Equipment::default(), |all, (fitting, has)| all.with(fitting, has));
        Vehicle { engine, known_from_new, equipment, ..new_car("2016-01-01") }
    })
}

fn driven(car: &Vehicle, conditions: &[Condition]) -> Vehicle {
    Vehicle { conditions: conditions.iter().copied().collect(), ..car.clone() }
}

/// The due lines of a car that goes 37 km a day, in order of item.
fn history(vehicle: &Vehicle, work: &Work, looks: &Looks) -> Vec<DueLine> {
    let start = day("2016-01-01");
    let at_day = |days: i32| Travelled(km(i64::from(days) * 37));
    let readings: Vec<_> = (0..40)
        .map(|month| Reading {
            day: start.plus_days(month * 90),
            ..read("2016-01-01", i64::from(month) * 90 * 37)
        })
        .collect();
    let track = Track::new(vehicle, &readings, &[]);
    let catalogue = Catalogue::shipped().unwrap();
    let done = work.iter().filter_map(|&(number, days, kind)| {
        let kinds = &catalogue.item(number)?.kinds;
        let kind = kind.checked_sub(1).and_then(|kind| kinds.get(kind)).map(|kind| kind.key.clone());
        let (item, day) = (ItemRef::Catalogue(number), start.plus_days(days));
        Some(Done { item, day, travelled: Some(at_day(days)), kind })
    });
    let found = looks.iter().filter_map(|&(number, days, (finding, worn))| {
        let row = catalogue.item(number)?;
        let finding = match finding.checked_sub(1) {
            Some(bad) => *row.due_when.get(bad.checked_rem(row.due_when.len())?)?,
            None => Finding::WithinLimits,
        };
        let value = row.gauge.zip(worn).map(|(gauge, worn)| worn_by(gauge, worn));
        let (item, day) = (ItemRef::Catalogue(number), start.plus_days(days));
        Some(Found { item, day, travelled: Some(at_day(days)), finding, value })
    });
    let (done, found): (Vec<_>, Vec<_>) = (done.collect(), found.collect());
    let plan = Plan::new(catalogue, vehicle, &[]);
    let pace = Pace::new(vehicle, &track);
    let today = day("2025-11-01");
    let facts = Facts { vehicle, plan: &plan, done: &done, found: &found, track: &track, pace: &pace, today };
    let mut lines = due(&facts);
    lines.sort_by(|a, b| a.item.cmp(&b.item));
    lines
}

/// What is measured when so many percent of what there is to wear are gone.
fn worn_by(gauge: Gauge, percent: i64) -> Milli {
    Milli(gauge.fresh.0 + (gauge.limit.0 - gauge.fresh.0) * percent / 100)
}

fn line_of<'a>(lines: &'a [DueLine], item: &ItemRef) -> Option<&'a DueLine> {
    lines.iter().find(|line| line.item == *item)
}

/// No line of the car that is used harder is later than the same one of the car that is used more easily, and
/// none is missing. Where both are counted alike, the interval of the first is no longer either.
fn never_later(easier: &[DueLine], harder: &[DueLine]) -> Result<(), TestCaseError> {
    for easier in easier {
        let Some(harder) = line_of(harder, &easier.item) else {
            return Err(TestCaseError::fail(format!("missing: {easier:?}")));
        };
        prop_assert!(harder.due_at <= easier.due_at, "{:?} and {:?}", harder, easier);
        // What was never recorded may have run out under hard use, and under easy use not yet even from new.
        if harder.state == State::NoRecord && matches!(easier.why.counted_from, CountedFrom::FirstUse(_)) {
            continue;
        }
        prop_assert_eq!(harder.due.is_some(), easier.due.is_some());
        if let Some((harder, easier)) = harder.due.zip(easier.due) {
            prop_assert!(harder.early <= easier.early);
            prop_assert!(harder.likely <= easier.likely);
            prop_assert!(harder.late <= easier.late);
        }
        let (long, short) = (&easier.why, &harder.why);
        prop_assert_eq!((&short.kind, short.phase), (&long.kind, long.phase));
        prop_assert!(short.interval.time() <= long.interval.time());
        let distance = |why: &Why| why.interval.distance().map(PrintedDistance::distance);
        prop_assert!(distance(short) <= distance(long));
    }
    Ok(())
}

proptest! {
    /// Driving a car harder never makes anything due later, so that driving it easier never makes it earlier;
    /// whatever the engine, its fittings, the kinds of part fitted and what was found.
    #[test]
    fn a_condition_more_never_makes_anything_later(
        car in any_car(),
        few in conditions(),
        more in conditions(),
        work in work(0),
        looks in looks(),
    ) {
        let both: Vec<_> = few.iter().chain(&more).copied().collect();
        let easier = history(&driven(&car, &few), &work, &looks);
        let harder = history(&driven(&car, &both), &work, &looks);
        prop_assert_eq!(easier.len(), harder.len());
        never_later(&easier, &harder)?;
    }

    /// Neither does a turbocharger, which only adds lines of its own where it was said that there is none.
    #[test]
    fn a_turbocharger_never_makes_anything_later(
        car in any_car(),
        conditions in conditions(),
        work in work(0),
        looks in looks(),
    ) {
        let car = driven(&car, &conditions);
        let with = |has| Vehicle { equipment: car.equipment.with(Fitting::Turbo, has), ..car.clone() };
        let blown = history(&with(Some(true)), &work, &looks);
        never_later(&history(&with(None), &work, &looks), &blown)?;
        never_later(&history(&with(Some(false)), &work, &looks), &blown)?;
    }

    /// What is found broken never makes anything later, whatever else is done, found and measured.
    #[test]
    fn a_finding_that_calls_for_work_never_makes_anything_later(
        car in any_car(),
        conditions in conditions(),
        work in work(0),
        looks in looks(),
        bad in bad_looks(),
    ) {
        let car = driven(&car, &conditions);
        let without = history(&car, &work, &looks);
        let with = history(&car, &work, &[looks, bad].concat());
        for before in &without {
            let after = line_of(&with, &before.item).unwrap();
            if let (Some(after), Some(before)) = (after.due, before.due) {
                prop_assert!(after.likely <= before.likely, "{:?}", after);
            }
        }
    }

    /// Where nothing was found, no line is due after its time is up, whatever its distance says.
    #[test]
    fn no_line_is_due_after_its_time_is_up(
        car in any_car(),
        conditions in conditions(),
        work in work(1),
    ) {
        for line in history(&driven(&car, &conditions), &work, &Looks::new()) {
            let Some((day, _)) = line.why.counted_from.place() else {
                prop_assert_eq!(line.state, State::NoRecord);
                continue;
            };
            let by_time = line.why.interval.time().map(|time| day.plus(time));
            prop_assert!(by_time.is_none_or(|by_time| line.due.unwrap().late <= by_time));
            prop_assert!(line.due.unwrap().likely > day);
        }
    }
}
