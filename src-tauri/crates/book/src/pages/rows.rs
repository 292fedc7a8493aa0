//! The narrow rows that due dates, the pump and the counter are worked out from.

use std::collections::BTreeSet;

use rules::measured::{Measurement, Parameter};
use rules::running::Reading;
use rules::upkeep::{ItemRef, Milli, OwnName};
use rusqlite::{Row, params};
use units::cbor::CborError;
use units::{BookId, Day, Distance, Hash, SubjectId};

use super::fill::fuel;
use crate::content::{Fuel, PageContent, status_from};
use crate::entry::Millis;
use crate::{BookError, Shelf};

/// A reading that counts, from a reading or from a visit.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct ReadingRow {
    /// Its line.
    pub subject: SubjectId,
    /// The reading.
    pub reading: Reading,
    /// The fuel taken at it.
    pub fuel: Option<Fuel>,
}

/// An item that was done.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct DoneRow {
    /// The visit.
    pub visit: SubjectId,
    /// The item.
    pub item: ItemRef,
    /// When.
    pub day: Day,
    /// What the instrument showed.
    pub shown: Option<Distance>,
}

/// A measured value that counts.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct MeasuredRow {
    /// Its line.
    pub subject: SubjectId,
    /// What was measured.
    pub parameter: Parameter,
    /// When, and how much.
    pub measurement: Measurement,
}

/// A paper that counts.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct PaperRow {
    /// Its line.
    pub subject: SubjectId,
    /// The SHA-256 of the photo.
    pub photo: Hash,
    /// Its width in pixels.
    pub width: u32,
    /// Its height in pixels.
    pub height: u32,
    /// When it was filed.
    pub filed: Millis,
    /// The SHA-256 of the photo before it was straightened, where that was done.
    pub whole: Option<Hash>,
    /// The document of which it is a page.
    pub page: Option<PageContent>,
}

impl Shelf {
    /// Every reading that counts, oldest first.
    pub fn readings(&self, book: BookId) -> Result<Vec<ReadingRow>, BookError> {
        let mut statement = self.connection().prepare_cached(include_str!("readings.sql"))?;
        let mut rows = statement.query(params![book.0])?;
        let mut readings = Vec::new();
        while let Some(row) = rows.next()? {
            readings.push(reading(row)?);
        }
        // They lie nearly in this order, which the sort of the database would not make use of.
        readings.sort_unstable_by_key(|row| (row.reading.day, row.reading.shown, row.subject));
        Ok(readings)
    }

    /// Every item done in a visit that counts, oldest first.
    pub fn done(&self, book: BookId) -> Result<Vec<DoneRow>, BookError> {
        let mut statement = self.connection().prepare_cached(
            "SELECT subject, item, own, day, shown FROM done WHERE book = ?1 ORDER BY day, subject, position",
        )?;
        let mut rows = statement.query(params![book.0])?;
        let mut done = Vec::new();
        while let Some(row) = rows.next()? {
            done.push(done_row(row)?);
        }
        Ok(done)
    }

    /// Every measured value that counts, oldest first.
    pub fn measured(&self, book: BookId) -> Result<Vec<MeasuredRow>, BookError> {
        let mut statement = self.connection().prepare_cached(include_str!("measured.sql"))?;
        let mut rows = statement.query(params![book.0])?;
        let mut measured = Vec::new();
        while let Some(row) = rows.next()? {
            measured.push(measured_row(row)?);
        }
        Ok(measured)
    }

    /// Every paper that counts, oldest first.
    pub fn papers(&self, book: BookId) -> Result<Vec<PaperRow>, BookError> {
        self.papers_by(include_str!("papers.sql"), book)
    }

    /// The papers that belong to no line, newest first.
    pub fn tray(&self, book: BookId) -> Result<Vec<PaperRow>, BookError> {
        self.papers_by(include_str!("tray.sql"), book)
    }

    /// The papers that belong to a line that counts: a visit, a reading, or parts that were bought.
    pub fn tied(&self, book: BookId) -> Result<BTreeSet<SubjectId>, BookError> {
        let mut statement =
            self.connection().prepare_cached("SELECT DISTINCT paper FROM tied WHERE book = ?1")?;
        let tied = statement.query_map(params![book.0], |row| row.get(0).map(SubjectId))?;
        Ok(tied.collect::<Result<_, _>>()?)
    }

    fn papers_by(&self, sql: &str, book: BookId) -> Result<Vec<PaperRow>, BookError> {
        let mut statement = self.connection().prepare_cached(sql)?;
        let rows = statement.query_map(params![book.0], |row| {
            let document: Option<[u8; 32]> = row.get(6)?;
            let number: Option<u32> = row.get(7)?;
            Ok(PaperRow {
                subject: SubjectId(row.get(0)?),
                photo: Hash(row.get(1)?),
                width: row.get(2)?,
                height: row.get(3)?,
                filed: row.get(4)?,
                whole: row.get::<_, Option<[u8; 32]>>(5)?.map(Hash),
                page: document
                    .zip(number)
                    .map(|(document, number)| PageContent { document: Hash(document), number }),
            })
        })?;
        Ok(rows.collect::<Result<_, _>>()?)
    }
}

fn reading(row: &Row<'_>) -> Result<ReadingRow, BookError> {
    let reading = Reading {
        day: day(row.get(1)?)?,
        shown: Distance::from_millimetres(row.get(2)?),
        status: status_from(row.get(3)?).ok_or(CborError::Type)?,
    };
    Ok(ReadingRow { subject: SubjectId(row.get(0)?), reading, fuel: fuel(row, 4)? })
}

fn measured_row(row: &Row<'_>) -> Result<MeasuredRow, BookError> {
    Ok(MeasuredRow {
        subject: SubjectId(row.get(0)?),
        parameter: Parameter::from_number(row.get(1)?).ok_or(CborError::Type)?,
        measurement: Measurement { day: day(row.get(2)?)?, value: Milli(row.get(3)?) },
    })
}

fn done_row(row: &Row<'_>) -> Result<DoneRow, BookError> {
    let own: Option<String> = row.get(2)?;
    let item = match own {
        Some(name) => ItemRef::Own(OwnName::parse(&name).map_err(|_| CborError::Type)?),
        None => ItemRef::Catalogue(row.get(1)?),
    };
    Ok(DoneRow {
        visit: SubjectId(row.get(0)?),
        item,
        day: day(row.get(3)?)?,
        shown: row.get::<_, Option<i64>>(4)?.map(Distance::from_millimetres),
    })
}

fn day(epoch: i32) -> Result<Day, BookError> {
    Ok(Day::from_epoch(epoch).map_err(|_| CborError::Type)?)
}
