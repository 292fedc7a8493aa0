//! What stands in a book, and ever stood, held against the visits of a card.

use book::LineFilter;
use book::content::{By, Content, InstrumentContent, VisitContent};
use card::{Claims, Flags, InstrumentChange, OdometerReading, same_items};
use rules::upkeep::ItemRef;
use units::{BookId, Day, Distance, DistanceUnit};

use super::{breach, dated, instrument};
use crate::issue::claims;
use crate::{CardVisit, DifferenceView, Door, Refusal};

/// What a book holds that a card could have been printed from.
pub(super) struct BookLines {
    visits: Vec<BookVisit>,
    /// Every reading that any line names or named, with its day.
    shown: Vec<(Day, Distance)>,
    instruments: Vec<InstrumentContent>,
}

/// A visit of the book.
struct BookVisit {
    /// As it stands; nothing where it is struck out.
    now: Option<VisitContent>,
    /// As it stands or ever stood.
    versions: Vec<VisitContent>,
    corrected: bool,
}

impl BookLines {
    /// Takes in a line with every version that it ever had.
    fn take(&mut self, versions: &[Content], now: Option<&Content>, corrected: bool) {
        let read = versions.iter().filter_map(|content| Some((content.day()?, content.shown()?)));
        self.shown.extend(read);
        let replaced = versions.iter().filter_map(|content| match content {
            Content::Instrument(change) => Some(change.clone()),
            _ => None,
        });
        self.instruments.extend(replaced);
        let versions: Vec<VisitContent> = versions.iter().filter_map(visit_of).collect();
        if !versions.is_empty() {
            self.visits.push(BookVisit { now: now.and_then(visit_of), versions, corrected });
        }
    }

    /// The latest reading of a card that no line names or ever named.
    pub(super) fn latest(&self, claims: &Claims) -> Option<DifferenceView> {
        let OdometerReading { day, reading } = claims.latest;
        let held =
            |(on, shown): &(Day, Distance)| *on == day && claims::count(*shown, claims.unit) == reading;
        let missing = !self.shown.iter().any(held);
        missing.then(|| DifferenceView {
            reading_then: Some(dated(claims.latest, claims.unit)),
            ..breach("latest-reading", day)
        })
    }

    /// The instruments of a card that no line names or ever named.
    pub(super) fn instruments<'a>(&'a self, claims: &'a Claims) -> impl Iterator<Item = DifferenceView> + 'a {
        let unit = claims.unit;
        let held = move |change: &&InstrumentChange| {
            self.instruments.iter().any(|content| {
                content.day == change.day
                    && claims::count(content.old, unit) == change.old
                    && claims::count(content.new, unit) == change.new
            })
        };
        claims
            .instruments
            .iter()
            .filter(move |change| !held(change))
            .map(move |change| instrument(change, unit))
    }
}

impl BookVisit {
    fn stands_as(&self, printed: &card::Visit, unit: DistanceUnit) -> bool {
        self.now.as_ref().is_some_and(|now| is_visit(printed, now, unit))
    }

    fn stood_as(&self, printed: &card::Visit, unit: DistanceUnit) -> bool {
        self.corrected && self.versions.iter().any(|version| is_visit(printed, version, unit))
    }
}

fn visit_of(content: &Content) -> Option<VisitContent> {
    match content {
        Content::Visit(visit) => Some(visit.clone()),
        _ => None,
    }
}

impl Door {
    pub(super) fn book_lines(&self, book: BookId) -> Result<BookLines, Refusal> {
        let mut lines = BookLines { visits: Vec::new(), shown: Vec::new(), instruments: Vec::new() };
        for row in self.shelf.lines(book, &LineFilter::default())? {
            let mut versions = vec![row.content.clone()];
            if row.amended > 0 {
                let earlier = self.shelf.versions(book, row.subject)?;
                versions.extend(earlier.into_iter().filter_map(|version| version.content));
            }
            let now = row.struck.is_none().then_some(&row.content);
            lines.take(&versions, now, row.amended > 0 || row.struck.is_some());
        }
        Ok(lines)
    }

    /// How many visits of a card stand in the book as they were printed, and what is to be said of the others.
    pub(super) fn visits_against(&self, claims: &Claims, lines: &BookLines) -> (usize, Vec<DifferenceView>) {
        let unit = claims.unit;
        let mut free: Vec<&BookVisit> = lines.visits.iter().collect();
        let mut over: Vec<&card::Visit> = claims.visits.iter().collect();
        over.retain(|visit| take(&mut free, |line| line.stands_as(visit, unit)).is_none());
        let same = claims.visits.len() - over.len();
        let mut differences = Vec::new();
        over.retain(|visit| {
            let line = take(&mut free, |line| line.stood_as(visit, unit));
            differences.extend(line.map(|line| self.corrected(visit, line, unit)));
            line.is_none()
        });
        for visit in over {
            let line = take(&mut free, |line| line.now.as_ref().is_some_and(|now| now.day == visit.day));
            let now = line.and_then(|line| line.now.as_ref());
            differences.push(DifferenceView {
                then: Some(self.card_visit(visit, unit)),
                now: now.map(|now| self.in_book(now, unit)),
                ..breach(if now.is_some() { "changed" } else { "missing" }, visit.day)
            });
        }
        differences.sort_by(|one, other| one.day.cmp(&other.day));
        (same, differences)
    }

    fn corrected(&self, visit: &card::Visit, line: &BookVisit, unit: DistanceUnit) -> DifferenceView {
        let kind = if line.now.is_some() { "amended" } else { "struck-out" };
        DifferenceView {
            breach: false,
            then: Some(self.card_visit(visit, unit)),
            now: line.now.as_ref().map(|now| self.in_book(now, unit)),
            ..breach(kind, visit.day)
        }
    }

    fn in_book(&self, visit: &VisitContent, unit: DistanceUnit) -> CardVisit {
        let shown = visit.shown.unwrap_or_default();
        let items = visit.items.iter().map(claims::item).collect();
        let visit =
            card::Visit { day: visit.day, reading: claims::count(shown, unit), flags: by(visit), items };
        self.card_visit(&visit, unit)
    }
}

/// Takes the first that fits out of a list.
fn take<'a>(free: &mut Vec<&'a BookVisit>, fits: impl Fn(&BookVisit) -> bool) -> Option<&'a BookVisit> {
    free.iter().position(|visit| fits(visit)).map(|at| free.remove(at))
}

/// Whether a visit of a card is this one of the book. Where nobody wrote a reading down, the card bears one that was
/// worked out from those around it, and it is not held against the book.
fn is_visit(printed: &card::Visit, visit: &VisitContent, unit: DistanceUnit) -> bool {
    let items: Vec<card::Item> = visit.items.iter().map(|item: &ItemRef| claims::item(item)).collect();
    printed.day == visit.day
        && printed.flags.contains(by(visit))
        && visit.shown.is_none_or(|shown| claims::count(shown, unit) == printed.reading)
        && same_items(&printed.items, &items)
}

fn by(visit: &VisitContent) -> Flags {
    match visit.by {
        By::Owner => Flags::BY_OWNER,
        By::Workshop(_) => Flags::BY_WORKSHOP,
    }
}
