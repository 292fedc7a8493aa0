//! How far a car has gone and how fast it goes: readings, instruments, plausibility, pace.

mod habit;
mod pace;
mod plausible;
mod reading;
mod steps;
mod theil_sen;
mod track;
mod trust;

pub use pace::{DaySpan, Estimate, Pace};
pub use plausible::{FASTEST_PER_DAY, Plausibility};
pub use reading::{Instrument, OdometerStatus, Reading};
pub use track::{Point, Track, Travelled};
