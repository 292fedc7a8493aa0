//! Sums of costs over a span of days.

use std::collections::BTreeMap;

use units::{Currency, Day, Money};

/// What money went on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum CostClass {
    /// Fuel, and electricity to drive with.
    Fuel,
    /// Parts and fluids.
    Parts,
    /// Work of others.
    Work,
    /// Tax, insurance, inspection and other duties.
    Duties,
}

/// Money that went on the car on a day; negative for money that came back.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Cost {
    /// When.
    pub day: Day,
    /// On what.
    pub class: CostClass,
    /// How much.
    pub money: Money,
}

/// What a span of days cost in one currency.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Bill {
    /// Its first day.
    pub from: Day,
    /// The day after its last one.
    pub to: Day,
    /// The currency of all its sums.
    pub currency: Currency,
    /// In minor units, in the order of [`CostClass::ALL`].
    sums: [i64; 4],
    /// Whether the span is over: today lies on its last day or after it.
    pub over: bool,
}

impl CostClass {
    /// Every class, in the order in which sums are stacked.
    pub const ALL: [CostClass; 4] = [CostClass::Fuel, CostClass::Parts, CostClass::Work, CostClass::Duties];

    /// Its name in the words.
    pub const fn key(self) -> &'static str {
        match self {
            CostClass::Fuel => "fuel",
            CostClass::Parts => "parts",
            CostClass::Work => "work",
            CostClass::Duties => "duties",
        }
    }
}

impl Bill {
    /// What went on this class.
    pub const fn of(&self, class: CostClass) -> Money {
        Money { minor: self.sums[class as usize], currency: self.currency }
    }

    /// What it came to in all.
    pub fn total(&self) -> Money {
        let minor = self.sums.iter().fold(0_i64, |sum, &part| sum.saturating_add(part));
        Money { minor, currency: self.currency }
    }
}

/// What the days from `from` up to `to`, which is not among them, cost: a bill for each currency, by its code.
pub fn over(costs: &[Cost], from: Day, to: Day, today: Day) -> Vec<Bill> {
    let inside = costs.iter().filter(|cost| (from..to).contains(&cost.day));
    let mut sums: BTreeMap<&str, (Currency, [i64; 4])> = BTreeMap::new();
    for Cost { class, money, .. } in inside {
        let (_, sums) = sums.entry(money.currency.code()).or_insert((money.currency, [0; 4]));
        let sum = &mut sums[*class as usize];
        *sum = sum.saturating_add(money.minor);
    }
    let over = to.days_since(today) <= 1;
    sums.into_values().map(|(currency, sums)| Bill { from, to, currency, sums, over }).collect()
}

/// A bill for each calendar year and currency in which there were costs, in order; the year of today is not over.
pub fn by_year(costs: &[Cost], today: Day) -> Vec<Bill> {
    by_period(costs, today, |year, _| (Day::from_ymd(year, 1, 1).ok(), Day::from_ymd(year + 1, 1, 1).ok()))
}

/// A bill for each calendar month and currency in which there were costs, in order.
pub fn by_month(costs: &[Cost], today: Day) -> Vec<Bill> {
    by_period(costs, today, |year, month| {
        let (next_year, next) = if month == 12 { (year + 1, 1) } else { (year, month + 1) };
        (Day::from_ymd(year, month, 1).ok(), Day::from_ymd(next_year, next, 1).ok())
    })
}

/// `period` gives the first day of the period of a year and month, and the day after its last one.
fn by_period(
    costs: &[Cost],
    today: Day,
    period: impl Fn(i32, u32) -> (Option<Day>, Option<Day>),
) -> Vec<Bill> {
    let mut costs = costs.to_vec();
    costs.sort_by_key(|cost| cost.day);
    let span = |cost: &Cost| {
        let (year, month, _) = cost.day.ymd();
        let (from, to) = period(year, month);
        // The last year of the calendar has no year after it.
        (from.unwrap_or(cost.day), to.unwrap_or(cost.day.plus_days(i32::MAX)))
    };
    let periods = costs.chunk_by(|a, b| span(a) == span(b));
    periods
        .filter_map(|costs| costs.first().map(|cost| (span(cost), costs)))
        .flat_map(|((from, to), costs)| over(costs, from, to, today))
        .collect()
}

/// What work cost when a visit cost `total` in all and its parts so much: the rest.
///
/// `None` where the parts cost more than all of it, or were paid in another currency.
pub fn work_of(total: Money, parts: &[Money]) -> Option<Money> {
    let same = parts.iter().all(|part| part.currency == total.currency);
    let spent = parts.iter().try_fold(0_i64, |sum, part| sum.checked_add(part.minor))?;
    let minor = total.minor.checked_sub(spent).filter(|&minor| minor >= 0 && same)?;
    Some(Money { minor, currency: total.currency })
}
