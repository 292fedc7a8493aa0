//! How long parts last, across replaced instruments and without readings.
#![allow(clippy::unwrap_used)]

use units::{Measure, Quantity};

use super::{Service, Timeline, lasted};
use crate::parts::{Fitted, Moment, Span};
use crate::running::{Instrument, Track};
use crate::testing::{car, day, km, read};
use crate::upkeep::ItemRef;

const OIL: ItemRef = ItemRef::Catalogue(1);
const WIPERS: ItemRef = ItemRef::Catalogue(18);

fn at(on: &str, travelled: Option<i64>) -> Moment {
    Moment { day: day(on), travelled: travelled.map(|count| crate::running::Travelled(km(count))) }
}

fn fitted<'a>(item: &'a ItemRef, number: &'a str, at: Moment) -> Fitted<'a> {
    Fitted {
        item: Some(item),
        maker: "",
        number,
        name: "",
        quantity: Quantity::parse("1", Measure::Piece).unwrap(),
        price: None,
        shop: "",
        at,
        kind: None,
    }
}

/// How long the parts last that were fitted for an item the last time.
fn service<'a>(item: &'a ItemRef, lines: impl AsRef<[Fitted<'a>]>, now: Moment) -> Service {
    let lines = lines.as_ref();
    let newest = lines.iter().filter(|line| line.item == Some(item)).map(|line| line.at.day).max();
    let service = Timeline::new(lines.iter().copied()).service(item, newest.unwrap_or(now.day), now);
    assert_eq!(lasted(item, lines.iter().copied()), service.lasted);
    service
}

fn span(days: u32, distance: Option<i64>) -> Span {
    Span { days, distance: distance.map(km) }
}

#[test]
fn the_last_one_lasted_until_the_present_one_came() {
    let lines = [
        fitted(&OIL, "A", at("2024-01-01", Some(20_000))),
        fitted(&WIPERS, "W", at("2024-06-01", Some(26_000))),
        fitted(&OIL, "B", at("2025-01-31", Some(41_300))),
    ];
    let now = at("2025-03-02", Some(43_000));
    // 2024 has 366 days, and January 30 until its last.
    let expected = Service { lasted: Some(span(396, Some(21_300))), present: Some(span(30, Some(1_700))) };
    assert_eq!(service(&OIL, lines, now), expected);
    assert_eq!(
        service(&WIPERS, lines, now),
        Service { lasted: None, present: Some(span(274, Some(17_000))) }
    );
}

#[test]
fn nothing_is_told_of_an_item_without_parts() {
    let lines = [fitted(&OIL, "A", at("2024-01-01", Some(20_000)))];
    assert_eq!(service(&WIPERS, lines, at("2025-01-01", None)), Service::default());
}

#[test]
fn the_distance_goes_on_over_a_new_instrument() {
    let new = Instrument { day: day("2024-07-01"), old: km(90_000), new: km(10) };
    let readings = [read("2024-01-01", 80_000), read("2024-12-31", 9_010)];
    let track = Track::new(&car(), &readings, &[new]);
    let shown =
        |on: &str, count: i64| Moment { day: day(on), travelled: Some(track.travelled(day(on), km(count))) };
    let lines =
        [fitted(&OIL, "A", shown("2024-01-01", 80_000)), fitted(&OIL, "A", shown("2024-12-31", 9_010))];
    let lasted = service(&OIL, lines, at("2025-01-01", None)).lasted;
    assert_eq!(lasted, Some(span(365, Some(19_000))));
}

#[test]
fn without_a_reading_only_the_days_are_known() {
    let lines =
        [fitted(&OIL, "A", at("2024-01-01", None)), fitted(&OIL, "A", at("2024-03-01", Some(30_000)))];
    let expected = Service { lasted: Some(span(60, None)), present: Some(span(31, None)) };
    assert_eq!(service(&OIL, lines, at("2024-04-01", None)), expected);
}

#[test]
fn what_is_fitted_twice_on_a_day_is_fitted_once() {
    let lines = [
        fitted(&OIL, "A", at("2024-01-01", Some(20_000))),
        fitted(&OIL, "A", at("2024-02-01", None)),
        fitted(&OIL, "B", at("2024-02-01", Some(22_000))),
    ];
    let lasted = service(&OIL, lines, at("2024-02-01", Some(22_000)));
    assert_eq!(lasted, Service { lasted: Some(span(31, Some(2_000))), present: Some(span(0, Some(0))) });
}

/// A mistyped reading, or an estimate that falls short of one, is no distance.
#[test]
fn a_car_never_goes_backwards() {
    let lines = [
        fitted(&OIL, "A", at("2024-01-01", Some(90_000))),
        fitted(&OIL, "A", at("2024-02-01", Some(22_000))),
    ];
    let expected = Service { lasted: Some(span(31, None)), present: Some(span(0, None)) };
    assert_eq!(service(&OIL, lines, at("2024-01-15", Some(21_000))), expected);
}
