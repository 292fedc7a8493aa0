//! How fast a car goes, and where its odometer stands on a day without a reading.

use units::{Day, Distance};

use super::{Point, Track, Travelled};
use crate::vehicle::Vehicle;

/// How far back from the last reading the pace is taken: a year and a little more, so that a reading from
/// this time last year is among them and the seasons even out.
const WINDOW_DAYS: i32 = 400;

/// Readings closer together than this say nothing about a habit.
const SHORTEST_DAYS: i32 = 30;

/// After this many days of readings the owner's own statement of the yearly distance counts no more.
const BLEND_DAYS: i32 = 365;

/// How far off the observed rate is taken to be, in percent. An assumption of this program.
const OBSERVED_SPREAD: i64 = 30;

/// How far off the owner's statement is taken to be, in percent. An assumption of this program.
const STATED_SPREAD: i64 = 50;

/// Days in a year of the Gregorian calendar, times 10 000.
const YEAR_E4: i64 = 3_652_425;

/// The odometer on a day, with the span in which it likely lies.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Estimate {
    /// At least.
    pub low: Travelled,
    /// Most likely.
    pub likely: Travelled,
    /// At most.
    pub high: Travelled,
}

/// A day to come, with the span in which it likely lies. Ordered: `early <= likely <= late`.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct DaySpan {
    /// At the earliest.
    pub early: Day,
    /// Most likely.
    pub likely: Day,
    /// At the latest.
    pub late: Day,
}

/// How fast a car goes after its last reading.
///
/// The rate is that of the readings of about the last year, blended with the yearly distance that the owner
/// states as long as the readings span less than a year. Without either there is no rate, and nothing is
/// said about the future.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Pace {
    last: Option<Point>,
    rate: Option<Rate>,
}

/// Millimetres a day.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
struct Rate {
    low: i64,
    likely: i64,
    high: i64,
}

impl DaySpan {
    /// A day that is certain.
    pub const fn exact(day: Day) -> DaySpan {
        DaySpan { early: day, likely: day, late: day }
    }

    /// Whichever comes first.
    #[must_use]
    pub fn or_earlier(self, other: DaySpan) -> DaySpan {
        DaySpan {
            early: self.early.min(other.early),
            likely: self.likely.min(other.likely),
            late: self.late.min(other.late),
        }
    }
}

impl Pace {
    /// The pace of this car.
    pub fn new(vehicle: &Vehicle, track: &Track) -> Pace {
        let stated =
            vehicle.yearly.map(|yearly| yearly.millimetres().max(0).saturating_mul(10_000) / YEAR_E4);
        Pace { last: track.points().last().copied(), rate: rate(observed(track.points()), stated) }
    }

    /// The last reading that counts.
    pub fn last(&self) -> Option<Point> {
        self.last
    }

    /// How far the car likely goes in a day.
    pub fn per_day(&self) -> Option<Distance> {
        self.rate.map(|rate| Distance::from_millimetres(rate.likely))
    }

    /// Where the odometer stands on this day; the last reading itself on its day and before it.
    ///
    /// The span widens with every day since the last reading. `None` without a reading, and without a rate
    /// on any later day.
    pub fn on(&self, day: Day) -> Option<Estimate> {
        let last = self.last?;
        let days = i64::from(day.days_since(last.day));
        if days <= 0 {
            return Some(Estimate { low: last.travelled, likely: last.travelled, high: last.travelled });
        }
        let rate = self.rate?;
        let after = |rate: i64| last.travelled.plus(Distance::from_millimetres(rate.saturating_mul(days)));
        Some(Estimate { low: after(rate.low), likely: after(rate.likely), high: after(rate.high) })
    }

    /// When the car will have gone this far: the day of the last reading if it already has.
    ///
    /// `None` without a reading, without a rate, and for a car that stands still.
    pub fn reaches(&self, target: Travelled) -> Option<DaySpan> {
        let last = self.last?;
        let ahead = target.since(last.travelled).millimetres();
        if ahead <= 0 {
            return Some(DaySpan::exact(last.day));
        }
        let rate = self.rate.filter(|rate| rate.low > 0)?;
        let after = |rate: i64| {
            let days = ahead / rate + i64::from(ahead % rate > 0);
            last.day.plus_days(i32::try_from(days).unwrap_or(i32::MAX))
        };
        Some(DaySpan { early: after(rate.high), likely: after(rate.likely), late: after(rate.low) })
    }
}

/// Millimetres a day over the readings of the last year, and the days they span.
fn observed(points: &[Point]) -> Option<(i64, i32)> {
    let last = points.last()?;
    let span = |point: &&Point| last.day.days_since(point.day);
    let from = points
        .iter()
        .find(|point| span(point) <= WINDOW_DAYS)
        .filter(|point| span(point) >= SHORTEST_DAYS)
        .or_else(|| points.iter().rev().find(|point| span(point) >= SHORTEST_DAYS))?;
    let days = span(&from);
    let gone = last.travelled.since(from.travelled).millimetres().max(0);
    // Rounded up, so that a distance of exactly so many days does not take a day more.
    Some(((gone + i64::from(days) - 1) / i64::from(days), days))
}

/// Blends what was observed with what the owner states, by how long it was observed.
fn rate(observed: Option<(i64, i32)>, stated: Option<i64>) -> Option<Rate> {
    let (likely, spread) = match (observed, stated) {
        (None, None) => return None,
        (None, Some(stated)) => (stated, STATED_SPREAD),
        (Some((observed, _)), None) => (observed, OBSERVED_SPREAD),
        (Some((observed, days)), Some(stated)) => {
            let weight = i64::from(days.min(BLEND_DAYS));
            let blend =
                |observed: i64, stated: i64| stated + (observed - stated) * weight / i64::from(BLEND_DAYS);
            (blend(observed, stated), blend(OBSERVED_SPREAD, STATED_SPREAD))
        }
    };
    let share = |percent: i64| likely.saturating_mul(percent) / 100;
    Some(Rate { low: share(100 - spread), likely, high: share(100 + spread) })
}

#[cfg(test)]
#[path = "pace_tests.rs"]
mod tests;
