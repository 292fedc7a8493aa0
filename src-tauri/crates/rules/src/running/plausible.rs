//! Whether a reading can be: asked about when it cannot, never silently dropped.

use units::{Day, Distance, DistanceUnit};

use super::{OdometerStatus, Point, Reading, Track, Travelled};

/// Faster than this between two readings is asked about (common practice: a day and night of motorway).
pub const FASTEST_PER_DAY: Distance = Distance::whole(2_500, DistanceUnit::Kilometre);

/// What there is to ask about a reading before it is kept.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Plausibility {
    /// Nothing.
    Fine,
    /// It is lower than an earlier one, or than the highest of its own day.
    Lower {
        /// What was shown then.
        than: Distance,
        /// The day of the other reading, which may be the new one's.
        on: Day,
    },
    /// It was put in afterwards for an earlier day, and is higher than one of a later day.
    Higher {
        /// What was shown then.
        than: Distance,
        /// The day of the later reading.
        on: Day,
    },
    /// The car would have gone faster than [`FASTEST_PER_DAY`].
    TooFast {
        /// How far it would have gone each day.
        per_day: Distance,
        /// From the earlier of the two days.
        from: Day,
        /// To the later one; the same day when both readings are of one day.
        to: Day,
    },
}

impl Track {
    /// Holds a new reading against the readings of the days before it, of the same day, and of the days after.
    ///
    /// An equal reading is fine. Nobody notes the hour, so a new reading counts as the last of its day, and one
    /// that is lower than another of that day is asked about: it is mistyped, or it was read earlier in the day
    /// and is kept. A reading that the owner marks as not actual is never asked about.
    pub fn plausibility(&self, new: Reading) -> Plausibility {
        if new.status == OdometerStatus::NotActual {
            return Plausibility::Fine;
        }
        let track = self.with(new);
        let here = track.travelled(new.day, new.shown);
        let points = track.points();
        let before = points.partition_point(|point| point.day < new.day);
        let after = points.partition_point(|point| point.day <= new.day);
        let (earlier, same_day) = (points[..before].last(), &points[before..after]);
        // Only the highest of the day can lie beyond the new reading, and only the lowest farthest behind it.
        [earlier, same_day.last(), same_day.first()]
            .into_iter()
            .flatten()
            .find_map(|point| behind(point, new.day, here))
            .or_else(|| points.get(after).and_then(|point| ahead(point, new.day, here)))
            .unwrap_or(Plausibility::Fine)
    }
}

fn behind(earlier: &Point, day: Day, here: Travelled) -> Option<Plausibility> {
    if here < earlier.travelled {
        return Some(Plausibility::Lower { than: earlier.shown, on: earlier.day });
    }
    too_fast(here.since(earlier.travelled), earlier.day, day)
}

fn ahead(later: &Point, day: Day, here: Travelled) -> Option<Plausibility> {
    if here > later.travelled {
        return Some(Plausibility::Higher { than: later.shown, on: later.day });
    }
    too_fast(later.travelled.since(here), day, later.day)
}

fn too_fast(distance: Distance, from: Day, to: Day) -> Option<Plausibility> {
    let days = i64::from(to.days_since(from).max(1));
    let per_day = Distance::from_millimetres(distance.millimetres() / days);
    (per_day > FASTEST_PER_DAY).then_some(Plausibility::TooFast { per_day, from, to })
}

#[cfg(test)]
#[path = "plausible_tests.rs"]
mod tests;
