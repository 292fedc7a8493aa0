//! Why a book can not be opened, read or written.

use std::path::PathBuf;

use units::cbor::CborError;
use units::{BookId, Day, Hash, SubjectId, WriterKey};

use crate::entry::Millis;

/// What went wrong, and what would be right.
#[derive(Debug, thiserror::Error)]
pub enum BookError {
    /// A file of the shelf can not be read or written.
    #[error("can not {operation} {}: {source}", .path.display())]
    File {
        /// What was tried.
        operation: &'static str,
        /// With which file.
        path: PathBuf,
        /// What the system said.
        source: std::io::Error,
    },
    /// Another copy of the program has the shelf open.
    #[error("another copy of Wellkept has this shelf open; close it first")]
    InUse,
    /// The shelf was written by a newer version of the program.
    #[error("this shelf was written by a newer version of Wellkept; update it to read the shelf")]
    Newer,
    /// The database is damaged and was set aside whole.
    #[error("the shelf's database is damaged; it was set aside as {}, and a new one begins on the next start", .0.display())]
    Damaged(PathBuf),
    /// The device's key is not of the form that the program writes.
    #[error("the key of this device in {} is damaged; put back a copy of it", .0.display())]
    Key(PathBuf),
    /// The disk is full.
    #[error("the disk is full; nothing was written, and nothing is lost")]
    DiskFull,
    /// There is no such book on the shelf.
    #[error("there is no book {0} on this shelf")]
    NoSuchBook(BookId),
    /// There is no such line in the book.
    #[error("there is no line {0} in this book")]
    NoSuchLine(SubjectId),
    /// A line can only be amended by another of its kind.
    #[error("the line {0} is of another kind and can not be amended this way")]
    OtherKind(SubjectId),
    /// A struck-out line can not be struck out again.
    #[error("the line {0} is struck out already")]
    Struck(SubjectId),
    /// This device has handed the book over.
    #[error(
        "this book was handed over on {day} and is read-only here; take the handover back to write in it again"
    )]
    HandedOver {
        /// The line of the handover.
        subject: SubjectId,
        /// The day that it names.
        day: Day,
    },
    /// A handover is taken back by whoever wrote it.
    #[error("the handover {0} was written by another device, and only that one can take it back")]
    OthersHandover(SubjectId),
    /// Bytes that should be an entry are none.
    #[error("these bytes are no entry: {0}")]
    NoEntry(#[from] CborError),
    /// The signature of an entry does not verify.
    #[error("the signature of entry {0} does not verify; take the file from its source again")]
    Signature(Hash),
    /// An entry follows one that is not there.
    #[error("entry {0} follows one that is missing; take the whole book")]
    Gap(Hash),
    /// A writer's chain has two different entries in one place.
    #[error(
        "the key {writer} wrote two different entries with the number {number}; one of the two books was rewritten"
    )]
    Fork {
        /// The hash of the entry that came in.
        hash: Hash,
        /// Whose chain.
        writer: WriterKey,
        /// The number of the first place that differs, from 0.
        number: u64,
        /// When the entry that came in says it was written.
        time: Millis,
    },
    /// A handover names an entry that is not there.
    #[error(
        "the handover of {day} names entry {number} of the key {writer}, which is missing or another one"
    )]
    LeftOut {
        /// The day of the handover.
        day: Day,
        /// Whose chain.
        writer: WriterKey,
        /// The number of the entry that it names, from 0.
        number: u64,
    },
    /// The database refuses for another reason.
    #[error("the database refuses: {0}")]
    Database(rusqlite::Error),
}

impl From<rusqlite::Error> for BookError {
    fn from(error: rusqlite::Error) -> BookError {
        match error.sqlite_error_code() {
            Some(rusqlite::ErrorCode::DiskFull) => BookError::DiskFull,
            Some(rusqlite::ErrorCode::DatabaseBusy | rusqlite::ErrorCode::DatabaseLocked) => BookError::InUse,
            _ => BookError::Database(error),
        }
    }
}

impl BookError {
    /// Turns what the system said about a file into an error that names the file.
    pub(crate) fn file(
        operation: &'static str,
        path: &std::path::Path,
    ) -> impl FnOnce(std::io::Error) -> BookError {
        let path = path.to_owned();
        move |source| match source.kind() {
            std::io::ErrorKind::StorageFull => BookError::DiskFull,
            _ => BookError::File { operation, path, source },
        }
    }
}
