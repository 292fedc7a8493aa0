//! Every file parses, says nothing twice, and has the same keys and places in every language.
#![allow(clippy::unwrap_used)]

use std::collections::{BTreeMap, BTreeSet};

use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement};
use fluent_syntax::parser;

use super::*;

/// The languages whose folder stands there, whole or not.
fn folders() -> impl Iterator<Item = &'static str> {
    files::LANGUAGES.iter().map(|&(lang, _)| lang)
}

/// The messages of a file by their keys; a term begins with a dash.
fn messages(lang: &str, file: &str) -> BTreeMap<String, Pattern<&'static str>> {
    let &(_, text) = files::of(lang).iter().find(|(name, _)| *name == file).unwrap();
    let resource = parser::parse(text).unwrap_or_else(|(_, faults)| panic!("{lang}/{file}: {faults:?}"));
    let mut messages = BTreeMap::new();
    for entry in resource.body {
        let (id, value) = match entry {
            Entry::Message(message) => (message.id.name.to_owned(), message.value),
            Entry::Term(term) => (format!("-{}", term.id.name), Some(term.value)),
            _ => continue,
        };
        let pattern = value.unwrap_or_else(|| panic!("{lang}/{file}: {id} has no value of its own"));
        assert!(messages.insert(id.clone(), pattern).is_none(), "{lang}/{file}: {id} stands there twice");
    }
    messages
}

/// The keys of a file, each with the names of the places in its message.
fn keys(lang: &str, file: &str) -> BTreeMap<String, BTreeSet<String>> {
    messages(lang, file).into_iter().map(|(id, pattern)| (id, places(&pattern))).collect()
}

