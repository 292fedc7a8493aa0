//! Numbers of many spellings.
#![allow(clippy::unwrap_used)]

use std::collections::{BTreeSet, HashSet};

use proptest::prelude::*;

use super::PartNumber;

fn number(text: &str) -> PartNumber {
    PartNumber::new(text).unwrap()
}

#[test]
fn spaces_dots_dashes_slashes_and_case_do_not_count() {
    let spellings = [
        "KM 4471-B",
        "km4471b",
        "KM.4471/B",
        "  KM\u{a0}44 71 \u{2013} b ",
        "K-M\\4471\u{2212}B",
        "KM·4471·B",
    ];
    for spelling in spellings {
        assert_eq!(number(spelling), number("KM4471B"), "{spelling}");
    }
    assert_eq!(spellings.map(number).into_iter().collect::<BTreeSet<_>>().len(), 1);
    assert_eq!(spellings.map(number).into_iter().collect::<HashSet<_>>().len(), 1);
}

#[test]
fn every_other_sign_counts() {
    for other in ["KM 4471-C", "KM 4471", "KM 04471-B", "KM 4471+B", "KM 4471*B", "KM 447I-B"] {
        assert_ne!(number(other), number("KM 4471-B"), "{other}");
    }
}

#[test]
fn it_shows_as_written() {
    assert_eq!(number(" Km 4471-b ").to_string(), "Km 4471-b");
}

#[test]
fn signs_alone_are_no_number() {
    for text in ["", " ", "-", "\u{2013}", "./ -"] {
        assert_eq!(PartNumber::new(text), None, "{text:?}");
    }
}

proptest! {
    /// The spelling in which a number is written never changes its place among others.
    #[test]
    fn order_is_that_of_the_normal_form(a in "[a-c0-2]{1,4}", b in "[a-c0-2]{1,4}", gap in "[ ./-]{0,3}") {
        let spelt = |text: &str| text.split("").collect::<Vec<_>>().join(&gap).to_uppercase();
        prop_assert_eq!(number(&a).cmp(&number(&b)), number(&spelt(&a)).cmp(&number(&spelt(&b))));
        prop_assert_eq!(number(&a) == number(&b), a == b);
    }
}
