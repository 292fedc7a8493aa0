//! What the ways of the sweep have made of each group of jobs.
//!
//! Once the days of the visits are known the groups have nothing more to do with each other, and many ways have made
//! the same of a group but for what it has cost them. Such a state is worked out once for all of them: its costs
//! count from the least that the group has come to, which is for the way to keep.

use std::ops::Range;

use super::group::Group;

/// An opening of a group that may be its last so far. Its costs are those above the least of its state.
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

/// The states of all groups on the ways that got to the same slot.
#[derive(Debug)]
pub(super) struct States {
    /// One state after the other, its openings that may be the last. There is at least one. The latest comes first
    /// and is the cheapest if none follows; the earliest comes last and is the cheapest if one follows soon.
    lasts: Vec<Last>,
    /// Where the openings of each state lie.
    places: Vec<Range<usize>>,
    /// By state, a number that two states with the same openings share and hardly two others.
    marks: Vec<u64>,
    /// Where the states of each group end.
    groups: Vec<usize>,
    /// By state, whether a way is followed that got there.
    used: Vec<bool>,
    /// By state, where it leads if it is used.
    turns: Vec<Turns>,
}

/// Where a state leads with a visit in the slot that comes next, and without.
#[derive(Debug, Clone, Copy, Default)]
pub(super) struct Turns {
    pub visit: Turn,
    pub pass: Turn,
}

/// Where a state leads.
#[derive(Debug, Clone, Copy, Default)]
pub(super) struct Turn {
    /// The next state.
    pub state: usize,
    /// By how much the least that the group comes to grows.
    pub cost: i64,
    /// What it comes to above that if it is never opened again.
    pub never: i64,
}

/// A group of jobs in a slot.
#[derive(Debug, Clone, Copy)]
struct GroupHere<'a> {
    slot: usize,
    opening: i64,
    /// Whether it has to be opened here.
    pinned: bool,
    /// By slot of an opening, what is pending when the slot after this one comes next.
    pending: &'a [i64],
    /// What is pending for ever after an opening here.
    rest: i64,
}

impl Last {
    /// The same with costs above `least` in place of those above zero, and with what it comes to soon.
    fn above(&self, least: i64, soon: i64) -> Last {
        Last { slot: self.slot, paid: self.paid - least, soon: soon - least, never: self.never - least }
    }
}

/// What comes soon and what comes never follow from the rest.
impl PartialEq for Last {
    fn eq(&self, other: &Last) -> bool {
        self.slot == other.slot && self.paid == other.paid
    }
}

impl<'a> GroupHere<'a> {
    fn new(group: &'a Group, slot: usize) -> GroupHere<'a> {
        GroupHere {
            slot,
            opening: group.opening,
            pinned: group.pinned[slot],
            pending: group.pending(slot + 1),
            rest: group.rest[slot],
        }
    }
}

impl States {
    /// None, with room for about as many as there are at a time.
    pub(super) fn none(groups: usize) -> States {
        let room = groups * 16;
        States {
            lasts: Vec::with_capacity(room * 2),
            places: Vec::with_capacity(room),
            marks: Vec::with_capacity(room),
            groups: Vec::with_capacity(groups),
            used: Vec::with_capacity(room),
            turns: Vec::with_capacity(room),
        }
    }

    /// Adds the one state of each group before the first slot, in which it has cost nothing.
    pub(super) fn start(&mut self, groups: &[Group]) {
        for (place, group) in groups.iter().enumerate() {
            self.lasts.push(Last { slot: 0, paid: 0, soon: 0, never: group.rest[0] });
            self.close(place, mark(&self.lasts[place..]));
            self.groups.push(place + 1);
            self.used.push(false);
        }
    }

    /// Says that a way is followed that got to these states.
    pub(super) fn mark(&mut self, used: &[usize]) {
        for &state in used {
            self.used[state] = true;
        }
    }

    /// Where a state that is used leads, once that is worked out.
    pub(super) fn leads(&self, state: usize) -> &Turns {
        &self.turns[state]
    }

    /// Works out the states to which those lead that are used.
    pub(super) fn go_on(&mut self, groups: &[Group], slot: usize, into: &mut States) {
        into.clear();
        let mut states = 0;
        for (group, &end) in groups.iter().zip(&self.groups) {
            let group = GroupHere::new(group, slot);
            let first = into.places.len();
            for state in states..end {
                let used = self.used[state];
                let turns =
                    if used { into.turns(self.lasts(state), &group, first) } else { Turns::default() };
                self.turns.push(turns);
            }
            states = end;
            into.groups.push(into.places.len());
        }
        into.used.resize(into.places.len(), false);
    }

