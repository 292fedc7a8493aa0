//! The model of the planner once more, as plainly as it can be said, and the search through every plan there is.
#![allow(clippy::unwrap_used)]

use std::collections::BTreeSet;

use units::Day;

use super::{Job, Site, usual_price};
use crate::upkeep::{Access, Stakes};

/// Whether a site is open: the planner's "today" of these tests is a Monday.
fn is_open(site: Site, day: i32) -> bool {
    site == Site::Home || day.rem_euclid(7) < 5
}

/// When a job counts as due: on the last open day, and today at the earliest.
fn due_on(job: &Job, today: Day) -> i32 {
    let due = job.due.days_since(today).max(0);
    (0..=due).rev().find(|day| is_open(job.site, *day)).unwrap()
}

/// What doing a job on a day costs beyond the visit, straight from the model; `None` if it must not be done then.
fn cost_on(job: &Job, usual: Option<i64>, today: Day, day: i32) -> Option<i64> {
    let due = due_on(job, today);
    let life = i32::try_from(job.life).unwrap();
    match job.pinned {
        Some(pin) if pin_on(pin, today) != day => return None,
        None if due - day > most_early(job) || day - due > (life - 1) / 2 => return None,
        _ => {}
    }
    let share = |(price, usual): (i64, i64)| (price * 1_000_000 / usual).clamp(100_000, 100_000_000);
    let whole = job.price.zip(usual).map_or(1_000_000, share);
    let a_month = match job.stakes {
        Stakes::Engine | Stakes::Safety if job.due < today => 1_000_000_000,
        Stakes::Comfort => 100_000,
        Stakes::Economy => 200_000,
        Stakes::Repair => 500_000,
        Stakes::Breakdown => 1_000_000,
        Stakes::Engine => 4_000_000,
        Stakes::Safety => 1_000_000_000,
    };
    let days = |count: i32| i64::from(count.max(0));
    Some((days(due - day) * (whole / i64::from(life))).min(whole) + days(day - due) * (a_month / 30))
}

/// What a visit with these jobs costs on a day; `None` if one of them must not be done then.
pub(super) fn visit_on(jobs: &[&Job], usual: Option<i64>, today: Day, day: i32) -> Option<i64> {
    let work: Option<i64> = jobs.iter().map(|job| cost_on(job, usual, today, day)).sum();
    let opened: BTreeSet<_> = jobs.iter().filter_map(|job| job.access).collect();
    let light = [Access::Bonnet, Access::Cabin, Access::Papers];
    let openings = opened.iter().map(|access| if light.contains(access) { 100_000 } else { 500_000 });
    work.map(|work| 1_000_000 + openings.sum::<i64>() + work)
}

/// The least cost over every way of sharing out the jobs among visits on these days, given the jobs of one site, as
/// far as they are open or pinned.
pub(super) fn exhaustive(jobs: &[Job], today: Day, days: impl Fn(&[&Job]) -> Vec<i32>) -> i64 {
    let at = |site: Site| -> i64 {
        let here: Vec<_> = jobs.iter().filter(|job| job.site == site).collect();
        let pinned =
            |day: i32| here.iter().any(|job| job.pinned.is_some_and(|pin| pin_on(pin, today) == day));
        let days: Vec<_> =
            days(&here).into_iter().filter(|day| is_open(site, *day) || pinned(*day)).collect();
        cheapest(&here, usual_price(jobs), today, &days)
    };
    at(Site::Home) + at(Site::Workshop)
}

fn pin_on(pin: Day, today: Day) -> i32 {
    pin.days_since(today).max(0)
}

fn cheapest(jobs: &[&Job], usual: Option<i64>, today: Day, days: &[i32]) -> i64 {
    let chosen = |set: usize| -> Vec<&Job> {
        jobs.iter().enumerate().filter(|(place, _)| set >> place & 1 == 1).map(|(_, job)| *job).collect()
    };
    let alone = |set: usize| {
        let jobs = chosen(set);
        days.iter().filter_map(|day| visit_on(&jobs, usual, today, *day)).min()
    };
    let sets = 1_usize << jobs.len();
    let together: Vec<_> = (0..sets).map(alone).collect();
    let mut best = vec![Some(0); sets];
    for set in 1..sets {
        // Every part of the set that can be one visit, with the best for what is left.
        let parts = (1..=set).filter(|part| part & set == *part);
        best[set] = parts.filter_map(|part| Some(together[part]? + best[set ^ part]?)).min();
    }
    best[sets - 1].unwrap()
}

/// How many days early a job may be done: half of its life, or what its season allows.
fn most_early(job: &Job) -> i32 {
    i32::try_from(job.most_early.map_or(job.life / 2, |days| days.min(job.life / 2))).unwrap()
}

/// The first open day on which a job may be done, where a season bounds that.
fn opens_on(job: &Job, today: Day) -> Option<i32> {
    let first = (due_on(job, today) - most_early(job)).max(0);
    job.most_early.map(|_| (first..first + 7).find(|day| is_open(job.site, *day)).unwrap())
}

/// Every day on which something falls due or is pinned, and those on which a season opens.
pub(super) fn own_days(jobs: &[&Job], today: Day) -> Vec<i32> {
    let pins = jobs.iter().filter_map(|job| job.pinned.map(|pin| pin_on(pin, today)));
    let opens = jobs.iter().filter_map(|job| opens_on(job, today));
    jobs.iter().map(|job| due_on(job, today)).chain(pins).chain(opens).collect()
}
