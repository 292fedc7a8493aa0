//! Reading whatever a scan tool shows: plain text, the bytes of answers, or a mixture of both.

use super::frames::{self, Frame};
use super::lex::{self, Run};
use super::messages::Messages;
use super::plain::Plain;
use super::scan::short;
use super::{Note, Scan, answer};

/// The longest text that is read, in bytes; what stands behind it is left out, and that is noted.
pub const LONGEST: usize = 64 * 1024;

/// Where in a row of bytes an answer may begin, counted in runs: behind a time, a number or an echo.
const STARTS: usize = 16;

/// Reads the text of a scan tool. Nothing in it is an error: what cannot be read stands in the notes.
///
/// Line by line, and in this order:
///
/// - What the tool says of its connection ('NO DATA', 'CAN ERROR') is noted, its prompts and what it was
///   asked are left out.
/// - A line with a row of bytes that begins an answer is one: `43 01 35`, `430135`, with an identifier, a
///   length or the heading of an older network in front, or one part of several. Such an answer tells its
///   status: 43 confirmed, 47 pending, 4A permanent; 41 01 is readiness and 42 a freeze frame.
/// - Four hexadecimal digits are the two bytes of one code where nothing but codes stands beside them, unless
///   they are 4300, 4700 or 4A00, which are empty lists.
/// - Everything else is plain text, in which codes are found by their letter and the status by its word.
///
/// Codes of plain text come before those of answers.
pub fn read(text: &str) -> Scan {
    let mut reader = Reader::default();
    let lines: Vec<_> = reader.cut(text).split(['\n', '\r', '>']).map(str::trim).collect();
    let lines: Vec<_> = lines.into_iter().filter(|line| !line.is_empty()).collect();
    for (at, line) in lines.iter().enumerate() {
        reader.line(line, lines.get(at + 1).copied().unwrap_or_default());
    }
    reader.finish()
}

#[derive(Debug, Default)]
struct Reader {
    scan: Scan,
    messages: Messages,
    plain: Plain,
    /// The length of the numbered answer that comes next.
    length: Option<usize>,
}

impl Reader {
    fn cut<'a>(&mut self, text: &'a str) -> &'a str {
        if text.len() <= LONGEST {
            return text;
        }
        self.scan.note(Note::TooLong);
        let read = &text[..text.floor_char_boundary(LONGEST)];
        // A word that was cut through could look like another code.
        read.rfind(|c: char| !c.is_alphanumeric()).map_or("", |end| &read[..end])
    }

    fn line(&mut self, line: &str, next: &str) {
        let numbered = frames::numbered(line, self.length.take());
        if let Some(note) = link(line) {
            self.scan.note(note);
        } else if let Some(length) = frames::length(line).filter(|_| next.starts_with("0:")) {
            self.length = Some(length);
        } else if !numbered.is_some_and(|part| self.messages.take(part)) && !is_request(line, next) {
            self.bytes_or_text(line);
        }
    }

    fn bytes_or_text(&mut self, line: &str) {
        if let Some(empty) = empty_lists(line) {
            return empty.into_iter().for_each(|frame| {
                self.messages.take(frame);
            });
        }
        let Some((before, frame, after)) = bytes_in(line) else {
            return self.text(line);
        };
        self.text(before);
        if !self.messages.take(frame) {
            self.scan.note(Note::PartMissing);
        }
        self.text(after);
    }

    /// A row of three bytes or more that is no answer is no plain text either.
    fn text(&mut self, line: &str) {
        let runs = lex::runs(line);
        let is_byte = |run: &Run<'_>| run.text.len() == 2 && lex::hex_digits(run.text).is_some();
        if runs.len() >= 3 && runs.iter().all(is_byte) {
            self.scan.note(Note::Unread(short(line)));
        } else {
            self.plain.line(line, &mut self.scan);
        }
    }

    fn finish(mut self) -> Scan {
        let (messages, notes) = self.messages.finish();
        for message in &messages {
            answer::decode(message, &mut self.scan);
        }
        for note in notes {
            self.scan.note(note);
        }
        self.scan.settle();
        self.scan
    }
}

