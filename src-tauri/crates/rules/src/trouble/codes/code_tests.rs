//! Codes and their two bytes, against published pairs.
#![allow(clippy::unwrap_used)]

use std::collections::BTreeSet;

use super::*;

fn code(text: &str) -> Code {
    Code::parse(text).unwrap()
}

/// Every pair of bytes is a code that prints in five characters and reads back as itself.
#[test]
fn all_65_536_codes_go_there_and_back() {
    let mut printed = BTreeSet::new();
    for value in 0..=u16::MAX {
        let code = Code::from_bytes(value.to_be_bytes());
        let text = code.to_string();
        assert_eq!(text.len(), 5);
        assert_eq!(Code::parse(&text), Some(code), "{text}");
        assert_eq!(Code::parse(&text.to_lowercase()), Some(code), "{text}");
        assert_eq!(code.bytes(), value.to_be_bytes());
        assert_eq!(code.system().letter(), text.chars().next().unwrap());
        printed.insert(text);
    }
    assert_eq!(printed.len(), 65_536);
}

/// Bytes of answers printed in workshop and developer forums: 01 35, 03 00, 01 01, and 96 A1. The rest is
/// computed from the layout of SAE J2012 (two bits letter, two bits first digit, three hexadecimal digits).
#[test]
fn published_pairs_of_bytes_give_their_codes() {
    for (bytes, text) in [
        ([0x01, 0x35], "P0135"),
        ([0x03, 0x00], "P0300"),
        ([0x01, 0x01], "P0101"),
        ([0x96, 0xA1], "B16A1"),
        ([0x01, 0x33], "P0133"),
        ([0xC1, 0x58], "U0158"),
        ([0xE0, 0x3E], "U203E"),
        ([0x04, 0x20], "P0420"),
        ([0x41, 0x23], "C0123"),
        ([0x01, 0x3A], "P013A"),
        ([0x00, 0xD2], "P00D2"),
    ] {
        assert_eq!(Code::from_bytes(bytes).to_string(), text);
        assert_eq!(code(text).bytes(), bytes, "{text}");
    }
}

/// A maker's table of readiness tests prints these. A pattern of four decimal digits would refuse them.
#[test]
fn codes_with_hexadecimal_letters_are_real() {
    for text in ["P013A", "P013E", "P014A", "P00D2", "P00D4"] {
        assert_eq!(code(text).to_string(), text);
        assert_eq!(code(text).origin(), Origin::Standard);
    }
}

#[test]
fn what_is_no_code_is_not_read() {
    for text in [
        "", "P", "P030", "P03000", "P4300", "PF300", "A0300", "X0300", "0300", "P030G", "P 0300", "Pé00",
        "booed", "COOED", "é0300", "P03０0",
    ] {
        assert_eq!(Code::parse(text), None, "{text}");
    }
    assert_eq!(code(" p0300\n"), code("P0300"));
    assert_eq!(code("PO3OO"), code("P0300"));
}

/// SAE J2012, from memory. Many tables in circulation lack the split inside P3.
#[test]
fn standard_and_makers_own_are_told_apart() {
    use Origin::{Maker, Reserved, Standard};
    for (text, origin) in [
        ("P0171", Standard),
        ("P0A80", Standard),
        ("P1234", Maker),
        ("P2002", Standard),
        ("P2BAD", Standard),
        ("P3000", Maker),
        ("P33FF", Maker),
        ("P3400", Standard),
        ("P39FF", Standard),
        ("P3A00", Reserved),
        ("P3FFF", Reserved),
        ("B0001", Standard),
        ("B16A1", Maker),
        ("B2345", Maker),
        ("B3000", Reserved),
        ("C0035", Standard),
        ("C1234", Maker),
        ("C2000", Maker),
        ("C3000", Reserved),
        ("U0100", Standard),
        ("U1000", Maker),
        ("U203E", Maker),
        ("U3003", Standard),
    ] {
        assert_eq!(code(text).origin(), origin, "{text}");
    }
}

/// A maker's scan tool text of 2008: 0 fuel, air and auxiliary emission, 1 and 2 fuel and air, 3 ignition, 4
/// auxiliary emission, 5 speed and idle, 6 computer, 7 and 8 transmission, 9 control modules.
#[test]
fn the_third_character_hints_at_the_area() {
    let areas: Vec<_> =
        (0..=9).map(|digit| code(&format!("P0{digit}00")).area().map(Area::key).unwrap()).collect();
    let mixture = "mixture";
    assert_eq!(
        areas,
        [
            mixture, mixture, mixture, "ignition", "emission", "idle", "computer", "gearbox", "gearbox",
            "modules"
        ]
    );
    assert_eq!(code("P0A80").area(), Some(Area::ElectricDrive));
    assert_eq!(code("P2A00").area(), Some(Area::Mixture));
    for none in ["C0035", "B0001", "U0100", "P3400", "P0F00", "P2B00"] {
        assert_eq!(code(none).area(), None, "{none}");
    }
}
