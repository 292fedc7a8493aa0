//! The place of a file that is being written: whole or not at all, and never over another one.

use std::io::{BufWriter, Write};
use std::path::{Path, PathBuf};

use tempfile::NamedTempFile;

use crate::ExchangeError;

/// A file on its way to its place. Dropped, it is gone.
#[derive(Debug)]
pub struct Target {
    file: NamedTempFile,
    path: PathBuf,
}

impl Target {
    /// Begins a file that is to stand at `path`, where nothing may stand yet.
    pub fn begin(path: &Path) -> Result<Target, ExchangeError> {
        if path.symlink_metadata().is_ok() {
            return Err(ExchangeError::Exists(path.to_owned()));
        }
        let folder = path.parent().filter(|folder| !folder.as_os_str().is_empty());
        let folder = folder.unwrap_or(Path::new("."));
        let file = tempfile::Builder::new().prefix(".handover-").suffix(".part").tempfile_in(folder);
        Ok(Target { file: file.map_err(ExchangeError::file(path))?, path: path.to_owned() })
    }

    /// Fills the file, and has its bytes on the disk when this returns.
    pub fn fill(
        &mut self,
        write: impl FnOnce(&mut dyn Write) -> Result<(), ExchangeError>,
    ) -> Result<(), ExchangeError> {
        let mut out = BufWriter::new(self.file.as_file_mut());
        write(&mut out)?;
        out.flush().map_err(ExchangeError::file(&self.path))?;
        drop(out);
        self.file.as_file().sync_all().map_err(ExchangeError::file(&self.path))
    }

    /// How many bytes it has so far.
    pub fn bytes(&self) -> Result<u64, ExchangeError> {
        self.file.as_file().metadata().map(|known| known.len()).map_err(ExchangeError::file(&self.path))
    }

    /// Gives the file its name.
    pub fn finish(self) -> Result<PathBuf, ExchangeError> {
        let path = self.path;
        match self.file.persist_noclobber(&path) {
            Ok(_) => Ok(path),
            Err(refused) => Err(ExchangeError::file(&path)(refused.error)),
        }
    }
}
