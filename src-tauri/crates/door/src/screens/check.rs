//! Verifying everything: entries, signatures, chains, photos. Photos that were thrown away are not looked for, and
//! what an interruption left of them is deleted.

use book::Fault;
use paper::PaperError;
use units::BookId;

use crate::{CheckView, Door, FaultView, Refusal};

impl Door {
    pub(crate) fn check_view(&self) -> Result<CheckView, Refusal> {
        let report = self.shelf.verify()?;
        // Nothing is deleted on the word of an entry that does not verify.
        if report.faults.is_empty() {
            self.clear_thrown_away()?;
        }
        let mut faults: Vec<FaultView> = report.faults.iter().map(entry_fault).collect();
        let (mut photos, mut left) = (0, 0);
        for book in self.shelf.books()? {
            let kept_back = self.papers_kept_back(book)?;
            for paper in self.shelf.papers(book)? {
                photos += 1;
                match self.photos.check(paper.photo) {
                    Ok(()) => {}
                    Err(PaperError::NotFound(_)) if paper.filed <= kept_back => {
                        photos -= 1;
                        left += 1;
                    }
                    Err(PaperError::NotFound(hash)) => faults.push(fault("photo-missing", &hash.to_string())),
                    Err(PaperError::Damaged(hash)) => faults.push(fault("photo-damaged", &hash.to_string())),
                    Err(error) => return Err(error.into()),
                }
            }
        }
        Ok(CheckView { entries: report.entries, photos, left, faults })
    }

    /// Until when the papers of a book stayed with an earlier owner, in milliseconds since 1970; 0 where none did.
    fn papers_kept_back(&self, book: BookId) -> Result<u64, Refusal> {
        let handovers = self.shelf.handovers(book)?.into_iter();
        let without = handovers.filter(|row| row.struck.is_none() && !row.content.papers);
        Ok(without.map(|row| row.written).max().unwrap_or(0))
    }
}

fn fault(code: &str, place: &str) -> FaultView {
    FaultView { code: code.to_owned(), place: place.to_owned() }
}

fn entry_fault(found: &Fault) -> FaultView {
    match found {
        Fault::Changed { hash, .. } => fault("entry-changed", hash),
        Fault::Misfiled { hash, .. } => fault("entry-misfiled", hash),
        Fault::Unchained { hash, .. } => fault("entry-unchained", hash),
    }
}
