//! The ways of going through the days that the sweep compares.

use std::ops::Range;

use super::group::Group;

/// An opening of a group that may be its last so far.
#[derive(Debug, Clone, Copy)]
struct Last {
    /// The slot of the opening; 0 if there was none yet.
    slot: usize,
    /// What the group has cost so far: its openings, and its jobs that fell due before this one.
    paid: i64,
    /// The same with the jobs since then, if the group is opened again in the slot that comes next.
    soon: i64,
    /// The same with all jobs that are left, if the group is never opened again.
    never: i64,
}

/// A way of having got this far.
#[derive(Debug)]
struct Way {
    /// The last visit, as a place in the record of them.
    made: Option<usize>,
    /// The slot of that visit; 0 if there was none yet.
    visited: usize,
    /// What the visits cost, without openings and jobs.
    visits: i64,
    /// The least that it comes to, without what is still ahead.
    least: i64,
    /// What it comes to if no visit follows.
    ended: i64,
    /// The least that it comes to with what is still ahead.
    in_all: i64,
    /// Where it says at which of its openings those of each group end.
    ends: Range<usize>,
}

/// The ways that got to the same slot.
///
/// Their openings lie in one piece, since so many are made and dropped again.
#[derive(Debug, Default)]
pub(super) struct Ways {
    all: Vec<Way>,
    /// By way, by group and the latest first, the openings that may be the last of their group. Every group has at
    /// least one.
    lasts: Vec<Last>,
    /// By way and by group, where its openings end and those of the next begin.
    ends: Vec<usize>,
}

/// A slot in which ways go on.
#[derive(Debug)]
pub(super) struct Step<'a> {
    slot: usize,
    groups: Vec<GroupHere<'a>>,
    /// What a visit costs.
    visit: i64,
    /// By slot of the last visit, what is sure to come on top of a way's least.
    ahead: &'a [i64],
    /// What a way must stay below to be followed.
    below: i64,
}

/// A group of jobs in a slot.
#[derive(Debug, Clone, Copy)]
struct GroupHere<'a> {
    opening: i64,
    /// Whether it has to be opened here.
    pinned: bool,
    /// By slot of an opening, what is pending when the slot after this one comes next.
    pending: &'a [i64],
    /// By slot of an opening, what is pending for ever.
    rest: &'a [i64],
}

impl<'a> Step<'a> {
    /// The step in this slot.
    pub(super) fn new(
        slot: usize,
        groups: &'a [Group],
        visit: i64,
        ahead: &'a [i64],
        below: i64,
    ) -> Step<'a> {
        let here = |group: &'a Group| GroupHere {
            opening: group.opening,
            pinned: group.pinned[slot],
            pending: group.pending(slot + 1),
            rest: &group.rest,
        };
        Step { slot, groups: groups.iter().map(here).collect(), visit, ahead, below }
    }
}

impl Ways {
    /// The one way before the first slot: no visit yet.
    pub(super) fn start(groups: &[Group]) -> Ways {
        let none = |group: &Group| Last { slot: 0, paid: 0, soon: 0, never: group.rest[0] };
        let lasts: Vec<_> = groups.iter().map(none).collect();
        let ended = lasts.iter().map(|last| last.never).sum();
        let ends = 0..groups.len() + 1;
        let first = Way { made: None, visited: 0, visits: 0, least: 0, ended, in_all: 0, ends: ends.clone() };
        Ways { all: vec![first], lasts, ends: ends.collect() }
    }

    /// The last visit of each way, as a place in the record of them.
    pub(super) fn made(&self) -> impl Iterator<Item = Option<usize>> {
        self.all.iter().map(|way| way.made)
    }

    /// The last visit of the best way and what that way comes to, if no visit follows.
    pub(super) fn best(&self) -> Option<(Option<usize>, i64)> {
        self.all.iter().map(|way| (way.made, way.ended)).min_by_key(|(_, ended)| *ended)
    }

    /// Goes on from each of these ways with a visit, the first of them at the place `made` in the record, and, unless
    /// there has to be one, without: as far as the bound lets them, the most promising first, and none that another
    /// beats.
    pub(super) fn go_on(&self, step: &Step<'_>, pinned: bool, made: usize, into: &mut Ways) {
        into.all.clear();
        into.lasts.clear();
        into.ends.clear();
        for (way, made) in self.all.iter().zip(made..) {
            let carried = into.carry(self.by_group(way), step);
            into.visit(way, self.by_group(way), carried.clone(), step, made);
            if !pinned {
                into.take(Way { ends: carried, ..*way }, step);
            }
        }
        into.all.sort_by_key(|way| way.in_all);
        into.drop_beaten();
    }

