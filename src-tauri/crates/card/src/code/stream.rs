//! Raw DEFLATE (RFC 1951), inflated within a bound.

use miniz_oxide::deflate::compress_to_vec;
use miniz_oxide::inflate::TINFLStatus;
use miniz_oxide::inflate::core::inflate_flags::TINFL_FLAG_USING_NON_WRAPPING_OUTPUT_BUF;
use miniz_oxide::inflate::core::{DecompressorOxide, decompress};

use super::CodeError;

/// How many bytes a reader inflates at most: 64 KiB.
pub const INFLATED_MAX: usize = 64 * 1024;

/// The compressor's most thorough level: a card is small, and every byte makes the square coarser or finer.
const LEVEL: u8 = 10;

/// Compresses; refuses more than a reader would inflate.
pub fn deflate(bytes: &[u8]) -> Result<Vec<u8>, CodeError> {
    if bytes.len() > INFLATED_MAX {
        return Err(CodeError::TooLarge);
    }
    Ok(compress_to_vec(bytes, LEVEL))
}

/// Decompresses a stream that fills `bytes`, into at most [`INFLATED_MAX`] bytes.
pub fn inflate(bytes: &[u8]) -> Result<Vec<u8>, CodeError> {
    let mut out = vec![0; INFLATED_MAX];
    let mut state = DecompressorOxide::new();
    let (status, read, written) =
        decompress(&mut state, bytes, &mut out, 0, TINFL_FLAG_USING_NON_WRAPPING_OUTPUT_BUF);
    match status {
        TINFLStatus::Done if read == bytes.len() => {
            out.truncate(written);
            Ok(out)
        }
        TINFLStatus::HasMoreOutput => Err(CodeError::TooLarge),
        _ => Err(CodeError::Stream),
    }
}
