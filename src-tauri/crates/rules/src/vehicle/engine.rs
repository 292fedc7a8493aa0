//! What drives a car.

/// The kind of engine, in the order of its numbers on the history card, 0 to 6.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum EngineKind {
    /// Petrol.
    Petrol,
    /// Diesel.
    Diesel,
    /// Petrol with an electric motor.
    PetrolHybrid,
    /// Diesel with an electric motor.
    DieselHybrid,
    /// Natural gas or liquefied petroleum gas.
    Gas,
    /// Electric only.
    Electric,
    /// Anything else; taken to burn a fuel.
    Other,
}

impl EngineKind {
    /// Every kind, in the order of the numbers.
    pub const ALL: [EngineKind; 7] = [
        EngineKind::Petrol,
        EngineKind::Diesel,
        EngineKind::PetrolHybrid,
        EngineKind::DieselHybrid,
        EngineKind::Gas,
        EngineKind::Electric,
        EngineKind::Other,
    ];

    /// The kind's number on the history card.
    pub const fn number(self) -> u8 {
        self as u8
    }

    /// The kind with this number on the history card.
    pub fn from_number(number: u8) -> Option<EngineKind> {
        EngineKind::ALL.get(usize::from(number)).copied()
    }

    /// Whether it has sparking plugs.
    pub const fn has_spark_ignition(self) -> bool {
        matches!(self, EngineKind::Petrol | EngineKind::PetrolHybrid | EngineKind::Gas)
    }

    /// Whether it burns diesel.
    pub const fn burns_diesel(self) -> bool {
        matches!(self, EngineKind::Diesel | EngineKind::DieselHybrid)
    }

    /// Whether it has a drive battery with a voltage that can kill.
    pub const fn has_high_voltage(self) -> bool {
        matches!(self, EngineKind::PetrolHybrid | EngineKind::DieselHybrid | EngineKind::Electric)
    }

    /// Whether it burns anything.
    pub const fn burns_fuel(self) -> bool {
        !matches!(self, EngineKind::Electric)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_are_those_of_the_card_and_lead_back() {
        for (number, kind) in (0_u8..).zip(EngineKind::ALL) {
            assert_eq!(kind.number(), number);
            assert_eq!(EngineKind::from_number(number), Some(kind));
        }
        assert_eq!(EngineKind::from_number(7), None);
    }

    #[test]
    fn no_engine_has_both_kinds_of_ignition_and_both_need_fuel() {
        for kind in EngineKind::ALL {
            assert!(!(kind.has_spark_ignition() && kind.burns_diesel()), "{kind:?}");
            assert!(kind.burns_fuel() || !(kind.has_spark_ignition() || kind.burns_diesel()), "{kind:?}");
        }
    }
}
