//! The last time that each item of a plan was done, by itself or with another, and what was found since.

use units::Day;

use super::{Done, Found, ItemRef, Plan, PlannedItem};
use crate::running::Travelled;

/// The last time that an item was done.
#[derive(Debug, Clone, Copy)]
pub(super) struct LastDone<'a> {
    pub day: Day,
    pub travelled: Option<Travelled>,
    /// The kind of part or fluid fitted, where someone said so.
    pub kind: Option<&'a str>,
    /// Whether that put right what was found on the same day.
    mends: bool,
}

/// What the book holds for each item of a plan, in the plan's order.
pub(super) struct Last<'a> {
    done: Vec<Option<LastDone<'a>>>,
    found: Vec<Vec<&'a Found>>,
}

impl<'a> Last<'a> {
    /// What was done and found, in any order.
    pub fn new(plan: &Plan<'_>, done: &'a [Done], found: &'a [Found]) -> Last<'a> {
        let none = plan.items().len();
        let mut last = Last { done: vec![None; none], found: vec![Vec::new(); none] };
        for done in done {
            last.count(plan, done);
        }
        for found in found {
            if let Some(at) = plan.position(&found.item) {
                last.found[at].push(found);
            }
        }
        for found in &mut last.found {
            found.sort_by_key(|found| (found.day, found.travelled, found.finding, found.value));
        }
        last
    }

    fn count(&mut self, plan: &Plan<'_>, done: &'a Done) {
        let Some(at) = plan.position(&done.item) else {
            return;
        };
        let Done { day, travelled, .. } = *done;
        let row = plan.items()[at].row;
        let mends = row.is_none_or(|row| row.action.mends());
        self.note(at, LastDone { day, travelled, kind: done.kind.as_deref(), mends });
        let resets = row.map_or(&[][..], |row| &row.resets);
        for &number in resets {
            if let Some(at) = plan.position(&ItemRef::Catalogue(number)) {
                self.note(at, LastDone { day, travelled, kind: None, mends: true });
            }
        }
    }

    /// The later one counts; of two on one day, the one farther on, with what either of them tells.
    fn note(&mut self, at: usize, new: LastDone<'a>) {
        let place = &mut self.done[at];
        *place = match *place {
            Some(known) if known.day == new.day => Some(LastDone {
                day: new.day,
                travelled: known.travelled.max(new.travelled),
                kind: known.kind.max(new.kind),
                mends: known.mends || new.mends,
            }),
            Some(known) if known.day > new.day => Some(known),
            _ => Some(new),
        };
    }

    /// When the item was last done.
    pub fn done(&self, plan: &Plan<'_>, item: &ItemRef) -> Option<LastDone<'a>> {
        plan.position(item).and_then(|at| self.done[at])
    }

    /// What was found about an item after it was last done, oldest first.
    pub fn found_since(&self, plan: &Plan<'_>, planned: &PlannedItem<'_>) -> &[&'a Found] {
        let Some(at) = plan.position(&planned.item) else {
            return &[];
        };
        let found = &self.found[at];
        // What was found on the day of a repair was repaired; what was found at a look is what the look was for.
        let answered = |found: &&Found| {
            self.done[at].is_some_and(|last| found.day < last.day || (found.day == last.day && last.mends))
        };
        &found[found.partition_point(answered)..]
    }
}
