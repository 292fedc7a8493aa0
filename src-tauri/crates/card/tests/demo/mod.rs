//! An invented car with as many invented visits as asked for, as claims and as the lines of a sheet.

#![allow(clippy::unwrap_used, dead_code, missing_docs)]

use card::{
    CarLines, Claims, Engine, Fingerprint, Flags, HeadPrefix, Item, Mark, NextDue, NextLine, OdometerReading,
    Place, Plot, PlotPoint, PlotTick, ReadingLine, RecordLines, SheetModel, SheetOptions, SheetPaper,
    SheetSize, SheetSquare, SheetWords, Vehicle, ViewerAddress, Visit, VisitLine, WorkGroup, WorkLine,
    WriterLine, fit, fit_plain, timeline,
};
use ed25519_dalek::SigningKey;
use units::{Day, DistanceUnit, WriterKey};

const ITEMS: [&str; 9] = [
    "Engine oil and filter",
    "Air filter",
    "Brake fluid",
    "Coolant",
    "Cabin filter",
    "Spark plugs",
    "Front brake pads and discs",
    "Timing belt with water pump",
    "Tyres changed round, tread depth measured",
];

/// The secret key of RFC 8032, section 7.1, TEST 1, by its bytes.
pub fn key() -> SigningKey {
    SigningKey::from_bytes(&[
        0x9d, 0x61, 0xb1, 0x9d, 0xef, 0xfd, 0x5a, 0x60, 0xba, 0x84, 0x4a, 0xf4, 0x92, 0xec, 0x2c, 0xc4, 0x44,
        0x49, 0xc5, 0x69, 0x7b, 0x32, 0x69, 0x19, 0x70, 0x3b, 0xac, 0x03, 0x1c, 0xae, 0x7f, 0x60,
    ])
}

pub fn viewer() -> ViewerAddress {
    "https://card.example/".parse().unwrap()
}

/// Claims with so many visits, spread like real ones: uneven steps, one to four items, some of the owner's own.
pub fn claims(visits: usize) -> Claims {
    let mut state = 7_u32;
    let mut next = move |below: u32| {
        state = state.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
        (state >> 8) % below
    };
    let (mut day, mut reading) = (Day::from_ymd(2016, 3, 12).unwrap(), 12);
    let visits = (0..visits)
        .map(|at| {
            day = day.plus_days(i32::try_from(12 + next(40)).unwrap());
            reading += i32::try_from(150 + next(1900)).unwrap();
            let items = (0..=next(3)).map(|_| Item::Catalogue(next(9)));
            let own = at % 17 == 5;
            let items = items.chain(own.then(|| Item::Own("Tow bar wiring".into()))).collect();
            let by = if next(3) == 0 { Flags::BY_OWNER } else { Flags::BY_WORKSHOP };
            let flags = by
                .with(Flags::RECEIPT, next(4) > 0)
                .with(Flags::PHOTO, next(6) == 0)
                .with(Flags::WRITTEN_LATE, next(11) == 0)
                .with(Flags::AMENDED, next(19) == 0);
            Visit { day, reading, flags, items }
        })
        .collect();
    Claims {
        issued: day.plus_days(20),
        vehicle: Vehicle {
            name: "Heron".into(),
            vin: Some("1M8GDM9AXKP042788".into()),
            engine: Some(Engine::Petrol),
            description: Some("Marrow Heron 1.4 estate, 2016".into()),
            first_use: Some(Day::from_ymd(2016, 3, 12).unwrap()),
        },
        unit: DistanceUnit::Kilometre,
        latest: OdometerReading { day: day.plus_days(18), reading: reading + 412 },
        visits,
        left_out: 0,
        head: Some(HeadPrefix([0x5a; 16])),
        next: vec![
            NextDue {
                item: Item::Catalogue(0),
                day: Some(day.plus_days(300)),
                reading: Some(reading + 9000),
            },
            NextDue { item: Item::Catalogue(2), day: Some(day.plus_days(420)), reading: None },
            NextDue { item: Item::Catalogue(7), day: None, reading: Some(reading + 41_000) },
        ],
        instruments: Vec::new(),
    }
}

pub fn grouped(reading: i32) -> String {
    if reading < 1000 {
        reading.to_string()
    } else {
        format!("{}\u{202f}{:03}", reading / 1000, reading % 1000)
    }
}

