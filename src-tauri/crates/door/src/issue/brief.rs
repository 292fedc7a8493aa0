//! The brief for the workshop on paper.

use card::{Brief, BriefPart};

use super::gathered::Gathered;
use crate::{BriefPage, Door, Refusal};

/// The most characters that a brief is set with: some twenty pages, where one is meant.
const MOST: usize = 60_000;

impl Door {
    /// A brief of the lines that the ui shows; it refuses what could be no brief for its length.
    pub fn brief(&self, page: BriefPage) -> Result<Gathered, Refusal> {
        let BriefPage { title, parts, foot } = page;
        let lines = parts.iter().flat_map(|part| part.lines.iter().chain([&part.title]));
        if lines.chain([&title, &foot]).map(String::len).sum::<usize>() > MOST {
            return Err(Refusal::new("text-too-long").with("most", MOST));
        }
        let parts = parts.into_iter().map(|part| BriefPart {
            title: part.title,
            // What the owner typed over several lines stays so.
            lines: part.lines.iter().flat_map(|line| line.lines()).map(str::to_owned).collect(),
        });
        let brief = Brief { lang: words::ENGLISH.to_owned(), title, parts: parts.collect(), foot };
        Ok(Gathered::brief(brief, i64::from(self.clock.today().epoch()) * 86_400))
    }
}
