//! Taking off what a vehicle network puts around an answer: identifiers, lengths and checksums.

use super::lex;

/// By which network an answer came, as far as its line tells.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Carrier {
    /// CAN, where a count stands before a list of codes.
    Can,
    /// An older network, where none does, and three codes fill an answer.
    Older,
    /// The line does not tell.
    Unknown,
}

/// Which control unit a part of an answer is from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Sender {
    /// The one with this identifier.
    Unit(u32),
    /// The lines are numbered and name none.
    Numbered,
}

/// An answer, or a part of one.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) enum Frame {
    /// A whole answer.
    Whole { carrier: Carrier, answer: Vec<u8> },
    /// The first part of one of this many bytes, where the length is known.
    First { sender: Sender, length: Option<usize>, part: Vec<u8> },
    /// A further part, numbered 0 to 15 and round again.
    Next { sender: Sender, index: u8, part: Vec<u8> },
}

/// The first byte of the answers that are read here: services 01 to 04, 07 and 0A, and a refusal (SAE J1979).
pub(super) fn is_answer(byte: u8) -> bool {
    matches!(byte, 0x41..=0x44 | 0x47 | 0x4A | 0x7F)
}

/// The answer in hexadecimal digits, whose first three are an identifier when their number is odd; `None`
/// when there is none.
pub(super) fn frame(digits: &str) -> Option<Frame> {
    let identifier_length = if digits.len() % 2 == 1 { 3 } else { 0 };
    let (identifier, rest) = digits.split_at_checked(identifier_length)?;
    let bytes = lex::bytes(rest)?;
    if !identifier.is_empty() {
        // Control units that answer for emissions have identifiers from 7E8 to 7EF (ISO 15765-4); others
        // begin with 7 too.
        let identifier =
            u32::from_str_radix(identifier, 16).ok().filter(|identifier| identifier >> 8 == 7)?;
        return can(Sender::Unit(identifier), &bytes);
    }
    match *bytes.as_slice() {
        [0x18, 0xDA, 0xF1, unit, ..] => can(Sender::Unit(unit.into()), &bytes[4..]),
        // Three bytes of heading and a checksum, on SAE J1850 and ISO 9141-2.
        [0x48, 0x6B, _, first, .., _] if is_answer(first) => Some(older(&bytes[3..bytes.len() - 1])),
        // The same on ISO 14230, where the first byte also holds the length.
        [format @ 0x80..=0xBF, 0xF1, _, first, ..] if is_answer(first) => {
            bytes.get(3..3 + usize::from(format & 0x3F)).map(older)
        }
        [first, ..] if is_answer(first) => Some(Frame::Whole { carrier: Carrier::Unknown, answer: bytes }),
        // A frame of CAN whose identifier was left off always has eight bytes; else its length would be a
        // guess.
        [1..=7, first, ..] if is_answer(first) && bytes.len() == 8 => can(Sender::Numbered, &bytes),
        [0x10..=0x1F, _, first, ..] if is_answer(first) && bytes.len() == 8 => can(Sender::Numbered, &bytes),
        _ => None,
    }
}

/// A frame of CAN: its first byte or two say what it is and how long (ISO 15765-2).
fn can(sender: Sender, bytes: &[u8]) -> Option<Frame> {
    let (&control, rest) = bytes.split_first()?;
    let low = control & 0x0F;
    match control >> 4 {
        0 => {
            let answer = rest.get(..rest.len().min(low.into()))?;
            let first = answer.first().copied().filter(|&first| is_answer(first));
            first.map(|_| Frame::Whole { carrier: Carrier::Can, answer: answer.to_vec() })
        }
        1 => {
            let (&length, part) = rest.split_first()?;
            let length = usize::from(low) << 8 | usize::from(length);
            Some(Frame::First { sender, length: Some(length), part: part.to_vec() })
        }
        2 => Some(Frame::Next { sender, index: low, part: rest.to_vec() }),
        _ => None,
    }
}

fn older(answer: &[u8]) -> Frame {
    Frame::Whole { carrier: Carrier::Older, answer: answer.to_vec() }
}

/// A numbered line as tools print the parts of a long answer: `0: 43 04 01 02 01 13`. `length` is what a line
/// before it said; the first part must begin an answer, so that a numbered list of something else is not
/// taken for one.
pub(super) fn numbered(line: &str, length: Option<usize>) -> Option<Frame> {
    let (index, rest) = line.split_once(':')?;
    let index = u8::from_str_radix(index, 16)
        .ok()
        .filter(|&index| index < 16 && line.as_bytes().get(1) == Some(&b':'))?;
    let digits: String = rest.split_whitespace().collect();
    let part = lex::bytes(&digits).filter(|part| !part.is_empty())?;
    if index == 0 && part.first().is_some_and(|&first| is_answer(first)) {
        return Some(Frame::First { sender: Sender::Numbered, length, part });
    }
    Some(Frame::Next { sender: Sender::Numbered, index, part })
}

/// The length that stands alone on a line before numbered ones: three hexadecimal digits.
pub(super) fn length(line: &str) -> Option<usize> {
    let digits = line.len() == 3 && line.bytes().all(|byte| byte.is_ascii_hexdigit());
    usize::from_str_radix(line, 16).ok().filter(|_| digits)
}
