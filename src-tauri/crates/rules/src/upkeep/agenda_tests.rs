//! The turns of items ahead, and what they are likely to cost.
#![allow(clippy::unwrap_used)]

use units::DistanceUnit;

use super::*;
use crate::running::{Pace, Reading, Track, Travelled};
use crate::testing::{day, km, new_car, read};
use crate::upkeep::{Catalogue, Done, Plan, PlanChange, Setting, due};

const TABLE: &str = r#"
[[item]]
number = 1
key = "oil"
engines = "any"
action = "replace"
stakes = "engine"
minutes = 45
every = { distance = "10000 km", time = "12 months" }
source = "common practice"

[[item]]
number = 2
key = "belt"
engines = "any"
action = "replace"
stakes = "engine"
minutes = 300
every = { time = "120 months" }
source = "common practice"

[[item]]
number = 3
key = "pressure"
engines = "any"
action = "test"
stakes = "safety"
minutes = 5
every = { time = "1 months" }
source = "common practice"
"#;

fn item(number: u32) -> ItemRef {
    ItemRef::Catalogue(number)
}

/// A car that is new in 2020, goes 50 km a day, and had its oil changed at the end of 2021.
fn with<T>(changes: &[PlanChange], look: impl FnOnce(&Facts<'_>, &[DueLine]) -> T) -> T {
    let catalogue = Catalogue::parse(TABLE).unwrap();
    let vehicle = new_car("2020-01-01");
    let start = day("2020-01-01");
    let readings: Vec<Reading> = (0..=24)
        .map(|n| Reading { day: start.plus_days(n * 30), ..read("2020-01-01", i64::from(n) * 1_500) })
        .collect();
    let track = Track::new(&vehicle, &readings, &[]);
    let travelled = Some(Travelled(km(36_000)));
    let done = [Done { item: item(1), day: start.plus_days(720), travelled, kind: None }];
    let facts = Facts {
        vehicle: &vehicle,
        plan: &Plan::new(&catalogue, &vehicle, changes),
        done: &done,
        found: &[],
        track: &track,
        pace: &Pace::new(&vehicle, &track),
        today: start.plus_days(720),
    };
    look(&facts, &due(&facts))
}

fn pinned(on: &str, set: &str) -> PlanChange {
    let pin = Pin { day: day(on), set: day(set) };
    PlanChange { item: item(1), setting: Setting::Pinned(Some(pin)) }
}

/// 10 000 km take 200 days at 50 km a day, which comes before 12 months.
#[test]
fn an_item_has_a_turn_for_every_interval_within_the_horizon() {
    let jobs = with(&[], |facts, lines| jobs(facts, lines, |_| Some(6_000)));
    let today = day("2020-01-01").plus_days(720);
    let days: Vec<_> = jobs.iter().map(|job| (job.turn, job.due.days_since(today))).collect();
    assert_eq!(days, [(0, 200), (1, 400), (2, 600)]);
    assert!(jobs.iter().all(|job| job.item == item(1) && job.life == 200 && job.price == Some(6_000)));
}

#[test]
fn a_round_of_the_car_is_no_visit_and_neither_is_what_lies_beyond_the_horizon() {
    let (jobs, lines) = with(&[], |facts, lines| (jobs(facts, lines, |_| None), lines.len()));
    assert_eq!(lines, 3);
    assert!(jobs.iter().all(|job| job.item == item(1)));
}

#[test]
fn a_pin_holds_for_the_next_turn_until_it_is_done_or_past() {
    let pins = |change: PlanChange| -> Vec<_> {
        let jobs = with(&[change], |facts, lines| jobs(facts, lines, |_| None));
        jobs.iter().map(|job| job.pinned).collect()
    };
    let after_the_change = "2021-12-22";
    // The turns after a pin are counted from it, so that one more falls within the horizon.
    assert_eq!(pins(pinned("2022-03-01", after_the_change)), [Some(day("2022-03-01")), None, None, None]);
    let today = "2021-12-21";
    assert_eq!(pins(pinned("2022-03-01", today))[0], Some(day("2022-03-01")), "done, then pinned");
    assert_eq!(pins(pinned(today, today)), [None, None, None], "done on the very day");
    assert_eq!(pins(pinned("2022-03-01", "2021-06-01")), [None, None, None], "done since it was set");
    assert_eq!(pins(pinned("2021-12-20", after_the_change)), [None, None, None], "past");
}

#[test]
fn spending_counts_what_is_sure_and_what_may_be() {
    let spend = with(&[], |facts, lines| spend(facts, lines, |_| Some(6_000)));
    assert!(spend.low <= spend.high);
    // The oil comes round once in the year for certain. The pressure is checked twelve times, as a month
    // late it counts from today.
    assert!(spend.low >= 6_000 * 12, "{spend:?}");
    let unknown = with(&[], |facts, lines| super::spend(facts, lines, |_| None));
    assert_eq!((unknown.low, unknown.high), (0, 0));
    assert_eq!(unknown.unpriced, 1, "the oil; a look round the car costs nothing");
}

#[test]
fn an_interval_by_distance_lasts_as_long_as_the_car_takes_for_it() {
    assert_eq!(day("2021-12-21").days_since(day("2020-01-01")), 720);
    let per_day = with(&[], |facts, _| facts.pace.per_day().unwrap().round(DistanceUnit::Kilometre));
    assert_eq!(per_day, 50);
}
