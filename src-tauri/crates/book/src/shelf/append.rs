//! Writing: one entry, or several that belong together, and their pages in one transaction.

use rusqlite::{Connection, Transaction, TransactionBehavior, params};
use units::{BookId, EntryId, Hash, SubjectId, WriterKey};

use super::Shelf;
use super::remembered::Remembered;
use crate::BookError;
use crate::content::{Content, ContentKind, VehicleContent};
use crate::entry::{Body, Entry, Millis, Signed};
use crate::pages;

/// When something is written, and the randomness that its id needs.
#[derive(Debug, Clone, Copy)]
pub struct Stamp {
    /// The time by the device's clock.
    pub now: Millis,
    /// Ten random bytes.
    pub random: [u8; 10],
}

/// Something to write in a book.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Change {
    /// A new line.
    Begin(Content),
    /// What is known of the vehicle from now on.
    ChangeVehicle(VehicleContent),
    /// Another content in place of a line's.
    Amend {
        /// The line.
        subject: SubjectId,
        /// What it says from now on; of the kind that the line has.
        content: Content,
        /// Why; may be empty.
        why: String,
    },
    /// Strikes a line out.
    StrikeOut {
        /// The line.
        subject: SubjectId,
        /// Why; may be empty.
        why: String,
    },
}

impl Change {
    fn strikes_out(&self, line: SubjectId) -> bool {
        matches!(self, Change::StrikeOut { subject, .. } if *subject == line)
    }
}

/// What was written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Written {
    /// The book.
    pub book: BookId,
    /// The line.
    pub subject: SubjectId,
    /// The hash of the entry.
    pub hash: Hash,
}

impl Shelf {
    /// Puts a new book on the shelf, with its vehicle as the first entry.
    pub fn begin(&mut self, stamp: Stamp, vehicle: VehicleContent) -> Result<Written, BookError> {
        let book = BookId::new(stamp.now, stamp.random);
        self.write(stamp, book, |_| {
            Ok(Body::Begin { subject: book.into(), content: Content::Vehicle(vehicle) })
        })
    }

    /// Writes a change in a book. The entry and its pages are on the disk when this returns.
    pub fn append(&mut self, stamp: Stamp, book: BookId, change: Change) -> Result<Written, BookError> {
        // Where this device has written since the shelf was opened, both were looked at before.
        if !self.written.knows(book) {
            self.check_writable(book, &change)?;
        }
        self.write(stamp, book, |write| write.body(change))
    }

    /// Writes several changes of a book that belong together, each under a stamp of its own: all of them are on the disk
    /// when this returns, or none is written.
    pub fn append_all(
        &mut self,
        book: BookId,
        changes: Vec<(Stamp, Change)>,
    ) -> Result<Vec<Written>, BookError> {
        if !self.written.knows(book) {
            changes.iter().try_for_each(|(_, change)| self.check_writable(book, change))?;
        }
        let before = self.written.clone();
        let written = self.append_each(book, changes);
        if written.is_err() {
            // What was noted of entries that did not come through would break the chain of the next one.
            self.written = before;
        }
        written
    }

    fn append_each(
        &mut self,
        book: BookId,
        changes: Vec<(Stamp, Change)>,
    ) -> Result<Vec<Written>, BookError> {
        let transaction = Transaction::new_unchecked(&self.connection, TransactionBehavior::Immediate)?;
        let mut written = Vec::new();
        for (stamp, change) in changes {
            let (entry, hash) = self.put(&transaction, stamp, book, |write| write.body(change))?;
            note(&mut self.written, &entry, hash);
            written.push(Written { book, subject: entry.subject(), hash });
        }
        transaction.commit()?;
        Ok(written)
    }

    /// A book that this device handed over takes nothing more from it, save that the handover is taken back.
    pub(super) fn check_writable(&self, book: BookId, change: &Change) -> Result<(), BookError> {
        if !has_vehicle(&self.connection, book)? {
            return Err(BookError::NoSuchBook(book));
        }
        match self.handed_over(book)? {
            Some(handover) if !change.strikes_out(handover.subject) => {
                Err(BookError::HandedOver { subject: handover.subject, day: handover.content.day })
            }
            _ => Ok(()),
        }
    }

