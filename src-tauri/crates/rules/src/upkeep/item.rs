//! What an item of upkeep is.

use std::fmt;
use std::str::FromStr;

use units::HalfMonths;

use super::{Finding, Gauge, Range, Schedule, Site};
use crate::RulesError;
use crate::vehicle::{Condition, EngineKind, Equipment, Fitting, Vehicle};

/// Something that a car needs from time to time, as the catalogue has it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Item {
    /// Its number on cards and in entries, which never changes.
    pub number: u32,
    /// Its name in files, commands and the words, which never changes: small letters, digits and dashes.
    pub key: String,
    /// Which engines need it.
    pub engines: Engines,
    /// What else the car must have for it; a car of which that is not known counts as having it.
    pub only_if: Vec<Fitting>,
    /// What is done.
    pub action: Action,
    /// The numbers of the items that count as done with it.
    pub resets: Vec<u32>,
    /// The numbers of the looks whose findings call for it. What one of them found counts until this is done or a
    /// later look finds all well; a later look of which nothing is told does not end it. As long as it counts, the
    /// one work that lists it among its findings is due.
    pub answers: Vec<u32>,
    /// The number of the item with every service of which it is done at the latest.
    pub follows: Option<u32>,
    /// What ignoring it costs.
    pub stakes: Stakes,
    /// What must be opened up, drained or lifted for it.
    pub access: Option<Access>,
    /// How long it takes a practised amateur, in minutes.
    pub minutes: u16,
    /// The most days before its day on which it makes sense, where a season bounds that.
    pub most_early: Option<u32>,
    /// Whether it belongs in a workshop.
    pub workshop: bool,
    /// What can hurt someone at this work, beyond the usual care.
    pub cautions: Vec<Caution>,
    /// How often.
    pub timing: Timing<Range>,
    /// What makes the short end of the range hold.
    pub tightened_by: Vec<Tightener>,
    /// The findings that make it due at once.
    pub due_when: Vec<Finding>,
    /// What is found about it and makes another item due instead, by number: a look, where this one would not help.
    pub calls: Vec<(Finding, u32)>,
    /// What is measured to see whether it is due.
    pub gauge: Option<Gauge>,
    /// Where the limit of that measurement comes from; a row that has one names it.
    pub limit_source: Option<Source>,
    /// The kinds of part or fluid that have a range of their own.
    pub kinds: Vec<Kind>,
    /// Where the interval comes from.
    pub source: Source,
}

/// When an item comes round.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Timing<T> {
    /// Again and again.
    Every(Schedule<T>),
    /// Once after each time that one of these items, given by their numbers, was done.
    After {
        /// The items that call for it.
        items: Vec<u32>,
        /// How soon after them.
        within: T,
    },
    /// Only the owner, his handbook or local rules can say.
    Unset,
}

/// A kind of part or fluid that lasts for a time of its own, such as an iridium plug.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Kind {
    /// Its name in files and the words: small letters, digits and dashes.
    pub key: String,
    /// How long it lasts.
    pub every: Range,
    /// Where that comes from.
    pub source: Source,
}

/// What makes the short end of a range hold.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Tightener {
    /// How the car is driven.
    Driven(Condition),
    /// That the engine is turbocharged or highly tuned.
    Turbo,
    /// That nobody has said whether it is.
    MaybeTurbo,
}

/// What must be opened up, drained or lifted; work that shares it is done together.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Access {
    /// The car lifted.
    Lifted,
    /// The wheels off.
    WheelsOff,
    /// The way of the air into the engine.
    AirPath,
    /// Coils, leads and plugs.
    Ignition,
    /// Covers and belts at the front of the engine.
    FrontBelt,
    /// The coolant let out.
    Cooling,
    /// The fuel line opened.
    Fuel,
    /// Trim and boxes in the cabin.
    Cabin,
    /// Only the bonnet.
    Bonnet,
    /// The battery and what holds it.
    Battery,
    /// No tool but papers.
    Papers,
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
    /// Hybrids and electric cars.
    HighVoltage,
}

