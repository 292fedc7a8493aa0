//! What is due: published schedules as worked cases, states and order.
#![allow(clippy::unwrap_used)]

use units::{DistanceUnit, HalfMonths};

use super::*;
use crate::running::{Instrument, Reading};
use crate::testing::{day, km, mi, new_car, plain_car, read};
use crate::upkeep::{Catalogue, Finding, PlanChange, Schedule, Setting};

const OIL: u32 = 1;
const COOLANT: u32 = 9;
const DRIVE_BELT: u32 = 12;
const BRAKE_FLUID: u32 = 10;
const STEERING_FLUID: u32 = 22;

/// A car's book, as far as it matters here.
struct Book {
    vehicle: Vehicle,
    changes: Vec<PlanChange>,
    readings: Vec<Reading>,
    instruments: Vec<Instrument>,
    done: Vec<(u32, &'static str, Option<Distance>)>,
    found: Vec<(u32, &'static str, Finding)>,
}

impl Book {
    fn of(vehicle: Vehicle) -> Book {
        Book { vehicle, changes: vec![], readings: vec![], instruments: vec![], done: vec![], found: vec![] }
    }

    fn handbook(mut self, item: u32, first: Option<(&str, u16)>, every: (&str, u16)) -> Book {
        let interval = |(distance, months): (&str, u16)| {
            Interval::new(Some(distance.parse().unwrap()), Some(HalfMonths::months(months))).unwrap()
        };
        let schedule = Schedule { first: first.map(interval), every: interval(every) };
        self.changes
            .push(PlanChange { item: ItemRef::Catalogue(item), setting: Setting::Interval(schedule) });
        self
    }

    fn read(mut self, on: &str, shown: i64) -> Book {
        self.readings.push(read(on, shown));
        self
    }

    fn done(mut self, item: u32, on: &'static str, shown: Distance) -> Book {
        self.done.push((item, on, Some(shown)));
        self
    }

    fn done_unread(mut self, item: u32, on: &'static str) -> Book {
        self.done.push((item, on, None));
        self
    }

    fn found(mut self, item: u32, on: &'static str, finding: Finding) -> Book {
        self.found.push((item, on, finding));
        self
    }

    fn lines(&self, today: &str) -> Vec<DueLine> {
        let track = Track::new(&self.vehicle, &self.readings, &self.instruments);
        let done: Vec<_> = self
            .done
            .iter()
            .map(|&(item, on, shown)| Done {
                item: ItemRef::Catalogue(item),
                day: day(on),
                travelled: shown.map(|shown| track.travelled(day(on), shown)),
                kind: None,
            })
            .collect();
        let found = |&(item, on, finding): &(u32, &str, Finding)| Found {
            item: ItemRef::Catalogue(item),
            day: day(on),
            travelled: None,
            finding,
            value: None,
        };
        due(&Facts {
            vehicle: &self.vehicle,
            plan: &Plan::new(Catalogue::shipped().unwrap(), &self.vehicle, &self.changes),
            done: &done,
            found: &self.found.iter().map(found).collect::<Vec<_>>(),
            track: &track,
            pace: &Pace::new(&self.vehicle, &track),
            today: day(today),
        })
    }

    fn line(&self, item: u32, today: &str) -> DueLine {
        self.lines(today).into_iter().find(|line| line.item == ItemRef::Catalogue(item)).unwrap()
    }
}

/// Ford on-line owner manual: coolant first at 6 years or 168 000 km, then every 3 years or 72 000 km.
fn ford(vehicle: Vehicle) -> Book {
    Book::of(vehicle).handbook(COOLANT, Some(("168000 km", 72)), ("72000 km", 36))
}

fn on(line: &DueLine) -> Option<Day> {
    line.due.map(|due| due.likely)
}

#[test]
fn coolant_first_by_its_first_interval_counted_from_new() {
    let line = ford(new_car("2020-01-01")).line(COOLANT, "2020-02-01");
    assert_eq!(on(&line), Some(day("2026-01-01")));
    assert_eq!(line.due_at, Some(Travelled(km(168_000))));
    assert_eq!(line.first, Some(Limit::Time));
    assert_eq!(line.why.phase, Phase::First);
    assert_eq!(line.why.counted_from, CountedFrom::FirstUse(day("2020-01-01")));
    assert_eq!(line.why.authority, Authority::Handbook);
}

#[test]
fn coolant_done_early_then_by_the_second_interval() {
    let book =
        ford(new_car("2020-01-01")).read("2025-03-15", 150_000).done(COOLANT, "2025-03-15", km(150_000));
    let line = book.line(COOLANT, "2025-04-01");
    assert_eq!(line.due_at, Some(Travelled(km(222_000))));
    assert_eq!(line.why.phase, Phase::Every);
    // 150 000 km took 1 900 days, so that 72 000 more take 912, less than three years.
    assert_eq!((line.first, on(&line)), (Some(Limit::Distance), Some(day("2027-09-13"))));

    let slow = ford(plain_car()).done(COOLANT, "2025-03-15", km(150_000)).line(COOLANT, "2025-04-01");
    assert_eq!((slow.first, on(&slow)), (Some(Limit::Time), Some(day("2028-03-15"))));
}

/// The same schedule as it is printed in miles: first 105 000 mi, then 45 000 mi.
#[test]
fn coolant_in_miles_on_an_instrument_in_miles() {
    let vehicle = Vehicle { unit: DistanceUnit::Mile, ..new_car("2020-01-01") };
    let book = Book::of(vehicle).handbook(COOLANT, Some(("105000 mi", 72)), ("45000 mi", 36));
    assert_eq!(book.line(COOLANT, "2020-02-01").due_shown, Some(mi(105_000)));
    let done = book.done(COOLANT, "2025-03-15", mi(93_000)).line(COOLANT, "2025-04-01");
    assert_eq!(done.due_shown.unwrap().floor(DistanceUnit::Mile), 138_000);
    assert_eq!(done.why.interval.distance().unwrap().to_string(), "45000 mi");
}

/// 2003 Pontiac Vibe owner's manual, p. 7-7: drive belt at 60 000 mi or 48 months, then every 15 000 mi or 12.
#[test]
fn drive_belt_at_48_months_then_every_12() {
    let book = Book::of(new_car("2003-06-30")).handbook(DRIVE_BELT, Some(("60000 mi", 48)), ("15000 mi", 12));
    let first = book.line(DRIVE_BELT, "2004-01-01");
    assert_eq!((on(&first), first.due_at), (Some(day("2007-06-30")), Some(Travelled(mi(60_000)))));
    let then = book.done(DRIVE_BELT, "2007-02-28", mi(58_000)).line(DRIVE_BELT, "2007-03-01");
    assert_eq!((on(&then), then.due_at), (Some(day("2008-02-28")), Some(Travelled(mi(73_000)))));
}

/// A leak calls for a look at the level soon, not for new fluid.
#[test]
fn a_leak_calls_for_a_look_and_for_nothing_that_is_drained() {
    for (fluid, look) in [(OIL, 28), (COOLANT, 38), (BRAKE_FLUID, 50)] {
        let sound =
            Book::of(plain_car()).done(fluid, "2024-01-10", km(1_000)).done(look, "2024-05-01", km(2_000));
        let leaks = sound.found(fluid, "2024-05-20", Finding::Leaking);
        let line = leaks.line(look, "2024-05-21");
        assert_eq!((line.state, line.first, line.round), (State::Overdue, Some(Limit::Finding), false));
        assert_eq!(line.why.seen.unwrap().finding, Finding::Leaking);
        assert_eq!(leaks.line(fluid, "2024-05-21").state, State::Ahead, "{fluid}");
        let looked =
            leaks.done(look, "2024-05-21", km(2_100)).found(look, "2024-05-21", Finding::WithinLimits);
        let looked = looked.line(look, "2024-05-22");
        assert!(looked.due.unwrap().likely > day("2024-06-01"), "{look}");
    }
}

/// A leak is found while the fluid is renewed, and new fluid does not stop it.
#[test]
fn new_fluid_on_the_day_of_a_leak_or_later_does_not_end_it() {
    for (fluid, look) in [(OIL, 28), (COOLANT, 38), (BRAKE_FLUID, 50)] {
        for about in [fluid, look] {
            let leaks = Book::of(plain_car()).done(look, "2024-05-01", km(2_000));
            let leaks = leaks.found(about, "2024-05-20", Finding::Leaking);
            let renewed = leaks.done(fluid, "2024-05-20", km(2_100)).done(fluid, "2024-05-25", km(2_200));
            let line = renewed.line(look, "2024-06-01");
            assert_eq!((on(&line), line.first), (Some(day("2024-05-20")), Some(Limit::Finding)), "{look}");
            assert_eq!(renewed.line(fluid, "2024-06-01").state, State::Ahead, "{fluid}");
            let tight =
                renewed.done(look, "2024-06-02", km(2_300)).found(look, "2024-06-02", Finding::WithinLimits);
            assert_ne!(tight.line(look, "2024-06-03").first, Some(Limit::Finding), "{look}");
            let later = tight.done(fluid, "2024-06-10", km(2_400));
            assert_ne!(later.line(look, "2024-06-11").first, Some(Limit::Finding), "{look}: found tight");
            let again = later.found(about, "2024-06-20", Finding::Leaking);
            assert_eq!(on(&again.line(look, "2024-06-21")), Some(day("2024-06-20")), "{look}");
        }
    }
}

/// The trade names fraying beside cracks and glazing.
#[test]
fn a_frayed_belt_is_due_now() {
    for belt in [11, DRIVE_BELT, 39, 41] {
        let book = Book::of(plain_car()).done(belt, "2024-01-10", km(1_000)).found(
            belt,
            "2024-05-20",
            Finding::Frayed,
        );
        assert_eq!(on(&book.line(belt, "2024-05-21")), Some(day("2024-05-20")), "{belt}");
    }
}

/// 1993 Geo Tracker owner's manual, p. 288: power steering at 7 500 mi or 7.5 months. A half month is 15 days.
#[test]
fn seven_and_a_half_months() {
    let line = Book::of(plain_car())
        .done(STEERING_FLUID, "2024-01-31", km(1_000))
        .line(STEERING_FLUID, "2024-02-01");
    assert_eq!(on(&line), Some(day("2024-09-15")));
    assert_eq!(line.due_at, Some(Travelled(km(1_000) + mi(7_500))));
}

/// No standard says what a month after the 31st is; here the end of a shorter month stands in.
#[test]
fn month_ends_are_clamped() {
    for (done, due) in
        [("2023-08-31", "2024-02-29"), ("2022-08-31", "2023-02-28"), ("2024-02-29", "2024-08-29")]
    {
        let book = Book::of(plain_car()).handbook(OIL, None, ("12000 km", 6)).done(OIL, done, km(100));
        assert_eq!(on(&book.line(OIL, "2024-01-01")), Some(day(due)), "done on {done}");
    }
}

#[test]
fn what_was_never_done_has_no_record_and_no_date() {
    for vehicle in [plain_car(), Vehicle { first_use: Some(day("2015-01-01")), ..plain_car() }] {
        let line = Book::of(vehicle).read("2024-01-01", 90_000).line(OIL, "2024-02-01");
        assert_eq!((line.state, line.due, line.due_at, line.first), (State::NoRecord, None, None, None));
        assert_eq!(line.why.counted_from, CountedFrom::Nothing);
        assert_eq!(line.why.phase, Phase::Every);
    }
}

/// Coolant at 6 years or 168 000 km from new: nobody knows what was done before this owner had the car, but before then it
/// cannot have been due, and had it been done since he has it, it would stand in the book.
#[test]
fn what_was_not_due_when_the_book_was_begun_counts_from_first_use() {
    let used = |kept_since: Option<&str>| Vehicle {
        first_use: Some(day("2020-01-01")),
        kept_since: kept_since.map(day),
        ..plain_car()
    };
    let line = |kept_since, shown, today| {
        ford(used(kept_since)).read("2023-06-01", 30_000).read("2023-12-31", shown).line(COOLANT, today)
    };
    let young = line(Some("2023-06-01"), 35_000, "2024-01-01");
    assert_eq!((young.state, on(&young)), (State::Ahead, Some(day("2026-01-01"))));
    let state = |kept_since, shown, today| line(kept_since, shown, today).state;
    assert_eq!(state(Some("2023-06-01"), 35_000, "2026-01-01"), State::Due);
    assert_eq!(state(Some("2023-06-01"), 35_000, "2026-03-01"), State::Overdue);
    assert_eq!(state(Some("2023-06-01"), 35_000, "2027-01-01"), State::NoRecord, "due for a year");
    assert_eq!(state(Some("2026-01-01"), 35_000, "2026-03-01"), State::NoRecord);
    assert_eq!(state(Some("2023-12-31"), 169_000, "2024-01-01"), State::NoRecord);
    assert_eq!(state(None, 35_000, "2025-12-31"), State::Soon);
    assert_eq!(state(None, 35_000, "2026-01-01"), State::NoRecord);
    let without_reading = ford(used(Some("2023-06-01"))).line(COOLANT, "2024-01-01");
    assert_eq!(without_reading.state, State::NoRecord, "nobody knows how far it has gone");
    let once = ford(used(Some("2023-05-01"))).read("2023-06-01", 35_000);
    assert_eq!(once.line(COOLANT, "2025-11-01").state, State::Ahead, "one reading is enough");
}

/// Whoever reads no odometer has wheels that come loose, too.
#[test]
fn a_distance_after_other_work_has_a_day_where_no_pace_is_known() {
    let (wheels_changed, wheel_torque) = (58, 59);
    let changed = Book::of(plain_car()).done(wheels_changed, "2024-04-01", km(30_000));
    let line = changed.line(wheel_torque, "2024-04-02");
    assert_eq!((on(&line), line.state), (Some(day("2024-04-15")), State::Soon));
    assert_eq!(changed.line(wheel_torque, "2024-04-16").state, State::Overdue);
    let read = changed.read("2024-03-01", 29_000).read("2024-04-01", 30_000);
    assert!(on(&read.line(wheel_torque, "2024-04-02")) < Some(day("2024-04-15")), "the pace tells better");
}

#[test]
fn the_last_time_counts_in_whatever_order_it_was_written_down() {
    let book = Book::of(plain_car()).done(OIL, "2024-03-01", km(30_000)).done(OIL, "2023-03-01", km(20_000));
    assert_eq!(book.line(OIL, "2024-04-01").due_at, Some(Travelled(km(45_000))));
}

#[test]
fn a_time_without_a_reading_is_placed_between_the_readings_around_it() {
    let book = Book::of(plain_car()).read("2024-01-01", 20_000).read("2024-01-21", 21_000);
    let between = book.done_unread(OIL, "2024-01-11").line(OIL, "2024-02-01");
    assert_eq!(between.due_at, Some(Travelled(km(35_500))));
    let throttle = 4;
    let outside = Book::of(plain_car()).done_unread(throttle, "2024-01-11").line(throttle, "2024-02-01");
    assert_eq!(
        (outside.state, outside.due),
        (State::NoRecord, None),
        "by distance only, and nothing to count from"
    );
    assert!(matches!(outside.why.counted_from, CountedFrom::LastDone { travelled: None, .. }));
}

#[test]
fn a_new_instrument_shows_the_due_reading_as_it_will_stand_there() {
    let mut book = Book::of(plain_car()).read("2024-01-10", 148_000).done(OIL, "2024-01-10", km(148_000));
    book.instruments.push(Instrument { day: day("2024-02-01"), old: km(150_000), new: km(0) });
    let line = book.line(OIL, "2024-03-01");
    assert_eq!((line.due_at, line.due_shown), (Some(Travelled(km(163_000))), Some(km(13_000))));
    // No instrument shows less than nothing: what was overdue before the new one came has no reading on it.
    book.done = vec![(OIL, "2023-06-01", Some(km(120_000)))];
    let line = book.line(OIL, "2024-03-01");
    assert_eq!((line.due_at, line.due_shown), (Some(Travelled(km(135_000))), None));
}

#[test]
fn by_time_the_states_follow_the_day() {
    let book = Book::of(plain_car()).done(OIL, "2023-06-01", km(1_000));
    let state = |today| book.line(OIL, today).state;
    assert_eq!(state("2024-05-01"), State::Ahead, "31 days ahead");
    assert_eq!(state("2024-05-02"), State::Soon, "30 days ahead");
    assert_eq!(state("2024-06-01"), State::Due);
    assert_eq!(state("2024-06-02"), State::Overdue);
}

#[test]
fn what_is_overdue_for_safety_comes_before_what_is_longer_overdue_for_the_engine() {
    let book =
        Book::of(plain_car()).done(OIL, "2022-01-01", km(1_000)).done(BRAKE_FLUID, "2022-01-01", km(1_000));
    let lines = book.lines("2024-03-01");
    let place = |item: u32| lines.iter().position(|line| line.item == ItemRef::Catalogue(item)).unwrap();
    assert!(on(&lines[place(OIL)]) < on(&lines[place(BRAKE_FLUID)]));
    assert!(place(BRAKE_FLUID) < place(OIL));
}

/// Worn brakes are those in front or behind, until one of them is found to be it.
#[test]
fn a_finding_that_can_mean_several_works_asks_which() {
    let (look, front, discs_front, rear, discs_rear) = (16, 51, 52, 53, 54);
    let worn =
        Book::of(plain_car()).done(look, "2024-01-10", km(1_000)).found(look, "2024-02-20", Finding::Worn);
    let line = worn.line(look, "2024-02-21");
    assert_eq!(line.why.undecided, [front, discs_front, rear, discs_rear].map(ItemRef::Catalogue));
    let said = worn.found(front, "2024-02-20", Finding::Worn);
    assert_eq!(said.line(look, "2024-02-21").why.undecided, []);
    assert_eq!(said.line(front, "2024-02-21").first, Some(Limit::Finding));
}

/// Nobody looks at a cracked belt once more: it is changed, and so is what else one work alone can put right.
#[test]
fn what_a_look_found_makes_the_one_work_due_that_puts_it_right() {
    let (belt, belt_look, tyres, tyre_check, wheels_changed) = (11, 39, 27, 15, 58);
    let (fluid_test, drive_belt_change) = (50, 41);
    for (look, finding, work) in [
        (belt_look, Finding::Cracked, belt),
        (tyre_check, Finding::Worn, tyres),
        (fluid_test, Finding::Water, BRAKE_FLUID),
        (DRIVE_BELT, Finding::Frayed, drive_belt_change),
    ] {
        let sound =
            Book::of(plain_car()).done(work, "2024-01-10", km(1_000)).done(look, "2024-02-20", km(2_000));
        let bad = sound.found(look, "2024-02-20", finding);
        let line = bad.line(work, "2024-02-21");
        assert_eq!((on(&line), line.first), (Some(day("2024-02-20")), Some(Limit::Finding)), "{look}");
        assert_eq!(line.why.seen.unwrap().finding, finding);
        let bad = bad.done(look, "2024-02-25", km(2_100));
        assert_eq!(on(&bad.line(work, "2024-02-26")), Some(day("2024-02-20")), "{look}: looked at again");
        let mended = bad.done(work, "2024-03-01", km(2_200));
        assert_eq!(
            (mended.line(work, "2024-03-02").why.seen, mended.line(look, "2024-03-02").why.seen),
            (None, None)
        );
    }
    let worn = |look| Book::of(plain_car()).found(look, "2024-02-20", Finding::Worn);
    let well = worn(tyre_check).found(tyre_check, "2024-02-22", Finding::WithinLimits);
    assert_eq!(well.line(tyres, "2024-02-23").state, State::NoRecord, "a later look found all well");
    let off_the_car = worn(tyre_check).done(wheels_changed, "2024-02-22", km(2_000));
    assert_eq!(off_the_car.line(tyres, "2024-02-23").state, State::NoRecord, "on the wheels that came off");
    let (brake_check, pads_front) = (16, 51);
    assert_eq!(
        worn(brake_check).line(pads_front, "2024-02-21").state,
        State::NoRecord,
        "front or rear, who knows"
    );
}

/// A throttle learns its closed position on the spot; bolts settle only over the first way.
#[test]
fn what_serves_its_purpose_at_once_is_done_along_with_the_work_that_calls_for_it() {
    let (throttle_body, relearn, wheels_changed, wheel_torque) = (4, 31, 58, 59);
    let call = |work| Book::of(plain_car()).done(work, "2024-02-20", km(2_000));
    let is_called =
        |book: Book, item| book.lines("2024-02-21").iter().any(|line| line.item == ItemRef::Catalogue(item));
    assert!(is_called(call(throttle_body), relearn));
    assert!(!is_called(call(throttle_body).done(relearn, "2024-02-20", km(2_000)), relearn));
    assert!(
        is_called(call(throttle_body).done(relearn, "2024-02-19", km(1_990)), relearn),
        "before the work"
    );
    assert!(is_called(call(wheels_changed).done(wheel_torque, "2024-02-20", km(2_000)), wheel_torque));
}

fn book_of_late_brakes() -> Book {
    let book = Book::of(plain_car()).done(66, "2020-01-01", km(1_000)).done(16, "2021-01-01", km(1_100));
    book.found(16, "2024-02-20", Finding::Worn)
}

/// Worn brakes are known to be bad; a first-aid kit that nobody looked at for long is only late.
#[test]
fn what_was_found_wrong_comes_before_what_is_only_longer_overdue() {
    let (brake_check, emergency_kit, drive_belt, cabin_filter) = (16, 66, DRIVE_BELT, 3);
    let long_ago = [emergency_kit, cabin_filter].into_iter();
    let book = long_ago.fold(Book::of(plain_car()), |book, item| book.done(item, "2020-01-01", km(1_000)));
    let book = book.found(brake_check, "2024-02-20", Finding::Worn);
    let lines = book.found(drive_belt, "2024-02-20", Finding::Frayed).lines("2024-03-01");
    let place = |item: u32| lines.iter().position(|line| line.item == ItemRef::Catalogue(item)).unwrap();
    assert!(place(brake_check) < place(emergency_kit));
    assert!(place(drive_belt) < place(cabin_filter));
    assert!(place(emergency_kit) < place(drive_belt), "safety still outranks all");
    let late = book_of_late_brakes().lines("2024-03-01");
    assert_eq!(
        late[0].item,
        ItemRef::Catalogue(brake_check),
        "late by its interval before it was found worn"
    );
}

#[test]
fn by_distance_the_states_follow_what_the_odometer_may_show() {
    // 40 km a day, so that the throttle body is likely due at 55 000 km after 75 days; the span around them
    // is that of `Pace`.
    let throttle = 4;
    let book = Book::of(plain_car())
        .done(throttle, "2020-01-01", km(5_000))
        .read("2023-01-01", 37_400)
        .read("2024-01-01", 52_000);
    let state = |today| book.line(throttle, today).state;
    assert_eq!(book.line(throttle, "2024-01-01").due.unwrap().likely, day("2024-03-16"));
    assert_eq!(state("2024-02-14"), State::Ahead, "1 240 km and 31 days to go");
    assert_eq!(state("2024-02-15"), State::Soon, "30 days to go");
    let due = book.line(throttle, "2024-02-15").due.unwrap();
    assert!(due.early < due.likely && due.likely < due.late);
    let state_on = |day: Day| book.line(throttle, &day.to_string()).state;
    assert_eq!(state_on(due.early.plus_days(-1)), State::Soon);
    assert_eq!(state_on(due.early), State::Due, "it may have gone that far");
    assert_eq!(state_on(due.late), State::Due, "it may not have gone that far yet");
    assert_eq!(state_on(due.late.plus_days(1)), State::Overdue);
}

#[test]
fn what_was_passed_between_two_readings_fell_due_then() {
    let book = Book::of(plain_car())
        .done(OIL, "2024-01-01", km(10_000))
        .read("2024-01-01", 10_000)
        .read("2024-03-01", 28_000);
    let line = book.line(OIL, "2024-03-02");
    assert_eq!((line.state, line.due), (State::Overdue, Some(DaySpan::exact(day("2024-02-20")))));
    assert_eq!(line.first, Some(Limit::Distance));
}

#[test]
fn without_a_pace_the_last_reading_still_tells_what_is_near() {
    let throttle = 4;
    let at = |shown| Book::of(plain_car()).done(throttle, "2020-01-01", km(5_000)).read("2024-01-01", shown);
    assert_eq!(Book { readings: vec![], ..at(0) }.line(throttle, "2024-02-01").state, State::Ahead);
    assert_eq!(at(53_999).line(throttle, "2024-02-01").state, State::Ahead);
    assert_eq!(at(54_000).line(throttle, "2024-02-01").state, State::Soon);
    assert_eq!(at(55_000).line(throttle, "2024-02-01").state, State::Overdue);
}

#[test]
fn grave_things_without_a_record_come_before_a_late_filter() {
    let (cabin_filter, timing_belt) = (3, 11);
    let book =
        Book::of(plain_car()).done(cabin_filter, "2021-01-01", km(1_000)).done(OIL, "2022-01-01", km(9_000));
    let lines = book.lines("2024-01-01");
    let place = |item| lines.iter().position(|line| line.item == ItemRef::Catalogue(item)).unwrap();
    assert!(place(OIL) < place(timing_belt), "overdue and grave");
    let oil_level = 28;
    assert!(place(oil_level) > place(cabin_filter), "nobody writes a look at the dipstick down");
    assert!(place(timing_belt) < place(cabin_filter), "the belt has no record, the filter is late");
    assert!(place(cabin_filter) < place(4), "a throttle body without a record is no emergency");
}

#[test]
fn what_is_off_or_not_for_this_car_is_not_listed() {
    let mut book = Book::of(plain_car());
    book.changes.push(PlanChange { item: ItemRef::Catalogue(OIL), setting: Setting::Off });
    let lines = book.lines("2024-01-01");
    assert!(lines.iter().all(|line| line.item != ItemRef::Catalogue(OIL)));
    assert!(lines.iter().all(|line| line.item != ItemRef::Catalogue(6)), "no glow plugs in a petrol engine");
    assert!(lines.iter().any(|line| line.item == ItemRef::Catalogue(COOLANT)));
}
