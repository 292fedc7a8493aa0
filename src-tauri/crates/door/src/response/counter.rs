//! The Counter.

use serde::{Deserialize, Serialize};
use ts_rs::TS;

use super::{GetView, ItemView, PaperView, VehicleLine};

/// The Counter screen.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct CounterView {
    /// The vehicle.
    pub vehicle: VehicleLine,
    /// What the next visit needs.
    pub get: Vec<GetView>,
    /// The papers that belong to no visit yet, newest first.
    pub tray: Vec<PaperView>,
    /// The visits to which a paper may be tied, newest first, at most 20.
    pub visits: Vec<VisitLine>,
}

/// A visit in a list.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct VisitLine {
    /// Its line.
    pub subject: String,
    /// The day.
    pub day: String,
    /// What was done.
    pub items: Vec<ItemView>,
    /// By whom; empty when the owner did it.
    pub workshop: String,
}
