//! Fuel as typed: what it was, how much, and what it cost.

use book::content::{Fill, Filled, Fuel};
use rules::fuel::{FuelKind, PumpUnit, Settled, settle};
use rules::vehicle::EngineKind;
use units::{Amount, Currency, Energy, Money, UnitPrice, Volume, VolumeUnit};

use super::{currency, money};
use crate::{FuelForm, Keep, Refusal};

/// Fuel for a car with this engine. What two of amount, price and total leave open is worked out; three that
/// disagree are asked about, unless the owner wants them kept.
pub(super) fn fuel(form: &FuelForm, engine: EngineKind, keep: &Keep) -> Result<Fuel, Refusal> {
    let kind = kind(&form.kind, engine)?;
    let unit = unit(&form.unit, kind.unwrap_or(FuelKind::own(engine)))?;
    let fill = fill(&form.fill)?;
    let typed = Typed {
        unit,
        amount_text: form.amount.trim(),
        amount: amount(&form.amount, unit)?,
        price: price(&form.price, &form.currency)?,
        total: money(&form.total, &form.currency, "total")?,
    };
    let (amount, total) = typed.settle(keep)?;
    let filled = Filled::new(kind, amount, unit).ok_or_else(|| unit_refusal(&form.unit))?;
    Ok(Fuel { filled, price: typed.price, total, fill })
}

/// Amount, price and total as far as they were typed.
struct Typed<'a> {
    unit: PumpUnit,
    amount_text: &'a str,
    amount: Option<Amount>,
    price: Option<UnitPrice>,
    total: Option<Money>,
}

impl Typed<'_> {
    /// The amount, and the total if there is one.
    fn settle(&self, keep: &Keep) -> Result<(Amount, Option<Money>), Refusal> {
        let settled = settle(self.amount, self.unit, self.price, self.total);
        if let Settled::Disagrees(worked_out) = settled {
            keep.ask(self.disagree(worked_out))?;
        }
        let total = if let Settled::Total(total) = settled { Some(total) } else { self.total };
        let amount = match settled {
            Settled::Amount(amount) => self.checked(amount)?,
            _ => self.amount.ok_or_else(|| Refusal::new("fuel-two-needed").at("amount"))?,
        };
        Ok((amount, total))
    }

    /// An amount that follows from price and total must be one that could have been typed.
    fn checked(&self, amount: Amount) -> Result<Amount, Refusal> {
        parse_amount(&amount_number(amount, self.unit), self.unit)
    }

    fn disagree(&self, worked_out: Money) -> Refusal {
        Refusal::new("fuel-disagrees")
            .with("amount", self.amount_text)
            .with("unit", self.unit.key())
            .with("price", self.price.map(|price| price.to_string()).unwrap_or_default())
            .with("total", self.total.map(|total| total.to_string()).unwrap_or_default())
            .with("worked-out", worked_out)
            .at("total")
    }
}

/// The number of units, with three decimals.
pub(crate) fn amount_number(amount: Amount, unit: PumpUnit) -> String {
    match (amount, unit) {
        (Amount::Volume(volume), PumpUnit::Volume(unit)) => volume.number(unit),
        (Amount::Volume(volume), PumpUnit::KilowattHour) => volume.number(VolumeUnit::Litre),
        (Amount::Energy(energy), _) => energy.number(),
    }
}

/// The kind, which must be one that the car takes; none when empty.
fn kind(text: &str, engine: EngineKind) -> Result<Option<FuelKind>, Refusal> {
    if text.trim().is_empty() {
        return Ok(None);
    }
    let kind = FuelKind::from_key(text.trim()).filter(|kind| FuelKind::taken_by(engine).contains(kind));
    kind.map(Some).ok_or_else(|| Refusal::new("fuel-kind").with("text", text).at("kind"))
}

fn unit(text: &str, kind: FuelKind) -> Result<PumpUnit, Refusal> {
    let units = kind.units();
    let typed = units.iter().find(|unit| unit.key() == text.trim());
    let usual = units.first().filter(|_| text.trim().is_empty());
    typed.or(usual).copied().ok_or_else(|| unit_refusal(text))
}

fn unit_refusal(text: &str) -> Refusal {
    Refusal::new("fuel-unit").with("text", text).at("unit")
}

fn fill(text: &str) -> Result<Fill, Refusal> {
    match text {
        "full" | "" => Ok(Fill::Full),
        "part" => Ok(Fill::Part),
        "missed" => Ok(Fill::MissedBefore),
        other => Err(Refusal::new("fill").with("text", other).at("fill")),
    }
}

fn amount(text: &str, unit: PumpUnit) -> Result<Option<Amount>, Refusal> {
    if text.trim().is_empty() { Ok(None) } else { parse_amount(text, unit).map(Some) }
}

fn parse_amount(text: &str, unit: PumpUnit) -> Result<Amount, Refusal> {
    let amount = match unit {
        PumpUnit::Volume(unit) => Volume::parse(text, unit).map(Amount::Volume),
        PumpUnit::KilowattHour => Energy::parse(text).map(Amount::Energy),
    };
    amount.map_err(|_| Refusal::new("fuel-amount").with("text", text).at("amount"))
}

fn price(text: &str, code: &str) -> Result<Option<UnitPrice>, Refusal> {
    if text.trim().is_empty() {
        return Ok(None);
    }
    let currency: Currency = currency(code)?;
    UnitPrice::parse(text, currency).map(Some).map_err(|error| Refusal::from(error).at("price"))
}
