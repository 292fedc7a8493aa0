//! Where a series of values has shifted to another level: watched value by value, as if each had just come in.
//!
//! What a value should be is told by those before it: their level and, where it is asked for, their season. How far
//! off a value is is measured by their spread and added up ([`Cusum`]). When the sum is too great there is a shift;
//! from where it began the series has a new level, and is watched again once that is known.
//!
//! The newest values are left out of what a value is held against, so that a shift does not hide itself, and a wild
//! value counts no more than [`WILDEST`] standard deviations, so that one alone tells nothing.

use std::f64::consts::TAU;

use units::Day;

use super::cusum::Cusum;
use super::least_squares::Fit;
use super::robust::spread;

/// Values so much older than the newest ones say nothing about what is usual.
const WINDOW_DAYS: i32 = 3 * 365 + 1;

/// So many of the newest values are left out of what they are held against.
const LAG: usize = 6;

/// What is usual is worked out anew after so many values, which is a quarter of a year of weekly ones: to spare time.
const REFIT: usize = 13;

/// A shift's new level is known after so many values.
const RESUME: usize = 8;

/// The allowance of the sums in standard deviations where the spread is great, ...
const ALLOWANCE: f64 = 0.75;

/// ... and their limit. Both were set by the simulation in `fuel/watch_tests.rs`.
const LIMIT: f64 = 3.0;

/// One value counts no more than so many standard deviations, or half of that beyond the allowance if that is more.
const WILDEST: f64 = 3.0;

/// In working out what is usual, one value counts no more than so many.
const WILDEST_OF_USUAL: f64 = 2.5;

/// How far the swing of one year is off another's, as a standard deviation and a share of it. Assumption.
const UNLIKE: f64 = 0.25;

/// From so many values on the season may have two peaks.
const TWO_PEAKS: usize = 40;

/// A value of a series, which comes in order of day.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Observation {
    pub day: Day,
    pub value: f64,
    /// How much it counts: its variance is that of a value with weight 1, divided by this.
    pub weight: f64,
}

/// What kind of series it is.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Tuning {
    /// Whether the values follow the seasons.
    pub seasons: bool,
    /// Nothing is said before so many days of values, ...
    pub learn_days: i32,
    /// ... and so many of them.
    pub learn: usize,
    /// A shift as small as this is of no interest: the least allowance, in the unit of the values.
    pub allowance: f64,
    /// The spread is never taken to be less.
    pub least_spread: f64,
}

/// A shift to another level.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Shift {
    /// The first value after it.
    pub since: usize,
    /// The value at which it was plain.
    pub raised: usize,
    /// How far the level has moved, by all values up to the next shift.
    pub size: f64,
    /// Its standard error.
    pub error: f64,
}

/// What watching came to.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Shifts {
    /// The shifts, in order.
    pub shifts: Vec<Shift>,
    /// Whether there were values enough to watch at all.
    pub learnt: bool,
}

/// Watches a series.
pub(crate) fn shifts(values: &[Observation], tuning: Tuning) -> Shifts {
    let Some(first) = first_watched(values, tuning) else {
        return Shifts { shifts: Vec::new(), learnt: false };
    };
    let seasons = values.iter().map(|value| season_of_two_peaks(value.day)).collect();
    let mut watch = Watch { values, seasons, tuning, shifts: Vec::new(), usual: None };
    let mut sums = Cusum::default();
    for at in first..values.len() {
        if !watch.prepare(at) {
            continue;
        }
        let Some((score, allowance)) = watch.score(at) else { continue };
        if let Some(since) = sums.take(at, score, allowance, LIMIT) {
            watch.shifts.push(Shift { since, raised: at, size: 0.0, error: 0.0 });
            watch.usual = None;
            sums = Cusum::default();
        }
    }
    Shifts { shifts: watch.measured(), learnt: true }
}

/// The number of the first value that is watched; `None` while too little is known.
fn first_watched(values: &[Observation], tuning: Tuning) -> Option<usize> {
    let (first, last) = (values.first()?.day, values.last()?.day);
    let early = values.partition_point(|value| value.day.days_since(first) < tuning.learn_days);
    let watched = early.max(tuning.learn);
    (last.days_since(first) >= tuning.learn_days && watched <= values.len()).then_some(watched)
}

struct Watch<'a> {
    values: &'a [Observation],
    seasons: Vec<[f64; 4]>,
    tuning: Tuning,
    shifts: Vec<Shift>,
    usual: Option<Usual>,
}

/// What values are held against.
#[derive(Debug, Clone)]
struct Usual {
    fit: Fit,
    spread: f64,
    /// How many columns of the season the fit has.
    seasonal: usize,
    /// The number of the value at which it was worked out.
    at: usize,
}

