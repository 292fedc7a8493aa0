//! What one litre, gallon, kilowatt-hour, kilometre or mile costs.

use std::fmt;

use crate::cbor::{Cbor, CborError, CborValue};
use crate::money::{decimal, with_point};
use crate::{Currency, Money, UnitError};

/// The price of one unit of something, in ten-thousandths of the currency's main unit.
///
/// Pumps show three decimals (1.749) whatever the decimals of the currency, and an electricity tariff has four
/// (0.3127). Of what the price is per is not said here.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct UnitPrice {
    ten_thousandths: i64,
    /// Of what the ten-thousandths are.
    pub currency: Currency,
}

/// The decimals that a price is held with.
const DECIMALS: u32 = 4;

impl UnitPrice {
    /// This many ten-thousandths of the main unit: 17 490 and EUR is 1.749 EUR.
    pub const fn from_ten_thousandths(ten_thousandths: i64, currency: Currency) -> UnitPrice {
        UnitPrice { ten_thousandths, currency }
    }

    /// The price in ten-thousandths of the main unit.
    pub const fn ten_thousandths(self) -> i64 {
        self.ten_thousandths
    }

    /// A price as typed, from 0.0001 to 1 000 000 with at most four decimals.
    pub fn parse(text: &str, currency: Currency) -> Result<UnitPrice, UnitError> {
        decimal(text.trim(), DECIMALS)
            .filter(|price| (1..=10_000_000_000).contains(price))
            .map(|ten_thousandths| UnitPrice { ten_thousandths, currency })
            .ok_or_else(|| UnitError::Money {
                text: text.chars().take(40).collect(),
                currency: currency.code().to_owned(),
                decimals: DECIMALS,
            })
    }

    /// What `part` of `whole` units cost, in whole minor units of the currency (ISO 4217), halves up.
    ///
    /// `whole` is above 0: 45.37 L are the part 4 537 of the whole 100.
    pub fn times(self, part: i64, whole: i64) -> Money {
        let minor = 10_i128.pow(self.currency.decimals());
        let value = (i128::from(self.ten_thousandths) * i128::from(part)).saturating_mul(minor);
        Money { minor: rounded(value, i128::from(whole) * 10_000), currency: self.currency }
    }

    /// The price of one unit when `part` of `whole` units cost this, to `decimals` of the four decimals, halves up.
    ///
    /// `None` for no units.
    pub fn of(money: Money, part: i64, whole: i64, decimals: u32) -> Option<UnitPrice> {
        let minor = 10_i128.pow(money.currency.decimals());
        let step = 10_i128.pow(DECIMALS.saturating_sub(decimals));
        let divisor = i128::from(part) * minor * step;
        let value = (i128::from(money.minor) * i128::from(whole)).saturating_mul(10_000);
        let ten_thousandths = || rounded(value, divisor).saturating_mul(i64::try_from(step).unwrap_or(1));
        (divisor > 0).then(|| UnitPrice { ten_thousandths: ten_thousandths(), currency: money.currency })
    }

    /// The number without its currency, with as many decimals as the currency has, and more where they say more:
    /// `1.749`, `1.75`, `172`.
    pub fn number(self) -> String {
        let sign = if self.ten_thousandths < 0 { "-" } else { "" };
        let mut number = with_point(self.ten_thousandths.unsigned_abs(), DECIMALS);
        let spare = DECIMALS.saturating_sub(self.currency.decimals());
        for _ in 0..spare {
            if !number.ends_with('0') {
                break;
            }
            number.pop();
        }
        format!("{sign}{}", number.trim_end_matches('.'))
    }
}

/// `value / divisor` in whole steps, halves up; `divisor` is above 0. Held within the range of the type.
pub(crate) fn rounded(value: i128, divisor: i128) -> i64 {
    let whole = value.div_euclid(divisor);
    let rest = value.rem_euclid(divisor);
    let nearest = if rest >= divisor - rest { whole + 1 } else { whole };
    i64::try_from(nearest).unwrap_or(if nearest < 0 { i64::MIN } else { i64::MAX })
}

impl fmt::Display for UnitPrice {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} {}", self.number(), self.currency)
    }
}

/// `[ten-thousandths, currency code]`.
impl Cbor for UnitPrice {
    fn to_cbor(&self) -> CborValue {
        Money { minor: self.ten_thousandths, currency: self.currency }.to_cbor()
    }
    fn from_cbor(value: &CborValue) -> Result<UnitPrice, CborError> {
        let Money { minor, currency } = Money::from_cbor(value)?;
        Ok(UnitPrice { ten_thousandths: minor, currency })
    }
}

#[cfg(test)]
#[path = "price_tests.rs"]
mod tests;
