//! Writing a file so that it is there whole or not at all, and deleting it so that it stays gone, also when the
//! power fails.

use std::fs;
use std::io::{ErrorKind, Write};
use std::path::{Path, PathBuf};
use std::time::{Duration, SystemTime};

use tempfile::NamedTempFile;

use crate::{Operation, PaperError};

const TEMP_PREFIX: &str = ".intake-";
const TEMP_SUFFIX: &str = ".part";

/// Writes `bytes` as `folder/name`: under a temporary name first, brought to the disk, then renamed into place.
///
/// When this returns, the file outlasts a loss of power. When it fails, nothing stands under `name` that was not
/// there before. Only this user may read the file.
pub(crate) fn write_whole(folder: &Path, name: &str, bytes: &[u8]) -> Result<(), PaperError> {
    let path = folder.join(name);
    let temp = temporary(folder, &path, bytes)?;
    temp.as_file().sync_all().map_err(Operation::Sync.on(&path))?;
    temp.persist(&path).map_err(|refused| Operation::Rename.on(&path)(refused.error))?;
    sync_folder(folder)
}

/// Writes `bytes` as `folder/name` without waiting for the disk: after a loss of power it may be missing or empty.
///
/// For what can be made anew, and whose reader looks whether it is whole.
pub(crate) fn write_lightly(folder: &Path, name: &str, bytes: &[u8]) -> Result<(), PaperError> {
    let path = folder.join(name);
    let temp = temporary(folder, &path, bytes)?;
    temp.persist(&path).map_err(|refused| Operation::Rename.on(&path)(refused.error)).map(drop)
}

/// A file that vanishes unless it is renamed, in the folder of the file at `path` that it is to become.
fn temporary(folder: &Path, path: &Path, bytes: &[u8]) -> Result<NamedTempFile, PaperError> {
    make_folder(folder)?;
    let temp = tempfile::Builder::new().prefix(TEMP_PREFIX).suffix(TEMP_SUFFIX).tempfile_in(folder);
    let mut temp = temp.map_err(Operation::Write.on(path))?;
    temp.write_all(bytes).map_err(Operation::Write.on(path))?;
    Ok(temp)
}

/// Deletes a file, unless it is gone already.
pub(crate) fn remove(path: &Path) -> Result<(), PaperError> {
    match fs::remove_file(path) {
        Err(error) if error.kind() == ErrorKind::NotFound => Ok(()),
        Err(error) => Err(Operation::Remove.on(path)(error)),
        Ok(()) => path.parent().map_or(Ok(()), sync_folder),
    }
}

/// Makes a folder, whose parent exists, unless it is there.
fn make_folder(folder: &Path) -> Result<(), PaperError> {
    if folder.is_dir() {
        return Ok(());
    }
    fs::create_dir_all(folder).map_err(Operation::CreateFolder.on(folder))?;
    folder.parent().map_or(Ok(()), sync_folder)
}

/// Brings the names in a folder to the disk.
#[cfg(unix)]
pub(crate) fn sync_folder(folder: &Path) -> Result<(), PaperError> {
    fs::File::open(folder).and_then(|opened| opened.sync_all()).map_err(Operation::Sync.on(folder))
}

/// Does nothing: here a folder cannot be synced, and the file system's journal keeps a rename in order.
#[cfg(not(unix))]
pub(crate) fn sync_folder(_folder: &Path) -> Result<(), PaperError> {
    Ok(())
}

/// Removes the temporary files, one folder down, that were last written more than `age` before `now`.
///
/// A younger one may belong to a program that is writing it at this moment. One that cannot be removed stays: it
/// takes up room but is never served.
pub(crate) fn sweep(folder: &Path, now: SystemTime, age: Duration) -> Result<(), PaperError> {
    for inner in list(folder)? {
        if !inner.path().is_dir() {
            continue;
        }
        for file in list(&inner.path())? {
            if is_temporary(&file) && is_older(&file, now, age) {
                let _ = fs::remove_file(file.path());
            }
        }
    }
    Ok(())
}

/// The files one folder down, with whether each was last written more than `age` before `now`; none in a folder that is
/// not there.
pub(crate) fn inner_files(
    folder: &Path,
    now: SystemTime,
    age: Duration,
) -> Result<Vec<(PathBuf, bool)>, PaperError> {
    let mut files = Vec::new();
    if !folder.is_dir() {
        return Ok(files);
    }
    for inner in list(folder)?.into_iter().filter(|inner| inner.path().is_dir()) {
        let found = list(&inner.path())?.into_iter();
        files.extend(found.map(|file| (file.path(), is_older(&file, now, age))));
    }
    Ok(files)
}

/// Has a file count as written just now.
pub(crate) fn touch(path: &Path, now: SystemTime) -> Result<(), PaperError> {
    let opened = fs::OpenOptions::new().write(true).open(path);
    opened.and_then(|file| file.set_modified(now)).map_err(Operation::Write.on(path))
}

fn list(folder: &Path) -> Result<Vec<fs::DirEntry>, PaperError> {
    fs::read_dir(folder).and_then(Iterator::collect).map_err(Operation::List.on(folder))
}

fn is_temporary(file: &fs::DirEntry) -> bool {
    let name = file.file_name();
    let name = name.to_string_lossy();
    name.starts_with(TEMP_PREFIX) && name.ends_with(TEMP_SUFFIX)
}

/// A file that vanishes meanwhile, or that was written after `now`, is not older.
fn is_older(file: &fs::DirEntry, now: SystemTime, age: Duration) -> bool {
    let written = file.metadata().and_then(|known| known.modified()).ok();
    let since = written.and_then(|written| now.duration_since(written).ok());
    since.is_some_and(|since| since > age)
}
