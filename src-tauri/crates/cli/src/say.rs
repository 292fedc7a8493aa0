//! Answers in words.

use door::{CountedFrom, DueView, IntervalView, ItemView, Reading, Refusal, StateKey, UnitKey, VehicleLine};
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
        Some(CountedFrom::FirstUse { day }) => words.say("cli-from-first-use", &[("day", day.into())]),
        None => words.say("cli-from-nothing", &[]),
    };
    let tightened =
        why.tightened_by.iter().map(|condition| words.say(&format!("cli-tightened-{condition}"), &[]));
    [rule, from].into_iter().chain(tightened).collect::<Vec<_>>().join("; ")
}

fn interval(words: &Words, interval: &IntervalView) -> String {
    let months = interval.months.as_ref().map(|months| words.say("cli-months", &[("months", months.into())]));
    let parts = [interval.distance.map(reading), months];
    parts.into_iter().flatten().collect::<Vec<_>>().join(" / ")
}
