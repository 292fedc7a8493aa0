//! The lines of a book, as a stamped page shows them.

use rules::upkeep::ItemRef;
use rusqlite::{Connection, OptionalExtension, Row, params};
use units::cbor;
use units::{BookId, Day, Hash, SubjectId, WriterKey};

use crate::content::{Content, ContentKind, VehicleContent};
use crate::entry::{Body, Entry, Millis};
use crate::{BookError, Shelf};

/// A line as it stands.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct LineRow {
    /// The line.
    pub subject: SubjectId,
    /// The day that it names, else the day on which it was written.
    pub day: Day,
    /// What it says.
    pub content: Content,
    /// When it was first written.
    pub written: Millis,
    /// By whom.
    pub writer: WriterKey,
    /// How often it has been amended.
    pub amended: u32,
    /// Why it was struck out; may be empty.
    pub struck: Option<String>,
}

/// A version of a line, or its striking out.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct VersionRow {
    /// The hash of its entry.
    pub hash: Hash,
    /// When it was written.
    pub written: Millis,
    /// What it says; nothing when it strikes the line out.
    pub content: Option<Content>,
    /// Why, in the owner's words.
    pub why: String,
}

/// An entry that was written by a newer version.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct NewerRow {
    /// The hash of the entry.
    pub hash: Hash,
    /// When it was written.
    pub written: Millis,
}

/// Which lines are wanted.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct LineFilter {
    /// From this day.
    pub from: Option<Day>,
    /// To this day, itself included.
    pub to: Option<Day>,
    /// Only visits with this item.
    pub item: Option<ItemRef>,
}

impl Shelf {
    /// What is known of a vehicle.
    pub fn vehicle(&self, book: BookId) -> Result<VehicleContent, BookError> {
        let line = line(self.connection(), book, book.into())?;
        match line.map(|line| line.content) {
            Some(Content::Vehicle(vehicle)) => Ok(vehicle),
            _ => Err(BookError::NoSuchBook(book)),
        }
    }

    /// The lines of a book that the filter wants, newest first; those of one day in the reverse order of writing.
    pub fn lines(&self, book: BookId, filter: &LineFilter) -> Result<Vec<LineRow>, BookError> {
        let (item, own) = match &filter.item {
            Some(ItemRef::Catalogue(number)) => (Some(*number), None),
            Some(ItemRef::Own(name)) => (None, Some(name.as_str())),
            None => (None, None),
        };
        let mut statement = self.connection().prepare_cached(include_str!("lines.sql"))?;
        let mut rows = statement.query(params![
            book.0,
            filter.from.map(Day::epoch),
            filter.to.map(Day::epoch),
            item,
            own
        ])?;
        collect(&mut rows)
    }

    /// The lines of one kind that count, in the order in which they were written.
    pub fn lines_of(&self, book: BookId, kind: ContentKind) -> Result<Vec<LineRow>, BookError> {
        let sql = match kind {
            ContentKind::Reading => include_str!("lines_of_readings.sql"),
            _ => include_str!("lines_of.sql"),
        };
        let mut statement = self.connection().prepare_cached(sql)?;
        let mut rows = statement.query(params![book.0, kind.number()])?;
        collect(&mut rows)
    }

    /// The days that the lines of a book name, each once, oldest first.
    pub fn days(&self, book: BookId) -> Result<Vec<Day>, BookError> {
        let mut statement =
            self.connection().prepare_cached("SELECT DISTINCT day FROM line WHERE book = ?1 ORDER BY day")?;
        let days = statement.query_map(params![book.0], |row| row.get(0))?;
        days.map(|day| Ok(Day::from_epoch(day?).map_err(|_| cbor::CborError::Type)?)).collect()
    }

    /// One line.
    pub fn line(&self, book: BookId, subject: SubjectId) -> Result<LineRow, BookError> {
        line(self.connection(), book, subject)?.ok_or(BookError::NoSuchLine(subject))
    }

    /// The versions of a line, oldest first, its striking out among them.
    pub fn versions(&self, book: BookId, subject: SubjectId) -> Result<Vec<VersionRow>, BookError> {
        let mut statement = self.connection().prepare_cached(include_str!("versions.sql"))?;
        let mut rows = statement.query(params![book.0, subject.0])?;
        let mut versions = Vec::new();
        while let Some(row) = rows.next()? {
            let entry = Entry::decode_kept(row.get_ref(0)?.as_bytes().map_err(rusqlite::Error::from)?)?;
            versions.extend(version(entry, Hash(row.get(1)?)));
        }
        Ok(versions)
    }

    /// The entries that a newer version has written, in the order of writing.
    pub fn newer(&self, book: BookId) -> Result<Vec<NewerRow>, BookError> {
        let mut statement = self
            .connection()
            .prepare_cached("SELECT hash, time FROM newer WHERE book = ?1 ORDER BY time, hash")?;
        let rows = statement.query_map(params![book.0], |row| {
            Ok(NewerRow { hash: Hash(row.get(0)?), written: row.get(1)? })
        })?;
        Ok(rows.collect::<Result<_, _>>()?)
    }
}

fn version(entry: Entry, hash: Hash) -> Option<VersionRow> {
    let (content, why) = match entry.body {
        Body::Begin { content, .. } => (Some(content), String::new()),
        Body::ChangeVehicle(vehicle) => (Some(Content::Vehicle(vehicle)), String::new()),
        Body::Amend { content, why, .. } => (Some(content), why),
        Body::StrikeOut { why, .. } => (None, why),
        Body::Newer { .. } => return None,
    };
    Some(VersionRow { hash, written: entry.time, content, why })
}

/// One line, if it is there.
pub(crate) fn line(
    connection: &Connection,
    book: BookId,
    subject: SubjectId,
) -> Result<Option<LineRow>, BookError> {
    let mut statement = connection.prepare_cached(include_str!("line.sql"))?;
    let raw = statement.query_row(params![book.0, subject.0], Raw::read).optional()?;
    raw.map(Raw::line).transpose()
}

fn collect(rows: &mut rusqlite::Rows<'_>) -> Result<Vec<LineRow>, BookError> {
    let mut lines = Vec::new();
    while let Some(row) = rows.next()? {
        lines.push(Raw::read(row)?.line()?);
    }
    Ok(lines)
}

/// A row of the page before its content is read.
struct Raw {
    subject: SubjectId,
    kind: u64,
    day: i32,
    content: Vec<u8>,
    written: Millis,
    amended: u32,
    struck: Option<String>,
    writer: WriterKey,
}

impl Raw {
    fn read(row: &Row<'_>) -> Result<Raw, rusqlite::Error> {
        Ok(Raw {
            subject: SubjectId(row.get(0)?),
            kind: row.get(1)?,
            day: row.get(2)?,
            content: row.get(3)?,
            written: row.get(4)?,
            amended: row.get(5)?,
            struck: row.get(6)?,
            writer: WriterKey(row.get(7)?),
        })
    }

    fn line(self) -> Result<LineRow, BookError> {
        let kind = ContentKind::from_number(self.kind).ok_or(cbor::CborError::Type)?;
        Ok(LineRow {
            subject: self.subject,
            day: Day::from_epoch(self.day).map_err(|_| cbor::CborError::Type)?,
            content: Content::from_cbor(kind, &cbor::decode_kept(&self.content)?)?,
            written: self.written,
            writer: self.writer,
            amended: self.amended,
            struck: self.struck,
        })
    }
}
