//! The guides to the jobs that an owner does, and the numbers of the car that they ask for.

use std::collections::BTreeMap;

use rules::guides::{Bounds, CarGuide, Caution, Guides, Known, Needed, Origin, OwnValues, Typical, Value};
use rules::upkeep::{Catalogue, Item, ItemRef};

use super::due::last_parts;
use super::places::vehicle_line;
use super::show::item_view;
use crate::car::Car;
use crate::{
    BoundsView, CautionView, Door, GuideLine, GuideView, GuidesView, ItemView, KnownView, OriginView,
    PartView, Refusal, StepView, TypicalView, ValueView, forms,
};

/// By number of an item, the key of the guide to it.
pub(super) struct GuideKeys(BTreeMap<u32, String>);

impl GuideKeys {
    /// The keys of these guides: one that does the item goes before one that only looks at it, and of several the first.
    pub fn of(guides: &[GuideLine]) -> GuideKeys {
        let does = guides.iter().flat_map(|guide| guide.does.iter().map(move |item| (item, guide)));
        let finds = guides.iter().flat_map(|guide| guide.finds.iter().map(move |item| (item, guide)));
        let mut keys = BTreeMap::new();
        for (item, guide) in does.chain(finds) {
            if let ItemView::Catalogue { number, .. } = item {
                keys.entry(*number).or_insert_with(|| guide.key.clone());
            }
        }
        GuideKeys(keys)
    }

    /// The key of the guide to an item.
    pub fn to(&self, item: &ItemRef) -> Option<String> {
        match item {
            ItemRef::Catalogue(number) => self.0.get(number).cloned(),
            ItemRef::Own(_) => None,
        }
    }
}

impl Door {
    pub(crate) fn guides_view(&self, book: &str) -> Result<GuidesView, Refusal> {
        let car = self.car(book)?;
        Ok(GuidesView { vehicle: vehicle_line(&car), guides: self.guide_lines(&car)? })
    }

    /// The guides for this car, each in a line.
    pub(super) fn guide_lines(&self, car: &Car) -> Result<Vec<GuideLine>, Refusal> {
        let own = own_values(car);
        let guides = Guides::shipped()?.for_car(&car.vehicle, &own, self.catalogue);
        Ok(guides.iter().map(|guide| self.guide_line(guide)).collect())
    }

    pub(crate) fn guide_view(&self, book: &str, key: &str) -> Result<GuideView, Refusal> {
        let car = self.car(book)?;
        let own = own_values(&car);
        let library = Guides::shipped()?;
        let guide = library.opened(key, &car.vehicle, &own, self.catalogue);
        let guide = guide.ok_or_else(|| forms::unknown("guide-unknown", key).at("key"))?;
        let for_car = |key: &&String| {
            library.by_key(key).is_some_and(|other| other.is_for(car.vehicle.engine, car.vehicle.equipment))
        };
        Ok(GuideView {
            vehicle: vehicle_line(&car),
            guide: self.guide_line(&guide),
            parts: self.parts_of(&guide, &car),
            tools: guide.guide.tools.clone(),
            supplies: guide.guide.supplies.clone(),
            hazards: guide.guide.hazards.iter().map(|hazard| hazard.key().to_owned()).collect(),
            not: guide.guide.not.clone(),
            cautions: guide.cautions.iter().map(|caution| caution_view(caution)).collect(),
            steps: guide.steps.iter().map(step_view).collect(),
            values: guide.values().iter().map(|needed| value_view(needed.value, needed.known)).collect(),
            look: guide.guide.look.clone(),
            after: guide.guide.after.clone(),
            disposal: guide.guide.disposal.clone(),
            then: guide.guide.then.iter().filter(for_car).cloned().collect(),
        })
    }

    fn guide_line(&self, guide: &CarGuide<'_>) -> GuideLine {
        GuideLine {
            key: guide.guide.key.clone(),
            minutes: guide.guide.minutes,
            does: self.items_of(&guide.does),
            finds: self.items_of(&guide.finds),
        }
    }

