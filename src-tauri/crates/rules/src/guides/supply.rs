//! What a guide uses up, as something to buy: what the job puts in, what goes in beside it, and what every house has.

use units::{Measure, Quantity};

use super::{CarGuide, Guides, Known, OwnValues};
use crate::upkeep::Catalogue;
use crate::vehicle::Vehicle;

/// What a supply is to its job. Which is which is common practice.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Supply {
    /// The very thing that the job renews.
    Renewed,
    /// What goes in or is used up beside it, and is as easily forgotten: a washer, a cleaner.
    Beside,
    /// What every house has.
    Household,
}

const RENEWED: &[&str] = &[
    "engine-oil",
    "oil-filter",
    "air-filter",
    "cabin-filter",
    "fuel-filter",
    "coolant",
    "battery",
    "wiper-blades",
    "spark-plugs",
    "glow-plugs",
    "bulbs",
    "vacuum-hose",
];
const HOUSEHOLD: &[&str] = &["rags", "cloth", "lint-free-cloth", "water", "water-spray", "chalk"];
/// The supplies of which the sheet says how much goes in, with the key of that value.
const VOLUMES: &[(&str, &str)] = &[("engine-oil", "oil-volume"), ("coolant", "coolant-volume")];

impl Supply {
    /// What the supply with this key is.
    pub fn of(key: &str) -> Supply {
        match key {
            key if RENEWED.contains(&key) => Supply::Renewed,
            key if HOUSEHOLD.contains(&key) => Supply::Household,
            _ => Supply::Beside,
        }
    }
}

impl Guides {
    /// The first guide for this car that does the item with this number.
    pub fn doing<'a>(
        &'a self,
        item: u32,
        car: &Vehicle,
        own: &'a OwnValues,
        catalogue: &'a Catalogue,
    ) -> Option<CarGuide<'a>> {
        let guide = self
            .guides()
            .iter()
            .find(|guide| guide.does.contains(&item) && guide.is_for(car.engine, car.equipment))?;
        self.opened(&guide.key, car, own, catalogue)
    }
}

impl CarGuide<'_> {
    /// How much of a supply goes in, in litres, where the owner wrote it on the sheet of his car.
    pub fn volume(&self, supply: &str) -> Option<Quantity> {
        let (_, key) = VOLUMES.iter().find(|(known, _)| *known == supply)?;
        match self.values().iter().find(|needed| needed.value.key == *key)?.known {
            Known::Own(text) => litres(text),
            Known::Typical(_) | Known::Handbook => None,
        }
    }

    /// How much of its one fluid goes in.
    pub fn own_volume(&self) -> Option<Quantity> {
        self.guide.supplies.iter().find_map(|supply| self.volume(supply))
    }
}

/// `4.3`, `4,3 l`, `4.3 litres`: a number of litres, and nothing else beside it that could change its meaning.
fn litres(text: &str) -> Option<Quantity> {
    let text = text.trim();
    let end = text.find(|c: char| !(c.is_ascii_digit() || matches!(c, '.' | ','))).unwrap_or(text.len());
    let (number, unit) = text.split_at_checked(end)?;
    let unit = unit.trim().trim_end_matches('.').to_lowercase();
    let known = ["", "l", "ltr", "liter", "litre", "liters", "litres", "litro", "litros"];
    Quantity::parse(number, Measure::Litre).ok().filter(|_| known.contains(&unit.as_str()))
}

#[cfg(test)]
#[path = "supply_tests.rs"]
mod tests;
