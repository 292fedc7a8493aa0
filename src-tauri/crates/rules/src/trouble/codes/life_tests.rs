//! The life of one code, told scan by scan.
#![allow(clippy::unwrap_used)]

use proptest::prelude::*;

use super::*;
use crate::running::Travelled;
use crate::testing::{day, km};

fn at(on: &str, travelled: i64) -> Moment {
    Moment { day: day(on), travelled: Some(Travelled(km(travelled))) }
}

fn event(at: Moment, what: What) -> Event {
    Event { at, what, all_ready: false }
}

fn ready(at: Moment, what: What) -> Event {
    Event { at, what, all_ready: true }
}

const CONFIRMED: What = What::Seen(Status::Confirmed);

#[test]
fn a_code_that_no_scan_had_has_no_life() {
    assert_eq!(life(&[]), None);
    let never =
        [event(at("2026-01-05", 90_000), What::Cleared), event(at("2026-01-06", 90_100), What::Absent)];
    assert_eq!(life(&never), None);
}

#[test]
fn seen_once_it_is_there() {
    let seen = at("2026-01-05", 90_000);
    let life = life(&[event(seen, What::Seen(Status::Pending))]).unwrap();
    assert_eq!((life.first, life.last, life.times), (seen, seen, 1));
    assert_eq!((life.standing, life.status), (Standing::Present, Status::Pending));
    assert!(life.turns.is_empty() && life.warnings().is_empty());
}

#[test]
fn cleared_is_not_mended_and_takes_the_readiness() {
    let cleared = at("2026-01-06", 90_010);
    let mut events = vec![event(at("2026-01-05", 90_000), CONFIRMED), event(cleared, What::Cleared)];
    for soon in ["2026-01-06", "2026-01-20"] {
        events.push(event(at(soon, 90_400), What::Absent));
        let life = life(&events).unwrap();
        assert_eq!(life.standing, Standing::Cleared(cleared));
        assert_eq!(life.warnings(), [Warning::NotMended, Warning::ReadinessLost]);
    }
}

#[test]
fn it_is_gone_after_the_distance_or_once_the_car_has_tested_itself() {
    let seen = event(at("2026-01-05", 90_000), CONFIRMED);
    let cleared = event(at("2026-01-06", 90_010), What::Cleared);
    let far = at("2026-01-20", 90_510);
    let by_distance = life(&[seen, cleared, event(far, What::Absent)]).unwrap();
    assert_eq!(by_distance.standing, Standing::Gone(far));
    // The distance says nothing of every single test.
    assert_eq!(by_distance.warnings(), [Warning::ReadinessLost]);
    let near = at("2026-01-08", 90_100);
    let by_tests = life(&[seen, cleared, ready(near, What::Absent)]).unwrap();
    assert_eq!(by_tests.standing, Standing::Gone(near));
    assert!(by_tests.warnings().is_empty());
}

#[test]
fn without_a_distance_the_days_count() {
    let on = |text: &str| Moment { day: day(text), travelled: None };
    let told = |absent: &str| {
        let events = [
            event(on("2026-01-05"), CONFIRMED),
            event(on("2026-01-06"), What::Cleared),
            event(on(absent), What::Absent),
        ];
        life(&events).unwrap().standing
    };
    assert_eq!(told("2026-02-04"), Standing::Cleared(on("2026-01-06")));
    assert_eq!(told("2026-02-05"), Standing::Gone(on("2026-02-05")));
}

#[test]
fn it_came_back_after_so_far() {
    let (cleared, back) = (at("2026-01-06", 90_010), at("2026-02-05", 90_842));
    let events =
        [event(at("2026-01-05", 90_000), CONFIRMED), event(cleared, What::Cleared), event(back, CONFIRMED)];
    let life = life(&events).unwrap();
    let after = Span { days: 30, distance: Some(km(832)) };
    let returned = Return { left: cleared, was_cleared: true, back, after };
    assert_eq!(life.turns, [Turn::Cleared(cleared), Turn::Back(returned)]);
    assert_eq!((life.standing, life.times, life.cleared()), (Standing::Present, 2, Some(cleared)));
    assert_eq!(life.warnings(), [Warning::ReadinessLost]);
}

#[test]
fn after_it_was_gone_it_still_came_back_from_its_clearing() {
    let (cleared, back) = (at("2026-01-06", 90_000), at("2026-06-05", 95_000));
    let events = [
        event(at("2026-01-05", 90_000), CONFIRMED),
        event(cleared, What::Cleared),
        ready(at("2026-03-01", 92_000), What::Absent),
        event(back, CONFIRMED),
    ];
    let returned = life(&events).unwrap().returns().next().unwrap();
    assert_eq!(
        (returned.left, returned.was_cleared, returned.after.distance),
        (cleared, true, Some(km(5_000)))
    );
}

