//! Whether a JPEG is all there.
//!
//! The decoder fills what is missing with grey and reports success, as suits a viewer. A receipt whose lower half
//! was lost in copying must be refused while the original is still at hand, so the end is looked for here.

/// Second byte of the marker that ends the image (ISO/IEC 10918-1, table B.1).
const END_OF_IMAGE: u8 = 0xD9;

/// Whether the marker that ends the image is reached from the start, segment by segment.
///
/// Segments are stepped over, so the end of a thumbnail that is packed into one does not count.
pub(crate) fn is_whole(bytes: &[u8]) -> bool {
    let mut rest = bytes.get(2..).unwrap_or_default();
    while let Some((marker, segment)) = next_marker(rest) {
        if marker == END_OF_IMAGE {
            return true;
        }
        rest = after(segment);
    }
    false
}

/// Whether this begins and ends as a JPEG does. Of a file that was renamed into place this tells one that never reached
/// the disk, whose end is nothing or zeros.
pub(crate) fn has_both_ends(bytes: &[u8]) -> bool {
    bytes.starts_with(&[0xFF, 0xD8, 0xFF]) && bytes.ends_with(&[0xFF, END_OF_IMAGE])
}

/// The next marker that ends the image or begins a segment, and what follows it.
///
/// Passed over are the picture's own bytes, among which FF is always followed by 00, and the markers that have no
/// segment: restarts, fill bytes and the temporary one.
fn next_marker(bytes: &[u8]) -> Option<(u8, &[u8])> {
    let is_marker = |pair: &[u8]| pair[0] == 0xFF && !matches!(pair[1], 0x00 | 0x01 | 0xD0..=0xD7 | 0xFF);
    let at = bytes.windows(2).position(is_marker)?;
    Some((bytes[at + 1], &bytes[at + 2..]))
}

/// What follows a segment, which begins with its length in two bytes.
fn after(segment: &[u8]) -> &[u8] {
    let length = segment.first_chunk().map_or(0, |length| usize::from(u16::from_be_bytes(*length)));
    segment.get(length..).unwrap_or_default()
}
