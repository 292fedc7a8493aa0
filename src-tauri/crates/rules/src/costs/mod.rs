//! What a car costs: by month and year, and by the kilometre or mile, each kind of money by itself.

mod bill;
mod distance;

pub use bill::{Bill, Cost, CostClass, by_month, by_year, over, work_of};
pub use distance::{PerDistance, per_distance};

#[cfg(test)]
mod tests;
