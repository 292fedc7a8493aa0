//! What an entry says, and its CBOR form.
//!
//! Every content is a map with small integer keys. A key is never given another meaning; a new one may
//! be added, and a reader passes over keys that it does not know.

mod paper;
mod plan;
mod reading;
mod vehicle;
mod visit;

use units::cbor::{Cbor, CborError, CborValue};
use units::{Day, Distance};

pub use paper::PaperContent;
pub use plan::PlanContent;
pub use reading::{Fill, Fuel, InstrumentContent, ReadingContent};
pub(crate) use reading::{status_from, status_number};
pub use vehicle::VehicleContent;
pub use visit::{By, PartContent, VisitContent};

/// What a line of the book says.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Content {
    /// What is known of the vehicle.
    Vehicle(VehicleContent),
    /// A reading, with or without fuel.
    Reading(ReadingContent),
    /// A new instrument.
    Instrument(InstrumentContent),
    /// A visit.
    Visit(VisitContent),
    /// A paper.
    Paper(PaperContent),
    /// A change of the plan.
    Plan(PlanContent),
}

/// The number of a kind of content, in entries and in pages.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum ContentKind {
    /// [`Content::Vehicle`].
    Vehicle,
    /// [`Content::Reading`].
    Reading,
    /// [`Content::Instrument`].
    Instrument,
    /// [`Content::Visit`].
    Visit,
    /// [`Content::Paper`].
    Paper,
    /// [`Content::Plan`].
    Plan,
}

// The numbers are those of the entry kinds that write such a content first.
units::cbor_numbers!(ContentKind { Vehicle = 1, Reading = 3, Instrument = 4, Visit = 5, Paper = 6, Plan = 9 });

impl Content {
    /// Which kind it is.
    pub fn kind(&self) -> ContentKind {
        match self {
            Content::Vehicle(_) => ContentKind::Vehicle,
            Content::Reading(_) => ContentKind::Reading,
            Content::Instrument(_) => ContentKind::Instrument,
            Content::Visit(_) => ContentKind::Visit,
            Content::Paper(_) => ContentKind::Paper,
            Content::Plan(_) => ContentKind::Plan,
        }
    }

    /// The day that it names; a vehicle, a paper and a change of the plan name none.
    pub fn day(&self) -> Option<Day> {
        match self {
            Content::Reading(reading) => Some(reading.day),
            Content::Instrument(instrument) => Some(instrument.day),
            Content::Visit(visit) => Some(visit.day),
            Content::Vehicle(_) | Content::Paper(_) | Content::Plan(_) => None,
        }
    }

    /// What the instrument showed.
    pub fn shown(&self) -> Option<Distance> {
        match self {
            Content::Reading(reading) => Some(reading.shown),
            Content::Instrument(instrument) => Some(instrument.new),
            Content::Visit(visit) => visit.shown,
            Content::Vehicle(_) | Content::Paper(_) | Content::Plan(_) => None,
        }
    }

    /// Its CBOR form, without its kind.
    pub fn to_cbor(&self) -> CborValue {
        match self {
            Content::Vehicle(content) => content.to_cbor(),
            Content::Reading(content) => content.to_cbor(),
            Content::Instrument(content) => content.to_cbor(),
            Content::Visit(content) => content.to_cbor(),
            Content::Paper(content) => content.to_cbor(),
            Content::Plan(content) => content.to_cbor(),
        }
    }

    /// Reads a content of this kind.
    pub fn from_cbor(kind: ContentKind, value: &CborValue) -> Result<Content, CborError> {
        Ok(match kind {
            ContentKind::Vehicle => Content::Vehicle(Cbor::from_cbor(value)?),
            ContentKind::Reading => Content::Reading(Cbor::from_cbor(value)?),
            ContentKind::Instrument => Content::Instrument(Cbor::from_cbor(value)?),
            ContentKind::Visit => Content::Visit(Cbor::from_cbor(value)?),
            ContentKind::Paper => Content::Paper(Cbor::from_cbor(value)?),
            ContentKind::Plan => Content::Plan(Cbor::from_cbor(value)?),
        })
    }
}
