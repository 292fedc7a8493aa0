//! Reading what was typed. Each refusal names its field.

mod bought;
mod fuel;
mod measured;
mod plan;
mod reading;
mod trouble;
mod vehicle;
mod visit;

use units::{Currency, Day, Distance, DistanceUnit, Money};

use crate::Refusal;

pub(crate) use bought::{bought, part_note};
pub(crate) use fuel::amount_number;
pub(crate) use measured::{measured, read_measured};
pub(crate) use plan::{item, plan};
pub(crate) use reading::{past_day, reading, reading_text};
pub(crate) use trouble::{draft, tools, trouble, unknown};
pub(crate) use vehicle::{first_reading, vehicle, vehicle_warnings};
use visit::too_many;
pub(crate) use visit::visit;

/// The longest note, in characters.
const LONGEST_NOTE: usize = 2_000;
/// The longest name of a car, a workshop, a part or a maker, in characters.
const LONGEST_NAME: usize = 60;
/// The most items, parts or papers of one visit.
const MOST_ROWS: usize = 100;

/// A reading with its unit, as a sentence names it.
pub(crate) fn shown(distance: Distance, unit: DistanceUnit) -> String {
    format!("{} {unit}", distance.floor(unit))
}

/// A text of several lines that may be empty.
pub(crate) fn note(text: &str, field: &str) -> Result<String, Refusal> {
    let text = text.trim();
    let wrong = |c: char| c.is_control() && c != '\n';
    if text.chars().count() > LONGEST_NOTE || text.contains(wrong) {
        return Err(Refusal::new("text-too-long").with("most", LONGEST_NOTE).at(field));
    }
    Ok(text.to_owned())
}

/// A text of one line that may be empty.
fn line(text: &str, field: &str) -> Result<String, Refusal> {
    let text = text.trim();
    if text.chars().count() > LONGEST_NAME || text.contains(char::is_control) {
        return Err(Refusal::new("text-too-long").with("most", LONGEST_NAME).at(field));
    }
    Ok(text.to_owned())
}

/// A text of one line that says something.
fn name(text: &str, field: &str) -> Result<String, Refusal> {
    if text.trim().contains(char::is_control) {
        return Err(Refusal::new("name-control").at(field));
    }
    let refusal = || Refusal::new("name-length").with("most", LONGEST_NAME).at(field);
    line(text, field).ok().filter(|text| !text.is_empty()).ok_or_else(refusal)
}

/// An amount that may be left empty, in a currency that may be left empty with it.
fn money(text: &str, currency: &str, field: &str) -> Result<Option<Money>, Refusal> {
    if text.trim().is_empty() {
        return Ok(None);
    }
    let currency = self::currency(currency)?;
    Money::parse(text, currency).map(Some).map_err(|error| Refusal::from(error).at(field))
}

/// A currency, which has to be there.
fn currency(code: &str) -> Result<Currency, Refusal> {
    if code.trim().is_empty() {
        return Err(Refusal::new("currency-missing").at("currency"));
    }
    code.parse().map_err(|error| Refusal::from(error).at("currency"))
}

/// A unit of distance, kilometres when empty.
fn unit(text: &str, field: &str) -> Result<DistanceUnit, Refusal> {
    match text {
        "km" | "" => Ok(DistanceUnit::Kilometre),
        "mi" => Ok(DistanceUnit::Mile),
        other => Err(Refusal::new("unit").with("text", other).at(field)),
    }
}

/// Today or a day to come.
pub(crate) fn day_ahead(text: &str, today: Day, field: &str) -> Result<Day, Refusal> {
    let day: Day = text.trim().parse().map_err(|error| Refusal::from(error).at(field))?;
    if day < today {
        return Err(Refusal::new("day-past").with("day", day).at(field));
    }
    Ok(day)
}

/// Today when empty.
fn day_or(text: &str, today: Day) -> Result<Day, Refusal> {
    if text.trim().is_empty() { Ok(today) } else { Ok(text.trim().parse()?) }
}
