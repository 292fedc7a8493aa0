//! A paper: a receipt or another document, by its photo.

use units::Hash;
use units::cbor::{Cbor, CborError, CborValue, MapReader, MapWriter};

/// A photographed paper.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PaperContent {
    /// The SHA-256 of the photo as it is kept.
    pub photo: Hash,
    /// Its width in pixels.
    pub width: u32,
    /// Its height in pixels.
    pub height: u32,
}

impl Cbor for PaperContent {
    fn to_cbor(&self) -> CborValue {
        MapWriter::new().put(1, &self.photo).put(2, &self.width).put(3, &self.height).finish()
    }

    fn from_cbor(value: &CborValue) -> Result<PaperContent, CborError> {
        let map = MapReader::new(value)?;
        Ok(PaperContent { photo: map.need(1)?, width: map.need(2)?, height: map.need(3)? })
    }
}
