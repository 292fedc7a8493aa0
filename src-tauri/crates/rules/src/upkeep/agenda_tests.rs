//! The turns of items ahead, and what they are likely to cost.
#![allow(clippy::unwrap_used)]

use units::DistanceUnit;

use super::*;
use crate::running::{Pace, Reading, Track, Travelled};
use crate::testing::{car, day, km, new_car, read};
use crate::upkeep::{Catalogue, Done, Finding, Found, Plan, PlanChange, Setting, due};
use crate::vehicle::Vehicle;

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
    with_car(TABLE, &new_car("2020-01-01"), changes, look)
}

/// The same of another catalogue and car.
fn with_car<T>(
    table: &str,
    vehicle: &Vehicle,
    changes: &[PlanChange],
    look: impl FnOnce(&Facts<'_>, &[DueLine]) -> T,
) -> T {
    let catalogue = Catalogue::parse(table).unwrap();
    let start = day("2020-01-01");
    let readings: Vec<Reading> = (0..=24)
        .map(|n| Reading { day: start.plus_days(n * 30), ..read("2020-01-01", i64::from(n) * 1_500) })
        .collect();
    let track = Track::new(vehicle, &readings, &[]);
    let travelled = Some(Travelled(km(36_000)));
    let done = [Done { item: item(1), day: start.plus_days(720), travelled, kind: None }];
    let facts = Facts {
        vehicle,
        plan: &Plan::new(&catalogue, vehicle, changes),
        done: &done,
        found: &[],
        track: &track,
        pace: &Pace::new(vehicle, &track),
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

/// A tyre that loses air asks for a look now, and not for a visit in each of the next 24 months.
#[test]
fn what_was_found_on_a_round_of_the_car_asks_for_one_visit() {
    let catalogue =
        Catalogue::parse(&TABLE.replace("minutes = 5\n", "minutes = 5\ndue_when = [\"leaking\"]\n")).unwrap();
    let vehicle = new_car("2020-01-01");
    let track = Track::new(&vehicle, &[], &[]);
    let today = day("2021-12-21");
    let leaking = Found {
        item: item(3),
        day: today.plus_days(-1),
        travelled: None,
        finding: Finding::Leaking,
        value: None,
    };
    let facts = Facts {
        vehicle: &vehicle,
        plan: &Plan::new(&catalogue, &vehicle, &[]),
        done: &[],
        found: &[leaking],
        track: &track,
        pace: &Pace::new(&vehicle, &track),
        today,
    };
    let lines = due(&facts);
    let planned = jobs(&facts, &lines, |_| None);
    let turns: Vec<_> = planned.iter().filter(|job| job.item == item(3)).map(|job| job.turn).collect();
    assert_eq!(turns, [0]);
    let pressure: Vec<DueLine> = lines.into_iter().filter(|line| line.item == item(3)).collect();
    assert_eq!(spend(&facts, &pressure, |_| None).unpriced, 1);
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

/// A price that was paid once, for this item alone.
fn once(number: u32, minor: i64) -> impl Fn(&ItemRef) -> Option<Price> {
    move |wanted| (*wanted == item(number)).then_some(Price::once(minor, false))
}

/// The oil is due in 200 days, and again after 400: once within the year. The pressure is a month late, so that it
/// counts from today: once at once, and every 31 days up to day 341.
#[test]
fn spending_counts_each_time_within_the_year() {
    let all = with(&[], |facts, lines| spend(facts, lines, |_| Some(Price::once(6_000, false))));
    assert_eq!(all, Spend { low: 13 * 6_000, high: 13 * 6_000, ..Spend::default() });
    let unknown = with(&[], |facts, lines| spend(facts, lines, |_| None));
    assert_eq!(unknown, Spend { unpriced: 1, ..Spend::default() }, "a look round the car costs nothing");
}

#[test]
fn the_range_holds_the_least_and_the_most_that_was_paid() {
    let mut price = Price::once(6_000, true);
    (price.low, price.high) = (5_500, 7_200);
    let spent = |paid: &'static [u32]| {
        let price =
            move |wanted: &ItemRef| paid.iter().any(|&number| *wanted == item(number)).then_some(price);
        with(&[], |facts, lines| spend(facts, lines, price))
    };
    let oil = Spend { low: 5_500, high: 7_200, estimated: 1, ..Spend::default() };
    assert_eq!(spent(&[1]), oil);
    assert_eq!(spent(&[1, 3]), oil, "its share of a bill is not the price of a look round the car");
}

/// A year's insurance that is overdue is paid for today, and again when the twelve months are over.
#[test]
fn what_comes_round_every_year_and_is_overdue_is_paid_for_once() {
    let table = TABLE.replace("every = { time = \"120 months\" }", "every = { time = \"12 months\" }");
    let spent = with_car(&table, &new_car("2020-01-01"), &[], |facts, lines| {
        assert!(lines.iter().any(|line| line.item == item(2) && line.state == State::Overdue));
        spend(facts, lines, once(2, 30_000))
    });
    assert_eq!((spent.low, spent.high), (30_000, 30_000));
}

/// Counted from new, a belt of ten years is due today, on the last day of the coming twelve months, or the day after.
#[test]
fn what_was_never_recorded_counts_unless_the_car_is_too_young_for_it() {
    let used = |first_use: Option<&str>| Vehicle { first_use: first_use.map(day), ..car() };
    let spent = |first_use, price: &dyn Fn(&ItemRef) -> Option<Price>| {
        with_car(TABLE, &used(first_use), &[], |facts, lines| spend(facts, lines, price))
    };
    let unpriced = |first_use| {
        let Spend { no_record, unpriced, .. } = spent(first_use, &once(1, 6_000));
        (no_record, unpriced)
    };
    assert_eq!(unpriced(None), (1, 1), "nobody knows how old it is");
    assert_eq!(unpriced(Some("2011-12-21")), (1, 1), "even from new it may be due");
    assert_eq!(unpriced(Some("2012-12-21")), (0, 1), "from new it falls due within the year");
    assert_eq!(unpriced(Some("2012-12-22")), (0, 0));
    let priced = Spend { high: 30_000, unpriced: 1, no_record: 1, ..Spend::default() };
    assert_eq!(spent(None, &once(2, 30_000)), priced, "the oil has no price; the belt is not certain");
}

/// With 36 000 km gone at 50 km a day, 40 000 km are reached in 80 days and 100 000 km in three and a half years.
#[test]
fn what_was_never_recorded_counts_once_the_car_has_gone_far_enough() {
    let table = |distance: &str| {
        let every = format!("every = {{ distance = \"{distance}\" }}");
        TABLE.replace("every = { time = \"120 months\" }", &every)
    };
    let count = |distance| {
        let vehicle = Vehicle { first_use: Some(day("2020-01-01")), ..car() };
        with_car(&table(distance), &vehicle, &[], |facts, lines| spend(facts, lines, |_| None).no_record)
    };
    assert_eq!([count("30000 km"), count("40000 km"), count("100000 km")], [1, 0, 0]);
}

/// A new belt counts as a look at it, so that only the belt is without a record.
#[test]
fn what_is_done_with_other_work_of_no_record_counts_once() {
    let table = TABLE.replace("minutes = 300", "minutes = 300\nresets = [\"look\"]")
        + r#"
[[item]]
number = 4
key = "look"
engines = "any"
action = "inspect"
stakes = "engine"
minutes = 20
every = { time = "24 months" }
source = "common practice"
"#;
    let spend = with_car(&table, &car(), &[], |facts, lines| spend(facts, lines, |_| None));
    assert_eq!((spend.no_record, spend.unpriced), (1, 2), "the belt; and the oil, which has a record");
}

/// A look every 250 days at 50 km a day.
const LOOK: &str = r#"
[[item]]
number = 4
key = "look"
engines = "any"
action = "inspect"
stakes = "repair"
minutes = 5
every = { distance = "12500 km" }
source = "common practice"
"#;

/// The table with that look, which a change of oil does along.
fn with_look() -> String {
    TABLE.replace("minutes = 45", "minutes = 45\nresets = [\"look\"]") + LOOK
}

#[test]
fn what_other_work_does_along_has_no_time_of_its_own_and_counts_from_there() {
    let days = |table: &str, changes: &[PlanChange]| -> Vec<_> {
        with_car(table, &new_car("2020-01-01"), changes, |facts, lines| {
            let jobs = jobs(facts, lines, |_| None);
            let looks = jobs.iter().filter(|job| job.item == item(4));
            looks.map(|job| (job.turn, job.due.days_since(facts.today))).collect()
        })
    };
    assert_eq!(days(&with_look(), &[]), [], "the oil comes round more often");
    // Oil in 400 days and in 800: a look in 250, and after the oil in 650.
    let rarely = with_look().replace("10000 km\", time = \"12 months", "20000 km");
    assert_eq!(days(&rarely, &[]), [(0, 250), (2, 650)]);
    let pin = Pin { day: day("2021-12-21").plus_days(300), set: day("2021-12-22") };
    let chosen = PlanChange { item: item(4), setting: Setting::Pinned(Some(pin)) };
    assert_eq!(days(&with_look(), &[chosen]), [(0, 250)], "a day of the owner's own choice stands");
}

/// The oil comes round every 400 days, the look every 402: a day or two are within the length of months.
#[test]
fn a_later_turn_that_falls_a_few_days_before_other_work_is_done_along() {
    let looks = |apart: &str| -> Vec<_> {
        let table =
            with_look().replace("10000 km\", time = \"12 months", "20000 km").replace("12500 km", apart);
        with_car(&table, &new_car("2020-01-01"), &[], |facts, lines| {
            let jobs = jobs(facts, lines, |_| None);
            jobs.iter().filter(|job| job.item == item(4)).map(|job| job.due.days_since(facts.today)).collect()
        })
    };
    // The first look is due on its own day; 199 days later stands for the change on day 400, and 190 do not.
    assert_eq!(looks("9950 km"), [199, 599]);
    assert_eq!(looks("9500 km"), [190, 380, 590]);
}

#[test]
fn nothing_is_left_to_do_shortly_after_other_work_did_it_along() {
    let is_done = |days: i32, pinned: bool| {
        with_car(&with_look(), &new_car("2020-01-01"), &[], |facts, lines| {
            let oil = jobs(facts, lines, |_| None).swap_remove(0);
            let look = Job { item: item(4), life: 200, pinned: pinned.then_some(facts.today), ..oil.clone() };
            let visit = |at, days| PlannedVisit {
                site: Site::Home,
                day: facts.today.plus_days(days),
                jobs: vec![at],
                cost: VisitCost::default(),
            };
            done_along_with(facts, lines, &[oil, look], &[visit(0, 0), visit(1, days)]) == BTreeSet::from([1])
        })
    };
    let on = |days: i32| is_done(days, false);
    assert_eq!([on(-1), on(0), on(50), on(51)], [false, true, true, false]);
    assert!(!is_done(0, true), "what is pinned is done all the same");
}

#[test]
fn what_is_found_faulty_waits_no_longer_than_what_leaves_the_car_standing() {
    let (catalogue, vehicle) = (Catalogue::shipped().unwrap(), car());
    let cabin_filter = 3;
    let planned = |found: &[Found]| {
        let track = Track::new(&vehicle, &[], &[]);
        let done = [Done { item: item(cabin_filter), day: day("2024-01-01"), travelled: None, kind: None }];
        let facts = Facts {
            vehicle: &vehicle,
            plan: &Plan::new(catalogue, &vehicle, &[]),
            done: &done,
            found,
            track: &track,
            pace: &Pace::new(&vehicle, &track),
            today: day("2024-03-02"),
        };
        let jobs = jobs(&facts, &due(&facts), |_| None);
        jobs.into_iter().find(|job| job.item == item(cabin_filter)).unwrap().stakes
    };
    let dirty = Found {
        item: item(cabin_filter),
        day: day("2024-03-01"),
        travelled: None,
        finding: Finding::Dirty,
        value: None,
    };
    assert_eq!(planned(&[]), Stakes::Comfort);
    assert_eq!(planned(&[dirty]), Stakes::Breakdown);
}

#[test]
fn a_look_at_home_costs_no_more_than_its_time_until_someone_paid_for_it() {
    let prices = |paid: Option<i64>| -> Vec<_> {
        with_car(&(TABLE.to_owned() + LOOK), &new_car("2020-01-01"), &[], |facts, lines| {
            let jobs = jobs(facts, lines, |wanted| paid.filter(|_| *wanted == item(4)));
            let first = |number| jobs.iter().find(|job| job.item == item(number)).unwrap().price;
            vec![first(1), first(4)]
        })
    };
    assert_eq!(prices(None), [None, Some(0)]);
    assert_eq!(prices(Some(4_000)), [None, Some(4_000)]);
}

/// New coolant does not stop a leak, so that the look for it stays; a belt found cracked is changed without another look.
#[test]
fn a_fault_that_other_work_does_not_end_stays_planned() {
    let planned = |found: &[(u32, Finding)]| -> Vec<u32> {
        let (catalogue, vehicle) = (Catalogue::shipped().unwrap(), car());
        let track = Track::new(&vehicle, &[], &[]);
        let found: Vec<Found> = found
            .iter()
            .map(|&(number, finding)| Found {
                item: item(number),
                day: day("2024-03-01"),
                travelled: None,
                finding,
                value: None,
            })
            .collect();
        let facts = Facts {
            vehicle: &vehicle,
            plan: &Plan::new(catalogue, &vehicle, &[]),
            done: &[],
            found: &found,
            track: &track,
            pace: &Pace::new(&vehicle, &track),
            today: day("2024-03-02"),
        };
        let jobs = jobs(&facts, &due(&facts), |_| None);
        let next = jobs.iter().filter(|job| job.turn == 0);
        next.filter_map(|job| catalogue.row(&job.item).map(|row| row.number)).collect()
    };
    let (coolant, coolant_test, belt, belt_look) = (9, 38, 11, 39);
    let mut leaks = planned(&[(coolant, Finding::Dirty), (coolant, Finding::Leaking)]);
    leaks.sort_unstable();
    assert_eq!(leaks, [coolant, coolant_test]);
    assert_eq!(planned(&[(belt_look, Finding::Cracked)]), [belt]);
}

#[test]
fn an_interval_by_distance_lasts_as_long_as_the_car_takes_for_it() {
    assert_eq!(day("2021-12-21").days_since(day("2020-01-01")), 720);
    let per_day = with(&[], |facts, _| facts.pace.per_day().unwrap().round(DistanceUnit::Kilometre));
    assert_eq!(per_day, 50);
}
