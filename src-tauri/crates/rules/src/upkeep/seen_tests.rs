//! What was found, the kind of part that is fitted, what one job does for another, and a day of the owner's choice.
#![allow(clippy::unwrap_used)]

use units::{Day, DistanceUnit};

use crate::running::{Pace, Reading, Track, Travelled};
use crate::testing::{day, km, new_car, read};
use crate::upkeep::*;
use crate::vehicle::{Condition, Conditions, Equipment, Fitting, Vehicle};

/// A table of this test's own, so that its numbers stand beside what is expected of them.
const TABLE: &str = r#"
[[item]]
number = 1
key = "plugs"
engines = "any"
action = "replace"
stakes = "breakdown"
minutes = 30
every = { distance = "30000 to 50000 km" }
tightened_by = ["short trips"]
due_when = ["sooty"]
source = "common practice"
[[item.kind]]
key = "iridium"
every = { distance = "60000 to 100000 km" }
source = "common practice"

[[item]]
number = 2
key = "tyres"
engines = "any"
action = "replace"
resets = ["tread-look"]
stakes = "safety"
minutes = 60
every = { time = "72 months" }
due_when = ["cracked"]
measured = { what = "tread", unit = "mm", limit = 3.0, fresh = 8.0, source = "common practice" }
source = "common practice"

[[item]]
number = 3
key = "tread-look"
engines = "any"
action = "inspect"
stakes = "safety"
minutes = 5
every = { time = "12 months" }
due_when = ["cracked"]
source = "common practice"

[[item]]
number = 4
key = "brake-fluid"
engines = "any"
action = "replace"
stakes = "safety"
minutes = 60
every = { time = "24 months" }
measured = { what = "water", unit = "%", limit = 3.0, fresh = 0.0, source = "common practice" }
source = "common practice"

[[item]]
number = 5
key = "timing-belt"
engines = "any"
only_if = ["timing belt"]
action = "replace"
stakes = "engine"
minutes = 300
every = { distance = "100000 km" }
due_when = ["cracked"]
source = "common practice"

[[item]]
number = 6
key = "wheel-torque"
engines = "any"
action = "test"
stakes = "safety"
minutes = 10
after = { items = ["tyres"], distance = "50 to 100 mi" }
source = "common practice"

[[item]]
number = 7
key = "inspection-day"
engines = "any"
action = "attend"
stakes = "safety"
minutes = 60
source = "owner"

[[item]]
number = 9
key = "brake-look"
engines = "any"
action = "inspect"
stakes = "safety"
minutes = 30
every = { time = "12 months" }
due_when = ["worn"]
source = "common practice"

[[item]]
number = 10
key = "pads"
engines = "any"
action = "replace"
answers = ["brake-look"]
stakes = "safety"
minutes = 60
every = { distance = "60000 km" }
due_when = ["worn"]
source = "common practice"

[[item]]
number = 8
key = "wiper"
engines = "any"
action = "replace"
stakes = "comfort"
minutes = 5
every = { time = "12 months" }
source = "common practice"
"#;

const PLUGS: u32 = 1;
const TYRES: u32 = 2;
const TREAD_LOOK: u32 = 3;
const BRAKE_FLUID: u32 = 4;
const TIMING_BELT: u32 = 5;
const WHEEL_TORQUE: u32 = 6;
const INSPECTION_DAY: u32 = 7;
const WIPER: u32 = 8;
const BRAKE_LOOK: u32 = 9;
const PADS: u32 = 10;

/// New on the first day of 2020, and 10 000 km farther after every 100 days.
#[derive(Clone)]
struct Case {
    vehicle: Vehicle,
    done: Vec<Done>,
    found: Vec<Found>,
    changes: Vec<PlanChange>,
}

fn start() -> Day {
    day("2020-01-01")
}

fn item(number: u32) -> ItemRef {
    ItemRef::Catalogue(number)
}

fn case() -> Case {
    Case { vehicle: new_car("2020-01-01"), done: vec![], found: vec![], changes: vec![] }
}

impl Case {
    fn done(mut self, number: u32, days: i32, kind: Option<&str>) -> Case {
        let travelled = Some(Travelled(km(i64::from(days) * 100)));
        let done = Done {
            item: item(number),
            day: start().plus_days(days),
            travelled,
            kind: kind.map(str::to_owned),
        };
        self.done.push(done);
        self
    }

