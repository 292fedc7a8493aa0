//! What a car uses over a distance, as the exact ratio of the two.

use crate::money::with_point;
use crate::price::rounded;
use crate::{Distance, DistanceUnit, Energy, Volume, VolumeUnit};

/// An amount of what a car runs on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Amount {
    /// A fuel that is sold by volume.
    Volume(Volume),
    /// Electricity.
    Energy(Energy),
}

/// The unit in which a consumption is shown.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum ConsumptionUnit {
    /// Litres for 100 km.
    LitresPer100Km,
    /// Kilometres on a litre.
    KmPerLitre,
    /// Miles on a US liquid gallon.
    MilesPerUsGallon,
    /// Miles on an imperial gallon.
    MilesPerImperialGallon,
    /// Kilowatt-hours for 100 km.
    KwhPer100Km,
    /// Miles on a kilowatt-hour.
    MilesPerKwh,
}

/// So much of something over such a distance, both above 0. Never rounded: what is shown is worked out from it.
///
/// A mean over several is the sum of the amounts over the sum of the distances ([`Consumption::plus`]); the mean
/// of their miles per gallon is another number, and means nothing.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Consumption {
    amount: Amount,
    distance: Distance,
}

impl Amount {
    /// Nothing of the same kind.
    #[must_use]
    pub const fn none(self) -> Amount {
        match self {
            Amount::Volume(_) => Amount::Volume(Volume::from_picolitres(0)),
            Amount::Energy(_) => Amount::Energy(Energy::from_watt_hours(0)),
        }
    }

    /// Both together; `None` when one is a volume and the other an energy.
    pub fn plus(self, other: Amount) -> Option<Amount> {
        match (self, other) {
            (Amount::Volume(a), Amount::Volume(b)) => Some(Amount::Volume(a + b)),
            (Amount::Energy(a), Amount::Energy(b)) => Some(Amount::Energy(a + b)),
            _ => None,
        }
    }

    /// Picolitres or watt-hours.
    pub const fn base(self) -> i64 {
        match self {
            Amount::Volume(volume) => volume.picolitres(),
            Amount::Energy(energy) => energy.watt_hours(),
        }
    }
}

impl ConsumptionUnit {
    /// Every unit.
    pub const ALL: [ConsumptionUnit; 6] = [
        ConsumptionUnit::LitresPer100Km,
        ConsumptionUnit::KmPerLitre,
        ConsumptionUnit::MilesPerUsGallon,
        ConsumptionUnit::MilesPerImperialGallon,
        ConsumptionUnit::KwhPer100Km,
        ConsumptionUnit::MilesPerKwh,
    ];

    /// Its name in the words and in forms.
    pub const fn key(self) -> &'static str {
        match self {
            ConsumptionUnit::LitresPer100Km => "litres-per-100-km",
            ConsumptionUnit::KmPerLitre => "km-per-litre",
            ConsumptionUnit::MilesPerUsGallon => "miles-per-us-gallon",
            ConsumptionUnit::MilesPerImperialGallon => "miles-per-imperial-gallon",
            ConsumptionUnit::KwhPer100Km => "kwh-per-100-km",
            ConsumptionUnit::MilesPerKwh => "miles-per-kwh",
        }
    }

    /// The unit with this name.
    pub fn from_key(key: &str) -> Option<ConsumptionUnit> {
        ConsumptionUnit::ALL.into_iter().find(|unit| unit.key() == key)
    }

    /// The unit that people use whose instrument counts in `distance` and who fill up in `volume`.
    ///
    /// Common practice: with kilometres litres for 100 km, whatever the pump counts in; with miles the gallon of the
    /// pump, and the imperial one where the pump counts in litres, as in the United Kingdom.
    pub const fn usual(distance: DistanceUnit, volume: VolumeUnit) -> ConsumptionUnit {
        match (distance, volume) {
            (DistanceUnit::Kilometre, _) => ConsumptionUnit::LitresPer100Km,
            (DistanceUnit::Mile, VolumeUnit::UsGallon) => ConsumptionUnit::MilesPerUsGallon,
            (DistanceUnit::Mile, _) => ConsumptionUnit::MilesPerImperialGallon,
        }
    }

    /// The same for electricity.
    pub const fn usual_electric(distance: DistanceUnit) -> ConsumptionUnit {
        match distance {
            DistanceUnit::Kilometre => ConsumptionUnit::KwhPer100Km,
            DistanceUnit::Mile => ConsumptionUnit::MilesPerKwh,
        }
    }

    /// Whether it is for electricity.
    pub const fn is_electric(self) -> bool {
        matches!(self, ConsumptionUnit::KwhPer100Km | ConsumptionUnit::MilesPerKwh)
    }

    /// Whether a greater number means that the car uses less.
    pub const fn more_is_better(self) -> bool {
        !matches!(self, ConsumptionUnit::LitresPer100Km | ConsumptionUnit::KwhPer100Km)
    }

    /// Base units of the amount and millimetres of the distance that make up one of this unit.
    const fn steps(self) -> (i64, i64) {
        const LITRE: i64 = VolumeUnit::Litre.picolitres();
        const KWH: i64 = 1_000;
        const KM: i64 = DistanceUnit::Kilometre.millimetres();
        const MILE: i64 = DistanceUnit::Mile.millimetres();
        match self {
            ConsumptionUnit::LitresPer100Km => (LITRE, 100 * KM),
            ConsumptionUnit::KmPerLitre => (LITRE, KM),
            ConsumptionUnit::MilesPerUsGallon => (VolumeUnit::UsGallon.picolitres(), MILE),
            ConsumptionUnit::MilesPerImperialGallon => (VolumeUnit::ImperialGallon.picolitres(), MILE),
            ConsumptionUnit::KwhPer100Km => (KWH, 100 * KM),
            ConsumptionUnit::MilesPerKwh => (KWH, MILE),
        }
    }
}

