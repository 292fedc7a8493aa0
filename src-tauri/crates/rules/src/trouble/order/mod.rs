//! In which order to check, so that finding the fault costs least.
//!
//! This part knows nothing of cars: causes are chances, checks have a cost, find each cause with some chance,
//! and may need things opened that are opened once for all. Costs are in one unit, whichever.
//!
//! - [`Search::cost`] is what an order costs on the average.
//! - [`Search::best`] is the best order: exact for up to [`EXACT`] checks. Beyond, an order is built and
//!   improved, its first [`EXACT`] checks are put in their best order, and a bound says how far off the whole
//!   can be.
//! - [`Search::by_ratio`] is the plain order by chance over cost, which is best only where nothing is shared
//!   (Kadane and Simon 1977; Heckerman, Breese and Rommelse 1995).
//! - [`overlooked`] is the rule for looking again where something may have been overlooked (Chew 1967).

mod blocks;
mod bound;
mod exact;
pub mod overlooked;

/// Up to how many checks the best order is found exactly: the work is `2^n * n`.
pub const EXACT: usize = 14;

/// A search for the one cause that is at fault.
#[derive(Debug, Clone, PartialEq)]
pub struct Search {
    /// The chance of each cause that some check can find. What is missing to 1 is what none can find.
    pub causes: Vec<f64>,
    /// What each opening costs, 0 or more; at most 16 of them.
    pub openings: Vec<f64>,
    /// The checks.
    pub looks: Vec<Look>,
}

/// One check of a search.
#[derive(Debug, Clone, PartialEq)]
pub struct Look {
    /// What it costs by itself, 0 or more.
    pub cost: f64,
    /// What must be open for it: the sum of `1 << n` over the places in [`Search::openings`].
    pub opens: u16,
    /// How likely it finds each cause of [`Search::causes`] when that is at fault, each independently of the
    /// other checks.
    pub finds: Vec<f64>,
}

/// The best order that was found.
#[derive(Debug, Clone, PartialEq)]
pub struct Best {
    /// The places of the checks in [`Search::looks`], first to last.
    pub order: Vec<usize>,
    /// What this order costs on the average, until the fault is found or the checks are used up.
    pub cost: f64,
    /// What no order can undercut: the same as `cost` where `exact`.
    pub at_least: f64,
    /// Whether the order is known to be the best.
    pub exact: bool,
}

impl Search {
    /// What an order costs on the average, until the fault is found or the checks are used up.
    pub fn cost(&self, order: &[usize]) -> f64 {
        let mut state = State::of(self);
        order.iter().map(|&place| state.take(self, place)).sum()
    }

    /// The best order.
    pub fn best(&self) -> Best {
        if self.looks.len() <= EXACT {
            let order = exact::order(self);
            let cost = self.cost(&order);
            return Best { order, cost, at_least: cost, exact: true };
        }
        let order = exact::beginning(self, &blocks::order(self), EXACT);
        let cost = self.cost(&order);
        Best { order, cost, at_least: bound::below(self).min(cost), exact: false }
    }

    /// The order by chance over cost, each check with all it opens taken by itself.
    pub fn by_ratio(&self) -> Vec<usize> {
        let ratio = |place: &usize| {
            let look = &self.looks[*place];
            self.gain(look) / (look.cost + self.opening(look.opens)).max(f64::MIN_POSITIVE)
        };
        let mut order: Vec<_> = (0..self.looks.len()).collect();
        order.sort_by(|a, b| ratio(b).total_cmp(&ratio(a)));
        order
    }

    /// How likely a check finds the fault when it is made first.
    fn gain(&self, look: &Look) -> f64 {
        self.causes.iter().zip(&look.finds).map(|(cause, finds)| cause * finds).sum()
    }

    /// What it costs to open all of these.
    fn opening(&self, opens: u16) -> f64 {
        let open = |place: &usize| opens >> place & 1 == 1;
        (0..self.openings.len()).filter(open).map(|place| self.openings[place]).sum()
    }
}

/// How far a search has come.
#[derive(Debug, Clone)]
struct State {
    /// The chance that each cause is at fault and was not found.
    left: Vec<f64>,
    /// The chance that nothing was found.
    nothing: f64,
    /// What is open.
    open: u16,
}

impl State {
    fn of(search: &Search) -> State {
        State { left: search.causes.clone(), nothing: 1.0, open: 0 }
    }

    /// What a check would cost now, if it came to it.
    fn price(&self, search: &Search, look: &Look) -> f64 {
        look.cost + search.opening(look.opens & !self.open)
    }

    /// How likely a check would find the fault now.
    fn gain(&self, look: &Look) -> f64 {
        self.left.iter().zip(&look.finds).map(|(left, finds)| left * finds).sum()
    }

    /// Makes a check; what it costs on the average, seen from the start.
    fn take(&mut self, search: &Search, place: usize) -> f64 {
        let look = &search.looks[place];
        let cost = self.nothing * self.price(search, look);
        self.nothing -= self.gain(look);
        for (left, finds) in self.left.iter_mut().zip(&look.finds) {
            *left *= 1.0 - finds;
        }
        self.open |= look.opens;
        cost
    }
}

#[cfg(test)]
#[path = "tests.rs"]
mod tests;
