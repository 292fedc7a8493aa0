//! A book goes through the hands of three owners, and what the second tries with the years of the first is found.
#![allow(clippy::unwrap_used)]

use std::fs::{self, File};
use std::io::Cursor;
use std::path::{Path, PathBuf};

use book::Shelf;
use book::entry::Signed;
use door::{
    CardOptions, Clock, CompareView, Door, HandoverForm, HandoverView, ItemForm, LineContent, LineFilter,
    PackedView, PhotoSize, ReadingForm, ReceivedView, Refusal, Request, Response, VehicleForm, VehicleLine,
    VisitForm, WrittenView, open_book_file,
};
use exchange::Contents;
use image::{ImageFormat, Rgb, RgbImage};
use paper::PhotoStore;

/// An owner with his shelf on a day.
struct Owner {
    door: Door,
    folder: tempfile::TempDir,
}

const ADDRESS: &str = "https://card.example/";

fn owner(today: &str) -> Owner {
    let folder = tempfile::tempdir().unwrap();
    Owner { door: Door::open(folder.path(), fixed(today)).unwrap(), folder }
}

fn fixed(day: &str) -> Clock {
    Clock::Fixed(day.parse().unwrap())
}

fn photo(tint: u8) -> Vec<u8> {
    let paper = RgbImage::from_fn(64, 96, |x, y| Rgb([tint, x.to_le_bytes()[0], y.to_le_bytes()[0]]));
    let mut bytes = Cursor::new(Vec::new());
    paper.write_to(&mut bytes, ImageFormat::Png).unwrap();
    bytes.into_inner()
}

impl Owner {
    /// Years later.
    fn on(self, day: &str) -> Owner {
        let Owner { door, folder } = self;
        drop(door);
        Owner { door: Door::open(folder.path(), fixed(day)).unwrap(), folder }
    }

    fn written(&mut self, request: Request) -> Result<WrittenView, Refusal> {
        match self.door.ask(request)? {
            Response::Written(written) => Ok(written),
            other => panic!("{other:?}"),
        }
    }

    fn add_car(&mut self) -> String {
        let vehicle = VehicleForm {
            name: "Thistle".to_owned(),
            vin: "1M8GDM9AXKP042788".to_owned(),
            engine: "petrol".to_owned(),
            unit: "km".to_owned(),
            first_use: "2012-03-01".to_owned(),
            ..VehicleForm::default()
        };
        self.written(Request::AddVehicle { vehicle }).unwrap().book
    }

    fn visit(&mut self, book: &str, day: &str, reading: &str) -> Result<WrittenView, Refusal> {
        self.visit_with(book, day, reading, Vec::new())
    }

    fn visit_with(
        &mut self,
        book: &str,
        day: &str,
        reading: &str,
        papers: Vec<String>,
    ) -> Result<WrittenView, Refusal> {
        let visit = VisitForm {
            day: day.to_owned(),
            reading: reading.to_owned(),
            workshop: "Tow Bar Lane Garage".to_owned(),
            items: vec![ItemForm::Catalogue(1)],
            papers,
            ..VisitForm::default()
        };
        self.written(Request::RecordVisit { book: book.to_owned(), visit, keep: true })
    }

    fn paper(&mut self, book: &str, tint: u8) -> String {
        self.door.take_in(book, &photo(tint)).unwrap().papers.remove(0)
    }

    fn path(&self, name: &str) -> PathBuf {
        self.folder.path().join(name)
    }

    fn hand_over(&mut self, book: &str, name: &str, form: &HandoverForm) -> Result<PackedView, Refusal> {
        let packed = self.door.pack_up(book, form)?.save(&self.path(name), "")?;
        self.door.hand_over(packed)
    }

    fn receive(&mut self, path: &Path) -> Result<ReceivedView, Refusal> {
        let mut book = open_book_file(File::open(path).unwrap(), "")?;
        self.door.examine(&mut book)?;
        book.keep_papers()?;
        self.door.take_book_in(&book)
    }

    fn card(&mut self, book: &str) -> String {
        let options = CardOptions { viewer: Some(ADDRESS.to_owned()), ..CardOptions::default() };
        match self.door.ask(Request::Card { book: book.to_owned(), options }).unwrap() {
            Response::Card(card) => card.text,
            other => panic!("{other:?}"),
        }
    }

