//! A book goes out, and a book comes in.
//!
//! Neither is a plain request, because a file goes with it that may be large. The slow work needs no door:
//!
//! ```text
//! out:  Door::pack_up -> Packing::save -> Door::hand_over
//! in:   open_book_file -> Door::examine -> BookFile::keep_papers -> Door::take_book_in
//! ```
//!
//! The line that hands a book over is signed by `pack_up`, stands in the file, and is written by `hand_over` once the
//! file is whole on the disk; the file gets its name only after that. So an interruption leaves a book that was not
//! handed over, or one that was and whose file can be written again.

use std::collections::BTreeSet;
use std::fs::File;
use std::io::{BufWriter, Write};
use std::path::Path;

use book::content::{Content, HandoverContent};
use book::entry::Signed;
use exchange::{Contents, ExchangeError, Parcel, Passphrase, Target};
use paper::{Kept, PhotoStore};
use rules::running::{OdometerStatus, Reading};
use units::{BookId, Hash};

use crate::car::Car;
use crate::write::ask_about;
use crate::{Door, HandoverForm, PackedView, ReceivedView, Refusal, forms, screens};

/// A book that can be packed.
#[derive(Debug)]
pub struct Packing {
    book: BookId,
    entries: Vec<Signed>,
    /// The line that hands the book over, where it is not written yet.
    handover: Option<Signed>,
    papers: BTreeSet<(Kept, Hash)>,
    store: PhotoStore,
    /// A file without a name, should nobody give it one.
    scratch: File,
}

/// A file that is whole and has no name yet.
#[derive(Debug)]
pub struct Packed {
    handover: Option<Signed>,
    file: Output,
    view: PackedView,
}

#[derive(Debug)]
enum Output {
    Named(Target),
    /// For a browser that saves it itself; it is gone when it is closed.
    Nameless(File),
}

impl Door {
    /// A file without a name, on the disk of the shelf, for bytes that come in piece by piece.
    pub fn scratch_file(&self) -> Result<File, Refusal> {
        tempfile::tempfile_in(&self.folder)
            .map_err(|error| crate::refuse_file(&self.folder.display().to_string(), &error))
    }

    /// Gathers what goes to the next owner, and signs the line that hands the book over.
    ///
    /// A book that was handed over here before can be packed again; what was said then holds, and a form that says
    /// otherwise is refused.
    pub fn pack_up(&self, book: &str, form: &HandoverForm) -> Result<Packing, Refusal> {
        let book: BookId = book.parse()?;
        let before = self.shelf.handed_over(book)?;
        let (handover, papers) = match before {
            Some(before) => {
                self.refuse_what_differs(book, form, &before.content)?;
                (None, before.content.papers)
            }
            None => (Some(self.sign_handover(book, form)?), !form.without_papers),
        };
        let mut entries = self.shelf.entries(book)?;
        entries.extend(handover.clone());
        let papers = if papers { self.kept_papers(book)? } else { BTreeSet::new() };
        let (store, scratch) = (self.photos.clone(), self.scratch_file()?);
        Ok(Packing { book, entries, handover, papers, store, scratch })
    }

    fn sign_handover(&self, book: BookId, form: &HandoverForm) -> Result<Signed, Refusal> {
        let car = self.car_of(book)?;
        let said = self.said(&car, form)?;
        if let Some(shown) = said.shown {
            let reading = Reading { day: said.day, shown, status: OdometerStatus::Actual };
            ask_about(&car, &car.track, reading, &form.keep.into())
                .map_err(|refusal| refusal.at("reading"))?;
        }
        Ok(self.shelf.sign_handover(self.stamp()?, book, said)?)
    }

    fn said(&self, car: &Car, form: &HandoverForm) -> Result<HandoverContent, Refusal> {
        let day = forms::past_day(&form.day, self.clock.today(), "day")?;
        let typed = Some(form.reading.as_str()).filter(|text| !text.trim().is_empty());
        let shown = typed.map(|text| forms::reading_text(text, car.unit(), "reading")).transpose()?;
        let words = forms::note(&form.words, "words")?;
        Ok(HandoverContent { day, shown, words, papers: !form.without_papers, ends: Vec::new() })
    }

