//! Parts and fluids that were bought, and wait at home until they are fitted.

use units::cbor::{Cbor, CborError, CborValue, MapReader, MapWriter};
use units::{Day, Money, SubjectId};

use super::PartContent;
use super::vehicle::some_text;

/// What was bought on one day in one shop, to be fitted later.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct BoughtContent {
    /// When.
    pub day: Day,
    /// Where; may be empty.
    pub shop: String,
    /// What.
    pub parts: Vec<PartContent>,
    /// What it cost in all.
    pub cost: Option<Money>,
    /// Anything else worth keeping.
    pub note: String,
    /// The papers that belong to it.
    pub papers: Vec<SubjectId>,
}

impl Cbor for BoughtContent {
    fn to_cbor(&self) -> CborValue {
        MapWriter::new()
            .put(1, &self.day)
            .put_some(2, some_text(&self.shop))
            .put_list(3, &self.parts)
            .put_some(4, self.cost.as_ref())
            .put_some(5, some_text(&self.note))
            .put_list(6, &self.papers)
            .finish()
    }

    fn from_cbor(value: &CborValue) -> Result<BoughtContent, CborError> {
        let map = MapReader::new(value)?;
        Ok(BoughtContent {
            day: map.need(1)?,
            shop: map.get(2)?.unwrap_or_default(),
            parts: map.list(3)?,
            cost: map.get(4)?,
            note: map.get(5)?.unwrap_or_default(),
            papers: map.list(6)?,
        })
    }
}