    fn compare(&mut self, book: &str, card: &str) -> CompareView {
        let (book, card) = (book.to_owned(), card.to_owned());
        match self.door.ask(Request::CompareCard { book, card }).unwrap() {
            Response::Compared(compared) => *compared,
            other => panic!("{other:?}"),
        }
    }

    fn handover(&mut self, book: &str) -> HandoverView {
        match self.door.ask(Request::Handover { book: book.to_owned() }).unwrap() {
            Response::Handover(view) => view,
            other => panic!("{other:?}"),
        }
    }

    fn vehicles(&mut self) -> Vec<VehicleLine> {
        match self.door.ask(Request::Shelf).unwrap() {
            Response::Shelf(view) => view.vehicles,
            other => panic!("{other:?}"),
        }
    }

    fn check(&mut self) -> door::CheckView {
        match self.door.ask(Request::Check).unwrap() {
            Response::Check(check) => check,
            other => panic!("{other:?}"),
        }
    }
}

fn kinds(compared: &CompareView) -> Vec<&str> {
    compared.differences.iter().map(|difference| difference.kind.as_str()).collect()
}

fn state(compared: &CompareView) -> &str {
    &compared.moment.as_ref().unwrap().state
}

/// The first owner's three years, with a photo, and the card that he printed at their end.
fn first_owner() -> (Owner, String, String) {
    let mut first = owner("2018-06-01");
    let book = first.add_car();
    let paper = first.paper(&book, 10);
    first.visit_with(&book, "2016-05-02", "41000", vec![paper]).unwrap();
    first.visit(&book, "2017-05-02", "56000").unwrap();
    first.visit(&book, "2018-05-02", "71000").unwrap();
    let card = first.card(&book);
    (first, book, card)
}

#[test]
fn a_car_goes_through_three_owners_and_the_first_card_still_holds() {
    let (mut first, book, card) = first_owner();
    let form = HandoverForm { words: "Mind the left wing mirror".to_owned(), ..HandoverForm::default() };
    let packed = first.hand_over(&book, "one.wellkept", &form).unwrap();
    assert_eq!((packed.papers, packed.missing.len(), packed.locked), (1, 0, false));
    assert_eq!(packed.bytes, fs::metadata(first.path("one.wellkept")).unwrap().len());

    let mut second = owner("2018-07-01");
    let received = second.receive(&first.path("one.wellkept")).unwrap();
    assert_eq!((received.known, received.new, received.papers), (false, packed.entries, 1));
    assert_eq!(received.words, "Mind the left wing mirror");
    assert!(received.missing.is_empty() && received.vehicle.handed_over.is_none());
    second.visit(&book, "2018-06-20", "72000").unwrap();
    let mut second = second.on("2021-06-01");
    second.visit(&book, "2021-05-02", "110000").unwrap();
    let second_card = second.card(&book);
    second.hand_over(&book, "two.wellkept", &HandoverForm::default()).unwrap();

    let mut third = owner("2021-07-01");
    let received = third.receive(&second.path("two.wellkept")).unwrap();
    let spans: Vec<_> = received
        .writers
        .iter()
        .map(|writer| (writer.from.as_str(), writer.to.as_str(), writer.handed_over.join(" ")))
        .collect();
    let expected = [
        ("2018-06-01", "2018-06-01", "2018-06-01".to_owned()),
        ("2018-07-01", "2021-06-01", "2021-06-01".to_owned()),
    ];
    assert_eq!(spans, expected);
    third.visit(&book, "2021-06-15", "111000").unwrap();

    for (card, entries) in [(&card, 5), (&second_card, 8)] {
        let compared = third.compare(&book, card);
        assert!(compared.contains && compared.car_known && compared.old.key_known, "{compared:?}");
        let moment = compared.moment.clone().unwrap();
        assert_eq!((moment.state.as_str(), moment.entries, moment.late), ("found", entries, 0));
        assert_eq!(kinds(&compared), [""; 0]);
    }
    let check = third.check();
    assert!(check.faults.is_empty(), "{:?}", check.faults);
    assert_eq!(check.photos, 1);
    // The photo itself has come along, and can be shown.
    let Response::Lines(lines) =
        third.door.ask(Request::Lines { book: book.clone(), filter: LineFilter::default() }).unwrap()
    else {
        panic!()
    };
    let photos: Vec<_> = lines
        .lines
        .iter()
        .filter_map(|line| match &line.says {
            LineContent::Visit { papers, .. } => papers.first().map(|paper| paper.hash.clone()),
            _ => None,
        })
        .collect();
    assert_eq!(photos.len(), 1);
    third.door.photo(&photos[0], PhotoSize::Thumb).unwrap();
    let handed = lines.lines.iter().filter(|line| matches!(line.says, LineContent::Handover { .. }));
    assert_eq!((handed.count(), lines.writers.len()), (2, 3));

    // A card printed today contains both, by the rule for cards alone.
    let newest = third.card(&book);
    for old in [card, second_card] {
        let request = Request::CompareCards { old, new: newest.clone() };
        let Response::Compared(compared) = third.door.ask(request).unwrap() else { panic!() };
        assert!(compared.contains && !compared.old.key_known, "{compared:?}");
    }
}

