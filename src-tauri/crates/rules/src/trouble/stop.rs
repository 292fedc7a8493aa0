//! What must be read before any list: when to stop first.

use super::{About, Trouble};

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

/// A danger with the symptom that shows it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Stop {
    /// What the danger is.
    pub danger: Danger,
    /// The key of the first symptom that shows it.
    pub symptom: String,
}

impl Danger {
    /// Every danger, the most pressing first.
    pub const ALL: [Danger; 15] = [
        Danger::Brakes,
        Danger::Steering,
        Danger::Wheel,
        Danger::FuelSmell,
        Danger::ExhaustInside,
        Danger::HighVoltage,
        Danger::OilPressure,
        Danger::Overheating,
        Danger::EngineKnock,
        Danger::EngineLampFlashing,
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
            Danger::FuelSmell => "fuel-smell",
            Danger::ExhaustInside => "exhaust-inside",
            Danger::HighVoltage => "high-voltage",
            Danger::OilPressure => "oil-pressure",
            Danger::Overheating => "overheating",
            Danger::EngineKnock => "engine-knock",
            Danger::EngineLampFlashing => "engine-lamp-flashing",
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
            | Danger::FuelSmell
            | Danger::ExhaustInside
            | Danger::HighVoltage
            | Danger::OilPressure
            | Danger::Overheating
            | Danger::EngineKnock
            | Danger::ChargingAtNight => Urgency::Stop,
            Danger::EngineLampFlashing | Danger::Charging | Danger::ParticulateFilterAndMore => {
                Urgency::Gently
            }
            Danger::Airbag | Danger::ParticulateFilter => Urgency::Soon,
        }
    }
}

impl Trouble {
    /// What must be read before any list, given the keys of the symptoms that show and whether it is dark or
    /// soon will be: the most pressing first, each danger once.
    pub fn stop_first(&self, shown: &[String], at_night: bool) -> Vec<Stop> {
        let shown: Vec<_> = self.symptoms.iter().filter(|symptom| shown.contains(&symptom.key)).collect();
        let lamps = shown.iter().filter(|symptom| symptom.about == About::Lamps).count();
        let here = |danger| match danger {
            Danger::Charging if at_night => Danger::ChargingAtNight,
            Danger::ParticulateFilter if lamps > 1 => Danger::ParticulateFilterAndMore,
            danger => danger,
        };
        let mut stops: Vec<_> = shown
            .iter()
            .filter_map(|symptom| Some(Stop { danger: here(symptom.danger?), symptom: symptom.key.clone() }))
            .collect();
        stops.sort_by_key(|stop| stop.danger);
        stops.dedup_by_key(|stop| stop.danger);
        stops
    }
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;

    fn dangers(shown: &[&str], at_night: bool) -> Vec<Danger> {
        let shown: Vec<_> = shown.iter().map(|&key| key.to_owned()).collect();
        Trouble::shipped().unwrap().stop_first(&shown, at_night).into_iter().map(|stop| stop.danger).collect()
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
        ] {
            assert_eq!(dangers(&[symptom], false), [danger], "{symptom}");
        }
    }

    #[test]
    fn every_danger_can_arise() {
        let table = Trouble::shipped().unwrap();
        let all: Vec<_> = table.symptoms().iter().map(|symptom| symptom.key.as_str()).collect();
        let mut raised = dangers(&all, false);
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
    }

    #[test]
    fn the_most_pressing_comes_first_and_each_danger_once() {
        let found = dangers(&["airbag-lamp", "overheats", "temperature-lamp", "soft-brake-pedal"], false);
        assert_eq!(found, [Danger::Brakes, Danger::Overheating, Danger::Airbag]);
        let urgencies: Vec<_> = Danger::ALL.into_iter().map(Danger::urgency).collect();
        assert_eq!(urgencies.first(), Some(&Urgency::Stop));
    }
}
