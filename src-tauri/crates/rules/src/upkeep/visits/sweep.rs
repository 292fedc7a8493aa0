//! The days of the best plan, found by sweeping over every day on which a visit can make sense.
//!
//! The sweep goes through the days in order and decides at each whether to make a visit. It keeps every way of
//! having got there that may still turn out the best, and drops a way when another is at least as good whatever
//! follows.
//!
//! Which groups of work a visit opens up is never decided ahead. Once the days of the visits are known the
//! groups have nothing more to do with each other, so a way holds, for each group on its own, at which of its
//! visits the group may have been opened last, and what the group has cost up to there. A job between two
//! openings of its group goes to the cheaper of the two, and is paid for when the later one is made.

use super::VisitCosts;
use super::calendar::Calendar;
use super::group::{Group, groups};
use super::task::Task;
use super::way::Way;

/// The days found.
#[derive(Debug)]
pub(super) struct Found {
    /// The days of the visits, in order.
    pub days: Vec<i32>,
    /// Whether no other days are better.
    pub proven: bool,
}

/// Where the sweep stands.
#[derive(Debug)]
struct Sweep {
    groups: Vec<Group>,
    /// What a visit costs.
    visit: i64,
    /// What a way must stay below to be followed.
    below: i64,
    ways: Vec<Way>,
    /// Every visit made on any way: its slot, and the visit made before it.
    made: Vec<(usize, Option<usize>)>,
    /// Whether a way was dropped that might have been the best.
    cut: bool,
}

/// How many ways the first sweep follows. The plan it finds is so near the best that the second one has little left
/// to follow.
const FEW_WAYS: usize = 1;

/// The days of the visits of the best plan.
///
/// When more than `most` ways are left after a day the least promising go.
pub(super) fn best_days(tasks: &[Task], costs: &VisitCosts, most: usize) -> Found {
    let calendar = Calendar::new(tasks);
    let groups = groups(tasks, &calendar, costs);
    let ahead = ahead(tasks, &calendar, costs.visit.into());
    let sweep = |most, below| {
        let mut sweep = Sweep::new(groups.clone(), costs.visit.into(), below);
        for slot in calendar.slots() {
            sweep.decide(slot, calendar.is_pinned(slot));
            sweep.drop_beaten(&ahead[slot]);
            sweep.keep(most);
        }
        sweep
    };
    let first = sweep(FEW_WAYS.min(most), i64::MAX);
    let second = first.cut.then(|| sweep(most, first.best().map_or(i64::MAX, |best| best.ended)));
    let proven = !second.as_ref().unwrap_or(&first).cut;
    let found = second.filter(|second| second.best().is_some()).unwrap_or(first);
    let days = found.slots().into_iter().filter_map(|slot| calendar.day(slot)).collect();
    Found { days, proven }
}

/// What is sure to come on top of [`Way::least`], by slot just decided and slot of the last visit.
///
/// It is what the jobs would still cost if opening up were free: the shortest path over the visits to come.
fn ahead(tasks: &[Task], calendar: &Calendar, visit: i64) -> Vec<Vec<i64>> {
    let mut all = Group::new(calendar, 0);
    for task in tasks {
        all.add(task, calendar);
    }
    let mut ahead = vec![Vec::new(); calendar.len()];
    // By slot of the last visit, what all jobs that fall due after it cost, with the visits to come.
    let mut to_come = all.rest.clone();
    all.move_to(calendar.len() - 1);
    for slot in calendar.slots().rev() {
        ahead[slot] = to_come[..=slot].iter().zip(&all.pending).map(|(all, soon)| all - soon).collect();
        // For the slots before, the next visit may be made in this one as well.
        all.move_to(slot);
        let from_here = visit + to_come[slot];
        for (to_come, pending) in to_come[..slot].iter_mut().zip(&all.pending) {
            let with_visit = from_here + pending;
            *to_come = if calendar.is_pinned(slot) { with_visit } else { with_visit.min(*to_come) };
        }
    }
    ahead
}

impl Sweep {
    fn new(mut groups: Vec<Group>, visit: i64, below: i64) -> Sweep {
        for group in &mut groups {
            group.move_to(1);
        }
        Sweep { ways: vec![Way::start(&groups)], groups, visit, below, made: Vec::new(), cut: false }
    }

    /// Goes on from every way with a visit in this slot and, unless something is pinned to it, without one.
    fn decide(&mut self, slot: usize, pinned: bool) {
        let first = self.made.len();
        self.made.extend(self.ways.iter().map(|way| (slot, way.made)));
        let visiting = (first..).zip(&self.ways);
        let visiting: Vec<_> =
            visiting.map(|(made, way)| way.with_visit(&self.groups, slot, made, self.visit)).collect();
        if pinned {
            self.ways.clear();
        }
        self.ways.extend(visiting);
        self.groups.iter_mut().for_each(|group| group.move_to(slot + 1));
    }

    /// Drops every way that comes to too much or that another beats, and puts the most promising first.
    fn drop_beaten(&mut self, ahead: &[i64]) {
        self.ways.iter_mut().for_each(|way| way.update(&self.groups));
        self.ways.retain(|way| way.least + ahead[way.visited] < self.below);
        self.ways.sort_by_key(|way| way.least + ahead[way.visited]);
        let mut kept: Vec<Way> = Vec::with_capacity(self.ways.len());
        for way in self.ways.drain(..) {
            if !kept.iter().any(|other| other.beats(&way)) {
                kept.push(way);
            }
        }
        self.ways = kept;
    }

    /// Drops the least promising ways above `most`.
    fn keep(&mut self, most: usize) {
        self.cut |= self.ways.len() > most;
        self.ways.truncate(most);
    }

    /// The best way.
    fn best(&self) -> Option<&Way> {
        self.ways.iter().min_by_key(|way| way.ended)
    }

    /// The slots of its visits.
    fn slots(&self) -> Vec<usize> {
        let mut slots = Vec::new();
        let mut visit = self.best().and_then(|way| way.made);
        while let Some(&(slot, before)) = visit.and_then(|visit| self.made.get(visit)) {
            slots.push(slot);
            visit = before;
        }
        slots.reverse();
        slots
    }
}
