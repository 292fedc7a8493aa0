//! What the guides that come with the program say: enough of them, for the right cars, with the cautions that their
//! hazards call for, and with items, values and steps that fit one another.
#![allow(clippy::unwrap_used)]

use std::collections::BTreeSet;

use super::*;
use crate::testing::car;
use crate::upkeep::Catalogue;
use crate::vehicle::{EngineKind, Equipment, Fitting, Vehicle};

fn guides() -> &'static Guides {
    Guides::shipped().unwrap()
}

fn catalogue() -> &'static Catalogue {
    Catalogue::shipped().unwrap()
}

fn keys(engine: EngineKind, equipment: Equipment) -> BTreeSet<&'static str> {
    let fitting = guides().guides().iter().filter(|guide| guide.is_for(engine, equipment));
    fitting.map(|guide| guide.key.as_str()).collect()
}

#[test]
fn there_is_a_guide_to_every_job_that_an_amateur_does() {
    let wanted = "oil-and-filter oil-level air-filter airbox-look throttle-body throttle-relearn air-mass-sensor \
        spark-plugs glow-plugs crankcase-valve vacuum-hoses fuel-filter fuel-filter-water petrol-additive \
        diesel-additive particulate-filter-drive coolant-check coolant-flush drive-belt-look leak-look mounts-look \
        brake-fluid-test brake-look tyre-check wheel-change wheel-torque battery-test battery-change \
        reading-codes lamps wipers cabin-filter";
    let shipped: Vec<_> = guides().guides().iter().map(|guide| guide.key.as_str()).collect();
    assert_eq!(shipped.join(" "), wanted);
    assert!(shipped.len() >= 26);
}

#[test]
fn no_list_is_empty_that_a_face_shows() {
    for guide in guides().guides() {
        let lists = [&guide.tools, &guide.not, &guide.look, &guide.after, &guide.disposal, &guide.cautions];
        assert!(lists.iter().all(|list| !list.is_empty()), "{}", guide.key);
        assert!(!guide.hazards.is_empty(), "{}", guide.key);
        assert!((3..=14).contains(&guide.steps.len()), "{} has {} steps", guide.key, guide.steps.len());
        assert!(guide.not.len() >= 2, "{} says too little of when to leave it", guide.key);
    }
}

/// Written down apart from the table, from the list of cautions and from section 12 of the check values: ACCC
/// on jacks, US EPA on used oil and on brake dust; the rest is common practice.
const CALLED_FOR: [(Hazard, &[&str]); 17] = [
    (Hazard::HotEngine, &["hot-engine"]),
    (Hazard::HotCoolant, &["hot-engine", "pressure"]),
    (Hazard::HotExhaust, &["hot-exhaust"]),
    (Hazard::RaisedCar, &["jacking", "chocks"]),
    (Hazard::RollingCar, &["chocks"]),
    (Hazard::RunningEngine, &["fumes", "moving-parts"]),
    (Hazard::FuelVapour, &["fuel"]),
    (Hazard::FuelPressure, &["fuel", "pressure"]),
    (Hazard::DieselInjection, &["diesel-injection"]),
    (Hazard::Electrics, &["battery-off"]),
    (Hazard::Battery, &["battery", "eyes-gloves"]),
    (Hazard::Airbag, &["airbags"]),
    (Hazard::Springs, &["springs"]),
    (Hazard::BrakeDust, &["brake-dust"]),
    (Hazard::UsedOil, &["used-fluids", "no-drain"]),
    (Hazard::UsedCoolant, &["used-fluids", "no-drain"]),
    (Hazard::UsedFuel, &["used-fluids", "no-drain", "fuel"]),
];

#[test]
fn every_guide_has_the_cautions_that_its_hazards_call_for() {
    for guide in guides().guides() {
        for &hazard in &guide.hazards {
            let called_for = guides().called_for(hazard);
            assert!(!called_for.is_empty(), "{hazard:?}");
            let known = CALLED_FOR.iter().filter(|(known, _)| *known == hazard).flat_map(|(_, keys)| *keys);
            for key in called_for.iter().map(String::as_str).chain(known.copied()) {
                assert!(guide.cautions.iter().any(|own| own == key), "{} lacks {key}", guide.key);
            }
        }
    }
}

