//! What is at home, against what several jobs need: nothing is counted twice.

use std::collections::BTreeSet;

use units::{Measure, Quantity};

use super::number::normal;
use super::{Bought, InStock, Notes, PartNumber, Warning};
use crate::upkeep::ItemRef;

/// A part or a fluid that a job needs. Texts may be empty.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Wanted<'a> {
    /// Who makes it.
    pub maker: &'a str,
    /// The maker's number.
    pub number: &'a str,
    /// What it is.
    pub name: &'a str,
    /// The item that it is for.
    pub item: &'a ItemRef,
    /// The key of its kind, where someone said which.
    pub kind: Option<&'a str>,
    /// How much or how many.
    pub quantity: Quantity,
}

/// How a need is met, in thousandths of its measure.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Met {
    /// How much was at home for it when its turn came.
    pub at_home: u32,
    /// How much is still missing.
    pub missing: u32,
}

/// What is at home, from which one need after the other is met.
#[derive(Debug)]
pub struct Home<'s, 'a> {
    /// What is there, and how much no need has taken yet.
    left: Vec<(InStock<'a>, u32)>,
    notes: &'s Notes<'a>,
}

/// How something at home answers to a need.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Fit {
    /// By its number.
    Number,
    /// By what it is, since it or the need has no number.
    Description,
}

impl<'s, 'a> Home<'s, 'a> {
    /// Everything that is at home.
    pub fn new(stock: &[InStock<'a>], notes: &'s Notes<'a>) -> Home<'s, 'a> {
        Home { left: stock.iter().map(|stock| (*stock, stock.left.thousandths())).collect(), notes }
    }

    /// Takes what a need asks for, as far as it is there: by number first, then by what it is.
    ///
    /// What a note warns of meets no need, and for a part that it warns of the number in its place does.
    pub fn take(&mut self, wanted: &Wanted<'_>) -> Met {
        let needed = wanted.quantity.thousandths();
        let asked = asked(wanted.number, self.notes);
        let notes = self.notes;
        let (mut at_home, mut missing) = (0_u32, needed);
        for how in [Fit::Number, Fit::Description] {
            let fitting =
                |(stock, _): &&mut (InStock<'a>, u32)| fit(stock, wanted, &asked, notes) == Some(how);
            for (_, left) in self.left.iter_mut().filter(fitting) {
                at_home = at_home.saturating_add(*left);
                let taken = missing.min(*left);
                missing -= taken;
                *left -= taken;
            }
        }
        Met { at_home, missing }
    }
}

/// The numbers that may be bought for this one: itself, and what notes name in its place, as far as they lead.
fn asked(number: &str, notes: &Notes<'_>) -> Vec<PartNumber> {
    let mut asked = Vec::new();
    let mut seen = BTreeSet::new();
    let mut next = PartNumber::new(number);
    while let Some(number) = next.filter(|number| seen.insert(number.clone())) {
        next = match notes.warning(&number) {
            Some(Warning::Wrong { instead } | Warning::Superseded { instead }) => PartNumber::new(instead),
            None => None,
        };
        asked.push(number);
    }
    asked
}

fn fit(stock: &InStock<'_>, wanted: &Wanted<'_>, asked: &[PartNumber], notes: &Notes<'_>) -> Option<Fit> {
    let bought = &stock.bought;
    if stock.left.measure != wanted.quantity.measure {
        return None;
    }
    match (PartNumber::new(bought.number), asked) {
        (Some(number), _) if notes.warning(&number).is_some() => None,
        (Some(number), [_, ..]) => {
            asked.iter().any(|asked| notes.are_same(asked, &number)).then_some(Fit::Number)
        }
        _ => is_described(bought, wanted).then_some(Fit::Description),
    }
}

/// Whether something without a number is what is needed: by its name, or a fluid by the item that it was bought for.
fn is_described(bought: &Bought<'_>, wanted: &Wanted<'_>) -> bool {
    let conflict =
        |one: &str, other: &str| !one.is_empty() && !other.is_empty() && normal(one) != normal(other);
    let kinds = conflict(bought.kind.unwrap_or_default(), wanted.kind.unwrap_or_default());
    let named = !bought.name.is_empty() && normal(bought.name) == normal(wanted.name);
    let fluid = wanted.quantity.measure == Measure::Litre && bought.item == Some(wanted.item);
    !kinds && !conflict(bought.maker, wanted.maker) && (named || fluid)
}

#[cfg(test)]
#[path = "home_tests.rs"]
mod tests;
