//! Refusals: each has one row, one sentence with every place filled, and something that produces it.
#![allow(clippy::unwrap_used)]

use std::collections::BTreeSet;
use std::path::Path;

use door::{
    AnswerForm, AnswerKey, BoughtForm, Clock, Door, DrivenForm, EndForm, FuelForm, HereForm, IntervalForm,
    ItemForm, MeasuredForm, MeasuredValueForm, PartForm, PartNoteForm, PlanForm, REFUSALS, ReadingForm,
    Refusal, Request, Response, ScanForm, TroubleForm, VehicleForm, VisitForm,
};
use words::{Arg, Words};

/// What the faces refuse by themselves.
const OF_THE_FACES: [&str; 13] = [
    "item-mistyped",
    "shared-begun",
    "shared-not-copied",
    "shared-too-many",
    "shelf-empty",
    "which-vehicle",
    "no-such-vehicle",
    "not-handed-over",
    "answer-form",
    "nothing-told",
    "passphrase-empty",
    "passphrases-differ",
    "other",
];

fn here(path: &str) -> std::path::PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join(path)
}

/// A refusal as a face says it.
fn said(refusal: &Refusal) -> String {
    let id = format!("refusal-{}", refusal.code);
    let values: Vec<(&str, Arg<'_>)> =
        refusal.values.iter().map(|(name, value)| (name.as_str(), value.into())).collect();
    Words::load("en").say(&id, &values)
}

#[test]
fn the_rows_and_the_sentences_are_the_same() {
    let sentences = std::fs::read_to_string(here("../words/lang/en/refusals.ftl")).unwrap();
    let sentences: BTreeSet<&str> = sentences
        .lines()
        .filter_map(|line| line.strip_prefix("refusal-")?.split_once(" = ").map(|(code, _)| code))
        .filter(|code| !OF_THE_FACES.contains(code))
        .collect();
    let rows: BTreeSet<&str> = REFUSALS.iter().map(|(code, _)| *code).collect();
    assert_eq!(rows, sentences);
    assert_eq!(rows.len(), REFUSALS.len(), "no code stands there twice");
}

#[test]
fn the_values_of_a_row_fill_its_sentence() {
    let words = Words::load("en");
    for (code, names) in REFUSALS {
        let values: Vec<(&str, Arg<'_>)> = names.iter().map(|name| (*name, Arg::from("X"))).collect();
        let sentence = words.say(&format!("refusal-{code}"), &values);
        assert!(!sentence.contains("{$"), "{code}: {sentence}");
    }
}

/// Every file of the door's source but the table itself.
fn sources(folder: &Path) -> Vec<String> {
    let mut texts = Vec::new();
    for entry in std::fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            texts.extend(sources(&path));
        } else if !path.ends_with("refusals.rs") {
            texts.push(std::fs::read_to_string(path).unwrap());
        }
    }
    texts
}

#[test]
fn nothing_is_refused_without_a_row_and_no_row_is_left_unused() {
    let source = sources(&here("src")).concat();
    for made in source.split("Refusal::new(\"").skip(1) {
        let code = made.split('"').next().unwrap();
        assert!(REFUSALS.iter().any(|(row, _)| *row == code), "{code} has no row");
    }
    for (code, _) in REFUSALS {
        assert!(source.contains(&format!("\"{code}\"")), "nothing refuses with {code}");
    }
}

struct Shelf {
    door: Door,
    book: String,
    _folder: tempfile::TempDir,
}

fn shelf() -> Shelf {
    let folder = tempfile::tempdir().unwrap();
    let mut door = Door::open(folder.path(), Clock::Fixed("2026-06-01".parse().unwrap())).unwrap();
    let Response::Written(written) = door.ask(Request::AddVehicle { vehicle: car() }).unwrap() else {
        panic!()
    };
    Shelf { door, book: written.book, _folder: folder }
}

fn car() -> VehicleForm {
    let text = str::to_owned;
    VehicleForm {
        name: text("Thistle"),
        engine: text("petrol"),
        unit: text("km"),
        driven: DrivenForm::default(),
        ..VehicleForm::default()
    }
}

