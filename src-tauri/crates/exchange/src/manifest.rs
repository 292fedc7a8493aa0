//! The manifest: what the rest of the file holds.

use paper::Kept;
use units::cbor::{self, Cbor, CborError, CborValue, MapReader, MapWriter};
use units::{BookId, Hash};

use crate::bounds::{MOST_ENTRIES, MOST_ENTRIES_BYTES, MOST_PAPERS, MOST_PHOTO_BYTES};
use crate::{ExchangeError, What};

/// The version of the format.
const VERSION: u64 = 1;

pub(crate) const MANIFEST: &str = "manifest.cbor";
pub(crate) const ENTRIES: &str = "entries.cbor";

/// What a file holds.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Manifest {
    pub book: BookId,
    pub entries: u64,
    pub entries_bytes: u64,
    pub photos: Vec<Listed>,
    pub documents: Vec<Listed>,
}

/// A photo or a document.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) struct Listed {
    pub hash: Hash,
    pub bytes: u64,
}

impl Manifest {
    pub fn to_bytes(&self) -> Vec<u8> {
        let map = MapWriter::new()
            .put(1, &VERSION)
            .put(2, &self.book)
            .put(3, &self.entries)
            .put(4, &self.entries_bytes)
            .put(5, &self.photos)
            .put(6, &self.documents);
        cbor::encode(&map.finish())
    }

    pub fn from_bytes(bytes: &[u8]) -> Result<Manifest, ExchangeError> {
        let value = cbor::decode(bytes)?;
        let map = MapReader::new(&value)?;
        // A newer version may have another meaning for everything but this.
        match map.need(1)? {
            VERSION => {}
            version if version > VERSION => return Err(ExchangeError::Newer(version)),
            _ => return Err(CborError::Wrong(1).into()),
        }
        let manifest = Manifest {
            book: map.need(2)?,
            entries: map.need(3)?,
            entries_bytes: map.need(4)?,
            photos: map.need(5)?,
            documents: map.need(6)?,
        };
        manifest.check()?;
        Ok(manifest)
    }

    /// Holds the manifest against the bounds, in writing and in reading alike.
    pub fn check(&self) -> Result<(), ExchangeError> {
        let within = |count: u64, most: u64, what: What| {
            if count > most { Err(ExchangeError::TooMuch { what, most }) } else { Ok(()) }
        };
        within(self.entries, MOST_ENTRIES, What::Entries)?;
        within(self.entries_bytes, MOST_ENTRIES_BYTES, What::EntryBytes)?;
        for (kept, list) in [(Kept::Photo, &self.photos), (Kept::Document, &self.documents)] {
            within(list.len() as u64, MOST_PAPERS as u64, What::Papers)?;
            list.iter().try_for_each(|listed| within(listed.bytes, most_bytes(kept), What::PaperBytes))?;
            if !list.is_sorted_by(|one, other| one.hash < other.hash) {
                return Err(ExchangeError::damaged("its papers are not in ascending order"));
            }
        }
        Ok(())
    }

    /// The papers in the order in which they stand in the file.
    pub fn papers(&self) -> impl Iterator<Item = (Kept, Listed)> {
        let photos = self.photos.iter().map(|listed| (Kept::Photo, *listed));
        photos.chain(self.documents.iter().map(|listed| (Kept::Document, *listed)))
    }
}

/// The name under which a photo or a document stands in the archive.
pub(crate) fn member_name(kept: Kept, hash: Hash) -> String {
    match kept {
        Kept::Photo => format!("photos/{hash}.jpg"),
        Kept::Document => format!("documents/{hash}.pdf"),
    }
}

const fn most_bytes(kept: Kept) -> u64 {
    match kept {
        Kept::Photo => MOST_PHOTO_BYTES,
        Kept::Document => paper::MAX_FILE_BYTES,
    }
}

/// `[hash, bytes]`.
impl Cbor for Listed {
    fn to_cbor(&self) -> CborValue {
        CborValue::Array(vec![self.hash.to_cbor(), self.bytes.to_cbor()])
    }

    fn from_cbor(value: &CborValue) -> Result<Listed, CborError> {
        let [hash, bytes] = value.as_array().ok_or(CborError::Type)?.as_slice() else {
            return Err(CborError::Type);
        };
        Ok(Listed { hash: Cbor::from_cbor(hash)?, bytes: Cbor::from_cbor(bytes)? })
    }
}
