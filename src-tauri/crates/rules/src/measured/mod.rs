//! Values read off the engine's computer or a meter: what is plausible, what is usual, and when they drift.
//!
//! A limit here is common practice and no maker's value: where the handbook or the workshop manual of the car has
//! one, that one counts. What lies outside is a reason to look further, never a reason to change a part.

mod parameter;
mod read;
mod watch;

pub use parameter::{Judgement, Limits, Parameter};
pub use read::{Pasted, read};
pub use watch::{Drift, Jump, Measurement, Watched, watch};
