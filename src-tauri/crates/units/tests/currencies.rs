//! The minor units of every currency, against the Python package `iso4217`, which has the standard's own table.
//!
//! `tests/references/currency_vectors.py` writes the file, and a test beside it asks the package again.
#![allow(clippy::unwrap_used)]

use units::Currency;

const CASES: &str = include_str!("../../../../tests/references/data/currencies.txt");

#[test]
fn every_currency_has_the_minor_units_of_iso_4217() {
    let mut wrong = Vec::new();
    for line in CASES.lines() {
        let (code, decimals) = line.split_once(' ').unwrap();
        let found = code.parse::<Currency>().map(Currency::decimals);
        if found != Ok(decimals.parse().unwrap()) {
            wrong.push(format!("{line}, not {found:?}"));
        }
    }
    assert!(wrong.is_empty(), "{wrong:#?}");
    assert!(CASES.lines().count() > 150);
}
