//! The Pump: what stands on the pad before the first tap.

use book::ReadingRow;
use book::content::{Content, Fuel};
use rules::fuel::{FuelKind, Series, Span};
use units::{Currency, SubjectId, UnitPrice};

use super::consumption::standing_alarm;
use super::fills::{Fills, amount_view, use_view};
use super::places::vehicle_line;
use super::show::{follows, fuel_view, reading_of, status_key};
use crate::car::Car;
use crate::clock::day_of;
use crate::{Door, FuelOfferView, LastUseView, PumpView, ReadingLine, Refusal};

/// How many of the last readings are shown.
const LAST_READINGS: usize = 5;
/// How many of the last amounts of a kind.
const LAST_AMOUNTS: usize = 5;
/// How many of the last spans of a kind.
const LAST_SPANS: usize = 3;

impl Door {
    pub(crate) fn pump_view(&self, book: &str) -> Result<PumpView, Refusal> {
        let car = self.car(book)?;
        let today = self.clock.today();
        let (leading, digits) = car.leading(today);
        let fills = Fills::of_car(&car);
        let (series, _) = fills.spans(&car);
        Ok(PumpView {
            vehicle: vehicle_line(&car),
            today: today.to_string(),
            leading,
            digits,
            last: last_readings(&car),
            fuels: offers(&fills, &car),
            used: last_used(&series, &fills, &car),
            undo: self.written_last(&car)?.map(|subject| subject.to_string()),
            watch: standing_alarm(&series),
        })
    }

    /// The reading that was written down last, if that was today and no visit brought it: ids go up with time.
    fn written_last(&self, car: &Car) -> Result<Option<SubjectId>, Refusal> {
        let Some(last) = car.readings.iter().map(|row| row.subject).max() else { return Ok(None) };
        let line = self.shelf.line(car.book, last)?;
        let reading = matches!(line.content, Content::Reading(_));
        Ok((reading && day_of(line.written) == self.clock.today()).then_some(last))
    }
}

fn last_readings(car: &Car) -> Vec<ReadingLine> {
    // Within a day the one written last comes first, so that what was just put in can be taken back there.
    let mut newest: Vec<_> = car.readings.iter().collect();
    newest.sort_by_key(|row| std::cmp::Reverse((row.reading.day, row.subject)));
    let line = |row: &ReadingRow| ReadingLine {
        subject: row.subject.to_string(),
        day: row.reading.day.to_string(),
        reading: reading_of(row.reading.shown, car.unit()),
        status: status_key(row.reading.status).to_owned(),
        fuel: row.fuel.as_ref().map(|fuel| fuel_view(fuel, car.own_fuel())),
    };
    newest.into_iter().take(LAST_READINGS).map(line).collect()
}

/// What the car can take, what it took last first.
fn offers(fills: &Fills, car: &Car) -> Vec<FuelOfferView> {
    let taken = FuelKind::taken_by(car.vehicle.engine).iter().copied();
    let last_of = |kind| fills.of(kind).next();
    let place = |kind: FuelKind| {
        let newest = fills.rows.iter().rposition(|row| row.fuel.filled.kind(car.own_fuel()) == kind);
        std::cmp::Reverse(newest)
    };
    let mut kinds: Vec<FuelKind> = taken.collect();
    // Stable, so that kinds that were never taken keep their order, the own fuel first.
    kinds.sort_by_key(|kind| place(*kind));
    let any = fills.rows.iter().rev().find_map(|row| currency(&row.fuel));
    let offer = |kind: FuelKind| {
        let currency = fills.of(kind).find_map(currency).or(any);
        let price = last_of(kind).and_then(|fuel| fuel.price.or_else(|| follows(fuel)));
        let amounts = fills.of(kind).take(LAST_AMOUNTS);
        FuelOfferView {
            kind: kind.key().to_owned(),
            unit: fills.unit(kind, None).key().to_owned(),
            units: kind.units().iter().map(|unit| unit.key().to_owned()).collect(),
            currency: currency.map(|currency| currency.code().to_owned()).unwrap_or_default(),
            price: price.map(UnitPrice::number).unwrap_or_default(),
            amounts: amounts.map(|fuel| amount_view(fuel.filled.amount(), fuel.filled.unit())).collect(),
        }
    };
    kinds.into_iter().map(offer).collect()
}

/// The currency in which a fill was paid.
fn currency(fuel: &Fuel) -> Option<Currency> {
    let price = fuel.price.map(|price| price.currency);
    fuel.total.map(|total| total.currency).or(price)
}

/// The last spans of each kind, newest first.
fn last_used(series: &[Series], fills: &Fills, car: &Car) -> Vec<LastUseView> {
    let of = |series: &Series| {
        let unit = fills.consumption_unit(series.kind, car, None);
        let last = series.spans.iter().rev().take(LAST_SPANS);
        let view = |span: &Span| {
            Some(LastUseView {
                kind: span.kind.key().to_owned(),
                to: span.to.to_string(),
                used: use_view(span.used, unit)?,
                unit: unit.key().to_owned(),
            })
        };
        last.filter_map(view).collect::<Vec<_>>()
    };
    series.iter().flat_map(of).collect()
}
