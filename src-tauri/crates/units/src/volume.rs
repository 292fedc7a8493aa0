//! Volumes of fuel, and the quantities in which parts and fluids are bought.

use std::fmt;
use std::ops::Add;

use crate::UnitError;
use crate::distance::nearest;
use crate::money::{decimal, with_point};

/// The unit in which a pump or a handbook counts.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum VolumeUnit {
    /// 1 L.
    Litre,
    /// The US liquid gallon, 3.785411784 L exactly (NIST SP 811, appendix B.8).
    UsGallon,
    /// The imperial gallon, 4.54609 L exactly (the same).
    ImperialGallon,
}

/// A volume in picolitres, which holds a thousandth of either gallon exactly.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Default)]
pub struct Volume(i64);

/// What a part or a fluid is counted in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Measure {
    /// Single pieces.
    Piece,
    /// Litres.
    Litre,
    /// Sets that are sold together.
    Set,
    /// Kilograms.
    Kilogram,
    /// Metres.
    Metre,
}

/// How much of a part or a fluid: above 0 and below 1 000 000, to a thousandth.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Quantity {
    thousandths: u32,
    /// What is counted.
    pub measure: Measure,
}

impl VolumeUnit {
    /// Picolitres in one of this unit.
    pub const fn picolitres(self) -> i64 {
        self.thousandth() * 1_000
    }

    /// Picolitres in a thousandth of this unit.
    const fn thousandth(self) -> i64 {
        match self {
            VolumeUnit::Litre => 1_000_000_000,
            VolumeUnit::UsGallon => 3_785_411_784,
            VolumeUnit::ImperialGallon => 4_546_090_000,
        }
    }
}

impl Volume {
    /// This many picolitres.
    pub const fn from_picolitres(picolitres: i64) -> Volume {
        Volume(picolitres)
    }

    /// The volume in picolitres.
    pub const fn picolitres(self) -> i64 {
        self.0
    }

    /// A volume as typed, above 0 and up to 1 000 units with at most three decimals.
    pub fn parse(text: &str, unit: VolumeUnit) -> Result<Volume, UnitError> {
        decimal(text.trim(), 3)
            .filter(|thousandths| (1..=1_000_000).contains(thousandths))
            .map(|thousandths| Volume(thousandths * unit.thousandth()))
            .ok_or_else(|| UnitError::Quantity(text.chars().take(40).collect()))
    }

    /// The number of units to three decimals, which is what was typed when it was typed in this unit.
    pub fn number(self, unit: VolumeUnit) -> String {
        let count = nearest(self.0, unit.thousandth());
        let sign = if count < 0 { "-" } else { "" };
        format!("{sign}{}", with_point(count.unsigned_abs(), 3))
    }
}

impl Add for Volume {
    type Output = Volume;
    fn add(self, other: Volume) -> Volume {
        Volume(self.0.saturating_add(other.0))
    }
}

impl Quantity {
    /// This many thousandths, from 1 to 999 999 999.
    pub fn from_thousandths(thousandths: u32, measure: Measure) -> Result<Quantity, UnitError> {
        if (1..=999_999_999).contains(&thousandths) {
            Ok(Quantity { thousandths, measure })
        } else {
            Err(UnitError::Quantity(with_point(u64::from(thousandths), 3)))
        }
    }

    /// A quantity as typed, with at most three decimals.
    pub fn parse(text: &str, measure: Measure) -> Result<Quantity, UnitError> {
        let wrong = || UnitError::Quantity(text.chars().take(40).collect());
        let thousandths = decimal(text.trim(), 3).ok_or_else(wrong)?;
        let thousandths = u32::try_from(thousandths).map_err(|_| wrong())?;
        Quantity::from_thousandths(thousandths, measure).map_err(|_| wrong())
    }

    /// The quantity in thousandths.
    pub fn thousandths(self) -> u32 {
        self.thousandths
    }

    /// The number without trailing zeros: `4`, `4.3`.
    pub fn number(self) -> String {
        let number = with_point(u64::from(self.thousandths), 3);
        number.trim_end_matches('0').trim_end_matches('.').to_owned()
    }
}

impl fmt::Display for VolumeUnit {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            VolumeUnit::Litre => "L",
            VolumeUnit::UsGallon => "gal (US)",
            VolumeUnit::ImperialGallon => "gal (imp)",
        })
    }
}

#[cfg(test)]
#[path = "volume_tests.rs"]
mod tests;