    fn found(mut self, number: u32, days: i32, finding: Finding, value: Option<i64>) -> Case {
        let travelled = Some(Travelled(km(i64::from(days) * 100)));
        let day = start().plus_days(days);
        self.found.push(Found { item: item(number), day, travelled, finding, value: value.map(Milli) });
        self
    }

    fn settled(mut self, number: u32, setting: Setting) -> Case {
        self.changes.push(PlanChange { item: item(number), setting });
        self
    }

    fn lines(&self, today: i32) -> Vec<DueLine> {
        let catalogue = Catalogue::parse(TABLE).unwrap();
        let readings: Vec<Reading> = (0..=today / 50)
            .map(|n| Reading { day: start().plus_days(n * 50), ..read("2020-01-01", i64::from(n) * 5_000) })
            .collect();
        let track = Track::new(&self.vehicle, &readings, &[]);
        due(&Facts {
            vehicle: &self.vehicle,
            plan: &Plan::new(&catalogue, &self.vehicle, &self.changes),
            done: &self.done,
            found: &self.found,
            track: &track,
            pace: &Pace::new(&self.vehicle, &track),
            today: start().plus_days(today),
        })
    }

    fn line(&self, number: u32, today: i32) -> Option<DueLine> {
        self.lines(today).into_iter().find(|line| line.item == item(number))
    }

    fn due_on(&self, number: u32, today: i32) -> Day {
        self.line(number, today).unwrap().due.unwrap().likely
    }
}

/// Common practice: copper plugs 30 000 to 50 000 km, iridium plugs 60 000 to 100 000 km.
#[test]
fn the_kind_fitted_brings_its_own_range_and_counts_from_its_fitting() {
    let copper = case().done(PLUGS, 100, None).line(PLUGS, 200).unwrap();
    assert_eq!((copper.due_at, copper.why.kind), (Some(Travelled(km(60_000))), None));
    let iridium = case().done(PLUGS, 100, Some("iridium"));
    let line = iridium.line(PLUGS, 200).unwrap();
    assert_eq!((line.due_at, line.why.kind.as_deref()), (Some(Travelled(km(110_000))), Some("iridium")));
    let town = Case {
        vehicle: Vehicle {
            conditions: Conditions { short_trips: true, ..Conditions::default() },
            ..new_car("2020-01-01")
        },
        ..iridium
    };
    let line = town.line(PLUGS, 200).unwrap();
    assert_eq!(line.due_at, Some(Travelled(km(70_000))));
    assert_eq!(line.why.tightened_by, [Tightener::Driven(Condition::ShortTrips)]);
}

#[test]
fn a_handbook_outranks_the_kind_and_an_unknown_kind_changes_nothing() {
    let every =
        Interval::new(Some(PrintedDistance::new(20_000, DistanceUnit::Kilometre).unwrap()), None).unwrap();
    let case_of = |kind| case().done(PLUGS, 100, Some(kind));
    let handbook = case_of("iridium").settled(PLUGS, Setting::Interval(Schedule::every(every)));
    assert_eq!(handbook.line(PLUGS, 200).unwrap().due_at, Some(Travelled(km(30_000))));
    assert_eq!(case_of("moonstone").line(PLUGS, 200).unwrap().due_at, Some(Travelled(km(60_000))));
}

/// Common practice: plugs that are black and sooty are due now, whatever the distance.
#[test]
fn a_finding_that_calls_for_work_makes_it_due_that_day_until_it_is_done() {
    let sooty = case().done(PLUGS, 100, None).found(PLUGS, 150, Finding::Sooty, None);
    let line = sooty.line(PLUGS, 200).unwrap();
    assert_eq!((line.state, line.first), (State::Overdue, Some(Limit::Finding)));
    assert_eq!(line.due.unwrap().likely, start().plus_days(150));
    assert_eq!(line.why.seen.unwrap().effect, Effect::Now);
    let again = case().done(PLUGS, 100, None).found(PLUGS, 150, Finding::Sooty, None);
    let again = again.found(PLUGS, 180, Finding::Sooty, None).line(PLUGS, 200).unwrap();
    assert_eq!(
        again.due.unwrap().likely,
        start().plus_days(150),
        "found again, it is due since the first time"
    );
    let mended = sooty.done(PLUGS, 150, None).line(PLUGS, 200).unwrap();
    assert_eq!((mended.state, mended.why.seen), (State::Ahead, None));
    let noisy = case().done(PLUGS, 100, None).found(PLUGS, 150, Finding::Noisy, None);
    assert_eq!(noisy.line(PLUGS, 200).unwrap().state, State::Ahead, "the table does not list it");
}

