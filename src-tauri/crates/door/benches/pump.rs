//! What the pump costs.
//!
//! - Saving a reading with fuel through the door, with `synchronous=FULL` and twenty years of fills in the book,
//!   beside a bare one-row insert with the same settings.
//! - All figures and the data of all plots of those twenty years, `fuel` and `costs`: right after something was
//!   written, when the car has to be read anew, and from then on.
#![allow(clippy::unwrap_used, missing_docs)]

#[path = "../../book/tests/support/bare.rs"]
mod bare;

use std::hint::black_box;
use std::path::Path;
use std::time::{Duration, Instant};

use bare::Bare;
use criterion::Criterion;
use door::{Clock, Day, Door, FuelForm, ItemForm, ReadingForm, Request, Response, VehicleForm, VisitForm};

const TODAY: &str = "2026-06-01";

/// Fills of twenty years, one a week.
const FILLS: i32 = 20 * 52;

/// A visit comes after so many fills.
const VISIT_EVERY: i32 = 17;

/// A car of twenty years, invented.
struct Car {
    door: Door,
    book: String,
}

impl Car {
    fn new(folder: &Path) -> Car {
        let mut door = Door::open(folder, Clock::Fixed(TODAY.parse().unwrap())).unwrap();
        let vehicle = VehicleForm {
            name: "Thistle".to_owned(),
            engine: "petrol".to_owned(),
            unit: "km".to_owned(),
            ..VehicleForm::default()
        };
        let Response::Written(written) = door.ask(Request::AddVehicle { vehicle }).unwrap() else { panic!() };
        let mut car = Car { door, book: written.book };
        for week in 0..FILLS {
            car.fill(week);
            if week % VISIT_EVERY == 3 {
                car.visit(week);
            }
        }
        car
    }

    fn day(week: i32) -> String {
        let today: Day = TODAY.parse().unwrap();
        today.plus_days(7 * (week - FILLS)).to_string()
    }

    /// 480 km a week at seven litres and a little, more in winter.
    fn fill(&mut self, week: i32) {
        let noise = (week * 7_919) % 97;
        let winter = ((week % 52) - 26).abs() * 12;
        let fuel = FuelForm {
            amount: format!("{}.{:02}", 33 + (noise + winter) / 100, (noise + winter) % 100),
            price: "1.749".to_owned(),
            currency: "EUR".to_owned(),
            ..FuelForm::default()
        };
        self.take(Car::day(week), 10_000 + 480 * week, fuel);
    }

    fn take(&mut self, day: String, reading: i32, fuel: FuelForm) {
        let reading =
            ReadingForm { day, reading: reading.to_string(), fuel: Some(fuel), ..ReadingForm::default() };
        self.door.ask(Request::TakeReading { book: self.book.clone(), reading, keep: false.into() }).unwrap();
    }

    fn visit(&mut self, week: i32) {
        let items = [1, 5, 27, 51, 2, 61][usize::try_from(week / VISIT_EVERY).unwrap() % 6];
        let visit = VisitForm {
            day: Car::day(week),
            workshop: "Garage Plover".to_owned(),
            items: vec![ItemForm::Catalogue(items)],
            cost: "180".to_owned(),
            currency: "EUR".to_owned(),
            ..VisitForm::default()
        };
        self.door.ask(Request::RecordVisit { book: self.book.clone(), visit, keep: false }).unwrap();
    }

    /// One more fill today.
    fn save(&mut self) {
        let fuel = FuelForm {
            price: "1.749".to_owned(),
            total: "61.20".to_owned(),
            currency: "EUR".to_owned(),
            ..FuelForm::default()
        };
        self.take(TODAY.to_owned(), 10_000 + 480 * FILLS, fuel);
    }

    fn fuel(&mut self) {
        let request = Request::Fuel { book: self.book.clone(), unit: None };
        black_box(self.door.ask(request).unwrap());
    }

    fn costs(&mut self) {
        black_box(self.door.ask(Request::Costs { book: self.book.clone() }).unwrap());
    }
}

fn timed(work: impl FnOnce()) -> Duration {
    let start = Instant::now();
    work();
    start.elapsed()
}

fn median(mut times: Vec<Duration>) -> f64 {
    times.sort_unstable();
    times[times.len() / 2].as_secs_f64() * 1e3
}

fn main() {
    let folder = tempfile::tempdir_in(env!("CARGO_TARGET_TMPDIR")).unwrap();
    let bare = Bare::new(folder.path());
    let mut car = Car::new(&folder.path().join("shelf"));

    let mut criterion = Criterion::default().configure_from_args();
    let mut group = criterion.benchmark_group("pump");
    group.bench_function("figures and plots of 20 years", |bencher| {
        bencher.iter(|| {
            car.fuel();
            car.costs();
        });
    });
    group.finish();
    criterion.final_summary();

    let (mut first, mut fuel, mut costs) = (Vec::new(), Vec::new(), Vec::new());
    for _ in 0..60 {
        car.save();
        first.push(timed(|| {
            car.fuel();
            car.costs();
        }));
        fuel.push(timed(|| car.fuel()));
        costs.push(timed(|| car.costs()));
    }
    let (first, fuel, costs) = (median(first), median(fuel), median(costs));
    println!(
        "figures of {FILLS} fills (wanted: under 5): {first:.2} ms after a fill was saved, then {:.2} ms, for fuel \
         {fuel:.2} and for costs {costs:.2}",
        fuel + costs
    );

    // By turns, so that whatever else the machine has to do is in the way of both.
    let (mut inserts, mut saves) = (Vec::new(), Vec::new());
    for _ in 0..20 {
        inserts.extend((0..10).map(|_| timed(|| bare.insert())));
        saves.extend((0..10).map(|_| timed(|| car.save())));
    }
    let (insert, save) = (median(inserts), median(saves));
    println!("save: {save:.2} ms (wanted: under 20), {:.1} x a bare insert ({insert:.2} ms)", save / insert);
}
