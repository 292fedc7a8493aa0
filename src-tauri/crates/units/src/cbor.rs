//! Deterministic CBOR (RFC 8949, section 4.2.1): the one byte form of a value.
//!
//! [`encode`] sorts map keys by their encoded bytes and writes the shortest form of everything.
//! [`decode`] takes bytes from anywhere and accepts only what `encode` would have written, so that two
//! different byte strings never mean the same value and a hash stands for one meaning.
//!
//! Memory is bounded by a small multiple of the input, and nesting by [`DEPTH`] levels.

use ciborium::Value;

use crate::{
    BookId, Currency, Day, Distance, DistanceUnit, EntryId, Hash, Measure, Money, Quantity, SubjectId,
};
use crate::{Volume, VolumeUnit, WriterKey};

pub use ciborium::Value as CborValue;

/// How deep arrays and maps may be nested in bytes that [`decode`] accepts.
pub const DEPTH: usize = 24;

/// Why bytes are no deterministic CBOR, or a value not of the expected form.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum CborError {
    /// The bytes are no CBOR, end early, or nest too deeply.
    #[error("the bytes are no well-formed CBOR")]
    Malformed,
    /// The bytes go on after the value.
    #[error("bytes follow after the end of the CBOR value")]
    Trailing,
    /// The value is written in another than the deterministic form.
    #[error("the CBOR is not in its deterministic form")]
    NotDeterministic,
    /// A map lacks this key.
    #[error("key {0} is missing")]
    Missing(u64),
    /// What stands under this key has another type or lies out of range.
    #[error("what stands under key {0} has the wrong type or range")]
    Wrong(u64),
    /// A value has another type or lies out of range.
    #[error("a value has the wrong type or range")]
    Type,
}

/// Writes a value in its deterministic form.
pub fn encode(value: &Value) -> Vec<u8> {
    let mut bytes = Vec::with_capacity(128);
    write(&sorted(value), &mut bytes);
    bytes
}

fn write(value: &Value, bytes: &mut Vec<u8>) {
    // Writing a value into memory has no way to fail.
    let written = ciborium::into_writer(value, &mut *bytes);
    debug_assert!(written.is_ok());
}

fn sorted(value: &Value) -> Value {
    match value {
        Value::Array(items) => Value::Array(items.iter().map(sorted).collect()),
        Value::Tag(tag, inner) => Value::Tag(*tag, Box::new(sorted(inner))),
        Value::Map(pairs) => {
            let mut pairs: Vec<_> = pairs.iter().map(|(key, value)| (sorted(key), sorted(value))).collect();
            pairs.sort_by_cached_key(|(key, _)| key_bytes(key));
            Value::Map(pairs)
        }
        other => other.clone(),
    }
}

fn key_bytes(key: &Value) -> Vec<u8> {
    let mut bytes = Vec::new();
    write(key, &mut bytes);
    bytes
}

/// Reads one value that fills `bytes` and stands in its deterministic form.
pub fn decode(bytes: &[u8]) -> Result<Value, CborError> {
    let value = decode_kept(bytes)?;
    let mut again = Vec::with_capacity(bytes.len());
    write(&value, &mut again);
    if again != bytes || !has_one_form(&value) {
        return Err(CborError::NotDeterministic);
    }
    Ok(value)
}

/// Takes the first value off a sequence of values (RFC 8742), each of which stands in its deterministic form.
pub fn decode_next(bytes: &mut &[u8]) -> Result<Value, CborError> {
    let mut rest = *bytes;
    // Where the value ends is known once it is read; what it is has to be read again within that end.
    ciborium::de::from_reader_with_recursion_limit::<Value, _>(&mut rest, DEPTH)
        .map_err(|_| CborError::Malformed)?;
    let (first, after) = bytes.split_at(bytes.len() - rest.len());
    *bytes = after;
    decode(first)
}

/// Reads one value that fills `bytes`, without testing that its form is the deterministic one.
///
/// For bytes that [`decode`] or [`encode`] has seen before, where the test would be repeated in vain.
pub fn decode_kept(bytes: &[u8]) -> Result<Value, CborError> {
    let mut rest = bytes;
    let value =
        ciborium::de::from_reader_with_recursion_limit(&mut rest, DEPTH).map_err(|_| CborError::Malformed)?;
    if rest.is_empty() { Ok(value) } else { Err(CborError::Trailing) }
}

/// The one NaN (RFC 8949, section 4.2.2): nothing here has a use for the others, and readers differ on them.
const NAN: u64 = 0x7ff8_0000_0000_0000;

