//! Volumes and quantities as they are typed.
#![allow(clippy::unwrap_used)]

use proptest::prelude::*;

use super::*;

const UNITS: [VolumeUnit; 3] = [VolumeUnit::Litre, VolumeUnit::UsGallon, VolumeUnit::ImperialGallon];

/// NIST SP 811 (2008), appendix B.8, and the Python package `Pint` 0.25: both gallons are exact in litres.
#[test]
fn gallons_are_exact() {
    let picolitres = |unit| Volume::parse("1", unit).unwrap().picolitres();
    assert_eq!(picolitres(VolumeUnit::Litre), 1_000_000_000_000);
    assert_eq!(picolitres(VolumeUnit::UsGallon), 3_785_411_784_000);
    assert_eq!(picolitres(VolumeUnit::ImperialGallon), 4_546_090_000_000);
}

/// NIST SP 811 (2008), appendix B.8: an imperial gallon is 1.20095 US gallons, to five decimals.
#[test]
fn the_gallons_stand_in_their_published_ratio() {
    let us = Volume::parse("1", VolumeUnit::UsGallon).unwrap().picolitres();
    let imperial = Volume::parse("1", VolumeUnit::ImperialGallon).unwrap().picolitres();
    assert_eq!((imperial * 1_000_000 / us + 5) / 10, 120_095);
}

#[test]
fn the_ends_of_the_range_can_be_written() {
    let number = |picolitres| Volume::from_picolitres(picolitres).number(VolumeUnit::Litre);
    assert_eq!(number(i64::MAX), "9223372.037");
    assert_eq!(number(i64::MIN), "-9223372.037");
    assert_eq!(number(-1), "0.000");
}

#[test]
fn volumes_are_above_nothing_and_fit_a_tank() {
    for text in ["0.001", "1000", "42,17", "42.173", " 5 "] {
        assert!(Volume::parse(text, VolumeUnit::Litre).is_ok(), "{text}");
    }
    for text in ["0", "0.000", "-1", "1000.001", "1.2345", "", "5 L", "1e2"] {
        let refused = Volume::parse(text, VolumeUnit::Litre);
        assert!(matches!(refused, Err(UnitError::Quantity(_))), "{text}");
    }
}

#[test]
fn quantities_lie_within_their_range() {
    let number = |text| Quantity::parse(text, Measure::Piece).map(Quantity::number);
    assert_eq!(number("4"), Ok("4".to_owned()));
    assert_eq!(number("4.300"), Ok("4.3".to_owned()));
    assert_eq!(number("100"), Ok("100".to_owned()));
    assert_eq!(number("0,001"), Ok("0.001".to_owned()));
    assert_eq!(number("999999.999"), Ok("999999.999".to_owned()));
    for text in ["0", "1000000", "-4", "4.3333", "", "four"] {
        assert!(number(text).is_err(), "{text}");
    }
    assert!(Quantity::from_thousandths(0, Measure::Litre).is_err());
    assert!(Quantity::from_thousandths(u32::MAX, Measure::Litre).is_err());
}

proptest! {
    #[test]
    fn what_was_typed_comes_back(thousandths in 1_u64..=1_000_000, at in 0_usize..3) {
        let typed = with_point(thousandths, 3);
        prop_assert_eq!(Volume::parse(&typed, UNITS[at]).unwrap().number(UNITS[at]), typed);
    }

    #[test]
    fn a_quantity_is_written_and_read_back(thousandths in 1_u32..=999_999_999) {
        let quantity = Quantity::from_thousandths(thousandths, Measure::Kilogram).unwrap();
        prop_assert_eq!(Quantity::parse(&quantity.number(), Measure::Kilogram), Ok(quantity));
    }

    #[test]
    fn whatever_is_typed_is_taken_or_refused(text in "[-0-9., ]{0,20}|.{0,8}") {
        for unit in UNITS {
            if let Ok(volume) = Volume::parse(&text, unit) {
                prop_assert_eq!(Volume::parse(&volume.number(unit), unit), Ok(volume));
            }
        }
        let _ = Quantity::parse(&text, Measure::Set);
    }
}