/// Why a car does not have something.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Missing {
    /// Engines of its kind have no such thing.
    Engine,
    /// It lacks these, at least one.
    Fittings(Vec<Fitting>),
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
    /// Attended to with papers: an inspection by the authorities, an insurance.
    Attend,
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
    /// What has to be without current before it is touched: sensors and the ignition.
    BatteryOff,
    /// A drive in traffic.
    OnTheRoad,
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
    /// Only the owner's own papers and local rules say.
    Owner,
}

impl Engines {
    /// Whether a car with this engine has it.
    pub const fn include(self, engine: EngineKind) -> bool {
        match self {
            Engines::Any => true,
            Engines::Combustion => engine.burns_fuel(),
            Engines::SparkIgnition => engine.has_spark_ignition(),
            Engines::Diesel => engine.burns_diesel(),
            Engines::HighVoltage => engine.has_high_voltage(),
        }
    }
}

impl Action {
    /// Whether it puts right what was found wrong, which a look or a test does not.
    pub const fn mends(self) -> bool {
        !matches!(self, Action::Inspect | Action::Test)
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
            Caution::BatteryOff => "battery-off",
            Caution::OnTheRoad => "on-the-road",
            Caution::Workshop => "workshop",
        }
    }
}

impl Stakes {
    /// Each of them, the least first; in entries each has its place here as its number, from 0.
    pub const ALL: [Stakes; 6] =
        [Stakes::Comfort, Stakes::Economy, Stakes::Repair, Stakes::Breakdown, Stakes::Engine, Stakes::Safety];

    /// Its number in entries, which never changes.
    pub const fn number(self) -> u8 {
        self as u8
    }

    /// The one with this number.
    pub fn from_number(number: u8) -> Option<Stakes> {
        Stakes::ALL.get(usize::from(number)).copied()
    }

    /// Its name in forms and the words.
    pub const fn key(self) -> &'static str {
        match self {
            Stakes::Comfort => "comfort",
            Stakes::Economy => "economy",
            Stakes::Repair => "repair",
            Stakes::Breakdown => "breakdown",
            Stakes::Engine => "engine",
            Stakes::Safety => "safety",
        }
    }

    /// The one with this key.
    pub fn from_key(key: &str) -> Option<Stakes> {
        Stakes::ALL.into_iter().find(|stakes| stakes.key() == key)
    }

    /// Whether leaving it can wreck the engine or hurt someone.
    pub fn are_grave(self) -> bool {
        self >= Stakes::Engine
    }
}

impl Tightener {
    /// What it is on this car: nothing where it does not hold.
    pub fn on(self, vehicle: &Vehicle) -> Option<Tightener> {
        match (self, vehicle.equipment.has(Fitting::Turbo)) {
            (Tightener::Driven(condition), _) => vehicle.conditions.has(condition).then_some(self),
            (Tightener::Turbo, Some(true)) => Some(Tightener::Turbo),
            // What is not known must not give the engine less care than it may need.
            (Tightener::Turbo | Tightener::MaybeTurbo, None) => Some(Tightener::MaybeTurbo),
            (Tightener::Turbo | Tightener::MaybeTurbo, _) => None,
        }
    }

    /// Its name in the words.
    pub const fn key(self) -> &'static str {
        match self {
            Tightener::Driven(condition) => condition.key(),
            Tightener::Turbo => Fitting::Turbo.key(),
            Tightener::MaybeTurbo => "turbo-unknown",
        }
    }
}

impl Access {
    /// Its name in the words.
    pub const fn key(self) -> &'static str {
        match self {
            Access::Lifted => "lifted",
            Access::WheelsOff => "wheels-off",
            Access::AirPath => "air-path",
            Access::Ignition => "ignition",
            Access::FrontBelt => "front-belt",
            Access::Cooling => "cooling",
            Access::Fuel => "fuel",
            Access::Cabin => "cabin",
            Access::Bonnet => "bonnet",
            Access::Battery => "battery",
            Access::Papers => "papers",
        }
    }
}

