//! Bytes as decimal digits: each 7 bytes, big endian, as 17 digits.
//!
//! The numeric mode of a QR symbol packs digits at 3.33 bits each, and no rule of addresses ever escapes them.

use std::fmt::Write;

use super::CodeError;

/// How many bytes make a full group.
const GROUP_BYTES: usize = 7;
/// How many digits a full group has.
const GROUP_DIGITS: usize = 17;
/// How many digits stand for a group of so many bytes.
const DIGITS: [usize; GROUP_BYTES + 1] = [0, 3, 5, 8, 10, 13, 15, GROUP_DIGITS];

/// The digits that stand for `bytes`.
pub fn to_digits(bytes: &[u8]) -> String {
    let mut digits = String::with_capacity(bytes.len().div_ceil(GROUP_BYTES) * GROUP_DIGITS);
    for group in bytes.chunks(GROUP_BYTES) {
        let value = group.iter().fold(0_u64, |value, byte| value << 8 | u64::from(*byte));
        // Writing into a text has no way to fail.
        let _ = write!(digits, "{value:0width$}", width = DIGITS[group.len()]);
    }
    digits
}

/// The bytes for which `digits` stand.
pub fn from_digits(digits: &str) -> Result<Vec<u8>, CodeError> {
    if !digits.bytes().all(|byte| byte.is_ascii_digit()) {
        return Err(CodeError::NotDigits);
    }
    let mut bytes = Vec::with_capacity(digits.len() / GROUP_DIGITS * GROUP_BYTES + GROUP_BYTES);
    for group in digits.as_bytes().chunks(GROUP_DIGITS) {
        let count = DIGITS.iter().position(|digits| *digits == group.len()).ok_or(CodeError::DigitCount)?;
        // 17 digits stay below 10^17, far inside 64 bits.
        let value = group.iter().fold(0_u64, |value, digit| value * 10 + u64::from(digit - b'0'));
        if value >> (8 * count) != 0 {
            return Err(CodeError::DigitRange);
        }
        bytes.extend_from_slice(&value.to_be_bytes()[8 - count..]);
    }
    Ok(bytes)
}
