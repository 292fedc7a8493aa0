//! The few statistics that consumption and measured values share.

mod cusum;
mod least_squares;
mod robust;
mod shift;
mod student;

pub(crate) use least_squares::{Contrast, Fit};
#[cfg(test)]
pub(crate) use robust::median;
pub(crate) use shift::{Observation, Shift, Tuning, season, shifts};
pub(crate) use student::quantile;

#[cfg(test)]
pub(crate) mod chance;
#[cfg(test)]
mod welch_tests;