#[test]
fn whoever_handed_a_book_over_writes_in_it_no_more() {
    let (mut first, book, _) = first_owner();
    let before = first.vehicles().remove(0);
    assert_eq!(before.handed_over, None);
    first.hand_over(&book, "one.wellkept", &HandoverForm::default()).unwrap();
    assert_eq!(first.vehicles().remove(0).handed_over.as_deref(), Some("2018-06-01"));
    let refused = first.visit(&book, "2018-05-30", "71500").unwrap_err();
    assert_eq!((refused.code.as_str(), refused.values["day"].as_str()), ("handed-over", "2018-06-01"));
    let files = || walk(&first.folder.path().join("photos"));
    let count = files();
    assert_eq!(first.door.take_in(&book, &photo(99)).unwrap_err().code, "handed-over");
    assert_eq!(walk(&first.folder.path().join("photos")), count, "no photo is kept that no line names");
    // It can be read as before, and its card printed.
    first.card(&book);

    let subject = first.handover(&book).handed_over.unwrap().subject;
    let why = "the buyer stayed away".to_owned();
    first.written(Request::StrikeOut { book: book.clone(), subject, why }).unwrap();
    first.visit(&book, "2018-05-30", "71500").unwrap();
    assert!(first.handover(&book).handed_over.is_none());
}

fn walk(folder: &Path) -> usize {
    let entries = fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path());
    entries.map(|path| if path.is_dir() { walk(&path) } else { 1 }).sum()
}

#[test]
fn a_handover_that_is_refused_leaves_the_book_as_it_was() {
    let (mut first, book, _) = first_owner();
    fs::write(first.path("taken.wellkept"), b"mine").unwrap();
    let refused = |owner: &mut Owner, name: &str, form: &HandoverForm| {
        let refusal = owner.hand_over(&book, name, form).unwrap_err();
        assert!(owner.handover(&book).handed_over.is_none(), "{}", refusal.code);
        refusal.code
    };
    let form = HandoverForm::default();
    assert_eq!(refused(&mut first, "taken.wellkept", &form), "file-exists");
    assert_eq!(refused(&mut first, "no/such/folder.wellkept", &form), "file");
    let form = |day: &str, reading: &str, words: &str| HandoverForm {
        day: day.to_owned(),
        reading: reading.to_owned(),
        words: words.to_owned(),
        ..HandoverForm::default()
    };
    assert_eq!(refused(&mut first, "x", &form("2018-06-02", "", "")), "day-future");
    assert_eq!(refused(&mut first, "x", &form("", "-5", "")), "not-a-number");
    assert_eq!(refused(&mut first, "x", &form("", "9", "")), "reading-lower");
    assert_eq!(refused(&mut first, "x", &form("", "", &"x".repeat(2_001))), "text-too-long");
    assert_eq!(fs::read(first.path("taken.wellkept")).unwrap(), b"mine");
    assert!(!first.path("x").exists());

    // Something is written between packing and handing over.
    let packed = first.door.pack_up(&book, &HandoverForm::default()).unwrap();
    let packed = packed.save(&first.path("y"), "").unwrap();
    first.visit(&book, "2018-05-30", "71500").unwrap();
    assert_eq!(first.door.hand_over(packed).unwrap_err().code, "written-meanwhile");
    assert!(first.handover(&book).handed_over.is_none() && !first.path("y").exists());
}

