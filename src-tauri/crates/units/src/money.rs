//! Money in the minor units of its currency.

use std::fmt;
use std::str::FromStr;

use crate::UnitError;

/// A currency of ISO 4217.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Currency(iso_currency::Currency);

/// An amount of money in the minor units of its currency: 1250 and EUR is 12.50 EUR.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Money {
    /// Minor units; negative for money that came back.
    pub minor: i64,
    /// What the minor units are of.
    pub currency: Currency,
}

impl Currency {
    /// The currency with exactly these three letters, in capitals.
    pub fn from_code(code: &str) -> Option<Currency> {
        iso_currency::Currency::from_code(code).map(Currency)
    }

    /// The three letters of the currency.
    pub fn code(self) -> &'static str {
        self.0.code()
    }

    /// How many decimals an amount has (ISO 4217: 2 for EUR, 0 for JPY, 3 for KWD).
    pub fn decimals(self) -> u32 {
        self.0.exponent().map_or(2, u32::from)
    }
}

impl Money {
    /// An amount as typed, with a point or a comma before the decimals and no grouping: `12.50`, `12,5`, `12`.
    pub fn parse(text: &str, currency: Currency) -> Result<Money, UnitError> {
        let decimals = currency.decimals();
        decimal(text.trim(), decimals)
            .filter(|minor| minor.abs() <= 1_000_000_000_000)
            .map(|minor| Money { minor, currency })
            .ok_or_else(|| UnitError::Money {
                text: text.chars().take(40).collect(),
                currency: currency.code().to_owned(),
                decimals,
            })
    }

    /// The number without its currency, with a point before the decimals: `12.50`.
    pub fn number(self) -> String {
        let decimals = self.currency.decimals();
        let sign = if self.minor < 0 { "-" } else { "" };
        format!("{sign}{}", with_point(self.minor.unsigned_abs(), decimals))
    }
}

/// Reads digits with at most `decimals` decimals as a number of the smallest step.
pub(crate) fn decimal(text: &str, decimals: u32) -> Option<i64> {
    let (negative, digits) = match text.strip_prefix('-') {
        Some(rest) => (true, rest),
        None => (false, text),
    };
    let (whole, fraction) = digits.split_once(['.', ',']).unwrap_or((digits, ""));
    let all_digits = |part: &str| part.bytes().all(|byte| byte.is_ascii_digit());
    if whole.is_empty() || whole.len() > 15 || !all_digits(whole) || !all_digits(fraction) {
        return None;
    }
    if u32::try_from(fraction.len()).ok()? > decimals {
        return None;
    }
    let padded = format!("{whole}{fraction:0<width$}", width = usize::try_from(decimals).ok()?);
    let value: i64 = padded.parse().ok()?;
    Some(if negative { -value } else { value })
}

/// Writes a number of smallest steps with a point before the last `decimals` digits.
pub(crate) fn with_point(value: u64, decimals: u32) -> String {
    if decimals == 0 {
        return value.to_string();
    }
    let step = 10_u64.pow(decimals);
    let width = usize::try_from(decimals).unwrap_or(0);
    format!("{}.{:0width$}", value / step, value % step)
}

impl FromStr for Currency {
    type Err = UnitError;

    fn from_str(text: &str) -> Result<Currency, UnitError> {
        Currency::from_code(&text.trim().to_ascii_uppercase())
            .ok_or_else(|| UnitError::Currency(text.chars().take(10).collect()))
    }
}

impl fmt::Display for Currency {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.code())
    }
}

impl fmt::Display for Money {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} {}", self.number(), self.currency)
    }
}

#[cfg(test)]
#[path = "money_tests.rs"]
mod tests;
