//! What the letter and the digits of a code say by themselves.

/// The part of the car that a code's letter stands for.
///
/// Bits 15 and 14 of the two bytes (SAE J2012, ISO 15031-6), in the order of their values.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum System {
    /// P: engine, gearbox and drive.
    Powertrain,
    /// C: brakes, steering, suspension.
    Chassis,
    /// B: airbags, locks, seats, climate.
    Body,
    /// U: the network between control units.
    Network,
}

/// Who says what a code means.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Origin {
    /// The standard: it means the same on every car.
    Standard,
    /// The maker of the car: the same code means something else on another make.
    Maker,
    /// Nobody yet.
    Reserved,
}

/// What a powertrain code is probably about, by its third character.
///
/// A hint only: since its edition of 2016 SAE J2012 no longer groups new codes by area.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Area {
    /// Fuel and air metering, with its auxiliary emission controls.
    Mixture,
    /// Ignition and misfire.
    Ignition,
    /// Auxiliary emission controls.
    Emission,
    /// Speed, idle and auxiliary inputs.
    Idle,
    /// The computer and what it drives.
    Computer,
    /// The gearbox.
    Gearbox,
    /// Control modules, and what goes in and out of them.
    Modules,
    /// The electric drive of a hybrid or electric car.
    ElectricDrive,
}

impl System {
    /// Every system, in the order of its bits.
    pub const ALL: [System; 4] = [System::Powertrain, System::Chassis, System::Body, System::Network];

    /// The letter that opens its codes.
    pub const fn letter(self) -> char {
        match self {
            System::Powertrain => 'P',
            System::Chassis => 'C',
            System::Body => 'B',
            System::Network => 'U',
        }
    }

    /// Its name in the words, as in `code-system-powertrain`.
    pub const fn key(self) -> &'static str {
        match self {
            System::Powertrain => "powertrain",
            System::Chassis => "chassis",
            System::Body => "body",
            System::Network => "network",
        }
    }
}

impl Origin {
    /// Every origin.
    pub const ALL: [Origin; 3] = [Origin::Standard, Origin::Maker, Origin::Reserved];

    /// Its name in the words, as in `code-origin-maker`.
    pub const fn key(self) -> &'static str {
        match self {
            Origin::Standard => "standard",
            Origin::Maker => "maker",
            Origin::Reserved => "reserved",
        }
    }
}

impl Area {
    /// Every area.
    pub const ALL: [Area; 8] = [
        Area::Mixture,
        Area::Ignition,
        Area::Emission,
        Area::Idle,
        Area::Computer,
        Area::Gearbox,
        Area::Modules,
        Area::ElectricDrive,
    ];

    /// Its name in the words, as in `code-area-mixture`.
    pub const fn key(self) -> &'static str {
        match self {
            Area::Mixture => "mixture",
            Area::Ignition => "ignition",
            Area::Emission => "emission",
            Area::Idle => "idle",
            Area::Computer => "computer",
            Area::Gearbox => "gearbox",
            Area::Modules => "modules",
            Area::ElectricDrive => "electric-drive",
        }
    }
}
