//! One trouble code: a letter, a digit from 0 to 3 and three hexadecimal digits, in two bytes.

use std::fmt;

use super::{Area, Origin, System};

/// A trouble code, such as P0171 or P013A.
///
/// Its two bytes (SAE J2012, ISO 15031-6): bits 15 and 14 are the letter, 13 and 12 the first digit, and the
/// rest three hexadecimal digits. Every pair of bytes is a code, though 00 00 stands for 'none' in a car's
/// answer.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Code(u16);

impl Code {
    /// The code in these two bytes, the high one first.
    pub const fn from_bytes(bytes: [u8; 2]) -> Code {
        Code(u16::from_be_bytes(bytes))
    }

    /// Its two bytes, the high one first.
    pub const fn bytes(self) -> [u8; 2] {
        self.0.to_be_bytes()
    }

    /// Reads a code in capital or small letters, with spaces around it allowed.
    ///
    /// The letter O is taken for a nought, which a hexadecimal digit cannot be confused with, unless there is
    /// no digit at all: 'PO3OO' is P0300, 'booed' is a word. `None` for everything else.
    pub fn parse(text: &str) -> Option<Code> {
        let mut chars = text.trim().chars();
        let letter = chars.next()?.to_ascii_uppercase();
        let system = System::ALL.into_iter().find(|system| system.letter() == letter)?;
        let digits = chars.as_str();
        if digits.len() != 4 || !digits.bytes().any(|byte| byte.is_ascii_digit()) {
            return None;
        }
        let value = digits.chars().try_fold(0_u16, |value, c| Some(value << 4 | hex_or_o(c)?))?;
        let first_digit_is_possible = value < 0x4000;
        first_digit_is_possible.then_some(Code((system as u16) << 14 | value))
    }

    /// What its letter stands for.
    pub const fn system(self) -> System {
        match self.0 >> 14 {
            0 => System::Powertrain,
            1 => System::Chassis,
            2 => System::Body,
            _ => System::Network,
        }
    }

    /// Who says what it means.
    ///
    /// SAE J2012, from memory: a first digit of 0 is the standard's and 1 the maker's; P2 is the standard's;
    /// P30 to P33 are the maker's and P34 to P39 the standard's; B2, C2 and U2 are the maker's; U3 is the
    /// standard's. What is left (P3A to P3F, B3, C3) is given to nobody.
    pub const fn origin(self) -> Origin {
        match (self.system(), self.first_digit(), self.area_digit()) {
            (_, 0, _)
            | (System::Powertrain, 2, _)
            | (System::Powertrain, 3, 4..=9)
            | (System::Network, 3, _) => Origin::Standard,
            (_, 1 | 2, _) | (System::Powertrain, 3, 0..=3) => Origin::Maker,
            _ => Origin::Reserved,
        }
    }

    /// What a powertrain code is probably about; `None` for other letters, for P3, and where nothing is
    /// usual.
    ///
    /// The grouping of P0 and P1 up to 9 is printed in makers' scan tool texts; that of P2 and of A to D is
    /// from memory.
    pub const fn area(self) -> Option<Area> {
        if !matches!((self.system(), self.first_digit()), (System::Powertrain, 0..=2)) {
            return None;
        }
        match (self.first_digit(), self.area_digit()) {
            (_, 0..=2) | (2, 0xA) => Some(Area::Mixture),
            (_, 3) => Some(Area::Ignition),
            (_, 4) => Some(Area::Emission),
            (_, 5) => Some(Area::Idle),
            (_, 6) => Some(Area::Computer),
            (_, 7 | 8) => Some(Area::Gearbox),
            (0 | 1, 9) => Some(Area::Modules),
            (0, 0xA..=0xD) => Some(Area::ElectricDrive),
            _ => None,
        }
    }

    /// The key of its sentence in the words, which are there for what stands in the table: `code-P0171`.
    pub fn key(self) -> String {
        format!("code-{self}")
    }

    const fn first_digit(self) -> u16 {
        self.0 >> 12 & 3
    }

    const fn area_digit(self) -> u16 {
        self.0 >> 8 & 0xF
    }
}

fn hex_or_o(c: char) -> Option<u16> {
    let c = if matches!(c, 'O' | 'o') { '0' } else { c };
    c.to_digit(16).and_then(|digit| u16::try_from(digit).ok())
}

/// As it is printed: `P013A`.
impl fmt::Display for Code {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}{:04X}", self.system().letter(), self.0 & 0x3FFF)
    }
}

#[cfg(test)]
#[path = "code_tests.rs"]
mod tests;
