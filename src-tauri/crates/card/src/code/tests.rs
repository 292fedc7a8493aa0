//! The card code against the published vector, the vectors of the standards, and damage of every kind.

#![allow(clippy::unwrap_used)]

use ed25519_dalek::{Signer, SigningKey};
use serde_json::Value as Json;
use units::cbor::CborError;
use units::{Day, DistanceUnit, WriterKey};

use super::*;

/// Made with general-purpose libraries, not with this crate; its `note` says with which.
fn vector() -> Json {
    serde_json::from_str(include_str!("../../tests/card-code-vector.json")).unwrap()
}

fn text<'a>(vector: &'a Json, field: &str) -> &'a str {
    vector[field].as_str().unwrap()
}

fn hex(text: &str) -> Vec<u8> {
    text.as_bytes()
        .chunks(2)
        .map(|pair| u8::from_str_radix(std::str::from_utf8(pair).unwrap(), 16).unwrap())
        .collect()
}

fn key(secret: &str) -> SigningKey {
    SigningKey::from_bytes(&hex(secret).try_into().unwrap())
}

fn vector_key() -> SigningKey {
    key(text(&vector(), "secret_key"))
}

/// The digits of any packed bytes, signed or not.
fn packed(message: &[u8]) -> String {
    digits::to_digits(&[&[1], message].concat())
}

/// The digits of a card whose signed content is these bytes.
fn sealed(payload: Vec<u8>) -> String {
    Message::seal(payload, &vector_key()).digits()
}

fn sealed_claims(claims: &str) -> String {
    sealed(stream::deflate(&hex(claims)).unwrap())
}

#[test]
fn the_vectors_claims_decode_and_encode_to_the_same_bytes() {
    let bytes = hex(text(&vector(), "claims_cbor"));
    let claims = Claims::from_cbor(&bytes).unwrap();
    assert_eq!(claims.to_cbor(), bytes);
    assert_eq!(claims.unit, DistanceUnit::Kilometre);
    assert_eq!(claims.vehicle.vin.as_deref(), Some("1M8GDM9AXKP042788"));
    assert_eq!(claims.vehicle.engine, Some(Engine::Petrol));
    assert_eq!(claims.visits.len(), 4);
    assert_eq!(claims.left_out, 0);
    assert!(claims.visits.windows(2).all(|pair| pair[0].day <= pair[1].day));
    assert!(claims.visits.iter().any(|visit| visit.items.contains(&Item::Own("tow bar wiring".into()))));
    assert_eq!(claims.next.len(), 2);
    assert_eq!(claims.next[1].day, None);
    assert_eq!(claims.instruments[0].new, 40);
}

#[test]
fn the_vectors_message_verifies_and_holds_its_claims() {
    let vector = vector();
    let verified = read(text(&vector, "digits")).unwrap();
    assert_eq!(verified.claims.to_cbor(), hex(text(&vector, "claims_cbor")));
    assert_eq!(verified.key.to_string(), text(&vector, "public_key"));
    let with_address = format!("https://card.example/#{}", text(&vector, "digits"));
    assert_eq!(read(&with_address).unwrap(), verified);
}

#[test]
fn the_vectors_digits_go_both_ways() {
    let vector = vector();
    let bytes = hex(text(&vector, "packed"));
    assert_eq!(digits::to_digits(&bytes), text(&vector, "digits"));
    assert_eq!(digits::from_digits(text(&vector, "digits")).unwrap(), bytes);
    for (bytes, digits) in vector["tail_cases"].as_object().unwrap() {
        assert_eq!(digits::to_digits(&hex(bytes)), digits.as_str().unwrap());
        assert_eq!(digits::from_digits(digits.as_str().unwrap()).unwrap(), hex(bytes));
    }
}

#[test]
fn sealing_the_vectors_payload_gives_the_vectors_message() {
    let vector = vector();
    let bytes = hex(text(&vector, "message"));
    let units::cbor::CborValue::Tag(18, inner) = units::cbor::decode(&bytes).unwrap() else { panic!() };
    let payload = inner.as_array().unwrap()[2].as_bytes().unwrap().clone();
    let message = Message::seal(payload, &vector_key());
    assert_eq!(message.cose(), bytes);
    assert_eq!(message.packed(), hex(text(&vector, "packed")));
}

#[test]
fn signing_again_gives_the_same_bytes_and_reads_back() {
    let claims = Claims::from_cbor(&hex(text(&vector(), "claims_cbor"))).unwrap();
    let message = sign(&claims, &vector_key()).unwrap();
    assert_eq!(message, sign(&claims, &vector_key()).unwrap());
    let viewer: ViewerAddress = "https://card.example/".parse().unwrap();
    let verified = read(&message.text(&viewer)).unwrap();
    assert_eq!(verified.claims, claims);
    assert_eq!(verified.key, WriterKey(vector_key().verifying_key().to_bytes()));
}

