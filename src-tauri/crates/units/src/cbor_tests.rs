//! The one byte form: published samples, everything else refused, and no bytes that harm.
#![allow(clippy::unwrap_used)]

use proptest::prelude::*;

use super::*;

fn bytes(hex: &str) -> Vec<u8> {
    assert!(hex.len().is_multiple_of(2), "{hex}");
    (0..hex.len()).step_by(2).map(|at| u8::from_str_radix(&hex[at..at + 2], 16).unwrap()).collect()
}

fn text(text: &str) -> Value {
    Value::from(text)
}

fn array<T: Into<Value>>(items: impl IntoIterator<Item = T>) -> Value {
    Value::Array(items.into_iter().map(Into::into).collect())
}

fn map<K: Into<Value>, V: Into<Value>>(pairs: impl IntoIterator<Item = (K, V)>) -> Value {
    Value::Map(pairs.into_iter().map(|(key, value)| (key.into(), value.into())).collect())
}

/// Those of RFC 8949, appendix A, that stand in the deterministic form, with their values.
fn samples() -> Vec<(&'static str, Value)> {
    vec![
        ("00", 0.into()),
        ("01", 1.into()),
        ("0a", 10.into()),
        ("17", 23.into()),
        ("1818", 24.into()),
        ("1819", 25.into()),
        ("1864", 100.into()),
        ("1903e8", 1000.into()),
        ("1a000f4240", 1_000_000.into()),
        ("1b000000e8d4a51000", 1_000_000_000_000_u64.into()),
        ("1bffffffffffffffff", u64::MAX.into()),
        ("c249010000000000000000", Value::Tag(2, Box::new(Value::Bytes(bytes("010000000000000000"))))),
        ("3bffffffffffffffff", Value::Integer((-18_446_744_073_709_551_616_i128).try_into().unwrap())),
        ("c349010000000000000000", Value::Tag(3, Box::new(Value::Bytes(bytes("010000000000000000"))))),
        ("20", (-1).into()),
        ("29", (-10).into()),
        ("3863", (-100).into()),
        ("3903e7", (-1000).into()),
        ("f90000", 0.0.into()),
        ("f93c00", 1.0.into()),
        ("fb3ff199999999999a", 1.1.into()),
        ("f93e00", 1.5.into()),
        ("f97bff", 65504.0.into()),
        ("fa47c35000", 100_000.0.into()),
        ("fa7f7fffff", f64::from(f32::MAX).into()),
        ("fb7e37e43c8800759c", 1.0e300.into()),
        ("f90001", 5.960_464_477_539_063e-8.into()),
        ("f90400", 6.103_515_625e-5.into()),
        ("f9c400", (-4.0).into()),
        ("fbc010666666666666", (-4.1).into()),
        ("f97c00", f64::INFINITY.into()),
        ("f9fc00", f64::NEG_INFINITY.into()),
        ("f4", false.into()),
        ("f5", true.into()),
        ("f6", Value::Null),
        ("c11a514b67b0", Value::Tag(1, Box::new(1_363_896_240.into()))),
        ("c1fb41d452d9ec200000", Value::Tag(1, Box::new(1_363_896_240.5.into()))),
        ("d74401020304", Value::Tag(23, Box::new(Value::Bytes(bytes("01020304"))))),
        ("d818456449455446", Value::Tag(24, Box::new(Value::Bytes(bytes("6449455446"))))),
        ("40", Value::Bytes(vec![])),
        ("4401020304", Value::Bytes(bytes("01020304"))),
        ("60", text("")),
        ("6161", text("a")),
        ("6449455446", text("IETF")),
        ("62225c", text("\"\\")),
        ("62c3bc", text("\u{fc}")),
        ("63e6b0b4", text("\u{6c34}")),
        ("64f0908591", text("\u{10151}")),
        ("80", Value::Array(vec![])),
        ("83010203", array([1, 2, 3])),
        ("8301820203820405", array([1.into(), array([2, 3]), array([4, 5])])),
        ("98190102030405060708090a0b0c0d0e0f101112131415161718181819", array(1..=25)),
        ("a0", Value::Map(vec![])),
        ("a201020304", map([(1, 2), (3, 4)])),
        ("a26161016162820203", map([("a", 1.into()), ("b", array([2, 3]))])),
        ("826161a161626163", array([text("a"), map([("b", "c")])])),
        (
            "a56161614161626142616361436164614461656145",
            map([("a", "A"), ("b", "B"), ("c", "C"), ("d", "D"), ("e", "E")]),
        ),
    ]
}

