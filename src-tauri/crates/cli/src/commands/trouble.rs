//! Codes, troubles and guides at the terminal.

use std::process::ExitCode;

use door::{HereForm, Refusal, Request, Response, ScanForm, TroubleForm};
use words::Words;

use super::{Outcome, Terminal, print_json, print_line, strange};
use crate::args::TroubleArgs;
use crate::say;

impl Terminal<'_> {
    pub(super) fn trouble(&mut self, args: &TroubleArgs) -> Result<(), Refusal> {
        let book = self.book()?;
        let here =
            HereForm { at_night: args.at_night, owned: args.owned.clone(), lacking: args.lacking.clone() };
        let request = Request::Trouble { book, trouble: form(args), subject: None, here };
        let Response::Trouble(view) = self.door.ask(request)? else { return Err(strange()) };
        self.answer(&view, |terminal| {
            print_lines(&say::trouble::trouble(terminal.words, &view));
        });
        Ok(())
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
            print_lines(&say::trouble::guide(terminal.words, &view));
        });
        Ok(())
    }

    fn all_guides(&mut self, book: String) -> Result<(), Refusal> {
        let Response::Guides(view) = self.door.ask(Request::Guides { book })? else {
            return Err(strange());
        };
        self.answer(&view.guides, |terminal| {
            for guide in &view.guides {
                print_line(&say::trouble::guide_line(terminal.words, guide));
            }
        });
        Ok(())
    }
}

/// Explains codes; it needs no shelf.
pub fn code(words: &Words, json: bool, texts: &[String]) -> Outcome {
    let view = door::read_codes(&texts.join("\n"))?;
    if json {
        print_json(&view);
    } else {
        print_lines(&say::trouble::codes(words, &view));
    }
    Ok(ExitCode::SUCCESS)
}

fn form(args: &TroubleArgs) -> TroubleForm {
    let scan =
        (!args.code.is_empty()).then(|| ScanForm { text: args.code.join("\n"), ..ScanForm::default() });
    TroubleForm {
        symptoms: args.symptom.clone(),
        absent: args.absent.clone(),
        scans: scan.into_iter().collect(),
        answers: args.answer.clone(),
        ..TroubleForm::default()
    }
}

fn print_lines(lines: &[String]) {
    for line in lines {
        print_line(line);
    }
}
