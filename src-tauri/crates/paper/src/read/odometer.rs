//! The odometer reading that a workshop or a pump prints.

use units::{Distance, DistanceUnit};

use super::fold::key;
use super::page::{Line, Page};
use super::place::Place;
use super::receipt::{Country, Field, Known, Sure};
use super::words::{KILOMETRES, MILES, Role};

/// The reading, if a label or a unit makes a number one.
pub(super) fn odometer(
    page: &Page,
    known: &Known<'_>,
    place: &Place,
) -> Option<Field<(Distance, DistanceUnit)>> {
    let labelled = page.lines.iter().find_map(|line| labelled(line, known, place));
    labelled.or_else(|| page.lines.iter().find_map(by_unit))
}

/// A whole number behind a label.
fn labelled(line: &Line, known: &Known<'_>, place: &Place) -> Option<Field<(Distance, DistanceUnit)>> {
    let label = line.labels.first(Role::Odometer)?;
    if line.labels.has(Role::NextReading) || line.labels.has(Role::OtherDay) {
        return None;
    }
    let behind = line.figures.iter().enumerate().filter(|(_, figure)| figure.at.start >= label.at.end);
    let (count, at, unit) = behind.map(|(index, _)| index).find_map(|index| reading(line, index))?;
    let near = line.labels.before(at.start).is_none_or(|nearest| nearest.role == Role::Odometer);
    let unit = unit.unwrap_or_else(|| meant(&line.text(label.at.clone()), known, place));
    let crisp = near && line.letters(&at) >= 0.8 && count >= 1_000;
    let sure = if crisp { Sure::Likely } else { Sure::Doubtful };
    near.then(|| Field { value: (Distance::whole(count, unit), unit), sure, area: line.area(&at) })
}

/// `123.456 km` without a label.
fn by_unit(line: &Line) -> Option<Field<(Distance, DistanceUnit)>> {
    let other =
        [Role::NextReading, Role::OtherDay, Role::OtherNumber].into_iter().any(|role| line.labels.has(role));
    let (count, at, unit) =
        (0..line.figures.len()).filter_map(|index| reading(line, index)).find(|(.., unit)| unit.is_some())?;
    let value = (Distance::whole(count, unit?), unit?);
    (!other && count >= 5_000).then(|| Field { value, sure: Sure::Doubtful, area: line.area(&at) })
}

type Reading = (i64, std::ops::Range<usize>, Option<DistanceUnit>);

/// A number of three to seven digits, also in two groups with a space between them.
fn reading(line: &Line, index: usize) -> Option<Reading> {
    let figure = line.figures.get(index)?;
    let mut count = figure.whole().filter(|_| !figure.is_percent() && figure.digits > 0)?;
    let (mut end, mut unit) = (figure.at.end, &figure.unit);
    let follows = |next: &&super::figures::Figure| {
        next.at.start == figure.at.end + 1 && next.at.len() == 3 && next.places == 0
    };
    if let Some(next) = line.figures.get(index + 1).filter(follows).filter(|_| figure.at.len() <= 3) {
        count = count * 1_000 + next.digits;
        (end, unit) = (next.at.end, &next.unit);
    }
    let unit = match unit.as_str() {
        unit if KILOMETRES.contains(&unit) => Some(DistanceUnit::Kilometre),
        unit if MILES.contains(&unit) => Some(DistanceUnit::Mile),
        _ => None,
    };
    (100..=Distance::LARGEST_READING).contains(&count).then_some((count, figure.at.start..end, unit))
}

/// The unit that goes with a label: what it says itself, else the country's.
fn meant(label: &str, known: &Known<'_>, place: &Place) -> DistanceUnit {
    let label = key(label);
    if label.contains(&key("mile")) {
        return DistanceUnit::Mile;
    }
    let kilometres = label.contains("km") || label.contains(&key("kilom")) || label.contains(&key("stand"));
    let country = place.country.or(known.country);
    let miles = matches!(country.as_ref().map(Country::code), Some("GB" | "US"));
    let dollars = place.currency.is_some_and(|currency| currency.value.code() == "USD");
    if !kilometres && (miles || dollars) { DistanceUnit::Mile } else { DistanceUnit::Kilometre }
}