    fn clear(&mut self) {
        self.lasts.clear();
        self.places.clear();
        self.marks.clear();
        self.groups.clear();
        self.used.clear();
        self.turns.clear();
    }

    fn lasts(&self, state: usize) -> &[Last] {
        &self.lasts[self.places[state].clone()]
    }

    /// Takes in the states to which one with these openings leads; `first` is where those of the group begin.
    fn turns(&mut self, lasts: &[Last], group: &GroupHere<'_>, first: usize) -> Turns {
        let pass = self.pass(lasts, group, first);
        Turns { visit: self.visit(pass, group, first), pass }
    }

    /// Takes in the state in which the group is not opened, without the openings that cannot be the last of it in the
    /// best plan.
    ///
    /// What an earlier opening loses against a later one grows with the time to the next, so that the earlier has to
    /// be ahead if that is soon.
    fn pass(&mut self, lasts: &[Last], group: &GroupHere<'_>, first: usize) -> Turn {
        let start = self.lasts.len();
        let soon = |last: &Last| last.paid + group.pending[last.slot];
        let cost = lasts.iter().map(soon).min().unwrap_or(0);
        let mut cheapest = i64::MAX;
        for last in lasts {
            let soon = soon(last);
            if soon < cheapest {
                cheapest = soon;
                self.lasts.push(last.above(cost, soon));
            }
        }
        // As long as none is forgotten, what was different stays so.
        let all = self.lasts.len() - start == lasts.len();
        let state = if all { self.close(start, mark(&self.lasts[start..])) } else { self.take(start, first) };
        Turn { state, cost, never: lasts[0].never - cost }
    }

    /// Takes in the state after a visit. Whether that opens the group is left open, unless a job is pinned to it.
    fn visit(&mut self, pass: Turn, group: &GroupHere<'_>, first: usize) -> Turn {
        let GroupHere { slot, opening, pinned, rest: never, .. } = *group;
        // Nothing is pending after an opening here, and the others count from what it costs to do without.
        let paid = opening - pass.cost;
        let carried = self.lasts(pass.state);
        let dearer = carried.iter().take_while(|other| pinned || other.soon >= paid).count();
        let others = self.places[pass.state].start + dearer..self.places[pass.state].end;
        let start = self.lasts.len();
        if others.is_empty() {
            self.lasts.push(Last { slot, paid: 0, soon: 0, never });
            return Turn { state: self.take(start, first), cost: opening, never };
        }
        // The latest has to be ahead if none follows.
        if carried[dearer].never > paid + never {
            self.lasts.push(Last { slot, paid, soon: paid, never: paid + never });
        } else if dearer == 0 {
            return pass;
        }
        for place in others {
            self.lasts.push(self.lasts[place]);
        }
        let never = self.lasts[start].never;
        Turn { state: self.take(start, first), cost: pass.cost, never }
    }

    /// Makes a state of the openings from this place on, unless the group has the same already.
    fn take(&mut self, start: usize, first: usize) -> usize {
        let (before, new) = self.lasts.split_at(start);
        let mark = mark(new);
        if let Some(place) = self.marks[first..].iter().position(|other| *other == mark)
            && before[self.places[first + place].clone()] == *new
        {
            self.lasts.truncate(start);
            return first + place;
        }
        self.close(start, mark)
    }

    /// Makes a state of the openings from this place on.
    fn close(&mut self, start: usize, mark: u64) -> usize {
        self.places.push(start..self.lasts.len());
        self.marks.push(mark);
        self.places.len() - 1
    }

    /// How much dearer a group can turn out in the one state than in the other, each above its least. That is nothing
    /// if the group is opened in the slot that comes next, so that it is never negative.
    pub(super) fn most_lost(&self, ours: usize, theirs: usize) -> i64 {
        let (ours, theirs) = (self.lasts(ours), self.lasts(theirs));
        // An opening loses most against a later one if no other follows, against an earlier one if one follows soon, so
        // that which of the two came first need not be asked.
        let lost = |our: &Last, their: &Last| (our.soon - their.soon).max(our.never - their.never);
        let mut most = 0;
        for their in theirs {
            let mut least = i64::MAX;
            for our in ours {
                least = least.min(lost(our, their));
            }
            most = most.max(least);
        }
        most
    }
}

/// A number for these openings. Numbers are compared in place of the openings, whose count and order no processor
/// foresees.
fn mark(lasts: &[Last]) -> u64 {
    // An odd number with its bits mixed: the golden ratio.
    const MIX: u64 = 0x9E37_79B9_7F4A_7C15;
    lasts.iter().fold(0, |mark, last| {
        let next = (last.slot as u64).rotate_left(32) ^ last.paid.cast_unsigned();
        (mark ^ next).wrapping_mul(MIX).rotate_left(29)
    })
}
