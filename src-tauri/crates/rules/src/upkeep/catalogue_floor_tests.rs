//! The catalogue beside the shortest intervals that the United States allow makers to prescribe for parts that
//! keep the exhaust clean.
//!
//! Work more often than in 40 CFR 86.1834-01(b)(3) and (b)(4) "is not technologically necessary to ensure in-use
//! compliance", says (b)(2). The two lists are given here from memory, each line with how sure that is. They are
//! a floor that shows a slip in a table of intervals, not advice.

use std::collections::BTreeSet;

use units::{Distance, DistanceUnit};

use super::{ranges, shipped};
use crate::upkeep::{Interval, Item, Range};
use crate::vehicle::EngineKind;

/// How sure a line of the lists is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Memory {
    High,
    Middling,
}
use Memory::{High, Middling};

/// Items at emission parts: key, the shortest interval in miles, and how sure that is from memory.
const FLOORS: [(&str, i64, Memory); 13] = [
    // Spark plugs.
    ("spark-plugs", 30_000, High),
    // Positive crankcase ventilation valve; that of diesel engines is in the other list, and middling.
    ("crankcase-valve", 50_000, High),
    // Emission-related hoses and tubes.
    ("vacuum-hoses", 50_000, Middling),
    // Ignition wires.
    ("ignition-leads", 50_000, Middling),
    // Fuel injectors of petrol engines.
    ("petrol-additive", 100_000, High),
    // Injector tips of diesel engines, cleaning only.
    ("diesel-additive", 50_000, Middling),
    // Engine control unit with its sensors and actuators.
    ("air-mass-sensor", 100_000, High),
    ("throttle-body", 100_000, High),
    ("idle-valve", 100_000, High),
    // Exhaust gas recirculation, valve and tubing.
    ("egr-valve", 100_000, High),
    // Turbocharger.
    ("charge-air-hoses", 100_000, High),
    // Particulate trap.
    ("particulate-filter", 100_000, Middling),
    ("particulate-filter-ash", 100_000, Middling),
];

/// Where common practice is shorter than the floor, and why.
const SHORTER: [(&str, &str); 9] = [
    ("vacuum-hoses", "a look: the lists are of work at the part"),
    ("petrol-additive", "poured into the tank: no part is touched"),
    ("diesel-additive", "poured into the tank: no part is touched"),
    ("air-mass-sensor", "a look: the lists are of work at the part"),
    ("throttle-body", "cleaned for a smooth idle, long before the exhaust gas suffers"),
    ("idle-valve", "cleaned for a smooth idle, long before the exhaust gas suffers"),
    ("egr-valve", "soot jams it long before the distance for which makers have to answer"),
    ("charge-air-hoses", "a look at its hoses; the turbocharger itself is left alone"),
    ("particulate-filter", "a look with the diagnostic tool: the filter itself is left alone"),
];

/// Everything else that only a car with a combustion engine has: its emissions do not hang on it, or the lists
/// name no interval for it. Oil and air filter are tune-up items in 40 CFR 610.52(b)(2), without one.
const WITHOUT_FLOOR: [&str; 24] = [
    "automatic-gearbox-oil",
    "axle-oil",
    "coolant",
    "coolant-test",
    "drive-belt",
    "drive-belt-change",
    "engine-air-filter",
    "engine-mounts",
    "engine-oil",
    "engine-oil-level",
    "exhaust",
    "fuel-filter",
    "fuel-filter-water",
    "gearbox-oil",
    "glow-plugs",
    "hoses",
    "ignition-coils",
    "power-steering-fluid",
    "power-steering-fluid-change",
    "throttle-cable",
    "throttle-relearn",
    "timing-belt",
    "timing-belt-look",
    "timing-chain",
];

/// Whether a range never starts below the floor without a condition that tightens it, and never ends below it.
fn stands_on(floor: Distance, range: Range, tightened: bool) -> bool {
    let at_least = |end: Interval| end.distance().is_some_and(|distance| distance.distance() >= floor);
    at_least(range.long()) && (tightened || at_least(range.short()))
}

#[test]
fn no_range_starts_below_the_floor_of_the_regulation_except_where_the_trade_differs() {
    let mut shorter = BTreeSet::new();
    for (key, miles, memory) in FLOORS {
        let item = shipped().by_key(key).unwrap();
        let floor = Distance::whole(miles, DistanceUnit::Mile);
        let tightened = !item.tightened_by.is_empty();
        if !ranges(item).into_iter().all(|range| stands_on(floor, range, tightened)) {
            assert!(SHORTER.iter().any(|(known, _)| *known == key), "{key}: below {miles} mi ({memory:?})");
            shorter.insert(key);
        }
    }
    let listed: BTreeSet<_> = SHORTER.iter().map(|(key, _)| *key).collect();
    assert_eq!(shorter, listed, "an item that stands on its floor needs no excuse");
}

/// A new item of a combustion engine has to be put into one of the lists.
#[test]
fn every_item_of_a_combustion_engine_has_a_floor_or_needs_none() {
    let burns = |item: &&Item| {
        let mut engines = EngineKind::ALL.into_iter().filter(|&engine| item.engines.include(engine));
        engines.all(EngineKind::burns_fuel)
    };
    let now: BTreeSet<_> = shipped().items().iter().filter(burns).map(|item| item.key.as_str()).collect();
    let mut listed: BTreeSet<_> = FLOORS.iter().map(|(key, ..)| *key).collect();
    listed.extend(WITHOUT_FLOOR);
    assert_eq!(now, listed);
    assert_eq!(listed.len(), FLOORS.len() + WITHOUT_FLOOR.len(), "an item stands in both lists");
}
