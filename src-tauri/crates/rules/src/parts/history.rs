//! Each part of a car with everything the book tells of it.

use std::cmp::Reverse;
use std::collections::{BTreeMap, BTreeSet};

use units::{Day, Money, Quantity};

use super::number::normal;
use super::service::Timeline;
use super::{Bought, Fitted, Moment, PartNumber, Service};
use crate::upkeep::ItemRef;

/// A part or a fluid over all the times it was fitted.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Part<'a> {
    /// Every way in which its number was written, the newest first; empty when it has no number.
    pub numbers: Vec<PartNumber>,
    /// Who made it, as written last; empty when nobody said so.
    pub maker: &'a str,
    /// What it is, as written last; empty when nobody said so.
    pub name: &'a str,
    /// The key of its kind, as said last.
    pub kind: Option<&'a str>,
    /// The items that it served, in their order.
    pub items: BTreeSet<&'a ItemRef>,
    /// How much or how many the last time.
    pub quantity: Quantity,
    /// What was paid for it the last time that a price was written down, at a visit or for the shelf at home.
    pub paid: Option<Paid<'a>>,
    /// On how many days it was fitted; 1 or more.
    pub times: usize,
    /// The last of these days.
    pub day: Day,
    /// Where it was bought or fitted on that day; empty when the owner did it.
    pub shop: &'a str,
    /// How long it lasts, by the item that it served on that day; nothing when nobody said which.
    pub service: Service,
}

/// A price that was paid.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Paid<'a> {
    /// What all of it cost, in the currency of that day.
    pub price: Money,
    /// For how much or how many.
    pub quantity: Quantity,
    /// When.
    pub day: Day,
    /// Where; empty when the owner did it.
    pub shop: &'a str,
}

/// What makes two lines the same part.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
enum Same {
    /// The number, and the maker where lines with this number name several.
    Number(PartNumber, String),
    /// Maker and name, where there is no number.
    Named(String, String),
}

/// The makers of each number, in their normal form.
type Makers = BTreeMap<PartNumber, BTreeSet<String>>;

/// Every part of a car, the one fitted last first; those of one day by number, then by maker and name.
///
/// Lines of one day must come in the order of writing; the days may come in any order. A part is known by its
/// number; a line that names no maker means the only one that this number has in the book. A part without number
/// is known by maker and name, compared as numbers are. What was `bought` to be fitted later says what was paid, and
/// makes no part by itself.
pub fn parts<'a>(fitted: &[Fitted<'a>], bought: &[Bought<'a>], now: Moment) -> Vec<Part<'a>> {
    let mut lines = fitted.to_vec();
    lines.sort_by_key(|line| line.at.day);
    let named = |line: &Fitted<'a>| (line.maker, line.number);
    let makers = makers(lines.iter().map(named).chain(bought.iter().map(|line| (line.maker, line.number))));
    let timeline = Timeline::new(lines.iter().copied());
    let mut same: BTreeMap<Same, Vec<Fitted<'a>>> = BTreeMap::new();
    for line in lines {
        same.entry(Same::of((line.maker, line.number, line.name), &makers)).or_default().push(line);
    }
    let shops = last_bought(bought, &makers);
    let part = |(of, lines): (&Same, &Vec<Fitted<'a>>)| {
        let part = Part::of(lines, &timeline, now)?;
        Some(Part { paid: later(part.paid, shops.get(of).copied()), ..part })
    };
    let mut parts: Vec<_> = same.iter().filter_map(part).collect();
    parts.sort_by_key(|part| Reverse(part.day));
    parts
}

/// What was paid for each part that was bought for later, the last time that a price was written down.
fn last_bought<'a>(bought: &[Bought<'a>], makers: &Makers) -> BTreeMap<Same, Paid<'a>> {
    let mut last: BTreeMap<Same, Paid<'a>> = BTreeMap::new();
    for line in bought {
        let Some(price) = line.price else { continue };
        let paid = Paid { price, quantity: line.quantity, day: line.day, shop: line.shop };
        let of = Same::of((line.maker, line.number, line.name), makers);
        let newest = later(last.get(&of).copied(), Some(paid)).unwrap_or(paid);
        last.insert(of, newest);
    }
    last
}

