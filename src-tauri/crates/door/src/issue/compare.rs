//! Holding an old card against the book, or against a newer card.
//!
//! Against a book three things are asked, and each is answered by itself:
//!
//! - Has the key that signed the card written in this book?
//! - Was there a moment at which the book had the card's head? That alone proves that everything which stood in the
//!   book then stands in it still; `book::Shelf::moment` says how it is found and what it leaves open.
//! - Is each visit of the card in the book as it was printed, in its line as it stands or in an earlier version of it?
//!   This names what was rewritten, where the head says only that something was.

use book::LineFilter;
use book::content::{By, Content, VisitContent};
use book::{Moment, Searched};
use card::{Claims, Difference, Flags, InstrumentChange, OdometerReading, Verified, same_items};
use rules::upkeep::ItemRef;
use units::{BookId, Day, DistanceUnit, WriterKey};

use super::claims;
use super::reading::{read_code, reading};
use crate::clock::day_of;
use crate::screens::fingerprint;
use crate::{CardVisit, CompareView, ComparedCard, DatedReading, DifferenceView, Door, MomentView, Refusal};

/// A card bears the day by the calendar where it was issued, and entries the time in UTC: what stood in the book bears no
/// time later than the end of the day after.
const SLACK_DAYS: i64 = 2;
const MILLIS_A_DAY: i64 = 86_400_000;

impl Door {
    /// Holds a card against a newer one.
    pub(crate) fn compare_cards(&self, old: &str, new: &str) -> Result<CompareView, Refusal> {
        let (old, new) = (read_code(old)?, read_code(new)?);
        let compared = card::compare(&old.claims, &new.claims);
        let units = (old.claims.unit, new.claims.unit);
        let differences = compared.differences.iter().map(|difference| self.difference(difference, units));
        let key_known = old.key == new.key;
        Ok(CompareView {
            against: "card".to_owned(),
            contains: compared.contains(),
            car_known: compared.car_known,
            old: compared_card(&old, key_known),
            new: Some(compared_card(&new, key_known)),
            moment: None,
            same: compared.same,
            left_out: compared.left_out,
            differences: differences.collect(),
        })
    }

    /// Holds a card against a book.
    pub(crate) fn compare_with_book(&self, book: &str, card: &str) -> Result<CompareView, Refusal> {
        let book: BookId = book.parse()?;
        let vehicle = self.shelf.vehicle(book)?;
        let card = read_code(card)?;
        let key_known = self.shelf.spans(book)?.iter().any(|span| span.writer == card.key);
        let moment = self.moment_view(book, &card.claims)?;
        let vins = card.claims.vehicle.vin.clone().zip(vehicle.vin.map(|vin| vin.to_string()));
        let other_car = vins.as_ref().is_some_and(|(one, other)| one != other);
        let lines = self.book_lines(book)?;
        let (same, visits) = self.visits_against(&card.claims, &lines);
        let mut differences: Vec<DifferenceView> = Vec::new();
        if other_car {
            differences.push(undated("other-car"));
        }
        let then = card.claims.vehicle.first_use.filter(|then| Some(*then) != vehicle.first_use);
        differences.extend(then.map(|then| first_use(then, vehicle.first_use)));
        differences.extend(lines.latest(&card.claims));
        differences.extend(lines.instruments(&card.claims));
        differences.extend(visits);
        Ok(CompareView {
            against: "book".to_owned(),
            contains: moment.state == "found" && differences.iter().all(|difference| !difference.breach),
            car_known: vins.is_some(),
            old: compared_card(&card, key_known),
            new: None,
            moment: Some(moment),
            same,
            left_out: 0,
            differences,
        })
    }

    fn moment_view(&self, book: BookId, claims: &Claims) -> Result<MomentView, Refusal> {
        let state = |state: &str| MomentView {
            state: state.to_owned(),
            entries: 0,
            newest: String::new(),
            late: 0,
            since: 0,
        };
        let Some(head) = claims.head else { return Ok(state("no-head")) };
        let until = (i64::from(claims.issued.epoch()) + SLACK_DAYS) * MILLIS_A_DAY;
        let until = u64::try_from(until).unwrap_or(0);
        Ok(match self.shelf.moment(book, &head.0, until)? {
            Searched::NotFound => state("not-found"),
            Searched::TooMany => state("too-many"),
            Searched::Found(moment) => self.found(book, &moment)?,
        })
    }

    fn found(&self, book: BookId, moment: &Moment) -> Result<MomentView, Refusal> {
        let count = |number: u64| usize::try_from(number).unwrap_or(usize::MAX);
        let (entries, late) = (count(moment.entries), count(moment.late));
        Ok(MomentView {
            state: "found".to_owned(),
            entries,
            newest: day_of(moment.newest).to_string(),
            late,
            since: self.shelf.count(book)?.saturating_sub(entries).saturating_sub(late),
        })
    }

    fn book_lines(&self, book: BookId) -> Result<BookLines, Refusal> {
        let mut lines = BookLines { visits: Vec::new(), shown: Vec::new(), instruments: Vec::new() };
        for row in self.shelf.lines(book, &LineFilter::default())? {
            let corrected = row.amended > 0 || row.struck.is_some();
            let now = row.struck.is_none().then_some(&row.content);
            let mut versions = vec![row.content.clone()];
            if row.amended > 0 {
                let earlier = self.shelf.versions(book, row.subject)?;
                versions.extend(earlier.into_iter().filter_map(|version| version.content));
            }
            let read = versions.iter().filter_map(|content| Some((content.day()?, content.shown()?)));
            lines.shown.extend(read);
            let replaced = versions.iter().filter_map(|content| match content {
                Content::Instrument(change) => Some(change.clone()),
                _ => None,
            });
            lines.instruments.extend(replaced);
            let visit = |content: &Content| match content {
                Content::Visit(visit) => Some(visit.clone()),
                _ => None,
            };
            let versions: Vec<VisitContent> = versions.iter().filter_map(visit).collect();
            if !versions.is_empty() {
                let now = now.and_then(visit);
                lines.visits.push(BookVisit { now, versions, corrected });
            }
        }
        Ok(lines)
    }

