//! What a buyer asks after: oil, belts, brakes, fluids, filters, and what was mended.
//!
//! Which item belongs where is common practice.

use super::{Catalogue, ItemRef};

/// Work that is asked after in one breath, in the order in which it is asked.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Asked {
    /// Engine oil.
    Oil,
    /// What drives the camshaft, the alternator and the pumps.
    Belts,
    /// Pads, discs, lines, and the looks at them.
    Brakes,
    /// Every other fluid that is renewed.
    Fluids,
    /// Air, fuel, cabin and exhaust.
    Filters,
    /// Parts that fail sooner or later, and the owner's own items.
    Repairs,
}

impl Asked {
    /// All of them, in the order in which they are asked.
    pub const ALL: [Asked; 6] =
        [Asked::Oil, Asked::Belts, Asked::Brakes, Asked::Fluids, Asked::Filters, Asked::Repairs];

    /// Its name in the words.
    pub const fn key(self) -> &'static str {
        match self {
            Asked::Oil => "oil",
            Asked::Belts => "belts",
            Asked::Brakes => "brakes",
            Asked::Fluids => "fluids",
            Asked::Filters => "filters",
            Asked::Repairs => "repairs",
        }
    }

    /// The keys of its items, the weightiest first.
    pub const fn items(self) -> &'static [&'static str] {
        match self {
            Asked::Oil => &["engine-oil"],
            Asked::Belts => {
                &["timing-belt", "timing-chain", "drive-belt-change", "timing-belt-look", "drive-belt"]
            }
            Asked::Brakes => &[
                "brake-pads-front",
                "brake-discs-front",
                "brake-pads-rear",
                "brake-discs-rear",
                "brake-lines",
                "parking-brake",
                "brake-check",
            ],
            Asked::Fluids => &[
                "brake-fluid",
                "coolant",
                "gearbox-oil",
                "automatic-gearbox-oil",
                "axle-oil",
                "power-steering-fluid-change",
                "high-voltage-coolant",
            ],
            Asked::Filters => &[
                "engine-air-filter",
                "fuel-filter",
                "cabin-filter",
                "particulate-filter-ash",
                "particulate-filter",
            ],
            Asked::Repairs => &[
                "battery",
                "spark-plugs",
                "glow-plugs",
                "ignition-leads",
                "egr-valve",
                "throttle-body",
                "idle-valve",
                "tyres",
            ],
        }
    }

    /// Where a buyer asks after this item; `None` of what he does not ask after, such as wipers and papers, and of
    /// a number that this version does not know.
    pub fn about(item: &ItemRef, catalogue: &Catalogue) -> Option<Asked> {
        if matches!(item, ItemRef::Own(_)) {
            return Some(Asked::Repairs);
        }
        let key = catalogue.row(item)?.key.as_str();
        Asked::ALL.into_iter().find(|asked| asked.items().contains(&key))
    }

    /// How weighty an item is among those of its group: its place in the list. Of repairs none outweighs another.
    pub fn rank(self, item: &ItemRef, catalogue: &Catalogue) -> usize {
        let place = catalogue.row(item).and_then(|row| self.items().iter().position(|key| *key == row.key));
        place.filter(|_| self != Asked::Repairs).unwrap_or(usize::MAX)
    }
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]

    use super::*;

    fn about(key: &str) -> Option<Asked> {
        let catalogue = Catalogue::shipped().unwrap();
        Asked::about(&ItemRef::Catalogue(catalogue.by_key(key).unwrap().number), catalogue)
    }

    #[test]
    fn every_listed_item_exists_and_stands_in_one_group() {
        let catalogue = Catalogue::shipped().unwrap();
        let mut seen = Vec::new();
        for asked in Asked::ALL {
            for key in asked.items() {
                let item = ItemRef::Catalogue(catalogue.by_key(key).unwrap().number);
                assert_eq!(Asked::about(&item, catalogue), Some(asked), "{key}");
                assert!(!seen.contains(key), "{key} stands twice");
                seen.push(key);
            }
        }
    }

    #[test]
    fn an_own_item_is_a_repair_and_a_look_at_the_lamps_is_nothing_to_ask_after() {
        assert_eq!(about("battery"), Some(Asked::Repairs));
        assert_eq!(about("lamps"), None);
        assert_eq!(about("insurance"), None);
        let catalogue = Catalogue::shipped().unwrap();
        let own = ItemRef::Own("Tow bar wiring".parse().unwrap());
        assert_eq!(Asked::about(&own, catalogue), Some(Asked::Repairs));
        assert_eq!(Asked::about(&ItemRef::Catalogue(99_999), catalogue), None);
    }
}
