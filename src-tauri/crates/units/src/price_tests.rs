//! Prices of a unit as they are typed, and what they come to.
#![allow(clippy::unwrap_used)]

use proptest::prelude::*;

use super::*;

fn currency(code: &str) -> Currency {
    code.parse().unwrap()
}

fn price(text: &str, code: &str) -> UnitPrice {
    UnitPrice::parse(text, currency(code)).unwrap()
}

#[test]
fn three_and_four_decimals_are_kept_whatever_the_currency_has() {
    for (typed, code, shown) in [
        ("1.749", "EUR", "1.749"),
        ("1,75", "EUR", "1.75"),
        ("1.7", "EUR", "1.70"),
        ("0.3127", "EUR", "0.3127"),
        ("172", "JPY", "172"),
        ("172.5", "JPY", "172.5"),
        ("0.085", "KWD", "0.085"),
        ("0.2", "KWD", "0.200"),
        ("2", "CLF", "2.0000"),
    ] {
        assert_eq!(price(typed, code).number(), shown, "{typed} {code}");
    }
    for text in ["0", "-1", "1.23456", "", "1e3", "1000000.1"] {
        assert!(UnitPrice::parse(text, currency("EUR")).is_err(), "{text}");
    }
}

/// Worked by hand, with the minor units of ISO 4217.
#[test]
fn a_total_is_rounded_to_the_minor_unit_halves_up() {
    for (typed, code, hundredths, total) in [
        ("1.749", "EUR", 4_537, "79.35 EUR"),
        ("1.75", "EUR", 1_002, "17.54 EUR"),
        ("0.25", "EUR", 1_002, "2.51 EUR"),
        ("172.5", "JPY", 3_000, "5175 JPY"),
        ("0.105", "KWD", 4_010, "4.211 KWD"),
    ] {
        assert_eq!(price(typed, code).times(hundredths, 100).to_string(), total, "{typed} {code}");
    }
}

#[test]
fn a_price_is_what_was_paid_for_one_unit() {
    let paid = Money { minor: 7_935, currency: currency("EUR") };
    assert_eq!(UnitPrice::of(paid, 4_537, 100, 3), Some(price("1.749", "EUR")));
    assert_eq!(UnitPrice::of(paid, 4_537, 100, 4), Some(price("1.7490", "EUR")));
    assert_eq!(UnitPrice::of(paid, 0, 100, 3), None);
    assert_eq!(UnitPrice::of(paid, -5, 100, 3), None);
}

proptest! {
    #[test]
    fn a_price_is_written_and_read_back(
        value in 1_i64..=10_000_000_000,
        code in prop::sample::select(vec!["EUR", "JPY", "KWD", "CLF"]),
    ) {
        let price = UnitPrice::from_ten_thousandths(value, currency(code));
        prop_assert_eq!(UnitPrice::parse(&price.number(), price.currency), Ok(price));
        prop_assert_eq!(UnitPrice::from_cbor(&price.to_cbor()), Ok(price));
    }

    #[test]
    fn nothing_overflows(value: i64, part: i64, whole in 1..=i64::MAX, minor: i64) {
        let currency = currency("CLF");
        let _ = UnitPrice::from_ten_thousandths(value, currency).times(part, whole).number();
        let _ = UnitPrice::of(Money { minor, currency }, part, whole, 3);
    }
}
