//! Reading a file: all of it once, before anything is written.

use std::fs::File;
use std::io::{BufRead, BufReader, Read, Seek, SeekFrom};

use book::entry::{Entry, Signed};
use paper::{Kept, PhotoStore};
use sha2::{Digest, Sha256};
use tar::{Archive, Entries, EntryType};
use units::cbor::{self, Cbor, CborValue};
use units::{BookId, Hash};

use crate::bounds::{MOST_ENTRY_BYTES, MOST_MANIFEST_BYTES};
use crate::kept::{Named, named};
use crate::lock::{HEAD, Passphrase, unlock};
use crate::manifest::{ENTRIES, Listed, MANIFEST, Manifest, member_name};
use crate::{ExchangeError, What};

trait ReadSeek: Read + Seek + Send {}
impl<T: Read + Seek + Send> ReadSeek for T {}

/// A file that was read through: its form is right, its entries belong to one book, and its photos have the bytes of
/// their names. Signatures and chains are for the shelf to verify.
pub struct Parcel {
    input: Box<dyn ReadSeek>,
    manifest: Manifest,
    entries: Vec<Signed>,
}

impl std::fmt::Debug for Parcel {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Parcel").field("manifest", &self.manifest).finish_non_exhaustive()
    }
}

impl Parcel {
    /// Reads a file through. A passphrase that it does not need is passed over.
    pub fn open(file: File, passphrase: Option<&Passphrase>) -> Result<Parcel, ExchangeError> {
        let mut input = BufReader::new(file);
        let locked = input.fill_buf().map_err(ExchangeError::reading)?.starts_with(HEAD);
        let mut input: Box<dyn ReadSeek> = if locked {
            Box::new(unlock(passphrase.ok_or(ExchangeError::Locked)?, input)?)
        } else {
            Box::new(input)
        };
        let (manifest, entries) = read_through(&mut input, locked)?;
        Ok(Parcel { input, manifest, entries })
    }

    /// The book.
    pub fn book(&self) -> BookId {
        self.manifest.book
    }

    /// Its entries, as they stand in the file.
    pub fn entries(&self) -> &[Signed] {
        &self.entries
    }

    /// Keeps the photos and documents of the file in a store; answers how many were new there.
    ///
    /// When one can not be kept, those that were new are taken away again.
    pub fn keep_papers(&mut self, store: &PhotoStore) -> Result<usize, ExchangeError> {
        let mut new = Vec::new();
        let kept = self.copy_papers(store, &mut new);
        if kept.is_err() {
            for (kept, hash) in &new {
                // What can not be deleted takes up room and is named by nothing.
                let _ = store.remove_kept(*kept, *hash);
            }
        }
        kept.map(|()| new.len())
    }

    fn copy_papers(&mut self, store: &PhotoStore, new: &mut Vec<(Kept, Hash)>) -> Result<(), ExchangeError> {
        self.input.seek(SeekFrom::Start(0)).map_err(ExchangeError::reading)?;
        let mut archive = Archive::new(&mut self.input);
        let mut members = Members(archive.entries().map_err(ExchangeError::reading)?.raw(true));
        // Both were read before.
        members.next(MANIFEST, None, |_| Ok(()))?;
        members.next(ENTRIES, Some(self.manifest.entries_bytes), |_| Ok(()))?;
        for (kept, listed) in self.manifest.papers() {
            let name = member_name(kept, listed.hash);
            let bytes = members.next(&name, Some(listed.bytes), |input| whole(input, listed.bytes))?;
            if store.keep_sent(kept, listed.hash, &bytes)? {
                new.push((kept, listed.hash));
            }
        }
        Ok(())
    }
}

/// Reads everything once and holds all of it against the manifest.
fn read_through(input: &mut dyn ReadSeek, locked: bool) -> Result<(Manifest, Vec<Signed>), ExchangeError> {
    let (manifest, entries) = {
        let mut archive = Archive::new(&mut *input);
        let mut members = Members(archive.entries().map_err(ExchangeError::reading)?.raw(true));
        let manifest = first(&mut members, locked)?;
        let size = manifest.entries_bytes;
        let sequence = members.next(ENTRIES, Some(size), |input| whole(input, size))?;
        let (entries, named) = entries_of(&manifest, &sequence)?;
        for (kept, listed) in manifest.papers() {
            if !named.contains(&(kept, listed.hash)) {
                return Err(ExchangeError::Unnamed(listed.hash));
            }
            let name = member_name(kept, listed.hash);
            members.next(&name, Some(listed.bytes), |input| has_name(input, listed))?;
        }
        members.end()?;
        (manifest, entries)
    };
    only_zeros(input)?;
    Ok((manifest, entries))
}

/// The members of an archive, each of which has to be the one that is expected.
struct Members<'a, R: Read>(Entries<'a, R>);

