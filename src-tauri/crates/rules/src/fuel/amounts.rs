//! Amount, price of a unit and total: any two give the third, and three can disagree.

use super::FuelKind;
use units::{Amount, Energy, Money, UnitPrice, Volume, VolumeUnit};

/// The unit of an amount to which its price belongs.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum PumpUnit {
    /// A litre or a gallon.
    Volume(VolumeUnit),
    /// A kilowatt-hour.
    KilowattHour,
}

/// What can be said of amount, price and total.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Settled {
    /// Two of them are missing: nothing follows.
    Open,
    /// The amount that follows from price and total.
    Amount(Amount),
    /// The price that follows from amount and total.
    Price(UnitPrice),
    /// The total that follows from amount and price.
    Total(Money),
    /// All three are there and agree, as far as their decimals go.
    Agrees,
    /// All three are there, and amount times price comes to this, which is further off than rounding explains.
    Disagrees(Money),
    /// Price and total are in different currencies, so that nothing can be said.
    Currencies,
}

/// Half of the last decimal of an amount, in ten-thousandths of its unit: pumps show hundredths.
const HALF_AMOUNT: i128 = 50;

/// Half of the last decimal of a price, in ten-thousandths of the main unit: pumps show thousandths.
const HALF_PRICE: i128 = 5;

/// The decimals that a price is worked out to.
const PRICE_DECIMALS: u32 = 3;

impl FuelKind {
    /// The units in which it is counted, the usual one first.
    pub fn units(self) -> &'static [PumpUnit] {
        let (volumes, energy) = PumpUnit::ALL.split_at(3);
        if self == FuelKind::Electric { energy } else { volumes }
    }
}

impl PumpUnit {
    /// Every unit.
    pub const ALL: [PumpUnit; 4] = [
        PumpUnit::Volume(VolumeUnit::Litre),
        PumpUnit::Volume(VolumeUnit::UsGallon),
        PumpUnit::Volume(VolumeUnit::ImperialGallon),
        PumpUnit::KilowattHour,
    ];

    /// Its name in the words and in forms.
    pub const fn key(self) -> &'static str {
        match self {
            PumpUnit::Volume(VolumeUnit::Litre) => "litre",
            PumpUnit::Volume(VolumeUnit::UsGallon) => "us-gallon",
            PumpUnit::Volume(VolumeUnit::ImperialGallon) => "imperial-gallon",
            PumpUnit::KilowattHour => "kilowatt-hour",
        }
    }

    /// Picolitres or watt-hours in one of it.
    const fn base(self) -> i64 {
        match self {
            PumpUnit::Volume(unit) => unit.picolitres(),
            PumpUnit::KilowattHour => 1_000,
        }
    }

    /// So many hundredths of it.
    fn hundredths(self, hundredths: i64) -> Amount {
        let base = hundredths.saturating_mul(self.base() / 100);
        match self {
            PumpUnit::Volume(_) => Amount::Volume(Volume::from_picolitres(base)),
            PumpUnit::KilowattHour => Amount::Energy(Energy::from_watt_hours(base)),
        }
    }
}

/// What follows from those of the three that are there; all of them above 0.
///
/// - A total is rounded to the minor unit of its currency (ISO 4217), a price to three decimals, an amount to
///   hundredths of its unit, as pumps show them; halves up.
/// - Three disagree when the total lies outside of what amount and price come to with half of their last decimal
///   more or less (hundredths and thousandths), and half a minor unit. A till that rounds cash to
///   five or ten minor units may be further off; that is for the owner to say.
///
/// `unit` is that of the price, and an amount of another sort (an energy priced by the litre) settles nothing.
pub fn settle(
    amount: Option<Amount>,
    unit: PumpUnit,
    price: Option<UnitPrice>,
    total: Option<Money>,
) -> Settled {
    let sort = |amount: &Amount| matches!(amount, Amount::Energy(_)) == (unit == PumpUnit::KilowattHour);
    let amount = amount.filter(|amount| sort(amount) && amount.base() > 0);
    let price = price.filter(|price| price.ten_thousandths() > 0);
    let total = total.filter(|total| total.minor > 0);
    match (amount, price, total) {
        (_, Some(price), Some(total)) if price.currency != total.currency => Settled::Currencies,
        (None, Some(price), Some(total)) => Settled::Amount(unit.hundredths(hundredths(price, total))),
        (Some(amount), None, Some(total)) => {
            let price = UnitPrice::of(total, amount.base(), unit.base(), PRICE_DECIMALS);
            price.map_or(Settled::Open, Settled::Price)
        }
        (Some(amount), Some(price), None) => Settled::Total(price.times(amount.base(), unit.base())),
        (Some(amount), Some(price), Some(total)) => agree(amount, unit, price, total),
        _ => Settled::Open,
    }
}

/// How many hundredths of a unit a total buys, halves up.
fn hundredths(price: UnitPrice, total: Money) -> i64 {
    let minor = 10_i128.pow(total.currency.decimals());
    let bought = i128::from(total.minor) * 10_000 * 100;
    let each = i128::from(price.ten_thousandths()) * minor;
    i64::try_from((2 * bought + each) / (2 * each)).unwrap_or(i64::MAX)
}

/// Everything in parts of 1 / (10 000 × 10 000) of the main unit, doubled so that halves are whole.
fn agree(amount: Amount, unit: PumpUnit, price: UnitPrice, total: Money) -> Settled {
    const PARTS: i128 = 10_000;
    let price_parts = i128::from(price.ten_thousandths());
    // Rounded down and up to whole ten-thousandths, so that the span holds the exact amount.
    let amount_parts = i128::from(amount.base()) * PARTS / i128::from(unit.base());
    let half_minor = PARTS * PARTS / 10_i128.pow(total.currency.decimals());
    let least = (amount_parts - HALF_AMOUNT).max(0) * (price_parts - HALF_PRICE).max(0) * 2 - half_minor;
    let most = (amount_parts + 1 + HALF_AMOUNT) * (price_parts + HALF_PRICE) * 2 + half_minor;
    let paid = i128::from(total.minor) * half_minor * 2;
    if (least..=most).contains(&paid) {
        Settled::Agrees
    } else {
        Settled::Disagrees(price.times(amount.base(), unit.base()))
    }
}

#[cfg(test)]
#[path = "amounts_tests.rs"]
mod tests;
