//! The ways of going through the days that the sweep compares.

use std::ops::Range;

use super::group::Group;
use super::state::{States, Turn};

/// A way of having got this far.
#[derive(Debug, Clone, Copy)]
struct Way {
    /// The last visit, as a place in the record of them.
    made: Option<usize>,
    /// The least that it comes to: what it costs if every group is opened in the slot that comes next, without that.
    least: i64,
    /// What it comes to if no visit follows.
    ended: i64,
    /// Where the states of its groups begin.
    states: usize,
}

/// The ways that got to the same slot.
#[derive(Debug)]
pub(super) struct Ways {
    all: Vec<Way>,
    /// By way and by group, the state that the group is in.
    states_of: Vec<usize>,
    states: States,
    /// How many groups there are.
    groups: usize,
}

/// A slot in which ways go on.
#[derive(Debug)]
pub(super) struct Step<'a> {
    pub slot: usize,
    pub groups: &'a [Group],
    /// Whether there has to be a visit.
    pub pinned: bool,
    /// What a visit costs.
    pub visit: i64,
    /// The place of the first visit made here in the record of them.
    pub made: usize,
}

impl Way {
    /// Where the states of its groups are.
    fn places(&self, groups: usize) -> Range<usize> {
        self.states..self.states + groups
    }
}

impl Ways {
    /// None, with room for about as many as there are at a time.
    pub(super) fn none(groups: usize) -> Ways {
        Ways {
            all: Vec::with_capacity(32),
            states_of: Vec::with_capacity(32 * groups),
            states: States::none(groups),
            groups,
        }
    }

    /// The one way before the first slot: no visit yet.
    pub(super) fn start(groups: &[Group]) -> Ways {
        let ended = groups.iter().map(|group| group.rest[0]).sum();
        let mut ways = Ways::none(groups.len());
        ways.states.start(groups);
        ways.all.push(Way { made: None, least: 0, ended, states: 0 });
        ways.states_of.extend(0..groups.len());
        ways
    }

    /// The last visit of each way, as a place in the record of them.
    pub(super) fn made(&self) -> impl Iterator<Item = Option<usize>> {
        self.all.iter().map(|way| way.made)
    }

    /// The last visit of the best way, if no visit follows.
    pub(super) fn best(&self) -> Option<usize> {
        self.all.iter().min_by_key(|way| way.ended).and_then(|way| way.made)
    }

    /// Goes on from each of these ways with a visit and, unless there has to be one, without: the cheapest first, and
    /// none that another beats.
    pub(super) fn go_on(&mut self, step: &Step<'_>, into: &mut Ways) {
        into.all.clear();
        into.states_of.clear();
        for way in &self.all {
            self.states.mark(&self.states_of[way.places(self.groups)]);
        }
        self.states.go_on(step.groups, step.slot, &mut into.states);
        for (way, made) in self.all.iter().zip(step.made..) {
            let turns = || self.states_of(way).iter().map(|state| self.states.leads(*state));
            let visit = Way { made: Some(made), least: way.least + step.visit, ..*way };
            into.take(&visit, turns().map(|turns| turns.visit));
            if !step.pinned {
                into.take(way, turns().map(|turns| turns.pass));
            }
        }
        into.all.sort_by_key(|way| way.least);
        into.drop_beaten();
    }

    /// Drops the dearest ways above `most`; says whether there were any.
    pub(super) fn keep(&mut self, most: usize) -> bool {
        let cut = self.all.len() > most;
        self.all.truncate(most);
        cut
    }

    /// Takes in a way whose groups take these turns.
    fn take(&mut self, way: &Way, turns: impl Iterator<Item = Turn>) {
        let states = self.states_of.len();
        let (mut least, mut never) = (way.least, 0);
        self.states_of.extend(turns.map(|turn| {
            least += turn.cost;
            never += turn.never;
            turn.state
        }));
        self.all.push(Way { least, ended: least + never, states, ..*way });
    }

    fn drop_beaten(&mut self) {
        let mut kept = 0;
        for at in 0..self.all.len() {
            let way = self.all[at];
            if !self.all[..kept].iter().any(|other| self.beats(other, &way)) {
                self.all[kept] = way;
                kept += 1;
            }
        }
        self.all.truncate(kept);
    }

    /// Whether one way is at least as good as another that is no cheaper, whatever follows.
    fn beats(&self, one: &Way, other: &Way) -> bool {
        if one.ended > other.ended {
            return false;
        }
        let mut ahead = other.least - one.least;
        let mut states = self.states_of(one).iter().zip(self.states_of(other));
        states.all(|(ours, theirs)| {
            if ours != theirs {
                ahead -= self.states.most_lost(*ours, *theirs);
            }
            ahead >= 0
        })
    }

    /// The states that the groups are in on a way.
    fn states_of(&self, way: &Way) -> &[usize] {
        &self.states_of[way.places(self.groups)]
    }
}
