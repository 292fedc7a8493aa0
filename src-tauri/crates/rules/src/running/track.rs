//! From what instruments showed to what the car has gone.

use units::{Day, Distance, DistanceUnit};

use super::trust::{Trust, trust};
use super::{Instrument, OdometerStatus, Reading};
use crate::vehicle::Vehicle;

/// How far a car has gone since new, or since the first reading's instrument stood at zero.
///
/// A type of its own, so that it is never mixed up with what an instrument shows.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Travelled(pub Distance);

/// A reading with what it means.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Point {
    /// When.
    pub day: Day,
    /// What the instrument of that day showed.
    pub shown: Distance,
    /// How far the car had gone.
    pub travelled: Travelled,
}

/// One car's readings in order of day, across replaced instruments.
///
/// - Up to the first new instrument, the car has gone what the instrument shows. From then on what the old
///   one showed last is added, and what the new one showed first is taken off.
/// - On the day of a replacement a reading belongs to the instrument whose value at the change is the
///   nearer one; when both are equally near, to the new one.
/// - A reading marked as in excess of mechanical limits, and lower than the one before it on the same
///   instrument, means that the instrument ran over: a full turn of five digits, or as many as the reading
///   before it had, is added from then on.
/// - A reading marked as not actual counts for nothing.
#[derive(Debug, Clone)]
pub struct Track {
    unit: DistanceUnit,
    new_on: Option<Day>,
    readings: Vec<Reading>,
    instruments: Vec<Instrument>,
    steps: Vec<Step>,
    points: Vec<Point>,
    /// By point, the least that the car had gone at it or at any later one.
    least_from: Vec<Travelled>,
    /// Which of the recent points are to be believed.
    trust: Trust,
}

/// A day on which what must be added to the shown reading changed.
#[derive(Debug, Clone, Copy)]
struct Step {
    day: Day,
    /// What was shown before and after the change.
    old: Distance,
    new: Distance,
    /// What must be added to a shown reading after the change.
    offset: Distance,
}

impl Travelled {
    /// What a new car has gone.
    pub const NONE: Travelled = Travelled(Distance::ZERO);

    /// This much farther on.
    #[must_use]
    pub fn plus(self, distance: Distance) -> Travelled {
        Travelled(self.0 + distance)
    }

    /// How far it is from `earlier` to here; negative when `earlier` lies farther on.
    pub fn since(self, earlier: Travelled) -> Distance {
        self.0 - earlier.0
    }
}

impl Track {
    /// The track of these readings and instruments, in whatever order they come.
    ///
    /// A car that the book knows from new starts at zero on the day of its first use.
    pub fn new(vehicle: &Vehicle, readings: &[Reading], instruments: &[Instrument]) -> Track {
        Track::build(vehicle.unit, vehicle.new_on(), readings.to_vec(), instruments.to_vec())
    }

    /// The same track with one more reading.
    #[must_use]
    pub fn with(&self, reading: Reading) -> Track {
        let mut readings = self.readings.clone();
        readings.push(reading);
        Track::build(self.unit, self.new_on, readings, self.instruments.clone())
    }

    fn build(
        unit: DistanceUnit,
        new_on: Option<Day>,
        mut readings: Vec<Reading>,
        mut instruments: Vec<Instrument>,
    ) -> Track {
        readings.sort_by_key(|reading| (reading.day, reading.status));
        instruments.sort_by_key(|instrument| instrument.day);
        let steps = steps(&rollovers(&readings, &instruments, unit), &instruments);
        let mut track = Track {
            unit,
            new_on,
            readings,
            instruments,
            steps,
            points: Vec::new(),
            least_from: Vec::new(),
            trust: Trust::default(),
        };
        track.points = track.place_points();
        track.least_from = least_from(&track.points);
        track.trust = trust(&track.points);
        track
    }

    fn place_points(&self) -> Vec<Point> {
        let counted = self.readings.iter().filter(|reading| reading.status != OdometerStatus::NotActual);
        let mut points: Vec<Point> = counted
            .map(|&Reading { day, shown, .. }| Point { day, shown, travelled: self.travelled(day, shown) })
            .collect();
        let first = points.iter().map(|point| point.day).min();
        if let Some(day) = self.new_on.filter(|&new_on| first.is_none_or(|first| new_on < first)) {
            points.push(Point { day, shown: Distance::ZERO, travelled: Travelled::NONE });
        }
        points.sort_by_key(|point| (point.day, point.travelled));
        points
    }

    /// The same track without the recent readings that cannot be right.
    #[must_use]
    pub fn believed(&self) -> Track {
        let old = self.points.len() - self.trust.believed.len() - self.trust.doubted.len();
        let points: Vec<Point> = self.points[..old].iter().chain(&self.trust.believed).copied().collect();
        Track { least_from: least_from(&points), points, ..self.clone() }
    }

    /// How far the car had gone when the instrument of that day showed this; `None` where that was a recent reading
    /// that cannot be right.
    pub fn counted(&self, day: Day, shown: Distance) -> Option<Travelled> {
        let doubted = self.trust.doubted.iter().any(|point| (point.day, point.shown) == (day, shown));
        (!doubted).then(|| self.travelled(day, shown))
    }

    /// The recent readings that are to be believed, in order of day.
    pub(super) fn trusted(&self) -> &[Point] {
        &self.trust.believed
    }

    /// Every reading that counts, in order of day and, within a day, of distance.
    pub fn points(&self) -> &[Point] {
        &self.points
    }

