//! Orders held against worked examples of the literature, and against every order there is.
#![allow(clippy::unwrap_used)]

use proptest::prelude::*;

use super::overlooked::{Place, next};
use super::*;
use crate::statistics::chance::Chance;

/// Checks that find one cause each and nothing else: the chances, the costs, and what each opens.
fn plain(chances: &[f64], costs: &[f64], openings: &[f64], opens: &[u16]) -> Search {
    let look = |place: usize| Look {
        cost: costs[place],
        opens: opens.get(place).copied().unwrap_or(0),
        finds: (0..chances.len()).map(|cause| if cause == place { 1.0 } else { 0.0 }).collect(),
    };
    Search {
        causes: chances.to_vec(),
        openings: openings.to_vec(),
        looks: (0..costs.len()).map(look).collect(),
    }
}

/// Every order of so many checks (Heap's method, recursively).
fn orders(count: usize) -> Vec<Vec<usize>> {
    if count == 0 {
        return vec![Vec::new()];
    }
    let insert = |shorter: Vec<usize>| {
        (0..count).map(move |place| {
            let mut order = shorter.clone();
            order.insert(place, count - 1);
            order
        })
    };
    orders(count - 1).into_iter().flat_map(insert).collect()
}

/// What an order costs, once more and as plainly as it can be said: cause by cause, check by check.
fn cost_by_cause(search: &Search, order: &[usize]) -> f64 {
    let walk = |finds: &dyn Fn(&Look) -> f64| {
        let (mut missed, mut open, mut sum) = (1.0, Vec::new(), 0.0);
        for &place in order {
            let look = &search.looks[place];
            let mut price = look.cost;
            for opening in (0..16).filter(|opening| look.opens & 1 << opening != 0) {
                if !open.contains(&opening) {
                    open.push(opening);
                    price += search.openings[opening];
                }
            }
            sum += missed * price;
            missed *= 1.0 - finds(look);
        }
        sum
    };
    let known: f64 = search.causes.iter().sum();
    let each =
        search.causes.iter().enumerate().map(|(cause, chance)| chance * walk(&|look| look.finds[cause]));
    each.sum::<f64>() + (1.0 - known) * walk(&|_| 0.0)
}

fn cheapest(search: &Search) -> f64 {
    let costs = orders(search.looks.len()).into_iter().map(|order| cost_by_cause(search, &order));
    costs.fold(f64::INFINITY, f64::min)
}

fn close(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-9 * b.abs().max(1.0)
}

/// Five causes with one check each; values and costs worked out by brute force over all 120 orders.
#[test]
fn five_plain_checks_cost_from_45_5_to_109_85() {
    let search = plain(&[0.45, 0.25, 0.15, 0.10, 0.05], &[40.0, 5.0, 20.0, 60.0, 2.0], &[], &[]);
    let best = search.best();
    assert_eq!(best.order, [1, 4, 0, 2, 3]);
    assert!(best.exact && close(best.cost, 45.5), "{best:?}");
    assert_eq!(search.by_ratio(), best.order);
    let worst = orders(5).iter().map(|order| search.cost(order)).fold(0.0, f64::max);
    assert!(close(worst, 109.85), "{worst}");
}

/// Two checks behind a panel and one in the open: the plain order by ratio costs 7.85, the best 6.85. Worked
/// out by hand: 5 + 0.6 * 4.5 + 0.3 * 0.5 against 4.5 + 0.7 * 0.5 + 0.4 * 5.
#[test]
fn a_shared_panel_is_opened_first_although_the_ratio_says_otherwise() {
    let search = plain(&[0.3, 0.3, 0.4], &[0.5, 0.5, 5.0], &[4.0], &[1, 1, 0]);
    assert_eq!(search.by_ratio()[0], 2);
    assert!(close(search.cost(&search.by_ratio()), 7.85));
    let best = search.best();
    assert!(close(best.cost, 6.85) && best.order[2] == 2, "{best:?}");
    assert!(close(search.cost(&blocks::order(&search)), 6.85));
}

