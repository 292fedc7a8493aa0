//! The best order, exactly: a dynamic programme over sets of checks (Held and Karp 1962).
//!
//! What is left to find, and what is open, depends only on which checks were made and not on their order, so
//! the best way to go on from each set is worked out once.

use super::Search;

/// The best order to begin with, for the first checks of an order: those of `first`, in the best order, and
/// then the rest as they are. What the rest costs does not depend on the order of those before it.
pub(super) fn beginning(search: &Search, order: &[usize], first: usize) -> Vec<usize> {
    let (begun, rest) = order.split_at(first.min(order.len()));
    let looks = begun.iter().map(|&place| search.looks[place].clone()).collect();
    let alone = Search { causes: search.causes.clone(), openings: search.openings.clone(), looks };
    let best = self::order(&alone).into_iter().map(|place| begun[place]);
    best.chain(rest.iter().copied()).collect()
}

/// The best order of all checks; the work and the memory grow as two to the power of their number.
pub(super) fn order(search: &Search) -> Vec<usize> {
    let sets = 1_usize << search.looks.len();
    let (nothing, opened) = (nothing(search, sets), opened(search, sets));
    let mut onward = vec![0.0; sets];
    let mut next = vec![0; sets];
    // A set comes after all that hold more, so that these are known by then.
    for set in (0..sets - 1).rev() {
        let mut best = f64::INFINITY;
        for (place, look) in search.looks.iter().enumerate().filter(|(place, _)| set >> place & 1 == 0) {
            let after = set | 1 << place;
            let cost = nothing[set] * (look.cost + opened[after] - opened[set]) + onward[after];
            if cost < best {
                (best, next[set]) = (cost, place);
            }
        }
        onward[set] = best;
    }
    follow(&next)
}

/// Goes from the empty set to the full one by the best next check of each.
fn follow(next: &[usize]) -> Vec<usize> {
    let mut set = 0;
    let mut order = Vec::new();
    while set + 1 < next.len() {
        order.push(next[set]);
        set |= 1 << next[set];
    }
    order
}

/// For each set of checks, the chance that it finds nothing.
///
/// The chance that a set misses a cause is a product over its checks of `1 - d`, which multiplied out is a
/// sum over the sets within it of products of `-d`. Only checks that look for the cause come into that, and
/// they are few. So the products are gathered from all causes first, and summed over the sets within each set
/// once for all.
fn nothing(search: &Search, sets: usize) -> Vec<f64> {
    let mut sums = vec![0.0; sets];
    sums[0] = 1.0 - search.causes.iter().sum::<f64>();
    for (cause, chance) in search.causes.iter().enumerate() {
        let mut terms = vec![(0, *chance)];
        for (place, look) in search.looks.iter().enumerate().filter(|(_, look)| look.finds[cause] > 0.0) {
            let more: Vec<_> =
                terms.iter().map(|(set, term)| (set | 1 << place, -term * look.finds[cause])).collect();
            terms.extend(more);
        }
        for (set, term) in terms {
            sums[set] += term;
        }
    }
    for place in 0..search.looks.len() {
        for set in (0..sets).filter(|set| set >> place & 1 == 1) {
            sums[set] += sums[set ^ 1 << place];
        }
    }
    sums
}

/// For each set of checks, what it costs to open all that they need.
fn opened(search: &Search, sets: usize) -> Vec<f64> {
    let mut open = vec![0; sets];
    for set in 1..sets {
        let last = set.trailing_zeros() as usize;
        open[set] = open[set & (set - 1)] | search.looks[last].opens;
    }
    open.into_iter().map(|open| search.opening(open)).collect()
}
