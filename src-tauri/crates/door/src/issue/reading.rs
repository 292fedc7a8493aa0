//! A card that was scanned: what it says, what follows from that, and what it gives cause to ask.

use card::{Claims, Item, Question, Verified};
use rules::vehicle::EngineKind;
use units::{DistanceUnit, WriterKey};

use super::claims;
use crate::screens::{bare_item, engine_key, fingerprint, unit_key};
use crate::{
    CardInstrument, CardNext, CardQuestion, CardReadView, CardVisit, DatedReading, Door, ItemView, Reading,
    Refusal,
};

/// Reads the text of a square and verifies it.
pub(super) fn read_code(text: &str) -> Result<Verified, Refusal> {
    let code = text.rsplit_once('#').map_or(text, |(_, code)| code);
    let of_code = |c: char| c.is_ascii_digit() || c.is_whitespace();
    // The plain text of a card without an address has letters where a code has nothing but digits.
    if text.trim().lines().count() > 1 && !code.chars().all(of_code) {
        return Err(Refusal::new("card-plain"));
    }
    // A mail or a clipboard may have broken it into lines.
    let whole: String = text.split_whitespace().collect();
    Ok(card::read(&whole)?)
}

impl Door {
    /// Reads the text of a card's square.
    pub(crate) fn card_read_view(&self, text: &str) -> Result<CardReadView, Refusal> {
        let Verified { claims, key } = read_code(text)?;
        Ok(self.read_view(&claims, key))
    }

    fn read_view(&self, claims: &Claims, key: WriterKey) -> CardReadView {
        let own_key = key == self.shelf.writer().key();
        let vehicle = &claims.vehicle;
        let questions = card::questions(claims, self.clock.today());
        CardReadView {
            signed: claims.issued.to_string(),
            fingerprint: fingerprint(key),
            own_key,
            verdicts: verdicts(own_key),
            name: vehicle.name.clone(),
            make_model: vehicle.description.clone().unwrap_or_default(),
            vin: vehicle.vin.clone(),
            engine: vehicle.engine.map_or_else(String::new, engine),
            first_use: vehicle.first_use.map(|day| day.to_string()),
            reading: DatedReading {
                day: claims.latest.day.to_string(),
                reading: reading(claims.latest.reading, claims.unit),
            },
            visits: claims.visits.iter().map(|visit| self.card_visit(visit, claims.unit)).collect(),
            in_book: u64::from(claims.visits_in_book()),
            next: claims.next.iter().map(|next| self.card_next(claims, next)).collect(),
            instruments: claims.instruments.iter().map(|change| instrument(claims, change)).collect(),
            head: claims.head.map(|head| head.to_string()),
            questions: questions.iter().map(|question| self.card_question(claims, question)).collect(),
        }
    }

    pub(super) fn card_visit(&self, visit: &card::Visit, unit: DistanceUnit) -> CardVisit {
        CardVisit {
            day: visit.day.to_string(),
            reading: reading(visit.reading, unit),
            items: visit.items.iter().map(|item| self.card_item(item)).collect(),
            marks: claims::mark_keys(visit.flags).into_iter().map(str::to_owned).collect(),
        }
    }

    fn card_next(&self, claims: &Claims, next: &card::NextDue) -> CardNext {
        CardNext {
            item: self.card_item(&next.item),
            day: next.day.map(|day| day.to_string()),
            reading: next.reading.map(|count| reading(count, claims.unit)),
        }
    }

    fn card_question(&self, claims: &Claims, question: &Question) -> CardQuestion {
        let values = question.values();
        CardQuestion {
            key: question.key().to_owned(),
            count: values.count,
            of: values.of,
            day: values.day.map(|day| day.to_string()),
            reading: values.reading.map(|count| reading(count, claims.unit)),
            then: values.then.map(|day| day.to_string()),
            shown: values.shown.map(|count| reading(count, claims.unit)),
            items: values.items.iter().map(|item| self.card_item(item)).collect(),
        }
    }

    fn card_item(&self, item: &Item) -> ItemView {
        match item {
            Item::Catalogue(number) => bare_item(*number, self.catalogue),
            Item::Own(name) => ItemView::Own { name: name.clone() },
        }
    }
}

/// What a card that was read at all has shown, and what no card shows.
fn verdicts(own_key: bool) -> Vec<String> {
    let key = if own_key { "own-key" } else { "other-key" };
    ["unchanged", key, "work-not-proved"].map(str::to_owned).to_vec()
}

fn engine(engine: card::Engine) -> String {
    let kind = EngineKind::from_number(claims::engine_number(engine));
    kind.map_or_else(String::new, |kind| engine_key(kind).to_owned())
}

/// A reading of a card.
pub(super) fn reading(count: i32, unit: DistanceUnit) -> Reading {
    Reading { count: i64::from(count), unit: unit_key(unit) }
}

fn instrument(claims: &Claims, change: &card::InstrumentChange) -> CardInstrument {
    CardInstrument {
        day: change.day.to_string(),
        old: reading(change.old, claims.unit),
        new: reading(change.new, claims.unit),
    }
}
