//! How well the history is kept, and what it says nothing of.

use units::Day;

use super::trail::{GAP, GAP_DAYS, Trail};
use super::{OLD_CARD_DAYS, Question, Units, count};
use crate::code::{Claims, Engine, Flags, Item, Visit};

/// An item whose neglect costs an engine or a life, with the longest that the catalogue gives it (common practice).
struct Weighty {
    number: u32,
    combustion: bool,
    days: i64,
    distance: Option<Units>,
}

const ENGINE_OIL: u32 = 1;
const COOLANT: u32 = 9;
const BRAKE_FLUID: u32 = 10;
pub(super) const TIMING_BELT: u32 = 11;
/// A car that has a chain has no belt.
pub(super) const TIMING_CHAIN: u32 = 40;

/// Five years are 1 827 days, seven 2 557.
const WEIGHTY: [Weighty; 4] = [
    Weighty { number: ENGINE_OIL, combustion: true, days: GAP_DAYS, distance: Some(GAP) },
    Weighty {
        number: TIMING_BELT,
        combustion: true,
        days: 2_557,
        distance: Some(Units { kilometres: 120_000, miles: 74_565 }),
    },
    Weighty { number: BRAKE_FLUID, combustion: false, days: GAP_DAYS, distance: None },
    Weighty { number: COOLANT, combustion: true, days: 1_827, distance: None },
];

/// Visits and the latest reading, of days after the day of issue.
pub(super) fn ahead(claims: &Claims) -> Option<Question> {
    let days = claims.visits.iter().map(|visit| visit.day).chain([claims.latest.day]);
    let ahead: Vec<Day> = days.filter(|day| *day > claims.issued).collect();
    let day = *ahead.iter().max()?;
    Some(Question::Ahead { count: count(ahead.len()), day })
}

/// What has no record though the car is old enough for it, or has gone far enough.
///
/// Without a day of first use the car is as old as its first visit at least.
pub(super) fn unrecorded(claims: &Claims, trail: &Trail<'_>) -> Option<Question> {
    let first = claims.visits.iter().map(|visit| visit.day).min()?;
    let new = claims.vehicle.first_use.unwrap_or(first);
    let age = i64::from(claims.issued.days_since(new));
    let lasted = |item: &Weighty| {
        age > item.days || item.distance.is_some_and(|distance| trail.gone() > distance.of(claims.unit))
    };
    let items =
        WEIGHTY.iter().filter(|item| has(claims, item) && lasted(item) && !is_recorded(claims, item.number));
    let items: Vec<u32> = items.map(|item| item.number).collect();
    (!items.is_empty()).then_some(Question::Unrecorded { items })
}

/// Whether this car has what the item is about, as far as its card tells.
fn has(claims: &Claims, item: &Weighty) -> bool {
    let chain = Item::Catalogue(TIMING_CHAIN);
    let coming = claims.next.iter().any(|due| due.item == chain);
    let chained = item.number == TIMING_BELT && (coming || is_recorded(claims, TIMING_CHAIN));
    (!item.combustion || burns(claims.vehicle.engine)) && !chained
}

const fn burns(engine: Option<Engine>) -> bool {
    !matches!(engine, None | Some(Engine::Electric | Engine::Other))
}

fn is_recorded(claims: &Claims, number: u32) -> bool {
    claims.visits.iter().any(|visit| visit.items.contains(&Item::Catalogue(number)))
}

/// Coming work that should have been done by now.
pub(super) fn passed(claims: &Claims, today: Day) -> Option<Question> {
    let passed = claims.next.iter().filter(|due| {
        due.day.is_some_and(|day| day < today)
            || due.reading.is_some_and(|reading| reading < claims.latest.reading)
    });
    let items: Vec<Item> = passed.map(|due| due.item.clone()).collect();
    (!items.is_empty()).then_some(Question::Passed { items })
}

/// A card of long ago, or of a day to come.
pub(super) fn age(claims: &Claims, today: Day) -> Option<Question> {
    let day = claims.issued;
    match today.days_since(day) {
        // Somewhere on earth it is tomorrow already.
        days if days < -1 => Some(Question::Clock { day }),
        days if days > OLD_CARD_DAYS => Some(Question::OldCard { day }),
        _ => None,
    }
}

/// The last of the instruments that were replaced.
pub(super) fn instruments(claims: &Claims) -> Option<Question> {
    let last = *claims.instruments.iter().max_by_key(|change| change.day)?;
    Some(Question::Instruments { count: count(claims.instruments.len()), last })
}

/// How many visits have a receipt, where there are visits.
pub(super) fn receipts(claims: &Claims) -> Option<Question> {
    let of = count(claims.visits.len());
    let with = claims.visits.iter().filter(|visit| visit.flags.contains(Flags::RECEIPT)).count();
    (of > 0).then_some(Question::Receipts { count: count(with), of })
}

/// Visits written down late.
pub(super) fn late(claims: &Claims) -> Option<Question> {
    let (count, day) = flagged(claims, Flags::WRITTEN_LATE)?;
    Some(Question::Late { count, of: super::count(claims.visits.len()), day })
}

/// Visits amended.
pub(super) fn amended(claims: &Claims) -> Option<Question> {
    let (count, day) = flagged(claims, Flags::AMENDED)?;
    Some(Question::Amended { count, of: super::count(claims.visits.len()), day })
}

/// How many visits have the flag, and the last of their days.
fn flagged(claims: &Claims, flag: Flags) -> Option<(u32, Day)> {
    let flagged: Vec<&Visit> = claims.visits.iter().filter(|visit| visit.flags.contains(flag)).collect();
    let day = flagged.iter().map(|visit| visit.day).max()?;
    Some((count(flagged.len()), day))
}
