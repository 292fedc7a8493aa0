//! What the rooms refuse arrives with every value that its sentence names.
#![allow(clippy::unwrap_used)]

use std::io::{Error, ErrorKind};
use std::path::PathBuf;

use image::ImageError;
use image::error::{ImageFormatHint, UnsupportedError, UnsupportedErrorKind};
use paper::{Foreign, Format, Operation};
use units::cbor::CborError;
use units::{BookId, Hash, SubjectId, WriterKey};

use super::*;
use crate::REFUSALS;

fn complete(refusal: &Refusal) {
    let row = REFUSALS.iter().find(|(code, _)| *code == refusal.code);
    let (_, names) = row.unwrap_or_else(|| panic!("{} has no row", refusal.code));
    let mut names = names.to_vec();
    names.sort_unstable();
    assert_eq!(refusal.values.keys().collect::<Vec<_>>(), names, "{}", refusal.code);
}

fn all_complete<E: Into<Refusal>>(errors: impl IntoIterator<Item = E>) {
    errors.into_iter().for_each(|error| complete(&error.into()));
}

fn hash() -> Hash {
    "ab".repeat(32).parse().unwrap()
}

fn day() -> units::Day {
    "2026-06-01".parse().unwrap()
}

fn path() -> PathBuf {
    "shelf/wellkept.db".into()
}

fn text() -> String {
    "typed".to_owned()
}

#[test]
fn quantities_and_rules() {
    all_complete([
        UnitError::Day(text()),
        UnitError::DayRange,
        UnitError::Distance(text()),
        UnitError::DistanceRange,
        UnitError::Money { text: text(), currency: "EUR".to_owned(), decimals: 2 },
        UnitError::Currency(text()),
        UnitError::Quantity(text()),
        UnitError::Id(text()),
        UnitError::Hash(text()),
    ]);
    all_complete([
        RulesError::VinLength(16),
        RulesError::VinCharacter { character: 'O', position: 5 },
        RulesError::IntervalEmpty,
        RulesError::IntervalDistance(0),
        RulesError::IntervalTime(units::HalfMonths(0)),
        RulesError::IntervalText(text()),
        RulesError::IntervalRange,
        RulesError::OwnName,
        RulesError::Measurement(text()),
        RulesError::Catalogue { place: text(), problem: text() },
    ]);
}

#[test]
fn the_book() {
    all_complete([
        BookError::File { operation: "read", path: path(), source: Error::from(ErrorKind::NotFound) },
        BookError::InUse,
        BookError::Newer,
        BookError::Damaged(path()),
        BookError::Key(path()),
        BookError::DiskFull,
        BookError::NoSuchBook(BookId::new(0, [0; 10])),
        BookError::NoSuchLine(SubjectId::new(0, [0; 10])),
        BookError::OtherKind(SubjectId::new(0, [0; 10])),
        BookError::Struck(SubjectId::new(0, [0; 10])),
        BookError::NoEntry(CborError::Malformed),
        BookError::Signature(hash()),
        BookError::Gap(hash()),
        BookError::Fork { hash: hash(), writer: WriterKey([7; 32]), number: u64::MAX, time: 1 },
        BookError::LeftOut { day: day(), writer: WriterKey([7; 32]), number: 3 },
        BookError::HandedOver { subject: SubjectId::new(0, [0; 10]), day: day() },
        BookError::OthersHandover(SubjectId::new(0, [0; 10])),
    ]);
}

#[test]
fn books_that_go_from_hand_to_hand() {
    all_complete([
        ExchangeError::OtherFile,
        ExchangeError::CutShort,
        ExchangeError::Damaged(text()),
        ExchangeError::Newer(2),
        ExchangeError::Locked,
        ExchangeError::WrongPassphrase,
        ExchangeError::TooMuchWork(30),
        ExchangeError::Passphrase,
        ExchangeError::TooMuch { what: exchange::What::Papers, most: 100_000 },
        ExchangeError::Unnamed(hash()),
        ExchangeError::Changed(hash()),
        ExchangeError::Exists(path()),
        ExchangeError::Paper(PaperError::NotFound(hash())),
        ExchangeError::DiskFull,
        ExchangeError::File { path: path(), source: Error::from(ErrorKind::NotFound) },
        ExchangeError::Stream(Error::from(ErrorKind::PermissionDenied)),
    ]);
}

#[test]
fn papers() {
    let unsupported = || {
        let kind = UnsupportedErrorKind::GenericFeature(text());
        ImageError::Unsupported(UnsupportedError::from_format_and_kind(ImageFormatHint::Unknown, kind))
    };
    all_complete([
        PaperError::Empty,
        PaperError::TooLarge { bytes: 1 << 30 },
        PaperError::Foreign(Foreign::Heic),
        PaperError::Unknown,
        PaperError::TooManyPixels { width: 40_000, height: 40_000 },
        PaperError::TooMuchMemory(Format::Png),
        PaperError::CutShort(Format::Jpeg),
        PaperError::Broken { format: Format::Jpeg, source: unsupported() },
        PaperError::Unsupported { format: Format::Jpeg, source: unsupported() },
        PaperError::Encoding(text()),
        PaperError::TooManyPages { pages: 21 },
        PaperError::NotFound(hash()),
        PaperError::Damaged(hash()),
        PaperError::DiskFull { path: path() },
        PaperError::ReadOnly { path: path() },
        PaperError::Io {
            operation: Operation::Read,
            path: path(),
            source: Error::from(ErrorKind::PermissionDenied),
        },
    ]);
}

#[test]
fn cards() {
    all_complete([
        CardError::DoesNotFit { version: 20 },
        CardError::TextTooLong { version: 20 },
        CardError::Setting(text()),
        CardError::FileTooLarge { megabytes: 64 },
        CardError::PictureTooLarge { megapixels: 50 },
        CardError::NoPicture,
        CardError::NoSquare,
    ]);
    all_complete([
        CodeError::Address(text()),
        CodeError::NotDigits,
        CodeError::DigitCount,
        CodeError::DigitRange,
        CodeError::Version(2),
        CodeError::MessageCbor(CborError::Trailing),
        CodeError::MessageForm,
        CodeError::Signature,
        CodeError::Stream,
        CodeError::TooLarge,
        CodeError::Claims(CborError::Missing(1)),
    ]);
}

#[test]
fn what_the_door_refuses_by_itself() {
    complete(&randomness());
    complete(&refuse_request(&"it is none"));
    complete(&crate::refuse_file("shelf", &"it is gone"));
}
