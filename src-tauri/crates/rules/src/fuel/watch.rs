//! Telling early that a car has begun to use more, or less, than it did.
//!
//! Each span's consumption is held against what this car used before at this time of the year, and how far it is off
//! is added up; see `statistics/shift.rs` for the method. Its constants were set on simulated logs
//! (`watch_tests.rs`): at most one false alarm in five years of weekly fills, and a step of 10 % found within six
//! tanks in 80 cases of 100, at a scatter of 3 to 5 % from tank to tank and a season of 5 to 10 %.
//!
//! Nothing is said in the first year, because what comes with the season cannot be told from what does not.

use units::Day;

use super::helped::{middle, weights};
use super::{PerMille, Share, Span};
use crate::statistics::{Observation, Shift, Tuning, shifts};

/// Consumption has shifted.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Alarm {
    /// The day on which the first span after the shift began.
    pub since: Day,
    /// The day of the fill at which it was plain.
    pub raised: Day,
    /// By how much, most likely; more when positive. By all spans up to the next shift.
    pub likely: PerMille,
    /// Within which ends.
    pub size: Share,
}

/// What watching came to.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Watched {
    /// Every shift, in order. The last one stands until another one undoes it.
    pub alarms: Vec<Alarm>,
    /// Whether there were spans enough: a year of them, and 20.
    pub learnt: bool,
}

const TUNING: Tuning = Tuning {
    seasons: true,
    learn_days: 365,
    learn: 20,
    // Half of a step of 10 %, whose natural logarithm is 0.095.
    allowance: 0.047,
    least_spread: 0.01,
};

/// A short span counts no less than this share of a usual one, and a long one no more than [`HEAVIEST`].
const LIGHTEST: f64 = 0.1;
const HEAVIEST: f64 = 2.0;

/// Watches the spans of one kind, which come in order.
pub fn watch(spans: &[Span]) -> Watched {
    let observation = |(span, weight): (&Span, f64)| Observation {
        day: middle(span),
        value: span.used.per_100_km().ln(),
        weight: weight.clamp(LIGHTEST, HEAVIEST),
    };
    let values: Vec<Observation> = spans.iter().zip(weights(spans)).map(observation).collect();
    let found = shifts(&values, TUNING);
    let alarm = |shift: &Shift| Alarm {
        since: spans[shift.since].from,
        raised: spans[shift.raised].to,
        likely: PerMille::near(shift.size),
        size: Share::of_log(shift.size, 1.96 * shift.error),
    };
    Watched { alarms: found.shifts.iter().map(alarm).collect(), learnt: found.learnt }
}

impl Watched {
    /// The shift that stands: the last one, if the car uses more since.
    pub fn standing(&self) -> Option<Alarm> {
        self.alarms.last().copied().filter(|alarm| alarm.likely > PerMille(0))
    }
}

#[cfg(test)]
#[path = "watch_tests.rs"]
mod tests;
