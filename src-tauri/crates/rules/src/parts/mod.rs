//! What was fitted to a car: each part by its maker's number, what it cost the last time, and how long it lasts.

mod fitted;
mod history;
mod number;
mod service;

pub use fitted::{Fitted, Moment, Span};
pub use history::{Paid, Part, parts};
pub use number::PartNumber;
pub use service::{Service, lasted};
