//! The troubles of one car, and what its book tells about a new one.

use std::collections::BTreeSet;

use book::content::{Content, ContentKind, Said, TroubleContent};
use rules::parts::Moment;
use rules::trouble::codes::{self, Code, Codes, Dated, Life, Scan};
use rules::trouble::{Answer, Answered, CodeSign, Complaint, Worked};
use rules::upkeep::{ItemRef, State};
use units::{BookId, Day, Distance, SubjectId};

use crate::car::Car;
use crate::{Door, HereForm, Refusal};

/// For how many days work that was done still says something of a trouble: what was renewed within a year is hardly
/// at fault again.
const WORK_DAYS: u32 = 365;

/// A trouble that counts, and its line.
pub(crate) struct TroubleRow {
    pub subject: SubjectId,
    pub content: TroubleContent,
}

/// A scan of the book, read.
pub(crate) struct ReadScan {
    at: Moment,
    scan: Scan,
    cleared: bool,
}

/// Codes that were cleared at once.
pub(crate) struct Clearing {
    /// The trouble's line.
    pub subject: SubjectId,
    pub day: Day,
    /// Those that the scan before it had, each once; none where it was not written down.
    pub codes: BTreeSet<Code>,
}

impl Door {
    /// The troubles that count, oldest first.
    pub(crate) fn troubles(&self, book: BookId) -> Result<Vec<TroubleRow>, Refusal> {
        let lines = self.shelf.lines_of(book, ContentKind::Trouble)?;
        let rows = lines.into_iter().filter_map(|line| match line.content {
            Content::Trouble(content) => Some(TroubleRow { subject: line.subject, content }),
            _ => None,
        });
        let mut rows: Vec<_> = rows.collect();
        rows.sort_by_key(|row| row.content.day);
        Ok(rows)
    }

    /// One trouble that counts.
    pub(crate) fn trouble_row(&self, book: BookId, subject: SubjectId) -> Result<TroubleRow, Refusal> {
        let line = self.shelf.line(book, subject)?;
        match line.content {
            _ if line.struck.is_some() => Err(Refusal::new("struck").at("subject")),
            Content::Trouble(content) => Ok(TroubleRow { subject, content }),
            _ => Err(Refusal::new("other-kind").at("subject")),
        }
    }
}

/// Every scan of these troubles, read, in the order of the troubles.
pub(crate) fn read_scans(troubles: &[TroubleRow], car: &Car) -> Vec<ReadScan> {
    let scans = troubles.iter().flat_map(|row| &row.content.scans);
    let read = scans.map(|scan| ReadScan {
        at: Moment {
            day: scan.day,
            travelled: scan.shown.and_then(|shown| car.track.counted(scan.day, shown)),
        },
        scan: codes::read(&scan.text),
        cleared: scan.cleared,
    });
    read.collect()
}

/// When codes were cleared, in the order of the troubles.
pub(crate) fn clearings(troubles: &[TroubleRow]) -> Vec<Clearing> {
    let scans = troubles.iter().flat_map(|row| row.content.scans.iter().map(|scan| (row.subject, scan)));
    let cleared = scans.filter(|(_, scan)| scan.cleared).map(|(subject, scan)| Clearing {
        subject,
        day: scan.day,
        codes: codes_in(&codes::read(&scan.text)).collect(),
    });
    cleared.collect()
}

/// Every code of these scans, each once, in ascending order.
pub(crate) fn codes_of(scans: &[ReadScan]) -> BTreeSet<Code> {
    scans.iter().flat_map(|read| codes_in(&read.scan)).collect()
}

fn codes_in(scan: &Scan) -> impl Iterator<Item = Code> {
    scan.codes.iter().map(|reported| reported.code)
}

/// The life of a code in these scans.
pub(crate) fn life_of(code: Code, scans: &[ReadScan]) -> Option<Life> {
    let dated: Vec<_> =
        scans.iter().map(|read| Dated { at: read.at, scan: &read.scan, cleared: read.cleared }).collect();
    codes::life(&codes::events(code, &dated))
}

/// What is known of a trouble and of the car that has it.
pub(crate) fn complaint<'a>(
    trouble: &TroubleContent,
    scans: &[Scan],
    before: Vec<String>,
    here: &HereForm,
    car: &'a Car,
    today: Day,
) -> Result<Complaint<'a>, Refusal> {
    let answers =
        trouble.answers.iter().map(|row| Answered { check: row.check.clone(), answer: answer(row.said) });
    Ok(Complaint {
        distance: distance(car, today),
        shown: trouble.symptoms.clone(),
        absent: trouble.absent.clone(),
        codes: signs(scans)?,
        overdue: overdue(car, today),
        worked: worked(car, today),
        before,
        answers: answers.collect(),
        owned: here.owned.iter().cloned().collect(),
        lacking: here.lacking.iter().cloned().collect(),
        at_night: here.at_night,
        ..Complaint::of(&car.vehicle, today)
    })
}

/// The keys of the causes of the troubles that ended, but not of this one.
pub(crate) fn causes_before(troubles: &[TroubleRow], but: Option<SubjectId>) -> Vec<String> {
    let others = troubles.iter().filter(|row| Some(row.subject) != but);
    let ended = others.filter_map(|row| row.content.end.as_ref());
    ended.map(|end| end.cause.clone()).filter(|cause| !cause.is_empty()).collect()
}

/// The codes of which the table has something to say, each once.
fn signs(scans: &[Scan]) -> Result<Vec<CodeSign>, Refusal> {
    let table = Codes::shipped()?;
    let codes: BTreeSet<Code> =
        scans.iter().flat_map(|scan| scan.codes.iter().map(|reported| reported.code)).collect();
    Ok(codes.into_iter().filter_map(|code| table.get(code)).map(CodeSign::of).collect())
}

const fn answer(said: Said) -> Answer {
    match said {
        Said::Found => Answer::Found,
        Said::NotFound => Answer::NotFound,
        Said::Skipped => Answer::Skipped,
    }
}

/// How far the car has gone by today: as estimated, or by the last reading.
fn distance(car: &Car, today: Day) -> Option<Distance> {
    let likely = car.pace.on(today).map(|estimate| estimate.likely);
    let travelled = likely.or_else(|| car.track.points().last().map(|point| point.travelled));
    travelled.map(|travelled| travelled.0)
}

fn overdue(car: &Car, today: Day) -> Vec<u32> {
    let lines = car.due(today).into_iter().filter(|line| line.state == State::Overdue);
    lines.filter_map(|line| catalogued(&line.item)).collect()
}

fn worked(car: &Car, today: Day) -> Vec<Worked> {
    let done = car.done.iter().filter_map(|row| {
        let days = u32::try_from(today.days_since(row.day)).ok().filter(|days| *days <= WORK_DAYS)?;
        Some(Worked { item: catalogued(&row.item)?, days })
    });
    done.collect()
}

const fn catalogued(item: &ItemRef) -> Option<u32> {
    match item {
        ItemRef::Catalogue(number) => Some(*number),
        ItemRef::Own(_) => None,
    }
}
