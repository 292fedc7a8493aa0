//! Visits: which jobs to do together, and when, so that the total cost is least.
//!
//! **What is weighed.** A visit costs something in itself; each kind of opening up costs extra, once a visit,
//! however many jobs share it; a job done before its day throws away that share of its life, times its price; a
//! job done after its day costs by the day, the more the worse it is to ignore. What is overdue is counted from
//! today: the lateness up to now is spent whatever is done. A pinned job is done on its pin and nowhere else, or
//! today if the pin is past. What the owner does and what a workshop does are never one visit, and share nothing;
//! a workshop is open from Monday to Friday, so that what falls due there on a weekend counts as due on the
//! Friday. Papers are not gathered: each has its own day, and nothing is saved by going early. The weights are
//! assumptions of this program, see [`ASSUMED`].
//!
//! **What is never done.** No job that is not pinned is done more than half of its life before or after its day.
//! That keeps two turns of an item apart, whose days lie one life from each other. What a season calls for is done no
//! sooner than its season allows ([`Job::most_early`]).
//!
//! **What is optimal.** A visit stands on a day on which some job falls due or is pinned, or may first be done where a
//! season bounds that: any other day makes some of its jobs late or early and none of them in time, and can be better
//! only where half of its life keeps a job from either. Under these weights the plan is the cheapest of all with such visits: over every way of
//! sharing out the jobs among them, not only those that keep the order of the due days. Days further than the
//! jobs given are not looked at, and every turn keeps its own day: that a turn done early also brings the next
//! one forward is what the share of its price stands for. The problem is the joint replenishment problem, which
//! is NP-hard; no bound on the work is known that would suit every case. Therefore only so many partial plans
//! are compared at a time. [`VisitPlan::proven`] tells whether that was enough. Measured on 200 lists of
//! random jobs of each size, all at one site, against the same search without that limit:
//!
//! | jobs | best plan found | proven |
//! | --- | --- | --- |
//! | up to 60 | 200 of 200 | 200 |
//! | 80 | 200 | 199 |
//! | 100 | 200 | 197 |
//! | 120 | 200 | 199 |
//!
//! For safety, and for the engine once it is overdue, a day of lateness outweighs every visit that waiting could
//! save: what is overdue of these is planned for today, and no other work for safety is planned after its day.

mod assign;
mod calendar;
mod group;
mod site;
mod state;
mod sweep;
mod task;
mod way;
mod weights;

use units::Day;

use super::{Access, ItemRef, Stakes};
use assign::{cost_of_visit, each_on_its_day, share_out};
use calendar::Calendar;
use group::groups;
pub use site::Site;
use sweep::{Found, best_slots};
use task::Task;
pub use weights::{ASSUMED, Lateness, USUAL, VisitCost, VisitCosts, usual_price};

/// How far ahead visits are worth planning, in months. What falls due later is for the caller to leave out:
/// whatever is given is planned.
pub const HORIZON_MONTHS: u16 = 24;

/// The most partial plans that are compared at a time.
const MOST_WAYS: usize = 64;

/// One turn of an item: once that it has to be done.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Job {
    /// Which item.
    pub item: ItemRef,
    /// 0 for the next time, 1 for the time after it, and so on.
    pub turn: u32,
    /// When it falls due.
    pub due: Day,
    /// What ignoring it costs.
    pub stakes: Stakes,
    /// Where it is done.
    pub site: Site,
    /// What must be opened up for it.
    pub access: Option<Access>,
    /// What it costs with parts and fluids, in minor units of any one currency, if that is known; nothing for a look
    /// that the owner takes himself.
    pub price: Option<i64>,
    /// How long what is fitted lasts: the days from one time to the next.
    pub life: u32,
    /// The most days before its day on which it may be done, where something else than its life bounds that: winter
    /// tyres are not fitted in August.
    pub most_early: Option<u32>,
    /// The day on which the owner wants it done.
    pub pinned: Option<Day>,
}

/// Work done on one day at one place.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PlannedVisit {
    /// Where.
    pub site: Site,
    /// When.
    pub day: Day,
    /// Which jobs, by their places in the list given, in the order in which they fall due.
    pub jobs: Vec<usize>,
    /// What it costs.
    pub cost: VisitCost,
}

/// When to do what.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct VisitPlan {
    /// The visits, first to last, those of one day in the order of [`Site`]. Every job is in one of them.
    pub visits: Vec<PlannedVisit>,
    /// What they cost together.
    pub cost: VisitCost,
    /// Whether it is certain that no plan costs less.
    pub proven: bool,
}

/// The plan that costs least.
pub fn plan_visits(jobs: &[Job], costs: &VisitCosts, today: Day) -> VisitPlan {
    plan_within(jobs, costs, today, MOST_WAYS)
}

/// What having job `which` done on the day `to`, and nowhere else, costs more than leaving its day to the planner.
///
/// Single parts of the difference may be negative. The total is not, as long as both plans are proven and the day is
/// one that the planner could have chosen: no more than half of the job's life from its day, and a day on which this
/// or another job falls due or another is pinned.
pub fn cost_of_moving(jobs: &[Job], costs: &VisitCosts, today: Day, which: usize, to: Day) -> VisitCost {
    let with_pin = |pinned| {
        let mut jobs = jobs.to_vec();
        if let Some(job) = jobs.get_mut(which) {
            job.pinned = pinned;
        }
        plan_visits(&jobs, costs, today).cost
    };
    with_pin(Some(to)) - with_pin(None)
}

fn plan_within(jobs: &[Job], costs: &VisitCosts, today: Day, most_ways: usize) -> VisitPlan {
    let usual = usual_price(jobs);
    let mut plan = VisitPlan { visits: Vec::new(), cost: VisitCost::default(), proven: true };
    for site in Site::ALL {
        let open = site.open_days(today);
        let here: Vec<_> = (0..jobs.len()).filter(|place| jobs[*place].site == site).collect();
        let tasks: Vec<_> =
            here.iter().map(|place| Task::new(&jobs[*place], costs, usual, today, open)).collect();
        let shared = match site {
            Site::Home | Site::Workshop => {
                let calendar = Calendar::new(&tasks);
                let groups = groups(&tasks, &calendar, costs);
                let Found { slots, proven } = best_slots(&groups, &calendar, costs.visit.into(), most_ways);
                plan.proven &= proven;
                share_out(&slots, &groups, &calendar, &tasks)
            }
            Site::Office => each_on_its_day(&tasks),
        };
        plan.visits.extend(shared.into_iter().map(|(day, mut together)| {
            together.sort_by_key(|place| (tasks[*place].due, *place));
            PlannedVisit {
                site,
                day: today.plus_days(day),
                cost: cost_of_visit(day, &together, &tasks, costs),
                jobs: together.into_iter().map(|place| here[place]).collect(),
            }
        }));
    }
    plan.visits.sort_by_key(|visit| (visit.day, visit.site));
    plan.cost = plan.visits.iter().map(|visit| visit.cost).sum();
    plan
}

#[cfg(test)]
mod exhaustive;
#[cfg(test)]
mod tests;