#[test]
fn every_single_digit_change_is_refused() {
    let vector = vector();
    let digits = text(&vector, "digits").as_bytes();
    for at in 0..digits.len() {
        for replacement in (b'0'..=b'9').filter(|digit| *digit != digits[at]) {
            let mut changed = digits.to_vec();
            changed[at] = replacement;
            assert!(read(std::str::from_utf8(&changed).unwrap()).is_err(), "digit {at} as {replacement}");
        }
    }
}

#[test]
fn digits_out_of_form_are_refused() {
    let refused = |digits: &str| read(digits).unwrap_err();
    assert_eq!(refused(""), CodeError::DigitCount);
    assert_eq!(refused("https://card.example/#"), CodeError::DigitCount);
    for count in [1, 2, 4, 6, 7, 9, 11, 12, 14, 16, 18] {
        assert_eq!(refused(&"0".repeat(count)), CodeError::DigitCount, "{count} digits");
    }
    assert_eq!(refused("256"), CodeError::DigitRange);
    assert_eq!(refused("72057594037927936"), CodeError::DigitRange);
    assert_eq!(refused("00 "), CodeError::NotDigits);
    // Digits of another script are no ASCII digits.
    assert_eq!(refused("٠٠١"), CodeError::NotDigits);
    assert_eq!(refused("001#001"), CodeError::MessageCbor(CborError::Malformed));
}

#[test]
fn another_version_is_refused_before_anything_else_is_read() {
    let mut bytes = hex(text(&vector(), "packed"));
    bytes[0] = 2;
    assert_eq!(read(&digits::to_digits(&bytes)), Err(CodeError::Version(2)));
    assert_eq!(read("000"), Err(CodeError::Version(0)));
}

/// RFC 8949, section 4.2.1: other encodings of the same values.
#[test]
fn a_message_in_another_cbor_form_is_refused() {
    let message = text(&vector(), "message").to_owned();
    let refused = |message: String| read(&packed(&hex(&message))).unwrap_err();
    // The tag 18 in two bytes instead of one.
    assert_eq!(
        refused(format!("d812{}", &message[2..])),
        CodeError::MessageCbor(CborError::NotDeterministic)
    );
    // The array with indefinite length.
    assert_eq!(
        refused(format!("d29f{}ff", &message[4..])),
        CodeError::MessageCbor(CborError::NotDeterministic)
    );
    assert_eq!(refused(format!("{message}00")), CodeError::MessageCbor(CborError::Trailing));
    assert_eq!(
        refused(message[..message.len() - 2].to_owned()),
        CodeError::MessageCbor(CborError::Malformed)
    );
    // Without the tag; with another tag; a plain number.
    assert_eq!(refused(message[2..].to_owned()), CodeError::MessageForm);
    assert_eq!(refused(format!("d1{}", &message[2..])), CodeError::MessageForm);
    assert_eq!(refused("00".to_owned()), CodeError::MessageForm);
}

#[test]
fn other_headers_are_refused() {
    let message = text(&vector(), "message").to_owned();
    let refused = |from: &str, to: &str| {
        let changed = message.replacen(from, to, 1);
        assert_ne!(changed, message);
        read(&packed(&hex(&changed))).unwrap_err()
    };
    // The unprotected header {5: h''} instead of {}.
    assert_eq!(refused("1aa058bb", "1aa1054058bb"), CodeError::MessageForm);
    // ES256 instead of EdDSA.
    assert_eq!(refused("a20127", "a20126"), CodeError::MessageForm);
    // The protected header without the algorithm.
    assert_eq!(refused("5826a20127045820", "5824a1045820"), CodeError::MessageForm);
}

#[test]
fn a_signature_of_another_key_is_refused() {
    let vector = vector();
    let other = key("4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb");
    let public = WriterKey(other.verifying_key().to_bytes()).to_string();
    let changed = text(&vector, "message").replace(text(&vector, "public_key"), &public);
    assert_eq!(read(&packed(&hex(&changed))), Err(CodeError::Signature));
}

