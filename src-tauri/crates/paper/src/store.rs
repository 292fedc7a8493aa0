//! The folder in which photos are kept under the SHA-256 of their bytes.
//!
//! ```text
//! photos/3f/3fa9….jpg    the photo; this is what a backup takes
//! thumbs/3f/3fa9….jpg    its thumbnail; made anew from the photo when lost
//! documents/3f/3fa9….pdf a document as it came in; a backup takes it too
//! ```

use std::collections::BTreeSet;
use std::fs::{self, File};
use std::io::ErrorKind;
use std::panic::resume_unwind;
use std::path::{Path, PathBuf};
use std::thread;
use std::time::{Duration, SystemTime};

use units::Hash;

use crate::files::{inner_files, remove, sweep, sync_folder, touch, write_lightly, write_whole};
use crate::jpeg::has_both_ends;
use crate::pdf::check_document;
use crate::prepare::{Photo, Prepared, check_photo, hash_of, prepare, thumb_of};
use crate::{Operation, PaperError};

/// How long a half-written file must have lain untouched before [`PhotoStore::open`] removes it: one hour.
pub const LEFT_OVER_AGE: Duration = Duration::from_hours(1);

/// How the names of photos end, and of documents.
const PHOTO: &str = "jpg";
const DOCUMENT: &str = "pdf";

/// What is kept under a name.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Kept {
    /// A photo, a JPEG.
    Photo,
    /// A document, a PDF.
    Document,
}

/// A folder of photos and documents. Several programs may use the same one at once.
#[derive(Debug, Clone)]
pub struct PhotoStore {
    photos: PathBuf,
    thumbs: PathBuf,
    documents: PathBuf,
}

impl PhotoStore {
    /// Opens the store in the folder `root`, making it if need be, and removes what an interrupted intake left half
    /// written more than [`LEFT_OVER_AGE`] before `now`.
    pub fn open(root: &Path, now: SystemTime) -> Result<PhotoStore, PaperError> {
        let [photos, thumbs, documents] = ["photos", "thumbs", "documents"].map(|tree| root.join(tree));
        let store = PhotoStore { photos, thumbs, documents };
        for folder in [&store.photos, &store.thumbs, &store.documents] {
            fs::create_dir_all(folder).map_err(Operation::CreateFolder.on(folder))?;
            sweep(folder, now, LEFT_OVER_AGE)?;
        }
        Ok(store)
    }

    /// Prepares the bytes of a JPEG, PNG or WebP file and keeps the photo.
    ///
    /// When this returns, the photo outlasts a loss of power. The same bytes give the same photo.
    pub fn take_in(&self, bytes: &[u8]) -> Result<Photo, PaperError> {
        self.keep(&prepare(bytes)?)
    }

    /// Keeps a photo that was prepared before, and [`Prepared::whole`] before it where there is one, each under its own
    /// name. One that is there already, undamaged, is not written again.
    pub fn keep(&self, prepared: &Prepared) -> Result<Photo, PaperError> {
        let Some(whole) = prepared.whole() else { return self.keep_one(prepared) };
        // Most of the time is spent waiting for the disk, which does both at once.
        thread::scope(|scope| {
            let kept = scope.spawn(|| self.keep_one(whole));
            let paper = self.keep_one(prepared);
            kept.join().unwrap_or_else(|panic| resume_unwind(panic)).and(paper)
        })
    }

    fn keep_one(&self, prepared: &Prepared) -> Result<Photo, PaperError> {
        let photo = prepared.photo();
        let (name, photos) = (file_name(photo.hash, PHOTO), folder(&self.photos, photo.hash));
        if self.check(photo.hash).is_ok() {
            // Another program may have renamed it into place and not yet brought that to the disk.
            sync_folder(&photos)?;
            return Ok(photo);
        }
        // The thumbnail goes first, so that the photo's own name is the last thing to appear.
        write_lightly(&folder(&self.thumbs, photo.hash), &name, prepared.thumb())?;
        write_whole(&photos, &name, prepared.jpeg())?;
        Ok(photo)
    }

