//! Parts over all the times they were fitted.
#![allow(clippy::unwrap_used)]

use units::{Measure, Money, Quantity};

use super::{Part, parts};
use crate::parts::{Bought, Fitted, Moment, Service, Span};
use crate::running::Travelled;
use crate::testing::{day, km};
use crate::upkeep::ItemRef;

const OIL: ItemRef = ItemRef::Catalogue(1);
const PLUGS: ItemRef = ItemRef::Catalogue(5);

fn at(on: &str, count: i64) -> Moment {
    Moment { day: day(on), travelled: Some(Travelled(km(count))) }
}

fn pieces(count: &str) -> Quantity {
    Quantity::parse(count, Measure::Piece).unwrap()
}

fn filter<'a>(maker: &'a str, number: &'a str, on: &str, count: i64) -> Fitted<'a> {
    Fitted {
        item: Some(&OIL),
        maker,
        number,
        name: "Oil filter",
        quantity: pieces("1"),
        price: None,
        shop: "",
        at: at(on, count),
        kind: None,
    }
}

fn paying<'a>(price: &str, currency: &str, shop: &'a str, line: Fitted<'a>) -> Fitted<'a> {
    Fitted { price: Some(Money::parse(price, currency.parse().unwrap()).unwrap()), shop, ..line }
}

fn now() -> Moment {
    at("2026-01-01", 50_000)
}

fn numbers(part: &Part<'_>) -> Vec<String> {
    part.numbers.iter().map(ToString::to_string).collect()
}

#[test]
fn two_spellings_are_one_part_and_the_newest_shows_first() {
    let lines = [
        filter("Quarrel", "qf20118", "2024-01-01", 10_000),
        filter("QUARREL", "QF 20-118", "2025-01-01", 30_000),
        filter("Quarrel", "QF 20-118", "2023-01-01", 1_000),
    ];
    let parts = parts(&lines, &[], now());
    assert_eq!(parts.len(), 1);
    assert_eq!(numbers(&parts[0]), ["QF 20-118", "qf20118"]);
    assert_eq!((parts[0].maker, parts[0].times, parts[0].day), ("QUARREL", 3, day("2025-01-01")));
}

#[test]
fn makers_part_what_shares_a_number_and_a_line_without_maker_means_the_only_one() {
    let bare = filter("", "600", "2025-03-01", 3_000);
    let quarrel = filter("Quarrel", "600", "2025-01-01", 1_000);
    let pellow = filter("Pellow", "600", "2025-02-01", 2_000);
    assert_eq!(parts(&[quarrel, bare], &[], now()).len(), 1);
    assert_eq!(parts(&[quarrel, bare], &[], now())[0].maker, "Quarrel");
    assert_eq!(parts(&[quarrel, pellow], &[], now()).len(), 2);
    assert_eq!(parts(&[quarrel, pellow, bare], &[], now()).len(), 3);
}

#[test]
fn without_a_number_maker_and_name_tell_parts_apart() {
    let named = |name, on| Fitted { name, ..filter("Quarrel", "-", on, 1_000) };
    let lines = [
        named("Drain washer", "2025-01-01"),
        named("drain-washer", "2025-02-01"),
        named("Sump washer", "2025-03-01"),
    ];
    let parts = parts(&lines, &[], now());
    let told: Vec<_> = parts.iter().map(|part| (part.name, part.times, part.numbers.len())).collect();
    assert_eq!(told, [("Sump washer", 1, 0), ("drain-washer", 2, 0)]);
}

#[test]
fn fitted_twice_on_a_day_is_once_and_its_quantities_add_up() {
    let plug = |count, measure| Fitted {
        item: Some(&PLUGS),
        quantity: Quantity::parse(count, measure).unwrap(),
        ..filter("Quarrel", "P 4", "2025-01-01", 1_000)
    };
    let lines = [plug("1", Measure::Set), plug("3", Measure::Piece), plug("1", Measure::Piece)];
    let parts = parts(&lines, &[], now());
    assert_eq!((parts[0].times, parts[0].quantity), (1, pieces("4")));
}

#[test]
fn the_last_price_stands_in_its_own_currency_with_day_and_shop() {
    let lines = [
        paying("900", "JPY", "Harbour Motors", filter("Quarrel", "QF 1", "2023-01-01", 1_000)),
        paying("7.80", "EUR", "Round Barn", filter("Quarrel", "QF 1", "2024-01-01", 2_000)),
        filter("Quarrel", "QF 1", "2025-01-01", 3_000),
    ];
    let part = &parts(&lines, &[], now())[0];
    let paid = part.paid.unwrap();
    assert_eq!((paid.price.to_string().as_str(), paid.shop), ("7.80 EUR", "Round Barn"));
    assert_eq!((paid.day, paid.quantity), (day("2024-01-01"), pieces("1")));
    assert_eq!((part.day, part.shop), (day("2025-01-01"), ""));
}

#[test]
fn a_part_that_another_took_the_place_of_lasted_until_then() {
    let lines =
        [filter("Quarrel", "QF 1", "2024-01-01", 10_000), filter("Quarrel", "QF 2", "2025-01-01", 28_000)];
    let lasted = Some(Span { days: 366, distance: Some(km(18_000)) });
    let parts = parts(&lines, &[], now());
    let present = Some(Span { days: 365, distance: Some(km(22_000)) });
    assert_eq!(parts[0].service, Service { lasted, present });
    assert_eq!(parts[1].service, Service { lasted, present: None });
}

#[test]
fn nothing_is_told_of_how_long_a_part_lasts_that_served_no_item() {
    let loose = |on| Fitted { item: None, ..filter("Quarrel", "QF 1", on, 1_000) };
    let parts = parts(&[loose("2024-01-01"), loose("2025-01-01")], &[], now());
    assert_eq!((parts[0].service, parts[0].times), (Service::default(), 2));
    assert!(parts[0].items.is_empty());
}

#[test]
fn a_book_without_parts_has_none() {
    assert_eq!(parts(&[], &[], now()), []);
}

#[test]
fn what_a_shop_was_paid_counts_and_the_latest_wins() {
    let bought = |on: &str, price: &str| Bought {
        maker: "Quarrel",
        number: "qf20118",
        name: "",
        quantity: pieces("2"),
        price: Some(Money::parse(price, "EUR".parse().unwrap()).unwrap()),
        shop: "Fairlead",
        day: day(on),
        item: None,
        kind: None,
    };
    let fitted =
        [paying("9.50", "EUR", "Garage Plover", filter("Quarrel", "QF 20-118", "2024-06-01", 20_000))];
    let paid = |bought: &[Bought<'static>]| {
        let parts = parts(&fitted, bought, now());
        assert_eq!(parts.len(), 1, "what waits at home is no part by itself");
        parts[0].paid.map(|paid| (paid.price.number(), paid.shop.to_owned(), paid.day.to_string()))
    };
    let told = |price: &str, shop: &str, day: &str| Some((price.to_owned(), shop.to_owned(), day.to_owned()));
    assert_eq!(paid(&[]), told("9.50", "Garage Plover", "2024-06-01"));
    let later = [bought("2025-02-01", "17.00"), bought("2024-12-01", "16.00")];
    assert_eq!(paid(&later), told("17.00", "Fairlead", "2025-02-01"));
    assert_eq!(paid(&[bought("2024-01-01", "15.00")]), told("9.50", "Garage Plover", "2024-06-01"));
}
