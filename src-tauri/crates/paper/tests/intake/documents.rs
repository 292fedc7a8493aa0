//! PDF receipts: kept as they are, a picture of each page, and bombs refused before memory is taken.

use std::time::SystemTime;

use image::RgbImage;
use paper::{Format, MAX_PAGES, PaperError, PhotoStore, page_count, pages, prepare};
use sha2::{Digest, Sha256};
use units::Hash;

use crate::draw::{jpeg, marked, pixels, zlib_of_zeros};

/// A PDF of these objects, numbered from 1, the first of which is its catalogue (ISO 32000-1, 7.5).
pub fn pdf(objects: &[Vec<u8>], trailer: &str) -> Vec<u8> {
    let mut bytes = b"%PDF-1.7\n".to_vec();
    let mut places = Vec::new();
    for (at, object) in objects.iter().enumerate() {
        places.push(bytes.len());
        bytes.extend(format!("{} 0 obj\n", at + 1).bytes());
        bytes.extend(object);
        bytes.extend(b"\nendobj\n");
    }
    let table = bytes.len();
    bytes.extend(format!("xref\n0 {}\n0000000000 65535 f \n", objects.len() + 1).bytes());
    for place in &places {
        bytes.extend(format!("{place:010} 00000 n \n").bytes());
    }
    let end = format!(
        "trailer\n<< /Size {} /Root 1 0 R {trailer} >>\nstartxref\n{table}\n%%EOF\n",
        objects.len() + 1
    );
    bytes.extend(end.bytes());
    bytes
}

fn object(text: &str) -> Vec<u8> {
    text.as_bytes().to_vec()
}

fn stream(dictionary: &str, data: &[u8]) -> Vec<u8> {
    let head = format!("<< /Length {} {dictionary} >>\nstream\n", data.len());
    [head.as_bytes(), data, b"\nendstream"].concat()
}

/// Pages in points, each with the contents of object 4; object 5 is the font, and what comes after is given.
fn document(sizes: &[(u32, u32)], extra: &str, contents: Vec<u8>, more: &[Vec<u8>]) -> Vec<u8> {
    let kids: Vec<String> = (0..sizes.len()).map(|page| format!("{} 0 R", 6 + more.len() + page)).collect();
    let mut objects = vec![
        object("<< /Type /Catalog /Pages 2 0 R >>"),
        object(&format!("<< /Type /Pages /Kids [{}] /Count {} >>", kids.join(" "), sizes.len())),
        object("<< /Font << /F1 5 0 R >> /XObject << /Im1 6 0 R >> >>"),
        contents,
        object("<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica >>"),
    ];
    objects.extend_from_slice(more);
    for (width, height) in sizes {
        let page = format!("<< /Type /Page /Parent 2 0 R /Resources 3 0 R /Contents 4 0 R {extra}");
        objects.push(object(&format!("{page} /MediaBox [0 0 {width} {height}] >>")));
    }
    pdf(&objects, "")
}

/// A receipt: a black square of 20 points in the lower left corner, and a line of text in a font that is not embedded.
fn receipt(sizes: &[(u32, u32)]) -> Vec<u8> {
    let contents = b"0 0 20 20 re f BT /F1 24 Tf 30 60 Td (Total 12.50) Tj ET";
    document(sizes, "", stream("", contents), &[])
}

fn ink(picture: &RgbImage, (left, top, right, bottom): (u32, u32, u32, u32)) -> usize {
    let dark = |x: &u32, y: u32| picture.get_pixel(*x, y).0.iter().all(|tone| *tone < 90);
    (top..bottom).map(|y| (left..right).filter(|x| dark(x, y)).count()).sum()
}

fn refusal(bytes: &[u8]) -> PaperError {
    let error = pages(bytes).unwrap_err();
    let said = error.to_string();
    assert!(!said.contains('\n') && !said.ends_with('.') && said.len() < 160, "no one sentence: {said}");
    error
}

#[test]
fn each_page_is_a_picture_of_its_own() {
    let prepared = pages(&receipt(&[(216, 144), (144, 288)])).unwrap();
    let sizes: Vec<_> = prepared.iter().map(|page| (page.photo().width, page.photo().height)).collect();
    // 300 pixels an inch, 72 points an inch.
    assert_eq!(sizes, [(900, 600), (600, 1200)]);
    let picture = pixels(prepared[0].jpeg());
    assert!(ink(&picture, (2, 525, 78, 598)) > 5_000, "the square");
    // 24 points of Helvetica, 60 points above the lower edge.
    assert!(ink(&picture, (125, 270, 700, 355)) > 3_000, "the text");
    assert_eq!(ink(&picture, (100, 10, 890, 250)), 0);
    assert_eq!(pixels(prepared[0].thumb()).dimensions(), (320, 213));
}

