//! How far a car has gone and how fast it goes: readings, instruments, plausibility, pace.

mod pace;
mod plausible;
mod reading;
mod track;

pub use pace::{DaySpan, Estimate, Pace};
pub use plausible::{FASTEST_PER_DAY, Plausibility};
pub use reading::{Instrument, OdometerStatus, Reading};
pub use track::{Point, Track, Travelled};
