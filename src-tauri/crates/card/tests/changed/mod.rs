//! Real codes and what becomes of them when something is changed at random. The viewer's `test-changed.ts` does the very
//! same, step by step; whoever changes one changes the other.

#![allow(clippy::unwrap_used, missing_docs)]

use std::fmt::Write;

use card::Item;
use ed25519_dalek::{Signer, SigningKey};
use serde_json::Value;

/// The least card with one more claim, which no reader knows; its value follows.
const LEAST: &str = "a5010103a10161610582010006801863";

/// What may stand in a code, and what may not; the last is a digit elsewhere (Arabic-Indic three).
const CHARACTERS: [char; 14] = ['0', '1', '2', '3', '4', '5', '6', '7', '8', '9', 'x', ' ', '-', '\u{663}'];

pub struct Codes {
    key: SigningKey,
    values: Vec<Vec<u8>>,
    streams: Vec<Vec<u8>>,
    claims: Vec<Vec<u8>>,
}

impl Codes {
    /// What stands in the files beside this one.
    pub fn load() -> Codes {
        let vector = parsed(include_str!("../card-code-vector.json"));
        let cases = parsed(include_str!("../agree-cases.json"));
        let histories = parsed(include_str!("../questions-vector.json"));
        let histories = histories.as_array().unwrap().iter().map(|history| &history["claims"]);
        let list = |name: &str| cases[name].as_array().unwrap().iter().map(bytes).collect();
        Codes {
            key: SigningKey::from_bytes(&bytes(&vector["secret_key"]).try_into().unwrap()),
            values: list("values"),
            streams: list("streams"),
            claims: [&vector["claims_cbor"]].into_iter().chain(histories).map(bytes).collect(),
        }
    }

    /// The examples, then so many codes that are changed at random.
    pub fn all(&self, random: u32) -> impl Iterator<Item = String> + '_ {
        let messages = self.values.iter().map(|value| digits(&[&[1], value.as_slice()].concat()));
        let least = from_hex(LEAST);
        let claims = self.values.iter().map(move |value| [least.clone(), value.clone()].concat());
        let claims = claims.map(|claims| digits(&self.sealed(&stored(&claims))));
        let streams = self.streams.iter().map(|stream| digits(&self.sealed(stream)));
        messages.chain(claims).chain(streams).chain((0..random).map(|at| self.changed(at)))
    }

    /// A code changed in one of four places.
    fn changed(&self, at: u32) -> String {
        let mut dice = Dice(at.wrapping_mul(2_654_435_761).wrapping_add(1));
        let kind = dice.below(4);
        let mut claims = self.claims[dice.below(self.claims.len())].clone();
        let mut stream = self.streams[dice.below(self.streams.len())].clone();
        match kind {
            0 => dice.change_text(&digits(&self.sealed(&stored(&claims)))),
            1 => {
                let mut packed = self.sealed(&stored(&claims));
                dice.change(&mut packed);
                digits(&packed)
            }
            2 => {
                dice.change(&mut stream);
                digits(&self.sealed(&stream))
            }
            _ => {
                dice.change(&mut claims);
                digits(&self.sealed(&stored(&claims)))
            }
        }
    }

    /// Version byte and signed message around a payload, byte by byte as the card code has them.
    fn sealed(&self, payload: &[u8]) -> Vec<u8> {
        let key = self.key.verifying_key().to_bytes();
        let header = [&from_hex("a20127045820"), key.as_slice()].concat();
        let (header, payload) = (byte_string(&header), byte_string(payload));
        let signed = [b"\x84\x6aSignature1".as_slice(), &header, &[0x40], &payload].concat();
        let signature = byte_string(&self.key.sign(&signed).to_bytes());
        [[1, 0xd2, 0x84].as_slice(), &header, &[0xa0], &payload, &signature].concat()
    }
}

/// A linear congruential generator (Numerical Recipes' constants, from memory).
struct Dice(u32);

impl Dice {
    fn below(&mut self, bound: usize) -> usize {
        self.0 = self.0.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
        usize::try_from(self.0 >> 8).unwrap() % bound
    }

    /// One to three changes: a bit turned, a byte put in place of another, one put in, one taken out.
    fn change(&mut self, bytes: &mut Vec<u8>) {
        for _ in 0..=self.below(3) {
            let (how, at) = (self.below(4), self.below(bytes.len().max(1)));
            let byte = u8::try_from(self.below(256)).unwrap();
            match how {
                _ if bytes.is_empty() => bytes.push(byte),
                0 => bytes[at] ^= 1 << (byte & 7),
                1 => bytes[at] = byte,
                2 => bytes.insert(at, byte),
                _ => drop(bytes.remove(at)),
            }
        }
    }

    /// The same in characters, and the end cut off in place of one taken out.
    fn change_text(&mut self, code: &str) -> String {
        let mut text: Vec<char> = code.chars().collect();
        for _ in 0..=self.below(3) {
            let (how, at) = (self.below(4), self.below(text.len().max(1)));
            let character = CHARACTERS[self.below(CHARACTERS.len())];
            match how {
                0 | 1 if at < text.len() => text[at] = character,
                2 => text.insert(at, character),
                _ => text.truncate(text.len().saturating_sub(1 + at % 20)),
            }
        }
        text.into_iter().collect()
    }
}

/// DEFLATE without compression: one stored block (RFC 1951, section 3.2.4).
fn stored(bytes: &[u8]) -> Vec<u8> {
    let length = u16::try_from(bytes.len()).unwrap();
    [&[1], length.to_le_bytes().as_slice(), &(!length).to_le_bytes(), bytes].concat()
}

fn byte_string(bytes: &[u8]) -> Vec<u8> {
    let length = bytes.len();
    let head = match length {
        0..24 => vec![0x40 + u8::try_from(length).unwrap()],
        24..256 => vec![0x58, u8::try_from(length).unwrap()],
        256..65_536 => [&[0x59], u16::try_from(length).unwrap().to_be_bytes().as_slice()].concat(),
        _ => [&[0x5a], u32::try_from(length).unwrap().to_be_bytes().as_slice()].concat(),
    };
    [head, bytes.to_vec()].concat()
}

fn digits(bytes: &[u8]) -> String {
    bytes.chunks(7).fold(String::new(), |mut digits, group| {
        let value = group.iter().fold(0_u64, |value, byte| value << 8 | u64::from(*byte));
        write!(digits, "{value:0width$}", width = [0, 3, 5, 8, 10, 13, 15, 17][group.len()]).unwrap();
        digits
    })
}

/// An item as both readers name it.
pub fn named(item: &Item) -> String {
    match item {
        Item::Catalogue(number) => number.to_string(),
        Item::Own(name) => format!("'{name}"),
    }
}

fn parsed(text: &str) -> Value {
    serde_json::from_str(text).unwrap()
}

/// Hexadecimal, where `N*XX` stands for XX as many times and blanks for nothing.
fn bytes(value: &Value) -> Vec<u8> {
    let parts = value.as_str().unwrap().split(' ').map(|part| match part.split_once('*') {
        Some((times, part)) => part.repeat(times.parse().unwrap()),
        None => part.to_owned(),
    });
    from_hex(&parts.collect::<String>())
}

fn from_hex(text: &str) -> Vec<u8> {
    let pair = |at: usize| u8::from_str_radix(&text[at..at + 2], 16).unwrap();
    (0..text.len() / 2).map(|at| pair(2 * at)).collect()
}