#[test]
fn published_samples_are_read_and_written() {
    for (hex, value) in samples() {
        assert_eq!(decode(&bytes(hex)), Ok(value.clone()), "{hex}");
        assert_eq!(encode(&value), bytes(hex), "{hex}");
    }
}

/// RFC 8949, appendix A: these carry values that compare equal to others, or to nothing.
#[test]
fn the_negative_zero_and_what_is_no_number_keep_their_bytes() {
    for hex in ["f98000", "f97e00"] {
        assert_eq!(encode(&decode(&bytes(hex)).unwrap()), bytes(hex));
    }
}

/// RFC 8949, section 4.2.1, in its own order: 10, 100, -1, "z", "aa", [100], [-1], false.
#[test]
fn keys_are_sorted_by_their_bytes() {
    let keys = || {
        let sorted: [Value; 8] = [
            10.into(),
            100.into(),
            (-1).into(),
            text("z"),
            text("aa"),
            array([100]),
            array([-1]),
            false.into(),
        ];
        sorted
    };
    let sorted = map(keys().into_iter().map(|key| (key, 0)));
    let reversed = map(keys().into_iter().rev().map(|key| (key, 0)));
    let written = encode(&reversed);
    assert_eq!(written, bytes("a80a001864002000617a006261610081186400812000f400"));
    assert_eq!(decode(&written), Ok(sorted));
}

#[test]
fn other_forms_of_a_value_are_refused() {
    for (hex, why) in [
        ("1817", "23 in two bytes"),
        ("190018", "24 in three bytes"),
        ("1a000003e8", "1000 in five bytes"),
        ("1b0000000000000001", "1 in nine bytes"),
        ("3800", "-1 in two bytes"),
        ("c24101", "1 as a large number"),
        ("c2490000000000000000ff", "a large number with zeros before it"),
        ("5801ff", "a length of 1 in two bytes"),
        ("780161", "a length of 1 in two bytes"),
        ("980100", "a length of 1 in two bytes"),
        ("b8010000", "a length of 1 in two bytes"),
        ("d80100", "tag 1 in two bytes"),
        ("fa3fc00000", "1.5 in single precision"),
        ("fb3ff8000000000000", "1.5 in double precision"),
        ("fa7f800000", "infinity in single precision"),
        ("fb7ff0000000000000", "infinity in double precision"),
        ("5f42010243030405ff", "bytes of unstated length"),
        ("7f657374726561646d696e67ff", "text of unstated length"),
        ("9fff", "an array of unstated length"),
        ("9f018202039f0405ffff", "arrays of unstated length"),
        ("83018202039f0405ff", "an array of unstated length within another"),
        ("bfff", "a map of unstated length"),
        ("bf61610161629f0203ffff", "a map of unstated length"),
        ("a203040102", "keys in falling order"),
        ("a2616201616102", "keys in falling order"),
        ("a262616100617a00", "keys in falling order"),
        ("a201000100", "a key twice"),
        ("81a201000100", "a key twice, deeper down"),
        ("a1a20100010000", "a key twice in a key"),
        ("f7", "undefined"),
        ("f815", "true in two bytes"),
        ("f97e01", "another NaN (RFC 8949, section 4.2.2)"),
        ("fa7fc00001", "a NaN that only single precision holds"),
    ] {
        assert_eq!(decode(&bytes(hex)), Err(CborError::NotDeterministic), "{hex}: {why}");
    }
}

#[test]
fn bytes_that_are_no_cbor_are_refused() {
    for (hex, why) in [
        ("", "nothing"),
        ("18", "a number cut short"),
        ("1c", "a reserved length"),
        ("1f", "a number of unstated length"),
        ("ff", "a break alone"),
        ("42ff", "bytes cut short"),
        ("61ff", "text that is no UTF-8"),
        ("62c328", "text that is no UTF-8"),
        ("8201", "an array cut short"),
        ("a101", "a map without its value"),
        ("bf01ff", "a map without its value"),
        ("c1", "a tag of nothing"),
        ("f0", "a simple value without a meaning"),
        ("f8ff", "a simple value without a meaning"),
        // Legal in RFC 7049, and not well-formed since RFC 8949, section 3.3.
        ("f818", "simple value 24"),
    ] {
        assert_eq!(decode(&bytes(hex)), Err(CborError::Malformed), "{hex}: {why}");
    }
}

