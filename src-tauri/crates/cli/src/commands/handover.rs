//! A book goes out, a book comes in, and an old card is held against what is there.

use std::fs::File;
use std::io::IsTerminal;
use std::path::Path;
use std::process::ExitCode;

use door::{
    BookFile, CardVisit, CompareView, DatedReading, DifferenceView, HandoverForm, MomentView, PackedView,
    ReceivedView, Refusal, Request, Response, WriterView,
};

use super::{Outcome, Terminal, print_line, refuse, scan, strange};
use crate::args::HandoverArgs;
use crate::say::{self, harmless};

/// The longest file with a passphrase that is read: far more than the longest passphrase.
const LONGEST_FILE: u64 = 64 * 1024;

impl Terminal<'_> {
    pub(super) fn handover(&mut self, args: &HandoverArgs) -> Result<(), Refusal> {
        let book = self.book()?;
        let Some(out) = args.out.as_deref() else { return self.take_back(book, &args.why) };
        let form = HandoverForm {
            day: args.on.clone(),
            reading: args.reading.clone(),
            words: args.words.clone(),
            without_papers: args.without_papers,
            keep: args.keep,
        };
        let packing = self.door.pack_up(&book, &form)?;
        let passphrase = match &args.passphrase_file {
            Some(file) => passphrase_in(file)?,
            None => self.choose_passphrase()?,
        };
        let packed = self.door.hand_over(packing.save(out, &passphrase)?)?;
        self.answer(&packed, |terminal| terminal.say_packed(&packed));
        Ok(())
    }

    fn say_packed(&self, packed: &PackedView) {
        let args = [
            ("path", (&packed.path).into()),
            ("entries", packed.entries.into()),
            ("papers", packed.papers.into()),
        ];
        self.say("cli-handover-written", &args);
        self.say(if packed.locked { "cli-handover-locked" } else { "cli-handover-open" }, &[]);
        self.say_missing(&packed.missing);
        self.say("cli-handover-read-only", &[]);
    }

    fn say_missing(&self, missing: &[String]) {
        if !missing.is_empty() {
            self.say("cli-papers-missing", &[("count", missing.len().into())]);
        }
        for hash in missing {
            print_line(hash);
        }
    }

    fn take_back(&mut self, book: String, why: &str) -> Result<(), Refusal> {
        let Response::Handover(view) = self.door.ask(Request::Handover { book: book.clone() })? else {
            return Err(strange());
        };
        let handed = view.handed_over.ok_or_else(|| refuse("not-handed-over", &[]))?;
        let request = Request::StrikeOut { book, subject: handed.subject, why: why.to_owned() };
        let written = self.written(request)?;
        self.answer(&written, |terminal| {
            terminal.say("cli-handover-taken-back", &[("day", (&handed.day).into())]);
        });
        Ok(())
    }

    pub(super) fn receive(&mut self, file: &Path, passphrase_file: Option<&Path>) -> Result<(), Refusal> {
        let mut book = self.open_book_file(file, passphrase_file)?;
        self.door.examine(&mut book)?;
        book.keep_papers()?;
        let received = self.door.take_book_in(&book)?;
        self.answer(&received, |terminal| terminal.say_received(&received));
        Ok(())
    }

    /// Opens a file, and asks for its passphrase where it needs one and somebody is there to be asked.
    fn open_book_file(&self, path: &Path, passphrase_file: Option<&Path>) -> Result<BookFile, Refusal> {
        let open =
            || File::open(path).map_err(|error| door::refuse_file(&path.display().to_string(), &error));
        let given = passphrase_file.map(passphrase_in).transpose()?;
        match door::open_book_file(open()?, given.as_deref().unwrap_or_default()) {
            Err(refusal) if refusal.code == "handover-locked" && std::io::stdin().is_terminal() => {
                door::open_book_file(open()?, &ask_for(&self.words.say("cli-passphrase", &[]))?)
            }
            opened => opened,
        }
    }

    fn say_received(&self, received: &ReceivedView) {
        let args = [
            ("name", harmless(&received.vehicle.name).into()),
            ("entries", received.entries.into()),
            ("new", received.new.into()),
            ("papers", received.papers.into()),
        ];
        self.say(if received.known { "cli-received-more" } else { "cli-received" }, &args);
        if received.never_handed_over {
            self.say("cli-never-handed-over", &[]);
        }
        if received.papers_stayed {
            self.say("cli-papers-stayed", &[]);
        } else {
            self.say_missing(&received.missing);
        }
        received.writers.iter().for_each(|writer| self.say_writer(writer));
        if !received.words.is_empty() {
            let words: Vec<_> = received.words.lines().map(harmless).collect();
            self.say("cli-words", &[("words", words.join("\n").into())]);
        }
    }

    fn say_writer(&self, writer: &WriterView) {
        let args = [
            ("key", (&writer.fingerprint).into()),
            ("from", (&writer.from).into()),
            ("to", (&writer.to).into()),
            ("entries", writer.entries.into()),
        ];
        self.say("cli-writer", &args);
    }

    /// Asks twice for a passphrase that locks a file, where somebody is there to be asked; empty for none.
    fn choose_passphrase(&self) -> Result<String, Refusal> {
        if !std::io::stdin().is_terminal() {
            return Ok(String::new());
        }
        let chosen = ask_for(&self.words.say("cli-passphrase-choose", &[]))?;
        if !chosen.is_empty() && ask_for(&self.words.say("cli-passphrase-again", &[]))? != chosen {
            return Err(refuse("passphrases-differ", &[]));
        }
        Ok(chosen)
    }

    /// Holds an old card against a newer one, or against the vehicle's book.
    pub(super) fn compare(&mut self, old: &str, new: Option<&str>) -> Outcome {
        let old = text_of(old)?;
        let request = match new {
            Some(new) => Request::CompareCards { old, new: text_of(new)? },
            None => Request::CompareCard { book: self.book()?, card: old },
        };
        let Response::Compared(compared) = self.door.ask(request)? else { return Err(strange()) };
        self.answer(&compared, |terminal| terminal.say_compared(&compared));
        Ok(if compared.contains { ExitCode::SUCCESS } else { ExitCode::from(1) })
    }

    fn say_compared(&self, compared: &CompareView) {
        let old = &compared.old;
        let signed = [("day", (&old.signed).into()), ("key", (&old.fingerprint).into())];
        self.say("cli-compare-old", &signed);
        let against = &compared.against;
        let state = if compared.contains { "unchanged" } else { "differs" };
        self.say(&format!("cli-compare-{against}-{state}"), &[("same", compared.same.into())]);
        let key = if old.key_known { "known" } else { "unknown" };
        self.say(&format!("cli-compare-{against}-key-{key}"), &[]);
        if let Some(moment) = &compared.moment {
            self.say_moment(moment);
        }
        if !compared.car_known {
            self.say("cli-compare-car-unknown", &[]);
        }
        if compared.left_out > 0 {
            self.say("cli-compare-left-out", &[("count", compared.left_out.into())]);
        }
        compared.differences.iter().for_each(|difference| self.say_difference(difference));
    }

    fn say_moment(&self, moment: &MomentView) {
        let args = [
            ("entries", moment.entries.into()),
            ("newest", (&moment.newest).into()),
            ("since", moment.since.into()),
        ];
        self.say(&format!("cli-moment-{}", moment.state), &args);
        if moment.late > 0 {
            self.say("cli-moment-late", &[("late", moment.late.into())]);
        }
    }

    fn say_difference(&self, difference: &DifferenceView) {
        let (was, is) = (pair(difference, &difference.was), now(difference, &difference.is));
        let visit = |visit: &Option<CardVisit>| {
            visit.as_ref().map(|visit| self.visit_line(visit)).unwrap_or_default()
        };
        let args = [
            ("day", (&difference.day).into()),
            ("was", was.into()),
            ("is", is.into()),
            ("then", visit(&difference.then).into()),
            ("now", visit(&difference.now).into()),
        ];
        self.say(&format!("cli-difference-{}", difference.kind), &args);
    }

    fn visit_line(&self, visit: &CardVisit) -> String {
        let items: Vec<_> = visit.items.iter().map(|item| say::item(self.words, item)).collect();
        harmless(&format!("{}  {}  {}", visit.day, say::reading(visit.reading), items.join(", ")))
    }
}

