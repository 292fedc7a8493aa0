//! The kinds of picture that are accepted, and what becomes of their colours and sizes.

use image::{
    DynamicImage, GrayAlphaImage, GrayImage, ImageBuffer, Luma, LumaA, Rgb, RgbImage, Rgba, RgbaImage,
};

use crate::draw::{
    Bits, GLASS, GLASS_ALPHA, LOSSY, chunk, jpeg, marked, pixels, png, png_header, riff, riff_chunk,
    riff_head, segment, webp,
};

/// Whether the middle of the kept photo has this colour, give or take what JPEG loses.
fn check_colour(bytes: &[u8], expected: [u8; 3]) {
    let kept = pixels(paper::prepare(bytes).unwrap().jpeg());
    let seen = kept.get_pixel(kept.width() / 2, kept.height() / 2).0;
    let near = seen.iter().zip(expected).all(|(seen, expected)| seen.abs_diff(expected) <= 3);
    assert!(near, "{seen:?} instead of {expected:?}");
}

#[test]
fn grey_and_deep_pictures_keep_their_colour() {
    check_colour(&png(&DynamicImage::ImageLuma8(GrayImage::from_pixel(40, 40, Luma([90])))), [90; 3]);
    check_colour(&jpeg(&DynamicImage::ImageLuma8(GrayImage::from_pixel(40, 40, Luma([90])))), [90; 3]);
    let grey = ImageBuffer::from_pixel(40, 40, Luma([90 * 257]));
    check_colour(&png(&DynamicImage::ImageLuma16(grey)), [90; 3]);
    let colour = ImageBuffer::from_pixel(40, 40, Rgb([200 * 257, 100 * 257, 50 * 257]));
    check_colour(&png(&DynamicImage::ImageRgb16(colour)), [200, 100, 50]);
}

#[test]
fn what_is_transparent_lies_on_white() {
    check_colour(
        &png(&DynamicImage::ImageRgba8(RgbaImage::from_pixel(40, 40, Rgba([0, 0, 0, 0])))),
        [255; 3],
    );
    check_colour(
        &png(&DynamicImage::ImageRgba8(RgbaImage::from_pixel(40, 40, Rgba([255, 0, 0, 51])))),
        [255, 204, 204],
    );
    check_colour(
        &png(&DynamicImage::ImageLumaA8(GrayAlphaImage::from_pixel(40, 40, LumaA([0, 128])))),
        [127; 3],
    );
    let deep = ImageBuffer::from_pixel(40, 40, Rgba([0, 0, 65535, 0x8080]));
    check_colour(&png(&DynamicImage::ImageRgba16(deep)), [127, 127, 255]);
    let large = RgbaImage::from_pixel(3000, 20, Rgba([10, 20, 30, 0]));
    check_colour(&png(&DynamicImage::ImageRgba8(large)), [255; 3]);
}

#[test]
fn a_lossless_webp_keeps_its_colour_and_lies_on_white() {
    check_colour(
        &webp(&DynamicImage::ImageRgb8(RgbImage::from_pixel(40, 30, Rgb([200, 100, 50])))),
        [200, 100, 50],
    );
    let glass = RgbaImage::from_pixel(40, 30, Rgba([255, 0, 0, 51]));
    check_colour(&webp(&DynamicImage::ImageRgba8(glass)), [255, 204, 204]);
    let same = |picture: &DynamicImage| {
        assert_eq!(paper::prepare(&webp(picture)).unwrap(), paper::prepare(&png(picture)).unwrap());
    };
    same(&marked(64, 48));
    same(&marked(3000, 40));
}

#[test]
fn a_lossy_webp_keeps_its_colour_and_lies_on_white() {
    let marked = riff(&[riff_chunk(b"VP8 ", LOSSY)]);
    check_colour(&marked, [255; 3]);
    let kept = pixels(paper::prepare(&marked).unwrap().jpeg());
    assert_eq!(kept.dimensions(), (64, 48));
    assert!(kept.get_pixel(6, 6).0[0] < 16, "{:?}", kept.get_pixel(6, 6));
    let parts = [riff_head(0b1_0000, 64, 48), riff_chunk(b"ALPH", GLASS_ALPHA), riff_chunk(b"VP8 ", GLASS)];
    check_colour(&riff(&parts), [255, 204, 204]);
}

#[test]
fn one_bit_and_palette_pictures_are_opened() {
    let body = |depth: u8, colour: u8| {
        [&16u32.to_be_bytes()[..], &16u32.to_be_bytes(), &[depth, colour, 0, 0, 0]].concat()
    };
    let signature = b"\x89PNG\r\n\x1A\n".to_vec();
    let zeros = chunk(b"IDAT", &crate::draw::zlib_of_zeros(258 * 2));
    let palette = chunk(b"PLTE", &[20, 160, 90]);
    let end = chunk(b"IEND", b"");
    check_colour(&[&signature, &chunk(b"IHDR", &body(1, 0))[..], &zeros, &end].concat(), [0; 3]);
    check_colour(
        &[&signature, &chunk(b"IHDR", &body(8, 3))[..], &palette, &zeros, &end].concat(),
        [20, 160, 90],
    );
}

