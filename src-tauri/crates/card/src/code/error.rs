//! Why a card code is refused.

use units::cbor::CborError;

/// The first fault found in a card code, in the order in which a reader looks.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum CodeError {
    /// The viewer address is no address that a square may hold.
    #[error(
        "'{0}' is no viewer address; write one such as https://card.example/ of at most 120 plain characters, without '#'"
    )]
    Address(String),
    /// Something other than a decimal digit stands among the digits.
    #[error("the code holds a character that is no digit; scan or copy the whole square again")]
    NotDigits,
    /// The number of digits is one that no code has.
    #[error("the code has a number of digits that no code has; scan or copy the whole square again")]
    DigitCount,
    /// A group of digits stands for more than its bytes can hold.
    #[error("a group of digits is too large for its bytes; scan or copy the whole square again")]
    DigitRange,
    /// The code is of a version that this reader does not know.
    #[error("the code is of version {0}, and this reader knows version 1; use a newer reader")]
    Version(u8),
    /// The message is no deterministic CBOR.
    #[error("the message is damaged: {0}")]
    MessageCbor(CborError),
    /// The message is no `COSE_Sign1` with exactly the headers of a card.
    #[error(
        "the message is not signed in the form of a card; a card has the signature algorithm and the key in its protected header and nothing else"
    )]
    MessageForm,
    /// The signature does not belong to this message and key.
    #[error(
        "the signature does not verify; the card was changed after it was signed, or never signed by its key"
    )]
    Signature,
    /// The stream under the signature does not inflate, or bytes follow it.
    #[error("the signed content does not unpack; whoever signed it did not write a card")]
    Stream,
    /// The stream inflates, or the claims to be signed go, past the limit.
    #[error("the card's content is larger than {max} bytes; leave out the oldest visits", max = super::INFLATED_MAX)]
    TooLarge,
    /// The claims are no deterministic CBOR, or one is missing or of the wrong type or range.
    #[error("the signed content is no card: {0}")]
    Claims(CborError),
}
