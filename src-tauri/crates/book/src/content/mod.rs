//! What an entry says, and its CBOR form.
//!
//! Every content is a map with small integer keys. A key is never given another meaning; a new one may
//! be added, and a reader passes over keys that it does not know.

mod bought;
mod fuel;
mod handover;
mod measured;
mod paper;
mod part_note;
mod plan;
mod reading;
mod trouble;
mod vehicle;
mod visit;

use units::cbor::{Cbor, CborError, CborValue};
use units::{Day, Distance, SubjectId};

pub use bought::BoughtContent;
pub use fuel::{Fill, Filled, Fuel, Liquid};
pub use handover::{ChainEnd, HandoverContent};
pub use measured::{Came, MeasuredContent, MeasuredValue};
pub use paper::{PageContent, PaperContent};
pub use part_note::{Mark, NumberContent, PartNoteContent};
pub use plan::PlanContent;
pub use reading::{InstrumentContent, ReadingContent};
pub(crate) use reading::{status_from, status_number};
pub use trouble::{AnswerContent, EndContent, Said, ScanContent, TroubleContent};
pub use vehicle::VehicleContent;
pub use visit::{By, FoundContent, PartContent, VisitContent};

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
    /// Parts that were bought.
    Bought(BoughtContent),
    /// A note on a part.
    PartNote(PartNoteContent),
    /// What was read off the engine's computer or a meter.
    Measured(MeasuredContent),
    /// Something was wrong.
    Trouble(TroubleContent),
    /// The book was handed over.
    Handover(HandoverContent),
}

/// Which kind of content. Its number, in entries and in pages, is that of the entry kind that writes such a
/// content first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum ContentKind {
    /// [`Content::Vehicle`].
    Vehicle = 1,
    /// [`Content::Reading`].
    Reading = 3,
    /// [`Content::Instrument`].
    Instrument = 4,
    /// [`Content::Visit`].
    Visit = 5,
    /// [`Content::Paper`].
    Paper = 6,
    /// [`Content::Plan`].
    Plan = 9,
    /// [`Content::Bought`].
    Bought = 10,
    /// [`Content::PartNote`].
    PartNote = 11,
    /// [`Content::Measured`].
    Measured = 12,
    /// [`Content::Trouble`]. 12 belongs to what is measured on the car.
    Trouble = 13,
    /// [`Content::Handover`].
    Handover = 14,
}

impl ContentKind {
    const ALL: [ContentKind; 11] = [
        ContentKind::Vehicle,
        ContentKind::Reading,
        ContentKind::Instrument,
        ContentKind::Visit,
        ContentKind::Paper,
        ContentKind::Plan,
        ContentKind::Bought,
        ContentKind::PartNote,
        ContentKind::Measured,
        ContentKind::Trouble,
        ContentKind::Handover,
    ];

    /// Its number.
    pub const fn number(self) -> u8 {
        self as u8
    }

    /// The kind with this number, if there is one.
    pub fn from_number(number: u64) -> Option<ContentKind> {
        ContentKind::ALL.into_iter().find(|kind| u64::from(kind.number()) == number)
    }
}

impl Cbor for ContentKind {
    fn to_cbor(&self) -> CborValue {
        self.number().to_cbor()
    }

    fn from_cbor(value: &CborValue) -> Result<ContentKind, CborError> {
        ContentKind::from_number(Cbor::from_cbor(value)?).ok_or(CborError::Type)
    }
}

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
            Content::Bought(_) => ContentKind::Bought,
            Content::PartNote(_) => ContentKind::PartNote,
            Content::Measured(_) => ContentKind::Measured,
            Content::Trouble(_) => ContentKind::Trouble,
            Content::Handover(_) => ContentKind::Handover,
        }
    }

    /// The day that it names; a vehicle, a paper, a change of the plan and a note on a part name none.
    pub fn day(&self) -> Option<Day> {
        match self {
            Content::Reading(reading) => Some(reading.day),
            Content::Instrument(instrument) => Some(instrument.day),
            Content::Visit(visit) => Some(visit.day),
            Content::Bought(bought) => Some(bought.day),
            Content::Measured(measured) => Some(measured.day),
            Content::Trouble(trouble) => Some(trouble.day),
            Content::Handover(handover) => Some(handover.day),
            Content::Vehicle(_) | Content::Paper(_) | Content::Plan(_) | Content::PartNote(_) => None,
        }
    }

    /// What the instrument showed.
    pub fn shown(&self) -> Option<Distance> {
        match self {
            Content::Reading(reading) => Some(reading.shown),
            Content::Instrument(instrument) => Some(instrument.new),
            Content::Visit(visit) => visit.shown,
            Content::Trouble(trouble) => trouble.shown,
            Content::Handover(handover) => handover.shown,
            Content::Vehicle(_)
            | Content::Paper(_)
            | Content::Plan(_)
            | Content::Bought(_)
            | Content::PartNote(_)
            | Content::Measured(_) => None,
        }
    }

    /// The papers that belong to it.
    pub fn papers(&self) -> &[SubjectId] {
        match self {
            Content::Reading(reading) => &reading.papers,
            Content::Visit(visit) => &visit.papers,
            Content::Bought(bought) => &bought.papers,
            Content::Vehicle(_)
            | Content::Instrument(_)
            | Content::Paper(_)
            | Content::Plan(_)
            | Content::PartNote(_)
            | Content::Measured(_)
            | Content::Trouble(_)
            | Content::Handover(_) => &[],
        }
    }

    /// The same, to be added to; `None` where no papers can belong to it.
    pub fn papers_mut(&mut self) -> Option<&mut Vec<SubjectId>> {
        match self {
            Content::Reading(reading) => Some(&mut reading.papers),
            Content::Visit(visit) => Some(&mut visit.papers),
            Content::Bought(bought) => Some(&mut bought.papers),
            Content::Vehicle(_)
            | Content::Instrument(_)
            | Content::Paper(_)
            | Content::Plan(_)
            | Content::PartNote(_)
            | Content::Measured(_)
            | Content::Trouble(_)
            | Content::Handover(_) => None,
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
            Content::Bought(content) => content.to_cbor(),
            Content::PartNote(content) => content.to_cbor(),
            Content::Measured(content) => content.to_cbor(),
            Content::Trouble(content) => content.to_cbor(),
            Content::Handover(content) => content.to_cbor(),
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
            ContentKind::Bought => Content::Bought(Cbor::from_cbor(value)?),
            ContentKind::PartNote => Content::PartNote(Cbor::from_cbor(value)?),
            ContentKind::Measured => Content::Measured(Cbor::from_cbor(value)?),
            ContentKind::Trouble => Content::Trouble(Cbor::from_cbor(value)?),
            ContentKind::Handover => Content::Handover(Cbor::from_cbor(value)?),
        })
    }
}
