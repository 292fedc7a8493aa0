//! Handovers, and what they forbid.

use rusqlite::{Connection, OptionalExtension, params};
use units::cbor::{self, Cbor};
use units::{BookId, SubjectId, WriterKey};

use crate::content::HandoverContent;
use crate::entry::Millis;
use crate::{BookError, Shelf};

/// A handover, struck out or not.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct HandoverRow {
    /// Its line.
    pub subject: SubjectId,
    /// Who handed the book over.
    pub writer: WriterKey,
    /// What was said.
    pub content: HandoverContent,
    /// When it was written.
    pub written: Millis,
    /// Why it was taken back; may be empty. Nothing where it holds.
    pub struck: Option<String>,
}

impl Shelf {
    /// Every handover of a book, in the order of the fold.
    pub fn handovers(&self, book: BookId) -> Result<Vec<HandoverRow>, BookError> {
        handovers(self.connection(), book)
    }

    /// The handover that makes this device's copy of a book read-only, if there is one.
    ///
    /// It is the last that was not taken back, where this device wrote it. A book that comes back with a later
    /// handover by somebody else can be written in again.
    pub fn handed_over(&self, book: BookId) -> Result<Option<HandoverRow>, BookError> {
        let holds = self.handovers(book)?.into_iter().rfind(|row| row.struck.is_none());
        Ok(holds.filter(|row| row.writer == self.writer().key()))
    }
}

fn handovers(connection: &Connection, book: BookId) -> Result<Vec<HandoverRow>, BookError> {
    let mut statement = connection.prepare_cached(include_str!("handovers.sql"))?;
    let mut rows = statement.query(params![book.0])?;
    let mut handovers = Vec::new();
    while let Some(row) = rows.next()? {
        let bytes = row.get_ref(2)?.as_bytes().map_err(rusqlite::Error::from)?;
        handovers.push(HandoverRow {
            subject: SubjectId(row.get(0)?),
            writer: WriterKey(row.get(1)?),
            content: HandoverContent::from_cbor(&cbor::decode_kept(bytes)?)?,
            written: row.get(3)?,
            struck: row.get(4)?,
        });
    }
    Ok(handovers)
}

/// Who wrote the first version of a line.
pub(crate) fn writer_of(
    connection: &Connection,
    book: BookId,
    subject: SubjectId,
) -> Result<Option<WriterKey>, BookError> {
    let mut statement =
        connection.prepare_cached("SELECT writer FROM line WHERE book = ?1 AND subject = ?2")?;
    Ok(statement.query_row(params![book.0, subject.0], |row| row.get(0).map(WriterKey)).optional()?)
}
