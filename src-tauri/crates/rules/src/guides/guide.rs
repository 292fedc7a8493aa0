//! What a guide is.

use super::Hazard;
use crate::upkeep::Engines;
use crate::vehicle::{EngineKind, Equipment, Fitting};

/// How a job is done by somebody who does it himself.
///
/// Its sentences are `guide-KEY` and `guide-KEY-what` in the words, and those of its parts as [`Guide::word`] says.
/// No list is empty but `only_if`, `supplies`, `then` and one of `does` and `finds`.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Guide {
    /// Its name in files, commands and the words, which never changes: small letters, digits and dashes.
    pub key: String,
    /// Which engines it is for.
    pub engines: Engines,
    /// What else the car must have for it; a car of which that is not known counts as having it.
    pub only_if: Vec<Fitting>,
    /// The numbers of the catalogue's items that a visit writes as done with this job.
    pub does: Vec<u32>,
    /// The numbers of the items about which it may find something, without their being done.
    pub finds: Vec<u32>,
    /// How long it takes a practised amateur, in minutes, 5 to 480.
    pub minutes: u16,
    /// What has to be at hand: `tool-KEY` in the words.
    pub tools: Vec<String>,
    /// What is used up: `supply-KEY` in the words.
    pub supplies: Vec<String>,
    /// What can hurt someone.
    pub hazards: Vec<Hazard>,
    /// The keys of what is said of that; at least what the hazards call for.
    pub cautions: Vec<String>,
    /// When to leave it to a workshop.
    pub not: Vec<String>,
    /// The steps in their order.
    pub steps: Vec<Step>,
    /// What to look at before closing.
    pub look: Vec<String>,
    /// What may feel odd afterwards.
    pub after: Vec<String>,
    /// What becomes of what is left over: `disposal-KEY` in the words.
    pub disposal: Vec<String>,
    /// The keys of the guides that belong after it.
    pub then: Vec<String>,
}

/// A step of a guide.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Step {
    /// Its name within the guide, by which progress is kept.
    pub key: String,
    /// Which engines have it.
    pub engines: Engines,
    /// What else the car must have for it.
    pub only_if: Vec<Fitting>,
    /// The numbers of the values to be shown with it.
    pub values: Vec<u32>,
}

/// A part of a guide that has sentences of its own.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Part {
    /// When to leave it to a workshop.
    Not,
    /// A step.
    Step,
    /// What to look at before closing.
    Look,
    /// What may feel odd afterwards.
    After,
}

impl Guide {
    /// Whether it is for a car with this engine and equipment; what is not known of the equipment counts as there.
    pub fn is_for(&self, engine: EngineKind, equipment: Equipment) -> bool {
        has(self.engines, &self.only_if, engine, equipment)
    }

    /// The id in the words of a sentence of one of its parts, such as `guide-oil-and-filter-step-drain`.
    pub fn word(&self, part: Part, key: &str) -> String {
        format!("guide-{}-{}-{key}", self.key, part.key())
    }
}

impl Step {
    /// Whether a car with this engine and equipment has it; what is not known of the equipment counts as there.
    pub fn is_for(&self, engine: EngineKind, equipment: Equipment) -> bool {
        has(self.engines, &self.only_if, engine, equipment)
    }
}

impl Part {
    /// Its name in the tables and the words.
    pub const fn key(self) -> &'static str {
        match self {
            Part::Not => "not",
            Part::Step => "step",
            Part::Look => "look",
            Part::After => "after",
        }
    }
}

fn has(engines: Engines, only_if: &[Fitting], engine: EngineKind, equipment: Equipment) -> bool {
    engines.include(engine) && only_if.iter().all(|&fitting| equipment.has(fitting) != Some(false))
}