/// RFC 8032, section 7.1, TEST 1, 2, 3 and SHA(abc).
#[test]
fn ed25519_vectors_sign_and_verify() {
    let sha_abc = "ddaf35a193617abacc417349ae20413112e6fa4e89a97ea20a9eeee64b55d39a\
                   2192992a274fc1a836ba3c23a3feebbd454d4423643ce80e2a9ac94fa54ca49f";
    let vectors = [
        (
            "9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60",
            "",
            "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b",
        ),
        (
            "4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb",
            "72",
            "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00",
        ),
        (
            "c5aa8df43f9f837bedb7442f31dcb7b166d38535076f094b85ce3a2e0b4458f7",
            "af82",
            "6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac18ff9b538d16f290ae67f760984dc6594a7c15e9716ed28dc027beceea1ec40a",
        ),
        (
            "833fe62409237b9d62ec77587520911e9a759cec1d19755b7da901b96dca3d42",
            sha_abc,
            "dc2a4459e7369633a52b1bf277839a00201009a3efbf3ecb69bea2186c26b58909351fc9ac90b3ecfdfbc7c66431e0303dca179c138ac17ad9bef1177331a704",
        ),
    ];
    for (secret, message, signature) in vectors {
        let (key, message, signature) = (key(secret), hex(message), hex(signature));
        assert_eq!(key.sign(&message).to_bytes().to_vec(), signature);
        let public = key.verifying_key().to_bytes();
        message::verify(&public, &message, &signature).unwrap();
        let longer = [message.as_slice(), b"."].concat();
        assert_eq!(message::verify(&public, &longer, &signature), Err(CodeError::Signature));
    }
}

/// RFC 8032, section 5.1.7: S must lie below the group order L = 2^252 + 27742317777372353535851937790883648493.
#[test]
fn a_signature_with_s_past_the_group_order_is_refused() {
    let order = hex("edd3f55c1a631258d69cf7a2def9de1400000000000000000000000000000010");
    let key = vector_key();
    let mut signature = key.sign(b"card").to_bytes();
    let mut carry = 0;
    for (byte, add) in signature[32..].iter_mut().zip(order) {
        let sum = u16::from(*byte) + u16::from(add) + carry;
        *byte = u8::try_from(sum & 0xff).unwrap();
        carry = sum >> 8;
    }
    assert_eq!(
        message::verify(&key.verifying_key().to_bytes(), b"card", &signature),
        Err(CodeError::Signature)
    );
}

/// With the neutral element as key and as R, and S = 0, the equation of RFC 8032 holds for every message.
#[test]
fn a_key_of_small_order_is_refused() {
    let mut neutral = [0; 32];
    neutral[0] = 1;
    let signature = [neutral.as_slice(), &[0; 32]].concat();
    assert_eq!(message::verify(&neutral, b"anything", &signature), Err(CodeError::Signature));
    // The same point with y written as p + 1, which is no canonical encoding.
    let mut unreduced = [0xff; 32];
    (unreduced[0], unreduced[31]) = (0xee, 0x7f);
    assert_eq!(message::verify(&unreduced, b"anything", &signature), Err(CodeError::Signature));
}

/// Streams made with zlib through Python, raw DEFLATE (RFC 1951).
#[test]
fn streams_of_another_compressor_inflate() {
    assert_eq!(stream::inflate(&hex("0300")).unwrap(), b"");
    assert_eq!(stream::inflate(&hex("010000ffff")).unwrap(), b"");
    assert_eq!(stream::inflate(&hex("cb48cdc9c90700")).unwrap(), b"hello");
    assert_eq!(stream::inflate(&hex("4b4ca43d0000")).unwrap(), [b'a'; 100]);
}

#[test]
fn a_stream_is_bounded_and_fills_its_bytes() {
    let zeros = |count| miniz_oxide::deflate::compress_to_vec(&vec![0; count], 9);
    assert_eq!(stream::inflate(&zeros(INFLATED_MAX)).unwrap().len(), INFLATED_MAX);
    assert_eq!(stream::inflate(&zeros(INFLATED_MAX + 1)), Err(CodeError::TooLarge));
    assert_eq!(stream::inflate(&zeros(64 * INFLATED_MAX)), Err(CodeError::TooLarge));
    assert_eq!(stream::inflate(&hex("cb48cdc9c9070000")), Err(CodeError::Stream));
    assert_eq!(stream::inflate(&hex("cb48cdc9c9")), Err(CodeError::Stream));
    assert_eq!(stream::inflate(&[]), Err(CodeError::Stream));
    assert_eq!(read(&sealed(zeros(INFLATED_MAX + 1))), Err(CodeError::TooLarge));
    assert_eq!(read(&sealed(hex("07"))), Err(CodeError::Stream));
}

#[test]
fn claims_beyond_what_a_reader_inflates_are_not_signed() {
    let mut claims = Claims::from_cbor(&hex(text(&vector(), "claims_cbor"))).unwrap();
    claims.vehicle.name = "x".repeat(INFLATED_MAX);
    assert_eq!(sign(&claims, &vector_key()), Err(CodeError::TooLarge));
}

/// The least card: day 1, a car named 'a', reading 0 on day 1, no visits.
const LEAST: &str = "a4010103a1016161058201000680";

