//! SHA-256 values and public keys, 32 bytes each and never confused.

use std::fmt;
use std::str::FromStr;

use crate::UnitError;

/// Writes a 32-byte type: hexadecimal in and out, ordered by its bytes.
macro_rules! thirty_two_bytes {
    ($(#[$doc:meta])* $name:ident) => {
        $(#[$doc])*
        #[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub struct $name(pub [u8; 32]);

        impl fmt::Display for $name {
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                self.0.iter().try_for_each(|byte| write!(f, "{byte:02x}"))
            }
        }

        impl fmt::Debug for $name {
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                write!(f, concat!(stringify!($name), "({})"), self)
            }
        }

        impl FromStr for $name {
            type Err = UnitError;

            fn from_str(text: &str) -> Result<$name, UnitError> {
                crate::id::from_hex(text)
                    .map($name)
                    .ok_or_else(|| UnitError::Hash(text.chars().take(80).collect()))
            }
        }
    };
}

thirty_two_bytes! {
    /// A SHA-256 value (FIPS 180-4).
    Hash
}

thirty_two_bytes! {
    /// The Ed25519 public key (RFC 8032) of the device that writes.
    WriterKey
}
