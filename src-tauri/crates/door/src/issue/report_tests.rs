//! The report in each of its languages: all that the house says is said in that language, and the owner's words stay.
#![allow(clippy::unwrap_used)]

use std::collections::BTreeSet;

use serde_json::Value;

use super::*;
use crate::{
    CardLang, Clock, FoundForm, FuelForm, ItemForm, PartForm, ReadingForm, Request, Response, VehicleForm,
    VisitForm,
};

/// A car of which the book holds at least one of everything that a report tells.
struct Shelf {
    folder: tempfile::TempDir,
    door: Door,
    book: String,
}

impl Shelf {
    fn new() -> Shelf {
        let folder = tempfile::tempdir().unwrap();
        let today = "2026-06-01".parse().unwrap();
        let mut door = Door::open(folder.path(), Clock::Fixed(today)).unwrap();
        let vehicle = VehicleForm {
            name: "Thistle".to_owned(),
            make_model: "Quillane Thistle".to_owned(),
            engine: "petrol".to_owned(),
            unit: "km".to_owned(),
            first_use: "2012-04-03".to_owned(),
            ..VehicleForm::default()
        };
        let Response::Written(written) = door.ask(Request::AddVehicle { vehicle }).unwrap() else { panic!() };
        Shelf { folder, door, book: written.book }
    }

    fn full() -> Shelf {
        let mut shelf = Shelf::new();
        for (day, reading) in [("2024-05-02", "89000"), ("2024-06-02", "89600"), ("2025-06-02", "97000")] {
            shelf.fill(day, reading);
        }
        let struck = shelf.write_visit(&visit("2023-03-04", "82000"));
        let (book, subject) = (shelf.book.clone(), struck.clone());
        shelf.written(Request::StrikeOut { book, subject, why: "Zweimal".to_owned() });
        let amended = shelf.write_visit(&visit("2024-03-04", "88000"));
        let change = VisitForm { note: "Notiz".to_owned(), ..visit("2024-03-04", "88000") };
        let (book, subject, why) = (shelf.book.clone(), amended, String::new());
        shelf.written(Request::AmendVisit { book, subject, visit: change, why, keep: true });
        shelf.write_visit(&fitted("2026-05-20", "98300"));
        let lost = shelf.take_in(200);
        shelf.write_visit(&VisitForm { papers: vec![lost], ..visit("2025-03-04", "96000") });
        std::fs::remove_dir_all(shelf.folder.path().join("photos")).unwrap();
        let kept = shelf.take_in(100);
        shelf.write_visit(&VisitForm { papers: vec![kept], ..visit("2025-04-04", "96500") });
        let book = shelf.book.clone();
        let (day, old, new) = ("2026-05-21".to_owned(), "98310".to_owned(), "12".to_owned());
        shelf.written(Request::ReplaceInstrument { book, day, old, new });
        shelf
    }

    fn written(&mut self, request: Request) -> String {
        let Response::Written(written) = self.door.ask(request).unwrap() else { panic!() };
        written.subject
    }

    fn write_visit(&mut self, visit: &VisitForm) -> String {
        self.written(Request::RecordVisit { book: self.book.clone(), visit: visit.clone(), keep: true })
    }

    /// A paper of its own for every `tint`.
    fn take_in(&mut self, tint: u8) -> String {
        let mut png = std::io::Cursor::new(Vec::new());
        let paper = image::RgbImage::from_pixel(60, 90, image::Rgb([tint, 240, 230]));
        paper.write_to(&mut png, image::ImageFormat::Png).unwrap();
        self.door.take_in(&self.book, &png.into_inner()).unwrap().papers.remove(0)
    }

    fn fill(&mut self, day: &str, reading: &str) {
        let fuel = FuelForm {
            amount: "41.5".to_owned(),
            fill: "full".to_owned(),
            total: "1064.25".to_owned(),
            currency: "EUR".to_owned(),
            ..FuelForm::default()
        };
        let reading = ReadingForm {
            day: day.to_owned(),
            reading: reading.to_owned(),
            fuel: Some(fuel),
            ..ReadingForm::default()
        };
        self.written(Request::TakeReading { book: self.book.clone(), reading, keep: true.into() });
    }

