//! From fills to consumption, from full to full.
//!
//! The method is that of the government of Quebec's page on fuel consumption
//! (`ecomobile.gouv.qc.ca/en/ecomobilite/tips/monitoring_fuel_consumption.php`): fill up, fill up again, and what the
//! second fill took is what the distance since the first one used. Fills in part go to the next full one.

use units::{Amount, Consumption, ConsumptionUnit, Day, Distance};

use super::{Fill, FuelKind};
use crate::running::Travelled;

/// From one full tank to the next.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Span {
    /// Of what.
    pub kind: FuelKind,
    /// The day of the full tank with which it begins.
    pub from: Day,
    /// The day of the full tank with which it ends.
    pub to: Day,
    /// How far the car had gone at its end.
    pub end: Travelled,
    /// What was used, over which distance.
    pub used: Consumption,
    /// How many fills went into it.
    pub fills: u32,
}

/// From one full tank to the next, where nothing can be said of what was used.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Unused {
    /// The day of the full tank with which it begins.
    pub from: Day,
    /// The day of the full tank with which it ends.
    pub to: Day,
    /// What was filled in.
    pub amount: Amount,
    /// How far the car went by the readings.
    pub distance: Distance,
    /// Why nothing can be said.
    pub why: Apart,
}

/// Why a span is set apart.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Apart {
    /// A fill within it was not written down.
    Missed,
    /// By the readings the car went nowhere or backwards.
    NoDistance,
    /// Less than a car can do with: a reading is mistyped, or a fill is missing.
    TooLittle,
    /// More than a car uses: a reading is mistyped, or the amount.
    TooMuch,
}

/// One kind's spans.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Series {
    /// Of what.
    pub kind: FuelKind,
    /// The spans, in order.
    pub spans: Vec<Span>,
    /// Those set apart, in order.
    pub unused: Vec<Unused>,
}

/// Something about a fill that makes one look twice.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Warning {
    /// By a good deal more went in than ever before.
    LargerThanEver {
        /// Of what.
        kind: FuelKind,
        /// When.
        day: Day,
        /// How much.
        amount: Amount,
        /// The most that had gone in before.
        before: Amount,
    },
    /// A later fill has a lower reading.
    ReadingFalls {
        /// The day of the later fill.
        day: Day,
    },
}

/// What a car with an engine uses at least and at most, in hundredths of a litre for 100 km. Assumption: the lightest
/// car creeping on a level road does not come below, the heaviest with a trailer not above.
const FUEL: (i64, i64) = (100, 6_000);

/// The same of electricity, in hundredths of a kilowatt-hour for 100 km. Assumption.
const ELECTRICITY: (i64, i64) = (300, 10_000);

/// A fill is remarked on when it is so much larger than any before, in percent, ...
const LARGER: i64 = 20;

/// ... and when there were so many before it.
const ENOUGH_FILLS: usize = 5;

/// The spans of these fills, by kind, and what is odd about the fills; in whatever order they come.
///
/// - What goes in between two full tanks belongs to the second one. What goes in before the first full tank counts
///   for nothing, and neither does what has gone in since the last.
/// - A fill that was not written down voids the span in which it is missing; the next full tank begins a new one.
/// - A span by which the car used less than any car or more than any is set apart with the reason. Where it runs on
///   two things, nothing is too little of either.
pub fn spans(fills: &[Fill]) -> (Vec<Series>, Vec<Warning>) {
    let mut fills = fills.to_vec();
    fills.sort_by_key(|fill| (fill.day, fill.travelled));
    let kinds: Vec<FuelKind> = FuelKind::ALL
        .into_iter()
        .filter(|&kind| fills.iter().any(|fill| fill.taken.kind() == kind))
        .collect();
    let mut warnings = falls(&fills);
    let series = kinds.iter().map(|&kind| {
        let own: Vec<Fill> = fills.iter().filter(|fill| fill.taken.kind() == kind).copied().collect();
        warnings.extend(larger(&own));
        series(kind, &own, kinds.len() > 1)
    });
    let series = series.collect();
    (series, warnings)
}

fn series(kind: FuelKind, fills: &[Fill], with_another: bool) -> Series {
    let mut series = Series { kind, spans: Vec::new(), unused: Vec::new() };
    let mut full: Option<&Fill> = None;
    let mut since: Option<(Amount, u32)> = None;
    let mut missed = false;
    for fill in fills {
        let amount = fill.taken.amount();
        let (amount, fills) =
            since.map_or((amount, 1), |(sum, fills)| (sum.plus(amount).unwrap_or(amount), fills + 1));
        since = Some((amount, fills));
        missed |= fill.level.is_missed_before();
        if !fill.level.is_full() {
            continue;
        }
        if let Some(first) = full {
            let distance = fill.travelled.since(first.travelled);
            match judge(missed, amount, distance, with_another) {
                Ok(used) => series.spans.push(Span {
                    kind,
                    from: first.day,
                    to: fill.day,
                    end: fill.travelled,
                    used,
                    fills,
                }),
                Err(why) => {
                    series.unused.push(Unused { from: first.day, to: fill.day, amount, distance, why });
                }
            }
        }
        (full, since, missed) = (Some(fill), None, false);
    }
    series
}

/// What was used up to this full tank, or why that cannot be said.
fn judge(missed: bool, amount: Amount, distance: Distance, with_another: bool) -> Result<Consumption, Apart> {
    if missed {
        return Err(Apart::Missed);
    }
    let used = Consumption::new(amount, distance).ok_or(Apart::NoDistance)?;
    let (unit, (least, most)) = match amount {
        Amount::Volume(_) => (ConsumptionUnit::LitresPer100Km, FUEL),
        Amount::Energy(_) => (ConsumptionUnit::KwhPer100Km, ELECTRICITY),
    };
    match used.scaled(unit, 2) {
        Some(hundredths) if hundredths > most => Err(Apart::TooMuch),
        Some(hundredths) if hundredths < least && !with_another => Err(Apart::TooLittle),
        _ => Ok(used),
    }
}

fn falls(fills: &[Fill]) -> Vec<Warning> {
    let fall = |pair: &[Fill]| {
        (pair[1].travelled < pair[0].travelled).then_some(Warning::ReadingFalls { day: pair[1].day })
    };
    fills.windows(2).filter_map(fall).collect()
}

fn larger(fills: &[Fill]) -> Vec<Warning> {
    let mut most: Option<Amount> = None;
    let mut warnings = Vec::new();
    for (count, fill) in fills.iter().enumerate() {
        let amount = fill.taken.amount();
        if let Some(before) = most.filter(|before| exceeds(amount, *before) && count >= ENOUGH_FILLS) {
            let kind = fill.taken.kind();
            warnings.push(Warning::LargerThanEver { kind, day: fill.day, amount, before });
        }
        if most.is_none_or(|most| amount.base() > most.base()) {
            most = Some(amount);
        }
    }
    warnings
}

fn exceeds(amount: Amount, before: Amount) -> bool {
    i128::from(amount.base()) * 100 > i128::from(before.base()) * i128::from(100 + LARGER)
}

#[cfg(test)]
#[path = "spans_tests.rs"]
mod tests;
