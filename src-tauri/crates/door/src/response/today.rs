//! Today: where the odometer stands, and what comes next.

use serde::{Deserialize, Serialize};
use ts_rs::TS;

use super::{
    AlarmView, DatedReading, DueView, GetView, PlannedVisitView, Reading, SpendView, TroubleLine, VehicleLine,
};

/// The Today screen.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct TodayView {
    /// The vehicle.
    pub vehicle: VehicleLine,
    /// Today.
    pub today: String,
    /// What the odometer is thought to show today; nothing when there is no ground for a guess.
    pub estimate: Option<EstimateView>,
    /// Everything on the plan, most pressing first.
    pub due: Vec<DueView>,
    /// The visits of the next 24 months, soonest first.
    pub visits: Vec<PlannedVisitView>,
    /// What to get for the first of them.
    pub get: Vec<GetView>,
    /// The next twelve months in money; nothing when no price is known.
    pub spend: Option<SpendView>,
    /// How many papers wait in the tray.
    pub tray: usize,
    /// The troubles that have not ended, newest first.
    pub troubles: Vec<TroubleLine>,
    /// Consumption that has risen and not come back.
    pub watch: Option<AlarmView>,
}

/// What the odometer is thought to show.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct EstimateView {
    /// The likely reading.
    pub likely: Reading,
    /// Hardly less than this.
    pub low: Reading,
    /// Hardly more than this.
    pub high: Reading,
    /// The reading from which it is counted.
    pub since: DatedReading,
    /// A later reading that lies so far off that it is left out until another one bears it out.
    pub doubtful: Option<DatedReading>,
    /// How many units a year this car goes, as far as the book tells.
    #[ts(type = "number")]
    pub per_year: i64,
}
