//! Holding an older card against a newer one of the same car: does the newer one contain the older one unchanged?
//!
//! Both cards have to verify before; this says nothing of signatures. The rule, so that another reader can come to the
//! same answer:
//!
//! 1. **Car.** Where both cards show a vehicle identification number, the two must be equal. A day of first use that
//!    both show must be equal too. The name may change.
//! 2. **Order.** The newer card must not be issued before the older one.
//! 3. **Common span.** A card whose claim 7 is larger than the number of visits on it left the oldest ones out so that it
//!    fits, and what was left out does not count as missing. Its *first full day* is the day after that of its oldest
//!    visit, for of the visits of that day some may have been left out as well; a card that left out all has no full
//!    day, and one that left out none has nothing but full days.
//! 4. **Visits.** Two visits are the same if day, reading, by whom (flags 1 and 2) and items are; items in any order,
//!    each as often. The other flags may change: a receipt may be filed later, an amendment marks a visit. Readings are
//!    compared as in 6. Each visit of the older card, in the order in which it stands there, is paired with the first
//!    visit of the newer one that is the same and not yet paired. After all of these, each older one that is left over
//!    and lies on a full day of the newer card is *changed* if there is a visit of that very day that is not yet paired,
//!    the first of which it is paired with, and *missing* otherwise. One that does not lie on a full day is *left out*.
//! 5. **Added.** A visit of the newer card that is left over, names a day before the older card was issued, and lies on a
//!    full day of the older card was written down after the older card for a day before it. That is no breach, and worth
//!    a question.
//! 6. **Readings** of two cards in the same unit are the same if their numbers are. In different units each number n
//!    stands for the distances from n to n + 1 units, and two are the same if these overlap; one is lower than another
//!    if all of it lies below. (A visit without a reading bears the one that its day had between the readings around it,
//!    and those may come in later; so *changed* may mean no more than that, where nothing but the reading differs.)
//! 7. **Latest reading** (claim 5). That of the newer card must not name an earlier day, and its reading must not be
//!    lower unless the newer card names an instrument replaced on that day of the older card or later.
//! 8. **Instruments** (claim 10). Each of the older card must be on the newer one, with day and both readings the same.
//! 9. **Number of visits** (claim 7). That of the newer card must not be smaller.
//!
//! The newer card contains the older one if nothing is found but what was added.

use units::{Day, Distance, DistanceUnit};

use crate::{Claims, Flags, InstrumentChange, Item, OdometerReading, Visit};

/// What holding two cards against each other came to.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Comparison {
    /// Both show a vehicle identification number, so that it is certain whether they are of one car.
    pub car_known: bool,
    /// How many visits of the older card were found unchanged on the newer one.
    pub same: usize,
    /// How many visits of the older card the newer one has left out, or may have, so that it fits.
    pub left_out: usize,
    /// What differs: the car and the cards first, then visits in the order of the older card, then what was added.
    pub differences: Vec<Difference>,
}

/// One thing in which a newer card differs from an older one.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Difference {
    /// The vehicle identification numbers differ.
    OtherCar,
    /// The days of first use differ.
    FirstUse {
        /// On the older card.
        older: Day,
        /// On the newer one.
        newer: Day,
    },
    /// The card that should be the newer one was issued first.
    NotNewer,
    /// The latest reading of the newer card is an earlier or a lower one.
    LatestReading {
        /// On the older card.
        older: OdometerReading,
        /// On the newer one.
        newer: OdometerReading,
    },
    /// A replaced instrument is not on the newer card.
    Instrument(InstrumentChange),
    /// The book of the newer card holds fewer visits.
    Fewer {
        /// On the older card.
        older: u32,
        /// On the newer one.
        newer: u32,
    },
    /// A visit is not on the newer card.
    Missing(Visit),
    /// A visit is another one on the newer card.
    Changed {
        /// On the older card.
        older: Visit,
        /// On the newer one.
        newer: Visit,
    },
    /// A visit was written down after the older card for a day before it; no breach.
    Added(Visit),
}

impl Comparison {
    /// Whether the newer card contains the older one unchanged.
    pub fn contains(&self) -> bool {
        self.differences.iter().all(|difference| matches!(difference, Difference::Added(_)))
    }
}

/// Holds an older card against a newer one by the rule in the head of this file.
pub fn compare(older: &Claims, newer: &Claims) -> Comparison {
    let visits = Visits::pair(older, newer);
    let whole = [
        other_car(older, newer),
        first_use(older, newer),
        (newer.issued < older.issued).then_some(Difference::NotNewer),
        latest(older, newer),
    ];
    let instruments = older.instruments.iter().filter(|change| !has_instrument(newer, change, older.unit));
    let fewer = fewer(older, newer);
    let differences = whole.into_iter().flatten();
    let differences = differences.chain(instruments.map(|change| Difference::Instrument(*change)));
    Comparison {
        car_known: vins(older, newer).is_some(),
        same: visits.same,
        left_out: visits.left_out,
        differences: differences.chain(fewer).chain(visits.differences).collect(),
    }
}

