//! Cards against cards: what a newer one may change, and what it may not.
#![allow(clippy::unwrap_used)]

use super::*;
use crate::Vehicle;

fn day(text: &str) -> Day {
    text.parse().unwrap()
}

fn visit(on: &str, reading: i32, items: &[u32]) -> Visit {
    let items = items.iter().map(|number| Item::Catalogue(*number)).collect();
    Visit { day: day(on), reading, flags: Flags::BY_WORKSHOP, items }
}

fn card(issued: &str, visits: Vec<Visit>) -> Claims {
    let latest = visits.last().map_or(0, |visit| visit.reading);
    Claims {
        issued: day(issued),
        vehicle: Vehicle {
            name: "Thistle".to_owned(),
            vin: Some("QXYTE57ZZ1K004321".to_owned()),
            first_use: Some(day("2009-05-04")),
            ..Vehicle::default()
        },
        unit: DistanceUnit::Kilometre,
        latest: OdometerReading { day: day(issued), reading: latest },
        visits,
        left_out: 0,
        head: None,
        next: Vec::new(),
        instruments: Vec::new(),
    }
}

fn first() -> Claims {
    card(
        "2020-06-01",
        vec![
            visit("2018-03-01", 60_000, &[1, 2]),
            visit("2019-03-01", 75_000, &[1]),
            visit("2020-03-01", 90_000, &[1, 7]),
        ],
    )
}

/// The first card two years later, with one more visit.
fn second() -> Claims {
    let mut visits = first().visits;
    visits.push(visit("2022-01-10", 118_000, &[1]));
    card("2022-06-01", visits)
}

fn differences(older: &Claims, newer: &Claims) -> Vec<Difference> {
    compare(older, newer).differences
}

#[test]
fn a_card_contains_itself_and_every_earlier_one() {
    for (older, newer) in [(first(), first()), (first(), second()), (second(), second())] {
        let comparison = compare(&older, &newer);
        assert_eq!((comparison.differences.len(), comparison.same), (0, older.visits.len()));
        assert!(comparison.contains() && comparison.car_known);
    }
}

#[test]
fn what_may_change_does_not_count() {
    let mut newer = second();
    newer.vehicle.name = "Nettle".to_owned();
    newer.visits[0].items.reverse();
    newer.visits[1].flags = Flags::BY_WORKSHOP | Flags::RECEIPT | Flags::AMENDED | Flags::WRITTEN_LATE;
    newer.vehicle.vin = None;
    let comparison = compare(&first(), &newer);
    assert_eq!((comparison.differences, comparison.car_known), (vec![], false));
}

#[test]
fn a_visit_that_is_missing_or_another_one_is_named() {
    let mut newer = second();
    let gone = newer.visits.remove(1);
    assert_eq!(
        differences(&first(), &newer),
        [Difference::Missing(gone.clone())],
        "four of four visits, one of them later"
    );

    let doer = Visit { flags: Flags::BY_OWNER, ..gone.clone() };
    let reading = Visit { reading: 74_999, ..gone.clone() };
    let twice = Visit { items: vec![Item::Catalogue(1), Item::Catalogue(1)], ..gone.clone() };
    let own = Visit { items: vec![Item::Own("1".to_owned())], ..gone.clone() };
    for changed in [doer, reading, twice, own] {
        let mut newer = second();
        newer.visits[1] = changed.clone();
        let expected = Difference::Changed { older: gone.clone(), newer: changed };
        assert_eq!(differences(&first(), &newer), [expected]);
    }
}

#[test]
fn of_two_visits_on_one_day_each_has_its_own_pair() {
    let two = |items: &[u32], others: &[u32]| {
        card("2020-06-01", vec![visit("2019-03-01", 10, items), visit("2019-03-01", 10, others)])
    };
    assert_eq!(differences(&two(&[1], &[2]), &two(&[2], &[1])), []);
    let changed = differences(&two(&[1], &[1]), &two(&[1], &[2]));
    assert!(
        matches!(&changed[..], [Difference::Changed { newer, .. }] if newer.items == [Item::Catalogue(2)])
    );
}

