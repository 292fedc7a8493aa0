//! Readings as numbers: how far and how long from one to another.

use super::Point;

/// Of more readings than this, as many are taken, evenly, so that the pairs among them stay few.
const MOST_READINGS: usize = 36;

/// From one reading to the next.
#[derive(Debug, Clone, Copy)]
pub(super) struct Step {
    /// Days, 0 or more.
    pub days: f64,
    /// Millimetres.
    pub gone: f64,
}

impl Step {
    /// From this reading to a later one.
    pub fn between(from: &Point, to: &Point) -> Step {
        let gone = to.travelled.since(from.travelled).millimetres();
        Step { days: f64::from(to.day.days_since(from.day)), gone: real(gone) }
    }

    /// The steps from each of these readings to the next that are a day or longer.
    pub fn all(points: &[Point]) -> impl Iterator<Item = Step> {
        let steps = points.windows(2).map(|two| Step::between(&two[0], &two[1]));
        steps.filter(|step| step.days > 0.0)
    }

    /// How far off this rate it is, in millimetres for one day, where what is off grows with the square root
    /// of the days.
    pub fn off(self, rate: f64) -> f64 {
        (self.gone - rate * self.days).abs() / self.days.sqrt()
    }
}

/// Days and millimetres from the first of these readings to each, or to as many as are taken of them, the
/// first and the last always among them.
pub(super) fn line(points: &[Point]) -> Vec<(f64, f64)> {
    let taken = points.len().min(MOST_READINGS);
    let gaps = taken.saturating_sub(1).max(1);
    (0..taken)
        .map(|index| Step::between(&points[0], &points[index * (points.len() - 1) / gaps]))
        .map(|step| (step.days, step.gone))
        .collect()
}

/// Exact up to 2^53 mm, which is nine milliard kilometres.
#[expect(clippy::cast_precision_loss, reason = "no car has gone that far")]
pub(super) fn real(millimetres: i64) -> f64 {
    millimetres as f64
}

/// Rounded up, and held within the range of the type.
#[expect(clippy::cast_possible_truncation, reason = "the conversion saturates")]
pub(super) fn whole(millimetres: f64) -> i64 {
    millimetres.ceil() as i64
}
