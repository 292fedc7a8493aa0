//! Answers in words.

pub mod card;
pub mod codes;
pub mod due;
pub mod guide;
pub mod trouble;

use door::{
    AmountView, DayReadView, FuelReadView, GetView, IntervalView, ItemView, MoneyView, NumberForm, PaidView,
    PartLine, PlannedVisitView, Reading, ReceiptView, Refusal, SpendView, UnitKey, UsedView, VehicleLine,
    WarningView,
};
use words::{Arg, Words};

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

/// A vehicle in a list.
pub fn vehicle(vehicle: &VehicleLine) -> String {
    let last = vehicle.reading.as_ref().map(|last| format!("  {}  {}", last.day, reading(last.reading)));
    format!("{}  {}{}", vehicle.name, vehicle.make_model, last.unwrap_or_default())
}

/// A visit that the plan proposes: day, items, cost, and whether that is an estimate.
pub fn visit(words: &Words, visit: &PlannedVisitView) -> String {
    let items: Vec<_> = visit.items.iter().map(|one| item(words, &one.item)).collect();
    let estimated = match visit.estimated {
        0 => String::new(),
        _ => format!(" ({})", words.say("cli-visit-estimated", &[])),
    };
    let cost = visit.cost.as_ref().map(|cost| format!("  {} {}{estimated}", cost.number, cost.currency));
    let site = words.say(&format!("cli-site-{}", visit.site), &[]);
    format!("{}  {site}: {}{}", visit.day, items.join(", "), cost.unwrap_or_default())
}

/// What the next twelve months are likely to cost, and what that rests on.
pub fn spend(words: &Words, spend: &SpendView) -> String {
    let money = |money: &MoneyView| format!("{} {}", money.number, money.currency);
    let (low, high) = (money(&spend.low), money(&spend.high));
    let range = [("low", low.into()), ("high", high.into()), ("unpriced", spend.unpriced.into())];
    let counted = [("cli-spend-no-record", spend.no_record), ("cli-spend-estimated", spend.estimated)];
    let counted = counted.into_iter().filter(|&(_, count)| count > 0);
    let counted = counted.map(|(id, count)| words.say(id, &[("count", count.into())]));
    [words.say("cli-spend", &range)].into_iter().chain(counted).collect::<Vec<_>>().join(" ")
}

pub(crate) fn interval(words: &Words, interval: &IntervalView) -> String {
    let months = interval.months.as_ref().map(|months| match months.as_str() {
        "1" => words.say("cli-month", &[]),
        months => words.say("cli-months", &[("months", months.into())]),
    });
    let parts = [interval.distance.map(reading), months];
    parts.into_iter().flatten().collect::<Vec<_>>().join(" / ")
}

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
    format!("{}  {}", title(number, &part.maker, &part.name), told.join("; "))
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
    if told.is_empty() { format!("{item}: {what}") } else { format!("{item}: {what}  {}", told.join("; ")) }
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
