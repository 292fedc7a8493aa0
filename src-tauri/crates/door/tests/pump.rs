//! At the pump: any two numbers give the third, three that disagree are asked about once, and what was typed is shown
//! again.
#![allow(clippy::unwrap_used)]

use door::{
    Clock, Door, FuelForm, FuelView, Keep, LineContent, PumpView, ReadingForm, Refusal, Request, Response,
    VehicleForm,
};

const TODAY: &str = "2026-06-01";

struct Case {
    door: Door,
    book: String,
    _folder: tempfile::TempDir,
}

fn case(engine: &str, unit: &str) -> Case {
    let folder = tempfile::tempdir().unwrap();
    let mut door = Door::open(folder.path(), Clock::Fixed(TODAY.parse().unwrap())).unwrap();
    let vehicle = VehicleForm {
        name: "Thistle".to_owned(),
        engine: engine.to_owned(),
        unit: unit.to_owned(),
        ..VehicleForm::default()
    };
    let Response::Written(written) = door.ask(Request::AddVehicle { vehicle }).unwrap() else { panic!() };
    Case { door, book: written.book, _folder: folder }
}

/// Amount, price and total, in euros.
fn fuel(amount: &str, price: &str, total: &str) -> FuelForm {
    FuelForm {
        amount: amount.to_owned(),
        price: price.to_owned(),
        total: total.to_owned(),
        currency: "EUR".to_owned(),
        ..FuelForm::default()
    }
}

impl Case {
    fn take(
        &mut self,
        day: &str,
        reading: &str,
        fuel: FuelForm,
        keep: impl Into<Keep>,
    ) -> Result<String, Refusal> {
        let reading = ReadingForm {
            day: day.to_owned(),
            reading: reading.to_owned(),
            fuel: Some(fuel),
            ..ReadingForm::default()
        };
        match self.door.ask(Request::TakeReading { book: self.book.clone(), reading, keep: keep.into() })? {
            Response::Written(written) => Ok(written.subject),
            other => panic!("{other:?}"),
        }
    }

    /// Takes fuel today and says how it stands in the book.
    fn written(&mut self, reading: &str, fuel: FuelForm) -> FuelView {
        let subject = self.take("", reading, fuel, false).unwrap();
        self.line(&subject)
    }

    fn line(&mut self, subject: &str) -> FuelView {
        let request = Request::Line { book: self.book.clone(), subject: subject.to_owned() };
        let Response::Line(view) = self.door.ask(request).unwrap() else { panic!() };
        let LineContent::Reading { fuel: Some(fuel), .. } = view.line.says else { panic!() };
        fuel
    }

    fn pump(&mut self) -> PumpView {
        let Response::Pump(view) = self.door.ask(Request::Pump { book: self.book.clone() }).unwrap() else {
            panic!()
        };
        view
    }
}

/// The number and the currency of a price or a sum, or nothing.
fn money(view: Option<&door::MoneyView>) -> String {
    view.map(|money| format!("{} {}", money.number, money.currency)).unwrap_or_default()
}

/// 41.30 L at 1.689 EUR are 69.7557 EUR, which the pump shows as 69.76.
#[test]
fn any_two_of_amount_price_and_total_give_the_third() {
    let mut case = case("petrol", "km");
    let total = case.written("50000", fuel("41.30", "1.689", ""));
    assert_eq!(money(total.total.as_ref()), "69.76 EUR");
    let amount = case.written("50000", fuel("", "1.689", "69.76"));
    assert_eq!((amount.amount.as_str(), amount.unit.as_str()), ("41.300", "litre"));
    let price = case.written("50000", fuel("41.30", "", "69.76"));
    assert_eq!((price.price, money(price.price_follows.as_ref())), (None, "1.689 EUR".to_owned()));
    let alone = case.written("50000", FuelForm { currency: String::new(), ..fuel("41.30", "", "") });
    assert_eq!((alone.total, alone.price_follows), (None, None));
    for lacking in [fuel("", "1.689", ""), fuel("", "", "69.76"), fuel("", "", "")] {
        let refusal = case.take("", "50000", lacking, false).unwrap_err();
        assert_eq!(
            (refusal.code.as_str(), refusal.field.as_deref()),
            ("fuel-two-needed", Some("reading.fuel.amount"))
        );
    }
}

#[test]
fn three_that_disagree_are_asked_about_once_and_can_be_kept() {
    let mut case = case("petrol", "km");
    case.written("50000", fuel("41.30", "1.689", "69.75"));
    let mistyped = fuel("41.30", "1.689", "96.76");
    let refusal = case.take("", "50000", mistyped.clone(), false).unwrap_err();
    assert_eq!((refusal.code.as_str(), refusal.can_keep), ("fuel-disagrees", true));
    assert_eq!(refusal.field.as_deref(), Some("reading.fuel.total"));
    let named = ["amount", "unit", "price", "total", "worked-out"].map(|name| refusal.values[name].as_str());
    assert_eq!(named, ["41.30", "litre", "1.689 EUR", "96.76 EUR", "69.76 EUR"]);
    let kept = case.take("", "50000", mistyped, true).unwrap();
    let kept = case.line(&kept);
    assert_eq!(money(kept.price.as_ref()), "1.689 EUR");
    assert_eq!(money(kept.total.as_ref()), "96.76 EUR");
}

