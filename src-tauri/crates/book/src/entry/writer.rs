//! The device that writes: its key pair.

use ed25519_dalek::{Signer, SigningKey};
use units::WriterKey;

use super::{Entry, Signed, sha256};

/// A device's Ed25519 key pair.
#[derive(Debug)]
pub struct Writer(SigningKey);

impl Writer {
    /// The writer with this secret key, 32 random bytes that never leave the device.
    pub fn from_secret(secret: &[u8; 32]) -> Writer {
        Writer(SigningKey::from_bytes(secret))
    }

    /// The public key by which the writer is known.
    pub fn key(&self) -> WriterKey {
        WriterKey(self.0.verifying_key().to_bytes())
    }

    /// The key pair itself, to sign a history card with.
    pub fn signing_key(&self) -> &SigningKey {
        &self.0
    }

    pub(crate) fn secret(&self) -> [u8; 32] {
        self.0.to_bytes()
    }

    /// Signs an entry that names this writer.
    pub(crate) fn sign(&self, entry: &Entry) -> Signed {
        debug_assert_eq!(entry.writer, self.key());
        let bytes = entry.encode();
        let signature = self.0.sign(&sha256(&bytes).0).to_bytes();
        Signed { bytes, signature }
    }
}
