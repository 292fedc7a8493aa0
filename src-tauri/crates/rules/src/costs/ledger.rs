//! What a visit and a purchase put on the books: each piece of money once.
//!
//! A part that was bought to be fitted later is paid for when it is bought, and its price in the visit at which it
//! goes in is the same money again.

use units::{Day, Money};

use super::{Cost, CostClass, work_of};

/// A part of a visit.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct PartPaid {
    /// What all of it cost, as the visit has it.
    pub price: Option<Money>,
    /// How much or how many, in thousandths, above 0.
    pub quantity: u32,
    /// How much of it was at home and had been paid for; at most the quantity.
    pub paid_before: u32,
}

/// Who was paid in a visit.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Paid {
    /// Nobody for work: the owner did it himself, and whatever he paid was for parts and fluids.
    Owner,
    /// A workshop.
    Workshop,
    /// An office, an inspection or an insurer.
    Office,
}

/// The costs of a visit.
///
/// - What a workshop is paid beyond the parts is for its work.
/// - The total of a visit holds the prices of all its parts; where it is too small for that it holds those that were
///   not paid before; and where it is too small for those too, all of it was for parts.
/// - Without a total the prices of the parts count.
pub fn visit(day: Day, total: Option<Money>, paid: Paid, parts: &[PartPaid]) -> Vec<Cost> {
    let cost = |class, money: Money| (money.minor != 0).then_some(Cost { day, class, money });
    let prices: Vec<Money> = parts.iter().filter_map(|part| part.price).collect();
    let new: Vec<Money> = parts.iter().filter_map(PartPaid::still_paid).collect();
    let Some(total) = total else {
        return new.into_iter().filter_map(|price| cost(CostClass::Parts, price)).collect();
    };
    let rest = match paid {
        Paid::Office => return cost(CostClass::Duties, total).into_iter().collect(),
        Paid::Owner => CostClass::Parts,
        Paid::Workshop => CostClass::Work,
    };
    match work_of(total, &prices).or_else(|| work_of(total, &new)) {
        Some(beyond) => {
            let parts = new.into_iter().map(|price| (CostClass::Parts, price));
            parts.chain([(rest, beyond)]).filter_map(|(class, money)| cost(class, money)).collect()
        }
        None => cost(CostClass::Parts, total).into_iter().collect(),
    }
}

/// The costs of parts that were bought to be fitted later: the total, or where there is none the prices.
pub fn purchase(day: Day, total: Option<Money>, prices: &[Money]) -> Vec<Cost> {
    let money = total.map_or_else(|| prices.to_vec(), |total| vec![total]);
    money.into_iter().map(|money| Cost { day, class: CostClass::Parts, money }).collect()
}

impl PartPaid {
    /// The share of the price for what had not been paid before, halves up.
    pub(super) fn still_paid(&self) -> Option<Money> {
        let Money { minor, currency } = self.price?;
        let quantity = i128::from(self.quantity.max(1));
        let new = i128::from(self.quantity.saturating_sub(self.paid_before));
        let share = (2 * i128::from(minor) * new + quantity).div_euclid(2 * quantity);
        Some(Money { minor: i64::try_from(share).unwrap_or(minor), currency })
    }
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]

    use super::*;
    use crate::testing::day;
    use CostClass::{Duties, Parts, Work};

    fn eur(minor: i64) -> Money {
        Money { minor, currency: "EUR".parse().unwrap() }
    }

    fn part(price: i64, quantity: u32, paid_before: u32) -> PartPaid {
        PartPaid { price: Some(eur(price)), quantity, paid_before }
    }

    fn told(total: Option<i64>, paid: Paid, parts: &[PartPaid]) -> Vec<(CostClass, i64)> {
        let costs = visit(day("2026-05-04"), total.map(eur), paid, parts);
        costs.iter().map(|cost| (cost.class, cost.money.minor)).collect()
    }

    #[test]
    fn a_workshop_is_paid_for_parts_and_for_work() {
        let parts = [part(2_000, 1_000, 0), part(500, 1_000, 0)];
        let split = [(Parts, 2_000), (Parts, 500), (Work, 7_500)];
        assert_eq!(told(Some(10_000), Paid::Workshop, &parts), split);
        assert_eq!(told(Some(2_500), Paid::Workshop, &parts), split[..2]);
        assert_eq!(told(None, Paid::Workshop, &parts), split[..2]);
        assert_eq!(told(Some(2_000), Paid::Workshop, &parts), [(Parts, 2_000)], "less than its parts");
    }

    #[test]
    fn the_owner_pays_for_no_work_and_an_office_gets_a_duty() {
        assert_eq!(
            told(Some(3_000), Paid::Owner, &[part(2_000, 1_000, 0)]),
            [(Parts, 2_000), (Parts, 1_000)]
        );
        assert_eq!(told(Some(18_200), Paid::Office, &[]), [(Duties, 18_200)]);
        assert_eq!(told(None, Paid::Office, &[]), []);
        assert_eq!(told(Some(-500), Paid::Workshop, &[]), [(Parts, -500)], "money that came back");
    }

    #[test]
    fn what_was_paid_before_is_not_paid_again() {
        let stock = [part(2_000, 1_000, 1_000), part(500, 1_000, 0)];
        assert_eq!(told(None, Paid::Owner, &stock), [(Parts, 500)]);
        assert_eq!(told(Some(2_500), Paid::Owner, &stock), [(Parts, 500)], "the total has them in it");
        assert_eq!(told(Some(500), Paid::Owner, &stock), [(Parts, 500)], "the total leaves them out");
        assert_eq!(told(None, Paid::Owner, &[part(1_001, 2_000, 1_000)]), [(Parts, 501)], "half of it");
    }

    #[test]
    fn a_purchase_is_its_total_or_its_prices() {
        let minor = |costs: Vec<Cost>| costs.iter().map(|cost| cost.money.minor).collect::<Vec<_>>();
        let prices = [eur(100), eur(200)];
        assert_eq!(minor(purchase(day("2026-05-04"), Some(eur(350)), &prices)), [350]);
        assert_eq!(minor(purchase(day("2026-05-04"), None, &prices)), [100, 200]);
    }
}
