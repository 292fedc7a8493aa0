//! Parts through the door: numbers of several spellings, how long parts last across a new instrument, prices in
//! several currencies, and what to get for the next visit.
#![allow(clippy::unwrap_used)]

use door::{
    Clock, CounterView, Day, Door, GetView, ItemForm, ItemView, PartForm, PartLine, Reading, ReadingForm,
    Refusal, Request, Response, UnitKey, UsedView, VehicleForm, VisitForm,
};

const TODAY: &str = "2026-06-01";
const OIL: u32 = 1;
const AIR_FILTER: u32 = 2;
const PLUGS: u32 = 5;

/// A car that counts in this unit and shows 24 000 today, and its door.
struct Case {
    door: Door,
    book: String,
    unit: UnitKey,
    _folder: tempfile::TempDir,
}

fn case(unit: &str) -> Case {
    let folder = tempfile::tempdir().unwrap();
    let today: Day = TODAY.parse().unwrap();
    let mut door = Door::open(folder.path(), Clock::Fixed(today)).unwrap();
    let vehicle = VehicleForm {
        name: "Thistle".to_owned(),
        engine: "petrol".to_owned(),
        unit: unit.to_owned(),
        first_use: "2020-06-01".to_owned(),
        ..VehicleForm::default()
    };
    let Response::Written(written) = door.ask(Request::AddVehicle { vehicle }).unwrap() else { panic!() };
    let unit = if unit == "mi" { UnitKey::Mi } else { UnitKey::Km };
    Case { door, book: written.book, unit, _folder: folder }
}

fn filter(number: &str) -> PartForm {
    PartForm {
        name: "Oil filter".to_owned(),
        maker: "Quarrel".to_owned(),
        number: number.to_owned(),
        ..PartForm::default()
    }
}

impl Case {
    fn fit(&mut self, item: u32, day: &str, reading: &str, parts: Vec<PartForm>) {
        self.record(day, reading, VisitForm { items: vec![ItemForm::Catalogue(item)], parts, ..form("EUR") });
    }

    fn record(&mut self, day: &str, reading: &str, visit: VisitForm) {
        let visit = VisitForm { day: day.to_owned(), reading: reading.to_owned(), ..visit };
        self.door.ask(Request::RecordVisit { book: self.book.clone(), visit, keep: false }).unwrap();
    }

    fn read(&mut self, reading: &str) {
        let reading = ReadingForm { reading: reading.to_owned(), ..ReadingForm::default() };
        self.door.ask(Request::TakeReading { book: self.book.clone(), reading, keep: false.into() }).unwrap();
    }

    fn ask_parts(&mut self, item: Option<u32>) -> Result<Response, Refusal> {
        self.door.ask(Request::Parts { book: self.book.clone(), item })
    }

    fn parts(&mut self, item: Option<u32>) -> Vec<PartLine> {
        match self.ask_parts(item).unwrap() {
            Response::Parts(view) => view.parts,
            other => panic!("{other:?}"),
        }
    }

    fn counter(&mut self) -> CounterView {
        match self.door.ask(Request::Counter { book: self.book.clone() }).unwrap() {
            Response::Counter(counter) => counter,
            other => panic!("{other:?}"),
        }
    }

    fn get(&mut self, item: u32) -> Vec<GetView> {
        let of_item =
            |get: &GetView| matches!(get.item, ItemView::Catalogue { number, .. } if number == item);
        self.counter().get.into_iter().filter(of_item).collect()
    }

    fn used(&self, days: u32, count: i64) -> UsedView {
        UsedView { days, distance: Some(Reading { count, unit: self.unit }) }
    }
}

fn form(currency: &str) -> VisitForm {
    VisitForm { currency: currency.to_owned(), ..VisitForm::default() }
}

#[test]
fn two_spellings_are_one_part_that_shows_as_written_last() {
    let mut case = case("km");
    case.fit(OIL, "2025-06-01", "12000", vec![filter("qf20118")]);
    case.fit(OIL, "2026-06-01", "24000", vec![filter("QF 20-118")]);
    let parts = case.parts(None);
    assert_eq!(parts.len(), 1);
    assert_eq!(parts[0].numbers, ["QF 20-118", "qf20118"]);
    assert_eq!((parts[0].times, parts[0].day.as_str(), parts[0].quantity.as_str()), (2, TODAY, "1"));
    assert_eq!(parts[0].lasted, Some(case.used(365, 12_000)));
    assert_eq!(parts[0].present, Some(case.used(0, 0)));
}

