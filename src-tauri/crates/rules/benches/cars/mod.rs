//! Ten invented cars with twenty years behind them, as the book holds them and as the door does.

use std::collections::BTreeMap;

use rules::costs::Price;
use rules::running::{OdometerStatus, Pace, Reading, Track, Travelled};
use rules::upkeep::{
    ASSUMED, Catalogue, Done, DueLine, Facts, Finding, Found, ItemRef, Job, Milli, Plan, PlanChange,
    PlannedItem, Setting, Standing, VisitPlan, due, jobs, plan_visits, spend,
};
use rules::vehicle::{Conditions, EngineKind, Equipment, Vehicle};
use units::{Day, Distance, DistanceUnit};

/// An invented diesel, new on this day.
pub fn diesel(start: Day) -> Vehicle {
    Vehicle {
        engine: EngineKind::Diesel,
        first_use: Some(start),
        known_from_new: true,
        kept_since: None,
        unit: DistanceUnit::Kilometre,
        equipment: Equipment::default(),
        conditions: Conditions { towing: true, ..Conditions::default() },
        yearly: Some(Distance::whole(15_000, DistanceUnit::Kilometre)),
    }
}

const CARS: usize = 10;
const DAYS: i32 = 20 * 365;

/// The fewest due lines that a car shall have.
const LEAST_LINES: usize = 50;

/// What items cost the last time, in minor units: invented, but in the proportions of a car. Some have no price.
const PRICES: [Option<i64>; 7] =
    [Some(0), Some(2_500), Some(6_000), None, Some(12_000), Some(4_000), Some(45_000)];

/// What the book holds of a car, as the door reads it.
pub struct Book {
    vehicle: Vehicle,
    readings: Vec<Reading>,
    changes: Vec<PlanChange>,
    done: Vec<Done>,
    found: Vec<Found>,
    prices: BTreeMap<ItemRef, i64>,
    today: Day,
}

/// The same with what the door works out of it and keeps.
pub struct Car<'a> {
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
        let vehicle = diesel(start);
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
    /// As the door loads it.
    pub fn load(catalogue: &'a Catalogue, book: &'a Book) -> Car<'a> {
        let track = Track::new(&book.vehicle, &book.readings, &[]);
        let pace = Pace::new(&book.vehicle, &track);
        let plan = Plan::new(catalogue, &book.vehicle, &book.changes);
        Car { book, track: track.believed(), plan, pace }
    }

    /// Everything that what is due depends on.
    pub fn facts(&self) -> Facts<'_> {
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

    /// What there is to plan in the next two years.
    pub fn jobs(&self, lines: &[DueLine]) -> Vec<Job> {
        jobs(&self.facts(), lines, |item| self.book.prices.get(item).copied())
    }

    /// The visits ahead.
    pub fn visits(&self, lines: &[DueLine]) -> VisitPlan {
        plan_visits(&self.jobs(lines), &ASSUMED, self.book.today)
    }

    /// What a screen works out: how many visits, and what they will likely cost at most.
    pub fn screen(&self) -> (usize, i64) {
        let facts = self.facts();
        let lines = due(&facts);
        let visits = self.visits(&lines).visits.len();
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

/// Ten of them, with at most so many items in each plan.
pub fn ten(catalogue: &Catalogue, most_items: usize) -> Vec<Book> {
    (0..).take(CARS).map(|car| Book::of(catalogue, car, most_items)).collect()
}

/// How many due lines each of these cars has.
pub fn due_lines(catalogue: &Catalogue, books: &[Book]) -> Vec<usize> {
    books.iter().map(|book| due(&Car::load(catalogue, book).facts()).len()).collect()
}

/// Ten cars of which each has enough due lines, and hardly more: some items follow others and are not called for.
pub fn ten_of_least_lines(catalogue: &Catalogue) -> Vec<Book> {
    let enough = |books: &Vec<Book>| due_lines(catalogue, books).iter().all(|lines| *lines >= LEAST_LINES);
    (LEAST_LINES..=catalogue.items().len()).map(|most| ten(catalogue, most)).find(enough).unwrap()
}
