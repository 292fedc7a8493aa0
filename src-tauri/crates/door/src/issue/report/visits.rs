//! The visits of a report, line by line, with the small photos of their receipts.

use std::collections::BTreeMap;

use book::content::{Content, FoundContent, PartContent};
use book::{LineRow, PaperRow};
use card::{REPORT_PHOTOS_MAX, ReportPart, ReportPhoto, ReportVisit, Thumbnail};
use units::{Hash, SubjectId};
use words::{Arg, Words};

use super::super::claims::{flags, item};
use super::super::numbers::{decimal, money, reading};
use super::super::sheet::{item_name, marks, who};
use super::listed;
use crate::car::{Car, Visit};
use crate::screens::{found_view, measure_key};
use crate::{Door, PhotoSize, Refusal, ReportOptions};

/// A visit as it stands in the book.
pub(super) struct Line {
    visit: Visit,
    /// Why it is struck out, in the owner's words, which may be empty; nothing where it counts.
    struck: Option<String>,
}

impl Line {
    /// A line that is a visit.
    pub fn of(row: LineRow) -> Option<Line> {
        let Content::Visit(content) = row.content else { return None };
        let (subject, written, amended) = (row.subject, row.written, row.amended > 0);
        Some(Line { visit: Visit { subject, content, written, amended }, struck: row.struck })
    }

    pub fn year(&self) -> i32 {
        self.visit.content.day.ymd().0
    }
}

/// What the visits are told from, and the photos that they have taken so far.
pub(super) struct Visits<'a> {
    door: &'a Door,
    car: &'a Car,
    words: &'a Words,
    options: &'a ReportOptions,
    papers: BTreeMap<SubjectId, PaperRow>,
    photos: Vec<Thumbnail>,
    /// Where each photo stands among them, since two papers may have the same one.
    places: BTreeMap<Hash, usize>,
    struck: usize,
    papers_seen: usize,
    too_many: bool,
}

