//! The plan for one car: the catalogue, as this car is driven and as its owner changed it.

use std::collections::BTreeMap;

use units::Day;

use super::{Catalogue, Interval, Item, ItemRef, Kind, Range, Schedule, Source, Stakes, Tightener, Timing};
use crate::vehicle::Vehicle;

/// What one car needs and how often.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Plan<'a> {
    /// In the order of [`ItemRef`].
    items: Vec<PlannedItem<'a>>,
    /// Where the row of each number stands among the items: a car of twenty years asks a thousand times.
    places: Vec<Option<usize>>,
}

/// One item as it applies to one car.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PlannedItem<'a> {
    /// Which item.
    pub item: ItemRef,
    /// Its row in the catalogue; `None` for an item of the owner's own.
    pub row: Option<&'a Item>,
    /// What ignoring it costs; of an item of the owner's own, what he said, else a repair.
    pub stakes: Stakes,
    /// Whether it counts.
    pub standing: Standing,
    /// How often, with the end of each range chosen.
    pub timing: Timing<Interval>,
    /// Who says so.
    pub authority: Authority,
    /// Why the short end of the range was chosen; empty when nothing tightened it.
    pub tightened_by: Vec<Tightener>,
    /// The number of the item that it goes with, where that comes round sooner than this would by itself.
    pub goes_with: Option<u32>,
    /// The day that the owner chose for it.
    pub pin: Option<Pin>,
    /// What tightens this item on this car, whether or not its range has a short end.
    tighteners: Vec<Tightener>,
}

/// A day that the owner chose for the next time of an item.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Pin {
    /// The day.
    pub day: Day,
    /// When he chose it; the item being done from that day on makes the pin void.
    pub set: Day,
}

/// Whether an item of the plan counts.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Standing {
    /// It does.
    Active,
    /// The owner switched it off.
    Off,
    /// A car with this engine and equipment has no such thing.
    NotForThisCar,
    /// It would count, if the owner gave an interval.
    Unset,
}

/// Who says how often.
#[derive(Debug, Clone, PartialEq, Eq, Hash)]
pub enum Authority {
    /// The handbook of this car, as the owner copied it. It always wins, and nothing tightens it.
    Handbook,
    /// The owner, of an item of his own, or of one that only his papers tell about.
    Owner,
    /// The catalogue, from this source.
    Catalogue(Source),
}

/// One thing that the owner changed in the plan.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PlanChange {
    /// Of which item; an item of the owner's own begins with its first interval.
    pub item: ItemRef,
    /// What holds from now on.
    pub setting: Setting,
}

/// What the owner settled for an item.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Setting {
    /// As the catalogue has it; an item of the owner's own leaves the plan.
    Catalogue,
    /// This schedule.
    Interval(Schedule),
    /// This schedule of an item of the owner's own, and what ignoring it costs.
    Own(Schedule, Stakes),
    /// Not counted.
    Off,
    /// Its next time is to be on this day; `None` takes that back. How often it comes round stays as it is.
    Pinned(Option<Pin>),
}

impl Setting {
    /// Whether it says how often, and not only on which day the next time.
    pub const fn is_how_often(self) -> bool {
        !matches!(self, Setting::Pinned(_))
    }
}

impl<'a> Plan<'a> {
    /// The plan for this car after these changes, of which a later one of the same item replaces an earlier
    /// one. A change of a catalogue item that this version does not know is passed over.
    pub fn new(catalogue: &'a Catalogue, vehicle: &Vehicle, changes: &[PlanChange]) -> Plan<'a> {
        let mut settled: BTreeMap<&ItemRef, Vec<Setting>> = BTreeMap::new();
        for change in changes {
            settled.entry(&change.item).or_default().push(change.setting);
        }
        let settings = |item: &ItemRef| settled.get(item).map_or(&[][..], Vec::as_slice);
        let from_catalogue = catalogue.items().iter().map(|item| {
            let reference = ItemRef::Catalogue(item.number);
            let settings = settings(&reference);
            planned(item, vehicle, settings)
        });
        let own = settled.iter().filter(|(item, _)| matches!(item, ItemRef::Own(_)));
        let own = own.filter_map(|(item, settings)| planned_own(item, settings));
        let mut items: Vec<PlannedItem<'a>> = from_catalogue.chain(own).collect();
        let places = places(&items);
        keep_up(&mut items, &places);
        Plan { items, places }
    }

    /// Every item: those of the catalogue in order of number, then the owner's own in order of name.
    pub fn items(&self) -> &[PlannedItem<'a>] {
        &self.items
    }

    /// What the plan says of this item.
    pub fn item(&self, item: &ItemRef) -> Option<&PlannedItem<'a>> {
        self.position(item).and_then(|at| self.items.get(at))
    }

