//! Identifiers: 16 bytes, shown as a UUID (RFC 9562).

use std::fmt;
use std::str::FromStr;

use uuid::Uuid;

use crate::UnitError;

/// Reads exactly `2 * N` hexadecimal digits.
pub(crate) fn from_hex<const N: usize>(text: &str) -> Option<[u8; N]> {
    let digits = text.as_bytes();
    if digits.len() != 2 * N {
        return None;
    }
    let mut bytes = [0; N];
    for (byte, pair) in bytes.iter_mut().zip(digits.chunks_exact(2)) {
        let high = char::from(pair[0]).to_digit(16)?;
        let low = char::from(pair[1]).to_digit(16)?;
        *byte = u8::try_from(high * 16 + low).ok()?;
    }
    Some(bytes)
}

macro_rules! id {
    ($(#[$doc:meta])* $name:ident) => {
        $(#[$doc])*
        #[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub struct $name(pub [u8; 16]);

        impl $name {
            /// A version 7 UUID from a time in milliseconds since 1970 and ten random bytes.
            pub fn new(millis: u64, random: [u8; 10]) -> $name {
                $name(*uuid::Builder::from_unix_timestamp_millis(millis, &random).as_uuid().as_bytes())
            }
        }

        impl fmt::Display for $name {
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                Uuid::from_bytes(self.0).hyphenated().fmt(f)
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
                from_hex(&text.replace('-', ""))
                    .map($name)
                    .ok_or_else(|| UnitError::Id(text.chars().take(40).collect()))
            }
        }
    };
}

id! {
    /// One vehicle's book.
    BookId
}

id! {
    /// One entry in a book.
    EntryId
}

id! {
    /// What an entry is about: the vehicle, a reading, a visit, a paper, an item of the plan.
    SubjectId
}

impl From<EntryId> for SubjectId {
    /// What an entry creates is known by the id of that entry.
    fn from(id: EntryId) -> SubjectId {
        SubjectId(id.0)
    }
}

impl From<BookId> for SubjectId {
    /// The vehicle is the subject that bears the id of its book.
    fn from(id: BookId) -> SubjectId {
        SubjectId(id.0)
    }
}

#[cfg(test)]
#[path = "id_tests.rs"]
mod tests;
