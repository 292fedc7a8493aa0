//! Handing a book over: the entry that says so, and who wrote in a book from when to when.

use rusqlite::params;
use units::{BookId, Hash, WriterKey};

use super::Shelf;
use super::append::{Change, Stamp};
use crate::BookError;
use crate::content::{ChainEnd, Content, HandoverContent};
use crate::entry::{Body, Millis, Signed};

/// What one writer has written in a book.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct SpanRow {
    /// The key of the device.
    pub writer: WriterKey,
    /// When it wrote its first entry, as the entry says.
    pub first: Millis,
    /// When it wrote its last one, as the entry says.
    pub last: Millis,
    /// How many it wrote.
    pub entries: u64,
}

impl Shelf {
    /// Signs the entry that hands a book over, without writing it: the file for the next owner has to hold it, and the
    /// book is not to be handed over before that file is whole. [`Shelf::merge`] writes it.
    ///
    /// `said.ends` is filled in here. Refuses a book that this device has handed over already.
    pub fn sign_handover(
        &self,
        stamp: Stamp,
        book: BookId,
        said: HandoverContent,
    ) -> Result<Signed, BookError> {
        let own = self.writer.key();
        let ends = self.ends(book)?.into_iter().filter(|end| end.writer != own).collect();
        let content = Content::Handover(HandoverContent { ends, ..said });
        self.check_writable(book, &Change::Begin(content.clone()))?;
        let body = |id: units::EntryId| Ok(Body::Begin { subject: id.into(), content });
        Ok(self.writer.sign(&self.next_entry(&self.connection, stamp, book, body)?))
    }

    /// The last entry of each writer of a book, in ascending order of their keys.
    pub(super) fn ends(&self, book: BookId) -> Result<Vec<ChainEnd>, BookError> {
        let mut statement = self.connection.prepare_cached(include_str!("head.sql"))?;
        let ends = statement.query_map(params![book.0], |row| {
            Ok(ChainEnd { writer: WriterKey(row.get(0)?), hash: Hash(row.get(1)?), number: row.get(2)? })
        })?;
        Ok(ends.collect::<Result<_, _>>()?)
    }

    /// Who wrote in a book from when to when, in the order in which they began.
    ///
    /// Times are those that the entries bear, each signed by its own writer and by nobody else.
    pub fn spans(&self, book: BookId) -> Result<Vec<SpanRow>, BookError> {
        let mut statement = self.connection.prepare_cached(include_str!("spans.sql"))?;
        let spans = statement.query_map(params![book.0], |row| {
            let last_number: u64 = row.get(3)?;
            let writer = WriterKey(row.get(0)?);
            Ok(SpanRow { writer, first: row.get(1)?, last: row.get(2)?, entries: last_number + 1 })
        })?;
        Ok(spans.collect::<Result<_, _>>()?)
    }
}