/// The mark stands in the book before the file has its name: were it the other way round, a file could go out while its
/// giver writes on.
#[test]
fn a_file_that_can_not_have_its_name_can_be_written_again() {
    let (mut first, book, _) = first_owner();
    let packed = first.door.pack_up(&book, &HandoverForm::default()).unwrap();
    let packed = packed.save(&first.path("y"), "").unwrap();
    fs::write(first.path("y"), b"mine").unwrap();
    let refused = first.door.hand_over(packed).unwrap_err();
    assert_eq!((refused.code.as_str(), refused.values["why"].as_str()), ("handover-no-name", "taken"));
    assert!(first.handover(&book).handed_over.is_some());
    assert_eq!(fs::read(first.path("y")).unwrap(), b"mine");
    first.hand_over(&book, "z", &HandoverForm::default()).unwrap();
    let received = owner("2018-06-01").receive(&first.path("z")).unwrap();
    assert!(received.missing.is_empty());
    // Nothing was handed over by this, so that there is nothing more to say.
    assert_eq!(first.hand_over(&book, "y", &HandoverForm::default()).unwrap_err().code, "file-exists");
}

#[test]
fn the_file_can_be_written_again_and_says_the_same() {
    let (mut first, book, _) = first_owner();
    let form = HandoverForm { reading: "71200".to_owned(), ..HandoverForm::default() };
    let packed = first.hand_over(&book, "one.wellkept", &form).unwrap();
    let again = first.hand_over(&book, "again.wellkept", &HandoverForm::default()).unwrap();
    assert_eq!((again.entries, again.papers), (packed.entries, packed.papers));
    let read = |name: &str| fs::read(first.path(name)).unwrap();
    assert_eq!(read("one.wellkept"), read("again.wellkept"));
    first.hand_over(&book, "once more.wellkept", &form).unwrap();

    let otherwise = [
        HandoverForm { without_papers: true, ..HandoverForm::default() },
        HandoverForm { words: "Mind the left wing mirror".to_owned(), ..HandoverForm::default() },
        HandoverForm { day: "2018-05-31".to_owned(), ..HandoverForm::default() },
        HandoverForm { reading: "71300".to_owned(), ..HandoverForm::default() },
    ];
    for form in otherwise {
        let refused = first.hand_over(&book, "otherwise.wellkept", &form).unwrap_err();
        assert_eq!(refused.code, "handed-over", "{form:?}");
        assert!(!first.path("otherwise.wellkept").exists());
    }
}

#[test]
fn papers_may_stay_behind_and_that_is_no_fault() {
    let (mut first, book, _) = first_owner();
    let form = HandoverForm { without_papers: true, ..HandoverForm::default() };
    assert_eq!(first.hand_over(&book, "one.wellkept", &form).unwrap().papers, 0);
    let mut second = owner("2018-07-01");
    let received = second.receive(&first.path("one.wellkept")).unwrap();
    assert_eq!((received.papers_stayed, received.missing.len()), (true, 1));
    let check = second.check();
    assert_eq!((check.faults.len(), check.photos, check.left), (0, 0, 1));
    // When the file of an owner before comes in as well, nothing has stayed behind any more.
    let subject = first.handover(&book).handed_over.unwrap().subject;
    first.written(Request::StrikeOut { book: book.clone(), subject, why: String::new() }).unwrap();
    first.hand_over(&book, "whole.wellkept", &HandoverForm::default()).unwrap();
    let mut third = owner("2018-07-02");
    second.hand_over(&book, "two.wellkept", &form).unwrap();
    assert!(third.receive(&second.path("two.wellkept")).unwrap().papers_stayed);
    let received = third.receive(&first.path("whole.wellkept")).unwrap();
    assert_eq!((received.papers_stayed, received.missing.len(), received.papers), (false, 0, 1));
    let subject = second.handover(&book).handed_over.unwrap().subject;
    second.written(Request::StrikeOut { book: book.clone(), subject, why: String::new() }).unwrap();
    // What he files himself and loses is a fault like any other.
    second.paper(&book, 20);
    for tree in ["photos", "thumbs"] {
        fs::remove_dir_all(second.folder.path().join("photos").join(tree)).unwrap();
    }
    assert_eq!(second.check().faults.len(), 1);
}

