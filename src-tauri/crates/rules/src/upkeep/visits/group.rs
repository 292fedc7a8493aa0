//! Jobs that share an opening, and what they cost between two openings.

use std::collections::BTreeMap;

use super::VisitCosts;
use super::calendar::Calendar;
use super::task::{FORBIDDEN, Task};

/// Jobs that share an opening, or that need none.
#[derive(Debug)]
pub(super) struct Group {
    /// What opening it costs.
    pub opening: i64,
    /// The jobs that are not pinned.
    jobs: Vec<Curve>,
    /// By slot, what the jobs cost that nothing but an opening in it can still do, since the slot that comes next
    /// is too late for them.
    settled: Vec<i64>,
    /// By slot, whether it has to be opened then because one of its jobs is pinned.
    pub pinned: Vec<bool>,
    /// What the jobs cost that fall due after an opening in each slot and before the slot that comes next, if
    /// the group is opened there.
    pub pending: Vec<i64>,
    /// What the jobs cost that fall due after an opening in each slot, if it is the last.
    pub rest: Vec<i64>,
}

/// What a job costs by slot: less and less up to the slot of its due day, more and more from there.
#[derive(Debug)]
struct Curve {
    due: usize,
    weights: Vec<i64>,
    settled: bool,
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
        Group { opening, jobs: Vec::new(), settled: none.clone(), pinned, pending: none.clone(), rest: none }
    }

    /// Adds a job, before the first move to a slot.
    pub(super) fn add(&mut self, task: &Task, calendar: &Calendar) {
        if let Some(pin) = task.pin {
            self.pinned[calendar.slot(pin)] = true;
            return;
        }
        let (due, weights) = (calendar.slot(task.due), calendar.weights(task));
        add(&mut self.rest, &weights[..due]);
        self.jobs.push(Curve { due, weights, settled: false });
    }

    /// Makes `next` the slot that comes next.
    pub(super) fn move_to(&mut self, next: usize) {
        self.settle(next);
        self.pending.copy_from_slice(&self.settled);
        for Curve { due, weights, settled } in &self.jobs {
            if *due < next && !settled {
                let late = weights[next];
                // Opened before this slot it would be done too early to be worth it.
                let worth = weights[..*due].partition_point(|early| *early > late);
                self.pending[..worth].iter_mut().for_each(|pending| *pending += late);
                add(&mut self.pending[worth..], &weights[worth..*due]);
            }
        }
    }

    /// Sums up the jobs for which `next` is too late: their costs stay the same as long as that is so.
    fn settle(&mut self, next: usize) {
        for Curve { due, weights, settled } in &mut self.jobs {
            let too_late = *due < next && weights[next] >= FORBIDDEN;
            match (too_late, *settled) {
                (true, false) => add(&mut self.settled, &weights[..*due]),
                (false, true) => subtract(&mut self.settled, &weights[..*due]),
                _ => {}
            }
            *settled = too_late;
        }
    }
}

fn add(sums: &mut [i64], more: &[i64]) {
    sums.iter_mut().zip(more).for_each(|(sum, more)| *sum += more);
}

fn subtract(sums: &mut [i64], less: &[i64]) {
    sums.iter_mut().zip(less).for_each(|(sum, less)| *sum -= less);
}
