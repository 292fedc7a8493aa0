//! A history as a line with gaps: the same stretches of which the questions speak, for whoever draws them.

use units::{Day, DistanceUnit};

use super::trail::{GAP, Trail};
use crate::code::Claims;

/// How far a car had gone on a day, across replaced instruments.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Place {
    /// The day.
    pub day: Day,
    /// The way in whole units of the card; negative where the readings contradict each other.
    pub way: i64,
}

/// The way of a car from its first use, if the card names it, over its visits to the day of issue.
///
/// It is empty where the card lists no visit.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Timeline {
    /// Stretches in which no gap lies, each of two places or more, in order of day.
    pub runs: Vec<Vec<Place>>,
    /// Stretches without a visit that give cause to ask, in order of day: where each begins and ends.
    pub gaps: Vec<[Place; 2]>,
}

/// The bounds beyond which a stretch without a visit is a gap.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct GapBound {
    /// In whole months.
    pub months: u32,
    /// In whole units of the card.
    pub distance: i64,
}

/// The way of the car that these claims tell.
pub fn timeline(claims: &Claims) -> Timeline {
    Trail::new(claims).timeline()
}

impl GapBound {
    /// The bounds for a card in this unit. In days the time is `GAP_DAYS`: two years with a leap day.
    pub const fn of(unit: DistanceUnit) -> GapBound {
        GapBound { months: 24, distance: GAP.of(unit) }
    }
}

impl Timeline {
    /// Goes on from one place to the next.
    pub(super) fn go(&mut self, from: Place, to: Place, is_gap: bool) {
        if is_gap {
            self.gaps.push([from, to]);
            return;
        }
        match self.runs.last_mut() {
            Some(run) if run.last() == Some(&from) => run.push(to),
            _ => self.runs.push(vec![from, to]),
        }
    }
}