#[test]
fn a_document_goes_to_the_next_owner_as_it_came_in() {
    for without_papers in [false, true] {
        let (mut first, book, _) = first_owner();
        let pdf = first.door.card(&book, &CardOptions::default()).unwrap().pdf().unwrap();
        let paper = first.door.take_in(&book, &pdf).unwrap().papers.remove(0);
        let form = HandoverForm { without_papers, ..HandoverForm::default() };
        first.hand_over(&book, "one.wellkept", &form).unwrap();
        let read = |owner: &Owner| owner.door.document(&book, &paper).unwrap().read();
        assert_eq!(read(&first).unwrap(), pdf, "a book that was handed over can still be read");
        let mut second = owner("2018-07-01");
        second.receive(&first.path("one.wellkept")).unwrap();
        let there = read(&second).map_err(|refusal| refusal.code);
        assert_eq!(there, if without_papers { Err("document-missing".to_owned()) } else { Ok(pdf) });
    }
}

#[test]
fn a_photo_that_is_missing_is_named_and_the_rest_goes() {
    let (mut first, book, _) = first_owner();
    first.paper(&book, 11);
    let lost = first.paper(&book, 12);
    let Response::Line(line) = first.door.ask(Request::Line { book: book.clone(), subject: lost }).unwrap()
    else {
        panic!()
    };
    let LineContent::Paper { paper } = line.line.says else { panic!() };
    let name = format!("photos/photos/{}/{}.jpg", &paper.hash[..2], paper.hash);
    fs::remove_file(first.path(&name)).unwrap();
    let packed = first.hand_over(&book, "one.wellkept", &HandoverForm::default()).unwrap();
    assert_eq!((packed.papers, &packed.missing[..]), (2, &[paper.hash.clone()][..]));
    let received = owner("2018-07-01").receive(&first.path("one.wellkept")).unwrap();
    assert_eq!(received.missing, [paper.hash]);
}

#[test]
fn a_locked_file_needs_its_passphrase() {
    let (mut first, book, _) = first_owner();
    let path = first.path("one.wellkept");
    let packing = first.door.pack_up(&book, &HandoverForm::default()).unwrap();
    assert!(first.door.hand_over(packing.save(&path, "salt lake").unwrap()).unwrap().locked);
    let open = |passphrase: &str| open_book_file(File::open(&path).unwrap(), passphrase).map(drop);
    assert_eq!(open("").unwrap_err().code, "handover-locked");
    assert_eq!(open("salt  lake").unwrap_err().code, "handover-passphrase");
    assert_eq!(open(&"x".repeat(2_000)).unwrap_err().code, "handover-passphrase");
    open("salt lake").unwrap();
}

#[test]
fn a_book_that_is_known_takes_what_is_new_and_refuses_what_differs() {
    let (mut first, book, _) = first_owner();
    first.hand_over(&book, "one.wellkept", &HandoverForm::default()).unwrap();
    let mut second = owner("2018-07-01");
    second.receive(&first.path("one.wellkept")).unwrap();
    let again = second.receive(&first.path("one.wellkept")).unwrap();
    assert_eq!((again.known, again.new, again.papers), (true, 0, 0));

    // The first takes the handover back and goes on, which the second's copy can take in too.
    let subject = first.handover(&book).handed_over.unwrap().subject;
    first.written(Request::StrikeOut { book: book.clone(), subject, why: String::new() }).unwrap();
    first.visit(&book, "2018-05-30", "71500").unwrap();
    first.hand_over(&book, "two.wellkept", &HandoverForm::default()).unwrap();
    assert_eq!(second.receive(&first.path("two.wellkept")).unwrap().new, 3);
}

/// A copy of a shelf's folder, such as a backup that was brought back: the same key goes on in two ways.
#[test]
fn a_book_that_was_rewritten_is_refused_with_key_place_and_day() {
    let (first, book, _) = first_owner();
    let Owner { door, folder } = first;
    drop(door);
    let other = tempfile::tempdir().unwrap();
    copy_all(folder.path(), other.path());
    let reopen = |folder: tempfile::TempDir| {
        let door = Door::open(folder.path(), fixed("2018-06-01")).unwrap();
        Owner { door, folder }
    };
    let (mut first, mut copy) = (reopen(folder), reopen(other));
    first.visit(&book, "2018-05-30", "71500").unwrap();
    copy.visit(&book, "2018-05-30", "60000").unwrap();
    first.hand_over(&book, "one.wellkept", &HandoverForm::default()).unwrap();
    copy.hand_over(&book, "other.wellkept", &HandoverForm::default()).unwrap();
    let mut second = owner("2018-07-01");
    second.receive(&first.path("one.wellkept")).unwrap();
    let refused = second.receive(&copy.path("other.wellkept")).unwrap_err();
    assert_eq!(refused.code, "fork");
    assert_eq!((refused.values["number"].as_str(), refused.values["day"].as_str()), ("6", "2018-06-01"));
    assert_eq!(refused.values["key"].len(), 19);
}

