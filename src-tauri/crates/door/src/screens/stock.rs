//! What is at home, what is noted of parts, and what is therefore left to buy.

use std::collections::{BTreeMap, BTreeSet};

use book::content::{Mark, PartContent, PartNoteContent};
use rules::parts::{Bought, Home, InStock, Note, Notes, PartNumber, Warning, in_stock};
use rules::upkeep::Catalogue;

use super::parts::fitted;
use super::show::{item_view, measure_key, money_view};
use crate::car::{Car, Purchase};
use crate::{NumberForm, PartView, StockView, WarnedView, WarningView};

/// The notes on the parts of a car, and what is at home for it.
pub(crate) struct Stock<'a> {
    /// The notes on parts, in the order of writing, and what they come to.
    noted: &'a [PartNoteContent],
    notes: Notes<'a>,
    there: Vec<InStock<'a>>,
    bought: &'a [Purchase],
}

impl<'a> Stock<'a> {
    pub fn new(car: &'a Car) -> Stock<'a> {
        let notes = notes_of(car);
        let bought: Vec<_> = car.bought.iter().flat_map(lines).collect();
        let fitted: Vec<_> = fitted(car).collect();
        let there = in_stock(&bought, &fitted, &notes);
        Stock { noted: &car.part_notes, notes, there, bought: &car.bought }
    }

    /// What is at home, as the Counter shows it.
    pub fn view(&self, catalogue: &Catalogue) -> Vec<StockView> {
        self.there.iter().filter_map(|stock| self.stock_view(stock, catalogue)).collect()
    }

    fn stock_view(&self, stock: &InStock<'_>, catalogue: &Catalogue) -> Option<StockView> {
        let InStock { bought, left } = stock;
        let holds = |part: &PartContent| part.number == bought.number && part.name == bought.name;
        let purchase = self.bought.iter().rev().find(|purchase| purchase.content.parts.iter().any(holds))?;
        Some(StockView {
            line: purchase.subject.to_string(),
            part: PartView {
                name: bought.name.to_owned(),
                maker: bought.maker.to_owned(),
                number: bought.number.to_owned(),
                quantity: left.number(),
                measure: measure_key(left.measure).to_owned(),
                price: bought.price.map(money_view),
                served: bought.item.map(|item| item_view(item, catalogue)),
                kind: bought.kind.unwrap_or_default().to_owned(),
            },
            day: bought.day.to_string(),
            shop: bought.shop.to_owned(),
            same: self.same(bought.number),
            warning: self.warning(bought.number),
            note: self.note(bought.number),
        })
    }

    /// What is at home, for needs to take from.
    pub fn home(&self) -> Home<'_, 'a> {
        Home::new(&self.there, &self.notes)
    }

    /// Every line of a purchase, oldest first.
    pub fn bought_lines(&self) -> Vec<Bought<'a>> {
        self.bought.iter().flat_map(lines).collect()
    }

    /// Other numbers for the same part.
    pub fn same(&self, number: &str) -> Vec<NumberForm> {
        let same = PartNumber::new(number).map(|number| self.notes.same(&number)).unwrap_or_default();
        let form = |(number, maker): (PartNumber, &str)| NumberForm {
            maker: maker.to_owned(),
            number: number.written().to_owned(),
        };
        same.into_iter().map(form).collect()
    }

    /// What else was noted of a number last.
    pub fn note(&self, number: &str) -> String {
        let asked = PartNumber::new(number);
        let newest = self.noted.iter().rev();
        let mut of_it = newest.filter(|note| asked.is_some() && PartNumber::new(&note.number) == asked);
        of_it.next().map(|note| note.note.clone()).unwrap_or_default()
    }

    /// What warns of a number.
    pub fn warning(&self, number: &str) -> Option<WarningView> {
        self.notes.warning(&PartNumber::new(number)?).map(warning_view)
    }
}

fn warning_view(warning: Warning<'_>) -> WarningView {
    let (mark, instead) = match warning {
        Warning::Wrong { instead } => ("wrong", instead),
        Warning::Superseded { instead } => ("superseded", instead),
    };
    WarningView { mark: mark.to_owned(), instead: instead.to_owned() }
}

/// The numbers that the notes of a car warn of, each as its newest note has it.
pub(crate) fn warned_numbers(car: &Car) -> Vec<WarnedView> {
    let notes = notes_of(car);
    let numbers = car.part_notes.iter().map(|note| &note.number);
    let newest: BTreeMap<_, _> =
        numbers.filter_map(|number| Some((PartNumber::new(number)?, number))).collect();
    let warned = |(key, number): (PartNumber, &String)| {
        Some(WarnedView { number: number.clone(), warning: notes.warning(&key).map(warning_view)? })
    };
    newest.into_iter().filter_map(warned).collect()
}

/// The keys of what the notes of a car say against these parts, each once: `part-wrong`, `part-superseded`.
pub(crate) fn part_warnings(car: &Car, parts: &[PartContent]) -> Vec<String> {
    let notes = notes_of(car);
    let warned = parts.iter().filter_map(|part| notes.warning(&PartNumber::new(&part.number)?));
    let keys = warned.map(|warning| match warning {
        Warning::Wrong { .. } => "part-wrong",
        Warning::Superseded { .. } => "part-superseded",
    });
    keys.collect::<BTreeSet<_>>().into_iter().map(str::to_owned).collect()
}

/// What is noted of the parts of a car.
pub(super) fn notes_of(car: &Car) -> Notes<'_> {
    Notes::new(car.part_notes.iter().filter_map(note).collect())
}

/// What was bought to be fitted later and is known to have been paid for, so that it is not paid for again in the
/// visit at which it goes in.
pub(super) fn paid_for(car: &Car) -> Vec<Bought<'_>> {
    let paid = |purchase| {
        let whole = Purchase::is_priced(purchase);
        lines(purchase).filter(move |bought| whole || bought.price.is_some())
    };
    car.bought.iter().flat_map(paid).collect()
}

fn note(note: &PartNoteContent) -> Option<Note<'_>> {
    let same = note.same.iter();
    let same = same.filter_map(|same| Some((PartNumber::new(&same.number)?, same.maker.as_str()))).collect();
    let instead = note.instead.as_str();
    let warning = note.mark.map(|mark| match mark {
        Mark::Wrong => Warning::Wrong { instead },
        Mark::Superseded => Warning::Superseded { instead },
    });
    Some(Note { number: PartNumber::new(&note.number)?, same, warning })
}

fn lines(purchase: &Purchase) -> impl Iterator<Item = Bought<'_>> {
    let content = &purchase.content;
    content.parts.iter().map(|part| Bought {
        maker: &part.maker,
        number: &part.number,
        name: &part.name,
        quantity: part.quantity,
        price: part.price,
        shop: &content.shop,
        day: content.day,
        item: part.item.as_ref(),
        kind: part.kind.as_deref(),
    })
}
