//! The printed sheet: the claims and the book in words.

use book::content::By;
use card::{
    CarLines, Claims, Flags, Item, Mark, NextLine, ReadingLine, RecordLines, SheetModel, SheetOptions,
    SheetSquare, SheetWords, Turn, VisitLine,
};
use rules::upkeep::{Catalogue, DueLine, ItemRef};
use units::{Day, DistanceUnit};
use words::{Arg, Words};

use super::numbers::{money, reading};
use super::record::Record;
use super::{Content, flags, plot, record};
use crate::car::{Car, Visit};
use crate::screens::engine_key;
use crate::{CardOptions, VinShown, WriterView};

/// So many characters of a hidden number may be shown: its last six, the number of the single car (ISO 3779 has them
/// in the last section, which tells one car from another).
const VIN_TAIL: usize = 6;

/// What a sheet is set from.
pub(super) struct Sheet<'a> {
    pub car: &'a Car,
    pub due: &'a [DueLine],
    pub writers: &'a [WriterView],
    pub catalogue: &'a Catalogue,
    pub words: &'a Words,
    /// As asked for, and as printed.
    pub options: &'a CardOptions,
    pub print: &'a SheetOptions,
}

/// The code, and what it is signed with.
pub(super) struct Signed<'a> {
    pub content: Content,
    pub left_out: usize,
    pub fingerprint: &'a str,
}

impl Sheet<'_> {
    /// The whole sheet.
    pub fn model(&self, claims: &Claims, signed: Signed<'_>) -> SheetModel {
        let unit = claims.unit;
        SheetModel {
            lang: self.words.lang().to_owned(),
            car: self.car_lines(claims),
            latest: ReadingLine {
                day: claims.latest.day.to_string(),
                reading: reading(i64::from(claims.latest.reading), Some(unit)),
            },
            visits: if self.print.size.lists_visits() { self.visits(claims) } else { Vec::new() },
            visits_note: visits_note(self.car.visits.len(), signed.left_out, self.words),
            record: self.record(claims),
            next: claims.next.iter().map(|next| self.next(next, unit)).collect(),
            issued: claims.issued.to_string(),
            handling: self.handling(),
            square: self.square(signed.content, claims.issued, signed.fingerprint),
            words: self.labels(unit),
        }
    }

    fn record(&self, claims: &Claims) -> RecordLines {
        let items: Vec<&[ItemRef]> = self.car.visits.iter().map(|visit| &*visit.content.items).collect();
        let work =
            Record { claims, items: &items, due: self.due, catalogue: self.catalogue, words: self.words };
        let (writers, more_writers) =
            record::writers(self.writers, self.print.size.writers_named(self.writers.len()), self.words);
        RecordLines {
            plot: plot::plot(claims, self.words),
            groups: work.groups(self.print.size.work_lines()),
            receipts: record::receipts(claims, self.words),
            owners: record::owners(self.writers, self.words),
            writers,
            more_writers,
        }
    }

    /// How to print a card that has to be cut out.
    fn handling(&self) -> String {
        let layout = self.print.layout();
        let turn = match layout.turn() {
            Turn::LongEdge => "long",
            Turn::ShortEdge => "short",
        };
        let fold = if layout.folded { "yes" } else { "no" };
        self.words.say("card-handling", &[("turn", turn.into()), ("fold", fold.into())])
    }

    fn say(&self, id: &str) -> String {
        self.words.say(id, &[])
    }

    fn car_lines(&self, claims: &Claims) -> CarLines {
        CarLines {
            name: claims.vehicle.name.clone(),
            description: claims.vehicle.description.clone(),
            vin: self.vin(),
            engine: Some(self.say(&format!("card-engine-{}", engine_key(self.car.vehicle.engine)))),
            first_use: claims.vehicle.first_use.map(|day| day.to_string()),
        }
    }

    /// The identification number as far as the owner shows it.
    fn vin(&self) -> Option<String> {
        let vin = self.car.content.vin?.to_string();
        Some(match self.options.vin {
            VinShown::Whole => vin,
            VinShown::LastSix => {
                let tail = vin.get(vin.len().saturating_sub(VIN_TAIL)..).unwrap_or_default();
                self.words.say("card-vin-tail", &[("tail", tail.into())])
            }
            VinShown::Hidden => self.say("card-vin-hidden"),
        })
    }

    /// The visits, the newest first.
    fn visits(&self, claims: &Claims) -> Vec<VisitLine> {
        let visits = claims.visits.iter().zip(&self.car.visits).rev();
        visits.map(|(claim, visit)| self.visit(claim, visit)).collect()
    }

    fn visit(&self, claim: &card::Visit, visit: &Visit) -> VisitLine {
        let cost = visit.content.cost.filter(|_| self.options.prices);
        VisitLine {
            day: claim.day.to_string(),
            reading: reading(i64::from(claim.reading), None),
            who: who(visit, self.options.hide_names, self.words),
            cost: cost.map(|cost| money(cost, self.words)),
            items: claim.items.iter().map(|item| item_name(item, self.catalogue, self.words)).collect(),
            marks: marks(flags(visit)),
        }
    }

    fn next(&self, next: &card::NextDue, unit: DistanceUnit) -> NextLine {
        let day = next.day.map(|day| day.to_string());
        let at = next.reading.map(|count| reading(i64::from(count), Some(unit)));
        let args =
            |day: &str, at: &str| [("day", Arg::from(day.to_owned())), ("reading", Arg::from(at.to_owned()))];
        let when = match (day, at) {
            (Some(day), Some(at)) => self.words.say("card-next-both", &args(&day, &at)),
            (Some(day), None) => self.words.say("card-next-day", &args(&day, "")),
            (None, Some(at)) => self.words.say("card-next-reading", &args("", &at)),
            (None, None) => String::new(),
        };
        NextLine { item: item_name(&next.item, self.catalogue, self.words), when }
    }

    fn square(&self, content: Content, issued: Day, fingerprint: &str) -> SheetSquare {
        match content {
            Content::Signed(fitted) => SheetSquare::Code {
                square: fitted.square,
                scan: self.say("card-scan"),
                unchanged: self.words.say(
                    "card-unchanged",
                    &[("day", issued.to_string().into()), ("key", fingerprint.to_owned().into())],
                ),
                proves_not: self.say("card-proves-not"),
                proves_not_short: self.say("card-proves-not-short"),
                key: fingerprint.to_owned(),
            },
            Content::Plain(fitted) => SheetSquare::Plain {
                square: fitted.square,
                scan: self.say("card-scan-plain"),
                unsigned: self.say("card-unsigned"),
            },
        }
    }

    fn labels(&self, unit: DistanceUnit) -> SheetWords {
        SheetWords {
            title: self.say("card-title"),
            vin: self.say("card-vin"),
            engine: self.say("card-engine"),
            first_use: self.say("card-first-use"),
            latest: self.say("card-latest"),
            next: self.say("card-next"),
            nothing_next: self.say("card-nothing-next"),
            history: self.say("card-history"),
            no_visits: self.say("card-no-visits"),
            day: self.say("card-day"),
            reading: self.words.say("card-reading", &[("unit", unit.symbol().into())]),
            work: self.say("card-work"),
            receipt: self.say("card-receipt"),
            photo: self.say("card-photo"),
            written_late: self.say("card-written-late"),
            amended: self.say("card-amended"),
            issued: self.say("card-issued"),
            key: self.say("card-key"),
            plot: self.words.say("card-plot", &[("unit", unit.symbol().into())]),
            record: self.say("card-record"),
            last_done: self.say("card-last-done"),
            next_due: self.say("card-next-due"),
            no_record: self.say("card-no-record"),
            writers: self.say("card-writers"),
        }
    }
}