    /// Where the item stands among [`Plan::items`].
    pub(super) fn position(&self, item: &ItemRef) -> Option<usize> {
        match item {
            ItemRef::Catalogue(number) => place(&self.places, *number),
            ItemRef::Own(_) => self.items.binary_search_by(|planned| planned.item.cmp(item)).ok(),
        }
    }
}

/// By number, where each row of the catalogue stands.
fn places(items: &[PlannedItem<'_>]) -> Vec<Option<usize>> {
    let mut places = Vec::new();
    for (at, planned) in items.iter().enumerate() {
        let Some(number) = planned.row.and_then(|row| usize::try_from(row.number).ok()) else { continue };
        places.resize(places.len().max(number + 1), None);
        places[number] = Some(at);
    }
    places
}

/// Where the row of this number stands.
fn place(places: &[Option<usize>], number: u32) -> Option<usize> {
    *places.get(usize::try_from(number).ok()?)?
}

/// Shortens what is done with every service of another item, such as the water drained from the diesel filter with the
/// oil: to the interval that holds for that one from one time to the next, where the catalogue speaks for this one and
/// the other counts on this car. A first interval of the other, and a part fitted that brings it a range of its own,
/// change nothing here.
fn keep_up(items: &mut [PlannedItem<'_>], places: &[Option<usize>]) {
    for at in 0..items.len() {
        let Some(number) = items[at].row.and_then(|row| row.follows) else { continue };
        let leader = place(places, number).and_then(|at| items.get(at));
        let Some(every) = leader.and_then(PlannedItem::comes_round) else { continue };
        items[at].go_with(number, every);
    }
}

impl PlannedItem<'_> {
    /// How often it comes round, if it counts.
    fn comes_round(&self) -> Option<Interval> {
        match &self.timing {
            Timing::Every(schedule) if self.standing == Standing::Active => Some(schedule.every),
            _ => None,
        }
    }

    /// Comes round as often as the item of this number does, if that is oftener.
    fn go_with(&mut self, number: u32, every: Interval) {
        let Timing::Every(schedule) = &mut self.timing else { return };
        let shorter = schedule.every.or_shorter(every);
        if self.authority.is_catalogue() && shorter != schedule.every {
            schedule.every = shorter;
            self.goes_with = Some(number);
        }
    }

    /// How long a kind of part lasts on this car, and what tightened that; `None` when the catalogue does
    /// not know the kind, or when the owner's handbook has the say.
    pub(super) fn kind_fitted(&self, key: &str) -> Option<(&Kind, Interval, Vec<Tightener>)> {
        let kind = self.row.filter(|_| self.authority.is_catalogue())?.kind(key)?;
        let tightened_by = tightened(&self.tighteners, &[kind.every]);
        Some((kind, end_of(kind.every, &tightened_by), tightened_by))
    }
}

impl Authority {
    /// Whether the interval is the catalogue's, and not what the owner gave.
    pub const fn is_catalogue(&self) -> bool {
        matches!(self, Authority::Catalogue(_))
    }
}

fn planned<'a>(item: &'a Item, vehicle: &Vehicle, settings: &[Setting]) -> PlannedItem<'a> {
    let mut tighteners: Vec<_> =
        item.tightened_by.iter().filter_map(|tightener| tightener.on(vehicle)).collect();
    // What is not known adds nothing to what is.
    if tighteners.len() > 1 {
        tighteners.retain(|tightener| *tightener != Tightener::MaybeTurbo);
    }
    let tightened_by = tightened(&tighteners, &ranges(&item.timing));
    let mut planned = PlannedItem {
        item: ItemRef::Catalogue(item.number),
        row: Some(item),
        stakes: item.stakes,
        standing: standing(item, vehicle),
        timing: item.timing.map(|range| end_of(range, &tightened_by)),
        authority: Authority::Catalogue(item.source.clone()),
        tightened_by,
        goes_with: None,
        pin: pin(settings),
        tighteners,
    };
    match interval_setting(settings) {
        Setting::Off => planned.standing = Standing::Off,
        Setting::Interval(schedule) | Setting::Own(schedule, _) => {
            planned.standing = Standing::Active;
            planned.timing = match &item.timing {
                Timing::After { items, .. } => Timing::After { items: items.clone(), within: schedule.every },
                Timing::Every(_) | Timing::Unset => Timing::Every(schedule),
            };
            planned.authority = match item.source {
                Source::Owner => Authority::Owner,
                _ => Authority::Handbook,
            };
            planned.tightened_by = Vec::new();
        }
        Setting::Catalogue | Setting::Pinned(_) => {}
    }
    planned
}

