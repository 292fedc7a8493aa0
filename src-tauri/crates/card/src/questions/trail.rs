//! How far the car had gone at each visit, and what of it does not add up.

use units::DistanceUnit;

use super::{Place, Question, Timeline, Units, count};
use crate::code::{Claims, InstrumentChange, OdometerReading};

/// Without a visit for longer than so many days is asked about: 24 months, the longest time that the catalogue gives
/// any engine oil (common practice).
pub(super) const GAP_DAYS: i64 = 731;

/// ... and so is a longer way: 30 000 km, the longest that it gives any engine oil (common practice).
pub(super) const GAP: Units = Units { kilometres: 30_000, miles: 18_641 };

/// Farther in a day is asked about: what `rules::running::FASTEST_PER_DAY` says (common practice).
pub(super) const FAST: Units = Units { kilometres: 2_500, miles: 1_553 };

/// From so many days on a car keeps no such pace, ...
const STEADY_DAYS: i64 = 90;

/// ... and farther than this in a day is asked about: 146 000 km a year (common practice: beyond what two drivers in
/// turn drive for a living).
const STEADY: Units = Units { kilometres: 400, miles: 249 };

/// No stretch counts as longer, so that two of them can be weighed against each other in whole numbers anywhere.
const LONGEST: i64 = 1_000_000_000;

/// A reading with how far the car had gone by then, across replaced instruments, in whole units of the card.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
struct Point {
    shown: OdometerReading,
    travelled: i64,
}

/// The way of a car: its visits and its latest reading, each in order of day and, within a day, of distance.
pub(super) struct Trail<'a> {
    claims: &'a Claims,
    visits: Vec<Point>,
    all: Vec<Point>,
    latest: Point,
}

impl From<&Point> for Place {
    fn from(point: &Point) -> Place {
        Place { day: point.shown.day, way: point.travelled }
    }
}

impl<'a> Trail<'a> {
    pub(super) fn new(claims: &'a Claims) -> Trail<'a> {
        let mut changes = claims.instruments.clone();
        changes.sort_by_key(|change| change.day);
        let point = |shown| Point { shown, travelled: travelled(shown, &changes) };
        let latest = point(claims.latest);
        let visits = claims.visits.iter();
        let mut visits: Vec<Point> =
            visits.map(|visit| point(OdometerReading { day: visit.day, reading: visit.reading })).collect();
        visits.sort_by_key(order);
        let mut all = visits.clone();
        all.push(latest);
        all.sort_by_key(order);
        Trail { claims, visits, all, latest }
    }

    /// How far the car had gone at its latest reading.
    pub(super) fn gone(&self) -> i64 {
        self.latest.travelled
    }

    /// Readings lower than the highest of the day before them.
    pub(super) fn lower(&self) -> Option<Question> {
        let falls = || self.all.windows(2).filter(|pair| pair[1].travelled < pair[0].travelled);
        let deepest = first_most(falls(), |pair| way(&pair[1], &pair[0]))?;
        Some(Question::Lower { count: count(falls().count()), from: deepest[0].shown, to: deepest[1].shown })
    }

    /// Stretches that no car goes.
    pub(super) fn jump(&self) -> Option<Question> {
        let jumps = || self.all.windows(2).filter(|pair| self.jumps(&pair[0], &pair[1]));
        let first = jumps().next()?;
        Some(Question::Jump { count: count(jumps().count()), from: first[0].shown, to: first[1].shown })
    }

    /// Stretches without a visit, the last of them up to the day of issue.
    pub(super) fn gap(&self) -> Option<Question> {
        let gaps = || self.stretches().filter(|(from, to)| self.gapes(from, to));
        let (from, to) = first_most(gaps(), |(from, to)| self.length(from, to))?;
        Some(Question::Gap { count: count(gaps().count()), from: from.shown, to: to.shown })
    }

    /// The time before the first visit, where none was left out.
    pub(super) fn before(&self) -> Option<Question> {
        let first = self.late_first()?;
        Some(Question::Before { to: first.shown })
    }

    /// The same history as a line with gaps, for a plot.
    pub(super) fn timeline(&self) -> Timeline {
        let mut line = Timeline::default();
        if let (Some(new), Some(first)) = (self.claims.vehicle.first_use, self.visits.first())
            && new < first.shown.day
            && self.claims.left_out == 0
        {
            line.go(Place { day: new, way: 0 }, Place::from(first), self.late_first().is_some());
        }
        for (from, to) in self.stretches() {
            line.go(Place::from(&from), Place::from(&to), self.gapes(&from, &to));
        }
        line
    }

    /// From visit to visit, and from the last one to the day of issue.
    fn stretches(&self) -> impl Iterator<Item = (Point, Point)> {
        let issue = OdometerReading { day: self.claims.issued, reading: self.claims.latest.reading };
        let issue = Point { shown: issue, travelled: self.latest.travelled };
        let ends = self.visits.iter().copied().skip(1).chain([issue]);
        self.visits.iter().copied().zip(ends)
    }

    /// The first visit where a long time went before it and none was left out.
    fn late_first(&self) -> Option<&Point> {
        let first = self.visits.first().filter(|_| self.claims.left_out == 0)?;
        let days = self.claims.vehicle.first_use.map_or(0, |new| first.shown.day.days_since(new));
        let long = i64::from(days) > GAP_DAYS || first.travelled > GAP.of(self.unit());
        long.then_some(first)
    }

    fn unit(&self) -> DistanceUnit {
        self.claims.unit
    }

    fn jumps(&self, from: &Point, to: &Point) -> bool {
        let days = days(from, to).max(1);
        let bound = if days < STEADY_DAYS { FAST } else { STEADY };
        way(from, to) > bound.of(self.unit()) * days
    }

    /// A way that no car goes is asked about as such, and is no sign of a visit that is missing.
    fn gapes(&self, from: &Point, to: &Point) -> bool {
        days(from, to) > GAP_DAYS || (way(from, to) > GAP.of(self.unit()) && !self.jumps(from, to))
    }

    /// The longer of time and way, each as a multiple of its bound, times both bounds.
    fn length(&self, from: &Point, to: &Point) -> i64 {
        (days(from, to) * GAP.of(self.unit())).max(way(from, to) * GAP_DAYS)
    }
}

/// How far the car had gone: what the old instruments showed is added and what the new ones began with is taken off.
///
/// On the day of a replacement the reading belongs to the instrument whose value at the change is the nearer one; when
/// both are equally near, to the new one.
fn travelled(shown: OdometerReading, changes: &[InstrumentChange]) -> i64 {
    let reading = i64::from(shown.reading);
    let gap = |value: i32| (reading - i64::from(value)).abs();
    let after = changes.iter().filter(|change| {
        change.day < shown.day || (change.day == shown.day && gap(change.new) <= gap(change.old))
    });
    reading + after.map(|change| i64::from(change.old) - i64::from(change.new)).sum::<i64>()
}

fn order(point: &Point) -> (units::Day, i64) {
    (point.shown.day, point.travelled)
}

fn days(from: &Point, to: &Point) -> i64 {
    i64::from(to.shown.day.days_since(from.shown.day))
}

fn way(from: &Point, to: &Point) -> i64 {
    (to.travelled - from.travelled).min(LONGEST)
}

/// Of all, the one of which there is most, and of several of those the first.
fn first_most<T>(all: impl Iterator<Item = T>, most: impl Fn(&T) -> i64) -> Option<T> {
    all.reduce(|best, next| if most(&next) > most(&best) { next } else { best })
}
