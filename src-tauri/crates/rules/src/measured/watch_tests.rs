//! Jumps and drifts of simulated values, and how often they are told where there is none.
#![allow(clippy::cast_precision_loss)]

use super::*;
use crate::statistics::chance::Chance;
use crate::testing::day;

/// A long-term trim read every four weeks: about 2 %, give or take 1.5, and whatever is added.
fn trims(count: i32, chance: &mut Chance, added: impl Fn(i32) -> f64) -> Vec<Measurement> {
    let read = |number: i32| Measurement {
        day: day("2024-01-01").plus_days(number * 28),
        value: milli(2.0 + chance.normal(1.5) + added(number)),
    };
    (0..count).map(read).collect()
}

fn share(cars: u32, mut told: impl FnMut(&mut Chance) -> bool) -> f64 {
    let mut chance = Chance(7);
    let count = (0..cars).filter(|_| told(&mut chance)).count();
    count as f64 / f64::from(cars)
}

#[test]
fn a_trim_that_jumps_is_told_within_three_values() {
    let step = |number| if number >= 20 { 8.0 } else { 0.0 };
    let first = day("2024-01-01").plus_days(20 * 28);
    let found = share(200, |chance| {
        let watched = watch(Parameter::LongTrim1, &trims(23, chance, step));
        let right = |jump: &Jump| jump.raised >= first && jump.size > Milli(4_000);
        watched.jumps.iter().any(|jump| right(jump) && first.days_since(jump.since).abs() <= 28)
    });
    println!("jump of 8 % within 3 values, its beginning to one value: {found}");
    assert!(found >= 0.8, "{found}");
}

#[test]
fn steady_trims_are_hardly_ever_said_to_have_jumped_or_to_drift() {
    let jumped =
        share(200, |chance| !watch(Parameter::LongTrim1, &trims(65, chance, |_| 0.0)).jumps.is_empty());
    let drifted =
        share(200, |chance| watch(Parameter::LongTrim1, &trims(65, chance, |_| 0.0)).drift.is_some());
    println!("of five years of steady values {jumped} jumped and {drifted} drifted");
    assert!(jumped <= 0.1, "{jumped}");
    assert!(drifted <= 0.05, "{drifted}");
}

#[test]
fn a_slow_drift_is_told_with_its_pace() {
    // 3 % a year over two years.
    let told = share(100, |chance| {
        let values = trims(26, chance, |number| f64::from(number) * 28.0 / 365.2425 * 3.0);
        let watched = watch(Parameter::LongTrim2, &values);
        watched.jumps.is_empty()
            && watched.drift.is_some_and(|drift| {
                drift.low > Milli(0) && drift.low <= Milli(3_000) && drift.high >= Milli(3_000)
            })
            || watched.jumps.iter().any(|jump| jump.size > Milli(0))
    });
    println!("drift of 3 % a year over two years told: {told}");
    assert!(told >= 0.8, "{told}");
}

#[test]
fn what_cannot_be_is_left_out_and_still_judged() {
    let mut values = trims(10, &mut Chance(3), |_| 0.0);
    let before = watch(Parameter::ShortTrim1, &values);
    values.push(Measurement { day: day("2030-01-01"), value: Milli(250_000) });
    let after = watch(Parameter::ShortTrim1, &values);
    assert_eq!(after.last, Some(Judgement::Implausible));
    assert_eq!((after.jumps, after.drift, after.learnt), (before.jumps, before.drift, true));
    assert_eq!(
        watch(Parameter::Coolant, &[]),
        Watched { last: None, jumps: vec![], drift: None, learnt: false }
    );
}