/// The answers in a line of empty lists alone: `4300 4700`. Read as one answer they would be bytes that mean nothing.
fn empty_lists(line: &str) -> Option<Vec<Frame>> {
    let runs = lex::runs(line);
    let digits: Vec<_> = runs.iter().map(|run| lex::hex_digits(run.text)).collect::<Option<_>>()?;
    let joined = digits.concat();
    let answers = joined.as_bytes().chunks(4).map(|answer| std::str::from_utf8(answer).unwrap_or_default());
    answers.map(|answer| frames::frame(answer).filter(|_| is_empty_list(answer))).collect()
}

/// Whether these digits are the answer of an older car that has no code to tell.
fn is_empty_list(digits: &str) -> bool {
    matches!(digits, "4300" | "4700" | "4A00" | "4a00")
}

/// The answer in a line, with the text before and behind it.
fn bytes_in(line: &str) -> Option<(&str, Frame, &str)> {
    let runs = lex::runs(line);
    let mut from = 0;
    while from < runs.len() {
        let to = end_of_bytes(&runs, from);
        let row = &runs[from..to];
        if let Some((start, frame)) = answer_in(row, row.len() == runs.len()) {
            return Some((&line[..row[start].at], frame, &line[row[row.len() - 1].end()..]));
        }
        from = to.max(from + 1);
    }
    None
}

/// Where the row of bytes ends that begins at `from`.
fn end_of_bytes(runs: &[Run<'_>], from: usize) -> usize {
    let is_byte = |run: &Run<'_>| lex::hex_digits(run.text).is_some();
    let mut to = from;
    while runs.get(to).is_some_and(|run| is_byte(run) && (to == from || lex::joins_bytes(run.gap))) {
        to += 1;
    }
    to
}

/// The answer in a row of bytes, with the run at which it begins. Two bytes are one only when they are the
/// whole line and stand apart: '4301' is a code, '43 km' a distance.
fn answer_in(row: &[Run<'_>], is_whole_line: bool) -> Option<(usize, Frame)> {
    let digits: Vec<_> = row.iter().filter_map(|run| lex::hex_digits(run.text)).collect();
    (0..row.len().min(STARTS)).find_map(|start| {
        let joined = digits.get(start..)?.concat().to_ascii_uppercase();
        let whole = is_whole_line && start == 0;
        let is_code = row.len() == 1 && joined.len() == 4;
        let long_enough = joined.len() >= 6 || whole && !is_code;
        frames::frame(&joined).filter(|_| long_enough).map(|frame| (start, frame))
    })
}

/// Whether a line is what the tool was asked, and not an answer: `03`, and `0101` before `41 01 ...`.
fn is_request(line: &str, next: &str) -> bool {
    let digits = |line: &str| -> String {
        lex::runs(line)
            .iter()
            .filter_map(|run| lex::hex_digits(run.text))
            .collect::<String>()
            .to_ascii_uppercase()
    };
    let asked = lex::bytes(&line.split_whitespace().collect::<String>()).unwrap_or_default();
    match *asked.as_slice() {
        [service] => service <= 0x0A,
        [service @ 0x01..=0x02, pid] | [service @ 0x02, pid, _] => {
            let answer = format!("{:02X}{pid:02X}", service | 0x40);
            digits(next).contains(&answer) || link(next).is_some() || next.starts_with("SEARCHING")
        }
        _ => false,
    }
}

/// What the tool says of its connection.
fn link(line: &str) -> Option<Note> {
    const FAILED: [&str; 8] = [
        "UNABLE TO CONNECT",
        "CAN ERROR",
        "BUS ERROR",
        "BUS BUSY",
        "DATA ERROR",
        "RX ERROR",
        "BUFFER FULL",
        "STOPPED",
    ];
    let line = line.to_ascii_uppercase();
    if line.contains("NO DATA") || line == "NODATA" {
        return Some(Note::NoData);
    }
    FAILED.iter().any(|failed| line.contains(failed)).then(|| Note::LinkFailed(short(&line)))
}

#[cfg(test)]
#[path = "paste_tests.rs"]
mod tests;
