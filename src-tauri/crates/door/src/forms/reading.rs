//! Readings and fuel as typed.

use book::content::{Fill, Fuel, ReadingContent};
use rules::running::OdometerStatus;
use units::{Day, Distance, DistanceUnit, Volume, VolumeUnit};

use super::visit::papers;
use super::{day_or, money};
use crate::{FuelForm, ReadingForm, Refusal};

/// A reading, with its fuel if there is any.
pub(crate) fn reading(form: &ReadingForm, unit: DistanceUnit, today: Day) -> Result<ReadingContent, Refusal> {
    Ok(ReadingContent {
        day: past_day(&form.day, today, "day")?,
        shown: reading_text(&form.reading, unit, "reading")?,
        status: status(&form.status)?,
        fuel: form.fuel.as_ref().map(fuel).transpose().map_err(|refusal| refusal.within("fuel"))?,
        papers: papers(&form.papers)?,
    })
}

/// A day that is not in the future; today when empty.
pub(crate) fn past_day(text: &str, today: Day, field: &str) -> Result<Day, Refusal> {
    let day = day_or(text, today).map_err(|refusal| refusal.at(field))?;
    if day > today { Err(Refusal::new("day-future").with("day", day).at(field)) } else { Ok(day) }
}

/// The digits that an instrument shows.
pub(crate) fn reading_text(text: &str, unit: DistanceUnit, field: &str) -> Result<Distance, Refusal> {
    if text.trim().is_empty() {
        return Err(Refusal::new("reading-empty").at(field));
    }
    Distance::parse_reading(text, unit).map_err(|error| Refusal::from(error).at(field))
}

fn status(text: &str) -> Result<OdometerStatus, Refusal> {
    match text {
        "actual" | "" => Ok(OdometerStatus::Actual),
        "exceeds-limits" => Ok(OdometerStatus::ExceedsMechanicalLimits),
        "not-actual" => Ok(OdometerStatus::NotActual),
        other => Err(Refusal::new("status").with("text", other).at("status")),
    }
}

fn fuel(form: &FuelForm) -> Result<Fuel, Refusal> {
    let unit = match form.volume_unit.as_str() {
        "litre" | "" => VolumeUnit::Litre,
        "us-gallon" => VolumeUnit::UsGallon,
        "imperial-gallon" => VolumeUnit::ImperialGallon,
        other => return Err(Refusal::new("volume-unit").with("text", other).at("volume_unit")),
    };
    let fill = match form.fill.as_str() {
        "full" | "" => Fill::Full,
        "part" => Fill::Part,
        "missed" => Fill::MissedBefore,
        other => return Err(Refusal::new("fill").with("text", other).at("fill")),
    };
    let volume = Volume::parse(&form.volume, unit);
    let volume = volume.map_err(|_| Refusal::new("volume").with("text", &form.volume).at("volume"))?;
    Ok(Fuel { volume, unit, total: money(&form.total, &form.currency, "total")?, fill })
}
