//! What a car is: its identification number, its engine, and how it is driven.

mod conditions;
mod engine;
mod equipment;
mod vin;

pub use conditions::{Condition, Conditions};
pub use engine::EngineKind;
pub use equipment::{Equipment, Fitting};
pub use vin::{CheckDigit, Vin};

use units::{Day, Distance, DistanceUnit};

/// What the rules need to know about one car.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Vehicle {
    /// What drives it.
    pub engine: EngineKind,
    /// The day of its first registration, where known.
    pub first_use: Option<Day>,
    /// Whether the book goes back to the first use, so that what does not stand in it was not done.
    ///
    /// Only then are intervals of things never done counted from new.
    pub known_from_new: bool,
    /// The day on which its book was begun; `None` counts as today. What was done later stands in it.
    pub kept_since: Option<Day>,
    /// The unit in which its instrument counts.
    pub unit: DistanceUnit,
    /// What it has and what it lacks.
    pub equipment: Equipment,
    /// How it is driven.
    pub conditions: Conditions,
    /// How far it goes in a year, as the owner states it.
    pub yearly: Option<Distance>,
}

impl Vehicle {
    /// The day on which everything was new, if the book goes back that far.
    pub fn new_on(&self) -> Option<Day> {
        self.first_use.filter(|_| self.known_from_new)
    }
}
