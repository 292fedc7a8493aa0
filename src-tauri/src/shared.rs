//! Papers that come from outside: shared by another app, or named when the program was started.
//!
//! On Android `SharedPapers.java` copies what is shared into a folder of the shelf, and the ending of each name says
//! what became of it. There it waits until the ui says for which book; a copy is deleted once it is filed, or refused
//! for what it is. A file that was named is its owner's own and is only read.

use std::fs;
use std::path::{Path, PathBuf};
use std::sync::{Mutex, MutexGuard, PoisonError};

use door::{Begun, FiledView, Intakes, Refusal, Response};
use serde::Serialize;
use tauri::State;

use crate::Opened;

/// A paper that waits, as the ui hears of it.
#[derive(Debug, Serialize)]
pub struct Waiting {
    /// By what it is asked for.
    id: String,
    /// What its owner calls it; empty for a copy, whose name was made here.
    name: String,
}

/// What waits.
pub(crate) struct Shared {
    /// Where the copies stand; there may be none, and no folder.
    folder: PathBuf,
    /// The files that were named. Held while a paper is taken in, so that none is taken in twice.
    named: Mutex<Vec<Named>>,
}

/// A file that was named when the program was started.
struct Named {
    id: String,
    path: PathBuf,
}

/// What became of something that was shared, which is the ending of its name.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Copied {
    /// It is whole and waits.
    Whole,
    /// The program began to take it in, and ended before it was done.
    Begun,
    /// It was larger than any paper may be.
    TooLarge,
    /// It did not arrive: the other app did not hand it over, or the disk did not take it.
    Lost,
    /// So many waited that it found no room, and others perhaps with it.
    TooMany,
}

/// Why a paper was not filed.
enum Fault {
    /// It can not be read and never will be.
    Lasting(Refusal),
    /// A book did not take it, or its owner stopped it: it may be filed later.
    Passing(Refusal),
}

/// Where a paper is taken in.
pub(crate) struct Tray<'a> {
    pub opened: &'a Opened,
    pub book: &'a str,
    /// By what it is stopped.
    pub begun: Begun<'a>,
}

impl Copied {
    /// The endings; those of a copy are in `SharedFolder.java` too.
    const ENDINGS: [(&'static str, Copied); 5] = [
        ("paper", Copied::Whole),
        ("begun", Copied::Begun),
        ("too-large", Copied::TooLarge),
        ("not-copied", Copied::Lost),
        ("too-many", Copied::TooMany),
    ];

    /// What the name of a file says; nothing where it is half copied, or none of ours.
    fn of(path: &Path) -> Option<Copied> {
        let ending = path.extension()?.to_str()?;
        Copied::ENDINGS.iter().find(|(known, _)| *known == ending).map(|(_, copied)| *copied)
    }

    /// Why it can not be taken in; nothing where that can be tried.
    fn refusal(self) -> Option<Refusal> {
        match self {
            Copied::Whole => None,
            // Nothing is left of it but that it was larger than everything that is accepted.
            Copied::TooLarge => door::check_file_size(u64::MAX).err(),
            Copied::Begun => Some(refuse("shared-begun")),
            Copied::Lost => Some(refuse("shared-not-copied")),
            Copied::TooMany => Some(refuse("shared-too-many")),
        }
    }
}

impl Shared {
    /// What waits in the folder `shared` of a shelf, and the files that were named.
    pub(crate) fn new(shelf: &Path, files: Vec<PathBuf>) -> Shared {
        let named = |(number, path)| Named { id: format!("named-{number}"), path };
        let named = Mutex::new(files.into_iter().enumerate().map(named).collect());
        Shared { folder: shelf.join("shared"), named }
    }

    fn named(&self) -> MutexGuard<'_, Vec<Named>> {
        self.named.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// The copies in the order in which they were shared, which is that of their names.
    fn copies(&self) -> Vec<PathBuf> {
        let entries = fs::read_dir(&self.folder).into_iter().flatten().flatten();
        let ours = |path: &PathBuf| Copied::of(path).is_some();
        let mut copies: Vec<PathBuf> = entries.map(|entry| entry.path()).filter(ours).collect();
        copies.sort();
        copies
    }

    fn waiting(&self) -> Vec<Waiting> {
        let named = self.named();
        let copies = self.copies().into_iter().map(|path| Waiting { id: id(&path), name: String::new() });
        let name = |path: &Path| path.file_name().unwrap_or(path.as_os_str()).to_string_lossy().into_owned();
        copies
            .chain(named.iter().map(|file| Waiting { id: file.id.clone(), name: name(&file.path) }))
            .collect()
    }

