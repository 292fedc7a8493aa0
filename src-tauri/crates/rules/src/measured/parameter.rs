//! What can be read, in which unit, and within which limits.

use crate::upkeep::Milli;

/// A value that a scan tool or a meter shows.
///
/// Trims, coolant temperature and air flow are parameters 05 to 10 of SAE J1979 (ISO 15031-5).
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Parameter {
    /// Short-term fuel trim of the first bank, in percent; positive where fuel is being added.
    ShortTrim1,
    /// Long-term fuel trim of the first bank, in percent.
    LongTrim1,
    /// Short-term fuel trim of the second bank, in percent.
    ShortTrim2,
    /// Long-term fuel trim of the second bank, in percent.
    LongTrim2,
    /// Temperature of the coolant of the warm engine, in degrees Celsius.
    Coolant,
    /// Mass of air that the warm engine draws in at idle, in grams a second.
    IdleAir,
    /// Voltage of the battery at rest, hours after the last drive, in volts.
    RestVoltage,
}

/// Between what a value usually lies; an end that is not there is no limit.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Limits {
    /// Below it something may be wrong.
    pub low: Option<Milli>,
    /// Above it something may be wrong.
    pub high: Option<Milli>,
    /// Where the limits come from.
    pub source: &'static str,
}

/// How a value stands to its limits.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Judgement {
    /// No instrument shows this, or no engine does: mistyped.
    Implausible,
    /// Below its limit.
    Low,
    /// Above its limit.
    High,
    /// Between its limits, or there are none.
    Usual,
}

impl Parameter {
    /// Every parameter, in the order of its numbers in entries, from 0; new ones are added at the end.
    pub const ALL: [Parameter; 7] = [
        Parameter::ShortTrim1,
        Parameter::LongTrim1,
        Parameter::ShortTrim2,
        Parameter::LongTrim2,
        Parameter::Coolant,
        Parameter::IdleAir,
        Parameter::RestVoltage,
    ];

    /// Its number in entries.
    pub const fn number(self) -> u8 {
        self as u8
    }

    /// The parameter with this number in entries.
    pub fn from_number(number: u8) -> Option<Parameter> {
        Parameter::ALL.get(usize::from(number)).copied()
    }

    /// Its name in the words and in forms.
    pub const fn key(self) -> &'static str {
        match self {
            Parameter::ShortTrim1 => "short-trim-1",
            Parameter::LongTrim1 => "long-trim-1",
            Parameter::ShortTrim2 => "short-trim-2",
            Parameter::LongTrim2 => "long-trim-2",
            Parameter::Coolant => "coolant",
            Parameter::IdleAir => "idle-air",
            Parameter::RestVoltage => "rest-voltage",
        }
    }

    /// The parameter with this name.
    pub fn from_key(key: &str) -> Option<Parameter> {
        Parameter::ALL.into_iter().find(|parameter| parameter.key() == key)
    }

    /// The symbol of its unit.
    pub const fn unit(self) -> &'static str {
        match self {
            Parameter::Coolant => "°C",
            Parameter::IdleAir => "g/s",
            Parameter::RestVoltage => "V",
            _ => "%",
        }
    }

    /// The least and the greatest value that can be.
    ///
    /// Trims and temperature by what their one byte can say (SAE J1979: (A - 128) × 100 / 128 and A - 40). The air
    /// flow of its two bytes goes up to 655.35, which no car draws at idle, and a car's battery has six cells.
    pub const fn plausible(self) -> (Milli, Milli) {
        match self {
            Parameter::Coolant => (Milli(-40_000), Milli(215_000)),
            Parameter::IdleAir => (Milli(100), Milli(40_000)),
            Parameter::RestVoltage => (Milli(2_000), Milli(16_000)),
            _ => (Milli(-100_000), Milli(99_220)),
        }
    }

    /// Between what it usually lies.
    pub const fn limits(self) -> Limits {
        const COMMON: &str = "common practice";
        let (low, high, source) = match self {
            Parameter::Coolant => (Some(Milli(75_000)), Some(Milli(110_000)), COMMON),
            // About as many grams as the engine has litres, so that no one limit serves every engine.
            Parameter::IdleAir => (None, None, COMMON),
            Parameter::RestVoltage => {
                let table = "BCI table of state of charge, flooded lead-acid at 26.7 degrees Celsius: 50 %";
                (Some(Milli(12_240)), None, table)
            }
            _ => (Some(Milli(-10_000)), Some(Milli(10_000)), COMMON),
        };
        Limits { low, high, source }
    }

    /// How a value stands to its limits.
    pub fn judge(self, value: Milli) -> Judgement {
        let (least, greatest) = self.plausible();
        let Limits { low, high, .. } = self.limits();
        if !(least..=greatest).contains(&value) {
            Judgement::Implausible
        } else if low.is_some_and(|low| value < low) {
            Judgement::Low
        } else if high.is_some_and(|high| value > high) {
            Judgement::High
        } else {
            Judgement::Usual
        }
    }

    /// The smallest lasting change that is of interest, in thousandths of the unit. Common practice.
    pub(super) const fn matters(self) -> Milli {
        match self {
            Parameter::Coolant => Milli(5_000),
            Parameter::IdleAir => Milli(500),
            Parameter::RestVoltage => Milli(150),
            _ => Milli(4_000),
        }
    }

    /// The step in which an instrument shows it, in thousandths of the unit.
    pub(super) const fn step(self) -> Milli {
        match self {
            Parameter::Coolant => Milli(1_000),
            Parameter::IdleAir => Milli(100),
            Parameter::RestVoltage => Milli(20),
            _ => Milli(800),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_parameter_has_a_number_a_key_and_limits_within_what_is_plausible() {
        let mut keys = Vec::new();
        for (number, parameter) in (0_u8..).zip(Parameter::ALL) {
            assert_eq!((parameter.number(), Parameter::from_number(number)), (number, Some(parameter)));
            let Limits { low, high, source } = parameter.limits();
            for limit in low.into_iter().chain(high) {
                assert_eq!(parameter.judge(limit), Judgement::Usual, "{parameter:?}");
            }
            assert!(!source.is_empty());
            assert_eq!(Parameter::from_key(parameter.key()), Some(parameter));
            keys.push(parameter.key());
        }
        keys.sort_unstable();
        keys.dedup();
        assert_eq!(keys.len(), Parameter::ALL.len());
        assert_eq!(Parameter::from_number(7), None);
    }

    /// SAE J1979, worked: 80 hexadecimal is a trim of 0 %, 00 one of -100 %, FF one of 99.21875 %; 7B is 83 degrees.
    #[test]
    fn what_the_bytes_can_say_is_plausible() {
        let trim = |byte: i64| Milli((byte - 128) * 100_000 / 128);
        assert_eq!((trim(0x80), trim(0), trim(0xff)), (Milli(0), Milli(-100_000), Milli(99_218)));
        for byte in [0x80, 0, 0xff] {
            assert_ne!(Parameter::LongTrim1.judge(trim(byte)), Judgement::Implausible);
        }
        assert_eq!(Parameter::Coolant.judge(Milli((0x7b - 40) * 1_000)), Judgement::Usual);
        assert_eq!(Parameter::LongTrim2.judge(Milli(12_500)), Judgement::High);
        assert_eq!(Parameter::ShortTrim1.judge(Milli(100_000)), Judgement::Implausible);
        assert_eq!(Parameter::RestVoltage.judge(Milli(12_060)), Judgement::Low);
        assert_eq!(Parameter::RestVoltage.judge(Milli(24_600)), Judgement::Implausible);
    }
}
