//! One vehicle as the rules see it: loaded once, and asked by every screen.

use std::collections::BTreeMap;
use std::fmt;
use std::sync::{Arc, OnceLock};

use book::content::{
    BoughtContent, Content, ContentKind, PartContent, PartNoteContent, VehicleContent, VisitContent,
};
use book::{DoneRow, HandoverRow, ReadingRow};
use rules::costs::Prices;
use rules::fuel::FuelKind;
use rules::running::{Instrument, Pace, Reading, Track, Travelled};
use rules::upkeep::{Done, DueLine, Facts, Found, HandedOn, ItemRef, Plan, PlanChange, due, handed_on};
use rules::vehicle::Vehicle;
use units::{BookId, Day, Distance, DistanceUnit, SubjectId, WriterKey};

use crate::clock::day_of;
use crate::{Door, Refusal};

/// A vehicle with everything that is worked out from its book.
pub(crate) struct Car {
    pub book: BookId,
    pub content: VehicleContent,
    pub vehicle: Vehicle,
    pub readings: Vec<ReadingRow>,
    pub instruments: Vec<Instrument>,
    pub done: Vec<DoneRow>,
    /// The visits that count, oldest first; those of one day in the order of writing.
    pub visits: Vec<Visit>,
    /// What was bought to be fitted later, oldest first.
    pub bought: Vec<Purchase>,
    /// The notes on parts, in the order of writing.
    pub part_notes: Vec<PartNoteContent>,
    pub plan: Plan<'static>,
    pub track: Track,
    pub pace: Pace,
    /// The day on which this device handed the book over, since when it is read-only here.
    pub handed_over: Option<Day>,
    /// What an earlier owner had switched off and nobody has settled since: it counts again.
    pub left_off: Vec<LeftOff>,
    /// The track without what was mistyped: what is due is counted on this one.
    believed: Track,
    done_facts: Vec<Done>,
    found: Vec<Found>,
    /// What each item cost, once someone has asked: [`Car::prices`].
    pub priced: OnceLock<Prices>,
}

/// Something that an earlier owner had switched off.
pub(crate) struct LeftOff {
    pub item: ItemRef,
    /// By whom, and when.
    pub writer: WriterKey,
    pub day: Day,
    /// The day that the last handover names.
    pub handed_over: Day,
}

/// What was bought, and its line.
pub(crate) struct Purchase {
    pub subject: SubjectId,
    pub content: BoughtContent,
}

/// A visit that counts, and its line.
pub(crate) struct Visit {
    pub subject: SubjectId,
    pub content: VisitContent,
    pub written: u64,
    pub amended: bool,
}

/// The cars that have been loaded, for as long as nothing is written.
#[derive(Default)]
pub(crate) struct Cars {
    /// [`book::Shelf::changes`] when they were.
    changes: u64,
    of_book: BTreeMap<BookId, Arc<Car>>,
}

impl Cars {
    fn get(&self, book: BookId, changes: u64) -> Option<Arc<Car>> {
        self.of_book.get(&book).filter(|_| self.changes == changes).cloned()
    }

    fn keep(&mut self, car: &Arc<Car>, changes: u64) {
        if self.changes != changes {
            *self = Cars { changes, of_book: BTreeMap::new() };
        }
        self.of_book.insert(car.book, Arc::clone(car));
    }
}

impl fmt::Debug for Cars {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_set().entries(self.of_book.keys()).finish()
    }
}

impl Door {
    /// The vehicle of this book.
    pub(crate) fn car(&self, book: &str) -> Result<Arc<Car>, Refusal> {
        self.car_of(book.parse()?)
    }

    pub(crate) fn car_of(&self, book: BookId) -> Result<Arc<Car>, Refusal> {
        let changes = self.shelf.changes();
        if let Some(car) = self.cars.borrow().get(book, changes) {
            return Ok(car);
        }
        let car = Arc::new(self.load(book)?);
        self.cars.borrow_mut().keep(&car, changes);
        Ok(car)
    }

