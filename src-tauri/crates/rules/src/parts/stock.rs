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
        let known =
            shelves.iter_mut().find(|shelf| shelf.part.measure == of.measure && shelf.part.is(&of, notes));
        match (event, known) {
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

/// How much of a part is at home in this measure, in thousandths.
pub fn at_home(number: &PartNumber, measure: Measure, stock: &[InStock<'_>], notes: &Notes<'_>) -> u32 {
    let is = |stock: &&InStock<'_>| {
        let other = PartNumber::new(stock.bought.number);
        stock.left.measure == measure && other.is_some_and(|other| notes.are_same(number, &other))
    };
    stock.iter().filter(is).fold(0, |sum, stock| sum.saturating_add(stock.left.thousandths()))
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
