//! The PDF of which a paper is a page, as it came in.
//!
//! A document may be large, so that it is found at the door and read without it: [`Door::document`], then
//! [`Document::view`] or [`Document::read`].

use book::content::{Content, PageContent};
use paper::{PaperError, PhotoStore};

use crate::{DocumentView, Door, Refusal};

/// A document that a paper of the book names.
#[derive(Debug)]
pub struct Document {
    /// Which page of it the paper is.
    page: PageContent,
    store: PhotoStore,
}

impl Door {
    /// The document of which a paper is a page.
    ///
    /// Refused are a photo, any other line, and a paper that was thrown away, even while another page keeps the
    /// document on the disk.
    pub fn document(&self, book: &str, paper: &str) -> Result<Document, Refusal> {
        let row = self.shelf.line(book.parse()?, paper.parse()?)?;
        let page = match row.content {
            Content::Paper(paper) => paper.page,
            _ => None,
        };
        let page = page.ok_or_else(|| Refusal::new("no-document"))?;
        if row.struck.is_some() {
            return Err(Refusal::new("thrown-away"));
        }
        Ok(Document { page, store: self.photos.clone() })
    }
}

impl Document {
    /// What it is: that it can be read, and how many pages it has. Needs no door.
    pub fn view(&self) -> Result<DocumentView, Refusal> {
        let pages = paper::page_count(&self.read()?);
        Ok(DocumentView { page: self.page.number, pages: pages.and_then(|count| u32::try_from(count).ok()) })
    }

    /// Its bytes, which are those that were taken in or are refused. Needs no door.
    pub fn read(&self) -> Result<Vec<u8>, Refusal> {
        self.store.document(self.page.document).map_err(refuse)
    }
}

/// What is said of a photo that is gone or damaged would be wrong of a document.
fn refuse(error: PaperError) -> Refusal {
    match error {
        PaperError::NotFound(_) => Refusal::new("document-missing"),
        PaperError::Damaged(_) => Refusal::new("document-changed"),
        other => other.into(),
    }
}
