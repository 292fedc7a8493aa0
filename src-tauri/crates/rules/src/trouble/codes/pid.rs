//! The values that a control unit tells of the moment (service 01) and of a freeze frame (service 02).

use units::Distance;

use crate::upkeep::Milli;

/// A value that a control unit tells, by its parameter of SAE J1979 (ISO 15031-5).
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Pid {
    /// 04: load of the engine, in percent of what it could take in.
    Load,
    /// 05: coolant.
    Coolant,
    /// 06: short-term fuel trim, bank 1; above 0 fuel is being added, because the mixture was found lean.
    ShortTrim1,
    /// 07: long-term fuel trim, bank 1.
    LongTrim1,
    /// 08: short-term fuel trim, bank 2.
    ShortTrim2,
    /// 09: long-term fuel trim, bank 2.
    LongTrim2,
    /// 0A: fuel pressure above that of the air around.
    FuelPressure,
    /// 0B: absolute pressure in the intake manifold.
    ManifoldPressure,
    /// 0C: engine speed.
    EngineSpeed,
    /// 0D: speed of the car.
    Speed,
    /// 0E: ignition advance of the first cylinder before top dead centre.
    Advance,
    /// 0F: air drawn in.
    IntakeAir,
    /// 10: mass of air drawn in.
    AirFlow,
    /// 11: throttle.
    Throttle,
    /// 1F: time since the engine was started.
    RunTime,
    /// 21: distance with the engine lamp lit.
    DistanceWithLamp,
    /// 23: pressure in the fuel rail above that of the air around.
    RailPressure,
    /// 2F: fuel in the tank.
    FuelLevel,
    /// 31: distance since codes were cleared.
    DistanceSinceClearing,
    /// 33: pressure of the air around.
    Barometer,
    /// 42: voltage at the control unit.
    Voltage,
    /// 46: air around.
    OutsideAir,
    /// 4D: time with the engine lamp lit.
    TimeWithLamp,
    /// 4E: time since codes were cleared.
    TimeSinceClearing,
    /// 5C: engine oil.
    OilTemperature,
    /// A6: odometer.
    Odometer,
}

/// The unit of a value.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Unit {
    /// Percent.
    Percent,
    /// Degrees Celsius.
    Celsius,
    /// Kilopascals.
    Kilopascal,
    /// Revolutions a minute.
    Rpm,
    /// Kilometres an hour.
    KilometresAnHour,
    /// Degrees of crankshaft.
    Degrees,
    /// Grams a second.
    GramsASecond,
    /// Seconds.
    Seconds,
    /// Minutes.
    Minutes,
    /// Kilometres.
    Kilometres,
    /// Volts.
    Volts,
}

/// A value as it was told.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Value {
    /// What it is.
    pub pid: Pid,
    /// In thousandths of its unit, rounded to the nearest.
    pub value: Milli,
}

/// How a value is coded: the unsigned number of `bytes` bytes, high byte first, times `times`, divided by
/// `over`, plus `plus`, is thousandths of the unit.
struct Coding {
    number: u8,
    bytes: usize,
    times: i64,
    over: i64,
    plus: i64,
    unit: Unit,
    key: &'static str,
}

const fn coding(number: u8, bytes: usize, scale: (i64, i64, i64), unit: Unit, key: &'static str) -> Coding {
    Coding { number, bytes, times: scale.0, over: scale.1, plus: scale.2, unit, key }
}

impl Pid {
    /// Every value, in ascending order of its parameter.
    pub const ALL: [Pid; 26] = [
        Pid::Load,
        Pid::Coolant,
        Pid::ShortTrim1,
        Pid::LongTrim1,
        Pid::ShortTrim2,
        Pid::LongTrim2,
        Pid::FuelPressure,
        Pid::ManifoldPressure,
        Pid::EngineSpeed,
        Pid::Speed,
        Pid::Advance,
        Pid::IntakeAir,
        Pid::AirFlow,
        Pid::Throttle,
        Pid::RunTime,
        Pid::DistanceWithLamp,
        Pid::RailPressure,
        Pid::FuelLevel,
        Pid::DistanceSinceClearing,
        Pid::Barometer,
        Pid::Voltage,
        Pid::OutsideAir,
        Pid::TimeWithLamp,
        Pid::TimeSinceClearing,
        Pid::OilTemperature,
        Pid::Odometer,
    ];

    /// The number of its parameter.
    pub const fn number(self) -> u8 {
        self.coding().number
    }

    /// The value of this parameter; `None` for one that is not read here.
    pub fn from_number(number: u8) -> Option<Pid> {
        Pid::ALL.into_iter().find(|pid| pid.number() == number)
    }

    /// How many data bytes it has.
    pub const fn bytes(self) -> usize {
        self.coding().bytes
    }

    /// The unit of its value.
    pub const fn unit(self) -> Unit {
        self.coding().unit
    }

