//! Readings and replaced instruments.

use rules::running::{Instrument, OdometerStatus, Reading};
use units::cbor::{Cbor, CborError, CborValue, MapReader, MapWriter};
use units::{Day, Distance, SubjectId};

use super::Fuel;

/// A look at the odometer.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ReadingContent {
    /// When.
    pub day: Day,
    /// What the instrument showed.
    pub shown: Distance,
    /// What the owner says of it.
    pub status: OdometerStatus,
    /// Fuel taken at it.
    pub fuel: Option<Fuel>,
    /// The papers that belong to it.
    pub papers: Vec<SubjectId>,
}

/// A new instrument in the old one's place.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct InstrumentContent {
    /// When.
    pub day: Day,
    /// What the old one showed last.
    pub old: Distance,
    /// What the new one showed first.
    pub new: Distance,
}

impl ReadingContent {
    /// What the rules need to know of it.
    pub fn facts(&self) -> Reading {
        Reading { day: self.day, shown: self.shown, status: self.status }
    }
}

impl InstrumentContent {
    /// What the rules need to know of it.
    pub fn facts(&self) -> Instrument {
        Instrument { day: self.day, old: self.old, new: self.new }
    }
}

/// The number of a status in entries and pages: 0 actual, 1 exceeds mechanical limits, 2 not actual.
pub(crate) const fn status_number(status: OdometerStatus) -> u8 {
    match status {
        OdometerStatus::Actual => 0,
        OdometerStatus::ExceedsMechanicalLimits => 1,
        OdometerStatus::NotActual => 2,
    }
}

/// The status with this number.
pub(crate) const fn status_from(number: u8) -> Option<OdometerStatus> {
    match number {
        0 => Some(OdometerStatus::Actual),
        1 => Some(OdometerStatus::ExceedsMechanicalLimits),
        2 => Some(OdometerStatus::NotActual),
        _ => None,
    }
}

impl Cbor for ReadingContent {
    fn to_cbor(&self) -> CborValue {
        MapWriter::new()
            .put(1, &self.day)
            .put(2, &self.shown)
            .put(3, &status_number(self.status))
            .put_some(4, self.fuel.as_ref())
            .put_list(5, &self.papers)
            .finish()
    }

    fn from_cbor(value: &CborValue) -> Result<ReadingContent, CborError> {
        let map = MapReader::new(value)?;
        Ok(ReadingContent {
            day: map.need(1)?,
            shown: map.need(2)?,
            status: status_from(map.need(3)?).ok_or(CborError::Wrong(3))?,
            fuel: map.get(4)?,
            papers: map.list(5)?,
        })
    }
}

impl Cbor for InstrumentContent {
    fn to_cbor(&self) -> CborValue {
        MapWriter::new().put(1, &self.day).put(2, &self.old).put(3, &self.new).finish()
    }

    fn from_cbor(value: &CborValue) -> Result<InstrumentContent, CborError> {
        let map = MapReader::new(value)?;
        Ok(InstrumentContent { day: map.need(1)?, old: map.need(2)?, new: map.need(3)? })
    }
}
