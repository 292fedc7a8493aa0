//! Whatever the catalogue and the rules name has a name in the words of every language.
#![allow(clippy::unwrap_used)]

use std::collections::BTreeSet;

use rules::upkeep::{Catalogue, Finding, Measured};
use rules::vehicle::Fitting;
use words::Words;

/// The keys of everything that can be named by the words, as they stand there.
fn keys() -> BTreeSet<String> {
    let items = Catalogue::shipped().unwrap().items();
    let names = items.iter().map(|item| format!("item-{}", item.key));
    let kinds = items.iter().flat_map(|item| &item.kinds).map(|kind| format!("kind-{}", kind.key));
    let access = items.iter().filter_map(|item| item.access).map(|access| format!("access-{}", access.key()));
    let findings = Finding::ALL.into_iter().map(|finding| format!("finding-{}", finding.key()));
    let measured = Measured::ALL.into_iter().map(|what| format!("measured-{}", what.key()));
    let fitted = Fitting::ALL.into_iter().map(|fitting| format!("fitted-{}", fitting.key()));
    names.chain(kinds).chain(access).chain(findings).chain(measured).chain(fitted).collect()
}

#[test]
fn everything_that_the_catalogue_names_has_a_word() {
    for lang in words::languages() {
        let words = Words::load(lang);
        for key in keys() {
            assert!(words.has(&key), "{lang} lacks {key}");
        }
    }
}

/// A phone shows about forty characters in a line.
#[test]
fn a_name_fits_on_the_line_of_a_phone() {
    for lang in words::languages() {
        let words = Words::load(lang);
        for key in keys() {
            let said = words.say(&key, &[]);
            assert!(said.chars().count() <= 40, "{lang}: {key} is too long: {said}");
        }
    }
}
