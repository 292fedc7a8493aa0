//! What a PDF unpacks to, worked out before it is handed on.
//!
//! A few kilobytes can state a picture of a gigapixel, or unpack to gigabytes, and to terabytes where one packing lies
//! within another. So the file is searched byte by byte, without believing its tables or its dictionaries: whatever
//! could be unpacked is, within one bound for the whole file, and what cannot be measured in this way is refused.
//!
//! Source of the names and forms: ISO 32000-1, 7.2 (characters), 7.3.5 (names), 7.3.8 (streams), 7.4 (filters), 8.9.7
//! (pictures within a page's contents).

use std::io::Cursor;

use image::ImageDecoder;
use image::codecs::jpeg::JpegDecoder;
use miniz_oxide::inflate::{TINFLStatus, decompress_to_vec_with_limit, decompress_to_vec_zlib_with_limit};

use super::scan::{Value, ascii85, is_deep, places, unescaped, values};
use super::{damaged, unsupported};
use crate::PaperError;
use crate::prepare::{MAX_UNPACKED_BYTES, check_size};
use crate::sniff::Format;

/// How many places are tried at which something packed may begin.
const MAX_TRIES: u32 = 100_000;
/// Packings whose result cannot be measured beforehand; the second line has their short names.
const UNMEASURED: [&[u8]; 9] = [
    b"LZWDecode",
    b"RunLengthDecode",
    b"CCITTFaxDecode",
    b"JBIG2Decode",
    b"JPXDecode",
    b"Crypt",
    b"LZW",
    b"RL",
    b"CCF",
];

/// Refuses a document that would take too much memory, or of which that cannot be told.
pub(super) fn check(bytes: &[u8]) -> Result<(), PaperError> {
    let plain = unescaped(bytes);
    // Within encryption nothing can be measured.
    if places(&plain, b"/Encrypt").next().is_some() {
        return Err(PaperError::Locked);
    }
    check_words(&plain, b"Filter")?;
    let mut guard = Guard { left: MAX_UNPACKED_BYTES, tries: MAX_TRIES };
    for at in places(bytes, b"stream").filter(|at| !bytes[..*at].ends_with(b"end")) {
        let data = after_line(&bytes[at + b"stream".len()..]);
        check_jpeg(data)?;
        let text = ascii85(data);
        for packed in [Some(data), text.as_deref()].into_iter().flatten() {
            let unpacked = guard.unpack(packed)?;
            check_jpeg(&unpacked)?;
            guard.check_contents(&unpacked)?;
        }
        guard.check_contents(data)?;
    }
    Ok(())
}

/// What may still be tried and unpacked.
struct Guard {
    left: u64,
    tries: u32,
}

impl Guard {
    /// Looks over what may be a page's contents, for the pictures that may stand in it.
    fn check_contents(&mut self, contents: &[u8]) -> Result<(), PaperError> {
        let end = places(contents, b"endstream").next().unwrap_or(contents.len());
        let contents = &contents[..end];
        self.spend(contents.len())?;
        if is_deep(contents) {
            return Err(damaged("its contents are nested too deep"));
        }
        if places(contents, b"BI").next().is_none() {
            return Ok(());
        }
        let plain = unescaped(contents);
        check_words(&plain, b"Filter").and_then(|()| check_words(&plain, b"F"))?;
        for at in places(contents, b"ID") {
            let picture = contents.get(at + 3..).unwrap_or_default();
            check_jpeg(picture)?;
            self.unpack(picture)?;
        }
        Ok(())
    }

    /// What a place unpacks to, as far as it does.
    fn unpack(&mut self, packed: &[u8]) -> Result<Vec<u8>, PaperError> {
        self.tries = self.tries.checked_sub(1).ok_or_else(too_much)?;
        let most = usize::try_from(self.left).unwrap_or(usize::MAX);
        let wrapped = decompress_to_vec_zlib_with_limit(packed, most);
        let unpacked = wrapped.or_else(|failed| {
            if failed.output.is_empty() { decompress_to_vec_with_limit(packed, most) } else { Err(failed) }
        });
        let unpacked = match unpacked {
            Err(failed) if failed.status == TINFLStatus::HasMoreOutput => return Err(too_much()),
            Err(failed) => failed.output,
            Ok(unpacked) => unpacked,
        };
        self.spend(unpacked.len())?;
        Ok(unpacked)
    }

    fn spend(&mut self, bytes: usize) -> Result<(), PaperError> {
        self.left = self.left.checked_sub(bytes as u64).ok_or_else(too_much)?;
        Ok(())
    }
}

fn too_much() -> PaperError {
    PaperError::TooMuchMemory(Format::Pdf)
}

/// Checks everything that is said of packings, under this key, and of sizes, wherever it is said.
fn check_words(plain: &[u8], filter: &[u8]) -> Result<(), PaperError> {
    if is_deep(plain) {
        return Err(damaged("it is nested too deep"));
    }
    for value in values(plain, filter) {
        check_filter(&value)?;
    }
    let longest = |keys: [&[u8]; 2]| {
        let stated = keys.into_iter().flat_map(|key| values(plain, key));
        stated.filter_map(|value| if let Value::Number(side) = value { Some(side) } else { None }).max()
    };
    let (width, height) = (longest([b"Width", b"W"]), longest([b"Height", b"H"]));
    check_size(width.unwrap_or(1), height.unwrap_or(1))
}

/// One packing that can be measured, or that within letters that any mail lets through.
fn check_filter(value: &Value<'_>) -> Result<(), PaperError> {
    let is_text = |name: &[u8]| matches!(name, b"ASCII85Decode" | b"A85");
    let is_deflate = |name: &[u8]| matches!(name, b"FlateDecode" | b"Fl");
    let names = match value {
        Value::Names(names) => names.as_slice(),
        Value::Elsewhere => return Err(unsupported("a packing named elsewhere")),
        Value::Number(_) | Value::Other => return Ok(()),
    };
    if names.iter().any(|name| UNMEASURED.contains(name)) {
        return Err(unsupported("a packing of unknown size"));
    }
    match names {
        [] | [_] => Ok(()),
        [first, second] if is_text(first) && is_deflate(second) => Ok(()),
        [first, second] if is_deflate(first) && matches!(*second, b"DCTDecode" | b"DCT") => Ok(()),
        _ => Err(unsupported("one packing within another")),
    }
}

/// Checks the size of a JPEG, if this is one.
fn check_jpeg(data: &[u8]) -> Result<(), PaperError> {
    if !data.starts_with(b"\xFF\xD8") {
        return Ok(());
    }
    // One whose head cannot be read is not shown either.
    JpegDecoder::new(Cursor::new(data)).map_or(Ok(()), |decoder| {
        let (width, height) = decoder.dimensions();
        check_size(width, height)
    })
}

/// What follows the end of a line, in any of its three forms.
fn after_line(bytes: &[u8]) -> &[u8] {
    let strip = |end: &[u8]| bytes.strip_prefix(end);
    strip(b"\r\n").or_else(|| strip(b"\n")).or_else(|| strip(b"\r")).unwrap_or(bytes)
}
