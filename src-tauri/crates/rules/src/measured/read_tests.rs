//! Lines of scan tools, as they are pasted.
#![allow(clippy::unwrap_used)]

use super::*;

fn one(line: &str) -> Option<(Parameter, i64)> {
    let Pasted { values, .. } = read(line);
    values.first().map(|(parameter, value)| (*parameter, value.0))
}

#[test]
fn the_usual_ways_to_write_a_trim_are_read() {
    use Parameter::{LongTrim1, LongTrim2, ShortTrim1, ShortTrim2};
    let lines = [
        ("STFT1 2.3 %", ShortTrim1, 2_300),
        ("LTFT B1 -4.7", LongTrim1, -4_700),
        ("LTFT B2: -4,7%", LongTrim2, -4_700),
        ("Short term fuel trim - bank 2 = 0.8 %", ShortTrim2, 800),
        ("Long-term fuel trim (bank 1): +7.03 %", LongTrim1, 7_030),
        ("SHRTFT21 -0.78", ShortTrim2, -780),
        ("longft1 \u{2212}3.1", LongTrim1, -3_100),
        ("ltft 0", LongTrim1, 0),
    ];
    for (line, parameter, value) in lines {
        assert_eq!(one(line), Some((parameter, value)), "{line}");
    }
}

#[test]
fn temperatures_air_and_voltage_are_read_in_their_units() {
    let lines = [
        ("ECT 88 C", Parameter::Coolant, 88_000),
        ("Coolant temperature: 190\u{b0}F", Parameter::Coolant, 87_777),
        ("Engine coolant temp = 91 \u{b0}C", Parameter::Coolant, 91_000),
        ("MAF 2.94 g/s", Parameter::IdleAir, 2_940),
        ("Air flow rate (MAF) 3,1 g/s", Parameter::IdleAir, 3_100),
        ("Battery 12.48 V", Parameter::RestVoltage, 12_480),
        ("Battery voltage: 12,5V", Parameter::RestVoltage, 12_500),
    ];
    for (line, parameter, value) in lines {
        assert_eq!(one(line), Some((parameter, value)), "{line}");
    }
}

#[test]
fn what_is_not_understood_is_told() {
    let pasted = read("STFT1 2.3 %; RPM 812\n\nLTFT B3 4.0\r\nSTFT B1 3.9 %\nLTFT1 twelve\nMAF 3 lb/min");
    assert_eq!(pasted.values, [(Parameter::ShortTrim1, Milli(3_900))], "the later one counts");
    assert_eq!(pasted.unread, ["RPM 812", "LTFT B3 4.0", "LTFT1 twelve", "MAF 3 lb/min"]);
    assert_eq!(read(""), Pasted::default());
}

#[test]
fn a_text_without_end_is_cut() {
    let pasted = read(&"STFT1 1\n".repeat(100_000));
    assert_eq!(pasted.values.len(), 1);
    let long = read(&"\u{e9}".repeat(50_000));
    assert_eq!(long.unread.len(), 1);
    assert_eq!(long.unread[0].chars().count(), LONGEST_LINE);
}

proptest::proptest! {
    /// Anything at all can be pasted.
    #[test]
    fn no_text_is_too_strange(text in ".{0,200}") {
        let pasted = read(&text);
        proptest::prop_assert!(pasted.values.len() <= Parameter::ALL.len());
    }
}