impl<'a> Visits<'a> {
    pub fn new(
        door: &'a Door,
        car: &'a Car,
        words: &'a Words,
        options: &'a ReportOptions,
    ) -> Result<Visits<'a>, Refusal> {
        let papers = door.shelf.papers(car.book)?.into_iter().map(|paper| (paper.subject, paper)).collect();
        let (photos, places) = (Vec::new(), BTreeMap::new());
        Ok(Visits {
            door,
            car,
            words,
            options,
            papers,
            photos,
            places,
            struck: 0,
            papers_seen: 0,
            too_many: false,
        })
    }

    /// What there is to say of all of them, and their photos.
    pub fn finish(self) -> (Vec<String>, Vec<Thumbnail>) {
        let words = self.words;
        let struck = || words.say("report-struck-count", &[("count", self.struck.into())]);
        let why = if self.options.is_private() { "private" } else { "no" };
        let without = || words.say("report-without-photos", &[("why", why.into())]);
        let small = || words.say("report-photos-small", &[]);
        let most = || words.say("report-photos-most", &[("most", REPORT_PHOTOS_MAX.into())]);
        let notes = [
            (self.struck > 0).then(struck),
            (self.papers_seen > 0 && !self.shows_photos()).then(without),
            (!self.photos.is_empty() && !self.options.prices).then(small),
            self.too_many.then(most),
        ];
        (notes.into_iter().flatten().collect(), self.photos)
    }

    /// Photos of receipts bear names and numbers, so that they go where those are left out.
    fn shows_photos(&self) -> bool {
        !self.options.without_receipts && !self.options.is_private()
    }

    pub fn line(&mut self, Line { visit, struck }: &Line) -> ReportVisit {
        let content = &visit.content;
        let cost = content.cost.filter(|_| self.options.prices);
        let shown = content.shown.map(|shown| shown.floor(self.car.unit()));
        let items = content.items.iter().map(|done| item_name(&item(done), self.door.catalogue, self.words));
        let items = items.collect();
        let (photos, missing) = self.photos_of(visit);
        self.struck += usize::from(struck.is_some());
        ReportVisit {
            day: content.day.to_string(),
            reading: shown.map(|count| reading(count, Some(self.car.unit()))).unwrap_or_default(),
            who: who(visit, self.options.hide_names, self.words),
            cost: cost.map(|cost| money(cost, self.words)),
            items,
            marks: marks(flags(visit)),
            struck: struck.as_ref().map(|why| self.struck(why)),
            parts: content.parts.iter().map(|part| self.part(part)).collect(),
            lines: self.lines(visit, missing),
            photos,
        }
    }

    fn struck(&self, why: &str) -> String {
        if why.is_empty() {
            self.words.say("report-struck", &[])
        } else {
            self.words.say("report-struck-why", &[("why", why.into())])
        }
    }

    fn part(&self, part: &PartContent) -> ReportPart {
        let served =
            || part.item.as_ref().map(|done| item_name(&item(done), self.door.catalogue, self.words));
        let name = if part.name.is_empty() { served().unwrap_or_default() } else { part.name.clone() };
        let amount = [("amount", Arg::from(decimal(&part.quantity.number(), self.words)))];
        ReportPart {
            name: self.with_kind(name, part.kind.as_deref()),
            number: format!("{} {}", part.maker, part.number).trim().to_owned(),
            amount: self.words.say(&format!("report-amount-{}", measure_key(part.quantity.measure)), &amount),
            price: part
                .price
                .filter(|_| self.options.prices)
                .map(|price| money(price, self.words))
                .unwrap_or_default(),
        }
    }

    fn with_kind(&self, name: String, kind: Option<&str>) -> String {
        let Some(kind) = kind else { return name };
        let kind = self.words.say(&format!("kind-{kind}"), &[]);
        let args = [("name", Arg::from(&name)), ("kind", Arg::from(&kind))];
        if name.is_empty() { kind } else { self.words.say("report-part-kind", &args) }
    }

    /// What was found, the note as it was typed, and what is missing.
    fn lines(&self, visit: &Visit, missing: usize) -> Vec<String> {
        let found = visit.content.found.iter().map(|found| self.found(found));
        let found = || self.words.say("report-found", &[("found", listed(found, self.words).into())]);
        let missed = || self.words.say("report-photo-missing", &[("count", missing.into())]);
        let first = (!visit.content.found.is_empty()).then(found);
        let note = visit.content.note.lines().filter(|line| !line.trim().is_empty()).map(str::to_owned);
        first.into_iter().chain(note).chain((missing > 0).then(missed)).collect()
    }

    fn found(&self, found: &FoundContent) -> String {
        let view = found_view(found, self.door.catalogue);
        let args = [
            ("item", item_name(&item(&found.item), self.door.catalogue, self.words).into()),
            ("finding", self.words.say(&format!("finding-{}", view.finding), &[]).into()),
            (
                "value",
                view.value
                    .as_ref()
                    .map(|told| format!("{} {}", decimal(&told.value, self.words), told.unit))
                    .unwrap_or_default()
                    .into(),
            ),
        ];
        let id = if view.value.is_some() { "report-found-measured" } else { "report-found-item" };
        self.words.say(id, &args)
    }

    /// The photos of a visit, and how many are not there any more.
    fn photos_of(&mut self, visit: &Visit) -> (Vec<ReportPhoto>, usize) {
        let papers = &visit.content.papers;
        self.papers_seen += papers.len();
        if !self.shows_photos() {
            return (Vec::new(), 0);
        }
        let (mut photos, mut missing) = (Vec::new(), 0);
        for (at, paper) in papers.iter().enumerate() {
            if self.photos.len() >= REPORT_PHOTOS_MAX {
                self.too_many = true;
                break;
            }
            match self.photo(*paper) {
                Some(place) => photos.push(ReportPhoto { at: place, says: self.says(visit, at + 1) }),
                None => missing += 1,
            }
        }
        (photos, missing)
    }

    fn says(&self, visit: &Visit, number: usize) -> String {
        let of = visit.content.papers.len();
        let day = visit.content.day.to_string();
        self.words
            .say("report-photo-says", &[("number", number.into()), ("of", of.into()), ("day", day.into())])
    }

    /// The place of a paper's photo; none where it was thrown away, is lost or cannot be read.
    fn photo(&mut self, paper: SubjectId) -> Option<usize> {
        let hash = self.papers.get(&paper)?.photo;
        if let Some(place) = self.places.get(&hash) {
            return Some(*place);
        }
        let jpeg = self.door.photo(&hash.to_string(), PhotoSize::Thumb).ok()?;
        let photo = Thumbnail::read(jpeg).ok()?;
        // A receipt says what was paid, so that its photo would tell the prices that are left out.
        self.photos.push(if self.options.prices { photo } else { photo.illegible().ok()? });
        let place = self.photos.len() - 1;
        self.places.insert(hash, place);
        Some(place)
    }
}
