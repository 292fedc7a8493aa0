//! The days on which a visit can make sense.

use super::task::{FORBIDDEN, Task};

/// Those days in order, numbered from 1. Slot 0 stands for never before, and the slot after the last for never
/// again: no job can be done there.
#[derive(Debug)]
pub(super) struct Calendar {
    days: Vec<i32>,
    pinned: Vec<bool>,
}

impl Calendar {
    /// The days on which jobs fall due, are pinned, or may first be done where a season bounds that. A pinned job's other
    /// days count as well, or pinning a job to where it stands could take from the others a day on which they meet.
    pub(super) fn new(tasks: &[Task]) -> Calendar {
        let pins: Vec<_> = tasks.iter().filter_map(|task| task.pin).collect();
        let days = tasks.iter().flat_map(|task| task.pin.into_iter().chain(task.opens).chain([task.due]));
        let mut days: Vec<_> = days.collect();
        days.sort_unstable();
        days.dedup();
        let pinned = days.iter().map(|day| pins.contains(day)).collect();
        Calendar { days, pinned }
    }

    /// The slots of the days, without the two that stand for never.
    pub(super) fn slots(&self) -> impl DoubleEndedIterator<Item = usize> + use<> {
        1..=self.days.len()
    }

    /// How many slots there are, with the two that stand for never.
    pub(super) fn len(&self) -> usize {
        self.days.len() + 2
    }

    /// The day of a slot.
    pub(super) fn day(&self, slot: usize) -> Option<i32> {
        self.days.get(slot.checked_sub(1)?).copied()
    }

    /// The slot of a day, or of the next that has one.
    pub(super) fn slot(&self, day: i32) -> usize {
        self.days.partition_point(|other| *other < day) + 1
    }

    /// Whether there has to be a visit, because a job is pinned to the day.
    pub(super) fn is_pinned(&self, slot: usize) -> bool {
        slot.checked_sub(1).and_then(|place| self.pinned.get(place)).copied().unwrap_or(false)
    }

    /// What a job weighs in every slot, after what others weigh.
    pub(super) fn weigh(&self, task: &Task, weights: &mut Vec<i64>) {
        weights.push(FORBIDDEN);
        weights.extend(self.days.iter().map(|day| task.weight(*day)));
        weights.push(FORBIDDEN);
    }
}