/// What a step does cannot be told by its key alone, but these keys mean one thing throughout.
#[test]
fn a_step_that_raises_the_car_or_runs_the_engine_is_a_hazard() {
    for guide in guides().guides() {
        let has = |keys: &[&str]| guide.steps.iter().any(|step| keys.contains(&step.key.as_str()));
        assert_eq!(has(&["raise"]), guide.hazards.contains(&Hazard::RaisedCar), "{}", guide.key);
        let runs = has(&["run", "start", "idle", "crank", "watch", "rinse", "charge-volts"]);
        assert!(!runs || guide.hazards.contains(&Hazard::RunningEngine), "{}", guide.key);
        let torque = |number: &u32| guides().value(*number).unwrap().key.ends_with("torque");
        let tightens = guide.steps.iter().any(|step| step.values.iter().any(torque));
        assert!(!tightens || guide.tools.contains(&"torque-wrench".to_owned()), "{}", guide.key);
    }
}

/// What a step with one of these keys does, in whatever guide it stands: the engine runs or the car is driven.
const RUNS: [&str; 11] =
    ["run", "start", "idle", "crank", "watch", "rinse", "warm", "drive", "steady", "charge-volts", "pump"];

/// A car that shakes on its stands with the engine running comes down on whoever is beneath it.
#[test]
fn a_raised_car_is_lowered_before_the_engine_runs() {
    let mut raised = 0;
    for guide in guides().guides() {
        let mut up = false;
        for step in &guide.steps {
            let key = step.key.as_str();
            if key == "raise" || key == "raise-again" {
                assert!(!up, "{} raises the car twice", guide.key);
                up = true;
                raised += 1;
            } else if key == "lower" || key == "lower-again" {
                assert!(up, "{} lowers a car that stands", guide.key);
                up = false;
            }
            assert!(!(up && RUNS.contains(&key)), "{} runs the engine on stands: {key}", guide.key);
        }
        assert!(!up, "{} leaves the car on its stands", guide.key);
    }
    assert_eq!(raised, 7);
}

/// The words of the steps say the same as their keys do.
#[test]
fn a_step_whose_words_run_the_engine_has_a_key_that_does() {
    let said: Vec<_> = include_str!("../../../words/lang/en/guides.ftl")
        .lines()
        .filter_map(|line| line.strip_prefix("guide-")?.split_once(" = "))
        .collect();
    for guide in guides().guides() {
        for step in &guide.steps {
            let word = format!("{}-step-{}", guide.key, step.key);
            let (_, said) = said.iter().find(|(key, _)| *key == word).unwrap();
            let runs = ["it idle", "run it", "engine running", "start outdoors", "helper starts"];
            let asks = runs.iter().any(|words| said.to_lowercase().contains(words));
            assert!(!asks || RUNS.contains(&step.key.as_str()), "{word}: {said}");
        }
    }
}

/// Where one step makes another safe, it comes first.
#[test]
fn what_makes_a_step_safe_comes_before_it() {
    for (guide, steps) in [
        ("glow-plugs", &["test", "leads", "warm", "off", "loosen"][..]),
        ("fuel-filter", &["pressure", "loosen", "lines", "wipe", "bleed", "start"]),
        ("fuel-filter-water", &["close", "prime", "start"]),
        ("battery-change", &["keeper", "minus", "plus", "connect", "start"]),
        ("brake-look", &["cool", "loosen", "raise", "on", "lower", "wheel", "pump"]),
        ("wheel-change", &["cool", "loosen", "raise", "on", "snug", "lower", "torque"]),
    ] {
        let guide = guides().guides().iter().find(|known| known.key == guide).unwrap();
        let place = |key: &&str| guide.steps.iter().position(|step| step.key == *key).unwrap();
        let places: Vec<_> = steps.iter().map(place).collect();
        assert!(places.is_sorted(), "{}: {steps:?} stand at {places:?}", guide.key);
    }
}

#[test]
fn a_raised_car_needs_stands_and_chocks_at_hand() {
    for guide in guides().guides().iter().filter(|guide| guide.hazards.contains(&Hazard::RaisedCar)) {
        for tool in ["jack", "axle-stands", "chocks"] {
            assert!(guide.tools.iter().any(|own| own == tool), "{} lacks {tool}", guide.key);
        }
    }
}

#[test]
fn a_guide_says_no_less_than_the_catalogue_does() {
    for guide in guides().guides() {
        for &number in &guide.does {
            for caution in &catalogue().item(number).unwrap().cautions {
                let said = guide.cautions.iter().any(|own| own == caution.key());
                assert!(said, "{} lacks {}", guide.key, caution.key());
            }
        }
    }
}

#[test]
fn every_caution_of_the_catalogue_is_one_of_the_guides() {
    let known: BTreeSet<_> = guides().cautions().iter().map(|caution| caution.key.as_str()).collect();
    for caution in catalogue().items().iter().flat_map(|item| item.cautions_for(EngineKind::PetrolHybrid)) {
        assert!(known.contains(caution.key()), "{}", caution.key());
    }
}

