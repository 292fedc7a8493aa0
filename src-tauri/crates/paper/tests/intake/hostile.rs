//! Files that are not what they say: each is refused by one sentence, and none crashes the room.

use paper::{Foreign, Format, PaperError, prepare};

use crate::draw::{
    GLASS, GLASS_ALPHA, LOSSY, jpeg, marked, png, png_header, riff, riff_chunk, riff_head, webp, with_chunk,
    with_riff_chunk, with_segment, zlib_of_zeros,
};

fn refusal(bytes: &[u8]) -> PaperError {
    let error = prepare(bytes).unwrap_err();
    let said = error.to_string();
    assert!(!said.contains('\n') && !said.ends_with('.') && said.len() < 160, "no one sentence: {said}");
    error
}

#[test]
fn an_empty_file_is_refused() {
    assert_eq!(refusal(b"").to_string(), "the file is empty; choose a JPEG, PNG or WebP photo, or a PDF");
}

#[test]
fn other_formats_are_named() {
    let files: [(&[u8], Foreign); 13] = [
        (b"PK\x03\x04\x14\0\0\0\x08\0", Foreign::Zip),
        (b"GIF89a\x01\0\x01\0", Foreign::Gif),
        (b"\0\0\0\x18ftypheic\0\0\0\0", Foreign::Heic),
        (b"\0\0\0\x18ftypmif1\0\0\0\0", Foreign::Heic),
        (b"\0\0\0\x18ftyphevs\0\0\0\0", Foreign::Heic),
        (b"\0\0\0\x1Cftypavif\0\0\0\0", Foreign::Avif),
        (b"\0\0\0\x18ftypmp42\0\0\0\0", Foreign::Film),
        (b"II*\0\x08\0\0\0", Foreign::Tiff),
        (b"BM\x36\0\0\0", Foreign::Bmp),
        (b"\0\0\0\x0CJXL \r\n\x87\n", Foreign::JpegXl),
        (b"\0\0\0\x0CjP  \r\n\x87\n", Foreign::Jpeg2000),
        (b"<svg xmlns='http://www.w3.org/2000/svg'/>", Foreign::Svg),
        (b"\xEF\xBB\xBF\n<?xml version='1.0'?><!-- a drawing --><svg/>", Foreign::Svg),
    ];
    for (bytes, expected) in files {
        let error = refusal(bytes);
        assert!(matches!(error, PaperError::Foreign(found) if found == expected), "{error}");
    }
    let said = "the file is a ZIP archive; a paper comes in as a JPEG, PNG or WebP photo or a PDF, so unpack it and choose a photo in it";
    assert_eq!(refusal(b"PK\x03\x04").to_string(), said);
    let said = "the file is a HEIC picture; a paper comes in as a JPEG, PNG or WebP photo or a PDF, so set the camera to JPEG or save the picture as one";
    assert_eq!(refusal(b"\0\0\0\x18ftypheic\0\0\0\0").to_string(), said);
}

#[test]
fn what_is_no_picture_at_all_is_refused() {
    for bytes in
        [&b"Invoice 17, 12 litres"[..], b"<html><body>", b"\0", b"\xFF\xD8", b"\x89PNG", b"RIFF\0\0\0\0WAVE"]
    {
        assert!(matches!(refusal(bytes), PaperError::Unknown));
    }
}

#[test]
fn a_jpeg_cut_short_anywhere_is_refused() {
    let whole = jpeg(&marked(64, 48));
    for length in 3..whole.len() {
        refusal(&whole[..length]);
    }
    // The end of a picture that is packed into a segment is not taken for its own.
    let thumb = [b"Exif\0\0", &whole[..]].concat();
    let packed = with_segment(&whole, 0xE1, &thumb);
    assert!(matches!(refusal(&packed[..packed.len() - 2]), PaperError::CutShort(Format::Jpeg)));
}

#[test]
fn a_png_cut_short_is_refused() {
    let whole = png(&marked(64, 48));
    // Without its last 16 bytes the file has all pixels and lacks only the chunk that says so.
    for length in 8..whole.len() - 16 {
        refusal(&whole[..length]);
    }
}

#[test]
fn a_webp_cut_short_anywhere_is_refused() {
    for whole in webps() {
        for length in 12..whole.len() {
            let error = refusal(&whole[..length]);
            assert!(matches!(error, PaperError::CutShort(Format::Webp)), "{length}: {error}");
        }
    }
    // The file is as long as it states, and the picture in it is not.
    let cut = riff(&[riff_chunk(b"VP8 ", LOSSY)[..40].to_vec()]);
    assert!(matches!(refusal(&cut), PaperError::CutShort(Format::Webp)));
}

/// Every way in which a still WebP is built.
fn webps() -> [Vec<u8>; 4] {
    let plain = webp(&marked(24, 17));
    let glass = [riff_head(0b1_0000, 64, 48), riff_chunk(b"ALPH", GLASS_ALPHA), riff_chunk(b"VP8 ", GLASS)];
    [
        with_riff_chunk(&plain, (24, 17), b"EXIF", b"II*\0"),
        plain,
        riff(&[riff_chunk(b"VP8 ", LOSSY)]),
        riff(&glass),
    ]
}

#[test]
fn an_animated_webp_is_refused() {
    let picture = webp(&marked(64, 48))[12..].to_vec();
    let frame = [&[0; 6][..], &[63, 0, 0, 47, 0, 0, 100, 0, 0, 0], &picture].concat();
    let frames = || [riff_chunk(b"ANIM", &[0; 6]), riff_chunk(b"ANMF", &frame), riff_chunk(b"ANMF", &frame)];
    let animated = riff(&[&[riff_head(0b10, 64, 48)][..], &frames()].concat());
    let said = "the file is an animated WebP picture; a paper comes in as a JPEG, PNG or WebP photo or a PDF, so save one of its pictures";
    assert_eq!(refusal(&animated).to_string(), said);
    // Told by the frames too, and by the flag too.
    let unsaid = riff(&[&[riff_head(0, 64, 48), picture.clone()][..], &frames()].concat());
    assert_eq!(refusal(&unsaid).to_string(), said);
    assert_eq!(refusal(&riff(&[riff_head(0b10, 64, 48), picture])).to_string(), said);
}

