//! Histories that do not fit: the oldest visits go, and nothing else.

#![allow(clippy::unwrap_used)]

use units::{Day, DistanceUnit};

use super::*;
use crate::{Flags, HeadPrefix, Item, NextDue, OdometerReading, SheetSize, Vehicle, Visit, read};

fn viewer() -> ViewerAddress {
    "https://card.example/".parse().unwrap()
}

fn key() -> SigningKey {
    SigningKey::from_bytes(&[7; 32])
}

/// Visits whose own items say something different each time, so that they hardly compress.
fn claims(visits: i32) -> Claims {
    let visit = |at: i32| Visit {
        day: Day::from_epoch(12_000 + at * 11 + at * at % 7).unwrap(),
        reading: at * 613 + at * at % 401,
        flags: Flags::BY_OWNER,
        items: vec![Item::Own(format!("{:x}", (i64::from(at) + 3) * 0x9e37_79b9))],
    };
    Claims {
        issued: Day::from_epoch(20_000).unwrap(),
        vehicle: Vehicle { name: "Heron".into(), ..Vehicle::default() },
        unit: DistanceUnit::Mile,
        latest: OdometerReading { day: Day::from_epoch(20_000).unwrap(), reading: 99_000 },
        visits: (0..visits).map(visit).collect(),
        left_out: 0,
        head: None,
        next: Vec::new(),
        instruments: Vec::new(),
    }
}

#[test]
fn what_fits_is_kept_whole() {
    let claims = claims(30);
    let fitted = fit(&claims, &key(), &viewer(), SquareLimit::LARGEST).unwrap();
    assert_eq!(fitted.claims, claims);
}

#[test]
fn the_oldest_visits_are_left_out_until_the_rest_fits() {
    let claims = claims(300);
    for limit in [SquareLimit::within_um(40_000).unwrap(), SquareLimit::LARGEST] {
        let fitted = fit(&claims, &key(), &viewer(), limit).unwrap();
        let kept = fitted.claims.visits.len();
        assert!(0 < kept && kept < 300);
        assert!(fitted.square.version() <= limit.version());
        assert_eq!(fitted.claims.visits, claims.visits[300 - kept..]);
        assert_eq!(fitted.claims.visits_in_book(), 300);
        assert_eq!(read(&fitted.message.text(&viewer())).unwrap().claims, fitted.claims);
        // One visit more would not have fitted.
        assert_eq!(attempt(&claims, kept + 1, &key(), &viewer(), limit).unwrap(), None);
    }
}

#[test]
fn visits_left_out_before_are_counted_too() {
    let claims = Claims { left_out: 5, ..claims(300) };
    let fitted = fit(&claims, &key(), &viewer(), SquareLimit::LARGEST).unwrap();
    assert_eq!(fitted.claims.visits_in_book(), 305);
}

#[test]
fn a_card_that_does_not_fit_without_visits_is_refused() {
    let limit = SquareLimit::within_um(20_000).unwrap();
    assert_eq!(fit(&claims(3), &key(), &viewer(), limit), Err(CardError::DoesNotFit { version: 6 }));
    let mut long = claims(0);
    long.vehicle.name = "x".repeat(crate::INFLATED_MAX);
    assert_eq!(
        fit(&long, &key(), &viewer(), SquareLimit::LARGEST),
        Err(CardError::DoesNotFit { version: 40 })
    );
}

/// A name and a make have at most 60 characters, an own item 80, and an address 120; drawn from so many letters.
fn longest(letter: char, letters: u64) -> Claims {
    let text = |seed: u64, characters: usize| -> String {
        let mut state = seed;
        let mut draw = || {
            state = state.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
            char::from_u32(u32::from(letter) + u32::try_from((state >> 33) % letters).unwrap()).unwrap()
        };
        (0..characters).map(|_| draw()).collect()
    };
    let next = |at: u64| NextDue {
        item: Item::Own(text(at, 80)),
        day: Some(Day::from_epoch(20_100).unwrap()),
        reading: Some(120_000),
    };
    Claims {
        vehicle: Vehicle {
            name: text(11, 60),
            vin: Some("1M8GDM9AXKP042788".into()),
            description: Some(text(12, 60)),
            ..Vehicle::default()
        },
        head: Some(HeadPrefix([0x5a; 16])),
        next: (0..6).map(next).collect(),
        ..claims(10)
    }
}

#[test]
fn the_smallest_card_takes_the_longest_names_of_26_letters_with_visits() {
    let address: ViewerAddress = format!("https://{}.example/", "a".repeat(103)).parse().unwrap();
    assert_eq!(address.as_str().len(), 120);
    let fitted = fit(&longest('a', 26), &key(), &address, SheetSize::Id1.square_limit()).unwrap();
    assert!(!fitted.claims.visits.is_empty());
}

/// So many different letters hardly compress.
#[test]
fn what_does_not_fit_the_smallest_card_fits_a_larger_one() {
    let claims = longest('\u{4e00}', 5000);
    let fitted = |size: SheetSize| fit(&claims, &key(), &viewer(), size.square_limit());
    assert_eq!(fitted(SheetSize::Id1), Err(CardError::DoesNotFit { version: 25 }));
    assert!(fitted(SheetSize::A6).is_ok_and(|fitted| !fitted.claims.visits.is_empty()));
}

#[test]
fn claims_that_compress_well_are_still_kept_within_what_a_reader_inflates() {
    let mut claims = claims(6000);
    let same = vec![Item::Own("the same long name of an item, again and again".into()); 3];
    claims.visits.iter_mut().for_each(|visit| visit.items.clone_from(&same));
    let fitted = fit(&claims, &key(), &viewer(), SquareLimit::LARGEST).unwrap();
    assert!(fitted.claims.to_cbor().len() <= crate::INFLATED_MAX);
    assert_eq!(fitted.claims.visits_in_book(), 6000);
    assert!(read(&fitted.message.text(&viewer())).is_ok());
}

#[test]
fn the_last_lines_of_a_plain_text_are_left_out() {
    let lines: Vec<String> = (0..40).map(|at| format!("line {at} of the summary")).collect();
    let limit = SquareLimit::within_um(30_000).unwrap();
    let note = |left_out: usize| format!("{left_out} more");
    let fitted = fit_plain(&lines, note, limit).unwrap();
    let kept = lines.len() - fitted.left_out;
    assert!(0 < kept && kept < 40);
    assert_eq!(fitted.text, format!("{}\n{} more", lines[..kept].join("\n"), 40 - kept));
    assert_eq!(fit_plain(&lines, note, SquareLimit::LARGEST).unwrap().text, lines.join("\n"));
    assert!(fit_plain(&["x".repeat(3000)], note, SquareLimit::LARGEST).is_err());
    assert!(fit_plain(&[], note, SquareLimit::LARGEST).is_err());
}
