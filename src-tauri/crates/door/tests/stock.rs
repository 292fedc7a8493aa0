//! What was bought and waits at home, what is therefore left to buy, and what is noted of parts.
#![allow(clippy::unwrap_used)]

use door::{
    BoughtForm, Clock, CounterView, Door, ItemForm, LineContent, LineFilter, NumberForm, PartForm,
    PartNoteForm, PlanForm, Request, Response, VehicleForm, VisitForm, WrittenView,
};

const OIL: u32 = 1;

struct Case {
    door: Door,
    book: String,
    _folder: tempfile::TempDir,
}

/// A car whose oil was changed in the summer with five litres and a filter, and is to be changed again next week.
fn case() -> Case {
    let folder = tempfile::tempdir().unwrap();
    let mut door = Door::open(folder.path(), Clock::Fixed("2026-06-01".parse().unwrap())).unwrap();
    let vehicle = VehicleForm {
        name: "Thistle".to_owned(),
        engine: "petrol".to_owned(),
        unit: "km".to_owned(),
        first_use: "2020-06-01".to_owned(),
        ..VehicleForm::default()
    };
    let Response::Written(written) = door.ask(Request::AddVehicle { vehicle }).unwrap() else { panic!() };
    let mut case = Case { door, book: written.book, _folder: folder };
    case.oil("2025-06-08", "41000");
    let day = PlanForm::Day { day: "2026-06-08".to_owned() };
    case.write(Request::ChangePlan { book: case.book.clone(), item: ItemForm::Catalogue(OIL), change: day });
    case
}

fn filter(number: &str, quantity: &str) -> PartForm {
    PartForm {
        name: "Oil filter".to_owned(),
        number: number.to_owned(),
        quantity: quantity.to_owned(),
        ..PartForm::default()
    }
}

fn oil(litres: &str) -> PartForm {
    PartForm {
        name: "Engine oil".to_owned(),
        number: "SO 530".to_owned(),
        quantity: litres.to_owned(),
        measure: "litre".to_owned(),
        ..PartForm::default()
    }
}

impl Case {
    fn write(&mut self, request: Request) -> WrittenView {
        let Response::Written(written) = self.door.ask(request).unwrap() else { panic!() };
        written
    }

    fn oil(&mut self, day: &str, reading: &str) {
        let visit = VisitForm {
            day: day.to_owned(),
            reading: reading.to_owned(),
            items: vec![ItemForm::Catalogue(OIL)],
            parts: vec![filter("OF 12-44", "1"), oil("4.3")],
            ..VisitForm::default()
        };
        self.write(Request::RecordVisit { book: self.book.clone(), visit, keep: false });
    }

    fn buy(&mut self, day: &str, parts: Vec<PartForm>) -> String {
        let bought =
            BoughtForm { day: day.to_owned(), shop: "Fairlead".to_owned(), parts, ..BoughtForm::default() };
        self.write(Request::WriteBought { book: self.book.clone(), bought }).subject
    }

    fn note(&mut self, note: PartNoteForm) -> String {
        self.write(Request::NotePart { book: self.book.clone(), note }).subject
    }

    fn counter(&mut self) -> CounterView {
        let Response::Counter(view) = self.door.ask(Request::Counter { book: self.book.clone() }).unwrap()
        else {
            panic!()
        };
        view
    }

    /// For each thing to get: its number, how much is at home, how much is left to buy.
    fn needs(&mut self) -> Vec<[String; 3]> {
        let need = |get: door::GetView| Some([get.part?.number, get.at_home, get.to_buy]);
        self.counter().get.into_iter().filter_map(need).collect()
    }

    fn stock(&mut self) -> Vec<[String; 3]> {
        let of = |stock: door::StockView| [stock.part.number, stock.part.quantity, stock.shop];
        self.counter().stock.into_iter().map(of).collect()
    }
}

