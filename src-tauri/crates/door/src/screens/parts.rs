//! The parts that were fitted, and how long they last.

use rules::parts::{self, Fitted, Moment, Paid, Part, PartNumber, Span};
use rules::upkeep::{Catalogue, ItemRef};
use units::{Day, DistanceUnit};

use super::places::vehicle_line;
use super::show::{item_view, measure_key, money_view, unit_key};
use super::stock::Stock;
use crate::car::{Car, Visit};
use crate::{Door, ItemForm, PaidView, PartLine, PartsView, Reading, Refusal, UsedView, forms};

impl Door {
    /// The parts of a vehicle, or those that served one item, the one fitted last first.
    pub(crate) fn parts_view(&self, book: &str, item: Option<u32>) -> Result<PartsView, Refusal> {
        let car = self.car(book)?;
        let item = item.map(|number| forms::item(&ItemForm::Catalogue(number), self.catalogue));
        let item = item.transpose().map_err(|refusal| refusal.at("item"))?;
        let stock = Stock::new(&car);
        let parts = parts::parts(&part_lines(&car), &stock.bought_lines(), now(&car, self.clock.today()));
        let wanted = |part: &&Part<'_>| item.as_ref().is_none_or(|item| part.items.contains(item));
        let line = |part| part_line(part, &stock, car.unit(), self.catalogue);
        let lines = parts.iter().filter(wanted).map(line);
        Ok(PartsView { vehicle: vehicle_line(&car), parts: lines.collect() })
    }
}

/// How long the parts of an item lasted that were in before the present ones.
pub(crate) fn lasted(item: &ItemRef, car: &Car) -> Option<UsedView> {
    parts::lasted(item, fitted(car)).map(|span| used_view(span, car.unit()))
}

/// Every line of a visit on which a part or a fluid stands, oldest first.
pub(super) fn fitted(car: &Car) -> impl Iterator<Item = Fitted<'_>> {
    car.visits.iter().flat_map(|visit| {
        let at = moment(visit, car);
        let content = &visit.content;
        content.parts.iter().map(move |part| Fitted {
            item: part.item.as_ref(),
            maker: &part.maker,
            number: &part.number,
            name: &part.name,
            quantity: part.quantity,
            price: part.price,
            shop: content.by.workshop(),
            at,
            kind: part.kind.as_deref(),
        })
    })
}

/// The same at once.
pub(super) fn part_lines(car: &Car) -> Vec<Fitted<'_>> {
    fitted(car).collect()
}

fn moment(visit: &Visit, car: &Car) -> Moment {
    Moment { day: visit.content.day, travelled: visit.travelled(&car.track) }
}

/// Today, with how far the car has likely gone.
pub(super) fn now(car: &Car, today: Day) -> Moment {
    Moment { day: today, travelled: car.pace.on(today).map(|estimate| estimate.likely) }
}

fn part_line(part: &Part<'_>, stock: &Stock<'_>, unit: DistanceUnit, catalogue: &Catalogue) -> PartLine {
    let number = part.numbers.first().map(PartNumber::written).unwrap_or_default();
    PartLine {
        name: part.name.to_owned(),
        maker: part.maker.to_owned(),
        numbers: part.numbers.iter().map(ToString::to_string).collect(),
        same: stock.same(number),
        warning: stock.warning(number),
        note: stock.note(number),
        kind: part.kind.unwrap_or_default().to_owned(),
        items: part.items.iter().map(|item| item_view(item, catalogue)).collect(),
        quantity: part.quantity.number(),
        measure: measure_key(part.quantity.measure).to_owned(),
        paid: part.paid.as_ref().map(paid_view),
        times: part.times,
        day: part.day.to_string(),
        workshop: part.shop.to_owned(),
        lasted: part.service.lasted.map(|span| used_view(span, unit)),
        present: part.service.present.map(|span| used_view(span, unit)),
    }
}

pub(super) fn paid_view(paid: &Paid<'_>) -> PaidView {
    PaidView {
        price: money_view(paid.price),
        quantity: paid.quantity.number(),
        measure: measure_key(paid.quantity.measure).to_owned(),
        day: paid.day.to_string(),
        workshop: paid.shop.to_owned(),
    }
}

pub(super) fn used_view(span: Span, unit: DistanceUnit) -> UsedView {
    let distance =
        span.distance.map(|distance| Reading { count: distance.round(unit), unit: unit_key(unit) });
    UsedView { days: span.days, distance }
}
