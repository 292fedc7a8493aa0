//! How a car is used: how far it goes in a day, and how far off that the days to come may be.
//!
//! What it will likely have gone after some days is the rate times the days. How far off that it may be has a
//! variance of two parts. **Noise**: one day is unlike another, which evens out, and grows with the
//! square root of the days. **Drift**: the rate itself is not known exactly, and will change with the
//! seasons and with what the car is needed for, which grows with the days. Both are taken from the readings,
//! as far as these go, and from what is usual.
//!
//! Some of the drift goes one way, and widens the span on that side alone: where the days that come now were
//! slower or faster than the rest of the year a year ago, and where the car went farther than its rate tells,
//! since a median leaves the rare long trip out.
//!
//! The constants are assumptions of this program. They were set so that of simulated drivers, of each habit for
//! itself, about four spans in five hold what happened. `drivers_tests.rs` holds them against others.

use units::{Day, Distance};

use super::Point;
use super::steps::{Step, line, real, whole};
use super::theil_sen::Slopes;
use super::trust::hypot;

/// How far back from the last reading the rate is taken: a year and a little more, so that a reading from
/// this time last year is among them and the seasons even out.
const WINDOW_DAYS: i32 = 400;

/// Readings closer together than this say nothing about a habit.
const SHORTEST_DAYS: i32 = 30;

/// A reading that is so many days older than the last one weighs half as much.
const HALF_WEIGHT_DAYS: f64 = 180.0;

/// Noise of a car that nothing else is known of, as a share of a day's distance.
const USUAL_NOISE: f64 = 1.5;

/// What is usual weighs as much against what was observed as a quarter of a step from a reading to the next.
const USUAL_STEPS: f64 = 0.25;

/// Drift of a car that goes evenly, as a share of its rate: nobody's life stays as it is.
const USUAL_DRIFT: f64 = 0.02;

/// Drift for the seasons of a car of which nothing is known of a whole year, as a share of its rate.
const UNKNOWN_SEASONS: f64 = 0.25;

/// How far apart two readings are whose slope shows the changes that matter: a month to a season, in days. The
/// median of what such slopes are off the rate counts as drift. For a normal distribution the standard deviation would
/// be 1.4826 times as much; but some of what they are off is noise, which is counted by itself.
const SEASON: std::ops::RangeInclusive<f64> = 30.0..=120.0;

/// After so many days the seasons come round. Once the readings span as much, what the owner states of the yearly
/// distance counts no more.
const YEAR_DAYS: i32 = 365;

/// How long a stretch of last year is held against the rest of it: a season, in days.
const STRETCH_DAYS: i32 = 90;

/// A first reading that lies so many days after the start of that stretch still counts as its start.
const STRETCH_LATE_DAYS: i32 = 20;

/// Drift towards what last year's stretch was off, as a multiple of it: the span must reach past it, since this year's
/// is not exactly like it.
const LAST_YEAR: f64 = 1.3;

/// Drift towards what the car went in all, as a multiple of what its rate is off that: the days to come hold such trips
/// by chance, more of them or fewer.
const OUT_OF_HABIT: f64 = 2.5;

/// Drift of what the owner states, as a share of it: four owners in five are right within a half.
const STATED_DRIFT: f64 = 0.39;

/// No drift to the slow side is larger than this share of the rate, or the car might as well never go on.
const LARGEST_DRIFT: f64 = 0.75;

/// One in ten lies so many standard deviations below the likely distance, ...
const BELOW: f64 = 1.05;

/// ... and one in ten so many above it: a long trip adds more than a day at home takes away. For a normal
/// distribution both would be 1.2816.
const ABOVE: f64 = 1.45;

/// Days in a year of the Gregorian calendar, times 10 000.
const YEAR_E4: i64 = 3_652_425;

/// How a car is used, in whole millimetres.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Habit {
    per_day: i64,
    /// Standard deviation of one day.
    noise: i64,
    /// Standard deviation of the rate, a day, for what goes slower.
    slower: i64,
    /// The same for what goes faster.
    faster: i64,
}

