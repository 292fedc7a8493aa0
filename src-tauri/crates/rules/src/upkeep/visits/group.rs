//! Jobs that share an opening, and what they cost between two openings.

use std::collections::BTreeMap;

use super::VisitCosts;
use super::calendar::Calendar;
use super::task::Task;

/// Jobs that share an opening, or that need none.
#[derive(Debug)]
pub(super) struct Group {
    /// The jobs, by their places in the list of all.
    pub tasks: Vec<usize>,
    /// What opening it costs.
    pub opening: i64,
    /// By slot, whether it has to be opened then because one of its jobs is pinned.
    pub pinned: Vec<bool>,
    /// What the jobs cost that fall due after an opening in each slot, if it is the last.
    pub rest: Vec<i64>,
    /// One after the other, what [`Group::pending`] gives for the slots from 1.
    pending: Vec<i64>,
}

/// A group to which jobs are still added.
#[derive(Debug)]
struct Gathering {
    tasks: Vec<usize>,
    opening: i64,
    /// The jobs that are not pinned, in the order in which they fall due.
    jobs: Vec<Curve>,
    /// One job after the other, what it costs by slot: less and less up to the slot of its due day, more and more from
    /// there.
    weights: Vec<i64>,
    pinned: Vec<bool>,
    rest: Vec<i64>,
}

/// Where a job changes sides.
#[derive(Debug)]
struct Curve {
    due: usize,
    /// The first slot in which the job is done rather than in the one that comes next: opened in one before it, it
    /// would be done too early to be worth it. The due slot as long as that is still to come.
    worth: usize,
}

/// The jobs by what must be opened up for them.
pub(super) fn groups(tasks: &[Task], calendar: &Calendar, costs: &VisitCosts) -> Vec<Group> {
    let mut groups = BTreeMap::new();
    let mut places: Vec<_> = (0..tasks.len()).collect();
    places.sort_unstable_by_key(|place| (tasks[*place].due, *place));
    for place in places {
        let task = &tasks[place];
        let opening = task.access.map_or(0, |access| costs.opening(access).into());
        let group = groups.entry(task.access).or_insert_with(|| Gathering::new(calendar, opening));
        group.tasks.push(place);
        group.add(task, calendar);
    }
    groups.into_values().map(Gathering::closed).collect()
}

impl Group {
    /// By slot of an opening before `next`, what the jobs cost that fall due between the two, if the group is opened
    /// in both and not between them: each is done in the cheaper one. `next` is 1 or more.
    pub(super) fn pending(&self, next: usize) -> &[i64] {
        let start = next * (next - 1) / 2;
        &self.pending[start..start + next]
    }
}

impl Gathering {
    fn new(calendar: &Calendar, opening: i64) -> Gathering {
        let slots = calendar.len();
        Gathering {
            tasks: Vec::new(),
            opening,
            jobs: Vec::new(),
            weights: Vec::with_capacity(4 * slots),
            pinned: vec![false; slots],
            rest: vec![0; slots],
        }
    }

    fn add(&mut self, task: &Task, calendar: &Calendar) {
        if let Some(pin) = task.pin {
            self.pinned[calendar.slot(pin)] = true;
            return;
        }
        let (due, first) = (calendar.slot(task.due), self.weights.len());
        calendar.weigh(task, &mut self.weights);
        self.rest
            .iter_mut()
            .zip(&self.weights[first..first + due])
            .for_each(|(rest, weight)| *rest += weight);
        self.jobs.push(Curve { due, worth: due });
    }

    /// Works out what is pending between any two slots.
    ///
    /// With every step a job passes only the slots in which it changes sides, so that it passes each once.
    fn closed(mut self) -> Group {
        let slots = self.rest.len();
        let mut pending = Vec::with_capacity(slots * (slots - 1) / 2);
        // By slot, what those jobs cost in it that are done in it rather than in the one that comes next.
        let mut early = vec![0; slots];
        // By slot, what those jobs cost in the one that comes next that are done there rather than in this one, and
        // in the slot after this one would not be.
        let mut late = vec![0; slots];
        for next in 1..slots {
            // What those jobs cost that would not be done in the slot of the row but in the one that comes next.
            let mut later = 0;
            let jobs = self.jobs.iter_mut().zip(self.weights.chunks_exact(slots));
            for (job, weights) in jobs.take_while(|(job, _)| job.due < next) {
                job.move_to(next, weights, &mut early);
                if let Some(before) = job.worth.checked_sub(1) {
                    late[before] += weights[next];
                    later += weights[next];
                }
            }
            pending.extend(late[..next].iter_mut().zip(&early).map(|(late, early)| {
                let here = later + early;
                later -= std::mem::take(late);
                here
            }));
        }
        Group { tasks: self.tasks, opening: self.opening, pinned: self.pinned, rest: self.rest, pending }
    }
}

impl Curve {
    /// Makes `next`, which comes after the due slot, the slot that comes next, and keeps up the sum of what is done
    /// early.
    fn move_to(&mut self, next: usize, weights: &[i64], early: &mut [i64]) {
        while self.worth > 0 && weights[self.worth - 1] <= weights[next] {
            self.worth -= 1;
            early[self.worth] += weights[self.worth];
        }
    }
}
