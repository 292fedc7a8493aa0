//! What comes of an order of checks when the true cause is known, for the tests that hold the order against
//! others.
#![allow(clippy::unwrap_used, clippy::cast_precision_loss)]

use super::order::{EXACT, Look, Search};
use super::posterior::link;
use super::{Complaint, Trouble};
use crate::statistics::chance::Chance;

/// What the list of checks did in one case, or on the average of many.
#[derive(Debug, Clone, Copy, Default)]
pub(super) struct Outcome {
    /// Whether one of the first three checks looks for the true cause.
    pub looked_for: f64,
    /// The chance that one of the first three finds it.
    pub found: f64,
    /// What finding it costs on the average in minutes, a workshop's [`WORKSHOP`] included where no check
    /// does.
    pub cost: f64,
}

/// What a workshop's search costs when no check found the cause, in minutes: the way there and two hours with
/// its price.
const WORKSHOP: f64 = 400.0;

/// The checks of a case as a search, with where they stand in the table and how surely each finds the true
/// cause.
pub(super) struct Trial {
    search: Search,
    finds: Vec<f64>,
}

impl Trial {
    /// What a table says to a complaint, held against the true cause.
    pub fn of(table: &Trouble, complaint: &Complaint<'_>, cause: &str) -> Trial {
        let (search, checks) = table.searched(complaint);
        let cause = table.cause(cause).unwrap();
        Trial { search, finds: checks.iter().map(|&check| link(&cause.found_by, check)).collect() }
    }

    /// What comes of an order, given the true cause.
    fn outcome(&self, order: &[usize]) -> Outcome {
        let looks = self.search.looks.iter().zip(&self.finds);
        let truth = Search {
            causes: vec![1.0],
            openings: self.search.openings.clone(),
            looks: looks.map(|(look, finds)| Look { finds: vec![*finds], ..look.clone() }).collect(),
        };
        let missed = |places: &[usize]| places.iter().map(|&place| 1.0 - self.finds[place]).product::<f64>();
        let three = &order[..order.len().min(3)];
        Outcome {
            looked_for: if three.iter().any(|&place| self.finds[place] > 0.0) { 1.0 } else { 0.0 },
            found: 1.0 - missed(three),
            cost: truth.cost(order) + missed(order) * WORKSHOP,
        }
    }

    pub fn best(&self) -> Outcome {
        self.outcome(&self.search.best().order)
    }

    pub fn is_exact(&self) -> bool {
        self.search.looks.len() <= EXACT
    }

    /// By chance over cost, each check by itself.
    pub fn by_ratio(&self) -> Outcome {
        self.outcome(&self.search.by_ratio())
    }

    /// The most likely to find something first.
    pub fn by_chance(&self) -> Outcome {
        let gain = |place: usize| {
            let causes = self.search.causes.iter().zip(&self.search.looks[place].finds);
            causes.map(|(cause, finds)| cause * finds).sum::<f64>()
        };
        self.sorted(|place| -gain(place))
    }

    /// The cheapest first, each with all it opens.
    pub fn by_cost(&self) -> Outcome {
        self.sorted(|place| self.search.cost(&[place]))
    }

    fn sorted(&self, key: impl Fn(usize) -> f64) -> Outcome {
        let mut order: Vec<_> = (0..self.finds.len()).collect();
        order.sort_by(|a, b| key(*a).total_cmp(&key(*b)));
        self.outcome(&order)
    }

    /// The mean over 60 orders by chance.
    fn at_random(&self, chance: &mut Chance) -> Outcome {
        let mut order: Vec<_> = (0..self.finds.len()).collect();
        let shuffled = (0..60).map(|_| {
            for place in (1..order.len()).rev() {
                order.swap(place, chance.below(place + 1));
            }
            self.outcome(&order)
        });
        mean(&shuffled.collect::<Vec<_>>())
    }
}

pub(super) fn mean(outcomes: &[Outcome]) -> Outcome {
    let count = outcomes.len() as f64;
    let mean = |of: fn(&Outcome) -> f64| outcomes.iter().map(of).sum::<f64>() / count;
    Outcome { looked_for: mean(|it| it.looked_for), found: mean(|it| it.found), cost: mean(|it| it.cost) }
}

/// The outcomes of the other orders: by chance over cost, by chance alone, by cost alone, and at random.
pub(super) fn others(trials: &[Trial], chance: &mut Chance) -> [Outcome; 4] {
    let of = |order: fn(&Trial) -> Outcome| mean(&trials.iter().map(order).collect::<Vec<_>>());
    let random: Vec<_> = trials.iter().map(|trial| trial.at_random(chance)).collect();
    [of(Trial::by_ratio), of(Trial::by_chance), of(Trial::by_cost), mean(&random)]
}

/// A table of which every rate and the odds of every link are off by a factor of about two: the error of the
/// logarithm is normal with a deviation of `ln 2`. What the checks cost and find stays as it is.
pub(super) fn off_by_two(table: &Trouble, chance: &mut Chance) -> Trouble {
    let mut table = table.clone();
    let mut factor = || chance.normal(std::f64::consts::LN_2).exp();
    for cause in &mut table.causes {
        let rates = &mut cause.rates;
        for rate in [&mut rates.petrol, &mut rates.diesel, &mut rates.hybrid, &mut rates.electric] {
            *rate = rate.map(|rate| rate * factor());
        }
        for (_, link) in &mut cause.shows {
            let odds = *link / (1.0 - *link) * factor();
            *link = odds / (1.0 + odds);
        }
    }
    table
}
