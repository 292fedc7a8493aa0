//! What an answer of the car says: lists of codes, values, readiness, freeze frames.

use super::frames::Carrier;
use super::messages::Message;
use super::scan::spelled;
use super::{Code, Note, Origin, Pid, Readiness, Reported, Scan, Status, System, freeze, pid};

/// Adds what an answer says to a scan.
pub(super) fn decode(message: &Message, scan: &mut Scan) {
    let Some((&service, body)) = message.answer.split_first() else { return };
    match service {
        0x41 => current(body, scan),
        0x42 => frozen(body, scan),
        0x44 => scan.note(Note::Cleared),
        0x7F => refused(body, scan),
        _ => match Status::of_service(service.wrapping_sub(0x40)) {
            Some(status) => listed(status, &message.answer, message.carrier, scan),
            None => scan.note(Note::Unread(spelled(&message.answer))),
        },
    }
}

fn refused(body: &[u8], scan: &mut Scan) {
    scan.note(match *body {
        [service, .., reason] => Note::Refused { service, reason },
        _ => Note::CutShort(spelled(body)),
    });
}

/// A list of codes.
///
/// - On CAN a count stands first; on older networks the codes follow at once, three to an answer, and pairs
///   of noughts fill it up.
/// - Where the line does not tell the network, an even number of bytes has no count and an odd number has
///   one.
/// - An even number that would also make sense with a count and filling is read without, and noted.
fn listed(status: Status, answer: &[u8], carrier: Carrier, scan: &mut Scan) {
    let body = answer.get(1..).unwrap_or_default();
    let counted = match carrier {
        Carrier::Can => true,
        Carrier::Older => false,
        Carrier::Unknown => body.len() % 2 == 1,
    };
    if body.is_empty() {
        return scan.note(Note::CutShort(spelled(answer)));
    }
    if !counted {
        note_other_reading(body, carrier, scan);
        return pairs(status, answer, body, scan);
    }
    match fits_count(body) {
        Fit::Exact(codes) => pairs(status, answer, codes, scan),
        Fit::Short(codes) => {
            scan.note(Note::CutShort(spelled(answer)));
            pairs(status, answer, codes, scan);
        }
        Fit::Not => several(status, answer, scan),
    }
}

/// How a list stands to the count before it.
enum Fit<'a> {
    /// As many codes as counted, and nothing but filling behind them.
    Exact(&'a [u8]),
    /// Fewer codes than counted.
    Short(&'a [u8]),
    /// More than counted.
    Not,
}

fn fits_count(body: &[u8]) -> Fit<'_> {
    let Some((&count, codes)) = body.split_first() else { return Fit::Not };
    match codes.split_at_checked(2 * usize::from(count)) {
        None => Fit::Short(codes),
        Some((codes, rest)) if is_filling(rest) => Fit::Exact(codes),
        Some(_) => Fit::Not,
    }
}

/// Whether bytes are those with which control units fill up a frame. Common practice: all 00, 55, AA, CC or
/// FF.
fn is_filling(bytes: &[u8]) -> bool {
    let filling = bytes.first().is_none_or(|first| matches!(first, 0x00 | 0x55 | 0xAA | 0xCC | 0xFF));
    filling && bytes.windows(2).all(|pair| pair[0] == pair[1])
}

/// Several answers of an older network whose lines ran together; anything else is left unread, because a
/// wrong code is worse than none.
fn several(status: Status, answer: &[u8], scan: &mut Scan) {
    let answers = answer.chunks_exact(7);
    if answers.remainder().is_empty() && answers.clone().all(|one| one.first() == answer.first()) {
        answers.for_each(|one| pairs(status, one, &one[1..], scan));
    } else {
        scan.note(Note::Unread(spelled(answer)));
    }
}

fn pairs(status: Status, answer: &[u8], body: &[u8], scan: &mut Scan) {
    scan.answered.insert(status);
    for code in codes(body) {
        scan.report(Reported { code, status, failure_type: None });
    }
    if body.len() % 2 == 1 {
        scan.note(Note::CutShort(spelled(answer)));
    }
}

/// The codes in pairs of bytes; a pair of noughts is none.
fn codes(body: &[u8]) -> impl Iterator<Item = Code> + '_ {
    let (pairs, _) = body.as_chunks::<2>();
    pairs.iter().filter(|&&pair| pair != [0, 0]).map(|&pair| Code::from_bytes(pair))
}

/// Notes the codes that a list would have with a count and filling. Only standard powertrain codes count as
/// sense: any pair of bytes is some code.
fn note_other_reading(body: &[u8], carrier: Carrier, scan: &mut Scan) {
    let Fit::Exact(other) = fits_count(body) else { return };
    let other: Vec<_> = codes(other).collect();
    let likely = |code: &Code| code.system() == System::Powertrain && code.origin() == Origin::Standard;
    if carrier == Carrier::Unknown && !other.is_empty() && other.iter().all(likely) {
        scan.note(Note::MaybeCounted(other));
    }
}

/// Values of the moment: parameter and data, on CAN up to six in one answer.
fn current(body: &[u8], scan: &mut Scan) {
    let mut rest = body;
    while let Some((&number, after)) = rest.split_first() {
        let known = Pid::from_number(number);
        let length = if number == 0x01 { Some(4) } else { known.map(Pid::bytes).or(pid::skipped(number)) };
        let Some((data, after)) = length.and_then(|length| after.split_at_checked(length)) else {
            return left_over(0x41, rest, length, scan, rest.len() < body.len());
        };
        match (data, known) {
            (&[a, b, c, d], None) if number == 0x01 => {
                scan.readiness.push(Readiness::from_bytes([a, b, c, d]));
            }
            (_, Some(pid)) => scan.live.extend(pid.read(data)),
            _ => {}
        }
        rest = after;
    }
}

/// Values of a freeze frame: parameter, number of the frame, and data; parameter 02 is the code that set.
fn frozen(body: &[u8], scan: &mut Scan) {
    let mut rest = body;
    while let Some((&number, after)) = rest.split_first() {
        let known = Pid::from_number(number);
        let length = if number == 0x02 { Some(2) } else { known.map(Pid::bytes).or(pid::skipped(number)) };
        let parts = after.split_first().zip(length);
        let Some((frame, data, after)) = parts.and_then(|((&frame, after), length)| {
            after.split_at_checked(length).map(|(data, after)| (frame, data, after))
        }) else {
            return left_over(0x42, rest, length, scan, rest.len() < body.len());
        };
        match (data, known) {
            // Noughts in place of a code say that nothing was frozen.
            ([0, 0], None) if number == 0x02 => {}
            (&[high, low], None) if number == 0x02 => {
                freeze::put_code(&mut scan.freeze_frames, frame, Code::from_bytes([high, low]));
            }
            (_, Some(pid)) => {
                if let Some(value) = pid.read(data) {
                    freeze::put_value(&mut scan.freeze_frames, frame, value);
                }
            }
            _ => {}
        }
        rest = after;
    }
}

/// What is left of an answer that cannot be read on: filling, when something was read before it, or too few
/// bytes.
fn left_over(service: u8, rest: &[u8], length: Option<usize>, scan: &mut Scan, something_read: bool) {
    if something_read && is_filling(rest) {
        return;
    }
    let text = spelled(&[&[service], rest].concat());
    scan.note(if length.is_some() { Note::CutShort(text) } else { Note::Unread(text) });
}

#[cfg(test)]
#[path = "answer_tests.rs"]
mod tests;
