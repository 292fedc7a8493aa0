//! What a look at a part finds: a word, or a value that wear or age has moved since the part was new.

use rules::upkeep::Milli;

use crate::{FoundForm, ItemForm};

/// Something that is looked at.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Look {
    /// The item, and the key of what was found about it.
    Word(u32, &'static str),
    /// Something was measured.
    Value(Gauge),
}

/// A value that moves away from what it is when new.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Gauge {
    /// The item that renews what is measured.
    pub(super) item: u32,
    /// Thousandths of the unit when new.
    pub(super) fresh: i64,
    pub(super) drift: Drift,
    /// The step in which it is read, in thousandths of the unit.
    pub(super) step: i64,
}

/// How a value moves, in thousandths of its unit; negative where it falls.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Drift {
    /// For each 1 000 km.
    Distance(i64),
    /// For each year.
    Time(i64),
}

/// How long a part has been in use at a look.
#[derive(Debug, Clone, Copy)]
pub(super) struct Used {
    pub(super) metres: i64,
    pub(super) days: i32,
}

/// The tread of the tyres, in tenths of a millimetre.
pub(super) const fn tread(per_megametre: i64) -> Look {
    wear(27, 8_000, per_megametre)
}

/// The lining of the pads that this item renews, in tenths of a millimetre.
pub(super) const fn lining(item: u32, per_megametre: i64) -> Look {
    wear(item, 10_000, per_megametre)
}

const fn wear(item: u32, fresh: i64, per_megametre: i64) -> Look {
    Look::Value(Gauge { item, fresh, drift: Drift::Distance(-per_megametre), step: 100 })
}

/// Water in the brake fluid, in tenths of a percent.
pub(super) const WATER: Look =
    Look::Value(Gauge { item: 10, fresh: 0, drift: Drift::Time(1_150), step: 100 });
/// The battery at rest, in hundredths of a volt.
pub(super) const CHARGE: Look =
    Look::Value(Gauge { item: 61, fresh: 12_650, drift: Drift::Time(-55), step: 10 });
/// What the coolant withstands, in degrees Celsius.
pub(super) const FROST: Look =
    Look::Value(Gauge { item: 9, fresh: -37_000, drift: Drift::Time(900), step: 1_000 });

impl Look {
    /// The item that it is about.
    pub(super) const fn item(&self) -> u32 {
        match self {
            Look::Word(item, _) | Look::Value(Gauge { item, .. }) => *item,
        }
    }

    /// What is written down of a part that has been in use so long.
    pub(super) fn found(&self, used: Used) -> FoundForm {
        let (finding, value) = match self {
            Look::Word(_, finding) => (*finding, String::new()),
            Look::Value(gauge) => ("within-limits", gauge.read(used).to_string()),
        };
        FoundForm { item: ItemForm::Catalogue(self.item()), finding: finding.to_owned(), value }
    }
}

impl Gauge {
    fn read(&self, used: Used) -> Milli {
        let moved = match self.drift {
            Drift::Distance(each) => each * used.metres / 1_000_000,
            Drift::Time(each) => each * i64::from(used.days) / 365,
        };
        Milli((self.fresh + moved + self.step / 2).div_euclid(self.step) * self.step)
    }
}