#[test]
fn good_at_a_look_holds_for_half_an_interval_more_but_not_for_a_timing_belt_or_a_handbook() {
    let due_at = |case: Case, number, today| case.line(number, today).unwrap().due_at;
    let good = |number| case().found(number, 490, Finding::WithinLimits, None);
    assert_eq!(due_at(case(), PLUGS, 490), Some(Travelled(km(50_000))));
    assert_eq!(due_at(good(PLUGS), PLUGS, 490), Some(Travelled(km(49_000 + 25_000))));
    assert_eq!(good(BRAKE_FLUID).due_on(BRAKE_FLUID, 490), day("2022-01-01"));
    assert_eq!(due_at(good(TIMING_BELT), TIMING_BELT, 490), Some(Travelled(km(100_000))));
    let early = case().found(PLUGS, 10, Finding::WithinLimits, None);
    assert_eq!(due_at(early, PLUGS, 100), Some(Travelled(km(50_000))), "it never shortens");
    let every =
        Interval::new(Some(PrintedDistance::new(50_000, DistanceUnit::Kilometre).unwrap()), None).unwrap();
    let handbook = good(PLUGS).settled(PLUGS, Setting::Interval(Schedule::every(every)));
    assert_eq!(due_at(handbook, PLUGS, 490), Some(Travelled(km(50_000))));
}

/// From 8 mm when new to 6 mm after 20 000 km: 3 mm, where a maker of tyres advises to change summer tyres,
/// after 50 000 km.
#[test]
fn tread_is_extrapolated_by_distance_to_its_limit() {
    let worn = case().done(TYRES, 0, None).found(TYRES, 200, Finding::WithinLimits, Some(6_000));
    let line = worn.line(TYRES, 200).unwrap();
    assert_eq!((line.due_at, line.first), (Some(Travelled(km(50_000))), Some(Limit::Distance)));
    assert_eq!(line.why.seen.unwrap().effect, Effect::Extrapolated);
    // Good tread does not make old rubber young: the 72 months of age stay.
    let deep = worn.line(TYRES, 200).unwrap().due.unwrap().late;
    assert!(deep <= day("2026-01-01"));
    let hardly_worn = case().done(TYRES, 0, None).found(TYRES, 200, Finding::WithinLimits, Some(7_900));
    assert_eq!(hardly_worn.due_on(TYRES, 200), day("2026-01-01"));
    // From then on it wears half as fast: 1 mm in 20 000 km, so that 5 mm last for 40 000 km more.
    let slower = worn.found(TYRES, 400, Finding::WithinLimits, Some(5_000));
    assert_eq!(slower.line(TYRES, 400).unwrap().due_at, Some(Travelled(km(40_000 + 40_000))));
}

#[test]
fn a_value_at_its_limit_is_due_and_one_that_did_not_fall_says_nothing() {
    let at = |value| case().done(TYRES, 0, None).found(TYRES, 200, Finding::WithinLimits, Some(value));
    assert_eq!(at(3_000).line(TYRES, 200).unwrap().first, Some(Limit::Finding));
    assert_eq!(at(3_001).line(TYRES, 200).unwrap().why.seen.unwrap().effect, Effect::Extrapolated);
    let unworn = at(8_000).line(TYRES, 200).unwrap();
    assert_eq!((unworn.why.seen.unwrap().effect, unworn.due_at), (Effect::None, None));
}

