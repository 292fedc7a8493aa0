//! The main job through the door: a car goes in, a visit with parts and a photographed receipt goes in, what is
//! due comes out, and a card comes out whose square is read back.
#![allow(clippy::unwrap_used)]

use door::{
    CardOptions, Clock, Day, Door, DueView, FuelForm, ItemForm, ItemView, LineContent, LineFilter, PartForm,
    PhotoSize, ReadingForm, Refusal, Request, Response, StateKey, VehicleForm, VisitForm,
};
use image::{ImageFormat, RgbImage};

const TODAY: &str = "2026-06-01";

fn day(text: &str) -> Day {
    text.parse().unwrap()
}

fn open(folder: &tempfile::TempDir) -> Door {
    Door::open(folder.path(), Clock::Fixed(day(TODAY))).unwrap()
}

fn car() -> VehicleForm {
    VehicleForm {
        name: "Thistle".to_owned(),
        make_model: "Invented Thistle 1.6, 2012".to_owned(),
        vin: "1M8GDM9AXKP042788".to_owned(),
        engine: "petrol".to_owned(),
        unit: "km".to_owned(),
        first_use: "2012-04-03".to_owned(),
        reading: "98 420".to_owned(),
        ..VehicleForm::default()
    }
}

fn add_car(door: &mut Door) -> String {
    match door.ask(Request::AddVehicle { vehicle: car() }).unwrap() {
        Response::Written(written) => written.book,
        other => panic!("{other:?}"),
    }
}

fn written(door: &mut Door, request: Request) -> String {
    match door.ask(request).unwrap() {
        Response::Written(written) => written.subject,
        other => panic!("{other:?}"),
    }
}

fn receipt() -> Vec<u8> {
    let mut bytes = std::io::Cursor::new(Vec::new());
    let paper = RgbImage::from_fn(600, 900, |x, y| image::Rgb([240, (x % 251) as u8, (y % 241) as u8]));
    paper.write_to(&mut bytes, ImageFormat::Png).unwrap();
    bytes.into_inner()
}

fn reading(text: &str) -> ReadingForm {
    ReadingForm { reading: text.to_owned(), ..ReadingForm::default() }
}

fn take(door: &mut Door, book: &str, reading: ReadingForm, keep: bool) -> Result<Response, Refusal> {
    door.ask(Request::TakeReading { book: book.to_owned(), reading, keep: keep.into() })
}

#[test]
fn a_car_a_visit_and_a_receipt_go_in_and_a_card_comes_out() {
    let folder = tempfile::tempdir().unwrap();
    let mut door = open(&folder);
    let book = add_car(&mut door);
    let paper = door.take_in(&book, &receipt()).unwrap().papers.remove(0);
    let visit = VisitForm {
        day: "2026-05-20".to_owned(),
        reading: "98300".to_owned(),
        workshop: "Tow Bar Lane Garage".to_owned(),
        items: vec![ItemForm::Catalogue(1)],
        parts: vec![PartForm {
            maker: "Kestrel & Moor".to_owned(),
            number: "KM 4471-B".to_owned(),
            ..PartForm::default()
        }],
        cost: "89.50".to_owned(),
        currency: "EUR".to_owned(),
        papers: vec![paper],
        ..VisitForm::default()
    };
    written(&mut door, Request::RecordVisit { book: book.clone(), visit, keep: false });

    let Response::Today(today) = door.ask(Request::Today { book: book.clone() }).unwrap() else { panic!() };
    let is_oil = |line: &&DueView| matches!(line.item, ItemView::Catalogue { number: 1, .. });
    let oil = today.due.iter().find(is_oil).unwrap();
    assert_eq!((oil.state, oil.day.as_deref()), (StateKey::Ahead, Some("2027-05-20")));
    assert_eq!(oil.reading.map(|reading| reading.count), Some(108_300), "it may be turbocharged");
    assert!(today.due.iter().any(|line| line.state == StateKey::NoRecord));
    assert_eq!(today.tray, 0, "the receipt belongs to the visit");

    let Response::Lines(lines) =
        door.ask(Request::Lines { book: book.clone(), filter: LineFilter::default() }).unwrap()
    else {
        panic!()
    };
    let papers = lines.lines.iter().find_map(|line| match &line.says {
        LineContent::Visit { papers, .. } => Some(papers.clone()),
        _ => None,
    });
    let hash = papers.unwrap()[0].hash.clone();
    assert!(door.photo(&hash, PhotoSize::Thumb).unwrap().starts_with(&[0xff, 0xd8]));

    let options = CardOptions { viewer: Some("https://card.example/".to_owned()), ..CardOptions::default() };
    let pdf = door.card(&book, &options).unwrap().pdf().unwrap();
    let text = door::scan_card(&pdf).unwrap().remove(0);
    let Response::CardRead(card) = door.ask(Request::ReadCard { text }).unwrap() else { panic!() };
    assert_eq!((card.name.as_str(), card.vin.as_deref()), ("Thistle", Some("1M8GDM9AXKP042788")));
    assert!(card.own_key);
    assert_eq!(card.visits.len(), 1);
    assert_eq!(card.visits[0].marks, ["workshop", "receipt"]);
    assert_eq!(card.verdicts, ["unchanged", "own-key", "work-not-proved"]);
    let receipts = card.questions.iter().find(|question| question.key == "receipts").unwrap();
    assert_eq!((receipts.count, receipts.of), (Some(1), Some(1)));
    let Response::Check(check) = door.ask(Request::Check).unwrap() else { panic!() };
    assert!(check.faults.is_empty());
    assert_eq!((check.entries, check.photos), (4, 1));
}

