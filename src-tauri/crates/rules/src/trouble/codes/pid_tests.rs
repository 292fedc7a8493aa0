//! Values from their bytes, by the formulas of SAE J1979.
#![allow(clippy::unwrap_used)]

use std::collections::BTreeSet;

use super::*;
use crate::measured::{Judgement, Parameter};
use crate::testing::km;

fn value(number: u8, data: &[u8]) -> String {
    let pid = Pid::from_number(number).unwrap();
    format!("{} {}", pid.read(data).unwrap().value, pid.unit().symbol())
}

/// Worked from the formulas of SAE J1979 as reproduced in public tables of its parameters.
#[test]
fn worked_bytes_give_their_values() {
    for (number, data, wanted) in [
        (0x0C, &[0x1A, 0xF8][..], "1726 rpm"),
        (0x0C, &[0xFF, 0xFF], "16383.75 rpm"),
        (0x05, &[0x7B], "83 °C"),
        (0x05, &[0x00], "-40 °C"),
        (0x0F, &[0xFF], "215 °C"),
        (0x06, &[0x80], "0 %"),
        (0x07, &[0x00], "-100 %"),
        // 99.21875 exactly.
        (0x08, &[0xFF], "99.219 %"),
        (0x42, &[0x37, 0xDC], "14.3 V"),
        // 50.196 and 49.804.
        (0x2F, &[0x80], "50.196 %"),
        (0x04, &[0x7F], "49.804 %"),
        (0x11, &[0xFF], "100 %"),
        (0x1F, &[0x01, 0x2C], "300 s"),
        (0xA6, &[0x00, 0x12, 0xD6, 0x87], "123456.7 km"),
        (0xA6, &[0xFF, 0xFF, 0xFF, 0xFF], "429496729.5 km"),
        (0x10, &[0xFF, 0xFF], "655.35 g/s"),
        (0x0D, &[0x32], "50 km/h"),
        (0x0B, &[0x64], "100 kPa"),
        (0x0E, &[0x80], "0 °"),
        (0x0E, &[0x00], "-64 °"),
        (0x0A, &[0x64], "300 kPa"),
        (0x21, &[0x00, 0xFA], "250 km"),
        (0x31, &[0xFF, 0xFF], "65535 km"),
        (0x4E, &[0x00, 0x3C], "60 min"),
    ] {
        assert_eq!(value(number, data), wanted, "{number:02X} {data:02X?}");
    }
}

/// Positive means that fuel is being added, the opposite of what some tables in circulation print.
#[test]
fn a_trim_is_judged_as_the_owners_own_reading_is() {
    let trim = Pid::LongTrim1.read(&[0x99]).unwrap();
    assert_eq!(trim.value, Milli(19_531));
    assert_eq!(Parameter::LongTrim1.judge(trim.value), Judgement::High);
}

#[test]
fn the_odometer_is_exact() {
    let odometer = Pid::Odometer.read(&[0x00, 0x12, 0xD6, 0x87]).unwrap();
    let exact = Distance::from_millimetres(123_456_700_000);
    assert_eq!(odometer.distance(), Some(exact));
    assert_eq!(Pid::DistanceSinceClearing.read(&[0x01, 0x00]).unwrap().distance(), Some(km(256)));
    assert_eq!(Pid::Speed.read(&[0x32]).unwrap().distance(), None);
}

#[test]
fn too_few_or_too_many_bytes_are_no_value() {
    for pid in Pid::ALL {
        let bytes = [0_u8; 5];
        for length in 0..=5 {
            assert_eq!(pid.read(&bytes[..length]).is_some(), length == pid.bytes(), "{pid:?} {length}");
        }
    }
}

#[test]
fn each_has_a_number_and_a_key_of_its_own() {
    let numbers: BTreeSet<_> = Pid::ALL.into_iter().map(Pid::number).collect();
    let keys: BTreeSet<_> = Pid::ALL.into_iter().map(Pid::key).collect();
    assert_eq!((numbers.len(), keys.len()), (Pid::ALL.len(), Pid::ALL.len()));
    assert!(Pid::ALL.is_sorted_by_key(|pid| pid.number()));
    assert!(numbers.iter().all(|&number| skipped(number).is_none()));
}
