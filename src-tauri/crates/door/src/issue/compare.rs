//! Holding an old card against the book, or against a newer card.
//!
//! Against a book three things are asked, and each is answered by itself:
//!
//! - Has the key that signed the card written in this book?
//! - Was there a moment at which the book had the card's head? That alone proves that everything which stood in the
//!   book then stands in it still; `book::Shelf::moment` says how it is found and what it leaves open.
//! - Is each visit of the card in the book as it was printed, in its line as it stands or in an earlier version of it?
//!   This names what was rewritten, where the head says only that something was.

mod lines;

use book::content::{Content, VehicleContent};
use book::{Moment, Searched};
use card::{Claims, Difference, InstrumentChange, OdometerReading, Verified};
use units::{BookId, Day, DistanceUnit, WriterKey};

use super::reading::{read_code, reading};
use crate::clock::day_of;
use crate::screens::fingerprint;
use crate::{CompareView, ComparedCard, DatedReading, DifferenceView, Door, MomentView, Refusal};

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
        let vehicle = Known { now: self.shelf.vehicle(book)?, ever: self.vehicle_versions(book)? };
        let card = read_code(card)?;
        let key_known = self.shelf.spans(book)?.iter().any(|span| span.writer == card.key);
        let moment = self.moment_view(book, &card.claims)?;
        let lines = self.book_lines(book)?;
        let (same, visits) = self.visits_against(&card.claims, &lines);
        let mut differences = vehicle.differences(&card.claims);
        differences.extend(lines.latest(&card.claims));
        differences.extend(lines.instruments(&card.claims));
        differences.extend(visits);
        Ok(CompareView {
            against: "book".to_owned(),
            contains: moment.state == "found" && differences.iter().all(|difference| !difference.breach),
            car_known: card.claims.vehicle.vin.is_some() && vehicle.now.vin.is_some(),
            old: compared_card(&card, key_known),
            new: None,
            moment: Some(moment),
            same,
            left_out: 0,
            differences,
        })
    }

    fn vehicle_versions(&self, book: BookId) -> Result<Vec<VehicleContent>, Refusal> {
        let versions = self.shelf.versions(book, book.into())?.into_iter();
        let vehicles = versions.filter_map(|version| match version.content {
            Some(Content::Vehicle(vehicle)) => Some(vehicle),
            _ => None,
        });
        Ok(vehicles.collect())
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

/// What the book knows of its vehicle, and what it ever knew.
struct Known {
    now: VehicleContent,
    ever: Vec<VehicleContent>,
}

impl Known {
    /// Another number than the card's makes it another car, unless the book once had that one and it was put right.
    fn differences(&self, claims: &Claims) -> Vec<DifferenceView> {
        let mut differences = Vec::new();
        let is = |known: &VehicleContent, vin: &str| known.vin.is_some_and(|own| own.to_string() == vin);
        let had = |vin: &String| self.ever.iter().any(|known| is(known, vin));
        if self.now.vin.is_some() && claims.vehicle.vin.as_ref().is_some_and(|vin| !had(vin)) {
            differences.push(undated("other-car"));
        }
        if let Some(then) = claims.vehicle.first_use.filter(|then| Some(*then) != self.now.first_use) {
            let breach = self.ever.iter().all(|known| known.first_use != Some(then));
            differences.push(DifferenceView { breach, ..first_use(then, self.now.first_use) });
        }
        differences
    }
}

fn first_use(then: Day, now: Option<Day>) -> DifferenceView {
    let is = now.map(|now| now.to_string()).unwrap_or_default();
    DifferenceView { was: then.to_string(), is, ..breach("first-use", then) }
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
