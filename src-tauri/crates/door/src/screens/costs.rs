//! What a car costs, from everything in its book that has a price.

use rules::costs::{
    Bill, Cost, CostClass, Paid, PartPaid, PerDistance, by_month, by_year, per_distance, purchase, visit,
};
use rules::parts::from_stock;
use rules::upkeep::Catalogue;
use units::{Currency, Day, DistanceUnit, Money, UnitPrice};

use super::consumption::is_office;
use super::fills::Fills;
use super::parts::fitted;
use super::places::vehicle_line;
use super::show::{money_view, unit_key};
use super::stock::{notes_of, paid_for};
use crate::car::{Car, Purchase, Visit};
use crate::{
    BillPartView, BillView, CostsView, Door, PerDistancePartView, PerDistanceView, Reading, Refusal,
};

/// How many days the last year has.
const YEAR: i32 = 365;

impl Door {
    pub(crate) fn costs_view(&self, book: &str) -> Result<CostsView, Refusal> {
        let car = self.car(book)?;
        let today = self.clock.today();
        let fills = Fills::of_car(&car);
        let visits = visits(&car, self.catalogue);
        let unpriced_visits = visits.iter().filter(|(_, unpriced)| *unpriced).count();
        let costs = all(&fills, visits, &car);
        let month = |bill: &Bill| bill_view(bill, 7);
        let year = |bill: &Bill| bill_view(bill, 4);
        Ok(CostsView {
            vehicle: vehicle_line(&car),
            today: today.to_string(),
            classes: CostClass::ALL.map(|class| class.key().to_owned()).to_vec(),
            currencies: currencies(&costs),
            years: by_year(&costs, today).iter().map(year).collect(),
            months: by_month(&costs, today).iter().map(month).collect(),
            distance: distances(&costs, &car, today),
            unpriced_fills: fills.rows.iter().filter(|row| row.fuel.total.is_none()).count(),
            unpriced_visits,
        })
    }
}

impl Door {
    /// A bill for each calendar year and currency, oldest first.
    pub(crate) fn bills_by_year(&self, car: &Car) -> Vec<BillView> {
        let costs = all(&Fills::of_car(car), visits(car, self.catalogue), car);
        by_year(&costs, self.clock.today()).iter().map(|bill| bill_view(bill, 4)).collect()
    }
}

/// Everything that has a price, in order of day.
fn all(fills: &Fills, visits: Vec<(Vec<Cost>, bool)>, car: &Car) -> Vec<Cost> {
    let visits = visits.into_iter().flat_map(|(costs, _)| costs);
    let bought = car.bought.iter().flat_map(bought);
    let mut costs: Vec<Cost> = filled(fills).chain(visits).chain(bought).collect();
    costs.sort_by_key(|cost| cost.day);
    costs
}

fn filled(fills: &Fills) -> impl Iterator<Item = Cost> {
    fills.rows.iter().filter_map(|row| {
        let money = row.fuel.total?;
        Some(Cost { day: row.reading.day, class: CostClass::Fuel, money })
    })
}

fn bought(purchase_made: &Purchase) -> Vec<Cost> {
    let content = &purchase_made.content;
    let prices: Vec<Money> = content.parts.iter().filter_map(|part| part.price).collect();
    purchase(content.day, content.cost, &prices)
}

/// What each visit cost, and whether it must have cost something and has no price.
fn visits(car: &Car, catalogue: &Catalogue) -> Vec<(Vec<Cost>, bool)> {
    let of = |(visit, parts): (&Visit, Vec<PartPaid>)| {
        (visit_costs(visit, &parts, catalogue), is_unpriced(visit, &parts))
    };
    car.visits.iter().zip(parts_paid(car)).map(of).collect()
}

/// What was paid for the parts of each visit, in the order of the visits and their parts.
pub(super) fn parts_paid(car: &Car) -> Vec<Vec<PartPaid>> {
    let fitted: Vec<_> = fitted(car).collect();
    let mut at_home = from_stock(&paid_for(car), &fitted, &notes_of(car)).into_iter();
    let of = |visit: &Visit| {
        let parts = visit.content.parts.iter().zip(at_home.by_ref());
        let paid = parts.map(|(part, paid_before)| PartPaid {
            price: part.price,
            quantity: part.quantity.thousandths(),
            paid_before,
        });
        paid.collect()
    };
    car.visits.iter().map(of).collect()
}

fn visit_costs(done: &Visit, parts: &[PartPaid], catalogue: &Catalogue) -> Vec<Cost> {
    let paid = if is_office(done, catalogue) {
        Paid::Office
    } else if done.content.by.workshop().is_empty() {
        Paid::Owner
    } else {
        Paid::Workshop
    };
    visit(done.content.day, done.content.cost, paid, parts)
}

fn is_unpriced(visit: &Visit, parts: &[PartPaid]) -> bool {
    let new_part = |part: &PartPaid| part.price.is_none() && part.paid_before < part.quantity;
    visit.content.cost.is_none() && (!visit.content.by.workshop().is_empty() || parts.iter().any(new_part))
}

/// The currencies, the one used last first.
fn currencies(costs: &[Cost]) -> Vec<String> {
    let mut known: Vec<Currency> = Vec::new();
    for cost in costs.iter().rev() {
        if !known.contains(&cost.money.currency) {
            known.push(cost.money.currency);
        }
    }
    known.into_iter().map(|currency| currency.code().to_owned()).collect()
}

/// A bill, with its first day cut to so many characters: a year has four, a month seven.
fn bill_view(bill: &Bill, period: usize) -> BillView {
    let part = |class| {
        let money = bill.of(class);
        BillPartView { class: class.key().to_owned(), money: money_view(money), minor: money.minor }
    };
    BillView {
        period: bill.from.to_string().chars().take(period).collect(),
        currency: bill.currency.code().to_owned(),
        decimals: bill.currency.decimals(),
        parts: CostClass::ALL.map(part).to_vec(),
        total: money_view(bill.total()),
        over: bill.over,
    }
}

/// What the distance cost between known readings: in the year up to the last one, and in all.
fn distances(costs: &[Cost], car: &Car, today: Day) -> Vec<PerDistanceView> {
    let points = car.believed().points();
    let Some((first, last)) = points.first().zip(points.last()).map(|(first, last)| (first.day, last.day))
    else {
        return Vec::new();
    };
    let year = last.plus_days(-YEAR);
    let periods = [("last-year", year.max(first)), ("all", first)];
    let wanted = periods.into_iter().filter(|(period, _)| *period == "all" || year > first);
    let view = |(period, from): (&str, Day)| {
        let each = per_distance(costs, (from, last), today, |day| car.believed().on(day));
        let period = period.to_owned();
        each.into_iter().filter_map(move |each| distance_view(&period, &each, car.unit())).collect::<Vec<_>>()
    };
    wanted.flat_map(view).collect()
}

fn distance_view(period: &str, each: &PerDistance, unit: DistanceUnit) -> Option<PerDistanceView> {
    let part = |class: CostClass| {
        let number = each.of(class, unit).map(UnitPrice::number)?;
        Some(PerDistancePartView { class: class.key().to_owned(), number })
    };
    Some(PerDistanceView {
        period: period.to_owned(),
        from: each.bill.from.to_string(),
        to: each.bill.to.to_string(),
        distance: Reading { count: each.distance.round(unit), unit: unit_key(unit) },
        currency: each.bill.currency.code().to_owned(),
        total: each.total(unit)?.number(),
        parts: CostClass::ALL.into_iter().filter_map(part).collect(),
    })
}
