//! The vehicle identification number: its structure, and the check digit of North America.

use std::fmt;
use std::str::FromStr;

use crate::RulesError;

/// A vehicle identification number with the structure of ISO 3779: 17 digits and capital letters, never I, O or Q.
///
/// Its check digit may be wrong: it is mandatory only in North America.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Vin([u8; Vin::LENGTH]);

/// What the ninth character says about the other sixteen.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum CheckDigit {
    /// It is the check digit of the number.
    Right,
    /// It is another character, as on most numbers given outside North America, or a character is mistyped.
    Wrong {
        /// What it would have to be: a digit or `X`.
        expected: char,
    },
}

/// The weight of each position (49 CFR 565, table IV); the check digit itself weighs nothing.
const WEIGHTS: [u32; Vin::LENGTH] = [8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2];

/// Where the check digit stands, counted from 0.
const CHECK_AT: usize = 8;

impl Vin {
    /// How many characters the number has.
    pub const LENGTH: usize = 17;

    /// The number as typed, in capitals or small letters, with spaces around it allowed.
    pub fn parse(text: &str) -> Result<Vin, RulesError> {
        let text = text.trim();
        let length = text.chars().count();
        if length != Vin::LENGTH {
            return Err(RulesError::VinLength(length));
        }
        let mut vin = [0; Vin::LENGTH];
        for ((position, character), place) in (1..).zip(text.chars()).zip(&mut vin) {
            *place = allowed(character).ok_or(RulesError::VinCharacter { character, position })?;
        }
        Ok(Vin(vin))
    }

    /// Compares the ninth character with the check digit of 49 CFR 565: the sum of value times weight,
    /// modulo 11, with `X` for 10.
    pub fn check_digit(&self) -> CheckDigit {
        let sum: u32 = self.0.iter().zip(WEIGHTS).map(|(&character, weight)| value(character) * weight).sum();
        let expected = char::from_digit(sum % 11, 10).unwrap_or('X');
        if char::from(self.0[CHECK_AT]) == expected {
            CheckDigit::Right
        } else {
            CheckDigit::Wrong { expected }
        }
    }
}

/// The character in capitals, if it may stand in the number.
fn allowed(character: char) -> Option<u8> {
    let capital = u8::try_from(character).ok()?.to_ascii_uppercase();
    (capital.is_ascii_alphanumeric() && !matches!(capital, b'I' | b'O' | b'Q')).then_some(capital)
}

/// What a character counts (49 CFR 565, table III). The letters run in three rows of nine, of which the
/// third begins at 2.
fn value(character: u8) -> u32 {
    u32::from(match character {
        b'0'..=b'9' => character - b'0',
        b'A'..=b'I' => character - b'A' + 1,
        b'J'..=b'R' => character - b'J' + 1,
        _ => character - b'S' + 2,
    })
}

impl FromStr for Vin {
    type Err = RulesError;

    fn from_str(text: &str) -> Result<Vin, RulesError> {
        Vin::parse(text)
    }
}

impl fmt::Display for Vin {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.iter().try_for_each(|&character| write!(f, "{}", char::from(character)))
    }
}

#[cfg(test)]
#[path = "vin_tests.rs"]
mod tests;