/// Whether the keys of every map stand in strictly ascending order of their bytes, and no NaN is one of the many others.
fn has_one_form(value: &Value) -> bool {
    match value {
        Value::Array(items) => items.iter().all(has_one_form),
        Value::Tag(_, inner) => has_one_form(inner),
        Value::Float(float) => !float.is_nan() || float.to_bits() == NAN,
        Value::Map(pairs) => {
            let keys: Vec<_> = pairs.iter().map(|(key, _)| key_bytes(key)).collect();
            keys.windows(2).all(|pair| pair[0] < pair[1])
                && pairs.iter().all(|(key, value)| has_one_form(key) && has_one_form(value))
        }
        _ => true,
    }
}

/// A type with one CBOR form.
pub trait Cbor: Sized {
    /// The value's CBOR form.
    fn to_cbor(&self) -> Value;
    /// Reads the value from its CBOR form; [`CborError::Type`] when it has another.
    fn from_cbor(value: &Value) -> Result<Self, CborError>;
}

/// Builds a CBOR map with small integer keys; a value that has nothing to say is left out.
#[derive(Debug, Default)]
pub struct MapWriter(Vec<(Value, Value)>);

impl MapWriter {
    /// An empty map.
    pub fn new() -> MapWriter {
        MapWriter::default()
    }

    /// Adds a value under a key.
    #[must_use]
    pub fn put<T: Cbor>(mut self, key: u64, value: &T) -> MapWriter {
        self.0.push((Value::from(key), value.to_cbor()));
        self
    }

    /// Adds a value under a key if there is one.
    #[must_use]
    pub fn put_some<T: Cbor>(self, key: u64, value: Option<&T>) -> MapWriter {
        match value {
            Some(value) => self.put(key, value),
            None => self,
        }
    }

    /// Adds a list under a key unless it is empty.
    #[must_use]
    pub fn put_list<T: Cbor>(mut self, key: u64, values: &[T]) -> MapWriter {
        if !values.is_empty() {
            self.0.push((Value::from(key), Value::Array(values.iter().map(Cbor::to_cbor).collect())));
        }
        self
    }

    /// The map.
    pub fn finish(self) -> Value {
        Value::Map(self.0)
    }
}

/// Reads a CBOR map with integer keys; keys that nobody asks for are ignored.
#[derive(Debug)]
pub struct MapReader<'a>(&'a [(Value, Value)]);

impl<'a> MapReader<'a> {
    /// Reads `value`, which must be a map.
    pub fn new(value: &'a Value) -> Result<MapReader<'a>, CborError> {
        value.as_map().map(|pairs| MapReader(pairs)).ok_or(CborError::Type)
    }

    /// The raw value under a key.
    pub fn raw(&self, key: u64) -> Option<&'a Value> {
        let key = Value::from(key);
        self.0.iter().find(|(candidate, _)| *candidate == key).map(|(_, value)| value)
    }

    /// What stands under a key that may be absent.
    pub fn get<T: Cbor>(&self, key: u64) -> Result<Option<T>, CborError> {
        self.raw(key).map(T::from_cbor).transpose().map_err(|_| CborError::Wrong(key))
    }

    /// What stands under a key that must be there.
    pub fn need<T: Cbor>(&self, key: u64) -> Result<T, CborError> {
        self.get(key)?.ok_or(CborError::Missing(key))
    }

    /// The list under a key; an absent key is an empty list.
    pub fn list<T: Cbor>(&self, key: u64) -> Result<Vec<T>, CborError> {
        self.get(key).map(Option::unwrap_or_default)
    }
}

impl Cbor for Value {
    fn to_cbor(&self) -> Value {
        self.clone()
    }
    fn from_cbor(value: &Value) -> Result<Value, CborError> {
        Ok(value.clone())
    }
}

impl<T: Cbor> Cbor for Vec<T> {
    fn to_cbor(&self) -> Value {
        Value::Array(self.iter().map(Cbor::to_cbor).collect())
    }
    fn from_cbor(value: &Value) -> Result<Vec<T>, CborError> {
        value.as_array().ok_or(CborError::Type)?.iter().map(T::from_cbor).collect()
    }
}

impl Cbor for String {
    fn to_cbor(&self) -> Value {
        Value::Text(self.clone())
    }
    fn from_cbor(value: &Value) -> Result<String, CborError> {
        value.as_text().map(str::to_owned).ok_or(CborError::Type)
    }
}

impl Cbor for bool {
    fn to_cbor(&self) -> Value {
        Value::Bool(*self)
    }
    fn from_cbor(value: &Value) -> Result<bool, CborError> {
        value.as_bool().ok_or(CborError::Type)
    }
}

