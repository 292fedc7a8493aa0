//! A visit: what was done, by whom, with which parts.

use rules::upkeep::{Finding, ItemRef, Milli, OwnName};
use units::cbor::{Cbor, CborError, CborValue, MapReader, MapWriter};
use units::{Day, Distance, Money, Quantity, SubjectId};

use super::vehicle::some_text;

/// Work done on one day.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct VisitContent {
    /// When.
    pub day: Day,
    /// What the instrument showed, if someone wrote it down.
    pub shown: Option<Distance>,
    /// Who did it.
    pub by: By,
    /// What was done.
    pub items: Vec<ItemRef>,
    /// What was fitted or filled in.
    pub parts: Vec<PartContent>,
    /// What it cost in all.
    pub cost: Option<Money>,
    /// Anything else worth keeping.
    pub note: String,
    /// The papers that belong to it.
    pub papers: Vec<SubjectId>,
    /// What was found about items that were not done.
    pub found: Vec<FoundContent>,
}

/// What was found about an item.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct FoundContent {
    /// About which.
    pub item: ItemRef,
    /// In a word.
    pub finding: Finding,
    /// As measured, in thousandths of the unit in which the catalogue has it.
    pub value: Option<Milli>,
}

/// Who did the work.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum By {
    /// The owner himself.
    Owner,
    /// A workshop, by its name.
    Workshop(String),
}

/// A part or a fluid.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PartContent {
    /// What it is; may be empty when it has a number.
    pub name: String,
    /// Who made it; may be empty.
    pub maker: String,
    /// The maker's number as written; may be empty when it has a name.
    pub number: String,
    /// How much or how many.
    pub quantity: Quantity,
    /// What all of it cost.
    pub price: Option<Money>,
    /// The item of the visit that it served, where someone said so.
    pub item: Option<ItemRef>,
    /// The key of its kind, where the catalogue tells kinds of it apart and someone said which.
    pub kind: Option<String>,
}

impl By {
    /// The workshop's name; empty for the owner.
    pub fn workshop(&self) -> &str {
        match self {
            By::Owner => "",
            By::Workshop(name) => name,
        }
    }
}

impl Cbor for VisitContent {
    fn to_cbor(&self) -> CborValue {
        let workshop = match &self.by {
            By::Owner => None,
            By::Workshop(name) => Some(name),
        };
        let items: Vec<_> = self.items.iter().map(item_to_cbor).collect();
        MapWriter::new()
            .put(1, &self.day)
            .put_some(2, self.shown.as_ref())
            .put_some(3, workshop)
            .put(4, &items)
            .put_list(5, &self.parts)
            .put_some(6, self.cost.as_ref())
            .put_some(7, some_text(&self.note))
            .put_list(8, &self.papers)
            .put_list(9, &self.found)
            .finish()
    }

    fn from_cbor(value: &CborValue) -> Result<VisitContent, CborError> {
        let map = MapReader::new(value)?;
        let items: Vec<CborValue> = map.need(4)?;
        Ok(VisitContent {
            day: map.need(1)?,
            shown: map.get(2)?,
            by: map.get(3)?.map_or(By::Owner, By::Workshop),
            items: items
                .iter()
                .map(item_from_cbor)
                .collect::<Result<_, _>>()
                .map_err(|_| CborError::Wrong(4))?,
            parts: map.list(5)?,
            cost: map.get(6)?,
            note: map.get(7)?.unwrap_or_default(),
            papers: map.list(8)?,
            found: map.list(9)?,
        })
    }
}

impl Cbor for PartContent {
    fn to_cbor(&self) -> CborValue {
        MapWriter::new()
            .put_some(1, some_text(&self.name))
            .put_some(2, some_text(&self.maker))
            .put_some(3, some_text(&self.number))
            .put(4, &self.quantity)
            .put_some(5, self.price.as_ref())
            .put_some(6, self.item.as_ref().map(item_to_cbor).as_ref())
            .put_some(7, self.kind.as_ref())
            .finish()
    }

    fn from_cbor(value: &CborValue) -> Result<PartContent, CborError> {
        let map = MapReader::new(value)?;
        Ok(PartContent {
            name: map.get(1)?.unwrap_or_default(),
            maker: map.get(2)?.unwrap_or_default(),
            number: map.get(3)?.unwrap_or_default(),
            quantity: map.need(4)?,
            price: map.get(5)?,
            item: map.raw(6).map(item_from_cbor).transpose().map_err(|_| CborError::Wrong(6))?,
            kind: map.get(7)?,
        })
    }
}

impl Cbor for FoundContent {
    fn to_cbor(&self) -> CborValue {
        MapWriter::new()
            .put(1, &item_to_cbor(&self.item))
            .put(2, &self.finding.number())
            .put_some(3, self.value.map(|value| value.0).as_ref())
            .finish()
    }

    fn from_cbor(value: &CborValue) -> Result<FoundContent, CborError> {
        let map = MapReader::new(value)?;
        Ok(FoundContent {
            item: item_from_cbor(&map.need(1)?).map_err(|_| CborError::Wrong(1))?,
            finding: Finding::from_number(map.need(2)?).ok_or(CborError::Wrong(2))?,
            value: map.get(3)?.map(measured).transpose()?,
        })
    }
}

/// Six digits and three decimals, either way, as many as anyone can type.
pub(super) fn measured(value: i64) -> Result<Milli, CborError> {
    Some(Milli(value)).filter(|value| value.0.unsigned_abs() < 1_000_000_000).ok_or(CborError::Wrong(3))
}

/// An item: its number in the catalogue, or the owner's words for it.
pub(super) fn item_to_cbor(item: &ItemRef) -> CborValue {
    match item {
        ItemRef::Catalogue(number) => CborValue::from(*number),
        ItemRef::Own(name) => CborValue::from(name.as_str()),
    }
}

pub(super) fn item_from_cbor(value: &CborValue) -> Result<ItemRef, CborError> {
    match value.as_text() {
        Some(name) => OwnName::parse(name).map(ItemRef::Own).map_err(|_| CborError::Type),
        None => u32::from_cbor(value).map(ItemRef::Catalogue),
    }
}
