//! Sheets as far as they can be judged without paper: what is set, what is refused, and that bytes repeat.

#![allow(clippy::unwrap_used)]

use serde_json::json;

use super::*;
use crate::{Square, SquareLimit};

fn plain(text: &str) -> SheetSquare {
    let square = Square::plain(text, SquareLimit::LARGEST).unwrap();
    SheetSquare::Plain { square, scan: "Scan.".into(), unsigned: "Unsigned.".into() }
}

fn model(name: &str) -> SheetModel {
    SheetModel {
        lang: "de-DE".into(),
        car: CarLines { name: name.into(), ..CarLines::default() },
        latest: ReadingLine { day: "2026-11-05".into(), reading: "98 420 km".into() },
        visits: vec![VisitLine {
            day: "2026-10-30".into(),
            reading: "98 000".into(),
            who: "Werkstatt".into(),
            items: vec![name.into(), "Bremsflüssigkeit".into()],
            marks: vec![Mark::Receipt, Mark::Photo, Mark::WrittenLate, Mark::Amended],
        }],
        visits_note: "Ein Besuch.".into(),
        next: vec![NextLine { item: name.into(), when: name.into() }],
        issued: "2026-11-05".into(),
        square: plain("Heron"),
        words: SheetWords { title: "Karte".into(), ..SheetWords::default() },
    }
}

fn options() -> SheetOptions {
    SheetOptions { size: SheetSize::A5Folded, made_at: 1_793_275_200, ident: "heron".into() }
}

/// How far a hyphen may hang into the margin, in points.
const HYPHEN: f64 = 3.0;

fn mm(millimetres: f64) -> f64 {
    millimetres / 25.4 * 72.0
}

/// The texts on a sheet, the left and right edge of each in points, and the page it stands on.
fn texts(model: &SheetModel) -> Vec<(String, f64, f64, usize)> {
    fn walk(
        frame: &typst::layout::Frame,
        left: f64,
        page: usize,
        found: &mut Vec<(String, f64, f64, usize)>,
    ) {
        for (position, item) in frame.items() {
            let left = left + position.x.to_pt();
            match item {
                typst::layout::FrameItem::Group(group) => walk(&group.frame, left, page, found),
                typst::layout::FrameItem::Text(text) => {
                    found.push((text.text.to_string(), left, left + text.width().to_pt(), page));
                }
                _ => {}
            }
        }
    }
    let document = engine::set(model, &options()).unwrap();
    let mut found = Vec::new();
    for (at, page) in document.pages().iter().enumerate() {
        walk(&page.frame, 0.0, at, &mut found);
    }
    found
}

fn all_text(model: &SheetModel) -> String {
    texts(model).into_iter().map(|(text, ..)| text).collect()
}

#[test]
fn a_sheet_is_a_pure_function_of_model_and_options() {
    let first = pdf(&model("Heron"), &options()).unwrap();
    assert_eq!(first, pdf(&model("Heron"), &options()).unwrap());
    assert_eq!(svg(&model("Heron"), &options()).unwrap(), svg(&model("Heron"), &options()).unwrap());
    let later = SheetOptions { made_at: 1_793_275_201, ..options() };
    assert_ne!(first, pdf(&model("Heron"), &later).unwrap());
}

/// ISO 19005-2 asks for this part and level in the metadata.
#[test]
fn a_pdf_declares_itself_as_pdf_a_2b() {
    let bytes = pdf(&model("Heron"), &options()).unwrap();
    let text = String::from_utf8_lossy(&bytes);
    assert!(text.contains("<pdfaid:part>2</pdfaid:part>"));
    assert!(text.contains("<pdfaid:conformance>B</pdfaid:conformance>"));
}

#[test]
fn a_page_for_the_screen_has_the_size_of_the_paper_and_asks_for_nothing() {
    let pages = svg(&model("Heron"), &options()).unwrap();
    assert_eq!(pages.len(), 2);
    for page in &pages {
        // 210 mm by 148 mm in points of 1/72 inch.
        assert!(page.contains(r#"viewBox="0 0 595.275590551 419.527559055"#), "{}", &page[..200]);
        assert!(!page.contains("data:") && !page.contains("<script"));
        assert_eq!(
            page.matches("http").count(),
            page.matches("=\"http://www.w3.org/").count(),
            "only namespaces"
        );
    }
}

#[test]
fn texts_are_data_and_never_markup() {
    for name in [
        "#panic()",
        "*bold* _it_ $x^2$",
        "<script>alert(1)</script>",
        "\\u{41} @ref <label>",
        "`raw` [x] // c",
        "#import \"x\"",
    ] {
        let mut model = model(name);
        model.words.title = name.into();
        let shown = all_text(&model).replace([' ', '\u{200b}', '\u{ad}'], "");
        assert!(shown.contains(&name.replace(' ', "")), "{name} in {shown}");
        pdf(&model, &options()).unwrap();
    }
}

#[test]
fn any_text_comes_out_whatever_it_holds() {
    let rough = "a\u{202e}b\u{2066}\u{0}\u{7}\u{ad}c\nd\te \u{1F697} 車 Ж \u{fffd} \u{e000} ą";
    assert_eq!(text::printable(rough, "en"), "abc d e ? ? ? ? ? ą");
    pdf(&model(rough), &options()).unwrap();
    svg(&model(rough), &options()).unwrap();
}

#[test]
fn every_text_of_a_model_is_made_printable() {
    let mut value = json!({"a": ["\u{202e}x", {"b": "\u{7}y"}], "c": 3, "d": null, "e": true});
    text::make_printable(&mut value, "en");
    assert_eq!(value, json!({"a": ["x", {"b": "y"}], "c": 3, "d": null, "e": true}));
}

#[test]
fn long_words_stay_within_their_half_of_the_sheet() {
    let long = [
        "Donaudampfschifffahrtselektrizitätenhauptbetriebswerkbauunterbeamtengesellschaft".to_owned(),
        "W".repeat(120),
        "0123456789".repeat(12),
        "https://example/a-very-long-thing/".repeat(4),
        "Bremsflüssigkeitswechselintervallüberschreitung und Klimaanlagenkondensatorkühlrippenreinigung"
            .into(),
    ];
    for name in long {
        let mut model = model(&name);
        model.car.vin = Some(name.clone());
        model.car.description = Some(name.clone());
        model.latest.day = name.clone();
        for (text, left, right, page) in texts(&model) {
            let limit = if left < mm(105.0) { mm(96.0) } else { mm(201.0) };
            assert!(right <= limit + HYPHEN, "'{text}' ends at {right} pt on page {page}");
        }
    }
}

#[test]
fn a_language_is_reduced_to_what_hyphenation_knows() {
    assert_eq!(text::primary_language("pt-BR"), "pt");
    assert_eq!(text::primary_language("DE_at"), "de");
    assert_eq!(text::primary_language("#panic()"), "en");
    assert_eq!(text::primary_language(""), "en");
}

#[test]
fn the_square_is_as_large_as_its_place_but_no_module_is_under_the_least() {
    assert_eq!(SheetSize::A5Folded.module_um(185), 400);
    assert_eq!(SheetSize::A5Folded.module_um(100), 740);
    assert_eq!(SheetSize::A5Folded.module_um(29), 800);
}
