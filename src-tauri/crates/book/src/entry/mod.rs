//! Entries: what is written in ink.
//!
//! An entry is a CBOR map in its deterministic form, stored as the very bytes that were signed:
//! 1 id, 2 book, 3 writer, 4 number in the writer's chain, 5 hash of the entry before, 6 time written,
//! 7 body. `hash = SHA-256(bytes)`, `signature = Ed25519(hash)`.

mod body;
mod signed;
mod writer;

use units::cbor::{self, CborError, CborValue, MapReader, MapWriter};
use units::{BookId, EntryId, Hash, SubjectId, WriterKey};

pub use body::Body;
pub use signed::Signed;
pub use writer::Writer;

pub(crate) use signed::sha256;

/// Milliseconds since 1970-01-01, UTC.
pub type Millis = u64;

/// The last time that an entry can bear: the end of the last day of [`units::Day`], 2199-12-31. A later one
/// comes from a clock gone mad or from someone who means harm, and would stand on no page.
const LAST_TIME: Millis = 7_258_118_399_999;

/// One entry of one writer's chain in one book.
#[derive(Debug, Clone, PartialEq)]
pub struct Entry {
    /// Its id.
    pub id: EntryId,
    /// The book in which it stands.
    pub book: BookId,
    /// The key of the device that wrote it.
    pub writer: WriterKey,
    /// Its number in this writer's chain of this book, from 0.
    pub number: u64,
    /// The hash of the writer's entry before it in this book; absent at 0.
    pub previous: Option<Hash>,
    /// When it was written, never earlier than any entry that the device had seen.
    pub time: Millis,
    /// What it says.
    pub body: Body,
}

impl Entry {
    /// Its deterministic bytes.
    pub fn encode(&self) -> Vec<u8> {
        let value = MapWriter::new()
            .put(1, &self.id)
            .put(2, &self.book)
            .put(3, &self.writer)
            .put(4, &self.number)
            .put_some(5, self.previous.as_ref())
            .put(6, &self.time)
            .put(7, &self.body.to_cbor(self.book))
            .finish();
        cbor::encode(&value)
    }

    /// Reads an entry from bytes that came from outside: only the deterministic form is accepted.
    pub fn decode(bytes: &[u8]) -> Result<Entry, CborError> {
        Entry::from_cbor(&cbor::decode(bytes)?)
    }

    /// Reads an entry that was accepted before, without testing again that its form is deterministic.
    pub(crate) fn decode_kept(bytes: &[u8]) -> Result<Entry, CborError> {
        Entry::from_cbor(&cbor::decode_kept(bytes)?)
    }

    fn from_cbor(value: &CborValue) -> Result<Entry, CborError> {
        let map = MapReader::new(value)?;
        let entry = Entry {
            id: map.need(1)?,
            book: map.need(2)?,
            writer: map.need(3)?,
            number: map.need(4)?,
            previous: map.get(5)?,
            time: map.need(6)?,
            body: Body::from_cbor(map.raw(7).ok_or(CborError::Missing(7))?)?,
        };
        if entry.time > LAST_TIME {
            return Err(CborError::Wrong(6));
        }
        if (entry.number == 0) == entry.previous.is_none() { Ok(entry) } else { Err(CborError::Wrong(5)) }
    }

    /// What the entry is about.
    pub fn subject(&self) -> SubjectId {
        self.body.subject(self.book)
    }
}
