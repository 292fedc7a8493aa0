//! A household of entries for the tests: everything here is invented.
#![allow(clippy::unwrap_used, dead_code)]

use book::content::{
    AnswerContent, BoughtContent, By, Came, Content, EndContent, Fill, Filled, FoundContent, Fuel,
    HandoverContent, InstrumentContent, Liquid, Mark, MeasuredContent, MeasuredValue, NumberContent,
    PageContent, PaperContent, PartContent, PartNoteContent, PlanContent, ReadingContent, Said, ScanContent,
    TroubleContent, VehicleContent, VisitContent,
};
use book::entry::Writer;
use book::{Change, Shelf, Stamp};
use rules::measured::Parameter;
use rules::running::OdometerStatus;
use rules::upkeep::{Finding, ItemRef, Milli, Pin, PlanChange, Setting};
use rules::vehicle::{Conditions, EngineKind, Equipment, Fitting};
use units::{
    Day, Distance, DistanceUnit, Energy, Hash, Measure, Money, Quantity, SubjectId, UnitPrice, Volume,
    VolumeUnit,
};

pub fn day(text: &str) -> Day {
    text.parse().unwrap()
}

pub fn km(count: i64) -> Distance {
    Distance::whole(count, DistanceUnit::Kilometre)
}

pub fn writer(seed: u8) -> Writer {
    Writer::from_secret(&[seed; 32])
}

/// A stamp that is unlike every other one with another count.
pub fn stamp(count: u64) -> Stamp {
    let mut random = [0; 10];
    random[..8].copy_from_slice(&count.to_be_bytes());
    Stamp { now: 1_700_000_000_000 + count * 1_000, random }
}

pub fn vehicle(name: &str) -> VehicleContent {
    VehicleContent {
        name: name.to_owned(),
        make_model: "Invented 1.6 2009".to_owned(),
        vin: None,
        engine: EngineKind::Petrol,
        unit: DistanceUnit::Kilometre,
        first_use: Some(day("2009-05-04")),
        from_new: false,
        yearly: None,
        conditions: Conditions::default(),
        equipment: Equipment::default()
            .with(Fitting::Turbo, Some(true))
            .with(Fitting::DrivenRearAxle, Some(false)),
        values: [(1, "30 N·m".to_owned())].into(),
    }
}

pub fn reading(on: &str, count: i64) -> Content {
    Content::Reading(ReadingContent {
        day: day(on),
        shown: km(count),
        status: OdometerStatus::Actual,
        fuel: None,
        papers: Vec::new(),
    })
}

pub fn fill(on: Day, count: i64) -> Content {
    let volume = Volume::parse("41.37", VolumeUnit::Litre).unwrap();
    let filled = Filled::Volume { volume, unit: VolumeUnit::Litre, of: None };
    fuelled(on, count, Fuel { filled, price: None, total: None, fill: Fill::Full })
}

/// A charge with everything that can be said of one.
pub fn charge(on: Day, count: i64) -> Content {
    let currency = "EUR".parse().unwrap();
    let fuel = Fuel {
        filled: Filled::Energy(Energy::parse("31.4").unwrap()),
        price: Some(UnitPrice::parse("0.3127", currency).unwrap()),
        total: Some(Money::parse("9.82", currency).unwrap()),
        fill: Fill::Part,
    };
    fuelled(on, count, fuel)
}

/// Gas by the gallon, of which the kind was said.
pub fn gas(on: Day, count: i64) -> Content {
    let volume = Volume::parse("8.2", VolumeUnit::UsGallon).unwrap();
    let filled = Filled::Volume { volume, unit: VolumeUnit::UsGallon, of: Some(Liquid::Gas) };
    fuelled(on, count, Fuel { filled, price: None, total: None, fill: Fill::MissedBefore })
}

fn fuelled(on: Day, count: i64, fuel: Fuel) -> Content {
    Content::Reading(ReadingContent {
        day: on,
        shown: km(count),
        status: OdometerStatus::Actual,
        fuel: Some(fuel),
        papers: Vec::new(),
    })
}

pub fn visit(on: &str, count: i64, papers: Vec<SubjectId>) -> VisitContent {
    VisitContent {
        day: day(on),
        shown: Some(km(count)),
        by: By::Workshop("Tow Bar Lane Garage".to_owned()),
        items: vec![ItemRef::Catalogue(1), ItemRef::Own("roof hinge".parse().unwrap())],
        parts: vec![PartContent {
            name: "oil filter".to_owned(),
            maker: "Kestrel & Moor".to_owned(),
            number: "KM 4471-B".to_owned(),
            quantity: Quantity::from_thousandths(1_000, Measure::Piece).unwrap(),
            price: None,
            item: Some(ItemRef::Catalogue(1)),
            kind: Some("long-life-oil".to_owned()),
        }],
        cost: None,
        note: "a note".to_owned(),
        papers,
        found: vec![
            FoundContent {
                item: ItemRef::Catalogue(27),
                finding: Finding::WithinLimits,
                value: Some(Milli(4_100)),
            },
            FoundContent {
                item: ItemRef::Own("roof rack".parse().unwrap()),
                finding: Finding::Loose,
                value: None,
            },
        ],
    }
}

pub fn paper(seed: u8) -> Content {
    Content::Paper(PaperContent {
        photo: Hash([seed; 32]),
        width: 600,
        height: 900,
        whole: Some(Hash([seed ^ 1; 32])),
        page: Some(PageContent { document: Hash([seed ^ 2; 32]), number: 3 }),
    })
}