/// Water in brake fluid: from none to 2 % in 400 days makes 3 % after 600, before its 24 months are up.
#[test]
fn what_ages_is_extrapolated_by_time_and_only_ever_shortened() {
    let wet = case().done(BRAKE_FLUID, 0, None).found(BRAKE_FLUID, 400, Finding::WithinLimits, Some(2_000));
    assert_eq!(wet.due_on(BRAKE_FLUID, 400), start().plus_days(600));
    let dry = case().done(BRAKE_FLUID, 0, None).found(BRAKE_FLUID, 400, Finding::WithinLimits, Some(500));
    assert_eq!(dry.due_on(BRAKE_FLUID, 400), day("2022-01-01"));
}

#[test]
fn renewing_one_thing_counts_as_looking_at_the_other() {
    assert_eq!(case().due_on(TREAD_LOOK, 100), day("2021-01-01"));
    assert_eq!(case().done(TYRES, 200, None).due_on(TREAD_LOOK, 300), start().plus_days(200 + 366 - 1));
    let looked = case().done(TREAD_LOOK, 200, None);
    assert_eq!(looked.line(TYRES, 300).unwrap().why.counted_from, CountedFrom::FirstUse(start()));
}

/// Tighten wheel bolts again 50 to 100 miles after they were off (advice of tyre dealers).
#[test]
fn what_follows_another_is_called_for_once() {
    assert_eq!(case().line(WHEEL_TORQUE, 100), None);
    let changed = case().done(TYRES, 200, None);
    let line = changed.line(WHEEL_TORQUE, 200).unwrap();
    assert_eq!(line.why.phase, Phase::After);
    assert_eq!(line.due_at.unwrap().since(Travelled(km(20_000))), crate::testing::mi(100));
    assert_eq!(changed.line(WHEEL_TORQUE, 216).unwrap().state, State::Overdue);
    assert_eq!(changed.line(WHEEL_TORQUE, 300), None, "after so far it has no meaning any more");
    assert_eq!(changed.done(WHEEL_TORQUE, 201, None).line(WHEEL_TORQUE, 206), None);
}

#[test]
fn what_only_papers_say_waits_for_the_owner() {
    assert_eq!(case().line(INSPECTION_DAY, 100), None);
    let every = Interval::new(None, Some(units::HalfMonths::months(24))).unwrap();
    let given = case().settled(INSPECTION_DAY, Setting::Interval(Schedule::every(every)));
    assert_eq!(given.due_on(INSPECTION_DAY, 100), day("2022-01-01"));
}

#[test]
fn a_chain_needs_no_belt_and_what_nobody_said_counts_as_there() {
    let with = |equipment| Case { vehicle: Vehicle { equipment, ..new_car("2020-01-01") }, ..case() };
    assert!(case().line(TIMING_BELT, 100).is_some());
    let chain = Equipment::default().with(Fitting::TimingChain, Some(true));
    assert_eq!(with(chain).line(TIMING_BELT, 100), None);
}

#[test]
fn a_pin_leaves_the_interval_alone() {
    let pin = Pin { day: day("2020-09-01"), set: day("2020-05-01") };
    let pinned = case().settled(WIPER, Setting::Off).settled(WIPER, Setting::Pinned(Some(pin)));
    assert_eq!(pinned.line(WIPER, 100), None, "switched off it stays");
    let plan = |changes: &[PlanChange]| {
        let catalogue = Catalogue::parse(TABLE).unwrap();
        Plan::new(&catalogue, &new_car("2020-01-01"), changes).item(&item(WIPER)).unwrap().pin
    };
    let set = PlanChange { item: item(WIPER), setting: Setting::Pinned(Some(pin)) };
    let back = PlanChange { item: item(WIPER), setting: Setting::Pinned(None) };
    assert_eq!(plan(std::slice::from_ref(&set)), Some(pin));
    assert_eq!(plan(&[set, back]), None);
}

/// A look is what finds the fault, so that its finding stands on the very day; a repair ends it.
#[test]
fn what_a_look_finds_on_its_own_day_counts() {
    let looked = case().done(TREAD_LOOK, 200, None).found(TREAD_LOOK, 200, Finding::Cracked, None);
    let line = looked.line(TREAD_LOOK, 200).unwrap();
    assert_eq!(line.first, Some(Limit::Finding));
    let renewed = case().done(PLUGS, 200, None).found(PLUGS, 200, Finding::Sooty, None);
    assert_eq!(renewed.line(PLUGS, 200).unwrap().why.seen, None);
}

