//! How a catalogue is read, and tables that cannot be so. What the one that comes with the program says is
//! checked in the modules below.
#![allow(clippy::unwrap_used)]

use units::HalfMonths;

use super::*;
use crate::upkeep::{Access, Finding, Gauge, Measured, Milli, Range, Schedule, Source, Tightener, Timing};
use crate::vehicle::{Condition, Fitting};

#[path = "catalogue_content_tests.rs"]
mod content;
#[path = "catalogue_floor_tests.rs"]
mod floor;

const ROW: &str = r#"
[[item]]
number = 1
key = "engine-oil"
engines = "combustion"
action = "replace"
stakes = "engine"
minutes = 60
every = { distance = "10000 to 15000 km", time = "12 months" }
tightened_by = ["short trips"]
source = "common practice"
"#;

/// A second row, which others can name.
const LEVEL: &str = r#"
[[item]]
number = 2
key = "engine-oil-level"
engines = "combustion"
action = "inspect"
stakes = "engine"
minutes = 5
every = { distance = "1000 km" }
source = "common practice"
"#;

fn shipped() -> &'static Catalogue {
    Catalogue::shipped().unwrap()
}

/// The ranges of a row: both phases, what follows other work, and those of its kinds.
fn ranges(item: &Item) -> Vec<Range> {
    let own = match &item.timing {
        Timing::Every(schedule) => schedule.first.into_iter().chain([schedule.every]).collect(),
        Timing::After { within, .. } => vec![*within],
        Timing::Unset => Vec::new(),
    };
    own.into_iter().chain(item.kinds.iter().map(|kind| kind.every)).collect()
}

