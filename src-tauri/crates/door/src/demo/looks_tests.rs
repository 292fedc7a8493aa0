//! What the household measures wears and ages as it should, and what is found broken is mended.
#![allow(clippy::unwrap_used)]

use std::collections::BTreeMap;

use rules::upkeep::{Catalogue, Finding, Milli};

use super::*;
use crate::FoundForm;

const DAYS: [&str; 3] = ["2026-11-25", "2024-02-29", "2031-01-01"];

/// The visits of a car by their own days, as they were first written.
fn visits(car: &DemoCar) -> Vec<&VisitForm> {
    let mut visits: Vec<_> = car
        .steps
        .iter()
        .filter_map(|step| match &step.what {
            What::Visit { form, .. } => Some(form),
            _ => None,
        })
        .collect();
    visits.sort_by(|a, b| a.day.cmp(&b.day));
    visits
}

fn number(item: &ItemForm) -> u32 {
    match item {
        ItemForm::Catalogue(number) => *number,
        ItemForm::Own(name) => panic!("{name} is looked at by nobody"),
    }
}

fn does(visit: &VisitForm, item: u32) -> bool {
    visit.items.iter().any(|done| matches!(done, ItemForm::Catalogue(number) if *number == item))
}

/// What was measured since each item was last renewed, oldest first.
fn measured(car: &DemoCar) -> BTreeMap<u32, Vec<Vec<i64>>> {
    let mut measured: BTreeMap<u32, Vec<Vec<i64>>> = BTreeMap::new();
    for visit in visits(car) {
        for found in visit.found.iter().filter(|found| !found.value.is_empty()) {
            let lives = measured.entry(number(&found.item)).or_insert_with(|| vec![Vec::new()]);
            lives.last_mut().unwrap().push(found.value.parse::<Milli>().unwrap().0);
        }
        for (item, lives) in &mut measured {
            if does(visit, *item) {
                lives.push(Vec::new());
            }
        }
    }
    measured
}

#[test]
fn what_is_measured_goes_one_way_until_the_part_is_renewed_at_its_limit_or_before() {
    let catalogue = Catalogue::shipped().unwrap();
    for car in DAYS.iter().flat_map(|today| household(today.parse().unwrap())) {
        let measured = measured(&car);
        assert_eq!(measured.keys().copied().collect::<Vec<_>>(), [9, 10, 27, 51, 53, 61]);
        for (item, lives) in measured {
            let gauge = catalogue.item(item).unwrap().gauge.unwrap();
            for life in &lives {
                let falls = gauge.limit < gauge.fresh;
                assert!(life.is_sorted_by(|a, b| if falls { a >= b } else { a <= b }), "{item}: {life:?}");
                assert!(life.iter().all(|value| !gauge.is_reached(Milli(*value))), "{item}: {life:?}");
            }
        }
    }
}

#[test]
fn the_tread_has_fallen_from_eight_to_about_four_millimetres() {
    for car in DAYS.iter().flat_map(|today| household(today.parse().unwrap())) {
        let lives = &measured(&car)[&27];
        let treads = lives.last().unwrap();
        assert!((7_300..=8_000).contains(treads.first().unwrap()), "{treads:?}");
        assert!((3_700..=4_500).contains(treads.last().unwrap()), "{treads:?}");
    }
}

#[test]
fn what_is_found_broken_is_mended_within_weeks() {
    for car in DAYS.iter().flat_map(|today| household(today.parse().unwrap())) {
        let visits = visits(&car);
        let broken = |found: &&FoundForm| found.finding != Finding::WithinLimits.key();
        let mut count = 0;
        for (at, visit) in visits.iter().enumerate() {
            for found in visit.found.iter().filter(broken) {
                let item = number(&found.item);
                let day: Day = visit.day.parse().unwrap();
                let mended = visits[at + 1..].iter().find(|later| does(later, item)).unwrap();
                let after = mended.day.parse::<Day>().unwrap().days_since(day);
                assert!((1..=30).contains(&after), "{item} mended after {after} days");
                count += 1;
            }
        }
        assert_eq!(count, 1, "one a car");
    }
}
