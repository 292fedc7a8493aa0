//! Folding: what one entry does to the pages.

use rules::running::OdometerStatus;
use rusqlite::{Connection, OptionalExtension, ToSql, params, params_from_iter};
use units::cbor;
use units::{BookId, Hash, SubjectId, WriterKey};

use super::fill::FuelColumns;
use crate::BookError;
use crate::content::{
    Content, ContentKind, MeasuredContent, MeasuredValue, PaperContent, VisitContent, status_number,
};
use crate::entry::{Body, Entry, Millis};

const MILLIS_A_DAY: Millis = 86_400_000;

/// Brings the pages up to date with the entry that comes last in its book.
pub(crate) fn fold(connection: &Connection, entry: &Entry, hash: Hash) -> Result<(), BookError> {
    let page = Page { connection, entry, hash };
    match &entry.body {
        Body::Begin { subject, content } => page.begin(*subject, content),
        Body::ChangeVehicle(vehicle) => page.amend(entry.book.into(), &Content::Vehicle(vehicle.clone())),
        Body::Amend { subject, content, .. } => page.amend(*subject, content),
        Body::StrikeOut { subject, why } => page.strike_out(*subject, why),
        Body::Newer { kind, .. } => page.keep(*kind),
    }
}

/// The pages, and the entry that is folded into them.
struct Page<'a> {
    connection: &'a Connection,
    entry: &'a Entry,
    hash: Hash,
}

/// How a line stands before an entry is folded.
struct Stands {
    kind: u8,
    struck: bool,
    written: Millis,
    writer: WriterKey,
}

impl Stands {
    /// Every writer may correct every line but a handover: that one says what its own writer did, and whoever comes
    /// after him may not make it undone.
    fn is_open_to(&self, writer: WriterKey) -> bool {
        self.kind != ContentKind::Handover.number() || self.writer == writer
    }
}

