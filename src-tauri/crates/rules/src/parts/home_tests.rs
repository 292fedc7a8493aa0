//! What is at home, taken by one need after the other.
#![allow(clippy::unwrap_used)]

use super::*;
use crate::parts::Note;
use crate::testing::day;

const OIL: ItemRef = ItemRef::Catalogue(1);

fn quantity(thousandths: u32, measure: Measure) -> Quantity {
    Quantity::from_thousandths(thousandths, measure).unwrap()
}

fn there(number: &'static str, name: &'static str, left: Quantity) -> InStock<'static> {
    let bought = Bought {
        maker: "",
        number,
        name,
        quantity: left,
        price: None,
        shop: "Fairlead",
        day: day("2026-05-01"),
        item: None,
        kind: None,
    };
    InStock { bought, left }
}

fn wanted(number: &'static str, name: &'static str, quantity: Quantity) -> Wanted<'static> {
    Wanted { maker: "", number, name, item: &OIL, kind: None, quantity }
}

fn met(at_home: u32, missing: u32) -> Met {
    Met { at_home, missing }
}

#[test]
fn three_at_home_for_two_jobs_that_need_two_each_leave_one_to_buy() {
    let notes = Notes::default();
    let mut home = Home::new(&[there("P 9", "plug", quantity(3000, Measure::Piece))], &notes);
    let need = wanted("p9", "plug", quantity(2000, Measure::Piece));
    assert_eq!(home.take(&need), met(3000, 0));
    assert_eq!(home.take(&need), met(1000, 1000));
    assert_eq!(home.take(&need), met(0, 2000));
}

#[test]
fn what_is_marked_meets_no_need_and_what_takes_its_place_does() {
    let number = |written| PartNumber::new(written).unwrap();
    let warning = Some(Warning::Superseded { instead: "P 10" });
    let notes = Notes::new(vec![Note { number: number("P 9"), same: Vec::new(), warning }]);
    let one = quantity(1000, Measure::Piece);
    let mut home = Home::new(&[there("P 9", "plug", one)], &notes);
    assert_eq!(home.take(&wanted("P 9", "plug", one)), met(0, 1000));
    let mut home = Home::new(&[there("P 9", "plug", one), there("P10", "plug", one)], &notes);
    assert_eq!(home.take(&wanted("P 9", "plug", one)), met(1000, 0));
}

#[test]
fn what_has_no_number_is_known_by_what_it_is() {
    let notes = Notes::default();
    let (litres, one) = (quantity(5000, Measure::Litre), quantity(1000, Measure::Piece));
    let for_oil =
        InStock { bought: Bought { item: Some(&OIL), ..there("", "5W-30", litres).bought }, left: litres };
    let stock = [for_oil, there("", "Oil filter", one), there("ZZ 1", "Oil filter", one)];
    let mut home = Home::new(&stock, &notes);
    assert_eq!(home.take(&wanted("SO 530", "Engine oil", quantity(4300, Measure::Litre))), met(5000, 0));
    assert_eq!(home.take(&wanted("OF 12-44", "oil filter", one)), met(1000, 0), "and no other number");
    assert_eq!(
        home.take(&wanted("WS 1", "Washer", one)),
        met(0, 1000),
        "a thing is no other for the same item"
    );
    let maker = Wanted { maker: "Quarrel", ..wanted("", "oil filter", one) };
    assert_eq!(home.take(&maker), met(1000, 0), "a need without a number takes any of that name");
}
