//! What the catalogue that comes with the program says: numbers that never change, sensible ranges, and rows
//! that fit one another.

use std::collections::BTreeSet;

use units::{DistanceUnit, HalfMonths};

use super::{ranges, schedule, shipped};
use crate::upkeep::{Access, Action, Caution, Interval, Milli, Range, Stakes, Tightener, Timing};
use crate::vehicle::{EngineKind, Equipment, Fitting};

/// The keys of the rows for a car with this engine and equipment.
fn keys(engine: EngineKind, equipment: Equipment) -> BTreeSet<&'static str> {
    let items = shipped().items().iter().filter(|item| item.is_for(engine, equipment));
    items.map(|item| item.key.as_str()).collect()
}

/// Looks of a few minutes that come round within a month or a thousand kilometres.
const SHORT_CHECKS: [&str; 3] = ["engine-oil-level", "tyre-pressure", "washer-fluid"];

#[test]
fn the_shipped_catalogue_is_well_formed_and_its_ranges_are_sensible() {
    assert!(shipped().items().len() >= 50);
    for item in shipped().items() {
        let short = matches!(item.timing, Timing::After { .. }) || SHORT_CHECKS.contains(&item.key.as_str());
        let (least_km, least_time) = if short { (1, 1) } else { (5_000, 6) };
        for end in ranges(item).iter().flat_map(|range| [range.short(), range.long()]) {
            assert_sensible(&item.key, end, least_km, HalfMonths::months(least_time));
        }
    }
}

fn assert_sensible(key: &str, end: Interval, least_km: i64, least_time: HalfMonths) {
    if let Some(distance) = end.distance() {
        let km = distance.distance().round(DistanceUnit::Kilometre);
        assert!((least_km..=250_000).contains(&km), "{key}: {distance}");
    }
    if let Some(time) = end.time() {
        assert!((least_time..=HalfMonths::months(120)).contains(&time), "{key}: {time}");
    }
}

#[test]
fn a_short_check_is_short_and_asks_for_no_workshop() {
    for key in SHORT_CHECKS {
        let item = shipped().by_key(key).unwrap();
        assert!(item.minutes <= 10 && !item.workshop, "{key}");
    }
}

#[test]
fn what_tightens_an_item_has_a_range_to_tighten_and_a_range_something_that_tightens_it() {
    for item in shipped().items() {
        let Timing::Every(schedule) = item.timing else {
            assert!(item.tightened_by.is_empty(), "{} has no range of its own", item.key);
            continue;
        };
        assert_eq!(schedule.every.is_single(), item.tightened_by.is_empty(), "{}", item.key);
        let wide = |range: Range| !range.is_single();
        assert!(!item.tightened_by.is_empty() || !schedule.first.is_some_and(wide), "{}", item.key);
        let turbo = item.tightened_by.contains(&Tightener::Turbo);
        assert!(!turbo || !item.only_if.contains(&Fitting::Turbo), "{} never has the long end", item.key);
        assert!(!turbo || !item.is_for(EngineKind::Electric, Equipment::default()), "{}", item.key);
        assert_once(&item.key, &item.tightened_by);
    }
}

fn assert_once<T: Ord>(key: &str, listed: &[T]) {
    assert_eq!(listed.iter().collect::<BTreeSet<_>>().len(), listed.len(), "{key} lists something twice");
}