/// Whether a visit is the same as another, each with the unit of its card.
pub fn same_visit(one: (&Visit, DistanceUnit), other: (&Visit, DistanceUnit)) -> bool {
    let doer = |visit: &Visit| visit.flags.bits() & (Flags::BY_OWNER | Flags::BY_WORKSHOP).bits();
    let ((a, unit_a), (b, unit_b)) = (one, other);
    a.day == b.day
        && doer(a) == doer(b)
        && same_reading((a.reading, unit_a), (b.reading, unit_b))
        && same_items(&a.items, &b.items)
}

/// Whether two lists have the same items, each as often, in any order.
pub fn same_items(one: &[Item], other: &[Item]) -> bool {
    let sorted = |items: &[Item]| {
        let key = |item: &Item| match item {
            Item::Catalogue(number) => (*number, String::new()),
            Item::Own(name) => (u32::MAX, name.clone()),
        };
        let mut keys: Vec<_> = items.iter().map(key).collect();
        keys.sort();
        keys
    };
    sorted(one) == sorted(other)
}

/// The visits of two cards in pairs.
struct Visits {
    same: usize,
    left_out: usize,
    differences: Vec<Difference>,
}

impl Visits {
    fn pair(older: &Claims, newer: &Claims) -> Visits {
        let mut free: Vec<&Visit> = newer.visits.iter().collect();
        let mut over = Vec::new();
        for visit in &older.visits {
            let same = |other: &&Visit| same_visit((visit, older.unit), (other, newer.unit));
            if take(&mut free, same).is_none() {
                over.push(visit);
            }
        }
        let same = older.visits.len() - over.len();
        let (full, partly): (Vec<_>, Vec<_>) =
            over.into_iter().partition(|visit| is_full_day(newer, visit.day));
        let mut differences: Vec<_> = full.into_iter().map(|visit| differing(visit, &mut free)).collect();
        let added = |visit: &&Visit| visit.day < older.issued && is_full_day(older, visit.day);
        differences.extend(free.into_iter().filter(added).map(|visit| Difference::Added(visit.clone())));
        Visits { same, left_out: partly.len(), differences }
    }
}

fn differing(older: &Visit, free: &mut Vec<&Visit>) -> Difference {
    match take(free, |other| other.day == older.day) {
        Some(newer) => Difference::Changed { older: older.clone(), newer: newer.clone() },
        None => Difference::Missing(older.clone()),
    }
}

/// Takes the first that fits out of a list.
fn take<'a>(free: &mut Vec<&'a Visit>, fits: impl FnMut(&&'a Visit) -> bool) -> Option<&'a Visit> {
    free.iter().position(fits).map(|at| free.remove(at))
}

/// Whether a card carries all visits of this day that its book holds.
fn is_full_day(card: &Claims, day: Day) -> bool {
    card.left_out == 0 || card.visits.iter().map(|visit| visit.day).min().is_some_and(|first| first < day)
}

fn vins<'a>(older: &'a Claims, newer: &'a Claims) -> Option<(&'a str, &'a str)> {
    older.vehicle.vin.as_deref().zip(newer.vehicle.vin.as_deref())
}

fn other_car(older: &Claims, newer: &Claims) -> Option<Difference> {
    vins(older, newer).filter(|(one, other)| one != other).map(|_| Difference::OtherCar)
}

fn first_use(older: &Claims, newer: &Claims) -> Option<Difference> {
    let (older, newer) = older.vehicle.first_use.zip(newer.vehicle.first_use)?;
    (older != newer).then_some(Difference::FirstUse { older, newer })
}

fn latest(older: &Claims, newer: &Claims) -> Option<Difference> {
    let (then, now) = (older.latest, newer.latest);
    let lower = is_lower((now.reading, newer.unit), (then.reading, older.unit));
    let replaced = newer.instruments.iter().any(|change| change.day >= then.day);
    let differs = now.day < then.day || (lower && !replaced);
    differs.then_some(Difference::LatestReading { older: then, newer: now })
}

fn has_instrument(newer: &Claims, change: &InstrumentChange, unit: DistanceUnit) -> bool {
    newer.instruments.iter().any(|other| {
        other.day == change.day
            && same_reading((other.old, newer.unit), (change.old, unit))
            && same_reading((other.new, newer.unit), (change.new, unit))
    })
}

fn fewer(older: &Claims, newer: &Claims) -> Option<Difference> {
    let (older, newer) = (older.visits_in_book(), newer.visits_in_book());
    (newer < older).then_some(Difference::Fewer { older, newer })
}

type Shown = (i32, DistanceUnit);

/// Whether two readings can be of the same distance.
pub fn same_reading(one: Shown, other: Shown) -> bool {
    if one.1 == other.1 { one.0 == other.0 } else { !is_lower(one, other) && !is_lower(other, one) }
}

/// Whether all of one reading lies below the other.
fn is_lower(one: Shown, other: Shown) -> bool {
    let from = |(count, unit): Shown| Distance::whole(i64::from(count), unit);
    let after = (one.0.saturating_add(1), one.1);
    if one.1 == other.1 { one.0 < other.0 } else { from(after) <= from(other) }
}

#[cfg(test)]
#[path = "compare_tests.rs"]
mod tests;
