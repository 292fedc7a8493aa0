//! Simulated fuel logs, for the tests of what is said about them.
#![allow(clippy::unwrap_used, clippy::cast_possible_truncation, clippy::cast_sign_loss)]

use std::f64::consts::TAU;

use units::{Amount, Consumption, Day, Distance, Volume};

use super::{FuelKind, Span};
use crate::running::Travelled;
use crate::statistics::chance::Chance;
use crate::testing::day;

/// What a log is like. Everything is a natural logarithm, which is near enough a share.
#[derive(Debug, Clone, Copy)]
pub(super) struct Log {
    pub weeks: usize,
    /// Standard deviation of the consumption of a usual tank, which is good for 500 km; half of its variance from the
    /// mix of trips, the other half from filling to another mark, which the next tank makes good.
    pub noise: f64,
    /// Half of the way from summer to winter; each year's own is between 0.7 and 1.3 of it.
    pub season: f64,
    /// The first week of a change, and how large it is.
    pub step: Option<(usize, f64)>,
    /// One tank in so many is 5 to 15 % short of full.
    pub short_of_full: u64,
}

/// The spans of a car that is filled once a week: invented, and by the seed always the same.
pub(super) fn log(of: &Log, chance: &mut Chance) -> Vec<Span> {
    let (phase, second) = (chance.between(0.0, TAU), chance.between(0.0, TAU));
    let years: Vec<f64> = (0..of.weeks / 52 + 2).map(|_| chance.between(0.7, 1.3)).collect();
    let part = of.noise / std::f64::consts::SQRT_2;
    let mut mark = 0.0;
    let mut from = day("2010-01-04");
    let mut end = Travelled::NONE;
    let mut spans = Vec::with_capacity(of.weeks);
    for week in 0..of.weeks {
        let turn = f64::from(u32::try_from(week).unwrap()) / 52.178 * TAU + phase;
        let winter = years[(turn / TAU) as usize];
        let season = of.season * (winter * turn.cos() + 0.2 * (2.0 * turn + second).cos());
        let short = if chance.one_in(of.short_of_full) { chance.between(0.05, 0.15) } else { 0.0 };
        let now = chance.normal(part / std::f64::consts::SQRT_2) - short;
        let step = of.step.filter(|&(first, _)| week >= first).map_or(0.0, |(_, size)| size);
        // Over a longer way the mix evens out, and the error of a mark counts for less.
        let kilometres = chance.between(300.0, 700.0);
        let usual = 500.0 / kilometres;
        let log = season + step + chance.normal(part) * usual.sqrt() + (now - mark) * usual;
        mark = now;
        let span = one(from, end, kilometres, 7.0 * log.exp());
        (from, end) = (span.to, span.end);
        spans.push(span);
    }
    spans
}

/// A span of a week over so many kilometres with so many litres for 100 km.
pub(super) fn one(from: Day, start: Travelled, kilometres: f64, per_100_km: f64) -> Span {
    let distance = Distance::from_millimetres((kilometres * 1e6) as i64);
    let volume = Volume::from_picolitres((kilometres / 100.0 * per_100_km * 1e12) as i64);
    let used = Consumption::new(Amount::Volume(volume), distance).unwrap();
    Span { kind: FuelKind::Petrol, from, to: from.plus_days(7), end: start.plus(distance), used, fills: 1 }
}