/// What belongs in a workshop is no job of a guide.
#[test]
fn no_guide_does_what_belongs_in_a_workshop() {
    for guide in guides().guides() {
        for &number in &guide.does {
            let item = catalogue().item(number).unwrap();
            assert!(!item.workshop, "{} does {}", guide.key, item.key);
        }
    }
}

/// Jack stands, chemicals that burn, gases and springs: those of section 12 of the check values that kill or maim.
#[test]
fn what_kills_is_acknowledged_one_by_one_and_the_handbook_closes() {
    for key in
        ["high-voltage", "jacking", "fuel", "diesel-injection", "fumes", "airbags", "springs", "pressure"]
    {
        let caution = guides().cautions().iter().find(|caution| caution.key == key).unwrap();
        assert!(caution.one_by_one, "{key}");
    }
    for guide in guides().guides() {
        let last = guides().cautions_of(guide).last().unwrap();
        assert_eq!((last.key.as_str(), last.one_by_one), ("handbook", false), "{}", guide.key);
    }
}

#[test]
fn a_guide_is_for_a_car_exactly_where_the_catalogue_has_something_for_it_to_write() {
    for guide in guides().guides() {
        for engine in EngineKind::ALL {
            for fitting in Fitting::ALL {
                for has in [Some(true), Some(false)] {
                    let equipment = Equipment::default().with(fitting, has);
                    let items = guide.does.iter().map(|&number| catalogue().item(number).unwrap());
                    let all = items.clone().all(|item| item.is_for(engine, equipment));
                    let vehicle = Vehicle { engine, equipment, ..car() };
                    let own = OwnValues::default();
                    let opened = guides().opened(&guide.key, &vehicle, &own, catalogue());
                    assert!(opened.is_none() || all, "{} {engine:?} {fitting:?} {has:?}", guide.key);
                    let writes =
                        opened.is_some_and(|opened| !(opened.does.is_empty() && opened.finds.is_empty()));
                    assert_eq!(
                        writes,
                        guide.is_for(engine, equipment),
                        "{} {engine:?} {fitting:?} {has:?}",
                        guide.key
                    );
                    assert!(
                        guide.does.is_empty() || guide.is_for(engine, equipment) == all,
                        "{} {engine:?} {fitting:?} {has:?}",
                        guide.key
                    );
                }
            }
        }
    }
}

#[test]
fn an_engine_has_its_own_guides() {
    let petrol = keys(EngineKind::Petrol, Equipment::default());
    let diesel = keys(EngineKind::Diesel, Equipment::default());
    let electric = keys(EngineKind::Electric, Equipment::default());
    assert!(petrol.contains("spark-plugs") && !petrol.contains("glow-plugs"));
    assert!(diesel.contains("glow-plugs") && !diesel.contains("spark-plugs"));
    assert!(diesel.contains("diesel-additive") && !diesel.contains("petrol-additive"));
    let left = "battery-change battery-test brake-fluid-test brake-look cabin-filter lamps tyre-check wheel-change \
        wheel-torque wipers";
    assert_eq!(electric.into_iter().collect::<Vec<_>>().join(" "), left);
    let cable = Equipment::default().with(Fitting::CableThrottle, Some(true));
    assert!(!keys(EngineKind::Petrol, cable).contains("throttle-relearn"));
    let unfiltered = Equipment::default().with(Fitting::ParticulateFilter, Some(false));
    assert!(!keys(EngineKind::Diesel, unfiltered).contains("particulate-filter-drive"));
}

#[test]
fn a_hybrid_is_warned_of_its_voltage_and_a_petrol_car_not_of_a_diesels_injection() {
    let own = OwnValues::default();
    for engine in EngineKind::ALL {
        let car = Vehicle { engine, ..car() };
        for guide in guides().for_car(&car, &own, catalogue()) {
            let said = |key: &str| guide.cautions.iter().any(|caution| caution.key == key);
            assert_eq!(said("high-voltage"), engine.has_high_voltage(), "{engine:?} {}", guide.guide.key);
            assert!(!said("diesel-injection") || engine.burns_diesel(), "{engine:?} {}", guide.guide.key);
        }
    }
    let diesel = Vehicle { engine: EngineKind::Diesel, ..car() };
    let filter = guides().opened("fuel-filter", &diesel, &own, catalogue()).unwrap();
    assert!(filter.cautions.iter().any(|caution| caution.key == "diesel-injection"));
}

