//! What the trade knows about keeping a car, as pure functions: values in, values out.
//!
//! - [`vehicle`]: what a car is, its identification number, and how it is driven.
//! - [`running`]: odometer readings, what they add up to, and how fast the car goes.
//! - [`parts`]: the parts that were fitted, by their numbers, and how long they last.
//! - [`fuel`]: what the car uses, whether work changed it, and when it changes by itself.
//! - [`measured`]: values read off the engine's computer or a meter, their limits, and their drift.
//! - [`costs`]: what the car costs, a month, a year, and a kilometre or mile.
//! - [`trouble`]: something is wrong: codes, causes, what to check first, and when to stop.
//! - [`upkeep`]: the catalogue of what needs doing, the plan for one car, and what is due.
//! - [`guides`]: how an owner does a job himself: cautions, steps, and this car's values.
//!
//! This room knows only `units`. What it knows of the trade stands in plain tables under `data/`, each value
//! with where it comes from; a value the owner took from his handbook always wins.
//!
//! It must never read a clock, a file or a setting, ask a database, or print: today is handed in, and the
//! same arguments always give the same answer. Its types say nothing about how they are stored or sent.

pub mod costs;
mod error;
pub mod fuel;
pub mod guides;
pub mod measured;
pub mod parts;
mod rows;
pub mod running;
mod statistics;
pub mod trouble;
pub mod upkeep;
pub mod vehicle;

#[cfg(test)]
mod testing;

pub use error::RulesError;