/// Once given, a number stands on printed cards. This list only ever grows.
#[test]
fn numbers_and_keys_never_change() {
    let given = "1 engine-oil, 2 engine-air-filter, 3 cabin-filter, 4 throttle-body, 5 spark-plugs, 6 glow-plugs, \
        7 fuel-filter, 8 fuel-filter-water, 9 coolant, 10 brake-fluid, 11 timing-belt, 12 drive-belt, 13 hoses, \
        14 battery-test, 15 tyre-check, 16 brake-check, 17 gearbox-oil, 18 wipers, 19 lamps, 20 air-mass-sensor, \
        21 crankcase-valve, 22 power-steering-fluid, 23 exhaust, 24 steering-suspension, 25 corrosion, \
        26 air-conditioning, 27 tyres, 28 engine-oil-level, 29 throttle-cable, 30 idle-valve, \
        31 throttle-relearn, 32 ignition-leads, 33 ignition-coils, 34 vacuum-hoses, 35 charge-air-hoses, \
        36 petrol-additive, 37 diesel-additive, 38 coolant-test, 39 timing-belt-look, 40 timing-chain, \
        41 drive-belt-change, 42 egr-valve, 43 particulate-filter, 44 particulate-filter-ash, \
        45 automatic-gearbox-oil, 46 axle-oil, 47 drive-shaft-boots, 48 engine-mounts, \
        49 power-steering-fluid-change, 50 brake-fluid-test, 51 brake-pads-front, 52 brake-discs-front, \
        53 brake-pads-rear, 54 brake-discs-rear, 55 brake-lines, 56 parking-brake, 57 tyre-pressure, \
        58 wheels-changed, 59 wheel-torque, 60 washer-fluid, 61 battery, 62 high-voltage-cables, \
        63 high-voltage-coolant, 64 drive-battery, 65 hinges-locks-seals, 66 emergency-kit, \
        67 roadworthiness, 68 insurance, 69 road-tax";
    let now: Vec<_> = shipped().items().iter().map(|item| format!("{} {}", item.number, item.key)).collect();
    assert_eq!(now.join(", "), given);
}

#[test]
fn every_engine_has_items_and_none_that_it_cannot_have() {
    for engine in EngineKind::ALL {
        let keys = keys(engine, Equipment::default());
        for key in ["brake-fluid", "tyres", "wheel-torque", "lamps", "battery", "roadworthiness", "insurance"]
        {
            assert!(keys.contains(key), "{engine:?} lacks {key}");
        }
        for (key, has) in [
            ("engine-oil", engine.burns_fuel()),
            ("coolant", engine.burns_fuel()),
            ("exhaust", engine.burns_fuel()),
            ("spark-plugs", engine.has_spark_ignition()),
            ("petrol-additive", engine.has_spark_ignition()),
            ("glow-plugs", engine.burns_diesel()),
            ("fuel-filter-water", engine.burns_diesel()),
            ("diesel-additive", engine.burns_diesel()),
            ("high-voltage-cables", engine.has_high_voltage()),
            ("drive-battery", engine.has_high_voltage()),
        ] {
            assert_eq!(keys.contains(key), has, "{engine:?}: {key}");
        }
    }
}

#[test]
fn a_car_has_what_it_is_not_known_to_lack_and_never_both_of_two_rivals() {
    let unknown = keys(EngineKind::Petrol, Equipment::default());
    for rivals in [
        [("timing-belt", Fitting::TimingBelt), ("timing-chain", Fitting::TimingChain)],
        [("gearbox-oil", Fitting::ManualGearbox), ("automatic-gearbox-oil", Fitting::AutomaticGearbox)],
        [("idle-valve", Fitting::CableThrottle), ("throttle-relearn", Fitting::ElectronicThrottle)],
    ] {
        for [(key, fitting), (rival, _)] in [rivals, [rivals[1], rivals[0]]] {
            assert!(unknown.contains(key), "{key}");
            let known = keys(EngineKind::Petrol, Equipment::default().with(fitting, Some(true)));
            assert!(known.contains(key) && !known.contains(rival), "{key} beside {rival}");
            let without = keys(EngineKind::Petrol, Equipment::default().with(fitting, Some(false)));
            assert!(!without.contains(key), "{key}");
        }
    }
}

/// The words know a kind by its key alone, whichever item it belongs to.
#[test]
fn no_two_kinds_have_one_key_and_each_differs_from_another() {
    let kinds: Vec<_> = shipped().items().iter().flat_map(|item| &item.kinds).map(|kind| &kind.key).collect();
    assert_once("the catalogue", &kinds);
    for item in shipped().items().iter().filter(|item| !item.kinds.is_empty()) {
        assert!(item.kinds.len() >= 2, "{}: one kind alone is no choice", item.key);
        let first = item.kinds[0].every;
        assert!(item.kinds.iter().any(|kind| kind.every != first), "{}", item.key);
    }
}

