//! What was fitted to a car: each part by its maker's number, what it cost the last time, and how long it lasts;
//! which other numbers stand for it, and what waits at home.

mod fitted;
mod history;
mod home;
mod note;
mod number;
mod service;
mod stock;

pub use fitted::{Fitted, Moment, Span};
pub use history::{Paid, Part, parts};
pub use home::{Home, Met, Wanted};
pub use note::{Note, Notes, Warning};
pub use number::PartNumber;
pub use service::{Service, lasted};
pub use stock::{Bought, InStock, from_stock, in_stock};
