//! Reading the catalogue: a plain table under `data/`, checked row by row.

use std::collections::BTreeMap;
use std::sync::OnceLock;

use super::table::RawTable;
use super::{Item, ItemRef, Timing};
use crate::RulesError;
use crate::rows::wrong;
use crate::vehicle::EngineKind;

/// What the trade knows of: every item of upkeep, in ascending order of number.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Catalogue {
    items: Vec<Item>,
}

impl Catalogue {
    /// The catalogue that comes with the program, read once.
    pub fn shipped() -> Result<&'static Catalogue, RulesError> {
        static SHIPPED: OnceLock<Result<Catalogue, RulesError>> = OnceLock::new();
        let shipped = SHIPPED.get_or_init(|| Catalogue::parse(include_str!("../../data/catalogue.toml")));
        shipped.as_ref().map_err(Clone::clone)
    }

    /// Reads a catalogue; [`RulesError::Catalogue`] names the row that is wrong.
    pub fn parse(text: &str) -> Result<Catalogue, RulesError> {
        let table: RawTable = toml::from_str(text).map_err(|error| wrong("the table", error.message()))?;
        let mut numbers = BTreeMap::new();
        for row in &table.item {
            if numbers.insert(row.key.clone(), row.number).is_some() {
                return Err(wrong(&row.key, "another item has this key"));
            }
        }
        let mut items =
            table.item.into_iter().map(|row| row.read(&numbers)).collect::<Result<Vec<_>, _>>()?;
        items.sort_by_key(|item| item.number);
        let twice = items.windows(2).find(|pair| pair[0].number == pair[1].number);
        if let Some(pair) = twice {
            return Err(wrong(&pair[1].key, "another item has this number"));
        }
        let catalogue = Catalogue { items };
        if let Some(item) = catalogue.items.iter().find(|item| !catalogue.can_follow(item)) {
            let problem =
                "what it follows, and it itself, have 'every'; that follows nothing and is on the same cars";
            return Err(wrong(&item.key, problem));
        }
        if let Some(item) = catalogue.items.iter().find(|item| !catalogue.is_heeded(item)) {
            let problem = "what a finding calls has it in 'due_when', and this row has it not";
            return Err(wrong(&item.key, problem));
        }
        Ok(catalogue)
    }

    /// Whether something comes of each finding that calls another item, and once.
    fn is_heeded(&self, item: &Item) -> bool {
        item.calls.iter().all(|(finding, number)| {
            let heeds = |called: &Item| called.due_when.contains(finding);
            self.item(*number).is_some_and(heeds) && !heeds(item)
        })
    }

    /// Whether what an item follows, if anything, has an interval to lend it.
    fn can_follow(&self, item: &Item) -> bool {
        let comes_round = |item: &Item| matches!(item.timing, Timing::Every(_));
        item.follows.is_none_or(|leader| {
            let leads = |leader: &Item| {
                leader.follows.is_none() && comes_round(leader) && is_on_every_car_of(leader, item)
            };
            comes_round(item) && self.item(leader).is_some_and(leads)
        })
    }

    /// Every item, in ascending order of number.
    pub fn items(&self) -> &[Item] {
        &self.items
    }

    /// The item with this number.
    pub fn item(&self, number: u32) -> Option<&Item> {
        let at = self.items.binary_search_by_key(&number, |item| item.number).ok()?;
        self.items.get(at)
    }

    /// The row of an item; `None` for one of the owner's own, and for a number that this version does not know.
    pub fn row(&self, item: &ItemRef) -> Option<&Item> {
        match item {
            ItemRef::Catalogue(number) => self.item(*number),
            ItemRef::Own(_) => None,
        }
    }

    /// The item with this key.
    pub fn by_key(&self, key: &str) -> Option<&Item> {
        self.items.iter().find(|item| item.key == key)
    }
}

/// Whether every car that has an item has what leads it.
fn is_on_every_car_of(leader: &Item, item: &Item) -> bool {
    let mut engines = EngineKind::ALL.into_iter().filter(|&engine| item.engines.include(engine));
    let fitted = leader.only_if.iter().all(|fitting| item.only_if.contains(fitting));
    fitted && engines.all(|engine| leader.engines.include(engine))
}

#[cfg(test)]
#[path = "catalogue_tests.rs"]
mod tests;
