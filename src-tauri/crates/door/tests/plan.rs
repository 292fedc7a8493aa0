//! The plan as its owner changes it, and what of that holds for the next owner.
#![allow(clippy::unwrap_used)]

use std::collections::BTreeMap;
use std::fs::File;

use door::{
    Clock, Door, DueView, HandoverForm, IntervalForm, ItemForm, ItemView, MovedView, PlanForm, PlanLine,
    PlannedVisitView, Refusal, Request, Response, SheetView, ShelfView, StateKey, VehicleForm, WrittenView,
    open_book_file,
};

const OIL: u32 = 1;
const AIR_FILTER: u32 = 2;
const SPARK_PLUGS: u32 = 5;
const GLOW_PLUGS: u32 = 6;
const TIMING_BELT: u32 = 11;
const BRAKE_FLUID: u32 = 10;
const TYRE_PRESSURE: u32 = 57;

/// An owner with his shelf on a day.
struct Owner {
    door: Door,
    folder: tempfile::TempDir,
}

fn owner(today: &str) -> Owner {
    let folder = tempfile::tempdir().unwrap();
    Owner { door: Door::open(folder.path(), Clock::Fixed(today.parse().unwrap())).unwrap(), folder }
}

fn item(number: u32) -> ItemForm {
    ItemForm::Catalogue(number)
}

fn own(name: &str) -> ItemForm {
    ItemForm::Own(name.to_owned())
}

fn months(months: &str, stakes: Option<&str>) -> PlanForm {
    let then = IntervalForm { months: months.to_owned(), ..IntervalForm::default() };
    PlanForm::Handbook { then, first: None, stakes: stakes.map(str::to_owned) }
}

fn on(day: &str) -> PlanForm {
    PlanForm::Day { day: day.to_owned() }
}

fn is(shown: &ItemView, item: &ItemForm) -> bool {
    match (shown, item) {
        (ItemView::Catalogue { number, .. }, ItemForm::Catalogue(wanted)) => number == wanted,
        (ItemView::Own { name }, ItemForm::Own(wanted)) => name == wanted,
        _ => false,
    }
}

impl Owner {
    fn written(&mut self, request: Request) -> Result<WrittenView, Refusal> {
        match self.door.ask(request)? {
            Response::Written(written) => Ok(written),
            other => panic!("{other:?}"),
        }
    }

    /// A petrol car of unknown past with a timing chain, at 24 000 km.
    fn add_car(&mut self) -> String {
        let vehicle = VehicleForm {
            name: "Thistle".to_owned(),
            engine: "petrol".to_owned(),
            reading: "24000".to_owned(),
            yearly: "12000".to_owned(),
            fitted: BTreeMap::from([("timing-chain".to_owned(), true)]),
            ..VehicleForm::default()
        };
        self.written(Request::AddVehicle { vehicle }).unwrap().book
    }

    fn settle(&mut self, book: &str, item: ItemForm, change: PlanForm) -> Result<WrittenView, Refusal> {
        self.written(Request::ChangePlan { book: book.to_owned(), item, change })
    }

    fn has_after_all(&mut self, book: &str, number: u32) -> Result<WrittenView, Refusal> {
        self.written(Request::HasAfterAll { book: book.to_owned(), item: item(number) })
    }

    fn sheet(&mut self, book: &str) -> SheetView {
        match self.door.ask(Request::Sheet { book: book.to_owned() }).unwrap() {
            Response::Sheet(sheet) => sheet,
            other => panic!("{other:?}"),
        }
    }

    fn line(&mut self, book: &str, item: &ItemForm) -> Option<PlanLine> {
        self.sheet(book).plan.into_iter().find(|line| is(&line.item, item))
    }

    /// What the car lacks for an item that is not for it.
    fn lacks(&mut self, book: &str, number: u32) -> Option<Vec<String>> {
        let missing = self.sheet(book).missing.into_iter().find(|line| is(&line.item, &item(number)));
        missing.map(|line| line.lacks)
    }

    fn due(&mut self, book: &str, item: &ItemForm) -> Option<DueView> {
        match self.door.ask(Request::Today { book: book.to_owned() }).unwrap() {
            Response::Today(today) => today.due.into_iter().find(|line| is(&line.item, item)),
            other => panic!("{other:?}"),
        }
    }

    fn moved(&mut self, book: &str, item: ItemForm, day: &str) -> Result<MovedView, Refusal> {
        let request = Request::Moved { book: book.to_owned(), item, day: day.to_owned() };
        match self.door.ask(request)? {
            Response::Moved(moved) => Ok(moved),
            other => panic!("{other:?}"),
        }
    }

    /// The day of the visit at which the owner wants this item done.
    fn pinned(&mut self, book: &str, item: &ItemForm) -> Option<String> {
        let visits = match self.door.ask(Request::Visits { book: book.to_owned() }).unwrap() {
            Response::Visits(ahead) => ahead.visits,
            other => panic!("{other:?}"),
        };
        let has = |visit: &PlannedVisitView| visit.items.iter().any(|one| one.pinned && is(&one.item, item));
        visits.into_iter().find(has).map(|visit| visit.day)
    }

