//! Intervals as they are printed.
#![allow(clippy::unwrap_used)]

use super::*;

fn printed(text: &str) -> PrintedDistance {
    text.parse().unwrap()
}

/// Makers round what they print: 50 000 mi stand beside 83 000 km (1993 Geo Tracker owner's manual, p. 288)
/// and elsewhere beside 80 000 km; 7 500 mi beside 12 500 km (the same) and 12 000 km (Ford on-line owner
/// manual). None is a conversion: those are 80 467 km and 12 070 km, computed.
#[test]
fn printed_kilometres_are_no_conversions_of_printed_miles() {
    let exact = |miles: &str| printed(miles).distance().floor(DistanceUnit::Kilometre);
    assert_eq!(exact("50000 mi"), 80_467);
    assert_eq!(exact("7500 mi"), 12_070);
    for (miles, kilometres) in
        [("50000 mi", "83000 km"), ("50000 mi", "80000 km"), ("7500 mi", "12500 km"), ("7500 mi", "12000 km")]
    {
        assert_ne!(printed(miles).distance(), printed(kilometres).distance());
        assert_eq!(printed(miles).to_string(), miles, "kept as printed");
        assert_eq!(printed(kilometres).to_string(), kilometres, "kept as printed");
    }
}

/// The 1993 Geo Tracker owner's manual, p. 288, prints 7.5 months.
#[test]
fn half_months_are_read() {
    assert_eq!(parse_time("7.5 months"), Ok(HalfMonths(15)));
    assert_eq!(parse_time("12 months"), Ok(HalfMonths::months(12)));
    for wrong in ["7.25 months", "months", "12", "12 years", "-1 months", "99999 months", ".5 months"] {
        assert!(parse_time(wrong).is_err(), "{wrong}");
    }
}

#[test]
fn distances_out_of_form_or_range_are_refused() {
    for wrong in ["15000", "15000km", "15000 ft", "km", "-5 km", "1.5 km", "99999999999 km"] {
        assert!(matches!(wrong.parse::<PrintedDistance>(), Err(RulesError::IntervalText(_))), "{wrong}");
    }
    assert_eq!("0 km".parse::<PrintedDistance>(), Err(RulesError::IntervalDistance(0)));
    assert_eq!("1000001 mi".parse::<PrintedDistance>(), Err(RulesError::IntervalDistance(1_000_001)));
}

#[test]
fn an_interval_names_something_and_within_bounds() {
    assert_eq!(Interval::new(None, None), Err(RulesError::IntervalEmpty));
    let time = |half_months| Interval::new(None, Some(HalfMonths(half_months)));
    assert!(time(1).is_ok() && time(1_200).is_ok());
    assert_eq!(time(0), Err(RulesError::IntervalTime(HalfMonths(0))));
    assert_eq!(time(1_201), Err(RulesError::IntervalTime(HalfMonths(1_201))));
}

#[test]
fn a_range_runs_from_short_to_long_and_both_ends_name_the_same() {
    let by = |distance: &str, months| {
        Interval::new(Some(printed(distance)), Some(HalfMonths::months(months))).unwrap()
    };
    let by_time = Interval::new(None, Some(HalfMonths::months(12))).unwrap();
    assert!(Range::new(by("10000 km", 12), by("15000 km", 12)).is_ok());
    for (short, long) in [
        (by("15000 km", 12), by("10000 km", 12)),
        (by("10000 km", 24), by("15000 km", 12)),
        (by("10000 mi", 12), by("15000 km", 12)),
        (by_time, by("15000 km", 12)),
    ] {
        assert_eq!(Range::new(short, long), Err(RulesError::IntervalRange));
    }
}
