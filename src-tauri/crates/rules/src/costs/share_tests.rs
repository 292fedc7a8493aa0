//! Bills for several jobs, shared out by hand.
#![allow(clippy::unwrap_used)]

use proptest::prelude::*;

use super::*;

fn money(minor: i64, code: &str) -> Money {
    Money { minor, currency: code.parse().unwrap() }
}

fn eur(minor: i64) -> Money {
    money(minor, "EUR")
}

/// One of a part, at this price.
fn part(price: Money) -> PartPaid {
    PartPaid { price: Some(price), quantity: 1_000, paid_before: 0 }
}

fn at_home(price: Money) -> PartPaid {
    PartPaid { paid_before: 1_000, ..part(price) }
}

fn job(minutes: u32, parts: &[PartPaid]) -> Billed {
    Billed { minutes, parts: parts.to_vec() }
}

/// What each job came to: its sums, and a mark at an estimate.
fn told(total: Option<Money>, loose: &[PartPaid], jobs: &[Billed]) -> Vec<String> {
    let cost = |cost: &JobCost| {
        let sums: Vec<_> = cost.sums.iter().map(ToString::to_string).collect();
        format!("{}{}", sums.join(" + "), if cost.estimated { " ~" } else { "" })
    };
    job_costs(total, loose, jobs).iter().map(cost).collect()
}

/// 200.00 less 42.00 and 18.00 of parts are 140.00 of work, over 45 + 20 + 5 = 70 minutes: 2.00 a minute.
#[test]
fn a_job_costs_its_parts_and_its_minutes_of_the_rest() {
    let jobs = [job(45, &[part(eur(4_200))]), job(20, &[part(eur(1_800))]), job(5, &[])];
    assert_eq!(told(Some(eur(20_000)), &[], &jobs), ["132.00 EUR ~", "58.00 EUR ~", "10.00 EUR ~"]);
    let shares = job_costs(Some(eur(20_000)), &[], &jobs);
    assert_eq!(shares.iter().map(|cost| cost.share).collect::<Vec<_>>(), [9_000, 4_000, 1_000]);
}

/// 1.00 over 3 x 30 minutes is 33 1/3 each: one unit is left, and goes to the first of equal remainders. Over 10, 20
/// and 40 minutes it is 14 2/7, 28 4/7 and 57 1/7: the second has the largest remainder.
#[test]
fn what_rounding_leaves_goes_to_the_largest_remainder() {
    let equal = [30, 30, 30].map(|minutes| job(minutes, &[]));
    assert_eq!(told(Some(eur(100)), &[], &equal), ["0.34 EUR ~", "0.33 EUR ~", "0.33 EUR ~"]);
    let unequal = [10, 20, 40].map(|minutes| job(minutes, &[]));
    assert_eq!(told(Some(eur(100)), &[], &unequal), ["0.14 EUR ~", "0.29 EUR ~", "0.57 EUR ~"]);
}

#[test]
fn a_bill_for_one_job_is_its_price_and_one_for_its_parts_is_shared_with_nobody() {
    assert_eq!(told(Some(eur(9_000)), &[part(eur(500))], &[job(45, &[part(eur(4_000))])]), ["90.00 EUR"]);
    let jobs = [job(45, &[part(eur(4_000))]), job(5, &[])];
    assert_eq!(told(Some(eur(4_000)), &[], &jobs), ["40.00 EUR", "0.00 EUR"]);
    assert_eq!(told(Some(eur(0)), &[], &jobs[1..]), ["0.00 EUR"], "done for nothing");
}

#[test]
fn without_a_bill_the_parts_tell_and_without_those_nothing_is_known() {
    let jobs = [job(45, &[part(eur(4_000)), part(eur(150))]), job(5, &[])];
    assert_eq!(told(None, &[part(eur(700))], &jobs), ["41.50 EUR", ""]);
    assert_eq!(told(Some(eur(-500)), &[], &jobs[1..]), [""], "money that came back");
    assert_eq!(told(None, &[], &[]), Vec::<String>::new());
    assert_eq!(told(Some(eur(500)), &[], &[]), Vec::<String>::new(), "a look that found something");
}