    fn shelf(&mut self) -> ShelfView {
        match self.door.ask(Request::Shelf).unwrap() {
            Response::Shelf(view) => view,
            other => panic!("{other:?}"),
        }
    }

    /// Hands the book to whoever stands there on this day.
    fn hand_over(&mut self, book: &str, today: &str) -> Owner {
        let path = self.folder.path().join("thistle.wellkept");
        let packed = self.door.pack_up(book, &HandoverForm::default()).unwrap().save(&path, "").unwrap();
        self.door.hand_over(packed).unwrap();
        let mut next = owner(today);
        let mut file = open_book_file(File::open(path).unwrap(), "").unwrap();
        next.door.examine(&mut file).unwrap();
        file.keep_papers().unwrap();
        next.door.take_book_in(&file).unwrap();
        next
    }
}

#[test]
fn what_is_not_for_this_car_says_why_and_can_be_there_after_all() {
    let mut owner = owner("2026-06-01");
    let book = owner.add_car();
    assert_eq!(owner.lacks(&book, TIMING_BELT), Some(vec!["timing-belt".to_owned()]));
    assert_eq!(owner.lacks(&book, GLOW_PLUGS), Some(vec![]), "no petrol engine has them");
    assert_eq!(owner.lacks(&book, SPARK_PLUGS), None);
    assert!(
        owner.line(&book, &item(TIMING_BELT)).is_none() && owner.due(&book, &item(TIMING_BELT)).is_none()
    );

    owner.has_after_all(&book, TIMING_BELT).unwrap();
    assert_eq!(owner.lacks(&book, TIMING_BELT), None);
    assert_eq!(owner.due(&book, &item(TIMING_BELT)).unwrap().state, StateKey::NoRecord);
    assert_eq!(owner.sheet(&book).form.fitted, BTreeMap::from([("timing-belt".to_owned(), true)]));

    let refused = |answer: Result<WrittenView, Refusal>| answer.unwrap_err().code;
    assert_eq!(refused(owner.has_after_all(&book, GLOW_PLUGS)), "item-other-engine");
    assert_eq!(refused(owner.has_after_all(&book, SPARK_PLUGS)), "item-not-missing");

    // An interval of its own puts on the plan what no other car with this engine has, and taking it back takes it off.
    owner.settle(&book, item(GLOW_PLUGS), months("48", None)).unwrap();
    assert!(owner.line(&book, &item(GLOW_PLUGS)).is_some() && owner.lacks(&book, GLOW_PLUGS).is_none());
    owner.settle(&book, item(GLOW_PLUGS), PlanForm::Catalogue).unwrap();
    assert_eq!(owner.lacks(&book, GLOW_PLUGS), Some(vec![]));
}

#[test]
fn the_owner_says_how_much_an_item_of_his_own_matters() {
    let mut owner = owner("2026-06-01");
    let book = owner.add_car();
    let shelf = owner.shelf();
    assert_eq!(shelf.stakes, ["comfort", "economy", "repair", "breakdown", "engine", "safety"]);
    let longest = "x".repeat(shelf.longest_own_name);
    let mut weight = |name: &str, stakes| {
        owner.settle(&book, own(name), months("12", stakes)).unwrap();
        (owner.due(&book, &own(name)).unwrap().weight, owner.line(&book, &own(name)).unwrap().stakes)
    };
    assert_eq!(weight("Roof rack, bolts", None), (3, "repair".to_owned()));
    assert_eq!(weight("Roof rack, bolts", Some("safety")), (6, "safety".to_owned()));
    assert_eq!(weight("Roof rack, bolts", None), (6, "safety".to_owned()), "another interval");
    assert_eq!(weight(&longest, Some("comfort")), (1, "comfort".to_owned()));

    let mut refused = |item: ItemForm, stakes| {
        let refusal = owner.settle(&book, item, months("12", Some(stakes))).unwrap_err();
        (refusal.code, refusal.field.unwrap_or_default())
    };
    let pair = |code: &str, field: &str| (code.to_owned(), field.to_owned());
    assert_eq!(refused(own("Roof rack, bolts"), "grave"), pair("stakes", "change.stakes"));
    assert_eq!(refused(item(OIL), "comfort"), pair("stakes", "change.stakes"), "the catalogue says that");
    assert_eq!(refused(own(&format!("{longest}x")), "comfort"), pair("own-item-name", "item"));
}

