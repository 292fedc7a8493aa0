//! Readings, fuel, costs and measured values at the terminal.

use std::io::Read;

use door::{FuelForm, MeasuredForm, MeasuredValueForm, ReadingForm, Refusal, Request, Response};

use crate::args::FuelArgs;
use crate::commands::{Terminal, print_line, strange};
use crate::say_running as say;

impl Terminal<'_> {
    pub(crate) fn reading(
        &mut self,
        value: &str,
        on: &str,
        fuel: &FuelArgs,
        keep: bool,
    ) -> Result<(), Refusal> {
        let book = self.book()?;
        let fuel = if fuel.is_any() { Some(self.fuel_form(&book, fuel)?) } else { None };
        let reading =
            ReadingForm { day: on.to_owned(), reading: value.to_owned(), fuel, ..ReadingForm::default() };
        let written = self.written(Request::TakeReading { book, reading, keep: keep.into() })?;
        self.answer(&written, |terminal| {
            let day = if on.is_empty() { terminal.today() } else { on.to_owned() };
            terminal.say("cli-reading-written", &[("reading", value.into()), ("day", day.into())]);
        });
        Ok(())
    }

    /// The fuel, where kind, unit and currency are those used last unless they were given.
    fn fuel_form(&mut self, book: &str, args: &FuelArgs) -> Result<FuelForm, Refusal> {
        let Response::Pump(pump) = self.door.ask(Request::Pump { book: book.to_owned() })? else {
            return Err(strange());
        };
        let wanted = |kind: &str| args.kind.is_empty() || kind == args.kind;
        let offer = pump.fuels.into_iter().find(|offer| wanted(&offer.kind));
        let (kind, unit, currency) =
            offer.map(|offer| (offer.kind, offer.unit, offer.currency)).unwrap_or_default();
        let given = |text: &str, last: String| if text.is_empty() { last } else { text.to_owned() };
        Ok(FuelForm {
            kind: given(&args.kind, kind),
            amount: args.amount.clone(),
            unit: given(&args.unit, unit),
            price: args.price.clone(),
            total: args.total.clone(),
            currency: given(&args.currency, currency),
            fill: args.fill.clone(),
        })
    }

    pub(crate) fn fuel(&mut self, unit: Option<&str>) -> Result<(), Refusal> {
        let book = self.book()?;
        let unit = unit.map(str::to_owned);
        let Response::Fuel(view) = self.door.ask(Request::Fuel { book, unit })? else {
            return Err(strange());
        };
        self.answer(&view, |terminal| {
            for line in say::consumption(terminal.words, &view) {
                print_line(&line);
            }
        });
        Ok(())
    }

    pub(crate) fn costs(&mut self, months: bool) -> Result<(), Refusal> {
        let book = self.book()?;
        let Response::Costs(view) = self.door.ask(Request::Costs { book })? else { return Err(strange()) };
        let bills = if months { &view.months } else { &view.years };
        self.answer(&view, |terminal| {
            for line in say::costs(terminal.words, &view, bills) {
                print_line(&line);
            }
        });
        Ok(())
    }

    pub(crate) fn measured(&mut self) -> Result<(), Refusal> {
        let book = self.book()?;
        let Response::Measured(view) = self.door.ask(Request::Measured { book })? else {
            return Err(strange());
        };
        self.answer(&view, |terminal| {
            for line in say::measured(terminal.words, &view) {
                print_line(&line);
            }
        });
        Ok(())
    }

    pub(crate) fn measure(&mut self, values: &[String], stdin: bool, on: &str) -> Result<(), Refusal> {
        let book = self.book()?;
        let values = if stdin { self.pasted(std::io::stdin())? } else { pairs(values) };
        let count = values.len();
        let measured = MeasuredForm { day: on.to_owned(), values, pasted: stdin };
        let written = self.written(Request::WriteMeasured { book, measured })?;
        self.answer(&written, |terminal| terminal.say("cli-measured-written", &[("count", count.into())]));
        Ok(())
    }

    /// The values in the lines of a scan tool; what is left out is told.
    fn pasted(&mut self, input: impl Read) -> Result<Vec<MeasuredValueForm>, Refusal> {
        let text = std::io::read_to_string(input).map_err(|error| door::refuse_file("-", &error))?;
        let Response::MeasuredRead(read) = self.door.ask(Request::ReadMeasured { text })? else {
            return Err(strange());
        };
        if !self.args.json {
            for line in &read.unread {
                self.say("cli-measured-unread", &[("line", line.into())]);
            }
        }
        Ok(read.values)
    }
}

/// Keys and values by turns; a key without a value is left to the door to refuse.
fn pairs(words: &[String]) -> Vec<MeasuredValueForm> {
    let pair = |pair: &[String]| MeasuredValueForm {
        parameter: pair.first().cloned().unwrap_or_default(),
        value: pair.get(1).cloned().unwrap_or_default(),
    };
    words.chunks(2).map(pair).collect()
}
