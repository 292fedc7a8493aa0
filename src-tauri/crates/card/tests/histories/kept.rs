//! What the record lacks, and how it was kept.

use card::{Engine, Flags, Item, NextDue};

use super::{History, day, told, told_on, visit};

pub fn histories() -> Vec<History> {
    [records(), comings(), ages(), marks(), extremes()].into_iter().flatten().collect()
}

fn records() -> Vec<History> {
    let without = |car: &mut card::Claims, numbers: &[u32]| {
        let gone = |item: &Item| matches!(item, Item::Catalogue(number) if numbers.contains(number));
        for visit in &mut car.visits {
            visit.items.retain(|item| !gone(item));
        }
    };
    vec![
        told("well kept", "receipts", |_| {}),
        told("no brake fluid", "unrecorded receipts", |car| without(car, &[10])),
        told("no belt in eight years", "unrecorded receipts", |car| without(car, &[11])),
        told("no belt, but a chain to look at", "receipts", |car| {
            without(car, &[11]);
            car.next = vec![NextDue { item: Item::Catalogue(40), day: None, reading: Some(150_000) }];
        }),
        told("no belt, but a chain that was looked at", "receipts", |car| {
            without(car, &[11]);
            car.visits[5].items.push(Item::Catalogue(40));
        }),
        told("no belt on a card in miles", "unrecorded receipts", |car| {
            without(car, &[11]);
            car.vehicle.first_use = None;
            car.visits.drain(..4);
            car.unit = units::DistanceUnit::Mile;
            car.visits[0].reading = 18_000;
            car.visits[1].reading = 36_000;
            car.visits[2].reading = 54_000;
            car.visits[3].reading = 72_000;
            car.latest.reading = 74_566;
        }),
        told("nothing but items of the owner's own", "unrecorded receipts", |car| {
            for visit in &mut car.visits {
                visit.items = vec![Item::Own("Everything that was due".into())];
            }
        }),
        told("an electric car needs no oil", "unrecorded receipts", |car| {
            car.vehicle.engine = Some(Engine::Electric);
            without(car, &[1, 9, 10, 11]);
        }),
        told("an engine of which nothing is known", "receipts", |car| {
            car.vehicle.engine = None;
            without(car, &[1, 9, 11]);
        }),
        told("no visit at all", "no-visits", |car| car.visits.clear()),
    ]
}

fn comings() -> Vec<History> {
    let next = |day, reading| vec![NextDue { item: Item::Catalogue(1), day, reading }];
    vec![
        told("work due today", "receipts", |car| car.next = next(Some(day("2026-05-20")), None)),
        told("work due yesterday", "passed receipts", |car| car.next = next(Some(day("2026-05-19")), None)),
        told("work due at the latest reading", "receipts", |car| car.next = next(None, Some(101_000))),
        told("work due before it", "passed receipts", |car| {
            car.next = next(Some(day("2027-01-01")), Some(100_999));
            car.next.push(NextDue { item: Item::Own("Tow bar wiring".into()), day: None, reading: Some(5) });
            car.next.push(NextDue { item: Item::Catalogue(10), day: None, reading: None });
        }),
    ]
}

fn ages() -> Vec<History> {
    vec![
        told_on("a card of 90 days", "receipts", 90, |_| {}),
        told_on("a card of 91 days", "old-card receipts", 91, |_| {}),
        told_on("a card of tomorrow", "receipts", -1, |_| {}),
        told_on("a card of the day after", "clock receipts", -2, |_| {}),
        told("a visit after the day of issue", "ahead receipts", |car| {
            car.visits[7] = visit("2026-05-21", 101_000, &[1, 10]);
        }),
        told("a reading after the day of issue", "ahead receipts", |car| car.latest.day = day("2026-06-30")),
    ]
}

fn marks() -> Vec<History> {
    vec![
        told("no receipts", "receipts", |car| {
            car.visits.iter_mut().for_each(|visit| visit.flags = Flags::NONE);
        }),
        told("a photo is no receipt", "receipts", |car| car.visits[0].flags = Flags::PHOTO),
        told("written late", "receipts late", |car| {
            car.visits[1].flags |= Flags::WRITTEN_LATE;
            car.visits[3].flags |= Flags::WRITTEN_LATE;
        }),
        told("amended", "receipts amended", |car| car.visits[6].flags |= Flags::AMENDED),
        told("all that can be asked, of which the last is left out", ALL, |car| {
            for visit in &mut car.visits {
                visit.flags = Flags::AMENDED | Flags::WRITTEN_LATE | Flags::from_bits(64);
                visit.items.clear();
            }
            car.visits[2].reading = 20_000;
            car.visits[5].reading = 900_000;
            car.visits.remove(3);
            car.visits.remove(0);
            car.vehicle.first_use = Some(day("2008-03-01"));
            car.next =
                vec![NextDue { item: Item::Catalogue(1), day: Some(day("2020-01-01")), reading: None }];
            car.issued = day("2026-02-01");
        }),
    ]
}

const ALL: &str = "lower jump ahead gap before unrecorded passed old-card";

fn extremes() -> Vec<History> {
    vec![
        told("readings at both ends of 32 bits", "lower jump gap before receipts", |car| {
            // No step between two of them lies beyond 32 bits either, or no reader would take the card.
            let readings = [2_000_000_000, 24_000, i32::MAX, 0, i32::MIN, -1, 84_000, 96_000];
            car.visits.iter_mut().zip(readings).for_each(|(visit, reading)| visit.reading = reading);
        }),
        told("days at both ends of the calendar", "ahead gap receipts", |car| {
            car.vehicle.first_use = Some(day("1900-01-01"));
            car.visits[0].day = day("1900-01-01");
            car.visits[7] = visit("2199-12-31", 101_000, &[1]);
        }),
        told("a hundred visits of one day", "receipts", |car| {
            car.visits.extend((0..100).map(|at| visit("2026-03-03", 96_000 + at % 7, &[1])));
        }),
        told("a car that stands still", "gap receipts", |car| {
            car.visits.truncate(1);
            car.visits[0].items = [1, 9, 10, 11].map(Item::Catalogue).to_vec();
            car.latest.reading = 12_000;
        }),
    ]
}
