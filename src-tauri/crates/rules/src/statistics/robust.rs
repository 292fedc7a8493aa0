//! The median, and a spread that a few wild values do not carry away.

/// The middle value, half way between the two middle ones of an even number. `None` of none.
pub(crate) fn median(values: &mut [f64]) -> Option<f64> {
    let (middle, odd) = (values.len() / 2, values.len() % 2 == 1);
    if values.is_empty() {
        return None;
    }
    let (below, &mut upper, _) = values.select_nth_unstable_by(middle, f64::total_cmp);
    if odd {
        return Some(upper);
    }
    let lower = below.iter().copied().max_by(f64::total_cmp).unwrap_or(upper);
    Some(f64::midpoint(lower, upper))
}

/// The standard deviation by the median of the absolute values: 1.4826 times it, as for a normal distribution.
///
/// The values lie about 0, as residuals do. 0 of none.
pub(crate) fn spread(about_zero: impl Iterator<Item = f64>) -> f64 {
    let mut sizes: Vec<f64> = about_zero.map(f64::abs).collect();
    median(&mut sizes).map_or(0.0, |median| 1.4826 * median)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_median_is_the_middle_one() {
        assert_eq!(median(&mut []), None);
        assert_eq!(median(&mut [3.0]), Some(3.0));
        assert_eq!(median(&mut [3.0, 1.0, 2.0]), Some(2.0));
        assert_eq!(median(&mut [4.0, 1.0, 2.0, 9.0]), Some(3.0));
    }

    #[test]
    fn one_wild_value_does_not_carry_the_spread_away() {
        let tame = spread([-1.0, 1.0, -1.0, 1.0, 1.0].into_iter());
        assert!((spread([-1.0, 1.0, -1.0, 1.0, 1e9].into_iter()) - tame).abs() < 1e-12);
        assert!((tame - 1.4826).abs() < 1e-12);
    }
}
