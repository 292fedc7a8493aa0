//! The body of an entry: `[kind, subject, content]`.

use units::cbor::{Cbor, CborError, CborValue, MapReader, MapWriter};
use units::{BookId, SubjectId};

use crate::content::{Content, ContentKind, HandoverContent, VehicleContent};

/// What an entry says.
#[derive(Debug, Clone, PartialEq)]
pub enum Body {
    /// Begins a line: the vehicle (kind 1), a reading (3), an instrument (4), a visit (5), a paper (6), a
    /// change of the plan (9), a purchase (10), a note on a part (11), what was measured (12), a trouble (13), a
    /// handover (14).
    Begin {
        /// The line. A vehicle has the id of its book, everything else that of the entry.
        subject: SubjectId,
        /// What it says.
        content: Content,
    },
    /// What is known of the vehicle from now on (kind 2).
    ChangeVehicle(VehicleContent),
    /// Another content in place of a line's (kind 7); what stood there stays readable.
    Amend {
        /// The line.
        subject: SubjectId,
        /// What it says from now on.
        content: Content,
        /// Why, in the owner's words; may be empty.
        why: String,
    },
    /// Strikes a line out (kind 8); it stays readable.
    StrikeOut {
        /// The line.
        subject: SubjectId,
        /// Why, in the owner's words; may be empty.
        why: String,
    },
    /// Something that this version does not know: kept, chained, merged and exported all the same.
    Newer {
        /// Its kind.
        kind: u64,
        /// What it is about.
        subject: SubjectId,
        /// What it says.
        content: CborValue,
    },
}

const VEHICLE_CHANGED: u64 = 2;
const AMENDED: u64 = 7;
const STRUCK_OUT: u64 = 8;

impl Body {
    /// The number of its kind.
    pub fn kind(&self) -> u64 {
        match self {
            Body::Begin { content, .. } => content.kind().number().into(),
            Body::ChangeVehicle(_) => VEHICLE_CHANGED,
            Body::Amend { .. } => AMENDED,
            Body::StrikeOut { .. } => STRUCK_OUT,
            Body::Newer { kind, .. } => *kind,
        }
    }

    /// Whether the writer hands the book over with it.
    pub(crate) fn hands_over(&self) -> bool {
        self.handover().is_some()
    }

    /// The handover that it begins.
    pub(crate) fn handover(&self) -> Option<&HandoverContent> {
        match self {
            Body::Begin { content: Content::Handover(handover), .. } => Some(handover),
            _ => None,
        }
    }

    pub(super) fn subject(&self, book: BookId) -> SubjectId {
        match self {
            Body::ChangeVehicle(_) => book.into(),
            Body::Begin { subject, .. }
            | Body::Amend { subject, .. }
            | Body::StrikeOut { subject, .. }
            | Body::Newer { subject, .. } => *subject,
        }
    }

    pub(super) fn to_cbor(&self, book: BookId) -> CborValue {
        let content = match self {
            Body::Begin { content, .. } => content.to_cbor(),
            Body::ChangeVehicle(vehicle) => vehicle.to_cbor(),
            Body::Amend { content, why, .. } => {
                MapWriter::new().put(1, &content.kind()).put(2, &content.to_cbor()).put(3, why).finish()
            }
            Body::StrikeOut { why, .. } => MapWriter::new().put(1, why).finish(),
            Body::Newer { content, .. } => content.clone(),
        };
        CborValue::Array(vec![self.kind().to_cbor(), self.subject(book).to_cbor(), content])
    }

    /// A kind that is not known, or a known one whose content a newer version wrote in a form that this
    /// one can not read, is kept as [`Body::Newer`].
    pub(super) fn from_cbor(value: &CborValue) -> Result<Body, CborError> {
        let [kind, subject, content] = value.as_array().ok_or(CborError::Wrong(7))?.as_slice() else {
            return Err(CborError::Wrong(7));
        };
        let kind = u64::from_cbor(kind).map_err(|_| CborError::Wrong(7))?;
        let subject = SubjectId::from_cbor(subject).map_err(|_| CborError::Wrong(7))?;
        let known = known(kind, subject, content).ok().flatten();
        Ok(known.unwrap_or_else(|| Body::Newer { kind, subject, content: content.clone() }))
    }
}

fn known(kind: u64, subject: SubjectId, content: &CborValue) -> Result<Option<Body>, CborError> {
    Ok(Some(match kind {
        VEHICLE_CHANGED => Body::ChangeVehicle(Cbor::from_cbor(content)?),
        AMENDED => {
            let map = MapReader::new(content)?;
            let inner = map.raw(2).ok_or(CborError::Missing(2))?;
            Body::Amend { subject, content: Content::from_cbor(map.need(1)?, inner)?, why: map.need(3)? }
        }
        STRUCK_OUT => Body::StrikeOut { subject, why: MapReader::new(content)?.need(1)? },
        _ => match ContentKind::from_number(kind) {
            Some(begun) => Body::Begin { subject, content: Content::from_cbor(begun, content)? },
            None => return Ok(None),
        },
    }))
}
