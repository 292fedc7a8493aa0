//! Whether consumption has changed since a day: since a visit, or since a code was cleared.
//!
//! The observations are the spans, each as the natural logarithm of its consumption, because work changes it by a
//! share. A span counts by its distance: the error of a tank that was not filled to the very same mark is the same
//! for a short span and a long one, and over a longer one the trips even out. The spans before and after have each
//! a spread of their own, as in Welch's comparison; with equal distances and without a season it is just that.
//!
//! Where the spans cover a year the season is fitted with them: the first harmonic of the year. No winter is like
//! another, and what that may come to ([`UNLIKE`]) widens the interval. Where they do not cover a year, what the
//! season could have done in the meantime is known only by the published figures, and widens it by all of that.
//!
//! A tank filled too full is followed by one that seems to take too little. Neighbours that are off in opposite ways
//! even out in the mean, so that the interval is rather too wide than too narrow.

use units::Day;

use super::power::Sides;
use super::{PerMille, Share, Span, Swing};
use crate::statistics::{Contrast, Fit, season};

/// What is asked.
#[derive(Debug, Clone, Copy)]
pub struct Question<'a> {
    /// The spans of one kind, in order.
    pub spans: &'a [Span],
    /// The day of the work.
    pub day: Day,
    /// Spans that begin before this day do not count: other work was done on it.
    pub not_before: Option<Day>,
    /// Spans that end after this day do not count: other work was done on it.
    pub not_after: Option<Day>,
    /// How far the seasons can move the consumption of this car.
    pub swing: Swing,
}

/// What can be said.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Answer {
    /// In a word.
    pub verdict: Verdict,
    /// By how much consumption changed; `None` with fewer than two spans on either side.
    pub change: Option<Share>,
    /// How many spans before the day counted.
    pub before: u32,
    /// How many spans after the day counted.
    pub after: u32,
    /// What was done about the season.
    pub season: Season,
}

/// The answer in a word.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Verdict {
    /// The car uses less, by between so much.
    Better {
        /// At least by this.
        low: PerMille,
        /// At most by this.
        high: PerMille,
    },
    /// The car uses more, by between so much.
    Worse {
        /// At least by this.
        low: PerMille,
        /// At most by this.
        high: PerMille,
    },
    /// If there is a difference, it is no larger than this.
    NoLargerThan(PerMille),
    /// It takes about so many more tanks to find a difference of 3 %. `None` where no number of tanks will do,
    /// because there are too few before the day.
    CannotTellYet {
        /// How many more, from 1.
        more: Option<u32>,
    },
}

/// What was done about the season.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Season {
    /// It was fitted with the spans.
    Fitted,
    /// The spans do not cover a year: the season may have done so much, which is in the interval.
    MayBe(PerMille),
}

/// Spans farther from the day than this say more of what else has changed.
const WINDOW_DAYS: i32 = 730;

/// The season is fitted when the spans cover so many days ...
const YEAR_DAYS: i32 = 365;

/// ... and are so many.
const YEAR_SPANS: usize = 12;

/// The difference that is worth finding: 3 %, as a natural logarithm.
const WORTH: f64 = 0.029_558_802_241_544_4;

/// The largest interval about nothing that is called no difference, in tenths of a percent.
const NOTHING: PerMille = PerMille(30);

/// How far the swing of one year is off another's, as a standard deviation and a share of it. Assumption.
const UNLIKE: f64 = 0.2;

/// Compares the spans before and after a day. The span within which the day lies counts for neither side.
pub fn helped(question: &Question) -> Answer {
    let (spans, after) = counted(question);
    let second: Vec<bool> = spans.iter().map(|span| span.from >= question.day).collect();
    let covered = spans.first().zip(spans.last()).map_or(0, |(first, last)| last.to.days_since(first.from));
    let a_year = covered >= YEAR_DAYS && spans.len() >= YEAR_SPANS;
    let fitted = a_year.then(|| compare(&spans, &second, 2)).flatten();
    let (season, may_be) = if fitted.is_some() {
        (Season::Fitted, 0.0)
    } else {
        let may_be = unknown_season(&spans, &second, question.swing);
        (Season::MayBe(PerMille::near(may_be)), may_be)
    };
    let comparison = fitted.or_else(|| compare(&spans, &second, 0));
    let change = comparison.as_ref().and_then(|comparison| comparison.share(may_be));
    let sides = (spans.len() - after, after);
    let wait = || waiting(comparison.as_ref(), &spans, sides, covered, season);
    Answer {
        verdict: change.map_or_else(|| Verdict::CannotTellYet { more: wait() }, |share| verdict(share, wait)),
        change,
        before: count(sides.0),
        after: count(sides.1),
        season,
    }
}

fn count(spans: usize) -> u32 {
    u32::try_from(spans).unwrap_or(u32::MAX)
}

/// The spans that count, and how many of them lie after the day.
fn counted(question: &Question) -> (Vec<Span>, usize) {
    let Question { spans, day, not_before, not_after, .. } = *question;
    let near = |span: &&Span| {
        (span.to <= day && day.days_since(span.from) <= WINDOW_DAYS)
            || (span.from >= day && span.to.days_since(day) <= WINDOW_DAYS)
    };
    let counts = |span: &&Span| {
        not_before.is_none_or(|limit| span.from >= limit) && not_after.is_none_or(|limit| span.to <= limit)
    };
    let spans: Vec<Span> = spans.iter().filter(near).filter(counts).copied().collect();
    let after = spans.iter().filter(|span| span.from >= day).count();
    (spans, after)
}

