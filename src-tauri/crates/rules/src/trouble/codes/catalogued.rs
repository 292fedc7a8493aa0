//! What the trade says of the standard codes: a plain table under `data/`, checked row by row.

use std::collections::BTreeMap;
use std::sync::OnceLock;

use serde::Deserialize;

use super::{Code, Origin};
use crate::RulesError;
use crate::rows::{self, dashed, is_key};
use crate::trouble::Danger;

/// How soon a code calls for somebody, when no lamp says more. A flashing or red lamp always comes first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Urgency {
    /// At the next opportunity: the car drives as usual, and waiting costs little.
    Watch,
    /// Within days, and gently until then: waiting hurts a dearer part, or a helper such as the anti-lock
    /// brakes is missing.
    Soon,
    /// Stop where it is safe, and do not drive on before it is looked at.
    Stop,
}

/// A standard code of which the table has something to say.
#[derive(Debug, Clone, PartialEq)]
pub struct Known {
    /// The code; its sentence stands in the words under [`Code::key`].
    pub code: Code,
    /// How soon it calls for somebody.
    pub urgency: Urgency,
    /// What must be read first when it is stored: there where the urgency is [`Urgency::Stop`], and nowhere else.
    pub danger: Option<Danger>,
    /// The keys of the causes at which it points (`data/causes.toml`), 1 or more, the likeliest to store it
    /// first.
    pub causes: Vec<String>,
    /// For each cause the chance that it stores this code, above 0 and below 1.
    chances: Vec<f64>,
}

/// Every code that the table knows.
#[derive(Debug, Clone, PartialEq)]
pub struct Codes {
    rows: BTreeMap<Code, Known>,
}

/// The table as it is written.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawTable {
    code: BTreeMap<String, RawRow>,
}

/// A row as it is written.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawRow {
    urgency: String,
    stop: Option<String>,
    causes: Vec<String>,
}

impl Urgency {
    /// Every urgency, the least one first.
    pub const ALL: [Urgency; 3] = [Urgency::Watch, Urgency::Soon, Urgency::Stop];

    /// Its name in the table, and in the words as in `code-urgency-soon`.
    pub const fn key(self) -> &'static str {
        match self {
            Urgency::Watch => "watch",
            Urgency::Soon => "soon",
            Urgency::Stop => "stop",
        }
    }
}

impl Codes {
    /// The table that comes with the program, read once.
    pub fn shipped() -> Result<&'static Codes, RulesError> {
        static SHIPPED: OnceLock<Result<Codes, RulesError>> = OnceLock::new();
        let shipped = SHIPPED.get_or_init(|| Codes::parse(include_str!("../../../data/codes.toml")));
        shipped.as_ref().map_err(Clone::clone)
    }

    /// Reads a table; [`RulesError::Catalogue`] names the row that is wrong.
    pub fn parse(text: &str) -> Result<Codes, RulesError> {
        let table: RawTable = toml::from_str(text).map_err(|error| wrong("the table", error.message()))?;
        let rows = table.code.into_iter().map(|(key, row)| row.read(&key).map(|known| (known.code, known)));
        Ok(Codes { rows: rows.collect::<Result<_, _>>()? })
    }

    /// Every row, ordered by code: P, C, B, U.
    pub fn rows(&self) -> impl Iterator<Item = &Known> {
        self.rows.values()
    }

    /// What the table says of a code; `None` for a maker's own, and for a standard one without a row, of
    /// which only the system is known.
    pub fn get(&self, code: Code) -> Option<&Known> {
        self.rows.get(&code)
    }
}

impl RawRow {
    fn read(self, key: &str) -> Result<Known, RulesError> {
        let wrong = |problem: &str| wrong(key, problem);
        let code = Code::parse(key).filter(|code| code.to_string() == key);
        let code = code.ok_or_else(|| wrong("this is no code; write it as P013A"))?;
        if code.origin() != Origin::Standard {
            return Err(wrong("this code is not the standard's; what it means differs from make to make"));
        }
        let urgency = Urgency::ALL.into_iter().find(|urgency| urgency.key() == self.urgency);
        let urgency = urgency.ok_or_else(|| wrong("its urgency is none of watch, soon, stop"))?;
        let danger =
            self.stop.as_ref().map(|word| Danger::from_key(&dashed(word)).ok_or_else(|| wrong(STOP)));
        let danger = danger.transpose()?;
        if danger.is_some() != (urgency == Urgency::Stop) {
            return Err(wrong(STOP));
        }
        let points = self.causes.iter().map(|cause| read_point(cause).ok_or_else(|| wrong(POINT)));
        let points: Vec<_> = points.collect::<Result<_, _>>()?;
        if points.is_empty() || !points.is_sorted_by(|before, after| before.1 >= after.1) {
            return Err(wrong("it points at one cause or more, the highest chance first"));
        }
        if (1..points.len()).any(|at| points[..at].iter().any(|(key, _)| *key == points[at].0)) {
            return Err(wrong("it names a cause twice"));
        }
        let (causes, chances) = points.into_iter().unzip();
        Ok(Known { code, urgency, danger, causes, chances })
    }
}

impl Known {
    /// The causes, each with the chance, above 0 and below 1, that it stores this code; the highest first.
    pub fn points(&self) -> Vec<(String, f64)> {
        self.causes.iter().cloned().zip(self.chances.iter().copied()).collect()
    }
}

/// What a code that stops the car says, said when it does not.
const STOP: &str =
    "a code of the urgency stop, and no other, says what danger it shows, as in stop = 'oil pressure'";

/// How a cause is written, said when it is not.
const POINT: &str = "a cause is written as its key and a chance above 0 and below 1, as in 'vacuum-leak 0.5'";

fn read_point(text: &str) -> Option<(String, f64)> {
    let (key, chance) = text.split_once(' ')?;
    let chance = chance.parse().ok().filter(|chance| (f64::MIN_POSITIVE..1.0).contains(chance))?;
    is_key(key).then(|| (key.to_owned(), chance))
}

fn wrong(place: &str, problem: &str) -> RulesError {
    rows::wrong(&format!("codes, {place}"), problem)
}

#[cfg(test)]
#[path = "catalogued_tests.rs"]
mod tests;
