//! Photos: raw bytes in, raw bytes out, and the one thing that can truly be removed.
//!
//! A photo is on the disk before the entry that names it, and deleted after the entry that throws it away. So an
//! interruption leaves a photo too many and never a line whose photo is missing; [`Door::clear_thrown_away`]
//! takes up what is left.

use std::collections::BTreeSet;

use book::content::{Content, PaperContent};
use book::{Change, LineFilter};
use paper::Prepared;
use units::{BookId, Hash, SubjectId};

use crate::{Door, Refusal, WrittenView, forms};

/// Which picture of a photo is wanted.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PhotoSize {
    /// As it is kept, at most 2 400 pixels on the long side.
    Full,
    /// 320 pixels on the long side.
    Thumb,
}

impl Door {
    /// Takes a photo into the tray of a book: prepared, on the disk, and only then written.
    ///
    /// A photo that the book holds already is the same paper, and nothing is written.
    pub fn take_in(&mut self, book: &str, bytes: &[u8]) -> Result<WrittenView, Refusal> {
        self.file(book, &paper::prepare(bytes)?)
    }

    /// The same with a photo that [`paper::prepare`] has worked on, which needs no door and takes the time.
    pub fn file(&mut self, book: &str, prepared: &Prepared) -> Result<WrittenView, Refusal> {
        let book: BookId = book.parse()?;
        self.shelf.vehicle(book)?;
        let photo = self.photos.keep(prepared)?;
        let known = self.shelf.papers(book)?.into_iter().find(|row| row.photo == photo.hash);
        if let Some(known) = known {
            let warnings = vec!["paper-known".to_owned()];
            return Ok(WrittenView { book: book.to_string(), subject: known.subject.to_string(), warnings });
        }
        let content = PaperContent { photo: photo.hash, width: photo.width, height: photo.height };
        self.write(book, Change::Begin(Content::Paper(content)))
    }

    /// Throws a paper away: strikes its line out, and only then deletes its photo.
    ///
    /// When the line is written and the photo could not be deleted, the answer warns of it with `photo-left`.
    pub(crate) fn throw_away(
        &mut self,
        book: BookId,
        paper: SubjectId,
        why: &str,
    ) -> Result<WrittenView, Refusal> {
        let Content::Paper(content) = self.shelf.line(book, paper)?.content else {
            return Err(Refusal::new("other-kind"));
        };
        if self.shelf.tied(book)?.contains(&paper) {
            return Err(Refusal::new("paper-in-visit"));
        }
        let written =
            self.write(book, Change::StrikeOut { subject: paper, why: forms::note(why, "why")? })?;
        let deleted = self.counting_photos().and_then(|counting| self.delete(content.photo, &counting));
        let warnings = if deleted.is_ok() { Vec::new() } else { vec!["photo-left".to_owned()] };
        Ok(WrittenView { warnings, ..written })
    }

    /// Deletes the photos of papers that were thrown away and are still there, such as after a loss of power.
    pub(crate) fn clear_thrown_away(&self) -> Result<(), Refusal> {
        let counting = self.counting_photos()?;
        for book in self.shelf.books()? {
            for line in self.shelf.lines(book, &LineFilter::default())? {
                if let (Content::Paper(paper), Some(_)) = (&line.content, &line.struck) {
                    self.delete(paper.photo, &counting)?;
                }
            }
        }
        Ok(())
    }

    /// The photos of the papers that count, in any book.
    fn counting_photos(&self) -> Result<BTreeSet<Hash>, Refusal> {
        let mut photos = BTreeSet::new();
        for book in self.shelf.books()? {
            photos.extend(self.shelf.papers(book)?.into_iter().map(|row| row.photo));
        }
        Ok(photos)
    }

    /// Deletes a photo, unless a paper that counts has it too.
    fn delete(&self, photo: Hash, counting: &BTreeSet<Hash>) -> Result<(), Refusal> {
        if counting.contains(&photo) { Ok(()) } else { Ok(self.photos.remove(photo)?) }
    }

    /// The JPEG of a photo.
    pub fn photo(&self, hash: &str, size: PhotoSize) -> Result<Vec<u8>, Refusal> {
        let hash: Hash = hash.parse()?;
        Ok(match size {
            PhotoSize::Full => self.photos.full(hash)?,
            PhotoSize::Thumb => self.photos.thumb(hash)?,
        })
    }
}

/// Works on the bytes of a photo: upright, without metadata, of bounded size. Needs no door and takes the time.
pub fn prepare_photo(bytes: &[u8]) -> Result<Prepared, Refusal> {
    Ok(paper::prepare(bytes)?)
}
