//! What an inspection found: a word, or a measured value with a limit.

use std::fmt;
use std::str::FromStr;

use units::Day;

use super::ItemRef;
use crate::RulesError;
use crate::running::Travelled;

/// Something seen, heard or felt that says how a part is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Finding {
    /// Looked at, and good for longer.
    WithinLimits,
    /// Worn down.
    Worn,
    /// Dirty or clogged.
    Dirty,
    /// Cracked.
    Cracked,
    /// Glazed: hard and shiny.
    Glazed,
    /// Leaking.
    Leaking,
    /// Black with soot.
    Sooty,
    /// Noisy.
    Noisy,
    /// Loose or with play.
    Loose,
    /// Corroded.
    Corroded,
    /// The engine idles roughly.
    RoughIdle,
    /// The engine hesitates when it should pull.
    Hesitation,
    /// The engine starts badly from cold.
    HardColdStart,
    /// White smoke when it starts.
    WhiteSmoke,
    /// Water where none should be.
    Water,
    /// Frayed, as a belt at its edges.
    Frayed,
}

/// What can be measured on an inspection.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Measured {
    /// Depth of the tread, in millimetres.
    Tread,
    /// Thickness of a pad's lining, in millimetres.
    Pad,
    /// Thickness of a disc, in millimetres.
    Disc,
    /// Water in brake fluid, in percent.
    Water,
    /// Boiling point of brake fluid, in degrees Celsius.
    BoilingPoint,
    /// Voltage of a battery at rest, in volts.
    Charge,
    /// Freezing point of coolant, in degrees Celsius.
    FreezingPoint,
}

/// A measured value in thousandths of its unit, exact: 3.1 mm is 3 100.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Milli(pub i64);

/// A measurement that the catalogue knows of, and the value at which it is time.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Gauge {
    /// What is measured.
    pub what: Measured,
    /// The value at which the work is due.
    pub limit: Milli,
    /// The value when new; a measurement falls from there to its limit, or rises.
    pub fresh: Milli,
}

/// What was found about an item, without the item being done.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Found {
    /// About which item.
    pub item: ItemRef,
    /// When.
    pub day: Day,
    /// How far the car had gone, if the odometer was read.
    pub travelled: Option<Travelled>,
    /// In a word.
    pub finding: Finding,
    /// As measured, in the unit of the item's measurement.
    pub value: Option<Milli>,
}

impl Finding {
    /// Every finding, in the order of its numbers in entries, from 0; new ones are added at the end.
    pub const ALL: [Finding; 16] = [
        Finding::WithinLimits,
        Finding::Worn,
        Finding::Dirty,
        Finding::Cracked,
        Finding::Glazed,
        Finding::Leaking,
        Finding::Sooty,
        Finding::Noisy,
        Finding::Loose,
        Finding::Corroded,
        Finding::RoughIdle,
        Finding::Hesitation,
        Finding::HardColdStart,
        Finding::WhiteSmoke,
        Finding::Water,
        Finding::Frayed,
    ];

    /// Its number in entries.
    pub const fn number(self) -> u8 {
        self as u8
    }

    /// The finding with this number in entries.
    pub fn from_number(number: u8) -> Option<Finding> {
        Finding::ALL.get(usize::from(number)).copied()
    }

    /// Its name in the words and in forms.
    pub const fn key(self) -> &'static str {
        match self {
            Finding::WithinLimits => "within-limits",
            Finding::Worn => "worn",
            Finding::Dirty => "dirty",
            Finding::Cracked => "cracked",
            Finding::Glazed => "glazed",
            Finding::Leaking => "leaking",
            Finding::Sooty => "sooty",
            Finding::Noisy => "noisy",
            Finding::Loose => "loose",
            Finding::Corroded => "corroded",
            Finding::RoughIdle => "rough-idle",
            Finding::Hesitation => "hesitation",
            Finding::HardColdStart => "hard-cold-start",
            Finding::WhiteSmoke => "white-smoke",
            Finding::Water => "water",
            Finding::Frayed => "frayed",
        }
    }

    /// The finding with this key.
    pub fn from_key(key: &str) -> Option<Finding> {
        Finding::ALL.into_iter().find(|finding| finding.key() == key)
    }
}

impl Measured {
    /// Everything that can be measured.
    pub const ALL: [Measured; 7] = [
        Measured::Tread,
        Measured::Pad,
        Measured::Disc,
        Measured::Water,
        Measured::BoilingPoint,
        Measured::Charge,
        Measured::FreezingPoint,
    ];

