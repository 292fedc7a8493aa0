//! A car that is asked for twice.
#![allow(clippy::unwrap_used)]

use super::*;
use crate::{Clock, ReadingForm, Request, Response, VehicleForm};

#[test]
fn a_car_is_loaded_once_and_anew_when_something_was_written() {
    let folder = tempfile::tempdir().unwrap();
    let mut door = Door::open(folder.path(), Clock::Fixed("2026-06-01".parse().unwrap())).unwrap();
    let (name, engine, unit) = ("Thistle".to_owned(), "petrol".to_owned(), "km".to_owned());
    let vehicle = VehicleForm { name, engine, unit, ..VehicleForm::default() };
    let Response::Written(written) = door.ask(Request::AddVehicle { vehicle }).unwrap() else { panic!() };
    let book = written.book;
    let before = door.car(&book).unwrap();
    assert!(Arc::ptr_eq(&before, &door.car(&book).unwrap()));
    let reading =
        ReadingForm { day: "2026-06-01".to_owned(), reading: "41000".to_owned(), ..ReadingForm::default() };
    door.ask(Request::TakeReading { book: book.clone(), reading, keep: false.into() }).unwrap();
    assert_eq!(before.readings.len(), 0);
    assert_eq!(door.car(&book).unwrap().readings.len(), 1);
}