    /// Takes one paper into the tray of a book; nothing where it waits no more.
    fn take_in(&self, tray: &Tray<'_>, wanted: &str) -> Result<FiledView, Refusal> {
        let mut named = self.named();
        if let Some(at) = named.iter().position(|file| file.id == wanted) {
            let tried = tray.file(&named[at].path);
            if !matches!(tried, Err(Fault::Passing(_))) {
                named.remove(at);
            }
            return tried.map_err(Fault::refusal);
        }
        match self.copies().into_iter().find(|path| id(path) == wanted) {
            Some(path) => take_copy(tray, &path),
            None => Ok(FiledView { papers: Vec::new(), warnings: Vec::new() }),
        }
    }

    /// Leaves one paper out: a copy is deleted, a file that was named is no longer spoken of.
    fn leave_out(&self, unwanted: &str) -> Result<(), Refusal> {
        self.named().retain(|file| file.id != unwanted);
        self.copies().iter().filter(|path| id(path) == unwanted).try_for_each(|path| remove(path))
    }
}

impl Tray<'_> {
    /// Works on a file, which takes long and needs no door, and files it.
    fn file(&self, path: &Path) -> Result<FiledView, Fault> {
        let bytes = door::read_file(path).map_err(Fault::Lasting)?;
        let intake = self.begun.prepare(&bytes, &|| false);
        let intake = intake.map_err(if self.begun.is_stopped() { Fault::Passing } else { Fault::Lasting })?;
        self.opened.with(|door| self.begun.file(door, self.book, &intake)).map_err(Fault::Passing)
    }
}

impl Fault {
    fn refusal(self) -> Refusal {
        match self {
            Fault::Lasting(refusal) | Fault::Passing(refusal) => refusal,
        }
    }
}

/// A copy is asked for by its name without the ending, which tells it from every other.
fn id(copy: &Path) -> String {
    copy.file_stem().unwrap_or_default().to_string_lossy().into_owned()
}

fn refuse(code: &str) -> Refusal {
    Refusal { code: code.to_owned(), field: None, values: std::collections::BTreeMap::new(), can_keep: false }
}

/// Takes a copy in. It has another name in the meantime: a photo that ends the program, as one for which a small
/// device has no memory, would otherwise end it again at every start.
fn take_copy(tray: &Tray<'_>, path: &Path) -> Result<FiledView, Refusal> {
    if let Some(refusal) = Copied::of(path).and_then(Copied::refusal) {
        return remove(path).and(Err(refusal));
    }
    let begun = path.with_extension("begun");
    rename(path, &begun)?;
    match tray.file(&begun) {
        Ok(filed) => remove(&begun).map(|()| filed),
        Err(Fault::Lasting(refusal)) => remove(&begun).and(Err(refusal)),
        Err(Fault::Passing(refusal)) => rename(&begun, path).and(Err(refusal)),
    }
}

fn remove(path: &Path) -> Result<(), Refusal> {
    fs::remove_file(path).map_err(|error| door::refuse_file(&path.display().to_string(), &error))
}

fn rename(from: &Path, to: &Path) -> Result<(), Refusal> {
    fs::rename(from, to).map_err(|error| door::refuse_file(&from.display().to_string(), &error))
}

/// What waits to be taken in.
#[tauri::command(async)]
pub fn shared(shared: State<'_, Shared>) -> Vec<Waiting> {
    shared.waiting()
}

/// Takes one of what waits into the tray of a book, until [`stop_intake`](crate::stop_intake) is called with the ticket.
#[tauri::command(async)]
pub fn take_shared(
    opened: State<'_, Opened>,
    shared: State<'_, Shared>,
    intakes: State<'_, Intakes>,
    book: &str,
    id: &str,
    ticket: &str,
) -> Result<Response, Refusal> {
    let tray = Tray { opened: &opened, book, begun: intakes.begin(ticket) };
    shared.take_in(&tray, id).map(Response::Filed)
}

/// Leaves one of what waits out.
#[tauri::command(async)]
pub fn leave_shared(shared: State<'_, Shared>, id: &str) -> Result<(), Refusal> {
    shared.leave_out(id)
}

#[cfg(test)]
#[path = "shared_tests.rs"]
mod tests;
