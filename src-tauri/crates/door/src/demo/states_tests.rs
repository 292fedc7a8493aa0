//! How the household's items stand, told through a real door: something of every state, on any day.
#![allow(clippy::unwrap_used)]

use std::time::SystemTime;

use book::Shelf;
use book::entry::Writer;
use paper::PhotoStore;
use rules::upkeep::Catalogue;

use super::*;
use crate::{Clock, Door, DueView, ItemView, Request, Response, StateKey, TodayView};

/// A shelf in memory on which the whole story stands, without the receipts of its visits: to draw them is what
/// takes long. With it the books of its cars.
fn shelf(today: Day, photos: &std::path::Path) -> (Door, Vec<String>) {
    let mut door = Door {
        shelf: Shelf::in_memory(Writer::from_secret(&[7; 32])).unwrap(),
        photos: PhotoStore::open(photos, SystemTime::UNIX_EPOCH).unwrap(),
        folder: photos.to_owned(),
        catalogue: Catalogue::shipped().unwrap(),
        clock: Clock::Fixed(today),
        cars: std::cell::RefCell::default(),
    };
    let mut cars = household(today);
    for step in cars.iter_mut().flat_map(|car| &mut car.steps) {
        if let What::Visit { receipt, .. } = &mut step.what {
            *receipt = None;
        }
    }
    door.tell_all(&cars).unwrap();
    door.clock = Clock::Fixed(today);
    let Response::Shelf(shelf) = door.ask(Request::Shelf).unwrap() else { panic!("no shelf") };
    (door, shelf.vehicles.into_iter().map(|vehicle| vehicle.book).collect())
}

fn told(today: Day) -> Vec<TodayView> {
    let photos = tempfile::tempdir().unwrap();
    let (mut door, books) = shelf(today, photos.path());
    let today_of = |book: String| match door.ask(Request::Today { book }).unwrap() {
        Response::Today(view) => view,
        _ => panic!("no screen"),
    };
    books.into_iter().map(today_of).collect()
}

/// The looks of a round of the car, which nobody writes down every time: oil level, tyre pressure, washer fluid.
const ROUNDS: [u32; 3] = [28, 57, 60];

fn number(line: &DueView) -> Option<u32> {
    match line.item {
        ItemView::Catalogue { number, .. } => Some(number),
        ItemView::Own { .. } => None,
    }
}

fn lines(view: &TodayView, state: StateKey) -> Vec<&DueView> {
    let round = |line: &DueView| number(line).is_some_and(|number| ROUNDS.contains(&number));
    view.due.iter().filter(|line| line.state == state && !round(line)).collect()
}

#[test]
fn something_is_overdue_due_soon_ahead_and_without_record() {
    for today in ["2026-11-25", "2024-02-29", "2025-03-01", "2031-01-01", "2027-07-15", "2026-04-20"] {
        let [petrol, diesel] = told(today.parse().unwrap()).try_into().unwrap();
        for car in [&petrol, &diesel] {
            let overdue = lines(car, StateKey::Overdue).len();
            assert!((1..=6).contains(&overdue), "{today}: {overdue} overdue");
            assert!(!lines(car, StateKey::Soon).is_empty(), "{today}");
            assert!(lines(car, StateKey::Ahead).len() >= 6, "{today}");
        }
        // No day lies a whole number of months before the leap day of a year after a common one.
        assert!(today.ends_with("02-29") || !lines(&petrol, StateKey::Due).is_empty(), "{today}");
        assert!(lines(&petrol, StateKey::NoRecord).is_empty(), "{today}");
        let unknown = lines(&diesel, StateKey::NoRecord);
        assert!((3..=6).contains(&unknown.len()), "{today}: {unknown:?}");
        assert!(unknown.iter().any(|line| line.weight >= 5), "{today}: nothing grave");
    }
}

#[test]
fn the_next_visit_is_near_and_a_day_is_agreed() {
    let [petrol, diesel] = told("2026-11-25".parse().unwrap()).try_into().unwrap();
    for car in [&petrol, &diesel] {
        let next = car.visits.iter().find(|visit| visit.next).unwrap();
        let ahead = next.day.parse::<Day>().unwrap().days_since(car.today.parse().unwrap());
        // The petrol car's is today: what is overdue goes with what falls due on this day.
        assert!((0..=30).contains(&ahead), "{}", next.day);
        let work = next.items.iter().filter(|item| !item.look).count();
        assert!((3..=6).contains(&work) && next.items.len() <= 16, "{:?}", next.items);
        assert!(next.cost.is_some() && next.unpriced * 2 < next.items.len());
        assert!(car.visits.len() >= 3 && car.tray == 1);
    }
    assert!(petrol.visits.iter().flat_map(|visit| &visit.items).any(|item| item.pinned));
}

#[test]
fn it_is_certain_that_no_plan_of_their_visits_is_cheaper() {
    for today in ["2026-11-25", "2024-02-29", "2031-01-01", "2027-07-15"] {
        let photos = tempfile::tempdir().unwrap();
        let (mut door, books) = shelf(today.parse().unwrap(), photos.path());
        for book in books {
            let Response::Visits(ahead) = door.ask(Request::Visits { book }).unwrap() else { panic!() };
            assert!(ahead.proven && !ahead.visits.is_empty(), "{today}: {}", ahead.vehicle.name);
        }
    }
}
