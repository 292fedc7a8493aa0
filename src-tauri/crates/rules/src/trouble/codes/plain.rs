//! Codes in plain text, and what the words around them say of their status.

use super::lex::{self, Run};
use super::scan::short;
use super::{Code, Note, Reported, Scan, Status};

/// Reads plain lines one after the other, and remembers the heading under which they stand.
#[derive(Debug, Default)]
pub(super) struct Plain {
    heading: Option<Status>,
}

/// What a run of a plain line means.
enum Mark {
    Code(Code, Option<u8>),
    Status(Status),
    /// 'both', 'all': the status is meant for every code of the line.
    All,
    /// 'no', 'none'.
    No,
}

/// A code of a line, with its status as far as it is known.
struct Stated {
    code: Code,
    failure_type: Option<u8>,
    status: Option<Status>,
}

impl Plain {
    /// Reads one line.
    ///
    /// - A word such as 'pending' before codes is meant for all of them up to the next such word: 'Pending:
    ///   P0300 P0171'. On a line of its own it is the heading of the lines below.
    /// - Behind a code it is meant for that code: 'P0300 stored, P0171 pending'. For the codes before, which
    ///   have no such word, that is noted as unclear, unless the line says 'both' or 'all'.
    /// - 'No pending codes' is an empty list, and no heading.
    pub fn line(&mut self, line: &str, scan: &mut Scan) {
        let marks = marks(&without_gapped(&lex::runs(line), scan), scan);
        if marks.iter().any(|mark| matches!(mark, Mark::Code(..))) {
            self.codes(&marks, scan);
        } else {
            self.head(&marks, scan);
        }
    }

    /// A line without codes: a heading, or the word that a list is empty.
    fn head(&mut self, marks: &[Mark], scan: &mut Scan) {
        let mut statuses = marks.iter().filter_map(|mark| match mark {
            Mark::Status(status) => Some(*status),
            _ => None,
        });
        let is_empty = marks.iter().any(|mark| matches!(mark, Mark::No));
        if is_empty {
            scan.answered.extend(statuses.clone());
        }
        if let Some(status) = statuses.next_back() {
            self.heading = (!is_empty).then_some(status);
        }
    }

    fn codes(&self, marks: &[Mark], scan: &mut Scan) {
        let (stated, has_status) = stated(marks, scan);
        for Stated { code, failure_type, status } in stated {
            if status.is_none() && has_status {
                scan.note(Note::StatusUnclear(code));
            }
            let status = status.or(self.heading).unwrap_or(Status::Unstated);
            if status != Status::Unstated {
                scan.answered.insert(status);
            }
            scan.report(Reported { code, status, failure_type });
        }
    }
}

/// The codes of a line with what its words say of them, and whether they say anything.
fn stated(marks: &[Mark], scan: &mut Scan) -> (Vec<Stated>, bool) {
    let mut stated: Vec<Stated> = Vec::new();
    let (mut before, mut last, mut no, mut all) = (None, None, false, false);
    for mark in marks {
        match mark {
            Mark::Code(code, failure_type) => {
                no = false;
                stated.push(Stated { code: *code, failure_type: *failure_type, status: before });
            }
            Mark::Status(status) if no => {
                no = false;
                scan.answered.insert(*status);
            }
            Mark::Status(status) => {
                last = Some(*status);
                match stated.last_mut().filter(|code| code.status.is_none()) {
                    Some(code) => code.status = last,
                    None => before = last,
                }
            }
            Mark::All => all = true,
            Mark::No => no = true,
        }
    }
    if all {
        for code in &mut stated {
            code.status = code.status.or(last);
        }
    }
    (stated, last.is_some())
}

