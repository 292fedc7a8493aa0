//! What must be read before any list: when to stop first.

use super::{About, Answer, Check, Complaint, Trouble};

/// A danger that comes before any list of checks, the most pressing first. The sentences stand in the words
/// under `stop-KEY`; they say what to do now, and defer to the handbook, to local rules and to the emergency
/// services.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Danger {
    /// The brakes cannot be trusted.
    Brakes,
    /// The steering cannot be trusted.
    Steering,
    /// A wheel is loose.
    Wheel,
    /// Something smoulders or burns.
    Fire,
    /// The throttle may stay open.
    ThrottleOpen,
    /// Fuel or its vapour is getting out.
    FuelSmell,
    /// Exhaust gas is getting into the cabin.
    ExhaustInside,
    /// Something is wrong with the high voltage.
    HighVoltage,
    /// The engine runs without oil pressure, as far as the lamp says.
    OilPressure,
    /// The engine is too hot.
    Overheating,
    /// The engine knocks from inside.
    EngineKnock,
    /// The engine lamp flashes: unburnt fuel is burning the catalytic converter.
    EngineLampFlashing,
    /// The gearbox is too hot.
    GearboxHot,
    /// The battery is not being charged, and it is dark.
    ChargingAtNight,
    /// The battery is not being charged, by day.
    Charging,
    /// Airbags and belt tensioners may not work, or may go off.
    Airbag,
    /// The particulate filter is full and other lamps are on: no drive to burn it clean.
    ParticulateFilterAndMore,
    /// The particulate filter is full: a drive may burn it clean.
    ParticulateFilter,
}

/// How pressing a danger is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Urgency {
    /// Stop where it is safe, and do not drive on.
    Stop,
    /// Drive no farther than to help, and gently.
    Gently,
    /// Have it seen to soon.
    Soon,
}

/// A danger with what shows it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Stop {
    /// What the danger is.
    pub danger: Danger,
    /// The first sign of it.
    pub sign: Sign,
}

/// What shows a danger.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Sign {
    /// A symptom, by its key.
    Symptom(String),
    /// A code, as it is said: `P0524`.
    Code(String),
}

/// What must not be done with the car as long as a danger stands, the least first; each includes those before it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub enum Forbidden {
    /// Nothing beyond the usual care.
    #[default]
    Nothing,
    /// Driving.
    Driving,
    /// Running the engine, or cranking it.
    Running,
}

/// The check after which an engine that overheated may run again, if it found nothing: the coolant is there.
pub(super) const COOLANT: &str = "look-for-coolant";

impl Danger {
    /// Every danger, the most pressing first.
    pub const ALL: [Danger; 18] = [
        Danger::Brakes,
        Danger::Steering,
        Danger::Wheel,
        Danger::Fire,
        Danger::ThrottleOpen,
        Danger::FuelSmell,
        Danger::ExhaustInside,
        Danger::HighVoltage,
        Danger::OilPressure,
        Danger::Overheating,
        Danger::EngineKnock,
        Danger::EngineLampFlashing,
        Danger::GearboxHot,
        Danger::ChargingAtNight,
        Danger::Charging,
        Danger::Airbag,
        Danger::ParticulateFilterAndMore,
        Danger::ParticulateFilter,
    ];

    /// Its name in the words (`stop-KEY`) and, with spaces for dashes, in the table of symptoms.
    pub const fn key(self) -> &'static str {
        match self {
            Danger::Brakes => "brakes",
            Danger::Steering => "steering",
            Danger::Wheel => "wheel",
            Danger::Fire => "fire",
            Danger::ThrottleOpen => "throttle-open",
            Danger::FuelSmell => "fuel-smell",
            Danger::ExhaustInside => "exhaust-inside",
            Danger::HighVoltage => "high-voltage",
            Danger::OilPressure => "oil-pressure",
            Danger::Overheating => "overheating",
            Danger::EngineKnock => "engine-knock",
            Danger::EngineLampFlashing => "engine-lamp-flashing",
            Danger::GearboxHot => "gearbox-hot",
            Danger::ChargingAtNight => "charging-at-night",
            Danger::Charging => "charging",
            Danger::Airbag => "airbag",
            Danger::ParticulateFilterAndMore => "particulate-filter-and-more",
            Danger::ParticulateFilter => "particulate-filter",
        }
    }

    /// The danger with this key.
    pub fn from_key(key: &str) -> Option<Danger> {
        Danger::ALL.into_iter().find(|danger| danger.key() == key)
    }

    /// How pressing it is.
    pub const fn urgency(self) -> Urgency {
        match self {
            Danger::Brakes
            | Danger::Steering
            | Danger::Wheel
            | Danger::Fire
            | Danger::ThrottleOpen
            | Danger::FuelSmell
            | Danger::ExhaustInside
            | Danger::HighVoltage
            | Danger::OilPressure
            | Danger::Overheating
            | Danger::EngineKnock
            | Danger::EngineLampFlashing
            | Danger::GearboxHot
            | Danger::ChargingAtNight => Urgency::Stop,
            Danger::Charging | Danger::ParticulateFilterAndMore => Urgency::Gently,
            Danger::Airbag | Danger::ParticulateFilter => Urgency::Soon,
        }
    }

    /// What must not be done while it stands.
    const fn forbids(self) -> Forbidden {
        match self {
            Danger::Fire
            | Danger::ThrottleOpen
            | Danger::FuelSmell
            | Danger::HighVoltage
            | Danger::OilPressure
            | Danger::Overheating
            | Danger::EngineKnock => Forbidden::Running,
            Danger::Brakes
            | Danger::Steering
            | Danger::Wheel
            | Danger::ExhaustInside
            | Danger::EngineLampFlashing
            | Danger::GearboxHot
            | Danger::ChargingAtNight => Forbidden::Driving,
            Danger::Charging
            | Danger::Airbag
            | Danger::ParticulateFilterAndMore
            | Danger::ParticulateFilter => Forbidden::Nothing,
        }
    }
}

