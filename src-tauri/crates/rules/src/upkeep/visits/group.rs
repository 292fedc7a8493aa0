//! Jobs that share an opening, and what they cost between two openings.

use std::collections::BTreeMap;

use super::VisitCosts;
use super::calendar::Calendar;
use super::task::Task;

/// Jobs that share an opening, or that need none.
#[derive(Debug, Clone)]
pub(super) struct Group {
    /// What opening it costs.
    pub opening: i64,
    /// The jobs that are not pinned.
    jobs: Vec<Curve>,
    /// By slot, the part of [`Group::pending`] that stays the same when another slot comes next: what those jobs
    /// cost in it that are done earlier rather than later.
    early: Vec<i64>,
    /// By slot, whether it has to be opened then because one of its jobs is pinned.
    pub pinned: Vec<bool>,
    /// What the jobs cost that fall due after an opening in each slot and before the slot that comes next, if
    /// the group is opened there.
    pub pending: Vec<i64>,
    /// What the jobs cost that fall due after an opening in each slot, if it is the last.
    pub rest: Vec<i64>,
}

/// What a job costs by slot: less and less up to the slot of its due day, more and more from there.
#[derive(Debug, Clone)]
struct Curve {
    due: usize,
    weights: Vec<i64>,
    /// The first slot in which the job is done rather than in the one that comes next: opened in one before it, it
    /// would be done too early to be worth it. The due slot as long as that is still to come.
    worth: usize,
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
        Group { opening, jobs: Vec::new(), early: none.clone(), pinned, pending: none.clone(), rest: none }
    }

    /// Adds a job, before the first move to a slot.
    pub(super) fn add(&mut self, task: &Task, calendar: &Calendar) {
        if let Some(pin) = task.pin {
            self.pinned[calendar.slot(pin)] = true;
            return;
        }
        let (due, weights) = (calendar.slot(task.due), calendar.weights(task));
        add(&mut self.rest, &weights[..due]);
        self.jobs.push(Curve { due, weights, worth: due });
    }

    /// Makes `next` the slot that comes next.
    ///
    /// With every step a job passes only the slots in which it changes sides, so that a sweep passes each once.
    pub(super) fn move_to(&mut self, next: usize) {
        self.pending.fill(0);
        for job in &mut self.jobs {
            job.move_to(next, &mut self.early);
            if let Some(before) = job.worth.checked_sub(1).filter(|_| job.due < next) {
                // For all slots up to this one, summed up below.
                self.pending[before] += job.weights[next];
            }
        }
        let mut late = 0;
        for (pending, early) in self.pending.iter_mut().zip(&self.early).rev() {
            late += *pending;
            *pending = late + early;
        }
    }
}

impl Curve {
    /// Makes `next` the slot that comes next, and keeps up the sum of what is done early.
    fn move_to(&mut self, next: usize, early: &mut [i64]) {
        let is_worth = |slot: usize| self.due >= next || self.weights[slot] > self.weights[next];
        while self.worth > 0 && !is_worth(self.worth - 1) {
            self.worth -= 1;
            early[self.worth] += self.weights[self.worth];
        }
        while self.worth < self.due && is_worth(self.worth) {
            early[self.worth] -= self.weights[self.worth];
            self.worth += 1;
        }
    }
}

fn add(sums: &mut [i64], more: &[i64]) {
    sums.iter_mut().zip(more).for_each(|(sum, more)| *sum += more);
}