fn oil() -> VisitForm {
    VisitForm { items: vec![ItemForm::Catalogue(1)], ..VisitForm::default() }
}

impl Shelf {
    /// Asks for what must be refused: with this code, and said with every place filled.
    fn refused(&mut self, code: &str, request: Request) {
        let refusal = match self.door.ask(request) {
            Err(refusal) => refusal,
            Ok(answer) => panic!("{code} was answered with {answer:?}"),
        };
        assert_eq!(refusal.code, code);
        let said = said(&refusal);
        assert!(!said.contains("{$") && said.ends_with('.'), "{code}: {said}");
    }

    fn take(&self, reading: ReadingForm) -> Request {
        Request::TakeReading { book: self.book.clone(), reading, keep: false.into() }
    }

    fn record(&self, visit: VisitForm) -> Request {
        Request::RecordVisit { book: self.book.clone(), visit, keep: false }
    }

    fn written(&mut self, request: Request) -> String {
        match self.door.ask(request).unwrap() {
            Response::Written(written) => written.subject,
            other => panic!("{other:?}"),
        }
    }
}

fn read(day: &str, reading: &str) -> ReadingForm {
    ReadingForm { day: day.to_owned(), reading: reading.to_owned(), ..ReadingForm::default() }
}

fn filled(change: impl FnOnce(&mut FuelForm)) -> ReadingForm {
    let mut fuel = FuelForm { amount: "40".to_owned(), ..FuelForm::default() };
    change(&mut fuel);
    ReadingForm { fuel: Some(fuel), ..read("", "50000") }
}

#[test]
fn readings_and_fuel() {
    let mut shelf = shelf();
    shelf.written(shelf.take(read("2026-05-01", "50000")));
    let text = str::to_owned;
    let status = ReadingForm { status: text("perhaps"), ..read("", "50000") };
    let cases = [
        ("day-form", read("yesterday", "50000")),
        ("day-range", read("1899-12-31", "50000")),
        ("day-future", read("2026-06-02", "50000")),
        ("reading-empty", read("", "")),
        ("not-a-number", read("", "5e4")),
        ("reading-too-long", read("", "12345678")),
        ("reading-lower", read("2026-05-02", "49999")),
        ("reading-lower", read("2026-05-01", "49999")),
        ("reading-higher", read("2026-04-30", "50001")),
        ("reading-too-fast", read("2026-05-02", "60000")),
        ("status", status),
        ("fuel-amount", filled(|fuel| fuel.amount = text("a tank"))),
        ("fuel-unit", filled(|fuel| fuel.unit = text("barrel"))),
        ("fuel-kind", filled(|fuel| fuel.kind = text("steam"))),
        ("fuel-kind", filled(|fuel| fuel.kind = text("electric"))),
        ("fuel-two-needed", filled(|fuel| fuel.amount.clear())),
        ("fuel-disagrees", filled(|fuel| priced(fuel, "1.749", "96.69"))),
        ("money", filled(|fuel| priced(fuel, "1.74999", ""))),
        ("fill", filled(|fuel| fuel.fill = text("half"))),
        ("currency-missing", filled(|fuel| fuel.total = text("70"))),
    ];
    for (code, form) in cases {
        shelf.refused(code, shelf.take(form));
    }
    let (book, day) = (shelf.book.clone(), text("2026-05-20"));
    let replace = Request::ReplaceInstrument { book, day, old: text("49000"), new: text("0") };
    shelf.refused("instrument-order", replace);
}

fn priced(fuel: &mut FuelForm, price: &str, total: &str) {
    (fuel.price, fuel.total, fuel.currency) = (price.to_owned(), total.to_owned(), "EUR".to_owned());
}

