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
            cost: Some("1234.50 EUR".into()),
            marks: vec![Mark::Receipt, Mark::Photo, Mark::WrittenLate, Mark::Amended],
        }],
        visits_note: "Ein Besuch.".into(),
        record: record(name),
        next: vec![NextLine { item: name.into(), when: name.into() }],
        issued: "2026-11-05".into(),
        handling: "Beidseitig drucken.".into(),
        square: plain("Heron"),
        words: SheetWords { title: "Karte".into(), ..SheetWords::default() },
    }
}

fn record(name: &str) -> RecordLines {
    let done = WorkLine {
        item: name.into(),
        day: Some("2026-10-30".into()),
        reading: Some("98 000".into()),
        next: "2027-10-30".into(),
    };
    let never = WorkLine { item: name.into(), ..WorkLine::default() };
    let point = |day: i32, way: i64| PlotPoint { day, way };
    let tick = |at: i64| PlotTick { at, label: at.to_string() };
    RecordLines {
        plot: Some(Plot {
            days: [16_000, 20_000],
            most: 100_000,
            runs: vec![
                vec![point(16_000, 0), point(17_000, 30_000)],
                vec![point(18_000, 40_000), point(20_000, 98_000)],
            ],
            gaps: vec![[point(17_000, 30_000), point(18_000, 40_000)]],
            years: vec![tick(16_436), tick(17_897)],
            ways: vec![tick(50_000), tick(100_000)],
            note: name.into(),
        }),
        groups: vec![WorkGroup { name: name.into(), lines: vec![done, never], more: name.into() }],
        receipts: name.into(),
        owners: name.into(),
        writers: vec![WriterLine {
            span: name.into(),
            key: "21fe 31df a154 a261".into(),
            handed_over: name.into(),
        }],
        more_writers: name.into(),
    }
}

fn options() -> SheetOptions {
    printed(SheetSize::A5, SheetPaper::Own)
}

fn printed(size: SheetSize, paper: SheetPaper) -> SheetOptions {
    SheetOptions { size, paper, made_at: 1_793_275_200, ident: "heron".into() }
}

/// Every size on every paper.
fn all() -> impl Iterator<Item = SheetOptions> {
    let papers = [SheetPaper::Own, SheetPaper::A4, SheetPaper::Letter];
    SheetSize::ALL.into_iter().flat_map(move |size| papers.map(|paper| printed(size, paper)))
}

/// How far a hyphen may hang into the margin, in points.
const HYPHEN: f64 = 3.0;

fn mm(millimetres: f64) -> f64 {
    millimetres / 25.4 * 72.0
}

/// A text on a sheet: its edges and its size in points, from the upper left of the page that it stands on.
#[derive(Debug)]
struct Placed {
    text: String,
    left: f64,
    right: f64,
    base: f64,
    size: f64,
    page: usize,
}

/// The texts on a sheet.
fn texts(model: &SheetModel, options: &SheetOptions) -> Vec<Placed> {
    fn walk(frame: &typst::layout::Frame, (left, top): (f64, f64), page: usize, found: &mut Vec<Placed>) {
        for (position, item) in frame.items() {
            let (left, top) = (left + position.x.to_pt(), top + position.y.to_pt());
            match item {
                typst::layout::FrameItem::Group(group) => walk(&group.frame, (left, top), page, found),
                typst::layout::FrameItem::Text(text) => found.push(Placed {
                    text: text.text.to_string(),
                    left,
                    right: left + text.width().to_pt(),
                    base: top,
                    size: text.size.to_pt(),
                    page,
                }),
                _ => {}
            }
        }
    }
    let document = engine::set(model, options).unwrap();
    let mut found = Vec::new();
    for (at, page) in document.pages().iter().enumerate() {
        walk(&page.frame, (0.0, 0.0), at, &mut found);
    }
    found
}

fn all_text(model: &SheetModel) -> String {
    texts(model, &options()).into_iter().map(|placed| placed.text).collect()
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
        for Placed { text, left, right, page, .. } in texts(&model, &options()) {
            let limit = if left < mm(105.0) { mm(96.0) } else { mm(201.0) };
            assert!(right <= limit + HYPHEN, "'{text}' ends at {right} pt on page {page}");
        }
    }
}

/// The syllables of a part are Typst's to break; a place without a hyphen would part `Syste` from `mreiniger`.
#[test]
fn a_long_word_of_two_breaks_where_they_are_joined() {
    let broken = |word: &str, lang: &str| text::printable(word, lang).replace('\u{200b}', "|");
    assert_eq!(broken("Diesel-Systemreiniger", "de"), "Diesel-|Systemreiniger");
    assert_eq!(broken("Öl-/Kraftstoffgemisch", "de"), "Öl-/|Kraftstoffgemisch");
    assert_eq!(broken("KM-0123456789012345678", "de"), "KM-|012345678901|2345678");
    assert_eq!(broken("--------------------", "de"), "------------|--------");
}