impl<T> Timing<T> {
    /// The same with each of its values put through `change`.
    pub fn map<U>(&self, change: impl FnMut(T) -> U) -> Timing<U>
    where
        T: Copy,
    {
        let mut change = change;
        match self {
            Timing::Every(schedule) => Timing::Every(schedule.map(change)),
            Timing::After { items, within } => {
                Timing::After { items: items.clone(), within: change(*within) }
            }
            Timing::Unset => Timing::Unset,
        }
    }
}

impl Item {
    /// Whether a car with this engine and equipment has it; what is not known of the equipment counts as
    /// there.
    pub fn is_for(&self, engine: EngineKind, equipment: Equipment) -> bool {
        self.missing(engine, equipment).is_none()
    }

    /// Why a car with this engine and equipment does not have it; `None` for one that has it.
    pub fn missing(&self, engine: EngineKind, equipment: Equipment) -> Option<Missing> {
        if !self.engines.include(engine) {
            return Some(Missing::Engine);
        }
        let lacks = |fitting: &Fitting| equipment.has(*fitting) == Some(false);
        let lacking: Vec<Fitting> = self.only_if.iter().copied().filter(lacks).collect();
        (!lacking.is_empty()).then_some(Missing::Fittings(lacking))
    }

    /// Whether it is a look or a top-up that belongs to a round of the car: short, and due every few weeks
    /// (an assumption of this program: at most 10 minutes, and at the least every three months).
    pub fn is_round(&self) -> bool {
        let often = |range: Range| range.long().time().is_some_and(|time| time <= HalfMonths::months(3));
        let every = match &self.timing {
            Timing::Every(schedule) => often(schedule.every),
            Timing::After { .. } | Timing::Unset => false,
        };
        every && self.minutes <= 10
    }

    /// Whether what another item calls for serves its purpose at once, and not only after some way.
    pub fn serves_at_once(&self) -> bool {
        matches!(&self.timing, Timing::After { within, .. } if within.is_single())
    }

    /// Where it is done: papers at an office, and in a workshop what belongs there.
    pub fn site(&self) -> Site {
        match (self.access, self.workshop) {
            (Some(Access::Papers), _) => Site::Office,
            (_, true) => Site::Workshop,
            (_, false) => Site::Home,
        }
    }

    /// The numbers of the items that this finding about it makes due instead.
    pub fn called_by(&self, finding: Finding) -> impl Iterator<Item = u32> {
        self.calls.iter().filter(move |(calling, _)| *calling == finding).map(|&(_, number)| number)
    }

    /// The kind of part or fluid with this key.
    pub fn kind(&self, key: &str) -> Option<&Kind> {
        self.kinds.iter().find(|kind| kind.key == key)
    }

    /// The cautions for this work on a car with this engine: what the work itself calls for, whatever the
    /// catalogue says of workshops, and the high voltage of a car that has any.
    pub fn cautions_for(&self, engine: EngineKind) -> Vec<Caution> {
        let workshop = self.workshop.then_some(Caution::Workshop);
        let touches_the_car = self.access != Some(Access::Papers);
        let voltage = (touches_the_car && engine.has_high_voltage()).then_some(Caution::HighVoltage);
        workshop.into_iter().chain(voltage).chain(self.cautions.iter().copied()).collect()
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

    #[test]
    fn stakes_have_a_number_and_a_key_each() {
        for stakes in Stakes::ALL {
            assert_eq!(Stakes::from_number(stakes.number()), Some(stakes));
            assert_eq!(Stakes::from_key(stakes.key()), Some(stakes));
        }
        assert_eq!((Stakes::from_number(6), Stakes::from_key("grave")), (None, None));
    }
}
