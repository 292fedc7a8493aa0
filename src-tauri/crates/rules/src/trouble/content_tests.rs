//! What the tables hold as they are shipped, rule by rule.
#![allow(clippy::unwrap_used)]

use std::collections::BTreeMap;

use super::{Mend, Opening, Trouble};
use crate::testing::car;
use crate::upkeep::{Catalogue, Caution, Site};
use crate::vehicle::{EngineKind, Vehicle};

fn table() -> &'static Trouble {
    Trouble::shipped().unwrap()
}

fn shipped() -> [&'static str; 3] {
    [
        include_str!("../../data/symptoms.toml"),
        include_str!("../../data/causes.toml"),
        include_str!("../../data/checks.toml"),
    ]
}

/// What reading the tables says after one of them was changed.
fn after(place: usize, from: &str, to: &str) -> String {
    let [symptoms, causes, checks] = shipped();
    let mut texts = [symptoms.to_owned(), causes.to_owned(), checks.to_owned()];
    assert!(texts[place].contains(from), "{from} does not stand in the table");
    texts[place] = texts[place].replacen(from, to, 1);
    let read = Trouble::parse(&texts[0], &texts[1], &texts[2], Catalogue::shipped().unwrap());
    read.unwrap_err().to_string()
}

#[test]
fn there_are_enough_symptoms_causes_and_checks() {
    assert!(table().symptoms().len() >= 42, "{}", table().symptoms().len());
    assert!(table().causes().len() >= 75, "{}", table().causes().len());
    assert!(table().checks().len() >= 75, "{}", table().checks().len());
}

#[test]
fn every_table_says_where_its_numbers_come_from() {
    for text in shipped() {
        let head: String = text.lines().take_while(|line| line.starts_with('#')).collect();
        assert!(head.contains("common practice"), "{head}");
    }
}

#[test]
fn every_symptom_has_three_causes_in_each_car_that_can_show_it() {
    for engine in EngineKind::ALL {
        let vehicle = Vehicle { engine, ..car() };
        for symptom in table().symptoms_of(&vehicle) {
            let shows = |cause: &&super::Cause| {
                let shown = table().shown_by(cause).any(|(shown, _)| shown.key == symptom.key);
                shown && cause.rate(&vehicle).is_some()
            };
            let causes = table().causes().iter().filter(shows).count();
            assert!(causes >= 3, "{engine:?}: {} has {causes} causes", symptom.key);
        }
    }
}

#[test]
fn every_check_finds_something_and_every_tool_is_needed() {
    for check in table().checks() {
        let finds = |cause: &super::Cause| table().finding(cause).any(|(found, _)| found.key == check.key);
        assert!(table().causes().iter().any(finds), "{} finds nothing", check.key);
    }
    for tool in table().tools() {
        assert!(table().checks().iter().any(|check| check.tools.contains(&tool.key)), "{}", tool.key);
    }
}

#[test]
fn every_cause_shows_in_something_that_its_car_can_show_and_some_check_finds_it_well() {
    for cause in table().causes() {
        let most = table().shown_by(cause).map(|(_, chance)| chance).fold(0.0, f64::max);
        assert!(most >= 0.25, "{} shows in nothing much", cause.key);
        let best = table().finding(cause).map(|(_, chance)| chance).fold(0.0, f64::max);
        assert!(best >= 0.6, "no check finds {} well", cause.key);
        for (symptom, _) in table().shown_by(cause) {
            let both = |engine| {
                let vehicle = Vehicle { engine, ..car() };
                cause.rate(&vehicle).is_some() && symptom.is_for(&vehicle)
            };
            assert!(
                EngineKind::ALL.into_iter().any(both),
                "no car with {} can show {}",
                cause.key,
                symptom.key
            );
        }
    }
}

#[test]
fn a_symptom_comes_of_its_causes_more_often_than_of_anything() {
    for cause in table().causes() {
        for (symptom, chance) in table().shown_by(cause) {
            assert!(chance > symptom.anyway || chance >= 0.02, "{} shows {} hardly", cause.key, symptom.key);
        }
    }
}