/// Kleinberg and Tardos, Algorithm Design (2005), chapter 4, exercise on weighted completion times: jobs of 1
/// and 3 with weights 10 and 2 cost 18 in that order and 46 in the other. It is the same sum with the weights
/// as chances.
#[test]
fn the_textbook_jobs_cost_18_and_46() {
    let search = plain(&[10.0 / 12.0, 2.0 / 12.0], &[1.0, 3.0], &[], &[]);
    assert!(close(search.cost(&[0, 1]) * 12.0, 18.0));
    assert!(close(search.cost(&[1, 0]) * 12.0, 46.0));
    assert_eq!(search.best().order, [0, 1]);
}

/// Ross, A First Course in Probability, exercise on a machine with two possible causes: the first is checked
/// first just when `C1 / p <= C2 / (1 - p)`; what repairs cost cancels out.
#[test]
fn of_two_causes_that_one_is_checked_first_which_costs_less_for_its_chance() {
    let mut chance = Chance(7);
    for _ in 0..1_000 {
        let (p, first, second) =
            (chance.between(0.01, 0.99), chance.between(0.1, 50.0), chance.between(0.1, 50.0));
        let order = plain(&[p, 1.0 - p], &[first, second], &[], &[]).best().order;
        assert_eq!(order[0] == 0, first / p <= second / (1.0 - p), "{p} {first} {second}");
    }
}

/// Kadane and Simon (1977): with independent checks and nothing shared, chance over cost is best.
#[test]
fn plain_checks_are_best_in_the_order_of_their_ratios() {
    let mut chance = Chance(1977);
    for _ in 0..300 {
        let count = 1 + chance.below(6);
        let weights: Vec<_> = (0..count).map(|_| chance.between(0.01, 1.0)).collect();
        let sum: f64 = weights.iter().sum::<f64>() + chance.between(0.0, 1.0);
        let chances: Vec<_> = weights.iter().map(|weight| weight / sum).collect();
        let costs: Vec<_> = (0..count).map(|_| chance.between(0.1, 60.0)).collect();
        let search = plain(&chances, &costs, &[], &[]);
        assert!(close(search.cost(&search.by_ratio()), cheapest(&search)), "{search:?}");
    }
}

/// A search with overlapping, imperfect checks and shared openings.
fn search(most: usize) -> impl Strategy<Value = Search> {
    let look = |causes: usize| {
        let finds = prop::collection::vec(prop_oneof![2 => Just(0.0), 1 => 0.05..0.99], causes);
        (0.5..60.0, 0_u16..8, finds).prop_map(|(cost, opens, finds)| Look { cost, opens, finds })
    };
    (1_usize..6).prop_flat_map(move |causes| {
        let weights = prop::collection::vec(0.01..1.0, causes);
        let openings = prop::collection::vec(0.0..40.0, 3);
        let looks = prop::collection::vec(look(causes), 1..=most);
        (weights, openings, looks, 0.0..0.5).prop_map(
            |(weights, openings, looks, other): (Vec<f64>, _, _, f64)| {
                let sum = weights.iter().sum::<f64>() / (1.0 - other);
                Search { causes: weights.iter().map(|weight| weight / sum).collect(), openings, looks }
            },
        )
    })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(128))]

    #[test]
    fn the_best_order_is_the_cheapest_of_all_orders(search in search(6)) {
        let best = search.best();
        prop_assert!(best.exact);
        prop_assert!(close(best.cost, cheapest(&search)), "{best:?}");
        prop_assert!(close(best.cost, cost_by_cause(&search, &best.order)));
    }

    #[test]
    fn no_order_undercuts_the_bound_and_the_built_order_does_not_undercut_the_best(search in search(8)) {
        let best = search.best().cost;
        prop_assert!(bound::below(&search) <= best * (1.0 + 1e-9));
        let built = blocks::order(&search);
        let mut sorted = built.clone();
        sorted.sort_unstable();
        prop_assert_eq!(sorted, (0..search.looks.len()).collect::<Vec<_>>());
        prop_assert!(search.cost(&built) >= best * (1.0 - 1e-9));
    }
}

