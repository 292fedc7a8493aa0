//! The files of a shelf.

use std::fs::{self, File, OpenOptions, TryLockError};
use std::io::Write;
use std::path::{Path, PathBuf};

use rusqlite::{Connection, ErrorCode, OpenFlags};
use units::WriterKey;

use crate::BookError;
use crate::entry::Writer;

const DATABASE: &str = "wellkept.db";
const KEY: &str = "device.key";
const LOCK: &str = "shelf.lock";

/// Takes the shelf for this program alone.
pub(super) fn lock(folder: &Path) -> Result<File, BookError> {
    fs::create_dir_all(folder).map_err(BookError::file("create", folder))?;
    let path = folder.join(LOCK);
    let file = OpenOptions::new().create(true).truncate(false).write(true).open(&path);
    let file = file.map_err(BookError::file("open", &path))?;
    match file.try_lock() {
        Ok(()) => Ok(file),
        Err(TryLockError::WouldBlock) => Err(BookError::InUse),
        Err(TryLockError::Error(error)) => Err(BookError::file("lock", &path)(error)),
    }
}

/// Opens the database; one that is damaged is set aside first, and the damage is told.
pub(super) fn database(folder: &Path) -> Result<Connection, BookError> {
    let path = folder.join(DATABASE);
    match probe(&path) {
        Ok(()) => Ok(Connection::open(&path)?),
        Err(error) if is_damage(&error) => Err(BookError::Damaged(set_aside(folder)?)),
        Err(error) => Err(error.into()),
    }
}

/// Reads enough of the database to meet damage at its head and in its schema.
///
/// Read only: a connection that may write removes the write-ahead log of a file that it does not recognise,
/// and the last entries would be lost with it.
fn probe(path: &Path) -> Result<(), rusqlite::Error> {
    if !path.exists() {
        return Ok(());
    }
    let connection = Connection::open_with_flags(path, OpenFlags::SQLITE_OPEN_READ_ONLY)?;
    connection.query_row("SELECT count(*) FROM sqlite_schema", [], |_| Ok(()))
}

fn is_damage(error: &rusqlite::Error) -> bool {
    matches!(error.sqlite_error_code(), Some(ErrorCode::DatabaseCorrupt | ErrorCode::NotADatabase))
}

/// Moves the database with its companions into a new folder beside it. Nothing is ever deleted.
fn set_aside(folder: &Path) -> Result<PathBuf, BookError> {
    let free = |number: &u32| !folder.join(format!("aside-{number}")).exists();
    let number = (1..u32::MAX).find(free).unwrap_or(u32::MAX);
    let aside = folder.join(format!("aside-{number}"));
    fs::create_dir(&aside).map_err(BookError::file("create", &aside))?;
    for suffix in ["", "-wal", "-shm"] {
        let name = format!("{DATABASE}{suffix}");
        let from = folder.join(&name);
        if from.exists() {
            fs::rename(&from, aside.join(&name)).map_err(BookError::file("set aside", &from))?;
        }
    }
    Ok(aside)
}

/// Reads the device's key, or makes one and has it on the disk before anything is signed with it.
pub(super) fn writer(folder: &Path, secret: impl FnOnce() -> [u8; 32]) -> Result<Writer, BookError> {
    let path = folder.join(KEY);
    match fs::read_to_string(&path) {
        Ok(text) => {
            // A secret has the same written form as a public key: 64 hexadecimal digits.
            let secret: WriterKey = text.trim().parse().map_err(|_| BookError::Key(path))?;
            Ok(Writer::from_secret(&secret.0))
        }
        Err(error) if error.kind() == std::io::ErrorKind::NotFound => {
            let writer = Writer::from_secret(&secret());
            keep_key(folder, &path, &writer).map_err(BookError::file("write", &path))?;
            Ok(writer)
        }
        Err(error) => Err(BookError::file("read", &path)(error)),
    }
}

fn keep_key(folder: &Path, path: &Path, writer: &Writer) -> std::io::Result<()> {
    let part = folder.join(format!("{KEY}.part"));
    let mut options = OpenOptions::new();
    options.create(true).truncate(true).write(true);
    // Nobody else on this machine may sign in the owner's name.
    #[cfg(unix)]
    std::os::unix::fs::OpenOptionsExt::mode(&mut options, 0o600);
    let mut file = options.open(&part)?;
    writeln!(file, "{}", WriterKey(writer.secret()))?;
    file.sync_all()?;
    fs::rename(&part, path)?;
    File::open(folder)?.sync_all()
}
