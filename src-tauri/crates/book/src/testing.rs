//! What the tests of this crate share: the simplest vehicle that a book can be of.

use rules::vehicle::{Conditions, EngineKind, Equipment};
use units::DistanceUnit;

use crate::content::VehicleContent;

/// A vehicle of which next to nothing is known.
pub(crate) fn vehicle() -> VehicleContent {
    VehicleContent {
        name: "rusty".to_owned(),
        make_model: String::new(),
        vin: None,
        engine: EngineKind::Diesel,
        unit: DistanceUnit::Mile,
        first_use: None,
        from_new: false,
        yearly: None,
        conditions: Conditions::default(),
        equipment: Equipment::default(),
        values: std::collections::BTreeMap::new(),
    }
}