fn dated(reading: &DatedReading) -> String {
    format!("{} ({})", say::reading(reading.reading), reading.day)
}

fn pair(difference: &DifferenceView, was: &str) -> String {
    difference.reading_then.as_ref().map_or_else(|| was.to_owned(), dated)
}

fn now(difference: &DifferenceView, is: &str) -> String {
    difference.reading_now.as_ref().map_or_else(|| is.to_owned(), dated)
}

/// The text of a card: read off a file, or as it was given.
pub(super) fn text_of(card: &str) -> Result<String, Refusal> {
    let path = Path::new(card);
    // A text of a square is longer than any file name and holds no file.
    if card.len() >= 4_096 || !(path.is_file() || names_file(card)) {
        return Ok(card.to_owned());
    }
    let bytes = door::read_file(path)?;
    // A text file holds the text of the square itself.
    match std::str::from_utf8(&bytes) {
        Ok(text) if !text.starts_with("%PDF-") => Ok(text.to_owned()),
        _ => scan(&bytes),
    }
}

/// Whether this can be nothing but the name of a file, there or not: a code is digits, an address before it ends in
/// `#`, and the plain text of a square has several lines.
fn names_file(card: &str) -> bool {
    let is_code = card.contains('#') || card.starts_with("https:") || card.lines().count() > 1;
    !is_code && card.chars().any(|c| !c.is_ascii_digit() && !c.is_whitespace())
}

fn passphrase_in(file: &Path) -> Result<String, Refusal> {
    let refused = |reason: &dyn std::fmt::Display| door::refuse_file(&file.display().to_string(), reason);
    let mut text = String::new();
    let opened = File::open(file).map_err(|error| refused(&error))?;
    std::io::Read::read_to_string(&mut std::io::Read::take(opened, LONGEST_FILE), &mut text)
        .map_err(|error| refused(&error))?;
    // An editor ends the last line of a file; that is no part of the passphrase.
    let text = text.strip_suffix('\n').unwrap_or(&text);
    let text = text.strip_suffix('\r').unwrap_or(text);
    if text.is_empty() { Err(refuse("passphrase-empty", &[])) } else { Ok(text.to_owned()) }
}

fn ask_for(prompt: &str) -> Result<String, Refusal> {
    rpassword::prompt_password(format!("{prompt} ")).map_err(|error| door::refuse_file("-", &error))
}
