//! The life of one code through the scans of a book: first seen, cleared, came back, gone.

use units::{Distance, DistanceUnit};

use super::Status;
use crate::parts::{Moment, Span};

/// How far a car goes without a code before the code counts as gone, when its own tests have not told. Common
/// practice: within some 500 km, or 300 miles, an everyday car has run them all.
pub const GONE_DISTANCE: Distance = Distance::whole(500, DistanceUnit::Kilometre);

/// The same in days, for when nobody wrote down how far it went. Common practice.
pub const GONE_DAYS: u32 = 30;

/// Something that the book says of a code.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Event {
    /// When, and how far the car had gone.
    pub at: Moment,
    /// What.
    pub what: What,
    /// Whether the readiness bytes of the same scan say that every test of the car is finished; `false` when
    /// they were not read.
    pub all_ready: bool,
}

/// What can be said of a code.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum What {
    /// A scan had it.
    Seen(Status),
    /// A scan did not have it in any list that it read.
    Absent,
    /// The codes were cleared, or the battery was off long enough to do the same.
    Cleared,
}

/// How a code stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Standing {
    /// The last that is known is that it is there.
    Present,
    /// It was cleared at this moment, and it is not yet known whether the fault is mended.
    Cleared(Moment),
    /// A scan at this moment did not have it any more, after the car had the time to find it again.
    Gone(Moment),
}

/// A time at which a code came back.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Return {
    /// When it was cleared, or first found gone by itself.
    pub left: Moment,
    /// Whether it had been cleared; otherwise it had gone by itself.
    pub was_cleared: bool,
    /// When it was seen again.
    pub back: Moment,
    /// How long and how far it had stayed away, at most: it was seen at `back`, and may have been there
    /// before.
    pub after: Span,
}

/// Something that became of a code after it was first seen.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Turn {
    /// The codes were cleared, this one with them unless it was gone already.
    Cleared(Moment),
    /// A scan did not have it any more, after the car had the time to find it again.
    Gone(Moment),
    /// It came back.
    Back(Return),
}

/// What must be said along with a code's standing.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Warning {
    /// Cleared is not mended: clearing wipes out the report and leaves the fault.
    NotMended,
    /// Clearing also wipes out what the car has finished of its own tests, and an inspection may turn it away
    /// until it has finished them again.
    ReadinessLost,
    /// It was last seen in the list that no tool can clear: it goes when the car has tested itself.
    CannotBeCleared,
}

/// The life of one code.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Life {
    /// When it was first seen.
    pub first: Moment,
    /// When it was last seen.
    pub last: Moment,
    /// Its status when it was last seen.
    pub status: Status,
    /// How many scans had it; 1 or more.
    pub times: usize,
    /// All that became of it since, in the order in which it happened.
    pub turns: Vec<Turn>,
    /// How it stands now.
    pub standing: Standing,
    /// Whether no scan since it was last cleared says that every test of the car is finished.
    pub readiness_lost: bool,
}

/// The life of a code; `None` when no scan had it.
///
/// The days may come in any order; events of one day must come in the order in which they happened.
///
/// - A code that was cleared is gone once a scan is without it and either says that every test is finished,
///   or was made [`GONE_DISTANCE`] later ([`GONE_DAYS`] where the distance is not known).
/// - A code that was not cleared and that a scan is without is gone: the control unit drops one after some
///   forty warm-ups without the fault, a pending one after the next drive.
/// - A permanent code survives clearing, so that seeing it again is not a return.
pub fn life(events: &[Event]) -> Option<Life> {
    let mut events = events.to_vec();
    events.sort_by_key(|event| event.at.day);
    let mut life: Option<Life> = None;
    for event in events {
        match (&mut life, event.what) {
            (None, What::Seen(status)) => life = Some(Life::begin(event.at, status)),
            (None, _) => {}
            (Some(life), what) => life.go_on(event, what),
        }
    }
    life
}

impl Life {
    fn begin(at: Moment, status: Status) -> Life {
        Life {
            first: at,
            last: at,
            status,
            times: 1,
            turns: Vec::new(),
            standing: Standing::Present,
            readiness_lost: false,
        }
    }

