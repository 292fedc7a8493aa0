//! The full report: gathered from the book in one pass, and set without the door, because that may take long.

mod bars;
mod visits;

use book::LineFilter;
use card::{
    Claims, HeadPrefix, Report, ReportVisit, ReportWords, ReportYear, SheetOptions, SheetSquare, timeline,
};
use rules::upkeep::ItemRef;
use words::{Arg, Face, Words};

use super::gathered::Gathered;
use super::numbers::reading;
use super::record::Record;
use super::sheet::item_name;
use crate::car::Car;
use crate::{CardOptions, CardSize, Door, Refusal, ReportOptions, VinShown};
use visits::{Line, Visits};

/// Each group of work shows so many lines; the rest is counted, and stands with its visit.
const WORK_LINES: usize = 12;
/// A report shows so many visits, the newest: some 1 500 pages, where a hundred are many.
const VISITS_MAX: usize = 5_000;

impl Door {
    /// Gathers the full report of a book, with small photos of the receipts and no large one.
    pub fn report(&self, book: &str, options: &ReportOptions) -> Result<Gathered, Refusal> {
        let (report, print) = self.told(book, options)?;
        Ok(Gathered::report(report, print))
    }

    /// Everything that a report says, and how it is printed.
    fn told(&self, book: &str, options: &ReportOptions) -> Result<(Report, SheetOptions), Refusal> {
        let car = self.car(book)?;
        if car.last_reading().is_none() {
            return Err(Refusal::new("report-no-reading"));
        }
        let words = Words::load_for(Face::Report, options.lang.tag());
        let issue = self.issue(&car, &options.card())?;
        let mut sheet = issue.model;
        sheet.visits.clear();
        let items: Vec<&[ItemRef]> = car.visits.iter().map(|visit| &*visit.content.items).collect();
        let (claims, catalogue) = (&issue.claims, self.catalogue);
        let record = Record { claims, items: &items, due: &issue.due, catalogue, words: &words };
        sheet.record.groups = record.groups(WORK_LINES);
        let (lines, older) = self.visit_lines(&car)?;
        let mut visits = Visits::new(self, &car, &words, options)?;
        let shown: Vec<_> = lines.iter().map(|line| (line.year(), visits.line(line))).collect();
        let (notes, photos) = visits.finish();
        let report = Report {
            head: claims.head.map(grouped).unwrap_or_default(),
            notes: [vec![sheet.visits_note.clone()], notes].concat(),
            plot_says: plot_says(claims, sheet.record.plot.as_ref().map_or("", |plot| &plot.note), &words),
            bars: self.bars(&car, options, &words),
            years: by_year(shown),
            left_out: left_out(older, &words),
            questions: self.questions(claims, &words),
            photos,
            words: labels(&sheet.square, &words),
            card: sheet,
        };
        Ok((report, issue.options))
    }

    /// The newest visits of a book, those that are struck out among them, and how many older ones there are.
    fn visit_lines(&self, car: &Car) -> Result<(Vec<Line>, usize), Refusal> {
        let lines = self.shelf.lines(car.book, &LineFilter::default())?;
        let mut visits = lines.into_iter().filter_map(Line::of);
        let newest = visits.by_ref().take(VISITS_MAX).collect();
        Ok((newest, visits.count()))
    }

    fn questions(&self, claims: &Claims, words: &Words) -> Vec<String> {
        let asked = card::questions(claims, self.clock.today());
        asked.iter().map(|question| self.question(claims, question, words)).collect()
    }

