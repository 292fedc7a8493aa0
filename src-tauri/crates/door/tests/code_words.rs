//! Every code of the table has a sentence in the words of every language, and whatever else is said of codes a word.
#![allow(clippy::unwrap_used)]

use std::collections::{BTreeMap, BTreeSet};

use rules::trouble::codes::{
    Area, Code, Codes, Monitor, Note, Origin, Pid, Status, System, Urgency, Warning,
};
use words::Words;

/// The keys of the sentences, one a code.
fn sentences() -> BTreeSet<String> {
    Codes::shipped().unwrap().rows().map(|known| known.code.key()).collect()
}

/// The keys of everything else that can be named, with the family in which they stand.
fn names() -> BTreeSet<String> {
    let named = |family: &str, keys: Vec<&str>| -> Vec<String> {
        keys.into_iter().map(|key| format!("code-{family}-{key}")).collect()
    };
    let families = [
        named("system", System::ALL.map(System::key).to_vec()),
        named("origin", Origin::ALL.map(Origin::key).to_vec()),
        named("area", Area::ALL.map(Area::key).to_vec()),
        named("status", Status::ALL.map(Status::key).to_vec()),
        named("urgency", Urgency::ALL.map(Urgency::key).to_vec()),
        named("warning", Warning::ALL.map(Warning::key).to_vec()),
        named("monitor", Monitor::ALL.map(Monitor::key).to_vec()),
        named("value", Pid::ALL.map(Pid::key).to_vec()),
        named("standing", vec!["present", "cleared", "gone"]),
    ];
    families.concat().into_iter().collect()
}

#[test]
fn every_code_of_the_table_has_a_sentence() {
    for lang in words::languages() {
        let words = Words::load(lang);
        for key in sentences().iter().chain(&names()) {
            assert!(words.has(key), "{lang} lacks {key}");
        }
    }
}

/// Every note, with what its sentence is told.
fn notes() -> [(Note, &'static [&'static str]); 14] {
    let text = || "43 01".to_owned();
    [
        (Note::NothingFound, &[]),
        (Note::NotACode(text()), &["text"]),
        (Note::Misread { text: text(), meant: Code::from_bytes([1, 0x71]) }, &["text", "meant"]),
        (Note::StatusUnclear(Code::from_bytes([1, 0x71])), &["code"]),
        (Note::MaybeCounted(Vec::new()), &["codes"]),
        (Note::CutShort(text()), &["text"]),
        (Note::PartMissing, &[]),
        (Note::PartsMixed, &[]),
        (Note::NoData, &[]),
        (Note::LinkFailed(text()), &["text"]),
        (Note::Refused { service: 3, reason: 0x11 }, &["service", "reason"]),
        (Note::Cleared, &[]),
        (Note::Unread(text()), &["text"]),
        (Note::TooLong, &["most"]),
    ]
}

#[test]
fn every_note_has_a_sentence_that_says_what_it_is_told() {
    for lang in words::languages() {
        let words = Words::load(lang);
        for (note, places) in notes() {
            let key = format!("code-note-{}", note.key());
            let args: Vec<_> = places.iter().map(|place| (*place, "X-X".into())).collect();
            let said = words.say(&key, &args);
            assert!(words.has(&key) && !said.contains('{'), "{lang}: {key}: {said}");
            assert_eq!(said.matches("X-X").count(), places.len(), "{lang}: {key}: {said}");
        }
    }
}

/// Two lines on a phone, and no two codes that read the same: the owner could not tell them apart.
#[test]
fn a_sentence_is_short_and_its_own() {
    for lang in words::languages() {
        let words = Words::load(lang);
        let mut said = BTreeMap::new();
        for key in sentences() {
            let sentence = words.say(&key, &[]);
            assert!((10..=80).contains(&sentence.chars().count()), "{lang}: {key}: {sentence}");
            assert!(
                sentence.starts_with(char::is_uppercase) && !sentence.ends_with('.'),
                "{lang}: {sentence}"
            );
            if let Some(other) = said.insert(sentence, key.clone()) {
                panic!("{lang}: {key} reads as {other} does");
            }
        }
    }
}
