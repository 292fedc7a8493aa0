//! Short words for the tests: days, distances and an invented car.
#![allow(clippy::unwrap_used)]

use units::{Day, Distance, DistanceUnit};

use crate::running::{OdometerStatus, Reading};
use crate::vehicle::{Conditions, EngineKind, Equipment, Fitting, Vehicle};

pub fn day(text: &str) -> Day {
    text.parse().unwrap()
}

pub fn km(count: i64) -> Distance {
    Distance::whole(count, DistanceUnit::Kilometre)
}

pub fn mi(count: i64) -> Distance {
    Distance::whole(count, DistanceUnit::Mile)
}

/// A reading in whole kilometres.
pub fn read(on: &str, shown: i64) -> Reading {
    Reading { day: day(on), shown: km(shown), status: OdometerStatus::Actual }
}

/// A petrol car of unknown past that counts in kilometres and is driven gently.
pub fn car() -> Vehicle {
    Vehicle {
        engine: EngineKind::Petrol,
        first_use: None,
        known_from_new: false,
        kept_since: None,
        unit: DistanceUnit::Kilometre,
        equipment: Equipment::default(),
        conditions: Conditions::default(),
        yearly: None,
    }
}

/// The same car, of which somebody said that it has no turbocharger.
pub fn plain_car() -> Vehicle {
    Vehicle { equipment: Equipment::default().with(Fitting::Turbo, Some(false)), ..car() }
}

/// The same car, in the book since it was new on this day.
pub fn new_car(on: &str) -> Vehicle {
    Vehicle { first_use: Some(day(on)), known_from_new: true, ..plain_car() }
}
