//! What a kilometre or a mile costs.

use units::{Day, Distance, DistanceUnit, UnitPrice};

use super::{Bill, Cost, CostClass, over};
use crate::running::Travelled;

/// What was paid over a span of days, and how far the car went in the very same days.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct PerDistance {
    /// What was paid.
    pub bill: Bill,
    /// How far the car went, above 0.
    pub distance: Distance,
}

impl PerDistance {
    /// What one kilometre or mile cost in all, to three decimals of the currency's main unit, halves up.
    pub fn total(&self, unit: DistanceUnit) -> Option<UnitPrice> {
        let (part, whole) = (self.distance.millimetres(), unit.millimetres());
        UnitPrice::of(self.bill.total(), part, whole, 3)
    }

    /// The same of one class.
    pub fn of(&self, class: CostClass, unit: DistanceUnit) -> Option<UnitPrice> {
        let (part, whole) = (self.distance.millimetres(), unit.millimetres());
        UnitPrice::of(self.bill.of(class), part, whole, 3)
    }
}

/// What the distance cost between two days whose readings are known, `from` among them and `to` not.
///
/// `travelled` says how far the car had gone on a day, and knows nothing before the first reading and after the
/// last: the caller narrows the span to what is known, so that costs and distance are of the same days. `None` of
/// it, or without any distance, gives nothing.
pub fn per_distance(
    costs: &[Cost],
    (from, to): (Day, Day),
    today: Day,
    travelled: impl Fn(Day) -> Option<Travelled>,
) -> Vec<PerDistance> {
    let distance = travelled(from).zip(travelled(to)).map(|(start, end)| end.since(start));
    let Some(distance) = distance.filter(|&distance| distance > Distance::ZERO) else { return Vec::new() };
    over(costs, from, to, today).into_iter().map(|bill| PerDistance { bill, distance }).collect()
}