/// The same before it is rounded.
#[derive(Debug, Clone, Copy)]
struct Use {
    rate: f64,
    noise: f64,
    slower: f64,
    faster: f64,
}

impl Habit {
    /// By the readings that are believed and the yearly distance that the owner states; `None` without
    /// either.
    ///
    /// Until the readings span a year, both count by how much of a year they span, and the seasons are not known.
    pub fn new(trusted: &[Point], yearly: Option<Distance>) -> Option<Habit> {
        let observed = observed(trusted);
        let days = observed.map_or(0, |(_, days)| days.min(YEAR_DAYS));
        let stated = yearly.filter(|_| days < YEAR_DAYS).map(stated);
        let share = f64::from(days) / f64::from(YEAR_DAYS);
        let used = match (observed, stated) {
            (Some((observed, _)), Some(stated)) => stated.blended(observed, share),
            (observed, stated) => observed.map(|(observed, _)| observed).or(stated)?,
        };
        Some(used.with_drift(UNKNOWN_SEASONS * (1.0 - share) * used.rate).rounded())
    }

    /// How far the car likely goes in a day.
    pub fn per_day(&self) -> i64 {
        self.per_day
    }

    /// How far it likely goes in so many days.
    pub fn likely(&self, days: i64) -> i64 {
        self.per_day.saturating_mul(days)
    }

    /// How far it goes at least: less in one case of ten.
    pub fn low(&self, days: i64) -> i64 {
        self.likely(days).saturating_sub(self.spread(BELOW, self.slower, days)).max(0)
    }

    /// How far it goes at most: farther in one case of ten.
    pub fn high(&self, days: i64) -> i64 {
        self.likely(days).saturating_add(self.spread(ABOVE, self.faster, days))
    }

    fn spread(&self, deviations: f64, drift: i64, days: i64) -> i64 {
        let days = real(days);
        whole(deviations * hypot(&[real(self.noise) * days.sqrt(), real(drift) * days]))
    }
}

impl Use {
    /// This share of what was observed, and the rest of this.
    fn blended(self, observed: Use, share: f64) -> Use {
        let blend = |stated: f64, observed: f64| stated + (observed - stated) * share;
        let drift = |stated: f64, observed: f64| hypot(&[stated * (1.0 - share), observed * share]);
        Use {
            rate: blend(self.rate, observed.rate),
            noise: blend(self.noise, observed.noise),
            slower: drift(self.slower, observed.slower),
            faster: drift(self.faster, observed.faster),
        }
    }

    /// With this much more drift either way.
    fn with_drift(self, drift: f64) -> Use {
        Use { slower: hypot(&[self.slower, drift]), faster: hypot(&[self.faster, drift]), ..self }
    }

    /// With this much more drift to one side: the faster one, or, below 0, the slower one.
    fn drawn(self, drift: f64) -> Use {
        let (slower, faster) = ((-drift).max(0.0), drift.max(0.0));
        Use { slower: hypot(&[self.slower, slower]), faster: hypot(&[self.faster, faster]), ..self }
    }

    /// The rate is rounded up, so that a distance of exactly so many days does not take a day more.
    fn rounded(self) -> Habit {
        Habit {
            per_day: whole(self.rate),
            noise: whole(self.noise),
            slower: whole(self.slower.min(LARGEST_DRIFT * self.rate)),
            faster: whole(self.faster),
        }
    }
}

fn stated(yearly: Distance) -> Use {
    let rate = real(yearly.millimetres().max(0).saturating_mul(10_000) / YEAR_E4);
    let drift = STATED_DRIFT * rate;
    Use { rate, noise: USUAL_NOISE * rate, slower: drift, faster: drift }
}

