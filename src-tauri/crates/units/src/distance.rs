//! Distances, exact in millimetres for whole kilometres and whole miles alike.

use std::fmt;
use std::iter::Sum;
use std::ops::{Add, Neg, Sub};

use crate::UnitError;

/// The unit in which an instrument counts.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum DistanceUnit {
    /// 1 km = 1 000 000 mm.
    Kilometre,
    /// The international mile, 1 609 344 mm exactly (NIST SP 811, appendix B.8).
    Mile,
}

/// A distance or an odometer reading in millimetres; negative only as a difference.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Default)]
pub struct Distance(i64);

impl DistanceUnit {
    /// Millimetres in one of this unit.
    pub const fn millimetres(self) -> i64 {
        match self {
            DistanceUnit::Kilometre => 1_000_000,
            DistanceUnit::Mile => 1_609_344,
        }
    }

    /// The symbol of the unit, as it is printed behind a number.
    pub const fn symbol(self) -> &'static str {
        match self {
            DistanceUnit::Kilometre => "km",
            DistanceUnit::Mile => "mi",
        }
    }
}

impl Distance {
    /// No distance.
    pub const ZERO: Distance = Distance(0);
    /// The largest reading that an instrument with seven digits shows.
    pub const LARGEST_READING: i64 = 9_999_999;

    /// A whole number of units.
    ///
    /// Exact for every magnitude below 5 000 milliard units, beyond which it is held at the largest value.
    pub const fn whole(count: i64, unit: DistanceUnit) -> Distance {
        Distance(count.saturating_mul(unit.millimetres()))
    }

    /// This many millimetres.
    pub const fn from_millimetres(millimetres: i64) -> Distance {
        Distance(millimetres)
    }

    /// The distance in millimetres.
    pub const fn millimetres(self) -> i64 {
        self.0
    }

    /// A reading as typed: digits, with spaces, apostrophes or thin spaces between groups allowed.
    pub fn parse_reading(text: &str, unit: DistanceUnit) -> Result<Distance, UnitError> {
        let wrong = || UnitError::Distance(text.chars().take(40).collect());
        let digits: String =
            text.chars().filter(|c| !matches!(c, ' ' | '\u{a0}' | '\u{202f}' | '\'')).collect();
        if digits.is_empty() || !digits.bytes().all(|byte| byte.is_ascii_digit()) {
            return Err(wrong());
        }
        let count: i64 = digits.parse().map_err(|_| UnitError::DistanceRange)?;
        if count > Self::LARGEST_READING {
            return Err(UnitError::DistanceRange);
        }
        Ok(Distance::whole(count, unit))
    }

    /// Whole units, rounded down as an odometer does.
    pub const fn floor(self, unit: DistanceUnit) -> i64 {
        self.0.div_euclid(unit.millimetres())
    }

    /// Whole units, rounded to the nearest, halves up.
    pub const fn round(self, unit: DistanceUnit) -> i64 {
        nearest(self.0, unit.millimetres())
    }
}

/// How many of `step`, which is above 0, come nearest to `value`, halves up.
pub(crate) const fn nearest(value: i64, step: i64) -> i64 {
    let whole = value.div_euclid(step);
    let rest = value.rem_euclid(step);
    if rest >= step - rest { whole + 1 } else { whole }
}

impl Add for Distance {
    type Output = Distance;
    fn add(self, other: Distance) -> Distance {
        Distance(self.0.saturating_add(other.0))
    }
}

impl Sub for Distance {
    type Output = Distance;
    fn sub(self, other: Distance) -> Distance {
        Distance(self.0.saturating_sub(other.0))
    }
}

impl Neg for Distance {
    type Output = Distance;
    fn neg(self) -> Distance {
        Distance(self.0.saturating_neg())
    }
}

impl Sum for Distance {
    fn sum<I: Iterator<Item = Distance>>(iter: I) -> Distance {
        iter.fold(Distance::ZERO, Add::add)
    }
}

impl fmt::Display for DistanceUnit {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.symbol())
    }
}

#[cfg(test)]
#[path = "distance_tests.rs"]
mod tests;