    /// Its name in the words.
    pub const fn key(self) -> &'static str {
        match self {
            Measured::Tread => "tread",
            Measured::Pad => "pad",
            Measured::Disc => "disc",
            Measured::Water => "water",
            Measured::BoilingPoint => "boiling-point",
            Measured::Charge => "charge",
            Measured::FreezingPoint => "freezing-point",
        }
    }

    /// The symbol of its unit.
    pub const fn unit(self) -> &'static str {
        match self {
            Measured::Tread | Measured::Pad | Measured::Disc => "mm",
            Measured::Water => "%",
            Measured::BoilingPoint | Measured::FreezingPoint => "°C",
            Measured::Charge => "V",
        }
    }

    /// Whether the car wears it off by going, so that the measurement alone decides when the part is done
    /// for. What ages besides keeps its interval, which the measurement can only shorten.
    pub const fn is_wear(self) -> bool {
        matches!(self, Measured::Tread | Measured::Pad | Measured::Disc)
    }
}

impl Measured {
    /// Whether a value goes one way with time or distance, so that it can be said when it reaches its limit.
    /// A battery is charged and coolant is topped up: what they show today says nothing of later.
    pub const fn drifts(self) -> bool {
        !matches!(self, Measured::Charge | Measured::FreezingPoint)
    }

    /// The least and the most that a gauge can show; what lies outside is mistyped (an assumption of this
    /// program: wider than any road car has).
    pub const fn range(self) -> (Milli, Milli) {
        let (least, most) = match self {
            Measured::Tread | Measured::Water | Measured::Charge => (0, 20),
            Measured::Pad => (0, 25),
            Measured::Disc => (0, 60),
            Measured::BoilingPoint => (90, 350),
            Measured::FreezingPoint => (-80, 5),
        };
        (Milli(least * 1_000), Milli(most * 1_000))
    }
}

impl Gauge {
    /// Whether a value has reached the limit.
    pub fn is_reached(&self, value: Milli) -> bool {
        self.left(value) <= Milli(0)
    }

    /// How much is left between a value and the limit; less than nothing beyond it.
    pub fn left(&self, value: Milli) -> Milli {
        let above = value.0.saturating_sub(self.limit.0);
        Milli(if self.limit < self.fresh { above } else { -above })
    }
}

/// Written as short as it is exact: `3.1`, `-37`.
impl fmt::Display for Milli {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let sign = if self.0 < 0 { "-" } else { "" };
        let (whole, rest) = (self.0.unsigned_abs() / 1_000, self.0.unsigned_abs() % 1_000);
        let decimals = format!("{rest:03}");
        match decimals.trim_end_matches('0') {
            "" => write!(f, "{sign}{whole}"),
            decimals => write!(f, "{sign}{whole}.{decimals}"),
        }
    }
}

/// Reads up to six digits and three decimals after a point or a comma.
impl FromStr for Milli {
    type Err = RulesError;

    fn from_str(text: &str) -> Result<Milli, RulesError> {
        let wrong = || RulesError::Measurement(text.chars().take(40).collect());
        let text = text.trim();
        let (negative, digits) = match text.strip_prefix(['-', '\u{2212}']) {
            Some(digits) => (true, digits),
            None => (false, text),
        };
        let (whole, decimals) = digits.split_once(['.', ',']).unwrap_or((digits, "0"));
        let is_number = |text: &str, most| {
            (1..=most).contains(&text.len()) && text.bytes().all(|byte| byte.is_ascii_digit())
        };
        if !is_number(whole, 6) || !is_number(decimals, 3) {
            return Err(wrong());
        }
        let thousandths: i64 = format!("{whole}{decimals:0<3}").parse().map_err(|_| wrong())?;
        Ok(Milli(if negative { -thousandths } else { thousandths }))
    }
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;

    #[test]
    fn a_measurement_is_read_as_typed_and_written_short() {
        for (typed, thousandths, written) in [
            ("3.1", 3_100, "3.1"),
            (" 2,05 ", 2_050, "2.05"),
            ("12", 12_000, "12"),
            ("-37.0", -37_000, "-37"),
            ("0.001", 1, "0.001"),
        ] {
            let value: Milli = typed.parse().unwrap();
            assert_eq!((value, value.to_string().as_str()), (Milli(thousandths), written));
        }
        for wrong in ["", "-", ".5", "5.", "1.2345", "1234567", "3mm", "1.2.3", "٣"] {
            assert!(wrong.parse::<Milli>().is_err(), "{wrong:?}");
        }
    }

    #[test]
    fn numbers_and_keys_of_findings_lead_back() {
        for (number, finding) in (0..).zip(Finding::ALL) {
            assert_eq!(finding.number(), number);
            assert_eq!(Finding::from_number(number), Some(finding));
            assert_eq!(Finding::from_key(finding.key()), Some(finding));
        }
        assert_eq!(Finding::from_number(16), None);
    }

    #[test]
    fn a_gauge_falls_or_rises_to_its_limit() {
        let tread = Gauge { what: Measured::Tread, limit: Milli(3_000), fresh: Milli(8_000) };
        assert!(tread.is_reached(Milli(3_000)) && !tread.is_reached(Milli(3_001)));
        let water = Gauge { what: Measured::Water, limit: Milli(3_000), fresh: Milli(0) };
        assert!(water.is_reached(Milli(3_000)) && !water.is_reached(Milli(2_999)));
    }
}