#[test]
fn what_is_at_home_need_not_be_bought_and_fitting_takes_it_out() {
    let mut case = case();
    assert_eq!(case.needs(), [["OF 12-44", "", "1"], ["SO 530", "", "4.3"]]);
    case.buy("2026-05-20", vec![filter("of1244", "2"), oil("4")]);
    assert_eq!(case.stock(), [["of1244", "2", "Fairlead"], ["SO 530", "4", "Fairlead"]]);
    assert_eq!(case.needs(), [["OF 12-44", "2", ""], ["SO 530", "4", "0.3"]]);
    case.oil("2026-05-30", "48000");
    assert_eq!(case.stock(), [["of1244", "1", "Fairlead"]]);
}

#[test]
fn what_is_at_home_follows_a_purchase_that_is_put_right_and_struck_out() {
    let mut case = case();
    let line = case.buy("2026-05-20", vec![filter("OF 12-44", "2"), oil("5")]);
    case.oil("2026-05-30", "48000");
    assert_eq!(case.stock(), [["OF 12-44", "1", "Fairlead"], ["SO 530", "0.7", "Fairlead"]]);
    let right = BoughtForm {
        day: "2026-05-21".to_owned(),
        shop: "Fairlead East".to_owned(),
        parts: vec![filter("OF 12-44", "3")],
        ..BoughtForm::default()
    };
    let amend = |subject: &str, bought: &BoughtForm| Request::AmendBought {
        book: case.book.clone(),
        subject: subject.to_owned(),
        bought: bought.clone(),
        why: "There was no oil on the receipt.".to_owned(),
    };
    let (corrected, again) = (amend(&line, &right), amend(&line, &right));
    assert_eq!(case.write(corrected).subject, line, "the line is the same");
    assert_eq!(case.stock(), [["OF 12-44", "2", "Fairlead East"]], "the fitted one is still taken off");
    let ask = Request::Line { book: case.book.clone(), subject: line.clone() };
    let Response::Line(view) = case.door.ask(ask).unwrap() else { panic!() };
    let told: Vec<_> =
        view.versions.iter().map(|version| (version.day.as_str(), version.why.as_str())).collect();
    assert_eq!(told, [("2026-05-20", ""), ("2026-05-21", "There was no oil on the receipt.")]);
    assert!(matches!(&view.versions[0].says, LineContent::Bought { parts, .. } if parts.len() == 2));
    let strike = Request::StrikeOut { book: case.book.clone(), subject: line, why: "Sent back.".to_owned() };
    case.write(strike);
    assert_eq!(case.stock(), Vec::<[String; 3]>::new());
    assert_eq!(case.door.ask(again).unwrap_err().code, "struck", "what is struck out stays so");
}

#[test]
fn a_purchase_is_put_right_by_a_whole_purchase_and_no_other_line_by_one() {
    let mut case = case();
    let line = case.buy("2026-05-20", vec![filter("OF 12-44", "2")]);
    let amend = |subject: &str, day: &str, parts: Vec<PartForm>| Request::AmendBought {
        book: case.book.clone(),
        subject: subject.to_owned(),
        bought: BoughtForm { day: day.to_owned(), parts, ..BoughtForm::default() },
        why: String::new(),
    };
    let note =
        PartNoteForm { number: "ZZ 9".to_owned(), mark: "wrong".to_owned(), ..PartNoteForm::default() };
    let nothing = amend(&line, "2026-05-20", Vec::new());
    let tomorrow = amend(&line, "2026-06-02", vec![filter("OF 12-44", "1")]);
    let marked = amend(&line, "2026-05-20", vec![filter("zz9", "1")]);
    let mut refused = |request| {
        let refusal = case.door.ask(request).unwrap_err();
        (refusal.code, refusal.field.unwrap_or_default())
    };
    assert_eq!(refused(nothing), ("parts-missing".to_owned(), "bought.parts".to_owned()));
    assert_eq!(refused(tomorrow).1, "bought.day");
    let noted = case.note(note);
    assert_eq!(case.write(marked).warnings, ["part-wrong"]);
    let other = Request::AmendBought {
        book: case.book.clone(),
        subject: noted,
        bought: BoughtForm {
            day: "2026-05-20".to_owned(),
            parts: vec![filter("OF 12-44", "1")],
            ..BoughtForm::default()
        },
        why: String::new(),
    };
    assert_eq!(case.door.ask(other).unwrap_err().code, "other-kind");
}

