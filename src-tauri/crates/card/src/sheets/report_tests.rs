//! The report: what stands in it stands in the PDF, whatever its texts and photos are.
#![allow(clippy::unwrap_used)]

use hayro::hayro_syntax::Pdf;

use super::*;
use crate::{
    CarLines, RecordLines, SheetPaper, SheetSize, SheetSquare, SheetWords, Square, SquareLimit, WorkGroup,
};

/// A white JPEG.
fn jpeg(width: u32, height: u32) -> Vec<u8> {
    let mut bytes = Cursor::new(Vec::new());
    let picture = image::RgbImage::from_pixel(width, height, image::Rgb([240, 240, 230]));
    picture.write_to(&mut bytes, image::ImageFormat::Jpeg).unwrap();
    bytes.into_inner()
}

fn visit(name: &str, photos: usize) -> ReportVisit {
    let part =
        ReportPart {
            name: name.into(), number: name.into(), amount: "2 ×".into(), price: "9.90 EUR".into()
        };
    ReportVisit {
        day: "2026-10-30".into(),
        reading: "98 000 km".into(),
        who: name.into(),
        cost: Some("1234.50 EUR".into()),
        items: vec![name.into(), "Engine oil".into()],
        marks: vec![Mark::Receipt, Mark::WrittenLate, Mark::Amended],
        struck: Some(name.into()),
        parts: vec![part],
        lines: vec![name.into()],
        photos: vec![ReportPhoto { at: 0, says: format!("Photo {name}") }; photos],
    }
}

/// Labels are never empty, and PDF/UA forbids a heading that is.
fn sheet_words() -> SheetWords {
    let [history, record, next] = ["Visits", "Work done", "Coming next"].map(str::to_owned);
    SheetWords { next, history, record, ..SheetWords::default() }
}

fn report(name: &str, visits: Vec<ReportVisit>) -> Report {
    let square = Square::plain("Heron", SquareLimit::LARGEST).unwrap();
    let group = WorkGroup { name: name.into(), ..WorkGroup::default() };
    let bar = |label: &str, at| Bar { label: label.into(), at, value: name.into(), open: at < 0 };
    let title = if name.is_empty() { "Full report" } else { name };
    Report {
        card: SheetModel {
            lang: "de-DE".into(),
            car: CarLines { name: name.into(), description: Some(name.into()), ..CarLines::default() },
            latest: crate::ReadingLine::default(),
            visits: Vec::new(),
            visits_note: String::new(),
            record: RecordLines { groups: vec![group; 3], ..RecordLines::default() },
            next: Vec::new(),
            issued: "2026-11-05".into(),
            handling: String::new(),
            square: SheetSquare::Plain { square, scan: "Scan.".into(), unsigned: name.into() },
            words: sheet_words(),
        },
        head: "0123 4567".into(),
        notes: vec![name.into()],
        plot_says: String::new(),
        bars: vec![Bars {
            title: title.into(),
            says: title.into(),
            most: 100,
            ways: vec![PlotTick { at: 100, label: "100".into() }],
            bars: vec![bar("2025", 70), bar("2026", -3)],
            note: name.into(),
        }],
        years: if visits.is_empty() { Vec::new() } else { vec![ReportYear { name: "2026".into(), visits }] },
        left_out: name.into(),
        questions: vec![name.into()],
        photos: vec![Thumbnail::read(jpeg(320, 226)).unwrap()],
        words: ReportWords {
            title: title.into(),
            contents: "Contents".into(),
            summary: "Sum".into(),
            ask: "Ask".into(),
            ..ReportWords::default()
        },
    }
}

fn options() -> SheetOptions {
    SheetOptions {
        size: SheetSize::A4,
        paper: SheetPaper::Own,
        made_at: 1_793_275_200,
        ident: "heron".into(),
    }
}

fn pdf(report: &Report) -> Vec<u8> {
    report_pdf(report, &options()).unwrap()
}

fn pages(report: &Report) -> usize {
    Pdf::new(pdf(report)).unwrap().pages().len()
}

