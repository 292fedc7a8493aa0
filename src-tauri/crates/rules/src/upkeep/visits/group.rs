//! Jobs that share an opening, and what they cost between two openings.

use std::collections::BTreeMap;

use super::VisitCosts;
use super::calendar::Calendar;
use super::task::Task;

/// Jobs that share an opening, or that need none.
#[derive(Debug)]
pub(super) struct Group {
    /// What opening it costs.
    pub opening: i64,
    /// The jobs that are not pinned: the slot of the due day, and the weight in every slot.
    jobs: Vec<(usize, Vec<i64>)>,
    /// By slot, whether it has to be opened then because one of its jobs is pinned.
    pub pinned: Vec<bool>,
    /// What the jobs cost that fall due after an opening in each slot and before the slot that comes next, if
    /// the group is opened there.
    pub pending: Vec<i64>,
    /// What the jobs cost that fall due after an opening in each slot, if it is the last.
    pub rest: Vec<i64>,
}

/// The jobs by what must be opened up for them.
pub(super) fn groups(tasks: &[Task], calendar: &Calendar, costs: &VisitCosts) -> Vec<Group> {
    let mut groups = BTreeMap::new();
    for task in tasks {
        let opening = task.access.map_or(0, |access| costs.opening(access).into());
        groups.entry(task.access).or_insert_with(|| Group::new(calendar, opening)).add(task, calendar);
    }
    groups.into_values().collect()
}

impl Group {
    /// A group without jobs.
    pub(super) fn new(calendar: &Calendar, opening: i64) -> Group {
        let none = vec![0; calendar.len()];
        let pinned = vec![false; calendar.len()];
        Group { opening, jobs: Vec::new(), pinned, pending: none.clone(), rest: none }
    }

    /// Adds a job, before the first move to a slot.
    pub(super) fn add(&mut self, task: &Task, calendar: &Calendar) {
        if let Some(pin) = task.pin {
            self.pinned[calendar.slot(pin)] = true;
            return;
        }
        let (due, weights) = (calendar.slot(task.due), calendar.weights(task));
        for (rest, weight) in self.rest[..due].iter_mut().zip(&weights) {
            *rest += weight;
        }
        self.jobs.push((due, weights));
    }

    /// Makes `next` the slot that comes next.
    pub(super) fn move_to(&mut self, next: usize) {
        self.pending.fill(0);
        for (due, weights) in self.jobs.iter().filter(|(due, _)| *due < next) {
            let late = weights[next];
            for (pending, early) in self.pending[..*due].iter_mut().zip(weights) {
                *pending += late.min(*early);
            }
        }
    }
}