/// A JPEG of one colour, 16 x 16, written by hand: every block has only its mean.
///
/// Two Huffman tables do: one that gives the nine sizes of a mean four bits each, and one whose only code, `0`,
/// ends a block.
fn flat_jpeg(means: &[u8], progressive: bool) -> Vec<u8> {
    let parts = u8::try_from(means.len()).unwrap();
    let frame: Vec<u8> = (1..=parts).flat_map(|part| [part, 0x11, 0]).collect();
    let scan: Vec<u8> = (1..=parts).flat_map(|part| [part, 0x00]).collect();
    let mean_codes = [&[0x00, 0, 0, 0, 9][..], &[0; 12], &[0, 1, 2, 3, 4, 5, 6, 7, 8]].concat();
    let end_codes = [&[0x10, 1][..], &[0; 15], &[0]].concat();
    let last = if progressive { 0 } else { 63 };
    [
        vec![0xFF, 0xD8],
        // Without a transform the parts are red, green, blue or, the other way round, the four inks.
        segment(0xEE, b"Adobe\0\x64\0\0\0\0\0"),
        segment(0xDB, &[&[0][..], &[8; 64]].concat()),
        segment(if progressive { 0xC2 } else { 0xC0 }, &[&[8, 0, 16, 0, 16, parts][..], &frame].concat()),
        segment(0xC4, &mean_codes),
        segment(0xC4, &end_codes),
        segment(0xDA, &[&[parts][..], &scan, &[0, last, 0]].concat()),
        flat_blocks(means, progressive),
        vec![0xFF, 0xD9],
    ]
    .concat()
}

fn flat_blocks(means: &[u8], progressive: bool) -> Vec<u8> {
    let mut bits = Bits::default();
    for block in 0..4 {
        for mean in means {
            // The mean of the first block is written, those of the others do not differ from it.
            let mean = if block == 0 { i32::from(*mean) - 128 } else { 0 };
            let size = 32 - mean.unsigned_abs().leading_zeros();
            bits.push(size, 4);
            let offset = if mean < 0 { (1 << size) - 1 } else { 0 };
            bits.push(u32::try_from(mean + offset).unwrap(), size);
            if !progressive {
                bits.push(0, 1);
            }
        }
    }
    bits.high_first()
        .into_iter()
        .flat_map(|byte| if byte == 0xFF { vec![0xFF, 0] } else { vec![byte] })
        .collect()
}

#[test]
fn progressive_jpegs_are_opened() {
    check_colour(&flat_jpeg(&[60, 120, 180], false), [60, 120, 180]);
    check_colour(&flat_jpeg(&[60, 120, 180], true), [60, 120, 180]);
}

#[test]
fn four_ink_jpegs_become_rgb() {
    // In such files 255 stands for no ink, as Adobe writes them.
    check_colour(&flat_jpeg(&[255, 255, 255, 255], false), [255, 255, 255]);
    check_colour(&flat_jpeg(&[255, 255, 0, 255], false), [255, 255, 0]);
    check_colour(&flat_jpeg(&[255, 255, 255, 0], false), [0, 0, 0]);
}

#[test]
fn of_an_animated_png_the_still_picture_is_taken() {
    let still = png(&DynamicImage::ImageRgb8(RgbImage::from_pixel(16, 16, Rgb([10, 200, 30]))));
    let control = |number: u32| {
        [&number.to_be_bytes()[..], &[0, 0, 0, 16, 0, 0, 0, 16], &[0; 8], &[0, 1, 0, 10, 0, 0]].concat()
    };
    let black = [&2u32.to_be_bytes()[..], &crate::draw::zlib_of_zeros(258 * 4)].concat();
    let (body, end) = still.split_at(still.len() - 12);
    let head =
        [&body[..33], &chunk(b"acTL", &[0, 0, 0, 2, 0, 0, 0, 0]), &chunk(b"fcTL", &control(0))].concat();
    let tail = [&chunk(b"fcTL", &control(1))[..], &chunk(b"fdAT", &black), end].concat();
    check_colour(&[&head, &body[33..], &tail].concat(), [10, 200, 30]);
}

#[test]
fn long_sides_are_shrunk_and_short_ones_left() {
    let sizes = [
        // What comes in, what is kept, the thumbnail.
        ((4032, 30), (2400, 18), (320, 2)),
        ((30, 4032), (18, 2400), (2, 320)),
        ((2401, 1), (2400, 1), (320, 1)),
        ((2400, 100), (2400, 100), (320, 13)),
        ((320, 200), (320, 200), (320, 200)),
        ((1, 1), (1, 1), (1, 1)),
    ];
    for ((width, height), kept, thumb) in sizes {
        let prepared = paper::prepare(&png(&DynamicImage::new_rgb8(width, height))).unwrap();
        assert_eq!(pixels(prepared.jpeg()).dimensions(), kept);
        assert_eq!(pixels(prepared.thumb()).dimensions(), thumb);
        assert_eq!(prepared.photo().bytes, prepared.jpeg().len() as u64);
    }
}

#[test]
fn a_hundred_megapixels_are_the_limit() {
    let refusal = |width, height| paper::prepare(&png_header(width, height)).unwrap_err();
    assert!(matches!(
        refusal(10_000, 10_001),
        paper::PaperError::TooManyPixels { width: 10_000, height: 10_001 }
    ));
    // Within the limit the file is decoded, and found to lack most of its pixels.
    assert!(!matches!(refusal(5000, 2000), paper::PaperError::TooManyPixels { .. }));
}