    /// The next entry of this device's chain in a book, not yet signed.
    pub(super) fn next_entry(
        &self,
        connection: &Connection,
        stamp: Stamp,
        book: BookId,
        body: impl FnOnce(EntryId) -> Result<Body, BookError>,
    ) -> Result<Entry, BookError> {
        let writer = self.writer.key();
        // Later than everything seen, so that the new entry is the last one in the order of the fold and the
        // pages can be brought up to date instead of rebuilt.
        let time = stamp.now.max(self.written.last_time(connection)?.saturating_add(1));
        let (number, previous) = match self.written.end(connection, book, writer)? {
            Some((number, hash)) => (number + 1, Some(hash)),
            None => (0, None),
        };
        let id = EntryId::new(time, stamp.random);
        Ok(Entry { id, book, writer, number, previous, time, body: body(id)? })
    }

    fn write(
        &mut self,
        stamp: Stamp,
        book: BookId,
        body: impl FnOnce(&Write<'_>) -> Result<Body, BookError>,
    ) -> Result<Written, BookError> {
        let transaction = Transaction::new_unchecked(&self.connection, TransactionBehavior::Immediate)?;
        let (entry, hash) = self.put(&transaction, stamp, book, body)?;
        transaction.commit()?;
        note(&mut self.written, &entry, hash);
        Ok(Written { book, subject: entry.subject(), hash })
    }

    /// Signs the next entry of a book, stores it, and brings the pages up to date.
    fn put(
        &self,
        transaction: &Transaction<'_>,
        stamp: Stamp,
        book: BookId,
        body: impl FnOnce(&Write<'_>) -> Result<Body, BookError>,
    ) -> Result<(Entry, Hash), BookError> {
        let entry = self.next_entry(transaction, stamp, book, |id| {
            body(&Write { connection: transaction, writer: self.writer.key(), book, id })
        })?;
        let signed = self.writer.sign(&entry);
        let hash = insert(transaction, &entry, &signed)?;
        pages::fold(transaction, &entry, hash)?;
        Ok((entry, hash))
    }
}

/// Notes an entry that is written. What is known of a book ends with its handover.
fn note(written: &mut Remembered, entry: &Entry, hash: Hash) {
    written.note(entry.book, entry.time, entry.number, hash);
    if entry.body.hands_over() {
        written.forget(entry.book);
    }
}

/// The place at which an entry is about to be written.
struct Write<'a> {
    connection: &'a Connection,
    writer: WriterKey,
    book: BookId,
    id: EntryId,
}

impl Write<'_> {
    fn body(&self, change: Change) -> Result<Body, BookError> {
        match change {
            Change::Begin(content) => Ok(Body::Begin { subject: self.id.into(), content }),
            Change::ChangeVehicle(vehicle) => Ok(Body::ChangeVehicle(vehicle)),
            Change::Amend { subject, content, why } => {
                self.amendable(subject, Some(content.kind()))?;
                Ok(Body::Amend { subject, content, why })
            }
            Change::StrikeOut { subject, why } => {
                self.amendable(subject, None)?;
                Ok(Body::StrikeOut { subject, why })
            }
        }
    }

    /// A line can be amended by another content of its kind, and struck out once; the vehicle's line neither, and a
    /// handover only struck out by whoever wrote it.
    fn amendable(&self, subject: SubjectId, by: Option<ContentKind>) -> Result<(), BookError> {
        let line = pages::line(self.connection, self.book, subject)?.ok_or(BookError::NoSuchLine(subject))?;
        let kind = line.content.kind();
        let handover = kind == ContentKind::Handover;
        if kind == ContentKind::Vehicle || by.is_some_and(|by| by != kind || handover) {
            return Err(BookError::OtherKind(subject));
        }
        if handover && pages::writer_of(self.connection, self.book, subject)? != Some(self.writer) {
            return Err(BookError::OthersHandover(subject));
        }
        if line.struck.is_some() { Err(BookError::Struck(subject)) } else { Ok(()) }
    }
}

/// Whether there is a book, which begins with its vehicle.
pub(super) fn has_vehicle(connection: &Connection, book: BookId) -> Result<bool, BookError> {
    let sql = "SELECT 1 FROM line WHERE book = ?1 AND subject = ?1 AND kind = 1";
    Ok(connection.prepare_cached(sql)?.exists(params![book.0])?)
}

/// Stores an entry as it was signed; answers its hash.
pub(super) fn insert(connection: &Connection, entry: &Entry, signed: &Signed) -> Result<Hash, BookError> {
    let hash = signed.hash();
    let mut statement = connection.prepare_cached(include_str!("insert.sql"))?;
    statement.execute(params![
        entry.book.0,
        entry.writer.0,
        entry.number,
        entry.time,
        entry.subject().0,
        hash.0,
        signed.bytes,
        signed.signature,
    ])?;
    Ok(hash)
}
