//! The book goes to the next owner.

use units::cbor::{Cbor, CborError, CborValue, MapReader, MapWriter};
use units::{Day, Distance, Hash, WriterKey};

use super::vehicle::some_text;

/// A book handed over. From this line on the device that wrote it writes no more, until it takes the line back.
///
/// The entry is signed like any other, so it vouches for the chain of its own writer through the hash of the entry
/// before it, and for the chains of all others through [`HandoverContent::ends`]: whoever cuts one of them short later
/// is found out by any copy that has this line.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct HandoverContent {
    /// The day of the handover.
    pub day: Day,
    /// What the instrument showed, if someone read it.
    pub shown: Option<Distance>,
    /// To the next owner, in the owner's words; may be empty.
    pub words: String,
    /// The photos and documents of the papers went with the book.
    pub papers: bool,
    /// Where the chains of the other writers ended, in ascending order of their keys.
    pub ends: Vec<ChainEnd>,
}

/// The last entry of a writer's chain.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct ChainEnd {
    /// Whose chain.
    pub writer: WriterKey,
    /// The number of its last entry, from 0.
    pub number: u64,
    /// The hash of that entry.
    pub hash: Hash,
}

impl Cbor for HandoverContent {
    fn to_cbor(&self) -> CborValue {
        MapWriter::new()
            .put(1, &self.day)
            .put_some(2, self.shown.as_ref())
            .put_some(3, some_text(&self.words))
            .put(4, &self.papers)
            .put_list(5, &self.ends)
            .finish()
    }

    fn from_cbor(value: &CborValue) -> Result<HandoverContent, CborError> {
        let map = MapReader::new(value)?;
        Ok(HandoverContent {
            day: map.need(1)?,
            shown: map.get(2)?,
            words: map.get(3)?.unwrap_or_default(),
            papers: map.need(4)?,
            ends: map.list(5)?,
        })
    }
}

/// `[writer, number, hash]`.
impl Cbor for ChainEnd {
    fn to_cbor(&self) -> CborValue {
        CborValue::Array(vec![self.writer.to_cbor(), self.number.to_cbor(), self.hash.to_cbor()])
    }

    fn from_cbor(value: &CborValue) -> Result<ChainEnd, CborError> {
        let [writer, number, hash] = value.as_array().ok_or(CborError::Type)?.as_slice() else {
            return Err(CborError::Type);
        };
        Ok(ChainEnd {
            writer: Cbor::from_cbor(writer)?,
            number: Cbor::from_cbor(number)?,
            hash: Cbor::from_cbor(hash)?,
        })
    }
}
