//! Which days exist, how they are written, and where an interval ends.
#![allow(clippy::unwrap_used)]

use proptest::prelude::*;

use super::*;

fn day(text: &str) -> Day {
    text.parse().unwrap()
}

/// Calendar dates of ISO 8601 in the form of RFC 3339, section 5.6; the Gregorian leap years of both.
#[test]
fn days_of_the_calendar_are_taken() {
    for text in ["2024-02-29", "2000-02-29", "1970-01-01", "1900-01-01", "2199-12-31", "1900-02-28"] {
        assert_eq!(day(text).to_string(), text);
    }
}

#[test]
fn days_that_do_not_exist_are_refused() {
    for text in
        ["2025-02-29", "2100-02-29", "1900-02-29", "2025-13-01", "2025-00-10", "2025-04-31", "2025-01-00"]
    {
        assert_eq!(text.parse::<Day>(), Err(UnitError::Day(text.to_owned())), "{text}");
    }
}

#[test]
fn other_forms_are_refused() {
    for text in [
        "",
        "2024-2-29",
        "24-02-29",
        "2024/02/29",
        "20240229",
        " 2024-02-29",
        "2024-02-29 ",
        "2024-02-29T00:00:00Z",
        "29.02.2024",
        "+024-02-29",
        "2024--2-29",
        "２０２４",
        "2024-02-2٩",
    ] {
        assert!(matches!(text.parse::<Day>(), Err(UnitError::Day(_))), "{text}");
    }
}

#[test]
fn the_range_is_three_centuries() {
    assert_eq!("1899-12-31".parse::<Day>(), Err(UnitError::DayRange));
    assert_eq!("2200-01-01".parse::<Day>(), Err(UnitError::DayRange));
    assert_eq!(Day::from_epoch(i32::MIN), Err(UnitError::DayRange));
    assert_eq!(Day::from_epoch(i32::MAX), Err(UnitError::DayRange));
    assert_eq!(Day::from_epoch(Day::FIRST).unwrap(), day("1900-01-01"));
    assert_eq!(Day::from_epoch(Day::LAST).unwrap(), day("2199-12-31"));
    assert_eq!(day("2199-12-31").plus_days(i32::MAX), day("2199-12-31"));
    assert_eq!(day("1900-01-01").plus_days(i32::MIN), day("1900-01-01"));
    assert_eq!(day("2199-12-31").plus(HalfMonths(u16::MAX)), day("2199-12-31"));
}

/// POSIX, 'seconds since the Epoch': 86 400 seconds a day, so 951 782 400 s is the leap day of 2000.
#[test]
fn days_are_counted_from_1970() {
    assert_eq!(day("1970-01-01").epoch(), 0);
    assert_eq!(day("2000-02-29").epoch(), 951_782_400 / 86_400);
    assert_eq!(day("1969-12-31").epoch(), -1);
    assert_eq!(day("2025-03-01").days_since(day("2025-02-28")), 1);
    assert_eq!(day("2024-02-28").days_since(day("2024-03-01")), -2);
}

/// No standard settles this; to end within the month is common practice.
#[test]
fn whole_months_end_within_the_month() {
    for (from, months, to) in [
        ("2025-01-31", 1, "2025-02-28"),
        ("2024-01-31", 1, "2024-02-29"),
        ("2025-03-31", 1, "2025-04-30"),
        ("2025-12-31", 2, "2026-02-28"),
        ("2024-02-29", 12, "2025-02-28"),
        ("2024-02-29", 48, "2028-02-29"),
        ("2025-01-15", 0, "2025-01-15"),
        ("2025-11-30", 3, "2026-02-28"),
    ] {
        assert_eq!(day(from).plus(HalfMonths::months(months)), day(to), "{from} and {months} months");
    }
}

/// Makers print 7.5 months (1993 Geo Tracker owner's manual, p. 288); the half is 15 days by our own choice.
#[test]
fn half_months_are_fifteen_days_after_the_whole_ones() {
    assert_eq!(day("2025-01-31").plus(HalfMonths(1)), day("2025-02-15"));
    assert_eq!(day("2025-01-31").plus(HalfMonths(3)), day("2025-03-15"));
    assert_eq!(day("2025-01-01").plus(HalfMonths(15)), day("2025-08-16"));
    assert_eq!(HalfMonths(15).to_string(), "7.5");
    assert_eq!(HalfMonths(1).to_string(), "0.5");
    assert_eq!(HalfMonths::months(12).to_string(), "12");
}

/// A second way to the same number: Howard Hinnant's `days_from_civil` (from memory).
fn counted(year: i32, month: u32, day: u32) -> i32 {
    let year = if month <= 2 { year - 1 } else { year };
    let era = year.div_euclid(400);
    let of_era = year.rem_euclid(400);
    let shifted = i32::try_from((month + 9) % 12).unwrap();
    let of_year = (153 * shifted + 2) / 5 + i32::try_from(day).unwrap() - 1;
    era * 146_097 + of_era * 365 + of_era / 4 - of_era / 100 + of_year - 719_468
}

proptest! {
    #[test]
    fn a_day_is_written_and_read_back(epoch in Day::FIRST..=Day::LAST) {
        let day = Day::from_epoch(epoch).unwrap();
        let (year, month, of_month) = day.ymd();
        prop_assert_eq!(day.to_string().parse::<Day>().unwrap(), day);
        prop_assert_eq!(Day::from_ymd(year, month, of_month).unwrap(), day);
        prop_assert_eq!(counted(year, month, of_month), epoch);
    }

    #[test]
    fn whatever_is_typed_is_taken_or_refused(text in ".{0,12}") {
        if let Ok(day) = text.parse::<Day>() {
            prop_assert_eq!(day.to_string(), text);
        }
    }

    #[test]
    fn longer_intervals_never_end_earlier(epoch in Day::FIRST..=Day::LAST, months in 0_u16..1200) {
        let day = Day::from_epoch(epoch).unwrap();
        let whole = day.plus(HalfMonths::months(months));
        prop_assert!(whole >= day);
        prop_assert!(day.plus(HalfMonths(months * 2 + 1)) >= whole);
        prop_assert!(day.plus(HalfMonths::months(months + 1)) >= whole);
    }

    #[test]
    fn a_later_start_never_ends_earlier(epoch in Day::FIRST..Day::LAST, halves in 0_u16..240) {
        let (first, second) = (Day::from_epoch(epoch).unwrap(), Day::from_epoch(epoch + 1).unwrap());
        prop_assert!(first.plus(HalfMonths(halves)) <= second.plus(HalfMonths(halves)));
    }
}
