//! A book from a stranger holds what no form of ours would take: the largest and the smallest of everything. It may be
//! told badly, but no screen may break over it, and no other car may suffer.
#![allow(clippy::unwrap_used)]

use book::content::{
    Came, Content, EndContent, Fill, Filled, Fuel, HandoverContent, InstrumentContent, MeasuredContent,
    MeasuredValue, PaperContent, PartContent, PlanContent, ReadingContent, ScanContent, TroubleContent,
    VehicleContent, VisitContent,
};
use book::entry::Writer;
use book::{Change, Shelf, Stamp};
use door::{CardOptions, Clock, Door, HereForm, LineFilter, Request, Response, open_book_file};
use rules::measured::Parameter;
use rules::running::OdometerStatus;
use rules::upkeep::{Finding, ItemRef, Milli, Pin, PlanChange, Setting};
use rules::vehicle::{Conditions, EngineKind, Equipment};
use units::{Day, Distance, DistanceUnit, Hash, Money, Quantity, SubjectId, Volume, VolumeUnit};

const EXTREMES: [i64; 6] = [i64::MIN, i64::MIN / 3, -1, 0, i64::MAX / 3, i64::MAX];
const DAYS: [&str; 4] = ["1900-01-01", "1970-01-01", "2026-05-01", "2199-12-31"];

fn day(text: &str) -> Day {
    text.parse().unwrap()
}

fn vehicle(extreme: i64, on: Day) -> VehicleContent {
    VehicleContent {
        name: "<script>alert(1)</script>\u{202e}".repeat(50),
        make_model: String::new(),
        vin: None,
        engine: EngineKind::PetrolHybrid,
        unit: DistanceUnit::Mile,
        first_use: Some(on),
        from_new: true,
        yearly: Some(Distance::from_millimetres(extreme)),
        conditions: Conditions::default(),
        equipment: Equipment::default(),
        values: [(u32::MAX, String::new()), (1, "9".repeat(5_000))].into(),
    }
}

fn lines(extreme: i64, on: Day) -> Vec<Content> {
    let shown = Distance::from_millimetres(extreme);
    let money = Money { minor: extreme, currency: "EUR".parse().unwrap() };
    let volume = Volume::from_picolitres(extreme);
    let filled = Filled::Volume { volume, unit: VolumeUnit::UsGallon, of: None };
    let fuel = Fuel { filled, price: None, total: Some(money), fill: Fill::Full };
    let status = OdometerStatus::Actual;
    let part = PartContent {
        name: String::new(),
        maker: String::new(),
        number: String::new(),
        quantity: Quantity::from_thousandths(999_999_999, units::Measure::Piece).unwrap(),
        price: Some(money),
        item: Some(ItemRef::Catalogue(u32::MAX)),
        kind: Some("no such kind".to_owned()),
    };
    let visit = VisitContent {
        day: on,
        shown: Some(shown),
        by: book::content::By::Workshop(String::new()),
        items: vec![ItemRef::Catalogue(u32::MAX), ItemRef::Catalogue(1), ItemRef::Catalogue(1)],
        parts: vec![part; 3],
        cost: Some(money),
        note: "\0\u{7}".to_owned(),
        papers: vec![SubjectId([7; 16])],
        found: vec![book::content::FoundContent {
            item: ItemRef::Catalogue(27),
            finding: Finding::WithinLimits,
            value: Some(Milli(extreme)),
        }],
    };
    let values = vec![MeasuredValue { parameter: Parameter::LongTrim1, value: Milli(extreme) }];
    let scan = ScanContent { day: on, shown: Some(shown), text: "P0".repeat(9_000), cleared: true };
    let trouble = TroubleContent {
        day: on,
        shown: Some(shown),
        words: String::new(),
        when: String::new(),
        symptoms: vec!["no such symptom".to_owned()],
        absent: Vec::new(),
        scans: vec![scan],
        answers: Vec::new(),
        asked: String::new(),
        end: Some(EndContent { day: on, visit: Some(SubjectId([9; 16])), cause: "none".to_owned() }),
    };
    let pin = Setting::Pinned(Some(Pin { day: on, set: on }));
    vec![
        Content::Reading(ReadingContent { day: on, shown, status, fuel: Some(fuel), papers: Vec::new() }),
        Content::Instrument(InstrumentContent { day: on, old: shown, new: shown }),
        Content::Visit(visit),
        Content::Measured(MeasuredContent { day: on, values, came: Came::Typed }),
        Content::Trouble(trouble),
        Content::Plan(PlanContent(PlanChange { item: ItemRef::Catalogue(1), setting: pin })),
        Content::Paper(PaperContent {
            photo: Hash([7; 32]),
            width: u32::MAX,
            height: 0,
            whole: None,
            page: None,
        }),
    ]
}