#[test]
fn a_language_is_reduced_to_what_hyphenation_knows() {
    assert_eq!(text::primary_language("pt-BR"), "pt");
    assert_eq!(text::primary_language("DE_at"), "de");
    assert_eq!(text::primary_language("#panic()"), "en");
    assert_eq!(text::primary_language(""), "en");
}

/// A name has at most 60 characters, as the door takes it.
#[test]
fn nothing_stands_outside_a_card_or_is_too_small_to_read() {
    let names = [
        "Heron".to_owned(),
        "Großmutters Kombi mit der Anhängerkupplung und Dachgepäckbox".to_owned(),
        "W".repeat(60),
        String::new(),
    ];
    for (name, options) in names.iter().flat_map(|name| all().map(move |options| (name, options))) {
        let mut model = model(name);
        model.car.vin = Some("1M8GDM9AXKP042788".into());
        model.car.description = Some(name.clone());
        let layout = options.layout();
        let edge = |at: u32, long: u32| (mm(f64::from(at) / 1000.0), mm(f64::from(at + long) / 1000.0));
        let (left, right) = edge(layout.at.x, layout.card.x);
        let (top, bottom) = edge(layout.at.y, layout.card.y);
        for placed in texts(&model, &options).iter().filter(|placed| placed.text != model.handling) {
            assert!(placed.size >= 6.999, "{options:?}: {placed:?}");
            let within = left + mm(3.0) <= placed.left && placed.right <= right - mm(3.0) + HYPHEN;
            let between = top + mm(3.0) <= placed.base && placed.base <= bottom - mm(3.0);
            assert!(within && between, "{options:?}: {placed:?}");
        }
    }
}

#[test]
fn two_sided_cards_have_two_sides_however_long_the_names_are() {
    for size in [SheetSize::Id1, SheetSize::A6] {
        for name in ["Heron".to_owned(), "W".repeat(60)] {
            let mut model = model(&name);
            model.car.description = Some(name.clone());
            let group = model.record.groups[0].clone();
            model.record.groups = vec![group; 6];
            let pages = svg(&model, &printed(size, SheetPaper::A4)).unwrap().len();
            assert_eq!(pages, 2, "{size:?} {name}");
        }
    }
}

/// The largest square that a size holds, signed, with the longest words that stand beside it in any language.
fn full(size: SheetSize) -> SheetModel {
    let limit = size.square_limit();
    let text = (0..).map(|length| "x".repeat(length * 8)).map_while(|text| Square::plain(&text, limit).ok());
    let square = text.last().unwrap();
    let key = "2eee 0df3 f3a3 6cba".to_owned();
    let writer = WriterLine {
        span: "2018-05-01 bis 2024-03-02".into(),
        key: key.clone(),
        handed_over: "übergeben am 2024-03-02".into(),
    };
    let mut model = model("Heron");
    model.visits_note = "1000 Einträge; im QR-Code fehlen die 907 ältesten.".into();
    model.record.receipts = "Zu 160 von 1000 Einträgen liegt ein Beleg im Buch.".into();
    model.record.writers = vec![writer; size.writers_named(9)];
    model.record.more_writers = "und 7 weitere Geräte".into();
    model.words.writers = "Wer ins Buch geschrieben hat".into();
    model.square = SheetSquare::Code {
        square,
        scan: "Mit dem Telefon scannen, um diese Historie zu lesen und ihre Signatur zu prüfen.".into(),
        unchanged: format!(
            "Besteht sie die Prüfung, so ist diese Historie unverändert, seit sie am 2026-11-28 mit dem Schlüssel \
             {key} signiert wurde."
        ),
        proves_not_short: "Das beweist nicht, dass die Arbeiten ausgeführt wurden.".into(),
        proves_not:
            "Eine Signatur beweist, dass danach nichts geändert wurde; sie beweist nicht, dass die Arbeiten \
                     ausgeführt wurden."
                .into(),
        key,
    };
    model
}

/// The square leaves least room on A6, and what stands under it must not push it to another page or out of the card.
#[test]
fn the_back_of_a6_names_who_wrote_under_a_square_of_full_size() {
    let model = full(SheetSize::A6);
    let options = printed(SheetSize::A6, SheetPaper::Own);
    let texts = texts(&model, &options);
    let at = |text: &str| texts.iter().filter(|placed| placed.text.starts_with(text)).collect::<Vec<_>>();
    let spans = at("2018-05-01 bis");
    assert_eq!((spans.len(), at("übergeben am").len()), (2, 2));
    let (scan, note) = (at("Mit dem Telefon")[0].base, at("1000 Einträge")[0].base);
    assert!(spans.iter().all(|span| span.page == 1 && span.base > scan + 20.0 && span.base < note - 12.0));
    assert!(texts.iter().all(|placed| placed.page < 2 && placed.base <= mm(148.0 - 8.0)));
}

