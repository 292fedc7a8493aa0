//! Codes, troubles and guides at the terminal.

use std::process::ExitCode;

use door::{
    AnswerForm, AnswerKey, CodesView, HereForm, Refusal, Request, Response, ScanForm, TroubleForm,
    TroubleView,
};
use words::Words;

use super::{Outcome, Terminal, print_json, print_line, refuse, strange};
use crate::args::TroubleArgs;
use crate::say;

impl Terminal<'_> {
    pub(super) fn trouble(&mut self, args: &TroubleArgs) -> Result<(), Refusal> {
        refuse_nothing_told(args)?;
        let book = self.book()?;
        let here =
            HereForm { at_night: args.at_night, owned: args.owned.clone(), lacking: args.lacking.clone() };
        let view = self.trouble_view(book, form(args)?, here)?;
        if let Some(refusal) = door::refuse_elsewhere(&view) {
            return Err(refusal);
        }
        self.answer(&view, |terminal| {
            print_lines(&say::trouble::trouble(terminal.words, &view));
        });
        Ok(())
    }

    /// Lists the symptoms that the car can show, by their keys.
    pub(super) fn symptoms(&mut self) -> Result<(), Refusal> {
        let book = self.book()?;
        let view = self.trouble_view(book, TroubleForm::default(), HereForm::default())?;
        self.answer(&view.symptoms, |terminal| {
            print_lines(&say::trouble::symptoms(terminal.words, &view));
        });
        Ok(())
    }

    fn trouble_view(
        &mut self,
        book: String,
        trouble: TroubleForm,
        here: HereForm,
    ) -> Result<Box<TroubleView>, Refusal> {
        match self.door.ask(Request::Trouble { book, trouble, subject: None, here })? {
            Response::Trouble(view) => Ok(view),
            _ => Err(strange()),
        }
    }

    /// Explains codes, with the life that they have in the book of the vehicle that was named, or of the only one.
    pub(super) fn code(&mut self, texts: &[String]) -> Result<(), Refusal> {
        let view = self.codes_view(pasted(texts))?;
        self.answer(&view, |terminal| print_lines(&say::codes::codes(terminal.words, &view)));
        Ok(())
    }

    fn codes_view(&mut self, text: String) -> Result<CodesView, Refusal> {
        let apart = door::read_codes(&text)?;
        if self.args.vehicle.is_none() && self.shelf()?.vehicles.len() != 1 {
            return Ok(apart);
        }
        let book = Some(self.book()?);
        match self.door.ask(Request::Codes { text, book })? {
            Response::Codes(view) => Ok(view),
            _ => Err(strange()),
        }
    }

    pub(super) fn guide(&mut self, key: Option<&str>) -> Result<(), Refusal> {
        let book = self.book()?;
        match key {
            Some(key) => self.one_guide(book, key.to_owned()),
            None => self.all_guides(book),
        }
    }

    fn one_guide(&mut self, book: String, key: String) -> Result<(), Refusal> {
        let Response::Guide(view) = self.door.ask(Request::Guide { book, key })? else {
            return Err(strange());
        };
        self.answer(&view, |terminal| {
            print_lines(&say::guide::guide(terminal.words, &view));
        });
        Ok(())
    }

    fn all_guides(&mut self, book: String) -> Result<(), Refusal> {
        let Response::Guides(view) = self.door.ask(Request::Guides { book })? else {
            return Err(strange());
        };
        self.answer(&view.guides, |terminal| {
            for guide in &view.guides {
                print_line(&say::guide::guide_line(terminal.words, guide));
            }
        });
        Ok(())
    }
}

/// Explains codes apart from any car; it needs no shelf.
pub fn code(words: &Words, json: bool, texts: &[String]) -> Outcome {
    let view = door::read_codes(&pasted(texts))?;
    if json {
        print_json(&view);
    } else {
        print_lines(&say::codes::codes(words, &view));
    }
    Ok(ExitCode::SUCCESS)
}

