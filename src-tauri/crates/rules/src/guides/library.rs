//! All guides together, read once and checked as a whole.

use std::collections::BTreeMap;
use std::sync::OnceLock;

use super::read::wrong;
use super::{Caution, Guide, Hazard, Value, read_cautions, read_guides, read_values};
use crate::RulesError;
use crate::upkeep::Catalogue;

/// Every guide, with the cautions and values that they name.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Guides {
    all: Vec<Guide>,
    cautions: Vec<Caution>,
    hazards: BTreeMap<Hazard, Vec<String>>,
    values: Vec<Value>,
}

/// The texts of the tables.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Tables<'a> {
    /// The cautions, and which of them each hazard calls for.
    pub cautions: &'a str,
    /// The values.
    pub values: &'a str,
    /// The guides, in as many tables as there are.
    pub guides: &'a [&'a str],
}

impl Tables<'static> {
    /// The tables that come with the program.
    pub const SHIPPED: Tables<'static> = Tables {
        cautions: include_str!("../../data/guides/cautions.toml"),
        values: include_str!("../../data/guides/values.toml"),
        guides: &[
            include_str!("../../data/guides/engine.toml"),
            include_str!("../../data/guides/fuel.toml"),
            include_str!("../../data/guides/cooling.toml"),
            include_str!("../../data/guides/brakes-and-wheels.toml"),
            include_str!("../../data/guides/electrics-and-body.toml"),
        ],
    };
}

impl Guides {
    /// The guides that come with the program, read once with the catalogue that does.
    pub fn shipped() -> Result<&'static Guides, RulesError> {
        static SHIPPED: OnceLock<Result<Guides, RulesError>> = OnceLock::new();
        let read = || Guides::parse(&Tables::SHIPPED, Catalogue::shipped()?);
        SHIPPED.get_or_init(read).as_ref().map_err(Clone::clone)
    }

    /// Reads guides against a catalogue; [`RulesError::Catalogue`] names the row that is wrong.
    pub fn parse(tables: &Tables<'_>, catalogue: &Catalogue) -> Result<Guides, RulesError> {
        let (cautions, hazards) = read_cautions::read(tables.cautions)?;
        let values = read_values::read(tables.values)?;
        let mut all = Vec::new();
        for text in tables.guides {
            all.extend(read_guides::read(text, &values, catalogue)?);
        }
        let read = Guides { all, cautions, hazards, values };
        read.check()?;
        Ok(read)
    }

    /// Every guide, in the order of the tables.
    pub fn guides(&self) -> &[Guide] {
        &self.all
    }

    /// The guide with this key.
    pub fn by_key(&self, key: &str) -> Option<&Guide> {
        self.all.iter().find(|guide| guide.key == key)
    }

    /// The guides that do the item with this number.
    pub fn that_do(&self, item: u32) -> impl Iterator<Item = &Guide> {
        self.all.iter().filter(move |guide| guide.does.contains(&item))
    }

    /// Every caution, in the order in which they are read.
    pub fn cautions(&self) -> &[Caution] {
        &self.cautions
    }

    /// Every value, in ascending order of number.
    pub fn values(&self) -> &[Value] {
        &self.values
    }

    /// The value with this number.
    pub fn value(&self, number: u32) -> Option<&Value> {
        self.values.iter().find(|value| value.number == number)
    }

    /// The keys of the cautions that a hazard calls for.
    pub fn called_for(&self, hazard: Hazard) -> &[String] {
        self.hazards.get(&hazard).map_or(&[], Vec::as_slice)
    }

    /// The cautions of a guide in the order in which they are read, with those that every guide has.
    pub fn cautions_of<'a>(&'a self, guide: &'a Guide) -> impl Iterator<Item = &'a Caution> {
        self.cautions.iter().filter(|caution| caution.always || guide.cautions.contains(&caution.key))
    }

    fn check(&self) -> Result<(), RulesError> {
        for (at, guide) in self.all.iter().enumerate() {
            if self.all[..at].iter().any(|other| other.key == guide.key) {
                return Err(wrong(&guide.key, "another guide has this key"));
            }
            self.check_one(guide).map_err(|problem| wrong(&guide.key, &problem))?;
        }
        Ok(())
    }

    fn check_one(&self, guide: &Guide) -> Result<(), String> {
        let called_for = guide.hazards.iter().flat_map(|&hazard| self.called_for(hazard));
        if let Some(lacking) = called_for.into_iter().find(|key| !guide.cautions.contains(key)) {
            return Err(format!("its hazards call for the caution '{lacking}'"));
        }
        let known = |key: &String| self.cautions.iter().any(|caution| caution.key == *key);
        if let Some(strange) = guide.cautions.iter().find(|key| !known(key)) {
            return Err(format!("'{strange}' is no caution"));
        }
        let other = |key: &String| *key != guide.key && self.by_key(key).is_some();
        match guide.then.iter().find(|key| !other(key)) {
            Some(strange) => Err(format!("'{strange}' is no other guide")),
            None => Ok(()),
        }
    }
}

#[cfg(test)]
#[path = "library_tests.rs"]
mod tests;
