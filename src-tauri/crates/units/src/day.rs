//! Calendar days, and intervals in half months.

use std::fmt;
use std::str::FromStr;

use chrono::{Datelike, Days, Months, NaiveDate};

use crate::UnitError;

/// A calendar day of the proleptic Gregorian calendar, from 1900-01-01 to 2199-12-31, without a time zone.
///
/// Ordered by date. The number behind it counts days since 1970-01-01.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Day(i32);

/// An interval of time in half months, the finest step in which makers print one (7.5 months exists).
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct HalfMonths(pub u16);

impl Day {
    const FIRST: i32 = -25_567;
    const LAST: i32 = 84_005;

    /// The day `days` after 1970-01-01 (before it when negative).
    pub fn from_epoch(days: i32) -> Result<Day, UnitError> {
        if (Self::FIRST..=Self::LAST).contains(&days) { Ok(Day(days)) } else { Err(UnitError::DayRange) }
    }

    /// The day with this year, month (1 to 12) and day of the month (1 to 31).
    pub fn from_ymd(year: i32, month: u32, day: u32) -> Result<Day, UnitError> {
        let date = NaiveDate::from_ymd_opt(year, month, day)
            .ok_or_else(|| UnitError::Day(format!("{year:04}-{month:02}-{day:02}")))?;
        Day::from_date(date)
    }

    fn from_date(date: NaiveDate) -> Result<Day, UnitError> {
        Day::from_epoch(date.to_epoch_days())
    }

    fn date(self) -> NaiveDate {
        NaiveDate::from_epoch_days(self.0).unwrap_or(NaiveDate::MIN)
    }

    /// Days since 1970-01-01.
    pub fn epoch(self) -> i32 {
        self.0
    }

    /// Year, month (1 to 12) and day of the month (1 to 31).
    pub fn ymd(self) -> (i32, u32, u32) {
        let date = self.date();
        (date.year(), date.month(), date.day())
    }

    /// Whether this is a Saturday or a Sunday, the sixth and seventh days of the week of ISO 8601.
    pub fn is_weekend(self) -> bool {
        self.date().weekday().number_from_monday() > 5
    }

    /// Whole days from `earlier` to this day; negative when this day comes first.
    pub fn days_since(self, earlier: Day) -> i32 {
        self.0 - earlier.0
    }

    /// The day `days` later (earlier when negative), held within the years 1900 to 2199.
    #[must_use]
    pub fn plus_days(self, days: i32) -> Day {
        Day(self.0.saturating_add(days).clamp(Self::FIRST, Self::LAST))
    }

    /// The day one interval later.
    ///
    /// Whole months keep the day of the month, and the end of a shorter month stands in for a day that it
    /// does not have: 31 January and one month is 28 or 29 February. No standard settles this; it is the
    /// reading that never skips a month. A half month is 15 days, added after the whole months.
    #[must_use]
    pub fn plus(self, interval: HalfMonths) -> Day {
        let months = Months::new(u32::from(interval.0 / 2));
        let days = Days::new(u64::from(interval.0 % 2) * 15);
        let date = self.date().checked_add_months(months).and_then(|date| date.checked_add_days(days));
        Day(date.map_or(Self::LAST, |date| date.to_epoch_days()).min(Self::LAST))
    }
}

impl HalfMonths {
    /// An interval of whole months.
    pub const fn months(months: u16) -> HalfMonths {
        HalfMonths(months * 2)
    }
}

impl fmt::Display for Day {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.date().fmt(f)
    }
}

impl FromStr for Day {
    type Err = UnitError;

    fn from_str(text: &str) -> Result<Day, UnitError> {
        let wrong = || UnitError::Day(text.chars().take(40).collect());
        let form = text.len() == 10
            && text.bytes().enumerate().all(|(at, byte)| match at {
                4 | 7 => byte == b'-',
                _ => byte.is_ascii_digit(),
            });
        if !form {
            return Err(wrong());
        }
        let date = NaiveDate::parse_from_str(text, "%Y-%m-%d").map_err(|_| wrong())?;
        Day::from_date(date)
    }
}

/// Written in months, with `.5` for the half: `7.5`.
impl fmt::Display for HalfMonths {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}{}", self.0 / 2, if self.0 % 2 == 1 { ".5" } else { "" })
    }
}

#[cfg(test)]
#[path = "day_tests.rs"]
mod tests;
