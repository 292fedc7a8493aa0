//! Nothing but pixels leaves the room: not where a photo was taken, nor with what, nor by whom.

use crate::draw::{chunk, jpeg, marked, png, webp, with_chunk, with_riff_chunk, with_segment};

/// Degrees, minutes and seconds of a latitude as three rationals with numbers that nothing else would contain.
const LATITUDE: [u8; 24] =
    *b"\x07\x5B\xCD\x15\0\0\x27\x0F\x3A\xDE\x68\xB1\0\0\x27\x0D\x2D\xFD\xC1\x36\0\0\x27\x0B";

/// A TIFF structure with a camera's name and a GPS directory that holds [`LATITUDE`].
fn tiff_with_place() -> Vec<u8> {
    let entry = |tag: u16, kind: u16, count: u32, value: u32| {
        [&tag.to_be_bytes()[..], &kind.to_be_bytes(), &count.to_be_bytes(), &value.to_be_bytes()].concat()
    };
    let mut bytes = b"MM\0\x2A\0\0\0\x08".to_vec();
    bytes.extend(2u16.to_be_bytes());
    bytes.extend(entry(0x010F, 2, 12, 38));
    bytes.extend(entry(0x8825, 4, 1, 50));
    bytes.extend([0; 4]);
    bytes.extend(b"Obscuracam!\0");
    bytes.extend(1u16.to_be_bytes());
    bytes.extend(entry(0x0002, 5, 3, 68));
    bytes.extend([0; 4]);
    bytes.extend(LATITUDE);
    bytes
}

fn contains(bytes: &[u8], part: &[u8]) -> bool {
    bytes.windows(part.len()).any(|window| window == part)
}

/// The markers of a JPEG's segments up to its pixels.
fn markers(jpeg: &[u8]) -> Vec<u8> {
    let mut markers = Vec::new();
    let mut at = 2;
    while markers.last() != Some(&0xDA) {
        assert_eq!(jpeg[at], 0xFF);
        markers.push(jpeg[at + 1]);
        at += 2 + usize::from(jpeg[at + 2]) * 256 + usize::from(jpeg[at + 3]);
    }
    markers
}

fn check_clean(bytes: &[u8]) {
    let secrets: [&[u8]; 6] =
        [&LATITUDE, b"Exif", b"Obscuracam", b"ns.adobe.com", b"Quillfeather", b"ICC_PROFILE"];
    assert!(
        secrets.iter().any(|secret| contains(bytes, secret)),
        "the file must hold a secret to begin with"
    );
    let prepared = paper::prepare(bytes).unwrap();
    for kept in [prepared.jpeg(), prepared.thumb()] {
        for secret in secrets {
            assert!(!contains(kept, secret), "{} survived", String::from_utf8_lossy(secret));
        }
        // JFIF header, quantisation, frame, Huffman tables, scan: of application data only the JFIF header.
        let known = [0xE0, 0xDB, 0xC0, 0xC4, 0xDA];
        assert!(markers(kept).iter().all(|marker| known.contains(marker)), "{:X?}", markers(kept));
        assert!(kept.ends_with(b"\xFF\xD9"));
    }
}

#[test]
fn the_metadata_of_a_jpeg_is_gone() {
    let plain = jpeg(&marked(64, 48));
    check_clean(&with_segment(&plain, 0xE1, &[b"Exif\0\0", &tiff_with_place()[..]].concat()));
    check_clean(&with_segment(
        &plain,
        0xE1,
        b"http://ns.adobe.com/xap/1.0/\0<x:xmpmeta>Quillfeather</x:xmpmeta>",
    ));
    check_clean(&with_segment(&plain, 0xE2, b"ICC_PROFILE\0\x01\x01Quillfeather"));
    check_clean(&with_segment(&plain, 0xED, b"Photoshop 3.0\08BIM\x04\x04Quillfeather"));
    check_clean(&with_segment(&plain, 0xFE, b"taken by Quillfeather"));
    check_clean(&[&plain[..], &LATITUDE].concat());
}

#[test]
fn the_metadata_of_a_png_is_gone() {
    let plain = png(&marked(64, 48));
    check_clean(&with_chunk(&plain, b"eXIf", &tiff_with_place()));
    check_clean(&with_chunk(&plain, b"tEXt", b"Author\0Quillfeather"));
    check_clean(&with_chunk(&plain, b"iTXt", b"XML:com.adobe.xmp\0\0\0\0\0http://ns.adobe.com/xap/1.0/"));
    check_clean(&[&plain[..], &chunk(b"tEXt", b"Author\0Quillfeather")].concat());
}

#[test]
fn the_metadata_of_a_webp_is_gone() {
    let with = |kind: &[u8], content: &[u8]| with_riff_chunk(&webp(&marked(64, 48)), (64, 48), kind, content);
    check_clean(&with(b"EXIF", &tiff_with_place()));
    check_clean(&with(b"XMP ", b"<x:xmpmeta xmlns='http://ns.adobe.com/xap/1.0/'>Quillfeather</x:xmpmeta>"));
    check_clean(&with(b"ICCP", b"Quillfeather"));
    check_clean(&with(b"note", b"taken by Quillfeather"));
    check_clean(&[&webp(&marked(64, 48))[..], &LATITUDE].concat());
}
