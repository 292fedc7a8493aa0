//! The order of checks against troubles drawn by chance from tables that differ from those of the program.
//!
//! The causes of these cases come up as often, and show as often, as in tables of which every number is off
//! by a factor of about two, while the program judges them by its own. So this says what the order is worth
//! when the model is right and its numbers are not; the case notes say what it is worth when the model may be
//! wrong too.
#![allow(clippy::unwrap_used)]

use super::trial::{Trial, mean, off_by_two, others};
use super::{Complaint, Trouble};
use crate::statistics::chance::Chance;
use crate::testing::{car, day};
use crate::vehicle::{EngineKind, Vehicle};

/// A trouble of this car: its cause, and the symptoms that show; `None` when it shows in
/// nothing, because its owner then does not ask.
fn drawn(world: &Trouble, vehicle: &Vehicle, chance: &mut Chance) -> Option<(String, Vec<String>)> {
    let rates: Vec<_> =
        world.causes().iter().filter_map(|cause| Some((cause, cause.rate(vehicle)?))).collect();
    let mut at = chance.between(0.0, rates.iter().map(|(_, rate)| rate).sum());
    let (cause, _) = rates.iter().find(|(_, rate)| {
        at -= rate;
        at <= 0.0
    })?;
    let links: Vec<_> = world.shown_by(cause).collect();
    let mut does = false;
    let mut comes = |symptom: &&super::Symptom| {
        let link = links.iter().find(|(shown, _)| shown.key == symptom.key).map_or(0.0, |(_, link)| *link);
        let brought = chance.between(0.0, 1.0) < link;
        does |= brought;
        brought || chance.between(0.0, 1.0) < symptom.anyway
    };
    let symptoms = world.symptoms_of(vehicle).filter(|symptom| comes(symptom));
    let shown: Vec<_> = symptoms.map(|symptom| symptom.key.clone()).collect();
    does.then(|| (cause.key.clone(), shown))
}

/// Measured on 1089 of them: 159 minutes against 161 by ratio, 199 by likelihood, 177 by cost and 276 at
/// random.
#[test]
fn the_order_costs_less_than_any_other_on_troubles_drawn_by_chance() {
    let table = Trouble::shipped().unwrap();
    let mut chance = Chance(1995);
    let mut trials = Vec::new();
    while trials.len() < 1000 {
        let world = off_by_two(table, &mut chance);
        for engine in [EngineKind::Petrol, EngineKind::Diesel, EngineKind::PetrolHybrid, EngineKind::Electric]
        {
            let vehicle = Vehicle { engine, ..car() };
            for _ in 0..25 {
                let Some((cause, shown)) = drawn(&world, &vehicle, &mut chance) else { continue };
                let complaint = Complaint { shown, ..Complaint::of(&vehicle, day("2025-01-01")) };
                trials.push(Trial::of(table, &complaint, &cause));
            }
        }
    }
    let ours = mean(&trials.iter().map(Trial::best).collect::<Vec<_>>());
    let [ratio, likely, cheap, random] = others(&trials, &mut chance);
    println!(
        "drawn: ours   {ours:?}\ndrawn: ratio  {ratio:?}\ndrawn: likely {likely:?}\ndrawn: cheap  {cheap:?}\n\
         drawn: random {random:?}"
    );
    assert!(
        ours.cost < ratio.cost
            && ours.cost < likely.cost
            && ours.cost < cheap.cost
            && ours.cost < 0.6 * random.cost
    );
}
