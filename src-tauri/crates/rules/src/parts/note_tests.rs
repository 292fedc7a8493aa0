//! Equivalent numbers and warnings.
#![allow(clippy::unwrap_used)]

use super::*;

fn number(written: &str) -> PartNumber {
    PartNumber::new(written).unwrap()
}

fn note(of: &str, same: &[&'static str]) -> Note<'static> {
    Note { number: number(of), same: same.iter().map(|it| (number(it), "Quillan")).collect(), warning: None }
}

fn same(notes: &Notes<'_>, of: &str) -> Vec<String> {
    let mut numbers: Vec<_> = notes.same(&number(of)).iter().map(|(number, _)| number.to_string()).collect();
    numbers.sort();
    numbers
}

#[test]
fn the_same_is_the_same_both_ways_and_over_a_third() {
    let notes = Notes::new(vec![note("OF 12-44", &["QF1244", "77.01"]), note("qf 1244", &["P-9"])]);
    assert_eq!(same(&notes, "of1244"), ["77.01", "P-9", "QF1244"]);
    assert_eq!(same(&notes, "P9"), ["77.01", "OF 12-44", "qf 1244"]);
    assert!(notes.are_same(&number("7701"), &number("p 9")));
    assert!(!notes.are_same(&number("7701"), &number("P 10")));
}

#[test]
fn what_is_warned_of_is_not_offered_and_the_later_note_counts() {
    let warned = |instead| Note { warning: Some(Warning::Superseded { instead }), ..note("B 2", &[]) };
    let notes = Notes::new(vec![note("A 1", &["B 2", "C 3"]), warned("B 20"), warned("B 21")]);
    assert_eq!(same(&notes, "A 1"), ["C 3"]);
    assert_eq!(notes.warning(&number("b2")), Some(Warning::Superseded { instead: "B 21" }));
    assert_eq!(notes.warning(&number("A 1")), None);
    let taken_back = Notes::new(vec![warned("B 20"), note("B 2", &[])]);
    assert_eq!(taken_back.warning(&number("B 2")), None);
}

#[test]
fn a_ring_of_notes_ends() {
    let notes = Notes::new(vec![note("A", &["B"]), note("B", &["C"]), note("C", &["A"])]);
    assert_eq!(same(&notes, "A"), ["B", "C"]);
}
