//! A card that was read, in words: what it proves, the car, its visits, and what to ask.

use door::{CardNext, CardQuestion, CardReadView, CardVisit, Reading};
use words::{Arg, Words};

use super::{harmless, item, reading};

/// The lines, the proof first.
pub fn read(words: &Words, read: &CardReadView) -> Vec<String> {
    let signed = [("day", Arg::from(&read.signed)), ("key", (&read.fingerprint).into())];
    let verdicts = read.verdicts.iter().map(|key| words.say(&format!("cli-verdict-{key}"), &signed));
    let car = [read.name.as_str(), &read.make_model, read.vin.as_deref().unwrap_or_default()];
    let car = car.into_iter().filter(|text| !text.is_empty()).collect::<Vec<_>>().join("  ");
    let latest = format!("{}  {}", read.reading.day, reading(read.reading.reading));
    let visits = read.visits.iter().map(|one| visit(words, one));
    let instruments = read.instruments.iter().map(|change| {
        let (old, new) = (reading(change.old), reading(change.new));
        let args = [("day", Arg::from(&change.day)), ("old", old.into()), ("new", new.into())];
        words.say("viewer-instrument", &args)
    });
    let next = read.next.iter().map(|due| next(words, due));
    let asked = read.questions.iter().map(|one| question(words, one));
    let parts = [
        ("", vec![car, latest]),
        ("viewer-ask-heading", asked.collect()),
        ("viewer-visits-heading", visits.collect()),
        ("viewer-instruments-heading", instruments.collect()),
        ("viewer-next-heading", next.collect()),
    ];
    let parts = parts.into_iter().flat_map(|(heading, lines)| part(words, heading, lines));
    verdicts.chain(parts).map(|line| harmless(&line)).collect()
}

/// An empty line, the heading, and the lines; nothing of a part without lines.
fn part(words: &Words, heading: &str, lines: Vec<String>) -> Vec<String> {
    let heading = (!heading.is_empty()).then(|| words.say(heading, &[]));
    let head = (!lines.is_empty()).then(|| [Some(String::new()), heading].into_iter().flatten());
    head.into_iter().flatten().chain(lines).collect()
}

fn visit(words: &Words, visit: &CardVisit) -> String {
    let items: Vec<_> = visit.items.iter().map(|one| item(words, one)).collect();
    let by: Vec<_> = visit.marks.iter().map(String::as_str).filter(|mark| is_by(mark)).collect();
    let who = match by.as_slice() {
        [] => "unsaid",
        [one] => one,
        _ => "both",
    };
    let marks = visit.marks.iter().filter(|mark| !is_by(mark));
    let told = [words.say(&format!("viewer-who-{who}"), &[])]
        .into_iter()
        .chain(marks.map(|mark| words.say(&format!("viewer-mark-{mark}"), &[])));
    let told = told.collect::<Vec<_>>().join("; ");
    format!("{}  {}  {}  ({told})", visit.day, reading(visit.reading), items.join("; "))
}

fn is_by(mark: &str) -> bool {
    matches!(mark, "owner" | "workshop")
}

fn next(words: &Words, next: &CardNext) -> String {
    let id = match (&next.day, &next.reading) {
        (Some(_), Some(_)) => "viewer-next-either",
        (Some(_), None) => "viewer-next-on-day",
        (None, Some(_)) => "viewer-next-at-reading",
        (None, None) => "viewer-next-open",
    };
    let day = next.day.as_deref().unwrap_or_default();
    let args = [("day", Arg::from(day)), ("reading", shown(next.reading))];
    format!("{}  {}", item(words, &next.item), words.say(id, &args))
}

/// The sentence that the page of a scanned card says too.
fn question(words: &Words, question: &CardQuestion) -> String {
    let items: Vec<_> = question.items.iter().map(|one| item(words, one)).collect();
    let args = [
        ("count", question.count.unwrap_or_default().into()),
        ("of", question.of.unwrap_or_default().into()),
        ("day", question.day.as_deref().unwrap_or_default().into()),
        ("reading", shown(question.reading)),
        ("then", question.then.as_deref().unwrap_or_default().into()),
        ("shown", shown(question.shown)),
        ("items", items.join("; ").into()),
    ];
    words.say(&format!("viewer-ask-{}", question.key), &args)
}

/// A reading, or nothing.
fn shown(reading: Option<Reading>) -> Arg<'static> {
    reading.map(super::reading).unwrap_or_default().into()
}
