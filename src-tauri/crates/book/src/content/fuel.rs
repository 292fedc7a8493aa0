//! What was filled in at a reading.
//!
//! | key | what |
//! | --- | --- |
//! | 1 | picolitres; absent for electricity |
//! | 2 | the unit of volume in which it was typed; absent for electricity |
//! | 3 | what it cost in all |
//! | 4 | how far it was filled |
//! | 5 | the number of its kind; absent for the car's own fuel, as the first entries have it |
//! | 6 | watt-hours, for electricity alone |
//! | 7 | the price of one unit, where it was typed |

use rules::fuel::{FuelKind, Level, PumpUnit, Taken};
use units::cbor::{Cbor, CborError, CborValue, MapReader, MapWriter};
use units::{Amount, Energy, Money, UnitPrice, Volume, VolumeUnit};

/// Fuel or electricity taken.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Fuel {
    /// How much of what.
    pub filled: Filled,
    /// What one unit cost, where it was typed.
    pub price: Option<UnitPrice>,
    /// What it cost in all.
    pub total: Option<Money>,
    /// How far the tank was filled.
    pub fill: Fill,
}

/// How much of what, in the unit in which it was typed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Filled {
    /// A fuel.
    Volume {
        /// How much.
        volume: Volume,
        /// The unit in which it was typed.
        unit: VolumeUnit,
        /// Of which fuel; where nobody said, it is the car's own.
        of: Option<Liquid>,
    },
    /// Electricity, in kilowatt-hours.
    Energy(Energy),
}

/// A fuel that is sold by volume.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Liquid {
    /// Petrol.
    Petrol,
    /// Diesel.
    Diesel,
    /// Liquefied petroleum gas.
    Gas,
}

/// How far the tank was filled.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Fill {
    /// Full.
    Full,
    /// In part.
    Part,
    /// Full, but a fill before this one was not written down.
    MissedBefore,
}

units::cbor_numbers!(Fill { Full = 0, Part = 1, MissedBefore = 2 });

impl Fill {
    /// What the rules need to know of it.
    pub const fn level(self) -> Level {
        match self {
            Fill::Full => Level::Full,
            Fill::Part => Level::Part,
            Fill::MissedBefore => Level::MissedBefore,
        }
    }
}

impl Liquid {
    /// The fuel of this kind; `None` for electricity.
    pub const fn of(kind: FuelKind) -> Option<Liquid> {
        match kind {
            FuelKind::Petrol => Some(Liquid::Petrol),
            FuelKind::Diesel => Some(Liquid::Diesel),
            FuelKind::Gas => Some(Liquid::Gas),
            FuelKind::Electric => None,
        }
    }

    /// Its kind.
    pub const fn kind(self) -> FuelKind {
        match self {
            Liquid::Petrol => FuelKind::Petrol,
            Liquid::Diesel => FuelKind::Diesel,
            Liquid::Gas => FuelKind::Gas,
        }
    }
}

impl Filled {
    /// So much in this unit of this kind, or of the car's own fuel where nobody said of which.
    ///
    /// `None` where amount, unit and kind are not of one sort: a volume of electricity, an energy of a fuel.
    pub fn new(kind: Option<FuelKind>, amount: Amount, unit: PumpUnit) -> Option<Filled> {
        match (kind, amount, unit) {
            (None | Some(FuelKind::Electric), Amount::Energy(energy), PumpUnit::KilowattHour) => {
                Some(Filled::Energy(energy))
            }
            (None, Amount::Volume(volume), PumpUnit::Volume(unit)) => {
                Some(Filled::Volume { volume, unit, of: None })
            }
            (Some(kind), Amount::Volume(volume), PumpUnit::Volume(unit)) => {
                Liquid::of(kind).map(|of| Filled::Volume { volume, unit, of: Some(of) })
            }
            _ => None,
        }
    }

    /// How much.
    pub const fn amount(self) -> Amount {
        match self {
            Filled::Volume { volume, .. } => Amount::Volume(volume),
            Filled::Energy(energy) => Amount::Energy(energy),
        }
    }

    /// The unit in which it was typed.
    pub const fn unit(self) -> PumpUnit {
        match self {
            Filled::Volume { unit, .. } => PumpUnit::Volume(unit),
            Filled::Energy(_) => PumpUnit::KilowattHour,
        }
    }

    /// Of which kind, for a car whose own fuel is `own`.
    pub fn kind(self, own: FuelKind) -> FuelKind {
        match self {
            Filled::Volume { of, .. } => of.map_or(own, Liquid::kind),
            Filled::Energy(_) => FuelKind::Electric,
        }
    }

    /// What the rules need to know of it; `None` for a volume of the own fuel of a car that has none.
    pub fn taken(self, own: FuelKind) -> Option<Taken> {
        Taken::new(self.kind(own), self.amount())
    }
}

impl Cbor for Fuel {
    fn to_cbor(&self) -> CborValue {
        let (volume, energy, kind) = match &self.filled {
            Filled::Volume { volume, unit, of } => (Some((volume, unit)), None, of.map(Liquid::kind)),
            Filled::Energy(energy) => (None, Some(energy), Some(FuelKind::Electric)),
        };
        MapWriter::new()
            .put_some(1, volume.map(|(volume, _)| volume))
            .put_some(2, volume.map(|(_, unit)| unit))
            .put_some(3, self.total.as_ref())
            .put(4, &self.fill)
            .put_some(5, kind.map(FuelKind::number).as_ref())
            .put_some(6, energy)
            .put_some(7, self.price.as_ref())
            .finish()
    }

    fn from_cbor(value: &CborValue) -> Result<Fuel, CborError> {
        let map = MapReader::new(value)?;
        let kind = map.get(5)?.map(|number| FuelKind::from_number(number).ok_or(CborError::Wrong(5)));
        let kind = kind.transpose()?;
        let (amount, unit) = if kind == Some(FuelKind::Electric) {
            (Amount::Energy(map.need(6)?), PumpUnit::KilowattHour)
        } else {
            (Amount::Volume(map.need(1)?), PumpUnit::Volume(map.need(2)?))
        };
        Ok(Fuel {
            filled: Filled::new(kind, amount, unit).ok_or(CborError::Wrong(5))?,
            price: map.get(7)?,
            total: map.get(3)?,
            fill: map.need(4)?,
        })
    }
}

#[cfg(test)]
#[path = "fuel_tests.rs"]
mod tests;