#[test]
fn a_note_names_the_same_part_and_warns_until_it_is_taken_back() {
    let mut case = case();
    let same = vec![NumberForm { maker: "Quillan".to_owned(), number: "QF-88".to_owned() }];
    let words = "Drops onto the beam unless it is held.";
    let note = PartNoteForm {
        number: "OF 1244".to_owned(),
        same,
        note: words.to_owned(),
        ..PartNoteForm::default()
    };
    let first = case.note(note.clone());
    case.buy("2026-05-20", vec![filter("QF 88", "1")]);
    assert_eq!(case.needs()[0], ["OF 12-44", "1", ""]);
    let superseded =
        PartNoteForm { mark: "superseded".to_owned(), instead: "OF 12-45".to_owned(), ..note.clone() };
    assert_eq!(case.note(superseded), first, "it amends the note on the same number");
    let get = case.counter().get.remove(0);
    let warning = get.warning.unwrap();
    assert_eq!((warning.mark.as_str(), warning.instead.as_str()), ("superseded", "OF 12-45"));
    assert_eq!(get.same.iter().map(|same| same.number.as_str()).collect::<Vec<_>>(), ["QF-88"]);
    case.note(note);
    assert!(case.counter().get.remove(0).warning.is_none());
    let Response::Parts(view) =
        case.door.ask(Request::Parts { book: case.book.clone(), item: None }).unwrap()
    else {
        panic!()
    };
    let part = view.parts.into_iter().find(|part| part.numbers.contains(&"OF 12-44".to_owned())).unwrap();
    assert_eq!(part.note, words, "the next note starts with the words of this one");
}

#[test]
fn purchases_and_notes_stand_in_the_book_and_are_found_by_their_words() {
    let mut case = case();
    let line = case.buy("2026-05-20", vec![filter("OF 12-44", "2")]);
    case.note(PartNoteForm {
        number: "ZZ 9".to_owned(),
        mark: "wrong".to_owned(),
        ..PartNoteForm::default()
    });
    let mut found = |text: &str| {
        let filter = LineFilter { text: Some(text.to_owned()), ..LineFilter::default() };
        let Response::Lines(view) =
            case.door.ask(Request::Lines { book: case.book.clone(), filter }).unwrap()
        else {
            panic!()
        };
        view.lines
    };
    let [bought] = found("fairlead").try_into().unwrap();
    assert_eq!(bought.subject, line);
    assert!(matches!(bought.says, LineContent::Bought { ref parts, .. } if parts[0].quantity == "2"));
    let [noted] = found("zz 9").try_into().unwrap();
    assert!(matches!(noted.says, LineContent::PartNote { ref note } if note.mark == "wrong"));
}

#[test]
fn the_oil_is_bought_by_the_volume_of_this_cars_sheet() {
    let mut case = case();
    let mut vehicle = VehicleForm {
        name: "Thistle".to_owned(),
        engine: "petrol".to_owned(),
        unit: "km".to_owned(),
        first_use: "2020-06-01".to_owned(),
        ..VehicleForm::default()
    };
    for (typed, needed) in [("4,6 l", "4.6"), ("about 5", "4.3"), ("", "4.3")] {
        vehicle.values = [("oil-volume".to_owned(), typed.to_owned())].into();
        case.write(Request::ChangeVehicle { book: case.book.clone(), vehicle: vehicle.clone() });
        let oil = case.counter().get.into_iter().find(|get| get.measure == "litre").unwrap();
        assert_eq!((oil.to_buy.as_str(), oil.part.unwrap().quantity.as_str()), (needed, needed), "{typed}");
    }
}

