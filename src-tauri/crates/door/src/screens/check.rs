//! Verifying everything: entries, signatures, chains, photos. Photos that were thrown away are not looked for, and
//! what an interruption left of them is deleted.

use book::Fault;
use paper::PaperError;

use crate::{CheckView, Door, FaultView, Refusal};

impl Door {
    pub(crate) fn check_view(&self) -> Result<CheckView, Refusal> {
        let report = self.shelf.verify()?;
        // Nothing is deleted on the word of an entry that does not verify.
        if report.faults.is_empty() {
            self.clear_thrown_away()?;
        }
        let mut faults: Vec<FaultView> = report.faults.iter().map(entry_fault).collect();
        let mut photos = 0;
        for book in self.shelf.books()? {
            for paper in self.shelf.papers(book)? {
                photos += 1;
                match self.photos.check(paper.photo) {
                    Ok(()) => {}
                    Err(PaperError::NotFound(hash)) => faults.push(fault("photo-missing", &hash.to_string())),
                    Err(PaperError::Damaged(hash)) => faults.push(fault("photo-damaged", &hash.to_string())),
                    Err(error) => return Err(error.into()),
                }
            }
        }
        Ok(CheckView { entries: report.entries, photos, faults })
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
