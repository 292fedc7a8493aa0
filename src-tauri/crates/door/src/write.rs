//! Changes: what was typed is read, held against the rules, and written.

mod bought;
mod trouble;

use book::content::{
    Content, ContentKind, InstrumentContent, PlanContent, ReadingContent, VehicleContent, VisitContent,
};
use book::{Change, Stamp, Written};
use rules::guides::Guides;
use rules::running::{OdometerStatus, Plausibility, Reading, Track};
use rules::upkeep::{Missing, Setting};
use units::{BookId, Day, Distance, SubjectId};

use crate::car::Car;
use crate::screens::part_warnings;
use crate::{
    Door, Keep, MeasuredForm, PlanForm, ReadingForm, Refusal, Request, VehicleForm, VisitForm, WrittenView,
    forms, refuse,
};

impl Door {
    /// The one function through which every change goes.
    pub(crate) fn change(&mut self, request: Request) -> Result<WrittenView, Refusal> {
        // Said before anything else, so that nobody is asked about a reading that is not taken anyway.
        if let Some(book) = written_in(&request) {
            self.check_writable(book.parse()?)?;
        }
        match request {
            Request::AddVehicle { vehicle } => self.add_vehicle(&vehicle),
            Request::ChangeVehicle { book, vehicle } => self.change_vehicle(book.parse()?, &vehicle),
            Request::TakeReading { book, reading, keep } => self.take_reading(&book, &reading, &keep),
            Request::ReplaceInstrument { book, day, old, new } => {
                self.replace_instrument(&book, &day, &old, &new)
            }
            Request::RecordVisit { book, visit, keep } => self.record_visit(&book, &visit, keep),
            Request::AmendReading { book, subject, reading, why, keep } => {
                self.amend_reading(&book, subject.parse()?, &reading, &why, &keep)
            }
            Request::AmendVisit { book, subject, visit, why, keep } => {
                self.amend_visit(&book, subject.parse()?, &visit, &why, keep)
            }
            Request::WriteTrouble { book, trouble, keep } => self.write_trouble(&book, &trouble, keep),
            Request::AmendTrouble { book, subject, trouble, why, keep } => {
                self.amend_trouble(&book, subject.parse()?, &trouble, &why, keep)
            }
            Request::StrikeOut { book, subject, why } => {
                self.strike_out(book.parse()?, subject.parse()?, &why)
            }
            Request::WriteBought { book, bought } => self.write_bought(&book, &bought),
            Request::AmendBought { book, subject, bought, why } => {
                self.amend_bought(&book, subject.parse()?, &bought, &why)
            }
            Request::WriteMeasured { book, measured } => self.write_measured(book.parse()?, &measured),
            Request::NotePart { book, note } => self.note_part(book.parse()?, &note),
            Request::TiePaper { book, paper, line } => {
                self.tie_paper(book.parse()?, paper.parse()?, line.parse()?)
            }
            Request::ThrowAway { book, paper, why } => self.throw_away(book.parse()?, paper.parse()?, &why),
            Request::ChangePlan { book, item, change } => self.change_plan(&book, &item, &change),
            Request::HasAfterAll { book, item } => self.has_after_all(&book, &item),
            Request::SetViewerAddress { address } => self.set_viewer_address(address.as_deref()),
            Request::Demo => self.demo(),
            screen => Err(Refusal::new("request").with("reason", format!("{screen:?}"))),
        }
    }

    /// The time, and fresh randomness for an id.
    pub(crate) fn stamp(&self) -> Result<Stamp, Refusal> {
        let mut random = [0; 10];
        getrandom::fill(&mut random).map_err(|_| refuse::randomness())?;
        Ok(Stamp { now: self.clock.now(), random })
    }

    pub(crate) fn write(&mut self, book: BookId, change: Change) -> Result<WrittenView, Refusal> {
        let stamp = self.stamp()?;
        Ok(written(self.shelf.append(stamp, book, change)?))
    }