impl Forbidden {
    /// Whether the owner may make a check all the same. What a workshop does there is the workshop's to judge.
    pub(super) fn allows(self, check: &Check) -> bool {
        if check.is_for_a_workshop() {
            true
        } else if check.is_a_drive() {
            self < Forbidden::Driving
        } else {
            !check.runs || self < Forbidden::Running
        }
    }
}

impl Trouble {
    /// What must be read before any list: the most pressing first, each danger once.
    pub fn stop_first(&self, complaint: &Complaint<'_>) -> Vec<Stop> {
        let shown = self.symptoms.iter().filter(|symptom| complaint.shown.contains(&symptom.key));
        let shown: Vec<_> = shown.collect();
        let by_symptom = shown.iter().filter_map(|symptom| {
            Some(Stop { danger: symptom.danger?, sign: Sign::Symptom(symptom.key.clone()) })
        });
        let by_code = complaint
            .codes
            .iter()
            .filter_map(|code| Some(Stop { danger: code.danger?, sign: Sign::Code(code.code.clone()) }));
        let mut stops: Vec<_> = by_symptom.chain(by_code).collect();
        let lamps = shown.iter().filter(|symptom| symptom.about == About::Lamps).count();
        let worse = stops.iter().any(|stop| stop.danger.urgency() < Urgency::Soon);
        for stop in &mut stops {
            stop.danger = match stop.danger {
                Danger::Charging if complaint.at_night => Danger::ChargingAtNight,
                Danger::ParticulateFilter if lamps > 1 || worse => Danger::ParticulateFilterAndMore,
                danger => danger,
            };
        }
        stops.sort_by_key(|stop| stop.danger);
        stops.dedup_by_key(|stop| stop.danger);
        stops
    }

    /// What the dangers forbid as far as the answers go.
    pub(super) fn forbidden(&self, complaint: &Complaint<'_>) -> Forbidden {
        let filled = complaint
            .answers
            .iter()
            .any(|answered| answered.check == COOLANT && answered.answer == Answer::NotFound);
        let stops = self.stop_first(complaint).into_iter();
        let standing = stops.filter(|stop| stop.danger != Danger::Overheating || !filled);
        standing.map(|stop| stop.danger.forbids()).max().unwrap_or_default()
    }
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;
    use crate::testing::{car, day};
    use crate::trouble::codes::{Code, Codes};
    use crate::trouble::{Answered, CodeSign};

    fn dangers(shown: &[&str], at_night: bool) -> Vec<Danger> {
        let shown = shown.iter().map(|&key| key.to_owned()).collect();
        dangers_of(&Complaint { shown, at_night, ..Complaint::of(&car(), day("2025-01-01")) })
    }

    fn dangers_of(complaint: &Complaint<'_>) -> Vec<Danger> {
        Trouble::shipped().unwrap().stop_first(complaint).into_iter().map(|stop| stop.danger).collect()
    }

    fn sign(code: &str) -> CodeSign {
        CodeSign::of(Codes::shipped().unwrap().get(Code::parse(code).unwrap()).unwrap())
    }

    #[test]
    fn each_danger_that_the_work_names_is_raised_by_its_symptom() {
        for (symptom, danger) in [
            ("engine-lamp-flashing", Danger::EngineLampFlashing),
            ("oil-lamp", Danger::OilPressure),
            ("overheats", Danger::Overheating),
            ("temperature-lamp", Danger::Overheating),
            ("brake-lamp", Danger::Brakes),
            ("soft-brake-pedal", Danger::Brakes),
            ("hard-brake-pedal", Danger::Brakes),
            ("heavy-steering", Danger::Steering),
            ("loose-steering", Danger::Steering),
            ("wheel-loose", Danger::Wheel),
            ("fuel-smell", Danger::FuelSmell),
            ("exhaust-inside", Danger::ExhaustInside),
            ("airbag-lamp", Danger::Airbag),
            ("high-voltage-lamp", Danger::HighVoltage),
            ("particulate-filter-lamp", Danger::ParticulateFilter),
            ("smoke-from-bonnet", Danger::Fire),
        ] {
            assert_eq!(dangers(&[symptom], false), [danger], "{symptom}");
        }
    }