/// The text of a scanner from what was typed: bytes that follow each other are one answer, and so are the signs of one
/// code; all else stands by itself.
fn pasted(texts: &[String]) -> String {
    let mut pasted = String::new();
    for (at, text) in texts.iter().enumerate() {
        let goes_on = at > 0 && goes_on(&texts[at - 1], text);
        pasted.push_str(if goes_on { " " } else { "\n" });
        pasted.push_str(text);
    }
    pasted
}

/// Whether a text goes on with what the one before it began: a row of bytes, which a control unit's identifier may lead,
/// or a code sign by sign.
fn goes_on(before: &str, text: &str) -> bool {
    let hex = |text: &str| text.bytes().all(|byte| byte.is_ascii_hexdigit());
    let is_byte = |text: &str| text.len() == 2 && hex(text);
    let is_identifier =
        |text: &str| hex(text) && (text.len() == 3 && text.starts_with('7') || text.len() == 8);
    let is_sign = |text: &str| text.len() == 1 && text.bytes().all(|byte| byte.is_ascii_alphanumeric());
    is_byte(text) && (is_byte(before) || is_identifier(before)) || is_sign(text) && is_sign(before)
}

/// Refuses to judge a trouble of which no symptom and no code was told.
fn refuse_nothing_told(args: &TroubleArgs) -> Result<(), Refusal> {
    let has_code = !args.code.is_empty() && !door::read_codes(&pasted(&args.code))?.codes.is_empty();
    if args.symptom.is_empty() && !has_code { Err(refuse("nothing-told", &[])) } else { Ok(()) }
}

fn form(args: &TroubleArgs) -> Result<TroubleForm, Refusal> {
    let scan = (!args.code.is_empty()).then(|| ScanForm { text: pasted(&args.code), ..ScanForm::default() });
    Ok(TroubleForm {
        symptoms: args.symptom.clone(),
        absent: args.absent.clone(),
        scans: scan.into_iter().collect(),
        answers: args.answer.iter().map(|text| answer(text)).collect::<Result<_, _>>()?,
        ..TroubleForm::default()
    })
}

/// What a check said: `CHECK=found`.
fn answer(text: &str) -> Result<AnswerForm, Refusal> {
    let (check, said) = text.split_once('=').unwrap_or_default();
    let answer = match said {
        "found" => AnswerKey::Found,
        "not" => AnswerKey::NotFound,
        "skipped" => AnswerKey::Skipped,
        _ => return Err(refuse("answer-form", &[("text", text)])),
    };
    Ok(AnswerForm { check: check.to_owned(), answer })
}

