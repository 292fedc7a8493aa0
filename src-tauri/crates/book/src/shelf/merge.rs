//! Merging: the union of the entries of two devices.

use std::collections::BTreeSet;

use rusqlite::{Connection, OptionalExtension, Transaction, TransactionBehavior, params};
use units::{BookId, Hash, WriterKey};

use super::{Shelf, append, remembered::Remembered};
use crate::BookError;
use crate::content::ChainEnd;
use crate::entry::{Entry, Signed};
use crate::pages;

/// What a merge brought.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Merged {
    /// Entries that were not on the shelf before.
    pub new: usize,
    /// Entries that were.
    pub known: usize,
}

impl Shelf {
    /// Takes in entries that another device has written, in any order, all or none.
    ///
    /// Every signature is verified. The chains must be whole when all entries are in: an entry whose
    /// predecessor is missing, or that stands in a place where another entry stands, refuses the whole, and so does a
    /// handover that names an entry of another chain which is not there.
    /// The pages that result do not depend on the order in which entries arrived.
    pub fn merge(&mut self, entries: &[Signed]) -> Result<Merged, BookError> {
        let transaction = self.connection.transaction_with_behavior(TransactionBehavior::Immediate)?;
        let merged = take_all(&transaction, entries)?;
        transaction.commit()?;
        self.written = Remembered::default();
        Ok(merged)
    }

    /// Does everything that [`Shelf::merge`] does, and then leaves the shelf as it was: whatever would be refused is
    /// refused here.
    pub fn try_merge(&mut self, entries: &[Signed]) -> Result<Merged, BookError> {
        let transaction = self.connection.transaction_with_behavior(TransactionBehavior::Immediate)?;
        take_all(&transaction, entries)
    }
}

fn take_all(transaction: &Transaction<'_>, entries: &[Signed]) -> Result<Merged, BookError> {
    let mut merged = Merged { new: 0, known: 0 };
    let mut books = BTreeSet::new();
    let mut opened = Vec::with_capacity(entries.len());
    for signed in entries {
        let entry = signed.open()?;
        if take(transaction, &entry, signed)? {
            merged.new += 1;
            books.insert(entry.book);
            opened.push((entry, signed.hash()));
        } else {
            merged.known += 1;
        }
    }
    for (entry, hash) in &opened {
        predecessor(transaction, entry, *hash)?;
        vouched_for(transaction, entry)?;
    }
    for book in books {
        pages::rebuild_book(transaction, book)?;
        // Every screen begins with the vehicle, so a book without one would stand in the way of all others.
        if !append::has_vehicle(transaction, book)? {
            return Err(BookError::NoSuchBook(book));
        }
    }
    Ok(merged)
}

/// Stores an entry unless it is there already; answers whether it was new.
fn take(transaction: &Transaction<'_>, entry: &Entry, signed: &Signed) -> Result<bool, BookError> {
    let hash = signed.hash();
    match stored(transaction, entry.book, entry.writer, entry.number)? {
        Some(there) if there == hash => Ok(false),
        Some(_) => Err(fork(entry, hash)),
        None => append::insert(transaction, entry, signed).map(|_| true),
    }
}

/// The entry before this one must be the one that it names.
fn predecessor(transaction: &Transaction<'_>, entry: &Entry, hash: Hash) -> Result<(), BookError> {
    let Some(before) = entry.number.checked_sub(1) else {
        return Ok(());
    };
    match stored(transaction, entry.book, entry.writer, before)? {
        None => Err(BookError::Gap(hash)),
        Some(there) if Some(there) == entry.previous => Ok(()),
        Some(_) => Err(fork(entry, hash)),
    }
}

fn fork(entry: &Entry, hash: Hash) -> BookError {
    BookError::Fork { hash, writer: entry.writer, number: entry.number, time: entry.time }
}

/// What a handover says of the chains of others must be so.
fn vouched_for(transaction: &Transaction<'_>, entry: &Entry) -> Result<(), BookError> {
    let Some(handover) = entry.body.handover() else { return Ok(()) };
    match missing_end(transaction, entry.book, &handover.ends)? {
        Some(end) => Err(BookError::LeftOut { day: handover.day, writer: end.writer, number: end.number }),
        None => Ok(()),
    }
}

/// The first of these ends of chains that does not stand in its place.
pub(super) fn missing_end<'a>(
    connection: &Connection,
    book: BookId,
    ends: &'a [ChainEnd],
) -> Result<Option<&'a ChainEnd>, BookError> {
    for end in ends {
        if stored(connection, book, end.writer, end.number)? != Some(end.hash) {
            return Ok(Some(end));
        }
    }
    Ok(None)
}

/// The hash of the entry that stands at a number of a writer's chain.
fn stored(
    connection: &Connection,
    book: BookId,
    writer: WriterKey,
    number: u64,
) -> Result<Option<Hash>, BookError> {
    let mut statement = connection
        .prepare_cached("SELECT hash FROM entry WHERE book = ?1 AND writer = ?2 AND number = ?3")?;
    let found = statement.query_row(params![book.0, writer.0, number], |row| row.get(0).map(Hash));
    Ok(found.optional()?)
}
