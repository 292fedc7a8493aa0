//! Verifying: is every entry on the shelf still what was signed, and every chain whole?

use rusqlite::Row;
use units::{BookId, Hash, WriterKey};

use super::{Shelf, merge};
use crate::BookError;
use crate::content::ChainEnd;
use crate::entry::{Entry, Signed};

/// What [`Shelf::verify`] found.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Report {
    /// How many entries were looked at.
    pub entries: usize,
    /// What is wrong, in the order of book, writer and number; handovers that are not borne out come last.
    pub faults: Vec<Fault>,
}

/// A stored entry that is not what was written.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Fault {
    /// Its bytes are not those of its hash, or no entry, or its signature does not verify.
    Changed {
        /// The row in which it stands.
        place: i64,
        /// The hash under which it was stored.
        hash: String,
    },
    /// What stands beside the bytes is not what they say.
    Misfiled {
        /// The row in which it stands.
        place: i64,
        /// The hash of the bytes.
        hash: String,
    },
    /// It does not follow the entry before it in its chain, or one is missing.
    Unchained {
        /// The row in which it stands.
        place: i64,
        /// The hash of the bytes.
        hash: String,
    },
    /// It hands the book over and names the end of another chain, where no such entry stands: that chain was cut
    /// short since, or begun anew. No link inside a chain can tell, since whatever is left of one is whole.
    CutShort {
        /// The row in which the handover stands.
        place: i64,
        /// The hash of its bytes.
        hash: String,
    },
}

/// A handover, and what it says of the chains of others.
struct Vouched {
    place: i64,
    hash: Hash,
    book: BookId,
    ends: Vec<ChainEnd>,
}

/// A row as it is stored, whatever has become of it.
struct Stored {
    place: i64,
    book: Vec<u8>,
    writer: Vec<u8>,
    number: i64,
    time: i64,
    subject: Vec<u8>,
    hash: Vec<u8>,
    signed: Signed,
}

impl Shelf {
    /// Verifies every entry: its hash, its signature, its form, its place in the chain and in the table, and for a
    /// handover that the ends of all chains which it names are there.
    pub fn verify(&self) -> Result<Report, BookError> {
        let mut statement = self.connection.prepare_cached(include_str!("verify.sql"))?;
        let mut rows = statement.query([])?;
        let mut report = Report::default();
        let mut chain = Chain::default();
        while let Some(row) = rows.next()? {
            let stored = Stored::read(row)?;
            report.entries += 1;
            report.faults.extend(chain.follow(&stored));
        }
        for handover in chain.handovers {
            if merge::missing_end(&self.connection, handover.book, &handover.ends)?.is_some() {
                report
                    .faults
                    .push(Fault::CutShort { place: handover.place, hash: handover.hash.to_string() });
            }
        }
        Ok(report)
    }
}

/// The end of the chain that is being followed, and the handovers in all that were.
#[derive(Default)]
struct Chain {
    end: Option<(BookId, WriterKey, u64, Hash)>,
    handovers: Vec<Vouched>,
}

impl Chain {
    /// Looks at the next row, and says what is wrong with it.
    fn follow(&mut self, stored: &Stored) -> Option<Fault> {
        let hash = stored.signed.hash();
        let place = stored.place;
        let opened = stored.signed.open();
        let Ok(entry) = opened.as_ref().map_err(|_| ()).and_then(|entry| sound(entry, stored, hash)) else {
            // The chain is followed on from what the row says of itself, so that one fault is named once.
            self.end = stored.claimed();
            return Some(Fault::Changed { place, hash: hex(&stored.hash) });
        };
        let before = self.end.replace((entry.book, entry.writer, entry.number, hash));
        if let Some(said) = entry.body.handover() {
            self.handovers.push(Vouched { place, hash, book: entry.book, ends: said.ends.clone() });
        }
        if !stored.filed_as(entry) {
            return Some(Fault::Misfiled { place, hash: hash.to_string() });
        }
        let expected = before.filter(|(book, writer, ..)| (*book, *writer) == (entry.book, entry.writer));
        let follows = match expected {
            Some((_, _, number, previous)) => entry.number == number + 1 && entry.previous == Some(previous),
            None => entry.number == 0,
        };
        (!follows).then(|| Fault::Unchained { place, hash: hash.to_string() })
    }
}

/// The entry, if it is stored under the hash of its bytes.
fn sound<'a>(entry: &'a Entry, stored: &Stored, hash: Hash) -> Result<&'a Entry, ()> {
    if stored.hash == hash.0 { Ok(entry) } else { Err(()) }
}

impl Stored {
    fn read(row: &Row<'_>) -> Result<Stored, rusqlite::Error> {
        Ok(Stored {
            place: row.get(0)?,
            book: row.get(1)?,
            writer: row.get(2)?,
            number: row.get(3)?,
            time: row.get(4)?,
            subject: row.get(5)?,
            hash: row.get(6)?,
            signed: Signed { bytes: row.get(7)?, signature: row.get(8)? },
        })
    }

    fn claimed(&self) -> Option<(BookId, WriterKey, u64, Hash)> {
        let book = self.book.as_slice().try_into().ok().map(BookId)?;
        let writer = self.writer.as_slice().try_into().ok().map(WriterKey)?;
        let hash = self.hash.as_slice().try_into().ok().map(Hash)?;
        Some((book, writer, u64::try_from(self.number).ok()?, hash))
    }

    fn filed_as(&self, entry: &Entry) -> bool {
        self.book == entry.book.0
            && self.writer == entry.writer.0
            && u64::try_from(self.number) == Ok(entry.number)
            && u64::try_from(self.time) == Ok(entry.time)
            && self.subject == entry.subject().0
    }
}

fn hex(bytes: &[u8]) -> String {
    bytes.iter().fold(String::new(), |text, byte| text + &format!("{byte:02x}"))
}
