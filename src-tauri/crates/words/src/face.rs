//! The faces, and which files each of them says.

use crate::files::{self, File};

/// One of the ways in which the house speaks to somebody.
///
/// A face speaks a language only where every file that it says is there, so that nobody is spoken to in two
/// languages at once. That is why the card can speak more of them than the terminal.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Face {
    /// The terminal and the window, which may say anything.
    Program,
    /// The printed card.
    Card,
    /// The full report, which asks in the words of the page and opens with those of the card.
    Report,
    /// The page on which a scanned card opens. It is built from the files themselves; here it is only held to them.
    Page,
}

impl Face {
    /// Whether this face says what stands in a file.
    fn says(self, file: &str) -> bool {
        match self {
            Face::Program => true,
            Face::Card => matches!(file, "card.ftl" | "catalogue.ftl"),
            Face::Report => {
                matches!(file, "card.ftl" | "catalogue.ftl" | "fuel.ftl" | "report.ftl" | "viewer.ftl")
            }
            Face::Page => matches!(file, "viewer.ftl" | "catalogue.ftl"),
        }
    }

    /// The files of one language that this face says.
    pub(crate) fn files(self, lang: &str) -> impl Iterator<Item = &'static File> {
        files::of(lang).iter().filter(move |(name, _)| self.says(name))
    }

    /// Whether a language has every file that this face says in English.
    pub(crate) fn speaks(self, lang: &str) -> bool {
        self.files(crate::ENGLISH).all(|(name, _)| self.files(lang).any(|(there, _)| there == name))
    }
}
