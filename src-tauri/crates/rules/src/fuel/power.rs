//! How many more tanks it takes to tell a difference, if there is one.

use crate::statistics::{Contrast, quantile};

/// More tanks than this are not worth waiting for: five years of weekly fills.
pub(super) const MOST: u32 = 260;

/// The spread of one tank's consumption about the car's own, as a natural logarithm, where it is not known yet.
/// Assumption.
const USUAL_SPREAD: f64 = 0.04;

/// What is known of either side: how many tanks, and how far they scatter.
#[derive(Debug, Clone, Copy)]
pub(super) struct Sides {
    /// The tanks after.
    pub after: u32,
    /// The variance that the tanks before bring in, and its degrees of freedom.
    pub before: (f64, f64),
    /// The variance of one tank after.
    pub each: f64,
    /// How much less than its share a tank after counts for because the season takes up some of it; at least 1.
    pub dilution: f64,
    /// The variance that no tank takes away.
    pub fixed: f64,
}

impl Sides {
    /// Taken from a comparison of so many tanks before and after.
    pub fn of(contrast: &Contrast, after: u32, fixed: f64) -> Sides {
        let [before, own] = contrast.variances;
        let each = if contrast.factors[1] > 0.0 { own / contrast.factors[1] } else { USUAL_SPREAD.powi(2) };
        // A spread by very few tanks is hardly one; that of the tanks before is better.
        let each = if after < 5 && contrast.factors[0] > 0.0 { before / contrast.factors[0] } else { each };
        Sides {
            after,
            before: (before, contrast.freedoms[0]),
            each,
            dilution: (contrast.factors[1] * f64::from(after)).max(1.0),
            fixed,
        }
    }

    /// Taken from the tanks before alone, of which there are so many with this variance each.
    pub fn before_only(before: u32, each: Option<f64>, after: u32, fixed: f64) -> Sides {
        let each = each.unwrap_or(USUAL_SPREAD * USUAL_SPREAD);
        let count = f64::from(before.max(1));
        Sides { after, before: (each / count, (count - 1.0).max(1.0)), each, dilution: 1.0, fixed }
    }

    /// How many more tanks after the day it takes to find a difference of so much, as a natural logarithm, in 80
    /// cases of 100 with an interval that is right in 95 of 100.
    ///
    /// By the usual approximation: the difference must be as great as its standard error times the sum of the two
    /// quantiles of Student's t. `None` where even [`MOST`] are not enough, which is so when there are too few
    /// tanks before.
    pub fn more(&self, difference: f64) -> Option<u32> {
        let enough = |more: u32| self.resolves(self.after + more, difference);
        if !enough(MOST) {
            return None;
        }
        let (mut short, mut found) = (0, MOST);
        while found - short > 1 {
            let middle = u32::midpoint(short, found);
            if enough(middle) { found = middle } else { short = middle }
        }
        Some(found)
    }

    fn resolves(&self, after: u32, difference: f64) -> bool {
        let own = self.each * self.dilution / f64::from(after.max(1));
        let variance = self.before.0 + own + self.fixed;
        let doubt = self.before.0.powi(2) / self.before.1 + own.powi(2) / f64::from(after.max(2) - 1);
        let freedom = if doubt > 0.0 { variance.powi(2) / doubt } else { 1e6 };
        let quantiles = quantile(0.975, freedom).zip(quantile(0.8, freedom));
        quantiles.is_some_and(|(sure, found)| (sure + found) * variance.sqrt() <= difference)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// G*Power and the textbooks have 28 on either side for a difference of 0.76 deviations and 17 for one of 1 (from
    /// memory); with a known mean on one side, (1.96 + 0.84)² / 1² is 8 by the normal distribution.
    #[test]
    fn the_counts_are_those_of_the_textbooks() {
        let one_side = Sides { after: 0, before: (0.0, 1.0), each: 1.0, dilution: 1.0, fixed: 0.0 };
        // Student's t asks for two more than the normal distribution.
        assert_eq!(one_side.more(1.0), Some(10));
        let both = |count: u32| Sides::before_only(count, Some(1.0), 0, 0.0).more(1.0);
        assert_eq!(both(17), Some(17));
        assert_eq!(both(4), None, "too few before");
    }

    #[test]
    fn what_cannot_be_taken_away_cannot_be_waited_out() {
        let season = Sides { fixed: 1.0, ..Sides::before_only(50, Some(0.0016), 3, 0.0) };
        assert_eq!(season.more(0.03), None);
    }
}
