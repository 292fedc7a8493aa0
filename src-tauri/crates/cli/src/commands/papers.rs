//! Papers at the terminal: taken in, tied to a line, written out as they came, and read.

use std::path::{Path, PathBuf};
use std::process::ExitCode;

use door::{Clock, FiledView, PaperReader, ReceiptView, Refusal, Request, ToRead, WantedFile};
use words::Words;

use super::{Outcome, Terminal, print_json, print_line};
use crate::args::Args;
use crate::say;

impl Terminal<'_> {
    /// Takes each file in, and ties it to a line if one is named. A file that is refused keeps none of the others out.
    pub(super) fn paper(&mut self, files: &[PathBuf], line: Option<&str>) -> Outcome {
        let book = self.book()?;
        if let Some(line) = line {
            self.door.check_takes_papers(&book, line)?;
        }
        let (mut papers, mut all_well) = (Vec::new(), true);
        for path in files {
            match self.paper_of(&book, path, line) {
                Ok(taken) => papers.extend(taken),
                Err(refusal) => {
                    self.refuse_file(path, &refusal);
                    all_well = false;
                }
            }
        }
        self.answer(&papers, |_| ());
        Ok(if all_well { ExitCode::SUCCESS } else { ExitCode::from(1) })
    }

    /// The papers of one file, which wait in the tray where no line is named.
    fn paper_of(&mut self, book: &str, path: &Path, line: Option<&str>) -> Result<Vec<String>, Refusal> {
        let taken = self.door.take_in(book, &door::read_file(path)?)?;
        match line {
            Some(line) => self.tie(book, path, line, &taken)?,
            None if is_new(&taken) => self.say_of(path, "cli-paper-written"),
            None => self.say_of(path, "cli-paper-known"),
        }
        Ok(taken.papers)
    }

    /// Ties the papers of one file to a line. Those that stand there already are left alone, so that the same command
    /// may be given twice.
    fn tie(&mut self, book: &str, path: &Path, line: &str, taken: &FiledView) -> Result<(), Refusal> {
        let mut loose = Vec::new();
        for paper in &taken.papers {
            if !self.door.is_tied_to(book, paper, line)? {
                loose.push(paper.clone());
            }
        }
        if loose.is_empty() {
            self.say_of(path, "cli-paper-there");
            return Ok(());
        }
        if !is_new(taken) {
            self.say_of(path, "cli-paper-known");
        }
        for paper in loose {
            self.written(Request::TiePaper { book: book.to_owned(), paper, line: line.to_owned() })?;
        }
        self.say_of(path, "cli-paper-tied");
        Ok(())
    }

    /// Says what became of a file. JSON is left to the command, whose answer is one document.
    fn say_of(&self, path: &Path, id: &str) {
        if !self.args.json {
            self.say(id, &[("path", path.display().to_string().into())]);
        }
    }

    /// Says on stderr which file was refused, and why.
    fn refuse_file(&self, path: &Path, refusal: &Refusal) {
        let path = path.display().to_string();
        let why = say::refusal(self.words, refusal);
        eprintln!("{}", self.words.say("cli-file-refused", &[("path", path.into()), ("why", why.into())]));
    }

    /// Writes the PDF of a paper out, and answers where it stands.
    pub(super) fn document(&mut self, paper: &str, out: &Path) -> Result<(), Refusal> {
        let book = self.book()?;
        let path = door::save_new(out, &self.door.document(&book, paper)?.read()?)?;
        self.answer(&path, |terminal| terminal.say("cli-document-written", &[("path", (&path).into())]));
        Ok(())
    }

    /// Takes papers into the tray for a line that is about to be written, and answers their lines. The first that is
    /// refused ends it.
    pub(super) fn papers(&mut self, files: &[PathBuf]) -> Result<Vec<String>, Refusal> {
        let book = self.book()?;
        let mut papers = Vec::new();
        for path in files {
            papers.extend(self.paper_of(&book, path, None)?);
        }
        Ok(papers)
    }
}

/// Whether the book did not have all of a file already.
fn is_new(filed: &FiledView) -> bool {
    filed.warnings.len() < filed.papers.len()
}

/// Reads a receipt: what it says in words, or everything that was read in JSON. A document is read page by page, and
/// its JSON is a list with an answer a page.
pub fn read_receipt(words: &Words, args: &Args, file: &Path, models: Option<&Path>) -> Outcome {
    let today = args.today.map_or(Clock::Device, Clock::Fixed).today();
    let pictures = ToRead::file(&door::read_file(file)?, today)?;
    let reader = PaperReader::new(models);
    let read = |wanted: &ToRead| reader.read(wanted, &|| false);
    match &pictures {
        WantedFile::Photo(photo) => say_receipt(words, args, &read(photo)?),
        WantedFile::Pages(pages) => {
            let receipts = pages.iter().map(read).collect::<Result<Vec<_>, _>>()?;
            say_pages(words, args, &receipts);
        }
    }
    Ok(ExitCode::SUCCESS)
}

fn say_receipt(words: &Words, args: &Args, receipt: &ReceiptView) {
    if args.json {
        print_json(receipt);
    } else {
        for line in say::receipt(words, receipt) {
            print_line(&line);
        }
    }
}

fn say_pages(words: &Words, args: &Args, receipts: &[ReceiptView]) {
    if args.json {
        return print_json(&receipts);
    }
    for (page, receipt) in (1_usize..).zip(receipts) {
        print_line(&words.say("cli-read-page", &[("page", page.into()), ("pages", receipts.len().into())]));
        say_receipt(words, args, receipt);
    }
}
