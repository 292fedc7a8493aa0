//! The cumulative sum of Page (Continuous inspection schemes, Biometrika 41, 1954; from memory), on both sides.
//!
//! Each score that lies above what is allowed adds to a sum, each one below it takes away, and the sum never falls
//! below 0. A change is told when it passes its limit; it began when the sum last left 0.

/// Two sums of scores, one for each direction.
#[derive(Debug, Clone, Copy, Default)]
pub(super) struct Cusum {
    up: Sum,
    down: Sum,
}

#[derive(Debug, Clone, Copy, Default)]
struct Sum {
    value: f64,
    /// The first score since the sum was 0.
    since: usize,
}

impl Cusum {
    /// Takes in the score numbered `at`; the number of the first score of a change, once one is plain.
    ///
    /// `allowance` is what a score may be off at no cost, and `limit` what the sums may come to, both in the
    /// unit of the scores.
    pub fn take(&mut self, at: usize, score: f64, allowance: f64, limit: f64) -> Option<usize> {
        let up = self.up.take(at, score - allowance, limit);
        up.or(self.down.take(at, -score - allowance, limit))
    }
}

impl Sum {
    fn take(&mut self, at: usize, excess: f64, limit: f64) -> Option<usize> {
        if self.value <= 0.0 {
            self.since = at;
        }
        self.value = (self.value + excess).max(0.0);
        (self.value > limit).then_some(self.since)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn told(scores: &[f64]) -> Option<(usize, usize)> {
        let mut cusum = Cusum::default();
        let mut take = |(at, &score)| cusum.take(at, score, 0.5, 3.0).map(|since| (since, at));
        scores.iter().enumerate().find_map(&mut take)
    }

    /// Worked by hand: 1.5, 3.0, then 4.5 is above 3.
    #[test]
    fn a_step_is_told_with_its_beginning() {
        assert_eq!(told(&[0.0, 0.4, -0.2, 2.0, 2.0, 2.0]), Some((3, 5)));
        assert_eq!(told(&[0.0, 0.4, -0.2, -2.0, -2.0, -2.0]), Some((3, 5)), "in either direction");
    }

    #[test]
    fn what_comes_and_goes_is_no_step() {
        assert_eq!(told(&[2.0, -2.0, 2.0, -2.0, 2.0, -2.0, 2.0]), None);
        assert_eq!(told(&[0.5; 100]), None, "nor is what is allowed");
    }
}