    /// Writes changes that belong together, all or none; answers their lines.
    pub(crate) fn write_all(
        &mut self,
        book: BookId,
        changes: Vec<Change>,
    ) -> Result<Vec<SubjectId>, Refusal> {
        let stamped = changes.into_iter().map(|change| Ok((self.stamp()?, change)));
        let stamped = stamped.collect::<Result<_, Refusal>>()?;
        Ok(self.shelf.append_all(book, stamped)?.into_iter().map(|written| written.subject).collect())
    }

    fn add_vehicle(&mut self, form: &VehicleForm) -> Result<WrittenView, Refusal> {
        let content =
            forms::vehicle(form, self.clock.today()).map_err(|refusal| refusal.within("vehicle"))?;
        // Everything is read before anything is written, so that a mistyped reading leaves no vehicle behind.
        let first = forms::first_reading(form, content.unit, self.clock.today())?;
        let warnings = forms::vehicle_warnings(&content);
        let stamp = self.stamp()?;
        let begun = self.shelf.begin(stamp, content)?;
        if let Some(reading) = first {
            self.write(begun.book, Change::Begin(Content::Reading(reading)))?;
        }
        Ok(WrittenView { warnings, ..written(begun) })
    }

    fn change_vehicle(&mut self, book: BookId, form: &VehicleForm) -> Result<WrittenView, Refusal> {
        let mut content =
            forms::vehicle(form, self.clock.today()).map_err(|refusal| refusal.within("vehicle"))?;
        keep_unknown_values(&mut content, self.shelf.vehicle(book)?)?;
        let warnings = forms::vehicle_warnings(&content);
        let changed = self.write(book, Change::ChangeVehicle(content))?;
        Ok(WrittenView { warnings, ..changed })
    }

    fn take_reading(&mut self, book: &str, form: &ReadingForm, keep: &Keep) -> Result<WrittenView, Refusal> {
        let car = self.car(book)?;
        let reading = self.read_reading(&car, &car.track, form, keep)?;
        self.write(car.book, Change::Begin(Content::Reading(reading)))
    }

    fn amend_reading(
        &mut self,
        book: &str,
        subject: SubjectId,
        form: &ReadingForm,
        why: &str,
        keep: &Keep,
    ) -> Result<WrittenView, Refusal> {
        let car = self.car(book)?;
        let reading = self.read_reading(&car, &car.track_without(subject), form, keep)?;
        let why = forms::note(why, "why")?;
        self.write(car.book, Change::Amend { subject, content: Content::Reading(reading), why })
    }

    fn read_reading(
        &self,
        car: &Car,
        track: &Track,
        form: &ReadingForm,
        keep: &Keep,
    ) -> Result<ReadingContent, Refusal> {
        let reading = forms::reading(form, &car.vehicle, self.clock.today(), keep);
        let reading = reading.map_err(|refusal| refusal.within("reading"))?;
        self.paper_lines(car.book, &reading.papers).map_err(|refusal| refusal.at("reading.papers"))?;
        ask_about(car, track, reading.facts(), keep).map_err(|refusal| refusal.at("reading.reading"))?;
        Ok(reading)
    }

    fn replace_instrument(
        &mut self,
        book: &str,
        day: &str,
        old: &str,
        new: &str,
    ) -> Result<WrittenView, Refusal> {
        let car = self.car(book)?;
        let day = forms::past_day(day, self.clock.today(), "day")?;
        let old = forms::reading_text(old, car.unit(), "old")?;
        let new = forms::reading_text(new, car.unit(), "new")?;
        let last = Reading { day, shown: old, status: OdometerStatus::Actual };
        if let Plausibility::Lower { than, on } = car.track.plausibility(last) {
            let than = forms::shown(than, car.unit());
            return Err(Refusal::new("instrument-order").with("than", than).with("on", on).at("old"));
        }
        self.write(car.book, Change::Begin(Content::Instrument(InstrumentContent { day, old, new })))
    }

