//! The fills of a car, for the Pump and for the plots.

use book::ReadingRow;
use book::content::Fuel;
use rules::fuel::{self, FuelKind, PumpUnit, Series, Warning};
use rules::running::Reading;
use units::{Amount, Consumption, ConsumptionUnit, Day, SubjectId, VolumeUnit};

use crate::car::Car;
use crate::forms::amount_number;
use crate::{AmountTakenView, UseView};

/// Everything that was filled in, oldest first.
pub(super) struct Fills {
    pub rows: Vec<FillRow>,
    own: FuelKind,
}

/// A reading with fuel.
pub(super) struct FillRow {
    pub subject: SubjectId,
    pub reading: Reading,
    pub fuel: Fuel,
}

impl Fills {
    pub fn of_car(car: &Car) -> Fills {
        let fill = |row: &ReadingRow| {
            row.fuel.map(|fuel| FillRow { subject: row.subject, reading: row.reading, fuel })
        };
        Fills { rows: car.readings.iter().filter_map(fill).collect(), own: car.own_fuel() }
    }

    /// The fuel of one kind, newest first.
    pub fn of(&self, kind: FuelKind) -> impl Iterator<Item = &Fuel> {
        let of_kind = move |fuel: &&Fuel| fuel.filled.kind(self.own) == kind;
        self.rows.iter().rev().map(|row| &row.fuel).filter(of_kind)
    }

    /// The spans of each kind, and what is odd about the fills.
    pub fn spans(&self, car: &Car) -> (Vec<Series>, Vec<Warning>) {
        let fill = |row: &FillRow| {
            let at = car.believed().at(row.reading.day, row.reading.shown);
            Some(fuel::Fill {
                day: row.reading.day,
                travelled: at.unwrap_or_else(|| car.track.travelled(row.reading.day, row.reading.shown)),
                taken: row.fuel.filled.taken(self.own)?,
                // Between a reading that cannot be right and another one there is no distance: what was filled in
                // belongs to the next full tank.
                level: if at.is_some() { row.fuel.fill.level() } else { row.fuel.fill.level().in_part() },
                cost: row.fuel.total,
            })
        };
        fuel::spans(&self.rows.iter().filter_map(fill).collect::<Vec<_>>())
    }

    /// The days of fills that count for nothing, because the car takes nothing of the sort.
    pub fn of_no_use(&self) -> impl Iterator<Item = Day> {
        let none = |row: &&FillRow| row.fuel.filled.taken(self.own).is_none();
        self.rows.iter().filter(none).map(|row| row.reading.day)
    }

    /// The unit in which a kind was typed on a day, or was typed last.
    pub fn unit(&self, kind: FuelKind, day: Option<Day>) -> PumpUnit {
        let of_kind = |row: &&FillRow| row.fuel.filled.kind(self.own) == kind;
        // The rows are in order of day, so that those up to a day are the first ones.
        let upto = self.rows.partition_point(|row| day.is_none_or(|day| row.reading.day <= day));
        let row = self.rows[..upto].iter().rev().find(of_kind);
        row.map_or(kind.units()[0], |row| row.fuel.filled.unit())
    }

    /// An amount in the unit in which the kind was typed on this day.
    pub fn amount(&self, kind: FuelKind, day: Day, amount: Amount) -> AmountTakenView {
        amount_view(amount, self.unit(kind, Some(day)))
    }

    /// The unit of consumption for a kind: the one that was asked for if it fits, else the usual one.
    pub fn consumption_unit(
        &self,
        kind: FuelKind,
        car: &Car,
        asked: Option<ConsumptionUnit>,
    ) -> ConsumptionUnit {
        let electric = kind == FuelKind::Electric;
        asked.filter(|unit| unit.is_electric() == electric).unwrap_or_else(|| match self.unit(kind, None) {
            PumpUnit::Volume(volume) => ConsumptionUnit::usual(car.unit(), volume),
            PumpUnit::KilowattHour if electric => ConsumptionUnit::usual_electric(car.unit()),
            PumpUnit::KilowattHour => ConsumptionUnit::usual(car.unit(), VolumeUnit::Litre),
        })
    }
}

/// An amount in a unit.
pub(super) fn amount_view(amount: Amount, unit: PumpUnit) -> AmountTakenView {
    AmountTakenView { number: amount_number(amount, unit), unit: unit.key().to_owned() }
}

/// A consumption in a unit; nothing in a unit of another sort.
pub(super) fn use_view(used: Consumption, unit: ConsumptionUnit) -> Option<UseView> {
    Some(UseView { number: used.number(unit, 1)?, hundredths: used.scaled(unit, 2)? })
}
