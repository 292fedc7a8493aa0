//! The Book: its lines, and one line with its versions.

use std::collections::{BTreeMap, BTreeSet};

use book::content::{
    BoughtContent, Came, Content, Mark, PaperContent, PartContent, PartNoteContent, PlanContent,
    TroubleContent, VehicleContent, VisitContent,
};
use book::{LineRow, PaperRow, VersionRow};
use rules::fuel::FuelKind;
use rules::guides::Guides;
use rules::upkeep::{ItemRef, Setting};
use rules::vehicle::{Conditions, Equipment, Fitting, Vehicle};
use units::{BookId, Day, DistanceUnit, SubjectId};

use super::due::interval_view;
use super::places::{fingerprint, vehicle_line};
use super::show::{
    engine_key, found_view, fuel_view, item_view, measured_value_view, money_view, paper_view, part_view,
    reading_of, status_key,
};
use super::trouble::trouble_form;
use crate::clock::day_of;
use crate::{
    BookLine, Door, DrivenForm, LineContent, LineFilter, LineView, LinesView, NumberForm, PaperView,
    PartNoteForm, Refusal, VehicleForm, VersionView,
};

impl Door {
    pub(crate) fn lines_view(&self, book: &str, filter: &LineFilter) -> Result<LinesView, Refusal> {
        let car = self.car(book)?;
        let show = self.show(car.book, &car.vehicle)?;
        let wanted = self.shelf.lines(car.book, &row_filter(filter)?)?;
        let text =
            filter.text.as_deref().map(str::trim).filter(|text| !text.is_empty()).map(str::to_lowercase);
        let found = wanted.iter().filter(|row| text.as_ref().is_none_or(|text| says(row, text)));
        let all_days = self.shelf.days(car.book)?;
        let years: BTreeSet<i32> = all_days.iter().map(|day| day.ymd().0).collect();
        let items: BTreeSet<&ItemRef> = car.done.iter().map(|row| &row.item).collect();
        Ok(LinesView {
            vehicle: vehicle_line(&car),
            lines: found.filter(|row| !show.is_tied(row)).map(|row| show.line(row)).collect(),
            years: years.into_iter().rev().collect(),
            items: items.into_iter().map(|item| item_view(item, self.catalogue)).collect(),
            entries: self.shelf.count(car.book)?,
            newer: self.shelf.newer(car.book)?.len(),
            writers: self.writers(car.book)?,
        })
    }

    pub(crate) fn line_view(&self, book: &str, subject: &str) -> Result<LineView, Refusal> {
        let book: BookId = book.parse()?;
        let subject: SubjectId = subject.parse()?;
        let show = self.show(book, &self.shelf.vehicle(book)?.facts())?;
        let row = self.shelf.line(book, subject)?;
        let versions = self.shelf.versions(book, subject)?;
        let versions = versions.iter().filter_map(|version| show.version(version, subject)).collect();
        Ok(LineView { line: show.line(&row), versions })
    }

    fn show(&self, book: BookId, vehicle: &Vehicle) -> Result<Show<'_>, Refusal> {
        let papers = self.shelf.papers(book)?.into_iter().map(|paper| (paper.subject, paper)).collect();
        let tied = self.shelf.tied(book)?;
        let own = FuelKind::own(vehicle.engine);
        let handovers = self.shelf.handovers(book)?.into_iter();
        let handed_by = handovers.map(|row| (row.subject, fingerprint(row.writer))).collect();
        Ok(Show { door: self, unit: vehicle.unit, own, papers, tied, handed_by })
    }
}

fn row_filter(filter: &LineFilter) -> Result<book::LineFilter, Refusal> {
    let (from, to) = match filter.year {
        Some(year) => (Some(Day::from_ymd(year, 1, 1)?), Some(Day::from_ymd(year, 12, 31)?)),
        None => (None, None),
    };
    Ok(book::LineFilter { from, to, item: filter.item.map(ItemRef::Catalogue) })
}

