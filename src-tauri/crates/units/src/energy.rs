//! Electric energy, as a charger counts it.

use std::ops::Add;

use crate::UnitError;
use crate::cbor::{Cbor, CborError, CborValue};
use crate::money::{decimal, with_point};

/// Electric energy in watt-hours, which holds a thousandth of a kilowatt-hour exactly.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Default)]
pub struct Energy(i64);

impl Energy {
    /// This many watt-hours.
    pub const fn from_watt_hours(watt_hours: i64) -> Energy {
        Energy(watt_hours)
    }

    /// The energy in watt-hours.
    pub const fn watt_hours(self) -> i64 {
        self.0
    }

    /// An energy as typed in kilowatt-hours, above 0 and up to 1 000 with at most three decimals.
    pub fn parse(text: &str) -> Result<Energy, UnitError> {
        decimal(text.trim(), 3)
            .filter(|watt_hours| (1..=1_000_000).contains(watt_hours))
            .map(Energy)
            .ok_or_else(|| UnitError::Quantity(text.chars().take(40).collect()))
    }

    /// The number of kilowatt-hours to three decimals: `41.350`.
    pub fn number(self) -> String {
        let sign = if self.0 < 0 { "-" } else { "" };
        format!("{sign}{}", with_point(self.0.unsigned_abs(), 3))
    }
}

impl Add for Energy {
    type Output = Energy;
    fn add(self, other: Energy) -> Energy {
        Energy(self.0.saturating_add(other.0))
    }
}

/// Watt-hours.
impl Cbor for Energy {
    fn to_cbor(&self) -> CborValue {
        self.0.to_cbor()
    }
    fn from_cbor(value: &CborValue) -> Result<Energy, CborError> {
        i64::from_cbor(value).map(Energy)
    }
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]

    use proptest::prelude::*;

    use super::*;

    #[test]
    fn energies_are_above_nothing_and_fit_a_battery() {
        for text in ["0.001", "1000", "41,35", " 7 "] {
            assert!(Energy::parse(text).is_ok(), "{text}");
        }
        for text in ["0", "-1", "1000.001", "1.2345", "", "5 kWh", "1e2"] {
            assert!(matches!(Energy::parse(text), Err(UnitError::Quantity(_))), "{text}");
        }
    }

    proptest! {
        #[test]
        fn what_was_typed_comes_back_and_so_does_its_byte_form(watt_hours in 1_i64..=1_000_000) {
            let energy = Energy::from_watt_hours(watt_hours);
            prop_assert_eq!(Energy::parse(&energy.number()), Ok(energy));
            prop_assert_eq!(Energy::from_cbor(&energy.to_cbor()), Ok(energy));
        }
    }
}
