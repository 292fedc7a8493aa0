//! Which photos and documents the entries of a book name.

use std::collections::BTreeSet;

use book::content::{Content, PaperContent};
use book::entry::{Body, Entry};
use paper::Kept;
use units::Hash;

/// What entries name: which kind of file, and the SHA-256 of its bytes.
pub(crate) type Named = BTreeSet<(Kept, Hash)>;

/// Everything that an entry has kept under its hash.
pub(crate) fn named(entry: &Entry) -> Named {
    let (Body::Begin { content: Content::Paper(paper), .. }
    | Body::Amend { content: Content::Paper(paper), .. }) = &entry.body
    else {
        return Named::new();
    };
    kept_for(paper).collect()
}

/// Everything that is kept for a paper: its photo, the photo before it was straightened, and its document.
pub fn kept_for(paper: &PaperContent) -> impl Iterator<Item = (Kept, Hash)> + use<> {
    let photos = [Some(paper.photo), paper.whole].into_iter().flatten();
    let document = paper.page.map(|page| (Kept::Document, page.document));
    photos.map(|photo| (Kept::Photo, photo)).chain(document)
}
