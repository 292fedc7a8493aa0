//! # exchange: one car's book, from hand to hand
//!
//! [`pack`] writes one file for the next owner, [`Parcel`] reads one. What is in it anybody can take out with standard
//! parts: age, tar, CBOR, SHA-256 and Ed25519.
//!
//! ## The file, version 1
//!
//! Outermost, where a passphrase was given, an age file (age-encryption.org/v1, binary form) with one recipient of the
//! kind `scrypt`, work factor 2^[`WORK_FACTOR`]; a reader refuses more than 2^[`MOST_WORK`]. Without a passphrase that
//! layer is not there.
//!
//! Then a tar archive (ustar of POSIX.1-1988) of plain files, no other member kind and no extension, in this order:
//!
//! | member | what |
//! | --- | --- |
//! | `manifest.cbor` | what follows, see below |
//! | `entries.cbor` | the entries, a CBOR sequence (RFC 8742) of `[bytes, signature]`, in the order (time, writer, number) |
//! | `photos/HASH.jpg` | a photo under the SHA-256 of its bytes in 64 hexadecimal digits, in ascending order |
//! | `documents/HASH.pdf` | a document, the same |
//!
//! The manifest is one map in the deterministic form (RFC 8949, section 4.2.1), and so is every item of the sequence:
//!
//! | key | what |
//! | --- | --- |
//! | 1 | the version of the format, 1; it is read before anything else is asked of the manifest |
//! | 2 | the id of the book, 16 bytes |
//! | 3 | how many entries |
//! | 4 | how many bytes `entries.cbor` has |
//! | 5 | the photos, an array of `[hash, bytes]` in ascending order |
//! | 6 | the documents, the same |
//!
//! An entry's bytes, its hash and its signature are those of the room `book`. The manifest is not signed: whatever it
//! says is held against what is there, and what is there vouches for itself.
//!
//! ## Bounds
//!
//! A reader holds in memory the manifest (at most [`MOST_MANIFEST_BYTES`]), the entries ([`MOST_ENTRIES_BYTES`] in all,
//! [`MOST_ENTRIES`] of them, each at most [`MOST_ENTRY_BYTES`]) and one photo ([`MOST_PHOTO_BYTES`]) or document
//! ([`paper::MAX_FILE_BYTES`]) at a time, of which there are at most [`MOST_PAPERS`]. No name in the archive is ever
//! used as a path: each must be the one that the manifest makes it, to the byte. A photo or document that no entry of
//! the book names is refused, and so is anything after the end. Nothing is written before all of it was read once.
//!
//! This room knows `units`, `book` and `paper`. It must never read a clock or a setting, make a key, or decide what is
//! handed over.

mod bounds;
mod error;
mod kept;
mod lock;
mod manifest;
mod pack;
mod parcel;
mod save;

#[cfg(test)]
mod tests;

pub use bounds::{
    LONGEST_PASSPHRASE, MOST_ENTRIES, MOST_ENTRIES_BYTES, MOST_ENTRY_BYTES, MOST_MANIFEST_BYTES, MOST_PAPERS,
    MOST_PHOTO_BYTES, MOST_WORK, WORK_FACTOR,
};
pub use error::{ExchangeError, What};
pub use kept::kept_for;
pub use lock::Passphrase;
pub use pack::{Contents, pack};
pub use parcel::Parcel;
pub use save::Target;
