//! Refusals: what each room says, under a key that the faces put into words.

use std::collections::BTreeMap;

use book::BookError;
use card::{CardError, CodeError};
use exchange::ExchangeError;
use paper::{Format, PaperError};
use rules::RulesError;
use units::UnitError;

use crate::Refusal;

impl Refusal {
    /// A refusal with this key, which has its row in [`REFUSALS`](crate::REFUSALS).
    pub(crate) fn new(code: &str) -> Refusal {
        Refusal { code: code.to_owned(), field: None, values: BTreeMap::new(), can_keep: false }
    }

    /// Names a value for its sentence.
    #[expect(
        clippy::needless_pass_by_value,
        reason = "numbers, texts and errors alike are handed over at the call"
    )]
    pub(crate) fn with(mut self, name: &str, value: impl ToString) -> Refusal {
        self.values.insert(name.to_owned(), value.to_string());
        self
    }

    /// Names the field that is meant.
    pub(crate) fn at(mut self, field: &str) -> Refusal {
        self.field.get_or_insert_with(|| field.to_owned());
        self
    }

    /// Puts the path of the form before the field that is meant.
    pub(crate) fn within(mut self, form: &str) -> Refusal {
        self.field = Some(self.field.map_or_else(|| form.to_owned(), |field| format!("{form}.{field}")));
        self
    }

    /// Asking again with `keep` will be accepted.
    pub(crate) fn keepable(mut self) -> Refusal {
        self.can_keep = true;
        self
    }
}

impl std::fmt::Display for Refusal {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "{}", self.code)
    }
}

impl std::error::Error for Refusal {}

/// The device gives no random numbers, without which nothing can be signed.
pub(crate) fn randomness() -> Refusal {
    Refusal::new("randomness")
}

impl From<UnitError> for Refusal {
    fn from(error: UnitError) -> Refusal {
        match error {
            UnitError::Day(text) => Refusal::new("day-form").with("text", text),
            UnitError::DayRange => Refusal::new("day-range"),
            UnitError::Distance(text) => Refusal::new("not-a-number").with("text", text),
            UnitError::DistanceRange => Refusal::new("reading-too-long"),
            UnitError::Money { text, currency, decimals } => {
                Refusal::new("money").with("text", text).with("currency", currency).with("decimals", decimals)
            }
            UnitError::Currency(text) => Refusal::new("currency").with("text", text),
            UnitError::Quantity(text) => Refusal::new("quantity").with("text", text),
            UnitError::Id(text) | UnitError::Hash(text) => Refusal::new("not-an-id").with("text", text),
        }
    }
}

impl From<RulesError> for Refusal {
    fn from(error: RulesError) -> Refusal {
        match error {
            RulesError::VinLength(length) => Refusal::new("vin-length").with("length", length),
            RulesError::VinCharacter { character, position } => {
                Refusal::new("vin-character").with("character", character).with("position", position)
            }
            RulesError::IntervalEmpty => Refusal::new("interval-empty"),
            RulesError::IntervalDistance(count) => Refusal::new("interval-distance").with("text", count),
            RulesError::IntervalTime(time) => Refusal::new("interval-months").with("text", time),
            RulesError::IntervalText(text) => Refusal::new("interval-distance").with("text", text),
            RulesError::Measurement(text) => Refusal::new("measurement").with("text", text),
            RulesError::OwnName => {
                Refusal::new("own-item-name").with("most", rules::upkeep::OwnName::LONGEST)
            }
            RulesError::IntervalRange | RulesError::Catalogue { .. } => {
                Refusal::new("catalogue").with("reason", error)
            }
        }
    }
}

impl From<BookError> for Refusal {
    fn from(error: BookError) -> Refusal {
        match error {
            BookError::File { path, source, .. } => {
                Refusal::new("file").with("path", path.display()).with("reason", source)
            }
            BookError::InUse => Refusal::new("shelf-in-use"),
            BookError::Newer => Refusal::new("shelf-newer"),
            BookError::Damaged(path) => Refusal::new("shelf-damaged").with("path", path.display()),
            BookError::Key(path) => Refusal::new("key-damaged").with("path", path.display()),
            BookError::DiskFull => Refusal::new("disk-full"),
            BookError::NoSuchBook(_) => Refusal::new("no-such-book"),
            BookError::NoSuchLine(_) => Refusal::new("no-such-line"),
            BookError::OtherKind(_) => Refusal::new("other-kind"),
            BookError::Struck(_) => Refusal::new("struck"),
            BookError::NoEntry(reason) => Refusal::new("entry").with("reason", reason),
            BookError::Signature(hash) => Refusal::new("signature").with("hash", hash),
            BookError::Gap(hash) => Refusal::new("gap").with("hash", hash),
            BookError::HandedOver { day, .. } => Refusal::new("handed-over").with("day", day),
            BookError::OthersHandover(_) => Refusal::new("others-handover"),
            BookError::Fork { writer, number, time, .. } => Refusal::new("fork")
                .with("key", crate::screens::fingerprint(writer))
                .with("number", number.saturating_add(1))
                .with("day", crate::clock::day_of(time)),
            BookError::LeftOut { day, writer, number } => Refusal::new("left-out")
                .with("key", crate::screens::fingerprint(writer))
                .with("number", number.saturating_add(1))
                .with("day", day),
            BookError::Database(reason) => Refusal::new("database").with("reason", reason),
        }
    }
}