    /// With everything that may be told, and under an address.
    fn report(&self, lang: CardLang) -> Report {
        let viewer = Some("https://card.example/".to_owned());
        self.told(&ReportOptions { lang, prices: true, viewer, ..ReportOptions::default() })
    }

    fn told(&self, options: &ReportOptions) -> Report {
        self.door.told(&self.book, options).unwrap().0
    }
}

fn visit(day: &str, reading: &str) -> VisitForm {
    VisitForm {
        day: day.to_owned(),
        reading: reading.to_owned(),
        items: vec![ItemForm::Catalogue(1)],
        ..VisitForm::default()
    }
}

/// One with something found, and with a part of each measure, one of them of a kind.
fn fitted(day: &str, reading: &str) -> VisitForm {
    let part = |measure: &str, kind: &str| PartForm {
        name: "Thistle".to_owned(),
        quantity: "1.5".to_owned(),
        measure: measure.to_owned(),
        price: "12.75".to_owned(),
        item: Some(ItemForm::Catalogue(5)),
        kind: kind.to_owned(),
        ..PartForm::default()
    };
    let mut parts: Vec<_> = ["litre", "set", "kilogram", "metre"].map(|measure| part(measure, "")).to_vec();
    parts.push(PartForm { quantity: "4".to_owned(), ..part("piece", "platinum") });
    let found = |number: u32, finding: &str, value: &str| FoundForm {
        item: ItemForm::Catalogue(number),
        finding: finding.to_owned(),
        value: value.to_owned(),
    };
    VisitForm {
        workshop: "Kestrel".to_owned(),
        items: vec![ItemForm::Catalogue(5), ItemForm::Own("Quillane".to_owned())],
        found: vec![found(51, "worn", "2.5"), found(7, "within-limits", "")],
        parts,
        cost: "1234.50".to_owned(),
        currency: "EUR".to_owned(),
        ..visit(day, reading)
    }
}

/// Every text that is printed of a report, or read aloud.
fn texts(report: &Report) -> Vec<String> {
    let mut texts = Vec::new();
    gather(&serde_json::to_value(report).unwrap(), &mut texts);
    texts
}

fn gather(value: &Value, texts: &mut Vec<String>) {
    match value {
        Value::String(text) => texts.push(text.clone()),
        Value::Array(values) => values.iter().for_each(|value| gather(value, texts)),
        // These two say which shape is drawn and which word stands beside it.
        Value::Object(fields) => fields
            .iter()
            .filter(|(name, _)| !["kind", "marks"].contains(&name.as_str()))
            .for_each(|(_, value)| gather(value, texts)),
        Value::Null | Value::Bool(_) | Value::Number(_) => {}
    }
}

/// The words of texts with at least three letters and no digit, save the groups of four in which keys and hashes are
/// written.
fn words_of(texts: &[String]) -> BTreeSet<String> {
    let words = texts.iter().flat_map(|text| text.split(|c: char| !c.is_alphanumeric()));
    let is_group = |word: &str| word.len() == 4 && word.chars().all(|c| matches!(c, 'a'..='f' | '0'..='9'));
    let worded = words.filter(|word| word.chars().count() >= 3 && word.chars().all(char::is_alphabetic));
    worded.filter(|word| !is_group(word)).map(str::to_lowercase).collect()
}

/// The words of three reports, which between them say what there is to say: one with everything, one that leaves out
/// what may be left out, and one of a book without a visit.
fn said(full: &Shelf, empty: &Shelf, lang: CardLang) -> BTreeSet<String> {
    let private =
        ReportOptions { lang, hide_names: true, vin: VinShown::LastSix, ..ReportOptions::default() };
    let reports = [full.report(lang), full.told(&private), empty.report(lang)];
    words_of(&reports.iter().flat_map(texts).collect::<Vec<_>>())
}