/// How many visits there are, and how many of them the square leaves out.
pub(super) fn visits_note(visits: usize, left_out: usize, words: &Words) -> String {
    words.say("card-visits-note", &[("shown", Arg::from(visits)), ("left-out", Arg::from(left_out))])
}

/// By whom a visit was done, the name of a workshop only where it is to be told.
pub(super) fn who(visit: &Visit, hide_names: bool, words: &Words) -> String {
    match &visit.content.by {
        By::Owner => words.say("card-by-owner", &[]),
        By::Workshop(name) if hide_names || name.is_empty() => words.say("card-by-workshop", &[]),
        By::Workshop(name) => name.clone(),
    }
}

pub(super) fn item_name(item: &Item, catalogue: &Catalogue, words: &Words) -> String {
    match item {
        Item::Own(name) => name.clone(),
        Item::Catalogue(number) => match catalogue.item(*number) {
            Some(item) => words.say(&format!("item-{}", item.key), &[]),
            None => words.say("card-item-unknown", &[("number", (*number).into())]),
        },
    }
}

pub(super) fn marks(flags: Flags) -> Vec<Mark> {
    let marks = [
        (Flags::RECEIPT, Mark::Receipt),
        (Flags::PHOTO, Mark::Photo),
        (Flags::WRITTEN_LATE, Mark::WrittenLate),
        (Flags::AMENDED, Mark::Amended),
    ];
    marks.into_iter().filter(|(flag, _)| flags.contains(*flag)).map(|(_, mark)| mark).collect()
}

/// A summary that any camera app shows: the car, its reading, then as many visits as fit, newest first.
pub(super) fn plain_lines(claims: &Claims, catalogue: &Catalogue, words: &Words) -> Vec<String> {
    let unit = claims.unit;
    let description = claims.vehicle.description.as_deref().unwrap_or_default();
    let name = &claims.vehicle.name;
    let car = if description.is_empty() { name.clone() } else { format!("{name}, {description}") };
    let latest = reading(i64::from(claims.latest.reading), Some(unit));
    let head = [
        format!("{} {}", words.say("card-title", &[]), claims.issued),
        car,
        claims.vehicle.vin.clone().unwrap_or_default(),
        format!("{} {latest}", claims.latest.day),
    ];
    let visits = claims.visits.iter().rev().map(|visit| {
        let items: Vec<_> = visit.items.iter().map(|item| item_name(item, catalogue, words)).collect();
        format!("{} {}: {}", visit.day, reading(i64::from(visit.reading), Some(unit)), items.join(", "))
    });
    head.into_iter().filter(|line| !line.is_empty()).chain(visits).collect()
}
