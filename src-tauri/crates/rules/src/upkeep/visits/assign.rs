//! Which job is done on which of the days chosen.

use std::collections::BTreeMap;

use super::task::{FORBIDDEN, Task};
use super::{VisitCost, VisitCosts};
use crate::upkeep::Access;

/// By day, the jobs that are best done on it. The days are in order and suffice for all jobs.
pub(super) fn share_out(days: &[i32], tasks: &[Task], costs: &VisitCosts) -> BTreeMap<i32, Vec<usize>> {
    let mut groups: BTreeMap<_, Vec<usize>> = BTreeMap::new();
    for (place, task) in tasks.iter().enumerate() {
        groups.entry(task.access).or_default().push(place);
    }
    let mut visits: BTreeMap<i32, Vec<usize>> = BTreeMap::new();
    for (access, places) in groups {
        let group: Vec<_> = places.iter().map(|place| &tasks[*place]).collect();
        let opened =
            access.map_or(days.to_vec(), |access| openings(&group, days, costs.opening(access).into()));
        for (place, task) in places.into_iter().zip(group) {
            visits.entry(best_day(task, &opened)).or_default().push(place);
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

/// A way of having opened a group so far.
#[derive(Debug, Default)]
struct Openings {
    on: Vec<i32>,
    /// What the openings cost, and the jobs that fell due before the last of them.
    paid: i64,
}

/// On which of the days this group is best opened up: a shortest path from opening to opening.
fn openings(group: &[&Task], days: &[i32], opening: i64) -> Vec<i32> {
    // The best way to have made the last opening on each of the days, and to have made none.
    let mut ways = vec![Openings::default()];
    for &day in days {
        let to_here = |way: &Openings| way.paid + between(group, way.on.last().copied(), Some(day));
        let Some(best) = ways.iter().min_by_key(|way| to_here(way)) else { continue };
        let on = best.on.iter().copied().chain([day]).collect();
        let way = Openings { paid: to_here(best) + opening, on };
        if group.iter().any(|task| task.pin == Some(day)) {
            ways.clear();
        }
        ways.push(way);
    }
    let in_all = |way: &Openings| way.paid + between(group, way.on.last().copied(), None);
    ways.into_iter().min_by_key(in_all).map(|way| way.on).unwrap_or_default()
}

/// What the jobs cost that fall due between two openings of their group, with none from the one to the other.
fn between(group: &[&Task], last: Option<i32>, next: Option<i32>) -> i64 {
    let falls = |task: &Task| {
        task.pin.is_none()
            && last.is_none_or(|last| last < task.due)
            && next.is_none_or(|next| task.due < next)
    };
    let weight = |task: &Task, day: Option<i32>| day.map_or(FORBIDDEN, |day| task.weight(day));
    let tasks = group.iter().filter(|task| falls(task));
    tasks.map(|task| weight(task, last).min(weight(task, next))).sum()
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
