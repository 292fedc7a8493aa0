//! What a job is: what is done to a car, with what, by whom, how often, and what a look at it finds.
//!
//! `pip` and `barge` list the jobs of the two cars. The last time of most is counted back from today, so that on
//! any day something is overdue, something is due, something soon, and some of the diesel's items nobody ever
//! recorded.

use super::looks::Look;
use super::parts::Part;

/// A job that comes back, or was done once.
#[derive(Debug, Clone, Copy)]
pub(super) struct Job {
    pub(super) items: &'static [Do],
    pub(super) parts: &'static [Part],
    pub(super) by: By,
    pub(super) when: When,
    pub(super) note: &'static str,
    pub(super) looks: &'static [Look],
}

/// An item of a job.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Do {
    /// The number of a catalogue item.
    Item(u32),
    /// An item of the owner's own.
    Own(&'static str),
}

/// Who does a job, and for how much in minor units in the first year.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum By {
    Owner,
    /// The workshop of the place, for this much labour.
    Workshop(i64),
    /// The tyre shop, likewise.
    Tyres(i64),
    /// The insurer of the place, for this premium.
    Insurer(i64),
    /// The vehicle office of the place, for this fee.
    Office(i64),
}

/// When a job is done.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum When {
    /// Every so many months, the last time so many days ago.
    Every { months: u16, last: i32 },
    /// Twelve months ago to the day, and every year before.
    Yearly,
    /// Every year around this day.
    Around { month: u32, day: u32 },
    /// So many days after each time of the job before it in the list.
    After(i32),
    /// Once, so many days ago.
    Once(i32),
}

/// A job at which nothing is found that is worth a word.
pub(super) const fn job(
    items: &'static [Do],
    parts: &'static [Part],
    by: By,
    when: When,
    note: &'static str,
) -> Job {
    Job { items, parts, by, when, note, looks: &[] }
}

/// The same job, at which this is found.
pub(super) const fn finding(looks: &'static [Look], job: Job) -> Job {
    Job { looks, ..job }
}

impl By {
    /// Whether the job is to attend to a paper, of which there is a folder and no receipt.
    pub(super) const fn is_desk(self) -> bool {
        matches!(self, By::Insurer(_) | By::Office(_))
    }
}

impl Job {
    /// Whether the job does this item of the catalogue.
    pub(super) fn does(&self, item: u32) -> bool {
        self.items.contains(&Do::Item(item))
    }
}
