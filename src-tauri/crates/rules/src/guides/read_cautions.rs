//! The table of cautions and hazards as it is written.

use std::collections::BTreeMap;

use serde::Deserialize;

use super::read::{engines, some_keys, table, wrong};
use super::{Caution, Hazard};
use crate::RulesError;
use crate::rows::is_key;

/// The cautions in the order in which they are read, and the keys of those that each hazard calls for.
pub(super) type Cautions = (Vec<Caution>, BTreeMap<Hazard, Vec<String>>);

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawTable {
    caution: Vec<RawCaution>,
    hazard: Vec<RawHazard>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawCaution {
    key: String,
    #[serde(default)]
    one_by_one: bool,
    #[serde(default)]
    always: bool,
    engines: Option<String>,
    sources: Vec<String>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawHazard {
    key: String,
    cautions: Vec<String>,
}

/// Reads the table; every hazard must stand there once, and only with cautions that do.
pub(super) fn read(text: &str) -> Result<Cautions, RulesError> {
    let raw: RawTable = table("cautions", text)?;
    let mut cautions: Vec<Caution> = Vec::new();
    for row in raw.caution {
        let caution = row.read()?;
        if cautions.iter().any(|other| other.key == caution.key) {
            return Err(wrong(&caution.key, "another caution has this key"));
        }
        cautions.push(caution);
    }
    let mut hazards = BTreeMap::new();
    for row in raw.hazard {
        let (hazard, keys) = row.read(&cautions)?;
        if hazards.insert(hazard, keys).is_some() {
            return Err(wrong(hazard.key(), "this hazard stands there twice"));
        }
    }
    let missing = Hazard::ALL.into_iter().find(|hazard| !hazards.contains_key(hazard));
    missing.map_or(Ok((cautions, hazards)), |hazard| Err(wrong(hazard.key(), "this hazard has no cautions")))
}

impl RawCaution {
    fn read(self) -> Result<Caution, RulesError> {
        let key = self.key.clone();
        self.meaning().map_err(|problem| wrong(&key, &problem))
    }

    fn meaning(self) -> Result<Caution, String> {
        if !is_key(&self.key) || self.sources.is_empty() {
            return Err("a caution has a key of small letters, digits and dashes, and a source".to_owned());
        }
        Ok(Caution {
            engines: engines(self.engines.as_deref())?,
            sources: self.sources.iter().map(|text| text.parse()).collect::<Result<_, _>>()?,
            one_by_one: self.one_by_one,
            always: self.always,
            key: self.key,
        })
    }
}

impl RawHazard {
    fn read(self, cautions: &[Caution]) -> Result<(Hazard, Vec<String>), RulesError> {
        let hazard = Hazard::from_key(&self.key).ok_or_else(|| wrong(&self.key, "this is no hazard"))?;
        let keys = some_keys("cautions", self.cautions).map_err(|problem| wrong(hazard.key(), &problem))?;
        let strange = keys.iter().find(|key| cautions.iter().all(|caution| caution.key != **key));
        match strange {
            Some(key) => Err(wrong(hazard.key(), &format!("'{key}' is no caution"))),
            None => Ok((hazard, keys)),
        }
    }
}