/// What the readings of the last year or so say, and the days they span.
///
/// The rate is the Theil-Sen slope. A pair weighs as much as the days between its readings, since the noise of
/// a longer step weighs less, times the weight of either by its age.
fn observed(trusted: &[Point]) -> Option<(Use, i32)> {
    let recent = recent(trusted)?;
    let (first, last) = (recent.first()?, recent.last()?);
    let days = last.day.days_since(first.day);
    let span = f64::from(days);
    let by_age = |day: f64| HALF_WEIGHT_DAYS / (HALF_WEIGHT_DAYS + span - day);
    let slopes = Slopes::between(&line(recent), |from, to| by_age(from) * by_age(to) * (to - from));
    let rate = slopes.median()?;
    let noise = noise(recent, rate);
    let seasons = slopes.spread_about(rate, &SEASON).unwrap_or(0.0);
    // The last part is how far off the rate is for the noise alone in so many days.
    let drift = hypot(&[USUAL_DRIFT * rate, seasons, noise / span.sqrt()]);
    let out_of_habit = Step::between(first, last).gone / span - rate;
    let last_year = last_year(recent, noise).unwrap_or(0.0);
    let used = Use { rate, noise, slower: drift, faster: drift };
    Some((used.drawn(OUT_OF_HABIT * out_of_habit).drawn(LAST_YEAR * last_year), days))
}

/// How far the rate of the season to come was off that of the whole year a year ago, in millimetres a day; below 0
/// when it was slower. `None` where the readings do not go back that far.
///
/// What the noise alone would make of it is taken off: a stretch of one car that knows no seasons and of the year
/// around it differ too.
fn last_year(recent: &[Point], noise: f64) -> Option<f64> {
    let (first, last) = (recent.first()?, recent.last()?);
    let ago = |days: i32| last.day.plus_days(-days);
    let late = first.day.days_since(ago(YEAR_DAYS));
    let from_first = || (0..=STRETCH_LATE_DAYS).contains(&late).then_some(0.0);
    let from = gone_by(recent, ago(YEAR_DAYS)).or_else(from_first)?;
    let to = gone_by(recent, ago(YEAR_DAYS - STRETCH_DAYS))?;
    let (stretch, year) = (f64::from(STRETCH_DAYS), f64::from(YEAR_DAYS));
    let off = (to - from) - (Step::between(first, last).gone - from) * stretch / year;
    let by_noise = noise * noise * stretch * (1.0 - stretch / year);
    Some(off.signum() * (off * off - by_noise).max(0.0).sqrt() / stretch)
}

/// How far the car had gone by the end of this day since the first of these readings, in millimetres, taking it to go
/// evenly from one reading to the next. `None` outside of them.
fn gone_by(points: &[Point], day: Day) -> Option<f64> {
    let next = points.partition_point(|point| point.day <= day);
    let (before, after) = (points.get(next.checked_sub(1)?)?, points.get(next)?);
    let step = Step::between(before, after);
    let since = Step::between(&points[0], before).gone;
    Some(since + step.gone * f64::from(day.days_since(before.day)) / step.days)
}

/// The readings of the window; where these span too little, those back to the first that is old enough.
fn recent(trusted: &[Point]) -> Option<&[Point]> {
    let last = trusted.last()?;
    let span = |point: &Point| last.day.days_since(point.day);
    let from = trusted.iter().position(|point| span(point) <= WINDOW_DAYS);
    let from = from
        .filter(|&from| span(&trusted[from]) >= SHORTEST_DAYS)
        .or_else(|| trusted.iter().rposition(|point| span(point) >= SHORTEST_DAYS))?;
    Some(&trusted[from..])
}

/// Standard deviation of one day, by how far the steps from reading to reading are off the rate.
///
/// For a normal distribution it is √(π/2) times the mean of what they are off. One step less counts than there
/// are, since the rate is theirs: a single one is never off it.
fn noise(recent: &[Point], rate: f64) -> f64 {
    let (count, sum) =
        Step::all(recent).fold((0.0, 0.0), |(count, sum), step| (count + 1.0, sum + step.off(rate)));
    let (free, seen) = (count - 1.0, 1.2533 * sum / count);
    let usual = USUAL_NOISE * rate;
    ((free * seen * seen + USUAL_STEPS * usual * usual) / (free + USUAL_STEPS)).sqrt()
}
