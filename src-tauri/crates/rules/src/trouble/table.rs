//! What the trade knows of troubles: the tables, read once.

use std::sync::OnceLock;

use super::kinds::Bands;
use super::tables::Tables;
use super::{Cause, Check, Symptom, Tool};
use crate::RulesError;
use crate::rows::wrong;
use crate::upkeep::Catalogue;
use crate::vehicle::Vehicle;

/// What the trade knows of troubles: symptoms, causes, and checks, each in the order of its table.
#[derive(Debug, Clone, PartialEq)]
pub struct Trouble {
    pub(super) symptoms: Vec<Symptom>,
    pub(super) causes: Vec<Cause>,
    pub(super) checks: Vec<Check>,
    pub(super) tools: Vec<Tool>,
    /// The minutes of each opening, in the order of [`super::Opening::ALL`].
    pub(super) openings: Vec<f64>,
    pub(super) bands: Bands,
}

impl Trouble {
    /// The tables that come with the program, read once.
    pub fn shipped() -> Result<&'static Trouble, RulesError> {
        static SHIPPED: OnceLock<Result<Trouble, RulesError>> = OnceLock::new();
        let shipped = SHIPPED.get_or_init(|| {
            let symptoms = include_str!("../../data/symptoms.toml");
            let causes = include_str!("../../data/causes.toml");
            let checks = include_str!("../../data/checks.toml");
            Trouble::parse(symptoms, causes, checks, Catalogue::shipped()?)
        });
        shipped.as_ref().map_err(Clone::clone)
    }

    /// Reads the three tables; [`RulesError::Catalogue`] names the table and the row that is wrong.
    pub fn parse(
        symptoms: &str,
        causes: &str,
        checks: &str,
        catalogue: &Catalogue,
    ) -> Result<Trouble, RulesError> {
        let read = Tables {
            symptoms: toml::from_str(symptoms).map_err(|error| wrong("symptoms", error.message()))?,
            causes: toml::from_str(causes).map_err(|error| wrong("causes", error.message()))?,
            checks: toml::from_str(checks).map_err(|error| wrong("checks", error.message()))?,
        };
        read.meaning(catalogue)
    }

    /// Every symptom.
    pub fn symptoms(&self) -> &[Symptom] {
        &self.symptoms
    }

    /// The symptoms that this car can show, in the order in which they are asked.
    pub fn symptoms_of<'a>(&'a self, vehicle: &'a Vehicle) -> impl Iterator<Item = &'a Symptom> {
        self.symptoms.iter().filter(|symptom| symptom.is_for(vehicle))
    }

    /// Every cause.
    pub fn causes(&self) -> &[Cause] {
        &self.causes
    }

    /// Every check.
    pub fn checks(&self) -> &[Check] {
        &self.checks
    }

    /// Every tool.
    pub fn tools(&self) -> &[Tool] {
        &self.tools
    }

    /// The symptom with this key.
    pub fn symptom(&self, key: &str) -> Option<&Symptom> {
        self.symptoms.iter().find(|symptom| symptom.key == key)
    }

    /// The cause with this key.
    pub fn cause(&self, key: &str) -> Option<&Cause> {
        self.causes.iter().find(|cause| cause.key == key)
    }

    /// The check with this key.
    pub fn check(&self, key: &str) -> Option<&Check> {
        self.checks.iter().find(|check| check.key == key)
    }

    /// The symptoms that a cause brings about, with the chance that it alone does.
    pub fn shown_by<'a>(&'a self, cause: &'a Cause) -> impl Iterator<Item = (&'a Symptom, f64)> {
        cause.shows.iter().filter_map(|&(place, chance)| Some((self.symptoms.get(place)?, chance)))
    }

    /// The checks that can find a cause, with the chance that they do when it is the cause.
    pub fn finding<'a>(&'a self, cause: &'a Cause) -> impl Iterator<Item = (&'a Check, f64)> {
        cause.found_by.iter().filter_map(|&(place, chance)| Some((self.checks.get(place)?, chance)))
    }
}
