//! # units: exact quantities that cannot be mixed up
//!
//! Every number with a unit is a type of its own, held as an integer in a base unit small enough that
//! nothing the owner types is ever rounded: a distance in millimetres, a volume in picolitres, money in
//! the minor units of its currency, a day in days. Ids and hashes are types as well, and [`cbor`] is the
//! one byte form in which all of them are signed.
//!
//! This room knows no other room. It must never read a clock, a file or a setting.

pub mod cbor;
mod consumption;
mod day;
mod distance;
mod energy;
mod hash;
mod id;
mod money;
mod price;
mod volume;

pub use consumption::{Amount, Consumption, ConsumptionUnit};
pub use day::{Day, HalfMonths};
pub use distance::{Distance, DistanceUnit};
pub use energy::Energy;
pub use hash::{Hash, WriterKey};
pub use id::{BookId, EntryId, SubjectId};
pub use money::{Currency, Money};
pub use price::UnitPrice;
pub use volume::{Measure, Quantity, Volume, VolumeUnit};

/// Why a text or a number is no quantity.
///
/// Each variant says what was wrong; [`Display`](std::fmt::Display) adds what would be right.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum UnitError {
    /// The text is no calendar day in the form YYYY-MM-DD, or no such day exists.
    #[error("'{0}' is no day; write it as 2024-02-29")]
    Day(String),
    /// The day lies outside the years 1900 to 2199.
    #[error("the day lies outside the years 1900 to 2199")]
    DayRange,
    /// The text is no whole number of kilometres or miles.
    #[error("'{0}' is no reading; write the whole number that the instrument shows, such as 98420")]
    Distance(String),
    /// The reading has more digits than any instrument shows.
    #[error("a reading has at most seven digits, up to 9999999")]
    DistanceRange,
    /// The text is no amount of money in this currency.
    #[error("'{text}' is no amount in {currency}; write it with at most {decimals} decimals")]
    Money {
        /// What was given.
        text: String,
        /// The ISO 4217 code.
        currency: String,
        /// How many decimals the currency has.
        decimals: u32,
    },
    /// The text is no currency of ISO 4217.
    #[error("'{0}' is no currency; write its three-letter ISO 4217 code, such as EUR")]
    Currency(String),
    /// The text is no quantity with at most three decimals.
    #[error("'{0}' is no quantity; write a number above 0 and below 1000000 with at most three decimals")]
    Quantity(String),
    /// The text is no identifier.
    #[error("'{0}' is no identifier; it has 32 hexadecimal digits, with or without dashes")]
    Id(String),
    /// The text is no hash or key.
    #[error("'{0}' is no hash; it has 64 hexadecimal digits")]
    Hash(String),
}
