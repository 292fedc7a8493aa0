//! What a card claims of a car.

use book::content::By;
use card::{
    Claims, Engine, Flags, HeadPrefix, InstrumentChange, Item, NEXT_MAX, NextDue, OdometerReading, Vehicle,
};
use rules::upkeep::{DueLine, ItemRef};
use rules::vehicle::EngineKind;
use units::{Day, Distance, DistanceUnit, Hash};

use crate::car::{Car, Visit};
use crate::clock::day_of;
use crate::{CardOptions, Refusal, VinShown};

/// Written down later than this many days after the day it names, a visit is marked so (card code, version 1).
const LATE_DAYS: i32 = 30;

/// Everything that the card says of this car, with all its visits.
pub(super) fn claims(
    car: &Car,
    visits: &[Visit],
    due: &[DueLine],
    options: &CardOptions,
    head: Hash,
    today: Day,
) -> Result<Claims, Refusal> {
    let unit = car.unit();
    let (day, shown) = car.last_reading().ok_or_else(|| Refusal::new("card-no-reading"))?;
    let instruments = car.instruments.iter().map(|change| InstrumentChange {
        day: change.day,
        old: count(change.old, unit),
        new: count(change.new, unit),
    });
    Ok(Claims {
        issued: today,
        vehicle: vehicle(car, options),
        unit,
        latest: OdometerReading { day, reading: count(shown, unit) },
        visits: visits.iter().map(|visit| claimed(visit, car)).collect(),
        left_out: 0,
        head: Some(HeadPrefix::from(&head)),
        next: next(due, unit),
        instruments: instruments.collect(),
    })
}

fn vehicle(car: &Car, options: &CardOptions) -> Vehicle {
    // Part of a number would not be comparable with the whole one on another card, so the square has all or nothing.
    let vin = car.content.vin.filter(|_| options.vin == VinShown::Whole);
    Vehicle {
        name: car.content.name.clone(),
        vin: vin.map(|vin| vin.to_string()),
        engine: Some(engine(car.vehicle.engine)),
        description: Some(car.content.make_model.clone()).filter(|text| !text.is_empty()),
        first_use: car.vehicle.first_use,
    }
}

const fn engine(kind: EngineKind) -> Engine {
    match kind {
        EngineKind::Petrol => Engine::Petrol,
        EngineKind::Diesel => Engine::Diesel,
        EngineKind::PetrolHybrid => Engine::PetrolHybrid,
        EngineKind::DieselHybrid => Engine::DieselHybrid,
        EngineKind::Gas => Engine::Gas,
        EngineKind::Electric => Engine::Electric,
        EngineKind::Other => Engine::Other,
    }
}

/// The number of an engine on the card, which is that of the rules as well.
pub(super) const fn engine_number(engine: Engine) -> u8 {
    engine as u8
}

/// Whole units on the instrument. A reading has at most seven digits, so that it always fits.
pub(super) fn count(distance: Distance, unit: DistanceUnit) -> i32 {
    i32::try_from(distance.floor(unit)).unwrap_or(i32::MAX)
}

/// A visit whose reading nobody wrote down bears the one that its day had between the readings around it.
fn claimed(visit: &Visit, car: &Car) -> card::Visit {
    let shown = visit.content.shown.or_else(|| car.shown_on(visit.content.day)).unwrap_or_default();
    card::Visit {
        day: visit.content.day,
        reading: count(shown, car.unit()),
        flags: flags(visit),
        items: visit.content.items.iter().map(item).collect(),
    }
}

pub(super) fn item(item: &ItemRef) -> Item {
    match item {
        ItemRef::Catalogue(number) => Item::Catalogue(*number),
        ItemRef::Own(name) => Item::Own(name.to_string()),
    }
}

/// By whom, and how well it is recorded.
pub(super) fn flags(visit: &Visit) -> Flags {
    let by = match visit.content.by {
        By::Owner => Flags::BY_OWNER,
        By::Workshop(_) => Flags::BY_WORKSHOP,
    };
    let late = day_of(visit.written).days_since(visit.content.day) > LATE_DAYS;
    by.with(Flags::RECEIPT, !visit.content.papers.is_empty())
        .with(Flags::WRITTEN_LATE, late)
        .with(Flags::AMENDED, visit.amended)
}

/// The keys of a visit's flags, in the order of their numbers.
pub(super) fn mark_keys(flags: Flags) -> Vec<&'static str> {
    let keys = [
        (Flags::BY_OWNER, "owner"),
        (Flags::BY_WORKSHOP, "workshop"),
        (Flags::RECEIPT, "receipt"),
        (Flags::PHOTO, "photo"),
        (Flags::WRITTEN_LATE, "late"),
        (Flags::AMENDED, "amended"),
    ];
    keys.into_iter().filter(|(flag, _)| flags.contains(*flag)).map(|(_, key)| key).collect()
}

/// What comes next, by the day on which it falls due; what has no day and no reading can not be said, and a
/// round of the car is nothing that a buyer asks about.
fn next(due: &[DueLine], unit: DistanceUnit) -> Vec<NextDue> {
    let due = due.iter().filter(|line| !line.round);
    let mut dated: Vec<_> = due.filter(|line| line.due.is_some() || line.due_shown.is_some()).collect();
    dated.sort_by_key(|line| line.due.map(|due| due.likely).map_or((1, None), |day| (0, Some(day))));
    let next = dated.into_iter().take(NEXT_MAX).map(|line| NextDue {
        item: item(&line.item),
        day: line.due.map(|due| due.likely),
        reading: line.due_shown.map(|shown| count(shown, unit)),
    });
    next.collect()
}