/// A day can be chosen for exactly what can be asked about: what was never recorded too, but nothing that no visit is
/// made for.
#[test]
fn what_can_be_given_a_day_can_be_asked_about() {
    let mut owner = owner("2026-06-01");
    let book = owner.add_car();
    owner.settle(&book, item(AIR_FILTER), PlanForm::Off).unwrap();
    assert_eq!(owner.due(&book, &item(OIL)).unwrap().state, StateKey::NoRecord);
    for number in [OIL, AIR_FILTER, SPARK_PLUGS, GLOW_PLUGS, TIMING_BELT, TYRE_PRESSURE] {
        let wanted = matches!(number, OIL | SPARK_PLUGS);
        let moved = owner.moved(&book, item(number), "2026-09-15").map(|_| ());
        let settled = owner.settle(&book, item(number), on("2026-09-15")).map(|_| ());
        let code = |answer: Result<(), Refusal>| answer.err().map(|refusal| refusal.code);
        let expected = (!wanted).then(|| "item-not-planned".to_owned());
        assert_eq!((code(moved), code(settled)), (expected.clone(), expected), "{number}");
    }
    assert_eq!(owner.pinned(&book, &item(OIL)).as_deref(), Some("2026-09-15"));
    // Nothing else is planned at the workshop: a visit weighs as much as a usual job, and taking the wheels off half.
    let fluid = owner.moved(&book, item(BRAKE_FLUID), "2026-10-15").unwrap();
    assert_eq!((fluid.percent, fluid.late, fluid.weight), (150, false, 6));
}

#[test]
fn days_and_silences_of_the_last_owner_do_not_hold_for_the_next() {
    let mut first = owner("2026-06-01");
    let book = first.add_car();
    first.settle(&book, item(OIL), months("6", None)).unwrap();
    first.settle(&book, item(OIL), on("2026-09-15")).unwrap();
    first.settle(&book, item(AIR_FILTER), PlanForm::Off).unwrap();
    first.settle(&book, own("Tow ball, grease"), months("6", Some("comfort"))).unwrap();
    first.settle(&book, own("Tow ball, grease"), PlanForm::Off).unwrap();
    assert_eq!(first.pinned(&book, &item(OIL)).as_deref(), Some("2026-09-15"));
    assert!(first.line(&book, &item(AIR_FILTER)).unwrap().left_off.is_none(), "it is his own doing");
    let by_first = first.shelf().fingerprint;

    let mut second = first.hand_over(&book, "2026-06-10");
    assert_eq!(second.pinned(&book, &item(OIL)), None);
    let oil = second.line(&book, &item(OIL)).unwrap();
    assert_eq!((oil.pinned, oil.interval.unwrap().months.as_deref()), (None, Some("6")), "a fact of the car");
    for item in [item(AIR_FILTER), own("Tow ball, grease")] {
        let line = second.line(&book, &item).unwrap();
        let left_off = line.left_off.unwrap();
        let told = (left_off.day.as_str(), left_off.by.as_str(), left_off.handed_over.as_str());
        assert_eq!((line.off, told), (false, ("2026-06-01", by_first.as_str(), "2026-06-01")));
        assert!(second.due(&book, &item).is_some());
    }

    // What the new owner settles holds, and ends what he is told.
    second.settle(&book, item(OIL), on("2026-10-01")).unwrap();
    second.settle(&book, item(AIR_FILTER), PlanForm::Off).unwrap();
    second.settle(&book, own("Tow ball, grease"), months("6", None)).unwrap();
    assert_eq!(second.pinned(&book, &item(OIL)).as_deref(), Some("2026-10-01"));
    let filter = second.line(&book, &item(AIR_FILTER)).unwrap();
    assert!(filter.off && filter.left_off.is_none());
    assert!(second.line(&book, &own("Tow ball, grease")).unwrap().left_off.is_none());

    // A third owner is told what the second did, and a rebuild of the pages changes nothing of it.
    let by_second = second.shelf().fingerprint;
    let mut third = second.hand_over(&book, "2026-07-01");
    third.door.ask(Request::Rebuild).unwrap();
    assert_eq!(third.pinned(&book, &item(OIL)), None);
    let left_off = third.line(&book, &item(AIR_FILTER)).unwrap().left_off.unwrap();
    assert_eq!((left_off.by, left_off.day.as_str()), (by_second, "2026-06-10"));
}

#[test]
fn a_sale_that_fell_through_leaves_the_plan_as_it_was() {
    let mut owner = owner("2026-06-01");
    let book = owner.add_car();
    owner.settle(&book, item(OIL), on("2026-09-15")).unwrap();
    owner.settle(&book, item(AIR_FILTER), PlanForm::Off).unwrap();
    owner.hand_over(&book, "2026-06-10");
    let handover = match owner.door.ask(Request::Handover { book: book.clone() }).unwrap() {
        Response::Handover(view) => view.handed_over.unwrap().subject,
        other => panic!("{other:?}"),
    };
    owner.written(Request::StrikeOut { book: book.clone(), subject: handover, why: String::new() }).unwrap();
    assert_eq!(owner.pinned(&book, &item(OIL)).as_deref(), Some("2026-09-15"));
    assert!(owner.line(&book, &item(AIR_FILTER)).unwrap().off);
}
