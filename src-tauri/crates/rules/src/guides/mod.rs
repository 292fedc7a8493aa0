//! The work itself: guides to the jobs that an owner does, what can hurt him at them, and this car's values.
//!
//! The tables under `data/guides` become [`Guides`], which are read once and checked as a whole: a guide that lacks
//! a caution for one of its hazards is refused. With one car and what is known of it a guide becomes a [`CarGuide`],
//! in which every value is the car's own, a typical one that says so, or left to the handbook. [`Progress`] is
//! where somebody stands in it, so that a phone may sleep between two steps.
//!
//! What is said in sentences stands in the words; here are their keys. A guide never stands above the owner's
//! handbook, local rules and licensed practice, and the caution that says so is one of every guide.

mod car;
mod caution;
mod guide;
mod library;
mod origin;
mod progress;
mod read;
mod read_cautions;
mod read_guides;
mod read_values;
mod supply;
mod value;

pub use car::{CarGuide, CarStep, Needed};
pub use caution::{Caution, Hazard};
pub use guide::{Guide, Part, Step};
pub use library::{Guides, Tables};
pub use origin::Origin;
pub use progress::{Progress, Stage};
pub use supply::Supply;
pub use value::{Bounds, Known, OwnValues, Typical, Value};

#[cfg(test)]
mod content_tests;
#[cfg(test)]
mod figures_tests;