fn name(item: &Item) -> String {
    match item {
        Item::Catalogue(number) => ITEMS[*number as usize].to_owned(),
        Item::Own(name) => name.clone(),
    }
}

pub fn words() -> SheetWords {
    let text = str::to_owned;
    SheetWords {
        title: text("History card"),
        vin: text("Vehicle identification number"),
        engine: text("Engine"),
        first_use: text("First use"),
        latest: text("Latest odometer reading"),
        next: text("What comes next"),
        nothing_next: text("Nothing is planned."),
        history: text("Work done"),
        no_visits: text("The book holds no visit yet."),
        day: text("Day"),
        reading: text("km"),
        work: text("What was done, and by whom"),
        receipt: text("receipt in the book"),
        photo: text("photo"),
        written_late: text("written down late"),
        amended: text("amended"),
        issued: text("Issued"),
        key: text("Key"),
        plot: text("Readings over the years, km"),
        record: text("Work done"),
        last_done: text("Last done"),
        next_due: text("Next due"),
        no_record: text("no record"),
        writers: text("Who wrote in the book"),
    }
}

fn visit_line(visit: &Visit) -> VisitLine {
    let marks = [
        (Flags::RECEIPT, Mark::Receipt),
        (Flags::PHOTO, Mark::Photo),
        (Flags::WRITTEN_LATE, Mark::WrittenLate),
        (Flags::AMENDED, Mark::Amended),
    ];
    VisitLine {
        day: visit.day.to_string(),
        reading: grouped(visit.reading),
        who: if visit.flags.contains(Flags::BY_OWNER) { "own work" } else { "workshop" }.into(),
        items: visit.items.iter().map(name).collect(),
        cost: None,
        marks: marks
            .into_iter()
            .filter(|(flag, _)| visit.flags.contains(*flag))
            .map(|(_, mark)| mark)
            .collect(),
    }
}

fn next_line(next: &NextDue) -> NextLine {
    let parts =
        [next.day.map(|day| day.to_string()), next.reading.map(|reading| grouped(reading) + "\u{a0}km")];
    NextLine { item: name(&next.item), when: parts.into_iter().flatten().collect::<Vec<_>>().join(" or ") }
}

/// The sheet of signed claims.
pub fn sheet(visits: usize) -> SheetModel {
    sized(visits, SheetSize::A5)
}

/// The card of signed claims in a size.
pub fn sized(visits: usize, size: SheetSize) -> SheetModel {
    let claims = claims(visits);
    let fitted = fit(&claims, &key(), &viewer(), size.square_limit()).unwrap();
    let key = Fingerprint::from(&WriterKey(key().verifying_key().to_bytes())).to_string();
    let square = SheetSquare::Code {
        square: fitted.square,
        scan: "Scan this square with a phone's camera to read the whole history. Nothing is sent anywhere.".into(),
        unchanged: format!("This card is unchanged since it was signed on {} with the key {key}.", claims.issued),
        proves_not: "A signature does not prove that the work was done; the receipts in the book do, as far as they go."
            .into(),
        proves_not_short: "This does not prove that the work was done.".into(),
        key,
    };
    sheet_with(&claims, square)
}

/// The sheet without a viewer's address.
pub fn plain_sheet(visits: usize) -> SheetModel {
    let claims = claims(visits);
    let lines = [
        "Wellkept card without an address: Heron, Marrow Heron 1.4 estate, 2016",
        "Latest reading: 105 000 km",
    ];
    let fitted =
        fit_plain(&lines.map(str::to_owned), |_| String::new(), SheetSize::A5.square_limit()).unwrap();
    let square = SheetSquare::Plain {
        square: fitted.square,
        scan: "Any camera app shows a short summary from this square.".into(),
        unsigned: "No viewer's address is set yet, so this square holds plain text and no signature.".into(),
    };
    sheet_with(&claims, square)
}

