//! What a card gives cause to ask: worked out from its claims and today's day, for whoever stands before the car.
//!
//! A question is no accusation. Each kind is asked at most once, with how often it was found and the place where
//! it shows most, so that a long history gives no longer list than a short one. The page on which a scanned card
//! opens works out the same by itself, and `tests/questions-vector.json` holds both to the same answers.
//!
//! A card carries no intervals, so the bounds are common practice: the longest interval that the catalogue gives
//! any engine oil, and the longest that it gives each item of weight. Distances are held against whole units of
//! the card, so that no reader has to convert and round.

mod record;
mod timeline;
mod trail;

use units::{Day, DistanceUnit};

use crate::code::{Claims, InstrumentChange, Item, OdometerReading};
use trail::Trail;

pub use timeline::{GapBound, Place, Timeline, timeline};

/// How many questions are asked at most; those of the least weight are left out.
pub const QUESTIONS_MAX: usize = 8;

/// A card of more than so many days before today is asked about (common practice: a season).
const OLD_CARD_DAYS: i32 = 90;

/// Something to ask the seller, in the order in which they are asked.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Question {
    /// The card lists no visit.
    NoVisits,
    /// Readings that are lower than one of a day before.
    Lower {
        /// How many.
        count: u32,
        /// The one before the deepest fall.
        from: OdometerReading,
        /// The one after it.
        to: OdometerReading,
    },
    /// Stretches in which the car would have gone farther than a car goes.
    Jump {
        /// How many.
        count: u32,
        /// Where the first of them begins.
        from: OdometerReading,
        /// Where it ends.
        to: OdometerReading,
    },
    /// Visits or readings of a day after the day of issue.
    Ahead {
        /// How many.
        count: u32,
        /// The last of these days.
        day: Day,
    },
    /// Stretches without a visit that are longer than the longest interval of an engine oil.
    Gap {
        /// How many.
        count: u32,
        /// Where the longest of them begins.
        from: OdometerReading,
        /// Where it ends: at a visit, or at the day of issue with the latest reading.
        to: OdometerReading,
    },
    /// A long time before the first visit, though none was left out.
    Before {
        /// The first visit.
        to: OdometerReading,
    },
    /// Items of weight without a record, though the car is older or has gone farther than they last.
    Unrecorded {
        /// Their numbers in the catalogue.
        items: Vec<u32>,
    },
    /// Coming work whose day or reading has passed.
    Passed {
        /// Which.
        items: Vec<Item>,
    },
    /// The card was issued long ago.
    OldCard {
        /// The day of issue.
        day: Day,
    },
    /// The card was issued on a day that is still to come.
    Clock {
        /// The day of issue.
        day: Day,
    },
    /// Instruments were replaced.
    Instruments {
        /// How many times.
        count: u32,
        /// The last time.
        last: InstrumentChange,
    },
    /// Visits with a receipt in the book.
    Receipts {
        /// How many have one; may be 0.
        count: u32,
        /// Of how many.
        of: u32,
    },
    /// Visits written down long after their day.
    Late {
        /// How many.
        count: u32,
        /// Of how many.
        of: u32,
        /// The day of the last of them.
        day: Day,
    },
    /// Visits amended since they were written.
    Amended {
        /// How many.
        count: u32,
        /// Of how many.
        of: u32,
        /// The day of the last of them.
        day: Day,
    },
    /// Visits left out to fit the square.
    LeftOut {
        /// How many.
        count: u32,
    },
}

/// What fills the places of a question's sentence; what it does not speak of is absent or empty.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct QuestionValues {
    /// How many.
    pub count: Option<u32>,
    /// Of how many.
    pub of: Option<u32>,
    /// The day that it speaks of, or the first of two.
    pub day: Option<Day>,
    /// The reading of that day, in whole units of the card.
    pub reading: Option<i32>,
    /// The second day.
    pub then: Option<Day>,
    /// The reading of the second day, or of the new instrument, in whole units of the card.
    pub shown: Option<i32>,
    /// The items.
    pub items: Vec<Item>,
}

