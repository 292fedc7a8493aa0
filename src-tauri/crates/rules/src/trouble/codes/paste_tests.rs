//! Whole texts of scan tools.
#![allow(clippy::unwrap_used)]

use proptest::prelude::*;

use super::*;
use crate::trouble::codes::{Code, Pid, Readiness, Reported, Status};

/// The codes with their status, as `P0171 pending`.
fn codes(text: &str) -> Vec<String> {
    let scan = read(text);
    scan.codes.iter().map(|reported| format!("{} {}", reported.code, reported.status.key())).collect()
}

/// `43 01 35`, `43 03 00` and `43 01 01` with these codes are printed in a developer forum, `43 01 33` with
/// its noughts is from memory of SAE J1979, and `43 02 01 02 01 13` is a forum thread's surprise at the count
/// that CAN puts first.
#[test]
fn published_answers_give_their_codes() {
    for (answer, wanted) in [
        ("43 01 35", &["P0135 confirmed"][..]),
        ("43 03 00", &["P0300 confirmed"]),
        ("43 01 01", &["P0101 confirmed"]),
        ("43 01 33 00 00 00 00", &["P0133 confirmed"]),
        ("43 02 01 02 01 13", &["P0102 confirmed", "P0113 confirmed"]),
        ("43 96 A1", &["B16A1 confirmed"]),
    ] {
        for text in [
            answer.to_owned(),
            answer.replace(' ', ""),
            answer.to_lowercase(),
            format!(">03\r{answer} \r\r>"),
        ] {
            let scan = read(&text);
            assert_eq!(codes(&text), wanted, "{text}");
            assert!(scan.notes.is_empty(), "{text}: {:?}", scan.notes);
            assert!(scan.answered.contains(&Status::Confirmed));
        }
    }
}

#[test]
fn the_service_tells_the_status() {
    assert_eq!(
        codes("43 01 35\n47 01 71\n4A 04 20"),
        ["P0135 confirmed", "P0171 pending", "P0420 permanent"]
    );
    assert_eq!(codes("Stored: 43 01 35"), ["P0135 confirmed"]);
    assert_eq!(codes("0x43, 0x01, 0x35"), ["P0135 confirmed"]);
    assert_eq!(codes("12:43:07.114 43 01 35  P0171 pending"), ["P0171 pending", "P0135 confirmed"]);
}

/// What the terminal is given, one argument a line.
#[test]
fn codes_bytes_and_answers_may_stand_together() {
    let told = codes("P0300\n0420\n43 02 01 02 01 13");
    assert_eq!(told, ["P0300 unstated", "P0420 unstated", "P0102 confirmed", "P0113 confirmed"]);
}

#[test]
fn empty_lists_are_answers() {
    for (text, status) in
        [("43 00", Status::Confirmed), ("4700", Status::Pending), ("4A 00", Status::Permanent)]
    {
        let scan = read(text);
        assert!(scan.codes.is_empty() && scan.notes.is_empty(), "{text}: {scan:?}");
        assert_eq!(scan.answered.into_iter().collect::<Vec<_>>(), [status]);
    }
    assert!(read("43 00 00 00 00 00 00").codes.is_empty());
    assert!(read("odometer 4300 km").answered.is_empty());
}

/// ISO 15765-4: identifiers from 7E8, or 18 DA F1 and the unit, then the length.
#[test]
fn what_the_network_puts_in_front_is_taken_off() {
    let two = ["P0102 confirmed", "P0113 confirmed"];
    for text in [
        "7E8 06 43 02 01 02 01 13",
        "7E8 06 43 02 01 02 01 13 AA",
        "7E80643020102 0113",
        "7E806430201020113",
        "18 DA F1 10 06 43 02 01 02 01 13",
        "18DAF110 06 43 02 01 02 01 13",
        "06 43 02 01 02 01 13 00",
    ] {
        assert_eq!(codes(text), two, "{text}");
        assert!(read(text).notes.is_empty(), "{text}");
    }
    // SAE J1850 or ISO 9141-2, and ISO 14230, each with a checksum at the end.
    for text in ["48 6B 10 43 01 33 00 00 00 00 3A", "87 F1 10 43 01 33 00 00 00 00 FF"] {
        assert_eq!(codes(text), ["P0133 confirmed"], "{text}");
        assert!(read(text).notes.is_empty(), "{text}");
    }
}

