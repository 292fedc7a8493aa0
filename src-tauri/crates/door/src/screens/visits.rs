//! The visits ahead: what to do together and when, what to get for them, and what they cost.

use std::collections::{BTreeMap, BTreeSet};

use rules::costs::Prices;
use rules::upkeep::{
    ASSUMED, Access, Catalogue, DueLine, Item, ItemRef, Job, PlannedVisit, Site, Spend, USUAL, VisitPlan,
    cost_of_doing_on, done_along_with, jobs, plan_visits, spend, usual_price,
};
use units::{Day, Money};

use super::due::weight;
use super::get::to_get;
use super::guides::GuideKeys;
use super::places::vehicle_line;
use super::show::{item_view, money_view};
use crate::car::Car;
use crate::{
    Door, GetView, ItemForm, MoneyView, MovedView, PlannedVisitView, Refusal, ShareView, SpendView,
    VisitItemView, VisitsView, forms,
};

/// Everything that lies ahead of one car.
pub(crate) struct Ahead<'a> {
    car: &'a Car,
    catalogue: &'a Catalogue,
    today: Day,
    /// What is due, most pressing first.
    pub lines: Vec<DueLine>,
    jobs: Vec<Job>,
    plan: VisitPlan,
    /// The places of the jobs that other work does along.
    along: BTreeSet<usize>,
    prices: &'a Prices,
}

impl<'a> Ahead<'a> {
    pub fn new(car: &'a Car, catalogue: &'a Catalogue, today: Day) -> Ahead<'a> {
        let facts = car.facts(today);
        let lines = car.due(today);
        let prices = car.prices(catalogue);
        let jobs = jobs(&facts, &lines, |item| prices.of(item)?.firm);
        let plan = plan_visits(&jobs, &ASSUMED, today);
        let along = done_along_with(&facts, &lines, &jobs, &plan.visits);
        Ahead { car, catalogue, today, lines, jobs, plan, along, prices }
    }

    /// The visits of the next 24 months.
    pub fn visits(&self, guides: &GuideKeys) -> Vec<PlannedVisitView> {
        let worth_making = self.plan.visits.iter().filter(|visit| !self.worth_naming(visit).is_empty());
        worth_making.map(|visit| self.visit(visit, guides)).collect()
    }

    /// Whether the item belongs to the next visit.
    pub fn is_next(&self, item: &ItemRef) -> bool {
        self.next().any(|job| job.item == *item)
    }

    fn next(&self) -> impl Iterator<Item = &Job> {
        self.next_visit().into_iter().flat_map(|visit| self.jobs_of(visit))
    }

    /// The soonest visit at which something is done to the car.
    fn next_visit(&self) -> Option<&PlannedVisit> {
        let on_the_car = |visit: &&PlannedVisit| visit.site != Site::Office;
        self.plan.visits.iter().filter(on_the_car).find(|visit| !self.worth_naming(visit).is_empty())
    }

    /// What to get for the next visit.
    pub fn get(&self) -> Result<Vec<GetView>, Refusal> {
        let next = self.next_visit().map(|visit| self.worth_naming(visit)).unwrap_or_default();
        to_get(&next, self.car, self.catalogue, self.today)
    }

    /// The next twelve months in money, where any price is known.
    pub fn spend(&self) -> Option<SpendView> {
        let currency = self.prices.currency()?;
        let facts = self.car.facts(self.today);
        let spend = spend(&facts, &self.lines, |item| self.prices.of(item));
        let Spend { low, high, unpriced, no_record, estimated } = spend;
        if high == 0 {
            return None;
        }
        let view = |minor| money_view(Money { minor, currency });
        Some(SpendView { low: view(low), high: view(high), unpriced, no_record, estimated })
    }

    fn jobs_of(&self, visit: &PlannedVisit) -> impl Iterator<Item = &Job> {
        visit.jobs.iter().filter_map(|&at| self.jobs.get(at))
    }

    fn visit(&self, visit: &PlannedVisit, guides: &GuideKeys) -> PlannedVisitView {
        let jobs = self.worth_naming(visit);
        let known: Vec<i64> = jobs.iter().filter_map(|job| Some(self.prices.of(&job.item)?.last)).collect();
        let minor = known.iter().fold(0_i64, |sum, price| sum.saturating_add(*price));
        let cost = self.prices.currency().filter(|_| !known.is_empty());
        let is_estimated = |job: &&&Job| self.prices.of(&job.item).is_some_and(|price| price.last_estimated);
        PlannedVisitView {
            day: visit.day.to_string(),
            site: visit.site.key().to_owned(),
            next: self.next_visit() == Some(visit),
            items: jobs.iter().map(|job| self.item(job, guides)).collect(),
            shares: shares(&jobs),
            minutes: jobs.iter().map(|job| self.minutes_at_home(job)).sum(),
            cost: cost.map(|currency| money_view(Money { minor, currency })),
            unpriced: jobs.len() - known.len(),
            estimated: jobs.iter().filter(is_estimated).count(),
        }
    }

    /// The jobs of a visit without those that other work does along.
    fn worth_naming(&self, visit: &PlannedVisit) -> Vec<&Job> {
        let own = visit.jobs.iter().filter(|at| !self.along.contains(at));
        own.filter_map(|&at| self.jobs.get(at)).collect()
    }

    fn item(&self, job: &Job, guides: &GuideKeys) -> VisitItemView {
        VisitItemView {
            item: item_view(&job.item, self.catalogue),
            due: job.due.to_string(),
            pinned: job.pinned.is_some(),
            next: job.turn == 0,
            look: self.row(job).is_some_and(|row| !row.action.mends()),
            guide: guides.to(&job.item),
        }
    }

    /// The row of the catalogue; `None` for an item of the owner's own.
    fn row(&self, job: &Job) -> Option<&Item> {
        self.car.plan.item(&job.item).and_then(|planned| planned.row)
    }

    fn minutes_at_home(&self, job: &Job) -> u32 {
        self.row(job).filter(|_| job.site == Site::Home).map_or(0, |row| u32::from(row.minutes))
    }

    /// What it would add to have an item done on this day; `None` when the item is not planned.
    fn moved(&self, item: &ItemRef, to: Day) -> Option<MovedView> {
        let line = self.lines.iter().find(|line| line.item == *item && line.is_visited())?;
        let facts = self.car.facts(self.today);
        let (cost, due) = cost_of_doing_on(&facts, line, &self.jobs, to, |item| self.prices.of(item)?.firm);
        // What lateness weighs is no money that anyone pays, so that only the rest is told as such.
        let extra = (cost.total() - cost.late).max(0);
        Some(MovedView {
            item: item_view(item, self.catalogue),
            day: to.to_string(),
            percent: extra.saturating_mul(100) / i64::from(USUAL),
            extra: self.in_money(extra),
            late: to > due.max(self.today),
            weight: weight(line.stakes),
        })
    }

    /// What a share of a usual job is in money, where prices are known.
    fn in_money(&self, millionths: i64) -> Option<MoneyView> {
        let usual = usual_price(&self.jobs)?;
        let minor = i128::from(usual) * i128::from(millionths) / i128::from(USUAL);
        let currency = self.prices.currency()?;
        Some(money_view(Money { minor: i64::try_from(minor).ok()?, currency }))
    }
}