/// A question that decides nothing is not asked.
#[test]
fn every_fitting_decides_something() {
    for fitting in Fitting::ALL {
        let decided = shipped().items().iter().any(|item| item.only_if.contains(&fitting));
        assert!(decided, "{}", fitting.key());
    }
}

/// What counts as done with something else takes no longer than that, and is on the same cars.
#[test]
fn what_is_reset_is_less_work_on_the_same_cars() {
    for item in shipped().items() {
        assert_once(&item.key, &item.resets);
        for &number in &item.resets {
            let reset = shipped().item(number).unwrap();
            assert!(reset.minutes <= item.minutes, "{} > {}", reset.key, item.key);
            assert!(item.number != number, "{} resets itself", item.key);
            for engine in EngineKind::ALL {
                let both = !item.engines.include(engine) || reset.engines.include(engine);
                // Petrol has a filter too, from which nobody drains water.
                let drained = reset.key == "fuel-filter-water";
                assert!(both || drained, "{engine:?}: {} without {}", item.key, reset.key);
            }
            assert!(reset.only_if.iter().all(|fitting| item.only_if.contains(fitting)), "{}", reset.key);
        }
    }
}

/// Wheel fastenings settle: re-tightened 50 to 100 miles after a wheel was off (adaptitusa.com; tirerack.com,
/// tech page 107). So the re-check follows everything for which the wheels come off, and nothing else.
#[test]
fn wheels_are_re_tightened_after_everything_that_takes_them_off() {
    let torque = shipped().by_key("wheel-torque").unwrap();
    let Timing::After { items, within } = &torque.timing else { panic!("{:?}", torque.timing) };
    assert_eq!(within.short().distance().unwrap().to_string(), "50 mi");
    assert_eq!(within.long().distance().unwrap().to_string(), "100 mi");
    let off = shipped().items().iter().filter(|item| item.access == Some(Access::WheelsOff));
    let off: BTreeSet<_> = off.map(|item| item.number).collect();
    assert_eq!(items.iter().copied().collect::<BTreeSet<_>>(), off);
    assert_once(&torque.key, items);
}

/// A visit takes such work in from half of its distance on (see `Task`), which is no sooner than it serves its purpose.
#[test]
fn what_is_called_for_is_gathered_no_sooner_than_it_helps() {
    for item in shipped().items().iter().filter(|item| !item.serves_at_once()) {
        let Timing::After { within, .. } = &item.timing else { continue };
        let (from, to) = (within.short().distance().unwrap(), within.long().distance().unwrap());
        assert_eq!(from.unit(), to.unit());
        assert!(from.count() * 2 <= to.count(), "{}: {from} to {to}", item.key);
    }
}

/// What is measured stands with the item that renews the part: a look that is done would forget it.
#[test]
fn a_measurement_stands_with_what_renews_the_part() {
    let measured: Vec<_> = shipped().items().iter().filter(|item| item.gauge.is_some()).collect();
    assert!(measured.len() >= 5);
    for item in measured {
        assert_eq!(item.action, Action::Replace, "{}", item.key);
    }
    let gauge = |key: &str| shipped().by_key(key).unwrap().gauge.unwrap();
    // 3 mm is what tyre makers advise for summer tyres; 1.6 mm is the law in Europe (89/459/EEC).
    assert!(gauge("tyres").is_reached(Milli(3_000)) && !gauge("tyres").is_reached(Milli(3_100)));
    // 3.7 % of water is where 49 CFR 571.116 measures the wet boiling point: the limit lies below.
    assert!(gauge("brake-fluid").is_reached(Milli(3_000)) && !gauge("brake-fluid").is_reached(Milli(2_000)));
}

