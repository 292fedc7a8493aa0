//! What can hurt someone at a job, and what is said of it before the first step.

use super::Origin;
use crate::upkeep::Engines;

/// Something said before the first step of a job that can hurt someone.
///
/// It defers to the owner's handbook, to local rules and to licensed practice. Its sentences are `caution-KEY-name`
/// and `caution-KEY` in the words.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Caution {
    /// Its name in files and the words: small letters, digits and dashes. The keys of
    /// [`upkeep::Caution`](crate::upkeep::Caution) are among them and mean the same.
    pub key: String,
    /// Which cars it concerns.
    pub engines: Engines,
    /// Whether it must be acknowledged by itself, and not in one go with the rest.
    pub one_by_one: bool,
    /// Whether every guide has it, whatever its hazards.
    pub always: bool,
    /// Who publishes it; at least one.
    pub sources: Vec<Origin>,
}

/// What can hurt someone at a job; which cautions it calls for stands in the table of cautions.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Hazard {
    /// Hot metal and hot oil.
    HotEngine,
    /// Hot coolant under pressure.
    HotCoolant,
    /// An exhaust hotter than in usual driving.
    HotExhaust,
    /// Hot glass that can burst.
    HotLamp,
    /// A car lifted off its wheels.
    RaisedCar,
    /// A car that could roll away.
    RollingCar,
    /// An engine that runs: its exhaust gas, its belts and fans.
    RunningEngine,
    /// Belts and fans that may start by themselves.
    MovingParts,
    /// Vapour of petrol, diesel or gas.
    FuelVapour,
    /// A fuel line under pressure.
    FuelPressure,
    /// The high-pressure side of a diesel.
    DieselInjection,
    /// Sensors, ignition and other live electrics.
    Electrics,
    /// Acid, gas and short circuits of a battery.
    Battery,
    /// An airbag or belt tensioner near the work.
    Airbag,
    /// Springs of suspension and brakes.
    Springs,
    /// A small sprung arm, such as that of a wiper.
    SpringArm,
    /// Dust of brake linings.
    BrakeDust,
    /// Brake fluid.
    BrakeFluid,
    /// Used oil.
    UsedOil,
    /// Used coolant.
    UsedCoolant,
    /// Drained or spilt fuel.
    UsedFuel,
    /// Cleaner in cans.
    SprayCleaner,
    /// Dirt and splashes.
    Dirt,
    /// A heavy load.
    Heavy,
    /// Driving on the road as a part of the job.
    PublicRoad,
}

impl Hazard {
    /// Every hazard.
    pub const ALL: [Hazard; 25] = [
        Hazard::HotEngine,
        Hazard::HotCoolant,
        Hazard::HotExhaust,
        Hazard::HotLamp,
        Hazard::RaisedCar,
        Hazard::RollingCar,
        Hazard::RunningEngine,
        Hazard::MovingParts,
        Hazard::FuelVapour,
        Hazard::FuelPressure,
        Hazard::DieselInjection,
        Hazard::Electrics,
        Hazard::Battery,
        Hazard::Airbag,
        Hazard::Springs,
        Hazard::SpringArm,
        Hazard::BrakeDust,
        Hazard::BrakeFluid,
        Hazard::UsedOil,
        Hazard::UsedCoolant,
        Hazard::UsedFuel,
        Hazard::SprayCleaner,
        Hazard::Dirt,
        Hazard::Heavy,
        Hazard::PublicRoad,
    ];

    /// Its name in the tables, and `hazard-KEY` in the words.
    pub const fn key(self) -> &'static str {
        match self {
            Hazard::HotEngine => "hot-engine",
            Hazard::HotCoolant => "hot-coolant",
            Hazard::HotExhaust => "hot-exhaust",
            Hazard::HotLamp => "hot-lamp",
            Hazard::RaisedCar => "raised-car",
            Hazard::RollingCar => "rolling-car",
            Hazard::RunningEngine => "running-engine",
            Hazard::MovingParts => "moving-parts",
            Hazard::FuelVapour => "fuel-vapour",
            Hazard::FuelPressure => "fuel-pressure",
            Hazard::DieselInjection => "diesel-injection",
            Hazard::Electrics => "electrics",
            Hazard::Battery => "battery",
            Hazard::Airbag => "airbag",
            Hazard::Springs => "springs",
            Hazard::SpringArm => "spring-arm",
            Hazard::BrakeDust => "brake-dust",
            Hazard::BrakeFluid => "brake-fluid",
            Hazard::UsedOil => "used-oil",
            Hazard::UsedCoolant => "used-coolant",
            Hazard::UsedFuel => "used-fuel",
            Hazard::SprayCleaner => "spray-cleaner",
            Hazard::Dirt => "dirt",
            Hazard::Heavy => "heavy",
            Hazard::PublicRoad => "public-road",
        }
    }

    /// The hazard with this key.
    pub fn from_key(key: &str) -> Option<Hazard> {
        Hazard::ALL.into_iter().find(|hazard| hazard.key() == key)
    }
}
