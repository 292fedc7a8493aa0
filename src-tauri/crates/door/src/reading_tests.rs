//! What the book knows of parts goes into reading a paper.
#![allow(clippy::unwrap_used)]

use std::io::Cursor;

use image::{ImageFormat, RgbImage};
use paper::{Area, Row, Stretch, Text};

use crate::{
    BoughtForm, Clock, Door, NumberForm, PartForm, PartNoteForm, ReceiptView, Request, Response, VehicleForm,
};

struct Case {
    door: Door,
    book: String,
    _folder: tempfile::TempDir,
}

fn case() -> Case {
    let folder = tempfile::tempdir().unwrap();
    let mut door = Door::open(folder.path(), Clock::Fixed("2026-06-01".parse().unwrap())).unwrap();
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
    fn note(&mut self, note: PartNoteForm) {
        self.door.ask(Request::NotePart { book: self.book.clone(), note }).unwrap();
    }

    /// What these rows come to on a paper of this book.
    fn reads(&mut self, rows: &[&str]) -> ReceiptView {
        let mut photo = Cursor::new(Vec::new());
        RgbImage::new(40, 60).write_to(&mut photo, ImageFormat::Png).unwrap();
        let paper = self.door.take_in(&self.book, photo.get_ref()).unwrap().papers.remove(0);
        let row = |(at, text): (u16, &&str)| {
            let area = Area { left: 0.1, top: TOP * f32::from(at + 1), width: 0.8, height: 0.05 };
            Row(vec![Stretch { text: (*text).to_owned(), sure: 0.95, area }])
        };
        let text = Text((0..).zip(rows).map(row).collect());
        self.door.to_read(&self.book, &paper).unwrap().receipt(&text)
    }

    fn numbers(&mut self, rows: &[&str]) -> Vec<[String; 2]> {
        let numbers = self.reads(rows).fields.numbers;
        numbers.into_iter().map(|number| [number.value, number.sure]).collect()
    }
}

/// How far the top of each row lies below that of the one before, in shares of the photo.
const TOP: f32 = 0.1;

/// Rows on which no number is found by its looks: nothing is sold on them, and one is but letters.
const ROWS: &[&str] = &[
    "Thank you for QUILLA",
    "see 7741 here",
    "and OX 9",
    "ask for 31180",
    "then HJ 55-20",
    "and come back soon to us",
];

#[test]
fn a_number_that_the_book_does_not_have_is_not_found_by_its_looks_here() {
    assert_eq!(case().numbers(ROWS), [[""; 2]; 0]);
}

#[test]
fn what_was_noted_of_parts_is_known_and_what_is_warned_of_is_still_read() {
    let mut case = case();
    let same = |number: &str| NumberForm { maker: String::new(), number: number.to_owned() };
    case.note(PartNoteForm {
        number: "QUILL-A".to_owned(),
        same: vec![same("77.41"), same("OX 9")],
        ..PartNoteForm::default()
    });
    case.note(PartNoteForm {
        number: "3-1180".to_owned(),
        mark: "superseded".to_owned(),
        instead: "HJ5520".to_owned(),
        ..PartNoteForm::default()
    });
    let sure = |number: &str| [number.to_owned(), "sure".to_owned()];
    // Three letters are too few to be known by.
    assert_eq!(case.numbers(ROWS), [sure("QUILLA"), sure("7741"), sure("31180"), sure("HJ 55-20")]);
}

#[test]
fn what_was_bought_is_known() {
    let mut case = case();
    let part = PartForm { name: "Filter".to_owned(), number: "31-180".to_owned(), ..PartForm::default() };
    let bought = BoughtForm {
        day: "2026-05-02".to_owned(),
        shop: "Fairlead".to_owned(),
        parts: vec![part],
        ..BoughtForm::default()
    };
    case.door.ask(Request::WriteBought { book: case.book.clone(), bought }).unwrap();
    assert_eq!(case.numbers(ROWS), [["31180".to_owned(), "sure".to_owned()]]);
}

#[test]
fn the_numbers_that_notes_warn_of_come_along() {
    let mut case = case();
    let warned = |case: &mut Case| -> Vec<[String; 3]> {
        let warned = case.reads(ROWS).warned.into_iter();
        warned.map(|one| [one.number, one.warning.mark, one.warning.instead]).collect()
    };
    assert_eq!(warned(&mut case), [[""; 3]; 0]);
    let note = |number: &str, mark: &str, instead: &str| PartNoteForm {
        number: number.to_owned(),
        mark: mark.to_owned(),
        instead: instead.to_owned(),
        ..PartNoteForm::default()
    };
    case.note(note("OX-9", "wrong", ""));
    case.note(note("HJ 55-20", "superseded", "HJ 55-21"));
    assert_eq!(warned(&mut case), [["HJ 55-20", "superseded", "HJ 55-21"], ["OX-9", "wrong", ""]]);
    case.note(note("ox 9", "", ""));
    assert_eq!(warned(&mut case), [["HJ 55-20", "superseded", "HJ 55-21"]]);
}

#[test]
fn every_figure_of_a_fill_has_its_own_place_and_certainty() {
    let mut case = case();
    let row_of = |top: f32| format!("{:.0}", top / TOP);
    let fuel = case.reads(&["Menge 41,30 l", "Preis/l 1,689", "Summe EUR 69,76"]).fields.fuel.unwrap();
    let [volume, price, total] =
        [fuel.figures.volume, fuel.figures.price, fuel.figures.total].map(Option::unwrap);
    assert_eq!([&volume, &price, &total].map(|figure| row_of(figure.area[1])), ["1", "2", "3"]);
    assert_eq!([volume.sure, price.sure, total.sure].map(|sure| sure == "sure"), [true; 3]);
    // Without what it came to there is nothing that bears the other two out.
    let fuel = case.reads(&["Menge 41,30 l", "Preis/l 1,689"]).fields.fuel.unwrap();
    assert!(fuel.figures.total.is_none() && fuel.total.is_empty());
    assert_eq!(fuel.figures.volume.unwrap().sure, "likely");
}