/// The later of two prices; of one day the second.
fn later<'a>(one: Option<Paid<'a>>, other: Option<Paid<'a>>) -> Option<Paid<'a>> {
    one.into_iter().chain(other).max_by_key(|paid| paid.day)
}

/// The makers of each number, from the maker and the number of each line.
fn makers<'a>(lines: impl Iterator<Item = (&'a str, &'a str)>) -> Makers {
    let mut makers = Makers::new();
    for (maker, number) in lines {
        let maker = normal(maker);
        if let Some(number) = PartNumber::new(number).filter(|_| !maker.is_empty()) {
            makers.entry(number).or_default().insert(maker);
        }
    }
    makers
}

impl Same {
    /// By the maker, the number and the name of a line.
    fn of((maker, number, name): (&str, &str, &str), makers: &Makers) -> Same {
        let maker = normal(maker);
        let Some(number) = PartNumber::new(number) else {
            return Same::Named(maker, normal(name));
        };
        let only = makers.get(&number).filter(|makers| makers.len() == 1).and_then(BTreeSet::first);
        let maker = only.filter(|_| maker.is_empty()).cloned().unwrap_or(maker);
        Same::Number(number, maker)
    }
}

impl<'a> Part<'a> {
    /// The part of these lines, which are ordered by day; `None` when there are none.
    fn of(lines: &[Fitted<'a>], timeline: &Timeline<'_>, now: Moment) -> Option<Part<'a>> {
        let newest = lines.last()?;
        let last_text = |text: fn(&Fitted<'a>) -> &'a str| {
            lines.iter().rev().map(text).find(|text| !text.is_empty()).unwrap_or_default()
        };
        let day = newest.at.day;
        let service = newest.item.map(|item| timeline.service(item, day, now));
        Some(Part {
            numbers: spellings(lines),
            maker: last_text(|line| line.maker),
            name: last_text(|line| line.name),
            kind: lines.iter().rev().find_map(|line| line.kind),
            items: lines.iter().filter_map(|line| line.item).collect(),
            quantity: quantity_of_day(lines, newest),
            paid: lines.iter().rev().find_map(paid),
            times: lines.iter().map(|line| line.at.day).collect::<BTreeSet<_>>().len(),
            day,
            shop: newest.shop,
            service: service.unwrap_or_default(),
        })
    }
}

/// Every way in which the number was written, the newest first.
fn spellings(lines: &[Fitted<'_>]) -> Vec<PartNumber> {
    let mut spellings: Vec<PartNumber> = Vec::new();
    for number in lines.iter().rev().filter_map(|line| PartNumber::new(line.number)) {
        if !spellings.iter().any(|known| known.written() == number.written()) {
            spellings.push(number);
        }
    }
    spellings
}

/// What all lines of the newest one's day come to that are counted in its measure.
fn quantity_of_day(lines: &[Fitted<'_>], newest: &Fitted<'_>) -> Quantity {
    let measure = newest.quantity.measure;
    let of_day = lines.iter().filter(|line| line.at.day == newest.at.day && line.quantity.measure == measure);
    let thousandths = of_day.fold(0_u32, |sum, line| sum.saturating_add(line.quantity.thousandths()));
    Quantity::from_thousandths(thousandths, measure).unwrap_or(newest.quantity)
}

fn paid<'a>(line: &Fitted<'a>) -> Option<Paid<'a>> {
    let price = line.price?;
    Some(Paid { price, quantity: line.quantity, day: line.at.day, shop: line.shop })
}

#[cfg(test)]
#[path = "history_tests.rs"]
mod tests;
