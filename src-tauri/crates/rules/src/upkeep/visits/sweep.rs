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
//!
//! No bound cuts ways off: the lower bounds that are cheap to have leave nearly all of them.

use super::calendar::Calendar;
use super::group::Group;
use super::way::{Step, Ways};

/// The days found.
#[derive(Debug)]
pub(super) struct Found {
    /// The slots of the visits, in order.
    pub slots: Vec<usize>,
    /// Whether no other days are better.
    pub proven: bool,
}

/// The days of the visits of the best plan; `visit` is what a visit costs.
///
/// When more than `most` ways are left after a day the dearest go.
pub(super) fn best_slots(groups: &[Group], calendar: &Calendar, visit: i64, most: usize) -> Found {
    let (mut ways, mut next) = (Ways::start(groups), Ways::none(groups.len()));
    // Every visit made on any way: its slot, and the visit made before it.
    let mut made: Vec<(usize, Option<usize>)> = Vec::with_capacity(8 * calendar.len());
    let mut proven = true;
    for slot in calendar.slots() {
        let step = Step { slot, groups, pinned: calendar.is_pinned(slot), visit, made: made.len() };
        made.extend(ways.made().map(|before| (slot, before)));
        ways.go_on(&step, &mut next);
        std::mem::swap(&mut ways, &mut next);
        proven &= !ways.keep(most);
    }
    Found { slots: slots(&made, ways.best()), proven }
}

/// The slots of the visits up to this one, by the record of them.
fn slots(made: &[(usize, Option<usize>)], last: Option<usize>) -> Vec<usize> {
    let visit = |place: usize| made.get(place);
    let visits = std::iter::successors(last.and_then(visit), |(_, before)| before.and_then(visit));
    let mut slots: Vec<_> = visits.map(|(slot, _)| *slot).collect();
    slots.reverse();
    slots
}