impl From<PaperError> for Refusal {
    fn from(error: PaperError) -> Refusal {
        const MIB: u64 = 1024 * 1024;
        match error {
            PaperError::Empty => Refusal::new("file-empty"),
            PaperError::TooLarge { .. } => {
                Refusal::new("file-too-large").with("most", paper::MAX_FILE_BYTES / MIB)
            }
            PaperError::Foreign(kind) => Refusal::new("image-foreign").with("format", kind),
            PaperError::Unknown => Refusal::new("not-an-image"),
            PaperError::TooManyPixels { width, height } => Refusal::new("image-too-large")
                .with("width", width)
                .with("height", height)
                .with("most", paper::MAX_PIXELS / 1_000_000),
            PaperError::Document
            | PaperError::Locked
            | PaperError::CutShort(Format::Pdf)
            | PaperError::TooMuchMemory(Format::Pdf)
            | PaperError::Broken { format: Format::Pdf, .. }
            | PaperError::Unsupported { format: Format::Pdf, .. } => Refusal::new("document-damaged"),
            PaperError::CutShort(_) | PaperError::Broken { .. } => Refusal::new("image-damaged"),
            PaperError::TooMuchMemory(_) | PaperError::Unsupported { .. } | PaperError::Encoding(_) => {
                Refusal::new("image-unsupported")
            }
            PaperError::TooManyPages { .. } => Refusal::new("too-many-pages").with("most", paper::MAX_PAGES),
            PaperError::Corners => Refusal::new("corners"),
            PaperError::Model { file, .. } => Refusal::new("models-damaged").with("path", file),
            PaperError::NotRead(_) => Refusal::new("image-unsupported"),
            PaperError::Stopped => Refusal::new("stopped"),
            PaperError::IntakeStopped => Refusal::new("intake-stopped"),
            PaperError::NotFound(hash) => Refusal::new("photo-missing").with("hash", hash),
            PaperError::Damaged(hash) => Refusal::new("photo-damaged").with("hash", hash),
            PaperError::DiskFull { .. } => Refusal::new("disk-full"),
            PaperError::ReadOnly { path } => Refusal::new("read-only").with("path", path.display()),
            PaperError::Io { path, source, .. } => {
                Refusal::new("file").with("path", path.display()).with("reason", source)
            }
        }
    }
}

impl From<ExchangeError> for Refusal {
    fn from(error: ExchangeError) -> Refusal {
        match error {
            ExchangeError::OtherFile => Refusal::new("handover-other-file"),
            ExchangeError::CutShort => Refusal::new("handover-cut-short"),
            ExchangeError::Damaged(reason) => Refusal::new("handover-damaged").with("reason", reason),
            ExchangeError::Newer(version) => Refusal::new("handover-newer").with("version", version),
            ExchangeError::Locked => Refusal::new("handover-locked"),
            ExchangeError::WrongPassphrase => Refusal::new("handover-passphrase"),
            ExchangeError::TooMuchWork(work) => {
                Refusal::new("handover-work").with("work", work).with("most", exchange::MOST_WORK)
            }
            ExchangeError::Passphrase => {
                Refusal::new("passphrase-length").with("most", exchange::LONGEST_PASSPHRASE)
            }
            ExchangeError::TooMuch { what, most } => {
                Refusal::new("handover-too-much").with("what", what.key()).with("most", most)
            }
            ExchangeError::Unnamed(hash) => Refusal::new("handover-unnamed").with("hash", hash),
            ExchangeError::Changed(hash) => Refusal::new("handover-changed").with("hash", hash),
            ExchangeError::Exists(path) => Refusal::new("file-exists").with("path", path.display()),
            ExchangeError::Paper(error) => error.into(),
            ExchangeError::DiskFull => Refusal::new("disk-full"),
            ExchangeError::File { path, source } => {
                Refusal::new("file").with("path", path.display()).with("reason", source)
            }
            ExchangeError::Stream(reason) => Refusal::new("handover-stream").with("reason", reason),
        }
    }
}

impl From<CardError> for Refusal {
    fn from(error: CardError) -> Refusal {
        match error {
            CardError::Code(code) => code.into(),
            CardError::DoesNotFit { .. } | CardError::TextTooLong { .. } => Refusal::new("card-does-not-fit"),
            CardError::Setting(reason) => Refusal::new("card-setting").with("reason", reason),
            CardError::FileTooLarge { megabytes } => {
                Refusal::new("card-file-too-large").with("most", megabytes)
            }
            CardError::PictureTooLarge { megapixels } => {
                Refusal::new("card-picture-too-large").with("most", megapixels)
            }
            CardError::NoPicture => Refusal::new("card-no-picture"),
            CardError::NoSquare => Refusal::new("card-no-square"),
        }
    }
}

impl From<CodeError> for Refusal {
    fn from(error: CodeError) -> Refusal {
        match error {
            CodeError::Address(text) => Refusal::new("address").with("text", text),
            CodeError::NotDigits | CodeError::DigitCount | CodeError::DigitRange => {
                Refusal::new("card-digits")
            }
            CodeError::Version(version) => Refusal::new("card-version").with("version", version),
            CodeError::MessageCbor(_) | CodeError::MessageForm => Refusal::new("card-damaged"),
            CodeError::Signature => Refusal::new("card-signature"),
            CodeError::Stream | CodeError::Claims(_) => Refusal::new("card-content"),
            CodeError::TooLarge => Refusal::new("card-does-not-fit"),
        }
    }
}

/// A request that is none.
pub fn refuse_request(reason: &dyn std::fmt::Display) -> Refusal {
    Refusal::new("request").with("reason", reason)
}

#[cfg(test)]
#[path = "refuse_tests.rs"]
mod tests;