impl Consumption {
    /// The consumption of `amount` over `distance`; `None` unless both are above 0.
    pub fn new(amount: Amount, distance: Distance) -> Option<Consumption> {
        (amount.base() > 0 && distance > Distance::ZERO).then_some(Consumption { amount, distance })
    }

    /// How much was used.
    pub const fn amount(self) -> Amount {
        self.amount
    }

    /// Over which distance.
    pub const fn distance(self) -> Distance {
        self.distance
    }

    /// Both together, which is their mean over the distance; `None` when only one of them is electric.
    pub fn plus(self, other: Consumption) -> Option<Consumption> {
        let amount = self.amount.plus(other.amount)?;
        Some(Consumption { amount, distance: self.distance + other.distance })
    }

    /// The mean over the distance of all of them; `None` of none, and where fuel and electricity are mixed.
    pub fn mean(all: impl IntoIterator<Item = Consumption>) -> Option<Consumption> {
        all.into_iter().map(Some).reduce(|a, b| a?.plus(b?)).flatten()
    }

    /// The number in this unit in steps of `decimals` decimals, halves up: 7.25 L/100 km to one decimal is 73.
    ///
    /// `None` for a unit of electricity where a fuel was used, and the other way round. `decimals` is at most 6.
    pub fn scaled(self, unit: ConsumptionUnit, decimals: u32) -> Option<i64> {
        if unit.is_electric() != matches!(self.amount, Amount::Energy(_)) {
            return None;
        }
        let (amount_step, distance_step) = unit.steps();
        let amount = i128::from(self.amount.base()) * i128::from(distance_step);
        let distance = i128::from(self.distance.millimetres()) * i128::from(amount_step);
        let scale = 10_i128.pow(decimals.min(6));
        let (over, under) = if unit.more_is_better() { (distance, amount) } else { (amount, distance) };
        Some(rounded(over.checked_mul(scale)?, under))
    }

    /// The number in this unit with so many decimals, halves up: `7.3`. `None` as with [`Consumption::scaled`].
    pub fn number(self, unit: ConsumptionUnit, decimals: u32) -> Option<String> {
        let decimals = decimals.min(6);
        self.scaled(unit, decimals).map(|value| with_point(value.unsigned_abs(), decimals))
    }

    /// Litres or kilowatt-hours for 100 km, for plots and statistics.
    #[allow(clippy::cast_precision_loss)]
    pub fn per_100_km(self) -> f64 {
        let step = match self.amount {
            Amount::Volume(_) => 1e12,
            Amount::Energy(_) => 1e3,
        };
        (self.amount.base() as f64 / step) / (self.distance.millimetres() as f64 / 1e8)
    }
}

crate::cbor_numbers!(ConsumptionUnit {
    LitresPer100Km = 0,
    KmPerLitre = 1,
    MilesPerUsGallon = 2,
    MilesPerImperialGallon = 3,
    KwhPer100Km = 4,
    MilesPerKwh = 5,
});

#[cfg(test)]
#[path = "consumption_tests.rs"]
mod tests;