pub fn bought(on: &str, receipt: SubjectId) -> Content {
    let PartContent { name, maker, number, quantity, .. } = visit(on, 1, vec![]).parts.remove(0);
    Content::Bought(BoughtContent {
        day: day(on),
        shop: "Fairlead".to_owned(),
        parts: vec![PartContent { name, maker, number, quantity, price: None, item: None, kind: None }],
        cost: None,
        note: String::new(),
        papers: vec![receipt],
    })
}

pub fn part_note() -> Content {
    Content::PartNote(PartNoteContent {
        number: "OF 12-44".to_owned(),
        maker: String::new(),
        same: vec![NumberContent { maker: "Quillan".to_owned(), number: "QF-88".to_owned() }],
        mark: Some(Mark::Superseded),
        instead: "OF 12-45".to_owned(),
        note: String::new(),
    })
}

pub fn measured(on: &str) -> Content {
    let values = [(Parameter::LongTrim1, -4_700), (Parameter::RestVoltage, 12_480)];
    let values = values.map(|(parameter, value)| MeasuredValue { parameter, value: Milli(value) });
    Content::Measured(MeasuredContent { day: day(on), values: values.to_vec(), came: Came::Pasted })
}

pub fn trouble(on: &str, count: i64, end: Option<EndContent>) -> Content {
    let scan = |cleared| ScanContent {
        day: day(on),
        shown: Some(km(count)),
        text: "P0300 pending".to_owned(),
        cleared,
    };
    let answer = |check: &str, said| AnswerContent { check: check.to_owned(), said };
    Content::Trouble(TroubleContent {
        day: day(on),
        shown: Some(km(count)),
        words: "It shakes at the lights".to_owned(),
        when: "warm, in drive".to_owned(),
        symptoms: vec!["rough-idle".to_owned()],
        absent: vec!["white-smoke".to_owned()],
        scans: vec![scan(false), scan(true)],
        answers: vec![answer("a", Said::Found), answer("b", Said::NotFound), answer("c", Said::Skipped)],
        asked: "Find it".to_owned(),
        end,
    })
}

pub fn instrument(on: &str) -> Content {
    Content::Instrument(InstrumentContent { day: day(on), old: km(120_000), new: km(3) })
}

pub fn plan(item: u32, setting: Setting) -> Content {
    Content::Plan(PlanContent(PlanChange { item: ItemRef::Catalogue(item), setting }))
}

pub fn handover(on: &str, count: i64) -> HandoverContent {
    HandoverContent {
        day: day(on),
        shown: Some(km(count)),
        words: "The spare key hangs behind the door".to_owned(),
        papers: true,
        ends: Vec::new(),
    }
}

/// A shelf in memory with one book in which every kind of entry stands.
pub fn every_kind() -> (Shelf, units::BookId) {
    let mut shelf = Shelf::in_memory(writer(1)).unwrap();
    let book = shelf.begin(stamp(0), vehicle("rusty")).unwrap().book;
    let mut count = 0;
    let mut write = |shelf: &mut Shelf, change| {
        count += 1;
        shelf.append(stamp(count), book, change).unwrap().subject
    };
    write(&mut shelf, Change::ChangeVehicle(vehicle("Rusty")));
    let mistyped = write(&mut shelf, Change::Begin(reading("2023-01-02", 98_420)));
    write(&mut shelf, Change::StrikeOut { subject: mistyped, why: "mistyped".to_owned() });
    let tied = write(&mut shelf, Change::Begin(paper(7)));
    write(&mut shelf, Change::Begin(paper(8)));
    let done = write(&mut shelf, Change::Begin(Content::Visit(visit("2023-02-03", 99_000, vec![tied]))));
    let content = Content::Visit(visit("2023-02-04", 99_001, vec![tied]));
    write(&mut shelf, Change::Amend { subject: done, content, why: "the day was wrong".to_owned() });
    write(&mut shelf, Change::Begin(instrument("2023-03-01")));
    write(&mut shelf, Change::Begin(plan(1, Setting::Off)));
    let pin = Pin { day: day("2023-06-01"), set: day("2023-03-02") };
    write(&mut shelf, Change::Begin(plan(1, Setting::Pinned(Some(pin)))));
    write(&mut shelf, Change::Begin(plan(1, Setting::Pinned(None))));
    let receipt = write(&mut shelf, Change::Begin(paper(9)));
    write(&mut shelf, Change::Begin(bought("2023-04-01", receipt)));
    write(&mut shelf, Change::Begin(part_note()));
    write(&mut shelf, Change::Begin(charge(day("2023-04-02"), 30)));
    write(&mut shelf, Change::Begin(gas(day("2023-04-03"), 60)));
    write(&mut shelf, Change::Begin(measured("2023-04-04")));
    let wrong = write(&mut shelf, Change::Begin(trouble("2023-05-01", 10, None)));
    let end = EndContent { day: day("2023-05-02"), visit: Some(done), cause: "spark-plugs".to_owned() };
    let content = trouble("2023-05-01", 10, Some(end));
    write(&mut shelf, Change::Amend { subject: wrong, content, why: String::new() });
    let sold = write(&mut shelf, Change::Begin(Content::Handover(handover("2023-06-01", 20))));
    write(&mut shelf, Change::StrikeOut { subject: sold, why: "the buyer stayed away".to_owned() });
    (shelf, book)
}

/// Signs an entry with standard parts, apart from the code under test.
pub fn sign(writer: &Writer, entry: &book::entry::Entry) -> book::entry::Signed {
    use ed25519_dalek::Signer;
    use sha2::Digest;
    let bytes = entry.encode();
    let hash: [u8; 32] = sha2::Sha256::digest(&bytes).into();
    let signature = writer.signing_key().sign(&hash).to_bytes();
    book::entry::Signed { bytes, signature }
}