fn print_lines(lines: &[String]) {
    for line in lines {
        print_line(line);
    }
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use clap::Parser;
    use door::{Clock, Door, VehicleForm};

    use super::*;
    use crate::args::Args;

    fn texts(texts: &[&str]) -> Vec<String> {
        texts.iter().map(|&text| text.to_owned()).collect()
    }

    fn read(given: &[&str]) -> Vec<String> {
        let codes = door::read_codes(&pasted(&texts(given))).map(|view| view.codes);
        codes.map(|codes| codes.into_iter().map(|code| code.code).collect()).unwrap_or_default()
    }

    #[test]
    fn bytes_that_stand_apart_are_one_answer_and_codes_stay_codes() {
        assert_eq!(read(&["43", "01", "35"]), ["P0135"]);
        assert_eq!(read(&["7E8", "04", "43", "01", "01", "35"]), ["P0135"]);
        assert_eq!(read(&["P0300", "0420", "43 02 01 02 01 13"]), ["P0300", "P0420", "P0102", "P0113"]);
        assert_eq!(read(&["43 01 35", "47", "01", "71"]), ["P0135", "P0171"]);
    }

    #[test]
    fn a_text_without_a_code_is_refused() {
        let refused = |text: &str| door::read_codes(text).err().map(|refusal| refusal.code);
        for (text, code) in [
            ("", "no-codes"),
            ("hello", "no-codes"),
            ("P4300", "not-a-code"),
            ("P0l71", "misread-code"),
            (&pasted(&texts(&["p", "0", "1", "7", "1"])), "misread-code"),
            (&"P0301".repeat(20_000), "text-too-long"),
        ] {
            assert_eq!(refused(text).as_deref(), Some(code), "{text}");
        }
        assert!(door::read_codes("43 00").is_ok_and(|view| view.answered == ["confirmed"]));
        assert!(door::read_codes("P4300 P0300").is_ok_and(|view| view.notes.len() == 1));
    }

    #[test]
    fn an_answer_to_a_check_is_read_or_refused() {
        let said = |text: &str| answer(text).map(|read| (read.check, read.answer)).map_err(|no| no.code);
        assert_eq!(said("look-at-plugs=not"), Ok(("look-at-plugs".to_owned(), AnswerKey::NotFound)));
        for text in ["look-at-plugs=maybe", "look-at-plugs", ""] {
            assert_eq!(said(text), Err("answer-form".to_owned()), "{text}");
        }
    }

    /// A folder for one test, gone when it is dropped.
    struct Folder(std::path::PathBuf);

    impl Drop for Folder {
        fn drop(&mut self) {
            let _ = std::fs::remove_dir_all(&self.0);
        }
    }

    fn add(door: &mut Door, name: &str) -> String {
        let text = str::to_owned;
        let (engine, unit) = (text("petrol"), text("km"));
        let vehicle = VehicleForm { name: text(name), engine, unit, ..VehicleForm::default() };
        match door.ask(Request::AddVehicle { vehicle }).unwrap() {
            Response::Written(written) => written.book,
            other => panic!("{other:?}"),
        }
    }

    #[test]
    fn a_code_is_told_with_its_life_where_it_is_clear_whose_it_is() {
        let folder = Folder(std::env::temp_dir().join(format!("wellkept-codes-{}", std::process::id())));
        let mut door = Door::open(&folder.0, Clock::Fixed("2026-06-01".parse().unwrap())).unwrap();
        let book = add(&mut door, "Thistle");
        let scans = vec![ScanForm { text: "43 01 71".to_owned(), ..ScanForm::default() }];
        let trouble = TroubleForm { scans, ..TroubleForm::default() };
        door.ask(Request::WriteTrouble { book, trouble, keep: false }).unwrap();

        let words = Words::load(words::ENGLISH);
        let anyone = Args::parse_from(["wellkept", "code", "P0171"]);
        let named = Args::parse_from(["wellkept", "code", "P0171", "--vehicle", "thistle"]);
        let mut terminal = Terminal { door, words: &words, args: &anyone };
        let times = |terminal: &mut Terminal<'_>| {
            let view = terminal.codes_view("P0171".to_owned()).unwrap();
            view.codes[0].life.as_ref().map(|life| life.times)
        };
        assert_eq!(times(&mut terminal), Some(1), "the only one");
        add(&mut terminal.door, "Bramble");
        assert_eq!(times(&mut terminal), None, "nobody knows whose");
        assert_eq!(times(&mut Terminal { args: &named, ..terminal }), Some(1));
    }

    #[test]
    fn a_trouble_needs_a_symptom_or_a_code() {
        let told = |symptom: &[&str], code: &[&str]| {
            let args = TroubleArgs { symptom: texts(symptom), code: texts(code), ..TroubleArgs::default() };
            refuse_nothing_told(&args).map_err(|refusal| refusal.code)
        };
        assert_eq!(told(&[], &[]), Err("nothing-told".to_owned()));
        assert_eq!(told(&[], &["43 00"]), Err("nothing-told".to_owned()));
        assert_eq!(told(&["rough-idle"], &["hello"]), Err("no-codes".to_owned()));
        assert_eq!(told(&["rough-idle"], &["43 00"]), Ok(()));
        assert_eq!(told(&[], &["P0171"]), Ok(()));
    }
}
