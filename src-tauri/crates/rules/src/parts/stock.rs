//! What waits at home: bought, and not fitted yet.

use std::cmp::Reverse;

use units::{Day, Measure, Money, Quantity};

use super::number::normal;
use super::{Fitted, Notes, PartNumber};
use crate::upkeep::ItemRef;

/// A part or a fluid that was bought to be fitted later. Texts are as written and may be empty.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Bought<'a> {
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
    /// Where.
    pub shop: &'a str,
    /// When.
    pub day: Day,
    /// The item for which it is meant, where someone said so.
    pub item: Option<&'a ItemRef>,
    /// The key of its kind, where someone said which.
    pub kind: Option<&'a str>,
}

/// A part or a fluid at home.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct InStock<'a> {
    /// As it was bought last.
    pub bought: Bought<'a>,
    /// How much of it is left.
    pub left: Quantity,
}

/// What is at home, what was bought last first.
///
/// What the owner fitted since it was bought is taken off, whichever of several numbers for the same part he wrote;
/// what a workshop fitted came from the workshop. A part without number is known by maker and name. More fitted
/// than was bought leaves nothing, not less than nothing.
pub fn in_stock<'a>(bought: &[Bought<'a>], fitted: &[Fitted<'a>], notes: &Notes<'_>) -> Vec<InStock<'a>> {
    let (shelves, _) = walk(bought, fitted, notes);
    let mut stock: Vec<_> = shelves.iter().filter_map(Shelf::stock).collect();
    stock.sort_by_key(|stock| Reverse(stock.bought.day));
    stock
}

/// How much of each part that was fitted came from what was at home, in thousandths; in the order of `fitted`.
pub fn from_stock<'a>(bought: &[Bought<'a>], fitted: &[Fitted<'a>], notes: &Notes<'_>) -> Vec<u32> {
    walk(bought, fitted, notes).1
}

/// Everything bought and fitted, one after the other: what is left, and what each part that was fitted took of it.
fn walk<'a>(bought: &[Bought<'a>], fitted: &[Fitted<'a>], notes: &Notes<'_>) -> (Vec<Shelf<'a>>, Vec<u32>) {
    let mut shelves: Vec<Shelf<'a>> = Vec::new();
    let mut taken = vec![0; fitted.len()];
    // Without a purchase nothing is at home, and no part needs to be looked for.
    let events = if bought.is_empty() { Vec::new() } else { events(bought, fitted) };
    for event in events {
        let of = event.part();
        let exact = shelves.iter().position(|shelf| shelf.holds(&of, notes));
        // What goes in under a number may have been bought without one, and the other way round.
        let alike = || shelves.iter().position(|shelf| shelf.left > 0 && shelf.part.is_alike(&of));
        let at = exact.or_else(|| matches!(event, Event::Fitted(..)).then(alike).flatten());
        match (event, at.and_then(|at| shelves.get_mut(at))) {
            (Event::Bought(bought), Some(shelf)) => shelf.add(bought),
            (Event::Bought(bought), None) => shelves.push(Shelf::new(of, bought)),
            (Event::Fitted(at, fitted), Some(shelf)) => {
                taken[at] = shelf.left.min(fitted.quantity.thousandths());
                shelf.left -= taken[at];
            }
            (Event::Fitted(..), None) => {}
        }
    }
    (shelves, taken)
}

#[derive(Clone, Copy)]
enum Event<'e, 'a> {
    Bought(&'e Bought<'a>),
    /// With its place among all that were fitted.
    Fitted(usize, &'e Fitted<'a>),
}

/// What was bought and what the owner fitted, by day; of one day, what was bought comes first.
fn events<'e, 'a>(bought: &'e [Bought<'a>], fitted: &'e [Fitted<'a>]) -> Vec<Event<'e, 'a>> {
    let own = fitted.iter().enumerate().filter(|(_, fitted)| fitted.shop.is_empty());
    let own = own.map(|(at, fitted)| Event::Fitted(at, fitted));
    let mut events: Vec<_> = bought.iter().map(Event::Bought).chain(own).collect();
    events.sort_by_key(|event| match event {
        Event::Bought(bought) => (bought.day, 0),
        Event::Fitted(_, fitted) => (fitted.at.day, 1),
    });
    events
}

impl Event<'_, '_> {
    fn part(&self) -> Known {
        match self {
            Event::Bought(Bought { maker, number, name, quantity, .. })
            | Event::Fitted(_, Fitted { maker, number, name, quantity, .. }) => Known {
                number: PartNumber::new(number),
                named: (normal(maker), normal(name)),
                measure: quantity.measure,
            },
        }
    }
}

/// What a part is known by.
struct Known {
    number: Option<PartNumber>,
    named: (String, String),
    measure: Measure,
}

impl Known {
    fn is(&self, other: &Known, notes: &Notes<'_>) -> bool {
        match (&self.number, &other.number) {
            (Some(one), Some(other)) => notes.are_same(one, other),
            (None, None) => self.named == other.named,
            _ => false,
        }
    }

    /// Whether both have the same name and one of them no number, and nothing tells them apart.
    fn is_alike(&self, other: &Known) -> bool {
        let ((maker, name), (other_maker, other_name)) = (&self.named, &other.named);
        let makers = maker == other_maker || maker.is_empty() || other_maker.is_empty();
        let unnumbered = self.number.is_none() || other.number.is_none();
        self.measure == other.measure && unnumbered && makers && !name.is_empty() && name == other_name
    }
}

/// One kind of part, and how much of it there is.
struct Shelf<'a> {
    part: Known,
    bought: Bought<'a>,
    left: u32,
}

impl<'a> Shelf<'a> {
    fn new(part: Known, bought: &Bought<'a>) -> Shelf<'a> {
        Shelf { part, bought: *bought, left: bought.quantity.thousandths() }
    }

    fn holds(&self, part: &Known, notes: &Notes<'_>) -> bool {
        self.part.measure == part.measure && self.part.is(part, notes)
    }

    fn add(&mut self, bought: &Bought<'a>) {
        self.left = self.left.saturating_add(bought.quantity.thousandths());
        self.bought = *bought;
    }

    fn stock(&self) -> Option<InStock<'a>> {
        let left = Quantity::from_thousandths(self.left, self.part.measure).ok()?;
        Some(InStock { bought: self.bought, left })
    }
}

#[cfg(test)]
#[path = "stock_tests.rs"]
mod tests;
