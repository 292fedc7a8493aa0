//! Every file parses, says nothing twice, and has the same keys and places in every language.
#![allow(clippy::unwrap_used)]

use std::collections::{BTreeMap, BTreeSet};

use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement};
use fluent_syntax::parser;

use super::*;

/// The keys of a language, each with the names of the places in its message.
fn messages(lang: &str) -> BTreeMap<String, BTreeSet<String>> {
    let mut messages = BTreeMap::new();
    for (file, text) in files::of(lang) {
        let resource = parser::parse(*text).unwrap_or_else(|(_, faults)| panic!("{lang}/{file}: {faults:?}"));
        for entry in resource.body {
            let (id, value) = match entry {
                Entry::Message(message) => (message.id.name.to_owned(), message.value),
                Entry::Term(term) => (format!("-{}", term.id.name), Some(term.value)),
                _ => continue,
            };
            let pattern = value.unwrap_or_else(|| panic!("{lang}/{file}: {id} has no value of its own"));
            let known = messages.insert(id.clone(), places(&pattern));
            assert!(known.is_none(), "{lang}/{file}: {id} stands there twice");
        }
    }
    messages
}

fn places(pattern: &Pattern<&str>) -> BTreeSet<String> {
    pattern.elements.iter().flat_map(in_element).collect()
}

fn in_element(element: &PatternElement<&str>) -> BTreeSet<String> {
    match element {
        PatternElement::Placeable { expression: Expression::Inline(inline) } => in_inline(inline),
        PatternElement::Placeable { expression: Expression::Select { selector, variants } } => {
            let chosen = variants.iter().flat_map(|variant| places(&variant.value));
            in_inline(selector).into_iter().chain(chosen).collect()
        }
        PatternElement::TextElement { .. } => BTreeSet::new(),
    }
}

fn in_inline(inline: &InlineExpression<&str>) -> BTreeSet<String> {
    match inline {
        InlineExpression::VariableReference { id } => [id.name.to_owned()].into(),
        InlineExpression::FunctionReference { arguments, .. } => {
            arguments.positional.iter().flat_map(in_inline).collect()
        }
        _ => BTreeSet::new(),
    }
}

#[test]
fn every_language_has_the_keys_and_places_of_english() {
    let english = messages(ENGLISH);
    assert!(english.len() > 100);
    for lang in languages() {
        assert_eq!(messages(lang), english, "{lang}");
    }
}

#[test]
fn every_message_can_be_said_with_its_places_filled() {
    for lang in languages() {
        let words = Words::load(lang);
        for (id, places) in messages(lang).iter().filter(|(id, _)| !id.starts_with('-')) {
            let bundle = &words.bundles[0];
            let pattern = bundle.get_message(id).unwrap().value().unwrap();
            for sample in [Arg::from("x"), Arg::from(1_u32), Arg::from(22_u32)] {
                let args: FluentArgs<'_> = places.iter().map(|place| (place.as_str(), &sample)).collect();
                let mut faults = Vec::new();
                let said = bundle.format_pattern(pattern, Some(&args), &mut faults);
                assert!(faults.is_empty(), "{lang}: {id}: {faults:?}");
                assert!(!said.trim().is_empty(), "{lang}: {id} says nothing");
            }
        }
    }
}

#[test]
fn every_refusal_is_one_sentence() {
    let words = Words::load(ENGLISH);
    for (id, places) in messages(ENGLISH).iter().filter(|(id, _)| id.starts_with("refusal-")) {
        let args: Vec<_> = places.iter().map(|place| (place.as_str(), Arg::from("X"))).collect();
        let said = words.say(id, &args);
        assert!(said.ends_with('.') && said.matches(". ").count() == 0, "{id}: {said}");
        assert!(said.starts_with(|first: char| first.is_uppercase() || first == '‘'), "{id}: {said}");
    }
}

#[test]
fn english_is_spoken_and_stands_in_for_every_other() {
    assert!(languages().any(|lang| lang == ENGLISH));
    for tag in ["en", "en-GB", "EN_us", "tlh", "", "-", "not a language"] {
        assert_eq!(Words::load(tag).lang(), ENGLISH, "{tag}");
    }
}

#[test]
fn what_is_missing_is_seen() {
    let words = Words::load(ENGLISH);
    assert!(!words.has("no-such-key"));
    assert_eq!(words.say("no-such-key", &[]), "no-such-key");
    assert!(words.has("refusal-day-form"));
    assert!(words.say("refusal-day-form", &[]).contains("{$text}"));
}

#[test]
fn counts_choose_their_form_and_texts_stand_as_they_are() {
    let words = Words::load(ENGLISH);
    let note = |shown: u32, left_out: u32| {
        words.say("card-visits-note", &[("shown", shown.into()), ("left-out", left_out.into())])
    };
    assert_eq!(note(1, 0), "1 visit, which the square holds too.");
    assert_eq!(note(120, 0), "120 visits, all of which the square holds too.");
    assert_eq!(note(120, 20), "120 visits; the square leaves out the 20 oldest.");
    let lower = [("reading", "97 500 km".into()), ("than", "98 420 km".into()), ("on", "2026-05-02".into())];
    let said = words.say("refusal-reading-lower", &lower);
    assert!(
        said.contains("97 500 km") && said.contains("98 420 km") && said.contains("2026-05-02"),
        "{said}"
    );
    assert!(said.chars().all(|c| !matches!(c, '\u{2066}'..='\u{2069}')), "{said}");
}

#[test]
fn words_may_be_shared_between_threads() {
    fn shared<T: Send + Sync>() {}
    shared::<Words>();
}
