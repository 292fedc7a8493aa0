//! Watching measured values for a jump to another level and for a slow drift.

use units::Day;

use super::{Judgement, Parameter};
use crate::statistics::{Fit, Observation, Shift, Tuning, quantile, shifts};
use crate::upkeep::Milli;

/// A value on a day.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Measurement {
    /// When.
    pub day: Day,
    /// How much, in thousandths of the parameter's unit.
    pub value: Milli,
}

/// The values have jumped to another level.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Jump {
    /// The day of the first value at the new level.
    pub since: Day,
    /// The day of the value at which it was plain.
    pub raised: Day,
    /// How far, in thousandths of the unit; by all values up to the next jump.
    pub size: Milli,
}

/// The values go up or down over time, by so much a year: in 95 cases of 100 between the two ends, which lie on the
/// same side of 0. Ordered: `low <= high`.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Drift {
    /// The lower end, in thousandths of the unit a year.
    pub low: Milli,
    /// The upper end, in thousandths of the unit a year.
    pub high: Milli,
}

/// What watching came to.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Watched {
    /// How the last value stands to its limits.
    pub last: Option<Judgement>,
    /// Every jump, in order.
    pub jumps: Vec<Jump>,
    /// A drift since the last jump, where it matters and cannot be chance.
    pub drift: Option<Drift>,
    /// Whether there were values enough to tell a jump.
    pub learnt: bool,
}

/// Before so many values nothing is said of a jump or a drift.
const LEARN: usize = 8;

/// A drift is only told of over so many days.
const DRIFT_DAYS: i32 = 60;

/// Watches the values of one parameter, in whatever order they come. Values that cannot be are left out.
///
/// Jumps are found with the method of consumption (`statistics/shift.rs`), without a season; the drift is the slope
/// of the line of least squares with its interval by Student's t.
pub fn watch(parameter: Parameter, measurements: &[Measurement]) -> Watched {
    let mut sorted = measurements.to_vec();
    sorted.sort_by_key(|measurement| measurement.day);
    let last = sorted.last().map(|measurement| parameter.judge(measurement.value));
    sorted.retain(|measurement| parameter.judge(measurement.value) != Judgement::Implausible);
    let observation = |measurement: &Measurement| Observation {
        day: measurement.day,
        value: real(measurement.value),
        weight: 1.0,
    };
    let values: Vec<Observation> = sorted.iter().map(observation).collect();
    let found = shifts(&values, tuning(parameter));
    let level_from = found.shifts.last().map_or(0, |shift| shift.since);
    let jump = |shift: &Shift| Jump {
        since: values[shift.since].day,
        raised: values[shift.raised].day,
        size: milli(shift.size),
    };
    Watched {
        last,
        jumps: found.shifts.iter().map(jump).collect(),
        drift: drift(parameter, &values[level_from..]),
        learnt: found.learnt,
    }
}

fn tuning(parameter: Parameter) -> Tuning {
    Tuning {
        seasons: false,
        learn_days: 0,
        learn: LEARN,
        allowance: real(parameter.matters()) / 2.0,
        least_spread: real(parameter.step()),
    }
}

fn drift(parameter: Parameter, values: &[Observation]) -> Option<Drift> {
    let days = values.last()?.day.days_since(values.first()?.day);
    if values.len() < LEARN || days < DRIFT_DAYS {
        return None;
    }
    let first = values.first()?.day;
    let years: Vec<f64> =
        values.iter().map(|value| f64::from(value.day.days_since(first)) / 365.2425).collect();
    let y: Vec<f64> = values.iter().map(|value| value.value).collect();
    let ones = vec![1.0; y.len()];
    let fit = Fit::new(&[ones.clone(), years], &y, &ones)?;
    let slope = fit.contrast(&[0.0, 1.0], &vec![false; y.len()])?;
    let margin = quantile(0.975, slope.freedoms[0])? * slope.variance().sqrt();
    let moved = slope.estimate * f64::from(days) / 365.2425;
    let plain = slope.estimate.abs() > margin && moved.abs() >= real(parameter.matters());
    plain.then(|| Drift { low: milli(slope.estimate - margin), high: milli(slope.estimate + margin) })
}

#[allow(clippy::cast_precision_loss)]
fn real(value: Milli) -> f64 {
    value.0 as f64 / 1_000.0
}

#[allow(clippy::cast_possible_truncation)]
fn milli(value: f64) -> Milli {
    Milli((value * 1_000.0).round() as i64)
}

#[cfg(test)]
#[path = "watch_tests.rs"]
mod tests;
