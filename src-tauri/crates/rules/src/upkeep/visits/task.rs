//! A job as the planner sees it: what doing it on any day costs.

use units::Day;

use super::site::OpenDays;
use super::weights::weigh;
use super::{Job, VisitCost, VisitCosts};
use crate::upkeep::Access;

/// The cost of a day on which a job must not be done. Dearer than everything a plan can cost, yet small enough
/// that thousands of them add up.
pub(super) const FORBIDDEN: i64 = 1_000_000_000_000_000;

/// A job with its slopes. Days count from today, which is day 0.
#[derive(Debug, Clone, Copy)]
pub(super) struct Task {
    /// When it falls due: an open day. What is overdue falls due today, since earlier lateness is spent already.
    pub due: i32,
    /// When it is soonest done: with half of its life left, or when its season opens.
    earliest: i32,
    /// The day from which it may be done, where its season says so; an open day.
    pub opens: Option<i32>,
    /// When it is latest done: half a life after its day, less than that where two turns would meet.
    latest: i32,
    /// The one day on which it is done, if the owner chose one; a day gone by stands for today.
    pub pin: Option<i32>,
    /// What must be opened up for it.
    pub access: Option<Access>,
    /// What a day before the due day throws away.
    early: i64,
    /// What a day after the due day weighs.
    late: i64,
    /// The most that doing it early can throw away: all of it.
    whole: i64,
}

impl Task {
    pub(super) fn new(job: &Job, costs: &VisitCosts, usual: Option<i64>, today: Day, open: OpenDays) -> Task {
        let life = i32::try_from(job.life).unwrap_or(i32::MAX).max(1);
        let overdue = job.due < today;
        let due = open.by(job.due.days_since(today).max(0));
        let whole = weigh(job.price, usual);
        let late =
            if overdue && job.stakes.are_grave() { costs.late.safety } else { costs.late.a_day(job.stakes) };
        let most_early =
            job.most_early.map_or(life / 2, |days| i32::try_from(days).unwrap_or(i32::MAX).min(life / 2));
        let earliest = due.saturating_sub(most_early);
        Task {
            due,
            earliest,
            opens: job.most_early.map(|_| open.after(earliest.max(0))),
            latest: due.saturating_add((life - 1) / 2),
            pin: job.pinned.map(|pin| pin.days_since(today).max(0)),
            access: job.access,
            early: whole / i64::from(life),
            late: late.into(),
            whole,
        }
    }

    /// The day that is its own: the pin, or else the due day.
    pub(super) fn own_day(&self) -> i32 {
        self.pin.unwrap_or(self.due)
    }

    /// What doing it on `day` throws away or costs in lateness, wherever it is allowed.
    pub(super) fn cost(&self, day: i32) -> VisitCost {
        let late = i64::from((day - self.due).max(0)) * self.late;
        let wasted = (i64::from((self.due - day).max(0)) * self.early).min(self.whole);
        VisitCost { wasted, late, ..VisitCost::default() }
    }

    /// The same in one number, [`FORBIDDEN`] where the planner must not put it.
    pub(super) fn weight(&self, day: i32) -> i64 {
        if (self.earliest..=self.latest).contains(&day) { self.cost(day).total() } else { FORBIDDEN }
    }
}
