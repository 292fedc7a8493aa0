//! What one car's due lines cost, and the due lines, visits and spending of ten cars with twenty years behind them.
//!
//! - `due lines of nine years`: one car, nothing found and nothing paid. In the timing is all from the facts up:
//!   track, plan, pace and due lines.
//! - `as a screen asks`: ten cars of at least 50 due lines each, with prices, findings, kinds of part and a mistyped
//!   reading. In the timing is what every screen works out anew: due lines, jobs, visits and spending, with each
//!   price looked up in a map. Out of it are track, plan and pace, which the door keeps with a car for as long
//!   as nothing is written, and the map of prices, which comes from the visits of the book.
//! - `after a change`: the same cars from the facts up, so that track, its believed part, plan and pace are in the
//!   timing too: what the first screen costs after anything was written. The SQL before it is in the benches of the
//!   door.
//! - `due lines alone`: only the first part of `as a screen asks`, to see what the rest adds.
//!
//! Each is measured once more with every item that the catalogue has for the car.
#![allow(missing_docs, clippy::unwrap_used)]

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use rules::running::{OdometerStatus, Pace, Reading, Track};
use rules::upkeep::{Catalogue, Done, Facts, ItemRef, Plan, due};
use rules::vehicle::Vehicle;
use units::{Day, Distance, DistanceUnit};

use cars::{Car, diesel, due_lines, ten, ten_of_least_lines};

mod cars;

/// An invented diesel that goes 40 km a day, read once a week and seen to every other month.
struct History {
    vehicle: Vehicle,
    readings: Vec<Reading>,
    done: Vec<(u32, Reading)>,
    today: Day,
}

fn history() -> History {
    let start = Day::from_ymd(2016, 3, 1).unwrap();
    let read = |days: i32| Reading {
        day: start.plus_days(days),
        shown: Distance::whole(i64::from(days) * 40, DistanceUnit::Kilometre),
        status: OdometerStatus::Actual,
    };
    let days = 9 * 365;
    History {
        vehicle: diesel(start),
        readings: (0..days).step_by(7).map(read).collect(),
        done: (0..days)
            .step_by(60)
            .flat_map(|day| (1..=3).map(move |n| (1 + (day.unsigned_abs() + n) % 27, read(day))))
            .collect(),
        today: start.plus_days(days),
    }
}

fn lines(history: &History, catalogue: &Catalogue) -> usize {
    let track = Track::new(&history.vehicle, &history.readings, &[]);
    let done: Vec<_> = history
        .done
        .iter()
        .map(|&(number, Reading { day, shown, .. })| Done {
            item: ItemRef::Catalogue(number),
            day,
            travelled: Some(track.travelled(day, shown)),
            kind: None,
        })
        .collect();
    due(&Facts {
        vehicle: &history.vehicle,
        plan: &Plan::new(catalogue, &history.vehicle, &[]),
        done: &done,
        found: &[],
        track: &track,
        pace: &Pace::new(&history.vehicle, &track),
        today: history.today,
    })
    .len()
}

fn bench(criterion: &mut Criterion) {
    let history = history();
    let catalogue = Catalogue::shipped().unwrap();
    criterion.bench_function("due lines of nine years", |bencher| {
        bencher.iter(|| lines(black_box(&history), catalogue));
    });

    for (name, books) in
        [("at least 50 due lines", ten_of_least_lines(catalogue)), ("every item", ten(catalogue, usize::MAX))]
    {
        let cars: Vec<Car<'_>> = books.iter().map(|book| Car::load(catalogue, book)).collect();
        let lines = due_lines(catalogue, &books);
        let of = |car: &Car<'_>| car.jobs(&due(&car.facts()));
        let jobs: Vec<usize> = cars.iter().map(|car| of(car).len()).collect();
        let priced: Vec<usize> =
            cars.iter().map(|car| of(car).iter().filter(|job| job.price.is_some()).count()).collect();
        let seen = |car: &Car<'_>| due(&car.facts()).iter().filter(|line| line.why.seen.is_some()).count();
        let seen: Vec<usize> = cars.iter().map(seen).collect();
        println!(
            "{name}: due lines {lines:?}, of which findings move or were weighed for {seen:?}; jobs in the"
        );
        println!("next 24 months {jobs:?}, of which {priced:?} have a price");
        let mut group = criterion.benchmark_group(format!("ten cars of twenty years, {name}"));
        group.bench_function("due lines alone", |bencher| {
            bencher.iter(|| cars.iter().map(|car| due(&car.facts()).len()).sum::<usize>());
        });
        group.bench_function("as a screen asks", |bencher| {
            bencher.iter(|| cars.iter().map(|car| black_box(car.screen()).0).sum::<usize>());
        });
        group.bench_function("after a change", |bencher| {
            let load = |book| Car::load(catalogue, black_box(book));
            bencher.iter(|| books.iter().map(|book| black_box(load(book).screen()).0).sum::<usize>());
        });
        group.finish();
    }
}

criterion_group!(benches, bench);
criterion_main!(benches);