impl<R: Read> Members<'_, R> {
    /// Takes the next member, which has this name and length, and does something with its bytes.
    fn next<T>(
        &mut self,
        name: &str,
        bytes: Option<u64>,
        read: impl FnOnce(&mut dyn Read) -> Result<T, ExchangeError>,
    ) -> Result<T, ExchangeError> {
        let mut member = self.0.next().ok_or(ExchangeError::CutShort)?.map_err(ExchangeError::reading)?;
        let is_expected = member.header().entry_type() == EntryType::Regular
            && member.path_bytes() == name.as_bytes()
            && bytes.is_none_or(|bytes| member.size() == bytes);
        if !is_expected {
            return Err(ExchangeError::Damaged(format!("'{name}' is not where it belongs")));
        }
        read(&mut member)
    }

    fn end(&mut self) -> Result<(), ExchangeError> {
        match self.0.next() {
            None => Ok(()),
            Some(Ok(_)) => Err(ExchangeError::damaged("there is more in it than it says")),
            Some(Err(error)) => Err(ExchangeError::reading(error)),
        }
    }
}

/// The manifest, by which a file of this kind is told from all others. What was locked has no bytes of another kind: if
/// they can not be read, they are damaged.
fn first<R: Read>(members: &mut Members<'_, R>, locked: bool) -> Result<Manifest, ExchangeError> {
    let member = members.0.next().ok_or(ExchangeError::OtherFile)?;
    let mut member = member.map_err(|error| match ExchangeError::reading(error) {
        ExchangeError::CutShort | ExchangeError::Damaged(_) if !locked => ExchangeError::OtherFile,
        other => other,
    })?;
    if member.path_bytes() != MANIFEST.as_bytes() || member.header().entry_type() != EntryType::Regular {
        return Err(ExchangeError::OtherFile);
    }
    let size = member.size();
    if size > MOST_MANIFEST_BYTES {
        return Err(ExchangeError::damaged("its manifest is too large"));
    }
    Manifest::from_bytes(&whole(&mut member, size)?)
}

fn whole(input: &mut dyn Read, bytes: u64) -> Result<Vec<u8>, ExchangeError> {
    let mut read = Vec::new();
    input.take(bytes).read_to_end(&mut read).map_err(ExchangeError::reading)?;
    if read.len() as u64 == bytes { Ok(read) } else { Err(ExchangeError::CutShort) }
}

fn has_name(input: &mut dyn Read, listed: Listed) -> Result<(), ExchangeError> {
    let (mut hash, mut length) = (Sha256::new(), 0);
    let mut buffer = vec![0; 64 * 1024];
    loop {
        let read = input.read(&mut buffer).map_err(ExchangeError::reading)?;
        if read == 0 {
            break;
        }
        hash.update(&buffer[..read]);
        length += read as u64;
    }
    if length < listed.bytes {
        return Err(ExchangeError::CutShort);
    }
    if Hash(hash.finalize().into()) == listed.hash {
        Ok(())
    } else {
        Err(ExchangeError::Changed(listed.hash))
    }
}

/// An archive ends in zeros. Reading on to the end also has a locked file say whether it is all there.
fn only_zeros(input: &mut dyn ReadSeek) -> Result<(), ExchangeError> {
    let mut buffer = vec![0; 64 * 1024];
    loop {
        let read = input.read(&mut buffer).map_err(ExchangeError::reading)?;
        if read == 0 {
            return Ok(());
        }
        if buffer[..read].iter().any(|byte| *byte != 0) {
            return Err(ExchangeError::damaged("something follows after its end"));
        }
    }
}

/// The entries of a sequence, and what they name.
fn entries_of(manifest: &Manifest, sequence: &[u8]) -> Result<(Vec<Signed>, Named), ExchangeError> {
    let (mut entries, mut kept) = (Vec::new(), Named::new());
    let mut rest = sequence;
    while !rest.is_empty() {
        let signed = signed(&cbor::decode_next(&mut rest)?)?;
        let entry = Entry::decode(&signed.bytes)?;
        if entry.book != manifest.book {
            return Err(ExchangeError::damaged("an entry of another book stands in it"));
        }
        kept.extend(named(&entry));
        entries.push(signed);
        if entries.len() as u64 > manifest.entries {
            break;
        }
    }
    if entries.len() as u64 != manifest.entries || entries.is_empty() {
        return Err(ExchangeError::damaged("the number of its entries is another one"));
    }
    Ok((entries, kept))
}

fn signed(value: &CborValue) -> Result<Signed, ExchangeError> {
    let pair: Vec<CborValue> = Cbor::from_cbor(value)?;
    let [CborValue::Bytes(bytes), CborValue::Bytes(signature)] = pair.as_slice() else {
        return Err(ExchangeError::damaged("something stands where an entry belongs"));
    };
    if bytes.len() > MOST_ENTRY_BYTES {
        return Err(ExchangeError::TooMuch { what: What::EntryBytes, most: MOST_ENTRY_BYTES as u64 });
    }
    let signature = signature.as_slice().try_into();
    let signature = signature.map_err(|_| ExchangeError::damaged("a signature has another length"))?;
    Ok(Signed { bytes: bytes.clone(), signature })
}