#[test]
fn an_implausible_reading_is_asked_about_once_and_can_be_kept() {
    let folder = tempfile::tempdir().unwrap();
    let mut door = open(&folder);
    let book = add_car(&mut door);
    let earlier = ReadingForm { day: "2026-05-01".to_owned(), ..reading("98000") };
    take(&mut door, &book, earlier, false).unwrap();
    let lower = ReadingForm { day: "2026-05-15".to_owned(), ..reading("97000") };
    let refusal = take(&mut door, &book, lower.clone(), false).unwrap_err();
    assert_eq!((refusal.code.as_str(), refusal.can_keep), ("reading-lower", true));
    assert_eq!(refusal.values["on"], "2026-05-01");
    take(&mut door, &book, lower, true).unwrap();
    let fast = ReadingForm { day: "2026-05-02".to_owned(), ..reading("140000") };
    let refusal = take(&mut door, &book, fast, false).unwrap_err();
    assert!(refusal.can_keep, "{refusal:?}");
}

#[test]
fn every_refusal_names_its_field_and_has_a_sentence() {
    let folder = tempfile::tempdir().unwrap();
    let mut door = open(&folder);
    let book = add_car(&mut door);
    let words = words::Words::load("en");
    let fuel = |volume: &str| {
        let fuel = Some(FuelForm { amount: volume.to_owned(), ..FuelForm::default() });
        ReadingForm { fuel, ..reading("98500") }
    };
    let cases = [
        ("not-a-number", "reading.reading", reading("12a")),
        ("not-a-number", "reading.reading", reading("-5")),
        ("reading-empty", "reading.reading", reading(" ")),
        ("reading-too-long", "reading.reading", reading("99999999")),
        ("day-form", "reading.day", ReadingForm { day: "1.2.2026".to_owned(), ..reading("98500") }),
        ("day-future", "reading.day", ReadingForm { day: "2026-06-02".to_owned(), ..reading("98500") }),
        ("status", "reading.status", ReadingForm { status: "maybe".to_owned(), ..reading("98500") }),
        ("fuel-amount", "reading.fuel.amount", fuel("0")),
        ("fuel-amount", "reading.fuel.amount", fuel("40.1234")),
    ];
    for (code, field, form) in cases {
        let refusal = take(&mut door, &book, form, false).unwrap_err();
        assert_eq!((refusal.code.as_str(), refusal.field.as_deref()), (code, Some(field)));
        assert!(words.has(&format!("refusal-{code}")), "{code} has no sentence");
    }
    let nothing = door.take_in(&book, b"<svg xmlns='http://www.w3.org/2000/svg'/>").unwrap_err();
    assert_eq!(nothing.code, "image-foreign");
    let no_items = Request::RecordVisit { book: book.clone(), visit: VisitForm::default(), keep: false };
    assert_eq!(door.ask(no_items).unwrap_err().code, "items-missing");
    assert_eq!(door.ask(Request::Today { book: "nonsense".to_owned() }).unwrap_err().code, "not-an-id");
    let short = VehicleForm { vin: "1M8GDM9AXKP04278".to_owned(), ..car() };
    assert_eq!(door.ask(Request::AddVehicle { vehicle: short }).unwrap_err().code, "vin-length");
    let Response::Lines(lines) = door.ask(Request::Lines { book, filter: LineFilter::default() }).unwrap()
    else {
        panic!()
    };
    assert_eq!(lines.entries, 2, "nothing that was refused was written");
}

#[test]
fn every_item_of_the_catalogue_has_a_name() {
    let folder = tempfile::tempdir().unwrap();
    let mut door = open(&folder);
    let words = words::Words::load("en");
    let Response::Shelf(shelf) = door.ask(Request::Shelf).unwrap() else { panic!() };
    assert!(shelf.catalogue.len() >= 12);
    for line in shelf.catalogue {
        assert!(words.has(&format!("item-{}", line.key)), "{} has no name", line.key);
    }
}