#[test]
fn a_step_for_another_car_is_left_out() {
    let has = |engine: EngineKind, equipment: Equipment, guide: &str, step: &str| {
        let own = OwnValues::default();
        let opened = guides().opened(guide, &Vehicle { engine, equipment, ..car() }, &own, catalogue());
        opened.unwrap().steps.iter().any(|own| own.step.key == step)
    };
    let motor = Equipment::default().with(Fitting::ElectronicThrottle, Some(true));
    assert!(has(EngineKind::Petrol, motor, "throttle-body", "motor"));
    assert!(!has(EngineKind::Petrol, motor, "throttle-body", "cable"));
    assert!(has(EngineKind::Petrol, Equipment::default(), "throttle-body", "motor"));
    assert!(has(EngineKind::Diesel, Equipment::default(), "fuel-filter", "fill"));
    assert!(!has(EngineKind::Petrol, Equipment::default(), "fuel-filter", "fill"));
}

#[test]
fn a_value_is_the_cars_own_or_typical_or_the_handbooks() {
    let number = |key: &str| guides().values().iter().find(|value| value.key == key).unwrap().number;
    let own = OwnValues::default().with(number("oil-volume"), " 4.3 l ").with(number("oil-grade"), "  ");
    let oil = guides().opened("oil-and-filter", &car(), &own, catalogue()).unwrap();
    let known = |key: &str| oil.values().into_iter().find(|needed| needed.value.key == key).unwrap().known;
    assert_eq!(known("oil-volume"), Known::Own("4.3 l"));
    assert_eq!(known("oil-grade"), Known::Handbook);
    assert_eq!(known("drain-plug-torque"), Known::Handbook);
    let wheel = guides().opened("wheel-torque", &car(), &own, catalogue()).unwrap();
    let torque = wheel.values().into_iter().find(|needed| needed.value.key == "wheel-torque").unwrap();
    assert!(matches!(torque.known, Known::Typical(cases) if cases.len() == 6));
    let own = own.with(number("wheel-torque"), "120 N·m");
    let wheel = guides().opened("wheel-torque", &car(), &own, catalogue()).unwrap();
    let torque = wheel.values().into_iter().find(|needed| needed.value.key == "wheel-torque").unwrap();
    assert_eq!(torque.known, Known::Own("120 N·m"));
}

/// Once given, a number may stand in entries. This list only ever grows.
#[test]
fn the_numbers_of_values_never_change() {
    let given = "1 oil-volume, 2 oil-grade, 3 oil-approval, 4 drain-plug-torque, 5 oil-filter-torque, \
        6 plug-torque, 7 plug-turn, 8 plug-gap, 9 glow-plug-torque, 10 coolant-kind, 11 coolant-volume, \
        12 coolant-protection, 13 brake-fluid-class, 14 brake-fluid-boiling-dry, 15 brake-fluid-boiling-wet, \
        16 brake-pad-least, 17 brake-disc-least, 18 wheel-torque, 19 wheel-retorque, 20 tyre-pressure-front, \
        21 tyre-pressure-rear, 22 tread-least, 23 battery-rest, 24 battery-charging, 25 battery-kind, \
        26 bulb-kinds, 27 wiper-sizes, 28 tank-volume, 29 lifting-points, 30 belt-route, 31 filter-drive, \
        32 crankcase-valve-place, 33 diagnostic-socket-place, 34 cabin-filter-place";
    let now: Vec<_> =
        guides().values().iter().map(|value| format!("{} {}", value.number, value.key)).collect();
    assert_eq!(now.join(", "), given);
}

#[test]
fn every_value_is_asked_for_and_every_caution_that_is_not_the_catalogues_is_called_for() {
    let steps = || guides().guides().iter().flat_map(|guide| &guide.steps);
    for value in guides().values() {
        assert!(steps().any(|step| step.values.contains(&value.number)), "nobody asks for {}", value.key);
    }
    let called_for =
        |key: &String| Hazard::ALL.iter().any(|&hazard| guides().called_for(hazard).contains(key));
    let strange = guides().cautions().iter().filter(|caution| !caution.always && !called_for(&caution.key));
    assert_eq!(strange.map(|caution| caution.key.as_str()).collect::<Vec<_>>(), ["workshop"]);
    for hazard in Hazard::ALL {
        assert!(guides().guides().iter().any(|guide| guide.hazards.contains(&hazard)), "{hazard:?}");
    }
}

#[test]
fn after_a_wheel_was_off_its_torque_is_checked_again() {
    let takes_off = |guide: &&Guide| guide.tools.iter().any(|tool| tool == "wheel-brace");
    assert_eq!(guides().guides().iter().filter(takes_off).count(), 2);
    for guide in guides().guides().iter().filter(takes_off) {
        assert!(guide.then.iter().any(|key| key == "wheel-torque"), "{}", guide.key);
    }
    let does = |item: &str| guides().that_do(catalogue().by_key(item).unwrap().number).count();
    assert_eq!((does("wheel-torque"), does("engine-oil"), does("tyres")), (1, 1, 0));
}
