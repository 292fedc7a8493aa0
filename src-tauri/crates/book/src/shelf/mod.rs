//! The shelf: a folder with the database of all books, the device's key and a lock.

mod append;
mod folder;
#[cfg(test)]
mod full_disk_tests;
mod handover;
mod merge;
mod moment;
mod named;
mod remembered;
mod verify;

use std::fs::File;
use std::path::Path;

use rusqlite::config::DbConfig;
use rusqlite::{Connection, OptionalExtension, Transaction, TransactionBehavior, params};
use units::{BookId, Hash};

use crate::BookError;
use crate::entry::{Signed, Writer, sha256};
use crate::pages;
use remembered::Remembered;

pub use append::{Change, Stamp, Written};
pub use handover::SpanRow;
pub use merge::Merged;
pub use moment::{MOST_TRIES, Moment, Searched};
pub use verify::{Fault, Report};

/// The form of the `entry` and `setting` tables. A shelf with a higher number is refused and left alone.
const FORMAT: i64 = 1;

/// All books of a household, open for reading and writing by this program alone.
#[derive(Debug)]
pub struct Shelf {
    connection: Connection,
    writer: Writer,
    written: Remembered,
    // Held as long as the shelf is open; the system lets go of it even if the program is killed.
    _lock: Option<File>,
}

impl Shelf {
    /// Opens the shelf in a folder, and lays one there if there is none.
    ///
    /// `secret` is asked for 32 random bytes when the device has no key yet. Refuses a shelf that another
    /// copy of the program has open, and one of a newer form; sets a damaged database aside whole.
    pub fn open(folder: &Path, secret: impl FnOnce() -> [u8; 32]) -> Result<Shelf, BookError> {
        let lock = folder::lock(folder)?;
        let connection = folder::database(folder)?;
        let writer = folder::writer(folder, secret)?;
        Shelf::prepare(connection, writer, Some(lock))
    }

    /// A shelf that is gone when it is dropped.
    pub fn in_memory(writer: Writer) -> Result<Shelf, BookError> {
        Shelf::prepare(Connection::open_in_memory()?, writer, None)
    }

    fn prepare(mut connection: Connection, writer: Writer, lock: Option<File>) -> Result<Shelf, BookError> {
        pragmas(&connection)?;
        let transaction = connection.transaction_with_behavior(TransactionBehavior::Immediate)?;
        lay(&transaction)?;
        transaction.commit()?;
        Ok(Shelf { connection, writer, written: Remembered::default(), _lock: lock })
    }

    /// The key pair of this device.
    pub fn writer(&self) -> &Writer {
        &self.writer
    }

    /// How many rows have been written since the shelf was opened: as long as it stays the same, so does every answer.
    pub fn changes(&self) -> u64 {
        self.connection.total_changes()
    }

    /// The ids of all books, in ascending order.
    pub fn books(&self) -> Result<Vec<BookId>, BookError> {
        let mut statement = self.connection.prepare_cached(include_str!("books.sql"))?;
        let books = statement.query_map([], |row| row.get(0).map(BookId))?;
        Ok(books.collect::<Result<_, _>>()?)
    }

    /// How many entries a book holds.
    pub fn count(&self, book: BookId) -> Result<usize, BookError> {
        let mut statement = self.connection.prepare_cached("SELECT count(*) FROM entry WHERE book = ?1")?;
        Ok(statement.query_row(params![book.0], |row| row.get(0))?)
    }

    /// The head of a book: SHA-256 over the writers' `(public key, last hash)` pairs in ascending order of key.
    pub fn head(&self, book: BookId) -> Result<Hash, BookError> {
        let mut pairs = Vec::new();
        for end in self.ends(book)? {
            pairs.extend_from_slice(&end.writer.0);
            pairs.extend_from_slice(&end.hash.0);
        }
        Ok(sha256(&pairs))
    }

    /// All entries of a book in the order in which they fold, as they were signed.
    pub fn entries(&self, book: BookId) -> Result<Vec<Signed>, BookError> {
        let mut statement = self.connection.prepare_cached(
            "SELECT bytes, signature FROM entry WHERE book = ?1 ORDER BY time, writer, number",
        )?;
        let entries = statement
            .query_map(params![book.0], |row| Ok(Signed { bytes: row.get(0)?, signature: row.get(1)? }))?;
        Ok(entries.collect::<Result<_, _>>()?)
    }

    /// Throws the pages away and folds all entries anew; answers how many there were.
    pub fn rebuild(&mut self) -> Result<usize, BookError> {
        let transaction = self.connection.transaction_with_behavior(TransactionBehavior::Immediate)?;
        let count = pages::rebuild(&transaction)?;
        transaction.commit()?;
        Ok(count)
    }

    /// All rows of all pages as text, in a fixed order: equal pages give equal text.
    pub fn dump_pages(&self) -> Result<String, BookError> {
        pages::dump(&self.connection)
    }

    /// What a setting of this device holds.
    pub fn setting(&self, name: &str) -> Result<Option<String>, BookError> {
        setting(&self.connection, name)
    }

    /// Sets or clears a setting of this device.
    pub fn set_setting(&mut self, name: &str, value: Option<&str>) -> Result<(), BookError> {
        set_setting(&self.connection, name, value)
    }

    pub(crate) fn connection(&self) -> &Connection {
        &self.connection
    }
}

fn setting(connection: &Connection, name: &str) -> Result<Option<String>, BookError> {
    let mut statement = connection.prepare_cached("SELECT value FROM setting WHERE name = ?1")?;
    Ok(statement.query_row(params![name], |row| row.get(0)).optional()?)
}

fn set_setting(connection: &Connection, name: &str, value: Option<&str>) -> Result<(), BookError> {
    match value {
        Some(value) => connection
            .prepare_cached("INSERT OR REPLACE INTO setting (name, value) VALUES (?1, ?2)")?
            .execute(params![name, value])?,
        None => connection.prepare_cached("DELETE FROM setting WHERE name = ?1")?.execute(params![name])?,
    };
    Ok(())
}

/// How every connection is set up.
fn pragmas(connection: &Connection) -> Result<(), BookError> {
    // A reader is never in the way of the writer, and a crash leaves the last commit whole.
    connection.pragma_update(None, "journal_mode", "WAL")?;
    // A commit is on the disk before the person is told so; this program writes rarely enough for that.
    connection.pragma_update(None, "synchronous", "FULL")?;
    connection.pragma_update(None, "foreign_keys", true)?;
    // Android has no folder for temporary files.
    connection.pragma_update(None, "temp_store", "MEMORY")?;
    // A plan must not hang on the value that is bound: SQLite would prepare every statement anew with every use.
    connection.set_db_config(DbConfig::SQLITE_DBCONFIG_ENABLE_QPSG, true)?;
    connection.set_prepared_statement_cache_capacity(64);
    Ok(())
}

/// Lays the tables of a new shelf, and rebuilds pages that an older version laid.
fn lay(transaction: &Transaction<'_>) -> Result<(), BookError> {
    let format: i64 = transaction.pragma_query_value(None, "user_version", |row| row.get(0))?;
    if format > FORMAT {
        return Err(BookError::Newer);
    }
    if format == 0 {
        transaction.execute_batch(include_str!("schema.sql"))?;
        transaction.pragma_update(None, "user_version", FORMAT)?;
    }
    if setting(transaction, "pages")?.as_deref() != Some(pages::PAGES) {
        pages::rebuild(transaction)?;
        set_setting(transaction, "pages", Some(pages::PAGES))?;
    }
    Ok(())
}