/// Six groups as a buyer asks, most of them with a record.
fn record(claims: &Claims) -> RecordLines {
    let line = |item: &str, day: &str, next: &str| WorkLine {
        item: item.into(),
        day: (!day.is_empty()).then(|| day.to_owned()),
        reading: (!day.is_empty()).then(|| "98\u{202f}000".to_owned()),
        next: next.into(),
    };
    let group = |name: &str, lines: Vec<WorkLine>, more: &str| WorkGroup {
        name: name.into(),
        lines,
        more: more.into(),
    };
    let groups = vec![
        group("Oil", vec![line("Engine oil and filter", "2025-03-14", "2026-03-14")], ""),
        group(
            "Belts",
            vec![line("Timing belt with pump and rollers", "", ""), line("Drive belt", "2021-08-02", "")],
            "",
        ),
        group(
            "Brakes",
            vec![line("Front brake pads", "2024-08-02", "2027-02-01"); 4],
            "and 2 more in the book",
        ),
        group(
            "Fluids",
            vec![
                line("Brake fluid", "2024-08-02", "2026-08-02"),
                line("Coolant", "2022-05-30", "113\u{202f}000\u{a0}km"),
            ],
            "",
        ),
        group("Filters", vec![line("Cabin filter", "2025-03-14", "2026-03-14"); 3], ""),
        group("Repairs", vec![line("Tow bar wiring", "2023-01-09", ""); 4], "and 7 more in the book"),
    ];
    let writer = WriterLine {
        span: "2016-03-12 to 2026-06-01".into(),
        key: "21fe 31df a154 a261".into(),
        handed_over: "handed over on 2026-06-01".into(),
    };
    let visits = claims.visits.len();
    RecordLines {
        plot: plot(claims),
        groups: if visits == 0 { Vec::new() } else { groups },
        receipts: "34 of 60 visits have a receipt in the book.".into(),
        owners: "This book has had 2 owners, the last since 2026-06-01.".into(),
        writers: vec![writer; 2],
        more_writers: String::new(),
    }
}

fn plot(claims: &Claims) -> Option<Plot> {
    let line = timeline(claims);
    let point = |place: &Place| PlotPoint { day: place.day.epoch(), way: place.way };
    let all: Vec<PlotPoint> =
        line.runs.iter().flatten().chain(line.gaps.iter().flatten()).map(point).collect();
    let tick = |at: i64| PlotTick { at, label: at.to_string() };
    Some(Plot {
        days: [all.iter().map(|point| point.day).min()?, all.iter().map(|point| point.day).max()?],
        most: all.iter().map(|point| point.way).max()?.max(1),
        runs: line.runs.iter().map(|run| run.iter().map(point).collect()).collect(),
        gaps: line.gaps.iter().map(|gap| [point(&gap[0]), point(&gap[1])]).collect(),
        years: (2017..2080)
            .map(|year| Day::from_ymd(year, 1, 1).unwrap())
            .filter(|day| *day < claims.issued)
            .map(|day| PlotTick { at: day.epoch().into(), label: day.to_string()[..4].to_owned() })
            .collect(),
        ways: vec![tick(1)],
        note: "Dashed, on ruled ground: more than 24 months or 30 000 km without a visit in the book.".into(),
    })
}

fn sheet_with(claims: &Claims, square: SheetSquare) -> SheetModel {
    SheetModel {
        lang: "en".into(),
        car: CarLines {
            name: claims.vehicle.name.clone(),
            description: claims.vehicle.description.clone(),
            vin: claims.vehicle.vin.clone(),
            engine: Some("Petrol".into()),
            first_use: claims.vehicle.first_use.map(|day| day.to_string()),
        },
        latest: ReadingLine {
            day: claims.latest.day.to_string(),
            reading: grouped(claims.latest.reading) + "\u{a0}km",
        },
        visits: claims.visits.iter().map(visit_line).collect(),
        visits_note: format!("{} visits in the book.", claims.visits.len()),
        record: record(claims),
        next: claims.next.iter().map(next_line).collect(),
        issued: claims.issued.to_string(),
        handling: "Print both sides at full size (100 %); cut at the corner marks.".into(),
        square,
        words: words(),
    }
}

/// A sheet made at noon of a day in 2026.
pub fn options() -> SheetOptions {
    printed(SheetSize::A5, SheetPaper::Own)
}

/// The same in a size, on a paper.
pub fn printed(size: SheetSize, paper: SheetPaper) -> SheetOptions {
    SheetOptions { size, paper, made_at: 1_793_275_200, ident: "heron".into() }
}
