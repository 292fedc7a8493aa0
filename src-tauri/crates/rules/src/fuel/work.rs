//! Which work can change what a car uses: whose visits are asked about, and what explains it when a car uses more.
//!
//! Common practice, unless an entry of [`effects`](super::effects) has a figure. The engine's air filter explains
//! nothing on an engine with injection (Oak Ridge National Laboratory, ORNL/TM-2009/021), and which engine has a
//! carburettor the book does not know, so that it is named with that condition.

use crate::upkeep::ItemRef;
use crate::vehicle::{EngineKind, Fitting, Vehicle};

/// An item of the catalogue that has to do with what a car uses.
struct Bears {
    item: u32,
    /// Its key in the catalogue, by which a test holds the number.
    #[cfg_attr(not(test), expect(dead_code, reason = "the numbers are held by it"))]
    key: &'static str,
    /// When it is due it can be why a car uses more.
    explains: bool,
    /// Its work can change consumption by more than the 3 % that are worth finding, so that spans before it and after
    /// it are not counted on one side.
    parts: bool,
}

const fn bears(item: u32, key: &'static str, explains: bool, parts: bool) -> Bears {
    Bears { item, key, explains, parts }
}

/// Looks and pressures come so often that they would leave no spans to compare; they explain, and are not asked about.
static ALL: [Bears; 24] = [
    bears(1, "engine-oil", true, false),
    bears(2, "engine-air-filter", false, false),
    bears(20, "air-mass-sensor", true, true),
    bears(4, "throttle-body", true, true),
    bears(30, "idle-valve", true, false),
    bears(5, "spark-plugs", true, true),
    bears(32, "ignition-leads", true, true),
    bears(33, "ignition-coils", true, true),
    bears(34, "vacuum-hoses", true, false),
    bears(35, "charge-air-hoses", true, false),
    bears(42, "egr-valve", true, true),
    bears(43, "particulate-filter", true, false),
    bears(24, "steering-suspension", true, false),
    bears(16, "brake-check", true, false),
    bears(51, "brake-pads-front", true, true),
    bears(52, "brake-discs-front", true, true),
    bears(53, "brake-pads-rear", true, true),
    bears(54, "brake-discs-rear", true, true),
    bears(56, "parking-brake", true, false),
    bears(15, "tyre-check", true, false),
    bears(57, "tyre-pressure", true, false),
    bears(27, "tyres", true, true),
    bears(63, "high-voltage-coolant", true, false),
    bears(64, "drive-battery", true, true),
];

/// Those of the items whose work is a look or a pressure.
const LOOKS: [u32; 7] = [16, 15, 57, 24, 34, 35, 56];

/// The symptom under which one goes on when a car uses more.
pub const SYMPTOMS: [&str; 1] = ["thirst"];

fn row(item: &ItemRef) -> Option<&'static Bears> {
    match item {
        ItemRef::Catalogue(number) => ALL.iter().find(|bears| bears.item == *number),
        ItemRef::Own(_) => None,
    }
}

/// Whether it can be asked if a visit with these items helped: one of them can change what a car uses, or all of them
/// are the owner's own and may.
pub fn may_help(items: &[ItemRef]) -> bool {
    let changes = |item: &ItemRef| match item {
        ItemRef::Own(_) => false,
        ItemRef::Catalogue(number) => row(item).is_some() && !LOOKS.contains(number),
    };
    let own = |item: &ItemRef| matches!(item, ItemRef::Own(_));
    items.iter().any(changes) || (!items.is_empty() && items.iter().all(own))
}

/// Whether spans on both sides of this work are not to be counted together.
pub fn sets_apart(item: &ItemRef) -> bool {
    row(item).is_some_and(|bears| bears.parts)
}

/// Whether a car may use more because this is due.
pub fn explains(item: &ItemRef) -> bool {
    row(item).is_some_and(|bears| bears.explains)
}

/// What else to look at when a car uses more, whether or not it is on the plan; the cheapest look first.
pub fn look_at(vehicle: &Vehicle) -> Vec<&'static str> {
    let burns = vehicle.engine.burns_fuel();
    let petrol = matches!(vehicle.engine, EngineKind::Petrol | EngineKind::PetrolHybrid | EngineKind::Other);
    let injection = vehicle.equipment.said(Fitting::ElectronicThrottle) == Some(true);
    [
        ("tyre-pressure", true),
        ("brakes-dragging", true),
        ("thermostat", burns),
        ("fuel-trims", vehicle.engine.has_spark_ignition()),
        ("oxygen-sensor", vehicle.engine.has_spark_ignition()),
        ("air-filter-carburettor", petrol && !injection),
    ]
    .into_iter()
    .filter_map(|(key, applies)| applies.then_some(key))
    .collect()
}

#[cfg(test)]
mod tests {

    #![allow(clippy::unwrap_used)]

    use std::slice::from_ref;

    use super::*;
    use crate::testing::car;
    use crate::upkeep::Catalogue;

    #[test]
    fn every_number_is_that_of_its_key() {
        let catalogue = Catalogue::shipped().unwrap();
        for bears in &ALL {
            assert_eq!(catalogue.item(bears.item).map(|item| item.key.as_str()), Some(bears.key));
        }
        assert!(LOOKS.iter().all(|look| ALL.iter().any(|bears| bears.item == *look)));
    }

    #[test]
    fn the_air_filter_explains_nothing_unless_there_is_a_carburettor() {
        let filter = ItemRef::Catalogue(2);
        assert!(may_help(from_ref(&filter)) && !explains(&filter) && !sets_apart(&filter));
        assert!(look_at(&car()).contains(&"air-filter-carburettor"));
        let mut injected = car();
        injected.equipment = injected.equipment.with(Fitting::ElectronicThrottle, Some(true));
        assert!(!look_at(&injected).contains(&"air-filter-carburettor"));
        let electric = Vehicle { engine: EngineKind::Electric, ..car() };
        assert_eq!(look_at(&electric), ["tyre-pressure", "brakes-dragging"]);
    }

    #[test]
    fn insurance_is_not_asked_about_and_a_look_explains_only() {
        let insurance = ItemRef::Catalogue(68);
        assert!(!may_help(from_ref(&insurance)) && !explains(&insurance));
        let pressure = ItemRef::Catalogue(57);
        assert!(!may_help(from_ref(&pressure)) && explains(&pressure) && !sets_apart(&pressure));
        let own = ItemRef::Own("Roof box taken off".parse().unwrap());
        assert!(may_help(from_ref(&own)) && !may_help(&[own, pressure]) && !may_help(&[]));
    }
}
