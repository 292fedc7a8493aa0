//! Intervals as makers print them, and the ranges that the trade goes by.

use std::fmt;
use std::str::FromStr;

use units::{Distance, DistanceUnit, HalfMonths};

use crate::RulesError;

/// A distance in whole units, kept in the unit in which it was printed: 1 to 1 000 000 of them.
///
/// Makers round when they print both units, so that one can not be worked out from the other.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct PrintedDistance {
    count: u32,
    unit: DistanceUnit,
}

/// How often something is done: by distance, by time, or by whichever comes first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Interval {
    distance: Option<PrintedDistance>,
    time: Option<HalfMonths>,
}

/// A value for each of the two phases of a schedule.
///
/// Many handbooks give one interval up to the first time, counted from new, and another from then on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Schedule<T = Interval> {
    /// Up to the first time, where that differs.
    pub first: Option<T>,
    /// From one time to the next.
    pub every: T,
}

/// An interval between a short end, for a car that is driven hard, and a long end.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Range {
    short: Interval,
    long: Interval,
}

impl PrintedDistance {
    /// The longest interval, in either unit.
    pub const MAX: u32 = 1_000_000;

    /// This many units, from 1 to [`PrintedDistance::MAX`].
    pub fn new(count: u32, unit: DistanceUnit) -> Result<PrintedDistance, RulesError> {
        if (1..=PrintedDistance::MAX).contains(&count) {
            Ok(PrintedDistance { count, unit })
        } else {
            Err(RulesError::IntervalDistance(count))
        }
    }

    /// How many units.
    pub const fn count(self) -> u32 {
        self.count
    }

    /// The unit in which it was printed.
    pub const fn unit(self) -> DistanceUnit {
        self.unit
    }

    /// The distance itself.
    pub fn distance(self) -> Distance {
        Distance::whole(i64::from(self.count), self.unit)
    }
}

impl Interval {
    /// The longest time: 50 years.
    pub const LONGEST: HalfMonths = HalfMonths::months(600);

    /// An interval of a distance, a time from half a month to [`Interval::LONGEST`], or both.
    pub fn new(distance: Option<PrintedDistance>, time: Option<HalfMonths>) -> Result<Interval, RulesError> {
        if let Some(time) = time.filter(|time| time.0 == 0 || *time > Interval::LONGEST) {
            return Err(RulesError::IntervalTime(time));
        }
        if distance.is_none() && time.is_none() {
            return Err(RulesError::IntervalEmpty);
        }
        Ok(Interval { distance, time })
    }

    /// By distance.
    pub const fn distance(self) -> Option<PrintedDistance> {
        self.distance
    }

    /// By time.
    pub const fn time(self) -> Option<HalfMonths> {
        self.time
    }

    /// The shorter of both by distance, and by time; what only one of them has holds.
    #[must_use]
    pub fn or_shorter(self, other: Interval) -> Interval {
        let distances = [self.distance, other.distance].into_iter().flatten();
        let times = [self.time, other.time].into_iter().flatten();
        Interval { distance: distances.min_by_key(|printed| printed.distance()), time: times.min() }
    }
}

impl<T> Schedule<T> {
    /// The same interval every time.
    pub const fn every(every: T) -> Schedule<T> {
        Schedule { first: None, every }
    }

    /// The schedule with each of its values put through `change`.
    pub fn map<U>(self, mut change: impl FnMut(T) -> U) -> Schedule<U> {
        Schedule { first: self.first.map(&mut change), every: change(self.every) }
    }
}

impl Range {
    /// A range from `short` to `long`, which name the same things, neither of them longer in `short`.
    pub fn new(short: Interval, long: Interval) -> Result<Range, RulesError> {
        let distances =
            (short.distance.map(PrintedDistance::distance), long.distance.map(PrintedDistance::distance));
        if ordered(distances) && ordered((short.time, long.time)) {
            Ok(Range { short, long })
        } else {
            Err(RulesError::IntervalRange)
        }
    }

    /// The end for a car that is driven hard.
    pub const fn short(self) -> Interval {
        self.short
    }

    /// The end for a car that is not.
    pub const fn long(self) -> Interval {
        self.long
    }

    /// Whether both ends are the same.
    pub fn is_single(self) -> bool {
        self.short == self.long
    }
}

fn ordered<T: Ord>(ends: (Option<T>, Option<T>)) -> bool {
    match ends {
        (Some(short), Some(long)) => short <= long,
        (None, None) => true,
        _ => false,
    }
}

/// Written as printed: `15000 km`, `7500 mi`.
impl fmt::Display for PrintedDistance {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} {}", self.count, self.unit)
    }
}

/// Reads what [`Display`](fmt::Display) writes.
impl FromStr for PrintedDistance {
    type Err = RulesError;

    fn from_str(text: &str) -> Result<PrintedDistance, RulesError> {
        let wrong = || RulesError::IntervalText(text.chars().take(40).collect());
        let (count, unit) = text.split_once(' ').ok_or_else(wrong)?;
        let unit = match unit {
            "km" => DistanceUnit::Kilometre,
            "mi" => DistanceUnit::Mile,
            _ => return Err(wrong()),
        };
        PrintedDistance::new(count.parse().map_err(|_| wrong())?, unit)
    }
}

/// Reads a time as it is printed: `12 months`, `7.5 months`.
pub(super) fn parse_time(text: &str) -> Result<HalfMonths, RulesError> {
    let wrong = || RulesError::IntervalText(text.chars().take(40).collect());
    let months = text.strip_suffix(" months").ok_or_else(wrong)?;
    let (whole, half) = match months.strip_suffix(".5") {
        Some(whole) => (whole, 1),
        None => (months, 0),
    };
    let whole: u16 = whole.parse().map_err(|_| wrong())?;
    whole.checked_mul(2).and_then(|halves| halves.checked_add(half)).map(HalfMonths).ok_or_else(wrong)
}

#[cfg(test)]
#[path = "interval_tests.rs"]
mod tests;
