//! What moves consumption apart from work on the car, with where each figure was published.

use super::FuelKind;
use crate::vehicle::EngineKind;

/// Something that moves consumption.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Effect {
    /// Its name in the words.
    pub key: &'static str,
    /// How far a distance on the same amount changes, in percent.
    pub change: Change,
    /// Where that was published.
    pub source: &'static str,
}

/// A change of the distance on the same amount, in percent; negative is less far.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Change {
    /// By so much.
    By(i16),
    /// By so much at the most.
    UpTo(i16),
    /// Somewhere between the two, the smaller one first.
    Between(i16, i16),
    /// Measured, and none found.
    None,
}

/// How far the seasons can move the consumption of a car.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub enum Swing {
    /// A car that burns fuel.
    #[default]
    Fuel,
    /// A car that burns fuel and has an electric motor.
    Hybrid,
    /// A car that runs on electricity.
    Electric,
}

const COLD_2014: &str = "US Department of Energy, Fact #818, 21 April 2014: city, 20 F against 77 F";
const COLD_2020: &str = "US Department of Energy, Fact #1164, 14 December 2020: city, 20 F against 77 F";

/// The effects, the greatest of each sort first.
static EFFECTS: [Effect; 11] = [
    effect("cold-electric", Change::By(-40), COLD_2020),
    effect("cold-hybrid", Change::By(-30), COLD_2020),
    effect("cold-short-trips", Change::UpTo(-22), COLD_2014),
    effect("cold", Change::By(-15), COLD_2020),
    effect("cold-older-test", Change::By(-12), COLD_2014),
    effect("slower-motorway", Change::UpTo(20), "Natural Resources Canada: 100 instead of 120 km/h"),
    effect(
        "oxygen-sensor",
        Change::UpTo(40),
        "fueleconomy.gov, Keeping your vehicle in shape, by pages that repeat it: a faulty sensor replaced",
    ),
    effect(
        "air-filter-carburettor",
        Change::Between(2, 6),
        "Oak Ridge National Laboratory, 2009, by theautochannel.com: typical, up to 14 when wholly clogged",
    ),
    effect(
        "tuning",
        Change::By(4),
        "fueleconomy.gov, Keeping your vehicle in shape, by pages that repeat it: an engine out of tune",
    ),
    effect(
        "oil-grade",
        Change::Between(1, 2),
        "fueleconomy.gov, from memory: the grade that the maker names",
    ),
    effect(
        "air-filter-injection",
        Change::None,
        "Oak Ridge National Laboratory, ORNL/TM-2009/021: a clogged filter slows the car and costs no fuel",
    ),
];

const fn effect(key: &'static str, change: Change, source: &'static str) -> Effect {
    Effect { key, change, source }
}

/// What moves consumption apart from work, and what work does, as published.
///
/// The lesson of it: cold and short trips move consumption by more than most work does.
pub fn effects() -> &'static [Effect] {
    &EFFECTS
}

impl Swing {
    /// How far the seasons can move what a car with this engine uses of a kind.
    pub const fn of(engine: EngineKind, kind: FuelKind) -> Swing {
        match kind {
            FuelKind::Electric => Swing::Electric,
            _ if engine.has_high_voltage() => Swing::Hybrid,
            _ => Swing::Fuel,
        }
    }

    /// Half of the way from the warmest to the coldest time of the year, as a natural logarithm.
    ///
    /// Taken from the published figures: with 15 % less far on the same amount the logarithm of what is used moves
    /// by 0.163, and half of that is this.
    pub(super) fn amplitude(self) -> f64 {
        let less: f64 = match self {
            Swing::Fuel => 0.15,
            Swing::Hybrid => 0.30,
            Swing::Electric => 0.40,
        };
        -(1.0 - less).ln() / 2.0
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_season_moves_consumption_by_more_than_tuning_does() {
        let size = |key: &str| {
            let effect = effects().iter().find(|effect| effect.key == key);
            effect.map_or(0, |effect| match effect.change {
                Change::By(percent) | Change::UpTo(percent) | Change::Between(_, percent) => percent.abs(),
                Change::None => 0,
            })
        };
        for work in ["tuning", "oil-grade", "air-filter-injection", "air-filter-carburettor"] {
            assert!(size("cold") > size(work), "{work}");
        }
        assert_eq!(Swing::of(EngineKind::PetrolHybrid, FuelKind::Electric), Swing::Electric);
        assert_eq!(Swing::of(EngineKind::PetrolHybrid, FuelKind::Petrol), Swing::Hybrid);
        assert_eq!(Swing::of(EngineKind::Diesel, FuelKind::Diesel), Swing::Fuel);
        assert!((Swing::Fuel.amplitude() - 0.081_26).abs() < 1e-5);
        assert!(effects().iter().all(|effect| !effect.source.is_empty()));
    }
}
