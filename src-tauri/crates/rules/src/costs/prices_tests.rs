//! What is kept of what was paid for an item.
#![allow(clippy::unwrap_used)]

use super::*;

fn paid(number: u32, amount: i64, code: &str, estimated: bool) -> (ItemRef, JobCost) {
    let sums = vec![Money { minor: amount, currency: code.parse().unwrap() }];
    let share = if estimated { amount } else { 0 };
    (ItemRef::Catalogue(number), JobCost { sums, estimated, share })
}

fn range(prices: &Prices, number: u32) -> Option<(i64, i64, i64)> {
    prices.of(&ItemRef::Catalogue(number)).map(|price| (price.low, price.last, price.high))
}

#[test]
fn the_last_three_times_give_the_range_and_a_single_one_gives_one_value() {
    let prices = Prices::new([
        paid(1, 6_000, "EUR", false),
        paid(2, 1_500, "EUR", false),
        paid(1, 5_500, "EUR", false),
        paid(1, 7_200, "EUR", false),
        paid(1, 100, "EUR", false),
    ]);
    assert_eq!(range(&prices, 1), Some((5_500, 6_000, 7_200)), "the fourth is too old");
    assert_eq!(range(&prices, 2), Some((1_500, 1_500, 1_500)));
    assert_eq!(range(&prices, 3), None);
}

#[test]
fn the_currency_paid_in_last_is_the_only_one() {
    let both = JobCost {
        sums: ["EUR", "USD"].map(|code| Money { minor: 900, currency: code.parse().unwrap() }).to_vec(),
        ..JobCost::default()
    };
    let prices = Prices::new([
        (ItemRef::Catalogue(3), both),
        (ItemRef::Catalogue(4), JobCost::default()),
        paid(1, 4_000, "CHF", false),
        paid(1, 6_000, "EUR", false),
        paid(2, 1_000, "EUR", false),
    ]);
    assert_eq!(prices.currency().unwrap().code(), "CHF", "in two currencies at once it names none");
    assert_eq!(range(&prices, 1), Some((4_000, 4_000, 4_000)));
    assert_eq!((range(&prices, 2), range(&prices, 3), range(&prices, 4)), (None, None, None));
}

#[test]
fn an_estimate_among_them_is_told() {
    let prices = Prices::new([
        paid(1, 6_000, "EUR", false),
        paid(1, 6_000, "EUR", true),
        paid(2, 6_000, "EUR", true),
        paid(2, 6_000, "EUR", false),
    ]);
    let told = |number| {
        let price = prices.of(&ItemRef::Catalogue(number)).unwrap();
        (price.last_estimated, price.estimated)
    };
    assert_eq!((told(1), told(2)), ((false, true), (true, true)));
}

/// Of 60.00 for a job, 18.00 are its share: visits are planned by the other 42.00.
#[test]
fn what_is_a_share_is_not_firm() {
    let firm =
        |cost: JobCost| Prices::new([(ItemRef::Catalogue(1), cost)]).of(&ItemRef::Catalogue(1)).unwrap().firm;
    let (_, cost) = paid(1, 6_000, "EUR", true);
    assert_eq!(firm(JobCost { share: 1_800, ..cost.clone() }), Some(4_200));
    assert_eq!(firm(cost), None);
    assert_eq!(firm(paid(1, 6_000, "EUR", false).1), Some(6_000));
    assert_eq!(firm(paid(1, 0, "EUR", false).1), Some(0), "done for nothing");
}