/// The schedule of a row that comes round again and again.
fn schedule(item: &Item) -> Schedule<Range> {
    match item.timing {
        Timing::Every(schedule) => schedule,
        ref other => panic!("{} has no schedule: {other:?}", item.key),
    }
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
    let every = schedule(&catalogue.items()[0]).every;
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
    let first = schedule(&Catalogue::parse(&text).unwrap().items()[0]).first.unwrap();
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
fn the_rest_of_a_row_is_read_as_it_stands() {
    let text = ROW.replace(
        "minutes = 60",
        r#"minutes = 60
        only_if = ["turbo", "cable throttle"]
        resets = ["engine-oil-level"]
        access = "wheels off"
        most_early = 30
        due_when = ["rough idle", "sooty"]
        measured = { what = "freezing point", unit = "°C", limit = -25.5, fresh = -37.0, source = "common practice" }"#,
    );
    let kind =
        "[[item.kind]]\nkey = \"thin\"\nevery = { time = \"6 months\" }\nsource = \"common practice\"\n";
    let catalogue = Catalogue::parse(&format!("{text}{kind}{LEVEL}")).unwrap();
    let item = catalogue.item(1).unwrap();
    assert_eq!(item.only_if, [Fitting::Turbo, Fitting::CableThrottle]);
    assert_eq!(item.resets, [2]);
    assert_eq!((item.access, item.minutes), (Some(Access::WheelsOff), 60));
    assert_eq!(item.most_early, Some(30));
    assert_eq!(item.due_when.iter().map(|found| found.key()).collect::<Vec<_>>(), ["rough-idle", "sooty"]);
    let gauge = Gauge { what: Measured::FreezingPoint, limit: Milli(-25_500), fresh: Milli(-37_000) };
    assert_eq!((item.gauge, item.limit_source.clone()), (Some(gauge), Some(Source::CommonPractice)));
    assert_eq!(item.tightened_by, [Tightener::Driven(Condition::ShortTrips)]);
    assert_eq!(item.kind("thin").unwrap().every.long().time(), Some(HalfMonths::months(6)));
    assert_eq!(item.kind("thick"), None);
}

#[test]
fn a_row_may_follow_another_or_wait_for_its_owner() {
    let every = "every = { distance = \"10000 to 15000 km\", time = \"12 months\" }";
    let after = "after = { items = [\"engine-oil-level\"], distance = \"50 to 100 mi\" }";
    let timing = |text: &str| {
        let text = format!("{}{LEVEL}", text.replace("tightened_by = [\"short trips\"]", ""));
        Catalogue::parse(&text).map(|catalogue| catalogue.item(1).unwrap().timing.clone())
    };
    let Timing::After { items, within } = timing(&ROW.replace(every, after)).unwrap() else { panic!() };
    assert_eq!(items, [2]);
    assert_eq!(within.long().distance().unwrap().to_string(), "100 mi");
    let unset = ROW.replace(every, "").replace("common practice", "owner");
    assert_eq!(timing(&unset).unwrap(), Timing::Unset);
    let both = ROW.replace(every, &format!("{every}\n{after}"));
    for wrong in [both, ROW.replace(every, ""), ROW.replace("common practice", "owner")] {
        assert!(matches!(timing(&wrong), Err(RulesError::Catalogue { .. })), "{wrong}");
    }
}

#[test]
fn a_row_may_go_with_every_service_of_another_that_goes_with_none() {
    let goes = |row: &str, with: &str| row.replace("minutes =", &format!("follows = \"{with}\"\nminutes ="));
    let parse = |text: String| Catalogue::parse(&text);
    let level = goes(LEVEL, "engine-oil");
    assert_eq!(parse(format!("{ROW}{level}")).unwrap().item(2).unwrap().follows, Some(1));
    let turbo = ROW.replace("minutes", "only_if = [\"turbo\"]\nminutes");
    for elsewhere in [format!("{ROW}{}", level.replace("combustion", "any")), format!("{turbo}{level}")] {
        assert!(parse(elsewhere).is_err(), "some car has the one without the other");
    }
    let unset = ROW.replace("common practice", "owner");
    let unset = unset.lines().filter(|line| !line.starts_with("every") && !line.starts_with("tight"));
    let unset = unset.collect::<Vec<_>>().join("\n");
    let circle = format!("{}{level}", goes(ROW, "engine-oil-level"));
    for wrong in [circle, format!("{unset}\n{level}"), format!("{ROW}{}", goes(LEVEL, "nobody"))] {
        let refused = parse(wrong.clone());
        assert!(matches!(refused, Err(RulesError::Catalogue { .. })), "{wrong}: {refused:?}");
    }
}

#[test]
fn a_finding_calls_another_row_that_knows_it() {
    let calls = ROW.replace("minutes", "calls = { leaking = \"engine-oil-level\" }\nminutes");
    let heeds = LEVEL.replace("minutes", "due_when = [\"leaking\"]\nminutes");
    let item = Catalogue::parse(&format!("{calls}{heeds}")).unwrap().item(1).unwrap().clone();
    assert_eq!(item.called_by(Finding::Leaking).collect::<Vec<_>>(), [2]);
    assert_eq!(item.called_by(Finding::Worn).next(), None);
    for (calls, heeds) in [
        (calls.clone(), LEVEL.to_owned()),
        (calls.replace("minutes", "due_when = [\"leaking\"]\nminutes"), heeds.clone()),
        (calls.replace("engine-oil-level", "engine-oil"), heeds.clone()),
        (calls.replace("leaking", "within limits"), heeds),
    ] {
        assert!(Catalogue::parse(&format!("{calls}{heeds}")).is_err(), "{calls}{heeds}");
    }
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
        ("minutes = 60", "minutes = 4"),
        ("minutes = 60", "minutes = 481"),
        ("minutes = 60", "minutes = 60\nmost_early = 0"),
        ("minutes = 60", "minutes = 60\nmost_early = 367"),
        ("minutes = 60", "minutes = 60\nonly_if = [\"wings\"]"),
        ("minutes = 60", "minutes = 60\naccess = \"the moon\""),
        ("minutes = 60", "minutes = 60\nresets = [\"engine-oil\"]"),
        ("minutes = 60", "minutes = 60\nresets = [\"nobody\"]"),
        ("minutes = 60", "minutes = 60\ndue_when = [\"within limits\"]"),
        (
            "minutes = 60",
            "minutes = 60\nmeasured = { what = \"tread\", unit = \"in\", limit = 3.0, fresh = 8.0, source = \"common practice\" }",
        ),
        (
            "minutes = 60",
            "minutes = 60\nmeasured = { what = \"tread\", unit = \"mm\", limit = 3.0, fresh = 3.0, source = \"common practice\" }",
        ),
        (
            "minutes = 60",
            "minutes = 60\nmeasured = { what = \"tread\", unit = \"mm\", limit = 3.0, fresh = 8.0 }",
        ),
        (
            "minutes = 60",
            "minutes = 60\nmeasured = { what = \"tread\", unit = \"mm\", limit = 3.0, fresh = 8.0, source = \"hearsay\" }",
        ),
    ] {
        let refused = Catalogue::parse(&ROW.replace(right, wrong));
        assert!(matches!(refused, Err(RulesError::Catalogue { .. })), "{wrong}: {refused:?}");
    }
}