#[test]
fn what_mends_a_cause_is_work_that_its_car_has() {
    let catalogue = Catalogue::shipped().unwrap();
    for cause in table().causes() {
        let Mend::Items(items) = &cause.mend else { continue };
        assert!(items.iter().all(|&item| catalogue.item(item).unwrap().site() != Site::Office));
        let mut mended = false;
        for engine in EngineKind::ALL {
            let vehicle = Vehicle { engine, ..car() };
            let Mend::Items(left) = cause.mend_for(&vehicle, catalogue) else { continue };
            let has = |item: &u32| catalogue.item(*item).is_some_and(|item| item.engines.include(engine));
            assert!(left.iter().all(has), "{engine:?}: {}", cause.key);
            mended |= cause.rate(&vehicle).is_some();
        }
        assert!(mended, "no car with {} has what mends it", cause.key);
    }
}

#[test]
fn what_can_hurt_someone_is_said() {
    for check in table().checks() {
        let says = |caution| check.cautions.contains(&caution);
        let lifts = check.opens.iter().any(|it| it.key() == "lifted" || it.key() == "wheels-off");
        assert_eq!(says(Caution::Jacking), lifts, "{}", check.key);
        assert_eq!(says(Caution::Workshop), check.opens.contain(Opening::Workshop), "{}", check.key);
        let opens = |key: &str| check.opens.iter().any(|it| it.key() == key);
        assert!(!opens("fuel") || says(Caution::Fuel), "{}", check.key);
        assert!(!opens("battery") || says(Caution::Battery), "{}", check.key);
        assert!(!opens("wheels-off") || says(Caution::BrakeDust), "{}", check.key);
    }
}

/// How each check is done, in English, by its key.
fn how() -> BTreeMap<&'static str, &'static str> {
    let lines = include_str!("../../../words/lang/en/trouble.ftl").lines();
    let said = lines.filter_map(|line| line.strip_prefix("check-")?.split_once("-how = "));
    said.collect()
}

/// Exhaust gas kills in a garage, and a running engine takes in hands and sleeves.
#[test]
fn a_check_with_the_engine_running_warns_of_it() {
    for check in table().checks().iter().filter(|check| check.runs) {
        let says = |caution| check.cautions.contains(&caution);
        assert!(says(Caution::Fumes), "{}", check.key);
        let open = check.opens.iter().any(|it| matches!(it.key(), "bonnet" | "ignition" | "battery"));
        assert!(!open || says(Caution::MovingParts), "{}", check.key);
        assert!(!check.is_a_drive() && !check.is_for_a_workshop(), "{}", check.key);
    }
}

#[test]
fn a_check_on_the_road_warns_of_it() {
    for check in table().checks() {
        assert_eq!(check.is_a_drive(), check.cautions.contains(&Caution::OnTheRoad), "{}", check.key);
    }
}

/// What the words ask for, the table has to know: it keeps a car that must stand still from being run or driven.
#[test]
fn a_check_whose_words_run_the_engine_or_drive_says_so_in_the_table() {
    let runs = [
        "idle",
        "idling",
        "engine running",
        "start the engine",
        "start it",
        "crank",
        "revved",
        "at 2000",
        "at 2500",
    ];
    let drives = [
        "drive ten",
        "drive and",
        "drive two",
        "; then drive",
        "on a drive",
        "on a free road",
        "on a quiet road",
        "steady drive",
        "slow drive",
    ];
    let mut running = 0;
    for check in table().checks() {
        let said = how()[check.key.as_str()].to_lowercase();
        let asks = |words: &[&str]| words.iter().any(|word| said.contains(word));
        let known = check.is_a_drive() || check.is_for_a_workshop();
        assert!(!asks(&runs) || check.runs || known, "{} runs the engine: {said}", check.key);
        assert!(!asks(&drives) || known, "{} drives: {said}", check.key);
        assert!(
            !check.runs || said.contains("outdoors"),
            "{} runs the engine, but not outdoors: {said}",
            check.key
        );
        running += usize::from(check.runs);
    }
    assert!(running > 35, "{running}");
}

#[test]
fn what_carries_the_voltage_of_the_ignition_is_touched_with_the_battery_off() {
    for check in
        ["look-at-plugs", "swap-coil", "look-at-leads", "measure-glow-plugs", "clean-air-mass-sensor"]
    {
        let found = table().check(check).unwrap();
        assert!(found.cautions.contains(&Caution::BatteryOff), "{check}");
    }
    for check in table().checks().iter().filter(|check| check.cautions.contains(&Caution::BatteryOff)) {
        let said = how()[check.key.as_str()].to_lowercase();
        assert!(said.contains("battery off"), "{}: {said}", check.key);
    }
}