/// Whether a text stands anywhere in what a line says.
fn says(row: &LineRow, text: &str) -> bool {
    let contains = |candidate: &str| candidate.to_lowercase().contains(text);
    let part = |part: &PartContent| contains(&part.name) || contains(&part.maker) || contains(&part.number);
    match &row.content {
        Content::Visit(visit) => {
            let own = |item: &ItemRef| matches!(item, ItemRef::Own(name) if contains(name.as_str()));
            contains(visit.by.workshop())
                || contains(&visit.note)
                || visit.items.iter().any(own)
                || visit.parts.iter().any(part)
        }
        Content::Bought(bought) => {
            contains(&bought.shop) || contains(&bought.note) || bought.parts.iter().any(part)
        }
        Content::PartNote(note) => {
            let same = note.same.iter().any(|same| contains(&same.maker) || contains(&same.number));
            contains(&note.number) || contains(&note.maker) || contains(&note.note) || same
        }
        Content::Trouble(trouble) => texts_of(trouble).any(contains),
        Content::Handover(handover) => contains(&handover.words),
        Content::Vehicle(vehicle) => contains(&vehicle.name) || contains(&vehicle.make_model),
        Content::Reading(_)
        | Content::Instrument(_)
        | Content::Paper(_)
        | Content::Plan(_)
        | Content::Measured(_) => false,
    }
}

/// What the owner wrote of a trouble, and what was read from a scan tool.
fn texts_of(trouble: &TroubleContent) -> impl Iterator<Item = &str> {
    let own = [&trouble.words, &trouble.when, &trouble.asked];
    own.into_iter().chain(trouble.scans.iter().map(|scan| &scan.text)).map(String::as_str)
}

/// What is needed to show the lines of one book.
struct Show<'a> {
    door: &'a Door,
    unit: DistanceUnit,
    /// The car's own fuel.
    own: FuelKind,
    papers: BTreeMap<SubjectId, PaperRow>,
    tied: BTreeSet<SubjectId>,
    /// The fingerprints of those who handed the book over, by their lines.
    handed_by: BTreeMap<SubjectId, String>,
}

impl Show<'_> {
    /// A paper that belongs to a line is shown with it and has no line of its own.
    fn is_tied(&self, row: &LineRow) -> bool {
        matches!(row.content, Content::Paper(_)) && self.tied.contains(&row.subject)
    }

    fn line(&self, row: &LineRow) -> BookLine {
        BookLine {
            subject: row.subject.to_string(),
            day: row.day.to_string(),
            reading: row.content.shown().map(|shown| reading_of(shown, self.unit)),
            says: self.content(&row.content, row.subject, row.written),
            written: day_of(row.written).to_string(),
            amended: usize::try_from(row.amended).unwrap_or(usize::MAX),
            struck: row.struck.clone(),
        }
    }

    /// A version, unless it only strikes the line out, which the line itself says.
    fn version(&self, row: &VersionRow, subject: SubjectId) -> Option<VersionView> {
        let content = row.content.as_ref()?;
        Some(VersionView {
            written: day_of(row.written).to_string(),
            why: row.why.clone(),
            day: content.day().unwrap_or_else(|| day_of(row.written)).to_string(),
            reading: content.shown().map(|shown| reading_of(shown, self.unit)),
            says: self.content(content, subject, row.written),
            hash: row.hash.to_string(),
        })
    }

    fn content(&self, content: &Content, subject: SubjectId, written: u64) -> LineContent {
        match content {
            Content::Vehicle(vehicle) => LineContent::Vehicle { vehicle: vehicle_form(vehicle) },
            Content::Reading(reading) => LineContent::Reading {
                status: status_key(reading.status).to_owned(),
                fuel: reading.fuel.as_ref().map(|fuel| fuel_view(fuel, self.own)),
                papers: self.papers(&reading.papers),
            },
            Content::Instrument(instrument) => LineContent::Instrument {
                old: reading_of(instrument.old, self.unit),
                new: reading_of(instrument.new, self.unit),
            },
            Content::Visit(visit) => self.visit(visit),
            Content::Paper(paper) => {
                LineContent::Paper { paper: paper_view(&paper_row(paper, subject, written)) }
            }
            Content::Plan(plan) => self.plan(plan),
            Content::Bought(bought) => self.bought(bought),
            Content::PartNote(note) => LineContent::PartNote { note: part_note_form(note) },
            Content::Measured(measured) => LineContent::Measured {
                values: measured.values.iter().map(measured_value_view).collect(),
                pasted: measured.came == Came::Pasted,
            },
            Content::Trouble(trouble) => {
                LineContent::Trouble { trouble: Box::new(trouble_form(trouble, self.unit)) }
            }
            Content::Handover(handover) => LineContent::Handover {
                words: handover.words.clone(),
                papers: handover.papers,
                by: self.handed_by.get(&subject).cloned().unwrap_or_default(),
            },
        }
    }

    fn papers(&self, papers: &[SubjectId]) -> Vec<PaperView> {
        papers.iter().filter_map(|paper| self.papers.get(paper)).map(paper_view).collect()
    }

    fn bought(&self, bought: &BoughtContent) -> LineContent {
        LineContent::Bought {
            shop: bought.shop.clone(),
            parts: bought.parts.iter().map(|part| part_view(part, self.door.catalogue)).collect(),
            cost: bought.cost.map(money_view),
            note: bought.note.clone(),
            papers: self.papers(&bought.papers),
        }
    }

    fn visit(&self, visit: &VisitContent) -> LineContent {
        let catalogue = self.door.catalogue;
        LineContent::Visit {
            workshop: visit.by.workshop().to_owned(),
            items: visit.items.iter().map(|item| item_view(item, catalogue)).collect(),
            parts: visit.parts.iter().map(|part| part_view(part, catalogue)).collect(),
            cost: visit.cost.map(money_view),
            note: visit.note.clone(),
            papers: self.papers(&visit.papers),
            found: visit.found.iter().map(|found| found_view(found, catalogue)).collect(),
        }
    }

    fn plan(&self, plan: &PlanContent) -> LineContent {
        let (to, schedule, day) = match plan.0.setting {
            Setting::Catalogue => ("catalogue", None, None),
            Setting::Off => ("off", None, None),
            Setting::Interval(schedule) | Setting::Own(schedule, _) => ("handbook", Some(schedule), None),
            Setting::Pinned(Some(pin)) => ("day", None, Some(pin.day)),
            Setting::Pinned(None) => ("any-day", None, None),
        };
        LineContent::Plan {
            item: item_view(&plan.0.item, self.door.catalogue),
            to: to.to_owned(),
            day: day.map(|day| day.to_string()),
            then: schedule.map(|schedule| interval_view(schedule.every)),
            first: schedule.and_then(|schedule| schedule.first).map(interval_view),
        }
    }
}

