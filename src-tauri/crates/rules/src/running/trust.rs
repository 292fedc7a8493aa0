//! Which readings to believe: one in twenty is mistyped, and it may be the last one.

use super::Point;
use super::steps::{Step, line};
use super::theil_sen::Slopes;

/// Mistyped readings are sought among those of so many days, ...
const DAYS: i32 = 400;

/// ... and among so many of the last ones in any case.
const READINGS: usize = 12;

/// So many readings in a row may be doubted before those after them must stand for themselves.
const LOOK_BACK: usize = 8;

/// The most that a step costs, however far off it is, in doubted readings.
///
/// More than one and less than two: a reading that lies far off is doubted when it is the last one, and
/// believed once another bears it out.
const DEAREST_STEP: f64 = 1.5;

/// A step that is so many standard deviations off costs as much as doubting a reading.
const FAR_OFF: f64 = 4.0;

/// Standard deviation of any step for the trips that may fall into it, in millimetres.
const TRIPS: f64 = 600e6;

/// Standard deviation of the rate from one time of the year to another, as a share of it.
const SEASONS: f64 = 0.5;

/// The recent readings, sorted by whether they are to be believed; each list in order of day.
#[derive(Debug, Clone, Default)]
pub(super) struct Trust {
    pub believed: Vec<Point>,
    pub doubted: Vec<Point>,
}

/// Which of the recent readings are to be believed.
///
/// An odometer never runs back, so that what it showed is a chain of steps forward. Of all such chains this
/// is the cheapest one, where each reading left out has a price, and so has each step by how far it is off what
/// this car usually goes. A reading that is lower than those before it, or higher than those after it, is
/// thereby left out; a last one that lies far too high is doubted until another bears it out. One that is
/// wrong and yet fits between its neighbours stays, and does little harm. Of two chains of the same price
/// the one with the newer readings counts.
///
/// What far off means is an assumption of this program, held against the simulated drivers of its tests.
pub(super) fn trust(points: &[Point]) -> Trust {
    let points = recent(points);
    let usual = Usual::of(points);
    let mut chains: Vec<Chain> = Vec::with_capacity(points.len());
    for (index, point) in points.iter().enumerate() {
        let links = (index.saturating_sub(LOOK_BACK)..index)
            .filter(|&before| points[before].travelled <= point.travelled)
            .map(|before| Chain {
                before: Some(before),
                cost: chains[before].cost
                    + doubts(index - before - 1)
                    + usual.cost(Step::between(&points[before], point)),
            });
        let alone = Chain { before: None, cost: doubts(index) };
        chains.push(links.fold(alone, |best, link| if link.cost <= best.cost { link } else { best }));
    }
    let mut chain = follow(&chains).peekable();
    let mut trust = Trust::default();
    for (index, point) in points.iter().enumerate() {
        let believed = chain.next_if_eq(&index).is_some();
        if believed { trust.believed.push(*point) } else { trust.doubted.push(*point) }
    }
    trust
}

fn recent(points: &[Point]) -> &[Point] {
    let Some(last) = points.last() else { return points };
    let old = points.partition_point(|point| last.day.days_since(point.day) > DAYS);
    &points[old.min(points.len().saturating_sub(READINGS))..]
}

/// The cheapest chain that ends in a reading.
#[derive(Debug, Clone, Copy)]
struct Chain {
    before: Option<usize>,
    cost: f64,
}

/// The readings of the cheapest chain, in order.
fn follow(chains: &[Chain]) -> impl Iterator<Item = usize> {
    let whole = |index: usize| chains[index].cost + doubts(chains.len() - 1 - index);
    let last = (0..chains.len()).reduce(|best, index| if whole(index) <= whole(best) { index } else { best });
    let mut chain: Vec<_> = std::iter::successors(last, |&index| chains[index].before).collect();
    chain.reverse();
    chain.into_iter()
}

/// The price of leaving out so many readings.
fn doubts(readings: usize) -> f64 {
    u32::try_from(readings).map_or(f64::INFINITY, f64::from)
}

/// How a car usually goes, by all of its readings, the mistyped ones among them.
#[derive(Debug, Clone, Copy)]
struct Usual {
    /// Millimetres a day.
    rate: f64,
    /// Standard deviation of one day in millimetres, as for a normal distribution 1.4826 times the median of
    /// what the steps are off.
    noise: f64,
}

impl Usual {
    fn of(points: &[Point]) -> Usual {
        let rate = Slopes::between(&line(points), |_, _| 1.0).median().unwrap_or(0.0).max(0.0);
        let mut off: Vec<f64> = Step::all(points).map(|step| step.off(rate)).collect();
        off.sort_unstable_by(f64::total_cmp);
        Usual { rate, noise: off.get(off.len() / 2).map_or(0.0, |median| 1.4826 * median) }
    }

    /// The price of a step, in doubted readings.
    fn cost(&self, step: Step) -> f64 {
        let expected = self.rate * step.days;
        let deviations =
            (step.gone - expected) / hypot(&[self.noise * step.days.sqrt(), SEASONS * expected, TRIPS]);
        (deviations / FAR_OFF).powi(2).min(DEAREST_STEP)
    }
}

/// The standard deviation of a sum of independent parts from theirs.
pub(super) fn hypot(parts: &[f64]) -> f64 {
    parts.iter().map(|part| part * part).sum::<f64>().sqrt()
}

#[cfg(test)]
#[path = "trust_tests.rs"]
mod tests;
