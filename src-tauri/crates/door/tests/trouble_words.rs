//! Whatever the tables of trouble name has a name in the words of every language.
#![allow(clippy::unwrap_used)]

use std::collections::BTreeSet;

use rules::trouble::{About, Danger, Opening, Trouble};
use words::Words;

/// The keys of all names, as they stand in the words.
fn names() -> BTreeSet<String> {
    let table = Trouble::shipped().unwrap();
    let symptoms = table.symptoms().iter().map(|symptom| format!("symptom-{}", symptom.key));
    let causes = table.causes().iter().map(|cause| format!("cause-{}", cause.key));
    let checks = table.checks().iter().map(|check| format!("check-{}", check.key));
    let tools = table.tools().iter().map(|tool| format!("check-tool-{}", tool.key));
    let headings = About::ALL.into_iter().map(|about| format!("about-{}", about.key()));
    let openings = Opening::ALL.into_iter().map(|opening| match opening {
        Opening::Access(access) => format!("access-{}", access.key()),
        other => format!("opening-{}", other.key()),
    });
    symptoms.chain(causes).chain(checks).chain(tools).chain(headings).chain(openings).collect()
}

/// The keys of all sentences.
fn sentences() -> BTreeSet<String> {
    let checks = Trouble::shipped().unwrap().checks().iter();
    let how = checks.map(|check| format!("check-{}-how", check.key));
    how.chain(Danger::ALL.into_iter().map(|danger| format!("stop-{}", danger.key()))).collect()
}

#[test]
fn everything_that_the_tables_name_has_a_word() {
    for lang in words::languages() {
        let words = Words::load(lang);
        for key in names().union(&sentences()) {
            assert!(words.has(key), "{lang} lacks {key}");
        }
    }
}

/// A phone shows about forty characters in a line.
#[test]
fn a_name_fits_on_the_line_of_a_phone() {
    for lang in words::languages() {
        let words = Words::load(lang);
        for key in names() {
            let said = words.say(&key, &[]);
            assert!(said.chars().count() <= 40, "{lang}: {key} is too long: {said}");
        }
    }
}

/// What is read beside a car with gloves on is short: about five lines of a phone.
#[test]
fn a_sentence_is_short_enough_to_be_read_at_the_car() {
    for lang in words::languages() {
        let words = Words::load(lang);
        for key in sentences() {
            let said = words.say(&key, &[]);
            let length = said.chars().count();
            assert!((30..=260).contains(&length), "{lang}: {key} has {length} characters: {said}");
        }
    }
}

/// No word is left over from a row that is gone.
#[test]
fn every_word_of_trouble_has_its_row() {
    let known: BTreeSet<_> = names().union(&sentences()).cloned().collect();
    let text = include_str!("../../words/lang/en/trouble.ftl");
    for line in text.lines().filter(|line| !line.starts_with('#')) {
        if let Some((key, _)) = line.split_once(" = ") {
            assert!(known.contains(key), "{key} names nothing");
        }
    }
}