    fn record_visit(&mut self, book: &str, form: &VisitForm, keep: bool) -> Result<WrittenView, Refusal> {
        let car = self.car(book)?;
        let visit = self.read_visit(&car, &car.track, form, keep)?;
        let warnings = part_warnings(&car, &visit.parts);
        let written = self.write(car.book, Change::Begin(Content::Visit(visit)))?;
        Ok(WrittenView { warnings, ..written })
    }

    fn amend_visit(
        &mut self,
        book: &str,
        subject: SubjectId,
        form: &VisitForm,
        why: &str,
        keep: bool,
    ) -> Result<WrittenView, Refusal> {
        let car = self.car(book)?;
        let visit = self.read_visit(&car, &car.track_without(subject), form, keep)?;
        let why = forms::note(why, "why")?;
        let warnings = part_warnings(&car, &visit.parts);
        let written = self.write(car.book, Change::Amend { subject, content: Content::Visit(visit), why })?;
        Ok(WrittenView { warnings, ..written })
    }

    fn read_visit(
        &self,
        car: &Car,
        track: &Track,
        form: &VisitForm,
        keep: bool,
    ) -> Result<VisitContent, Refusal> {
        let visit = forms::visit(form, self.catalogue, car.unit(), self.clock.today());
        let visit = visit.map_err(|refusal| refusal.within("visit"))?;
        self.paper_lines(car.book, &visit.papers).map_err(|refusal| refusal.at("visit.papers"))?;
        if let Some(shown) = visit.shown {
            let reading = Reading { day: visit.day, shown, status: OdometerStatus::Actual };
            ask_about(car, track, reading, &keep.into()).map_err(|refusal| refusal.at("visit.reading"))?;
        }
        Ok(visit)
    }

    fn paper_lines(&self, book: BookId, papers: &[SubjectId]) -> Result<(), Refusal> {
        papers.iter().try_for_each(|paper| self.paper_line(book, *paper))
    }

    /// A paper can belong to a line as long as it has not been thrown away.
    fn paper_line(&self, book: BookId, paper: SubjectId) -> Result<(), Refusal> {
        let line = self.shelf.line(book, paper)?;
        match line.content.kind() {
            ContentKind::Paper if line.struck.is_none() => Ok(()),
            ContentKind::Paper => Err(Refusal::new("struck")),
            _ => Err(Refusal::new("other-kind")),
        }
    }

    fn strike_out(&mut self, book: BookId, subject: SubjectId, why: &str) -> Result<WrittenView, Refusal> {
        // A struck line stays readable, and a paper without its photo does not; so that goes by a name of its own.
        if self.shelf.line(book, subject)?.content.kind() == ContentKind::Paper {
            return Err(Refusal::new("paper-not-struck"));
        }
        self.write(book, Change::StrikeOut { subject, why: forms::note(why, "why")? })
    }

    fn write_measured(&mut self, book: BookId, form: &MeasuredForm) -> Result<WrittenView, Refusal> {
        let measured = forms::measured(form, self.clock.today());
        let measured = measured.map_err(|refusal| refusal.within("measured"))?;
        self.write(book, Change::Begin(Content::Measured(measured)))
    }

    fn tie_paper(&mut self, book: BookId, paper: SubjectId, line: SubjectId) -> Result<WrittenView, Refusal> {
        self.paper_line(book, paper)?;
        if self.shelf.is_tied(book, paper)? {
            return Err(Refusal::new("paper-tied"));
        }
        let mut content = self.shelf.line(book, line)?.content;
        content.papers_mut().ok_or_else(|| Refusal::new("other-kind"))?.push(paper);
        self.write(book, Change::Amend { subject: line, content, why: String::new() })
    }

    fn change_plan(
        &mut self,
        book: &str,
        item: &crate::ItemForm,
        form: &PlanForm,
    ) -> Result<WrittenView, Refusal> {
        let car = self.car(book)?;
        let today = self.clock.today();
        let change = forms::plan(item, form, self.catalogue, today)?;
        let is_day = matches!(change.setting, Setting::Pinned(Some(_)));
        if is_day && !car.due(today).iter().any(|line| line.item == change.item && line.is_visited()) {
            return Err(Refusal::new("item-not-planned").at("item"));
        }
        self.write(car.book, Change::Begin(Content::Plan(PlanContent(change))))
    }

