//! Filling up: how much, and what it cost.

use units::{Day, Money};

use super::chance::Chance;
use super::drive::Drive;
use super::people::Car;
use super::tell::Draft;
use super::{What, receipt};
use crate::{FuelForm, ReadingForm};

/// A few days pass between the last fill and today.
const LAST_FILL: i32 = 4;

/// What is in the tank, and what is due to be written down with the next fill.
struct Tank<'a> {
    car: &'a Car,
    chance: Chance,
    /// Millilitres burnt since the tank was full.
    burnt: i64,
    /// Millilitres that may be burnt before the owner fills up.
    until: i64,
    missed: bool,
}

/// Every fill of a car, oldest first.
pub(super) fn fills(car: &Car, drive: &Drive<'_>, today: Day) -> Vec<Draft> {
    let mut tank =
        Tank { car, chance: Chance::of(car.vehicle.make_model.as_str()), burnt: 0, until: 0, missed: false };
    tank.next_stop();
    let mut fills = Vec::new();
    for after in 1..today.days_since(car.begins) - LAST_FILL {
        let day = car.begins.plus_days(after);
        tank.burn(day, drive.gone(day) - drive.gone(day.plus_days(-1)));
        if tank.burnt >= tank.until && car.replaced != Some(day) {
            fills.extend(tank.fill(day).map(|fuel| reading(day, drive.shown(day), fuel)));
        }
    }
    fills
}

fn reading(day: Day, shown: String, fuel: FuelForm) -> Draft {
    let form = ReadingForm {
        day: day.to_string(),
        reading: shown,
        status: String::new(),
        fuel: Some(fuel),
        papers: Vec::new(),
    };
    Draft::new(day, What::Reading(form))
}

impl Tank<'_> {
    fn burn(&mut self, day: Day, metres: i64) {
        let noise = self.chance.between(96, 104);
        let thirst = self.car.habits.thirst * self.drag(day) / 1_000;
        self.burnt += metres * thirst * cold(day) / 1_000 * noise / 100 / 100_000;
    }

    /// Thousandths of the usual thirst.
    fn drag(&self, day: Day) -> i64 {
        let drag = self.car.drags.filter(|drag| (drag.from..drag.mended).contains(&day));
        drag.map_or(1_000, |drag| drag.thirst)
    }

    fn next_stop(&mut self) {
        self.until = self.car.habits.tank * self.chance.between(50, 66) * 10;
    }

    /// Fills up. Now and then nobody writes it down, and the next fill says so; now and then it is no full tank.
    fn fill(&mut self, day: Day) -> Option<FuelForm> {
        self.next_stop();
        let part = self.chance.percent(4);
        let taken = if part { self.burnt * self.chance.between(45, 60) / 100 } else { self.burnt };
        let forgotten = !part && self.chance.percent(2);
        self.burnt -= taken;
        if std::mem::replace(&mut self.missed, forgotten) && !forgotten {
            return Some(self.form(day, taken, "missed"));
        }
        (!forgotten).then(|| self.form(day, taken, if part { "part" } else { "full" }))
    }

    fn form(&mut self, day: Day, taken: i64, fill: &str) -> FuelForm {
        let currency = self.car.place(day).currency;
        let centilitres = (taken + 5) / 10;
        let price = self.litre_price(day);
        let minor = (centilitres * price + 500) / 1_000;
        let total = receipt::currency(currency).map(|currency| Money { minor, currency }.number());
        FuelForm {
            amount: format!("{}.{:02}", centilitres / 100, centilitres % 100),
            unit: "litre".to_owned(),
            price: format!("{}.{:03}", price / 1_000, price % 1_000),
            total: total.unwrap_or_default(),
            currency: currency.to_owned(),
            fill: fill.to_owned(),
            kind: self.car.vehicle.engine.clone(),
        }
    }

    /// Thousandths of the currency: it rises over the years, swings over each, and differs from pump to pump.
    fn litre_price(&mut self, day: Day) -> i64 {
        let years = i64::from(day.days_since(self.car.begins)) / 365;
        let (_, month, _) = day.ymd();
        let season =
            [0, 4, 12, 20, 31, 38, 44, 40, 29, 18, 9, 2].get(month as usize - 1).copied().unwrap_or(0);
        self.car.habits.litre + years * 37 + season + self.chance.between(-35, 35)
    }
}

/// Thousandths of the summer's consumption. Published: about 12 to 15 % more in the city at -7 than at 25 degrees
/// Celsius (US Department of Energy, fact 818 of 2014 and fact of the week 1164 of 2020); less of it on a mild coast.
fn cold(day: Day) -> i64 {
    match day.ymd().1 {
        12 | 1 | 2 => 1_110,
        3 | 11 => 1_060,
        4 | 10 => 1_025,
        _ => 1_000,
    }
}