    /// How many visits of a card stand in the book as they were printed, and what is to be said of the others.
    fn visits_against(&self, claims: &Claims, lines: &BookLines) -> (usize, Vec<DifferenceView>) {
        let mut free: Vec<&BookVisit> = lines.visits.iter().collect();
        let unit = claims.unit;
        let mut over = Vec::new();
        for visit in &claims.visits {
            let stands = |line: &BookVisit| line.now.as_ref().is_some_and(|now| is_visit(visit, now, unit));
            if take(&mut free, stands).is_none() {
                over.push(visit);
            }
        }
        let same = claims.visits.len() - over.len();
        let mut differences = Vec::new();
        let mut lost = Vec::new();
        for visit in over {
            let stood = |line: &BookVisit| {
                line.corrected && line.versions.iter().any(|version| is_visit(visit, version, unit))
            };
            match take(&mut free, stood) {
                Some(line) => differences.push(self.corrected(visit, line, unit)),
                None => lost.push(visit),
            }
        }
        for visit in lost {
            let same_day = |line: &BookVisit| line.now.as_ref().is_some_and(|now| now.day == visit.day);
            let now = take(&mut free, same_day).and_then(|line| line.now.as_ref());
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

    fn difference(&self, found: &Difference, (old, new): (DistanceUnit, DistanceUnit)) -> DifferenceView {
        match found {
            Difference::OtherCar => undated("other-car"),
            Difference::NotNewer => undated("not-newer"),
            Difference::FirstUse { older, newer } => first_use(*older, Some(*newer)),
            Difference::LatestReading { older, newer } => DifferenceView {
                reading_then: Some(dated(*older, old)),
                reading_now: Some(dated(*newer, new)),
                ..breach("latest-reading", older.day)
            },
            Difference::Instrument(change) => instrument(change, old),
            Difference::Fewer { older, newer } => {
                DifferenceView { was: older.to_string(), is: newer.to_string(), ..undated("fewer") }
            }
            Difference::Missing(visit) => {
                DifferenceView { then: Some(self.card_visit(visit, old)), ..breach("missing", visit.day) }
            }
            Difference::Changed { older, newer } => DifferenceView {
                then: Some(self.card_visit(older, old)),
                now: Some(self.card_visit(newer, new)),
                ..breach("changed", older.day)
            },
            Difference::Added(visit) => DifferenceView {
                breach: false,
                now: Some(self.card_visit(visit, new)),
                ..breach("added", visit.day)
            },
        }
    }
}

/// Takes the first that fits out of a list.
fn take<'a>(free: &mut Vec<&'a BookVisit>, fits: impl Fn(&BookVisit) -> bool) -> Option<&'a BookVisit> {
    free.iter().position(|visit| fits(visit)).map(|at| free.remove(at))
}

/// What a book holds that a card could have been printed from.
struct BookLines {
    visits: Vec<BookVisit>,
    /// Every reading that any line names or named, with its day.
    shown: Vec<(Day, units::Distance)>,
    instruments: Vec<book::content::InstrumentContent>,
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
    fn latest(&self, claims: &Claims) -> Option<DifferenceView> {
        let OdometerReading { day, reading } = claims.latest;
        let held = |(on, shown): &(Day, units::Distance)| {
            *on == day && claims::count(*shown, claims.unit) == reading
        };
        let missing = !self.shown.iter().any(held);
        missing.then(|| DifferenceView {
            reading_then: Some(dated(claims.latest, claims.unit)),
            ..breach("latest-reading", day)
        })
    }

    fn instruments<'a>(&'a self, claims: &'a Claims) -> impl Iterator<Item = DifferenceView> + 'a {
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

fn first_use(then: Day, now: Option<Day>) -> DifferenceView {
    let is = now.map(|now| now.to_string()).unwrap_or_default();
    DifferenceView { was: then.to_string(), is, ..breach("first-use", then) }
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

fn undated(kind: &str) -> DifferenceView {
    DifferenceView { kind: kind.to_owned(), breach: true, ..DifferenceView::default() }
}

fn breach(kind: &str, day: Day) -> DifferenceView {
    DifferenceView { day: day.to_string(), ..undated(kind) }
}

fn instrument(change: &InstrumentChange, unit: DistanceUnit) -> DifferenceView {
    let on = |reading| dated(OdometerReading { day: change.day, reading }, unit);
    let (then, now) = (on(change.old), on(change.new));
    DifferenceView { reading_then: Some(then), reading_now: Some(now), ..breach("instrument", change.day) }
}

fn dated(latest: OdometerReading, unit: DistanceUnit) -> DatedReading {
    DatedReading { day: latest.day.to_string(), reading: reading(latest.reading, unit) }
}

fn compared_card(card: &Verified, key_known: bool) -> ComparedCard {
    let Claims { issued, vehicle, latest, unit, .. } = &card.claims;
    let key: WriterKey = card.key;
    ComparedCard {
        signed: issued.to_string(),
        fingerprint: fingerprint(key),
        name: vehicle.name.clone(),
        reading: dated(*latest, *unit),
        visits: card.claims.visits_in_book(),
        key_known,
    }
}
