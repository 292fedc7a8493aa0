//! What is known of a part beyond the times that it was fitted: other numbers for the same, and warnings.

use std::collections::BTreeSet;

use super::PartNumber;

/// A note on the part with this number.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Note<'a> {
    /// Its number.
    pub number: PartNumber,
    /// The same part under other numbers, each with its maker, who may be empty.
    pub same: Vec<(PartNumber, &'a str)>,
    /// Why it should not be bought again.
    pub warning: Option<Warning<'a>>,
}

/// Why a part should not be bought again.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Warning<'a> {
    /// It does not fit this car.
    Wrong {
        /// The number to ask for in its place; may be empty.
        instead: &'a str,
    },
    /// Its maker has put another number in its place.
    Superseded {
        /// That number; may be empty.
        instead: &'a str,
    },
}

/// All notes on the parts of one car, in the order of writing: of two on one number the later counts.
#[derive(Debug, Clone, Default)]
pub struct Notes<'a>(Vec<Note<'a>>);

impl<'a> Notes<'a> {
    /// These notes.
    pub fn new(notes: Vec<Note<'a>>) -> Notes<'a> {
        Notes(notes)
    }

    /// What warns of a number.
    pub fn warning(&self, number: &PartNumber) -> Option<Warning<'a>> {
        self.0.iter().rev().find(|note| note.number == *number)?.warning
    }

    /// The other numbers for the same part, each once, as far as the notes lead: what is the same as A, and what
    /// is the same as that. A number that the notes warn of is not among them.
    pub fn same(&self, number: &PartNumber) -> Vec<(PartNumber, &'a str)> {
        let mut reached: Vec<(PartNumber, &'a str)> = Vec::new();
        let mut seen = BTreeSet::from([number.clone()]);
        let mut open = vec![number.clone()];
        while let Some(from) = open.pop() {
            for (to, maker) in self.neighbours(&from) {
                if seen.insert(to.clone()) {
                    open.push(to.clone());
                    reached.push((to, maker));
                }
            }
        }
        reached.retain(|(number, _)| self.warning(number).is_none());
        reached
    }

    /// Whether two numbers stand for the same part.
    pub fn are_same(&self, one: &PartNumber, other: &PartNumber) -> bool {
        one == other || self.same(one).iter().any(|(number, _)| number == other)
    }

    fn neighbours(&self, number: &PartNumber) -> Vec<(PartNumber, &'a str)> {
        let mut neighbours = Vec::new();
        for note in &self.0 {
            if note.number == *number {
                neighbours.extend(note.same.iter().cloned());
            } else if note.same.iter().any(|(same, _)| same == number) {
                neighbours.push((note.number.clone(), ""));
                neighbours.extend(note.same.iter().filter(|(same, _)| same != number).cloned());
            }
        }
        neighbours
    }
}

#[cfg(test)]
#[path = "note_tests.rs"]
mod tests;
