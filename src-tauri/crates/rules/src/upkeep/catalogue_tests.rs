//! The catalogue that comes with the program, and tables that cannot be so.
#![allow(clippy::unwrap_used)]

use units::DistanceUnit;

use super::*;
use crate::vehicle::EngineKind;

const ROW: &str = r#"
[[item]]
number = 1
key = "engine-oil"
engines = "combustion"
action = "replace"
stakes = "engine"
every = { distance = "10000 to 15000 km", time = "12 months" }
tightened_by = ["short trips"]
source = "common practice"
"#;

fn shipped() -> &'static Catalogue {
    Catalogue::shipped().unwrap()
}

#[test]
fn the_shipped_catalogue_is_well_formed_and_its_ranges_are_sensible() {
    assert!(shipped().items().len() >= 16);
    for item in shipped().items() {
        let ranges = item.schedule.first.iter().chain([&item.schedule.every]);
        for end in ranges.flat_map(|range| [range.short(), range.long()]) {
            if let Some(distance) = end.distance() {
                let km = distance.distance().round(DistanceUnit::Kilometre);
                assert!((5_000..=250_000).contains(&km), "{}: {distance}", item.key);
            }
            if let Some(time) = end.time() {
                assert!(
                    (HalfMonths::months(1)..=HalfMonths::months(120)).contains(&time),
                    "{}: {time}",
                    item.key
                );
            }
        }
        let tightens = !item.tightened_by.is_empty();
        assert!(!tightens || !item.schedule.every.is_single(), "{}: nothing to tighten", item.key);
    }
}

/// Once given, a number stands on printed cards. This list only ever grows.
#[test]
fn numbers_and_keys_never_change() {
    let given = "1 engine-oil, 2 engine-air-filter, 3 cabin-filter, 4 throttle-body, 5 spark-plugs, 6 glow-plugs, \
        7 fuel-filter, 8 fuel-filter-water, 9 coolant, 10 brake-fluid, 11 timing-belt, 12 drive-belt, 13 hoses, \
        14 battery-test, 15 tyre-check, 16 brake-check, 17 gearbox-oil, 18 wipers, 19 lamps, 20 air-mass-sensor, \
        21 crankcase-valve, 22 power-steering-fluid, 23 exhaust, 24 steering-suspension, 25 corrosion, \
        26 air-conditioning, 27 tyres";
    let now: Vec<_> = shipped().items().iter().map(|item| format!("{} {}", item.number, item.key)).collect();
    assert_eq!(now.join(", "), given);
}

#[test]
fn items_are_found_by_number_and_by_key() {
    let oil = shipped().item(1).unwrap();
    assert_eq!(shipped().by_key("engine-oil"), Some(oil));
    assert_eq!(shipped().item(0), None);
    assert_eq!(shipped().by_key("oil"), None);
}

/// Common practice: 10 000 to 15 000 km or 12 months; mostly short town trips or towing: 10 000.
#[test]
fn a_row_is_read_as_it_stands() {
    let catalogue = Catalogue::parse(ROW).unwrap();
    let every = catalogue.items()[0].schedule.every;
    assert_eq!(every.short().distance().unwrap().to_string(), "10000 km");
    assert_eq!(every.long().distance().unwrap().to_string(), "15000 km");
    assert_eq!(
        (every.short().time(), every.long().time()),
        (Some(HalfMonths::months(12)), Some(HalfMonths::months(12)))
    );
    assert_eq!(catalogue.items()[0].source, Source::CommonPractice);
}

#[test]
fn both_phases_of_a_row_are_read() {
    let text = ROW.replace("every =", "first = { distance = \"60000 mi\", time = \"48 months\" }\nevery =");
    let first = Catalogue::parse(&text).unwrap().items()[0].schedule.first.unwrap();
    assert!(first.is_single());
    assert_eq!(first.long().distance().unwrap().to_string(), "60000 mi");
}

#[test]
fn a_regulation_and_a_publication_are_named() {
    let source = |text: &str| {
        Catalogue::parse(&ROW.replace("common practice", text)).unwrap().items()[0].source.clone()
    };
    assert_eq!(source("regulation: 49 CFR 565"), Source::Regulation("49 CFR 565".to_owned()));
    assert_eq!(source("published: a manual, p. 7"), Source::Published("a manual, p. 7".to_owned()));
}

#[test]
fn rows_that_cannot_be_so_are_refused_by_name() {
    let twice = format!("{ROW}{}", ROW.replace("engine-oil", "other-oil"));
    assert!(Catalogue::parse(&twice).unwrap_err().to_string().contains("this number"));
    let twice = format!("{ROW}{}", ROW.replace("number = 1", "number = 2"));
    assert!(Catalogue::parse(&twice).unwrap_err().to_string().contains("this key"));
    for (right, wrong) in [
        ("number = 1", "number = 0"),
        ("engine-oil", "Engine oil"),
        ("\"combustion\"", "\"steam\""),
        ("\"replace\"", "\"admire\""),
        ("\"engine\"", "\"pride\""),
        ("\"short trips\"", "\"bad luck\""),
        ("10000 to 15000 km", "15000 to 10000 km"),
        ("10000 to 15000 km", "0 to 15000 km"),
        ("10000 to 15000 km", "10000 km to 15000 km"),
        ("12 months", "12"),
        ("{ distance = \"10000 to 15000 km\", time = \"12 months\" }", "{}"),
        ("common practice", "hearsay"),
        ("stakes", "steaks"),
    ] {
        let refused = Catalogue::parse(&ROW.replace(right, wrong));
        assert!(matches!(refused, Err(RulesError::Catalogue { .. })), "{wrong}: {refused:?}");
    }
}

#[test]
fn every_engine_has_items_and_none_that_it_cannot_have() {
    let keys = |engine| -> Vec<_> {
        let items = shipped().items().iter().filter(move |item| item.engines.include(engine));
        items.map(|item| item.key.as_str()).collect()
    };
    assert!(keys(EngineKind::Petrol).contains(&"spark-plugs"));
    assert!(!keys(EngineKind::Petrol).contains(&"glow-plugs"));
    assert!(keys(EngineKind::DieselHybrid).contains(&"fuel-filter-water"));
    assert!(!keys(EngineKind::Electric).contains(&"engine-oil"));
    assert!(keys(EngineKind::Electric).contains(&"brake-fluid"));
}