    fn items_of(&self, items: &[&Item]) -> Vec<ItemView> {
        items.iter().map(|item| item_view(&ItemRef::Catalogue(item.number), self.catalogue)).collect()
    }

    /// What was fitted the last time for the items that a guide does.
    fn parts_of(&self, guide: &CarGuide<'_>, car: &Car) -> Vec<PartView> {
        let items = guide.does.iter().map(|item| ItemRef::Catalogue(item.number));
        items.flat_map(|item| last_parts(&item, car, self.catalogue)).collect()
    }
}

/// The numbers of the car that its guides ask for, in the order of the table.
pub(super) fn car_values(car: &Car, catalogue: &Catalogue) -> Result<Vec<ValueView>, Refusal> {
    let own = own_values(car);
    let library = Guides::shipped()?;
    let guides = library.for_car(&car.vehicle, &own, catalogue);
    let asked: std::collections::BTreeSet<u32> =
        guides.iter().flat_map(CarGuide::values).map(|needed| needed.value.number).collect();
    // One that the owner gave is shown even where no guide asks for it any more.
    let shown = library
        .values()
        .iter()
        .filter(|value| asked.contains(&value.number) || own.get(value.number).is_some());
    Ok(shown.map(|value| value_view(value, value.known(&own))).collect())
}

pub(super) fn own_values(car: &Car) -> OwnValues {
    car.content.values.iter().map(|(number, text)| (*number, text.clone())).collect()
}

fn step_view(step: &rules::guides::CarStep<'_>) -> StepView {
    let key = |needed: &Needed<'_>| needed.value.key.clone();
    StepView { key: step.step.key.clone(), values: step.values.iter().map(key).collect() }
}

/// Every caution, in the order in which they are read: what kills first.
pub(super) fn cautions() -> Result<Vec<CautionView>, Refusal> {
    Ok(Guides::shipped()?.cautions().iter().map(caution_view).collect())
}

fn caution_view(caution: &Caution) -> CautionView {
    CautionView {
        key: caution.key.clone(),
        one_by_one: caution.one_by_one,
        sources: caution.sources.iter().map(origin_view).collect(),
    }
}

fn origin_view(origin: &Origin) -> OriginView {
    let (source, name) = match origin {
        Origin::Regulation(name) => ("regulation", name.as_str()),
        Origin::Published(name) => ("published", name.as_str()),
        Origin::FromMemory(name) => ("from-memory", name.as_str()),
        Origin::CommonPractice => ("common-practice", ""),
    };
    OriginView { source: source.to_owned(), name: name.to_owned() }
}

fn value_view(value: &Value, known: Known<'_>) -> ValueView {
    let known = match known {
        Known::Own(text) => {
            KnownView::Own { text: text.to_owned(), unit: value.unit.clone().filter(|_| lacks_unit(text)) }
        }
        Known::Typical(cases) => KnownView::Typical { cases: cases.iter().map(typical_view).collect() },
        Known::Handbook => KnownView::Handbook,
    };
    ValueView { key: value.key.clone(), unit: value.unit.clone(), known }
}

/// Whether a text is digits and what parts them alone. A unit behind one that was typed with its own would be a second
/// one, and of a torque a dangerous one.
fn lacks_unit(text: &str) -> bool {
    text.chars().all(|c| c.is_ascii_digit() || c.is_whitespace() || ".,/–-".contains(c))
}

fn typical_view(typical: &Typical) -> TypicalView {
    TypicalView {
        case: typical.case.clone(),
        bounds: bounds_view(typical.bounds),
        unit: typical.unit.clone(),
        newton_metres: typical.newton_metres().map(bounds_view),
        source: origin_view(&typical.source),
    }
}

fn bounds_view(bounds: Bounds) -> BoundsView {
    BoundsView { low: bounds.low().to_string(), high: bounds.high().map(|high| high.to_string()) }
}
