//! What a car uses and costs, through the door, beside numbers that were worked by hand.
#![allow(clippy::unwrap_used)]

use door::{
    BoughtForm, Clock, ConsumptionView, CostsView, Day, Door, FuelForm, ItemForm, MeasuredForm,
    MeasuredValueForm, MeasurementsView, PartForm, ReadingForm, Request, Response, ScanForm, TroubleForm,
    VehicleForm, VerdictView, VisitForm,
};

const TODAY: &str = "2025-06-01";

struct Case {
    door: Door,
    book: String,
    _folder: tempfile::TempDir,
}

fn case() -> Case {
    let folder = tempfile::tempdir().unwrap();
    let mut door = Door::open(folder.path(), Clock::Fixed(TODAY.parse().unwrap())).unwrap();
    let vehicle = VehicleForm {
        name: "Thistle".to_owned(),
        engine: "petrol".to_owned(),
        unit: "km".to_owned(),
        ..VehicleForm::default()
    };
    let Response::Written(written) = door.ask(Request::AddVehicle { vehicle }).unwrap() else { panic!() };
    Case { door, book: written.book, _folder: folder }
}

impl Case {
    fn write(&mut self, request: Request) -> String {
        let Response::Written(written) = self.door.ask(request).unwrap() else { panic!() };
        written.subject
    }

    fn fill(&mut self, day: &str, reading: &str, amount: &str, fill: &str, total: &str) -> String {
        let fuel = FuelForm {
            amount: amount.to_owned(),
            fill: fill.to_owned(),
            total: total.to_owned(),
            currency: "EUR".to_owned(),
            ..FuelForm::default()
        };
        let reading = ReadingForm {
            day: day.to_owned(),
            reading: reading.to_owned(),
            fuel: Some(fuel),
            ..ReadingForm::default()
        };
        self.write(Request::TakeReading { book: self.book.clone(), reading, keep: true.into() })
    }

    /// Six fills: 36 L on 500 km, 10 and 32 L on 600 km, one after a fill that nobody wrote down, 35.5 L on 500 km.
    fn filled(mut self) -> Case {
        self.fill("2025-01-05", "10000", "40", "full", "60");
        self.fill("2025-01-19", "10500", "36", "full", "54");
        self.fill("2025-02-02", "10800", "10", "part", "15.50");
        self.fill("2025-02-16", "11100", "32", "full", "50");
        self.fill("2025-03-02", "11700", "45", "missed", "70");
        self.fill("2025-03-16", "12200", "35.5", "full", "");
        self
    }

    fn visit(&mut self, day: &str, form: VisitForm) -> String {
        let visit = VisitForm { day: day.to_owned(), currency: "EUR".to_owned(), ..form };
        self.write(Request::RecordVisit { book: self.book.clone(), visit, keep: false })
    }

    fn fuel(&mut self, unit: Option<&str>) -> ConsumptionView {
        let request = Request::Fuel { book: self.book.clone(), unit: unit.map(str::to_owned) };
        let Response::Fuel(view) = self.door.ask(request).unwrap() else { panic!() };
        *view
    }

    fn costs(&mut self) -> CostsView {
        let Response::Costs(view) = self.door.ask(Request::Costs { book: self.book.clone() }).unwrap() else {
            panic!()
        };
        view
    }
}

