//! Quantiles of Student's t.

use statrs::distribution::{ContinuousCDF, StudentsT};

/// The value below which Student's t with so many degrees of freedom lies with this probability.
///
/// Degrees of freedom need not be whole, as Welch's are not. `None` unless both are in range: 0 < `probability` < 1
/// and `freedom` above 0.
pub(crate) fn quantile(probability: f64, freedom: f64) -> Option<f64> {
    let inside = probability > 0.0 && probability < 1.0;
    // Beyond so many it is the normal distribution to six digits, and the incomplete beta function wears out.
    let t = StudentsT::new(0.0, 1.0, freedom.min(1e6)).ok().filter(|_| inside && freedom > 0.0)?;
    Some(t.inverse_cdf(probability))
}

#[cfg(test)]
mod tests {
    use super::quantile;

    /// `scipy.stats.t.ppf` of scipy 1.17.1.
    #[test]
    fn quantiles_are_those_of_scipy() {
        for (probability, freedom, expected) in [
            (0.975, 1.0, 12.706_204_736_174_694),
            (0.975, 2.5, 3.574_654_842_003_682),
            (0.8, 5.0, 0.919_543_780_240_827),
            (0.975, 7.030_56, 2.362_542_229_346_754),
            (0.975, 136.87, 1.977_447_947_664_816),
            (0.8, 1000.0, 0.841_980_822_162_429),
        ] {
            let found = quantile(probability, freedom).unwrap_or(f64::NAN);
            assert!((found - expected).abs() < 1e-8, "{probability} {freedom}: {found}, not {expected}");
        }
        assert_eq!(quantile(0.975, 0.0), None);
        assert_eq!(quantile(1.0, 5.0), None);
        assert_eq!(quantile(0.975, f64::NAN), None);
    }
}