    /// Says of everything that an item is for, and the car was said to lack, that it has it.
    fn has_after_all(&mut self, book: &str, item: &crate::ItemForm) -> Result<WrittenView, Refusal> {
        let car = self.car(book)?;
        let item = forms::item(item, self.catalogue).map_err(|refusal| refusal.at("item"))?;
        let equipment = car.vehicle.equipment;
        let missing = self.catalogue.row(&item).and_then(|row| row.missing(car.vehicle.engine, equipment));
        let lacks = match missing {
            None => return Err(Refusal::new("item-not-missing").at("item")),
            Some(Missing::Engine) => return Err(Refusal::new("item-other-engine").at("item")),
            Some(Missing::Fittings(fittings)) => fittings,
        };
        let equipment = lacks.into_iter().fold(equipment, |has, fitting| has.with(fitting, Some(true)));
        self.write(car.book, Change::ChangeVehicle(VehicleContent { equipment, ..car.content.clone() }))
    }
}

/// The book in which a request writes. Striking a line out is not among them, because that takes a handover back; the
/// book itself tells one line from another.
fn written_in(request: &Request) -> Option<&str> {
    match request {
        Request::ChangeVehicle { book, .. }
        | Request::TakeReading { book, .. }
        | Request::ReplaceInstrument { book, .. }
        | Request::RecordVisit { book, .. }
        | Request::AmendReading { book, .. }
        | Request::AmendVisit { book, .. }
        | Request::WriteTrouble { book, .. }
        | Request::AmendTrouble { book, .. }
        | Request::WriteBought { book, .. }
        | Request::AmendBought { book, .. }
        | Request::WriteMeasured { book, .. }
        | Request::NotePart { book, .. }
        | Request::TiePaper { book, .. }
        | Request::ThrowAway { book, .. }
        | Request::ChangePlan { book, .. }
        | Request::HasAfterAll { book, .. } => Some(book),
        _ => None,
    }
}

impl Car {
    /// Its track as if one line did not count, for a reading that is about to take that line's place.
    fn track_without(&self, subject: SubjectId) -> Track {
        let others = self.readings.iter().filter(|row| row.subject != subject);
        let readings: Vec<Reading> = others.map(|row| row.reading).collect();
        Track::new(&self.vehicle, &readings, &self.instruments)
    }
}

/// A form names values by key, so it cannot hold one that this version does not know; such a one stays as it is.
fn keep_unknown_values(content: &mut VehicleContent, before: VehicleContent) -> Result<(), Refusal> {
    let library = Guides::shipped()?;
    content.values.extend(before.values.into_iter().filter(|(number, _)| library.value(*number).is_none()));
    Ok(())
}

fn written(written: Written) -> WrittenView {
    WrittenView { book: written.book.to_string(), subject: written.subject.to_string(), warnings: Vec::new() }
}

/// Asks once about a reading that can hardly be; `keep` says what the owner has been asked.
pub(crate) fn ask_about(car: &Car, track: &Track, reading: Reading, keep: &Keep) -> Result<(), Refusal> {
    let shown = |distance: Distance| forms::shown(distance, car.unit());
    let about = |code: &str| Refusal::new(code).with("reading", shown(reading.shown));
    let compared = |code: &str, than: Distance, on: Day| about(code).with("than", shown(than)).with("on", on);
    let question = match track.plausibility(reading) {
        Plausibility::Fine => return Ok(()),
        Plausibility::Lower { than, on } => compared("reading-lower", than, on),
        Plausibility::Higher { than, on } => compared("reading-higher", than, on),
        Plausibility::TooFast { per_day, from, to } => {
            about("reading-too-fast").with("per-day", shown(per_day)).with("from", from).with("to", to)
        }
    };
    keep.ask(question)
}
