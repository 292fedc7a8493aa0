//! What was filled in, when and how far.

use units::{Amount, Day, Energy, Money, Volume};

use crate::running::Travelled;
use crate::vehicle::EngineKind;

/// What a car can run on; fills of different kinds go into different tanks and are never counted together.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum FuelKind {
    /// Petrol of any grade, with ethanol or without.
    Petrol,
    /// Diesel of any grade.
    Diesel,
    /// Liquefied petroleum gas.
    Gas,
    /// Electricity from outside the car.
    Electric,
}

/// So much of one kind.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Taken {
    /// Petrol.
    Petrol(Volume),
    /// Diesel.
    Diesel(Volume),
    /// Liquefied petroleum gas.
    Gas(Volume),
    /// Electricity.
    Electric(Energy),
}

/// How far the tank or the battery was filled.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Level {
    /// Full.
    Full,
    /// In part.
    Part,
    /// Full, but a fill before this one was not written down.
    MissedBefore,
    /// In part, and a fill before this one was not written down.
    PartMissedBefore,
}

impl Level {
    /// Whether it was filled full.
    pub fn is_full(self) -> bool {
        matches!(self, Level::Full | Level::MissedBefore)
    }

    /// Whether a fill before this one was not written down.
    pub fn is_missed_before(self) -> bool {
        matches!(self, Level::MissedBefore | Level::PartMissedBefore)
    }

    /// The same where nothing may be counted up to this fill: as if it had been filled in part.
    #[must_use]
    pub fn in_part(self) -> Level {
        if self.is_missed_before() { Level::PartMissedBefore } else { Level::Part }
    }
}

/// One fill.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Fill {
    /// When.
    pub day: Day,
    /// How far the car had gone.
    pub travelled: Travelled,
    /// How much of what.
    pub taken: Taken,
    /// How far it was filled.
    pub level: Level,
    /// What it cost in all.
    pub cost: Option<Money>,
}

impl FuelKind {
    /// Every kind, in the order of its numbers in entries, from 0; new ones are added at the end.
    pub const ALL: [FuelKind; 4] = [FuelKind::Petrol, FuelKind::Diesel, FuelKind::Gas, FuelKind::Electric];

    /// Its number in entries.
    pub const fn number(self) -> u8 {
        self as u8
    }

    /// The kind with this number in entries.
    pub fn from_number(number: u8) -> Option<FuelKind> {
        FuelKind::ALL.get(usize::from(number)).copied()
    }

    /// Its name in the words and in forms.
    pub const fn key(self) -> &'static str {
        match self {
            FuelKind::Petrol => "petrol",
            FuelKind::Diesel => "diesel",
            FuelKind::Gas => "gas",
            FuelKind::Electric => "electric",
        }
    }
}

impl FuelKind {
    /// The kind with this name.
    pub fn from_key(key: &str) -> Option<FuelKind> {
        FuelKind::ALL.into_iter().find(|kind| kind.key() == key)
    }

    /// What a car with this engine can take, its own fuel first.
    ///
    /// A petrol engine can have been converted to gas, and a hybrid may have a plug. Where nothing is known of the
    /// engine, anything can be.
    pub const fn taken_by(engine: EngineKind) -> &'static [FuelKind] {
        match engine {
            EngineKind::Petrol => &[FuelKind::Petrol, FuelKind::Gas],
            EngineKind::PetrolHybrid => &[FuelKind::Petrol, FuelKind::Electric, FuelKind::Gas],
            EngineKind::Diesel => &[FuelKind::Diesel],
            EngineKind::DieselHybrid => &[FuelKind::Diesel, FuelKind::Electric],
            EngineKind::Gas => &[FuelKind::Gas, FuelKind::Petrol],
            EngineKind::Electric => &[FuelKind::Electric],
            EngineKind::Other => &[FuelKind::Petrol, FuelKind::Diesel, FuelKind::Gas, FuelKind::Electric],
        }
    }

    /// A car's own fuel: that which it takes where nobody says which.
    pub const fn own(engine: EngineKind) -> FuelKind {
        FuelKind::taken_by(engine)[0]
    }
}

impl Taken {
    /// So much of this kind; `None` for a volume of electricity and for an energy of fuel.
    pub const fn new(kind: FuelKind, amount: Amount) -> Option<Taken> {
        match (kind, amount) {
            (FuelKind::Petrol, Amount::Volume(volume)) => Some(Taken::Petrol(volume)),
            (FuelKind::Diesel, Amount::Volume(volume)) => Some(Taken::Diesel(volume)),
            (FuelKind::Gas, Amount::Volume(volume)) => Some(Taken::Gas(volume)),
            (FuelKind::Electric, Amount::Energy(energy)) => Some(Taken::Electric(energy)),
            _ => None,
        }
    }

    /// Of which kind.
    pub const fn kind(self) -> FuelKind {
        match self {
            Taken::Petrol(_) => FuelKind::Petrol,
            Taken::Diesel(_) => FuelKind::Diesel,
            Taken::Gas(_) => FuelKind::Gas,
            Taken::Electric(_) => FuelKind::Electric,
        }
    }

    /// How much.
    pub const fn amount(self) -> Amount {
        match self {
            Taken::Petrol(volume) | Taken::Diesel(volume) | Taken::Gas(volume) => Amount::Volume(volume),
            Taken::Electric(energy) => Amount::Energy(energy),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_kind_has_its_number_and_its_amount() {
        let amounts =
            [Amount::Volume(Volume::from_picolitres(5)), Amount::Energy(Energy::from_watt_hours(5))];
        for (number, kind) in (0_u8..).zip(FuelKind::ALL) {
            assert_eq!((kind.number(), FuelKind::from_number(number)), (number, Some(kind)));
            assert_eq!(FuelKind::from_key(kind.key()), Some(kind));
            let taken: Vec<_> = amounts.iter().filter_map(|&amount| Taken::new(kind, amount)).collect();
            assert_eq!(taken.len(), 1, "{kind:?}");
            assert_eq!(taken[0].kind(), kind);
            assert!(amounts.contains(&taken[0].amount()));
        }
        assert_eq!(FuelKind::from_number(4), None);
    }
    #[test]
    fn a_car_takes_its_own_fuel_and_electricity_only_with_a_motor() {
        for engine in EngineKind::ALL {
            let kinds = FuelKind::taken_by(engine);
            assert_eq!(kinds[0], FuelKind::own(engine));
            let plug = kinds.contains(&FuelKind::Electric);
            assert_eq!(plug, engine.has_high_voltage() || engine == EngineKind::Other, "{engine:?}");
            assert_eq!(
                kinds.iter().any(|kind| *kind != FuelKind::Electric),
                engine.burns_fuel(),
                "{engine:?}"
            );
        }
    }
}
