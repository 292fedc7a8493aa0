//! All due lines of one car with a nine-year history: readings, visits, plan and pace, from the facts up; and
//! the due lines and visits of ten cars with twenty years behind them.
#![allow(missing_docs, clippy::unwrap_used)]

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use rules::running::{OdometerStatus, Pace, Reading, Track};
use rules::upkeep::{
    ASSUMED, Catalogue, Done, Facts, ItemRef, Job, Plan, PlanChange, PlannedItem, Setting, Standing, due,
    jobs, plan_visits,
};
use rules::vehicle::{Conditions, EngineKind, Equipment, Vehicle};
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
            equipment: Equipment::default(),
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

/// The same history made as long as it can be for a car on the road, and the visits that come of it.
fn twenty_years(catalogue: &Catalogue, most_items: usize) -> [Car<'_>; CARS] {
    std::array::from_fn(|car| {
        let step = 5 + i32::try_from(car).unwrap();
        let start = Day::from_ymd(2006, 3, 1).unwrap();
        let days = 20 * 365;
        let read = |day: i32| Reading {
            day: start.plus_days(day),
            shown: Distance::whole(i64::from(day) * 40, DistanceUnit::Kilometre),
            status: OdometerStatus::Actual,
        };
        let vehicle = Vehicle { first_use: Some(start), ..history().vehicle };
        let readings: Vec<Reading> = (0..days).step_by(7).map(read).collect();
        let track = Track::new(&vehicle, &readings, &[]);
        let numbers: Vec<u32> = catalogue.items().iter().map(|item| item.number).collect();
        let done = (0..days).step_by(usize::try_from(step).unwrap()).map(|day| Done {
            item: ItemRef::Catalogue(numbers[usize::try_from(day / step).unwrap() * 7 % numbers.len()]),
            day: start.plus_days(day),
            travelled: Some(track.travelled(start.plus_days(day), read(day).shown)),
            kind: None,
        });
        let done = done.collect();
        let pace = Pace::new(&vehicle, &track);
        let plan = Plan::new(catalogue, &vehicle, &switched_off(catalogue, &vehicle, most_items));
        Car { vehicle, track, pace, plan, done, today: start.plus_days(days) }
    })
}

/// What leaves a plan with so many items that count.
fn switched_off(catalogue: &Catalogue, vehicle: &Vehicle, most: usize) -> Vec<PlanChange> {
    let plan = Plan::new(catalogue, vehicle, &[]);
    let active = plan.items().iter().filter(|planned| planned.standing == Standing::Active);
    let off = |planned: &PlannedItem<'_>| PlanChange { item: planned.item.clone(), setting: Setting::Off };
    active.skip(most).map(off).collect()
}

const CARS: usize = 10;

/// A car as the door holds it when it asks what is due.
struct Car<'a> {
    vehicle: Vehicle,
    track: Track,
    pace: Pace,
    plan: Plan<'a>,
    done: Vec<Done>,
    today: Day,
}

impl Car<'_> {
    fn facts(&self) -> Facts<'_> {
        Facts {
            vehicle: &self.vehicle,
            plan: &self.plan,
            done: &self.done,
            found: &[],
            track: &self.track,
            pace: &self.pace,
            today: self.today,
        }
    }

    fn jobs(&self) -> Vec<Job> {
        let facts = self.facts();
        jobs(&facts, &due(&facts), |_| None)
    }
}

fn bench(criterion: &mut Criterion) {
    let history = history();
    let catalogue = Catalogue::shipped().unwrap();
    criterion.bench_function("due lines of nine years", |bencher| {
        bencher.iter(|| lines(black_box(&history), catalogue));
    });

    for most_items in [50, usize::MAX] {
        let cars = twenty_years(catalogue, most_items);
        let lines = due(&cars[0].facts()).len();
        let counts: Vec<usize> = cars.iter().map(|car| car.jobs().len()).collect();
        println!("{lines} due lines a car; jobs of the 10 cars in the next 24 months: {counts:?}");
        let mut group = criterion.benchmark_group(format!("ten cars of twenty years, {lines} items"));
        group.bench_function("due lines", |bencher| {
            bencher.iter(|| cars.iter().map(|car| due(&car.facts()).len()).sum::<usize>());
        });
        group.bench_function("due lines and visits", |bencher| {
            bencher.iter(|| {
                let plans = cars.iter().map(|car| plan_visits(&car.jobs(), &ASSUMED, car.today));
                plans.map(|plan| plan.visits.len()).sum::<usize>()
            });
        });
        group.finish();
    }
}

criterion_group!(benches, bench);
criterion_main!(benches);
