//! A paper: a receipt or another document, by its photo.

use units::Hash;
use units::cbor::{Cbor, CborError, CborValue, MapReader, MapWriter};

/// A photographed paper, or a page of a document.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PaperContent {
    /// The SHA-256 of the photo as it is kept.
    pub photo: Hash,
    /// Its width in pixels.
    pub width: u32,
    /// Its height in pixels.
    pub height: u32,
    /// The SHA-256 of the photo before the paper on it was straightened and cut out, where that was done.
    pub whole: Option<Hash>,
    /// The document of which the photo is a page.
    pub page: Option<PageContent>,
}

/// A page of a document that is kept as it came.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct PageContent {
    /// The SHA-256 of the document.
    pub document: Hash,
    /// Which page, from 1.
    pub number: u32,
}

impl PaperContent {
    /// Everything that is kept for it: the photo, the whole photo, the document.
    pub fn kept(&self) -> impl Iterator<Item = Hash> + use<> {
        let document = self.page.map(|page| page.document);
        [Some(self.photo), self.whole, document].into_iter().flatten()
    }
}

impl Cbor for PaperContent {
    fn to_cbor(&self) -> CborValue {
        MapWriter::new()
            .put(1, &self.photo)
            .put(2, &self.width)
            .put(3, &self.height)
            .put_some(4, self.whole.as_ref())
            .put_some(5, self.page.as_ref())
            .finish()
    }

    fn from_cbor(value: &CborValue) -> Result<PaperContent, CborError> {
        let map = MapReader::new(value)?;
        Ok(PaperContent {
            photo: map.need(1)?,
            width: map.need(2)?,
            height: map.need(3)?,
            whole: map.get(4)?,
            page: map.get(5)?,
        })
    }
}

impl Cbor for PageContent {
    fn to_cbor(&self) -> CborValue {
        MapWriter::new().put(1, &self.document).put(2, &self.number).finish()
    }

    fn from_cbor(value: &CborValue) -> Result<PageContent, CborError> {
        let map = MapReader::new(value)?;
        Ok(PageContent { document: map.need(1)?, number: map.need(2)? })
    }
}