    /// The bytes of a photo, a JPEG.
    pub fn full(&self, hash: Hash) -> Result<Vec<u8>, PaperError> {
        read(&self.photos, hash, PHOTO)
    }

    /// The bytes of a photo's thumbnail, a JPEG; made anew when it is lost or unreadable.
    pub fn thumb(&self, hash: Hash) -> Result<Vec<u8>, PaperError> {
        let kept = read(&self.thumbs, hash, PHOTO).ok().filter(|thumb| has_both_ends(thumb));
        kept.map_or_else(|| self.make_thumb(hash), Ok)
    }

    fn make_thumb(&self, hash: Hash) -> Result<Vec<u8>, PaperError> {
        let thumb = thumb_of(&self.full(hash)?).map_err(|_| PaperError::Damaged(hash))?;
        // A thumbnail that cannot be kept, on a full disk say, can be shown all the same.
        let _ = write_lightly(&folder(&self.thumbs, hash), &file_name(hash, PHOTO), &thumb);
        Ok(thumb)
    }

    /// Whether the store has a photo of this name, whatever its state.
    pub fn has(&self, hash: Hash) -> bool {
        path(&self.photos, hash, PHOTO).is_file()
    }

    /// Deletes a photo and its thumbnail for good; what is not there is gone already.
    ///
    /// When this returns, neither comes back after a loss of power. The photo's own name is the last to vanish, so
    /// that [`PhotoStore::has`] tells of what an interruption left.
    pub fn remove(&self, hash: Hash) -> Result<(), PaperError> {
        remove(&path(&self.thumbs, hash, PHOTO))?;
        remove(&path(&self.photos, hash, PHOTO))
    }

    /// Reads a photo through and holds its bytes against its name.
    ///
    /// [`PaperError::NotFound`] says that it is missing, [`PaperError::Damaged`] that its bytes changed.
    pub fn check(&self, hash: Hash) -> Result<(), PaperError> {
        if hash_of(&self.full(hash)?) == hash { Ok(()) } else { Err(PaperError::Damaged(hash)) }
    }

    /// Keeps the bytes of a PDF as they are, and gives the name under which they are kept. Whether its pages can be set
    /// is for [`pages`](crate::pages) to say.
    pub fn keep_document(&self, bytes: &[u8]) -> Result<Hash, PaperError> {
        check_document(bytes)?;
        let hash = hash_of(bytes);
        let folder = folder(&self.documents, hash);
        if self.check_document(hash).is_ok() {
            sync_folder(&folder)?;
        } else {
            write_whole(&folder, &file_name(hash, DOCUMENT), bytes)?;
        }
        Ok(hash)
    }

    /// Opens what is kept under a name for reading, with its length in bytes.
    pub fn open_kept(&self, kept: Kept, hash: Hash) -> Result<(File, u64), PaperError> {
        let (tree, ending) = self.place(kept);
        let path = path(tree, hash, ending);
        let opened = File::open(&path).and_then(|file| Ok((file.metadata()?.len(), file)));
        match opened {
            Ok((length, file)) => Ok((file, length)),
            Err(error) if error.kind() == ErrorKind::NotFound => Err(PaperError::NotFound(hash)),
            Err(error) => Err(Operation::Read.on(&path)(error)),
        }
    }

    /// Keeps the bytes that another device has kept under this name; answers whether they were new here.
    ///
    /// They are what that device made of a photo, and are not encoded anew, or they would lose the name that the book
    /// has for them. So they are held against the name, and against the bounds of what is shown: a JPEG whose end is
    /// there and whose header states no more than [`MAX_PIXELS`](crate::MAX_PIXELS), or a PDF.
    pub fn keep_sent(&self, kept: Kept, hash: Hash, bytes: &[u8]) -> Result<bool, PaperError> {
        if hash_of(bytes) != hash {
            return Err(PaperError::Damaged(hash));
        }
        match kept {
            Kept::Photo => check_photo(bytes)?,
            Kept::Document => check_document(bytes)?,
        }
        let (tree, ending) = self.place(kept);
        if self.check_kept(kept, hash).is_ok() {
            // An entry that comes after it is going to name it, so it must not count as left over until then.
            touch(&path(tree, hash, ending), SystemTime::now())?;
            return Ok(false);
        }
        write_whole(&folder(tree, hash), &file_name(hash, ending), bytes)?;
        Ok(true)
    }

