//! Readings that fall or jump, and times without a visit.

use card::{Claims, InstrumentChange};
use units::DistanceUnit;

use super::{History, day, told, visit, well_kept};

pub fn histories() -> Vec<History> {
    [falls(), jumps(), gaps(), beginnings(), instruments()].into_iter().flatten().collect()
}

fn falls() -> Vec<History> {
    vec![
        told("a reading falls", "lower receipts", |car| car.visits[4].reading = 47_000),
        told("two readings fall", "lower receipts", |car| {
            car.visits[2].reading = 23_000;
            car.visits[6].reading = 70_500;
        }),
        told("a digit too many", "lower jump receipts", |car| car.visits[3].reading = 480_000),
        told("the latest reading falls", "lower receipts", |car| car.latest.reading = 95_999),
        told("the latest reading is of a day before the last visit", "receipts", |car| {
            car.latest.day = day("2026-01-05");
            car.latest.reading = 95_000;
        }),
        told("equal readings do not fall", "receipts", |car| car.visits[3].reading = 36_000),
        told("two visits of one day in no order", "receipts", |car| {
            car.visits.insert(3, visit("2021-03-02", 35_900, &[18]));
        }),
    ]
}

fn jumps() -> Vec<History> {
    vec![
        told("9 000 km in three days", "jump receipts", |car| {
            car.visits.insert(7, visit("2025-02-28", 93_000, &[18]));
        }),
        told("2 501 km in a day", "jump receipts", |car| {
            car.visits.insert(7, visit("2025-02-25", 86_501, &[18]));
        }),
        told("2 500 km in a day", "receipts", |car| {
            car.visits.insert(7, visit("2025-02-25", 86_500, &[18]));
        }),
        told("1 554 miles in a day", "jump receipts", |car| {
            car.unit = DistanceUnit::Mile;
            car.visits.insert(7, visit("2025-02-25", 85_554, &[18]));
        }),
        told("a long way in 90 days is a jump and no gap", "jump receipts", |car| {
            car.visits[7] = visit("2025-05-26", 120_001, &[1, 10]);
            car.latest.reading = 121_000;
        }),
        told("a long way that a car can go is a gap", "gap receipts", |car| {
            car.visits[7] = visit("2025-05-26", 120_000, &[1, 10]);
            car.latest.reading = 121_000;
        }),
    ]
}

fn gaps() -> Vec<History> {
    vec![
        told("three years without a visit", "gap receipts", |car| drop(car.visits.drain(3..5))),
        told("731 days without a visit", "receipts", |car| {
            car.visits[2] = visit("2020-02-14", 24_100, &[1, 2]);
            car.visits[1].day = day("2020-02-13");
        }),
        told("732 days without a visit", "gap receipts", |car| {
            car.visits[2] = visit("2020-02-13", 24_100, &[1, 2]);
            car.visits[1].day = day("2020-02-12");
        }),
        told("30 000 km without a visit", "receipts", |car| {
            car.visits[3].reading = 41_000;
            car.visits[4].reading = 42_000;
        }),
        told("30 001 km without a visit", "gap receipts", |car| {
            car.visits[3].reading = 41_000;
            car.visits[4].reading = 41_999;
        }),
        told("18 642 miles without a visit", "gap receipts", |car| {
            car.unit = DistanceUnit::Mile;
            car.visits[4].reading = 53_358;
        }),
        told("no visit up to the day of issue", "gap receipts", |car| drop(car.visits.drain(6..))),
        told("a way without a visit up to the day of issue", "gap receipts", |car| {
            car.latest.reading = 126_001;
        }),
        told("two gaps, the longer by time", "gap receipts", two_gaps),
        told("two gaps, the longer by distance", "gap receipts", |car| {
            two_gaps(car);
            car.latest.reading = 200_000;
        }),
    ]
}

fn two_gaps(car: &mut Claims) {
    car.visits.drain(6..);
    car.visits.drain(2..4);
}

fn beginnings() -> Vec<History> {
    vec![
        told("the book begins late", "before receipts", |car| drop(car.visits.drain(..2))),
        told("the first visit after 30 001 km", "before receipts", |car| {
            car.vehicle.first_use = None;
            for (at, visit) in (0..).zip(&mut car.visits) {
                visit.reading = 30_001 + 9_000 * at;
            }
        }),
        told("older visits were left out", "receipts left-out", |car| {
            car.visits.drain(..2);
            car.left_out = 2;
        }),
        told("one visit of a new car", "receipts", |car| {
            car.visits.drain(1..);
            car.issued = day("2019-03-01");
            car.latest.day = day("2019-03-01");
            car.latest.reading = 12_800;
        }),
    ]
    .into_iter()
    .map(|history| History { today: history.claims.issued, ..history })
    .collect()
}

fn instruments() -> Vec<History> {
    let replaced = |car: &mut Claims, on: &str| {
        car.instruments = vec![InstrumentChange { day: day(on), old: 50_000, new: 10 }];
        for visit in &mut car.visits[4..] {
            visit.reading -= 49_990;
        }
        car.latest.reading -= 49_990;
    };
    vec![
        told("a new instrument", "instruments receipts", |car| replaced(car, "2022-05-02")),
        told("a new instrument on the day of a visit, read before", "instruments receipts", |car| {
            replaced(car, "2022-02-14");
        }),
        told("a new instrument on the day of a visit, read after", "instruments receipts", |car| {
            replaced(car, "2023-03-09");
        }),
        told("as near to the old instrument as to the new", "instruments receipts", |car| {
            car.instruments = vec![InstrumentChange { day: day("2022-02-14"), old: 47_000, new: 49_000 }];
        }),
        told("two new instruments of one day, listed in no order", "instruments receipts", |car| {
            replaced(car, "2022-05-02");
            car.instruments.push(InstrumentChange { day: day("2021-06-01"), old: 40_000, new: 40_000 });
            car.instruments.push(InstrumentChange { day: day("2022-05-02"), old: 10, new: 10 });
        }),
        told("an instrument that nobody wrote down", "lower receipts", |car| {
            *car = well_kept();
            car.visits[6].reading = 10;
            car.visits[7].reading = 12_000;
            car.latest.reading = 17_000;
        }),
    ]
}
