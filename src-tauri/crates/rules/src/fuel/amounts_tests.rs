//! Any two give the third, and three that disagree are found.
#![allow(clippy::unwrap_used)]

use proptest::prelude::*;
use serde::Deserialize;

use super::*;

/// Written by `tests/references/welch_vectors.py`, where `decimal` has worked out the totals.
const CASES: &str = include_str!("../../../../../tests/references/data/welch.json");

#[derive(Deserialize)]
struct Cases {
    totals: Vec<[String; 4]>,
}

const LITRE: PumpUnit = PumpUnit::Volume(VolumeUnit::Litre);

fn litres(text: &str) -> Amount {
    Amount::Volume(Volume::parse(text, VolumeUnit::Litre).unwrap())
}

fn price(text: &str, code: &str) -> UnitPrice {
    UnitPrice::parse(text, code.parse().unwrap()).unwrap()
}

fn money(text: &str, code: &str) -> Money {
    Money::parse(text, code.parse().unwrap()).unwrap()
}

#[test]
fn totals_are_those_of_decimal() {
    let cases: Cases = serde_json::from_str(CASES).unwrap();
    for [code, amount, each, total] in &cases.totals {
        let (amount, each, total) = (litres(amount), price(each, code), money(total, code));
        assert_eq!(settle(Some(amount), LITRE, Some(each), None), Settled::Total(total));
        if total.minor > 0 {
            assert_eq!(settle(Some(amount), LITRE, Some(each), Some(total)), Settled::Agrees);
        }
    }
    assert_eq!(cases.totals.len(), 300);
}

#[test]
fn any_two_give_the_third() {
    let (amount, each, total) = (litres("45.37"), price("1.749", "EUR"), money("79.35", "EUR"));
    assert_eq!(settle(Some(amount), LITRE, Some(each), None), Settled::Total(total));
    assert_eq!(settle(Some(amount), LITRE, None, Some(total)), Settled::Price(each));
    assert_eq!(settle(None, LITRE, Some(each), Some(total)), Settled::Amount(amount));
    assert_eq!(settle(Some(amount), LITRE, None, None), Settled::Open);

    let gallons = Amount::Volume(Volume::parse("12.01", VolumeUnit::UsGallon).unwrap());
    let gallon = PumpUnit::Volume(VolumeUnit::UsGallon);
    assert_eq!(
        settle(Some(gallons), gallon, Some(price("3.459", "USD")), None),
        Settled::Total(money("41.54", "USD"))
    );
    assert_eq!(
        settle(None, gallon, Some(price("3.459", "USD")), Some(money("41.54", "USD"))),
        Settled::Amount(gallons)
    );
    let charged = Amount::Energy(Energy::parse("41.35").unwrap());
    assert_eq!(
        settle(Some(charged), PumpUnit::KilowattHour, Some(price("0.3127", "EUR")), None),
        Settled::Total(money("12.93", "EUR"))
    );
    assert_eq!(settle(Some(charged), LITRE, Some(price("0.3127", "EUR")), None), Settled::Open);
}

#[test]
fn three_that_disagree_are_pointed_out() {
    let settled = |amount, each, total| {
        settle(Some(litres(amount)), LITRE, Some(price(each, "EUR")), Some(money(total, "EUR")))
    };
    assert_eq!(settled("45.37", "1.749", "79.35"), Settled::Agrees);
    assert_eq!(settled("45.37", "1.749", "79.38"), Settled::Agrees, "as far off as rounding goes");
    assert_eq!(
        settled("45.37", "1.75", "79.35"),
        Settled::Disagrees(money("79.40", "EUR")),
        "a decimal is missing"
    );
    assert_eq!(settled("45.37", "1.749", "79.53"), Settled::Disagrees(money("79.35", "EUR")));
    assert_eq!(settled("54.37", "1.749", "79.35"), Settled::Disagrees(money("95.09", "EUR")));
    // The page at calculconversion.com with the wrong litres: 22.5 L at 1.25 do not make 70.
    assert_eq!(settled("22.5", "1.25", "70"), Settled::Disagrees(money("28.13", "EUR")));
    assert_eq!(settled("56", "1.25", "70"), Settled::Agrees);
    let both = settle(Some(litres("10")), LITRE, Some(price("1.7", "EUR")), Some(money("17", "USD")));
    assert_eq!(both, Settled::Currencies);
}

proptest! {
    /// What was worked out agrees with what it was worked out from.
    #[test]
    fn what_follows_agrees(
        hundredths in 1_i64..100_000,
        thousandths in 1_i64..100_000,
        code in prop::sample::select(vec!["EUR", "JPY", "KWD", "CLF"]),
    ) {
        let amount = LITRE.hundredths(hundredths);
        let each = UnitPrice::from_ten_thousandths(thousandths * 10, code.parse().unwrap());
        let Settled::Total(total) = settle(Some(amount), LITRE, Some(each), None) else { panic!() };
        prop_assume!(total.minor > 0);
        prop_assert_eq!(settle(Some(amount), LITRE, Some(each), Some(total)), Settled::Agrees);
    }

    #[test]
    fn nothing_overflows(amount: i64, each: i64, minor: i64) {
        for code in ["CLF", "JPY"] {
            let currency = code.parse().unwrap();
            let each = UnitPrice::from_ten_thousandths(each, currency);
            let amount = Amount::Volume(Volume::from_picolitres(amount));
            let total = Money { minor, currency };
            let _ = settle(Some(amount), LITRE, Some(each), Some(total));
            let _ = settle(None, LITRE, Some(each), Some(total));
            let _ = settle(Some(amount), LITRE, None, Some(total));
        }
    }
}
