//! Files that the owner asked for, and those that he names.

use std::fmt::Display;
use std::fs::File;
use std::io::{ErrorKind, Write};
use std::path::Path;

use tempfile::{NamedTempFile, PersistError};

use crate::Refusal;

/// Writes a file whole or not at all: beside its place, brought to the disk, then renamed. Answers its path.
///
/// A folder that is not there is refused, since one misspelt would otherwise be made.
pub fn save(path: &Path, bytes: &[u8]) -> Result<String, Refusal> {
    written(path, bytes, |file| file.persist(path))
}

/// The same at a place where nothing may stand yet.
pub fn save_new(path: &Path, bytes: &[u8]) -> Result<String, Refusal> {
    written(path, bytes, |file| file.persist_noclobber(path))
}

fn written(
    path: &Path,
    bytes: &[u8],
    name: impl FnOnce(NamedTempFile) -> Result<File, PersistError>,
) -> Result<String, Refusal> {
    let folder = path.parent().filter(|folder| !folder.as_os_str().is_empty()).unwrap_or(Path::new("."));
    let written = NamedTempFile::new_in(folder)
        .and_then(|mut file| file.write_all(bytes).and_then(|()| file.as_file().sync_all()).map(|()| file))
        .and_then(|file| name(file).map_err(|error| error.error));
    let shown = path.display().to_string();
    match written {
        Ok(_) => Ok(shown),
        Err(error) if error.kind() == ErrorKind::StorageFull => Err(Refusal::new("disk-full")),
        Err(error) if error.kind() == ErrorKind::AlreadyExists => {
            Err(Refusal::new("file-exists").with("path", shown))
        }
        Err(error) => Err(refuse_file(&shown, &error)),
    }
}

/// A file or folder that the system refuses.
pub fn refuse_file(path: &str, reason: &dyn Display) -> Refusal {
    Refusal::new("file").with("path", path).with("reason", reason)
}

/// All bytes of a plain file that is no larger than any paper or card may be; both are looked at before it is opened,
/// because a pipe may never end and a large file would take as much memory.
pub fn read_file(path: &Path) -> Result<Vec<u8>, Refusal> {
    let name = path.display().to_string();
    let refused = |error: std::io::Error| refuse_file(&name, &error);
    let about = std::fs::metadata(path).map_err(refused)?;
    if !about.is_file() {
        return Err(Refusal::new("no-plain-file").with("path", &name));
    }
    crate::check_file_size(about.len())?;
    std::fs::read(path).map_err(refused)
}