#[test]
fn measured_values_and_units_of_consumption() {
    let mut shelf = shelf();
    let value = |parameter: &str, value: &str| MeasuredForm {
        values: vec![MeasuredValueForm { parameter: parameter.to_owned(), value: value.to_owned() }],
        ..MeasuredForm::default()
    };
    let cases = [
        ("measured-missing", MeasuredForm::default()),
        ("parameter", value("revolutions", "800")),
        ("measurement", value("coolant", "warm")),
        ("measurement-range", value("rest-voltage", "24.6")),
        ("day-future", MeasuredForm { day: "2026-06-02".to_owned(), ..value("coolant", "90") }),
        (
            "too-many",
            MeasuredForm { values: vec![MeasuredValueForm::default(); 101], ..MeasuredForm::default() },
        ),
    ];
    for (code, measured) in cases {
        shelf.refused(code, Request::WriteMeasured { book: shelf.book.clone(), measured });
    }
    shelf.refused("measured-unread", Request::ReadMeasured { text: "RPM 812".to_owned() });
    let (book, unit) = (shelf.book.clone(), Some("furlongs-per-firkin".to_owned()));
    shelf.refused("consumption-unit", Request::Fuel { book, unit });
}

#[test]
fn vehicles() {
    let mut shelf = shelf();
    let text = str::to_owned;
    let cases = [
        ("name-length", VehicleForm { name: text(" "), ..car() }),
        ("name-length", VehicleForm { name: "x".repeat(61), ..car() }),
        ("name-control", VehicleForm { name: text("The\u{7}Barge"), ..car() }),
        ("name-control", VehicleForm { name: text("The\nBarge"), ..car() }),
        ("text-too-long", VehicleForm { make_model: "x".repeat(61), ..car() }),
        ("engine", VehicleForm { engine: text("steam"), ..car() }),
        ("unit", VehicleForm { unit: text("league"), ..car() }),
        ("yearly", VehicleForm { yearly: text("much"), ..car() }),
        ("vin-length", VehicleForm { vin: text("1M8GDM9AXKP04278"), ..car() }),
        ("vin-character", VehicleForm { vin: text("OM8GDM9AXKP042788"), ..car() }),
    ];
    for (code, vehicle) in cases {
        shelf.refused(code, Request::AddVehicle { vehicle });
    }
}

#[test]
fn visits() {
    let mut shelf = shelf();
    let text = str::to_owned;
    let part = |part: PartForm| VisitForm { parts: vec![part], currency: text("EUR"), ..oil() };
    let filter = || PartForm { name: text("Oil filter"), ..PartForm::default() };
    let cases = [
        ("items-missing", VisitForm::default()),
        ("item-unknown", VisitForm { items: vec![ItemForm::Catalogue(9_999)], ..oil() }),
        ("own-item-name", VisitForm { items: vec![ItemForm::Own(text(" "))], ..oil() }),
        ("too-many", VisitForm { items: vec![ItemForm::Catalogue(1); 101], ..oil() }),
        ("money", VisitForm { cost: text("12.345"), currency: text("EUR"), ..oil() }),
        ("currency", VisitForm { cost: text("12"), currency: text("XXQ"), ..oil() }),
        ("part-empty", part(PartForm::default())),
        ("quantity", part(PartForm { quantity: text("some"), ..filter() })),
        ("measure", part(PartForm { measure: text("handful"), ..filter() })),
        ("not-an-id", VisitForm { papers: vec![text("nonsense")], ..oil() }),
    ];
    for (code, visit) in cases {
        shelf.refused(code, shelf.record(visit));
    }
}

#[test]
fn the_plan() {
    let mut shelf = shelf();
    let every = |distance: &str, months: &str| IntervalForm {
        distance: distance.to_owned(),
        months: months.to_owned(),
        ..IntervalForm::default()
    };
    let cases = [
        ("interval-empty", every("", "")),
        ("interval-distance", every("far", "")),
        ("interval-months", every("", "0.3")),
    ];
    for (code, then) in cases {
        let change = PlanForm::Handbook { then, first: None, stakes: None };
        let (book, item) = (shelf.book.clone(), ItemForm::Catalogue(1));
        shelf.refused(code, Request::ChangePlan { book, item, change });
    }
}

