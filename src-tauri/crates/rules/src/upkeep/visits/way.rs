//! One way of going through the days, of the many that the sweep compares.

use super::group::Group;

/// An opening of a group that may be its last so far.
#[derive(Debug, Clone, Copy)]
struct Last {
    /// Which group.
    group: usize,
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
#[derive(Debug, Clone)]
pub(super) struct Way {
    /// The last visit, as a place in the sweep's record of them.
    pub made: Option<usize>,
    /// The slot of that visit; 0 if there was none yet.
    pub visited: usize,
    /// The least that it comes to, without what is still ahead.
    pub least: i64,
    /// What it comes to if no visit follows.
    pub ended: i64,
    /// What the visits cost, without openings and jobs.
    visits: i64,
    /// By group, and in each by slot, the openings that may be its last. Every group has at least one.
    lasts: Vec<Last>,
}

impl Way {
    /// No visit yet.
    pub(super) fn start(groups: &[Group]) -> Way {
        let none = |group| Last { group, slot: 0, paid: 0, soon: 0, never: 0 };
        let lasts = (0..groups.len()).map(none).collect();
        Way { made: None, visited: 0, least: 0, ended: 0, visits: 0, lasts }
    }

    /// The same way with a visit in this slot, the one that comes next. Which groups it opens is left open, save
    /// those with a job that is pinned to it.
    pub(super) fn with_visit(&self, groups: &[Group], slot: usize, made: usize, cost: i64) -> Way {
        let mut lasts = Vec::with_capacity(self.lasts.len() + groups.len());
        for (number, (group, before)) in groups.iter().zip(self.by_group()).enumerate() {
            if !group.pinned[slot] {
                lasts.extend_from_slice(before);
            }
            let cheapest = before.iter().map(|last| last.paid + group.pending[last.slot]).min().unwrap_or(0);
            lasts.push(Last { group: number, slot, paid: cheapest + group.opening, soon: 0, never: 0 });
        }
        Way { made: Some(made), visited: slot, visits: self.visits + cost, lasts, ..*self }
    }

    /// Brings the costs up to the slot that comes next now, and forgets openings that cannot be the last of their
    /// groups in the best plan.
    pub(super) fn update(&mut self, groups: &[Group]) {
        for last in &mut self.lasts {
            let group = &groups[last.group];
            last.soon = last.paid + group.pending[last.slot];
            last.never = last.paid + group.rest[last.slot];
        }
        self.forget_beaten();
        // What is left of a group is in order: the first is the cheapest soon, the last the cheapest at the end.
        let least = |lasts: &[Last]| lasts.first().map_or(0, |last| last.soon);
        let ended = |lasts: &[Last]| lasts.last().map_or(0, |last| last.never);
        self.least = self.visits + self.by_group().map(least).sum::<i64>();
        self.ended = self.visits + self.by_group().map(ended).sum::<i64>();
    }

    /// What an earlier opening loses against a later one grows with the time to the next, so the earlier has to be
    /// ahead if that is soon, and the later has to be ahead if it is never.
    fn forget_beaten(&mut self) {
        let mut kept = 0;
        for at in 0..self.lasts.len() {
            let last = self.lasts[at];
            while kept > 0
                && self.lasts[kept - 1].group == last.group
                && self.lasts[kept - 1].soon >= last.soon
            {
                kept -= 1;
            }
            let before =
                kept.checked_sub(1).map(|place| self.lasts[place]).filter(|it| it.group == last.group);
            if before.is_none_or(|before| before.never > last.never) {
                self.lasts[kept] = last;
                kept += 1;
            }
        }
        self.lasts.truncate(kept);
    }

    /// Whether this way is at least as good as the other whatever follows.
    pub(super) fn beats(&self, other: &Way) -> bool {
        if self.least > other.least || self.ended > other.ended {
            return false;
        }
        let lost = self.by_group().zip(other.by_group()).map(|(ours, theirs)| most_lost(ours, theirs));
        self.visits + lost.sum::<i64>() <= other.visits
    }

    fn by_group(&self) -> impl Iterator<Item = &[Last]> {
        self.lasts.chunk_by(|one, next| one.group == next.group)
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