fn marks(runs: &[Run<'_>], scan: &mut Scan) -> Vec<Mark> {
    let bare = runs.iter().enumerate().all(|(at, run)| stands_beside_bare_pairs(at, run.text));
    let mut marks = Vec::new();
    for (at, run) in runs.iter().enumerate() {
        let next = runs.get(at + 1);
        let found = codes(run, next);
        if !found.is_empty() {
            marks.extend(found.into_iter().map(|(code, failure_type)| Mark::Code(code, failure_type)));
        } else if let Some(mark) = word(run.text, next) {
            marks.push(mark);
        } else if let Some(code) = bare_pair(run.text).filter(|_| bare) {
            marks.push(Mark::Code(code, None));
        } else if let Some(meant) = misread(run.text) {
            scan.note(Note::Misread { text: short(run.text), meant });
        } else if looks_like_code(run.text) {
            scan.note(Note::NotACode(short(run.text)));
        }
    }
    marks
}

/// The codes of one run, with the failure type that some tools print behind one: 'P0171', 'P0300P0301',
/// 'P017185', 'P0171-85', and 'P 0171' with what follows.
fn codes(run: &Run<'_>, next: Option<&Run<'_>>) -> Vec<(Code, Option<u8>)> {
    let text = run.text;
    let suffix = next.filter(|next| matches!(next.gap, "-" | ":")).and_then(|next| one_byte(next.text));
    if let Some(code) = Code::parse(text) {
        return vec![(code, suffix)];
    }
    if let [letter @ (b'P' | b'B' | b'C' | b'U')] = text.as_bytes() {
        let digits = next.filter(|next| matches!(next.gap, " " | "-")).map(|next| next.text);
        let code = digits.and_then(|digits| Code::parse(&format!("{}{digits}", char::from(*letter))));
        return code.map(|code| (code, None)).into_iter().collect();
    }
    let front = text.split_at_checked(5).filter(|_| text.len() == 7);
    if let Some((code, byte)) = front.and_then(|(code, byte)| Code::parse(code).zip(one_byte(byte))) {
        return vec![(code, Some(byte))];
    }
    let glued = text.as_bytes().chunks(5).map(|chunk| Code::parse(std::str::from_utf8(chunk).ok()?));
    glued.map(|code| code.map(|code| (code, None))).collect::<Option<_>>().unwrap_or_default()
}

fn one_byte(text: &str) -> Option<u8> {
    u8::from_str_radix(text, 16).ok().filter(|_| text.len() == 2)
}

/// Four hexadecimal digits as the two bytes of a code: 0420 is P0420, C158 is U0158.
fn bare_pair(text: &str) -> Option<Code> {
    let is_pair = text.len() == 4 && text.bytes().any(|byte| byte.is_ascii_digit());
    let bytes = lex::bytes(text).filter(|_| is_pair)?;
    let [high, low] = *bytes.as_slice() else { return None };
    (bytes != [0, 0]).then(|| Code::from_bytes([high, low]))
}

/// Whether four digits are a code although this run stands on their line. Years, distances and engine speeds
/// have four digits too, so that nothing but codes, words for their status and the number of the line may be
/// there.
fn stands_beside_bare_pairs(at: usize, text: &str) -> bool {
    let number = at == 0 && text.len() <= 2 && text.bytes().all(|byte| byte.is_ascii_digit());
    let known = |text: &str| Code::parse(text).is_some() || bare_pair(text).is_some();
    let word_beside = matches!(text.to_ascii_lowercase().as_str(), "and" | "code" | "codes" | "dtc" | "dtcs");
    number || known(text) || word_beside || word(text, None).is_some()
}

fn word(text: &str, next: Option<&Run<'_>>) -> Option<Mark> {
    match text.to_ascii_lowercase().as_str() {
        "stored" | "confirmed" | "saved" | "history" | "historic" => Some(Mark::Status(Status::Confirmed)),
        "pending" => Some(Mark::Status(Status::Pending)),
        "permanent" => Some(Mark::Status(Status::Permanent)),
        "mode" | "service" => {
            let service = next.and_then(|next| u8::from_str_radix(next.text, 16).ok());
            service.and_then(Status::of_service).map(Mark::Status)
        }
        "both" | "all" => Some(Mark::All),
        "no" | "none" | "0" => Some(Mark::No),
        _ => None,
    }
}

/// Whether a run was probably meant for a code: its letter, a digit and more of them, but too many, too few
/// or others than there are.
fn looks_like_code(text: &str) -> bool {
    let digits = text.get(1..).unwrap_or_default();
    let hex = digits.bytes().all(|byte| byte.is_ascii_hexdigit());
    begins_a_code(text)
        && hex
        && digits.starts_with(|c: char| c.is_ascii_digit())
        && (3..=6).contains(&digits.len())
}

fn begins_a_code(text: &str) -> bool {
    text.starts_with(['P', 'p', 'B', 'C', 'U'])
}

/// The code that is meant where a letter looks like the digit one: 'P0l71', 'PO17I'.
fn misread(text: &str) -> Option<Code> {
    let has_digit = text.bytes().any(|byte| byte.is_ascii_digit());
    let meant = Code::parse(&text.replace(['l', 'I'], "1"));
    meant.filter(|_| begins_a_code(text) && has_digit)
}

/// The runs of a line but for codes of which every sign stands by itself, as in 'P 0 1 7 1'; those are noted. Two things
/// that stand side by side could look the same, so that they are not read.
fn without_gapped<'a>(runs: &[Run<'a>], scan: &mut Scan) -> Vec<Run<'a>> {
    let (mut kept, mut rest) = (Vec::new(), runs);
    while let Some((first, others)) = rest.split_first() {
        if let Some((text, meant)) = gapped(rest) {
            scan.note(Note::Misread { text, meant });
            rest = &rest[SIGNS..];
        } else {
            kept.push(*first);
            rest = others;
        }
    }
    kept
}

/// How many signs a code has.
const SIGNS: usize = 5;

fn gapped(runs: &[Run<'_>]) -> Option<(String, Code)> {
    let signs: Vec<_> = runs.get(..SIGNS)?.iter().map(|run| run.text).collect();
    let single = signs.iter().all(|sign| sign.len() == 1) && begins_a_code(signs[0]);
    let meant = Code::parse(&signs.concat()).filter(|_| single)?;
    Some((signs.join(" "), meant))
}

#[cfg(test)]
#[path = "plain_tests.rs"]
mod tests;
