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

use std::collections::BTreeMap;
use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use rules::costs::Price;
use rules::running::{OdometerStatus, Pace, Reading, Track, Travelled};
use rules::upkeep::{
    ASSUMED, Catalogue, Done, DueLine, Facts, Finding, Found, ItemRef, Job, Milli, Plan, PlanChange,
    PlannedItem, Setting, Standing, due, jobs, plan_visits, spend,
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

const CARS: usize = 10;
const DAYS: i32 = 20 * 365;

/// The fewest due lines that a car shall have.
const LEAST_LINES: usize = 50;

/// What items cost the last time, in minor units: invented, but in the proportions of a car. Some have no price.
const PRICES: [Option<i64>; 7] =
    [Some(0), Some(2_500), Some(6_000), None, Some(12_000), Some(4_000), Some(45_000)];

/// What the book holds of a car, as the door reads it.
struct Book {
    vehicle: Vehicle,
    readings: Vec<Reading>,
    changes: Vec<PlanChange>,
    done: Vec<Done>,
    found: Vec<Found>,
    prices: BTreeMap<ItemRef, i64>,
    today: Day,
}

/// The same with what the door works out of it and keeps.
struct Car<'a> {
    book: &'a Book,
    track: Track,
    plan: Plan<'a>,
    pace: Pace,
}

impl Book {
    /// A history as long as it can be for a car on the road: read once a week, seen to every `step` days, looked at once
    /// a month. So many items of the plan count at most.
    fn of(catalogue: &Catalogue, car: i32, most_items: usize) -> Book {
        let start = Day::from_ymd(2006, 3, 1).unwrap();
        let vehicle = Vehicle { first_use: Some(start), ..history().vehicle };
        let at = |day: i32| i64::from(day) * 40 + i64::from(day * 37 % 101);
        let read = |day: i32| Reading {
            day: start.plus_days(day),
            shown: Distance::whole(at(day), DistanceUnit::Kilometre),
            status: OdometerStatus::Actual,
        };
        let travelled = |day: i32| Some(Travelled(read(day).shown));
        let mut readings: Vec<Reading> = (0..DAYS).step_by(7).map(read).collect();
        // A digit too many, a month ago.
        readings.push(Reading { day: start.plus_days(DAYS - 30), ..read(DAYS * 10) });
        let rows = catalogue.items();
        let row = |turn: i32| &rows[usize::try_from(turn).unwrap() * 7 % rows.len()];
        let done = |turn: i32, day: i32| Done {
            item: ItemRef::Catalogue(row(turn).number),
            day: start.plus_days(day),
            travelled: travelled(day),
            kind: row(turn).kinds.first().filter(|_| turn % 2 == 0).map(|kind| kind.key.clone()),
        };
        let found = |turn: i32, day: i32| Found {
            item: ItemRef::Catalogue(row(turn).number),
            day: start.plus_days(day),
            travelled: travelled(day),
            finding: row(turn)
                .due_when
                .first()
                .filter(|_| turn % 5 == 0)
                .copied()
                .unwrap_or(Finding::WithinLimits),
            value: row(turn).gauge.map(|gauge| Milli(i64::midpoint(gauge.fresh.0, gauge.limit.0))),
        };
        let every = |days: i32| (car..DAYS).step_by(usize::try_from(days).unwrap());
        Book {
            changes: switched_off(catalogue, &vehicle, most_items),
            done: (0..).zip(every(5 + car)).map(|(turn, day)| done(turn, day)).collect(),
            found: (0..).zip(every(30)).map(|(turn, day)| found(turn, day)).collect(),
            prices: rows
                .iter()
                .zip(PRICES.iter().cycle())
                .filter_map(|(row, price)| Some((ItemRef::Catalogue(row.number), (*price)?)))
                .collect(),
            today: start.plus_days(DAYS),
            vehicle,
            readings,
        }
    }
}

impl<'a> Car<'a> {
    fn load(catalogue: &'a Catalogue, book: &'a Book) -> Car<'a> {
        let track = Track::new(&book.vehicle, &book.readings, &[]);
        let pace = Pace::new(&book.vehicle, &track);
        let plan = Plan::new(catalogue, &book.vehicle, &book.changes);
        Car { book, track: track.believed(), plan, pace }
    }

    fn facts(&self) -> Facts<'_> {
        Facts {
            vehicle: &self.book.vehicle,
            plan: &self.plan,
            done: &self.book.done,
            found: &self.book.found,
            track: &self.track,
            pace: &self.pace,
            today: self.book.today,
        }
    }

    fn jobs(&self, lines: &[DueLine]) -> Vec<Job> {
        jobs(&self.facts(), lines, |item| self.book.prices.get(item).copied())
    }

    /// What a screen works out: how many visits, and what they will likely cost at most.
    fn screen(&self) -> (usize, i64) {
        let facts = self.facts();
        let lines = due(&facts);
        let visits = plan_visits(&self.jobs(&lines), &ASSUMED, facts.today).visits.len();
        let price = |item: &ItemRef| Some(Price::once(*self.book.prices.get(item)?, false));
        (visits, spend(&facts, &lines, price).high)
    }
}

/// What leaves a plan with so many items that count.
fn switched_off(catalogue: &Catalogue, vehicle: &Vehicle, most: usize) -> Vec<PlanChange> {
    let plan = Plan::new(catalogue, vehicle, &[]);
    let active = plan.items().iter().filter(|planned| planned.standing == Standing::Active);
    let off = |planned: &PlannedItem<'_>| PlanChange { item: planned.item.clone(), setting: Setting::Off };
    active.skip(most).map(off).collect()
}

fn ten(catalogue: &Catalogue, most_items: usize) -> Vec<Book> {
    (0..).take(CARS).map(|car| Book::of(catalogue, car, most_items)).collect()
}

/// How many due lines each of these cars has.
fn due_lines(catalogue: &Catalogue, books: &[Book]) -> Vec<usize> {
    books.iter().map(|book| due(&Car::load(catalogue, book).facts()).len()).collect()
}

/// Ten cars of which each has enough due lines, and hardly more: some items follow others and are not called for.
fn ten_of_least_lines(catalogue: &Catalogue) -> Vec<Book> {
    let enough = |books: &Vec<Book>| due_lines(catalogue, books).iter().all(|lines| *lines >= LEAST_LINES);
    (LEAST_LINES..=catalogue.items().len()).map(|most| ten(catalogue, most)).find(enough).unwrap()
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