#[test]
fn the_part_fitted_last_stands_first_and_an_item_picks_its_own() {
    let mut case = case("km");
    case.fit(OIL, "2025-06-01", "12000", vec![filter("QF 1")]);
    case.fit(AIR_FILTER, "2025-12-01", "18000", vec![PartForm { number: "QA 7".to_owned(), ..filter("") }]);
    let numbers = |parts: Vec<PartLine>| parts.into_iter().flat_map(|part| part.numbers).collect::<Vec<_>>();
    assert_eq!(numbers(case.parts(None)), ["QA 7", "QF 1"]);
    assert_eq!(numbers(case.parts(Some(OIL))), ["QF 1"]);
    assert_eq!(numbers(case.parts(Some(PLUGS))), [""; 0]);
    let refusal = case.ask_parts(Some(9_999)).unwrap_err();
    assert_eq!((refusal.code.as_str(), refusal.field.as_deref()), ("item-unknown", Some("item")));
}

#[test]
fn how_long_a_part_lasts_goes_on_over_a_new_instrument_in_its_unit() {
    let mut case = case("mi");
    case.fit(OIL, "2025-01-01", "80000", vec![filter("QF 1")]);
    let (book, day) = (case.book.clone(), "2025-07-01".to_owned());
    let (old, new) = ("85000".to_owned(), "10".to_owned());
    case.door.ask(Request::ReplaceInstrument { book, day, old, new }).unwrap();
    case.fit(OIL, "2026-01-01", "5010", vec![filter("QF 2")]);
    case.read("9010");
    let parts = case.parts(None);
    assert_eq!(parts[0].lasted, Some(case.used(365, 10_000)));
    assert_eq!(parts[0].present, Some(case.used(151, 4_000)));
    assert_eq!((parts[1].lasted, parts[1].present), (Some(case.used(365, 10_000)), None));
}

#[test]
fn without_readings_only_the_days_are_told() {
    let mut case = case("km");
    case.fit(OIL, "2025-06-01", "", vec![filter("QF 1")]);
    case.fit(OIL, "2026-05-02", "", vec![filter("QF 1")]);
    let part = case.parts(None).remove(0);
    assert_eq!(part.lasted, Some(UsedView { days: 335, distance: None }));
    assert_eq!(part.present, Some(UsedView { days: 30, distance: None }));
}

#[test]
fn the_last_price_keeps_its_currency_day_and_shop() {
    let mut case = case("km");
    let paid = |price: &str| PartForm { price: price.to_owned(), quantity: "2".to_owned(), ..filter("QF 1") };
    let items = vec![ItemForm::Catalogue(OIL)];
    let abroad =
        VisitForm { items, parts: vec![paid("900")], workshop: "Harbour Motors".to_owned(), ..form("JPY") };
    case.fit(OIL, "2024-06-01", "4000", vec![paid("7.80")]);
    case.record("2025-06-01", "12000", abroad);
    case.fit(OIL, "2026-05-01", "23000", vec![filter("QF 1")]);
    let part = case.parts(None).remove(0);
    let paid = part.paid.unwrap();
    assert_eq!((paid.price.number.as_str(), paid.price.currency.as_str()), ("900", "JPY"));
    assert_eq!((paid.quantity.as_str(), paid.day.as_str()), ("2", "2025-06-01"));
    assert_eq!((paid.workshop.as_str(), part.workshop.as_str()), ("Harbour Motors", ""));
}

#[test]
fn a_part_fitted_twice_on_a_day_was_fitted_once() {
    let mut case = case("km");
    case.fit(OIL, "2025-06-01", "12000", vec![filter("QF 1"), filter("qf-1")]);
    case.fit(OIL, "2025-06-01", "12000", vec![filter("QF 1")]);
    let part = case.parts(None).remove(0);
    assert_eq!((part.times, part.quantity.as_str(), part.lasted), (1, "3", None));
}

#[test]
fn what_to_get_says_how_long_the_last_one_lasted() {
    let mut case = case("km");
    case.fit(OIL, "2024-01-01", "4000", vec![filter("QF 1")]);
    assert_eq!(case.get(OIL).first().and_then(|get| get.lasted), None);
    case.fit(
        OIL,
        "2025-03-01",
        "18500",
        vec![filter("QF 2"), PartForm { name: "Washer".into(), ..filter("QW") }],
    );
    case.read("33000");
    let get = case.get(OIL);
    let numbers: Vec<_> = get.iter().filter_map(|get| get.part.as_ref()).map(|part| &part.number).collect();
    assert_eq!(numbers, ["QF 2", "QW"]);
    assert!(get.iter().all(|get| get.lasted == Some(case.used(425, 14_500))), "{get:?}");
}