/// What has to be opened up for more than one job.
fn shares(jobs: &[&Job]) -> Vec<ShareView> {
    let mut counts: BTreeMap<Access, usize> = BTreeMap::new();
    for access in jobs.iter().filter_map(|job| job.access) {
        *counts.entry(access).or_default() += 1;
    }
    let shared = counts.into_iter().filter(|&(_, items)| items > 1);
    shared.map(|(access, items)| ShareView { access: access.key().to_owned(), items }).collect()
}

impl Door {
    pub(crate) fn visits_view(&self, book: &str) -> Result<VisitsView, Refusal> {
        let car = self.car(book)?;
        let today = self.clock.today();
        let ahead = Ahead::new(&car, self.catalogue, today);
        Ok(VisitsView {
            vehicle: vehicle_line(&car),
            today: today.to_string(),
            visits: ahead.visits(&GuideKeys::of(&self.guide_lines(&car)?)),
            proven: ahead.plan.proven,
            spend: ahead.spend(),
        })
    }

    pub(crate) fn moved_view(&self, book: &str, item: &ItemForm, day: &str) -> Result<MovedView, Refusal> {
        let car = self.car(book)?;
        let today = self.clock.today();
        let item = forms::item(item, self.catalogue).map_err(|refusal| refusal.at("item"))?;
        let day = forms::day_ahead(day, today, "day")?;
        let ahead = Ahead::new(&car, self.catalogue, today);
        ahead.moved(&item, day).ok_or_else(|| Refusal::new("item-not-planned").at("item"))
    }
}