/// Work under a lifted car, at the brakes, at fuel and at the battery comes with its caution.
#[test]
fn work_that_can_hurt_says_so() {
    for item in shipped().items() {
        let wanted: &[Caution] = match item.access {
            Some(Access::Lifted | Access::WheelsOff) => &[Caution::Jacking],
            Some(Access::Fuel) => &[Caution::Fuel],
            Some(Access::Battery) => &[Caution::Battery],
            Some(Access::Cooling) => &[Caution::HotEngine, Caution::Pressure, Caution::UsedFluids],
            Some(Access::FrontBelt) => &[Caution::MovingParts],
            _ => &[],
        };
        for caution in wanted {
            assert!(item.cautions.contains(caution), "{} lacks {}", item.key, caution.key());
        }
        let pads = item.key.starts_with("brake-pads") || item.key.starts_with("brake-discs");
        assert!(!pads || item.cautions.contains(&Caution::BrakeDust), "{}", item.key);
        let drained = item.key.ends_with("-oil") || item.action == Action::Drain;
        assert!(!drained || item.cautions.contains(&Caution::UsedFluids), "{}", item.key);
        assert_once(&item.key, &item.cautions);
    }
}

/// Common practice: a handful of values that the trade knows by heart.
#[test]
fn the_trade_finds_its_own_values() {
    let every = |key: &str| {
        let every = schedule(shipped().by_key(key).unwrap()).every;
        let distance = every.short().distance().zip(every.long().distance());
        let distance = distance.map(|(short, long)| (short.count(), long.count()));
        let time = every.short().time().zip(every.long().time());
        (distance, time.map(|(short, long)| (short.0 / 2, long.0 / 2)))
    };
    assert_eq!(every("engine-oil"), (Some((10_000, 15_000)), Some((12, 12))));
    assert_eq!(every("engine-air-filter"), (Some((15_000, 30_000)), Some((12, 12))));
    assert_eq!(every("throttle-body"), (Some((50_000, 50_000)), None));
    assert_eq!(every("glow-plugs"), (Some((60_000, 80_000)), None));
    // To 100 000 km with good fuel, which nobody can tell.
    assert_eq!(every("fuel-filter"), (Some((60_000, 60_000)), Some((24, 24))));
    assert_eq!(every("coolant"), (None, Some((24, 60))));
    let plugs = shipped().by_key("spark-plugs").unwrap();
    let kind = |key: &str| plugs.kind(key).unwrap().every;
    assert_eq!(kind("copper"), schedule(plugs).every, "the shortest-lived kind stands for an unknown one");
    assert_eq!(kind("iridium").short().distance().unwrap().count(), 60_000);
    assert_eq!(kind("iridium").long().distance().unwrap().count(), 100_000);
    let oil = shipped().by_key("engine-oil").unwrap();
    assert!(oil.tightened_by.contains(&Tightener::Turbo), "a turbocharged engine never gets the long end");
    for key in ["fuel-filter-water", "drive-belt", "hoses"] {
        let with_it = shipped().by_key(key).unwrap();
        assert_eq!(every(key), every("engine-oil"), "at every oil service at the latest: {key}");
        assert_eq!(with_it.tightened_by, oil.tightened_by, "{key}");
    }
}

#[test]
fn only_looks_are_answered_and_only_by_work_that_mends() {
    for item in shipped().items() {
        for look in item.answers.iter().map(|number| shipped().item(*number).unwrap()) {
            assert!(item.action.mends() && !look.action.mends(), "{} and {}", item.key, look.key);
        }
    }
}

#[test]
fn what_waits_for_its_owner_is_papers_and_the_change_of_season() {
    let unset = shipped().items().iter().filter(|item| item.timing == Timing::Unset);
    let keys: Vec<_> = unset.map(|item| item.key.as_str()).collect();
    assert_eq!(keys, ["wheels-changed", "roadworthiness", "insurance", "road-tax"]);
    for item in shipped().items() {
        let papers = item.access == Some(Access::Papers);
        assert_eq!(item.action == Action::Attend, papers, "{}", item.key);
        assert!(!papers || item.stakes >= Stakes::Repair);
    }
}
