//! A bound below which no order can go.
//!
//! To have found the fault with a chance of more than `u`, an order must have made checks that find it with
//! at least `u` when each is counted as if it came first, and must have paid for them. What is shared is
//! counted in parts: each check pays for an opening in proportion to its chance among those that need it,
//! which is never more than the whole. The cheapest way to reach `u` under both simplifications takes checks
//! by chance over cost, the last one in part (Dantzig's relaxation of the knapsack, 1957). The expected cost
//! is at least the integral of that over `u`, and the whole cost of all checks for what none of them finds.

use super::Search;

/// A cost that no order of all checks can undercut.
pub(super) fn below(search: &Search) -> f64 {
    let gains: Vec<_> = search.looks.iter().map(|look| search.gain(look)).collect();
    let mut parts: Vec<_> =
        (0..gains.len()).map(|place| (gains[place], price(search, &gains, place))).collect();
    parts.sort_by(|a, b| (b.0 * a.1).total_cmp(&(a.0 * b.1)));
    let found = found(search);
    let (mut reached, mut spent, mut sum) = (0.0_f64, 0.0, 0.0);
    for (gain, price) in parts {
        let step = gain.min(found - reached);
        if step <= 0.0 {
            break;
        }
        let paid = price * step / gain;
        sum += step * (spent + paid / 2.0);
        reached += step;
        spent += paid;
    }
    sum + (1.0 - found) * all(search)
}

/// What a check costs with its part of what it opens.
fn price(search: &Search, gains: &[f64], place: usize) -> f64 {
    let look = &search.looks[place];
    let part = |opening: usize| {
        let sharing = search.looks.iter().zip(gains).filter(|(other, _)| other.opens >> opening & 1 == 1);
        let together: f64 = sharing.map(|(_, gain)| gain).sum();
        if together > 0.0 { search.openings[opening] * gains[place] / together } else { 0.0 }
    };
    let needed = (0..search.openings.len()).filter(|opening| look.opens >> opening & 1 == 1);
    look.cost + needed.map(part).sum::<f64>()
}

/// The chance that some check finds the fault.
fn found(search: &Search) -> f64 {
    let found = |(cause, chance): (usize, &f64)| {
        chance * (1.0 - search.looks.iter().map(|look| 1.0 - look.finds[cause]).product::<f64>())
    };
    search.causes.iter().enumerate().map(found).sum()
}

/// What all checks cost together.
fn all(search: &Search) -> f64 {
    let opened = search.looks.iter().fold(0, |open, look| open | look.opens);
    search.opening(opened) + search.looks.iter().map(|look| look.cost).sum::<f64>()
}