macro_rules! integers {
    ($($int:ty)*) => {$(
        impl Cbor for $int {
            fn to_cbor(&self) -> Value {
                Value::from(*self)
            }
            fn from_cbor(value: &Value) -> Result<$int, CborError> {
                let integer = value.as_integer().ok_or(CborError::Type)?;
                <$int>::try_from(i128::from(integer)).map_err(|_| CborError::Type)
            }
        }
    )*};
}

integers!(u8 u16 u32 u64 i32 i64);

macro_rules! byte_strings {
    ($($name:ident)*) => {$(
        impl Cbor for $name {
            fn to_cbor(&self) -> Value {
                Value::Bytes(self.0.to_vec())
            }
            fn from_cbor(value: &Value) -> Result<$name, CborError> {
                let bytes = value.as_bytes().ok_or(CborError::Type)?;
                bytes.as_slice().try_into().map($name).map_err(|_| CborError::Type)
            }
        }
    )*};
}

byte_strings!(BookId EntryId SubjectId Hash WriterKey);

/// Days since 1970-01-01.
impl Cbor for Day {
    fn to_cbor(&self) -> Value {
        self.epoch().to_cbor()
    }
    fn from_cbor(value: &Value) -> Result<Day, CborError> {
        Day::from_epoch(i32::from_cbor(value)?).map_err(|_| CborError::Type)
    }
}

/// Millimetres.
impl Cbor for Distance {
    fn to_cbor(&self) -> Value {
        self.millimetres().to_cbor()
    }
    fn from_cbor(value: &Value) -> Result<Distance, CborError> {
        i64::from_cbor(value).map(Distance::from_millimetres)
    }
}

/// Picolitres.
impl Cbor for Volume {
    fn to_cbor(&self) -> Value {
        self.picolitres().to_cbor()
    }
    fn from_cbor(value: &Value) -> Result<Volume, CborError> {
        i64::from_cbor(value).map(Volume::from_picolitres)
    }
}

/// Gives an enumeration without content its stable numbers.
#[macro_export]
macro_rules! cbor_numbers {
    ($name:ty { $($variant:ident = $number:literal),* $(,)? }) => {
        impl $name {
            /// The number for which it stands wherever it is written.
            pub const fn number(self) -> u8 {
                match self { $(Self::$variant => $number,)* }
            }

            /// What this number stands for.
            pub const fn from_number(number: u8) -> Option<Self> {
                match number {
                    $($number => Some(Self::$variant),)*
                    _ => None,
                }
            }
        }

        impl $crate::cbor::Cbor for $name {
            fn to_cbor(&self) -> $crate::cbor::CborValue {
                $crate::cbor::CborValue::from(self.number())
            }
            fn from_cbor(value: &$crate::cbor::CborValue) -> Result<Self, $crate::cbor::CborError> {
                let number = <u8 as $crate::cbor::Cbor>::from_cbor(value)?;
                Self::from_number(number).ok_or($crate::cbor::CborError::Type)
            }
        }
    };
}

cbor_numbers!(DistanceUnit { Kilometre = 0, Mile = 1 });
cbor_numbers!(VolumeUnit { Litre = 0, UsGallon = 1, ImperialGallon = 2 });
cbor_numbers!(Measure { Piece = 0, Litre = 1, Set = 2, Kilogram = 3, Metre = 4 });

/// `[minor units, currency code]`.
impl Cbor for Money {
    fn to_cbor(&self) -> Value {
        Value::Array(vec![self.minor.to_cbor(), Value::from(self.currency.code())])
    }
    fn from_cbor(value: &Value) -> Result<Money, CborError> {
        let [minor, code] = value.as_array().ok_or(CborError::Type)?.as_slice() else {
            return Err(CborError::Type);
        };
        let code = code.as_text().ok_or(CborError::Type)?;
        // A person may type small letters; an entry has one form only.
        let currency = Currency::from_code(code).ok_or(CborError::Type)?;
        Ok(Money { minor: i64::from_cbor(minor)?, currency })
    }
}

/// `[thousandths, measure]`.
impl Cbor for Quantity {
    fn to_cbor(&self) -> Value {
        Value::Array(vec![self.thousandths().to_cbor(), self.measure.to_cbor()])
    }
    fn from_cbor(value: &Value) -> Result<Quantity, CborError> {
        let [thousandths, measure] = value.as_array().ok_or(CborError::Type)?.as_slice() else {
            return Err(CborError::Type);
        };
        Quantity::from_thousandths(u32::from_cbor(thousandths)?, Measure::from_cbor(measure)?)
            .map_err(|_| CborError::Type)
    }
}

#[cfg(test)]
#[path = "cbor_tests.rs"]
mod tests;
