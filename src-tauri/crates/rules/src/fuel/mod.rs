//! What a car runs on: what it uses, whether work changed that, and when it changes by itself.
//!
//! - [`Fill`]s become [`Span`]s from full to full ([`spans`]), and these the [`figures`].
//! - [`helped`] compares the spans before and after a day.
//! - [`watch`] tells when consumption has shifted.
//! - [`settle`] makes amount, price and total agree.
//! - [`may_help`] and [`explains`] say which work has to do with it.
//! - [`effects`] are published figures on what else moves consumption, which is more than most work does.

mod amounts;
mod around;
mod figures;
mod fill;
mod helped;
mod per_mille;
mod power;
mod published;
mod spans;
mod watch;
mod work;

pub use amounts::{PumpUnit, Settled, settle};
pub use around::{are_near, around};
pub use figures::{Figures, by_year, figures};
pub use fill::{Fill, FuelKind, Level, Taken};
pub use helped::{Answer, Question, Season, Verdict, helped};
pub use per_mille::{PerMille, Share};
pub use published::{Change, Effect, Swing, effects};
pub use spans::{Apart, Series, Span, Unused, Warning, spans};
pub use watch::{Alarm, Watched, watch};
pub use work::{SYMPTOMS, explains, look_at, may_help, sets_apart};

#[cfg(test)]
mod simulated;