fn copy_all(from: &Path, to: &Path) {
    for entry in fs::read_dir(from).unwrap().map(Result::unwrap) {
        let target = to.join(entry.file_name());
        if entry.path().is_dir() {
            fs::create_dir_all(&target).unwrap();
            copy_all(&entry.path(), &target);
        } else {
            fs::copy(entry.path(), target).unwrap();
        }
    }
}

/// The second owner sells a car with fewer kilometres: he writes the first's years anew on a shelf of his own.
#[test]
fn years_that_were_written_anew_are_named_by_the_first_owners_card() {
    let (_, _, card) = first_owner();
    let mut second = owner("2021-06-01");
    let book = second.add_car();
    second.visit(&book, "2016-05-02", "41000").unwrap();
    second.visit(&book, "2018-05-02", "52000").unwrap();
    second.hand_over(&book, "two.wellkept", &HandoverForm::default()).unwrap();
    let mut third = owner("2021-07-01");
    third.receive(&second.path("two.wellkept")).unwrap();
    let compared = third.compare(&book, &card);
    assert!(!compared.contains && compared.car_known && !compared.old.key_known);
    assert_eq!((state(&compared), compared.same), ("not-found", 1));
    assert_eq!(kinds(&compared), ["latest-reading", "missing", "changed"]);
    let missing = compared.differences[1].then.as_ref().unwrap();
    assert_eq!((missing.day.as_str(), missing.reading.count), ("2017-05-02", 56_000));
    let changed = &compared.differences[2];
    let (then, now) = (changed.then.as_ref().unwrap(), changed.now.as_ref().unwrap());
    assert_eq!((then.reading.count, now.reading.count), (71_000, 52_000));
}

/// What a later owner corrects in ink is told, and is no breach: the first one's words stay readable.
#[test]
fn a_correction_in_ink_is_told_apart_from_a_rewriting() {
    let (mut first, book, card) = first_owner();
    first.hand_over(&book, "one.wellkept", &HandoverForm::default()).unwrap();
    let mut second = owner("2018-07-01");
    second.receive(&first.path("one.wellkept")).unwrap();
    let Response::Lines(lines) =
        second.door.ask(Request::Lines { book: book.clone(), filter: LineFilter::default() }).unwrap()
    else {
        panic!()
    };
    let of = |day: &str| lines.lines.iter().find(|line| line.day == day).unwrap().subject.clone();
    let (amended, struck) = (of("2017-05-02"), of("2018-05-02"));
    let visit = VisitForm {
        day: "2017-05-02".to_owned(),
        reading: "55000".to_owned(),
        workshop: "Tow Bar Lane Garage".to_owned(),
        items: vec![ItemForm::Catalogue(1)],
        ..VisitForm::default()
    };
    let why = String::new();
    let request = Request::AmendVisit { book: book.clone(), subject: amended, visit, why, keep: true };
    second.written(request).unwrap();
    let why = String::new();
    second.written(Request::StrikeOut { book: book.clone(), subject: struck, why }).unwrap();
    let compared = second.compare(&book, &card);
    assert!(compared.contains, "{compared:?}");
    assert_eq!((kinds(&compared), compared.same), (vec!["amended", "struck-out"], 1));
}

/// The numbers of the car itself may be put right in ink, and what the card showed stays readable.
#[test]
fn a_car_that_was_put_right_is_still_the_same_car() {
    let (mut first, book, card) = first_owner();
    let vehicle = VehicleForm {
        name: "Nettle".to_owned(),
        vin: "11111111111111111".to_owned(),
        engine: "petrol".to_owned(),
        unit: "km".to_owned(),
        first_use: "2011-03-01".to_owned(),
        ..VehicleForm::default()
    };
    first.written(Request::ChangeVehicle { book: book.clone(), vehicle }).unwrap();
    let compared = first.compare(&book, &card);
    assert!(compared.contains, "{compared:?}");
    assert_eq!(kinds(&compared), ["first-use"]);
}