fn part_note_form(note: &PartNoteContent) -> PartNoteForm {
    let same = note.same.iter();
    PartNoteForm {
        number: note.number.clone(),
        maker: note.maker.clone(),
        same: same
            .map(|same| NumberForm { maker: same.maker.clone(), number: same.number.clone() })
            .collect(),
        mark: note.mark.map_or("", mark_key).to_owned(),
        instead: note.instead.clone(),
        note: note.note.clone(),
    }
}

/// The key of what warns of a part.
pub(super) const fn mark_key(mark: Mark) -> &'static str {
    match mark {
        Mark::Wrong => "wrong",
        Mark::Superseded => "superseded",
    }
}

fn paper_row(paper: &PaperContent, subject: SubjectId, filed: u64) -> PaperRow {
    PaperRow {
        subject,
        photo: paper.photo,
        width: paper.width,
        height: paper.height,
        filed,
        whole: paper.whole,
        page: paper.page,
    }
}

/// All that is known of a vehicle, as a form can take it back.
pub(super) fn vehicle_form(vehicle: &VehicleContent) -> VehicleForm {
    let yearly = vehicle.yearly.map(|yearly| yearly.round(vehicle.unit).to_string());
    VehicleForm {
        name: vehicle.name.clone(),
        make_model: vehicle.make_model.clone(),
        vin: vehicle.vin.map(|vin| vin.to_string()).unwrap_or_default(),
        engine: engine_key(vehicle.engine).to_owned(),
        unit: vehicle.unit.symbol().to_owned(),
        first_use: vehicle.first_use.map(|day| day.to_string()).unwrap_or_default(),
        bought_new: vehicle.from_new,
        yearly: yearly.unwrap_or_default(),
        driven: driven_form(vehicle.conditions),
        fitted: fitted_form(vehicle.equipment),
        values: values_form(&vehicle.values),
        reading: String::new(),
    }
}

/// The numbers of the car by the keys of the values; one that this version does not know has no key.
fn values_form(values: &BTreeMap<u32, String>) -> BTreeMap<String, String> {
    let library = Guides::shipped().ok();
    let named = |(number, text): (&u32, &String)| Some((library?.value(*number)?.key.clone(), text.clone()));
    values.iter().filter_map(named).collect()
}

fn fitted_form(equipment: Equipment) -> BTreeMap<String, bool> {
    let said = |fitting: Fitting| Some((fitting.key().to_owned(), equipment.said(fitting)?));
    Fitting::ALL.into_iter().filter_map(said).collect()
}

pub(super) const fn driven_form(conditions: Conditions) -> DrivenForm {
    DrivenForm {
        short_trips: conditions.short_trips,
        towing: conditions.towing,
        dust: conditions.dust,
        standing: conditions.standing_traffic,
    }
}
