//! The slopes against `scipy.stats.theilslopes`, and what the weights do.
#![allow(clippy::unwrap_used, clippy::float_cmp)]

use proptest::prelude::*;
use serde::Deserialize;

use super::*;

/// Written by `tests/references/theil_sen_vectors.py`, where a test asks scipy again. It holds the worked case of
/// scipy's own tests, the Norris data of NIST's Statistical Reference Datasets, and 200 odometer histories.
const CASES: &str = include_str!("../../../../../tests/references/data/theil_sen.json");

#[derive(Deserialize)]
struct Case {
    name: String,
    x: Vec<f64>,
    y: Vec<f64>,
    slope: f64,
}

fn slope(points: &[(f64, f64)]) -> Option<f64> {
    Slopes::between(points, |_, _| 1.0).median()
}

#[test]
fn equal_weights_give_the_slope_of_scipy() {
    let cases: Vec<Case> = serde_json::from_str(CASES).unwrap();
    assert_eq!(cases.len(), 202);
    for Case { name, x, y, slope: expected } in cases {
        let points: Vec<_> = x.into_iter().zip(y).collect();
        let found = slope(&points).unwrap();
        assert!((found - expected).abs() <= 1e-9 * expected.abs(), "{name}: {found}, not {expected}");
    }
}

#[test]
fn one_point_has_no_slope_and_neither_have_two_of_one_abscissa() {
    assert_eq!(slope(&[]), None);
    assert_eq!(slope(&[(1.0, 1.0)]), None);
    assert_eq!(slope(&[(1.0, 1.0), (1.0, 5.0)]), None);
}

#[test]
fn what_weighs_more_than_half_decides() {
    // Slopes 1 and 3 next to each other, 2 across.
    let points = [(0.0, 0.0), (1.0, 1.0), (2.0, 4.0)];
    assert_eq!(slope(&points), Some(2.0));
    let late = Slopes::between(&points, |from, _| if from == 1.0 { 3.0 } else { 1.0 });
    assert_eq!(late.median(), Some(3.0));
    let even = Slopes::between(&points, |from, _| if from == 1.0 { 2.0 } else { 1.0 });
    assert_eq!(even.median(), Some(2.5), "half of the weight is on either side");
}

#[test]
fn the_spread_is_that_of_the_pairs_so_far_apart() {
    let points = [(0.0, 0.0), (1.0, 1.0), (2.0, 4.0)];
    let slopes = Slopes::between(&points, |_, _| 1.0);
    assert_eq!(slopes.spread_about(2.0, &(1.0..=1.0)), Some(1.0));
    assert_eq!(slopes.spread_about(2.0, &(2.0..=9.0)), Some(0.0));
    assert_eq!(slopes.spread_about(2.0, &(3.0..=9.0)), None);
}

proptest! {
    /// A quarter of the points may be anything.
    #[test]
    fn a_quarter_of_the_points_carries_the_slope_nowhere(
        wrong in prop::collection::vec((0_usize..20, -1e6_f64..1e6), 0..=5),
    ) {
        let mut points: Vec<_> = (0..20).map(|day| (f64::from(day), f64::from(day) * 40.0)).collect();
        for (at, shown) in wrong {
            points[at].1 = shown;
        }
        prop_assert_eq!(slope(&points), Some(40.0));
    }

    /// The same as the ordinary median, when each value stands there as often as it weighs.
    #[test]
    fn a_weight_is_as_good_as_so_many_values(
        values in prop::collection::vec((-50_i32..50, 1_u8..9), 1..60),
    ) {
        let mut each: Vec<f64> = Vec::new();
        for &(value, weight) in &values {
            each.extend(std::iter::repeat_n(f64::from(value), weight.into()));
        }
        let values = values.into_iter().map(|(value, weight)| (f64::from(value), f64::from(weight))).collect();
        each.sort_unstable_by(f64::total_cmp);
        let middle = each.len() / 2;
        let expected = if each.len() % 2 == 1 { each[middle] } else { f64::midpoint(each[middle - 1], each[middle]) };
        prop_assert_eq!(weighted_median(values), Some(expected));
    }
}
