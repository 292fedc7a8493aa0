//! The values that a guide asks for: the car's own, a typical one that says so, or none but the handbook's.

use std::collections::BTreeMap;

use super::Origin;
use crate::upkeep::Milli;

/// A value that a guide asks for, such as the torque of the drain plug.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Value {
    /// Its number in entries, which never changes.
    pub number: u32,
    /// Its name in files, and `value-KEY` in the words.
    pub key: String,
    /// The symbol of the unit in which it is usually given; `None` for what is told in words.
    pub unit: Option<String>,
    /// Typical values, each for a case of its own; empty where only the handbook knows.
    pub typical: Vec<Typical>,
}

/// A published value for one case, which never stands for the car's own.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Typical {
    /// When it holds: `typical-CASE` in the words.
    pub case: String,
    /// Between what it lies, in `unit`.
    pub bounds: Bounds,
    /// The symbol of the unit in which it was printed.
    pub unit: String,
    /// Where it comes from.
    pub source: Origin,
}

/// Between what a value lies.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Bounds {
    /// No less than this.
    AtLeast(Milli),
    /// This.
    Exactly(Milli),
    /// Between the first and the second, which is greater.
    Between(Milli, Milli),
}

/// What the owner knows of his own car, by the numbers of the values, as he typed it.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct OwnValues(BTreeMap<u32, String>);

/// What is known of a value for one car.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Known<'a> {
    /// The car's own, as the owner typed it.
    Own(&'a str),
    /// Only what is typical, by cases; at least one. A face must mark it as typical and name its source.
    Typical(&'a [Typical]),
    /// Nothing: see the handbook.
    Handbook,
}

/// The symbol of a pound-force foot.
const POUND_FOOT: &str = "lbf·ft";

impl Value {
    /// What is known of it: the car's own before what is typical, and otherwise the handbook.
    pub fn known<'a>(&'a self, own: &'a OwnValues) -> Known<'a> {
        match own.get(self.number) {
            Some(text) => Known::Own(text),
            None if self.typical.is_empty() => Known::Handbook,
            None => Known::Typical(&self.typical),
        }
    }
}

impl Typical {
    /// The same in whole newton metres, where it was printed in pound-force feet.
    ///
    /// One pound-force foot is 1.3558179483 N·m (0.3048 m × 0.453 592 37 kg × 9.806 65 m/s²).
    pub fn newton_metres(&self) -> Option<Bounds> {
        (self.unit == POUND_FOOT).then(|| self.bounds.map(newton_metres))
    }
}

impl Bounds {
    /// The low end.
    pub const fn low(self) -> Milli {
        match self {
            Bounds::AtLeast(low) | Bounds::Exactly(low) | Bounds::Between(low, _) => low,
        }
    }

    /// The high end, where there is one.
    pub const fn high(self) -> Option<Milli> {
        match self {
            Bounds::AtLeast(_) => None,
            Bounds::Exactly(high) | Bounds::Between(_, high) => Some(high),
        }
    }

    fn map(self, change: impl Fn(Milli) -> Milli) -> Bounds {
        match self {
            Bounds::AtLeast(low) => Bounds::AtLeast(change(low)),
            Bounds::Exactly(value) => Bounds::Exactly(change(value)),
            Bounds::Between(low, high) => Bounds::Between(change(low), change(high)),
        }
    }
}

impl OwnValues {
    /// The same with the value of this number; a blank text takes it back.
    #[must_use]
    pub fn with(mut self, number: u32, text: &str) -> OwnValues {
        match text.trim() {
            "" => self.0.remove(&number),
            text => self.0.insert(number, text.to_owned()),
        };
        self
    }

    /// What the owner typed for the value with this number.
    pub fn get(&self, number: u32) -> Option<&str> {
        self.0.get(&number).map(String::as_str)
    }
}

impl FromIterator<(u32, String)> for OwnValues {
    fn from_iter<I: IntoIterator<Item = (u32, String)>>(values: I) -> OwnValues {
        values.into_iter().fold(OwnValues::default(), |own, (number, text)| own.with(number, &text))
    }
}

/// A torque in thousandths of a pound-force foot, in newton metres rounded to whole ones.
fn newton_metres(torque: Milli) -> Milli {
    const NANO: i64 = 1_000_000_000;
    let nano = torque.0 * 1_355_818;
    Milli((nano + NANO / 2).div_euclid(NANO) * 1_000)
}
