//! The last time that each item of a plan was done, by itself or with another, and what was found since.

use units::Day;

use super::seen::{all_calling, calling, calls_for_work};
use super::{Done, Finding, Found, ItemRef, Milli, Plan, PlannedItem, Standing};
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
    /// When the item was last done by itself, and not only along with another.
    itself: Vec<Option<Day>>,
    /// Whether it is a look whose findings call for other work.
    answerable: Vec<bool>,
    /// When that work was last done.
    answered: Vec<Option<Day>>,
    /// What was found about another item calls for this look: the work on that item does not help.
    called: Vec<Vec<Finding>>,
    /// What was found and still counts.
    found: Vec<Vec<&'a Found>>,
}

impl<'a> Last<'a> {
    /// What was done and found, in any order.
    pub fn new(plan: &Plan<'_>, done: &'a [Done], found: &'a [Found]) -> Last<'a> {
        let none = plan.items().len();
        let mut last = Last {
            done: vec![None; none],
            itself: vec![None; none],
            answerable: vec![false; none],
            answered: vec![None; none],
            called: vec![Vec::new(); none],
            found: vec![Vec::new(); none],
        };
        for row in plan.items().iter().filter_map(|planned| planned.row) {
            positions(plan, &row.answers).for_each(|at| last.answerable[at] = true);
            for &(finding, number) in &row.calls {
                positions(plan, &[number]).for_each(|at| last.called[at].push(finding));
            }
        }
        for done in done {
            last.count(plan, done);
        }
        for found in found {
            let Some(at) = plan.position(&found.item) else { continue };
            last.found[at].push(found);
            let called = plan.items()[at].row.into_iter().flat_map(|row| row.called_by(found.finding));
            for at in called.filter_map(|number| plan.position(&ItemRef::Catalogue(number))) {
                last.found[at].push(found);
            }
        }
        for (at, planned) in plan.items().iter().enumerate() {
            last.found[at].sort_by_key(|found| order(found));
            last.found[at] = last.still_counts(planned, at);
        }
        for (look, work) in last.called_by_looks(plan) {
            last.found[work].push(look);
            last.found[work].sort_by_key(|found| order(found));
        }
        last
    }

    /// What looks found that calls for work, with where that work stands: it is due as long as the finding stands. Where
    /// more than one work could be meant, as of worn brakes, only the look can say which.
    fn called_by_looks(&self, plan: &Plan<'_>) -> Vec<(&'a Found, usize)> {
        let looks = plan.items().iter().enumerate().filter(|&(at, _)| self.answerable[at]);
        let calling =
            looks.flat_map(|(at, look)| all_calling(look, &self.found[at]).map(move |found| (look, found)));
        calling.filter_map(|(look, found)| Some((found, only_work(plan, look, found.finding)?))).collect()
    }

    /// The works among which a finding of a look leaves the choice, as long as nothing is known of any of them that calls
    /// for it: worn brakes may be those in front or behind.
    pub(super) fn undecided(
        &self,
        plan: &Plan<'_>,
        look: &PlannedItem<'_>,
        finding: Finding,
    ) -> Vec<ItemRef> {
        let works: Vec<usize> = works_called(plan, look, finding).collect();
        let is_known = |&at: &usize| calling(&plan.items()[at], &self.found[at]).is_some();
        if works.len() < 2 || works.iter().any(is_known) {
            return Vec::new();
        }
        works.iter().map(|&at| plan.items()[at].item.clone()).collect()
    }

    fn count(&mut self, plan: &Plan<'_>, done: &'a Done) {
        let Some(at) = plan.position(&done.item) else {
            return;
        };
        let Done { day, travelled, .. } = *done;
        let row = plan.items()[at].row;
        let mends = row.is_none_or(|row| row.action.mends());
        self.note(at, LastDone { day, travelled, kind: done.kind.as_deref(), mends });
        self.itself[at] = self.itself[at].max(Some(day));
        let Some(row) = row else { return };
        for at in positions(plan, &row.resets) {
            self.note(at, LastDone { day, travelled, kind: None, mends: true });
        }
        for at in positions(plan, &row.answers) {
            self.answered[at] = self.answered[at].max(Some(day));
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

    /// What was found about an item and still counts, oldest first: what was found after it was last done, and what
    /// that did not put right.
    pub fn found_since(&self, plan: &Plan<'_>, planned: &PlannedItem<'_>) -> &[&'a Found] {
        plan.position(&planned.item).map_or(&[], |at| &self.found[at])
    }

    fn still_counts(&self, planned: &PlannedItem<'_>, at: usize) -> Vec<&'a Found> {
        let found = &self.found[at];
        // What was found on the day of a repair was repaired; what was found at a look is what the look was for.
        let answered = |found: &&Found| {
            let by_itself = self.done[at]
                .is_some_and(|last| found.day < last.day || (found.day == last.day && last.mends));
            by_itself || self.answered[at].is_some_and(|day| found.day <= day)
        };
        let since = found.partition_point(answered);
        let mut stood = false;
        let counts = |&(place, found): &(usize, &&Found)| {
            let stands = self.stands(planned, at, found);
            stood |= stands;
            // That all was well later on is what takes back what stands.
            place >= since || stands || (stood && found.finding == Finding::WithinLimits)
        };
        found.iter().enumerate().filter(counts).map(|(_, found)| *found).collect()
    }

    /// Whether what was found stands although the item, or another that counts for it, was done since.
    ///
    /// Of a look that calls for other work it stands until that work is done, although it was looked at again. What
    /// calls for the look because the work on another item does not help is not ended by that work either, not even
    /// on the same day: a leak is found while the fluid is renewed, and new fluid does not stop it.
    fn stands(&self, planned: &PlannedItem<'_>, at: usize, found: &Found) -> bool {
        let ended = if self.called[at].contains(&found.finding) {
            !self.answerable[at] && self.itself[at].is_some_and(|day| found.day < day)
        } else {
            !self.answerable[at] || self.answered[at].is_some_and(|day| found.day <= day)
        };
        !ended && calls_for_work(planned, found.finding)
    }
}

/// The order in which findings are told.
fn order(found: &Found) -> (Day, Option<Travelled>, Finding, Option<Milli>) {
    (found.day, found.travelled, found.finding, found.value)
}

/// Where the one work stands that this finding of a look calls for; `None` where there is none, or a choice.
fn only_work(plan: &Plan<'_>, look: &PlannedItem<'_>, finding: Finding) -> Option<usize> {
    let mut works = works_called(plan, look, finding);
    works.next().filter(|_| works.next().is_none())
}

/// Where each work stands that a finding of a look can mean.
fn works_called(plan: &Plan<'_>, look: &PlannedItem<'_>, finding: Finding) -> impl Iterator<Item = usize> {
    let answers = move |work: &PlannedItem<'_>| {
        let row = work.row.zip(look.row);
        let meant = row.is_some_and(|(work, look)| {
            work.answers.contains(&look.number) && work.due_when.contains(&finding)
        });
        meant && work.standing == Standing::Active
    };
    (0..plan.items().len()).filter(move |&at| answers(&plan.items()[at]))
}

/// Where these rows of the catalogue stand in the plan.
fn positions(plan: &Plan<'_>, numbers: &[u32]) -> impl Iterator<Item = usize> {
    numbers.iter().filter_map(|&number| plan.position(&ItemRef::Catalogue(number)))
}
