//! How single values are shown: keys for what has a name, numbers with their units.

use book::PaperRow;
use book::content::{Fill, FoundContent, Fuel, MeasuredValue, PartContent};
use rules::fuel::{FuelKind, Settled, settle};
use rules::measured::Judgement;
use rules::running::OdometerStatus;
use rules::upkeep::{Catalogue, ItemRef};
use rules::vehicle::EngineKind;
use units::{Distance, DistanceUnit, Measure, Money, UnitPrice};

use super::due::{finding_key, measured_view};
use crate::clock::day_of;
use crate::forms::amount_number;
use crate::{
    FoundView, FuelView, ItemView, MeasuredValueView, MoneyView, PaperView, PartView, Reading, UnitKey,
};

/// The key of an engine.
pub(crate) const fn engine_key(engine: EngineKind) -> &'static str {
    match engine {
        EngineKind::Petrol => "petrol",
        EngineKind::Diesel => "diesel",
        EngineKind::PetrolHybrid => "petrol-hybrid",
        EngineKind::DieselHybrid => "diesel-hybrid",
        EngineKind::Gas => "gas",
        EngineKind::Electric => "electric",
        EngineKind::Other => "other",
    }
}

/// The engine with this key.
pub(crate) fn engine_from(key: &str) -> Option<EngineKind> {
    EngineKind::ALL.into_iter().find(|engine| engine_key(*engine) == key)
}

pub(crate) const fn unit_key(unit: DistanceUnit) -> UnitKey {
    match unit {
        DistanceUnit::Kilometre => UnitKey::Km,
        DistanceUnit::Mile => UnitKey::Mi,
    }
}

/// A reading in whole units of its instrument.
pub(crate) const fn reading_of(distance: Distance, unit: DistanceUnit) -> Reading {
    Reading { count: distance.floor(unit), unit: unit_key(unit) }
}

pub(crate) const fn status_key(status: OdometerStatus) -> &'static str {
    match status {
        OdometerStatus::Actual => "actual",
        OdometerStatus::ExceedsMechanicalLimits => "exceeds-limits",
        OdometerStatus::NotActual => "not-actual",
    }
}

pub(crate) fn money_view(money: Money) -> MoneyView {
    MoneyView { number: money.number(), currency: money.currency.code().to_owned() }
}

/// An item by its key, or by the owner's words; a number that this version does not know has the key `unknown`.
pub(crate) fn item_view(item: &ItemRef, catalogue: &Catalogue) -> ItemView {
    match item {
        ItemRef::Own(name) => ItemView::Own { name: name.to_string() },
        ItemRef::Catalogue(number) => bare_item(*number, catalogue),
    }
}

/// An item of the catalogue by its number.
pub(crate) fn bare_item(number: u32, catalogue: &Catalogue) -> ItemView {
    let key = catalogue.item(number).map_or("unknown", |item| item.key.as_str());
    ItemView::Catalogue { number, key: key.to_owned() }
}

pub(crate) const fn measure_key(measure: Measure) -> &'static str {
    match measure {
        Measure::Piece => "piece",
        Measure::Litre => "litre",
        Measure::Set => "set",
        Measure::Kilogram => "kilogram",
        Measure::Metre => "metre",
    }
}

pub(crate) fn part_view(part: &PartContent, catalogue: &Catalogue) -> PartView {
    PartView {
        name: part.name.clone(),
        maker: part.maker.clone(),
        number: part.number.clone(),
        quantity: part.quantity.number(),
        measure: measure_key(part.quantity.measure).to_owned(),
        price: part.price.map(money_view),
        served: part.item.as_ref().map(|item| item_view(item, catalogue)),
        kind: part.kind.clone().unwrap_or_default(),
    }
}

/// What was found, with its measurement where the catalogue still has the gauge for it.
pub(crate) fn found_view(found: &FoundContent, catalogue: &Catalogue) -> FoundView {
    let gauge = catalogue.row(&found.item).and_then(|row| row.gauge);
    FoundView {
        item: item_view(&found.item, catalogue),
        finding: finding_key(found.finding, found.value.zip(gauge)).to_owned(),
        value: found.value.zip(gauge).map(|(value, gauge)| measured_view(gauge, Some(value))),
    }
}

/// Fuel as written, for a car whose own fuel is `own`.
pub(crate) fn fuel_view(fuel: &Fuel, own: FuelKind) -> FuelView {
    let fill = match fuel.fill {
        Fill::Full => "full",
        Fill::Part => "part",
        Fill::MissedBefore => "missed",
    };
    let follows = follows(fuel).filter(|_| fuel.price.is_none());
    FuelView {
        kind: fuel.filled.kind(own).key().to_owned(),
        amount: amount_number(fuel.filled.amount(), fuel.filled.unit()),
        unit: fuel.filled.unit().key().to_owned(),
        price: fuel.price.map(price_view),
        price_follows: follows.map(price_view),
        total: fuel.total.map(money_view),
        fill: fill.to_owned(),
    }
}

/// The price of one unit that follows from amount and total.
pub(crate) fn follows(fuel: &Fuel) -> Option<UnitPrice> {
    match settle(Some(fuel.filled.amount()), fuel.filled.unit(), None, fuel.total) {
        Settled::Price(price) => Some(price),
        _ => None,
    }
}

fn price_view(price: UnitPrice) -> MoneyView {
    MoneyView { number: price.number(), currency: price.currency.code().to_owned() }
}

/// A measured value in a line of the book.
pub(crate) fn measured_value_view(measured: &MeasuredValue) -> MeasuredValueView {
    let MeasuredValue { parameter, value } = *measured;
    MeasuredValueView {
        parameter: parameter.key().to_owned(),
        value: value.to_string(),
        unit: parameter.unit().to_owned(),
        judgement: judgement_key(parameter.judge(value)).to_owned(),
    }
}

pub(crate) const fn judgement_key(judgement: Judgement) -> &'static str {
    match judgement {
        Judgement::Implausible => "implausible",
        Judgement::Low => "low",
        Judgement::High => "high",
        Judgement::Usual => "usual",
    }
}

pub(crate) fn paper_view(paper: &PaperRow) -> PaperView {
    PaperView {
        subject: paper.subject.to_string(),
        hash: paper.photo.to_string(),
        width: paper.width,
        height: paper.height,
        filed: day_of(paper.filed).to_string(),
        whole: paper.whole.map(|hash| hash.to_string()),
        page: paper.page.map(|page| page.number),
    }
}
