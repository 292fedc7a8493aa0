//! All due lines of one car with a nine-year history: readings, visits, plan and pace, from the facts up.
#![allow(missing_docs, clippy::unwrap_used)]

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use rules::running::{OdometerStatus, Pace, Reading, Track};
use rules::upkeep::{Catalogue, Done, Facts, ItemRef, Plan, due};
use rules::vehicle::{Conditions, EngineKind, Vehicle};
use units::{Day, Distance, DistanceUnit};

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
        vehicle: Vehicle {
            engine: EngineKind::Diesel,
            first_use: Some(start),
            known_from_new: true,
            unit: DistanceUnit::Kilometre,
            conditions: Conditions { towing: true, ..Conditions::default() },
            yearly: Some(Distance::whole(15_000, DistanceUnit::Kilometre)),
        },
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
        })
        .collect();
    due(&Facts {
        vehicle: &history.vehicle,
        plan: &Plan::new(catalogue, &history.vehicle, &[]),
        done: &done,
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
}

criterion_group!(benches, bench);
criterion_main!(benches);