#[test]
fn without_an_address_the_square_says_so_and_an_address_is_held_to_its_form() {
    let folder = tempfile::tempdir().unwrap();
    let mut door = open(&folder);
    let book = add_car(&mut door);
    let pdf = door.card(&book, &CardOptions::default()).unwrap().pdf().unwrap();
    let text = door::scan_card(&pdf).unwrap().remove(0);
    assert!(text.contains("Thistle") && text.contains("98"), "{text}");
    assert_eq!(door.ask(Request::ReadCard { text }).unwrap_err().code, "card-plain");
    let set = |address: &str| Request::SetViewerAddress { address: Some(address.to_owned()) };
    assert_eq!(door.ask(set("http://card.example/")).unwrap_err().code, "address");
    door.ask(set("https://card.example/")).unwrap();
    let Response::Card(card) = door.ask(Request::Card { book, options: CardOptions::default() }).unwrap()
    else {
        panic!()
    };
    assert!(card.text.starts_with("https://card.example/#"));
    let broken: Vec<_> = card.text.as_bytes().chunks(76).map(|line| str::from_utf8(line).unwrap()).collect();
    let read = door.ask(Request::ReadCard { text: broken.join("\r\n") });
    assert!(matches!(read, Ok(Response::CardRead(_))), "a mail breaks a code into lines: {read:?}");
    assert!(card.pages[0].starts_with("<svg"));
}

/// A poster or a second label is in many a photo.
#[test]
fn the_card_is_found_beside_a_square_of_somebody_else() {
    let folder = tempfile::tempdir().unwrap();
    let mut door = open(&folder);
    let book = add_car(&mut door);
    door.ask(Request::SetViewerAddress { address: Some("https://card.example/".to_owned()) }).unwrap();
    let Response::Card(card) = door.ask(Request::Card { book, options: CardOptions::default() }).unwrap()
    else {
        panic!()
    };
    let other = "https://poster.example/".to_owned();
    for order in [[&card.text, &other], [&other, &card.text]] {
        let texts = door::scan_card(&squares(order)).unwrap();
        assert_eq!(texts, [card.text.clone(), other.clone()]);
    }
}

/// A picture of two squares, one above the other.
fn squares(texts: [&String; 2]) -> Vec<u8> {
    let mut picture = image::GrayImage::from_pixel(800, 1600, image::Luma([255]));
    for (text, top) in texts.into_iter().zip([0, 800]) {
        let square = card::Square::plain(text, card::SquareLimit::LARGEST).unwrap();
        let scale = 800 / (square.side() + 2 * card::QUIET_ZONE);
        for (x, y) in (0..square.side() * scale).flat_map(|y| (0..square.side() * scale).map(move |x| (x, y)))
        {
            if square.is_dark(x / scale, y / scale) {
                let at = |pixel: u32| pixel + card::QUIET_ZONE * scale;
                picture.put_pixel(at(x), at(y) + top, image::Luma([0]));
            }
        }
    }
    let mut bytes = std::io::Cursor::new(Vec::new());
    picture.write_to(&mut bytes, ImageFormat::Png).unwrap();
    bytes.into_inner()
}

#[test]
fn a_square_of_plain_text_says_itself_what_it_leaves_out() {
    let folder = tempfile::tempdir().unwrap();
    let mut door = open(&folder);
    door.ask(Request::Demo).unwrap();
    let Response::Shelf(shelf) = door.ask(Request::Shelf).unwrap() else { panic!() };
    let book = shelf.vehicles[0].book.clone();
    let Response::Card(card) = door.ask(Request::Card { book, options: CardOptions::default() }).unwrap()
    else {
        panic!()
    };
    let said =
        format!("{} visits; the square leaves out the {} oldest.", card.shown + card.left_out, card.left_out);
    assert!(card.left_out > 1 && card.text.ends_with(&said), "{}", card.text);
}

/// The story's people write a few things down late; everything else stands on the day that it names.
#[test]
fn the_demo_tells_the_truth_about_when_it_was_written() {
    let folder = tempfile::tempdir().unwrap();
    let mut door = open(&folder);
    door.ask(Request::Demo).unwrap();
    let Response::Shelf(shelf) = door.ask(Request::Shelf).unwrap() else { panic!() };
    assert_eq!(shelf.vehicles.len(), 2);
    for vehicle in shelf.vehicles {
        let filter = LineFilter::default();
        let Response::Lines(lines) = door.ask(Request::Lines { book: vehicle.book, filter }).unwrap() else {
            panic!()
        };
        let late = |line: &&door::BookLine| day(&line.written).days_since(day(&line.day)) > 30;
        let late = lines.lines.iter().filter(late).count();
        assert!(
            (1..10).contains(&late),
            "{}: {late} of {} lines were written late",
            vehicle.name,
            lines.lines.len()
        );
        assert!(lines.lines.iter().all(|line| line.struck.is_some() || line.day.as_str() <= TODAY));
    }
    assert_eq!(door.ask(Request::Demo).unwrap_err().code, "shelf-not-empty");
}
