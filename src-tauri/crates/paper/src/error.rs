//! Why a photo could not be taken in, kept or found.

use std::fmt;
use std::io::{self, ErrorKind};
use std::path::{Path, PathBuf};

use image::ImageError;
use units::Hash;

use crate::pdf::MAX_PAGES;
use crate::prepare::{MAX_FILE_BYTES, MAX_PIXELS, MAX_UNPACKED_BYTES};
use crate::sniff::{Foreign, Format};

const MIB: u64 = 1024 * 1024;

/// Why a photo could not be taken in, kept or found: what was wrong, and what would be right.
#[derive(Debug, thiserror::Error)]
pub enum PaperError {
    /// There are no bytes at all.
    #[error("the file is empty; choose a JPEG, PNG or WebP photo, or a PDF")]
    Empty,
    /// The file has more than [`MAX_FILE_BYTES`].
    #[error("the file has {bytes} bytes; a photo may have at most {} MiB", MAX_FILE_BYTES / MIB)]
    TooLarge {
        /// The bytes of the file.
        bytes: u64,
    },
    /// The file is of a kind that is recognised and not kept.
    #[error("the file is {0}; a paper comes in as a JPEG, PNG or WebP photo or a PDF, so {advice}", advice = .0.advice())]
    Foreign(Foreign),
    /// The file is of no kind that is recognised.
    #[error(
        "the file is no picture that is known here; a paper comes in as a JPEG, PNG or WebP photo or a PDF"
    )]
    Unknown,
    /// The header states more than [`MAX_PIXELS`].
    #[error("the picture has {width} x {height} pixels; a photo may have at most {} megapixels", MAX_PIXELS / 1_000_000)]
    TooManyPixels {
        /// Pixels across.
        width: u32,
        /// Pixels down.
        height: u32,
    },
    /// The picture, or what is packed into the file beside it, takes more memory than is allowed.
    #[error("the {0} file takes more than {most} MiB when unpacked; save it as a plain JPEG", most = MAX_UNPACKED_BYTES / MIB)]
    TooMuchMemory(Format),
    /// The file ends before the picture does.
    #[error("the {0} file ends before the picture does; copy it once more from where it was taken")]
    CutShort(Format),
    /// The file contradicts its own format.
    #[error("the {format} file is damaged; copy it once more from where it was taken")]
    Broken {
        /// The format that the file claims.
        format: Format,
        /// What the decoder met.
        source: ImageError,
    },
    /// The file uses a rare feature of its format.
    #[error("the {format} file is of a rare kind that cannot be opened; save it as a plain JPEG")]
    Unsupported {
        /// The format of the file.
        format: Format,
        /// What the decoder met.
        source: ImageError,
    },
    /// The picture could not be made smaller or written as a JPEG.
    #[error("the picture could not be written as a JPEG ({0}); save it as a plain JPEG and choose that")]
    Encoding(String),
    /// The file is a document, whose pages are papers; it is no photo.
    #[error(
        "the file is a PDF document; each of its pages is a paper of its own, so take it in as a document"
    )]
    Document,
    /// The document is encrypted.
    #[error("the PDF document is locked; save it without a password, or take a photo of its page")]
    Locked,
    /// The document has more than [`MAX_PAGES`].
    #[error(
        "the PDF document has {pages} pages; a receipt may have at most {MAX_PAGES}, so save those that matter"
    )]
    TooManyPages {
        /// The pages of the document.
        pages: usize,
    },
    /// No paper can lie between the corners that were drawn.
    #[error(
        "the corners enclose no paper; draw them clockwise round it, at least a tenth of the photo apart"
    )]
    Corners,
    /// A file that reading text needs is missing, damaged, or another than this version was made for.
    #[error("'{file}' cannot be used for reading text: {reason}; install reading once more")]
    Model {
        /// The name of the file.
        file: &'static str,
        /// What is wrong with it.
        reason: String,
    },
    /// The text on a photo could not be read.
    #[error("the text on the photo could not be read ({0}); type in what it says")]
    NotRead(String),
    /// Reading was stopped by whoever asked for it.
    #[error("reading the text was stopped; ask for it once more, or type in what the photo says")]
    Stopped,
    /// Taking a file in was stopped by whoever asked for it.
    #[error("taking the file in was stopped; choose it once more to take it in")]
    IntakeStopped,
    /// The store has no photo of this name.
    #[error("there is no photo {0} in the store; bring it back from a backup")]
    NotFound(Hash),
    /// The bytes stored under this name are no longer those that were stored.
    #[error("the stored photo {0} is damaged; bring it back from a backup or take the paper in once more")]
    Damaged(Hash),
    /// The disk, or what this user may use of it, is full.
    #[error("the disk is full, so '{}' was not written; make room and try again", path.display())]
    DiskFull {
        /// What was to be written.
        path: PathBuf,
    },
    /// The folder may not be written.
    #[error("'{}' may not be written; allow writing there or choose another folder", path.display())]
    ReadOnly {
        /// What was to be written.
        path: PathBuf,
    },
    /// The system refused anything else.
    #[error("could not {operation} '{}' ({source}); check that its disk can be reached", path.display())]
    Io {
        /// What was tried.
        operation: Operation,
        /// On which file or folder.
        path: PathBuf,
        /// What the system said.
        source: io::Error,
    },
}

