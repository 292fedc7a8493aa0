//! The card code, version 1: claims, signed, as the digits that a square holds.
//!
//! Claims in deterministic CBOR (RFC 8949, section 4.2.1) are deflated (RFC 1951), signed as `COSE_Sign1`
//! (RFC 9052) by Ed25519 (RFC 8032), led by a version byte and written as decimal digits after the `#` of a
//! viewer's address. [`sign`] goes that way, [`read`] comes back and refuses at the first fault.

mod address;
mod claims;
mod claims_cbor;
mod digits;
mod error;
mod fingerprint;
mod message;
mod stream;

#[cfg(test)]
mod tests;

pub use address::ViewerAddress;
pub use claims::{
    Claims, Engine, Flags, HeadPrefix, InstrumentChange, Item, NEXT_MAX, NextDue, OdometerReading, Vehicle,
    Visit,
};
pub use error::CodeError;
pub use fingerprint::Fingerprint;
pub use message::{Message, Verified, read, sign};
pub use stream::INFLATED_MAX;
