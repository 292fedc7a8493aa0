//! Trouble codes: what they are, what a scan tool's text holds, what the trade says of each, and their life.
//!
//! - [`Code`] is one code with its two bytes: letter, digits, standard or maker's own, and a hint at the
//!   system.
//! - [`read`] takes whatever a scan tool shows and gives a [`Scan`]: codes by status, freeze frames,
//!   readiness.
//! - [`Codes`] is the table `data/codes.toml`: how urgent a standard code is and at which causes it points.
//! - [`events`] and [`life`] follow one code through the dated scans of a book.
//!
//! The sentences stand in the words under `code-P0171` and so on. A code never names the part that is at
//! fault; it names what a control unit found wrong.

mod answer;
mod catalogued;
mod code;
mod frames;
mod freeze;
mod history;
mod kind;
mod lex;
mod life;
mod messages;
mod paste;
mod pid;
mod plain;
mod readiness;
mod scan;

pub use catalogued::{Codes, Known, Urgency};
pub use code::Code;
pub use freeze::FreezeFrame;
pub use history::{Dated, events};
pub use kind::{Area, Origin, System};
pub use life::{Event, GONE_DAYS, GONE_DISTANCE, Life, Return, Standing, Turn, Warning, What, life};
pub use paste::{LONGEST, read};
pub use pid::{Pid, Unit, Value};
pub use readiness::{Ignition, Monitor, Readiness};
pub use scan::{Note, Reported, Scan, Status};