#[test]
fn a_page_stands_as_it_says() {
    let contents = stream("", b"0 0 20 20 re f");
    let prepared = pages(&document(&[(216, 144)], "/Rotate 90", contents, &[])).unwrap();
    assert_eq!((prepared[0].photo().width, prepared[0].photo().height), (600, 900));
    // Turned clockwise, the lower left corner is the upper left.
    assert!(ink(&pixels(prepared[0].jpeg()), (2, 2, 78, 78)) > 5_000);
}

#[test]
fn a_long_page_is_held_to_the_long_side() {
    let prepared = pages(&receipt(&[(226, 2260), (10, 14_000)])).unwrap();
    assert_eq!((prepared[0].photo().width, prepared[0].photo().height), (240, 2400));
    assert_eq!((prepared[1].photo().width, prepared[1].photo().height), (2, 2400));
}

#[test]
fn a_document_is_no_photo_and_a_photo_no_document() {
    assert!(matches!(prepare(&receipt(&[(200, 200)])), Err(PaperError::Document)));
    assert!(matches!(pages(&jpeg(&marked(64, 48))), Err(PaperError::Unknown)));
    assert!(matches!(pages(b""), Err(PaperError::Empty)));
}

#[test]
fn what_is_damaged_is_refused() {
    let whole = receipt(&[(200, 200)]);
    for bytes in
        [&whole[..20], b"%PDF-1.7\n", b"%PDF-1.7\n%%EOF\n", &[b"%PDF-1.7\n", &[0xFF; 5000][..]].concat()]
    {
        assert!(matches!(refusal(bytes), PaperError::Broken { format: Format::Pdf, .. }));
    }
    for length in (9..whole.len()).step_by(7) {
        let _ = pages(&whole[..length]).map_err(|error| error.to_string());
    }
}

#[test]
fn what_is_locked_is_refused() {
    let objects =
        [object("<< /Type /Catalog /Pages 2 0 R >>"), object("<< /Type /Pages /Kids [] /Count 0 >>")];
    for name in ["Encrypt", "Encr#79pt"] {
        let locked = pdf(&objects, &format!("/{name} << /Filter /Standard /V 1 /R 2 >>"));
        assert!(matches!(refusal(&locked), PaperError::Locked));
    }
}

#[test]
fn more_pages_than_a_receipt_has_are_refused() {
    let most = vec![(20, 20); MAX_PAGES];
    assert_eq!(pages(&receipt(&most)).unwrap().len(), MAX_PAGES);
    let more = vec![(20, 20); MAX_PAGES + 1];
    let said = "the PDF document has 21 pages; a receipt may have at most 20, so save those that matter";
    assert_eq!(refusal(&receipt(&more)).to_string(), said);
}

/// A page that shows the picture given.
fn showing(dictionary: &str, data: &[u8]) -> Vec<u8> {
    let image = stream(&format!("/Type /XObject /Subtype /Image {dictionary}"), data);
    document(&[(100, 100)], "", stream("", b"100 0 0 100 0 0 cm /Im1 Do"), &[image])
}

#[test]
fn a_picture_on_a_page_is_shown() {
    let dictionary = "/Width 64 /Height 48 /BitsPerComponent 8 /ColorSpace /DeviceRGB /Filter /DCTDecode";
    let prepared = pages(&showing(dictionary, &jpeg(&marked(64, 48)))).unwrap();
    let picture = pixels(prepared[0].jpeg());
    assert!(ink(&picture, (0, 0, 100, 130)) > 10_000 && ink(&picture, (120, 0, 400, 400)) == 0);
}

#[test]
fn pictures_that_are_too_large_are_refused() {
    let large = "/BitsPerComponent 8 /ColorSpace /DeviceRGB /Filter /FlateDecode";
    let mut huge = jpeg(&marked(64, 48));
    let frame = huge.windows(4).position(|four| four == [0xFF, 0xC0, 0, 17]).unwrap();
    huge[frame + 5..frame + 9].copy_from_slice(&[0xC3, 0x50, 0xC3, 0x50]);
    let files = [
        showing(&format!("/Width 50000 /Height 50000 {large}"), &zlib_of_zeros(1000)),
        showing(&format!("/Wid#74h % so\n 50000 /Height +50000 {large}"), &zlib_of_zeros(1000)),
        showing("/Width 64 /Height 48 /Filter /DCTDecode", &huge),
    ];
    for file in files {
        assert!(matches!(refusal(&file), PaperError::TooManyPixels { .. }));
    }
}

#[test]
fn what_unpacks_to_too_much_is_refused() {
    let bomb = zlib_of_zeros(600 * 1024 * 1024);
    let flate = |data: &[u8]| document(&[(100, 100)], "", stream("/Filter /FlateDecode", data), &[]);
    let inline = [b"q BI /W 10 /H 10 /BPC 8 /CS /G /F /Fl ID ", &bomb[..], b" EI Q"].concat();
    let lying = stream("/Filter /FlateDecode /X (obj stream\n)", &bomb);
    let files = [
        flate(&bomb),
        document(&[(100, 100)], "", stream("", &inline), &[]),
        document(&[(9, 9)], "", lying, &[]),
    ];
    for file in files {
        assert!(matches!(refusal(&file), PaperError::TooMuchMemory(Format::Pdf)));
    }
}