#[test]
fn lines_and_books() {
    let mut shelf = shelf();
    let visit = shelf.written(shelf.record(oil()));
    let paper = shelf.door.take_in(&shelf.book, &photo()).unwrap().papers.remove(0);
    let (book, stranger) = (shelf.book.clone(), "0".repeat(32));
    let strike = |subject: &str| Request::StrikeOut {
        book: book.clone(),
        subject: subject.to_owned(),
        why: String::new(),
    };
    let tie =
        |line: &str| Request::TiePaper { book: book.clone(), paper: paper.clone(), line: line.to_owned() };
    shelf.refused("no-such-book", Request::Today { book: stranger.clone() });
    shelf.refused("no-such-line", strike(&stranger));
    shelf.refused("other-kind", tie(&paper));
    shelf.written(tie(&visit));
    shelf.refused("paper-tied", tie(&visit));
    shelf.written(strike(&visit));
    shelf.refused("struck", strike(&visit));
    shelf.refused("shelf-not-empty", Request::Demo);
}

#[test]
fn what_was_bought_and_notes_on_parts() {
    let mut shelf = shelf();
    let bought = |bought| Request::WriteBought { book: shelf.book.clone(), bought };
    let (nothing, blank) = (
        bought(BoughtForm::default()),
        bought(BoughtForm { parts: vec![PartForm::default()], ..BoughtForm::default() }),
    );
    let note = |note| Request::NotePart { book: shelf.book.clone(), note };
    let signs = note(PartNoteForm { number: " -/. ".to_owned(), ..PartNoteForm::default() });
    let mark = PartNoteForm { number: "A 1".to_owned(), mark: "odd".to_owned(), ..PartNoteForm::default() };
    let mark = note(mark);
    shelf.refused("parts-missing", nothing);
    shelf.refused("part-empty", blank);
    shelf.refused("part-number-missing", signs);
    shelf.refused("mark", mark);
}

#[test]
fn troubles_and_guides() {
    let mut shelf = shelf();
    let text = str::to_owned;
    let visit = shelf.written(shelf.record(oil()));
    let reading = shelf.written(shelf.take(read("", "50000")));
    let answer = AnswerForm { check: text("a-guess"), answer: AnswerKey::Found };
    let scan = |scan: ScanForm| TroubleForm { scans: vec![scan], ..TroubleForm::default() };
    let ended = |end: EndForm| TroubleForm { words: text("odd"), end: Some(end), ..TroubleForm::default() };
    let odd = |symptom: &str| vec![text(symptom)];
    let cases = [
        ("trouble-empty", TroubleForm { asked: text("Mend it"), ..TroubleForm::default() }),
        ("symptom-unknown", TroubleForm { symptoms: odd("sulks"), ..TroubleForm::default() }),
        ("symptom-unknown", TroubleForm { absent: odd("x".repeat(900).as_str()), ..TroubleForm::default() }),
        ("check-unknown", TroubleForm { answers: vec![answer], ..TroubleForm::default() }),
        ("text-too-long", TroubleForm { words: "x".repeat(2_001), ..TroubleForm::default() }),
        ("text-too-long", scan(ScanForm { text: "x".repeat(8_001), ..ScanForm::default() })),
        ("too-many", TroubleForm { scans: vec![ScanForm::default(); 101], ..TroubleForm::default() }),
        ("day-future", scan(ScanForm { day: text("2026-06-02"), ..ScanForm::default() })),
        ("cause-unknown", ended(EndForm { cause: text("a jinx"), ..EndForm::default() })),
        ("not-an-id", ended(EndForm { visit: text("Tuesday"), ..EndForm::default() })),
        ("other-kind", ended(EndForm { visit: reading, ..EndForm::default() })),
        ("no-such-line", ended(EndForm { visit: "0".repeat(32), ..EndForm::default() })),
    ];
    for (code, trouble) in cases {
        let book = shelf.book.clone();
        shelf.refused(code, Request::WriteTrouble { book, trouble, keep: false });
    }
    let (book, trouble) = (shelf.book.clone(), TroubleForm::default());
    let here = HereForm { owned: vec![text("a wand")], ..HereForm::default() };
    let asked = Request::Trouble { book: book.clone(), trouble, subject: None, here };
    shelf.refused("tool-unknown", asked);
    shelf.refused("other-kind", Request::Brief { book: book.clone(), subject: visit });
    shelf.refused("guide-unknown", Request::Guide { book, key: text("engine-swap") });
    let values = [(text("luck"), text("7"))].into();
    shelf.refused("value-unknown", Request::AddVehicle { vehicle: VehicleForm { values, ..car() } });
}

