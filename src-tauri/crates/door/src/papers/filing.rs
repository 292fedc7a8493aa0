//! One intake is filed whole or not at all: first everything of it is on the disk, then all of its entries are written,
//! in one transaction.

use book::Change;
use book::content::{Content, PageContent, PaperContent};
use paper::Prepared;
use units::{BookId, Hash, SubjectId};

use super::Intake;
use crate::{Door, FiledView, Refusal};

/// Where the line of a paper is found that is being filed.
enum Line {
    /// The book has it.
    Known(SubjectId),
    /// It is begun with this intake, as the n-th.
    Begun(usize),
    /// An earlier page of this intake, the n-th that is begun, looks the same.
    Again(usize),
}

impl Intake {
    fn document(&self) -> Option<&[u8]> {
        match self {
            Intake::Photo(_) => None,
            Intake::Document { bytes, .. } => Some(bytes),
        }
    }

    /// Its photos, in the order of its pages.
    fn photos(&self) -> &[Prepared] {
        match self {
            Intake::Photo(photo) => std::slice::from_ref(photo),
            Intake::Document { pages, .. } => pages,
        }
    }
}

impl Door {
    /// Keeps everything of an intake, and then writes the papers that the book does not have.
    pub(super) fn file_whole(&mut self, book: BookId, intake: &Intake) -> Result<FiledView, Refusal> {
        let document = self.photos.keep_together(intake.document(), intake.photos())?;
        let papers = (1..)
            .zip(intake.photos())
            .map(|(number, photo)| content(photo, document.map(|document| PageContent { document, number })));
        let (mut begun, mut lines) = (Vec::new(), Vec::new());
        for paper in papers {
            lines.push(self.line_for(book, paper, &mut begun)?);
        }
        let changes = begun.into_iter().map(|paper| Change::Begin(Content::Paper(paper))).collect();
        // Where this fails the photos stay, for a disk that failed may have the entries all the same; the check finds
        // those that no entry names.
        let written = self.write_all(book, changes)?;
        Ok(filed(&lines, &written))
    }

    /// The same photo is the same paper, whatever the owner has made of its corners since.
    fn line_for(
        &self,
        book: BookId,
        paper: PaperContent,
        begun: &mut Vec<PaperContent>,
    ) -> Result<Line, Refusal> {
        if let Some(known) = self.shelf.paper_of(book, taken(&paper))? {
            return Ok(Line::Known(known));
        }
        if let Some(at) = begun.iter().position(|other| taken(other) == taken(&paper)) {
            return Ok(Line::Again(at));
        }
        begun.push(paper);
        Ok(Line::Begun(begun.len() - 1))
    }
}

fn content(prepared: &Prepared, page: Option<PageContent>) -> PaperContent {
    let photo = prepared.photo();
    let whole = prepared.whole().map(|whole| whole.photo().hash);
    PaperContent { photo: photo.hash, width: photo.width, height: photo.height, whole, page }
}

/// The photo of a paper as it was taken.
fn taken(paper: &PaperContent) -> Hash {
    paper.whole.unwrap_or(paper.photo)
}

fn filed(lines: &[Line], written: &[SubjectId]) -> FiledView {
    let subject = |line: &Line| match line {
        Line::Known(subject) => Some(*subject),
        Line::Begun(at) | Line::Again(at) => written.get(*at).copied(),
    };
    let known = lines.iter().filter(|line| !matches!(line, Line::Begun(_)));
    FiledView {
        papers: lines.iter().filter_map(subject).map(|subject| subject.to_string()).collect(),
        warnings: known.map(|_| "paper-known".to_owned()).collect(),
    }
}
