//! Which papers the ink names, in any book and in any version.

use super::Shelf;
use crate::BookError;
use crate::content::{Content, PaperContent};
use crate::entry::{Body, Entry};

impl Shelf {
    /// Every content of a paper that any entry on the shelf bears, also of papers that were thrown away since.
    ///
    /// It is read from the entries and not from the pages, because what nothing names may be deleted. Nothing where an
    /// entry says more than this version understands, for that may be the name of a photo too.
    pub fn papers_named(&self) -> Result<Option<Vec<PaperContent>>, BookError> {
        let mut statement = self.connection.prepare_cached("SELECT bytes FROM entry")?;
        let mut rows = statement.query([])?;
        let mut papers = Vec::new();
        while let Some(row) = rows.next()? {
            let bytes = row.get_ref(0)?.as_bytes().map_err(rusqlite::Error::from)?;
            let entry = Entry::decode_kept(bytes)?;
            // A field that is unknown here is passed over when an entry is read, and so would be lost when it is
            // written again.
            if matches!(entry.body, Body::Newer { .. }) || entry.encode() != bytes {
                return Ok(None);
            }
            if let Body::Begin { content: Content::Paper(paper), .. }
            | Body::Amend { content: Content::Paper(paper), .. } = entry.body
            {
                papers.push(paper);
            }
        }
        Ok(Some(papers))
    }
}
