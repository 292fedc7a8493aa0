//! Putting everything that happened to a car into the order in which it was written down.

use units::Day;

use super::drive::Drive;
use super::parts::{self, Part};
use super::people::Car;
use super::plans::Settled;
use super::receipt::{self, Receipt};
use super::visits::{line, number};
use super::{DemoCar, Step, What, fills, meter, visits};
use crate::{ReadingForm, VisitForm};

/// A step whose place in the book is not known yet.
pub(super) struct Draft {
    written: Day,
    what: Told,
}

/// What a draft says; what refers to another draft waits until that one has its place.
enum Told {
    Done(What),
    /// The draft before this one is struck out.
    Struck {
        why: &'static str,
    },
    /// The visit of a day was written wrong at first.
    Amended {
        wrong: VisitForm,
        right: VisitForm,
        why: &'static str,
    },
}

impl Draft {
    /// Something written down on a day.
    pub(super) fn new(written: Day, what: What) -> Draft {
        Draft { written, what: Told::Done(what) }
    }
}

/// The whole book of a car.
pub(super) fn tell(car: &Car, today: Day) -> DemoCar {
    let drive = Drive::new(car, today);
    let mut drafts = plans(car);
    drafts.extend(instrument(car, &drive));
    let fills = fills::fills(car, &drive, today);
    drafts.extend(mistyped(car, &fills));
    drafts.extend(fills);
    drafts.extend(visits::visits(car, &drive, today));
    drafts.extend(meter::measured(car, today));
    drafts.extend(tray(car, today));
    drafts.sort_by_key(|draft| draft.written);
    amend(&mut drafts, today);
    DemoCar { vehicle: car.vehicle.clone(), begins: car.begins, steps: steps(drafts) }
}

fn plans(car: &Car) -> Vec<Draft> {
    let plan = |(day, item, change): &Settled| {
        Draft::new(*day, What::Plan { item: item.clone(), change: change.clone() })
    };
    car.plan.iter().map(plan).collect()
}

fn instrument(car: &Car, drive: &Drive<'_>) -> Option<Draft> {
    let day = car.replaced?;
    Some(Draft::new(
        day,
        What::Instrument { day: day.to_string(), old: drive.total(day), new: "0".to_owned() },
    ))
}

/// Some ten months ago a reading was typed with a wrong digit, and struck out on the same day.
fn mistyped(car: &Car, fills: &[Draft]) -> Vec<Draft> {
    let Some(Draft { written, what: Told::Done(What::Reading(right)) }) = fills.iter().rev().nth(24) else {
        return Vec::new();
    };
    let wrong = right.reading.parse().map(|count: u32| (count + 9_000).to_string());
    let Some(wrong) = wrong.ok().filter(|_| car.mistyped) else {
        return Vec::new();
    };
    let wrong = ReadingForm { reading: wrong, ..right.clone() };
    let struck = Told::Struck { why: "Mistyped: the thousands are wrong." };
    vec![Draft::new(*written, What::Reading(wrong)), Draft { written: *written, what: struck }]
}

/// What was bought for the next visit lies in the tray.
fn tray(car: &Car, today: Day) -> Option<Draft> {
    let bought: &[&[Part]] = match car.vehicle.engine.as_str() {
        "petrol" => &[parts::PETROL_CABIN, parts::PETROL_AIR],
        _ => &[parts::DIESEL_CABIN, parts::DIESEL_AIR_WIPERS],
    };
    let day = today.plus_days(-3);
    let place = car.place(day);
    let lines = bought.concat().iter().map(|part| line(part, part.price * 127 / 500 * 5)).collect();
    let currency = receipt::currency(place.currency)?;
    Some(Draft::new(
        day,
        What::Tray(Receipt { shop: place.counter, day, number: number(day), lines, currency }),
    ))
}

/// The last oil change but one was written with a litre too much, and put right two weeks later.
fn amend(drafts: &mut Vec<Draft>, today: Day) {
    let oil = |draft: &Draft| match &draft.what {
        Told::Done(What::Visit { form, .. }) => form.parts.iter().any(|part| part.quantity == "4.2"),
        _ => false,
    };
    let Some(at) = drafts.iter().enumerate().rev().filter(|(_, draft)| oil(draft)).map(|(at, _)| at).nth(1)
    else {
        return;
    };
    let written = drafts[at].written.plus_days(13).min(today);
    let Told::Done(What::Visit { form, .. }) = &mut drafts[at].what else {
        return;
    };
    let right = form.clone();
    for part in &mut form.parts {
        if part.quantity == "4.2" {
            "5.2".clone_into(&mut part.quantity);
        }
    }
    let amended = Told::Amended { wrong: form.clone(), right, why: "The bottle holds 5 L; 4.2 L went in." };
    let place = drafts.partition_point(|draft| draft.written <= written);
    drafts.insert(place, Draft { written, what: amended });
}

/// Gives every draft its place.
fn steps(drafts: Vec<Draft>) -> Vec<Step> {
    let mut steps: Vec<Step> = Vec::with_capacity(drafts.len());
    for Draft { written, what } in drafts {
        let what = match what {
            Told::Done(what) => Some(what),
            Told::Struck { why } => {
                steps.len().checked_sub(1).map(|of| What::StrikeOut { of, why: why.to_owned() })
            }
            Told::Amended { wrong, right, why } => {
                place_of(&steps, &wrong).map(|of| What::AmendVisit { of, form: right, why: why.to_owned() })
            }
        };
        steps.extend(what.map(|what| Step { written, what }));
    }
    steps
}

fn place_of(steps: &[Step], wrong: &VisitForm) -> Option<usize> {
    let same = |form: &VisitForm| {
        form.day == wrong.day && form.items.len() == wrong.items.len() && form.cost == wrong.cost
    };
    steps.iter().position(|step| matches!(&step.what, What::Visit { form, .. } if same(form)))
}
