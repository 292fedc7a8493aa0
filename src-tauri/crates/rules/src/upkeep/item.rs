//! What an item of upkeep is.

use std::fmt;
use std::str::FromStr;

use super::{Range, Schedule};
use crate::RulesError;
use crate::vehicle::{Condition, EngineKind};

/// Something that a car needs from time to time, as the catalogue has it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Item {
    /// Its number on cards and in entries, which never changes.
    pub number: u32,
    /// Its name in files, commands and the words, which never changes: small letters, digits and dashes.
    pub key: String,
    /// Which engines need it.
    pub engines: Engines,
    /// What is done.
    pub action: Action,
    /// What ignoring it costs.
    pub stakes: Stakes,
    /// Whether it belongs in a workshop.
    pub workshop: bool,
    /// What can hurt someone at this work, beyond the usual care.
    pub cautions: Vec<Caution>,
    /// How often.
    pub schedule: Schedule<Range>,
    /// What makes the short end of the range hold.
    pub tightened_by: Vec<Condition>,
    /// Where the interval comes from.
    pub source: Source,
}

/// An item named in a visit, a plan or on a card.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum ItemRef {
    /// The number of a catalogue item; one that this version does not know is possible.
    Catalogue(u32),
    /// An item of the owner's own.
    Own(OwnName),
}

/// The name of an item of the owner's own: 1 to 80 characters on one line, without spaces around them.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct OwnName(String);

/// Which engines an item concerns.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Engines {
    /// Every car has it.
    Any,
    /// Whatever burns a fuel.
    Combustion,
    /// Petrol and gas.
    SparkIgnition,
    /// Diesel.
    Diesel,
}

/// What is done.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Action {
    /// Looked at.
    Inspect,
    /// Cleaned.
    Clean,
    /// Filled up.
    TopUp,
    /// Let out.
    Drain,
    /// Measured.
    Test,
    /// Renewed.
    Replace,
}

/// What can hurt someone at work on a car.
///
/// A caution defers to the owner's handbook, to local rules and to licensed practice.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Caution {
    /// Hot metal, hot oil, hot coolant.
    HotEngine,
    /// A car that is lifted.
    Jacking,
    /// Fuel and its vapour.
    Fuel,
    /// Acid, gas and short circuits.
    Battery,
    /// Coolant, fuel or refrigerant under pressure.
    Pressure,
    /// Belts, fans and springs.
    MovingParts,
    /// Exhaust gas.
    Fumes,
    /// Dust of brakes and clutches.
    BrakeDust,
    /// Used oil, coolant and fuel.
    UsedFluids,
    /// More than 60 V direct current in hybrid and electric cars.
    HighVoltage,
    /// Work that belongs in a workshop.
    Workshop,
}

/// What ignoring an item costs, from the least to what outranks everything.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Stakes {
    /// Comfort.
    Comfort,
    /// Fuel and power.
    Economy,
    /// A repair that could have been avoided.
    Repair,
    /// Being left standing.
    Breakdown,
    /// The engine.
    Engine,
    /// Someone's safety.
    Safety,
}

/// Where a value of the catalogue comes from.
#[derive(Debug, Clone, PartialEq, Eq, Hash)]
pub enum Source {
    /// A regulation, named.
    Regulation(String),
    /// A maker's or another publication, named.
    Published(String),
    /// What the trade goes by, without one source.
    CommonPractice,
}

impl Engines {
    /// Whether a car with this engine has it.
    pub const fn include(self, engine: EngineKind) -> bool {
        match self {
            Engines::Any => true,
            Engines::Combustion => engine.burns_fuel(),
            Engines::SparkIgnition => engine.has_spark_ignition(),
            Engines::Diesel => engine.burns_diesel(),
        }
    }
}

impl Caution {
    /// Its name in the words.
    pub const fn key(self) -> &'static str {
        match self {
            Caution::HotEngine => "hot-engine",
            Caution::Jacking => "jacking",
            Caution::Fuel => "fuel",
            Caution::Battery => "battery",
            Caution::Pressure => "pressure",
            Caution::MovingParts => "moving-parts",
            Caution::Fumes => "fumes",
            Caution::BrakeDust => "brake-dust",
            Caution::UsedFluids => "used-fluids",
            Caution::HighVoltage => "high-voltage",
            Caution::Workshop => "workshop",
        }
    }
}

impl Item {
    /// The cautions for this work on a car with this engine: what the work itself calls for, whatever the
    /// catalogue says of workshops, and the high voltage of a car that has any.
    pub fn cautions_for(&self, engine: EngineKind) -> Vec<Caution> {
        let workshop = self.workshop.then_some(Caution::Workshop);
        let voltage = engine.has_high_voltage().then_some(Caution::HighVoltage);
        workshop.into_iter().chain(voltage).chain(self.cautions.iter().copied()).collect()
    }
}

impl Stakes {
    /// Whether leaving it can wreck the engine or hurt someone.
    pub fn are_grave(self) -> bool {
        self >= Stakes::Engine
    }
}

impl OwnName {
    /// The longest name, in characters.
    pub const LONGEST: usize = 80;

    /// The name as typed.
    pub fn parse(text: &str) -> Result<OwnName, RulesError> {
        let name = text.trim();
        let fits = (1..=OwnName::LONGEST).contains(&name.chars().count());
        if fits && !name.contains(char::is_control) {
            Ok(OwnName(name.to_owned()))
        } else {
            Err(RulesError::OwnName)
        }
    }

    /// The name.
    pub fn as_str(&self) -> &str {
        &self.0
    }
}

impl FromStr for OwnName {
    type Err = RulesError;

    fn from_str(text: &str) -> Result<OwnName, RulesError> {
        OwnName::parse(text)
    }
}

impl fmt::Display for OwnName {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;

    #[test]
    fn a_name_of_ones_own_is_one_line_of_up_to_eighty_characters() {
        assert_eq!(OwnName::parse("  Roof hinge, grease ").unwrap().as_str(), "Roof hinge, grease");
        assert!(OwnName::parse(&"ü".repeat(80)).is_ok());
        for wrong in ["", "   ", "two\nlines", "a tab\there", &"x".repeat(81)] {
            assert_eq!(OwnName::parse(wrong), Err(RulesError::OwnName), "{wrong:?}");
        }
    }

    #[test]
    fn safety_outranks_the_engine_and_both_are_grave() {
        assert!(Stakes::Safety > Stakes::Engine);
        assert!(Stakes::Safety.are_grave() && Stakes::Engine.are_grave());
        assert!(!Stakes::Breakdown.are_grave());
    }
}
