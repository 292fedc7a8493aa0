//! Reading the tables of the guides: what their words mean, shared by all of them.

use std::collections::BTreeSet;

use crate::RulesError;
use crate::rows::{self, ENGINES, is_key, meaning};
use crate::upkeep::Engines;

/// Which engines a row is for; every one where it does not say.
pub(super) fn engines(word: Option<&str>) -> Result<Engines, String> {
    let Some(word) = word else {
        return Ok(Engines::Any);
    };
    meaning(&ENGINES, word)
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

/// Reads a whole table.
pub(super) fn table<T: serde::de::DeserializeOwned>(name: &str, text: &str) -> Result<T, RulesError> {
    toml::from_str(text).map_err(|error| wrong(name, error.message()))
}

/// What is wrong with a row.
pub(super) fn wrong(place: &str, problem: &str) -> RulesError {
    rows::wrong(&format!("guides: {place}"), problem)
}