/// 36/5 = 7.2, 42/6 = 7.0 and 35.5/5 = 7.1 L/100 km; together 113.5 L on 1 600 km, which is 7.09.
#[test]
fn the_figures_are_those_worked_by_hand() {
    let mut case = case().filled();
    let kind = case.fuel(None).kinds.remove(0);
    assert_eq!((kind.kind.as_str(), kind.unit.as_str()), ("petrol", "litres-per-100-km"));
    let spans: Vec<_> =
        kind.spans.iter().map(|span| (span.to.as_str(), span.used.hundredths, span.fills)).collect();
    assert_eq!(spans, [("2025-01-19", 720, 1), ("2025-02-16", 700, 2), ("2025-03-16", 710, 1)]);
    assert_eq!((kind.spans[1].distance.count, kind.spans[1].reading.count), (600, 11_100));
    assert_eq!(kind.spans[1].amount.number, "42.000");
    let figures = kind.figures.unwrap();
    assert_eq!((figures.overall.number.as_str(), figures.overall.hundredths), ("7.1", 709));
    assert_eq!((figures.last.used.hundredths, figures.last.to.as_str()), (710, "2025-03-16"));
    assert_eq!((figures.least.used.hundredths, figures.most.used.hundredths), (700, 720));
    assert_eq!(
        kind.years.iter().map(|year| (year.year, year.used.hundredths)).collect::<Vec<_>>(),
        [(2025, 709)]
    );
    assert_eq!(kind.unused.len(), 1);
    assert_eq!((kind.unused[0].why.as_str(), kind.unused[0].distance.count), ("missed", 600));
    assert!(!kind.watch.learnt && kind.watch.standing.is_none());
}

/// NIST SP 811: a mile is 1.609344 km and a US gallon 3.785411784 L, so that 7.2 L/100 km are 235.2146/7.2 mpg.
#[test]
fn another_unit_can_be_asked_for() {
    let mut case = case().filled();
    let kind = case.fuel(Some("miles-per-us-gallon")).kinds.remove(0);
    assert_eq!((kind.unit.as_str(), kind.more_is_better), ("miles-per-us-gallon", true));
    assert_eq!((kind.spans[0].used.number.as_str(), kind.spans[0].used.hundredths), ("32.7", 3_267));
    assert!(kind.units.contains(&"km-per-litre".to_owned()) && kind.units.len() == 4);
    let electric = case.fuel(Some("kwh-per-100-km")).kinds.remove(0);
    assert_eq!(electric.unit, "litres-per-100-km", "what does not fit is passed over");
}

/// Forty litres on every 500 km for a year, then forty-eight.
#[test]
fn a_rise_of_consumption_is_told_at_the_pump_and_on_today() {
    let mut case = case();
    let first: Day = "2024-01-07".parse().unwrap();
    for week in 0..70_usize {
        let amount = if week < 58 { ["39.6", "40.1", "40.4"][week % 3] } else { "48" };
        let day = first.plus_days(7 * i32::try_from(week).unwrap()).to_string();
        case.fill(&day, &(10_000 + 500 * week).to_string(), amount, "full", "");
    }
    let standing = case.fuel(None).kinds[0].watch.standing.clone().unwrap().alarm;
    let Response::Pump(pump) = case.door.ask(Request::Pump { book: case.book.clone() }).unwrap() else {
        panic!()
    };
    let Response::Today(today) = case.door.ask(Request::Today { book: case.book.clone() }).unwrap() else {
        panic!()
    };
    assert_eq!((&pump.watch, &today.watch), (&Some(standing.clone()), &Some(standing)));
}

#[test]
fn a_fill_that_is_struck_out_counts_no_more() {
    let mut case = case().filled();
    let wrong = case.fill("2025-03-30", "12300", "60", "full", "");
    assert_eq!(case.fuel(None).kinds[0].spans.len(), 4);
    case.write(Request::StrikeOut { book: case.book.clone(), subject: wrong, why: String::new() });
    assert_eq!(case.fuel(None).kinds[0].spans.len(), 3);
}

#[test]
fn a_mistyped_reading_leaves_the_mean_as_it_is() {
    let mut case = case();
    for (week, day) in
        ["2025-01-05", "2025-01-12", "2025-01-19", "2025-01-26", "2025-02-02"].iter().enumerate()
    {
        let reading = if week == 2 { 91_000 } else { 10_000 + 500 * week };
        case.fill(day, &reading.to_string(), "35", "full", "");
    }
    let kind = case.fuel(None).kinds.remove(0);
    let told: Vec<_> = kind.spans.iter().map(|span| (span.used.hundredths, span.fills)).collect();
    assert_eq!(told, [(700, 1), (700, 2), (700, 1)], "its fill belongs to the next full tank");
    assert!(
        case.fuel(None).odometer.points.iter().any(|point| point.doubtful && point.shown.count == 91_000)
    );
}

