//! Keeping what came in as one: all of it is on the disk, or nothing of it stays.

use units::Hash;

use crate::prepare::hash_of;
use crate::{Kept, PaperError, PhotoStore, Prepared};

impl PhotoStore {
    /// Keeps the photos of one intake, and the document of which they are the pages, where they are; answers its name.
    ///
    /// When this returns, all of it outlasts a loss of power. Where something cannot be kept, what was new is taken
    /// away again; what an interruption leaves is found by [`PhotoStore::list`].
    pub fn keep_together(
        &self,
        document: Option<&[u8]>,
        photos: &[Prepared],
    ) -> Result<Option<Hash>, PaperError> {
        let new = self.new_ones(document, photos);
        let kept = self.keep_each(document, photos);
        if kept.is_err() {
            for (kept, hash) in new {
                // What cannot be deleted takes up room and is named by nothing.
                let _ = self.remove_kept(kept, hash);
            }
        }
        kept
    }

    fn keep_each(&self, document: Option<&[u8]>, photos: &[Prepared]) -> Result<Option<Hash>, PaperError> {
        let document = document.map(|bytes| self.keep_document(bytes)).transpose()?;
        photos.iter().try_for_each(|photo| self.keep(photo).map(drop))?;
        Ok(document)
    }

    /// What of it the store does not have yet.
    fn new_ones(&self, document: Option<&[u8]>, photos: &[Prepared]) -> Vec<(Kept, Hash)> {
        let wholes = photos.iter().filter_map(Prepared::whole);
        let photos = photos.iter().chain(wholes).map(|photo| photo.photo().hash);
        let photos = photos.filter(|hash| !self.has(*hash)).map(|hash| (Kept::Photo, hash));
        let document = document.map(hash_of).filter(|hash| !self.has_document(*hash));
        photos.chain(document.map(|hash| (Kept::Document, hash))).collect()
    }
}