/// ISO 19005-2 and ISO 14289-1 ask for these marks in the metadata.
#[test]
fn a_report_declares_itself_as_pdf_a_2b_and_pdf_ua_1() {
    let bytes = pdf(&report("Heron", vec![visit("Heron", 1)]));
    let text = String::from_utf8_lossy(&bytes);
    for mark in [
        "<pdfaid:part>2</pdfaid:part>",
        "<pdfaid:conformance>B</pdfaid:conformance>",
        "<pdfuaid:part>1</pdfuaid:part>",
    ] {
        assert!(text.contains(mark), "{mark}");
    }
}

#[test]
fn the_same_report_of_the_same_day_is_the_same_file() {
    let report = report("Heron", vec![visit("Heron", 3)]);
    assert_eq!(pdf(&report), pdf(&report));
}

#[test]
fn a_report_comes_out_whatever_its_texts_are() {
    let rough = "a\u{202e}b\u{2066}\u{0}\u{7}\u{ad}c\nd\te \u{1F697} 車 Ж \u{fffd} \u{e000} ą";
    let texts =
        ["", "#panic()", "*b* _i_ $x$ @r <l> [x] // c", rough, &"W".repeat(300), &"0123456789".repeat(60)];
    for text in texts {
        assert!(pages(&report(text, vec![visit(text, 2), visit(text, 0)])) >= 2, "{text}");
        assert!(pages(&report(text, Vec::new())) >= 2, "{text}");
    }
}

#[test]
fn a_visit_longer_than_a_page_goes_on_over_several() {
    assert!(pages(&report("Heron", vec![ReportVisit { items: Vec::new(), ..visit("Heron", 0) }])) >= 2);
    let mut long = visit("Heron", 60);
    long.lines = vec!["What was noted of this invented car, at length.".repeat(8); 90];
    long.parts = vec![long.parts[0].clone(); 80];
    assert!(pages(&report("Heron", vec![long.clone(), visit("Heron", 1), long])) > 8);
}

#[test]
fn a_photo_that_cannot_be_unpacked_or_is_too_large_is_none() {
    let whole = jpeg(320, 240);
    let cut = whole[..100].to_vec();
    let wide = jpeg(REPORT_PHOTO_SIDE + 1, 4);
    for bytes in [Vec::new(), b"no photo".to_vec(), cut, wide] {
        assert!(matches!(Thumbnail::read(bytes), Err(CardError::NoPicture)));
    }
    assert!(Thumbnail::read(jpeg(1, REPORT_PHOTO_SIDE)).is_ok());
}

/// Another pattern of strokes is no other picture: those of digits that are an eighth of the long side high come out as
/// one grey, wherever they stand.
#[test]
fn a_photo_made_illegible_keeps_its_shape_and_none_of_its_strokes() {
    for (size, small) in
        [((320, 226), (16, 12)), ((226, 320), (12, 16)), ((400, 1), (16, 1)), ((9, 7), (9, 7))]
    {
        let photo = Thumbnail::read(jpeg(size.0, size.1)).unwrap();
        assert_eq!(photo.illegible().unwrap().size(), small, "{size:?}");
    }
    let (one, other) = (strokes(0), strokes(1));
    let far = one.pixels().zip(other.pixels()).map(|(one, other)| one.0[0].abs_diff(other.0[0])).max();
    assert!(far < Some(16), "{far:?}");
}

/// Upright strokes of a photo made illegible. Of a digit 40 pixels high they are some five wide and as far apart.
fn strokes(shift: u32) -> image::GrayImage {
    let ink = |x: u32| if (x / 5 + shift).is_multiple_of(2) { 20 } else { 240 };
    let mut bytes = Cursor::new(Vec::new());
    let picture = image::RgbImage::from_fn(320, 240, |x, _| image::Rgb([ink(x); 3]));
    picture.write_to(&mut bytes, image::ImageFormat::Jpeg).unwrap();
    let photo = Thumbnail::read(bytes.into_inner()).unwrap().illegible().unwrap();
    image::load_from_memory(&photo.jpeg).unwrap().into_luma8()
}
