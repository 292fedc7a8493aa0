//! Something was wrong with the car: what the owner noticed, what was read and looked at, and how it ended.

use units::cbor::{Cbor, CborError, CborValue, MapReader, MapWriter};
use units::{Day, Distance, SubjectId};

use super::vehicle::some_text;

/// A trouble as far as it is known. While it lasts it is amended with every scan and every answer.
///
/// Keys are those of the tables of the rules; one that this version does not know is kept.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct TroubleContent {
    /// The day on which it was noticed.
    pub day: Day,
    /// What the instrument showed then.
    pub shown: Option<Distance>,
    /// The complaint in the owner's own words; may be empty.
    pub words: String,
    /// When it happens, in the owner's own words; may be empty.
    pub when: String,
    /// The keys of the symptoms that show.
    pub symptoms: Vec<String>,
    /// The keys of the symptoms that were asked about and do not show.
    pub absent: Vec<String>,
    /// What scan tools said, in the order in which it was read.
    pub scans: Vec<ScanContent>,
    /// What the checks said, in the order in which they were made.
    pub answers: Vec<AnswerContent>,
    /// What is asked of a workshop, in the owner's own words; may be empty.
    pub asked: String,
    /// How it ended; nothing while it has not.
    pub end: Option<EndContent>,
}

/// What a scan tool said.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ScanContent {
    /// The day on which it was read.
    pub day: Day,
    /// What the instrument showed then.
    pub shown: Option<Distance>,
    /// Its text, as it was pasted; may be empty when the codes were only cleared.
    pub text: String,
    /// The codes were cleared after it was read.
    pub cleared: bool,
}

/// A check that was made, or tried.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct AnswerContent {
    /// Its key.
    pub check: String,
    /// What it said.
    pub said: Said,
}

/// What a check said.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Said {
    /// Something is wrong there.
    Found,
    /// Nothing is wrong there, as far as could be seen.
    NotFound,
    /// It could not be made.
    Skipped,
}

/// How a trouble ended.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct EndContent {
    /// The day.
    pub day: Day,
    /// The visit that ended it; nothing where it went without one.
    pub visit: Option<SubjectId>,
    /// The key of what was the cause; may be empty.
    pub cause: String,
}

units::cbor_numbers!(Said { Found = 0, NotFound = 1, Skipped = 2 });

impl Cbor for TroubleContent {
    fn to_cbor(&self) -> CborValue {
        MapWriter::new()
            .put(1, &self.day)
            .put_some(2, self.shown.as_ref())
            .put_some(3, some_text(&self.words))
            .put_some(4, some_text(&self.when))
            .put_list(5, &self.symptoms)
            .put_list(6, &self.absent)
            .put_list(7, &self.scans)
            .put_list(8, &self.answers)
            .put_some(9, some_text(&self.asked))
            .put_some(10, self.end.as_ref())
            .finish()
    }

    fn from_cbor(value: &CborValue) -> Result<TroubleContent, CborError> {
        let map = MapReader::new(value)?;
        Ok(TroubleContent {
            day: map.need(1)?,
            shown: map.get(2)?,
            words: map.get(3)?.unwrap_or_default(),
            when: map.get(4)?.unwrap_or_default(),
            symptoms: map.list(5)?,
            absent: map.list(6)?,
            scans: map.list(7)?,
            answers: map.list(8)?,
            asked: map.get(9)?.unwrap_or_default(),
            end: map.get(10)?,
        })
    }
}

impl Cbor for ScanContent {
    fn to_cbor(&self) -> CborValue {
        MapWriter::new()
            .put(1, &self.day)
            .put_some(2, self.shown.as_ref())
            .put_some(3, some_text(&self.text))
            .put_some(4, self.cleared.then_some(&true))
            .finish()
    }

    fn from_cbor(value: &CborValue) -> Result<ScanContent, CborError> {
        let map = MapReader::new(value)?;
        Ok(ScanContent {
            day: map.need(1)?,
            shown: map.get(2)?,
            text: map.get(3)?.unwrap_or_default(),
            cleared: map.get(4)?.unwrap_or(false),
        })
    }
}

impl Cbor for AnswerContent {
    fn to_cbor(&self) -> CborValue {
        MapWriter::new().put(1, &self.check).put(2, &self.said).finish()
    }

    fn from_cbor(value: &CborValue) -> Result<AnswerContent, CborError> {
        let map = MapReader::new(value)?;
        Ok(AnswerContent { check: map.need(1)?, said: map.need(2)? })
    }
}

impl Cbor for EndContent {
    fn to_cbor(&self) -> CborValue {
        MapWriter::new()
            .put(1, &self.day)
            .put_some(2, self.visit.as_ref())
            .put_some(3, some_text(&self.cause))
            .finish()
    }

    fn from_cbor(value: &CborValue) -> Result<EndContent, CborError> {
        let map = MapReader::new(value)?;
        Ok(EndContent { day: map.need(1)?, visit: map.get(2)?, cause: map.get(3)?.unwrap_or_default() })
    }
}