/// What the claims give cause to ask today, the weightiest first, at most [`QUESTIONS_MAX`].
pub fn questions(claims: &Claims, today: Day) -> Vec<Question> {
    let trail = Trail::new(claims);
    let asked = [
        claims.visits.is_empty().then_some(Question::NoVisits),
        trail.lower(),
        trail.jump(),
        record::ahead(claims),
        trail.gap(),
        trail.before(),
        record::unrecorded(claims, &trail),
        record::passed(claims, today),
        record::age(claims, today),
        record::instruments(claims),
        record::receipts(claims),
        record::late(claims),
        record::amended(claims),
        (claims.left_out > 0).then_some(Question::LeftOut { count: claims.left_out }),
    ];
    asked.into_iter().flatten().take(QUESTIONS_MAX).collect()
}

impl Question {
    /// The key of its sentence.
    pub const fn key(&self) -> &'static str {
        match self {
            Question::NoVisits => "no-visits",
            Question::Lower { .. } => "lower",
            Question::Jump { .. } => "jump",
            Question::Ahead { .. } => "ahead",
            Question::Gap { .. } => "gap",
            Question::Before { .. } => "before",
            Question::Unrecorded { .. } => "unrecorded",
            Question::Passed { .. } => "passed",
            Question::OldCard { .. } => "old-card",
            Question::Clock { .. } => "clock",
            Question::Instruments { .. } => "instruments",
            Question::Receipts { .. } => "receipts",
            Question::Late { .. } => "late",
            Question::Amended { .. } => "amended",
            Question::LeftOut { .. } => "left-out",
        }
    }

    /// What fills the places of its sentence.
    pub fn values(&self) -> QuestionValues {
        match self {
            Question::NoVisits => QuestionValues::default(),
            Question::Lower { count, from, to }
            | Question::Jump { count, from, to }
            | Question::Gap { count, from, to } => {
                QuestionValues { count: Some(*count), ..between(*from, *to) }
            }
            Question::Before { to } => {
                QuestionValues { day: Some(to.day), reading: Some(to.reading), ..QuestionValues::default() }
            }
            Question::Unrecorded { items } => of_items(items.iter().map(|&number| Item::Catalogue(number))),
            Question::Passed { items } => of_items(items.iter().cloned()),
            Question::OldCard { day } | Question::Clock { day } => {
                QuestionValues { day: Some(*day), ..QuestionValues::default() }
            }
            Question::Ahead { count, day } => {
                QuestionValues { count: Some(*count), day: Some(*day), ..QuestionValues::default() }
            }
            Question::Instruments { count, last } => QuestionValues {
                count: Some(*count),
                day: Some(last.day),
                reading: Some(last.old),
                shown: Some(last.new),
                ..QuestionValues::default()
            },
            Question::Receipts { count, of } => {
                QuestionValues { count: Some(*count), of: Some(*of), ..QuestionValues::default() }
            }
            Question::Late { count, of, day } | Question::Amended { count, of, day } => QuestionValues {
                count: Some(*count),
                of: Some(*of),
                day: Some(*day),
                ..QuestionValues::default()
            },
            Question::LeftOut { count } => {
                QuestionValues { count: Some(*count), ..QuestionValues::default() }
            }
        }
    }
}

fn between(from: OdometerReading, to: OdometerReading) -> QuestionValues {
    QuestionValues {
        day: Some(from.day),
        reading: Some(from.reading),
        then: Some(to.day),
        shown: Some(to.reading),
        ..QuestionValues::default()
    }
}

fn of_items(items: impl Iterator<Item = Item>) -> QuestionValues {
    QuestionValues { items: items.collect(), ..QuestionValues::default() }
}

/// How many, within 32 bits.
fn count(many: usize) -> u32 {
    u32::try_from(many).unwrap_or(u32::MAX)
}

/// Bounds of a distance in whole units, for a card in kilometres and one in miles.
#[derive(Debug, Clone, Copy)]
struct Units {
    kilometres: i64,
    miles: i64,
}

impl Units {
    const fn of(self, unit: DistanceUnit) -> i64 {
        match unit {
            DistanceUnit::Kilometre => self.kilometres,
            DistanceUnit::Mile => self.miles,
        }
    }
}