#[test]
fn the_least_card_is_read_with_what_is_absent_left_out() {
    let claims = read(&sealed_claims(LEAST)).unwrap().claims;
    assert_eq!(claims.issued, Day::from_epoch(1).unwrap());
    assert_eq!(claims.unit, DistanceUnit::Kilometre);
    assert_eq!((claims.visits.len(), claims.left_out), (0, 0));
    assert_eq!(claims.vehicle, Vehicle { name: "a".into(), ..Vehicle::default() });
}

#[test]
fn unknown_claims_are_ignored() {
    let unknown = LEAST.replacen("a4", "a5", 1) + "1863f5";
    assert_eq!(read(&sealed_claims(&unknown)).unwrap().claims, read(&sealed_claims(LEAST)).unwrap().claims);
}

#[test]
fn claims_that_lack_or_garble_something_are_refused() {
    let refused = |claims: &str| match read(&sealed_claims(claims)) {
        Err(CodeError::Claims(fault)) => fault,
        other => panic!("{claims} gave {other:?}"),
    };
    // Without key 1, 3, 5, 6; with a day before 1970; with a name that is a number.
    assert_eq!(refused("a303a1016161058201000680"), CborError::Missing(1));
    assert_eq!(refused("a30101058201000680"), CborError::Missing(3));
    assert_eq!(refused("a3010103a10161610680"), CborError::Missing(5));
    assert_eq!(refused("a3010103a101616105820100"), CborError::Missing(6));
    assert_eq!(refused(&LEAST.replacen("0101", "0120", 1)), CborError::Wrong(1));
    assert_eq!(refused("a4010103a10101058201000680"), CborError::Wrong(3));
    // A reading of three parts; a visit of two parts; a second visit before the first.
    assert_eq!(refused("a4010103a101616105830100000680"), CborError::Wrong(5));
    assert_eq!(refused(&LEAST.replace("0680", "0681820100")), CborError::Wrong(6));
    assert_eq!(refused(&LEAST.replace("0680", "06828301000083200000")), CborError::Wrong(6));
    // Fewer visits in the book than on the card; keys out of order; bytes after the end.
    assert_eq!(refused("a5010103a1016161058201000681830100000700"), CborError::Wrong(7));
    assert_eq!(refused("a403a10161610101058201000680"), CborError::NotDeterministic);
    assert_eq!(refused(&format!("{LEAST}00")), CborError::Trailing);
    assert_eq!(refused("80"), CborError::Type);
}

#[test]
fn visits_are_written_oldest_first_and_count_from_the_one_before() {
    let mut claims = Claims::from_cbor(&hex(LEAST)).unwrap();
    let visit = |day: i32, reading| Visit {
        day: Day::from_epoch(day).unwrap(),
        reading,
        flags: Flags::BY_OWNER | Flags::RECEIPT,
        items: vec![Item::Catalogue(7), Item::Own("tow bar".into())],
    };
    claims.visits = vec![visit(200, 90), visit(-30, 100), visit(300, 20)];
    claims.left_out = 2;
    let again = Claims::from_cbor(&claims.to_cbor()).unwrap();
    claims.visits.sort_by_key(|visit| visit.day);
    assert_eq!(again, claims);
    assert_eq!(again.visits_in_book(), 5);
}

#[test]
fn flags_are_a_set() {
    let flags = Flags::BY_WORKSHOP.with(Flags::RECEIPT, true).with(Flags::PHOTO, false);
    assert_eq!(flags.bits(), 6);
    assert!(flags.contains(Flags::RECEIPT) && !flags.contains(Flags::RECEIPT | Flags::AMENDED));
    assert_eq!(Flags::from_bits(64).bits(), 64);
}

#[test]
fn a_viewer_address_is_https_without_a_fragment() {
    for right in [
        "https://card.example/",
        "https://card.example",
        "https://a.example:8443/view?x=1",
        "https://[2001:db8::1]/",
    ] {
        assert_eq!(right.parse::<ViewerAddress>().unwrap().as_str(), right);
    }
    let long = format!("https://card.example/{}", "a".repeat(100));
    let wrong = [
        "",
        "https://",
        "http://card.example/",
        "https:///x",
        "https://a.example/#",
        "https://a b.example/",
        "https://me@a.example/",
        "https://ä.example/",
        "javascript:alert(1)",
        "https://?x",
        long.as_str(),
    ];
    for wrong in wrong {
        assert!(matches!(wrong.parse::<ViewerAddress>(), Err(CodeError::Address(_))), "{wrong}");
    }
}

/// SHA-256 of the public key of RFC 8032 TEST 1, worked out with Python's hashlib.
#[test]
fn a_fingerprint_is_the_first_eight_bytes_of_the_keys_hash() {
    let key: WriterKey = text(&vector(), "public_key").parse().unwrap();
    assert_eq!(Fingerprint::from(&key).to_string(), "21fe 31df a154 a261");
}
