//! A guide in front of one car: its items, its cautions, its steps, and its values.

use super::{Caution, Guide, Guides, Known, OwnValues, Step, Value};
use crate::upkeep::{Catalogue, Item};
use crate::vehicle::Vehicle;

/// A guide as it reads for one car.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct CarGuide<'a> {
    /// The guide.
    pub guide: &'a Guide,
    /// The items of this car that a visit writes as done.
    pub does: Vec<&'a Item>,
    /// The items of this car about which the job may find something.
    pub finds: Vec<&'a Item>,
    /// What is said before the first step, what kills first, the handbook last.
    pub cautions: Vec<&'a Caution>,
    /// The steps that this car has, in their order.
    pub steps: Vec<CarStep<'a>>,
}

/// A step for one car.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct CarStep<'a> {
    /// The step.
    pub step: &'a Step,
    /// The values to be shown with it.
    pub values: Vec<Needed<'a>>,
}

/// A value that a step asks for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Needed<'a> {
    /// Which one.
    pub value: &'a Value,
    /// What is known of it.
    pub known: Known<'a>,
}

impl Guides {
    /// The guides for this car, in the order of the tables.
    ///
    /// `catalogue` must be the one that the guides were read with.
    pub fn for_car<'a>(
        &'a self,
        car: &Vehicle,
        own: &'a OwnValues,
        catalogue: &'a Catalogue,
    ) -> Vec<CarGuide<'a>> {
        let fitting = self.guides().iter().filter(|guide| guide.is_for(car.engine, car.equipment));
        fitting.map(|guide| self.before(guide, car, own, catalogue)).collect()
    }

    /// The guide with this key for this car; `None` where there is none, or it is for another kind of car.
    pub fn opened<'a>(
        &'a self,
        key: &str,
        car: &Vehicle,
        own: &'a OwnValues,
        catalogue: &'a Catalogue,
    ) -> Option<CarGuide<'a>> {
        let guide = self.by_key(key).filter(|guide| guide.is_for(car.engine, car.equipment))?;
        Some(self.before(guide, car, own, catalogue))
    }

    fn before<'a>(
        &'a self,
        guide: &'a Guide,
        car: &Vehicle,
        own: &'a OwnValues,
        catalogue: &'a Catalogue,
    ) -> CarGuide<'a> {
        let items = |numbers: &[u32]| {
            let known = numbers.iter().filter_map(|&number| catalogue.item(number));
            known.filter(|item| item.is_for(car.engine, car.equipment)).collect()
        };
        let steps = guide.steps.iter().filter(|step| step.is_for(car.engine, car.equipment));
        CarGuide {
            guide,
            does: items(&guide.does),
            finds: items(&guide.finds),
            cautions: self.cautions_of(guide).filter(|caution| caution.engines.include(car.engine)).collect(),
            steps: steps.map(|step| CarStep { step, values: self.needed(step, own) }).collect(),
        }
    }

    fn needed<'a>(&'a self, step: &'a Step, own: &'a OwnValues) -> Vec<Needed<'a>> {
        let values = step.values.iter().filter_map(|&number| self.value(number));
        values.map(|value| Needed { value, known: value.known(own) }).collect()
    }
}

impl<'a> CarGuide<'a> {
    /// Every value that its steps ask for, each once, in the order of the steps.
    pub fn values(&self) -> Vec<Needed<'a>> {
        let mut values: Vec<Needed<'a>> = Vec::new();
        for needed in self.steps.iter().flat_map(|step| &step.values) {
            if values.iter().all(|seen| seen.value.number != needed.value.number) {
                values.push(*needed);
            }
        }
        values
    }
}
