//! The Theil-Sen estimator: the slope of a line as the median of the slopes between every two points.
//!
//! Theil, A rank-invariant method of linear and polynomial regression analysis (1950), and Sen, Estimates of
//! the regression coefficient based on Kendall's tau, Journal of the American Statistical Association 63
//! (1968); both from memory. With equal weights 29 points in 100 may be anything at all without carrying the
//! slope away: at a share of 1 - 1/√2 half of all pairs hold such a point.

use std::ops::RangeInclusive;

/// The slopes between every two points of different abscissa, each with how much it counts.
#[derive(Debug, Clone)]
pub(super) struct Slopes(Vec<Pair>);

#[derive(Debug, Clone, Copy)]
struct Pair {
    slope: f64,
    /// How far apart the two points are along the abscissa.
    run: f64,
    weight: f64,
}

impl Slopes {
    /// The slopes between these points, which come in order of abscissa.
    ///
    /// `weight` says how much the pair of these two points counts, the earlier one first; above 0.
    pub fn between(points: &[(f64, f64)], weight: impl Fn(f64, f64) -> f64) -> Slopes {
        let mut pairs = Vec::with_capacity(points.len() * points.len().saturating_sub(1) / 2);
        for (index, &(x, y)) in points.iter().enumerate() {
            let earlier = points[..index].iter().filter(|from| from.0 < x);
            pairs.extend(earlier.map(|&(from_x, from_y)| Pair {
                slope: (y - from_y) / (x - from_x),
                run: x - from_x,
                weight: weight(from_x, x),
            }));
        }
        Slopes(pairs)
    }

    /// The slope of the line: the weighted median. `None` without two points of different abscissa.
    pub fn median(&self) -> Option<f64> {
        weighted_median(self.0.iter().map(|pair| (pair.slope, pair.weight)).collect())
    }

    /// The weighted median of how far the slopes of the pairs that lie so far apart are off this one.
    pub fn spread_about(&self, slope: f64, runs: &RangeInclusive<f64>) -> Option<f64> {
        let pairs = self.0.iter().filter(|pair| runs.contains(&pair.run));
        weighted_median(pairs.map(|pair| ((pair.slope - slope).abs(), pair.weight)).collect())
    }
}

/// The value with half of the weight on either side; half way between two values when the weight splits
/// evenly between them, so that equal weights give the ordinary median.
///
/// Found by halving, without sorting what lies to one side: this is most of what a pace costs.
fn weighted_median(mut values: Vec<(f64, f64)>) -> Option<f64> {
    let half = weight(&values) / 2.0;
    let mut below = 0.0;
    let mut rest = values.as_mut_slice();
    while !rest.is_empty() {
        let (lower, &mut (value, own), upper) = rest.select_nth_unstable_by(rest.len() / 2, by_value);
        let under = below + weight(lower);
        let through = under + own;
        if under > half {
            rest = lower;
        } else if through < half && !upper.is_empty() {
            (below, rest) = (through, upper);
        } else {
            let before = lower.iter().copied().max_by(by_value).filter(|_| under >= half);
            let after = upper.iter().copied().min_by(by_value).filter(|_| through <= half);
            return Some(before.or(after).map_or(value, |(next, _)| f64::midpoint(value, next)));
        }
    }
    None
}

fn weight(values: &[(f64, f64)]) -> f64 {
    values.iter().map(|&(_, weight)| weight).sum()
}

fn by_value(a: &(f64, f64), b: &(f64, f64)) -> std::cmp::Ordering {
    a.0.total_cmp(&b.0)
}

#[cfg(test)]
#[path = "theil_sen_tests.rs"]
mod tests;
