//! Whole receipts, all of them invented: rows of text as a reader of letters gives them, and what must be offered.
#![allow(clippy::unwrap_used)]

mod apart;
mod arbitrary;
mod confirmed;
mod days;
mod english;
mod french;
mod german;
mod hostile;
mod layouts;
mod noise;
mod pumps;
mod spanish;
mod spoilt;

use units::{Day, Money};

use super::{Check, CheckKind, Country, DayRead, Known, Receipt, Sure, read};
use crate::text::{Area, Row, Stretch, Text};

/// The day on which all receipts here are read.
pub fn today() -> Day {
    "2026-11-27".parse().unwrap()
}

/// Nothing known but the day.
pub fn nothing() -> Known<'static> {
    Known::nothing(today())
}

/// Rows of text, one a line; ` | ` stands between stretches. Letters are taken as 1/60 of the photo wide.
pub fn text(rows: &str) -> Text {
    text_as_sure_as(rows, 0.97)
}

/// The same, with letters of another confidence.
pub fn text_as_sure_as(rows: &str, sure: f32) -> Text {
    let rows = rows.lines().map(str::trim_end).filter(|row| !row.trim().is_empty());
    Text(rows.enumerate().map(|(index, row)| Row(stretches(row, index, sure))).collect())
}

fn stretches(row: &str, index: usize, sure: f32) -> Vec<Stretch> {
    let mut left = 0;
    let mut stretches = Vec::new();
    for part in row.split('|') {
        let indent = part.chars().take_while(|c| *c == ' ').count();
        let words = part.trim();
        let area = Area {
            left: share(left + indent),
            top: share(index),
            width: share(words.chars().count()),
            height: share(1),
        };
        left += part.chars().count() + 1;
        if !words.is_empty() {
            stretches.push(Stretch { text: words.to_owned(), sure, area });
        }
    }
    stretches
}

fn share(count: usize) -> f32 {
    f32::from(u16::try_from(count).unwrap()) / 60.0
}

/// What must be offered.
#[derive(Default)]
pub struct Expected<'a> {
    pub shop: &'a str,
    pub day: &'a str,
    pub total: &'a str,
    /// Rate in hundredths of a percent, and amount.
    pub taxes: &'a [(u32, &'a str)],
    /// Text, quantity, unit price, price, number; empty where there is none.
    pub items: &'a [(&'a str, &'a str, &'a str, &'a str, &'a str)],
    pub numbers: &'a [&'a str],
    pub odometer: &'a str,
}

/// Reads a receipt, holds every field against what is expected, and hands it back for more.
#[track_caller]
pub fn reads(rows: &str, known: &Known<'_>, expected: &Expected<'_>) -> Receipt {
    let receipt = read(&text(rows), known);
    let shop = receipt.shop.as_ref().map_or("", |shop| shop.value.as_str());
    assert_eq!(shop, expected.shop, "shop of {receipt:#?}");
    assert_eq!(one_day(&receipt), expected.day, "day of {receipt:#?}");
    assert_eq!(amount(receipt.total.map(|total| total.value)), expected.total, "total of {receipt:#?}");
    let taxes: Vec<(u32, String)> =
        receipt.taxes.iter().map(|tax| (tax.value.rate.unwrap_or(0), tax.value.amount.number())).collect();
    let wanted: Vec<(u32, String)> =
        expected.taxes.iter().map(|(rate, tax)| (*rate, (*tax).to_owned())).collect();
    assert_eq!(taxes, wanted, "taxes of {receipt:#?}");
    assert_eq!(items(&receipt), expected.items.iter().map(|item| written(*item)).collect::<Vec<_>>());
    let numbers: Vec<&str> = receipt.numbers.iter().map(|number| number.value.as_str()).collect();
    assert_eq!(numbers, expected.numbers, "numbers");
    let odometer =
        receipt.odometer.map(|field| format!("{} {}", field.value.0.floor(field.value.1), field.value.1));
    assert_eq!(odometer.unwrap_or_default(), expected.odometer, "odometer");
    receipt
}

type Written = (String, String, String, String, String);

fn written(item: (&str, &str, &str, &str, &str)) -> Written {
    (item.0.to_owned(), item.1.to_owned(), item.2.to_owned(), item.3.to_owned(), item.4.to_owned())
}

fn items(receipt: &Receipt) -> Vec<Written> {
    let item = |item: &super::Item| {
        let number = item.number.as_ref().map(|number| number.value.clone()).unwrap_or_default();
        let quantity = item.quantity.map(units::Quantity::number).unwrap_or_default();
        let unit = item.unit_price.map(Money::number).unwrap_or_default();
        (item.text.clone(), quantity, unit, item.price.number(), number)
    };
    receipt.items.iter().map(item).collect()
}

/// The day, when there is one reading of it.
pub fn one_day(receipt: &Receipt) -> String {
    match receipt.day.map(|day| day.value) {
        None => String::new(),
        Some(DayRead::One(day)) => day.to_string(),
        Some(DayRead::Either { likelier, other }) => format!("{likelier} or {other}"),
    }
}

fn amount(total: Option<Money>) -> String {
    total.map(|total| total.to_string()).unwrap_or_default()
}

/// How far the total is believed.
pub fn total_sure(receipt: &Receipt) -> Option<Sure> {
    receipt.total.map(|total| total.sure)
}

/// The check of this kind, as: agrees, worked out, printed.
pub fn check(receipt: &Receipt, kind: CheckKind) -> Option<(bool, String, String)> {
    let told = |check: &Check| (check.agrees, check.worked_out.number(), check.printed.number());
    receipt.checks.iter().find(|check| check.kind == kind).map(told)
}

/// A country.
pub fn country(code: &str) -> Country {
    Country::new(code).unwrap()
}