/// Pads do not grow: what a look found is not undone by another look, but by new ones.
#[test]
fn what_a_look_found_stands_until_the_work_it_calls_for_or_a_look_that_finds_all_well() {
    let first = |case: &Case, today| case.line(BRAKE_LOOK, today).unwrap().first;
    let worn = || case().done(BRAKE_LOOK, 100, None).found(BRAKE_LOOK, 100, Finding::Worn, None);
    assert_eq!(first(&worn().done(BRAKE_LOOK, 110, None), 120), Some(Limit::Finding));

    let renewed = worn().done(PADS, 105, None);
    assert_eq!(first(&renewed, 120), Some(Limit::Time));
    assert_eq!(renewed.due_on(BRAKE_LOOK, 120), day("2021-04-10"), "a year from the look, not from the pads");
    assert_eq!(first(&worn().done(PADS, 100, None), 120), Some(Limit::Time));
    let again = renewed.done(BRAKE_LOOK, 110, None).found(BRAKE_LOOK, 110, Finding::Worn, None);
    assert_eq!(first(&again, 120), Some(Limit::Finding));

    let well = worn().done(BRAKE_LOOK, 110, None).found(BRAKE_LOOK, 110, Finding::WithinLimits, None);
    assert_eq!(first(&well, 120), Some(Limit::Time));
}

#[test]
fn what_calls_for_work_stands_until_the_work_is_done() {
    // Where it hurts nobody, a later look may take it back; where it does, only the work.
    let plugs = case().found(PLUGS, 100, Finding::Sooty, None);
    let noted = plugs.found(PLUGS, 110, Finding::Dirty, None);
    assert_eq!(noted.line(PLUGS, 120).unwrap().first, Some(Limit::Finding));
    let well = noted.found(PLUGS, 115, Finding::WithinLimits, None);
    assert_eq!(well.line(PLUGS, 120).unwrap().why.seen.unwrap().effect, Effect::Holds);
    let belt = case().found(TIMING_BELT, 100, Finding::Cracked, None);
    let looked = belt.found(TIMING_BELT, 110, Finding::WithinLimits, None);
    assert_eq!(looked.line(TIMING_BELT, 120).unwrap().first, Some(Limit::Finding));
    let shallow = case().done(TYRES, 0, None).found(TYRES, 200, Finding::WithinLimits, Some(2_800));
    let noisy = shallow.found(TYRES, 210, Finding::Noisy, None);
    assert_eq!(noisy.line(TYRES, 220).unwrap().first, Some(Limit::Finding));
}

#[test]
fn damage_seen_after_a_measured_limit_was_reached_does_not_make_it_due_later() {
    // From 8 to 4 mm in 300 days, so that 3 mm are left after 375.
    let worn = case().done(TYRES, 0, None).found(TYRES, 300, Finding::WithinLimits, Some(4_000));
    let cracked_after = |days| {
        let line = worn.clone().found(TYRES, days, Finding::Cracked, None).line(TYRES, 400).unwrap();
        (line.due.unwrap().likely, line.first, line.why.seen.unwrap().effect)
    };
    let found = start().plus_days(350);
    assert_eq!(cracked_after(350), (found, Some(Limit::Finding), Effect::Now));
    assert_eq!(cracked_after(390), (start().plus_days(375), Some(Limit::Distance), Effect::Extrapolated));
}

#[test]
fn a_second_measurement_a_week_later_does_not_stop_the_wear() {
    let worn = case().done(TYRES, 0, None).found(TYRES, 400, Finding::WithinLimits, Some(4_000));
    assert_eq!(worn.line(TYRES, 400).unwrap().due_at, Some(Travelled(km(50_000))));
    let again = worn.found(TYRES, 407, Finding::WithinLimits, Some(4_100));
    let at = again.line(TYRES, 407).unwrap().due_at.unwrap();
    assert!((Travelled(km(50_000))..Travelled(km(53_000))).contains(&at), "{at:?}");
}

