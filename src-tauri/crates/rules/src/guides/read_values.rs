//! The table of values as it is written.

use serde::Deserialize;

use super::read::{table, wrong};
use super::{Bounds, Typical, Value};
use crate::RulesError;
use crate::rows::{is_key, milli};

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawTable {
    value: Vec<RawValue>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawValue {
    number: u32,
    key: String,
    unit: Option<String>,
    #[serde(default)]
    typical: Vec<RawTypical>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawTypical {
    case: String,
    low: f64,
    high: Option<f64>,
    unit: String,
    source: String,
}

/// Reads the table, in ascending order of number; no number and no key may stand there twice.
pub(super) fn read(text: &str) -> Result<Vec<Value>, RulesError> {
    let raw: RawTable = table("values", text)?;
    let mut values: Vec<Value> = Vec::new();
    for row in raw.value {
        let key = row.key.clone();
        let value = row.meaning().map_err(|problem| wrong(&key, &problem))?;
        if values.iter().any(|other| other.number == value.number || other.key == value.key) {
            return Err(wrong(&key, "another value has this number or key"));
        }
        values.push(value);
    }
    values.sort_by_key(|value| value.number);
    Ok(values)
}

impl RawValue {
    fn meaning(self) -> Result<Value, String> {
        if self.number == 0 || !is_key(&self.key) {
            return Err("numbers count from 1, and keys have small letters, digits and dashes".to_owned());
        }
        let typical = self.typical.into_iter().map(RawTypical::meaning).collect::<Result<_, _>>()?;
        Ok(Value { number: self.number, key: self.key, unit: self.unit, typical })
    }
}

impl RawTypical {
    fn meaning(self) -> Result<Typical, String> {
        if !is_key(&self.case) {
            return Err(format!("'{}' is no case", self.case));
        }
        let read = |value: f64| milli(value).ok_or_else(|| format!("{value} is no value"));
        let low = read(self.low)?;
        let bounds = match self.high.map(read).transpose()? {
            None => Bounds::AtLeast(low),
            Some(high) if high == low => Bounds::Exactly(low),
            Some(high) if high > low => Bounds::Between(low, high),
            Some(_) => return Err(format!("the high end of {} lies below the low one", self.case)),
        };
        Ok(Typical { case: self.case, bounds, unit: self.unit, source: self.source.parse()? })
    }
}