impl Page<'_> {
    fn book(&self) -> BookId {
        self.entry.book
    }

    fn begin(&self, subject: SubjectId, content: &Content) -> Result<(), BookError> {
        let fuel = FuelColumns::of(content);
        let line: [&dyn ToSql; 10] = [
            &self.book().0,
            &subject.0,
            &content.kind().number(),
            &named_day(content, self.entry.time),
            &content.shown().map(units::Distance::millimetres),
            &status(content),
            &cbor::encode(&content.to_cbor()),
            &self.entry.time,
            &self.entry.writer.0,
            &self.entry.number,
        ];
        let values = params_from_iter(line.into_iter().chain(fuel.values()));
        let new = self.connection.prepare_cached(include_str!("line_insert.sql"))?.execute(values)?;
        if new == 0 {
            // Two devices that begin one line: the later content holds, the earlier one stays a version.
            return self.amend(subject, content);
        }
        self.spread(subject, content, self.entry.time)
    }

    fn amend(&self, subject: SubjectId, content: &Content) -> Result<(), BookError> {
        self.version(subject)?;
        // A content of another kind, or for a line that is not there, comes from a program that knows more.
        let Some(line) = self.stands(subject)? else {
            return self.keep(self.entry.body.kind());
        };
        if line.kind != content.kind().number() || !line.is_open_to(self.entry.writer) {
            return self.keep(self.entry.body.kind());
        }
        let written = line.written;
        let fuel = FuelColumns::of(content);
        let standing: [&dyn ToSql; 6] = [
            &self.book().0,
            &subject.0,
            &named_day(content, written),
            &content.shown().map(units::Distance::millimetres),
            &status(content),
            &cbor::encode(&content.to_cbor()),
        ];
        let values = params_from_iter(standing.into_iter().chain(fuel.values()));
        self.connection.prepare_cached(include_str!("line_amend.sql"))?.execute(values)?;
        if line.struck {
            return Ok(());
        }
        self.gather(subject)?;
        self.spread(subject, content, written)
    }

    fn strike_out(&self, subject: SubjectId, why: &str) -> Result<(), BookError> {
        self.version(subject)?;
        if !self.stands(subject)?.is_some_and(|line| line.is_open_to(self.entry.writer)) {
            return self.keep(self.entry.body.kind());
        }
        let struck = self
            .connection
            .prepare_cached("UPDATE line SET struck = ?3 WHERE book = ?1 AND subject = ?2 AND kind <> 1")?
            .execute(params![self.book().0, subject.0, why])?;
        if struck == 0 {
            return self.keep(self.entry.body.kind());
        }
        // Until now everything that an earlier version names was kept too.
        let sql = "DELETE FROM kept WHERE book = ?1 AND subject = ?2";
        self.connection.prepare_cached(sql)?.execute(params![self.book().0, subject.0])?;
        self.gather(subject)
    }

    /// Notes that this entry is another version of a line.
    fn version(&self, subject: SubjectId) -> Result<(), BookError> {
        self.connection.prepare_cached(include_str!("version_insert.sql"))?.execute(params![
            self.book().0,
            subject.0,
            self.entry.time,
            self.entry.writer.0,
            self.entry.number,
        ])?;
        Ok(())
    }

    /// Keeps an entry that has no other place on the pages.
    fn keep(&self, kind: u64) -> Result<(), BookError> {
        let kind = i64::try_from(kind).unwrap_or(i64::MAX);
        self.connection
            .prepare_cached("INSERT INTO newer (book, hash, kind, time) VALUES (?1, ?2, ?3, ?4)")?
            .execute(params![self.book().0, self.hash.0, kind, self.entry.time])?;
        Ok(())
    }

    /// How a line stands that is there.
    fn stands(&self, subject: SubjectId) -> Result<Option<Stands>, BookError> {
        let mut statement = self.connection.prepare_cached(
            "SELECT kind, struck IS NOT NULL, written, writer FROM line WHERE book = ?1 AND subject = ?2",
        )?;
        let row = |row: &rusqlite::Row<'_>| {
            let writer = WriterKey(row.get(3)?);
            Ok(Stands { kind: row.get(0)?, struck: row.get(1)?, written: row.get(2)?, writer })
        };
        Ok(statement.query_row(params![self.book().0, subject.0], row).optional()?)
    }

    /// Takes what a line has spread over the other pages away.
    fn gather(&self, subject: SubjectId) -> Result<(), BookError> {
        for sql in [
            "DELETE FROM done WHERE book = ?1 AND subject = ?2",
            "DELETE FROM paper WHERE book = ?1 AND subject = ?2",
            "DELETE FROM tied WHERE book = ?1 AND subject = ?2",
            "DELETE FROM measured WHERE book = ?1 AND subject = ?2",
        ] {
            self.connection.prepare_cached(sql)?.execute(params![self.book().0, subject.0])?;
        }
        Ok(())
    }

    /// Spreads what a line says over the other pages.
    fn spread(&self, subject: SubjectId, content: &Content, written: Millis) -> Result<(), BookError> {
        self.tie(subject, content.papers())?;
        match content {
            Content::Visit(visit) => self.visit(subject, visit),
            Content::Paper(paper) => self.paper(subject, paper, written),
            Content::Measured(measured) => self.measured(subject, measured),
            Content::Vehicle(_)
            | Content::Reading(_)
            | Content::Instrument(_)
            | Content::Plan(_)
            | Content::Bought(_)
            | Content::PartNote(_)
            | Content::Trouble(_)
            | Content::Handover(_) => Ok(()),
        }
    }

    fn visit(&self, subject: SubjectId, visit: &VisitContent) -> Result<(), BookError> {
        let day = visit.day.epoch();
        let shown = visit.shown.map(units::Distance::millimetres);
        let mut done = self.connection.prepare_cached(include_str!("done_insert.sql"))?;
        for (position, item) in (0_u32..).zip(&visit.items) {
            let (number, own) = match item {
                rules::upkeep::ItemRef::Catalogue(number) => (Some(*number), None),
                rules::upkeep::ItemRef::Own(name) => (None, Some(name.as_str())),
            };
            done.execute(params![self.book().0, subject.0, position, number, own, day, shown])?;
        }
        Ok(())
    }

    fn measured(&self, subject: SubjectId, measured: &MeasuredContent) -> Result<(), BookError> {
        let day = measured.day.epoch();
        let mut insert = self.connection.prepare_cached(include_str!("measured_insert.sql"))?;
        for (position, MeasuredValue { parameter, value }) in (0_u32..).zip(&measured.values) {
            insert.execute(params![self.book().0, subject.0, position, parameter.number(), day, value.0])?;
        }
        Ok(())
    }

    fn tie(&self, subject: SubjectId, papers: &[SubjectId]) -> Result<(), BookError> {
        for paper in papers {
            self.connection
                .prepare_cached("INSERT OR IGNORE INTO tied (book, subject, paper) VALUES (?1, ?2, ?3)")?
                .execute(params![self.book().0, subject.0, paper.0])?;
        }
        Ok(())
    }

    fn paper(&self, subject: SubjectId, paper: &PaperContent, written: Millis) -> Result<(), BookError> {
        self.connection.prepare_cached(include_str!("paper_insert.sql"))?.execute(params![
            self.book().0,
            subject.0,
            paper.photo.0,
            paper.width,
            paper.height,
            written,
            paper.whole.map(|hash| hash.0),
            paper.page.map(|page| page.document.0),
            paper.page.map(|page| page.number),
        ])?;
        let sql = "INSERT OR IGNORE INTO kept (book, subject, hash) VALUES (?1, ?2, ?3)";
        let mut kept = self.connection.prepare_cached(sql)?;
        for hash in paper.kept() {
            kept.execute(params![self.book().0, subject.0, hash.0])?;
        }
        Ok(())
    }
}

/// The day that the content names, else the day on which the line was written.
fn named_day(content: &Content, written: Millis) -> i64 {
    let written = i64::try_from(written / MILLIS_A_DAY).unwrap_or(0);
    content.day().map_or(written, |day| i64::from(day.epoch()))
}

/// The status of the odometer, where the content is a reading; that of a visit, a trouble or a handover says
/// what the instrument shows.
fn status(content: &Content) -> Option<u8> {
    let status = match content {
        Content::Reading(reading) => reading.status,
        Content::Visit(_) | Content::Trouble(_) | Content::Handover(_) if content.shown().is_some() => {
            OdometerStatus::Actual
        }
        _ => return None,
    };
    Some(status_number(status))
}