/// Of the 5 mm between new and the limit 1 mm is left, and the interval takes 50 000 km for all of them.
#[test]
fn one_measurement_of_unknown_past_wears_on_as_fast_as_the_interval_goes() {
    let table = TABLE.replace("every = { time = \"72 months\" }", "every = { distance = \"50000 km\" }");
    let catalogue = Catalogue::parse(&table).unwrap();
    let vehicle = crate::testing::car();
    let track = Track::new(&vehicle, &[read("2024-01-01", 90_000), read("2024-12-31", 100_000)], &[]);
    let found = [Found {
        item: item(TYRES),
        day: day("2024-12-31"),
        travelled: Some(Travelled(km(100_000))),
        finding: Finding::WithinLimits,
        value: Some(Milli(4_000)),
    }];
    let lines = due(&Facts {
        vehicle: &vehicle,
        plan: &Plan::new(&catalogue, &vehicle, &[]),
        done: &[],
        found: &found,
        track: &track,
        pace: &Pace::new(&vehicle, &track),
        today: day("2025-01-01"),
    });
    let line = lines.into_iter().find(|line| line.item == item(TYRES)).unwrap();
    assert_eq!(line.due_at, Some(Travelled(km(110_000))));
    assert_ne!(line.state, State::NoRecord);
}

/// Of the 24 months that brake fluid takes from none to 3 % of water, a third is left at 2 %.
#[test]
fn fluid_of_unknown_age_ages_on_as_fast_as_the_interval_goes() {
    let left = |first_use: &str| {
        let used = Vehicle { known_from_new: false, ..new_car(first_use) };
        let wet =
            Case { vehicle: used, ..case() }.found(BRAKE_FLUID, 100, Finding::WithinLimits, Some(2_000));
        wet.due_on(BRAKE_FLUID, 100).days_since(start().plus_days(100))
    };
    assert!((242..=245).contains(&left("2010-01-01")), "{}", left("2010-01-01"));
    assert_eq!(left("2020-01-01"), left("2010-01-01"), "nor is it known that it is as old as the car");
}

#[test]
fn of_four_tyres_measured_on_a_day_the_most_worn_one_counts() {
    let worn = case().done(TYRES, 0, None).found(TYRES, 200, Finding::WithinLimits, Some(6_000));
    let uneven = worn.clone().found(TYRES, 200, Finding::WithinLimits, Some(7_500));
    assert_eq!(uneven.line(TYRES, 200), worn.line(TYRES, 200));
    let bald = worn.found(TYRES, 200, Finding::WithinLimits, Some(2_500));
    assert_eq!(bald.line(TYRES, 200).unwrap().first, Some(Limit::Finding));
}

/// 100 km a day are ten times the 50 miles within nine days.
#[test]
fn wheels_are_to_be_checked_however_far_the_car_went_in_the_first_three_months() {
    let changed = case().done(TYRES, 200, None);
    assert_eq!(changed.line(WHEEL_TORQUE, 290).unwrap().state, State::Overdue);
    assert_eq!(changed.line(WHEEL_TORQUE, 291), None);
}

#[test]
fn a_loose_wheel_calls_without_any_change_of_wheels() {
    let table = TABLE.replace("key = \"wheel-torque\"", "key = \"wheel-torque\"\ndue_when = [\"loose\"]");
    let catalogue = Catalogue::parse(&table).unwrap();
    let vehicle = new_car("2020-01-01");
    let track = Track::new(&vehicle, &[], &[]);
    let found = [Found {
        item: item(WHEEL_TORQUE),
        day: day("2020-03-01"),
        travelled: None,
        finding: Finding::Loose,
        value: None,
    }];
    let facts = Facts {
        vehicle: &vehicle,
        plan: &Plan::new(&catalogue, &vehicle, &[]),
        done: &[],
        found: &found,
        track: &track,
        pace: &Pace::new(&vehicle, &track),
        today: day("2020-03-01"),
    };
    let line = due(&facts).into_iter().find(|line| line.item == item(WHEEL_TORQUE)).unwrap();
    assert_eq!((line.state, line.first), (State::Due, Some(Limit::Finding)));
}

#[test]
fn what_was_done_after_the_last_reading_is_counted_from_where_the_car_likely_was() {
    let mut unread = case().done(PLUGS, 230, None);
    unread.done[0].travelled = None;
    // The last reading is of day 200, and the car goes 100 km a day.
    let line = unread.line(PLUGS, 240).unwrap();
    assert_eq!(line.due_at, Some(Travelled(km(23_000 + 50_000))));
}
