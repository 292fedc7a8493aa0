//! Papers: raw bytes in, raw bytes out, and the one thing that can truly be removed.
//!
//! A photo is on the disk before the entry that names it, and deleted after the entry that throws it away. So an
//! interruption leaves a photo too many and never a line whose photo is missing; [`Door::clear_thrown_away`]
//! takes up what is left.

mod document;
mod filing;
mod under_way;

use std::ops::ControlFlow;

use book::content::{Content, ContentKind, PaperContent};
use book::{BookError, Change, LineFilter};
use paper::{Corners, Format, GoOn, Point, Prepared};
use units::{BookId, Hash, SubjectId};

pub use document::Document;

use crate::{Door, FiledView, Refusal, WrittenView, forms};

pub use under_way::{Begun, IntakeProgress, Intakes};

/// Which picture of a photo is wanted.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PhotoSize {
    /// As it is kept, at most 2 400 pixels on the long side.
    Full,
    /// 320 pixels on the long side.
    Thumb,
}

/// A file that was worked on and can be filed.
#[derive(Debug)]
pub enum Intake {
    /// A photo.
    Photo(Prepared),
    /// A document, with a picture of each of its pages.
    Document {
        /// The file as it came.
        bytes: Vec<u8>,
        /// Its pages, from the first.
        pages: Vec<Prepared>,
    },
}

/// Works on the bytes of a photo or a PDF: upright, straightened where the corners are sure, without metadata, of
/// bounded size. Needs no door and takes the time.
pub fn prepare_paper(bytes: &[u8]) -> Result<Intake, Refusal> {
    prepare_paper_while(bytes, &|_| ControlFlow::Continue(()))
}

/// The same as [`prepare_paper`], with `go_on` told how far it is; where that breaks off, it refuses with
/// `intake-stopped`.
fn prepare_paper_while(bytes: &[u8], go_on: &GoOn<'_>) -> Result<Intake, Refusal> {
    match paper::sniff(bytes)? {
        Format::Pdf => {
            Ok(Intake::Document { bytes: bytes.to_vec(), pages: paper::pages_while(bytes, go_on)? })
        }
        Format::Jpeg | Format::Png | Format::Webp => Ok(Intake::Photo(paper::prepare_while(bytes, go_on)?)),
    }
}

/// Refuses a file that is larger than any paper may be, by the size that its folder states, before it is read.
pub fn check_file_size(bytes: u64) -> Result<(), Refusal> {
    Ok(paper::check_file_size(bytes)?)
}

/// Straightens what lies between corners drawn on a photo, in shares of its width and height, clockwise from the
/// paper's upper left. Needs no door.
pub fn straighten_photo(jpeg: &[u8], corners: [[f64; 2]; 4]) -> Result<Prepared, Refusal> {
    let corners = Corners::new(corners.map(|[x, y]| Point { x, y }))?;
    Ok(paper::straighten(jpeg, corners)?)
}

/// The corners of the paper on a photo as it was taken, as [`straighten_photo`] takes them; nothing where they are not
/// beyond doubt. Needs no door.
pub fn found_corners(jpeg: &[u8]) -> Result<Option<[[f64; 2]; 4]>, Refusal> {
    let found = paper::corners_on(jpeg)?;
    Ok(found.map(|corners| corners.points().map(|Point { x, y }| [x, y])))
}

impl Door {
    /// Takes a photo or a PDF into the tray of a book: prepared, on the disk, and only then written.
    pub fn take_in(&mut self, book: &str, bytes: &[u8]) -> Result<FiledView, Refusal> {
        self.file(book, &prepare_paper(bytes)?)
    }

    /// The same with what [`prepare_paper`] has worked on, which needs no door and takes the time.
    ///
    /// A photo that the book holds already is the same paper, and nothing is written for it. All pages of a document
    /// are filed, or none of them.
    pub fn file(&mut self, book: &str, intake: &Intake) -> Result<FiledView, Refusal> {
        let book: BookId = book.parse()?;
        // Before any photo is kept, or one would be left that no line names.
        self.check_writable(book)?;
        self.file_whole(book, intake)
    }

    /// Refuses a line to which no paper can be tied, so that none is filed for it: one that is not there, that is
    /// struck out, or that is of a kind without papers.
    pub fn check_takes_papers(&self, book: &str, line: &str) -> Result<(), Refusal> {
        let book: BookId = book.parse()?;
        self.check_writable(book)?;
        let mut row = self.shelf.line(book, line.parse()?)?;
        if row.struck.is_some() {
            return Err(BookError::Struck(row.subject).into());
        }
        row.content.papers_mut().map(drop).ok_or_else(|| Refusal::new("other-kind"))
    }