    fn go_on(&mut self, event: Event, what: What) {
        match what {
            What::Seen(status) => self.seen(event.at, status),
            What::Absent => self.absent(event),
            What::Cleared => self.clear(event.at),
        }
        if event.all_ready && what != What::Cleared {
            self.readiness_lost = false;
        }
    }

    fn seen(&mut self, at: Moment, status: Status) {
        let left = match self.standing {
            Standing::Present => None,
            Standing::Cleared(_) if status == Status::Permanent => None,
            Standing::Cleared(left) => Some((left, true)),
            Standing::Gone(left) => {
                let cleared =
                    self.cleared().filter(|cleared| (self.last.day..=left.day).contains(&cleared.day));
                Some((cleared.unwrap_or(left), cleared.is_some()))
            }
        };
        if let Some((left, was_cleared)) = left {
            let after = Span::between(left, at);
            self.turns.push(Turn::Back(Return { left, was_cleared, back: at, after }));
            self.standing = Standing::Present;
        }
        (self.last, self.status, self.times) = (at, status, self.times + 1);
    }

    fn absent(&mut self, event: Event) {
        let gone = match self.standing {
            Standing::Present => true,
            Standing::Cleared(cleared) => event.all_ready || is_far(Span::between(cleared, event.at)),
            Standing::Gone(_) => false,
        };
        if gone {
            self.standing = Standing::Gone(event.at);
            self.turns.push(Turn::Gone(event.at));
        }
    }

    /// Clearing takes the readiness even when this code was gone by then.
    fn clear(&mut self, at: Moment) {
        if !matches!(self.standing, Standing::Gone(_)) {
            self.standing = Standing::Cleared(at);
        }
        self.turns.push(Turn::Cleared(at));
        self.readiness_lost = true;
    }

    /// When it was last cleared, once it had been seen.
    pub fn cleared(&self) -> Option<Moment> {
        self.turns.iter().rev().find_map(|turn| match turn {
            Turn::Cleared(at) => Some(*at),
            Turn::Gone(_) | Turn::Back(_) => None,
        })
    }

    /// Each time that it came back, the first one first.
    pub fn returns(&self) -> impl Iterator<Item = Return> + '_ {
        self.turns.iter().filter_map(|turn| match turn {
            Turn::Back(back) => Some(*back),
            Turn::Cleared(_) | Turn::Gone(_) => None,
        })
    }

    /// What must be said along with it, in the order of [`Warning`].
    pub fn warnings(&self) -> Vec<Warning> {
        let not_mended = matches!(self.standing, Standing::Cleared(_));
        let permanent = self.status == Status::Permanent && !matches!(self.standing, Standing::Gone(_));
        let warnings = [
            not_mended.then_some(Warning::NotMended),
            self.readiness_lost.then_some(Warning::ReadinessLost),
            permanent.then_some(Warning::CannotBeCleared),
        ];
        warnings.into_iter().flatten().collect()
    }
}

/// Whether the car had the time to find a fault again.
fn is_far(span: Span) -> bool {
    span.distance.map_or(span.days >= GONE_DAYS, |distance| distance >= GONE_DISTANCE)
}

impl Standing {
    /// Its name in the words, as in `code-standing-gone`.
    pub const fn key(self) -> &'static str {
        match self {
            Standing::Present => "present",
            Standing::Cleared(_) => "cleared",
            Standing::Gone(_) => "gone",
        }
    }
}

impl Warning {
    /// Every warning.
    pub const ALL: [Warning; 3] = [Warning::NotMended, Warning::ReadinessLost, Warning::CannotBeCleared];

    /// Its name in the words, as in `code-warning-not-mended`.
    pub const fn key(self) -> &'static str {
        match self {
            Warning::NotMended => "not-mended",
            Warning::ReadinessLost => "readiness-lost",
            Warning::CannotBeCleared => "cannot-be-cleared",
        }
    }
}

#[cfg(test)]
#[path = "life_tests.rs"]
mod tests;