/// What the built order costs above the best over searches of ten checks, where both can be worked out.
#[test]
fn the_built_order_is_close_to_the_best_where_the_best_is_known() {
    let mut chance = Chance(10);
    let mut ratios: Vec<f64> = (0..200)
        .map(|_| {
            let search = shared(&mut chance, 10);
            search.cost(&blocks::order(&search)) / search.best().cost
        })
        .collect();
    ratios.sort_by(f64::total_cmp);
    let mean = ratios.iter().sum::<f64>() / 200.0;
    println!("built over best: mean {mean:.5}, worst {:.5}", ratios[199]);
    assert!(mean < 1.002 && ratios[199] < 1.08, "mean {mean}, worst {}", ratios[199]);
}

#[test]
fn beyond_the_exact_size_the_order_says_how_far_off_it_can_be() {
    let mut chance = Chance(24);
    for _ in 0..20 {
        let search = shared(&mut chance, 24);
        let best = search.best();
        assert!(!best.exact && best.at_least <= best.cost && best.at_least > 0.3 * best.cost, "{best:?}");
        assert!(best.cost <= search.cost(&search.by_ratio()) * (1.0 + 1e-9));
    }
}

/// Checks that share openings and overlap in what they find.
fn shared(chance: &mut Chance, count: usize) -> Search {
    let causes: Vec<_> = (0..8).map(|_| chance.between(0.01, 0.12)).collect();
    let mut look = || Look {
        cost: chance.between(2.0, 60.0),
        opens: 1 << chance.below(4),
        finds: (0..8).map(|_| if chance.one_in(3) { chance.between(0.3, 0.98) } else { 0.0 }).collect(),
    };
    let looks = (0..count).map(|_| look()).collect();
    Search { causes, openings: vec![0.0, 10.0, 20.0, 100.0], looks }
}

/// What looking by a sequence costs until the thing is found, cut off where hardly anything is left.
fn until_found(places: &[Place], sequence: &[usize]) -> f64 {
    let mut left: Vec<_> = places.iter().map(|place| place.chance).collect();
    sequence
        .iter()
        .map(|&place| {
            let cost = places[place].cost * left.iter().sum::<f64>();
            left[place] *= places[place].overlooks;
            cost
        })
        .sum()
}

/// The rule's looks after those of a beginning.
fn by_rule(places: &[Place], beginning: &[usize], length: usize) -> Vec<usize> {
    let mut sequence = beginning.to_vec();
    let mut looks = vec![0; places.len()];
    for &place in beginning {
        looks[place] += 1;
    }
    while sequence.len() < length {
        let place = next(places, &looks).unwrap();
        looks[place] += 1;
        sequence.push(place);
    }
    sequence
}

/// Chew (1967), against every way to begin: none of the first six looks can be chosen better than by the
/// rule.
#[test]
fn no_beginning_beats_the_rule_for_overlooked_faults() {
    let mut chance = Chance(1967);
    for _ in 0..25 {
        let first = chance.between(0.1, 0.6);
        let second = chance.between(0.1, 0.9) * (1.0 - first);
        let mut place = |p: f64| Place {
            chance: p,
            overlooks: chance.between(0.0, 0.7),
            cost: chance.between(1.0, 20.0),
        };
        let places = [place(first), place(second), place(1.0 - first - second)];
        let rule = until_found(&places, &by_rule(&places, &[], 120));
        for code in 0..3_usize.pow(6) {
            let beginning: Vec<_> = (0..6).map(|look| code / 3_usize.pow(look) % 3).collect();
            let other = until_found(&places, &by_rule(&places, &beginning, 120));
            assert!(rule <= other * (1.0 + 1e-9), "{places:?} {beginning:?}: {rule} {other}");
        }
    }
}

/// The rule with every look certain is the plain order by chance over cost.
#[test]
fn where_nothing_is_overlooked_the_rule_is_chance_over_cost() {
    let place = |chance, cost| Place { chance, overlooks: 0.0, cost };
    let places =
        [place(0.45, 40.0), place(0.25, 5.0), place(0.15, 20.0), place(0.10, 60.0), place(0.05, 2.0)];
    assert_eq!(by_rule(&places, &[], 5), [1, 4, 0, 2, 3]);
    assert_eq!(next(&[], &[]), None);
}

#[test]
fn a_search_without_checks_costs_nothing() {
    let none = Search { causes: vec![], openings: vec![], looks: vec![] };
    assert_eq!(none.best(), Best { order: vec![], cost: 0.0, at_least: 0.0, exact: true });
}
