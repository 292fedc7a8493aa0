//! Each command: one request or a few, and what is said of the answer.

mod handover;
mod papers;
mod trouble;

use std::io::{BufRead, Read, Write};
use std::path::Path;
use std::process::ExitCode;

use door::{
    CardOptions, CatalogueLine, Door, DueView, FoundForm, Gathered, ItemForm, MissingLine, PartForm, Refusal,
    ReportOptions, Request, Response, ShelfView, VisitForm, WrittenView,
};
use words::{Arg, Words};

use crate::args::{Args, Command, VisitArgs};
use crate::say;

pub use papers::read_receipt;
pub use trouble::code;

/// The terminal with its open door.
pub struct Terminal<'a> {
    pub door: Door,
    pub words: &'a Words,
    pub args: &'a Args,
}

/// A line of what is due: on the plan, or not for this car.
#[derive(serde::Serialize)]
#[serde(untagged)]
enum Listed<'a> {
    Due(&'a DueView),
    Missing(&'a MissingLine),
}

/// What a command came to: said in words, or as the JSON of the answer.
type Outcome = Result<ExitCode, Refusal>;

impl Terminal<'_> {
    /// Does what the command says.
    pub fn run(mut self) -> Outcome {
        match &self.args.command {
            Command::Demo => self.demo(),
            Command::Vehicles => self.vehicles(),
            Command::Due { all } => self.due(*all),
            Command::Visits => self.visits(),
            Command::Reading { value, on, fuel, keep } => self.reading(value, on, fuel, *keep),
            Command::Fuel { unit } => self.fuel(unit.as_deref()),
            Command::Costs { months } => self.costs(*months),
            Command::Measured => self.measured(),
            Command::Measure { values, stdin, on } => self.measure(values, *stdin, on),
            Command::Visit(visit) => self.visit(visit),
            Command::Paper { files, visit } => return self.paper(files, visit.as_deref()),
            Command::Document { paper, out } => self.document(paper, out),
            Command::Parts { item } => self.parts(item.as_deref()),
            Command::Buy => self.buy(),
            Command::Card { out, looks } => self.card(out, &looks.options()),
            Command::Report { out, tells } => self.report(out, &tells.options()),
            Command::CardRead { card } => self.card_read(card),
            Command::Handover(handover) => self.handover(handover),
            Command::Receive { file, passphrase_file } => self.receive(file, passphrase_file.as_deref()),
            Command::Compare { old, new } => return self.compare(old, new.as_deref()),
            Command::Code { text } => self.code(text),
            Command::Symptoms => self.symptoms(),
            Command::Trouble(trouble) => self.trouble(trouble),
            Command::Guide { key } => self.guide(key.as_deref()),
            Command::Check => return self.check(),
            Command::Rebuild => self.rebuild(),
            Command::Ask => self.ask_lines(),
            Command::Vin { .. } | Command::Read { .. } | Command::Serve { .. } => Ok(()),
        }?;
        Ok(ExitCode::SUCCESS)
    }

    pub(crate) fn say(&self, id: &str, args: &[(&str, Arg<'_>)]) {
        print_line(&self.words.say(id, args));
    }

    fn shelf(&mut self) -> Result<ShelfView, Refusal> {
        match self.door.ask(Request::Shelf)? {
            Response::Shelf(view) => Ok(view),
            _ => Err(strange()),
        }
    }

    /// The book of the vehicle that was named, or of the only one.
    pub(crate) fn book(&mut self) -> Result<String, Refusal> {
        let vehicles = self.shelf()?.vehicles;
        let names = vehicles.iter().map(|vehicle| vehicle.name.as_str()).collect::<Vec<_>>().join(", ");
        let found = match &self.args.vehicle {
            Some(name) => vehicles.iter().find(|vehicle| vehicle.name.to_lowercase() == name.to_lowercase()),
            None if vehicles.len() == 1 => vehicles.first(),
            None if vehicles.is_empty() => return Err(refuse("shelf-empty", &[])),
            None => return Err(refuse("which-vehicle", &[("names", &names)])),
        };
        let wanted = self.args.vehicle.as_deref().unwrap_or_default();
        found
            .map(|vehicle| vehicle.book.clone())
            .ok_or_else(|| refuse("no-such-vehicle", &[("name", wanted), ("names", &names)]))
    }

    fn demo(&mut self) -> Result<(), Refusal> {
        let written = self.written(Request::Demo)?;
        let entries = match self.door.ask(Request::Check)? {
            Response::Check(check) => check.entries,
            _ => return Err(strange()),
        };
        let vehicles = self.shelf()?.vehicles.len();
        self.answer(&written, |terminal| {
            terminal.say("cli-demo-written", &[("vehicles", vehicles.into()), ("entries", entries.into())]);
        });
        Ok(())
    }

    fn vehicles(&mut self) -> Result<(), Refusal> {
        let vehicles = self.shelf()?.vehicles;
        self.answer(&vehicles, |terminal| {
            if vehicles.is_empty() {
                terminal.say("cli-shelf-empty", &[]);
            }
            for vehicle in &vehicles {
                print_line(&say::vehicle(vehicle));
            }
        });
        Ok(())
    }

    fn due(&mut self, all: bool) -> Result<(), Refusal> {
        let book = self.book()?;
        let missing = if all { self.missing(&book)? } else { Vec::new() };
        let Response::Today(today) = self.door.ask(Request::Today { book })? else { return Err(strange()) };
        let listed = today.due.iter().map(Listed::Due).chain(missing.iter().map(Listed::Missing));
        let listed: Vec<_> = listed.collect();
        self.answer(&listed, |terminal| {
            for line in &listed {
                match line {
                    Listed::Due(due) => print_line(&say::due::due(terminal.words, due)),
                    Listed::Missing(missing) => print_line(&say::due::missing(terminal.words, missing)),
                }
            }
        });
        Ok(())
    }

    /// What is not for this car.
    fn missing(&mut self, book: &str) -> Result<Vec<MissingLine>, Refusal> {
        match self.door.ask(Request::Sheet { book: book.to_owned() })? {
            Response::Sheet(sheet) => Ok(sheet.missing),
            _ => Err(strange()),
        }
    }

    fn visits(&mut self) -> Result<(), Refusal> {
        let book = self.book()?;
        let Response::Visits(ahead) = self.door.ask(Request::Visits { book })? else {
            return Err(strange());
        };
        self.answer(&ahead.visits, |terminal| {
            if ahead.visits.is_empty() {
                terminal.say("cli-no-visits", &[]);
            }
            for visit in &ahead.visits {
                print_line(&say::visits::visit(terminal.words, visit));
            }
            if !ahead.proven {
                terminal.say("cli-visits-unproven", &[]);
            }
            if let Some(spend) = &ahead.spend {
                print_line(&say::visits::spend(terminal.words, spend));
            }
        });
        Ok(())
    }

    fn parts(&mut self, key: Option<&str>) -> Result<(), Refusal> {
        let book = self.book()?;
        let item = key.map(|key| self.number_of(key)).transpose()?;
        let Response::Parts(view) = self.door.ask(Request::Parts { book, item })? else {
            return Err(strange());
        };
        self.answer(&view.parts, |terminal| {
            if view.parts.is_empty() {
                terminal.say("cli-no-parts", &[]);
            }
            for part in &view.parts {
                print_line(&say::parts::part(terminal.words, part));
            }
        });
        Ok(())
    }

    /// The number of the catalogue item with this key.
    fn number_of(&mut self, key: &str) -> Result<u32, Refusal> {
        let catalogue = self.shelf()?.catalogue;
        let item = catalogue.iter().find(|line| line.key == key);
        item.map(|line| line.number).ok_or_else(|| refuse("item-unknown", &[("number", key)]))
    }

    fn buy(&mut self) -> Result<(), Refusal> {
        let book = self.book()?;
        let Response::Counter(counter) = self.door.ask(Request::Counter { book })? else {
            return Err(strange());
        };
        self.answer(&counter.get, |terminal| {
            if counter.get.is_empty() {
                terminal.say("cli-buy-nothing", &[]);
            }
            for get in &counter.get {
                print_line(&say::parts::get(terminal.words, get));
            }
        });
        Ok(())
    }

    pub(crate) fn today(&self) -> String {
        self.door.today().to_string()
    }

    fn visit(&mut self, args: &VisitArgs) -> Result<(), Refusal> {
        let book = self.book()?;
        let mut visit = if args.stdin { visit_from(std::io::stdin())? } else { self.visit_form(args)? };
        visit.papers.extend(self.papers(&args.paper)?);
        let day = if visit.day.is_empty() { self.today() } else { visit.day.clone() };
        let written = self.written(Request::RecordVisit { book, visit, keep: args.keep })?;
        self.answer(&written, |terminal| {
            terminal.say("cli-visit-written", &[("day", day.into())]);
            for warning in &written.warnings {
                terminal.say(&format!("cli-warning-{warning}"), &[]);
            }
        });
        Ok(())
    }

    fn visit_form(&mut self, args: &VisitArgs) -> Result<VisitForm, Refusal> {
        let catalogue = self.shelf()?.catalogue;
        let item = |text: &String| item_of(&catalogue, text);
        Ok(VisitForm {
            day: args.on.clone(),
            reading: args.reading.clone(),
            workshop: args.by.clone(),
            items: args.item.iter().map(item).collect::<Result<_, _>>()?,
            parts: args.part.iter().map(|text| part(text)).collect(),
            cost: args.cost.clone(),
            currency: args.currency.clone(),
            note: args.note.clone(),
            papers: Vec::new(),
            found: args.found.iter().map(|text| found(text, &item)).collect::<Result<_, _>>()?,
        })
    }

    fn card(&mut self, out: &Path, options: &CardOptions) -> Result<(), Refusal> {
        let book = self.book()?;
        let gathered = self.door.card(&book, options)?;
        self.save_sheet(&gathered, out, "cli-card-written")
    }

    fn report(&mut self, out: &Path, options: &ReportOptions) -> Result<(), Refusal> {
        let book = self.book()?;
        let gathered = self.door.report(&book, options)?;
        self.save_sheet(&gathered, out, "cli-report-written")
    }

    fn save_sheet(&mut self, gathered: &Gathered, out: &Path, written: &str) -> Result<(), Refusal> {
        let path = door::save(out, &gathered.pdf()?)?;
        self.answer(&path, |terminal| terminal.say(written, &[("path", (&path).into())]));
        Ok(())
    }

    fn card_read(&mut self, card: &str) -> Result<(), Refusal> {
        let text = handover::text_of(card)?;
        let Response::CardRead(read) = self.door.ask(Request::ReadCard { text })? else {
            return Err(strange());
        };
        self.answer(&read, |terminal| {
            for line in say::card::read(terminal.words, &read) {
                print_line(&line);
            }
        });
        Ok(())
    }

    fn check(&mut self) -> Outcome {
        let Response::Check(check) = self.door.ask(Request::Check)? else { return Err(strange()) };
        let counts = |faults: usize| {
            [
                ("entries", Arg::from(check.entries)),
                ("photos", check.photos.into()),
                ("faults", faults.into()),
            ]
        };
        self.answer(&check, |terminal| {
            let id = if check.faults.is_empty() { "cli-check-well" } else { "cli-check-faults" };
            terminal.say(id, &counts(check.faults.len()));
            if check.left > 0 {
                terminal.say("cli-check-left", &[("left", check.left.into())]);
            }
            if check.unnamed > 0 {
                terminal.say("cli-check-unnamed", &[("unnamed", check.unnamed.into())]);
            }
            for fault in &check.faults {
                terminal.say(&format!("cli-fault-{}", fault.code), &[("place", (&fault.place).into())]);
            }
        });
        Ok(if check.faults.is_empty() { ExitCode::SUCCESS } else { ExitCode::from(1) })
    }

    fn rebuild(&mut self) -> Result<(), Refusal> {
        let Response::Rebuilt(rebuilt) = self.door.ask(Request::Rebuild)? else { return Err(strange()) };
        self.answer(&rebuilt, |terminal| {
            terminal.say("cli-rebuilt", &[("entries", rebuilt.entries.into())]);
            if rebuilt.cleared > 0 {
                terminal.say("cli-rebuilt-cleared", &[("cleared", rebuilt.cleared.into())]);
            }
        });
        Ok(())
    }

    /// The door itself: a request a line, and for each an answer or a refusal a line.
    fn ask_lines(&mut self) -> Result<(), Refusal> {
        for line in std::io::stdin().lock().lines() {
            let line = line.map_err(|error| door::refuse_file("-", &error))?;
            if line.trim().is_empty() {
                continue;
            }
            let request =
                serde_json::from_str::<Request>(&line).map_err(|error| door::refuse_request(&error));
            match request.and_then(|request| self.door.ask(request)) {
                Ok(response) => print_json(&response),
                Err(refusal) => print_json(&serde_json::json!({ "refusal": refusal })),
            }
        }
        Ok(())
    }

    pub(crate) fn written(&mut self, request: Request) -> Result<WrittenView, Refusal> {
        match self.door.ask(request)? {
            Response::Written(written) => Ok(written),
            _ => Err(strange()),
        }
    }

    pub(crate) fn answer<T: serde::Serialize>(&self, answer: &T, say: impl FnOnce(&Self)) {
        if self.args.json {
            print_json(answer);
        } else {
            say(self);
        }
    }
}

/// Says what an identification number says.
pub fn vin(words: &Words, json: bool, vin: &str) -> Outcome {
    let view = door::read_vin(vin)?;
    if json {
        print_json(&view);
    } else {
        let expected = view.expected.clone().unwrap_or_default();
        let args = [("vin", Arg::from(&view.vin)), ("expected", expected.into())];
        print_line(&words.say(&format!("cli-vin-{}", view.check_digit), &args));
    }
    Ok(ExitCode::SUCCESS)
}

/// A refusal of the terminal's own.
pub(crate) fn refuse(code: &str, values: &[(&str, &str)]) -> Refusal {
    let values = values.iter().map(|(name, value)| ((*name).to_owned(), (*value).to_owned())).collect();
    Refusal { code: code.to_owned(), field: None, values, can_keep: false }
}

/// The door answers each request with its own screen, and nothing else can come of it.
pub(crate) fn strange() -> Refusal {
    door::refuse_request(&"the door gave another answer")
}

fn visit_from(input: impl Read) -> Result<VisitForm, Refusal> {
    serde_json::from_reader(input).map_err(|error| door::refuse_request(&error))
}

fn part(text: &str) -> PartForm {
    let mut fields = text.split(';').map(|field| field.trim().to_owned());
    let mut next = || fields.next().unwrap_or_default();
    let (maker, number, name, quantity, price, kind) = (next(), next(), next(), next(), next(), next());
    PartForm { name, maker, number, quantity, price, kind, ..PartForm::default() }
}

/// How far from a key of the catalogue words of the owner's own must be: further than two letters mistyped.
const MISTYPED: usize = 2;

/// The item of the catalogue with this key, or else one of the owner's own by these words. What is nearly a key is asked
/// about: under a name of its own an oil change would be lost to the plan.
fn item_of(catalogue: &[CatalogueLine], text: &str) -> Result<ItemForm, Refusal> {
    if let Some(line) = catalogue.iter().find(|line| line.key == text) {
        return Ok(ItemForm::Catalogue(line.number));
    }
    let near = |line: &&CatalogueLine| strsim::damerau_levenshtein(&line.key, text) <= MISTYPED;
    match catalogue.iter().find(near) {
        Some(line) => Err(refuse("item-mistyped", &[("typed", text), ("key", &line.key)])),
        None => Ok(ItemForm::Own(text.to_owned())),
    }
}

/// What was found, from its fields.
fn found(text: &str, item: &impl Fn(&String) -> Result<ItemForm, Refusal>) -> Result<FoundForm, Refusal> {
    let mut fields = text.split(';').map(|field| field.trim().to_owned());
    let mut next = || fields.next().unwrap_or_default();
    Ok(FoundForm { item: item(&next())?, finding: next(), value: next() })
}

/// The text of the first square in a picture or a PDF.
fn scan(bytes: &[u8]) -> Result<String, Refusal> {
    let texts = door::scan_card(bytes)?;
    texts.into_iter().next().ok_or_else(|| refuse("card-no-square", &[]))
}

/// Says something in words. Whoever reads the output may close it early; that is no fault of the program.
pub(crate) fn print_line(text: &str) {
    let _ = writeln!(std::io::stdout(), "{}", say::harmless_lines(text));
}

fn print_json<T: serde::Serialize>(answer: &T) {
    if let Ok(text) = serde_json::to_string(answer) {
        let _ = writeln!(std::io::stdout(), "{text}");
    }
}
