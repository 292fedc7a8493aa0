//! Which job is done on which of the days chosen.

use std::collections::BTreeMap;

use units::Day;

use super::task::{FORBIDDEN, Task};
use super::{PlannedVisit, VisitCost, VisitCosts};
use crate::upkeep::Access;

/// The cheapest visits on these days, which are in order and suffice for all jobs.
pub(super) fn visits_on(days: &[i32], tasks: &[Task], costs: &VisitCosts, today: Day) -> Vec<PlannedVisit> {
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
    visits.into_iter().map(|(day, places)| visit(day, places, tasks, costs, today)).collect()
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

fn visit(day: i32, mut jobs: Vec<usize>, tasks: &[Task], costs: &VisitCosts, today: Day) -> PlannedVisit {
    jobs.sort_by_key(|place| (tasks[*place].due, *place));
    let mut opened: Vec<Access> = jobs.iter().filter_map(|place| tasks[*place].access).collect();
    opened.sort_unstable();
    opened.dedup();
    let openings = opened.into_iter().map(|access| i64::from(costs.opening(access))).sum();
    let there = VisitCost { visits: costs.visit.into(), openings, ..VisitCost::default() };
    let work: VisitCost = jobs.iter().map(|place| tasks[*place].cost(day)).sum();
    PlannedVisit { day: today.plus_days(day), jobs, cost: there + work }
}
