//! Amounts as they are typed, in currencies with none to four decimals.
#![allow(clippy::unwrap_used)]

use proptest::prelude::*;

use super::*;

fn currency(code: &str) -> Currency {
    code.parse().unwrap()
}

/// ISO 4217 minor units, as the Python package `iso4217` 1.16 lists them from the standard's own table. CLDR says
/// 0 for IQD and MGA, which is what people use and not what the standard says.
#[test]
fn currencies_have_the_decimals_of_iso_4217() {
    for (decimals, codes) in [
        (0, "JPY KRW CLP ISK VND XAF UGX PYG RWF"),
        (2, "EUR USD GBP CZK HUF IDR MRU MGA"),
        (3, "KWD BHD JOD OMR TND LYD IQD"),
        (4, "CLF UYW"),
    ] {
        for code in codes.split(' ') {
            assert_eq!(currency(code).decimals(), decimals, "{code}");
        }
    }
}

#[test]
fn currencies_are_known_by_their_letters_only() {
    assert_eq!(currency(" eur ").code(), "EUR");
    for text in ["", "EU", "EURO", "€", "ZZZ", "978", "ЕUR"] {
        assert!(matches!(text.parse::<Currency>(), Err(UnitError::Currency(_))), "{text}");
    }
}

#[test]
fn amounts_are_read_in_minor_units() {
    for (text, code, minor) in [
        ("12.50", "EUR", 1250),
        ("12,5", "EUR", 1250),
        ("12", "EUR", 1200),
        ("12.", "EUR", 1200),
        (" 0.05 ", "EUR", 5),
        ("-3.20", "EUR", -320),
        ("1250", "JPY", 1250),
        ("1.234", "KWD", 1234),
        ("1.2345", "CLF", 12_345),
    ] {
        assert_eq!(Money::parse(text, currency(code)).map(|money| money.minor), Ok(minor), "{text} {code}");
    }
}

#[test]
fn what_is_no_amount_is_refused() {
    for (text, code) in [
        ("", "EUR"),
        (".5", "EUR"),
        ("1.234", "EUR"),
        ("1.5", "JPY"),
        ("1,234.50", "EUR"),
        ("1 234", "EUR"),
        ("12 EUR", "EUR"),
        ("--1", "EUR"),
        ("+1", "EUR"),
        ("1e3", "EUR"),
        ("NaN", "EUR"),
        ("999999999999999999999", "EUR"),
        ("10000000000.01", "EUR"),
    ] {
        assert!(matches!(Money::parse(text, currency(code)), Err(UnitError::Money { .. })), "{text} {code}");
    }
}

#[test]
fn amounts_are_written_with_all_their_decimals() {
    let eur = |minor| Money { minor, currency: currency("EUR") }.to_string();
    assert_eq!(eur(5), "0.05 EUR");
    assert_eq!(eur(-1250), "-12.50 EUR");
    assert_eq!(eur(-5), "-0.05 EUR");
    assert_eq!(Money { minor: 1250, currency: currency("JPY") }.to_string(), "1250 JPY");
    assert_eq!(Money { minor: i64::MIN, currency: currency("KWD") }.to_string(), "-9223372036854775.808 KWD");
}

proptest! {
    #[test]
    fn an_amount_is_written_and_read_back(
        minor in -1_000_000_000_000_i64..=1_000_000_000_000,
        code in prop::sample::select(vec!["EUR", "JPY", "KWD", "CLF"]),
    ) {
        let money = Money { minor, currency: currency(code) };
        prop_assert_eq!(Money::parse(&money.number(), money.currency), Ok(money));
    }

    #[test]
    fn whatever_is_typed_is_taken_or_refused(text in "[-0-9., ]{0,20}|.{0,8}") {
        for code in ["EUR", "JPY", "KWD", "CLF"] {
            if let Ok(money) = Money::parse(&text, currency(code)) {
                prop_assert_eq!(Money::parse(&money.number(), money.currency), Ok(money));
            }
        }
    }
}
