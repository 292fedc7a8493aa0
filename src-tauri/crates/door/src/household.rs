//! The demo: the invented household's story is written through the door, as its people would have.

use crate::demo::{self, DemoCar, Step, What};
use crate::{Clock, Door, Refusal, Request, VisitForm, WrittenView};

/// One car's story as far as it has been told.
struct Told<'a> {
    car: &'a DemoCar,
    book: String,
    lines: Vec<String>,
}

impl Door {
    /// Fills an empty shelf; answers the first book.
    ///
    /// Every step is written on the day on which the story has it written, those of both cars in one order, so
    /// that the clock of the shelf tells the truth about what was written down late.
    pub(crate) fn demo(&mut self) -> Result<WrittenView, Refusal> {
        if !self.shelf.books()?.is_empty() {
            return Err(Refusal::new("shelf-not-empty"));
        }
        let clock = self.clock;
        let told = self.tell_all(&demo::household(clock.today()));
        self.clock = clock;
        told
    }

    /// Tells the stories of a household, and leaves the clock at the last day on which something was written.
    pub(crate) fn tell_all(&mut self, household: &[DemoCar]) -> Result<WrittenView, Refusal> {
        let mut stories = Vec::new();
        let mut order = Vec::new();
        for (story, car) in household.iter().enumerate() {
            stories.push(Told { car, book: String::new(), lines: Vec::new() });
            order.push((car.begins, story, None));
            order.extend(car.steps.iter().map(|step| (step.written, story, Some(step))));
        }
        // Stable, so that each car's steps of one day keep their order.
        order.sort_by_key(|(day, ..)| *day);
        for (day, story, step) in order {
            self.clock = Clock::Fixed(day);
            self.tell(&mut stories[story], step)?;
        }
        let book = stories.first().map(|story| story.book.clone()).unwrap_or_default();
        Ok(WrittenView { subject: book.clone(), book, warnings: Vec::new() })
    }

    /// Writes the next step of a story, or the car itself where it begins.
    fn tell(&mut self, story: &mut Told<'_>, step: Option<&Step>) -> Result<(), Refusal> {
        let Some(step) = step else {
            let vehicle = story.car.vehicle.clone();
            story.book = self.change(Request::AddVehicle { vehicle })?.book;
            return Ok(());
        };
        let line = self.take_step(&story.book, step, &story.lines)?;
        story.lines.push(line);
        Ok(())
    }

    /// Writes one step; answers its line. `lines` are those of the steps before it.
    fn take_step(&mut self, book: &str, step: &Step, lines: &[String]) -> Result<String, Refusal> {
        let book = book.to_owned();
        let line = |of: usize| lines.get(of).cloned().unwrap_or_default();
        let request = match step.what.clone() {
            What::Reading(reading) => Request::TakeReading { book, reading, keep: true.into() },
            What::Measured(measured) => Request::WriteMeasured { book, measured },
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
        Ok(self.take_in(book, &demo::draw(receipt))?.papers.pop().unwrap_or_default())
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
