//! The signed message: `COSE_Sign1` (RFC 9052, section 4.2) over the deflated claims, by Ed25519 (RFC 8032).
//!
//! The protected header is exactly the algorithm and the signer's public key, the unprotected one is empty. The
//! signature covers the compressed bytes, so nothing is inflated before it is verified.

use coset::iana::Algorithm;
use coset::{
    AsCborValue, CborSerializable, CoseSign1, CoseSign1Builder, Header, HeaderBuilder, TaggedCborSerializable,
};
use ed25519_dalek::{Signature, Signer, SigningKey, VerifyingKey};
use units::WriterKey;
use units::cbor::{self, CborValue as Value};

use super::{Claims, CodeError, ViewerAddress, digits, stream};

/// The version byte before the message.
const VERSION: u8 = 1;
/// The CBOR tag of `COSE_Sign1`.
const COSE_SIGN1: u64 = 18;

/// A signed card: version byte and `COSE_Sign1` message.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Message {
    packed: Vec<u8>,
}

/// A card whose signature verified: what it claims, and the key that signed it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Verified {
    /// What the card says.
    pub claims: Claims,
    /// The key that signed it.
    pub key: WriterKey,
}

/// Signs claims; refuses those that go past what a reader inflates.
///
/// The bytes are a pure function of claims and key: Ed25519 draws no random number.
pub fn sign(claims: &Claims, key: &SigningKey) -> Result<Message, CodeError> {
    let payload = stream::deflate(&claims.to_cbor())?;
    Ok(Message::seal(payload, key))
}

/// Reads the text of a square, or only its digits: digits, version, message, signature, stream, claims, in this
/// order, refusing at the first fault.
pub fn read(text: &str) -> Result<Verified, CodeError> {
    let digits = text.split_once('#').map_or(text, |(_, digits)| digits);
    let packed = digits::from_digits(digits)?;
    let message = unpack(&packed)?;
    let (payload, key) = open(message)?;
    let claims = stream::inflate(&payload)?;
    let claims = Claims::from_cbor(&claims).map_err(CodeError::Claims)?;
    Ok(Verified { claims, key })
}

impl Message {
    /// Signs a payload.
    pub(super) fn seal(payload: Vec<u8>, key: &SigningKey) -> Message {
        let message = CoseSign1Builder::new()
            .protected(protected_header(&key.verifying_key()))
            .payload(payload)
            .create_signature(&[], |bytes| key.sign(bytes).to_bytes().to_vec())
            .build();
        let mut packed = vec![VERSION];
        // A header of two known keys and three byte strings has no way to fail to be written.
        packed.extend(message.to_tagged_vec().unwrap_or_default());
        Message { packed }
    }

    /// The `COSE_Sign1` message, tagged, without the version byte.
    pub fn cose(&self) -> &[u8] {
        &self.packed[1..]
    }

    /// The version byte and the message.
    pub fn packed(&self) -> &[u8] {
        &self.packed
    }

    /// The digits that stand for the packed bytes.
    pub fn digits(&self) -> String {
        digits::to_digits(&self.packed)
    }

    /// The text of the square: address, `#`, digits.
    pub fn text(&self, viewer: &ViewerAddress) -> String {
        format!("{viewer}#{}", self.digits())
    }
}

fn protected_header(key: &VerifyingKey) -> Header {
    HeaderBuilder::new().algorithm(Algorithm::EdDSA).key_id(key.to_bytes().to_vec()).build()
}

fn unpack(packed: &[u8]) -> Result<&[u8], CodeError> {
    match packed {
        [VERSION, message @ ..] => Ok(message),
        [version, ..] => Err(CodeError::Version(*version)),
        [] => Err(CodeError::DigitCount),
    }
}

/// Checks form and signature of a message; gives its payload and the key that signed it.
fn open(message: &[u8]) -> Result<(Vec<u8>, WriterKey), CodeError> {
    let Value::Tag(COSE_SIGN1, inner) = cbor::decode(message).map_err(CodeError::MessageCbor)? else {
        return Err(CodeError::MessageForm);
    };
    let message = CoseSign1::from_cbor_value(*inner).map_err(|_| CodeError::MessageForm)?;
    let key: [u8; 32] =
        message.protected.header.key_id.as_slice().try_into().map_err(|_| CodeError::MessageForm)?;
    if !has_card_headers(&message, &key) {
        return Err(CodeError::MessageForm);
    }
    verify(&key, &message.tbs_data(&[]), &message.signature)?;
    let payload = message.payload.ok_or(CodeError::MessageForm)?;
    Ok((payload, WriterKey(key)))
}

/// Whether the protected header is `{1: -8, 4: key}` to the byte, the unprotected one empty, and a payload there.
fn has_card_headers(message: &CoseSign1, key: &[u8; 32]) -> bool {
    let expected = HeaderBuilder::new().algorithm(Algorithm::EdDSA).key_id(key.to_vec()).build().to_vec();
    let protected = message.protected.original_data.as_ref();
    protected.is_some()
        && protected == expected.ok().as_ref()
        && message.unprotected.is_empty()
        && message.payload.is_some()
}

/// Verifies strictly (RFC 8032, section 5.1.7): S below the group order, key and R canonical and not of small order.
pub(super) fn verify(key: &[u8; 32], message: &[u8], signature: &[u8]) -> Result<(), CodeError> {
    let refused = |_| CodeError::Signature;
    let signature = Signature::from_slice(signature).map_err(refused)?;
    let verifying = VerifyingKey::from_bytes(key).map_err(refused)?;
    // RFC 8032, section 5.1.3: a y coordinate of the field's prime or more is no encoding of a point.
    if verifying.to_edwards().compress().to_bytes() != *key {
        return Err(CodeError::Signature);
    }
    verifying.verify_strict(message, &signature).map_err(refused)
}
