//! What was filled in, when and how far.

use units::{Amount, Day, Energy, Money, Volume};

use crate::running::Travelled;

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
            let taken: Vec<_> = amounts.iter().filter_map(|&amount| Taken::new(kind, amount)).collect();
            assert_eq!(taken.len(), 1, "{kind:?}");
            assert_eq!(taken[0].kind(), kind);
            assert!(amounts.contains(&taken[0].amount()));
        }
        assert_eq!(FuelKind::from_number(4), None);
    }
}