#[test]
fn bytes_after_the_value_are_refused() {
    for hex in ["0000", "a000", "f6f6", "6161ff"] {
        assert_eq!(decode(&bytes(hex)), Err(CborError::Trailing), "{hex}");
    }
}

#[test]
fn nesting_has_an_end() {
    let nested = |levels: usize, opening: &str, innermost: &str| bytes(&(opening.repeat(levels) + innermost));
    for opening in ["81", "a100", "c1"] {
        assert!(decode(&nested(DEPTH, opening, "00")).is_ok(), "{opening}");
        assert_eq!(decode(&nested(DEPTH + 1, opening, "00")), Err(CborError::Malformed), "{opening}");
        assert_eq!(decode(&nested(1_000_000, opening, "00")), Err(CborError::Malformed), "{opening}");
    }
}

#[test]
fn maps_are_written_without_what_has_nothing_to_say() {
    let written = MapWriter::new()
        .put(2, &true)
        .put_some(3, None::<&u32>)
        .put_some(1, Some(&"one".to_owned()))
        .put_list(4, &Vec::<u32>::new())
        .put_list(5, &[7_u32])
        .finish();
    assert_eq!(encode(&written), bytes("a301636f6e6502f5058107"));
}

#[test]
fn maps_are_read_key_by_key() {
    let value = decode(&bytes("a301636f6e6502f5058107")).unwrap();
    let read = MapReader::new(&value).unwrap();
    assert_eq!(read.need::<String>(1), Ok("one".to_owned()));
    assert_eq!(read.get::<u32>(3), Ok(None));
    assert_eq!(read.need::<u32>(3), Err(CborError::Missing(3)));
    assert_eq!(read.need::<u32>(1), Err(CborError::Wrong(1)));
    assert_eq!(read.list::<u32>(5), Ok(vec![7]));
    assert_eq!(read.list::<u32>(9), Ok(vec![]));
    assert_eq!(read.list::<bool>(5), Err(CborError::Wrong(5)));
    assert_eq!(MapReader::new(&Value::Null).err(), Some(CborError::Type));
}

#[test]
fn numbers_out_of_range_are_refused() {
    assert_eq!(u8::from_cbor(&256.into()), Err(CborError::Type));
    assert_eq!(u64::from_cbor(&(-1).into()), Err(CborError::Type));
    assert_eq!(i64::from_cbor(&u64::MAX.into()), Err(CborError::Type));
    assert_eq!(Day::from_cbor(&84_006.into()), Err(CborError::Type));
    assert_eq!(Hash::from_cbor(&Value::Bytes(vec![0; 31])), Err(CborError::Type));
    assert_eq!(BookId::from_cbor(&Value::Bytes(vec![0; 17])), Err(CborError::Type));
    assert_eq!(Quantity::from_cbor(&array([0, 0])), Err(CborError::Type));
    assert_eq!(Quantity::from_cbor(&array([1000, 5])), Err(CborError::Type));
    assert_eq!(Money::from_cbor(&array([1.into(), text("ZZZ")])), Err(CborError::Type));
    assert_eq!(Money::from_cbor(&array([1.into(), text("EUR"), 0.into()])), Err(CborError::Type));
    assert_eq!(DistanceUnit::from_cbor(&2.into()), Err(CborError::Type));
}

/// Two texts of one currency would be two byte forms of one amount.
#[test]
fn a_currency_is_read_in_its_own_letters_only() {
    for code in ["eur", " EUR", "EUR "] {
        assert_eq!(Money::from_cbor(&array([1.into(), text(code)])), Err(CborError::Type), "{code:?}");
    }
}

fn comes_back<T: Cbor + PartialEq + std::fmt::Debug>(value: &T) {
    let written = encode(&value.to_cbor());
    assert_eq!(T::from_cbor(&decode(&written).unwrap()).as_ref(), Ok(value));
}

