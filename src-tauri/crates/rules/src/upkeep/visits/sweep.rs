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
use super::way::{Step, Ways};

/// The days found.
#[derive(Debug)]
pub(super) struct Found {
    /// The days of the visits, in order.
    pub days: Vec<i32>,
    /// Whether no other days are better.
    pub proven: bool,
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
    let field = Field {
        ahead: ahead(&groups, &calendar, costs.visit.into()),
        calendar,
        groups,
        visit: costs.visit.into(),
    };
    let first = field.sweep(FEW_WAYS.min(most), i64::MAX);
    let second = first.cut.then(|| field.sweep(most, first.cost));
    let proven = !second.as_ref().unwrap_or(&first).cut;
    let slots = second.and_then(|second| second.slots).or(first.slots).unwrap_or_default();
    Found { days: slots.into_iter().filter_map(|slot| field.calendar.day(slot)).collect(), proven }
}

/// What is swept over.
struct Field {
    calendar: Calendar,
    groups: Vec<Group>,
    /// What a visit costs.
    visit: i64,
    /// What [`ahead`] gives.
    ahead: Vec<Vec<i64>>,
}

/// What a sweep found.
struct Swept {
    /// The slots of the visits of the best way; nothing when no way stayed below the bound.
    slots: Option<Vec<usize>>,
    /// What that way costs, or the bound.
    cost: i64,
    /// Whether a way was dropped that might have been the best.
    cut: bool,
}

impl Field {
    /// Goes through the days with `most` ways at a time, each of which has to stay below a bound.
    fn sweep(&self, most: usize, below: i64) -> Swept {
        let (mut ways, mut next) = (Ways::start(&self.groups), Ways::default());
        // Every visit made on any way: its slot, and the visit made before it.
        let mut made: Vec<(usize, Option<usize>)> = Vec::new();
        let mut cut = false;
        for slot in self.calendar.slots() {
            let step = Step::new(slot, &self.groups, self.visit, &self.ahead[slot], below);
            let first = made.len();
            made.extend(ways.made().map(|before| (slot, before)));
            ways.go_on(&step, self.calendar.is_pinned(slot), first, &mut next);
            std::mem::swap(&mut ways, &mut next);
            cut |= ways.keep(most);
        }
        let best = ways.best();
        let slots = best.map(|(last, _)| slots(&made, last));
        Swept { slots, cost: best.map_or(below, |(_, cost)| cost), cut }
    }
}

/// The slots of the visits up to this one, by the record of them.
fn slots(made: &[(usize, Option<usize>)], last: Option<usize>) -> Vec<usize> {
    let visit = |place: usize| made.get(place);
    let visits = std::iter::successors(last.and_then(visit), |(_, before)| before.and_then(visit));
    let mut slots: Vec<_> = visits.map(|(slot, _)| *slot).collect();
    slots.reverse();
    slots
}

/// What is sure to come on top of the least of a way, by slot just decided and slot of the last visit.
///
/// It is what the jobs would still cost if opening up were free: the shortest path over the visits to come.
fn ahead(groups: &[Group], calendar: &Calendar, visit: i64) -> Vec<Vec<i64>> {
    let mut ahead = vec![Vec::new(); calendar.len()];
    // By slot of the last visit, what all jobs that fall due after it cost, with the visits to come.
    let mut to_come = summed(groups.iter().map(|group| group.rest.as_slice()), calendar.len());
    let mut pending =
        summed(groups.iter().map(|group| group.pending(calendar.len() - 1)), calendar.len() - 1);
    for slot in calendar.slots().rev() {
        ahead[slot] = to_come[..=slot].iter().zip(&pending).map(|(all, soon)| all - soon).collect();
        // For the slots before, the next visit may be made in this one as well.
        pending = summed(groups.iter().map(|group| group.pending(slot)), slot);
        let from_here = visit + to_come[slot];
        for (to_come, pending) in to_come[..slot].iter_mut().zip(&pending) {
            let with_visit = from_here + pending;
            *to_come = if calendar.is_pinned(slot) { with_visit } else { with_visit.min(*to_come) };
        }
    }
    ahead
}

/// The sums of several rows of this length, place by place.
fn summed<'a>(rows: impl Iterator<Item = &'a [i64]>, length: usize) -> Vec<i64> {
    let mut sums = vec![0; length];
    for row in rows {
        sums.iter_mut().zip(row).for_each(|(sum, more)| *sum += more);
    }
    sums
}
