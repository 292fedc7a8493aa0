//! How fast a car goes, and where its odometer stands on a day without a reading.

use units::{Day, Distance};

use super::habit::Habit;
use super::{Point, Track, Travelled};
use crate::vehicle::Vehicle;

/// As many days as there are in the three centuries of a [`Day`], and a few more.
const LONGEST: i64 = 110_000;

/// The odometer on a day, with the span in which it lies in four cases of five. Ordered: `low <= likely <= high`.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Estimate {
    /// Lower in about one case of ten.
    pub low: Travelled,
    /// Most likely.
    pub likely: Travelled,
    /// Higher in about one case of ten.
    pub high: Travelled,
}

/// A day to come, with the span in which it lies in four cases of five. Ordered: `early <= likely <= late`.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct DaySpan {
    /// Earlier in about one case of ten.
    pub early: Day,
    /// Most likely.
    pub likely: Day,
    /// Later in about one case of ten.
    pub late: Day,
}

/// How fast a car goes after its last reading.
///
/// The rate is the median of the slopes between every two readings of about the last year (Theil-Sen), where
/// older readings weigh less and mistyped ones are left out. As long as the readings span less than a year it is
/// blended with the yearly distance that the owner states. Without either there is no rate, and nothing is
/// said about the future.
///
/// The spans are held against simulated drivers of several habits: of each habit, two weeks to a year ahead, 75 to
/// 90 in a hundred hold what happens. What they are made of and which assumptions are in them stands at the head
/// of `habit.rs`.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Pace {
    last: Option<Point>,
    doubtful: Option<Point>,
    habit: Option<Habit>,
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
        let trusted = track.trusted();
        let last = trusted.last().copied();
        let doubtful = track.points().last().copied().filter(|&point| Some(point) != last);
        Pace { last, doubtful, habit: Habit::new(trusted, vehicle.yearly) }
    }

    /// The last reading that is believed, from which everything is counted.
    pub fn last(&self) -> Option<Point> {
        self.last
    }

    /// The very last reading, when it is so far off the others that it is taken to be mistyped.
    ///
    /// It counts for nothing here until another one bears it out.
    pub fn doubtful(&self) -> Option<Point> {
        self.doubtful
    }

    /// How far the car likely goes in a day.
    pub fn per_day(&self) -> Option<Distance> {
        self.habit.map(|habit| Distance::from_millimetres(habit.per_day()))
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
        let habit = self.habit?;
        let after = |gone: i64| last.travelled.plus(Distance::from_millimetres(gone));
        Some(Estimate {
            low: after(habit.low(days)),
            likely: after(habit.likely(days)),
            high: after(habit.high(days)),
        })
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
        let habit = self.habit.filter(|habit| habit.per_day() > 0)?;
        let after = |days: i64| last.day.plus_days(i32::try_from(days).unwrap_or(i32::MAX));
        let likely = ahead / habit.per_day() + i64::from(ahead % habit.per_day() > 0);
        Some(DaySpan {
            early: after(first_after(0, |days| habit.high(days) >= ahead)),
            likely: after(likely),
            late: after(first_after(likely - 1, |days| habit.low(days) >= ahead)),
        })
    }
}

/// The first number of days after `short` on which something is `reached` that stays so ever after, if it is
/// within the range of a [`Day`].
fn first_after(mut short: i64, reached: impl Fn(i64) -> bool) -> i64 {
    let mut ahead = 1;
    while ahead < LONGEST && !reached(short.saturating_add(ahead)) {
        short = short.saturating_add(ahead);
        ahead *= 2;
    }
    let mut enough = short.saturating_add(ahead);
    while enough - short > 1 {
        let middle = i64::midpoint(short, enough);
        if reached(middle) { enough = middle } else { short = middle }
    }
    enough
}

#[cfg(test)]
#[path = "pace_tests.rs"]
mod tests;

#[cfg(test)]
#[path = "drivers_tests.rs"]
mod drivers_tests;