impl Watch<'_> {
    /// Sees to it that what is usual is known and not too old; false while the level after a shift is not known.
    fn prepare(&mut self, at: usize) -> bool {
        let known_from = self.shifts.last().map_or(0, |shift| shift.since + RESUME);
        if at < known_from {
            return false;
        }
        if self.usual.as_ref().is_none_or(|usual| at >= usual.at + REFIT) {
            let lagged = at.saturating_sub(LAG);
            let to = if lagged >= known_from.max(self.tuning.learn) { lagged } else { at };
            self.usual = self.usual_before(to, &self.shifts).map(|usual| Usual { at, ..usual });
        }
        self.usual.is_some()
    }

    /// What is usual by the values before `to`: the newest level, the season, and the steps at the shifts.
    fn usual_before(&self, to: usize, shifts: &[Shift]) -> Option<Usual> {
        let newest = self.values[..to].last()?.day;
        let from = self.values.partition_point(|value| newest.days_since(value.day) > WINDOW_DAYS);
        let range = &self.values[from..to];
        let seasonal = match (self.tuning.seasons, range.len()) {
            (false, _) => 0,
            (true, ..TWO_PEAKS) => 2,
            (true, _) => 4,
        };
        let mut columns = vec![vec![1.0; range.len()]];
        let season = |column: usize| self.seasons[from..to].iter().map(|season| season[column]).collect();
        columns.extend((0..seasonal).map(season));
        let steps = shifts.iter().filter(|shift| from < shift.since && shift.since < to);
        columns
            .extend(steps.map(|shift| (from..to).map(|at| f64::from(u8::from(at < shift.since))).collect()));
        let value: Vec<f64> = range.iter().map(|value| value.value).collect();
        let weights: Vec<f64> = range.iter().map(|value| value.weight).collect();
        let fit = Fit::new(&columns, &value, &weights)?;
        let (fit, spread) = tamed(fit, &value, &weights, columns.len());
        Some(Usual { fit, spread: spread.max(self.tuning.least_spread), seasonal, at: to })
    }

    /// How far off a value is in standard deviations, and how far it may be at no cost.
    fn score(&self, at: usize) -> Option<(f64, f64)> {
        let usual = self.usual.as_ref()?;
        let (off, doubt) = self.off(usual, at);
        let unlike = UNLIKE * usual.season(&self.seasons[at]);
        let own = 1.0 / self.values[at].weight + doubt;
        let deviation = (usual.spread * usual.spread * own + unlike * unlike).sqrt();
        let allowance = (self.tuning.allowance / deviation).max(ALLOWANCE);
        // Where hardly anything scatters the allowance is many deviations, and a value must be able to exceed it.
        let most = WILDEST.max(allowance + WILDEST / 2.0);
        Some(((off / deviation).clamp(-most, most), allowance))
    }

    /// How far a value is off the usual, and how unsure that is, as a multiple of the variance of a value.
    fn off(&self, usual: &Usual, at: usize) -> (f64, f64) {
        let row = usual.row(&self.seasons[at]);
        (self.values[at].value - usual.fit.at(&row), usual.fit.doubt(&row))
    }

    /// The shifts with their sizes: the mean of all values up to the next one, against what was usual before.
    fn measured(self) -> Vec<Shift> {
        let size = |number: usize| {
            let shift = self.shifts[number];
            let to = self.shifts.get(number + 1).map_or(self.values.len(), |next| next.since);
            let usual = self.usual_before(shift.since, &self.shifts[..number])?;
            let after = shift.since..to;
            let weight: f64 = self.values[after.clone()].iter().map(|value| value.weight).sum();
            let off: f64 = after.map(|at| self.values[at].weight * self.off(&usual, at).0).sum();
            let (_, doubt) = self.off(&usual, shift.since);
            let error = usual.spread * (1.0 / weight + doubt).sqrt();
            Some(Shift { size: off / weight, error, ..shift })
        };
        (0..self.shifts.len()).filter_map(size).collect()
    }
}

impl Usual {
    /// The row of a value in this season, at the newest level.
    fn row(&self, season: &[f64; 4]) -> [f64; 5] {
        let mut row = [0.0; 5];
        row[0] = 1.0;
        row[1..=self.seasonal].copy_from_slice(&season[..self.seasonal]);
        row
    }

    /// What the season adds.
    fn season(&self, season: &[f64; 4]) -> f64 {
        self.fit.coefficients()[1..=self.seasonal].iter().zip(season).map(|(part, wave)| part * wave).sum()
    }
}

/// The fit with wild values drawn in, twice over, and the spread of one value of weight 1 about it.
#[allow(clippy::cast_precision_loss)]
fn tamed(fit: Fit, values: &[f64], weights: &[f64], columns: usize) -> (Fit, f64) {
    let free = (values.len() as f64 / (values.len().saturating_sub(columns).max(1)) as f64).sqrt();
    let spread_of = |residuals: &[f64]| {
        free * spread(residuals.iter().zip(weights).map(|(residual, weight)| residual * weight.sqrt()))
    };
    let mut residuals = fit.residuals().to_vec();
    let mut fit = fit;
    for _ in 0..2 {
        let wildest = WILDEST_OF_USUAL * spread_of(&residuals);
        let drawn_in = |((value, residual), weight): ((&f64, &f64), &f64)| {
            let most = wildest / weight.sqrt();
            value - residual + residual.clamp(-most, most)
        };
        let drawn: Vec<f64> = values.iter().zip(&residuals).zip(weights).map(drawn_in).collect();
        let cut: Vec<f64> = values.iter().zip(&drawn).map(|(value, drawn)| value - drawn).collect();
        fit = fit.of(&drawn);
        residuals = fit.residuals().iter().zip(cut).map(|(residual, cut)| residual + cut).collect();
    }
    let spread = spread_of(&residuals);
    (fit, spread)
}

/// Cosine and sine of the time of the year.
pub(crate) fn season(day: Day) -> [f64; 2] {
    let (sine, cosine) = (TAU * f64::from(day.epoch()) / 365.2425).sin_cos();
    [cosine, sine]
}

/// Cosine and sine of the time of the year, once and twice around.
fn season_of_two_peaks(day: Day) -> [f64; 4] {
    let [cosine, sine] = season(day);
    [cosine, sine, cosine * cosine - sine * sine, 2.0 * sine * cosine]
}