#[test]
fn every_unit_and_measure_comes_back() {
    [DistanceUnit::Kilometre, DistanceUnit::Mile].iter().for_each(comes_back);
    [VolumeUnit::Litre, VolumeUnit::UsGallon, VolumeUnit::ImperialGallon].iter().for_each(comes_back);
    [Measure::Piece, Measure::Litre, Measure::Set, Measure::Kilogram, Measure::Metre]
        .iter()
        .for_each(comes_back);
}

/// Any value that this room writes, with maps in any order and without a key twice.
fn values() -> impl Strategy<Value = Value> {
    let leaf = prop_oneof![
        any::<i64>().prop_map(Value::from),
        any::<u64>().prop_map(Value::from),
        any::<f64>().prop_filter("equal to itself", |float| !float.is_nan()).prop_map(Value::from),
        any::<bool>().prop_map(Value::from),
        Just(Value::Null),
        ".{0,12}".prop_map(Value::from),
        prop::collection::vec(any::<u8>(), 0..40).prop_map(Value::Bytes),
    ];
    leaf.prop_recursive(5, 64, 6, |inner| {
        prop_oneof![
            prop::collection::vec(inner.clone(), 0..6).prop_map(Value::Array),
            prop::collection::btree_map(any::<u16>(), inner.clone(), 0..6)
                .prop_map(|pairs| map(pairs.into_iter().rev())),
            (24_u64.., inner).prop_map(|(tag, inner)| Value::Tag(tag, Box::new(inner))),
        ]
    })
}

proptest! {
    #[test]
    fn quantities_come_back(
        days in -25_567_i32..=84_005,
        number in any::<i64>(),
        thousandths in 1_u32..=999_999_999,
        id in any::<[u8; 16]>(),
        hash in any::<[u8; 32]>(),
    ) {
        comes_back(&Day::from_epoch(days).unwrap());
        comes_back(&Distance::from_millimetres(number));
        comes_back(&Volume::from_picolitres(number));
        comes_back(&Money { minor: number, currency: "EUR".parse().unwrap() });
        comes_back(&Quantity::from_thousandths(thousandths, Measure::Litre).unwrap());
        comes_back(&BookId(id));
        comes_back(&EntryId(id));
        comes_back(&SubjectId(id));
        comes_back(&Hash(hash));
        comes_back(&WriterKey(hash));
    }

    #[test]
    fn any_value_is_written_in_one_form(value in values()) {
        let written = encode(&value);
        let read = decode(&written).unwrap();
        prop_assert_eq!(encode(&read), written);
        prop_assert_eq!(encode(&value), encode(&read));
    }

    #[test]
    fn random_bytes_are_refused_or_stand_in_their_one_form(bytes in prop::collection::vec(any::<u8>(), 0..80)) {
        if let Ok(value) = decode(&bytes) {
            prop_assert_eq!(encode(&value), bytes);
        }
    }

    #[test]
    fn damaged_bytes_are_refused_or_stand_in_their_one_form(
        value in values(),
        at in any::<prop::sample::Index>(),
        to in any::<u8>(),
        cut in any::<bool>(),
    ) {
        let mut bytes = encode(&value);
        let at = at.index(bytes.len());
        bytes[at] = to;
        if cut {
            bytes.truncate(at);
        }
        if let Ok(value) = decode(&bytes) {
            prop_assert_eq!(encode(&value), bytes);
        }
    }
}

/// A sequence of three values (RFC 8742): 1, "a", [2, 3]; bytes by RFC 8949, appendix A.
#[test]
fn a_sequence_is_taken_apart_value_by_value() {
    let mut bytes: &[u8] = &[0x01, 0x61, 0x61, 0x82, 0x02, 0x03];
    let array = Value::Array(vec![Value::from(2), Value::from(3)]);
    for expected in [Value::from(1), Value::from("a"), array] {
        assert_eq!(decode_next(&mut bytes), Ok(expected));
    }
    assert_eq!((bytes.len(), decode_next(&mut bytes)), (0, Err(CborError::Malformed)));
    let mut long_form: &[u8] = &[0x18, 0x01, 0x02];
    assert_eq!(decode_next(&mut long_form), Err(CborError::NotDeterministic));
    let mut cut: &[u8] = &[0x82, 0x02];
    assert_eq!(decode_next(&mut cut), Err(CborError::Malformed));
}
