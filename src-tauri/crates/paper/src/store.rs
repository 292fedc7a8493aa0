//! The folder in which photos are kept under the SHA-256 of their bytes.
//!
//! ```text
//! photos/3f/3fa9….jpg    the photo; this is what a backup takes
//! thumbs/3f/3fa9….jpg    its thumbnail; made anew from the photo when lost
//! ```

use std::fs;
use std::io::ErrorKind;
use std::path::{Path, PathBuf};
use std::time::{Duration, SystemTime};

use units::Hash;

use crate::files::{remove, sweep, sync_folder, write_whole};
use crate::prepare::{Photo, Prepared, hash_of, prepare, thumb_of};
use crate::{Operation, PaperError};

/// How long a half-written file must have lain untouched before [`PhotoStore::open`] removes it: one hour.
pub const LEFT_OVER_AGE: Duration = Duration::from_hours(1);

/// A folder of photos. Several programs may use the same one at once.
#[derive(Debug, Clone)]
pub struct PhotoStore {
    photos: PathBuf,
    thumbs: PathBuf,
}

impl PhotoStore {
    /// Opens the store in the folder `root`, making it if need be, and removes what an interrupted intake left half
    /// written more than [`LEFT_OVER_AGE`] before `now`.
    pub fn open(root: &Path, now: SystemTime) -> Result<PhotoStore, PaperError> {
        let store = PhotoStore { photos: root.join("photos"), thumbs: root.join("thumbs") };
        for folder in [&store.photos, &store.thumbs] {
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

    /// Keeps a photo that was prepared before. One that is there already, undamaged, is not written again.
    pub fn keep(&self, prepared: &Prepared) -> Result<Photo, PaperError> {
        let photo = prepared.photo();
        let (name, photos) = (file_name(photo.hash), folder(&self.photos, photo.hash));
        if self.check(photo.hash).is_ok() {
            // Another program may have renamed it into place and not yet brought that to the disk.
            sync_folder(&photos)?;
            return Ok(photo);
        }
        // The thumbnail goes first, so that the photo's own name is the last thing to appear.
        write_whole(&folder(&self.thumbs, photo.hash), &name, prepared.thumb())?;
        write_whole(&photos, &name, prepared.jpeg())?;
        Ok(photo)
    }

    /// The bytes of a photo, a JPEG.
    pub fn full(&self, hash: Hash) -> Result<Vec<u8>, PaperError> {
        read(&self.photos, hash)
    }

    /// The bytes of a photo's thumbnail, a JPEG; made anew when it is lost or unreadable.
    pub fn thumb(&self, hash: Hash) -> Result<Vec<u8>, PaperError> {
        read(&self.thumbs, hash).or_else(|_| self.make_thumb(hash))
    }

    fn make_thumb(&self, hash: Hash) -> Result<Vec<u8>, PaperError> {
        let thumb = thumb_of(&self.full(hash)?).map_err(|_| PaperError::Damaged(hash))?;
        // A thumbnail that cannot be kept, on a full disk say, can be shown all the same.
        let _ = write_whole(&folder(&self.thumbs, hash), &file_name(hash), &thumb);
        Ok(thumb)
    }

    /// Whether the store has a photo of this name, whatever its state.
    pub fn has(&self, hash: Hash) -> bool {
        path(&self.photos, hash).is_file()
    }

    /// Deletes a photo and its thumbnail for good; what is not there is gone already.
    ///
    /// When this returns, neither comes back after a loss of power. The photo's own name is the last to vanish, so
    /// that [`PhotoStore::has`] tells of what an interruption left.
    pub fn remove(&self, hash: Hash) -> Result<(), PaperError> {
        remove(&path(&self.thumbs, hash))?;
        remove(&path(&self.photos, hash))
    }

    /// Reads a photo through and holds its bytes against its name.
    ///
    /// [`PaperError::NotFound`] says that it is missing, [`PaperError::Damaged`] that its bytes changed.
    pub fn check(&self, hash: Hash) -> Result<(), PaperError> {
        if hash_of(&self.full(hash)?) == hash { Ok(()) } else { Err(PaperError::Damaged(hash)) }
    }
}

fn read(tree: &Path, hash: Hash) -> Result<Vec<u8>, PaperError> {
    let path = path(tree, hash);
    fs::read(&path).map_err(|error| match error.kind() {
        ErrorKind::NotFound => PaperError::NotFound(hash),
        _ => Operation::Read.on(&path)(error),
    })
}

fn path(tree: &Path, hash: Hash) -> PathBuf {
    folder(tree, hash).join(file_name(hash))
}

/// Photos are spread over 256 folders, so that none grows too long to list.
fn folder(tree: &Path, hash: Hash) -> PathBuf {
    tree.join(format!("{:02x}", hash.0[0]))
}

fn file_name(hash: Hash) -> String {
    format!("{hash}.jpg")
}
