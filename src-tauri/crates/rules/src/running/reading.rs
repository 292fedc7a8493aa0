//! What an odometer showed, and when one took another's place.

use units::{Day, Distance};

/// What the owner says of a reading, in the three states of an odometer disclosure (49 CFR 580, appendix B).
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub enum OdometerStatus {
    /// The reading is the distance the car has gone.
    #[default]
    Actual,
    /// The instrument has run over its last digit: the car has gone farther than it shows.
    ExceedsMechanicalLimits,
    /// The reading is not the distance the car has gone, and how far it is off is not known.
    NotActual,
}

/// One look at the odometer.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Reading {
    /// When.
    pub day: Day,
    /// What the instrument showed.
    pub shown: Distance,
    /// What the owner says of it.
    pub status: OdometerStatus,
}

/// A new instrument in the old one's place.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Instrument {
    /// When it was fitted.
    pub day: Day,
    /// The last that the old one showed.
    pub old: Distance,
    /// The first that the new one showed.
    pub new: Distance,
}
