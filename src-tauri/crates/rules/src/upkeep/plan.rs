//! The plan for one car: the catalogue, as this car is driven and as its owner changed it.

use std::collections::BTreeMap;

use super::{Catalogue, Interval, Item, ItemRef, Range, Schedule, Source, Stakes};
use crate::vehicle::{Condition, Vehicle};

/// What one car needs and how often.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Plan {
    items: Vec<PlannedItem>,
}

/// One item as it applies to one car.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PlannedItem {
    /// Which item.
    pub item: ItemRef,
    /// What ignoring it costs; taken as a repair for an item of the owner's own.
    pub stakes: Stakes,
    /// Whether it counts.
    pub standing: Standing,
    /// How often, with the end of each range chosen.
    pub schedule: Schedule,
    /// Who says so.
    pub authority: Authority,
    /// Why the short end of the range was chosen; empty when nothing tightened it.
    pub tightened_by: Vec<Condition>,
}

/// Whether an item of the plan counts.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Standing {
    /// It does.
    Active,
    /// The owner switched it off.
    Off,
    /// An engine of this kind has no such thing.
    NotForThisCar,
}

/// Who says how often.
#[derive(Debug, Clone, PartialEq, Eq, Hash)]
pub enum Authority {
    /// The handbook of this car, as the owner copied it. It always wins, and nothing tightens it.
    Handbook,
    /// The owner, of an item of his own.
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
    /// Not counted.
    Off,
}

impl Plan {
    /// The plan for this car after these changes, of which a later one of the same item replaces an earlier
    /// one. A change of a catalogue item that this version does not know is passed over.
    pub fn new(catalogue: &Catalogue, vehicle: &Vehicle, changes: &[PlanChange]) -> Plan {
        let mut settled: BTreeMap<&ItemRef, Vec<Setting>> = BTreeMap::new();
        for change in changes {
            settled.entry(&change.item).or_default().push(change.setting);
        }
        let settings = |item: &ItemRef| settled.get(item).map_or(&[][..], Vec::as_slice);
        let from_catalogue = catalogue.items().iter().map(|item| {
            let reference = ItemRef::Catalogue(item.number);
            let setting = settings(&reference).last().copied().unwrap_or(Setting::Catalogue);
            planned(item, vehicle, setting)
        });
        let own = settled.iter().filter(|(item, _)| matches!(item, ItemRef::Own(_)));
        let own = own.filter_map(|(item, settings)| planned_own(item, settings));
        Plan { items: from_catalogue.chain(own).collect() }
    }

    /// Every item: those of the catalogue in order of number, then the owner's own in order of name.
    pub fn items(&self) -> &[PlannedItem] {
        &self.items
    }

    /// What the plan says of this item.
    pub fn item(&self, item: &ItemRef) -> Option<&PlannedItem> {
        self.items.iter().find(|planned| planned.item == *item)
    }
}

fn planned(item: &Item, vehicle: &Vehicle, setting: Setting) -> PlannedItem {
    let (schedule, tightened_by) = chosen(item, vehicle);
    let mut planned = PlannedItem {
        item: ItemRef::Catalogue(item.number),
        stakes: item.stakes,
        standing: if item.engines.include(vehicle.engine) {
            Standing::Active
        } else {
            Standing::NotForThisCar
        },
        schedule,
        authority: Authority::Catalogue(item.source.clone()),
        tightened_by,
    };
    match setting {
        Setting::Catalogue => {}
        Setting::Off => planned.standing = Standing::Off,
        Setting::Interval(schedule) => {
            planned.standing = Standing::Active;
            planned.schedule = schedule;
            planned.authority = Authority::Handbook;
            planned.tightened_by = Vec::new();
        }
    }
    planned
}

/// The long end of every range, or the short one if the car is driven in a way that tightens it.
fn chosen(item: &Item, vehicle: &Vehicle) -> (Schedule, Vec<Condition>) {
    let mut tightened_by = item.tightened_by.clone();
    tightened_by.retain(|&condition| vehicle.conditions.has(condition));
    let single = |range: Range| range.is_single();
    if single(item.schedule.every) && item.schedule.first.is_none_or(single) {
        tightened_by.clear();
    }
    let end: fn(Range) -> Interval = if tightened_by.is_empty() { Range::long } else { Range::short };
    (item.schedule.map(end), tightened_by)
}

/// An item of the owner's own, unless it has no interval yet or was taken out. Switched off, it keeps the
/// interval that it had.
fn planned_own(item: &ItemRef, settings: &[Setting]) -> Option<PlannedItem> {
    let last = settings.last().filter(|last| **last != Setting::Catalogue)?;
    let schedule = settings.iter().rev().find_map(|setting| match setting {
        Setting::Interval(schedule) => Some(*schedule),
        Setting::Catalogue | Setting::Off => None,
    })?;
    Some(PlannedItem {
        item: item.clone(),
        stakes: Stakes::Repair,
        standing: if *last == Setting::Off { Standing::Off } else { Standing::Active },
        schedule,
        authority: Authority::Owner,
        tightened_by: Vec::new(),
    })
}

#[cfg(test)]
#[path = "plan_tests.rs"]
mod tests;
