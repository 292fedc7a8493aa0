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
    ways: Vec<Way>,
    /// By way, by group and by slot, the openings that may be the last of their group. Every group has at least one.
    lasts: Vec<Last>,
    /// By way and by group, where its openings end and those of the next begin.
    ends: Vec<usize>,
}

/// A slot in which ways go on.
#[derive(Debug, Clone, Copy)]
pub(super) struct Step<'a> {
    /// The slot.
    pub slot: usize,
    /// The groups of jobs.
    pub groups: &'a [Group],
    /// What a visit costs.
    pub visit: i64,
    /// By slot of the last visit, what is sure to come on top of a way's least.
    pub ahead: &'a [i64],
    /// What a way must stay below to be followed.
    pub below: i64,
}

impl Ways {
    /// The one way before the first slot: no visit yet.
    pub(super) fn start(groups: &[Group]) -> Ways {
        let none = |group: &Group| Last { slot: 0, paid: 0, soon: 0, never: group.rest[0] };
        let lasts: Vec<_> = groups.iter().map(none).collect();
        let ended = lasts.iter().map(|last| last.never).sum();
        let ends = 0..groups.len() + 1;
        let first = Way { made: None, visited: 0, visits: 0, least: 0, ended, in_all: 0, ends: ends.clone() };
        Ways { ways: vec![first], lasts, ends: ends.collect() }
    }

    /// The last visit of each way, as a place in the record of them.
    pub(super) fn made(&self) -> impl Iterator<Item = Option<usize>> {
        self.ways.iter().map(|way| way.made)
    }

    /// The last visit of the best way and what that way comes to, if no visit follows.
    pub(super) fn best(&self) -> Option<(Option<usize>, i64)> {
        self.ways.iter().map(|way| (way.made, way.ended)).min_by_key(|(_, ended)| *ended)
    }

    /// Goes on from each of these ways with a visit, the first of them at the place `made` in the record, and, unless
    /// there has to be one, without: as far as the bound lets them, the most promising first, and none that another
    /// beats.
    pub(super) fn go_on(&self, step: Step<'_>, pinned: bool, made: usize, into: &mut Ways) {
        into.ways.clear();
        into.lasts.clear();
        into.ends.clear();
        for (way, made) in self.ways.iter().zip(made..) {
            if !pinned {
                into.follow(way, self.by_group(way), step, None);
            }
            into.follow(way, self.by_group(way), step, Some(made));
        }
        into.ways.sort_by_key(|way| way.in_all);
        into.drop_beaten();
    }

    /// Drops the least promising ways above `most`; says whether there were any.
    pub(super) fn keep(&mut self, most: usize) -> bool {
        let cut = self.ways.len() > most;
        self.ways.truncate(most);
        cut
    }

    /// Takes in the way that goes on from this one, with the visit `made` or without one. Which groups the visit opens
    /// is left open, save those with a job that is pinned to it.
    fn follow<'a>(
        &mut self,
        way: &Way,
        before: impl Iterator<Item = &'a [Last]>,
        step: Step<'_>,
        made: Option<usize>,
    ) {
        let visits = way.visits + made.map_or(0, |_| step.visit);
        let (first, end, mut least, mut ended) = (self.lasts.len(), self.ends.len(), visits, visits);
        self.ends.push(first);
        for (group, before) in step.groups.iter().zip(before) {
            let of_group = self.lasts.len();
            if made.is_none() || !group.pinned[step.slot] {
                self.carry(before, group.pending(step.slot + 1));
            }
            if made.is_some() {
                let paid = before.first().map_or(0, |cheapest| cheapest.soon) + group.opening;
                let soon = paid + group.pending(step.slot + 1)[step.slot];
                self.open(
                    of_group,
                    Last { slot: step.slot, paid, soon, never: paid + group.rest[step.slot] },
                );
            }
            // What is left of a group is in order: the first is the cheapest soon, the last the cheapest at the end.
            least += self.lasts.get(of_group).map_or(0, |last| last.soon);
            ended += self.lasts.last().map_or(0, |last| last.never);
            self.ends.push(self.lasts.len());
        }
        let visited = if made.is_some() { step.slot } else { way.visited };
        let in_all = least + step.ahead[visited];
        if in_all < step.below {
            let made = made.or(way.made);
            self.ways.push(Way { made, visited, visits, least, ended, in_all, ends: end..self.ends.len() });
        } else {
            self.lasts.truncate(first);
            self.ends.truncate(end);
        }
    }

    /// Takes over the openings of a group, and forgets those that cannot be its last in the best plan.
    ///
    /// What an earlier opening loses against a later one grows with the time to the next, so that the earlier has to be
    /// ahead if that is soon.
    fn carry(&mut self, before: &[Last], pending: &[i64]) {
        let first = self.lasts.len();
        for last in before {
            let soon = last.paid + pending[last.slot];
            self.forget_from(first, soon);
            self.lasts.push(Last { soon, ..*last });
        }
    }

    /// Adds the latest opening of a group whose others begin at `first`: it has to be ahead of each if none follows.
    fn open(&mut self, first: usize, last: Last) {
        self.forget_from(first, last.soon);
        if self.lasts[first..].last().is_none_or(|before| before.never > last.never) {
            self.lasts.push(last);
        }
    }

    /// Forgets the latest openings from `first` on that are not cheaper soon than this.
    fn forget_from(&mut self, first: usize, soon: i64) {
        while self.lasts.len() > first && self.lasts[self.lasts.len() - 1].soon >= soon {
            self.lasts.pop();
        }
    }

    fn drop_beaten(&mut self) {
        let mut kept = 0;
        for at in 0..self.ways.len() {
            if !(0..kept).any(|other| self.beats(&self.ways[other], &self.ways[at])) {
                self.ways.swap(kept, at);
                kept += 1;
            }
        }
        self.ways.truncate(kept);
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
