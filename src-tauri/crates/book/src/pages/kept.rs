//! What is asked of one paper among thousands, without a look at the others.

use rusqlite::{OptionalExtension, params};
use units::{BookId, Hash, SubjectId};

use crate::{BookError, Shelf};

const IS_KEPT: &str = "SELECT 1 FROM kept WHERE hash = ?1";
const IS_TIED: &str = "SELECT 1 FROM tied WHERE book = ?1 AND paper = ?2";

impl Shelf {
    /// Whether a paper that counts, in any book and in any version, names this photo or document.
    pub fn is_kept(&self, hash: Hash) -> Result<bool, BookError> {
        Ok(self.connection().prepare_cached(IS_KEPT)?.exists(params![hash.0])?)
    }

    /// Whether a paper belongs to a line that counts: a visit, a reading, or parts that were bought.
    pub fn is_tied(&self, book: BookId, paper: SubjectId) -> Result<bool, BookError> {
        Ok(self.connection().prepare_cached(IS_TIED)?.exists(params![book.0, paper.0])?)
    }

    /// The paper that counts and was taken as this photo, whatever was made of its corners since.
    pub fn paper_of(&self, book: BookId, taken: Hash) -> Result<Option<SubjectId>, BookError> {
        let mut statement = self.connection().prepare_cached(include_str!("paper_of.sql"))?;
        let subject = |row: &rusqlite::Row<'_>| row.get(0).map(SubjectId);
        Ok(statement.query_row(params![book.0, taken.0], subject).optional()?)
    }
}

#[cfg(test)]
#[path = "kept_tests.rs"]
mod tests;
