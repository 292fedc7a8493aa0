//! Sums by month, year and distance, in several currencies.
#![allow(clippy::unwrap_used)]

use proptest::prelude::*;
use units::{Day, DistanceUnit, Money};

use super::*;
use crate::running::Track;
use crate::testing::{car, day, read};
use CostClass::{Duties, Fuel, Parts, Work};

fn cost(on: &str, class: CostClass, amount: &str, code: &str) -> Cost {
    Cost { day: day(on), class, money: Money::parse(amount, code.parse().unwrap()).unwrap() }
}

fn shown(bills: &[Bill]) -> Vec<String> {
    let line = |bill: &Bill| {
        let parts = CostClass::ALL.map(|class| bill.of(class).number()).join(" ");
        let over = if bill.over { "" } else { ", not over" };
        format!("{} {parts} = {}{over}", bill.from, bill.total())
    };
    bills.iter().map(line).collect()
}

fn costs() -> Vec<Cost> {
    vec![
        cost("2025-12-31", Fuel, "60.10", "EUR"),
        cost("2024-02-29", Parts, "12.50", "EUR"),
        cost("2024-02-01", Work, "80", "EUR"),
        cost("2024-02-11", Fuel, "55.55", "EUR"),
        cost("2024-07-11", Fuel, "4100", "JPY"),
        cost("2026-01-01", Duties, "120", "EUR"),
        cost("2024-03-01", Fuel, "-5.55", "EUR"),
    ]
}

#[test]
fn each_year_and_currency_has_its_bill_and_this_year_is_not_over() {
    assert_eq!(
        shown(&by_year(&costs(), day("2026-06-01"))),
        [
            "2024-01-01 50.00 12.50 80.00 0.00 = 142.50 EUR",
            "2024-01-01 4100 0 0 0 = 4100 JPY",
            "2025-01-01 60.10 0.00 0.00 0.00 = 60.10 EUR",
            "2026-01-01 0.00 0.00 0.00 120.00 = 120.00 EUR, not over",
        ]
    );
}

#[test]
fn a_month_ends_with_its_last_day() {
    let today = day("2025-12-31");
    let months = by_month(&costs(), today);
    assert_eq!(
        shown(&months)[..3],
        [
            "2024-02-01 55.55 12.50 80.00 0.00 = 148.05 EUR",
            "2024-03-01 -5.55 0.00 0.00 0.00 = -5.55 EUR",
            "2024-07-01 4100 0 0 0 = 4100 JPY",
        ]
    );
    assert!(months[3].over, "today is its last day");
    assert!(!by_month(&costs(), today.plus_days(-1))[3].over);
}

#[test]
fn a_distance_costs_what_was_paid_in_the_same_days() {
    let track = Track::new(&car(), &[read("2024-02-01", 10_000), read("2024-03-01", 11_000)], &[]);
    let window = (day("2024-02-01"), day("2024-03-01"));
    let each = per_distance(&costs(), window, day("2026-06-01"), |day| track.on(day));
    assert_eq!(each.len(), 1);
    // 148.05 EUR over 1 000 km; the money that came back on 1 March belongs to the next days.
    assert_eq!(each[0].total(DistanceUnit::Kilometre).unwrap().number(), "0.148");
    assert_eq!(each[0].total(DistanceUnit::Mile).unwrap().number(), "0.238");
    assert_eq!(each[0].of(Work, DistanceUnit::Kilometre).unwrap().number(), "0.08");

    let unknown = (day("2024-01-01"), day("2024-03-01"));
    assert_eq!(per_distance(&costs(), unknown, day("2026-06-01"), |day| track.on(day)), []);
    let nowhere = (day("2024-02-01"), day("2024-02-01"));
    assert_eq!(per_distance(&costs(), nowhere, day("2026-06-01"), |day| track.on(day)), []);
}

#[test]
fn work_is_what_the_parts_leave() {
    let eur = |minor| Money { minor, currency: "EUR".parse().unwrap() };
    assert_eq!(work_of(eur(10_000), &[eur(2_500), eur(1)]), Some(eur(7_499)));
    assert_eq!(work_of(eur(100), &[eur(101)]), None);
    assert_eq!(work_of(eur(100), &[Money { minor: 1, currency: "JPY".parse().unwrap() }]), None);
}

proptest! {
    /// Months and years come to the same, and nothing is lost at their edges.
    #[test]
    fn months_add_up_to_years(
        costs in prop::collection::vec((0_i32..2_000, 0_usize..4, -5_000_i64..100_000), 0..60),
    ) {
        let today = day("2030-01-01");
        let costs: Vec<Cost> = costs.into_iter().map(|(after, class, minor)| Cost {
            day: day("2019-11-05").plus_days(after),
            class: CostClass::ALL[class],
            money: Money { minor, currency: "EUR".parse().unwrap() },
        }).collect();
        let sum = |bills: &[Bill]| bills.iter().map(|bill| bill.total().minor).sum::<i64>();
        let all: i64 = costs.iter().map(|cost| cost.money.minor).sum();
        prop_assert_eq!(sum(&by_month(&costs, today)), all);
        prop_assert_eq!(sum(&by_year(&costs, today)), all);
        let ordered = |bills: &[Bill]| bills.windows(2).all(|pair| pair[0].to <= pair[1].from);
        prop_assert!(ordered(&by_month(&costs, today)) && ordered(&by_year(&costs, today)));
    }
}

#[test]
fn the_last_year_of_the_calendar_is_a_year() {
    let last = Day::from_ymd(2199, 12, 30).unwrap();
    let paid = Cost { day: last, ..costs()[0] };
    assert_eq!(by_year(&[paid], last).len(), 1);
    assert_eq!(by_month(&[paid], last).len(), 1);
}
