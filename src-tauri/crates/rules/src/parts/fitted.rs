//! What was fitted, as the book tells it, and the time and distance between two days.

use units::{Day, Distance, Money, Quantity};

use crate::running::Travelled;
use crate::upkeep::ItemRef;

/// A part or a fluid on a line of a visit. Texts are as written and may be empty.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Fitted<'a> {
    /// The item that it served, where someone said so.
    pub item: Option<&'a ItemRef>,
    /// Who made it.
    pub maker: &'a str,
    /// The maker's number.
    pub number: &'a str,
    /// What it is.
    pub name: &'a str,
    /// How much or how many.
    pub quantity: Quantity,
    /// What all of it cost.
    pub price: Option<Money>,
    /// Where it was bought or fitted; empty when the owner did it.
    pub shop: &'a str,
    /// When it was fitted.
    pub at: Moment,
    /// The key of its kind, where someone said which.
    pub kind: Option<&'a str>,
}

/// A day, and how far the car had gone on it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Moment {
    /// The day.
    pub day: Day,
    /// How far the car had gone; `None` when nobody wrote it down.
    pub travelled: Option<Travelled>,
}

/// How long something was in the car.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Span {
    /// Whole days.
    pub days: u32,
    /// How far the car went; `None` when it is not known at either end, or is less at the later one.
    pub distance: Option<Distance>,
}

impl Moment {
    /// The same day with the farther of two distances, of which either may be unknown.
    #[must_use]
    pub(super) fn or_farther(self, other: Moment) -> Moment {
        Moment { day: self.day, travelled: self.travelled.max(other.travelled) }
    }
}

impl Span {
    /// From one moment to a later one; no time at all when the other is not later.
    pub fn between(from: Moment, to: Moment) -> Span {
        let distance = to.travelled.zip(from.travelled).map(|(to, from)| to.since(from));
        Span {
            days: u32::try_from(to.day.days_since(from.day)).unwrap_or(0),
            distance: distance.filter(|distance| *distance >= Distance::ZERO),
        }
    }
}
