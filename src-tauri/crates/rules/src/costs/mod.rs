//! What a car costs: by month and year, and by the kilometre or mile, each kind of money by itself; and what a job of
//! it cost.

mod bill;
mod distance;
mod ledger;
mod prices;
mod share;

pub use bill::{Bill, Cost, CostClass, by_month, by_year, over, work_of};
pub use distance::{PerDistance, per_distance};
pub use ledger::{Paid, PartPaid, purchase, visit};
pub use prices::{Price, Prices};
pub use share::{Billed, JobCost, OWN_MINUTES, job_costs};

#[cfg(test)]
mod tests;
