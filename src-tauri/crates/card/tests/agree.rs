//! This reader and the one in TypeScript on the page take and refuse the very same codes, at the same step: examples of
//! every CBOR form, streams of another compressor, and real cards changed at random by a seed, in their digits, in
//! their bytes, in what was signed and in how it was packed.
//!
//! Both make the same codes by themselves and hold what they say of each against `agree-vector.txt`, which this test
//! writes with `WELLKEPT_WRITE_VECTORS` set. With `WELLKEPT_AGREE_CASES` set to a number, so many are made, and what
//! this reader says of them is written under `target/tmp` for the viewer's test, which heeds the same variable.

#![allow(clippy::unwrap_used)]

mod changed;

use std::path::{Path, PathBuf};

use card::{Claims, CodeError, questions};
use changed::Codes;

/// How many are changed at random in every run.
const CASES: u32 = 20_000;
/// So many are told in one line of the file.
const LINE: usize = 100;

#[test]
fn both_readers_say_the_same_of_every_code() {
    let text = lines(&told(CASES));
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/agree-vector.txt");
    if std::env::var_os("WELLKEPT_WRITE_VECTORS").is_some() {
        std::fs::write(&path, &text).unwrap();
    }
    let there = std::fs::read_to_string(&path).unwrap_or_default();
    let differs = text.lines().zip(there.lines()).position(|(one, other)| one != other);
    assert!(
        there == text,
        "agree-vector.txt is stale from line {differs:?}; run this test with WELLKEPT_WRITE_VECTORS=1, then the viewer's"
    );
}

#[test]
fn the_codes_come_to_every_end() {
    let told = told(CASES);
    for end in ['d', 'v', 'm', 's', 'z', 'c', '+'] {
        let count = told.iter().filter(|one| one.0 == end).count();
        assert!(count >= 20, "{count} codes end with {end}");
    }
}

#[test]
fn as_many_as_are_asked_for() {
    let Some(cases) = std::env::var("WELLKEPT_AGREE_CASES").ok() else { return };
    let path = PathBuf::from(env!("CARGO_TARGET_TMPDIR")).join("agree.txt");
    std::fs::write(path, lines(&told(cases.parse().unwrap()))).unwrap();
}

/// A letter for the step at which each code is refused, or `+` with a hash of what the card says.
fn told(cases: u32) -> Vec<(char, u32)> {
    Codes::load().all(cases).map(|code| end(&code)).collect()
}

fn end(code: &str) -> (char, u32) {
    match card::read(code) {
        Ok(verified) => ('+', hash(&said(&verified.claims))),
        Err(CodeError::NotDigits | CodeError::DigitCount | CodeError::DigitRange) => ('d', 0),
        Err(CodeError::Version(_)) => ('v', 0),
        Err(CodeError::MessageCbor(_) | CodeError::MessageForm) => ('m', 0),
        Err(CodeError::Signature) => ('s', 0),
        Err(CodeError::Stream | CodeError::TooLarge) => ('z', 0),
        Err(CodeError::Claims(_)) => ('c', 0),
        Err(CodeError::Address(_)) => panic!("a reader reads no address"),
    }
}

/// The letters of each line, and one hash over what all cards of the line say.
fn lines(told: &[(char, u32)]) -> String {
    let line = |told: &[(char, u32)]| {
        let letters: String = told.iter().map(|one| one.0).collect();
        let hash = told.iter().fold(0_u32, |sum, one| sum.rotate_left(5) ^ one.1);
        format!("{letters} {hash:08x}\n")
    };
    told.chunks(LINE).map(line).collect()
}

/// Everything that a card says, as one text that both readers write alike.
fn said(claims: &Claims) -> String {
    let some = |text: Option<&str>| text.map_or("-".to_owned(), str::to_owned);
    let day = |day: Option<units::Day>| day.map_or("-".to_owned(), |day| day.epoch().to_string());
    let vehicle = &claims.vehicle;
    let visits = claims.visits.iter().map(|visit| {
        let items: Vec<_> = visit.items.iter().map(changed::named).collect();
        let flags = visit.flags.bits() & 63;
        format!("{} {} {flags} {}", visit.day.epoch(), visit.reading, items.join(","))
    });
    let next = claims.next.iter().map(|due| {
        let reading = due.reading.map_or("-".to_owned(), |reading| reading.to_string());
        format!("{} {} {reading}", changed::named(&due.item), day(due.day))
    });
    let instruments =
        claims.instruments.iter().map(|one| format!("{} {} {}", one.day.epoch(), one.old, one.new));
    let head = claims.head.map(|head| head.to_string());
    let asked = questions(claims, claims.issued);
    let asked: Vec<_> = asked.iter().map(card::Question::key).collect();
    let facts = [
        claims.issued.epoch().to_string(),
        vehicle.name.clone(),
        some(vehicle.vin.as_deref()),
        vehicle.engine.map_or("-".to_owned(), |engine| (engine as u8).to_string()),
        some(vehicle.description.as_deref()),
        day(vehicle.first_use),
        claims.unit.symbol().to_owned(),
        format!("{} {}", claims.latest.day.epoch(), claims.latest.reading),
        claims.left_out.to_string(),
        head.unwrap_or_default(),
        asked.join(","),
    ];
    facts.into_iter().chain(visits).chain(next).chain(instruments).collect::<Vec<_>>().join("\n")
}

/// FNV-1a in 32 bits (from memory); it need only tell two texts apart.
fn hash(text: &str) -> u32 {
    text.bytes().fold(0x811c_9dc5, |hash, byte| (hash ^ u32::from(byte)).wrapping_mul(0x0100_0193))
}
