//! What is known of a part beyond the times that it was fitted: other numbers for the same, and warnings.

use units::cbor::{Cbor, CborError, CborValue, MapReader, MapWriter};

use super::vehicle::some_text;

/// A note on a part, known by its number.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PartNoteContent {
    /// Its number, as written.
    pub number: String,
    /// Who makes it; may be empty.
    pub maker: String,
    /// The same part under other numbers.
    pub same: Vec<NumberContent>,
    /// What warns of it.
    pub mark: Option<Mark>,
    /// The number to ask for in its place; may be empty.
    pub instead: String,
    /// Anything else worth keeping.
    pub note: String,
}

/// A number and who gave it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct NumberContent {
    /// Who makes it; may be empty.
    pub maker: String,
    /// The number, as written.
    pub number: String,
}

/// Why a part should not be bought again.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Mark {
    /// It does not fit this car.
    Wrong,
    /// Its maker has put another number in its place.
    Superseded,
}

units::cbor_numbers!(Mark { Wrong = 0, Superseded = 1 });

impl Cbor for PartNoteContent {
    fn to_cbor(&self) -> CborValue {
        MapWriter::new()
            .put(1, &self.number)
            .put_some(2, some_text(&self.maker))
            .put_list(3, &self.same)
            .put_some(4, self.mark.as_ref())
            .put_some(5, some_text(&self.instead))
            .put_some(6, some_text(&self.note))
            .finish()
    }

    fn from_cbor(value: &CborValue) -> Result<PartNoteContent, CborError> {
        let map = MapReader::new(value)?;
        Ok(PartNoteContent {
            number: map.need(1)?,
            maker: map.get(2)?.unwrap_or_default(),
            same: map.list(3)?,
            mark: map.get(4)?,
            instead: map.get(5)?.unwrap_or_default(),
            note: map.get(6)?.unwrap_or_default(),
        })
    }
}

impl Cbor for NumberContent {
    fn to_cbor(&self) -> CborValue {
        MapWriter::new().put_some(1, some_text(&self.maker)).put(2, &self.number).finish()
    }

    fn from_cbor(value: &CborValue) -> Result<NumberContent, CborError> {
        let map = MapReader::new(value)?;
        Ok(NumberContent { maker: map.get(1)?.unwrap_or_default(), number: map.need(2)? })
    }
}