    fn load(&self, book: BookId) -> Result<Car, Refusal> {
        let content = self.shelf.vehicle(book)?;
        let begun = self.shelf.lines_of(book, ContentKind::Vehicle)?;
        let kept_since = begun.first().map(|line| day_of(line.written));
        let vehicle = Vehicle { kept_since, ..content.facts() };
        let readings = self.shelf.readings(book)?;
        let instruments = self.instruments(book)?;
        let facts: Vec<Reading> = readings.iter().map(|row| row.reading).collect();
        let track = Track::new(&vehicle, &facts, &instruments);
        let pace = Pace::new(&vehicle, &track);
        let believed = track.believed();
        let handovers = self.shelf.handovers(book)?;
        let last_handover = handovers.iter().rfind(|row| row.struck.is_none());
        let (changes, left_off) = self.plan_changes(book, last_handover)?;
        let plan = Plan::new(self.catalogue, &vehicle, &changes);
        let done = self.shelf.done(book)?;
        let visits = self.visits(book)?;
        let bought = self.bought(book)?;
        let part_notes = self.part_notes(book)?;
        let own = self.shelf.writer().key();
        let handed_over = last_handover.filter(|row| row.writer == own).map(|row| row.content.day);
        let by_line: BTreeMap<SubjectId, &Visit> =
            visits.iter().map(|visit| (visit.subject, visit)).collect();
        let done_facts = done.iter().map(|row| done_at(row, &by_line, &track)).collect();
        let found = visits.iter().flat_map(|visit| found_at(visit, &track)).collect();
        Ok(Car {
            book,
            content,
            vehicle,
            readings,
            instruments,
            done,
            visits,
            bought,
            part_notes,
            plan,
            track,
            pace,
            handed_over,
            left_off,
            believed,
            done_facts,
            found,
            priced: OnceLock::new(),
        })
    }

    fn instruments(&self, book: BookId) -> Result<Vec<Instrument>, Refusal> {
        let lines = self.shelf.lines_of(book, ContentKind::Instrument)?;
        let instruments = lines.iter().filter_map(|line| match &line.content {
            Content::Instrument(instrument) => Some(instrument.facts()),
            _ => None,
        });
        Ok(instruments.collect())
    }

    fn bought(&self, book: BookId) -> Result<Vec<Purchase>, Refusal> {
        let lines = self.shelf.lines_of(book, ContentKind::Bought)?;
        let bought = lines.into_iter().filter_map(|line| match line.content {
            Content::Bought(content) => Some(Purchase { subject: line.subject, content }),
            _ => None,
        });
        let mut bought: Vec<_> = bought.collect();
        bought.sort_by_key(|purchase| purchase.content.day);
        Ok(bought)
    }

    fn part_notes(&self, book: BookId) -> Result<Vec<PartNoteContent>, Refusal> {
        let lines = self.shelf.lines_of(book, ContentKind::PartNote)?;
        let notes = lines.into_iter().filter_map(|line| match line.content {
            Content::PartNote(note) => Some(note),
            _ => None,
        });
        Ok(notes.collect())
    }

    /// The changes of the plan that hold after the last handover, and what an earlier owner had switched off.
    fn plan_changes(
        &self,
        book: BookId,
        handover: Option<&HandoverRow>,
    ) -> Result<(Vec<PlanChange>, Vec<LeftOff>), Refusal> {
        let lines = self.shelf.lines_of(book, ContentKind::Plan)?;
        let changes = lines.iter().filter_map(|line| match &line.content {
            Content::Plan(plan) => Some(plan.0.clone()),
            _ => None,
        });
        let changes: Vec<PlanChange> = changes.collect();
        let Some(handover) = handover else { return Ok((changes, Vec::new())) };
        let at = (handover.written, handover.writer);
        let before = lines.partition_point(|line| (line.written, line.writer) <= at);
        let HandedOn { holding, switched_off } = handed_on(&changes, before);
        let left_off = switched_off.into_iter().map(|at| LeftOff {
            item: changes[at].item.clone(),
            writer: lines[at].writer,
            day: day_of(lines[at].written),
            handed_over: handover.content.day,
        });
        Ok((holding, left_off.collect()))
    }

    fn visits(&self, book: BookId) -> Result<Vec<Visit>, Refusal> {
        let lines = self.shelf.lines_of(book, ContentKind::Visit)?;
        let visits = lines.into_iter().filter_map(|line| match line.content {
            Content::Visit(content) => Some(Visit {
                subject: line.subject,
                content,
                written: line.written,
                amended: line.amended > 0,
            }),
            _ => None,
        });
        let mut visits: Vec<_> = visits.collect();
        visits.sort_by_key(|visit| visit.content.day);
        Ok(visits)
    }
}

