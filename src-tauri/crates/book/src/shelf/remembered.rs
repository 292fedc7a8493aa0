//! What a shelf knows of its own writing.

use std::collections::BTreeMap;

use rusqlite::{Connection, OptionalExtension, params};
use units::{BookId, Hash, WriterKey};

use crate::BookError;
use crate::entry::Millis;

/// The ends of what is written, so that they are not looked up again for every entry: nobody else writes while
/// the shelf is locked. Noted with each entry, taken back where its transaction fails, and forgotten by a merge.
#[derive(Debug, Clone, Default)]
pub(super) struct Remembered {
    last_time: Option<Millis>,
    ends: BTreeMap<BookId, (u64, Hash)>,
}

impl Remembered {
    /// The last time that any entry on the shelf bears, 0 without any; the first time by a look at all of them.
    pub(super) fn last_time(&self, connection: &Connection) -> Result<Millis, BookError> {
        if let Some(time) = self.last_time {
            return Ok(time);
        }
        let mut statement = connection.prepare("SELECT max(time) FROM entry")?;
        Ok(statement.query_row([], |row| row.get::<_, Option<u64>>(0))?.unwrap_or(0))
    }

    /// This device's last number and hash in a book.
    pub(super) fn end(
        &self,
        connection: &Connection,
        book: BookId,
        writer: WriterKey,
    ) -> Result<Option<(u64, Hash)>, BookError> {
        if let Some(end) = self.ends.get(&book) {
            return Ok(Some(*end));
        }
        let mut statement = connection.prepare_cached(include_str!("chain_end.sql"))?;
        let row = |row: &rusqlite::Row<'_>| Ok((row.get(0)?, Hash(row.get(1)?)));
        Ok(statement.query_row(params![book.0, writer.0], row).optional()?)
    }

    /// Whether this device has written in a book since the shelf was opened.
    pub(super) fn knows(&self, book: BookId) -> bool {
        self.ends.contains_key(&book)
    }

    /// Has the next change of a book look at it anew.
    pub(super) fn forget(&mut self, book: BookId) {
        self.ends.remove(&book);
    }

    /// Notes an entry that is on the disk, or will be with the others that are written with it.
    pub(super) fn note(&mut self, book: BookId, time: Millis, number: u64, hash: Hash) {
        self.last_time = Some(time);
        self.ends.insert(book, (number, hash));
    }
}
