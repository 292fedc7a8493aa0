//! Photos: raw bytes in, raw bytes out.

use book::Change;
use book::content::{Content, PaperContent};
use paper::Prepared;
use units::{BookId, Hash};

use crate::{Door, Refusal, WrittenView};

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