#[test]
fn what_cannot_be_measured_is_refused() {
    let filters = [
        "/Filter [/FlateDecode /FlateDecode]",
        "/Filter [ /Fl#61teDecode % twice\n /FlateDecode ]",
        "/Filter /JPXDecode",
        "/Filter [/JBIG2Decode]",
        "/Filter /LZWDecode",
        "/Filter 7 0 R",
        "/Filter [7 0 R]",
        "/Filter [/FlateDecode 7 0 R]",
    ];
    for filter in filters {
        let error = refusal(&document(&[(100, 100)], "", stream(filter, &zlib_of_zeros(1000)), &[]));
        assert!(matches!(error, PaperError::Unsupported { format: Format::Pdf, .. }), "{filter}: {error}");
    }
}

#[test]
fn what_is_nested_without_end_is_refused() {
    for (open, close) in [("[", "]"), ("<<", ">>"), ("<< /A ", ">>")] {
        let deep = object(&(open.repeat(200_000) + &close.repeat(200_000)));
        let _ = refusal(&document(&[(100, 100)], "", stream("", b"0 0 20 20 re f"), &[deep]));
    }
}

#[test]
fn pages_are_counted_where_that_is_no_danger() {
    assert_eq!(page_count(&receipt(&[(200, 200)])), Some(1));
    assert_eq!(page_count(&receipt(&[(200, 200); 7])), Some(7));
    let bomb = zlib_of_zeros(600 * 1024 * 1024);
    let bomb = document(&[(100, 100)], "", stream("/Filter /FlateDecode", &bomb), &[]);
    for file in [&bomb[..], b"%PDF-1.7\nand nothing more", b"a note"] {
        assert_eq!(page_count(file), None);
    }
}

#[test]
fn a_document_is_kept_as_it_is() {
    let root = tempfile::tempdir().unwrap();
    let store = PhotoStore::open(root.path(), SystemTime::UNIX_EPOCH).unwrap();
    let bytes = receipt(&[(200, 200)]);
    let hash = store.keep_document(&bytes).unwrap();
    assert_eq!(hash, Hash(Sha256::digest(&bytes).into()));
    let name = hash.to_string();
    let path = root.path().join("documents").join(&name[..2]).join(format!("{name}.pdf"));
    assert_eq!(std::fs::read(&path).unwrap(), bytes);
    assert_eq!(store.document(hash).unwrap(), bytes);
    let written = std::fs::metadata(&path).unwrap().modified().unwrap();
    assert_eq!(store.keep_document(&bytes).unwrap(), hash);
    assert_eq!(std::fs::metadata(&path).unwrap().modified().unwrap(), written);

    std::fs::write(&path, &bytes[1..]).unwrap();
    assert!(matches!(store.check_document(hash), Err(PaperError::Damaged(_))));
    assert!(
        matches!(store.document(hash), Err(PaperError::Damaged(_))),
        "it is not given out as what came in"
    );
    store.keep_document(&bytes).unwrap();
    store.check_document(hash).unwrap();

    store.remove_document(hash).unwrap();
    store.remove_document(hash).unwrap();
    assert!(!store.has_document(hash) && !path.exists());
    assert!(matches!(store.document(hash), Err(PaperError::NotFound(_))));
    assert!(store.keep_document(b"PK\x03\x04 pretends to be a document").is_err());
}

#[test]
fn a_document_is_stopped_after_any_step_and_says_how_far_it_is() {
    let bytes = receipt(&[(216, 144), (144, 288)]);
    let whole = pages(&bytes).unwrap();
    let told = std::sync::Mutex::new(Vec::new());
    let watched = paper::pages_while(&bytes, &|step| {
        told.lock().unwrap().push((step.done, step.of));
        std::ops::ControlFlow::Continue(())
    });
    assert_eq!(watched.unwrap(), whole);
    let mut told = told.into_inner().unwrap();
    // Photo and thumbnail are written at once, and the later may be told of first.
    told.sort_unstable();
    assert_eq!(told, (0..=6).map(|done| (done, 6)).collect::<Vec<_>>(), "three steps a page");
    for (last, _) in told {
        let stop = |step: paper::Step| {
            assert!(step.done <= last + 1, "nothing is begun after it was stopped");
            if step.done >= last {
                std::ops::ControlFlow::Break(())
            } else {
                std::ops::ControlFlow::Continue(())
            }
        };
        let stopped = paper::pages_while(&bytes, &stop);
        assert!(matches!(stopped, Err(PaperError::IntakeStopped)), "{last}: {stopped:?}");
    }
}
