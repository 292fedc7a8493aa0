//! Which job is done on which of the days chosen.

use std::collections::BTreeMap;

use super::calendar::Calendar;
use super::group::Group;
use super::task::Task;
use super::{VisitCost, VisitCosts};
use crate::upkeep::Access;

/// By day, the jobs that are best done on it. The slots are those of the visits, in order, and suffice for all jobs.
pub(super) fn share_out(
    slots: &[usize],
    groups: &[Group],
    calendar: &Calendar,
    tasks: &[Task],
) -> BTreeMap<i32, Vec<usize>> {
    let mut visits: BTreeMap<i32, Vec<usize>> = BTreeMap::new();
    for group in groups {
        let opened: Vec<_> =
            openings(group, slots).into_iter().filter_map(|slot| calendar.day(slot)).collect();
        for &place in &group.tasks {
            visits.entry(best_day(&tasks[place], &opened)).or_default().push(place);
        }
    }
    visits
}

/// By day, the jobs that fall due or are pinned on it.
pub(super) fn each_on_its_day(tasks: &[Task]) -> BTreeMap<i32, Vec<usize>> {
    let mut visits: BTreeMap<i32, Vec<usize>> = BTreeMap::new();
    for (place, task) in tasks.iter().enumerate() {
        visits.entry(task.own_day()).or_default().push(place);
    }
    visits
}

/// The pin, or else the cheapest of these days, the first of several that cost the same.
fn best_day(task: &Task, opened: &[i32]) -> i32 {
    let cheapest = || opened.iter().copied().min_by_key(|day| task.weight(*day));
    task.pin.or_else(cheapest).unwrap_or(task.due)
}

/// An opening of a group on the best way to it.
#[derive(Debug)]
struct Opening {
    /// Its slot; 0 stands for none yet.
    slot: usize,
    /// The one before it, as a place in the record of them.
    before: usize,
    /// What the openings cost, and the jobs that fell due before this one.
    paid: i64,
}

/// In which of the slots this group is best opened up: a shortest path from opening to opening.
fn openings(group: &Group, slots: &[usize]) -> Vec<usize> {
    if group.opening == 0 {
        return slots.to_vec();
    }
    let mut made = vec![Opening { slot: 0, before: 0, paid: 0 }];
    // Where those begin that can be the last before the next: none before an opening for a pinned job can.
    let mut first = 0;
    for &slot in slots {
        let pending = group.pending(slot);
        let Some((before, paid)) = cheapest(&made, first, pending) else { continue };
        if group.pinned[slot] {
            first = made.len();
        }
        made.push(Opening { slot, before, paid: paid + group.opening });
    }
    let last = cheapest(&made, first, &group.rest).map(|(place, _)| place);
    let path = std::iter::successors(last.and_then(|last| made.get(last)), |next| made.get(next.before));
    let mut slots: Vec<_> = path.map(|opening| opening.slot).take_while(|slot| *slot > 0).collect();
    slots.reverse();
    slots
}

/// The cheapest of the openings from `first` on and what it comes to with what is pending by slot of the opening.
fn cheapest(made: &[Opening], first: usize, pending: &[i64]) -> Option<(usize, i64)> {
    let costs = made.iter().map(|opening| opening.paid + pending[opening.slot]);
    costs.enumerate().skip(first).min_by_key(|(_, cost)| *cost)
}

/// What a visit with these jobs costs.
pub(super) fn cost_of_visit(day: i32, jobs: &[usize], tasks: &[Task], costs: &VisitCosts) -> VisitCost {
    let mut opened: Vec<Access> = jobs.iter().filter_map(|place| tasks[*place].access).collect();
    opened.sort_unstable();
    opened.dedup();
    let openings = opened.into_iter().map(|access| i64::from(costs.opening(access))).sum();
    let there = VisitCost { visits: costs.visit.into(), openings, ..VisitCost::default() };
    let work: VisitCost = jobs.iter().map(|place| tasks[*place].cost(day)).sum();
    there + work
}