/// A key that no file of the language has would be said in English, or as the key: in either case with words that the
/// English report has too.
#[test]
fn nothing_of_the_house_is_said_in_english() {
    let (full, mut empty) = (Shelf::full(), Shelf::new());
    empty.fill("2026-05-02", "89000");
    let english = said(&full, &empty, CardLang::En);
    assert!(english.len() > 200, "{}", english.len());
    let own = ["eur", "kestrel", "notiz", "quillane", "thistle", "zweimal"];
    let french = [
        "air",
        "car",
        "egr",
        "identification",
        "notes",
        "pages",
        "photo",
        "photos",
        "question",
        "signature",
        "vin",
    ];
    let alike: [(CardLang, &[&str]); 3] = [
        (CardLang::De, &["filter", "plan", "text", "was"]),
        (CardLang::Fr, &french),
        (CardLang::Es, &["egr", "manual", "plan", "transfer", "vin"]),
    ];
    for (lang, alike) in alike {
        let other = said(&full, &empty, lang);
        let both: BTreeSet<&str> = english.intersection(&other).map(String::as_str).collect();
        assert_eq!(both, own.iter().chain(alike).copied().collect(), "{lang:?}");
    }
}

/// In English, German, French and Spanish: the title, what was found, and an amount.
const SAID: [(CardLang, &str, &str, &str); 4] = [
    (
        CardLang::En,
        "Full report",
        "Found: Brake pads, front: worn (2.5 mm); Fuel filter: within limits",
        "1.5 × set",
    ),
    (
        CardLang::De,
        "Vollständiger Bericht",
        "Befund: Bremsbeläge vorn: verschlissen (2,5 mm); Kraftstofffilter: innerhalb der Grenzwerte",
        "1,5 × Satz",
    ),
    (
        CardLang::Fr,
        "Rapport complet",
        "Constaté\u{a0}: Plaquettes de frein avant\u{a0}: usé (2,5 mm)\u{202f}; Filtre à carburant\u{a0}: dans les limites",
        "1,5 × jeu",
    ),
    (
        CardLang::Es,
        "Informe completo",
        "Observado: Pastillas de freno delanteras: gastado (2,5 mm); Filtro de combustible: dentro de los límites",
        "1,5 × juego",
    ),
];

#[test]
fn each_language_says_its_own_and_writes_numbers_its_own_way() {
    let shelf = Shelf::full();
    for (lang, title, found, amount) in SAID {
        let report = shelf.report(lang);
        assert_eq!((report.card.lang.as_str(), report.words.title.as_str()), (lang.tag(), title));
        let visit = &report.years[0].visits[0];
        assert_eq!(
            (visit.lines.as_slice(), visit.parts[1].amount.as_str()),
            ([found.to_owned()].as_slice(), amount)
        );
        let mark = if lang == CardLang::En { '.' } else { ',' };
        assert_eq!(visit.cost, Some(format!("1\u{202f}234{mark}50 EUR")), "{lang:?}");
        assert_eq!(visit.parts[4].price, format!("12{mark}75 EUR"), "{lang:?}");
        let bars: Vec<_> = report.bars.iter().flat_map(|bars| &bars.bars).collect();
        assert!(bars.iter().all(|bar| bar.value.contains(mark)) && bars.len() > 3, "{lang:?} {bars:?}");
    }
}

/// The owner's own words stay as he wrote them.
#[test]
fn what_the_owner_wrote_is_the_same_in_every_language() {
    let shelf = Shelf::full();
    for lang in CardLang::ALL {
        let texts = texts(&shelf.report(lang));
        for own in ["Thistle", "Quillane Thistle", "Kestrel", "Notiz"] {
            assert!(texts.iter().any(|text| text == own), "{lang:?} {own}");
        }
        assert!(texts.iter().any(|text| text.ends_with(" Zweimal")), "{lang:?}");
    }
}

/// Leaving prices out is what happens unasked, and a receipt says what was paid.
#[test]
fn without_prices_nothing_can_be_read_on_a_photo_and_the_report_says_so() {
    let shelf = Shelf::full();
    let small = "Photos of receipts are so small that no price can be read on them";
    let longest = |report: &Report| {
        let sides = report.photos.iter().map(|photo| photo.size().0.max(photo.size().1));
        (sides.max(), texts(report).iter().any(|text| text.starts_with(small)))
    };
    let without = shelf.told(&ReportOptions::default());
    assert_eq!(longest(&without), (Some(card::ILLEGIBLE_PHOTO_SIDE), true));
    let with = shelf.told(&ReportOptions { prices: true, ..ReportOptions::default() });
    assert_eq!(longest(&with), (Some(90), false));
    let none = shelf.told(&ReportOptions { without_receipts: true, ..ReportOptions::default() });
    assert_eq!(longest(&none), (None, false));
}
