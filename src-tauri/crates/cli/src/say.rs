//! Answers in words.

use door::{
    CountedFrom, DueView, IntervalView, ItemView, MoneyView, PlannedVisitView, Reading, Refusal, SeenView,
    SpendView, StateKey, UnitKey, VehicleLine,
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

/// One due line: state, item, when, why.
pub fn due(words: &Words, line: &DueView) -> String {
    let state = words.say(&format!("cli-state-{}", state_key(line.state)), &[]);
    let when = [line.day.clone(), line.reading.map(reading)];
    let when = when.into_iter().flatten().collect::<Vec<_>>().join(" / ");
    format!("{state:<10} {:<42} {when:<26} {}", item(words, &line.item), why(words, line))
}

const fn state_key(state: StateKey) -> &'static str {
    match state {
        StateKey::Overdue => "overdue",
        StateKey::Due => "due",
        StateKey::Soon => "soon",
        StateKey::Ahead => "ahead",
        StateKey::NoRecord => "no-record",
    }
}

fn why(words: &Words, line: &DueView) -> String {
    let why = &line.why;
    let source = words.say(&format!("cli-source-{}", why.source), &[("name", (&why.source_name).into())]);
    let every = interval(words, &why.interval);
    let rule = words.say("cli-why", &[("interval", every.into()), ("source", source.into())]);
    let from = match &why.from {
        Some(CountedFrom::Done { day, .. }) => words.say("cli-from-done", &[("day", day.into())]),
        Some(CountedFrom::Other { item: other, day }) => {
            words.say("cli-from-other", &[("item", item(words, other).into()), ("day", day.into())])
        }
        Some(CountedFrom::FirstUse { day }) => words.say("cli-from-first-use", &[("day", day.into())]),
        None => words.say("cli-from-nothing", &[]),
    };
    let tightened =
        why.tightened_by.iter().map(|condition| words.say(&format!("cli-tightened-{condition}"), &[]));
    let kind = why.kind.as_ref().map(|kind| words.say(&format!("kind-{kind}"), &[]));
    let kind = kind.map(|kind| words.say("cli-kind", &[("kind", kind.into())]));
    let seen = why.seen.as_ref().map(|seen| self::seen(words, seen));
    let reasons = [Some(rule), Some(from)].into_iter().chain(tightened.map(Some)).chain([kind, seen]);
    reasons.flatten().collect::<Vec<_>>().join("; ")
}

/// What was found, and what was measured.
fn seen(words: &Words, seen: &SeenView) -> String {
    let finding = words.say(&format!("finding-{}", seen.finding), &[]);
    let found = words.say("cli-seen", &[("finding", finding.into()), ("day", (&seen.day).into())]);
    match &seen.value {
        Some(value) => format!("{found}, {} {}", value.value, value.unit),
        None => found,
    }
}

/// A visit that the plan proposes: day, items, cost.
pub fn visit(words: &Words, visit: &PlannedVisitView) -> String {
    let items: Vec<_> = visit.items.iter().map(|one| item(words, &one.item)).collect();
    let cost = visit.cost.as_ref().map(|cost| format!("  {} {}", cost.number, cost.currency));
    format!("{}  {}{}", visit.day, items.join(", "), cost.unwrap_or_default())
}

/// What the next twelve months are likely to cost.
pub fn spend(words: &Words, spend: &SpendView) -> String {
    let money = |money: &MoneyView| format!("{} {}", money.number, money.currency);
    let (low, high) = (money(&spend.low), money(&spend.high));
    words.say("cli-spend", &[("low", low.into()), ("high", high.into()), ("unpriced", spend.unpriced.into())])
}

fn interval(words: &Words, interval: &IntervalView) -> String {
    let months = interval.months.as_ref().map(|months| words.say("cli-months", &[("months", months.into())]));
    let parts = [interval.distance.map(reading), months];
    parts.into_iter().flatten().collect::<Vec<_>>().join(" / ")
}
