//! A vehicle as typed.

use std::collections::BTreeMap;

use book::content::{ReadingContent, VehicleContent};
use rules::guides::Guides;
use rules::running::OdometerStatus;
use rules::vehicle::{CheckDigit, Conditions, Equipment, Fitting, Vin};
use units::{Day, Distance, DistanceUnit};

use super::{line, name, past_day, reading_text, unit, unknown};
use crate::screens::engine_from;
use crate::{DrivenForm, Refusal, VehicleForm};

/// The most that anyone drives in a year, in either unit.
const MOST_A_YEAR: i64 = 1_000_000;

/// Everything that is known of a vehicle.
pub(crate) fn vehicle(form: &VehicleForm, today: Day) -> Result<VehicleContent, Refusal> {
    let unit = unit(&form.unit, "unit")?;
    Ok(VehicleContent {
        name: name(&form.name, "name")?,
        make_model: line(&form.make_model, "make_model")?,
        vin: vin(&form.vin)?,
        engine: engine_from(&form.engine)
            .ok_or_else(|| Refusal::new("engine").with("text", &form.engine).at("engine"))?,
        unit,
        first_use: some(&form.first_use).map(|text| past_day(text, today, "first_use")).transpose()?,
        from_new: form.bought_new,
        yearly: some(&form.yearly).map(|text| yearly(text, unit)).transpose()?,
        conditions: conditions(form.driven),
        equipment: equipment(&form.fitted)?,
        values: values(&form.values)?,
    })
}

/// The reading that came with a new vehicle, if one did.
pub(crate) fn first_reading(
    form: &VehicleForm,
    unit: DistanceUnit,
    today: Day,
) -> Result<Option<ReadingContent>, Refusal> {
    let Some(text) = some(&form.reading) else {
        return Ok(None);
    };
    let shown = reading_text(text, unit, "vehicle.reading")?;
    Ok(Some(ReadingContent {
        day: today,
        shown,
        status: OdometerStatus::Actual,
        fuel: None,
        papers: Vec::new(),
    }))
}

/// What is odd about a vehicle without keeping it from being written.
pub(crate) fn vehicle_warnings(vehicle: &VehicleContent) -> Vec<String> {
    let wrong = |vin: Vin| matches!(vin.check_digit(), CheckDigit::Wrong { .. });
    vehicle.vin.filter(|vin| wrong(*vin)).map(|_| "vin-check-digit".to_owned()).into_iter().collect()
}

fn some(text: &str) -> Option<&str> {
    Some(text.trim()).filter(|text| !text.is_empty())
}

fn vin(text: &str) -> Result<Option<Vin>, Refusal> {
    some(text).map(Vin::parse).transpose().map_err(|error| Refusal::from(error).at("vin"))
}

fn yearly(text: &str, unit: DistanceUnit) -> Result<Distance, Refusal> {
    let distance = Distance::parse_reading(text, unit).ok();
    distance
        .filter(|distance| (1..=MOST_A_YEAR).contains(&distance.floor(unit)))
        .ok_or_else(|| Refusal::new("yearly").with("text", text).at("yearly"))
}

/// What the owner said of the car's fittings.
fn equipment(fitted: &BTreeMap<String, bool>) -> Result<Equipment, Refusal> {
    fitted.iter().try_fold(Equipment::default(), |equipment, (key, &has)| {
        let fitting = Fitting::from_key(key);
        let fitting = fitting.ok_or_else(|| Refusal::new("fitting").with("text", key).at("fitted"))?;
        Ok(equipment.with(fitting, Some(has)))
    })
}

/// The numbers of the car that its guides ask for; an empty one is none.
fn values(typed: &BTreeMap<String, String>) -> Result<BTreeMap<u32, String>, Refusal> {
    let library = Guides::shipped()?;
    let mut values = BTreeMap::new();
    for (key, text) in typed {
        let known = library.values().iter().find(|value| value.key == *key);
        let known = known.ok_or_else(|| unknown("value-unknown", key).at("values"))?;
        let text = line(text, &format!("values.{key}"))?;
        if !text.is_empty() {
            values.insert(known.number, text);
        }
    }
    Ok(values)
}

fn conditions(driven: DrivenForm) -> Conditions {
    Conditions {
        short_trips: driven.short_trips,
        towing: driven.towing,
        dust: driven.dust,
        standing_traffic: driven.standing,
    }
}
