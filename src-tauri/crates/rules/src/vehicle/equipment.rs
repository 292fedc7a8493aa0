//! What a car has and what it lacks, as far as upkeep depends on it.

/// Something that some cars have and others lack.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Fitting {
    /// A turbocharger or a supercharger, or an engine tuned as highly.
    Turbo,
    /// A particulate filter in the exhaust.
    ParticulateFilter,
    /// A toothed belt that drives the camshafts.
    TimingBelt,
    /// A chain that drives the camshafts.
    TimingChain,
    /// A gearbox shifted by hand.
    ManualGearbox,
    /// A gearbox that shifts by itself.
    AutomaticGearbox,
    /// Driven rear wheels, and so an axle with a drive and oil of its own; front wheels may be driven besides.
    DrivenRearAxle,
    /// A throttle pulled by a cable.
    CableThrottle,
    /// A throttle moved by a motor.
    ElectronicThrottle,
    /// Power steering with a fluid.
    HydraulicSteering,
    /// Air conditioning.
    AirConditioning,
    /// A distributor, or leads from coils to plugs.
    IgnitionLeads,
}

/// What the owner said of the car's fittings; what he did not say is not known.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub struct Equipment {
    present: u16,
    absent: u16,
}

impl Fitting {
    /// Every fitting, in the order of its numbers in entries, from 0; new ones are added at the end.
    pub const ALL: [Fitting; 12] = [
        Fitting::Turbo,
        Fitting::ParticulateFilter,
        Fitting::TimingBelt,
        Fitting::TimingChain,
        Fitting::ManualGearbox,
        Fitting::AutomaticGearbox,
        Fitting::DrivenRearAxle,
        Fitting::CableThrottle,
        Fitting::ElectronicThrottle,
        Fitting::HydraulicSteering,
        Fitting::AirConditioning,
        Fitting::IgnitionLeads,
    ];

    /// Its name in the words and in forms.
    pub const fn key(self) -> &'static str {
        match self {
            Fitting::Turbo => "turbo",
            Fitting::ParticulateFilter => "particulate-filter",
            Fitting::TimingBelt => "timing-belt",
            Fitting::TimingChain => "timing-chain",
            Fitting::ManualGearbox => "manual-gearbox",
            Fitting::AutomaticGearbox => "automatic-gearbox",
            Fitting::DrivenRearAxle => "driven-rear-axle",
            Fitting::CableThrottle => "cable-throttle",
            Fitting::ElectronicThrottle => "electronic-throttle",
            Fitting::HydraulicSteering => "hydraulic-steering",
            Fitting::AirConditioning => "air-conditioning",
            Fitting::IgnitionLeads => "ignition-leads",
        }
    }

    /// The fitting with this key.
    pub fn from_key(key: &str) -> Option<Fitting> {
        Fitting::ALL.into_iter().find(|fitting| fitting.key() == key)
    }

    /// What a car cannot have beside it.
    const fn rival(self) -> Option<Fitting> {
        match self {
            Fitting::TimingBelt => Some(Fitting::TimingChain),
            Fitting::TimingChain => Some(Fitting::TimingBelt),
            Fitting::ManualGearbox => Some(Fitting::AutomaticGearbox),
            Fitting::AutomaticGearbox => Some(Fitting::ManualGearbox),
            Fitting::CableThrottle => Some(Fitting::ElectronicThrottle),
            Fitting::ElectronicThrottle => Some(Fitting::CableThrottle),
            _ => None,
        }
    }

    const fn bit(self) -> u16 {
        1 << self as u16
    }
}

impl Equipment {
    /// Whether the car has it; `None` when nobody said. A car that has a timing chain has no timing belt.
    pub const fn has(self, fitting: Fitting) -> Option<bool> {
        if self.present & fitting.bit() != 0 {
            return Some(true);
        }
        let ruled_out = match fitting.rival() {
            Some(rival) => self.present & rival.bit() != 0,
            None => false,
        };
        if ruled_out || self.absent & fitting.bit() != 0 { Some(false) } else { None }
    }

    /// The same, after the owner said whether the car has this; `None` takes back what he said. A chain takes
    /// back a belt that was said before.
    #[must_use]
    pub const fn with(self, fitting: Fitting, has: Option<bool>) -> Equipment {
        let (mut present, mut absent) = (self.present & !fitting.bit(), self.absent & !fitting.bit());
        match has {
            Some(true) => {
                present |= fitting.bit();
                if let Some(rival) = fitting.rival() {
                    present &= !rival.bit();
                }
            }
            Some(false) => absent |= fitting.bit(),
            None => {}
        }
        Equipment { present, absent }
    }

    /// What was said, as two sums of powers of two by the numbers of the fittings: present, and absent.
    pub const fn sums(self) -> (u16, u16) {
        (self.present, self.absent)
    }

    /// Reads the sums back; `None` when they say of one fitting that it is both there and not. Numbers that
    /// this version does not know are kept.
    pub const fn from_sums(present: u16, absent: u16) -> Option<Equipment> {
        if present & absent == 0 { Some(Equipment { present, absent }) } else { None }
    }

    /// What the owner said of this one, without what follows from the others.
    pub const fn said(self, fitting: Fitting) -> Option<bool> {
        if self.present & fitting.bit() != 0 {
            Some(true)
        } else if self.absent & fitting.bit() != 0 {
            Some(false)
        } else {
            None
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_nobody_said_is_not_known_and_can_be_taken_back() {
        for fitting in Fitting::ALL {
            assert_eq!(Equipment::default().has(fitting), None);
            for said in [Some(true), Some(false), None] {
                let equipment = Equipment::default().with(fitting, Some(true)).with(fitting, said);
                assert_eq!(equipment.said(fitting), said);
                assert_eq!(equipment.has(fitting), said);
            }
        }
    }

    #[test]
    fn a_chain_rules_out_a_belt_but_no_belt_does_not_make_a_chain() {
        let chain = Equipment::default().with(Fitting::TimingChain, Some(true));
        assert_eq!((chain.has(Fitting::TimingBelt), chain.said(Fitting::TimingBelt)), (Some(false), None));
        let no_belt = Equipment::default().with(Fitting::TimingBelt, Some(false));
        assert_eq!(no_belt.has(Fitting::TimingChain), None);
        let after_all =
            Equipment::default().with(Fitting::TimingBelt, Some(true)).with(Fitting::TimingChain, Some(true));
        assert_eq!(
            (after_all.has(Fitting::TimingBelt), after_all.has(Fitting::TimingChain)),
            (Some(false), Some(true))
        );
    }

    #[test]
    fn sums_lead_back_and_cannot_contradict_themselves() {
        let said =
            Equipment::default().with(Fitting::Turbo, Some(true)).with(Fitting::TimingBelt, Some(false));
        assert_eq!(said.sums(), (1, 4));
        assert_eq!(Equipment::from_sums(1, 4), Some(said));
        assert_eq!(Equipment::from_sums(5, 4), None);
    }

    #[test]
    fn keys_lead_back() {
        for fitting in Fitting::ALL {
            assert_eq!(Fitting::from_key(fitting.key()), Some(fitting));
        }
        assert_eq!(Fitting::from_key("wings"), None);
    }
}