    /// What is left open in the form is as it was. The rest must be, so that nobody believes, say, that the papers stay
    /// here because he says so now.
    fn refuse_what_differs(
        &self,
        book: BookId,
        form: &HandoverForm,
        before: &HandoverContent,
    ) -> Result<(), Refusal> {
        let said = self.said(&*self.car_of(book)?, form)?;
        let same = (form.day.trim().is_empty() || said.day == before.day)
            && (said.shown.is_none() || said.shown == before.shown)
            && (said.words.is_empty() || said.words == before.words)
            && (said.papers || !before.papers);
        if same { Ok(()) } else { Err(Refusal::new("handed-over").with("day", before.day)) }
    }

    /// Everything that is kept for the papers that count.
    pub(crate) fn kept_papers(&self, book: BookId) -> Result<BTreeSet<(Kept, Hash)>, Refusal> {
        let mut kept = BTreeSet::new();
        for row in self.shelf.papers(book)? {
            for version in self.shelf.versions(book, row.subject)? {
                if let Some(Content::Paper(paper)) = version.content {
                    kept.extend(exchange::kept_for(&paper));
                }
            }
        }
        Ok(kept)
    }

    /// Writes the line that hands the book over, and gives the file its name.
    ///
    /// Refuses a book in which something was written since it was packed; nothing is handed over then, and the file is
    /// gone.
    pub fn hand_over(&mut self, packed: Packed) -> Result<PackedView, Refusal> {
        self.hand_over_nameless(packed).map(|(view, _)| view)
    }

    /// The same for a file that a browser saves: answers the file, to be read from its beginning.
    pub fn hand_over_nameless(&mut self, packed: Packed) -> Result<(PackedView, Option<File>), Refusal> {
        let Packed { handover, file, view } = packed;
        let marked = handover.is_some();
        if let Some(handover) = handover {
            let written = self.shelf.merge(&[handover]);
            written.map_err(|error| match error {
                book::BookError::Fork { .. } | book::BookError::Gap(_) => Refusal::new("written-meanwhile"),
                other => other.into(),
            })?;
        }
        match file {
            Output::Named(target) => {
                let finished = target.finish().map_err(|error| name_refused(error.into(), marked));
                let path = finished?.display().to_string();
                Ok((PackedView { path, ..view }, None))
            }
            Output::Nameless(file) => Ok((view, Some(file))),
        }
    }
}

/// The file gets its name last, since one without its line in the book would let two owners write on: so that when it
/// can not have it, the book is handed over already, and its owner has to know that the file can be written again.
fn name_refused(refusal: Refusal, marked: bool) -> Refusal {
    let reason = refusal.values.get("reason").cloned();
    match refusal.code.as_str() {
        "file-exists" | "file" if marked => {
            let path = refusal.values.get("path").cloned().unwrap_or_default();
            let why = if reason.is_some() { "refused" } else { "taken" };
            Refusal::new("handover-no-name")
                .with("path", path)
                .with("why", why)
                .with("reason", reason.unwrap_or_default())
        }
        _ => refusal,
    }
}

impl Packing {
    /// Writes the file that is to stand at `path`, where nothing may stand yet. An empty passphrase locks nothing.
    pub fn save(mut self, path: &Path, passphrase: &str) -> Result<Packed, Refusal> {
        let passphrase = lock_with(passphrase)?;
        let mut target = Target::begin(path)?;
        let (contents, missing) = self.contents();
        target.fill(|out| exchange::pack(&contents, passphrase.as_ref(), out))?;
        let bytes = target.bytes()?;
        Ok(packed(&contents, self.handover, &missing, passphrase.is_some(), bytes, Output::Named(target)))
    }

    /// Writes a file without a name, for a browser that saves it itself.
    pub fn nameless(mut self, passphrase: &str) -> Result<Packed, Refusal> {
        let passphrase = lock_with(passphrase)?;
        let (contents, missing) = self.contents();
        let mut out = BufWriter::new(&self.scratch);
        exchange::pack(&contents, passphrase.as_ref(), &mut out)?;
        let flushed = out.flush();
        drop(out);
        let known = flushed.and_then(|()| self.scratch.metadata());
        let bytes = known.map_err(|error| Refusal::from(ExchangeError::Stream(error)))?.len();
        let file = Output::Nameless(self.scratch);
        Ok(packed(&contents, self.handover, &missing, passphrase.is_some(), bytes, file))
    }

