//! A good order of many checks: built of blocks that share their openings, then improved move by move.
//!
//! Taking next whatever has the best chance for its cost, a block at a time, is within four times the best
//! where each check costs the same and nothing is shared (Feige, Lovász and Tetali, Algorithmica 40, 2004);
//! with openings no such factor is claimed, and `bound` says how far off this very order can be.

use super::{Search, State};

/// An order of all checks.
pub(super) fn order(search: &Search) -> Vec<usize> {
    let mut left: Vec<_> = (0..search.looks.len()).collect();
    let mut state = State::of(search);
    let mut order = Vec::new();
    while let Some(block) = best_block(search, &state, &left) {
        for place in block {
            state.take(search, place);
            left.retain(|other| *other != place);
            order.push(place);
        }
    }
    improved(search, order)
}

/// The block with the best chance for its cost: what one check opens, and as many of those that it then
/// serves as make the ratio better. `None` when no check is left.
fn best_block(search: &Search, state: &State, left: &[usize]) -> Option<Vec<usize>> {
    let block = |first: &usize| {
        let open = state.open | search.looks[*first].opens;
        let mut served: Vec<_> =
            left.iter().copied().filter(|place| search.looks[*place].opens & !open == 0).collect();
        let worth = |place: usize| {
            let look = &search.looks[place];
            state.gain(look) / look.cost.max(f64::MIN_POSITIVE)
        };
        served.sort_by(|a, b| worth(*b).total_cmp(&worth(*a)));
        prefix(search, state, &served)
    };
    let best = left.iter().filter_map(block).max_by(|a, b| a.0.total_cmp(&b.0));
    best.map(|(_, block)| block)
}

/// The beginning of a list of checks that has the best chance for its cost, with that ratio.
fn prefix(search: &Search, state: &State, checks: &[usize]) -> Option<(f64, Vec<usize>)> {
    let mut after = state.clone();
    let mut cost = 0.0;
    let mut best: Option<(f64, usize)> = None;
    for (place, &check) in checks.iter().enumerate() {
        cost += after.price(search, &search.looks[check]);
        after.take(search, check);
        let ratio = (state.nothing - after.nothing) / cost.max(f64::MIN_POSITIVE);
        if best.is_none_or(|(best, _)| ratio > best) {
            best = Some((ratio, place + 1));
        }
    }
    best.map(|(ratio, length)| (ratio, checks[..length].to_vec()))
}

/// The order after every move of one check to another place that makes it cheaper by more than rounding can,
/// until a whole round of moves finds none.
fn improved(search: &Search, mut order: Vec<usize>) -> Vec<usize> {
    let mut cost = search.cost(&order);
    loop {
        let before = cost;
        for from in 0..order.len() {
            for to in 0..order.len() {
                let moved = moved(&order, from, to);
                let cheaper = search.cost(&moved);
                if cheaper < cost * (1.0 - 1e-9) {
                    (order, cost) = (moved, cheaper);
                }
            }
        }
        if cost >= before {
            return order;
        }
    }
}

/// The order with the check at one place moved to another.
fn moved(order: &[usize], from: usize, to: usize) -> Vec<usize> {
    let mut moved = order.to_vec();
    let check = moved.remove(from);
    moved.insert(to, check);
    moved
}
