//! How a car is driven, as far as it shortens intervals.

/// One way of driving that wears a car faster.
///
/// Each is one plain question to the owner. Makers list the same under severe use or special operating
/// conditions (for example the 2008 Chevrolet Optra and Hyundai owner's manuals).
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Condition {
    /// Mostly short town trips, on which the engine hardly gets warm.
    ShortTrips,
    /// Towing or a heavy load.
    Towing,
    /// Dust or unmade roads.
    Dust,
    /// Much standing traffic or idling.
    StandingTraffic,
}

/// The owner's answers to the four questions on how the car is driven.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
#[expect(clippy::struct_excessive_bools, reason = "four independent questions with yes or no for an answer")]
pub struct Conditions {
    /// Mostly short town trips.
    pub short_trips: bool,
    /// Towing or a heavy load.
    pub towing: bool,
    /// Dust or unmade roads.
    pub dust: bool,
    /// Much standing traffic or idling.
    pub standing_traffic: bool,
}

impl Condition {
    /// Every condition, in the order in which the questions are asked.
    pub const ALL: [Condition; 4] =
        [Condition::ShortTrips, Condition::Towing, Condition::Dust, Condition::StandingTraffic];

    /// Its name in the words.
    pub const fn key(self) -> &'static str {
        match self {
            Condition::ShortTrips => "short-trips",
            Condition::Towing => "towing",
            Condition::Dust => "dust",
            Condition::StandingTraffic => "standing",
        }
    }
}

impl Conditions {
    /// Whether the owner said yes to this one.
    pub const fn has(self, condition: Condition) -> bool {
        match condition {
            Condition::ShortTrips => self.short_trips,
            Condition::Towing => self.towing,
            Condition::Dust => self.dust,
            Condition::StandingTraffic => self.standing_traffic,
        }
    }
}

impl FromIterator<Condition> for Conditions {
    fn from_iter<I: IntoIterator<Item = Condition>>(conditions: I) -> Conditions {
        let mut answers = Conditions::default();
        for condition in conditions {
            match condition {
                Condition::ShortTrips => answers.short_trips = true,
                Condition::Towing => answers.towing = true,
                Condition::Dust => answers.dust = true,
                Condition::StandingTraffic => answers.standing_traffic = true,
            }
        }
        answers
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_answer_is_yes_only_for_what_was_named() {
        for named in Condition::ALL {
            let answers: Conditions = [named].into_iter().collect();
            for asked in Condition::ALL {
                assert_eq!(answers.has(asked), asked == named);
            }
        }
    }
}