/// Of 100.00 the parts, 120.00 and 40.00 before the discount, get 3/4 and 1/4.
#[test]
fn where_the_parts_cost_more_than_the_bill_it_goes_by_their_prices() {
    let jobs = [job(45, &[part(eur(12_000))]), job(20, &[part(eur(4_000))]), job(5, &[])];
    assert_eq!(told(Some(eur(10_000)), &[], &jobs), ["75.00 EUR ~", "25.00 EUR ~", "0.00 EUR ~"]);
}

/// The filter of 20.00 lay at home. A bill of 50.00 holds it beside the oil of 30.00; one of 40.00 cannot, so that the
/// 10.00 beyond the oil are the work and the filter comes on top.
#[test]
fn what_was_paid_before_comes_on_top_of_a_bill_too_small_for_it() {
    let jobs = [job(30, &[part(eur(3_000))]), job(10, &[at_home(eur(2_000))])];
    assert_eq!(told(Some(eur(5_000)), &[], &jobs), ["30.00 EUR", "20.00 EUR"]);
    assert_eq!(told(Some(eur(4_000)), &[], &jobs), ["37.50 EUR ~", "22.50 EUR ~"]);
}

/// 60.00 less the 40.00 of the first job: the seal of 5.00 that nobody gave a job is in the 20.00 that are shared.
#[test]
fn a_part_that_nobody_gave_a_job_is_shared() {
    let jobs = [job(30, &[part(eur(4_000))]), job(10, &[])];
    assert_eq!(told(Some(eur(6_000)), &[part(eur(500))], &jobs), ["55.00 EUR ~", "5.00 EUR ~"]);
}

#[test]
fn each_currency_is_a_sum_of_its_own() {
    let jobs = [job(30, &[part(money(2_500, "USD")), part(eur(1_000))]), job(30, &[])];
    assert_eq!(told(Some(eur(5_000)), &[], &jobs), ["30.00 EUR + 25.00 USD ~", "20.00 EUR ~"]);
    assert_eq!(told(None, &[], &jobs), ["10.00 EUR + 25.00 USD", ""]);
    let costs = job_costs(Some(eur(5_000)), &[], &jobs);
    assert_eq!((costs[0].in_one_sum(), costs[1].in_one_sum()), (None, Some(eur(2_000))));
}

#[test]
fn a_deposit_that_came_back_makes_no_job_cost_less_than_nothing() {
    let jobs = [job(30, &[part(eur(8_000)), part(eur(-1_500))]), job(30, &[part(eur(-900))])];
    assert_eq!(told(Some(eur(10_000)), &[], &jobs), ["82.50 EUR ~", "17.50 EUR ~"]);
    assert_eq!(told(None, &[], &jobs), ["65.00 EUR", "0.00 EUR"]);
}

#[test]
fn an_own_item_counts_as_the_one_in_the_middle_of_the_catalogue() {
    let mut minutes: Vec<_> =
        crate::upkeep::Catalogue::shipped().unwrap().items().iter().map(|item| item.minutes).collect();
    minutes.sort_unstable();
    assert_eq!(u32::from(minutes[minutes.len() / 2]), OWN_MINUTES);
}

proptest! {
    /// Whatever the bill and the parts, the jobs come to the bill to the minor unit, and to what of it was paid before
    /// where it is too small for that; and none of them is negative.
    #[test]
    fn the_jobs_come_to_the_bill(
        total in 0_i64..1_000_000_000_000,
        jobs in prop::collection::vec((0_u32..500, prop::collection::vec(-50_i64..2_000_000, 0..4)), 1..12),
    ) {
        let jobs: Vec<Billed> = jobs.into_iter().map(|(minutes, prices)| Billed {
            minutes,
            parts: prices.into_iter().map(|price| part(eur(price))).collect(),
        }).collect();
        for total in [total, total % 1_000_000, total % 100] {
            let costs = job_costs(Some(eur(total)), &[], &jobs);
            let sums: Vec<i64> = costs.iter().map(|cost| cost.in_one_sum().unwrap().minor).collect();
            prop_assert_eq!(sums.iter().sum::<i64>(), total);
            prop_assert!(sums.iter().all(|&sum| sum >= 0));
        }
    }
}