    /// The sentence of the page behind a card, save where that speaks of the card itself.
    fn question(&self, claims: &Claims, question: &card::Question, words: &Words) -> String {
        let values = question.values();
        let items = values.items.iter().map(|item| item_name(item, self.catalogue, words));
        let day = |day: Option<units::Day>| day.map(|day| day.to_string()).unwrap_or_default();
        let shown = |count: Option<i32>| {
            count.map(|count| reading(i64::from(count), Some(claims.unit))).unwrap_or_default()
        };
        let args = [
            ("count", values.count.unwrap_or_default().into()),
            ("of", values.of.unwrap_or_default().into()),
            ("day", day(values.day).into()),
            ("reading", shown(values.reading).into()),
            ("then", day(values.then).into()),
            ("shown", shown(values.shown).into()),
            ("items", listed(items, words).into()),
        ];
        let own = format!("report-ask-{}", question.key());
        let id = if words.has(&own) { own } else { format!("viewer-ask-{}", question.key()) };
        words.say(&id, &args)
    }
}

impl ReportOptions {
    /// The card that stands on its first page.
    fn card(&self) -> CardOptions {
        CardOptions {
            size: CardSize::A4,
            vin: self.vin,
            hide_names: self.hide_names,
            prices: self.prices,
            lang: self.lang,
            viewer: self.viewer.clone(),
            ..CardOptions::default()
        }
    }

    /// Whether a photo could show what is left out elsewhere.
    fn is_private(&self) -> bool {
        self.hide_names || self.vin != VinShown::Whole
    }
}

/// In groups of four digits, as a key's fingerprint is written.
fn grouped(head: HeadPrefix) -> String {
    let digits: Vec<char> = head.to_string().chars().collect();
    digits.chunks(4).map(String::from_iter).collect::<Vec<_>>().join(" ")
}

/// Lines that come year by year.
fn by_year(lines: Vec<(i32, ReportVisit)>) -> Vec<ReportYear> {
    let mut years: Vec<ReportYear> = Vec::new();
    for (year, visit) in lines {
        let name = year.to_string();
        match years.last_mut().filter(|last| last.name == name) {
            Some(last) => last.visits.push(visit),
            None => years.push(ReportYear { name, visits: vec![visit] }),
        }
    }
    years
}

/// A list of what may have commas of its own.
fn listed(parts: impl IntoIterator<Item = String>, words: &Words) -> String {
    let joined = |list: String, next: String| {
        words.say("report-list", &[("list", list.into()), ("next", next.into())])
    };
    parts.into_iter().reduce(joined).unwrap_or_default()
}

fn left_out(older: usize, words: &Words) -> String {
    let say = || words.say("report-left-out", &[("count", older.into()), ("most", VISITS_MAX.into())]);
    if older == 0 { String::new() } else { say() }
}

/// The drawing of the readings in words, and the note under it.
fn plot_says(claims: &Claims, note: &str, words: &Words) -> String {
    let line = timeline(claims);
    let mut places: Vec<_> = line.runs.iter().flatten().chain(line.gaps.iter().flatten()).collect();
    places.sort_by_key(|place| (place.day, place.way));
    places.dedup();
    let Some((first, last)) = places.first().zip(places.last()) else { return String::new() };
    let shown = |way: i64| Arg::from(reading(way, Some(claims.unit)));
    let args = [
        ("count", places.len().into()),
        ("day", first.day.to_string().into()),
        ("reading", shown(first.way)),
        ("then", last.day.to_string().into()),
        ("shown", shown(last.way)),
    ];
    format!("{} {note}", words.say("viewer-plot", &args))
}

fn labels(square: &SheetSquare, words: &Words) -> ReportWords {
    let say = |id: &str| words.say(id, &[]);
    let signed = if matches!(square, SheetSquare::Code { .. }) { "yes" } else { "no" };
    ReportWords {
        title: say("report-title"),
        contents: say("report-contents"),
        summary: say("report-summary"),
        head: say("viewer-head"),
        head_note: words.say("report-head-note", &[("signed", signed.into())]),
        ask: say("viewer-ask-heading"),
        ask_note: say("report-ask-note"),
        no_questions: say("report-no-questions"),
    }
}

#[cfg(test)]
#[path = "report_tests.rs"]
mod tests;
