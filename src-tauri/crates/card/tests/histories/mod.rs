//! Invented histories, each with the questions that a person would ask of it, written down by hand.

#![allow(clippy::unwrap_used, missing_docs)]

mod kept;
mod running;
mod seeded;

use card::{Claims, Engine, Flags, Item, OdometerReading, Vehicle, Visit};
use units::{Day, DistanceUnit};

/// A history, the day on which it is read, and the keys of the questions in their order; `None` where nobody has
/// written down what to expect.
pub struct History {
    pub name: String,
    pub claims: Claims,
    pub today: Day,
    pub asked: Option<&'static str>,
}

pub fn all() -> Vec<History> {
    [running::histories(), kept::histories(), seeded::histories()].into_iter().flatten().collect()
}

/// The well kept history with something changed, read on its day of issue.
fn told(name: &str, asked: &'static str, change: impl FnOnce(&mut Claims)) -> History {
    told_on(name, asked, 0, change)
}

/// The same, read so many days after its day of issue.
fn told_on(name: &str, asked: &'static str, days: i32, change: impl FnOnce(&mut Claims)) -> History {
    let mut claims = well_kept();
    let today = claims.issued.plus_days(days);
    change(&mut claims);
    History { name: name.to_owned(), claims, today, asked: Some(asked) }
}

fn day(text: &str) -> Day {
    text.parse().unwrap()
}

fn visit(on: &str, reading: i32, items: &[u32]) -> Visit {
    let items = items.iter().map(|&number| Item::Catalogue(number)).collect();
    Visit { day: day(on), reading, flags: Flags::BY_OWNER | Flags::RECEIPT, items }
}

/// Nothing to ask but to see the receipts: eight visits in as many years, the belt among them.
fn well_kept() -> Claims {
    Claims {
        issued: day("2026-05-20"),
        vehicle: Vehicle {
            name: "The grey wagon".into(),
            engine: Some(Engine::Petrol),
            first_use: Some(day("2018-03-01")),
            ..Vehicle::default()
        },
        unit: DistanceUnit::Kilometre,
        latest: OdometerReading { day: day("2026-05-18"), reading: 101_000 },
        visits: vec![
            visit("2019-02-11", 12_000, &[1]),
            visit("2020-02-20", 24_000, &[1, 10]),
            visit("2021-03-02", 36_000, &[1, 2]),
            visit("2022-02-14", 48_000, &[1, 10]),
            visit("2023-03-09", 60_000, &[1]),
            visit("2024-03-01", 72_000, &[1, 9, 10, 11]),
            visit("2025-02-25", 84_000, &[1]),
            visit("2026-03-03", 96_000, &[1, 10]),
        ],
        left_out: 0,
        head: None,
        next: Vec::new(),
        instruments: Vec::new(),
    }
}