    /// Whether a paper stands at this line.
    pub fn is_tied_to(&self, book: &str, paper: &str, line: &str) -> Result<bool, Refusal> {
        let paper: SubjectId = paper.parse()?;
        let mut content = self.shelf.line(book.parse()?, line.parse()?)?.content;
        Ok(content.papers_mut().is_some_and(|papers| papers.contains(&paper)))
    }

    /// Refuses a book that is not there, or that this device has handed over.
    pub(crate) fn check_writable(&self, book: BookId) -> Result<(), Refusal> {
        self.shelf.vehicle(book)?;
        match self.shelf.handed_over(book)? {
            Some(handover) => {
                let (subject, day) = (handover.subject, handover.content.day);
                Err(BookError::HandedOver { subject, day }.into())
            }
            None => Ok(()),
        }
    }

    /// The photo on which the corners of a paper are drawn: as it was taken.
    pub fn whole_photo(&self, book: &str, paper: &str) -> Result<Vec<u8>, Refusal> {
        let content = self.paper(book.parse()?, paper.parse()?)?;
        Ok(self.photos.full(content.whole.unwrap_or(content.photo))?)
    }

    /// Puts a straightened picture in a paper's place, or the photo as it was taken; both stay on the disk.
    pub fn put_straight(
        &mut self,
        book: &str,
        paper: &str,
        straight: Option<&Prepared>,
    ) -> Result<WrittenView, Refusal> {
        let (book, subject): (BookId, SubjectId) = (book.parse()?, paper.parse()?);
        self.check_writable(book)?;
        let before = self.paper(book, subject)?;
        let whole = before.whole.unwrap_or(before.photo);
        let content = if let Some(prepared) = straight {
            let photo = self.photos.keep(prepared)?;
            let (width, height) = (photo.width, photo.height);
            PaperContent { photo: photo.hash, width, height, whole: Some(whole), page: before.page }
        } else {
            let (width, height) = paper::size(&self.photos.full(whole)?)?;
            PaperContent { photo: whole, width, height, whole: None, page: before.page }
        };
        self.write(book, Change::Amend { subject, content: Content::Paper(content), why: String::new() })
    }

    fn paper(&self, book: BookId, subject: SubjectId) -> Result<PaperContent, Refusal> {
        match self.shelf.line(book, subject)?.content {
            Content::Paper(content) => Ok(content),
            _ => Err(Refusal::new("other-kind")),
        }
    }

    /// Throws a paper away: strikes its line out, and only then deletes its photo in every form, and the document of
    /// which it was the last page.
    ///
    /// When the line is written and something could not be deleted, the answer warns of it with `photo-left`.
    pub(crate) fn throw_away(
        &mut self,
        book: BookId,
        paper: SubjectId,
        why: &str,
    ) -> Result<WrittenView, Refusal> {
        self.paper(book, paper)?;
        if self.shelf.is_tied(book, paper)? {
            return Err(Refusal::new("paper-in-visit"));
        }
        let written =
            self.write(book, Change::StrikeOut { subject: paper, why: forms::note(why, "why")? })?;
        let deleted = self.delete(book, paper);
        let warnings = if deleted.is_ok() { Vec::new() } else { vec!["photo-left".to_owned()] };
        Ok(WrittenView { warnings, ..written })
    }

    /// Deletes the photos of papers that were thrown away and are still there, such as after a loss of power.
    pub(crate) fn clear_thrown_away(&self) -> Result<(), Refusal> {
        for book in self.shelf.books()? {
            for line in self.shelf.lines(book, &LineFilter::default())? {
                if line.content.kind() == ContentKind::Paper && line.struck.is_some() {
                    self.delete(book, line.subject)?;
                }
            }
        }
        Ok(())
    }

    /// Everything that was ever kept for a paper.
    fn kept(&self, book: BookId, paper: SubjectId) -> Result<Vec<Hash>, Refusal> {
        let versions = self.shelf.versions(book, paper)?;
        let papers = versions.into_iter().filter_map(|version| match version.content {
            Some(Content::Paper(content)) => Some(content),
            _ => None,
        });
        Ok(papers.flat_map(|content| content.kept()).collect())
    }

    /// Deletes everything that is kept for a paper, save what a paper that counts has too.
    fn delete(&self, book: BookId, paper: SubjectId) -> Result<(), Refusal> {
        for hash in self.kept(book, paper)? {
            if !self.shelf.is_kept(hash)? {
                // A name is that of a photo or of a document; the other is not there, and so is gone already.
                self.photos.remove(hash)?;
                self.photos.remove_document(hash)?;
            }
        }
        Ok(())
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
