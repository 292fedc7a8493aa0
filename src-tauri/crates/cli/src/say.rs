//! Answers in words.

pub mod card;
pub mod codes;
pub mod due;
pub mod guide;
pub mod parts;
pub mod trouble;
pub mod visits;

use door::{
    AmountView, DayReadView, FuelReadView, IntervalView, ItemView, Reading, ReceiptView, Refusal, UnitKey,
    VehicleLine,
};
use words::{Arg, Words};

/// A line whose controls, and what turns the direction of text, are made visible: cards and books come from anywhere,
/// and a terminal does what a control tells it.
pub fn harmless(line: &str) -> String {
    let turns = |c: char| matches!(c, '\u{61c}' | '\u{200e}' | '\u{200f}' | '\u{2028}'..='\u{202e}' | '\u{2066}'..='\u{2069}' | '\u{feff}');
    let steers = |c: char| c.is_control() && c != '\t';
    line.chars().map(|c| if steers(c) || turns(c) { char::REPLACEMENT_CHARACTER } else { c }).collect()
}

/// The same for a text of several lines.
pub fn harmless_lines(text: &str) -> String {
    text.split('\n').map(harmless).collect::<Vec<_>>().join("\n")
}

/// A refusal as one sentence.
pub fn refusal(words: &Words, refusal: &Refusal) -> String {
    let id = format!("refusal-{}", refusal.code);
    let values: Vec<(&str, Arg<'_>)> =
        refusal.values.iter().map(|(name, value)| (name.as_str(), value.into())).collect();
    if words.has(&id) {
        words.say(&id, &values)
    } else {
        words.say("refusal-other", &[("code", (&refusal.code).into())])
    }
}

/// The name of an item.
pub fn item(words: &Words, item: &ItemView) -> String {
    match item {
        ItemView::Own { name } => name.clone(),
        ItemView::Catalogue { number, key } => {
            let id = format!("item-{key}");
            if words.has(&id) {
                words.say(&id, &[])
            } else {
                words.say("card-item-unknown", &[("number", (*number).into())])
            }
        }
    }
}

/// A reading with its unit.
pub fn reading(reading: Reading) -> String {
    let unit = match reading.unit {
        UnitKey::Km => "km",
        UnitKey::Mi => "mi",
    };
    format!("{} {unit}", reading.count)
}

/// The narrowest window for which lists are laid out, in characters.
const WIDTH: usize = 80;

/// A row of a list: what it is about, and under it, from a column on and folded at the width of the window, what there
/// is to tell.
fn row(head: &str, column: usize, told: &str) -> String {
    let head = head.trim_end();
    if told.is_empty() {
        return head.to_owned();
    }
    let indent = " ".repeat(column);
    let options = textwrap::Options::new(WIDTH).initial_indent(&indent).subsequent_indent(&indent);
    format!("{head}\n{}", textwrap::fill(told, options))
}

/// A vehicle in a list.
pub fn vehicle(vehicle: &VehicleLine) -> String {
    let last = vehicle.reading.as_ref().map(|last| format!("  {}  {}", last.day, reading(last.reading)));
    format!("{}  {}{}", vehicle.name, vehicle.make_model, last.unwrap_or_default())
}

pub(crate) fn interval(words: &Words, interval: &IntervalView) -> String {
    let months = interval.months.as_ref().map(|months| match months.as_str() {
        "1" => words.say("cli-month", &[]),
        months => words.say("cli-months", &[("months", months.into())]),
    });
    let parts = [interval.distance.map(reading), months];
    parts.into_iter().flatten().collect::<Vec<_>>().join(" / ")
}

/// What a receipt says: its rows, and under them the fields with how sure each is.
pub fn receipt(words: &Words, receipt: &ReceiptView) -> Vec<String> {
    let fields = &receipt.fields;
    let amount = |amount: &AmountView| format!("{} {}", amount.value, amount.currency);
    let mut told: Vec<(&str, String, &str)> = Vec::new();
    told.extend(fields.shop.iter().map(|field| ("shop", field.value.clone(), field.sure.as_str())));
    told.extend(fields.day.iter().map(|day| ("day", day_or(words, day), day.sure.as_str())));
    told.extend(fields.total.iter().map(|total| ("total", amount(total), total.sure.as_str())));
    told.extend(fields.tax.iter().map(|tax| ("tax", amount(tax), tax.sure.as_str())));
    told.extend(fields.numbers.iter().map(|field| ("number", field.value.clone(), field.sure.as_str())));
    told.extend(fields.fuel.iter().flat_map(|fuel| fuel_figures(words, fuel)));
    let odometer = fields.odometer.iter();
    told.extend(
        odometer.map(|read| ("odometer", format!("{} {}", read.value, read.unit), read.sure.as_str())),
    );
    let rows = receipt.rows.iter().map(|row| row.text.clone());
    let fields = told.into_iter().map(|(what, value, sure)| {
        let sure = words.say(&format!("cli-sure-{sure}"), &[]);
        words.say(&format!("cli-read-{what}"), &[("value", value.into()), ("sure", sure.into())])
    });
    rows.chain([String::new()]).chain(fields).collect()
}

/// The figures of a fill that were found, but for what it cost, which is the total of the receipt.
fn fuel_figures<'a>(words: &Words, fuel: &'a FuelReadView) -> Vec<(&'static str, String, &'a str)> {
    let told = [("amount", (&fuel.volume).into()), ("unit", (&fuel.unit).into())];
    let amount = || words.say("cli-read-amount", &told);
    let volume = fuel.figures.volume.iter().map(|seen| ("volume", amount(), seen.sure.as_str()));
    let price = fuel.figures.price.iter().map(|seen| ("price", fuel.price.clone(), seen.sure.as_str()));
    volume.chain(price).collect()
}

fn day_or(words: &Words, day: &DayReadView) -> String {
    match &day.or {
        Some(or) => words.say("cli-day-or", &[("day", (&day.value).into()), ("or", or.into())]),
        None => day.value.clone(),
    }
}

#[cfg(test)]
mod tests {
    use super::{harmless, harmless_lines};

    #[test]
    fn what_comes_from_outside_can_neither_steer_a_terminal_nor_turn_its_text() {
        assert_eq!(
            harmless("a\u{1b}[2Jb\u{9b}c\u{202e}d\u{7}\n"),
            "a\u{fffd}[2Jb\u{fffd}c\u{fffd}d\u{fffd}\u{fffd}"
        );
        assert_eq!(harmless("Größe\tسيارة"), "Größe\tسيارة");
        assert_eq!(harmless_lines("one\u{1b}\n\ntwo\r"), "one\u{fffd}\n\ntwo\u{fffd}");
    }
}
