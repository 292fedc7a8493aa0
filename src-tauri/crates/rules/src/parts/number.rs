//! A maker's number for a part, which everyone writes a little differently.

use std::cmp::Ordering;
use std::fmt;
use std::hash::{Hash, Hasher};

/// A maker's number for a part, shown as it was written.
///
/// Two numbers are the same when they differ only in spaces, dots, dashes, slashes and case: `KM 4471-B`,
/// `km4471b` and `KM.4471/B`. Letters and digits that look alike, such as O and 0, are not the same, because
/// makers use both.
#[derive(Debug, Clone)]
pub struct PartNumber {
    written: String,
    normal: String,
}

impl PartNumber {
    /// The number as written, without the spaces around it; `None` when nothing but spaces and signs is left.
    pub fn new(written: &str) -> Option<PartNumber> {
        let normal = normal(written);
        (!normal.is_empty()).then(|| PartNumber { written: written.trim().to_owned(), normal })
    }

    /// As it was written.
    pub fn written(&self) -> &str {
        &self.written
    }
}

/// What is left of a text when spaces, dots, dashes, slashes and case do not count.
pub(super) fn normal(text: &str) -> String {
    text.chars().filter(|c| !is_spacing(*c)).flat_map(char::to_uppercase).collect()
}

/// Spaces, dots, slashes, and every dash that a keyboard or a printed box puts in place of the plain one.
fn is_spacing(c: char) -> bool {
    c.is_whitespace() || matches!(c, '.' | '·' | '/' | '\\' | '-' | '\u{2010}'..='\u{2015}' | '\u{2212}')
}

impl PartialEq for PartNumber {
    fn eq(&self, other: &PartNumber) -> bool {
        self.normal == other.normal
    }
}

impl Eq for PartNumber {}

impl PartialOrd for PartNumber {
    fn partial_cmp(&self, other: &PartNumber) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

impl Ord for PartNumber {
    fn cmp(&self, other: &PartNumber) -> Ordering {
        self.normal.cmp(&other.normal)
    }
}

impl Hash for PartNumber {
    fn hash<H: Hasher>(&self, state: &mut H) {
        self.normal.hash(state);
    }
}

impl fmt::Display for PartNumber {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.written)
    }
}

#[cfg(test)]
#[path = "number_tests.rs"]
mod tests;
