//! Readings as they are typed, and conversions that are exact.
#![allow(clippy::unwrap_used)]

use proptest::prelude::*;

use super::*;

const UNITS: [DistanceUnit; 2] = [DistanceUnit::Kilometre, DistanceUnit::Mile];

/// NIST SP 811 (2008), appendix B.8: the international mile is 1 609.344 m exactly.
#[test]
fn the_mile_is_exact() {
    assert_eq!(Distance::whole(1, DistanceUnit::Mile).millimetres(), 1_609_344);
    assert_eq!(Distance::whole(98_420, DistanceUnit::Mile).millimetres(), 158_391_636_480);
    assert_eq!(Distance::whole(15_625, DistanceUnit::Mile), Distance::whole(25_146, DistanceUnit::Kilometre));
}

/// 50 000 mi is 80 467.2 km; handbooks print it as 80 000 and as 83 000 km, which is why no unit is converted.
#[test]
fn units_are_rounded_only_when_asked() {
    let printed = Distance::whole(50_000, DistanceUnit::Mile);
    assert_eq!(printed.floor(DistanceUnit::Kilometre), 80_467);
    assert_eq!(printed.round(DistanceUnit::Kilometre), 80_467);
    assert_eq!(printed.floor(DistanceUnit::Mile), 50_000);
    let half = Distance::from_millimetres(1_500_000);
    assert_eq!((half.floor(DistanceUnit::Kilometre), half.round(DistanceUnit::Kilometre)), (1, 2));
    let back = Distance::from_millimetres(-1);
    assert_eq!((back.floor(DistanceUnit::Kilometre), back.round(DistanceUnit::Kilometre)), (-1, 0));
}

#[test]
fn readings_are_taken_as_instruments_and_people_write_them() {
    for text in ["98420", "98 420", "98\u{a0}420", "98\u{202f}420", "98'420", " 98420 ", "0098420"] {
        assert_eq!(
            Distance::parse_reading(text, DistanceUnit::Kilometre),
            Ok(Distance::whole(98_420, DistanceUnit::Kilometre)),
            "{text}"
        );
    }
    assert_eq!(Distance::parse_reading("0", DistanceUnit::Mile), Ok(Distance::ZERO));
}

/// A point or comma may mean thousands to one person and tenths to the next, so it means nothing here.
#[test]
fn what_is_no_whole_number_is_refused() {
    for text in ["", " ", "-5", "+5", "98.420", "98,420", "98420 km", "12e3", "٩٨", "ninety"] {
        let refused = Distance::parse_reading(text, DistanceUnit::Kilometre);
        assert!(matches!(refused, Err(UnitError::Distance(_))), "{text}");
    }
}

#[test]
fn readings_have_at_most_seven_digits() {
    let largest = Distance::parse_reading("9999999", DistanceUnit::Mile).unwrap();
    assert_eq!(largest.floor(DistanceUnit::Mile), Distance::LARGEST_READING);
    for text in ["10000000", "99999999999999999999999999", &"9".repeat(4000)] {
        assert_eq!(Distance::parse_reading(text, DistanceUnit::Mile), Err(UnitError::DistanceRange));
    }
}

#[test]
fn arithmetic_stops_at_the_largest_value() {
    let largest = Distance::from_millimetres(i64::MAX);
    let one = Distance::from_millimetres(1);
    assert_eq!(largest + one, largest);
    assert_eq!(-Distance::from_millimetres(i64::MIN), largest);
    assert_eq!([one, one, -one].into_iter().sum::<Distance>(), one);
    for unit in UNITS {
        assert!(largest.round(unit) >= largest.floor(unit), "{unit}");
        assert_eq!(Distance::whole(i64::MAX, unit), largest);
    }
}

proptest! {
    #[test]
    fn what_the_instrument_shows_comes_back(count in 0..=Distance::LARGEST_READING, mile in any::<bool>()) {
        let unit = UNITS[usize::from(mile)];
        let reading = Distance::parse_reading(&count.to_string(), unit).unwrap();
        prop_assert_eq!(reading.floor(unit), count);
        prop_assert_eq!(reading.round(unit), count);
    }

    #[test]
    fn whatever_is_typed_is_taken_or_refused(text in ".{0,24}", mile in any::<bool>()) {
        if let Ok(reading) = Distance::parse_reading(&text, UNITS[usize::from(mile)]) {
            let most = Distance::whole(Distance::LARGEST_READING, UNITS[usize::from(mile)]);
            prop_assert!((Distance::ZERO..=most).contains(&reading));
        }
    }

    #[test]
    fn rounding_is_never_off_by_more_than_a_half(millimetres in any::<i64>(), mile in any::<bool>()) {
        let unit = UNITS[usize::from(mile)];
        let (side, value) = (i128::from(unit.millimetres()), i128::from(millimetres));
        let off = i128::from(Distance::from_millimetres(millimetres).round(unit)) * side - value;
        prop_assert!(-side < 2 * off && 2 * off <= side);
        let below = value - i128::from(Distance::from_millimetres(millimetres).floor(unit)) * side;
        prop_assert!((0..side).contains(&below));
    }
}