/// The difference after against before, and what the season brings into it.
struct Comparison {
    contrast: Contrast,
    /// The variance that comes of one winter being unlike another.
    unlike: f64,
}

impl Comparison {
    fn share(&self, wider: f64) -> Option<Share> {
        let margin = self.contrast.margin(self.unlike)?;
        Some(Share::of_log(self.contrast.estimate, margin + wider))
    }
}

/// `None` when a side has no spread of its own, or the season cannot be told from the change.
fn compare(spans: &[Span], second: &[bool], seasonal: usize) -> Option<Comparison> {
    let indicator =
        |side: bool| second.iter().map(|&is| f64::from(u8::from(is == side))).collect::<Vec<f64>>();
    let seasons: Vec<[f64; 2]> = spans.iter().map(|span| season(middle(span))).collect();
    let mut columns = vec![indicator(false), indicator(true)];
    columns.extend((0..seasonal).map(|column| seasons.iter().map(|season| season[column]).collect()));
    let values: Vec<f64> = spans.iter().map(|span| span.used.per_100_km().ln()).collect();
    let fit = Fit::new(&columns, &values, &weights(spans))?;
    let mut row = vec![0.0; columns.len()];
    (row[0], row[1]) = (-1.0, 1.0);
    let contrast = fit.contrast(&row, second)?;
    let shares = fit.shares(&row);
    let brought = |at: usize| -> f64 {
        let parts = columns[2..].iter().zip(&fit.coefficients()[2..]);
        parts.map(|(column, coefficient)| column[at] * coefficient).sum()
    };
    // What the season brings in on one side it takes away on the other; each side's part is off by its own year.
    let after = (0..spans.len()).filter(|&at| second[at]).map(|at| shares[at] * brought(at)).sum::<f64>();
    Some(Comparison { contrast, unlike: 2.0 * (UNLIKE * after).powi(2) })
}

/// By distance, 1 in the mean.
#[allow(clippy::cast_precision_loss)]
pub(super) fn weights(spans: &[Span]) -> Vec<f64> {
    let distances: Vec<f64> = spans.iter().map(|span| span.used.distance().millimetres() as f64).collect();
    let mean = distances.iter().sum::<f64>() / distances.len() as f64;
    distances.into_iter().map(|distance| distance / mean).collect()
}

pub(super) fn middle(span: &Span) -> Day {
    span.from.plus_days(span.to.days_since(span.from) / 2)
}

/// The most that the season can have moved consumption from one side to the other, as a natural logarithm: what a
/// swing of the published size does at its steepest between the mean days of the two sides.
fn unknown_season(spans: &[Span], second: &[bool], swing: Swing) -> f64 {
    let mean = |side: bool| {
        let days =
            spans.iter().zip(second).filter(|(_, is)| **is == side).map(|(span, _)| middle(span).epoch());
        let (sum, count) = days.fold((0.0, 0.0), |(sum, count), day| (sum + f64::from(day), count + 1.0));
        (count > 0.0).then_some(sum / count)
    };
    let Some((before, after)) = mean(false).zip(mean(true)) else { return 2.0 * swing.amplitude() };
    let turn = (after - before).min(182.6) / 365.2425 * std::f64::consts::PI;
    2.0 * swing.amplitude() * turn.sin()
}

fn verdict(change: Share, wait: impl FnOnce() -> Option<u32>) -> Verdict {
    let Share { low, high } = change;
    if high < PerMille(0) {
        Verdict::Better { low: high.size(), high: low.size() }
    } else if low > PerMille(0) {
        Verdict::Worse { low, high }
    } else if low.size().max(high) <= NOTHING {
        Verdict::NoLargerThan(low.size().max(high))
    } else {
        Verdict::CannotTellYet { more: wait() }
    }
}

/// How many more tanks it takes; where the season is not known, at least as many as fill up the year.
fn waiting(
    comparison: Option<&Comparison>,
    spans: &[Span],
    (before, after): (usize, usize),
    covered: i32,
    season: Season,
) -> Option<u32> {
    if before < 2 {
        return None;
    }
    let sides = match comparison {
        Some(comparison) => Sides::of(&comparison.contrast, count(after), comparison.unlike),
        None => Sides::before_only(count(before), spread_before(&spans[..before]), count(after), 0.0),
    };
    let more = sides.more(WORTH)?;
    let to_a_year = if season == Season::Fitted {
        0
    } else {
        let each = (covered / i32::try_from(spans.len()).unwrap_or(i32::MAX)).max(1);
        u32::try_from((YEAR_DAYS - covered).max(0) / each).unwrap_or(0) + 1
    };
    Some(more.max(to_a_year))
}

/// The variance of one span before the day.
fn spread_before(spans: &[Span]) -> Option<f64> {
    let values: Vec<f64> = spans.iter().map(|span| span.used.per_100_km().ln()).collect();
    let ones = vec![1.0; spans.len()];
    let fit = Fit::new(std::slice::from_ref(&ones), &values, &weights(spans))?;
    fit.contrast(&[1.0], &vec![false; spans.len()])
        .map(|contrast| contrast.variances[0] / contrast.factors[0])
}

#[cfg(test)]
#[path = "helped_tests.rs"]
mod tests;