    /// Its name in the words, as in `code-value-engine-speed`.
    pub const fn key(self) -> &'static str {
        self.coding().key
    }

    /// Its value from its data bytes, of which there must be as many as it has.
    pub fn read(self, data: &[u8]) -> Option<Value> {
        let Coding { bytes, times, over, plus, .. } = self.coding();
        let raw = (data.len() == bytes)
            .then(|| data.iter().fold(0_i64, |raw, &byte| raw << 8 | i64::from(byte)))?;
        // Rounded to the nearest; neither the raw number nor its scale is below 0.
        let scaled = (raw * times * 2 + over) / (over * 2);
        Some(Value { pid: self, value: Milli(scaled + plus) })
    }

    /// The formulas of SAE J1979, as reproduced in public tables; those of 23, 2F and above from memory.
    const fn coding(self) -> Coding {
        const PERCENT: (i64, i64, i64) = (100_000, 255, 0);
        const TRIM: (i64, i64, i64) = (100_000, 128, -100_000);
        const WHOLE: (i64, i64, i64) = (1_000, 1, 0);
        const TEMPERATURE: (i64, i64, i64) = (1_000, 1, -40_000);
        match self {
            Pid::Load => coding(0x04, 1, PERCENT, Unit::Percent, "load"),
            Pid::Coolant => coding(0x05, 1, TEMPERATURE, Unit::Celsius, "coolant"),
            Pid::ShortTrim1 => coding(0x06, 1, TRIM, Unit::Percent, "short-trim-1"),
            Pid::LongTrim1 => coding(0x07, 1, TRIM, Unit::Percent, "long-trim-1"),
            Pid::ShortTrim2 => coding(0x08, 1, TRIM, Unit::Percent, "short-trim-2"),
            Pid::LongTrim2 => coding(0x09, 1, TRIM, Unit::Percent, "long-trim-2"),
            Pid::FuelPressure => coding(0x0A, 1, (3_000, 1, 0), Unit::Kilopascal, "fuel-pressure"),
            Pid::ManifoldPressure => coding(0x0B, 1, WHOLE, Unit::Kilopascal, "manifold-pressure"),
            Pid::EngineSpeed => coding(0x0C, 2, (250, 1, 0), Unit::Rpm, "engine-speed"),
            Pid::Speed => coding(0x0D, 1, WHOLE, Unit::KilometresAnHour, "speed"),
            Pid::Advance => coding(0x0E, 1, (500, 1, -64_000), Unit::Degrees, "advance"),
            Pid::IntakeAir => coding(0x0F, 1, TEMPERATURE, Unit::Celsius, "intake-air"),
            Pid::AirFlow => coding(0x10, 2, (10, 1, 0), Unit::GramsASecond, "air-flow"),
            Pid::Throttle => coding(0x11, 1, PERCENT, Unit::Percent, "throttle"),
            Pid::RunTime => coding(0x1F, 2, WHOLE, Unit::Seconds, "run-time"),
            Pid::DistanceWithLamp => coding(0x21, 2, WHOLE, Unit::Kilometres, "distance-with-lamp"),
            Pid::RailPressure => coding(0x23, 2, (10_000, 1, 0), Unit::Kilopascal, "rail-pressure"),
            Pid::FuelLevel => coding(0x2F, 1, PERCENT, Unit::Percent, "fuel-level"),
            Pid::DistanceSinceClearing => coding(0x31, 2, WHOLE, Unit::Kilometres, "distance-since-clearing"),
            Pid::Barometer => coding(0x33, 1, WHOLE, Unit::Kilopascal, "barometer"),
            Pid::Voltage => coding(0x42, 2, (1, 1, 0), Unit::Volts, "voltage"),
            Pid::OutsideAir => coding(0x46, 1, TEMPERATURE, Unit::Celsius, "outside-air"),
            Pid::TimeWithLamp => coding(0x4D, 2, WHOLE, Unit::Minutes, "time-with-lamp"),
            Pid::TimeSinceClearing => coding(0x4E, 2, WHOLE, Unit::Minutes, "time-since-clearing"),
            Pid::OilTemperature => coding(0x5C, 1, TEMPERATURE, Unit::Celsius, "oil-temperature"),
            Pid::Odometer => coding(0xA6, 4, (100, 1, 0), Unit::Kilometres, "odometer"),
        }
    }
}

/// How many data bytes a parameter has whose value is not read here, so that what follows it can be. From
/// memory.
pub(super) const fn skipped(number: u8) -> Option<usize> {
    match number {
        // Which parameters there are; the state of the tests in this drive.
        0x00 | 0x20 | 0x40 | 0x41 | 0x60 | 0x80 | 0xA0 => Some(4),
        // State of the fuel system; oxygen sensors; ratio of air to fuel asked for.
        0x03 | 0x14..=0x1B | 0x44 => Some(2),
        0x12 | 0x13 | 0x1C..=0x1E | 0x2C | 0x2E | 0x30 | 0x45 | 0x47..=0x4C | 0x51 => Some(1),
        _ => None,
    }
}

impl Unit {
    /// The symbol behind a number.
    pub const fn symbol(self) -> &'static str {
        match self {
            Unit::Percent => "%",
            Unit::Celsius => "°C",
            Unit::Kilopascal => "kPa",
            Unit::Rpm => "rpm",
            Unit::KilometresAnHour => "km/h",
            Unit::Degrees => "°",
            Unit::GramsASecond => "g/s",
            Unit::Seconds => "s",
            Unit::Minutes => "min",
            Unit::Kilometres => "km",
            Unit::Volts => "V",
        }
    }
}

impl Value {
    /// A value in kilometres as a distance, exactly; `None` for any other.
    pub fn distance(self) -> Option<Distance> {
        (self.pid.unit() == Unit::Kilometres).then(|| Distance::from_millimetres(self.value.0 * 1_000))
    }
}

#[cfg(test)]
#[path = "pid_tests.rs"]
mod tests;
