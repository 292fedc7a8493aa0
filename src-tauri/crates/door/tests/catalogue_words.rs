//! Whatever the catalogue and the rules name has a name in the words of every language.
#![allow(clippy::unwrap_used)]

use std::collections::BTreeSet;

use rules::costs::CostClass;
use rules::fuel::{FuelKind, PumpUnit, effects, look_at};
use rules::measured::Parameter;
use rules::upkeep::{Asked, Catalogue, Finding, Measured};
use rules::vehicle::{Conditions, EngineKind, Equipment, Fitting, Vehicle};
use units::{ConsumptionUnit, DistanceUnit};
use words::{Face, Words};

/// The keys of everything that can be named by the words, as they stand there.
fn keys() -> BTreeSet<String> {
    let items = Catalogue::shipped().unwrap().items();
    let names = items.iter().map(|item| format!("item-{}", item.key));
    let kinds = items.iter().flat_map(|item| &item.kinds).map(|kind| format!("kind-{}", kind.key));
    let access = items.iter().filter_map(|item| item.access).map(|access| format!("access-{}", access.key()));
    let findings = Finding::ALL.into_iter().map(|finding| format!("finding-{}", finding.key()));
    let measured = Measured::ALL.into_iter().map(|what| format!("measured-{}", what.key()));
    let fitted = Fitting::ALL.into_iter().map(|fitting| format!("fitted-{}", fitting.key()));
    names.chain(kinds).chain(access).chain(findings).chain(measured).chain(fitted).collect()
}

#[test]
fn everything_that_the_catalogue_names_has_a_word() {
    for lang in words::languages_of(Face::Card) {
        let words = Words::load_for(Face::Card, lang);
        for key in keys() {
            assert!(words.has(&key), "{lang} lacks {key}");
        }
    }
}

/// What the report names beside that, in the files that it says and in no other.
#[test]
fn everything_that_a_report_names_has_a_word() {
    let fuels = FuelKind::ALL.into_iter().map(|kind| format!("fuel-kind-{}", kind.key()));
    let uses = ConsumptionUnit::ALL.into_iter().map(|unit| format!("use-{}", unit.key()));
    let groups = Asked::ALL.into_iter().map(|asked| format!("card-asked-{}", asked.key()));
    let named: Vec<_> = keys().into_iter().chain(fuels).chain(uses).chain(groups).collect();
    for lang in words::languages_of(Face::Report) {
        let words = Words::load_for(Face::Report, lang);
        for key in &named {
            assert!(words.has(key), "{lang} lacks {key}");
        }
    }
}

/// A phone shows about forty characters in a line.
#[test]
fn a_name_fits_on_the_line_of_a_phone() {
    for lang in words::languages_of(Face::Card) {
        let words = Words::load_for(Face::Card, lang);
        for key in keys() {
            let said = words.say(&key, &[]);
            assert!(said.chars().count() <= 40, "{lang}: {key} is too long: {said}");
        }
    }
}

/// The keys of everything about fuel, costs and measured values that the faces name.
fn running_keys() -> Vec<String> {
    let both = |ui: &str, cli: &str, key: &str| [format!("{ui}-{key}"), format!("cli-{cli}-{key}")];
    let kinds = FuelKind::ALL.into_iter().flat_map(|kind| both("fuel-kind", "fuel", kind.key()));
    let units = PumpUnit::ALL.into_iter().map(|unit| format!("volume-{}", unit.key()));
    let uses = ConsumptionUnit::ALL.into_iter().map(|unit| format!("use-{}", unit.key()));
    let classes = CostClass::ALL.into_iter().flat_map(|class| both("cost", "cost", class.key()));
    let parameters = Parameter::ALL.into_iter().flat_map(|it| both("parameter", "parameter", it.key()));
    let effects = effects().iter().map(|effect| format!("effect-{}", effect.key));
    let apart = ["missed", "no-distance", "too-little", "too-much"].into_iter();
    let judged = ["implausible", "low", "high", "usual"].into_iter();
    let look_at = EngineKind::ALL.into_iter().flat_map(|engine| look_at(&car(engine)));
    kinds
        .chain(units)
        .chain(uses)
        .chain(classes)
        .chain(parameters)
        .chain(effects)
        .chain(apart.flat_map(|key| both("apart", "apart", key)))
        .chain(judged.flat_map(|key| both("judgement", "judged", key)))
        .chain(look_at.map(|key| format!("explains-{key}")))
        .collect()
}

fn car(engine: EngineKind) -> Vehicle {
    Vehicle {
        engine,
        first_use: None,
        known_from_new: false,
        kept_since: None,
        unit: DistanceUnit::Kilometre,
        equipment: Equipment::default(),
        conditions: Conditions::default(),
        yearly: None,
    }
}

#[test]
fn everything_about_fuel_costs_and_measured_values_has_a_word() {
    for lang in words::languages() {
        let words = Words::load(lang);
        for key in running_keys() {
            assert!(words.has(&key), "{lang} lacks {key}");
        }
    }
}