#[test]
fn the_smallest_card_says_what_is_due_who_had_it_and_what_it_does_not_prove() {
    for (name, least) in [("Heron", 2), ("Großmutters Kombi mit der Anhängerkupplung und Dachgepäckbox", 0)]
    {
        let mut model = full(SheetSize::Id1);
        model.car.name = name.into();
        model.car.description = Some(name.into());
        model.car.vin = Some("1M8GDM9AXKP042788".into());
        let next = |item: &str| NextLine { item: item.into(), when: "2027-10-29 oder 141 570 mi".into() };
        model.next = ["Innenraumfilter", "Luftfilter", "Motoröl"].map(next).to_vec();
        model.record.owners = "Dieses Buch hatte 3 Besitzer, den letzten seit 2026-11-28.".into();
        let texts = texts(&model, &printed(SheetSize::Id1, SheetPaper::Own));
        let has = |text: &str| texts.iter().filter(|placed| placed.text.contains(text)).count();
        assert!(has("141 570 mi") >= least, "{name}");
        assert_eq!((has("Zu 160 von 1000"), has("Das beweist nicht")), (1, 1), "{name}");
        assert!(texts.iter().all(|placed| placed.page < 2 && placed.base <= mm(53.98 - 3.0)), "{name}");
        // What stands beside the square does not run into what stands above it.
        let at =
            |text: &str| texts.iter().find(|placed| placed.text.contains(text)).map(|placed| placed.base);
        assert!(at("Signatur zu prüfen").unwrap() + 8.0 < at("1000 Einträge").unwrap(), "{name}");
    }
}

/// ISO/IEC 7810 (ID-1), ISO 216 (A4, A5, A6) and ANSI/ASME Y14.1 (Letter), in micrometres.
#[test]
fn a_card_lies_in_the_middle_of_its_paper_so_that_front_and_back_meet() {
    let expected = [
        (SheetSize::Id1, SheetPaper::Own, (85_600, 53_980), (85_600, 53_980), Turn::ShortEdge),
        (SheetSize::Id1, SheetPaper::A4, (210_000, 297_000), (85_600, 53_980), Turn::LongEdge),
        (SheetSize::Id1, SheetPaper::Letter, (215_900, 279_400), (85_600, 53_980), Turn::LongEdge),
        (SheetSize::A6, SheetPaper::Own, (105_000, 148_000), (105_000, 148_000), Turn::LongEdge),
        (SheetSize::A6, SheetPaper::A4, (210_000, 297_000), (105_000, 148_000), Turn::LongEdge),
        (SheetSize::A5, SheetPaper::Own, (210_000, 148_000), (210_000, 148_000), Turn::ShortEdge),
        (SheetSize::A5, SheetPaper::A4, (297_000, 210_000), (210_000, 148_000), Turn::ShortEdge),
        (SheetSize::A5, SheetPaper::Letter, (279_400, 215_900), (210_000, 148_000), Turn::ShortEdge),
        (SheetSize::A4, SheetPaper::Own, (210_000, 297_000), (210_000, 297_000), Turn::LongEdge),
        (SheetSize::A4, SheetPaper::A4, (210_000, 297_000), (210_000, 297_000), Turn::LongEdge),
        (SheetSize::A4, SheetPaper::Letter, (215_900, 279_400), (215_900, 279_400), Turn::LongEdge),
    ];
    for (size, paper, sheet, card, turn) in expected {
        let layout = SheetLayout::new(size, paper);
        assert_eq!((layout.paper.x, layout.paper.y), sheet, "{size:?} on {paper:?}");
        assert_eq!((layout.card.x, layout.card.y), card, "{size:?} on {paper:?}");
        assert_eq!(layout.turn(), turn, "{size:?} on {paper:?}");
        assert_eq!(layout.is_cut(), sheet != card, "{size:?} on {paper:?}");
        // The same from either side.
        assert_eq!(sheet.0 - card.0 - layout.at.x, layout.at.x, "{size:?} on {paper:?}");
        assert_eq!(sheet.1 - card.1 - layout.at.y, layout.at.y, "{size:?} on {paper:?}");
    }
}

#[test]
fn the_square_is_as_large_as_its_place_but_no_module_is_under_the_least() {
    assert_eq!(SheetSize::A5.module_um(185), 400);
    assert_eq!(SheetSize::A5.module_um(100), 740);
    assert_eq!(SheetSize::A5.module_um(29), 800);
}

/// ISO/IEC 18004: version 25 has 117 modules a side, 125 with the quiet zone, which is 50.0 mm at 0.40 mm.
#[test]
fn every_size_holds_a_square_with_modules_of_0_40_mm() {
    for (size, version) in
        [(SheetSize::Id1, 25), (SheetSize::A6, 40), (SheetSize::A5, 40), (SheetSize::A4, 40)]
    {
        let limit = size.square_limit();
        assert_eq!(limit.version(), version, "{size:?}");
        let side = 17 + 4 * u32::from(version) + 2 * crate::QUIET_ZONE;
        assert!(side * size.module_um(side) <= size.square_width_um(), "{size:?}");
        assert!(size.module_um(side) >= crate::MODULE_MIN_UM, "{size:?}");
    }
}