#[test]
fn corners_and_reading() {
    let corner = |x: f64, y: f64| [x, y];
    let crossed = [corner(0.1, 0.1), corner(0.9, 0.9), corner(0.9, 0.1), corner(0.1, 0.9)];
    assert_eq!(door::straighten_photo(&photo(), crossed).unwrap_err().code, "corners");
    let nowhere = tempfile::tempdir().unwrap();
    let reader = door::PaperReader::new(Some(nowhere.path()));
    let wanted = door::ToRead::file(&photo(), "2026-06-01".parse().unwrap()).unwrap();
    let door::WantedFile::Photo(wanted) = wanted else { panic!("{wanted:?}") };
    assert!(!reader.is_installed());
    let refusal = reader.read(&wanted, &|| false).unwrap_err();
    assert_eq!(refusal.code, "reading-not-installed");
    assert!(!said(&refusal).contains("{$"));
}

#[test]
fn cards() {
    let mut shelf = shelf();
    let read = |text: &str| Request::ReadCard { text: text.to_owned() };
    let options = door::CardOptions::default();
    shelf.refused("card-no-reading", Request::Card { book: shelf.book.clone(), options });
    let refusal = shelf.door.report(&shelf.book, &door::ReportOptions::default()).unwrap_err();
    assert_eq!(
        (refusal.code.as_str(), said(&refusal).ends_with("write one first.")),
        ("report-no-reading", true)
    );
    let address = Some("http://card.example/".to_owned());
    shelf.refused("address", Request::SetViewerAddress { address });
    shelf.refused("card-digits", read("https://card.example/#12x"));
    shelf.refused("card-version", read("https://card.example/#25500000000000000"));
    shelf.refused("card-plain", read("Thistle\n50000 km"));
}

#[test]
fn files_that_are_no_photos_and_a_shelf_that_is_open() {
    let folder = tempfile::tempdir().unwrap();
    let clock = || Clock::Fixed("2026-06-01".parse().unwrap());
    let mut door = Door::open(folder.path(), clock()).unwrap();
    let Response::Written(car) = door.ask(Request::AddVehicle { vehicle: car() }).unwrap() else { panic!() };
    let photo = photo();
    let cut_short = &photo[..photo.len() / 2];
    let cases: [(&str, &[u8]); 5] = [
        ("document-damaged", b"%PDF-1.7\nand nothing more"),
        ("file-empty", b""),
        ("not-an-image", b"a note"),
        ("image-foreign", b"GIF89a"),
        ("image-damaged", cut_short),
    ];
    for (code, bytes) in cases {
        let refusal = door.take_in(&car.book, bytes).unwrap_err();
        assert_eq!(refusal.code, code);
        assert!(!said(&refusal).contains("{$"));
    }
    assert_eq!(Door::open(folder.path(), clock()).unwrap_err().code, "shelf-in-use");
}

fn photo() -> Vec<u8> {
    let mut bytes = std::io::Cursor::new(Vec::new());
    let paper = image::RgbImage::from_fn(64, 96, |x, y| {
        image::Rgb([240, (x * 3).to_le_bytes()[0], (y * 2).to_le_bytes()[0]])
    });
    paper.write_to(&mut bytes, image::ImageFormat::Png).unwrap();
    bytes.into_inner()
}
