//! Comparisons and regression against scipy, numpy and NIST.
#![allow(clippy::unwrap_used)]

use serde::Deserialize;

use super::*;

/// Written by `tests/references/welch_vectors.py`, where a test works it out again.
const CASES: &str = include_str!("../../../../../tests/references/data/welch.json");

#[derive(Deserialize)]
struct Cases {
    welch: Vec<Welch>,
    joint: Vec<Joint>,
    norris: Norris,
}

#[derive(Deserialize)]
struct Welch {
    name: String,
    a: Vec<f64>,
    b: Vec<f64>,
    t: f64,
    freedom: f64,
    low: f64,
    high: f64,
}

#[derive(Deserialize)]
struct Joint {
    columns: Vec<Vec<f64>>,
    y: Vec<f64>,
    weights: Vec<f64>,
    before: usize,
    estimate: f64,
    variance: f64,
    freedom: f64,
}

#[derive(Deserialize)]
struct Norris {
    x: Vec<f64>,
    y: Vec<f64>,
}

fn cases() -> Cases {
    serde_json::from_str(CASES).unwrap()
}

fn near(found: f64, expected: f64, within: f64, of: &str) {
    assert!((found - expected).abs() <= within * expected.abs(), "{of}: {found}, not {expected}");
}

/// First against second, as scipy subtracts.
fn compare(case: &Welch) -> Contrast {
    let first: Vec<f64> = case.a.iter().map(|_| 1.0).chain(case.b.iter().map(|_| 0.0)).collect();
    let second: Vec<f64> = first.iter().map(|is| 1.0 - is).collect();
    let groups: Vec<bool> = second.iter().map(|&is| is > 0.5).collect();
    let y: Vec<f64> = case.a.iter().chain(&case.b).copied().collect();
    let fit = Fit::new(&[first, second], &y, &vec![1.0; y.len()]).unwrap();
    fit.contrast(&[1.0, -1.0], &groups).unwrap()
}

#[test]
fn without_season_and_weights_it_is_the_comparison_of_welch() {
    let cases = cases().welch;
    for case in &cases {
        let found = compare(case);
        let margin = found.margin(0.0).unwrap();
        near(found.estimate / found.variance().sqrt(), case.t, 1e-9, &case.name);
        near(found.freedom(), case.freedom, 1e-9, &case.name);
        near(found.estimate - margin, case.low, 1e-7, &case.name);
        near(found.estimate + margin, case.high, 1e-7, &case.name);
    }
    assert_eq!(cases.len(), 4);
}

/// scipy's test class `TestTTestInd` has t by R's `t.test`; `AUTO83B` of the NIST e-Handbook, 1.3.5.3, has 249 and 79
/// cars with means 20.14458 and 30.48101, for which Welch's t is -12.94627 with 136.87 degrees of freedom.
#[test]
fn published_comparisons_come_out() {
    let cases = cases().welch;
    let t = |name: &str| {
        let found = compare(cases.iter().find(|case| case.name == name).unwrap());
        (found.estimate / found.variance().sqrt(), found.freedom())
    };
    near(t("scipy 1").0, -0.686_495_127_355_726, 1e-12, "scipy 1");
    near(t("scipy 2").0, -0.210_866_331_595_072, 1e-12, "scipy 2");
    near(t("AUTO83B").0, -12.946_27, 1e-6, "AUTO83B");
    near(t("AUTO83B").1, 136.87, 1e-4, "AUTO83B");
}

#[test]
fn weights_and_season_come_to_what_numpy_says() {
    let cases = cases().joint;
    for (number, case) in cases.iter().enumerate() {
        let second: Vec<bool> = (0..case.y.len()).map(|at| at >= case.before).collect();
        let fit = Fit::new(&case.columns, &case.y, &case.weights).unwrap();
        let found = fit.contrast(&[-1.0, 1.0, 0.0, 0.0], &second).unwrap();
        near(found.estimate, case.estimate, 1e-9, &format!("estimate {number}"));
        near(found.variance(), case.variance, 1e-9, &format!("variance {number}"));
        near(found.freedom(), case.freedom, 1e-9, &format!("freedom {number}"));
    }
    assert_eq!(cases.len(), 20);
}

/// NIST Statistical Reference Datasets, linear regression, Norris: the certified coefficients, their standard
/// deviations and that of the residuals.
#[test]
fn regression_has_the_certified_values_of_norris() {
    let Norris { x, y } = cases().norris;
    let ones = vec![1.0; x.len()];
    let fit = Fit::new(&[ones.clone(), x.clone()], &y, &ones).unwrap();
    let one_group = vec![false; x.len()];
    let intercept = fit.contrast(&[1.0, 0.0], &one_group).unwrap();
    let slope = fit.contrast(&[0.0, 1.0], &one_group).unwrap();
    near(intercept.estimate, -0.262_323_073_774_029, 1e-11, "intercept");
    near(slope.estimate, 1.002_116_818_020_45, 1e-13, "slope");
    near(intercept.variance().sqrt(), 0.232_818_234_301_152, 1e-11, "its deviation");
    near(slope.variance().sqrt(), 0.429_796_848_199_937e-3, 1e-11, "its deviation");
    near((slope.variances[0] / slope.factors[0]).sqrt(), 0.884_796_396_144_373, 1e-11, "residuals");
    near(slope.freedoms[0], 34.0, 1e-12, "degrees of freedom");
}

#[test]
fn columns_that_say_the_same_have_no_fit() {
    let ones = vec![1.0; 3];
    assert!(Fit::new(&[ones.clone(), ones.clone()], &[1.0, 2.0, 3.0], &ones).is_none());
    assert!(Fit::new(&[vec![0.0; 3]], &[1.0, 2.0, 3.0], &ones).is_none());
    let fit = Fit::new(&[vec![1.0, 1.0, 0.0], vec![0.0, 0.0, 1.0]], &[1.0, 2.0, 3.0], &ones).unwrap();
    assert_eq!(fit.contrast(&[-1.0, 1.0], &[false, false, true]), None, "one value has no spread");
}
