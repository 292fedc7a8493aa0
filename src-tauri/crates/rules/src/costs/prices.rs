//! What an item of upkeep is likely to cost, from what was paid for it.

use std::collections::BTreeMap;

use units::{Currency, Money};

use super::JobCost;
use crate::upkeep::ItemRef;

/// How many of the last times count. An assumption of this program: enough to show that prices spread, and few enough
/// that none is of another decade.
const LAST_TIMES: usize = 3;

/// What was paid for one item.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Price {
    /// The last time, in minor units, not negative; the same in `low` and `high`.
    pub last: i64,
    /// What of the last price is no share of a bill for several jobs: its parts, or all of it. `None` where nothing is.
    ///
    /// Visits are planned by this. A share is money, but too rough to move a job by: it makes each of the ten looks on
    /// one bill worth next to nothing, and all of them would be brought forward together.
    pub firm: Option<i64>,
    /// The least of the last three times.
    pub low: i64,
    /// The most of them.
    pub high: i64,
    /// Whether the last one is a share of what was paid for several jobs together.
    pub last_estimated: bool,
    /// Whether any of them is.
    pub estimated: bool,
    /// How many of them there are: 1 to 3.
    times: usize,
}

/// What was paid for each item, all in the currency that was paid in last.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Prices {
    currency: Option<Currency>,
    of: BTreeMap<ItemRef, Price>,
}

impl Prices {
    /// The prices of these jobs, the newest first. A job that was paid in several currencies, or in another one than
    /// the newest, cannot be held against the others and is passed over.
    pub fn new(jobs: impl IntoIterator<Item = (ItemRef, JobCost)>) -> Prices {
        let mut prices = Prices::default();
        for (item, cost) in jobs {
            let Some(Money { minor, currency }) = cost.in_one_sum() else { continue };
            if currency != *prices.currency.get_or_insert(currency) {
                continue;
            }
            let firm = Some(minor - cost.share).filter(|&firm| firm != 0 || !cost.estimated);
            let first = Price { firm, ..Price::once(minor, cost.estimated) };
            prices.of.entry(item).and_modify(|price| price.add(first)).or_insert(first);
        }
        prices
    }

    /// The currency of every price; `None` when nothing was ever paid.
    pub fn currency(&self) -> Option<Currency> {
        self.currency
    }

    /// What was paid for an item.
    pub fn of(&self, item: &ItemRef) -> Option<Price> {
        self.of.get(item).copied()
    }
}

impl Price {
    /// What was paid once, all of it a share if it is an estimate.
    pub const fn once(minor: i64, estimated: bool) -> Price {
        let firm = if estimated { None } else { Some(minor) };
        Price { last: minor, firm, low: minor, high: minor, last_estimated: estimated, estimated, times: 1 }
    }

    /// Counts an older time, while there are few enough.
    fn add(&mut self, older: Price) {
        if self.times < LAST_TIMES {
            self.low = self.low.min(older.low);
            self.high = self.high.max(older.high);
            self.estimated |= older.estimated;
            self.times += 1;
        }
    }
}

#[cfg(test)]
#[path = "prices_tests.rs"]
mod tests;
