//! The odometer over time, and where it goes at the car's pace.

use std::collections::BTreeSet;

use rules::running::Travelled;
use units::{Day, Distance};

use super::show::reading_of;
use crate::car::Car;
use crate::{OdometerAhead, OdometerPoint, OdometerView};

/// The days after today for which the plot says where the odometer will stand.
const AHEAD: [i32; 5] = [0, 90, 180, 270, 365];

/// Days for the yearly distance.
const YEAR: i64 = 365;

pub(super) fn odometer_view(car: &Car, today: Day) -> OdometerView {
    let believed: BTreeSet<(Day, Distance)> =
        car.believed().points().iter().map(|point| (point.day, point.shown)).collect();
    let travelled = |travelled: Travelled| reading_of(travelled.0, car.unit());
    let point = |point: &rules::running::Point| OdometerPoint {
        day: point.day.to_string(),
        shown: reading_of(point.shown, car.unit()),
        travelled: travelled(point.travelled),
        doubtful: !believed.contains(&(point.day, point.shown)),
    };
    let ahead = AHEAD.into_iter().filter_map(|days| {
        let day = today.plus_days(days);
        let estimate = car.pace.on(day)?;
        Some(OdometerAhead {
            day: day.to_string(),
            low: travelled(estimate.low),
            likely: travelled(estimate.likely),
            high: travelled(estimate.high),
        })
    });
    let per_day = car.pace.per_day();
    let per_year = per_day.map(|day| Distance::from_millimetres(day.millimetres().saturating_mul(YEAR)));
    OdometerView {
        points: car.track.points().iter().map(point).collect(),
        ahead: if per_day.is_some() { ahead.collect() } else { Vec::new() },
        per_year: per_year.map(|year| year.round(car.unit())),
    }
}
