//! The car's own sheet.

use std::collections::BTreeSet;

use rules::upkeep::{Catalogue, Missing, Standing, Tightener};
use rules::vehicle::{CheckDigit, Fitting, Vin};

use super::book::{driven_form, vehicle_form};
use super::due::plan_line;
use super::guides::car_values;
use super::places::vehicle_line;
use super::show::{item_view, reading_of};
use crate::car::Car;
use crate::{Door, FittedLine, InstrumentLine, MissingKey, MissingLine, Refusal, SheetView, VinView};

impl Door {
    pub(crate) fn sheet_view(&self, book: &str) -> Result<SheetView, Refusal> {
        let car = self.car(book)?;
        let on_this_car =
            car.plan.items().iter().filter(|planned| planned.standing != Standing::NotForThisCar);
        let instruments = car.instruments.iter().map(|instrument| InstrumentLine {
            day: instrument.day.to_string(),
            old: reading_of(instrument.old, car.unit()),
            new: reading_of(instrument.new, car.unit()),
        });
        Ok(SheetView {
            vehicle: vehicle_line(&car),
            form: vehicle_form(&car.content),
            vin: car.content.vin.map(read_vin),
            driven: driven_form(car.content.conditions),
            fitted: fitted(&car, self.catalogue),
            plan: on_this_car
                .map(|planned| plan_line(planned, &car, self.catalogue, self.clock.today()))
                .collect(),
            missing: missing(&car, self.catalogue),
            instruments: instruments.collect(),
            values: car_values(&car, self.catalogue)?,
        })
    }
}

/// What the plan of a car with this engine asks about, with what the owner said.
fn fitted(car: &Car, catalogue: &Catalogue) -> Vec<FittedLine> {
    let items = catalogue.items().iter().filter(|item| item.engines.include(car.vehicle.engine));
    let asked: BTreeSet<Fitting> = items
        .flat_map(|item| {
            let turbo = item.tightened_by.contains(&Tightener::Turbo).then_some(Fitting::Turbo);
            item.only_if.iter().copied().chain(turbo)
        })
        .collect();
    let equipment = car.vehicle.equipment;
    // A car with a chain is not asked for a belt.
    let open = |fitting: &Fitting| equipment.has(*fitting) == equipment.said(*fitting);
    let line = |fitting: Fitting| FittedLine { key: fitting.key().to_owned(), has: equipment.said(fitting) };
    asked.into_iter().filter(open).map(line).collect()
}

/// What the catalogue has that this car does not need.
fn missing(car: &Car, catalogue: &Catalogue) -> Vec<MissingLine> {
    let standing = car.plan.items().iter().filter(|planned| planned.standing == Standing::NotForThisCar);
    let lines = standing.filter_map(|planned| {
        let lacks = match planned.row?.missing(car.vehicle.engine, car.vehicle.equipment)? {
            Missing::Engine => Vec::new(),
            Missing::Fittings(fittings) => fittings,
        };
        Some(MissingLine {
            item: item_view(&planned.item, catalogue),
            state: MissingKey::NotForThisCar,
            lacks: lacks.into_iter().map(|fitting| fitting.key().to_owned()).collect(),
        })
    });
    lines.collect()
}

/// What a vehicle identification number says.
pub fn vin_view(text: &str) -> Result<VinView, Refusal> {
    Ok(read_vin(Vin::parse(text).map_err(|error| Refusal::from(error).at("vin"))?))
}

fn read_vin(vin: Vin) -> VinView {
    let (check_digit, expected) = match vin.check_digit() {
        CheckDigit::Right => ("right", None),
        CheckDigit::Wrong { expected } => ("wrong", Some(expected.to_string())),
    };
    VinView { vin: vin.to_string(), check_digit: check_digit.to_owned(), expected }
}
