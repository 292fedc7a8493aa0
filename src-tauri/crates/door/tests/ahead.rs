//! What lies ahead, through the door: findings, kinds and fittings move what is due, and a day can be chosen.
#![allow(clippy::unwrap_used)]

use std::collections::BTreeMap;

use door::{
    Clock, CountedFrom, Day, Door, DueView, FirstKey, FoundForm, IntervalForm, ItemForm, ItemView, MovedView,
    PartForm, PlanForm, Refusal, Request, Response, StateKey, TodayView, VehicleForm, VisitForm, VisitsView,
};

const TODAY: &str = "2026-06-01";
const OIL: u32 = 1;
const AIR_FILTER: u32 = 2;
const PLUGS: u32 = 5;
const TIMING_BELT: u32 = 11;
const TYRES: u32 = 27;
const INSPECTION: u32 = 67;

/// A car that is new on the first of June 2024 and goes 1 000 km a month, and its door.
struct Case {
    door: Door,
    book: String,
    _folder: tempfile::TempDir,
}

fn case() -> Case {
    let folder = tempfile::tempdir().unwrap();
    let today: Day = TODAY.parse().unwrap();
    let mut door = Door::open(folder.path(), Clock::Fixed(today)).unwrap();
    let vehicle = VehicleForm {
        name: "Thistle".to_owned(),
        engine: "petrol".to_owned(),
        first_use: "2024-06-01".to_owned(),
        bought_new: true,
        reading: "24000".to_owned(),
        fitted: BTreeMap::from([("turbo".to_owned(), false)]),
        ..VehicleForm::default()
    };
    let Response::Written(written) = door.ask(Request::AddVehicle { vehicle }).unwrap() else { panic!() };
    Case { door, book: written.book, _folder: folder }
}

fn item(number: u32) -> ItemForm {
    ItemForm::Catalogue(number)
}

impl Case {
    fn visit(&mut self, day: &str, reading: &str, form: VisitForm) -> Result<Response, Refusal> {
        let visit = VisitForm {
            day: day.to_owned(),
            reading: reading.to_owned(),
            currency: "EUR".to_owned(),
            ..form
        };
        self.door.ask(Request::RecordVisit { book: self.book.clone(), visit, keep: false })
    }

    fn settle(&mut self, number: u32, change: PlanForm) -> Result<Response, Refusal> {
        self.door.ask(Request::ChangePlan { book: self.book.clone(), item: item(number), change })
    }

    fn today(&mut self) -> TodayView {
        match self.door.ask(Request::Today { book: self.book.clone() }).unwrap() {
            Response::Today(today) => today,
            other => panic!("{other:?}"),
        }
    }

    fn due(&mut self, number: u32) -> Option<DueView> {
        self.today().due.into_iter().find(|line| is(&line.item, number))
    }

    fn visits(&mut self) -> VisitsView {
        match self.door.ask(Request::Visits { book: self.book.clone() }).unwrap() {
            Response::Visits(visits) => visits,
            other => panic!("{other:?}"),
        }
    }

    fn moved(&mut self, number: u32, day: &str) -> Result<MovedView, Refusal> {
        let request = Request::Moved { book: self.book.clone(), item: item(number), day: day.to_owned() };
        match self.door.ask(request)? {
            Response::Moved(moved) => Ok(moved),
            other => panic!("{other:?}"),
        }
    }

    /// Engine oil for 60 euros, half a year ago.
    fn with_oil(mut self) -> Case {
        let form = VisitForm { items: vec![item(OIL)], cost: "60".to_owned(), ..VisitForm::default() };
        self.visit("2025-12-01", "18000", form).unwrap();
        self
    }
}

fn is(item: &ItemView, number: u32) -> bool {
    matches!(item, ItemView::Catalogue { number: shown, .. } if *shown == number)
}

fn found(number: u32, finding: &str, value: &str) -> FoundForm {
    FoundForm { item: item(number), finding: finding.to_owned(), value: value.to_owned() }
}

#[test]
fn a_finding_without_any_work_is_a_visit_and_makes_the_item_due() {
    let mut case = case();
    let form = VisitForm { found: vec![found(PLUGS, "sooty", "")], ..VisitForm::default() };
    case.visit("2026-05-30", "23900", form).unwrap();
    let line = case.due(PLUGS).unwrap();
    assert_eq!((line.state, line.first), (StateKey::Overdue, Some(FirstKey::Finding)));
    let seen = line.why.seen.unwrap();
    assert_eq!((seen.finding.as_str(), seen.effect.as_str(), seen.value), ("sooty", "now", None));
}

