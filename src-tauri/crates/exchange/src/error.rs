//! Why a book can not be packed, or a file not be taken in.

use std::io::{self, ErrorKind};
use std::path::{Path, PathBuf};

use paper::PaperError;
use units::Hash;
use units::cbor::CborError;

use crate::{LONGEST_PASSPHRASE, MOST_WORK};

/// What went wrong, and what would be right.
#[derive(Debug, thiserror::Error)]
pub enum ExchangeError {
    /// The file is of another kind.
    #[error("the file is no book that was handed over; ask for the file that the last owner wrote")]
    OtherFile,
    /// The file ends early.
    #[error("the file ends before the book does; copy it once more from where it came")]
    CutShort,
    /// The file contradicts its own form.
    #[error("the file is damaged ({0}); copy it once more from where it came")]
    Damaged(String),
    /// The file was written by a newer version.
    #[error("the file is of version {0}, which this program does not know; update the program")]
    Newer(u64),
    /// The file is locked, and no passphrase was given.
    #[error("the file is locked; give the passphrase that the last owner chose")]
    Locked,
    /// The passphrase does not open the file.
    #[error("this passphrase does not open the file; ask the last owner for the right one")]
    WrongPassphrase,
    /// The lock asks for more work than is done.
    #[error("the lock of the file asks for scrypt work of 2^{0}; at most 2^{MOST_WORK} is done")]
    TooMuchWork(u8),
    /// The passphrase can not be used.
    #[error("a passphrase has from 1 to {LONGEST_PASSPHRASE} bytes")]
    Passphrase,
    /// There is more of something than a file may hold.
    #[error("the book has more than one file may hold: {most} {key}", key = .what.key())]
    TooMuch {
        /// Of what.
        what: What,
        /// The most.
        most: u64,
    },
    /// A photo or a document is in the file that no entry names.
    #[error("the file holds something under the name {0} that no entry of the book names; take no such file")]
    Unnamed(Hash),
    /// A photo or a document does not have the bytes of its name.
    #[error("what the file holds under the name {0} is something else; copy it once more from where it came")]
    Changed(Hash),
    /// The place of the file is taken.
    #[error("there is a file '{}' already; choose another name", .0.display())]
    Exists(PathBuf),
    /// What the photo store says.
    #[error(transparent)]
    Paper(#[from] PaperError),
    /// The disk is full.
    #[error("the disk is full; nothing was written, and nothing is lost")]
    DiskFull,
    /// A file can not be read or written.
    #[error("'{}' can not be read or written: {source}", .path.display())]
    File {
        /// Which.
        path: PathBuf,
        /// What the system said.
        source: io::Error,
    },
    /// The file can not be read or written while it is open.
    #[error("the file can not be read or written: {0}")]
    Stream(io::Error),
}

/// Of what there may be too much.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum What {
    /// Entries.
    Entries,
    /// Bytes of entries.
    EntryBytes,
    /// Photos or documents.
    Papers,
    /// Bytes of one photo or document.
    PaperBytes,
}

impl What {
    /// Its name, by which a face says it.
    pub const fn key(self) -> &'static str {
        match self {
            What::Entries => "entries",
            What::EntryBytes => "entry-bytes",
            What::Papers => "papers",
            What::PaperBytes => "paper-bytes",
        }
    }
}

impl ExchangeError {
    pub(crate) fn damaged(reason: &(impl ToString + ?Sized)) -> ExchangeError {
        ExchangeError::Damaged(reason.to_string())
    }

    /// What reading the archive came to: a fault of the file, unless the system itself could not read.
    pub(crate) fn reading(error: io::Error) -> ExchangeError {
        match error.kind() {
            ErrorKind::UnexpectedEof => ExchangeError::CutShort,
            ErrorKind::InvalidData | ErrorKind::InvalidInput | ErrorKind::Other => {
                ExchangeError::damaged(&error)
            }
            _ => ExchangeError::Stream(error),
        }
    }

    pub(crate) fn writing(error: io::Error) -> ExchangeError {
        match error.kind() {
            ErrorKind::StorageFull => ExchangeError::DiskFull,
            _ => ExchangeError::Stream(error),
        }
    }

    pub(crate) fn file(path: &Path) -> impl FnOnce(io::Error) -> ExchangeError {
        let path = path.to_owned();
        move |source| match source.kind() {
            ErrorKind::StorageFull => ExchangeError::DiskFull,
            ErrorKind::AlreadyExists => ExchangeError::Exists(path),
            _ => ExchangeError::File { path, source },
        }
    }
}

impl From<CborError> for ExchangeError {
    fn from(error: CborError) -> ExchangeError {
        ExchangeError::damaged(&error)
    }
}