impl Purchase {
    /// Whether it says what all of it cost.
    pub fn is_priced(&self) -> bool {
        self.content.cost.is_some()
    }
}

impl Visit {
    /// The parts that served this item, as far as someone said so.
    pub fn parts_for<'a>(&'a self, item: &'a ItemRef) -> impl Iterator<Item = &'a PartContent> {
        self.content.parts.iter().filter(move |part| part.item.as_ref() == Some(item))
    }

    /// How far the car had gone, if the odometer was read.
    pub fn travelled(&self, track: &Track) -> Option<Travelled> {
        self.content.shown.map(|shown| track.travelled(self.content.day, shown))
    }
}

impl Car {
    /// The unit of its instrument.
    pub fn unit(&self) -> DistanceUnit {
        self.vehicle.unit
    }

    /// Its own fuel.
    pub fn own_fuel(&self) -> FuelKind {
        FuelKind::own(self.vehicle.engine)
    }

    /// Its track without the recent readings that cannot be right.
    pub fn believed(&self) -> &Track {
        &self.believed
    }

    /// How every item of the plan stands, most pressing first.
    pub fn due(&self, today: Day) -> Vec<DueLine> {
        due(&self.facts(today))
    }

    /// What everything due and planned is worked out from.
    pub fn facts(&self, today: Day) -> Facts<'_> {
        Facts {
            vehicle: &self.vehicle,
            plan: &self.plan,
            done: &self.done_facts,
            found: &self.found,
            track: &self.believed,
            pace: &self.pace,
            today,
        }
    }

    /// The newest reading that counts, as its instrument showed it.
    pub fn last_reading(&self) -> Option<(Day, Distance)> {
        self.track.points().last().map(|point| (point.day, point.shown))
    }

    /// What the instrument of that day showed or will have shown: read, between two readings, or the last one
    /// before it.
    pub fn shown_on(&self, day: Day) -> Option<Distance> {
        let points = self.track.points();
        let next = points.partition_point(|point| point.day <= day);
        let point = points.get(next.saturating_sub(1))?;
        let between = self.track.on(day).filter(|_| point.day < day);
        Some(between.map_or(point.shown, |travelled| self.track.shown_on(day, travelled)))
    }

    /// The digits at the head of the last reading that the next one is likely to begin with, and how many
    /// digits a reading has.
    pub fn leading(&self, today: Day) -> (String, usize) {
        let Some((_, last)) = self.last_reading() else {
            return (String::new(), 6);
        };
        let last = last.floor(self.unit()).to_string();
        let high = self
            .pace
            .on(today)
            .map(|estimate| self.track.shown(estimate.high).floor(self.unit()).to_string());
        let high = high.unwrap_or_else(|| last.clone());
        let same = last.len() == high.len();
        let shared = last.bytes().zip(high.bytes()).take_while(|(a, b)| a == b).count();
        // At least the last three digits are always typed, or a glance would confirm what nobody read.
        let leading = if same { shared.min(last.len().saturating_sub(3)) } else { 0 };
        (last[..leading].to_owned(), high.len())
    }
}

fn done_at(row: &DoneRow, visits: &BTreeMap<SubjectId, &Visit>, track: &Track) -> Done {
    let visit = visits.get(&row.visit);
    Done {
        item: row.item.clone(),
        day: row.day,
        travelled: row.shown.and_then(|shown| track.counted(row.day, shown)),
        kind: visit.and_then(|visit| visit.parts_for(&row.item).find_map(|part| part.kind.clone())),
    }
}

fn found_at<'a>(visit: &'a Visit, track: &'a Track) -> impl Iterator<Item = Found> + 'a {
    let content = &visit.content;
    content.found.iter().map(|found| Found {
        item: found.item.clone(),
        day: content.day,
        travelled: content.shown.and_then(|shown| track.counted(content.day, shown)),
        finding: found.finding,
        value: found.value,
    })
}

#[cfg(test)]
#[path = "car_tests.rs"]
mod tests;