/// From 8 mm when new, 2 mm in 24 000 km: the 3 mm of the catalogue are reached after 60 000 km.
#[test]
fn a_measured_tread_says_how_far_the_tyres_go() {
    let mut case = case();
    let form = VisitForm { found: vec![found(TYRES, "within-limits", "6,0")], ..VisitForm::default() };
    case.visit(TODAY, "24000", form).unwrap();
    let line = case.due(TYRES).unwrap();
    assert_eq!(line.reading.unwrap().count, 60_000);
    let value = line.why.seen.unwrap().value.unwrap();
    assert_eq!((value.value.as_str(), value.limit.as_str(), value.unit.as_str()), ("6", "3", "mm"));

    // What is called well beside a value at its limit is said to be at its limit.
    let form = VisitForm { found: vec![found(TYRES, "within-limits", "2.8")], ..VisitForm::default() };
    case.visit(TODAY, "24000", form).unwrap();
    let line = case.due(TYRES).unwrap();
    assert_eq!((line.state, line.why.seen.unwrap().finding.as_str()), (StateKey::Due, "at-limit"));
}

/// Common practice: iridium plugs 60 000 to 100 000 km.
#[test]
fn the_kind_that_was_fitted_brings_its_interval() {
    let mut case = case();
    let part = PartForm { name: "Spark plug".to_owned(), kind: "iridium".to_owned(), ..PartForm::default() };
    let form = VisitForm { items: vec![item(PLUGS)], parts: vec![part], ..VisitForm::default() };
    case.visit(TODAY, "24000", form).unwrap();
    let line = case.due(PLUGS).unwrap();
    assert_eq!(line.reading.unwrap().count, 124_000);
    assert_eq!(line.why.kind.as_deref(), Some("iridium"));
}

/// A reason names only the reading that was counted from, or it would not add up.
#[test]
fn a_mistyped_reading_of_a_visit_is_no_part_of_the_reason() {
    let mut case = case().with_oil();
    let from = |case: &mut Case| match case.due(OIL).unwrap().why.from {
        Some(CountedFrom::Done { day, reading, .. }) => (day, reading.map(|reading| reading.count)),
        other => panic!("{other:?}"),
    };
    assert_eq!(from(&mut case), ("2025-12-01".to_owned(), Some(18_000)));
    let visit = |reading: &str| VisitForm {
        day: "2026-05-02".to_owned(),
        reading: reading.to_owned(),
        items: vec![item(OIL)],
        ..VisitForm::default()
    };
    let write = |case: &mut Case, reading| {
        let request = Request::RecordVisit { book: case.book.clone(), visit: visit(reading), keep: true };
        case.door.ask(request).unwrap();
    };
    write(&mut case, "230000");
    assert_eq!(from(&mut case), ("2026-05-02".to_owned(), None), "counted from where the car likely was");
    assert!(case.due(OIL).unwrap().reading.unwrap().count < 40_000);
    write(&mut case, "23000");
    assert_eq!(from(&mut case), ("2026-05-02".to_owned(), Some(23_000)), "of two visits the one that counts");
}

#[test]
fn a_car_with_a_chain_has_no_belt_and_its_form_says_so_again() {
    let mut case = case();
    assert!(case.due(TIMING_BELT).is_some(), "nobody said that it has none");
    let Response::Sheet(sheet) = case.door.ask(Request::Sheet { book: case.book.clone() }).unwrap() else {
        panic!()
    };
    assert!(sheet.fitted.iter().any(|line| line.key == "timing-chain" && line.has.is_none()));
    let fitted = BTreeMap::from([("timing-chain".to_owned(), true), ("turbo".to_owned(), false)]);
    let vehicle = VehicleForm { fitted: fitted.clone(), ..sheet.form };
    case.door.ask(Request::ChangeVehicle { book: case.book.clone(), vehicle }).unwrap();
    assert!(case.due(TIMING_BELT).is_none());
    let Response::Sheet(sheet) = case.door.ask(Request::Sheet { book: case.book.clone() }).unwrap() else {
        panic!()
    };
    assert_eq!(sheet.form.fitted, fitted);
}

#[test]
fn visits_hold_everything_due_once_with_what_it_cost_last() {
    let mut case = case().with_oil();
    let ahead = case.visits();
    assert!(!ahead.visits.is_empty());
    let days: Vec<_> = ahead.visits.iter().map(|visit| visit.day.clone()).collect();
    assert!(days.is_sorted() && days[0].as_str() >= TODAY, "{days:?}");
    let oil: Vec<_> = ahead
        .visits
        .iter()
        .filter(|visit| visit.items.iter().any(|line| is(&line.item, OIL) && line.next))
        .collect();
    assert_eq!(oil.len(), 1);
    let cost = oil[0].cost.as_ref().unwrap();
    assert_eq!((cost.number.as_str(), cost.currency.as_str()), ("60.00", "EUR"));
    // Half a year old, the oil is due once within the year, after twelve months: that is certain.
    let spend = ahead.spend.unwrap();
    assert_eq!((spend.low.number.as_str(), spend.high.number.as_str()), ("60.00", "60.00"));
}

