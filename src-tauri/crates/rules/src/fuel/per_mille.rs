//! Changes in tenths of a percent.

use std::fmt;

/// A change in tenths of a percent: 25 is 2.5 % more.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct PerMille(pub i32);

/// A change that lies between two ends, in 95 cases of 100. Ordered: `low <= high`.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Share {
    /// Its lower end.
    pub low: PerMille,
    /// Its upper end.
    pub high: PerMille,
}

impl PerMille {
    /// The change of the factor whose natural logarithm this is, rounded with `round`.
    #[allow(clippy::cast_possible_truncation)]
    fn of_log(log: f64, round: impl Fn(f64) -> f64) -> PerMille {
        PerMille(round(log.exp_m1() * 1_000.0).clamp(-1_000.0, 1e9) as i32)
    }

    /// The nearest tenth of a percent to the change of the factor whose natural logarithm this is.
    pub(super) fn near(log: f64) -> PerMille {
        PerMille::of_log(log, f64::round)
    }

    /// How far it is from no change.
    #[must_use]
    pub const fn size(self) -> PerMille {
        PerMille(self.0.saturating_abs())
    }
}

impl Share {
    /// The change of a factor whose natural logarithm is so much, give or take `margin`; rounded outwards.
    pub(super) fn of_log(log: f64, margin: f64) -> Share {
        Share {
            low: PerMille::of_log(log - margin, f64::floor),
            high: PerMille::of_log(log + margin, f64::ceil),
        }
    }
}

/// Written in percent with one decimal: `-2.5`.
impl fmt::Display for PerMille {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let sign = if self.0 < 0 { "-" } else { "" };
        let size = self.0.unsigned_abs();
        write!(f, "{sign}{}.{}", size / 10, size % 10)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn changes_are_rounded_outwards_and_written_in_percent() {
        let Share { low, high } = Share::of_log(1.051_f64.ln(), 1e-9);
        assert_eq!((low, high), (PerMille(50), PerMille(52)));
        assert_eq!(PerMille::near(0.974_6_f64.ln()).to_string(), "-2.5");
        assert_eq!(PerMille(-4).to_string(), "-0.4");
        assert_eq!(PerMille::near(f64::NEG_INFINITY), PerMille(-1_000));
    }
}
