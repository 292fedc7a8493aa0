//! Reading the tables of the guides: what their words mean, shared by all of them.

use std::collections::BTreeSet;

use crate::RulesError;
use crate::upkeep::{Engines, Milli};
use crate::vehicle::Fitting;

/// The same words as in the catalogue.
const ENGINES: [(&str, Engines); 5] = [
    ("any", Engines::Any),
    ("combustion", Engines::Combustion),
    ("spark ignition", Engines::SparkIgnition),
    ("diesel", Engines::Diesel),
    ("high voltage", Engines::HighVoltage),
];

/// Which engines a row is for; every one where it does not say.
pub(super) fn engines(word: Option<&str>) -> Result<Engines, String> {
    let Some(word) = word else {
        return Ok(Engines::Any);
    };
    let found = ENGINES.iter().find(|(candidate, _)| *candidate == word);
    found.map(|&(_, engines)| engines).ok_or_else(|| format!("'{word}' is no kind of engine"))
}

/// What a car must have, written with spaces where the keys have dashes.
pub(super) fn fittings(words: &[String]) -> Result<Vec<Fitting>, String> {
    let fitting = |word: &String| {
        let known = Fitting::from_key(&word.replace(' ', "-"));
        known.ok_or_else(|| format!("'{word}' is nothing that a car has"))
    };
    words.iter().map(fitting).collect()
}

/// A value in thousandths, which the tables give with up to three decimals.
pub(super) fn milli(value: f64) -> Result<Milli, String> {
    let thousandths = format!("{:.0}", value * 1_000.0).parse();
    thousandths.map(Milli).map_err(|_| format!("{value} is no value"))
}

/// The keys of a list that must not be empty, each of them once.
pub(super) fn some_keys(what: &str, keys: Vec<String>) -> Result<Vec<String>, String> {
    if keys.is_empty() {
        return Err(format!("it has no {what}"));
    }
    once(what, keys)
}

/// The keys of a list, each of them once.
pub(super) fn once(what: &str, keys: Vec<String>) -> Result<Vec<String>, String> {
    let mut seen = BTreeSet::new();
    for key in &keys {
        if !is_key(key) || !seen.insert(key) {
            return Err(format!("'{key}' under '{what}' is no key, or stands there twice"));
        }
    }
    Ok(keys)
}

/// Whether a text is a key: small letters, digits and dashes.
pub(super) fn is_key(key: &str) -> bool {
    let allowed = |byte: u8| byte.is_ascii_lowercase() || byte.is_ascii_digit() || byte == b'-';
    !key.is_empty() && key.bytes().all(allowed)
}

/// Reads a whole table.
pub(super) fn table<T: serde::de::DeserializeOwned>(name: &str, text: &str) -> Result<T, RulesError> {
    toml::from_str(text).map_err(|error| wrong(name, error.message()))
}

/// What is wrong with a row.
pub(super) fn wrong(place: &str, problem: &str) -> RulesError {
    RulesError::Catalogue { place: format!("guides: {place}"), problem: problem.to_owned() }
}
