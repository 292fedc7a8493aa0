//! Fuel in the columns of a line, so that nobody who reads twenty years of it decodes as many contents.

use rules::fuel::{FuelKind, PumpUnit};
use rusqlite::{Row, ToSql};
use units::cbor::CborError;
use units::{Amount, Currency, Energy, Money, UnitPrice, Volume, VolumeUnit};

use crate::BookError;
use crate::content::{Content, Fill, Filled, Fuel};

/// What the columns of fuel hold; nothing in any of them where a line is no reading with fuel.
#[derive(Debug, Default)]
pub(super) struct FuelColumns {
    level: Option<u8>,
    amount: Option<i64>,
    unit: Option<u8>,
    kind: Option<u8>,
    price: Option<i64>,
    price_currency: Option<&'static str>,
    total: Option<i64>,
    total_currency: Option<&'static str>,
}

impl FuelColumns {
    /// The columns in which a content stands.
    pub fn of(content: &Content) -> FuelColumns {
        match content {
            Content::Reading(reading) => reading.fuel.as_ref().map(FuelColumns::of_fuel).unwrap_or_default(),
            _ => FuelColumns::default(),
        }
    }

    fn of_fuel(fuel: &Fuel) -> FuelColumns {
        let (amount, unit, kind) = match fuel.filled {
            Filled::Volume { volume, unit, of } => {
                (volume.picolitres(), Some(unit.number()), of.map(|liquid| liquid.kind().number()))
            }
            Filled::Energy(energy) => (energy.watt_hours(), None, Some(FuelKind::Electric.number())),
        };
        FuelColumns {
            level: Some(fuel.fill.number()),
            amount: Some(amount),
            unit,
            kind,
            price: fuel.price.map(UnitPrice::ten_thousandths),
            price_currency: fuel.price.map(|price| price.currency.code()),
            total: fuel.total.map(|total| total.minor),
            total_currency: fuel.total.map(|total| total.currency.code()),
        }
    }

    /// The values in the order of the columns in the table.
    pub fn values(&self) -> [&dyn ToSql; 8] {
        let FuelColumns { level, amount, unit, kind, price, price_currency, total, total_currency } = self;
        [level, amount, unit, kind, price, price_currency, total, total_currency]
    }
}

/// The fuel of a row whose columns begin at `first`, where there is any.
pub(super) fn fuel(row: &Row<'_>, first: usize) -> Result<Option<Fuel>, BookError> {
    let level: Option<u8> = row.get(first)?;
    let Some(level) = level else { return Ok(None) };
    let fill = Fill::from_number(level).ok_or(CborError::Type)?;
    let amount: i64 = row.get(first + 1)?;
    let unit: Option<u8> = row.get(first + 2)?;
    let kind: Option<u8> = row.get(first + 3)?;
    let kind = kind.map(|number| FuelKind::from_number(number).ok_or(CborError::Type)).transpose()?;
    let (amount, unit) = match unit {
        Some(number) => {
            let unit = VolumeUnit::from_number(number).ok_or(CborError::Type)?;
            (Amount::Volume(Volume::from_picolitres(amount)), PumpUnit::Volume(unit))
        }
        None => (Amount::Energy(Energy::from_watt_hours(amount)), PumpUnit::KilowattHour),
    };
    let price: Option<i64> = row.get(first + 4)?;
    let total: Option<i64> = row.get(first + 6)?;
    let priced =
        |value| Ok::<_, BookError>(UnitPrice::from_ten_thousandths(value, currency(row, first + 5)?));
    let paid = |minor| Ok::<_, BookError>(Money { minor, currency: currency(row, first + 7)? });
    Ok(Some(Fuel {
        filled: Filled::new(kind, amount, unit).ok_or(CborError::Type)?,
        price: price.map(priced).transpose()?,
        total: total.map(paid).transpose()?,
        fill,
    }))
}

fn currency(row: &Row<'_>, column: usize) -> Result<Currency, BookError> {
    let code = row.get_ref(column)?.as_str().map_err(rusqlite::Error::from)?;
    Ok(Currency::from_code(code).ok_or(CborError::Type)?)
}
