//! The Bay.

use serde::{Deserialize, Serialize};
use ts_rs::TS;

use super::{CautionView, GuideLine, ItemView, PaperView, PartView, StateKey, VehicleLine};

/// The Bay screen.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct BayView {
    /// The vehicle.
    pub vehicle: VehicleLine,
    /// Today.
    pub today: String,
    /// The jobs on the plan, most pressing first.
    pub jobs: Vec<JobView>,
    /// The leading digits of the reading.
    pub leading: String,
    /// Workshops named before, most recent first.
    pub workshops: Vec<String>,
    /// The currency used last.
    pub currency: String,
    /// The papers in the tray.
    pub tray: Vec<PaperView>,
    /// The guides for this car.
    pub guides: Vec<GuideLine>,
    /// What the cautions of the jobs are, in the order in which they are read; the last one always holds.
    pub cautions: Vec<CautionView>,
}

/// A job that can be chosen.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct JobView {
    /// The item.
    pub item: ItemView,
    /// How it stands.
    pub state: StateKey,
    /// It belongs in a workshop.
    pub workshop: bool,
    /// The keys of the cautions that come before the first step; what each is stands in [`BayView`].
    pub cautions: Vec<String>,
    /// The parts fitted the last time.
    pub parts: Vec<PartView>,
    /// How long it takes a practised amateur, in minutes; nothing for an item of the owner's own.
    pub minutes: Option<u16>,
    /// It belongs to the next visit that the plan proposes.
    pub in_next_visit: bool,
    /// The key of the guide to it.
    pub guide: Option<String>,
}