    #[test]
    fn every_danger_can_arise() {
        let table = Trouble::shipped().unwrap();
        let all: Vec<_> = table.symptoms().iter().map(|symptom| symptom.key.as_str()).collect();
        let mut raised = dangers(&all, false);
        let codes = Codes::shipped().unwrap().rows().map(CodeSign::of).collect();
        raised.extend(dangers_of(&Complaint { codes, ..Complaint::of(&car(), day("2025-01-01")) }));
        raised.extend(dangers(&["charge-lamp", "particulate-filter-lamp"], true));
        raised.extend(dangers(&["particulate-filter-lamp"], true));
        for danger in Danger::ALL {
            assert!(raised.contains(&danger), "{danger:?}");
            assert_eq!(Danger::from_key(danger.key()), Some(danger));
        }
    }

    #[test]
    fn an_idle_that_is_rough_waits() {
        assert_eq!(dangers(&["rough-idle", "engine-lamp", "thirst"], true), []);
    }

    #[test]
    fn a_battery_that_is_not_charged_is_worse_at_night() {
        assert_eq!(dangers(&["charge-lamp"], false), [Danger::Charging]);
        assert_eq!(dangers(&["charge-lamp"], true), [Danger::ChargingAtNight]);
        assert!(Danger::ChargingAtNight.urgency() < Danger::Charging.urgency());
    }

    #[test]
    fn the_filter_is_not_burnt_clean_while_another_lamp_is_on() {
        let both = dangers(&["particulate-filter-lamp", "engine-lamp"], false);
        assert_eq!(both, [Danger::ParticulateFilterAndMore]);
        assert_eq!(dangers(&["particulate-filter-lamp", "thirst"], false), [Danger::ParticulateFilter]);
        let hot = dangers(&["particulate-filter-lamp", "overheats"], false);
        assert_eq!(hot, [Danger::Overheating, Danger::ParticulateFilterAndMore]);
    }

    #[test]
    fn the_most_pressing_comes_first_and_each_danger_once() {
        let found = dangers(&["airbag-lamp", "overheats", "temperature-lamp", "soft-brake-pedal"], false);
        assert_eq!(found, [Danger::Brakes, Danger::Overheating, Danger::Airbag]);
        let urgencies: Vec<_> = Danger::ALL.into_iter().map(Danger::urgency).collect();
        assert_eq!(urgencies.first(), Some(&Urgency::Stop));
    }

    #[test]
    fn a_code_that_stops_a_car_does_so_without_a_symptom() {
        let vehicle = car();
        for (code, danger) in [
            ("P0524", Danger::OilPressure),
            ("P0217", Danger::Overheating),
            ("P0093", Danger::FuelSmell),
            ("P2111", Danger::ThrottleOpen),
            ("P0218", Danger::GearboxHot),
            ("P0AA6", Danger::HighVoltage),
        ] {
            let complaint =
                Complaint { codes: vec![sign(code)], ..Complaint::of(&vehicle, day("2025-01-01")) };
            let stops = Trouble::shipped().unwrap().stop_first(&complaint);
            assert_eq!(stops, [Stop { danger, sign: Sign::Code(code.to_owned()) }]);
        }
    }

    #[test]
    fn a_check_that_a_danger_forbids_is_held_back_and_named() {
        let (table, vehicle) = (Trouble::shipped().unwrap(), car());
        for symptom in table.symptoms() {
            let Some(danger) = symptom.danger else { continue };
            let shown = vec![symptom.key.clone()];
            let complaint = Complaint { shown, ..Complaint::of(&vehicle, day("2025-01-01")) };
            let plan = table.plan(&complaint);
            for check in plan.rows.iter().map(|row| row.check).filter(|check| !check.is_for_a_workshop()) {
                assert!(!check.runs || danger.forbids() < Forbidden::Running, "{danger:?}: {}", check.key);
                assert!(
                    !check.is_a_drive() || danger.forbids() == Forbidden::Nothing,
                    "{danger:?}: {}",
                    check.key
                );
            }
            assert!(plan.held.iter().all(|check| check.runs || check.is_a_drive()), "{danger:?}");
        }
    }

    #[test]
    fn an_engine_that_overheated_runs_for_a_check_only_when_its_coolant_is_there() {
        let table = Trouble::shipped().unwrap();
        let vehicle = car();
        let shown = vec!["overheats".to_owned()];
        let mut complaint = Complaint { shown, ..Complaint::of(&vehicle, day("2025-01-01")) };
        let runs = |complaint: &Complaint<'_>| table.plan(complaint).rows.iter().any(|row| row.check.runs);
        assert!(!runs(&complaint) && !table.plan(&complaint).held.is_empty());
        for (answer, may_run) in [(Answer::Found, false), (Answer::Skipped, false), (Answer::NotFound, true)]
        {
            complaint.answers = vec![Answered { check: COOLANT.to_owned(), answer }];
            assert_eq!(runs(&complaint), may_run, "{answer:?}");
        }
    }
}
