//! The short form in which a key is shown to eyes.

use std::fmt;

use sha2::{Digest, Sha256};
use units::WriterKey;

/// The first 8 bytes of SHA-256 of a public key, shown as four groups of four hexadecimal digits.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Fingerprint([u8; 8]);

impl From<&WriterKey> for Fingerprint {
    fn from(key: &WriterKey) -> Fingerprint {
        let hash = Sha256::digest(key.0);
        let mut first = [0; 8];
        first.copy_from_slice(&hash[..8]);
        Fingerprint(first)
    }
}

impl fmt::Display for Fingerprint {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        for (at, pair) in self.0.chunks(2).enumerate() {
            let gap = if at == 0 { "" } else { " " };
            write!(f, "{gap}{:02x}{:02x}", pair[0], pair[1])?;
        }
        Ok(())
    }
}