fn standing(item: &Item, vehicle: &Vehicle) -> Standing {
    if !item.is_for(vehicle.engine, vehicle.equipment) {
        Standing::NotForThisCar
    } else if item.timing == Timing::Unset {
        Standing::Unset
    } else {
        Standing::Active
    }
}

/// The last thing settled about how often.
fn interval_setting(settings: &[Setting]) -> Setting {
    let how_often = settings.iter().rev().find(|setting| setting.is_how_often());
    how_often.copied().unwrap_or(Setting::Catalogue)
}

/// The day settled last.
fn pin(settings: &[Setting]) -> Option<Pin> {
    settings.iter().rev().find_map(|setting| match setting {
        Setting::Pinned(pin) => Some(*pin),
        _ => None,
    })?
}

fn ranges(timing: &Timing<Range>) -> Vec<Range> {
    match timing {
        Timing::Every(schedule) => schedule.first.into_iter().chain([schedule.every]).collect(),
        Timing::After { within, .. } => vec![*within],
        Timing::Unset => Vec::new(),
    }
}

/// What tightens these ranges: nothing, where none of them has a short end.
fn tightened(tighteners: &[Tightener], ranges: &[Range]) -> Vec<Tightener> {
    if ranges.iter().all(|range| range.is_single()) { Vec::new() } else { tighteners.to_vec() }
}

/// The long end of a range, or the short one if anything tightens it.
fn end_of(range: Range, tightened_by: &[Tightener]) -> Interval {
    if tightened_by.is_empty() { range.long() } else { range.short() }
}

/// An item of the owner's own, unless it has no interval yet or was taken out. Switched off, it keeps the
/// interval that it had.
fn planned_own<'a>(item: &ItemRef, settings: &[Setting]) -> Option<PlannedItem<'a>> {
    // Taken out of the plan, an item of one's own begins anew.
    let out = settings.iter().rposition(|setting| *setting == Setting::Catalogue);
    let settings = &settings[out.map_or(0, |out| out + 1)..];
    let last = interval_setting(settings);
    let schedule = settings.iter().rev().find_map(|setting| match setting {
        Setting::Interval(schedule) | Setting::Own(schedule, _) => Some(*schedule),
        _ => None,
    })?;
    let stakes = settings.iter().rev().find_map(|setting| match setting {
        Setting::Own(_, stakes) => Some(*stakes),
        _ => None,
    });
    Some(PlannedItem {
        item: item.clone(),
        row: None,
        stakes: stakes.unwrap_or(Stakes::Repair),
        standing: if last == Setting::Off { Standing::Off } else { Standing::Active },
        timing: Timing::Every(schedule),
        authority: Authority::Owner,
        tightened_by: Vec::new(),
        goes_with: None,
        pin: pin(settings),
        tighteners: Vec::new(),
    })
}

#[cfg(test)]
#[path = "plan_tests.rs"]
mod tests;
