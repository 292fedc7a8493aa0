//! How far each car has gone, day by day.

use units::{Day, Distance};

use super::chance::Chance;
use super::people::{Car, Habits};

/// Where a car's odometer stood at the end of every day.
pub(super) struct Drive<'a> {
    car: &'a Car,
    /// Metres gone since the book began, by day.
    gone: Vec<i64>,
}

impl<'a> Drive<'a> {
    /// Lets the car go from the beginning of its book to `today`.
    pub(super) fn new(car: &'a Car, today: Day) -> Drive<'a> {
        let mut chance = Chance::of(&car.vehicle.name);
        let mut sum = 0;
        let days = 0..=today.days_since(car.begins);
        let gone = days.map(|after| {
            sum += metres(&car.habits, car.begins.plus_days(after), &mut chance);
            sum
        });
        Drive { car, gone: gone.collect() }
    }

    /// Metres gone since the book began, at the end of a day within it.
    pub(super) fn gone(&self, day: Day) -> i64 {
        let at = usize::try_from(day.days_since(self.car.begins)).unwrap_or(0);
        self.gone.get(at).copied().unwrap_or(0)
    }

    /// What the instrument shows at the end of a day; nothing on the day on which it was replaced.
    pub(super) fn shown(&self, day: Day) -> String {
        match self.car.replaced {
            Some(replaced) if day == replaced => String::new(),
            Some(replaced) if day > replaced => self.units(self.gone(day) - self.gone(replaced)),
            _ => self.total(day),
        }
    }

    /// What the first instrument shows, or would.
    pub(super) fn total(&self, day: Day) -> String {
        self.units(self.car.start.millimetres() / 1_000 + self.gone(day))
    }

    fn units(&self, metres: i64) -> String {
        Distance::from_millimetres(metres * 1_000).floor(self.car.unit).to_string()
    }
}

/// How far a car goes on one day: nowhere now and then, far in the holidays, less in winter.
fn metres(habits: &Habits, day: Day, chance: &mut Chance) -> i64 {
    let (_, month, of_month) = day.ymd();
    let holidays = month == 7 && (8..=21).contains(&of_month);
    let usual = match month {
        _ if holidays => habits.holiday,
        12 | 1 | 2 => habits.daily * 9 / 10,
        _ => habits.daily,
    };
    if chance.percent(14) { 0 } else { usual * chance.between(40, 170) / 100 }
}
