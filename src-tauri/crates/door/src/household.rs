//! The demo: the invented household's story is written through the door, as its people would have.

use crate::demo::{self, DemoCar, Step, What};
use crate::{Clock, Door, Refusal, Request, VisitForm, WrittenView};

impl Door {
    /// Fills an empty shelf; answers the first book.
    ///
    /// Every step is written on the day on which the story has it written, so that the clock of the book tells
    /// the truth about what was written down late.
    pub(crate) fn demo(&mut self) -> Result<WrittenView, Refusal> {
        if !self.shelf.books()?.is_empty() {
            return Err(Refusal::new("shelf-not-empty"));
        }
        let clock = self.clock;
        let told =
            demo::household(clock.today()).iter().map(|car| self.tell(car)).collect::<Result<Vec<_>, _>>();
        self.clock = clock;
        told?.into_iter().next().ok_or_else(|| Refusal::new("request"))
    }

    fn tell(&mut self, car: &DemoCar) -> Result<WrittenView, Refusal> {
        self.clock = Clock::Fixed(car.begins);
        let vehicle = self.change(Request::AddVehicle { vehicle: car.vehicle.clone() })?;
        let mut lines: Vec<String> = Vec::with_capacity(car.steps.len());
        for step in &car.steps {
            self.clock = Clock::Fixed(step.written);
            let line = self.take_step(&vehicle.book, step, &lines)?;
            lines.push(line);
        }
        Ok(vehicle)
    }

    /// Writes one step; answers its line. `lines` are those of the steps before it.
    fn take_step(&mut self, book: &str, step: &Step, lines: &[String]) -> Result<String, Refusal> {
        let book = book.to_owned();
        let line = |of: usize| lines.get(of).cloned().unwrap_or_default();
        let request = match step.what.clone() {
            What::Reading(reading) => Request::TakeReading { book, reading, keep: true },
            What::Visit { form, receipt } => {
                let papers = receipt.map(|receipt| self.photograph(&book, &receipt)).transpose()?;
                let visit = VisitForm { papers: papers.into_iter().collect(), ..form };
                Request::RecordVisit { book, visit, keep: true }
            }
            What::Tray(receipt) => return self.photograph(&book, &receipt),
            What::AmendVisit { of, form, why } => {
                let papers = self.papers_of(&book, &line(of))?;
                let visit = VisitForm { papers, ..form };
                Request::AmendVisit { book, subject: line(of), visit, why, keep: true }
            }
            What::StrikeOut { of, why } => Request::StrikeOut { book, subject: line(of), why },
            What::Plan { item, change } => Request::ChangePlan { book, item, change },
            What::Instrument { day, old, new } => Request::ReplaceInstrument { book, day, old, new },
        };
        Ok(self.change(request)?.subject)
    }

    fn photograph(&mut self, book: &str, receipt: &demo::Receipt) -> Result<String, Refusal> {
        Ok(self.take_in(book, &demo::draw(receipt))?.subject)
    }

    fn papers_of(&self, book: &str, visit: &str) -> Result<Vec<String>, Refusal> {
        match self.shelf.line(book.parse()?, visit.parse()?)?.content {
            book::content::Content::Visit(visit) => {
                Ok(visit.papers.iter().map(ToString::to_string).collect())
            }
            _ => Ok(Vec::new()),
        }
    }
}
