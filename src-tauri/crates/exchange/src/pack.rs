//! Writing the file.

use std::io::{Read, Write};

use book::entry::Signed;
use paper::{Kept, PhotoStore};
use tar::{Builder, EntryType, Header};
use units::cbor::{self, CborValue};
use units::{BookId, Hash};

use crate::bounds::MOST_ENTRY_BYTES;
use crate::lock::{Passphrase, lock};
use crate::manifest::{ENTRIES, Listed, MANIFEST, Manifest, member_name};
use crate::{ExchangeError, What};

/// What goes into a file.
#[derive(Debug)]
pub struct Contents {
    /// The book.
    pub book: BookId,
    /// All its entries, in the order of the fold.
    pub entries: Vec<Signed>,
    /// The photos and documents that go with it; each must stand in the store, undamaged.
    pub papers: Vec<(Kept, Hash)>,
    /// Where they stand.
    pub store: PhotoStore,
}

/// Writes the file. The same contents give the same bytes, unless they are locked.
///
/// Photos and documents are copied as streams. One whose bytes no longer have its name refuses the whole; what was
/// written until then is no file.
pub fn pack(
    contents: &Contents,
    passphrase: Option<&Passphrase>,
    out: impl Write,
) -> Result<(), ExchangeError> {
    match passphrase {
        None => archive(contents, out).map(drop),
        Some(passphrase) => {
            let locked = archive(contents, lock(passphrase, out)?)?;
            locked.finish().map(drop).map_err(ExchangeError::writing)
        }
    }
}

fn archive<W: Write>(contents: &Contents, out: W) -> Result<W, ExchangeError> {
    let entries = sequence(&contents.entries)?;
    let manifest = Manifest {
        book: contents.book,
        entries: contents.entries.len() as u64,
        entries_bytes: entries.len() as u64,
        photos: listed(contents, Kept::Photo)?,
        documents: listed(contents, Kept::Document)?,
    };
    manifest.check()?;
    let mut archive = Builder::new(out);
    member(&mut archive, MANIFEST, &manifest.to_bytes())?;
    member(&mut archive, ENTRIES, &entries)?;
    for (kept, listed) in manifest.papers() {
        paper(&mut archive, &contents.store, kept, listed)?;
    }
    archive.into_inner().map_err(ExchangeError::writing)
}

fn sequence(entries: &[Signed]) -> Result<Vec<u8>, ExchangeError> {
    let mut sequence = Vec::new();
    for signed in entries {
        if signed.bytes.len() > MOST_ENTRY_BYTES {
            return Err(ExchangeError::TooMuch { what: What::EntryBytes, most: MOST_ENTRY_BYTES as u64 });
        }
        let pair = [signed.bytes.clone(), signed.signature.to_vec()].map(CborValue::Bytes);
        sequence.extend(cbor::encode(&CborValue::Array(pair.to_vec())));
    }
    Ok(sequence)
}

fn listed(contents: &Contents, wanted: Kept) -> Result<Vec<Listed>, ExchangeError> {
    let mut listed = Vec::new();
    for (kept, hash) in &contents.papers {
        if *kept == wanted {
            let (_, bytes) = contents.store.open_kept(*kept, *hash)?;
            listed.push(Listed { hash: *hash, bytes });
        }
    }
    listed.sort_unstable();
    listed.dedup();
    Ok(listed)
}

fn member<W: Write>(archive: &mut Builder<W>, name: &str, bytes: &[u8]) -> Result<(), ExchangeError> {
    archive.append(&header(name, bytes.len() as u64)?, bytes).map_err(ExchangeError::writing)
}

fn paper<W: Write>(
    archive: &mut Builder<W>,
    store: &PhotoStore,
    kept: Kept,
    listed: Listed,
) -> Result<(), ExchangeError> {
    // It was held against its name by whoever chose it, so here only its length must still be the one in the header.
    let (file, _) = store.open_kept(kept, listed.hash)?;
    let mut counted = Counted { inner: file.take(listed.bytes), count: 0 };
    let header = header(&member_name(kept, listed.hash), listed.bytes)?;
    archive.append(&header, &mut counted).map_err(ExchangeError::writing)?;
    if counted.count == listed.bytes { Ok(()) } else { Err(ExchangeError::Changed(listed.hash)) }
}

/// A reader that counts what it gives.
struct Counted<R> {
    inner: R,
    count: u64,
}

impl<R: Read> Read for Counted<R> {
    fn read(&mut self, buffer: &mut [u8]) -> std::io::Result<usize> {
        let read = self.inner.read(buffer)?;
        self.count += read as u64;
        Ok(read)
    }
}

/// The header of a plain file that says nothing of the device on which it was written.
fn header(name: &str, bytes: u64) -> Result<Header, ExchangeError> {
    let mut header = Header::new_ustar();
    header.set_path(name).map_err(ExchangeError::writing)?;
    header.set_size(bytes);
    header.set_entry_type(EntryType::Regular);
    header.set_mode(0o644);
    header.set_mtime(0);
    header.set_uid(0);
    header.set_gid(0);
    header.set_cksum();
    Ok(header)
}