#[test]
fn answers_of_several_lines_are_put_together() {
    let wanted = "P0102 P0113 P0133 P0171 P0300";
    let joined = |text: &str| {
        let scan = read(text);
        assert!(scan.notes.is_empty(), "{text}: {:?}", scan.notes);
        scan.of(Status::Confirmed).map(|code| code.to_string()).collect::<Vec<_>>().join(" ")
    };
    for text in [
        "00C\r0: 43 05 01 02 01 13\r1: 01 33 01 71 03 00 00\r>",
        "00C\n0:430501020113\n1:01330171030000",
        "0: 43 05 01 02 01 13\n1: 01 33 01 71 03 00 00",
        "7E8 10 0C 43 05 01 02 01 13\n7E8 21 01 33 01 71 03 00 00",
        "18DAF110 10 0C 43 05 01 02 01 13\n18DAF110 21 01 33 01 71 03 00 AA",
    ] {
        assert_eq!(joined(text), wanted, "{text}");
    }
}

#[test]
fn parts_of_two_units_are_told_apart_by_their_identifiers() {
    let text = "7E8 10 08 43 03 01 02 01 13\n7E9 10 08 43 03 07 00 07 05\n7E9 21 07 30\n7E8 21 04 20";
    assert_eq!(codes(text).len(), 6);
    assert!(codes(text).contains(&"P0730 confirmed".to_owned()) && read(text).notes.is_empty());
}

#[test]
fn parts_that_cannot_be_told_apart_are_not_guessed() {
    let scan = read("008\n0: 43 03 01 02 01 13\n0: 43 03 07 00 07 05\n1: 07 30\n1: 04 20");
    let codes: Vec<_> = scan.of(Status::Confirmed).map(|code| code.to_string()).collect();
    assert_eq!(codes, ["P0102", "P0113", "P0700", "P0705"]);
    assert!(scan.notes.contains(&Note::PartsMixed));
    let scan = read("00C\n0: 43 05 01 02 01 13\n2: 01 33 01 71 03 00 00");
    assert_eq!(scan.codes.len(), 2);
    assert!(scan.notes.contains(&Note::PartMissing));
    assert!(read("7E8 21 01 33 01 71").notes.contains(&Note::PartMissing));
}

#[test]
fn what_was_asked_is_no_answer() {
    let text = ">0101\r41 01 81 07 6D 6D\r>03\r43 01 35\r>07\rNO DATA\r>";
    let scan = read(text);
    assert_eq!(codes(text), ["P0135 confirmed"]);
    assert_eq!(scan.readiness, [Readiness::from_bytes([0x81, 0x07, 0x6D, 0x6D])]);
    assert_eq!(scan.notes, [Note::NoData]);
    // Alone, the same digits are a code.
    assert_eq!(codes("0101"), ["P0101 unstated"]);
}

#[test]
fn a_freeze_frame_is_read_with_the_rest() {
    let scan = read("020200\r42 02 00 01 71\r020C00\r42 0C 00 1A F8\r");
    let [frame] = &scan.freeze_frames[..] else { panic!("{scan:?}") };
    assert_eq!(frame.code, Code::parse("P0171"));
    assert_eq!(frame.value(Pid::EngineSpeed).unwrap().value.to_string(), "1726");
    assert!(scan.codes.is_empty(), "the code of a frame is not reported a second time: {scan:?}");
}

#[test]
fn what_the_tool_says_of_its_connection_is_noted() {
    assert_eq!(read("NO DATA").notes, [Note::NoData]);
    assert_eq!(
        read("SEARCHING...\nUNABLE TO CONNECT").notes,
        [Note::LinkFailed("UNABLE TO CONNECT".to_owned())]
    );
    assert_eq!(codes("SEARCHING...43 01 35"), ["P0135 confirmed"]);
    assert_eq!(read("7F 0A 11").notes, [Note::Refused { service: 0x0A, reason: 0x11 }]);
    assert_eq!(read("44").notes, [Note::Cleared]);
}

#[test]
fn what_means_nothing_is_named() {
    assert_eq!(read("").notes, [Note::NothingFound]);
    assert_eq!(read("it rattles when cold").notes, [Note::NothingFound]);
    assert_eq!(read("12 34 56 78").notes, [Note::Unread("12 34 56 78".to_owned())]);
    assert_eq!(read("43 01").notes, [Note::CutShort("43 01".to_owned())]);
}

#[test]
fn a_text_that_is_too_long_is_cut_where_a_letter_ends() {
    let text = format!("P0300 {}", "ü".repeat(LONGEST));
    let scan = read(&text);
    assert_eq!((scan.codes.len(), scan.notes), (1, vec![Note::TooLong]));
}