/// A filter of 12 EUR is bought twice, and one of them is fitted by the owner with a washer of 3 EUR: 24 and 3 are paid,
/// and not 39. A workshop takes 120, of which 40 are its part.
#[test]
fn each_piece_of_money_counts_once() {
    let mut case = case().filled();
    let part = |name: &str, quantity: &str, price: &str| PartForm {
        name: name.to_owned(),
        number: format!("N {name}"),
        quantity: quantity.to_owned(),
        price: price.to_owned(),
        ..PartForm::default()
    };
    let bought = BoughtForm {
        day: "2025-03-01".to_owned(),
        parts: vec![part("filter", "2", "24")],
        currency: "EUR".to_owned(),
        ..BoughtForm::default()
    };
    case.write(Request::WriteBought { book: case.book.clone(), bought });
    let own = VisitForm {
        items: vec![ItemForm::Catalogue(1)],
        parts: vec![part("filter", "1", "12"), part("washer", "1", "3")],
        cost: "15".to_owned(),
        ..VisitForm::default()
    };
    case.visit("2025-04-01", own);
    let workshop = VisitForm {
        workshop: "Garage Plover".to_owned(),
        items: vec![ItemForm::Catalogue(27)],
        parts: vec![part("filter", "1", "40")],
        cost: "120".to_owned(),
        ..VisitForm::default()
    };
    case.visit("2025-04-02", workshop);
    let tax =
        VisitForm { items: vec![ItemForm::Catalogue(69)], cost: "100".to_owned(), ..VisitForm::default() };
    case.visit("2025-05-02", tax);
    let costs = case.costs();
    let bill = &costs.years[0];
    let told: Vec<_> = bill.parts.iter().map(|part| (part.class.as_str(), part.minor)).collect();
    assert_eq!(told, [("fuel", 24_950), ("parts", 6_700), ("work", 8_000), ("duties", 10_000)]);
    assert_eq!((bill.total.number.as_str(), bill.period.as_str(), bill.over), ("496.50", "2025", false));
    let months: Vec<_> =
        costs.months.iter().map(|bill| (bill.period.as_str(), bill.total.number.as_str())).collect();
    let wanted = [
        ("2025-01", "114.00"),
        ("2025-02", "65.50"),
        ("2025-03", "94.00"),
        ("2025-04", "123.00"),
        ("2025-05", "100.00"),
    ];
    assert_eq!(months, wanted);
    assert_eq!((costs.unpriced_fills, costs.unpriced_visits), (1, 0));
}

/// From 5 January to 16 March the car goes 2 200 km for 249.50 EUR of fuel; the last fill drives what comes after.
#[test]
fn a_kilometre_costs_what_was_paid_in_the_very_same_days() {
    let mut case = case().filled();
    let costs = case.costs();
    let told: Vec<_> = costs
        .distance
        .iter()
        .map(|each| {
            (
                each.period.as_str(),
                each.from.as_str(),
                each.to.as_str(),
                each.distance.count,
                each.total.as_str(),
            )
        })
        .collect();
    assert_eq!(told, [("all", "2025-01-05", "2025-03-16", 2_200, "0.113")]);
}

