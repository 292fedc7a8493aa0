//! What visits, openings, early and late work weigh against each other: the assumptions of the visit planner.

use std::iter::Sum;
use std::ops::{Add, Sub};

use super::{Job, Site};
use crate::upkeep::{Access, Stakes};

/// The unit of every weight and cost: a millionth of what a usual job costs.
///
/// No currency comes in: a usual job is the one in the middle of the known prices (see [`usual_price`]).
pub const USUAL: u32 = 1_000_000;

/// What the planner weighs against each other, in millionths of a usual job.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct VisitCosts {
    /// Making a visit at all: the way there, the appointment, the car out of use.
    pub visit: u32,
    /// Lifting the car, taking its wheels off, draining or taking apart, once for all work that shares it.
    pub opening: u32,
    /// Opening what needs no more than a hand: the bonnet, a box in the cabin, a folder of papers.
    pub light_opening: u32,
    /// Each day after the due day, by what ignoring the item costs.
    pub late: Lateness,
}

/// What each day of lateness weighs, in millionths of a usual job.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Lateness {
    /// What is for comfort.
    pub comfort: u32,
    /// What saves fuel and power.
    pub economy: u32,
    /// What saves a repair.
    pub repair: u32,
    /// What keeps the car from being left standing.
    pub breakdown: u32,
    /// What saves the engine.
    pub engine: u32,
    /// What someone's safety hangs on, and whatever can wreck the engine and is overdue already.
    pub safety: u32,
}

/// A month of lateness is thirty days.
const MONTH: u32 = 30;

/// The weights in use. No source gives them; each is an assumption of this program.
///
/// | what | in usual jobs | why |
/// | --- | --- | --- |
/// | a visit | 1 | going twice for two usual jobs costs about as much again as the jobs |
/// | an opening | 0.5 | the lifting or draining is about half of the work on what it gives access to |
/// | a light opening | 0.1 | a minute's work, yet a reason to do together what lies together |
/// | comfort, a month late | 0.1 | waits ten months rather than call for a visit of its own |
/// | economy | 0.2 | waits five months |
/// | repair | 0.5 | waits two months |
/// | breakdown | 1 | waits one month |
/// | engine | 4 | waits a week |
/// | safety | 1000 | a single day outweighs any visit that waiting could save |
pub const ASSUMED: VisitCosts = VisitCosts {
    visit: USUAL,
    opening: USUAL / 2,
    light_opening: USUAL / 10,
    late: Lateness {
        comfort: USUAL / 10 / MONTH,
        economy: USUAL / 5 / MONTH,
        repair: USUAL / 2 / MONTH,
        breakdown: USUAL / MONTH,
        engine: USUAL * 4 / MONTH,
        safety: USUAL * 1_000 / MONTH,
    },
};

/// The least that a job counts for, in millionths of a usual one: what costs no money still takes time.
const LEAST_PRICE: i64 = USUAL as i64 / 10;

/// The most that a job counts for, so that a mistyped price cannot outweigh everything else there is.
const MOST_PRICE: i64 = USUAL as i64 * 100;

/// What a plan, a visit or a change of plan costs, in millionths of a usual job.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct VisitCost {
    /// Making visits.
    pub visits: i64,
    /// Opening things up.
    pub openings: i64,
    /// The share of their lives that parts and fluids lose by being renewed early, times their prices.
    pub wasted: i64,
    /// Doing things after their day.
    pub late: i64,
}

impl VisitCost {
    /// All of it.
    pub const fn total(self) -> i64 {
        self.visits + self.openings + self.wasted + self.late
    }
}

impl Add for VisitCost {
    type Output = VisitCost;

    fn add(self, other: VisitCost) -> VisitCost {
        VisitCost {
            visits: self.visits + other.visits,
            openings: self.openings + other.openings,
            wasted: self.wasted + other.wasted,
            late: self.late + other.late,
        }
    }
}

impl Sub for VisitCost {
    type Output = VisitCost;

    fn sub(self, other: VisitCost) -> VisitCost {
        VisitCost {
            visits: self.visits - other.visits,
            openings: self.openings - other.openings,
            wasted: self.wasted - other.wasted,
            late: self.late - other.late,
        }
    }
}

impl Sum for VisitCost {
    fn sum<I: Iterator<Item = VisitCost>>(costs: I) -> VisitCost {
        costs.fold(VisitCost::default(), Add::add)
    }
}

impl VisitCosts {
    /// What opening this up weighs.
    pub const fn opening(&self, access: Access) -> u32 {
        match access {
            Access::Bonnet | Access::Cabin | Access::Papers => self.light_opening,
            Access::Lifted
            | Access::WheelsOff
            | Access::AirPath
            | Access::Ignition
            | Access::FrontBelt
            | Access::Cooling
            | Access::Fuel
            | Access::Battery => self.opening,
        }
    }
}

impl Lateness {
    /// What a day of lateness weighs.
    pub const fn a_day(&self, stakes: Stakes) -> u32 {
        match stakes {
            Stakes::Comfort => self.comfort,
            Stakes::Economy => self.economy,
            Stakes::Repair => self.repair,
            Stakes::Breakdown => self.breakdown,
            Stakes::Engine => self.engine,
            Stakes::Safety => self.safety,
        }
    }
}

/// What a usual job costs, in minor units: of the known prices above nothing the one in the middle, the lower
/// of two; `None` if no price is known. What a paper costs, such as an insurance, says nothing of work on the car.
pub fn usual_price(jobs: &[Job]) -> Option<i64> {
    let work = jobs.iter().filter(|job| job.site != Site::Office);
    let mut prices: Vec<_> = work.filter_map(|job| job.price).filter(|price| *price > 0).collect();
    prices.sort_unstable();
    prices.get(prices.len().saturating_sub(1) / 2).copied()
}

/// What a job counts for, in millionths of a usual one. A job of unknown price counts as a usual one, and one that is
/// known to cost nothing for its time.
pub(super) fn weigh(price: Option<i64>, usual: Option<i64>) -> i64 {
    let Some(price) = price else { return i64::from(USUAL) };
    // Where no price of work is known, what is known is nothing, or of papers, which weigh against no work.
    let Some(usual) = usual else { return LEAST_PRICE };
    let share = i128::from(price) * i128::from(USUAL) / i128::from(usual);
    i64::try_from(share).unwrap_or(MOST_PRICE).clamp(LEAST_PRICE, MOST_PRICE)
}
