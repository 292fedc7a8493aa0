//! How a car is used: how far it goes in a day, and how far off that the days to come may be.
//!
//! What it will likely have gone after some days is the rate times the days. How far off that it may be has a
//! variance of two parts. **Noise**: one day is unlike another, which evens out, and grows with the
//! square root of the days. **Drift**: the rate itself is not known exactly, and will change with the
//! seasons and with what the car is needed for, which grows with the days. Both are taken from the readings,
//! as far as these go, and from what is usual.
//!
//! The constants are assumptions of this program. They were set so that on the simulated drivers of
//! `drivers_tests.rs` four spans in five hold what happened.

use units::Distance;

use super::Point;
use super::steps::{Step, line, real, whole};
use super::theil_sen::Slopes;
use super::trust::hypot;

/// How far back from the last reading the rate is taken: a year and a little more, so that a reading from
/// this time last year is among them and the seasons even out.
const WINDOW_DAYS: i32 = 400;

/// Readings closer together than this say nothing about a habit.
const SHORTEST_DAYS: i32 = 30;

/// After so many days of readings the owner's own statement of the yearly distance counts no more.
const BLEND_DAYS: i32 = 365;

/// A reading that is so many days older than the last one weighs half as much.
const HALF_WEIGHT_DAYS: f64 = 180.0;

/// Noise of a car that nothing else is known of, as a share of a day's distance.
const USUAL_NOISE: f64 = 1.5;

/// What is usual weighs as much against what was observed as so many steps from a reading to the next.
const USUAL_STEPS: f64 = 2.0;

/// Drift of a car that goes evenly, as a share of its rate: nobody's life stays as it is.
const USUAL_DRIFT: f64 = 0.1;

/// How far apart two readings are whose slope shows the changes that matter: a month to a season, in days.
const SEASON: std::ops::RangeInclusive<f64> = 30.0..=120.0;

/// Standard deviation of such slopes as a multiple of the median of what they are off the rate. For a normal
/// distribution it would be 1.4826; some of what they are off is noise, which is counted by itself.
const SEASON_DRIFT: f64 = 1.25;

/// Drift of what the owner states, as a share of it: four owners in five are right within a half.
const STATED_DRIFT: f64 = 0.39;

/// No drift is larger than this share of the rate, or the car might as well never go on.
const LARGEST_DRIFT: f64 = 0.6;

/// One in ten lies so many standard deviations below the likely distance, ...
const BELOW: f64 = 1.1;

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
    /// Standard deviation of the rate, a day.
    drift: i64,
}

/// The same before it is rounded.
#[derive(Debug, Clone, Copy)]
struct Use {
    rate: f64,
    noise: f64,
    drift: f64,
}

impl Habit {
    /// By the readings that are believed and the yearly distance that the owner states; `None` without
    /// either.
    ///
    /// Until the readings span a year, both count by how much of a year they span.
    pub fn new(trusted: &[Point], yearly: Option<Distance>) -> Option<Habit> {
        let observed = observed(trusted);
        let days = observed.map_or(0, |(_, days)| days.min(BLEND_DAYS));
        let stated = yearly.filter(|_| days < BLEND_DAYS).map(stated);
        let share = f64::from(days) / f64::from(BLEND_DAYS);
        let used = match (observed, stated) {
            (Some((observed, _)), Some(stated)) => stated.blended(observed, share),
            (observed, stated) => observed.map(|(observed, _)| observed).or(stated)?,
        };
        Some(used.rounded())
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
        self.likely(days).saturating_sub(self.spread(BELOW, days)).max(0)
    }

    /// How far it goes at most: farther in one case of ten.
    pub fn high(&self, days: i64) -> i64 {
        self.likely(days).saturating_add(self.spread(ABOVE, days))
    }

    fn spread(&self, deviations: f64, days: i64) -> i64 {
        let days = real(days);
        whole(deviations * hypot(&[real(self.noise) * days.sqrt(), real(self.drift) * days]))
    }
}

impl Use {
    /// This share of what was observed, and the rest of this.
    fn blended(self, observed: Use, share: f64) -> Use {
        let blend = |stated: f64, observed: f64| stated + (observed - stated) * share;
        Use {
            rate: blend(self.rate, observed.rate),
            noise: blend(self.noise, observed.noise),
            drift: hypot(&[self.drift * (1.0 - share), observed.drift * share]),
        }
    }

    /// The rate is rounded up, so that a distance of exactly so many days does not take a day more.
    fn rounded(self) -> Habit {
        let drift = self.drift.min(LARGEST_DRIFT * self.rate);
        Habit { per_day: whole(self.rate), noise: whole(self.noise), drift: whole(drift) }
    }
}

fn stated(yearly: Distance) -> Use {
    let rate = real(yearly.millimetres().max(0).saturating_mul(10_000) / YEAR_E4);
    Use { rate, noise: USUAL_NOISE * rate, drift: STATED_DRIFT * rate }
}

/// What the readings of the last year or so say, and the days they span.
///
/// The rate is the Theil-Sen slope. A pair weighs as much as the days between its readings, since the noise of
/// a longer step weighs less, times the weight of either by its age.
fn observed(trusted: &[Point]) -> Option<(Use, i32)> {
    let recent = recent(trusted)?;
    let days = recent.last()?.day.days_since(recent.first()?.day);
    let span = f64::from(days);
    let by_age = |day: f64| HALF_WEIGHT_DAYS / (HALF_WEIGHT_DAYS + span - day);
    let slopes = Slopes::between(&line(recent), |from, to| by_age(from) * by_age(to) * (to - from));
    let rate = slopes.median()?;
    let noise = noise(recent, rate);
    let seasons = SEASON_DRIFT * slopes.spread_about(rate, &SEASON).unwrap_or(0.0);
    // The last part is how far off the rate is for the noise alone in so many days.
    let drift = hypot(&[USUAL_DRIFT * rate, seasons, noise / span.sqrt()]);
    Some((Use { rate, noise, drift }, days))
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
