//! What each job of a visit cost, where one bill was paid for several.

use std::collections::BTreeMap;

use units::{Currency, Money};

use super::PartPaid;

/// The minutes for which an item of the owner's own counts when a bill is shared: as many as the item in the middle
/// of the catalogue has. An assumption of this program.
pub const OWN_MINUTES: u32 = 30;

/// A job on a bill.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Billed {
    /// How long it takes, in minutes: the catalogue's, or [`OWN_MINUTES`].
    pub minutes: u32,
    /// The parts that served it.
    pub parts: Vec<PartPaid>,
}

/// What a job cost.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct JobCost {
    /// Not negative; one for each currency, in the order of their codes. Empty where nothing is known.
    pub sums: Vec<Money>,
    /// Whether some of it is a share of what was paid for several jobs together.
    pub estimated: bool,
    /// How much of it is a share of what the bill says beyond the parts of the jobs, in minor units of the bill's
    /// currency; 0 where it was the only job.
    pub share: i64,
}

impl JobCost {
    /// The same as one sum; `None` where nothing is known, or where it was paid in several currencies.
    pub fn in_one_sum(&self) -> Option<Money> {
        <[Money; 1]>::try_from(self.sums.as_slice()).ok().map(|[money]| money)
    }
}

/// What each of these jobs cost, in their order.
///
/// A job costs what its own parts cost, and a share of what the bill says beyond them: the work, and the parts in
/// `loose` that nobody said the job of. The shares go by the minutes of the jobs, an assumption of this program: a
/// workshop bills by time, and a bill seldom says more. In the currency of the bill the jobs come to the bill, to the
/// minor unit, what is left by rounding going to the largest remainders.
///
/// - A bill that is too small to hold parts that had been paid for before does not hold them: they come on top of it.
/// - Where it does not even come to its new parts, as after a discount, it goes by their prices.
/// - Without a bill a job costs its own parts. Parts in another currency than the bill's are a sum of their own.
/// - A bill below 0 is money that came back, and tells nothing of what a job costs; the same holds for parts.
pub fn job_costs(total: Option<Money>, loose: &[PartPaid], jobs: &[Billed]) -> Vec<JobCost> {
    let total = total.filter(|total| total.minor >= 0);
    let currency = total.map(|total| total.currency);
    let mut costs: Vec<JobCost> = jobs.iter().map(|job| of_parts(&job.parts, currency)).collect();
    if let Some(total) = total {
        for (cost, billed) in costs.iter_mut().zip(shared(total, loose, jobs)) {
            cost.sums.extend(billed.sums);
            cost.sums.sort_by_key(|money| money.currency.code());
            (cost.estimated, cost.share) = (billed.estimated, billed.share);
        }
    }
    costs
}

/// What the parts of a job cost, without those in one currency.
fn of_parts(parts: &[PartPaid], without: Option<Currency>) -> JobCost {
    let mut sums: BTreeMap<&str, Money> = BTreeMap::new();
    let prices = parts.iter().filter_map(|part| part.price);
    for price in prices.filter(|price| Some(price.currency) != without) {
        let sum = sums.entry(price.currency.code()).or_insert(Money { minor: 0, ..price });
        sum.minor = sum.minor.saturating_add(price.minor);
    }
    let sums = sums.into_values().map(|sum| Money { minor: sum.minor.max(0), ..sum });
    JobCost { sums: sums.collect(), ..JobCost::default() }
}

/// What each job cost in the currency of the bill.
fn shared(total: Money, loose: &[PartPaid], jobs: &[Billed]) -> Vec<JobCost> {
    let own: Vec<i64> = jobs.iter().map(|job| sum(&job.parts, total.currency, |part| part.price)).collect();
    let all =
        own.iter().fold(sum(loose, total.currency, |part| part.price), |all, own| all.saturating_add(*own));
    let every = || jobs.iter().flat_map(|job| &job.parts).chain(loose);
    let new = sum(every(), total.currency, PartPaid::still_paid);
    let before = if total.minor < all && total.minor >= new { all - new } else { 0 };
    let bill = total.minor.saturating_add(before);
    let beyond = bill - own.iter().fold(0_i64, |sum, own| sum.saturating_add(*own));
    let several = jobs.len() > 1;
    let job = |own: i64, share: i64| JobCost {
        sums: vec![Money { minor: own + share, ..total }],
        estimated: beyond != 0 && several,
        share: if several { share } else { 0 },
    };
    if beyond < 0 {
        return apportion(bill, &own).into_iter().map(|discounted| job(discounted, 0)).collect();
    }
    let minutes: Vec<i64> = jobs.iter().map(|job| i64::from(job.minutes.max(1))).collect();
    own.iter().zip(apportion(beyond, &minutes)).map(|(own, share)| job(*own, share)).collect()
}

/// The sum of what `money` gives of these parts in one currency, at least 0.
fn sum<'a>(
    parts: impl IntoIterator<Item = &'a PartPaid>,
    currency: Currency,
    money: impl Fn(&PartPaid) -> Option<Money>,
) -> i64 {
    let money = parts.into_iter().filter_map(money).filter(|money| money.currency == currency);
    money.fold(0_i64, |sum, money| sum.saturating_add(money.minor)).max(0)
}

/// Shares a sum of at least 0 by these weights, each at least 0, by the largest remainder: each gets its share rounded
/// down, and the units that are left go one each to the largest remainders, of equal ones to the first.
fn apportion(sum: i64, weights: &[i64]) -> Vec<i64> {
    let whole: i128 = weights.iter().map(|&weight| i128::from(weight)).sum();
    if whole == 0 {
        return vec![0; weights.len()];
    }
    let exact = weights.iter().map(|&weight| i128::from(sum) * i128::from(weight));
    let (mut shares, remainders): (Vec<i64>, Vec<i128>) =
        exact.map(|exact| (i64::try_from(exact / whole).unwrap_or(i64::MAX), exact % whole)).unzip();
    let left = shares.iter().fold(i128::from(sum), |left, &share| left - i128::from(share));
    let mut order: Vec<usize> = (0..weights.len()).collect();
    order.sort_by_key(|&at| std::cmp::Reverse(remainders[at]));
    for &at in order.iter().take(usize::try_from(left).unwrap_or(0)) {
        shares[at] += 1;
    }
    shares
}

#[cfg(test)]
#[path = "share_tests.rs"]
mod tests;