#[test]
fn a_code_may_go_and_come_back_by_itself() {
    let (gone, back) = (at("2026-02-01", 90_300), at("2026-02-20", 90_900));
    let seen = event(at("2026-01-05", 90_000), What::Seen(Status::Pending));
    let absent = event(gone, What::Absent);
    assert_eq!(life(&[seen, absent]).unwrap().standing, Standing::Gone(gone));
    // Cleared for another code's sake, when this one was gone already.
    let cleared = event(at("2026-02-10", 90_500), What::Cleared);
    let life = life(&[seen, absent, cleared, event(back, CONFIRMED)]).unwrap();
    let returned = life.returns().next().unwrap();
    assert_eq!((returned.left, returned.was_cleared, returned.after.distance), (gone, false, Some(km(600))));
}

/// What happened to a code stays told when it comes back.
#[test]
fn each_clearing_each_time_that_it_was_gone_and_each_return_stays_told() {
    let [first, gone, back, cleared, later] =
        [("01-05", 90_000), ("02-01", 90_300), ("02-20", 90_900), ("02-21", 90_910), ("04-01", 92_000)]
            .map(|(on, travelled)| at(&format!("2026-{on}"), travelled));
    let events = [
        event(first, What::Seen(Status::Pending)),
        event(gone, What::Absent),
        event(back, CONFIRMED),
        event(cleared, What::Cleared),
        event(later, What::Absent),
    ];
    let after = Span { days: 19, distance: Some(km(600)) };
    let came = Return { left: gone, was_cleared: false, back, after };
    let life = life(&events).unwrap();
    assert_eq!(life.turns, [Turn::Gone(gone), Turn::Back(came), Turn::Cleared(cleared), Turn::Gone(later)]);
    assert_eq!((life.first, life.last), (first, back));
}

/// Permanent codes cannot be cleared by a tool and heal after drive cycles.
#[test]
fn a_permanent_code_seen_after_clearing_did_not_come_back() {
    let (cleared, later) = (at("2026-01-06", 90_010), at("2026-01-07", 90_050));
    let events = [
        event(at("2026-01-05", 90_000), CONFIRMED),
        event(cleared, What::Cleared),
        event(later, What::Seen(Status::Permanent)),
    ];
    let life = life(&events).unwrap();
    assert_eq!((life.standing, life.last), (Standing::Cleared(cleared), later));
    assert!(life.returns().next().is_none());
    assert_eq!(life.warnings(), Warning::ALL);
}

#[test]
fn the_days_may_come_in_any_order() {
    let mut events = [
        event(at("2026-02-05", 90_842), CONFIRMED),
        event(at("2026-01-06", 90_010), What::Cleared),
        event(at("2026-01-05", 90_000), CONFIRMED),
    ];
    let told = life(&events);
    events.reverse();
    assert_eq!(life(&events), told);
    assert_eq!(told.unwrap().returns().count(), 1);
}

fn any_event() -> impl Strategy<Value = Event> {
    let what = prop_oneof![
        prop::sample::select(Status::ALL.to_vec()).prop_map(What::Seen),
        Just(What::Absent),
        Just(What::Cleared)
    ];
    (0..200_i32, prop::option::of(0..50_000_i64), what, any::<bool>()).prop_map(
        |(days, far, what, all_ready)| {
            let travelled = far.map(|far| Travelled(km(far)));
            Event { at: Moment { day: day("2026-01-01").plus_days(days), travelled }, what, all_ready }
        },
    )
}

proptest! {
    /// Whatever happens: it is counted as often as it was seen, first seen no later than last, and a return
    /// always follows something that it returned from.
    #[test]
    fn any_life_is_consistent(events in prop::collection::vec(any_event(), 0..20)) {
        let seen = events.iter().filter(|event| matches!(event.what, What::Seen(_))).count();
        let Some(life) = life(&events) else {
            prop_assert_eq!(seen, 0);
            return Ok(());
        };
        prop_assert_eq!(life.times, seen);
        prop_assert!(life.first.day <= life.last.day);
        prop_assert!(life.returns().count() < seen);
        for returned in life.returns() {
            prop_assert!(life.first.day <= returned.left.day && returned.left.day <= returned.back.day);
            prop_assert!(returned.back.day <= life.last.day);
        }
        prop_assert!(!life.readiness_lost || life.cleared().is_some());
    }
}
