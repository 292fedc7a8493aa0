//! What a car costs: by month and year, and by the kilometre or mile, each kind of money by itself.

mod bill;
mod distance;
mod ledger;

pub use bill::{Bill, Cost, CostClass, by_month, by_year, over, work_of};
pub use distance::{PerDistance, per_distance};
pub use ledger::{Paid, PartPaid, purchase, visit};

#[cfg(test)]
mod tests;
