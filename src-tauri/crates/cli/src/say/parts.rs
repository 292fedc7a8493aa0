//! Parts: those that were fitted, and those to get.

use door::{GetView, NumberForm, PaidView, PartLine, UsedView, WarningView};
use words::{Arg, Words};

use super::{item, reading, row};

/// Where what is told of a part stands.
const TOLD: usize = 4;

/// A part that was fitted: number, maker, name, what it served, other numbers and warnings, how much, how often, how
/// long it lasts, what was paid.
pub fn part(words: &Words, part: &PartLine) -> String {
    let number = part.numbers.first().map(String::as_str).unwrap_or_default();
    let times = [("times", Arg::from(part.times)), ("day", (&part.day).into())];
    let served: Vec<_> = part.items.iter().map(|one| item(words, one)).collect();
    let told = [
        (!served.is_empty()).then(|| words.say("cli-part-for", &[("items", served.join(", ").into())])),
        also(words, &part.same),
        part.warning.as_ref().map(|warning| self::warning(words, warning)),
        (!part.note.is_empty()).then(|| part.note.clone()),
        Some(amount(words, &part.measure, &part.quantity)),
        Some(words.say("cli-part-times", &times)),
        part.present.map(|present| words.say("cli-present", &[("span", used(words, present).into())])),
        part.lasted.map(|lasted| words.say("cli-lasted", &[("span", used(words, lasted).into())])),
        part.paid.as_ref().map(|paid| self::paid(words, paid)),
    ];
    let told: Vec<_> = told.into_iter().flatten().collect();
    row(&title(number, &part.maker, &part.name), TOLD, &told.join("; "))
}

/// One thing to get: what it is for, the part or what the guide calls it, how much is left to buy and how much is at
/// home, other numbers and warnings, what was paid, how long the last one lasted.
pub fn get(words: &Words, get: &GetView) -> String {
    let item = item(words, &get.item);
    let what = match &get.part {
        Some(part) => title(&part.number, &part.maker, &part.name),
        None if get.supply.is_empty() => return format!("{item}: {}", words.say("cli-buy-unknown", &[])),
        None => words.say(&format!("supply-{}", get.supply), &[]),
    };
    let counted = |id: &str, quantity: &str| {
        (!quantity.is_empty())
            .then(|| words.say(id, &[("amount", amount(words, &get.measure, quantity).into())]))
    };
    let enough = get.to_buy.is_empty() && !get.at_home.is_empty();
    let told = [
        counted("cli-get-buy", &get.to_buy),
        enough.then(|| words.say("cli-get-enough", &[])),
        counted("cli-get-home", &get.at_home),
        also(words, &get.same),
        get.warning.as_ref().map(|warning| self::warning(words, warning)),
        get.paid.as_ref().map(|paid| self::paid(words, paid)),
        get.lasted.map(|lasted| words.say("cli-lasted", &[("span", used(words, lasted).into())])),
    ];
    let told: Vec<_> = told.into_iter().flatten().collect();
    row(&format!("{item}: {what}"), TOLD, &told.join("; "))
}

/// Other numbers for the same part.
fn also(words: &Words, same: &[NumberForm]) -> Option<String> {
    let one = |same: &NumberForm| title(&same.number, &same.maker, "");
    let numbers: Vec<_> = same.iter().map(one).collect();
    (!numbers.is_empty()).then(|| words.say("cli-also", &[("numbers", numbers.join(", ").into())]))
}

/// Why a part should not be bought again, and what to ask for in its place.
fn warning(words: &Words, warning: &WarningView) -> String {
    let marked = words.say(&format!("cli-{}", warning.mark), &[]);
    if warning.instead.is_empty() {
        return marked;
    }
    words.say("cli-instead", &[("marked", marked.into()), ("number", (&warning.instead).into())])
}

/// A part by its number, maker and name, of which any may be empty.
fn title(number: &str, maker: &str, name: &str) -> String {
    let told: Vec<_> = [number, maker, name].into_iter().filter(|text| !text.is_empty()).collect();
    told.join("  ")
}

fn amount(words: &Words, measure: &str, quantity: &str) -> String {
    words.say(&format!("cli-amount-{measure}"), &[("amount", quantity.into())])
}

fn paid(words: &Words, paid: &PaidView) -> String {
    let price = format!("{} {}", paid.price.number, paid.price.currency);
    let id = if paid.workshop.is_empty() { "cli-paid" } else { "cli-paid-at" };
    let args = [("price", price.into()), ("day", (&paid.day).into()), ("shop", (&paid.workshop).into())];
    words.say(id, &args)
}

/// How long something was in the car: in months where it is more than two of them.
fn used(words: &Words, used: UsedView) -> String {
    const MOST_DAYS: u32 = 60;
    // 146 097 days are 4 800 months of the Gregorian calendar.
    let months = (u64::from(used.days) * 4_800 + 146_097 / 2) / 146_097;
    let time = if used.days > MOST_DAYS {
        words.say("cli-months", &[("months", months.to_string().into())])
    } else {
        words.say("cli-days", &[("days", used.days.into())])
    };
    match used.distance {
        Some(distance) => {
            words.say("cli-span", &[("time", time.into()), ("distance", reading(distance).into())])
        }
        None => time,
    }
}