/// 190.00 less the oil of 40.00 leaves 150.00 of work, over 60 minutes for the oil and 15 for the air filter: 2.00 a
/// minute. So the oil came to 160.00 and the filter to 30.00; the year before the oil alone was 60.00. Both fall due
/// once within the year, after twelve months on its last day.
#[test]
fn a_bill_for_several_jobs_is_shared_and_said_to_be() {
    let mut case = case();
    let alone = VisitForm { items: vec![item(OIL)], cost: "60".to_owned(), ..VisitForm::default() };
    case.visit("2025-06-01", "12000", alone).unwrap();
    let oil = PartForm {
        name: "Oil".to_owned(),
        price: "40".to_owned(),
        item: Some(item(OIL)),
        ..PartForm::default()
    };
    let together = VisitForm {
        items: vec![item(OIL), item(AIR_FILTER)],
        workshop: "Larch Garage".to_owned(),
        parts: vec![oil],
        cost: "190".to_owned(),
        ..VisitForm::default()
    };
    case.visit(TODAY, "24000", together).unwrap();
    let ahead = case.visits();
    let spend = ahead.spend.unwrap();
    assert_eq!((spend.low.number.as_str(), spend.high.number.as_str()), ("90.00", "190.00"));
    assert_eq!((spend.estimated, spend.no_record), (2, 0));
    let has = |visit: &&door::PlannedVisitView, number| visit.items.iter().any(|line| is(&line.item, number));
    let next = ahead.visits.iter().find(|visit| has(visit, OIL)).unwrap();
    assert!(has(&next, AIR_FILTER));
    assert_eq!((next.cost.as_ref().unwrap().number.as_str(), next.estimated), ("190.00", 2));
}

#[test]
fn moving_an_item_tells_what_it_costs_and_a_chosen_day_holds() {
    let mut case = case().with_oil();
    let moved = case.moved(OIL, "2027-08-01").unwrap();
    assert!(moved.late && moved.percent > 0, "{moved:?}");
    assert!(moved.extra.unwrap().number.parse::<f64>().unwrap() > 0.0);
    case.settle(OIL, PlanForm::Day { day: "2026-09-15".to_owned() }).unwrap();
    let on_the_day = |case: &mut Case| {
        let visits = case.visits().visits;
        let pinned = |visit: &&door::PlannedVisitView| {
            visit.items.iter().any(|line| is(&line.item, OIL) && line.pinned)
        };
        visits.iter().find(pinned).map(|visit| visit.day.clone())
    };
    assert_eq!(on_the_day(&mut case).as_deref(), Some("2026-09-15"));
    case.settle(OIL, PlanForm::AnyDay).unwrap();
    assert_eq!(on_the_day(&mut case), None);
}

#[test]
fn what_papers_say_is_planned_once_the_owner_gave_its_interval() {
    let mut case = case();
    assert!(case.due(INSPECTION).is_none());
    let then = IntervalForm { months: "24".to_owned(), ..IntervalForm::default() };
    case.settle(INSPECTION, PlanForm::Handbook { then, first: None, stakes: None }).unwrap();
    assert_eq!(case.due(INSPECTION).unwrap().day.as_deref(), Some(TODAY));
}

#[test]
fn what_cannot_be_is_refused_and_names_its_field() {
    let mut case = case().with_oil();
    let refused = |answer: Result<Response, Refusal>| {
        let refusal = answer.unwrap_err();
        (refusal.code, refusal.field.unwrap_or_default())
    };
    let pairs = [
        (found(PLUGS, "bored", ""), ("finding", "visit.found.0.finding")),
        (found(PLUGS, "sooty", "3"), ("not-measured", "visit.found.0.value")),
        (found(TYRES, "worn", "thin"), ("measurement", "visit.found.0.value")),
        (found(TYRES, "worn", "-3"), ("measurement-range", "visit.found.0.value")),
        (found(TYRES, "within-limits", "99"), ("measurement-range", "visit.found.0.value")),
        (found(4_000_000, "worn", ""), ("item-unknown", "visit.found.0.item")),
    ];
    for (form, (code, field)) in pairs {
        let form = VisitForm { found: vec![form], ..VisitForm::default() };
        let answer = refused(case.visit(TODAY, "", form));
        assert_eq!((answer.0.as_str(), answer.1.as_str()), (code, field));
    }
    let part = PartForm { name: "Plug".to_owned(), kind: "moonstone".to_owned(), ..PartForm::default() };
    let form = VisitForm { items: vec![item(PLUGS)], parts: vec![part], ..VisitForm::default() };
    assert_eq!(refused(case.visit(TODAY, "", form)).0, "kind");
    let gone_by = PlanForm::Day { day: "2026-05-31".to_owned() };
    assert_eq!(refused(case.settle(OIL, gone_by)), ("day-past".to_owned(), "change.day".to_owned()));
    assert_eq!(case.moved(OIL, "yesterday").unwrap_err().code, "day-form");
    assert_eq!(case.moved(INSPECTION, "2026-09-01").unwrap_err().code, "item-not-planned");
    let vehicle = VehicleForm {
        name: "Thistle".to_owned(),
        engine: "petrol".to_owned(),
        fitted: BTreeMap::from([("wings".to_owned(), true)]),
        ..VehicleForm::default()
    };
    let change = Request::ChangeVehicle { book: case.book.clone(), vehicle };
    assert_eq!(refused(case.door.ask(change)), ("fitting".to_owned(), "vehicle.fitted".to_owned()));
}