/// What was being done to a file or folder when the system refused.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Operation {
    /// Making a folder.
    CreateFolder,
    /// Reading a file.
    Read,
    /// Listing a folder.
    List,
    /// Writing a file.
    Write,
    /// Bringing a file or folder safely to the disk.
    Sync,
    /// Giving a file its final name.
    Rename,
    /// Deleting a file.
    Remove,
}

impl fmt::Display for Operation {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Operation::CreateFolder => "create the folder",
            Operation::Read => "read",
            Operation::List => "list the folder",
            Operation::Write => "write",
            Operation::Sync => "bring to the disk",
            Operation::Rename => "rename a file to",
            Operation::Remove => "delete",
        })
    }
}

impl Operation {
    fn changes_the_disk(self) -> bool {
        !matches!(self, Operation::Read | Operation::List)
    }

    /// Turns what the system said about `path` into this room's error.
    pub(crate) fn on(self, path: &Path) -> impl FnOnce(io::Error) -> PaperError {
        let path = path.to_owned();
        move |source| match source.kind() {
            ErrorKind::StorageFull | ErrorKind::QuotaExceeded => PaperError::DiskFull { path },
            ErrorKind::ReadOnlyFilesystem | ErrorKind::PermissionDenied if self.changes_the_disk() => {
                PaperError::ReadOnly { path }
            }
            _ => PaperError::Io { operation: self, path, source },
        }
    }
}

impl PaperError {
    /// Turns what a decoder met in a file of this format into this room's error.
    pub(crate) fn decoding(format: Format) -> impl Fn(ImageError) -> PaperError {
        move |source| match source {
            ImageError::Limits(_) => PaperError::TooMuchMemory(format),
            ImageError::Unsupported(_) => PaperError::Unsupported { format, source },
            ImageError::IoError(ref error) if error.kind() == ErrorKind::UnexpectedEof => {
                PaperError::CutShort(format)
            }
            _ => PaperError::Broken { format, source },
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn refusal(operation: Operation, kind: ErrorKind) -> PaperError {
        operation.on(Path::new("shelf/photos"))(kind.into())
    }

    #[test]
    fn a_full_disk_has_its_own_sentence() {
        let said = refusal(Operation::Write, ErrorKind::StorageFull).to_string();
        assert_eq!(said, "the disk is full, so 'shelf/photos' was not written; make room and try again");
        assert!(matches!(refusal(Operation::Sync, ErrorKind::QuotaExceeded), PaperError::DiskFull { .. }));
    }

    #[test]
    fn a_folder_that_may_not_be_written_has_its_own_sentence() {
        for kind in [ErrorKind::ReadOnlyFilesystem, ErrorKind::PermissionDenied] {
            let said = refusal(Operation::CreateFolder, kind).to_string();
            assert_eq!(
                said,
                "'shelf/photos' may not be written; allow writing there or choose another folder"
            );
        }
    }

    #[test]
    fn a_file_that_may_not_be_read_is_not_called_read_only() {
        let error = refusal(Operation::Read, ErrorKind::PermissionDenied);
        assert!(matches!(error, PaperError::Io { operation: Operation::Read, .. }));
        assert!(error.to_string().starts_with("could not read 'shelf/photos' ("));
    }
}