    /// How far the car had gone when the instrument of that day showed this.
    pub fn travelled(&self, day: Day, shown: Distance) -> Travelled {
        let earlier = self.steps.partition_point(|step| step.day < day);
        let mut before = earlier.checked_sub(1).map_or(Distance::ZERO, |last| self.steps[last].offset);
        let mut offset = before;
        let mut nearest = None;
        for step in self.steps[earlier..].iter().take_while(|step| step.day == day) {
            for (at_change, then) in [(step.old, before), (step.new, step.offset)] {
                let gap = gap(shown, at_change);
                if nearest.is_none_or(|nearest| gap <= nearest) {
                    (nearest, offset) = (Some(gap), then);
                }
            }
            before = step.offset;
        }
        Travelled(shown + offset)
    }

    /// What the instrument that was in the car on this day showed after this distance; on the day of a
    /// replacement, the new one.
    pub fn shown_on(&self, day: Day, travelled: Travelled) -> Distance {
        let steps = self.steps.partition_point(|step| step.day <= day);
        let offset = steps.checked_sub(1).map_or(Distance::ZERO, |last| self.steps[last].offset);
        travelled.0 - offset
    }

    /// What the instrument now in the car shows after this distance.
    pub fn shown(&self, travelled: Travelled) -> Distance {
        self.steps.last().map_or(travelled.0, |step| travelled.0 - step.offset)
    }

    /// How far the car had gone at a reading, where that is one that counts.
    pub fn at(&self, day: Day, shown: Distance) -> Option<Travelled> {
        let first = self.points.partition_point(|point| point.day < day);
        let of_day = self.points[first..].iter().take_while(|point| point.day == day);
        of_day.filter(|point| point.shown == shown).last().map(|point| point.travelled)
    }

    /// How far the car had gone on a day between two readings, taking it to have gone evenly between them.
    ///
    /// `None` before the first reading and after the last.
    pub fn on(&self, day: Day) -> Option<Travelled> {
        let next = self.points.partition_point(|point| point.day <= day);
        let before = self.points.get(next.checked_sub(1)?)?;
        if before.day == day {
            return Some(before.travelled);
        }
        let after = self.points.get(next)?;
        let share = (day.days_since(before.day), after.day.days_since(before.day));
        Some(before.travelled.plus(part(after.travelled.since(before.travelled), share)))
    }

    /// The day on which the car had gone this far, taking it to have gone evenly between two readings.
    ///
    /// `None` while the last reading falls short of it; the day of the first reading when even that one lies
    /// beyond. Counted from the last reading that falls short, so that one mistyped reading which is too high
    /// does not make everything look passed.
    pub fn reached(&self, target: Travelled) -> Option<Day> {
        let Some(short) = self.least_from.partition_point(|&least| least < target).checked_sub(1) else {
            return self.points.first().map(|point| point.day);
        };
        let (before, after) = (self.points[short], self.points.get(short + 1)?);
        let whole = i128::from(after.travelled.since(before.travelled).millimetres());
        let gone = i128::from(target.since(before.travelled).millimetres());
        let days = i128::from(after.day.days_since(before.day)) * gone;
        let days = (days + whole - 1) / whole;
        Some(before.day.plus_days(i32::try_from(days).unwrap_or(i32::MAX)))
    }
}

/// By point, the least that the car had gone at it or at any later one, so that it never falls from one to the next.
fn least_from(points: &[Point]) -> Vec<Travelled> {
    let mut least: Vec<Travelled> = points.iter().map(|point| point.travelled).collect();
    for at in (1..least.len()).rev() {
        least[at - 1] = least[at - 1].min(least[at]);
    }
    least
}

/// Where a reading shows that the instrument ran over its last digit, which is like a new instrument that
/// starts at zero after the old one stopped at a round number.
fn rollovers(readings: &[Reading], instruments: &[Instrument], unit: DistanceUnit) -> Vec<Instrument> {
    let mut found = Vec::new();
    let mut last: Option<(usize, Distance)> = None;
    for reading in readings.iter().filter(|reading| reading.status != OdometerStatus::NotActual) {
        let fitted = instruments.partition_point(|instrument| instrument.day <= reading.day);
        if let Some((_, shown)) = last.filter(|&(before, shown)| before == fitted && reading.shown < shown)
            && reading.status == OdometerStatus::ExceedsMechanicalLimits
        {
            found.push(Instrument { day: reading.day, old: full_turn(shown, unit), new: Distance::ZERO });
        }
        last = Some((fitted, reading.shown));
    }
    found
}

/// The smallest full turn of an instrument of five digits or more that lies beyond this reading.
fn full_turn(shown: Distance, unit: DistanceUnit) -> Distance {
    let mut turn = 100_000_i64;
    while Distance::whole(turn, unit) <= shown && turn < Distance::LARGEST_READING {
        turn *= 10;
    }
    Distance::whole(turn, unit)
}

/// The changes of instrument in order of day, each with what is to be added after it.
fn steps(rollovers: &[Instrument], instruments: &[Instrument]) -> Vec<Step> {
    let mut changes: Vec<Instrument> = rollovers.iter().chain(instruments).copied().collect();
    changes.sort_by_key(|change| change.day);
    let mut offset = Distance::ZERO;
    let step = |Instrument { day, old, new }| {
        offset = offset + old - new;
        Step { day, old, new, offset }
    };
    changes.into_iter().map(step).collect()
}

/// How far two readings lie apart.
fn gap(a: Distance, b: Distance) -> Distance {
    if a < b { b - a } else { a - b }
}

/// The share `(part, whole)` of a distance, rounded down.
fn part(distance: Distance, (part, whole): (i32, i32)) -> Distance {
    let millimetres = i128::from(distance.millimetres()) * i128::from(part) / i128::from(whole.max(1));
    Distance::from_millimetres(i64::try_from(millimetres).unwrap_or(i64::MAX))
}

#[cfg(test)]
#[path = "track_tests.rs"]
mod tests;
