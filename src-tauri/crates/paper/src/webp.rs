//! What a WebP file states about itself, read before anything is decoded.
//!
//! The decoder takes memory by the sizes that a file states, makes up what is missing at its end, and shows the
//! first moment of an animation as if it were a photo. So the chunks are walked here first: they must be there
//! whole, hold one still picture, and state no size beyond the bounds.
//!
//! Source: RFC 9649, section 2 (the chunks) and section 3 (the head of a lossless picture); RFC 6386, section 9.1
//! (the head of a lossy one).

use crate::PaperError;
use crate::prepare::check_size;
use crate::sniff::{Foreign, Format};

/// Where the chunks begin: behind `RIFF`, the length of all that follows it, and `WEBP`.
const HEAD: usize = 12;
/// What that length does not count: itself and `RIFF`.
const UNCOUNTED: usize = 8;
/// The flag of an animation among those of the extended head.
const ANIMATION: u8 = 0b0000_0010;
/// Width and height are 14 bits each; in a lossy picture the two bits above them ask for scaling.
const SIDE: u32 = 0x3FFF;

/// The file without whatever lies behind the end that it states, once its chunks are found to be in order.
pub(crate) fn checked(bytes: &[u8]) -> Result<&[u8], PaperError> {
    let end = number(bytes, 4, 4).map_or(usize::MAX, |length| count(length).saturating_add(UNCOUNTED));
    let there = &bytes[..end.min(bytes.len())];
    let mut whole = there.len() == end;
    for chunk in Chunks(there.get(HEAD..).unwrap_or_default()) {
        if chunk.is_animated() {
            return Err(PaperError::Foreign(Foreign::AnimatedWebp));
        }
        // What is too large is said to be so even when it is cut short as well.
        chunk.size().map_or(Ok(()), |(width, height)| check_size(width, height))?;
        whole &= chunk.whole;
    }
    if whole { Ok(there) } else { Err(PaperError::CutShort(Format::Webp)) }
}

/// One chunk, as far as it is there.
struct Chunk<'a> {
    kind: [u8; 4],
    content: &'a [u8],
    whole: bool,
}

impl Chunk<'_> {
    fn is_animated(&self) -> bool {
        match &self.kind {
            b"ANIM" | b"ANMF" => true,
            b"VP8X" => self.content.first().is_some_and(|flags| flags & ANIMATION != 0),
            _ => false,
        }
    }

    /// Pixels across and down, where the chunk states them.
    fn size(&self) -> Option<(u32, u32)> {
        let number = |at, bytes| number(self.content, at, bytes);
        match &self.kind {
            // The canvas: each side less one, behind the flags.
            b"VP8X" => Some((number(4, 3)? + 1, number(7, 3)? + 1)),
            // A lossy picture: behind the frame's tag and its start code.
            b"VP8 " => Some((number(6, 2)? & SIDE, number(8, 2)? & SIDE)),
            // A lossless picture: each side less one, behind its signature.
            b"VP8L" => number(1, 4).map(|sides| ((sides & SIDE) + 1, (sides >> 14 & SIDE) + 1)),
            _ => None,
        }
    }
}

/// The chunks in a row of bytes: four letters, a length, the content, and a zero where that is of odd length.
struct Chunks<'a>(&'a [u8]);

impl<'a> Iterator for Chunks<'a> {
    type Item = Chunk<'a>;

    fn next(&mut self) -> Option<Chunk<'a>> {
        let (kind, rest) = self.0.split_first_chunk::<4>()?;
        let (length, rest) = rest.split_first_chunk::<4>()?;
        let length = count(u32::from_le_bytes(*length));
        let content = &rest[..length.min(rest.len())];
        self.0 = rest.get(length.saturating_add(length % 2)..).unwrap_or_default();
        Some(Chunk { kind: *kind, content, whole: content.len() == length })
    }
}

/// A number of up to four bytes, the lowest first.
fn number(bytes: &[u8], at: usize, length: usize) -> Option<u32> {
    let bytes = bytes.get(at..at + length)?;
    Some(bytes.iter().rev().fold(0, |sum, byte| sum << 8 | u32::from(*byte)))
}

fn count(length: u32) -> usize {
    usize::try_from(length).unwrap_or(usize::MAX)
}
