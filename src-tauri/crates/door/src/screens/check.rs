//! Verifying everything: entries, signatures, chains, photos. Photos that were thrown away are not looked for, and
//! what an interruption left of them is deleted. What no entry ever named is counted, and deleted with a rebuild.

use std::collections::BTreeSet;
use std::time::SystemTime;

use book::Fault;
use paper::{Kept, LEFT_OVER_AGE, PaperError};
use units::{BookId, Hash};

use crate::{CheckView, Door, FaultView, RebuiltView, Refusal};

impl Door {
    pub(crate) fn check_view(&self) -> Result<CheckView, Refusal> {
        let report = self.shelf.verify()?;
        // Nothing is deleted on the word of an entry that does not verify, nor called unnamed.
        let sound = report.faults.is_empty();
        if sound {
            self.clear_thrown_away()?;
        }
        let unnamed = if sound { self.unnamed()?.len() } else { 0 };
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
        Ok(CheckView { entries: report.entries, photos, left, unnamed, faults })
    }

    /// Works the pages out again, and deletes what no entry names.
    pub(crate) fn rebuild(&mut self) -> Result<RebuiltView, Refusal> {
        let entries = self.shelf.rebuild()?;
        let sound = self.shelf.verify()?.faults.is_empty();
        let unnamed = if sound { self.unnamed()? } else { Vec::new() };
        for (kept, hash) in &unnamed {
            self.photos.remove_kept(*kept, *hash)?;
        }
        Ok(RebuiltView { entries, cleared: unnamed.len() })
    }

    /// What stands in the photo store and is named by no entry, in no book and in no version. What is younger than
    /// [`LEFT_OVER_AGE`] does not count, for its entry may be about to be written.
    fn unnamed(&self) -> Result<Vec<(Kept, Hash)>, Refusal> {
        let Some(papers) = self.shelf.papers_named()? else { return Ok(Vec::new()) };
        let named: BTreeSet<_> = papers.iter().flat_map(exchange::kept_for).collect();
        let kept = self.photos.list(SystemTime::now(), LEFT_OVER_AGE)?;
        Ok(kept.difference(&named).copied().collect())
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
        Fault::CutShort { hash, .. } => fault("chain-cut-short", hash),
    }
}
