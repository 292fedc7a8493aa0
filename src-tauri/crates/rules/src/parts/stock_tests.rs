//! What is left at home after what was fitted.
#![allow(clippy::unwrap_used)]

use super::*;
use crate::parts::{Moment, Note};
use crate::testing::day;

fn pieces(thousandths: u32) -> Quantity {
    Quantity::from_thousandths(thousandths, Measure::Piece).unwrap()
}

fn bought(on: &str, number: &'static str, quantity: Quantity) -> Bought<'static> {
    let day = day(on);
    Bought {
        maker: "",
        number,
        name: "filter",
        quantity,
        price: None,
        shop: "Fairlead",
        day,
        item: None,
        kind: None,
    }
}

fn fitted(on: &str, number: &'static str, quantity: Quantity) -> Fitted<'static> {
    let at = Moment { day: day(on), travelled: None };
    Fitted { item: None, maker: "", number, name: "filter", quantity, price: None, shop: "", at, kind: None }
}

fn left(bought: &[Bought<'_>], fitted: &[Fitted<'_>]) -> Vec<(String, String)> {
    let stock = in_stock(bought, fitted, &Notes::default());
    stock.iter().map(|it| (it.bought.number.to_owned(), it.left.number())).collect()
}

fn told(number: &str, left: &str) -> (String, String) {
    (number.to_owned(), left.to_owned())
}

#[test]
fn fitting_takes_out_what_was_bought_before() {
    let bought = [bought("2026-01-05", "OF 12-44", pieces(2000)), bought("2026-03-01", "P 9", pieces(4000))];
    let used = [fitted("2026-02-01", "of1244", pieces(1000))];
    assert_eq!(left(&bought, &used), [told("P 9", "4"), told("OF 12-44", "1")]);
    assert_eq!(left(&bought, &[fitted("2026-02-01", "OF1244", pieces(2000))]), [told("P 9", "4")]);
}

#[test]
fn what_was_fitted_earlier_or_in_a_workshop_takes_nothing_out() {
    let bought = [bought("2026-03-01", "P 9", pieces(1000))];
    let earlier = fitted("2026-02-01", "P 9", pieces(1000));
    let workshop = Fitted { shop: "Garage Plover", ..fitted("2026-03-04", "P 9", pieces(1000)) };
    assert_eq!(left(&bought, &[earlier, workshop]), [told("P 9", "1")]);
    assert_eq!(left(&bought, &[fitted("2026-03-01", "P 9", pieces(1000))]), [], "on the same day");
}

#[test]
fn more_fitted_than_bought_leaves_nothing_and_what_comes_after_is_whole() {
    let bought = [bought("2026-01-05", "P 9", pieces(1000)), bought("2026-03-01", "P 9", pieces(1000))];
    assert_eq!(left(&bought, &[fitted("2026-02-01", "P 9", pieces(4000))]), [told("P 9", "1")]);
}

#[test]
fn measures_are_kept_apart_and_names_stand_in_for_numbers() {
    let litres = Quantity::from_thousandths(5000, Measure::Litre).unwrap();
    let oil = [Bought { name: "5W-30", ..bought("2026-01-05", "", litres) }];
    let half = Quantity::from_thousandths(4300, Measure::Litre).unwrap();
    let filled = Fitted { name: "5w30", ..fitted("2026-02-01", "", half) };
    assert_eq!(left(&oil, &[filled]), [told("", "0.7")]);
    assert_eq!(left(&oil, &[Fitted { quantity: pieces(1000), ..filled }]), [told("", "5")]);
}

#[test]
fn another_number_for_the_same_part_counts() {
    let number = |written| PartNumber::new(written).unwrap();
    let notes = Notes::new(vec![Note {
        number: number("OF 12-44"),
        same: vec![(number("QF 88"), "Quillan")],
        warning: None,
    }]);
    let bought = [bought("2026-01-05", "QF88", pieces(2000))];
    let stock = in_stock(&bought, &[fitted("2026-02-01", "OF1244", pieces(1000))], &notes);
    assert_eq!(stock.iter().map(|it| it.left.thousandths()).collect::<Vec<_>>(), [1000]);
}

#[test]
fn each_part_says_how_much_of_it_came_from_home() {
    let bought = [bought("2026-01-05", "P 9", pieces(3000))];
    let used = [
        fitted("2026-04-01", "P9", pieces(2000)),
        fitted("2026-02-01", "P 9", pieces(2000)),
        fitted("2026-02-01", "Q 1", pieces(1000)),
        Fitted { shop: "Garage Plover", ..fitted("2026-02-02", "P 9", pieces(1000)) },
    ];
    assert_eq!(from_stock(&bought, &used, &Notes::default()), [1000, 2000, 0, 0]);
    assert_eq!(from_stock(&[], &used, &Notes::default()), [0; 4]);
}

#[test]
fn what_was_bought_without_a_number_goes_in_under_one() {
    let bought = [bought("2026-01-05", "", pieces(2000)), bought("2026-01-06", "Q 1", pieces(1000))];
    let used = |number| fitted("2026-02-01", number, pieces(1000));
    assert_eq!(left(&bought, &[used("P 9")]), [told("Q 1", "1"), told("", "1")]);
    assert_eq!(left(&bought, &[used("Q 1")]), [told("", "2")], "its own number goes first");
    let other = Fitted { name: "belt", ..used("P 9") };
    assert_eq!(left(&bought, &[other]), [told("Q 1", "1"), told("", "2")]);
}