#[test]
fn a_card_of_another_car_is_said_to_be_one() {
    let (_, _, card) = first_owner();
    let mut other = owner("2018-06-01");
    let vehicle = VehicleForm {
        name: "Nettle".to_owned(),
        vin: "11111111111111111".to_owned(),
        engine: "petrol".to_owned(),
        unit: "km".to_owned(),
        ..VehicleForm::default()
    };
    let book = other.written(Request::AddVehicle { vehicle }).unwrap().book;
    let compared = other.compare(&book, &card);
    assert!(!compared.contains && kinds(&compared).contains(&"other-car"));
    let refused = other.door.ask(Request::CompareCard { book, card: "12".to_owned() });
    assert_eq!(refused.unwrap_err().code, "card-digits");
}

#[test]
fn a_reading_can_not_be_taken_after_the_handover_but_on_it() {
    let (mut first, book, _) = first_owner();
    let form = HandoverForm { reading: "71200".to_owned(), ..HandoverForm::default() };
    first.hand_over(&book, "one.wellkept", &form).unwrap();
    let last = first.vehicles().remove(0).reading.unwrap();
    assert_eq!((last.day.as_str(), last.reading.count), ("2018-06-01", 71_200));
    // Even a reading that can hardly be is not asked about any more.
    let reading = ReadingForm { reading: "5".to_owned(), ..ReadingForm::default() };
    let refused = first.written(Request::TakeReading { book, reading, keep: false.into() }).unwrap_err();
    assert_eq!((refused.code.as_str(), refused.can_keep), ("handed-over", false));
}

/// A file of the first entries of a book, which no program of this house writes: whoever knows the format can.
fn made_by_hand(of: Owner, book: &str, entries: usize) -> (tempfile::TempDir, PathBuf) {
    let Owner { door, folder } = of;
    drop(door);
    let path = folder.path();
    let shelf = Shelf::open(path, || [0; 32]).unwrap();
    let book = book.parse().unwrap();
    let entries: Vec<Signed> = shelf.entries(book).unwrap().into_iter().take(entries).collect();
    let store = PhotoStore::open(&path.join("photos"), std::time::SystemTime::now()).unwrap();
    let file = path.join("made.wellkept");
    let contents = Contents { book, entries, papers: Vec::new(), store };
    exchange::pack(&contents, None, File::create(&file).unwrap()).unwrap();
    (folder, file)
}

#[test]
fn a_book_that_nobody_handed_over_is_taken_and_said_to_be_so() {
    let (first, book, _) = first_owner();
    let mut second = owner("2018-07-01");
    let (_folder, made) = made_by_hand(first, &book, 99);
    assert!(second.receive(&made).unwrap().never_handed_over);
    second.visit(&book, "2018-06-20", "72000").unwrap();

    second.hand_over(&book, "two.wellkept", &HandoverForm::default()).unwrap();
    let received = owner("2018-08-01").receive(&second.path("two.wellkept")).unwrap();
    assert!(!received.never_handed_over);
}

/// The chain that is left is whole, so that nothing in the book itself speaks against it; the first owner's card does.
#[test]
fn a_second_owner_who_cuts_off_the_end_of_the_firsts_years_is_found_by_the_firsts_card() {
    let (mut first, book, card) = first_owner();
    first.hand_over(&book, "one.wellkept", &HandoverForm::default()).unwrap();
    // The car, a paper and two visits; the third visit and the handover are gone.
    let (_folder, cut) = made_by_hand(first, &book, 4);
    let mut second = owner("2018-07-01");
    second.receive(&cut).unwrap();
    second.visit(&book, "2018-06-20", "72000").unwrap();
    second.hand_over(&book, "two.wellkept", &HandoverForm::default()).unwrap();

    let mut third = owner("2021-07-01");
    third.receive(&second.path("two.wellkept")).unwrap();
    let faults = third.check().faults;
    assert!(faults.len() == 1, "only the photo is missing: {faults:?}");
    let compared = third.compare(&book, &card);
    assert!(!compared.contains && compared.car_known && compared.old.key_known, "{compared:?}");
    assert_eq!((state(&compared), compared.same), ("not-found", 2));
    let missing = compared.differences.iter().find(|difference| difference.kind == "missing").unwrap();
    assert!(missing.breach);
    assert_eq!(missing.then.as_ref().unwrap().day, "2018-05-02");
}
