//! Whatever the guides name has a sentence in the words of every language, short enough to follow with gloves on, and
//! nothing stands among their sentences that no guide names.
#![allow(clippy::unwrap_used)]

use std::collections::BTreeSet;

use rules::guides::{Guide, Guides, Hazard, Part};
use rules::upkeep::{Catalogue, Caution};
use rules::vehicle::EngineKind;
use words::Words;

/// The English sentences, to find those that no guide names.
const ENGLISH: &str = include_str!("../../words/lang/en/guides.ftl");

fn guides() -> &'static Guides {
    Guides::shipped().unwrap()
}

/// The sentences of one part of a guide.
fn part(guide: &Guide, part: Part) -> Vec<String> {
    let steps = || guide.steps.iter().map(|step| step.key.clone()).collect();
    let keys: Vec<String> = match part {
        Part::Not => guide.not.clone(),
        Part::Step => steps(),
        Part::Look => guide.look.clone(),
        Part::After => guide.after.clone(),
    };
    keys.iter().map(|key| guide.word(part, key)).collect()
}

/// Names, which stand on one line.
fn names() -> BTreeSet<String> {
    let all = guides().guides();
    let titles = all.iter().map(|guide| format!("guide-{}", guide.key));
    let tools = all.iter().flat_map(|guide| &guide.tools).map(|key| format!("tool-{key}"));
    let supplies = all.iter().flat_map(|guide| &guide.supplies).map(|key| format!("supply-{key}"));
    let hazards = Hazard::ALL.into_iter().map(|hazard| format!("hazard-{}", hazard.key()));
    let cautions = guides().cautions().iter().map(|caution| format!("caution-{}-name", caution.key));
    let values = guides().values().iter().map(|value| format!("value-{}", value.key));
    let cases = guides().values().iter().flat_map(|value| &value.typical);
    let cases = cases.map(|typical| format!("typical-{}", typical.case));
    let marks = ["value-handbook", "value-typical"].map(str::to_owned);
    let things = titles.chain(tools).chain(supplies).chain(hazards).chain(cautions);
    things.chain(values).chain(cases).chain(marks).collect()
}

/// Sentences: what a guide is for, its parts, its cautions, and what becomes of what is left over.
fn sentences() -> BTreeSet<String> {
    let all = guides().guides();
    let what = all.iter().map(|guide| format!("guide-{}-what", guide.key));
    let parts = [Part::Not, Part::Step, Part::Look, Part::After];
    let parts = all.iter().flat_map(|guide| parts.into_iter().flat_map(|which| part(guide, which)));
    let cautions = guides().cautions().iter().map(|caution| format!("caution-{}", caution.key));
    let disposal = all.iter().flat_map(|guide| &guide.disposal).map(|key| format!("disposal-{key}"));
    what.chain(parts).chain(cautions).chain(disposal).collect()
}

#[test]
fn everything_that_the_guides_name_has_words() {
    for lang in words::languages() {
        let words = Words::load(lang);
        for key in names().iter().chain(&sentences()) {
            assert!(words.has(key), "{lang} lacks {key}");
        }
    }
}

#[test]
fn nothing_is_said_that_no_guide_names() {
    let named: BTreeSet<_> = names().into_iter().chain(sentences()).collect();
    let said = ENGLISH
        .lines()
        .filter(|line| !line.starts_with(['#', ' ']))
        .filter_map(|line| line.split_once(" = "));
    let mut count = 0;
    for (key, _) in said {
        assert!(named.contains(key), "nothing names {key}");
        count += 1;
    }
    assert!(count > 500, "{count}");
}

/// At arm's length a phone shows about five lines of 28 characters.
#[test]
fn a_step_is_short_enough_to_follow_with_gloves_on() {
    for lang in words::languages() {
        let words = Words::load(lang);
        for key in guides().guides().iter().flat_map(|guide| part(guide, Part::Step)) {
            let said = words.say(&key, &[]);
            assert!((15..=140).contains(&said.chars().count()), "{lang}: {key}: {said}");
        }
    }
}

/// A phone shows about forty characters in a line; a name of a guide stands on one, the other names on less than two.
#[test]
fn a_name_is_short_and_a_sentence_is_one() {
    for lang in words::languages() {
        let words = Words::load(lang);
        for key in names() {
            let most = if key.starts_with("guide-") { 40 } else { 50 };
            let said = words.say(&key, &[]);
            assert!(said.chars().count() <= most, "{lang}: {key} is too long: {said}");
        }
        for key in sentences() {
            let said = words.say(&key, &[]);
            assert!(said.ends_with(['.', '!']), "{lang}: {key}: {said}");
        }
    }
}

/// A guide may be offered in the place of the catalogue's own cautions, and says them with the same words.
#[test]
fn the_cautions_of_the_catalogue_are_said_by_the_same_keys() {
    let items = Catalogue::shipped().unwrap().items();
    let keys: BTreeSet<_> =
        items.iter().flat_map(|item| item.cautions_for(EngineKind::DieselHybrid)).map(Caution::key).collect();
    assert!(keys.iter().all(|key| sentences().contains(&format!("caution-{key}"))), "{keys:?}");
}