    /// Reads what is kept under a name through and holds its bytes against it, as [`PhotoStore::check`] does.
    pub fn check_kept(&self, kept: Kept, hash: Hash) -> Result<(), PaperError> {
        match kept {
            Kept::Photo => self.check(hash),
            Kept::Document => self.check_document(hash),
        }
    }

    /// Deletes what is kept under a name, as [`PhotoStore::remove`] does.
    pub fn remove_kept(&self, kept: Kept, hash: Hash) -> Result<(), PaperError> {
        match kept {
            Kept::Photo => self.remove(hash),
            Kept::Document => self.remove_document(hash),
        }
    }

    /// What stands in the store under a name of its own and was last written more than `age` before `now`: what is
    /// younger may be on its way into a book.
    pub fn list(&self, now: SystemTime, age: Duration) -> Result<BTreeSet<(Kept, Hash)>, PaperError> {
        let trees = [&self.photos, &self.thumbs, &self.documents];
        let kinds = [(Kept::Photo, PHOTO), (Kept::Photo, PHOTO), (Kept::Document, DOCUMENT)];
        let (mut old, mut young) = (BTreeSet::new(), BTreeSet::new());
        for (tree, (kept, ending)) in trees.into_iter().zip(kinds) {
            for (path, is_old) in inner_files(tree, now, age)? {
                let Some(hash) = named_by(&path, ending) else { continue };
                if is_old {
                    old.insert((kept, hash))
                } else {
                    young.insert((kept, hash))
                };
            }
        }
        // A photo and its thumbnail are of one age, that of the younger.
        Ok(&old - &young)
    }

    fn place(&self, kept: Kept) -> (&Path, &'static str) {
        match kept {
            Kept::Photo => (&self.photos, PHOTO),
            Kept::Document => (&self.documents, DOCUMENT),
        }
    }

    /// The bytes of a document, a PDF, to the bit as they came in; others under its name are refused.
    pub fn document(&self, hash: Hash) -> Result<Vec<u8>, PaperError> {
        let bytes = read(&self.documents, hash, DOCUMENT)?;
        if hash_of(&bytes) == hash { Ok(bytes) } else { Err(PaperError::Damaged(hash)) }
    }

    /// Whether the store has a document of this name, whatever its state.
    pub fn has_document(&self, hash: Hash) -> bool {
        path(&self.documents, hash, DOCUMENT).is_file()
    }

    /// Deletes a document for good; the photos of its pages stay. What is not there is gone already.
    pub fn remove_document(&self, hash: Hash) -> Result<(), PaperError> {
        remove(&path(&self.documents, hash, DOCUMENT))
    }

    /// Reads a document through and holds its bytes against its name, as [`PhotoStore::check`] does with a photo.
    pub fn check_document(&self, hash: Hash) -> Result<(), PaperError> {
        self.document(hash).map(drop)
    }
}

/// The name that a file of the store bears; nothing for a file that is not the store's.
fn named_by(path: &Path, ending: &str) -> Option<Hash> {
    let name = path.file_name()?.to_str()?;
    name.strip_suffix(ending)?.strip_suffix('.')?.parse().ok().filter(|hash| file_name(*hash, ending) == name)
}

fn read(tree: &Path, hash: Hash, ending: &str) -> Result<Vec<u8>, PaperError> {
    let path = path(tree, hash, ending);
    fs::read(&path).map_err(|error| match error.kind() {
        ErrorKind::NotFound => PaperError::NotFound(hash),
        _ => Operation::Read.on(&path)(error),
    })
}

fn path(tree: &Path, hash: Hash, ending: &str) -> PathBuf {
    folder(tree, hash).join(file_name(hash, ending))
}

/// Photos are spread over 256 folders, so that none grows too long to list.
fn folder(tree: &Path, hash: Hash) -> PathBuf {
    tree.join(format!("{:02x}", hash.0[0]))
}

fn file_name(hash: Hash, ending: &str) -> String {
    format!("{hash}.{ending}")
}
