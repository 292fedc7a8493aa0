//! Readiness: which of its own tests a car has finished since its codes were last cleared.

/// How the engine lights its fuel.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Ignition {
    /// By spark.
    Spark,
    /// By compression.
    Compression,
}

/// A test that the car runs on itself.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Monitor {
    /// Misfire.
    Misfire,
    /// Fuel system.
    FuelSystem,
    /// Every other electrical part.
    Components,
    /// Catalytic converter.
    Catalyst,
    /// Heated catalytic converter.
    HeatedCatalyst,
    /// Fuel vapour system.
    Evaporative,
    /// Secondary air.
    SecondaryAir,
    /// Refrigerant of the air conditioning; in later editions of the standard the petrol particulate filter.
    RefrigerantOrFilter,
    /// Oxygen sensors.
    OxygenSensor,
    /// Heaters of the oxygen sensors.
    OxygenHeater,
    /// Exhaust gas recirculation, variable valve timing, or both.
    ExhaustRecirculation,
    /// Catalytic converter for unburnt hydrocarbons.
    OxidationCatalyst,
    /// Treatment of nitrogen oxides.
    NitrogenOxides,
    /// Boost pressure.
    BoostPressure,
    /// Exhaust gas sensors.
    ExhaustSensor,
    /// Diesel particulate filter.
    ParticulateFilter,
}

/// The four data bytes of service 01, parameter 01 (SAE J1979, ISO 15031-5).
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Readiness([u8; 4]);

/// The tests that run all the time, by their bit in byte B; four bits higher a 1 says that it is not
/// finished.
const CONTINUOUS: [Monitor; 3] = [Monitor::Misfire, Monitor::FuelSystem, Monitor::Components];

/// The tests of an engine with spark ignition, by their bit in bytes C and D.
const SPARK: [Option<Monitor>; 8] = [
    Some(Monitor::Catalyst),
    Some(Monitor::HeatedCatalyst),
    Some(Monitor::Evaporative),
    Some(Monitor::SecondaryAir),
    Some(Monitor::RefrigerantOrFilter),
    Some(Monitor::OxygenSensor),
    Some(Monitor::OxygenHeater),
    Some(Monitor::ExhaustRecirculation),
];

/// The tests of an engine with compression ignition; two bits are reserved.
const COMPRESSION: [Option<Monitor>; 8] = [
    Some(Monitor::OxidationCatalyst),
    Some(Monitor::NitrogenOxides),
    None,
    Some(Monitor::BoostPressure),
    None,
    Some(Monitor::ExhaustSensor),
    Some(Monitor::ParticulateFilter),
    Some(Monitor::ExhaustRecirculation),
];

impl Readiness {
    /// From the data bytes A to D.
    pub const fn from_bytes(bytes: [u8; 4]) -> Readiness {
        Readiness(bytes)
    }

    /// The data bytes A to D.
    pub const fn bytes(self) -> [u8; 4] {
        self.0
    }

    /// Whether the control unit has the engine lamp lit.
    pub const fn lamp(self) -> bool {
        self.0[0] & 0x80 != 0
    }

    /// How many confirmed codes the control unit counts, 0 to 127.
    pub const fn codes(self) -> u8 {
        self.0[0] & 0x7F
    }

    /// How the engine lights its fuel, which says what bytes C and D mean.
    pub const fn ignition(self) -> Ignition {
        if self.0[1] & 0x08 == 0 { Ignition::Spark } else { Ignition::Compression }
    }

    /// Every test that this car has, each with whether it is finished, in the order of the bits.
    pub fn monitors(self) -> Vec<(Monitor, bool)> {
        let [_, b, c, d] = self.0;
        let table = match self.ignition() {
            Ignition::Spark => SPARK,
            Ignition::Compression => COMPRESSION,
        };
        let continuous = CONTINUOUS.into_iter().map(Some);
        let rows = listed(continuous, b, b >> 4).chain(listed(table, c, d));
        rows.collect()
    }

    /// The tests that are not finished, in the order of the bits.
    pub fn unfinished(self) -> Vec<Monitor> {
        let open = self.monitors().into_iter().filter(|&(_, finished)| !finished);
        open.map(|(monitor, _)| monitor).collect()
    }

    /// Whether every test that this car has is finished.
    pub fn is_complete(self) -> bool {
        self.unfinished().is_empty()
    }

    /// How many unfinished tests an inspection in the United States lets pass, by model year: two from 1996
    /// to 2000 and one from 2001. `None` before 1996, when cars had no such tests.
    ///
    /// 66 FR 18156 and 40 CFR 85.2222, the numbers from memory. Other countries, states and engine kinds have
    /// rules of their own.
    pub const fn unfinished_allowed(model_year: u16) -> Option<usize> {
        match model_year {
            0..=1995 => None,
            1996..=2000 => Some(2),
            _ => Some(1),
        }
    }
}

/// The tests whose bit in `has` is set, with whether the one in `open` is not.
fn listed(
    monitors: impl IntoIterator<Item = Option<Monitor>>,
    has: u8,
    open: u8,
) -> impl Iterator<Item = (Monitor, bool)> {
    let bits = monitors.into_iter().enumerate();
    bits.filter_map(move |(bit, monitor)| {
        let set = |byte: u8| byte >> bit & 1 == 1;
        monitor.filter(|_| set(has)).map(|monitor| (monitor, !set(open)))
    })
}

impl Monitor {
    /// Every test.
    pub const ALL: [Monitor; 16] = [
        Monitor::Misfire,
        Monitor::FuelSystem,
        Monitor::Components,
        Monitor::Catalyst,
        Monitor::HeatedCatalyst,
        Monitor::Evaporative,
        Monitor::SecondaryAir,
        Monitor::RefrigerantOrFilter,
        Monitor::OxygenSensor,
        Monitor::OxygenHeater,
        Monitor::ExhaustRecirculation,
        Monitor::OxidationCatalyst,
        Monitor::NitrogenOxides,
        Monitor::BoostPressure,
        Monitor::ExhaustSensor,
        Monitor::ParticulateFilter,
    ];

    /// Its name in the words, as in `code-monitor-misfire`.
    pub const fn key(self) -> &'static str {
        match self {
            Monitor::Misfire => "misfire",
            Monitor::FuelSystem => "fuel-system",
            Monitor::Components => "components",
            Monitor::Catalyst => "catalyst",
            Monitor::HeatedCatalyst => "heated-catalyst",
            Monitor::Evaporative => "evaporative",
            Monitor::SecondaryAir => "secondary-air",
            Monitor::RefrigerantOrFilter => "refrigerant-or-filter",
            Monitor::OxygenSensor => "oxygen-sensor",
            Monitor::OxygenHeater => "oxygen-heater",
            Monitor::ExhaustRecirculation => "exhaust-recirculation",
            Monitor::OxidationCatalyst => "oxidation-catalyst",
            Monitor::NitrogenOxides => "nitrogen-oxides",
            Monitor::BoostPressure => "boost-pressure",
            Monitor::ExhaustSensor => "exhaust-sensor",
            Monitor::ParticulateFilter => "particulate-filter",
        }
    }
}

#[cfg(test)]
#[path = "readiness_tests.rs"]
mod tests;
