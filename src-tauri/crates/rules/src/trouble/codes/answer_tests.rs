//! Answers without the lines around them.

use super::*;

/// What an answer of this carrier says.
fn told(carrier: Carrier, answer: &[u8]) -> Scan {
    let mut scan = Scan::default();
    decode(&Message { carrier, answer: answer.to_vec() }, &mut scan);
    scan
}

fn confirmed(scan: &Scan) -> Vec<String> {
    scan.of(Status::Confirmed).map(|code| code.to_string()).collect()
}

/// `43 02 01 02 01 13` on CAN is two codes, P0102 and P0113, and not P0201 and P0113: a forum thread reports
/// that very surprise, and SAE J1979 has the count on ISO 15765-4.
#[test]
fn the_carrier_decides_whether_there_is_a_count() {
    let counted = [0x43, 0x02, 0x01, 0x02, 0x01, 0x13];
    assert_eq!(confirmed(&told(Carrier::Can, &counted)), ["P0102", "P0113"]);
    assert_eq!(confirmed(&told(Carrier::Unknown, &counted)), ["P0102", "P0113"]);
    let plain = [0x43, 0x01, 0x33, 0x00, 0x00, 0x00, 0x00];
    assert_eq!(confirmed(&told(Carrier::Older, &plain)), ["P0133"]);
    assert_eq!(confirmed(&told(Carrier::Unknown, &plain)), ["P0133"]);
}

#[test]
fn an_answer_that_ends_too_early_gives_what_is_whole() {
    let scan = told(Carrier::Can, &[0x43, 0x03, 0x01, 0x02, 0x01, 0x13, 0x04]);
    assert_eq!(confirmed(&scan), ["P0102", "P0113"]);
    assert_eq!(scan.notes[0], Note::CutShort("43 03 01 02 01 13 04".to_owned()));
    for alone in [&[0x43][..], &[0x7F], &[0x41, 0x01, 0x81], &[0x42, 0x02, 0x00, 0x01]] {
        let scan = told(Carrier::Unknown, alone);
        assert!(matches!(scan.notes[..], [Note::CutShort(_)]), "{alone:02X?}: {scan:?}");
        assert!(scan.codes.is_empty() && scan.readiness.is_empty());
    }
}

/// With a checksum that was not taken off, or anything else behind the codes, neither reading is sure.
#[test]
fn a_wrong_code_is_worse_than_none() {
    let scan = told(Carrier::Unknown, &[0x43, 0x01, 0x33, 0x00, 0x00, 0x00, 0x00, 0xB7]);
    assert!(scan.codes.is_empty());
    assert_eq!(scan.notes, [Note::Unread("43 01 33 00 00 00 00 B7".to_owned())]);
}

#[test]
fn filling_behind_a_counted_list_is_passed_over() {
    for filling in [0x00, 0x55, 0xAA] {
        let answer = [0x43, 0x01, 0x04, 0x20, filling, filling, filling, filling];
        let scan = told(Carrier::Unknown, &answer);
        assert_eq!(confirmed(&scan), ["P0420"]);
        assert!(scan.notes.is_empty());
    }
}

#[test]
fn a_list_that_reads_in_two_ways_says_so() {
    let scan = told(Carrier::Unknown, &[0x43, 0x01, 0x03, 0x00, 0x00, 0x00, 0x00]);
    assert_eq!(confirmed(&scan), ["P0103"]);
    assert_eq!(scan.notes, [Note::MaybeCounted(vec![Code::from_bytes([0x03, 0x00])])]);
    // The other reading would be the maker's own P3300, which is no sense to speak of.
    assert!(told(Carrier::Unknown, &[0x43, 0x01, 0x33, 0x00, 0x00, 0x00, 0x00]).notes.is_empty());
}

#[test]
fn several_answers_of_an_older_network_may_run_together() {
    let first = [0x43, 0x01, 0x33, 0x01, 0x71, 0x03, 0x00];
    let second = [0x43, 0x04, 0x20, 0x00, 0x00, 0x00, 0x00];
    let scan = told(Carrier::Unknown, &[first, second].concat());
    assert_eq!(confirmed(&scan), ["P0133", "P0171", "P0300", "P0420"]);
}

/// SAE J1979: parameter 02 of service 02 is the code that set, and noughts say that nothing was frozen.
#[test]
fn a_freeze_frame_has_its_code_and_values() {
    let answer =
        [0x42, 0x02, 0x00, 0x01, 0x71, 0x03, 0x00, 0x02, 0x00, 0x05, 0x00, 0x7B, 0x0C, 0x00, 0x1A, 0xF8];
    let scan = told(Carrier::Can, &answer);
    let [frame] = &scan.freeze_frames[..] else { panic!("{scan:?}") };
    assert_eq!((frame.number, frame.code), (0, Code::parse("P0171")));
    let values: Vec<_> = frame.values.iter().map(|value| value.value.to_string()).collect();
    assert_eq!(values, ["83", "1726"]);
    assert!(told(Carrier::Can, &[0x42, 0x02, 0x00, 0x00, 0x00]).freeze_frames.is_empty());
}

#[test]
fn values_of_another_unit_with_the_same_number_go_into_a_frame_of_their_own() {
    let mut scan = Scan::default();
    for coolant in [0x7B, 0x7C] {
        let answer = vec![0x42, 0x05, 0x00, coolant];
        decode(&Message { carrier: Carrier::Can, answer }, &mut scan);
    }
    assert_eq!(scan.freeze_frames.len(), 2);
}

/// A maker's service text prints 41 01 81 07 6D 6D bit by bit; see the tests of readiness.
#[test]
fn readiness_and_values_of_the_moment_are_read() {
    let scan = told(Carrier::Unknown, &[0x41, 0x01, 0x81, 0x07, 0x6D, 0x6D]);
    assert_eq!(scan.readiness, [Readiness::from_bytes([0x81, 0x07, 0x6D, 0x6D])]);
    let scan = told(Carrier::Can, &[0x41, 0x0C, 0x1A, 0xF8, 0x42, 0x37, 0xDC, 0x00, 0x00]);
    let values: Vec<_> = scan.live.iter().map(|value| value.value.to_string()).collect();
    assert_eq!((values, scan.notes), (vec!["1726".to_owned(), "14.3".to_owned()], Vec::new()));
    let scan = told(Carrier::Can, &[0x41, 0xC7, 0x01]);
    assert_eq!(scan.notes, [Note::Unread("41 C7 01".to_owned())]);
}

#[test]
fn a_refusal_and_a_clearing_are_told() {
    assert_eq!(
        told(Carrier::Can, &[0x7F, 0x0A, 0x11]).notes,
        [Note::Refused { service: 0x0A, reason: 0x11 }]
    );
    assert_eq!(told(Carrier::Can, &[0x44]).notes, [Note::Cleared]);
}