/// A book with the extremes that the filter lets through, packed as its writer would.
fn file(folder: &std::path::Path, extremes: &[i64], days: &[&str]) -> std::fs::File {
    let mut shelf = Shelf::in_memory(Writer::from_secret(&[5; 32])).unwrap();
    let mut count = 0_u64;
    let mut stamp = || {
        count += 1;
        let mut random = [0; 10];
        random[..8].copy_from_slice(&count.to_be_bytes());
        Stamp { now: 1_700_000_000_000 + count, random }
    };
    let book = shelf.begin(stamp(), vehicle(extremes[0], day(days[0]))).unwrap().book;
    for extreme in extremes {
        for on in days {
            for content in lines(*extreme, day(on)) {
                shelf.append(stamp(), book, Change::Begin(content)).unwrap();
            }
        }
    }
    let handover = HandoverContent {
        day: day("2199-12-31"),
        shown: Some(Distance::from_millimetres(extremes[0])),
        words: "\u{202e}".repeat(9_000),
        papers: true,
        ends: Vec::new(),
    };
    shelf.append(stamp(), book, Change::Begin(Content::Handover(handover))).unwrap();
    let entries = shelf.entries(book).unwrap();
    let store = paper::PhotoStore::open(folder, std::time::SystemTime::now()).unwrap();
    let contents = exchange::Contents { book, entries, papers: Vec::new(), store };
    let path = folder.join("book.wellkept");
    exchange::pack(&contents, None, std::fs::File::create(&path).unwrap()).unwrap();
    std::fs::File::open(path).unwrap()
}

fn screens(book: &str) -> Vec<Request> {
    let book = || book.to_owned();
    vec![
        Request::Today { book: book() },
        Request::Visits { book: book() },
        Request::Pump { book: book() },
        Request::Fuel { book: book(), unit: None },
        Request::Costs { book: book() },
        Request::Measured { book: book() },
        Request::Counter { book: book() },
        Request::Parts { book: book(), item: None },
        Request::Bay { book: book() },
        Request::Lines {
            book: book(),
            filter: LineFilter { text: Some("x".to_owned()), ..LineFilter::default() },
        },
        Request::Sheet { book: book() },
        Request::Card { book: book(), options: CardOptions::default() },
        Request::Troubles { book: book() },
        Request::Guides { book: book() },
        Request::Handover { book: book() },
    ]
}

fn shown(extremes: &[i64], days: &[&str]) {
    let folder = tempfile::tempdir().unwrap();
    let clock = Clock::Fixed("2026-06-01".parse().unwrap());
    let mut door = Door::open(&folder.path().join("shelf"), clock).unwrap();
    let mut file = open_book_file(file(folder.path(), extremes, days), "").unwrap();
    door.examine(&mut file).unwrap();
    file.keep_papers().unwrap();
    let book = door.take_book_in(&file).unwrap().vehicle.book;
    for request in screens(&book) {
        // A screen may refuse what it can not show; only breaking is wrong.
        let _ = door.ask(request);
    }
    let Response::Lines(lines) =
        door.ask(Request::Lines { book: book.clone(), filter: LineFilter::default() }).unwrap()
    else {
        panic!()
    };
    for line in lines.lines {
        door.ask(Request::Line { book: book.clone(), subject: line.subject.clone() }).unwrap();
        let here = HereForm::default();
        let _ = door.ask(Request::TroubleOf { book: book.clone(), subject: line.subject, here });
    }
    door.ask(Request::Shelf).unwrap();
}

/// One that would stop at the first extreme of the other test is found here.
#[test]
fn each_extreme_by_itself() {
    for (extreme, on) in EXTREMES.into_iter().zip(DAYS.into_iter().cycle()) {
        shown(&[extreme], &[on]);
    }
}

#[test]
fn all_extremes_together() {
    shown(&EXTREMES, &DAYS);
}
