//! A table of guides as it is written.

use serde::Deserialize;

use super::read::{engines, once, some_keys, table, wrong};
use super::{Guide, Hazard, Step, Value};
use crate::RulesError;
use crate::rows::{fittings, is_key};
use crate::upkeep::Catalogue;

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawTable {
    guide: Vec<RawGuide>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawGuide {
    key: String,
    engines: String,
    #[serde(default)]
    only_if: Vec<String>,
    #[serde(default)]
    does: Vec<String>,
    #[serde(default)]
    finds: Vec<String>,
    minutes: u16,
    tools: Vec<String>,
    #[serde(default)]
    supplies: Vec<String>,
    hazards: Vec<String>,
    cautions: Vec<String>,
    not: Vec<String>,
    steps: Vec<RawStep>,
    look: Vec<String>,
    after: Vec<String>,
    disposal: Vec<String>,
    #[serde(default)]
    then: Vec<String>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawStep {
    key: String,
    engines: Option<String>,
    #[serde(default)]
    only_if: Vec<String>,
    #[serde(default)]
    values: Vec<String>,
}

/// Reads one table of guides against the values and the catalogue; whether its cautions are enough is checked when
/// all guides are together.
pub(super) fn read(text: &str, values: &[Value], catalogue: &Catalogue) -> Result<Vec<Guide>, RulesError> {
    let raw: RawTable = table("a table of guides", text)?;
    let read = |row: RawGuide| {
        let key = row.key.clone();
        row.meaning(values, catalogue).map_err(|problem| wrong(&key, &problem))
    };
    raw.guide.into_iter().map(read).collect()
}

impl RawGuide {
    fn meaning(self, values: &[Value], catalogue: &Catalogue) -> Result<Guide, String> {
        if !is_key(&self.key) {
            return Err("keys have small letters, digits and dashes".to_owned());
        }
        if !(5..=480).contains(&self.minutes) {
            return Err("the work takes from 5 to 480 minutes".to_owned());
        }
        if self.does.is_empty() && self.finds.is_empty() {
            return Err("it writes nothing: give the items it does or finds something about".to_owned());
        }
        Ok(Guide {
            engines: engines(Some(&self.engines))?,
            only_if: fittings(&self.only_if)?,
            does: items(&once("does", self.does)?, catalogue)?,
            finds: items(&once("finds", self.finds)?, catalogue)?,
            minutes: self.minutes,
            tools: some_keys("tools", self.tools)?,
            supplies: once("supplies", self.supplies)?,
            hazards: hazards(&some_keys("hazards", self.hazards)?)?,
            cautions: some_keys("cautions", self.cautions)?,
            not: some_keys("not", self.not)?,
            steps: steps(self.steps, values)?,
            look: some_keys("look", self.look)?,
            after: some_keys("after", self.after)?,
            disposal: some_keys("disposal", self.disposal)?,
            then: once("then", self.then)?,
            key: self.key,
        })
    }
}

impl RawStep {
    fn meaning(self, values: &[Value]) -> Result<Step, String> {
        let number = |key: &String| {
            let found = values.iter().find(|value| value.key == *key);
            found.map(|value| value.number).ok_or_else(|| format!("'{key}' is no value"))
        };
        Ok(Step {
            engines: engines(self.engines.as_deref())?,
            only_if: fittings(&self.only_if)?,
            values: once("values", self.values)?.iter().map(number).collect::<Result<_, _>>()?,
            key: self.key,
        })
    }
}

fn steps(steps: Vec<RawStep>, values: &[Value]) -> Result<Vec<Step>, String> {
    some_keys("steps", steps.iter().map(|step| step.key.clone()).collect())?;
    steps.into_iter().map(|step| step.meaning(values)).collect()
}

fn hazards(keys: &[String]) -> Result<Vec<Hazard>, String> {
    let hazard = |key: &String| Hazard::from_key(key).ok_or_else(|| format!("'{key}' is no hazard"));
    keys.iter().map(hazard).collect()
}

/// The numbers of the catalogue's items with these keys.
fn items(keys: &[String], catalogue: &Catalogue) -> Result<Vec<u32>, String> {
    let number = |key: &String| {
        let item = catalogue.by_key(key);
        item.map(|item| item.number).ok_or_else(|| format!("'{key}' is no item of the catalogue"))
    };
    keys.iter().map(number).collect()
}
