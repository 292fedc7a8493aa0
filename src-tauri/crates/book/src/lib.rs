//! # book: what is written in ink
//!
//! A book is one vehicle's chain of signed entries. An entry is appended, never changed; everything a screen
//! shows is worked out from the entries into *pages*, `SQLite` tables that are filled in the same transaction
//! as the entry and can be thrown away and rebuilt at any time.
//!
//! - [`entry`]: the entry, its bytes, its signature.
//! - [`content`]: what an entry says.
//! - [`Shelf`]: the folder in which all books of a household stand, with everything that reads or writes them.
//!
//! This room knows `units` and `rules`. All SQL of the house is here and nowhere else. It must never decide
//! what is due, ask for the time or for randomness (a [`Stamp`] brings both), or change an entry.

pub mod content;
pub mod entry;
mod error;
mod pages;
mod shelf;
#[cfg(test)]
mod testing;

pub use error::BookError;
pub use pages::{
    DoneRow, HandoverRow, LineFilter, LineRow, MeasuredRow, NewerRow, PaperRow, ReadingRow, VersionRow,
};
pub use shelf::{
    Change, Fault, MOST_TRIES, Merged, Moment, Report, Searched, Shelf, SpanRow, Stamp, Written,
};