/// The keys of every file of a language.
fn all_keys(lang: &str) -> BTreeMap<String, BTreeSet<String>> {
    files::of(lang).iter().flat_map(|(file, _)| keys(lang, file)).collect()
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
fn every_file_has_the_keys_and_places_of_the_english_one() {
    assert!(all_keys(ENGLISH).len() > 100);
    for lang in folders() {
        for (file, _) in files::of(lang) {
            assert!(
                files::of(ENGLISH).iter().any(|(name, _)| name == file),
                "{lang}/{file} is not in English"
            );
            assert_eq!(keys(lang, file), keys(ENGLISH, file), "{lang}/{file}");
        }
    }
}

#[test]
fn no_key_stands_in_two_files() {
    for lang in folders() {
        let apart: usize = files::of(lang).iter().map(|(file, _)| keys(lang, file).len()).sum();
        assert_eq!(apart, all_keys(lang).len(), "{lang}");
    }
}

#[test]
fn card_page_and_report_speak_four_languages() {
    for (face, count) in [(Face::Card, 2), (Face::Page, 2), (Face::Report, 5)] {
        assert_eq!(face.files(ENGLISH).count(), count, "{face:?}");
        assert_eq!(languages_of(face).collect::<Vec<_>>(), ["de", "en", "es", "fr"], "{face:?}");
    }
}

#[test]
fn a_face_speaks_no_language_by_halves() {
    for lang in folders() {
        let whole = files::of(lang).len() == files::of(ENGLISH).len();
        let spoken = if whole { lang } else { ENGLISH };
        for tag in [lang.to_owned(), format!("{lang}_XX.UTF-8"), format!("{}-XX", lang.to_uppercase())] {
            assert_eq!(Words::load(&tag).lang(), spoken, "{tag}");
            for face in [Face::Card, Face::Report] {
                assert_eq!(Words::load_for(face, &tag).lang(), lang, "{face:?} {tag}");
            }
        }
    }
}

/// Whether a message has a letter of its own, and not only places and the marks between them.
fn has_letters(pattern: &Pattern<&str>) -> bool {
    pattern.elements.iter().any(|element| match element {
        PatternElement::TextElement { value } => value.contains(char::is_alphabetic),
        PatternElement::Placeable { expression: Expression::Select { variants, .. } } => {
            variants.iter().any(|variant| has_letters(&variant.value))
        }
        PatternElement::Placeable { .. } => false,
    })
}

/// What is the same word or unit in English too, in at least one language.
const THE_SAME: [&str; 14] = [
    "card-engine-diesel",
    "card-engine-gas",
    "fuel-kind-diesel",
    "fuel-kind-gas",
    "report-amount-kilogram",
    "report-amount-metre",
    "use-kwh-per-100-km",
    "use-miles-per-kwh",
    "use-miles-per-us-gallon",
    "viewer-car-vin",
    "viewer-distance-km",
    "viewer-distance-mi",
    "viewer-engine-diesel",
    "viewer-engine-gas",
];

#[test]
fn nothing_is_left_in_english() {
    let mut same = BTreeSet::new();
    for lang in folders().filter(|lang| *lang != ENGLISH) {
        for (file, _) in files::of(lang) {
            let english = messages(ENGLISH, file);
            let worded = messages(lang, file).into_iter().filter(|(_, said)| has_letters(said));
            let untouched = worded.filter(|(id, said)| english[id] == *said);
            same.extend(untouched.map(|(id, _)| id));
        }
    }
    assert_eq!(same, THE_SAME.map(str::to_owned).into());
}

#[test]
fn every_message_can_be_said_with_its_places_filled() {
    for lang in folders() {
        let bundle = bundle(Face::Program, lang);
        for (id, places) in all_keys(lang).iter().filter(|(id, _)| !id.starts_with('-')) {
            let pattern = bundle.get_message(id).unwrap().value().unwrap();
            for sample in [Arg::from("x"), Arg::from(0_u32), Arg::from(1_u32), Arg::from(22_u32)] {
                let args: FluentArgs<'_> = places.iter().map(|place| (place.as_str(), &sample)).collect();
                let mut faults = Vec::new();
                let said = bundle.format_pattern(pattern, Some(&args), &mut faults);
                assert!(faults.is_empty(), "{lang}: {id}: {faults:?}");
                // Of none there may be nothing to say.
                assert!(sample == Arg::from(0_u32) || !said.trim().is_empty(), "{lang}: {id} says nothing");
            }
        }
    }
}

/// Unicode CLDR, plural rules, from memory: French has one form for 0 and 1, German and Spanish for 1 alone.
#[test]
fn each_language_counts_in_its_own_way() {
    let said = |lang: &str, id: &str, args: &[(&str, u32)]| {
        let args: Vec<_> = args.iter().map(|(name, count)| (*name, Arg::from(*count))).collect();
        Words::load_for(Face::Card, lang).say(id, &args)
    };
    let note = |lang: &str, shown, left_out| {
        said(lang, "card-visits-note", &[("shown", shown), ("left-out", left_out)])
    };
    assert_eq!(note("de", 1, 0), "1 Eintrag, der auch im QR-Code steht.");
    assert_eq!(note("de", 0, 0), "Keine Einträge.");
    assert_eq!(note("de", 120, 20), "120 Einträge; im QR-Code fehlen die 20 ältesten.");
    assert_eq!(note("fr", 0, 0), "Aucune intervention.");
    assert_eq!(note("es", 120, 1), "120 intervenciones; en el código QR falta la más antigua.");
    assert_eq!(said("fr", "card-more", &[("count", 1)]), "et une autre opération au carnet");
    let receipts = |count| said("fr", "card-receipts", &[("count", count), ("of", 7)]);
    assert_eq!(receipts(0), "Aucune des 7 interventions n’a de justificatif au carnet.");
    assert_eq!(receipts(1), "Une seule des 7 interventions a un justificatif au carnet.");
    let struck = |lang: &str, count: u32| {
        Words::load_for(Face::Report, lang).say("report-struck-count", &[("count", count.into())])
    };
    assert_eq!(struck("de", 1), "Ein Eintrag ist gestrichen; er ist so gekennzeichnet und zählt nicht mit.");
    assert!(struck("es", 2).starts_with("2 intervenciones están tachadas"));
}

#[test]
fn every_refusal_is_one_sentence() {
    let words = Words::load(ENGLISH);
    for (id, places) in all_keys(ENGLISH).iter().filter(|(id, _)| id.starts_with("refusal-")) {
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
