//! The printed sheet: the claims and the book in words.

use card::{
    CarLines, Claims, Flags, Item, Mark, NextLine, ReadingLine, SheetModel, SheetSquare, SheetWords,
    VisitLine,
};
use rules::upkeep::Catalogue;
use units::{Day, DistanceUnit};
use words::{Arg, Words};

use super::{Content, flags};
use crate::CardOptions;
use crate::car::{Car, Visit};
use crate::screens::engine_key;

/// What a sheet is set from.
pub(super) struct Sheet<'a> {
    pub car: &'a Car,
    pub visits: &'a [Visit],
    pub catalogue: &'a Catalogue,
    pub words: &'a Words,
}

impl Sheet<'_> {
    /// The whole sheet.
    pub fn model(
        &self,
        claims: &Claims,
        options: &CardOptions,
        content: Content,
        left_out: usize,
        fingerprint: &str,
    ) -> SheetModel {
        let unit = claims.unit;
        let shown = self.visits.len();
        let note =
            self.words.say("card-visits-note", &[("shown", shown.into()), ("left-out", left_out.into())]);
        SheetModel {
            lang: self.words.lang().to_owned(),
            car: self.car_lines(claims, options),
            latest: ReadingLine {
                day: claims.latest.day.to_string(),
                reading: reading(i64::from(claims.latest.reading), Some(unit)),
            },
            visits: claims
                .visits
                .iter()
                .zip(self.visits)
                .rev()
                .map(|(claim, visit)| self.visit(claim, visit))
                .collect(),
            visits_note: note,
            next: claims.next.iter().map(|next| self.next(next, unit)).collect(),
            issued: claims.issued.to_string(),
            square: self.square(content, claims.issued, fingerprint),
            words: self.labels(unit),
        }
    }

    fn say(&self, id: &str) -> String {
        self.words.say(id, &[])
    }

    fn car_lines(&self, claims: &Claims, options: &CardOptions) -> CarLines {
        let hidden = options.hide_vin && self.car.content.vin.is_some();
        CarLines {
            name: claims.vehicle.name.clone(),
            description: claims.vehicle.description.clone(),
            vin: claims.vehicle.vin.clone().or_else(|| hidden.then(|| self.say("card-vin-hidden"))),
            engine: Some(self.say(&format!("card-engine-{}", engine_key(self.car.vehicle.engine)))),
            first_use: claims.vehicle.first_use.map(|day| day.to_string()),
        }
    }

    fn visit(&self, claim: &card::Visit, visit: &Visit) -> VisitLine {
        let workshop = visit.content.by.workshop();
        VisitLine {
            day: claim.day.to_string(),
            reading: reading(i64::from(claim.reading), None),
            who: if workshop.is_empty() { self.say("card-by-owner") } else { workshop.to_owned() },
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
        }
    }
}

/// A reading with thin spaces between its groups of three digits, and its unit behind it where it is named.
fn reading(count: i64, unit: Option<DistanceUnit>) -> String {
    let digits = count.unsigned_abs().to_string();
    let groups: Vec<&str> =
        (0..digits.len()).rev().step_by(3).map(|end| &digits[end.saturating_sub(2)..=end]).collect();
    let grouped: Vec<&str> = groups.into_iter().rev().collect();
    let sign = if count < 0 { "\u{2212}" } else { "" };
    let number = format!("{sign}{}", grouped.join("\u{202f}"));
    unit.map_or(number.clone(), |unit| format!("{number}\u{a0}{unit}"))
}

fn item_name(item: &Item, catalogue: &Catalogue, words: &Words) -> String {
    match item {
        Item::Own(name) => name.clone(),
        Item::Catalogue(number) => match catalogue.item(*number) {
            Some(item) => words.say(&format!("item-{}", item.key), &[]),
            None => words.say("card-item-unknown", &[("number", (*number).into())]),
        },
    }
}

fn marks(flags: Flags) -> Vec<Mark> {
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
