//! What is due, as a table that fits a window of 80 characters: a line for the eye, and under it the reasons.

use door::{CountedFrom, DueView, MissingKey, MissingLine, PhaseKey, SeenView, StateKey};
use words::{Arg, Words};

use super::{interval, item, reading, row};

/// Where the items stand, behind the longest state.
const ITEMS: usize = 11;

/// One item: state, name and when; between which days; why.
pub fn due(words: &Words, line: &DueView) -> String {
    let state = words.say(&format!("cli-state-{}", state_key(line.state)), &[]);
    let when = [line.day.clone(), line.reading.map(reading)];
    let when = when.into_iter().flatten().collect::<Vec<_>>().join(" / ");
    let head = format!("{state:<ITEMS$}{:<38}  {when}", item(words, &line.item));
    let reasons = [between(words, line), Some(why(words, line))].into_iter().flatten();
    row(&head, ITEMS, &reasons.collect::<Vec<_>>().join("; "))
}

/// An item that is not for this car, and why.
pub fn missing(words: &Words, line: &MissingLine) -> String {
    let state = match line.state {
        MissingKey::NotForThisCar => words.say("cli-state-not-for-this-car", &[]),
    };
    let lacks: Vec<_> = line.lacks.iter().map(|key| words.say(&format!("fitted-{key}"), &[])).collect();
    let why = match lacks.as_slice() {
        [] => words.say("cli-missing-engine", &[]),
        lacks => words.say("cli-missing-lacks", &[("things", lacks.join(", ").into())]),
    };
    row(&format!("{state}: {}", item(words, &line.item)), ITEMS, &why)
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

/// From when to when it may fall, unless that is one day.
fn between(words: &Words, line: &DueView) -> Option<String> {
    let span = line.between.as_ref().filter(|span| span.early != span.late)?;
    Some(words.say("cli-between", &[("early", (&span.early).into()), ("late", (&span.late).into())]))
}

fn why(words: &Words, line: &DueView) -> String {
    let why = &line.why;
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
    let along = why.goes_with.as_ref().map(|other| item(words, other));
    let along = along.map(|other| words.say("cli-goes-with", &[("item", other.into())]));
    let kind = why.kind.as_ref().map(|kind| words.say(&format!("kind-{kind}"), &[]));
    let kind = kind.map(|kind| words.say("cli-kind", &[("kind", kind.into())]));
    let seen = why.seen.as_ref().map(|seen| self::seen(words, seen));
    let which = why.seen.as_ref().and_then(|seen| undecided(words, seen));
    let found = seen.into_iter().chain(which);
    let reasons =
        [rule(words, line), from].into_iter().chain(tightened).chain(along).chain(kind).chain(found);
    reasons.collect::<Vec<_>>().join("; ")
}

/// How often, in the phase that holds now, and who says so.
fn rule(words: &Words, line: &DueView) -> String {
    let why = &line.why;
    let source = words.say(&format!("cli-source-{}", why.source), &[("name", (&why.source_name).into())]);
    let phase = match why.phase {
        PhaseKey::First => "first",
        PhaseKey::Every => "every",
        PhaseKey::After => "after",
    };
    let args = [
        ("phase", Arg::from(phase)),
        ("interval", interval(words, &why.interval).into()),
        ("source", source.into()),
    ];
    words.say("cli-why", &args)
}

/// What was found, and what was measured; with its limit, where that decides and no interval.
fn seen(words: &Words, seen: &SeenView) -> String {
    let finding = words.say(&format!("finding-{}", seen.finding), &[]);
    let found = words.say("cli-seen", &[("finding", finding.into()), ("day", (&seen.day).into())]);
    let Some(value) = &seen.value else { return found };
    let found = format!("{found}, {} {}", value.value, value.unit);
    if seen.effect != "extrapolated" {
        return found;
    }
    let limit = format!("{} {}", value.limit, value.unit);
    format!("{found}, {}", words.say("cli-seen-limit", &[("limit", limit.into())]))
}

/// What the owner is to say of what was found.
fn undecided(words: &Words, seen: &SeenView) -> Option<String> {
    let items: Vec<_> = seen.undecided.iter().map(|one| item(words, one)).collect();
    (!items.is_empty()).then(|| words.say("cli-undecided", &[("items", items.join(" / ").into())]))
}