    /// What is there and undamaged, and what is not; the entries go out with it.
    fn contents(&mut self) -> (Contents, Vec<Hash>) {
        let sound = |(kept, hash): &&(Kept, Hash)| self.store.check_kept(*kept, *hash).is_ok();
        let (papers, missing): (Vec<_>, Vec<_>) = self.papers.iter().partition(sound);
        let (entries, store) = (std::mem::take(&mut self.entries), self.store.clone());
        let missing = missing.into_iter().map(|(_, hash): (Kept, Hash)| hash).collect();
        (Contents { book: self.book, entries, papers, store }, missing)
    }
}

fn packed(
    contents: &Contents,
    handover: Option<Signed>,
    missing: &[Hash],
    locked: bool,
    bytes: u64,
    file: Output,
) -> Packed {
    let view = PackedView {
        path: String::new(),
        bytes,
        entries: contents.entries.len(),
        papers: contents.papers.len(),
        locked,
        missing: missing.iter().map(ToString::to_string).collect(),
    };
    Packed { handover, file, view }
}

fn lock_with(passphrase: &str) -> Result<Option<Passphrase>, Refusal> {
    let given = Some(passphrase).filter(|text| !text.is_empty());
    Ok(given.map(|text| Passphrase::new(text.to_owned())).transpose()?)
}

/// A book file that was read through.
#[derive(Debug)]
pub struct BookFile {
    parcel: Parcel,
    store: Option<PhotoStore>,
    papers: usize,
}

/// Reads a file through that an owner has written for the next one. Needs no door and takes the time.
pub fn open_book_file(file: File, passphrase: &str) -> Result<BookFile, Refusal> {
    let parcel = match lock_with(passphrase) {
        Ok(passphrase) => Parcel::open(file, passphrase.as_ref())?,
        // What could never have locked a file does not open one.
        Err(_) => return Err(ExchangeError::WrongPassphrase.into()),
    };
    Ok(BookFile { parcel, store: None, papers: 0 })
}

impl BookFile {
    /// Keeps its photos and documents. Needs no door and takes the time; [`Door::examine`] comes before it.
    pub fn keep_papers(&mut self) -> Result<(), Refusal> {
        if let Some(store) = &self.store {
            self.papers = self.parcel.keep_papers(store)?;
        }
        Ok(())
    }
}

impl Door {
    /// Verifies every signature and every chain, holds them against what stands on the shelf, and writes nothing.
    pub fn examine(&mut self, file: &mut BookFile) -> Result<(), Refusal> {
        self.shelf.try_merge(file.parcel.entries())?;
        file.store = Some(self.photos.clone());
        Ok(())
    }

    /// Writes what a file holds into the book.
    pub fn take_book_in(&mut self, file: &BookFile) -> Result<ReceivedView, Refusal> {
        let book = file.parcel.book();
        let known = self.shelf.count(book)? > 0;
        let merged = self.shelf.merge(file.parcel.entries())?;
        let missing = self.missing_papers(book)?;
        let last = self.shelf.handovers(book)?.into_iter().rfind(|row| row.struck.is_none());
        Ok(ReceivedView {
            vehicle: screens::vehicle_line(&*self.car_of(book)?),
            entries: file.parcel.entries().len(),
            new: merged.new,
            known,
            papers: file.papers,
            // They may have come by another file, as by one of an earlier owner.
            papers_stayed: !missing.is_empty() && last.as_ref().is_some_and(|row| !row.content.papers),
            never_handed_over: last.is_none(),
            missing: missing.iter().map(ToString::to_string).collect(),
            words: last.map(|row| row.content.words).unwrap_or_default(),
            writers: self.writers(book)?,
        })
    }

    /// What the book names and the store does not have.
    pub(crate) fn missing_papers(&self, book: BookId) -> Result<Vec<Hash>, Refusal> {
        let missing = self.kept_papers(book)?.into_iter().filter(|(kept, hash)| match kept {
            Kept::Photo => !self.photos.has(*hash),
            Kept::Document => !self.photos.has_document(*hash),
        });
        Ok(missing.map(|(_, hash)| hash).collect())
    }
}
