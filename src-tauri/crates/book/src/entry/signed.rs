//! An entry as it is stored: its bytes and their signature.

use ed25519_dalek::{Signature, VerifyingKey};
use sha2::{Digest, Sha256};
use units::Hash;

use super::Entry;
use crate::BookError;

/// The bytes of an entry and the signature of their hash.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Signed {
    /// The entry's deterministic CBOR.
    pub bytes: Vec<u8>,
    /// Ed25519 over the SHA-256 of the bytes.
    pub signature: [u8; 64],
}

/// The SHA-256 of bytes.
pub(crate) fn sha256(bytes: &[u8]) -> Hash {
    Hash(Sha256::digest(bytes).into())
}

impl Signed {
    /// The hash by which the entry is known.
    pub fn hash(&self) -> Hash {
        sha256(&self.bytes)
    }

    /// The entry, if the bytes are one in the deterministic form and the signature verifies.
    ///
    /// Verification is strict (RFC 8032, section 5.1.7): no malleable signature and no small-order key.
    pub fn open(&self) -> Result<Entry, BookError> {
        let entry = Entry::decode(&self.bytes)?;
        let hash = self.hash();
        let refused = |_| BookError::Signature(hash);
        let key = VerifyingKey::from_bytes(&entry.writer.0).map_err(refused)?;
        key.verify_strict(&hash.0, &Signature::from_bytes(&self.signature)).map_err(refused)?;
        Ok(entry)
    }
}