#[test]
fn each_question_is_asked_though_another_has_been_answered() {
    let mut case = case("petrol", "km");
    case.written("50000", fuel("41.30", "1.689", "69.76"));
    let mistyped = fuel("41.30", "1.689", "96.76");
    let answered = |codes: &[&str]| Keep::Asked(codes.iter().map(|&code| code.to_owned()).collect());
    let first = case.take("", "49000", mistyped.clone(), false).unwrap_err();
    assert_eq!((first.code.as_str(), first.can_keep), ("fuel-disagrees", true));
    let second = case.take("", "49000", mistyped.clone(), answered(&["fuel-disagrees"])).unwrap_err();
    assert_eq!((second.code.as_str(), second.can_keep), ("reading-lower", true));
    let other = case.take("", "49000", mistyped.clone(), answered(&["reading-lower"])).unwrap_err();
    assert_eq!(other.code, "fuel-disagrees");
    case.take("", "49000", mistyped, answered(&["fuel-disagrees", "reading-lower"])).unwrap();
}

#[test]
fn what_was_typed_is_shown_again_in_its_unit() {
    let mut case = case("diesel", "mi");
    let typed = FuelForm {
        unit: "imperial-gallon".to_owned(),
        currency: "GBP".to_owned(),
        kind: "diesel".to_owned(),
        fill: "part".to_owned(),
        ..fuel("9.87", "7.0009", "")
    };
    let shown = case.written("50000", typed);
    let told = [&shown.kind, &shown.amount, &shown.unit, &shown.fill].map(String::as_str);
    assert_eq!(told, ["diesel", "9.870", "imperial-gallon", "part"]);
    assert_eq!(money(shown.price.as_ref()), "7.0009 GBP");
    assert_eq!(money(shown.total.as_ref()), "69.10 GBP");
}

#[test]
fn kind_unit_currency_and_price_are_remembered_for_each_kind() {
    let mut case = case("petrol-hybrid", "km");
    let fresh = case.pump();
    let kinds: Vec<_> = fresh.fuels.iter().map(|offer| offer.kind.as_str()).collect();
    assert_eq!(kinds, ["petrol", "electric", "gas"], "the own fuel first");
    assert_eq!((fresh.fuels[0].unit.as_str(), fresh.fuels[0].currency.as_str()), ("litre", ""));
    let petrol = FuelForm { unit: "us-gallon".to_owned(), ..fuel("10.5", "3.199", "") };
    case.take("2026-05-01", "50000", FuelForm { currency: "USD".to_owned(), ..petrol }, false).unwrap();
    let charge = FuelForm { kind: "electric".to_owned(), ..fuel("8.4", "", "2.62") };
    case.take("2026-05-02", "50040", charge, false).unwrap();
    let offers = case.pump().fuels;
    let told: Vec<_> = offers
        .iter()
        .map(|offer| [&offer.kind, &offer.unit, &offer.currency, &offer.price].map(String::as_str))
        .collect();
    assert_eq!(
        told,
        [
            ["electric", "kilowatt-hour", "EUR", "0.312"],
            ["petrol", "us-gallon", "USD", "3.199"],
            ["gas", "litre", "EUR", ""],
        ],
        "what was used last, and for what was never taken the currency used last"
    );
    assert_eq!(offers[1].amounts[0].number, "10.500");
}

/// Full at 100 000 km; 18 kWh for the next 100 km and 17 for the 100 after that.
#[test]
fn an_electric_car_is_counted_in_kilowatt_hours() {
    let mut case = case("electric", "km");
    let charge = |amount: &str| FuelForm { amount: amount.to_owned(), ..FuelForm::default() };
    case.take("2026-05-01", "100000", charge("40"), false).unwrap();
    case.take("2026-05-03", "100100", charge("18"), false).unwrap();
    case.take("2026-05-05", "100200", charge("17"), false).unwrap();
    let view = case.pump();
    let used: Vec<_> = view.used.iter().map(|use_| (use_.used.number.as_str(), use_.unit.as_str())).collect();
    assert_eq!(used, [("17.0", "kwh-per-100-km"), ("18.0", "kwh-per-100-km")]);
    assert_eq!(view.fuels.len(), 1);
    let litres = FuelForm { unit: "litre".to_owned(), ..charge("40") };
    assert_eq!(case.take("2026-05-06", "100300", litres, false).unwrap_err().code, "fuel-unit");
}

#[test]
fn the_last_entry_can_be_taken_back_on_the_day_on_which_it_was_written() {
    let mut case = case("petrol", "km");
    assert_eq!(case.pump().undo, None);
    let first = case.take("2026-05-01", "50000", fuel("40", "", ""), false).unwrap();
    let second = case.take("2026-04-01", "49500", fuel("38", "", ""), false).unwrap();
    assert_eq!(case.pump().undo.as_ref(), Some(&second), "it was written last, for whatever day");
    let strike = Request::StrikeOut { book: case.book.clone(), subject: second, why: String::new() };
    case.door.ask(strike).unwrap();
    let view = case.pump();
    assert_eq!(view.undo.as_ref(), Some(&first));
    assert_eq!(view.last.len(), 1);
}
