//! Readings as typed.

use book::content::ReadingContent;
use rules::running::OdometerStatus;
use rules::vehicle::Vehicle;
use units::{Day, Distance, DistanceUnit};

use super::day_or;
use super::fuel::fuel;
use super::visit::papers;
use crate::{Keep, ReadingForm, Refusal};

/// A reading, with its fuel if there is any; `keep` says what the owner has been asked of what can hardly be.
pub(crate) fn reading(
    form: &ReadingForm,
    vehicle: &Vehicle,
    today: Day,
    keep: &Keep,
) -> Result<ReadingContent, Refusal> {
    let fuel = form.fuel.as_ref().map(|form| fuel(form, vehicle.engine, keep));
    Ok(ReadingContent {
        day: past_day(&form.day, today, "day")?,
        shown: reading_text(&form.reading, vehicle.unit, "reading")?,
        status: status(&form.status)?,
        fuel: fuel.transpose().map_err(|refusal| refusal.within("fuel"))?,
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
