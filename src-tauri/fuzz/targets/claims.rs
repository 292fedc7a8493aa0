//! Any bytes at all are a card or one sentence: as the text of a square, as a message, as what was signed, or as claims.
#![no_main]

use card::{Claims, CodeError, QUESTIONS_MAX, questions, read};
use ed25519_dalek::{Signer, SigningKey};

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| {
    let Some((kind, rest)) = bytes.split_first() else { return };
    let text = match kind % 4 {
        0 => String::from_utf8_lossy(rest).into_owned(),
        1 => digits(rest),
        2 => digits(&sealed(rest)),
        _ => digits(&sealed(&stored(rest))),
    };
    match read(&text) {
        Ok(verified) => is_sound(&verified.claims),
        Err(refused) => is_one_sentence(&refused),
    }
});

/// What was read is written and read again as itself, and gives cause to ask something, but not much.
fn is_sound(claims: &Claims) {
    assert_eq!(Claims::from_cbor(&claims.to_cbor()).as_ref(), Ok(claims));
    let asked = questions(claims, claims.issued);
    assert!((1..=QUESTIONS_MAX).contains(&asked.len()));
}

fn is_one_sentence(refused: &CodeError) {
    assert!(!refused.to_string().contains('\n'));
}

/// Version byte and signed message around a payload, byte by byte as the card code has them.
fn sealed(payload: &[u8]) -> Vec<u8> {
    let key = SigningKey::from_bytes(&[7; 32]);
    let public = key.verifying_key().to_bytes();
    let header = byte_string(&[&[0xa2, 1, 0x27, 4, 0x58, 0x20], public.as_slice()].concat());
    let payload = byte_string(payload);
    let signed = [b"\x84\x6aSignature1".as_slice(), &header, &[0x40], &payload].concat();
    let signature = byte_string(&key.sign(&signed).to_bytes());
    [[1, 0xd2, 0x84].as_slice(), &header, &[0xa0], &payload, &signature].concat()
}

/// DEFLATE without compression: one stored block (RFC 1951, section 3.2.4).
fn stored(bytes: &[u8]) -> Vec<u8> {
    let bytes = &bytes[..bytes.len().min(usize::from(u16::MAX))];
    let length = u16::try_from(bytes.len()).unwrap_or(u16::MAX);
    [&[1], length.to_le_bytes().as_slice(), &(!length).to_le_bytes(), bytes].concat()
}

fn byte_string(bytes: &[u8]) -> Vec<u8> {
    let length = bytes.len().to_be_bytes();
    let head = match bytes.len() {
        0..24 => vec![0x40 | length[7]],
        24..0x100 => vec![0x58, length[7]],
        0x100..0x1_0000 => vec![0x59, length[6], length[7]],
        _ => [&[0x5a], &length[4..]].concat(),
    };
    [head, bytes.to_vec()].concat()
}

fn digits(bytes: &[u8]) -> String {
    let group = |group: &[u8]| {
        let value = group.iter().fold(0_u64, |value, byte| value << 8 | u64::from(*byte));
        format!("{value:0width$}", width = [0, 3, 5, 8, 10, 13, 15, 17][group.len()])
    };
    bytes.chunks(7).map(group).collect()
}