    /// Drops the least promising ways above `most`; says whether there were any.
    pub(super) fn keep(&mut self, most: usize) -> bool {
        let cut = self.all.len() > most;
        self.all.truncate(most);
        cut
    }

    /// Takes over the openings of a way, and forgets those that cannot be the last of their group in the best plan;
    /// says where their ends stand.
    ///
    /// What an earlier opening loses against a later one grows with the time to the next, so that the earlier has to be
    /// ahead if that is soon.
    fn carry<'a>(&mut self, before: impl Iterator<Item = &'a [Last]>, step: &Step<'_>) -> Range<usize> {
        let first = self.ends.len();
        self.ends.push(self.lasts.len());
        for (group, before) in step.groups.iter().zip(before) {
            let mut cheapest = i64::MAX;
            for last in before {
                let soon = last.paid + group.pending[last.slot];
                if soon < cheapest {
                    cheapest = soon;
                    self.lasts.push(Last { soon, ..*last });
                }
            }
            self.ends.push(self.lasts.len());
        }
        first..self.ends.len()
    }

    /// Takes in the way that goes on from this one with a visit. Which groups that opens is left open, save those with
    /// a job that is pinned to it.
    fn visit<'a>(
        &mut self,
        way: &Way,
        before: impl Iterator<Item = &'a [Last]>,
        carried: Range<usize>,
        step: &Step<'_>,
        made: usize,
    ) {
        let first = self.ends.len();
        self.ends.push(self.lasts.len());
        for ((group, before), end) in step.groups.iter().zip(before).zip(carried.start..) {
            let paid = before.last().map_or(0, |cheapest| cheapest.soon) + group.opening;
            let (soon, never) = (paid + group.pending[step.slot], paid + group.rest[step.slot]);
            let others = &self.lasts[self.ends[end]..self.ends[end + 1]];
            let dearer = others.iter().take_while(|other| group.pinned || other.soon >= soon).count();
            // The latest has to be ahead if none follows.
            if others.get(dearer).is_none_or(|other| other.never > never) {
                self.lasts.push(Last { slot: step.slot, paid, soon, never });
            }
            self.lasts.extend_from_within(self.ends[end] + dearer..self.ends[end + 1]);
            self.ends.push(self.lasts.len());
        }
        let (visits, ends) = (way.visits + step.visit, first..self.ends.len());
        self.take(Way { made: Some(made), visited: step.slot, visits, ends, ..*way }, step);
    }

    /// Takes in a way with its costs brought up to the slot that comes next, if the bound lets it.
    fn take(&mut self, way: Way, step: &Step<'_>) {
        let (mut least, mut ended) = (way.visits, way.visits);
        // Of a group the earliest is the cheapest soon, the latest the cheapest at the end.
        for lasts in self.by_group(&way) {
            least += lasts.last().map_or(0, |last| last.soon);
            ended += lasts.first().map_or(0, |last| last.never);
        }
        let in_all = least + step.ahead[way.visited];
        if in_all < step.below {
            self.all.push(Way { least, ended, in_all, ..way });
        }
    }

    fn drop_beaten(&mut self) {
        let mut kept = 0;
        for at in 0..self.all.len() {
            if !(0..kept).any(|other| self.beats(&self.all[other], &self.all[at])) {
                self.all.swap(kept, at);
                kept += 1;
            }
        }
        self.all.truncate(kept);
    }

    /// Whether one way is at least as good as the other whatever follows.
    fn beats(&self, one: &Way, other: &Way) -> bool {
        if one.least > other.least || one.ended > other.ended {
            return false;
        }
        let lost = self.by_group(one).zip(self.by_group(other)).map(|(ours, theirs)| most_lost(ours, theirs));
        one.visits + lost.sum::<i64>() <= other.visits
    }

    /// The openings of a way that may be the last ones, by group.
    fn by_group(&self, way: &Way) -> impl Iterator<Item = &[Last]> {
        self.ends[way.ends.clone()].windows(2).map(|ends| &self.lasts[ends[0]..ends[1]])
    }
}

/// How much dearer a group can turn out with the best of our openings as its last than with any of theirs; negative
/// if it is cheaper in any case.
fn most_lost(ours: &[Last], theirs: &[Last]) -> i64 {
    // An opening loses most against a later one if no other follows, against an earlier one if one follows soon.
    let lost = |our: &Last, their: &Last| {
        if our.slot < their.slot { our.never - their.never } else { our.soon - their.soon }
    };
    let least_lost = |their: &Last| ours.iter().map(|our| lost(our, their)).min().unwrap_or(0);
    theirs.iter().map(least_lost).max().unwrap_or(0)
}