#[test]
fn what_the_guide_names_beside_the_parts_is_on_the_list_without_a_number() {
    let mut case = case();
    let supplies = |case: &mut Case| -> Vec<String> {
        let get = case.counter().get;
        assert!(get.iter().all(|get| get.part.is_none() || get.supply.is_empty()));
        get.into_iter().map(|get| get.supply).filter(|supply| !supply.is_empty()).collect()
    };
    assert_eq!(
        supplies(&mut case),
        ["drain-washer"],
        "no rags, and no filter that the book has a number for"
    );
    let washer = PartForm { name: "Drain plug washer".to_owned(), ..filter("WS 1", "1") };
    let visit = VisitForm {
        day: "2025-06-09".to_owned(),
        items: vec![ItemForm::Catalogue(OIL)],
        parts: vec![filter("OF 12-44", "1"), oil("4.3"), washer],
        ..VisitForm::default()
    };
    case.write(Request::RecordVisit { book: case.book.clone(), visit, keep: false });
    assert_eq!(supplies(&mut case), Vec::<String>::new(), "a part of that name has a row of its own");
}

#[test]
fn the_last_price_is_the_shops_where_that_was_later() {
    let mut case = case();
    let priced = PartForm { price: "17.80".to_owned(), ..filter("of1244", "2") };
    let bought = BoughtForm {
        day: "2026-05-20".to_owned(),
        shop: "Fairlead".to_owned(),
        parts: vec![priced],
        currency: "EUR".to_owned(),
        ..BoughtForm::default()
    };
    case.write(Request::WriteBought { book: case.book.clone(), bought });
    let paid = case.counter().get.remove(0).paid.unwrap();
    let told =
        (paid.price.number.as_str(), paid.workshop.as_str(), paid.day.as_str(), paid.quantity.as_str());
    assert_eq!(told, ("17.80", "Fairlead", "2026-05-20", "2"));
}

#[test]
fn buying_and_fitting_a_marked_number_warns_and_what_is_marked_at_home_meets_no_need() {
    let mut case = case();
    case.buy("2026-05-20", vec![filter("of1244", "1")]);
    assert_eq!(case.needs()[0], ["OF 12-44", "1", ""]);
    let mark = PartNoteForm {
        number: "OF 12-44".to_owned(),
        mark: "wrong".to_owned(),
        instead: "OF 12-45".to_owned(),
        ..PartNoteForm::default()
    };
    case.note(mark);
    assert_eq!(case.needs()[0], ["OF 12-44", "", "1"]);
    let at_home = case.counter().stock.remove(0);
    assert_eq!(at_home.warning.map(|warning| warning.mark).as_deref(), Some("wrong"));
    let bought = |number: &str| BoughtForm {
        day: "2026-05-21".to_owned(),
        parts: vec![filter(number, "1")],
        ..BoughtForm::default()
    };
    let write = |bought| Request::WriteBought { book: case.book.clone(), bought };
    let (again, instead) = (write(bought("OF1244")), write(bought("OF 12-45")));
    assert_eq!(case.write(again).warnings, ["part-wrong"]);
    assert_eq!(case.write(instead).warnings, Vec::<String>::new());
    assert_eq!(case.needs()[0], ["OF 12-44", "1", ""], "the number in its place meets the need");
    let visit = VisitForm {
        day: "2026-05-30".to_owned(),
        items: vec![ItemForm::Catalogue(OIL)],
        parts: vec![filter("OF 12-44", "1")],
        ..VisitForm::default()
    };
    let record = Request::RecordVisit { book: case.book.clone(), visit, keep: false };
    assert_eq!(case.write(record).warnings, ["part-wrong"]);
}