#[test]
fn measured_values_are_kept_judged_and_pasted() {
    let mut case = case();
    let text = "LTFT B1 -11,7 %\nRPM 812\nBattery 12.48 V".to_owned();
    let Response::MeasuredRead(read) = case.door.ask(Request::ReadMeasured { text }).unwrap() else {
        panic!()
    };
    assert_eq!(read.unread, ["RPM 812"]);
    let typed = MeasuredValueForm { parameter: "coolant".to_owned(), value: "90,5".to_owned() };
    let values = read.values.into_iter().chain([typed]).collect();
    let measured = MeasuredForm { values, pasted: true, ..MeasuredForm::default() };
    case.write(Request::WriteMeasured { book: case.book.clone(), measured });
    let view = measured_view(&mut case);
    let told: Vec<_> = view
        .parameters
        .iter()
        .flat_map(|parameter| &parameter.points)
        .map(|point| (point.value.as_str(), point.milli, point.judgement.as_str(), point.day.as_str()))
        .collect();
    assert_eq!(
        told,
        [
            ("-11.7", -11_700, "low", TODAY),
            ("90.5", 90_500, "usual", TODAY),
            ("12.48", 12_480, "usual", TODAY)
        ]
    );
    assert_eq!(view.parameters.len(), 7, "what was never measured can be asked for");
    assert_eq!(view.parameters[1].limits.source, "common practice");
}

fn measured_view(case: &mut Case) -> MeasurementsView {
    let Response::Measured(view) = case.door.ask(Request::Measured { book: case.book.clone() }).unwrap()
    else {
        panic!()
    };
    view
}

#[test]
fn codes_that_were_cleared_are_asked_about_as_work_is() {
    let mut case = case().filled();
    let cleared = |day: &str, text: &str| ScanForm {
        day: day.to_owned(),
        text: text.to_owned(),
        cleared: true,
        ..ScanForm::default()
    };
    let trouble = TroubleForm {
        day: "2025-01-19".to_owned(),
        scans: vec![cleared("2025-01-19", "P0171 P0300"), cleared("2025-02-16", "")],
        ..TroubleForm::default()
    };
    let subject = case.write(Request::WriteTrouble { book: case.book.clone(), trouble, keep: false });
    let helped = case.fuel(None).kinds[0].helped.clone();
    let told: Vec<_> = helped
        .iter()
        .map(|one| (one.day.as_str(), one.cleared.clone().unwrap(), one.before, one.after, one.others_near))
        .collect();
    let codes = vec!["P0171".to_owned(), "P0300".to_owned()];
    assert_eq!(told, [("2025-02-16", vec![], 2, 1, 1), ("2025-01-19", codes, 1, 2, 1)]);
    assert!(helped.iter().all(|one| one.subject == subject && one.items.is_empty()), "{helped:?}");
}

/// The household: a brake of the estate dragged for most of a year and was freed, and the petrol car's trim creeps up.
#[test]
fn the_demo_has_a_fault_that_was_found_and_work_that_helped() {
    let folder = tempfile::tempdir().unwrap();
    let mut door = Door::open(folder.path(), Clock::Fixed("2026-11-25".parse().unwrap())).unwrap();
    door.ask(Request::Demo).unwrap();
    let Response::Shelf(shelf) = door.ask(Request::Shelf).unwrap() else { panic!() };
    let [pip, barge] = ["Pip", "The Barge"]
        .map(|name| shelf.vehicles.iter().find(|vehicle| vehicle.name == name).unwrap().book.clone());
    let Response::Fuel(view) = door.ask(Request::Fuel { book: barge, unit: None }).unwrap() else { panic!() };
    let kind = &view.kinds[0];
    assert_eq!(kind.unit, "miles-per-imperial-gallon");
    let freed = |helped: &&door::HelpedView| matches!(&helped.items[..], [door::ItemView::Own { name }] if name.contains("calliper"));
    let helped = kind.helped.iter().find(freed).unwrap();
    assert!(matches!(helped.verdict, VerdictView::Better { .. }), "{helped:?}");
    // The oil was changed nine days later, and no tank tells the two apart.
    assert!(helped.others_near >= 1, "{helped:?}");
    assert!(kind.watch.learnt && kind.watch.alarms.len() >= 2, "{:?}", kind.watch);
    assert!(kind.watch.standing.is_none(), "it has been mended: {:?}", kind.watch);
    let Response::Measured(view) = door.ask(Request::Measured { book: pip }).unwrap() else { panic!() };
    assert!(view.parameters[1].drift.is_some());
    assert!(view.parameters[0].drift.is_none());
}