#[test]
fn a_wheel_that_was_off_is_tightened_by_torque_and_again_later() {
    let wheels_off = |check: &&super::Check| check.opens.iter().any(|it| it.key() == "wheels-off");
    for check in table().checks().iter().filter(wheels_off) {
        let said = how()[check.key.as_str()];
        assert!(said.contains("torque wrench") && said.contains("again after 50 to 100 km"), "{said}");
        assert!(check.tools.iter().any(|tool| tool == "torque-wrench"), "{}", check.key);
    }
}

/// Who looks at the lamps finds a blown bulb, and blows none.
#[test]
fn a_look_at_the_lamps_blows_no_bulb() {
    assert!(table().cause("bulb-blown").unwrap().touched.is_empty());
}

/// High voltage, airbags and high fuel pressure are opened by nobody but a workshop.
#[test]
fn what_belongs_in_a_workshop_is_checked_there() {
    for key in ["workshop-high-voltage", "workshop-airbag", "measure-leak-off", "measure-fuel-pressure"] {
        assert!(table().check(key).unwrap().is_for_a_workshop(), "{key}");
    }
    for cause in ["high-voltage-insulation-low", "inverter-faulty"] {
        let cause = table().cause(cause).unwrap();
        assert!(table().finding(cause).all(|(check, _)| check.is_for_a_workshop()), "{}", cause.key);
    }
}

#[test]
fn whatever_a_code_points_at_is_a_cause() {
    for known in super::codes::Codes::shipped().unwrap().rows() {
        for cause in &known.causes {
            assert!(table().cause(cause).is_some(), "{} points at {cause}, which is no cause", known.code);
        }
    }
}

#[test]
fn a_row_that_cannot_be_so_is_refused_and_named() {
    for (table, from, to, says) in [
        (0, "anyway = 0.03", "anyway = 1.0", "hard-cold-start"),
        (0, "about = \"starting\"", "about = \"singing\"", "heading"),
        (0, "engines = \"combustion\"", "engines = \"steam\"", "steam"),
        (0, "key = \"hard-hot-start\"", "key = \"hard-cold-start\"", "another row"),
        (0, "stop = \"overheating\"", "stop = \"boredom\"", "boredom"),
        (1, "rate = { petrol = 8,", "rate = { petrol = 1000,", "below 1000"),
        (1, "grows = \"distance\"", "grows = \"moon\"", "moon"),
        (1, "\"weak-pull 0.6\"", "\"weak-pull 1.6\"", "a chance"),
        (1, "\"weak-pull 0.6\"", "\"weak-will 0.6\"", "weak-will"),
        (1, "\"weak-pull 0.6\"", "\"thirst 0.6\"", "twice"),
        (1, "\"weak-pull 0.6\"", "\"weak-pull\"", "lacks its chance"),
        (1, "found_by = [\"look-at-air-filter 0.97\"]", "found_by = []", "some check finds it"),
        (1, "mend = [\"engine-air-filter\"]", "mend = [\"prayer\"]", "prayer"),
        (1, "{ to = 8, times = 0.8 }", "{ to = 2, times = 0.8 }", "bands"),
        (2, "minutes = 5\n", "minutes = five\n", "checks"),
        (
            2,
            "key = \"look-at-air-filter\"\nminutes = 5",
            "key = \"look-at-air-filter\"\nminutes = 241",
            "240",
        ),
        (2, "opens = [\"bonnet\", \"air path\"]", "opens = [\"bonnet\", \"air shaft\"]", "air shaft"),
        (2, "tools = [\"code-reader\"]", "tools = [\"crystal-ball\"]", "crystal-ball"),
        (2, "cautions = [\"hot engine\"]", "cautions = [\"ghosts\"]", "ghosts"),
        (2, "[[opening]]\nkey = \"drive\"\nminutes = 12\n", "", "drive"),
    ] {
        let message = after(table, from, to);
        assert!(message.contains(says), "{to}: {message}");
    }
}