/// Pieces of what scan tools print, to be put together in any way.
fn pieces() -> impl Strategy<Value = String> {
    let known = [
        "P0300", "p013a", "pending", "stored", "43", "4A", "41 01", "42 02 00", "7E8", "10 0C", "21", "0:",
        "1:", "00C", "\n", "\r", ">", " ", "-", "NO DATA", "0420", "no", "all", "18DAF110", "48 6B 10",
        "87 F1 10", "7F", "ü", "00", "0101", "mode", "$0A", "P",
    ];
    let piece = prop_oneof![
        4 => prop::sample::select(known.to_vec()).prop_map(str::to_owned),
        2 => "[0-9A-F]{2}( [0-9A-F]{2}){0,8}",
        1 => any::<String>()
    ];
    prop::collection::vec(piece, 0..24).prop_map(|pieces| pieces.join(" "))
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(600))]

    /// No text stops the reader, and it always says something of one.
    #[test]
    fn any_text_is_read_to_its_end(text in prop_oneof![pieces(), any::<String>()]) {
        let scan = read(&text);
        prop_assert_ne!(&scan, &Scan::default());
        for (at, reported) in scan.codes.iter().enumerate() {
            let same = |known: &&Reported| (known.code, known.status) == (reported.code, reported.status);
            let twice = scan.codes[..at].iter().any(|known| same(&known));
            prop_assert!(!twice, "{reported:?} stands there twice");
        }
        prop_assert_eq!(read(&text), scan);
    }

    /// Any codes, written as a car answers on CAN in one part or several, are read back as they were.
    #[test]
    fn a_counted_list_goes_there_and_back(
        raw in prop::collection::btree_set(1..=u16::MAX, 0..40).prop_map(Vec::from_iter)
    ) {
        let mut answer = vec![0x47, u8::try_from(raw.len()).unwrap()];
        answer.extend(raw.iter().flat_map(|code| code.to_be_bytes()));
        let wanted: Vec<_> = raw.iter().map(|code| Code::from_bytes(code.to_be_bytes())).collect();
        let scan = read(&lines(&answer));
        prop_assert_eq!(scan.of(Status::Pending).collect::<Vec<_>>(), wanted);
        prop_assert!(scan.notes.is_empty(), "{:?}", scan.notes);
        prop_assert!(scan.answered.contains(&Status::Pending));
    }
}

/// An answer as ISO 15765-2 cuts it and a tool prints it with identifiers.
fn lines(answer: &[u8]) -> String {
    let line = |head: String, part: &[u8]| {
        let bytes = part.iter().map(|byte| format!("{byte:02X}"));
        [head].into_iter().chain(bytes).collect::<Vec<_>>().join(" ")
    };
    if answer.len() <= 7 {
        return line(format!("7E8 {:02X}", answer.len()), answer);
    }
    let (first, rest) = answer.split_at(6);
    let mut lines = vec![line(format!("7E8 1{:X} {:02X}", answer.len() >> 8, answer.len() & 0xFF), first)];
    for (at, part) in rest.chunks(7).enumerate() {
        let filled: Vec<u8> = part.iter().copied().chain([0xAA; 7]).take(7).collect();
        lines.push(line(format!("7E8 2{:X}", (at + 1) % 16), &filled));
    }
    lines.join("\n")
}

#[test]
fn a_code_with_letters_for_digits_or_with_gaps_is_named_and_not_passed_over() {
    let meant = Code::from_bytes([0x01, 0x71]);
    let misread = |text: &str| Note::Misread { text: text.to_owned(), meant };
    for text in ["P0l71", "p0l71", "PO17I", "P0I7l", "P 0 1 7 1", "p 0 1 7 1"] {
        assert_eq!(read(text).notes, [misread(text)], "{text}");
    }
    let beside = read("P0300, P 0 1 7 1, P0l71 stored");
    assert_eq!(beside.codes.len(), 1);
    assert_eq!(beside.notes, [misread("P 0 1 7 1"), misread("P0l71")]);
    for word in ["Pool", "Pools", "Colon", "Bolt", "Bill", "PIII", "B I I I I"] {
        assert_eq!(read(word).notes, [Note::NothingFound], "{word}");
    }
}

#[test]
fn what_is_too_long_is_cut_between_words_and_invents_no_code() {
    let whole = "P0301 ".repeat(LONGEST / 6);
    let cut = read(&format!("{whole}P0171 P0172"));
    assert_eq!(cut.notes, [Note::TooLong]);
    assert_eq!(cut.codes.len(), 1);
    assert_eq!(read(&whole.replace(' ', ",")).codes.len(), 1);
    assert_eq!(read(&"P0301".repeat(LONGEST)).notes, [Note::TooLong]);
}

#[test]
fn empty_lists_side_by_side_are_each_read() {
    for text in ["4300 4700 4A00", "43 00 47 00 4a 00", "4300\n4700\n4A00"] {
        let scan = read(text);
        assert!(scan.codes.is_empty() && scan.notes.is_empty(), "{text}: {scan:?}");
        let lists: Vec<_> = scan.answered.into_iter().collect();
        assert_eq!(lists, [Status::Confirmed, Status::Pending, Status::Permanent], "{text}");
    }
}