#[test]
fn what_was_left_out_to_fit_does_not_count_as_missing() {
    let mut newer = second();
    newer.visits.drain(..2);
    newer.left_out = 2;
    let comparison = compare(&first(), &newer);
    assert_eq!((comparison.left_out, comparison.same, comparison.contains()), (2, 1, true));
    // Of the oldest day that is carried, some may be left out too; of a later day none.
    let mut older = first();
    older.visits.push(visit("2020-03-01", 90_000, &[9]));
    newer.left_out = 3;
    assert_eq!(compare(&older, &newer).left_out, 3);
    older.visits.push(visit("2020-03-02", 90_001, &[9]));
    assert!(
        matches!(&differences(&older, &newer)[..], [Difference::Missing(visit)] if visit.reading == 90_001)
    );
    // A card without room for any.
    newer.left_out = 6;
    newer.visits.clear();
    assert_eq!((compare(&older, &newer).left_out, compare(&older, &newer).contains()), (5, true));
}

#[test]
fn a_visit_written_for_an_earlier_day_is_no_breach_and_named() {
    let mut newer = second();
    let late = visit("2019-09-09", 82_000, &[4]);
    newer.visits.insert(2, late.clone());
    let comparison = compare(&first(), &newer);
    assert_eq!(comparison.differences, [Difference::Added(late)]);
    assert!(comparison.contains());
    // Where the older card had left old ones out it may have been among these.
    let mut older = first();
    older.visits.drain(..2);
    older.left_out = 2;
    assert_eq!(differences(&older, &newer), []);
}

#[test]
fn another_car_or_a_card_that_is_not_newer_is_said_to_be_so() {
    let mut newer = second();
    newer.vehicle.vin = Some("QXYTE57ZZ1K009999".to_owned());
    newer.vehicle.first_use = Some(day("2011-05-04"));
    let (older, other) = (day("2009-05-04"), day("2011-05-04"));
    let expected = [Difference::OtherCar, Difference::FirstUse { older, newer: other }];
    assert_eq!(differences(&first(), &newer), expected);
    let reversed = differences(&second(), &first());
    assert!(reversed.contains(&Difference::NotNewer), "{reversed:?}");
    assert!(reversed.contains(&Difference::Fewer { older: 4, newer: 3 }));
}

#[test]
fn a_latest_reading_may_fall_only_with_a_new_instrument() {
    let mut newer = second();
    newer.latest.reading = 89_999;
    let fell = Difference::LatestReading { older: first().latest, newer: newer.latest };
    assert_eq!(differences(&first(), &newer), [fell]);
    let change = InstrumentChange { day: day("2021-01-01"), old: 100_000, new: 0 };
    newer.instruments.push(change);
    assert_eq!(differences(&first(), &newer), []);
    newer.instruments[0].day = day("2020-01-01");
    assert_eq!(differences(&first(), &newer).len(), 1, "that one was replaced before");
    let mut earlier = second();
    earlier.latest.day = day("2020-05-31");
    assert_eq!(differences(&first(), &earlier).len(), 1);
}

#[test]
fn an_instrument_must_stay_on_the_card() {
    let change = InstrumentChange { day: day("2019-01-01"), old: 70_000, new: 5 };
    let mut older = first();
    older.instruments.push(change);
    let mut newer = second();
    assert_eq!(differences(&older, &newer), [Difference::Instrument(change)]);
    newer.instruments.push(InstrumentChange { new: 6, ..change });
    assert_eq!(differences(&older, &newer).len(), 1);
    newer.instruments.push(change);
    assert_eq!(differences(&older, &newer), []);
}

/// 1 mi = 1.609 344 km (international mile, 1959; from memory): 60 000 km lie from 37 282.27 mi to 37 282.89 mi.
#[test]
fn a_book_that_went_over_to_miles_is_the_same_book() {
    let in_miles = |reading: i32| match reading {
        60_000 => 37_282,
        75_000 => 46_602,
        90_000 => 55_923,
        _ => 73_322,
    };
    let mut newer = second();
    newer.unit = DistanceUnit::Mile;
    newer.latest.reading = in_miles(118_000);
    newer.visits.iter_mut().for_each(|visit| visit.reading = in_miles(visit.reading));
    assert_eq!(differences(&first(), &newer), []);
    newer.visits[0].reading -= 1;
    assert_eq!(differences(&first(), &newer).len(), 1);
}