#[test]
fn a_webp_that_contradicts_itself_is_refused() {
    let lossy = || riff_chunk(b"VP8 ", LOSSY);
    let files = [
        riff(&[]),
        riff(&[b"PK\x03\x04\x14\0\0\0\x08\0".to_vec()]),
        riff(&[riff_chunk(b"EXIF", b"II*\0"), lossy()]),
        riff(&[riff_head(0, 64, 48)]),
        // The canvas and the picture on it are of two sizes, there are two pictures, or what the flags state is not there.
        riff(&[riff_head(0, 65, 48), lossy()]),
        riff(&[riff_head(0, 64, 48), lossy(), webp(&marked(64, 48))[12..].to_vec()]),
        riff(&[riff_head(0b1000, 64, 48), lossy()]),
        riff(&[riff_head(0b1_0000, 64, 48), lossy()]),
    ];
    for file in files {
        refusal(&file);
    }
    // A length that wraps round: the chunk would end before it begins.
    let endless = [b"EXIF", &[0xFF; 4][..]].concat();
    let file = riff(&[riff_head(0b1000, 64, 48), lossy(), endless]);
    assert!(matches!(refusal(&file), PaperError::CutShort(Format::Webp)));
}

#[test]
fn no_single_wrong_byte_crashes() {
    let [extended, lossless, lossy, glass] = webps();
    for whole in [jpeg(&marked(24, 17)), png(&marked(24, 17)), extended, lossless, lossy, glass] {
        for at in 0..whole.len() {
            for wrong in [0x00, 0xFF, whole[at] ^ 0x01, whole[at] ^ 0x80] {
                let mut bytes = whole.clone();
                bytes[at] = wrong;
                if prepare(&bytes).is_err() {
                    refusal(&bytes);
                }
            }
        }
    }
}

#[test]
fn a_file_over_64_mib_is_refused() {
    let mut bytes = jpeg(&marked(64, 48));
    bytes.resize(64 * 1024 * 1024 + 1, 0);
    assert_eq!(refusal(&bytes).to_string(), "the file has 67108865 bytes; a photo may have at most 64 MiB");
}

#[test]
fn fifty_thousand_pixels_square_are_refused_from_the_header() {
    let said = "the picture has 50000 x 50000 pixels; a photo may have at most 100 megapixels";
    assert_eq!(refusal(&png_header(50_000, 50_000)).to_string(), said);

    let mut bytes = jpeg(&marked(64, 48));
    let frame = bytes.windows(4).position(|four| four == [0xFF, 0xC0, 0, 17]).unwrap();
    bytes[frame + 5..frame + 9].copy_from_slice(&[0xC3, 0x50, 0xC3, 0x50]);
    assert_eq!(refusal(&bytes).to_string(), said);
    assert_eq!(refusal(&bytes[..bytes.len() - 20]).to_string(), said);
}

#[test]
fn the_largest_sides_of_a_webp_are_refused_from_the_header() {
    let said = "the picture has 16383 x 16383 pixels; a photo may have at most 100 megapixels";
    let mut lossy = LOSSY.to_vec();
    lossy[6..10].copy_from_slice(&[0xFF, 0x3F, 0xFF, 0x3F]);
    let lossless = (0x3FFE_u32 | 0x3FFE << 14).to_le_bytes();
    let pictures =
        [riff_chunk(b"VP8 ", &lossy), riff_chunk(b"VP8L", &[&[0x2F][..], &lossless, &[0; 20]].concat())];
    for picture in pictures {
        assert_eq!(refusal(&riff(std::slice::from_ref(&picture))).to_string(), said);
        // A small canvas does not hide the picture on it, nor what is missing its size.
        let hidden = riff(&[riff_head(0, 64, 48), picture]);
        assert_eq!(refusal(&hidden).to_string(), said);
        assert_eq!(refusal(&hidden[..hidden.len() - 10]).to_string(), said);
    }
    let canvas = riff(&[riff_head(0, 1 << 24, 1 << 24), riff_chunk(b"VP8 ", LOSSY)]);
    assert!(matches!(refusal(&canvas), PaperError::TooManyPixels { .. }));
}

#[test]
fn sizes_at_the_ends_of_their_range_are_refused() {
    for (width, height) in [(u32::MAX, u32::MAX), (0, 50), (50, 0), (0x7FFF_FFFF, 1), (100_000_000, 1)] {
        refusal(&png_header(width, height));
    }
}

#[test]
fn a_text_that_unpacks_to_a_quarter_gigabyte_stays_packed() {
    let bomb = [b"Comment\0\0", &zlib_of_zeros(256 * 1024 * 1024)[..]].concat();
    let prepared = prepare(&with_chunk(&png(&marked(64, 48)), b"zTXt", &bomb)).unwrap();
    assert_eq!(prepared, prepare(&png(&marked(64, 48))).unwrap());
}

#[test]
fn more_text_than_a_photo_needs_is_refused() {
    let text = [b"Comment\0", &vec![b'x'; 20 * 1024 * 1024][..]].concat();
    assert!(matches!(
        refusal(&with_chunk(&png(&marked(64, 48)), b"tEXt", &text)),
        PaperError::TooMuchMemory(Format::Png)
    ));
}
