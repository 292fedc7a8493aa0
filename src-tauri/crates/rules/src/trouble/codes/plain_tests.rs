//! Codes in plain text, and the words around them.

use super::*;

/// The codes of the lines with their status, as `P0171 pending`.
fn read(text: &str) -> (Vec<String>, Scan) {
    let (mut plain, mut scan) = (Plain::default(), Scan::default());
    text.lines().for_each(|line| plain.line(line, &mut scan));
    scan.settle();
    let said = scan.codes.iter().map(|reported| format!("{} {}", reported.code, reported.status.key()));
    (said.collect(), scan)
}

fn codes(text: &str) -> Vec<String> {
    read(text).0
}

#[test]
fn a_word_behind_a_code_is_meant_for_it_and_maybe_for_those_before() {
    let (codes, scan) = read("P0300 P0171 pending");
    assert_eq!(codes, ["P0300 unstated", "P0171 pending"]);
    assert_eq!(scan.notes, [Note::StatusUnclear(Code::from_bytes([0x03, 0x00]))]);
    let (codes, scan) = read("P0300 stored, P0171 pending; P0420 permanent");
    assert_eq!(codes, ["P0300 confirmed", "P0171 pending", "P0420 permanent"]);
    assert!(scan.notes.is_empty());
}

#[test]
fn both_and_all_mean_every_code_of_the_line() {
    let (said, scan) = read("P0300 P0171 both pending");
    assert_eq!(said, ["P0300 pending", "P0171 pending"]);
    assert!(scan.notes.is_empty());
    assert_eq!(
        codes("P0300, P0171, P0420 (all stored)").join(" "),
        "P0300 confirmed P0171 confirmed P0420 confirmed"
    );
}

#[test]
fn a_word_before_codes_is_meant_for_all_that_follow() {
    assert_eq!(codes("Pending: P0300 P0171"), ["P0300 pending", "P0171 pending"]);
    assert_eq!(codes("Stored P0300, pending P0171"), ["P0300 confirmed", "P0171 pending"]);
    assert_eq!(codes("Mode 07: p0171"), ["P0171 pending"]);
    assert_eq!(codes("service $0A P0171"), ["P0171 permanent"]);
}

#[test]
fn a_heading_is_meant_for_the_lines_below() {
    let text = "Stored DTCs\n\n1. P0300 - Random misfire\n2. P0171 - Mixture\nPending DTCs:\nP0420\n\
        Permanent DTCs: none\nP0430";
    let (codes, scan) = read(text);
    assert_eq!(codes, ["P0300 confirmed", "P0171 confirmed", "P0420 pending", "P0430 unstated"]);
    assert!(scan.answered.contains(&Status::Permanent) && scan.notes.is_empty());
}

#[test]
fn an_empty_list_is_an_answer() {
    let (codes, scan) = read("No pending codes. Stored codes: 0");
    assert!(codes.is_empty());
    assert_eq!(scan.answered.into_iter().collect::<Vec<_>>(), [Status::Confirmed, Status::Pending]);
    let (codes, scan) = read("No pending codes, P0300 stored");
    assert_eq!(codes, ["P0300 confirmed"]);
    assert_eq!(scan.answered.len(), 2);
}

#[test]
fn codes_are_found_however_they_are_written() {
    for text in ["p0171", "(P0171)", "P0171:", "P 0171", "P-0171", "PO171", "DTC=P0171;", "xyz P0171."] {
        assert_eq!(codes(text), ["P0171 unstated"], "{text}");
    }
    assert_eq!(codes("P0300P0171"), ["P0300 unstated", "P0171 unstated"]);
    assert_eq!(codes("P013A u203e B16A1"), ["P013A unstated", "U203E unstated", "B16A1 unstated"]);
}

#[test]
fn the_failure_type_behind_a_code_is_kept() {
    for text in ["P0171-85", "P0171:85", "P017185"] {
        let (_, scan) = read(text);
        assert_eq!(scan.codes.first().and_then(|reported| reported.failure_type), Some(0x85), "{text}");
        assert_eq!(scan.codes.len(), 1);
    }
}

/// Two bytes and their codes, computed from the layout of SAE J2012.
#[test]
fn four_digits_are_two_bytes_where_nothing_else_stands() {
    assert_eq!(codes("0420"), ["P0420 unstated"]);
    assert_eq!(codes("P0300 0420"), ["P0300 unstated", "P0420 unstated"]);
    assert_eq!(codes("C158 E03E 4123 013A 00D2 pending").len(), 5);
    assert_eq!(codes("1: 0300\n2: C158"), ["P0300 unstated", "U0158 unstated"]);
    for text in ["in 2019", "1500 rpm", "at 0420 km", "0000", "dead", "P0300 at 1500"] {
        assert!(!codes(text).iter().any(|code| !code.starts_with("P0300")), "{text}");
    }
}

#[test]
fn what_looks_like_a_code_and_is_none_is_named() {
    for text in ["P4300", "P030", "P03000", "U9"] {
        let (codes, scan) = read(text);
        assert!(codes.is_empty(), "{text}");
        let wanted = if text == "U9" { Note::NothingFound } else { Note::NotACode(text.to_owned()) };
        assert_eq!(scan.notes, [wanted], "{text}");
    }
    assert_eq!(read("Bank 1 was booed at, BMX and C4 too").1.notes, [Note::NothingFound]);
}

#[test]
fn a_code_with_a_status_needs_no_line_without_one() {
    let (codes, scan) = read("P0300 P0171 pending\nP0300 stored");
    assert_eq!(codes, ["P0171 pending", "P0300 confirmed"]);
    assert!(scan.notes.is_empty());
    assert_eq!(read("P0300 stored\nP0300 pending").0, ["P0300 confirmed", "P0300 pending"]);
}
