//! What can go wrong in this room, each in one sentence.

use crate::CodeError;

/// Why a card could not be made or read.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum CardError {
    /// The card code was refused.
    #[error(transparent)]
    Code(#[from] CodeError),
    /// Not even a card without visits fits the square that the sheet allows.
    #[error(
        "the card does not fit a square of version {version} even without visits; choose a larger size, or shorten the car's name, the items' names or the viewer address"
    )]
    DoesNotFit {
        /// The largest version that was allowed, 1 to 40.
        version: u8,
    },
    /// A text is too long for the square that the sheet allows.
    #[error("the text does not fit a square of version {version}; shorten it")]
    TextTooLong {
        /// The largest version that was allowed, 1 to 40.
        version: u8,
    },
    /// The sheet could not be set; the reason is Typst's own.
    #[error("the sheet could not be set: {0}")]
    Setting(String),
    /// The file is larger than this room reads.
    #[error("the file has more than {megabytes} MiB; a photo or PDF of the card needs far less")]
    FileTooLarge {
        /// The limit in MiB.
        megabytes: usize,
    },
    /// The picture has more pixels than this room reads.
    #[error("the picture has more than {megapixels} million pixels; take one in the camera's normal size")]
    PictureTooLarge {
        /// The limit in million pixels.
        megapixels: u64,
    },
    /// The bytes are neither PNG nor JPEG nor PDF, or are damaged.
    #[error(
        "the file is no PNG, JPEG or PDF that can be read; take a photo of the card or use the PDF itself"
    )]
    NoPicture,
    /// No square was found, or none could be read.
    #[error(
        "no square could be read; take the picture from straight above, in even light, with the white margin in view"
    )]
    NoSquare,
}
