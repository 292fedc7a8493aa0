//! The tables as they are written, and the meaning of their words.

use std::collections::{BTreeMap, BTreeSet};

use serde::Deserialize;

use super::kinds::{Band, Bands};
use super::{About, Cause, Check, Danger, Growth, Mend, Opening, Rates, Symptom, Tool, Trouble};
use crate::RulesError;
use crate::rows::{CAUTIONS, ENGINES, dashed, fittings, is_key, meaning, wrong};
use crate::upkeep::{Catalogue, Caution};

/// The three tables as they are written.
pub(super) struct Tables {
    pub symptoms: RawSymptoms,
    pub causes: RawCauses,
    pub checks: RawChecks,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct RawSymptoms {
    symptom: Vec<RawSymptom>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct RawCauses {
    bands: RawBands,
    cause: Vec<RawCause>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct RawChecks {
    opening: Vec<RawOpening>,
    tool: Vec<RawTool>,
    check: Vec<RawCheck>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawSymptom {
    key: String,
    about: String,
    engines: String,
    #[serde(default)]
    only_if: Vec<String>,
    anyway: f64,
    stop: Option<String>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawBands {
    age: Vec<RawBand>,
    distance: Vec<RawBand>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawBand {
    to: Option<f64>,
    times: f64,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawCause {
    key: String,
    rate: RawRates,
    #[serde(default)]
    only_if: Vec<String>,
    grows: String,
    shows: Vec<String>,
    #[serde(default)]
    overdue: Vec<String>,
    #[serde(default)]
    touched: Vec<String>,
    found_by: Vec<String>,
    mend: Vec<String>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawRates {
    petrol: Option<f64>,
    diesel: Option<f64>,
    hybrid: Option<f64>,
    electric: Option<f64>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawOpening {
    key: String,
    minutes: u16,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawTool {
    key: String,
    minutes: u16,
    #[serde(default)]
    usual: bool,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawCheck {
    key: String,
    minutes: u16,
    #[serde(default)]
    money: u16,
    #[serde(default)]
    tools: Vec<String>,
    #[serde(default)]
    opens: Vec<String>,
    #[serde(default)]
    runs: bool,
    #[serde(default)]
    cautions: Vec<String>,
}

/// What can hurt someone at a check and at no work of the catalogue.
const ONLY_OF_CHECKS: [(&str, Caution); 3] = [
    ("high voltage", Caution::HighVoltage),
    ("battery off", Caution::BatteryOff),
    ("on the road", Caution::OnTheRoad),
];

const GROWTHS: [(&str, Growth); 4] = [
    ("steady", Growth::Steady),
    ("age", Growth::Age),
    ("distance", Growth::Distance),
    ("both", Growth::Both),
];

/// Where the keys of a table stand in it.
type Places = BTreeMap<String, usize>;

impl Tables {
    /// What the tables mean together.
    pub fn meaning(self, catalogue: &Catalogue) -> Result<Trouble, RulesError> {
        let symptoms = places("symptoms", self.symptoms.symptom.iter().map(|row| &row.key))?;
        let checks = places("checks", self.checks.check.iter().map(|row| &row.key))?;
        places("causes", self.causes.cause.iter().map(|row| &row.key))?;
        let tools = places("tools", self.checks.tool.iter().map(|row| &row.key))?;
        let names = Names { symptoms: &symptoms, checks: &checks, catalogue };
        Ok(Trouble {
            symptoms: rows(self.symptoms.symptom, "symptoms", |row| row.key.clone(), RawSymptom::read)?,
            causes: rows(self.causes.cause, "causes", |row| row.key.clone(), |row| row.read(&names))?,
            checks: rows(self.checks.check, "checks", |row| row.key.clone(), |row| row.read(&tools))?,
            tools: self.checks.tool.into_iter().map(RawTool::read).collect(),
            openings: minutes(&self.checks.opening)?,
            bands: self.causes.bands.read().map_err(|problem| wrong("causes, bands", &problem))?,
        })
    }
}

/// What the rows of the causes name.
struct Names<'a> {
    symptoms: &'a Places,
    checks: &'a Places,
    catalogue: &'a Catalogue,
}

impl RawSymptom {
    fn read(self) -> Result<Symptom, String> {
        let danger = |word: &String| {
            let found = Danger::from_key(&dashed(word));
            found.ok_or_else(|| format!("'{word}' is nothing that calls for stopping first"))
        };
        Ok(Symptom {
            about: about(&self.about)?,
            engines: meaning(&ENGINES, &self.engines)?,
            only_if: fittings(&self.only_if)?,
            anyway: chance(self.anyway)?,
            danger: self.stop.as_ref().map(danger).transpose()?,
            key: self.key,
        })
    }
}

impl RawCause {
    fn read(self, names: &Names<'_>) -> Result<Cause, String> {
        if self.shows.is_empty() || self.found_by.is_empty() {
            return Err("a cause shows in something, and some check finds it".to_owned());
        }
        Ok(Cause {
            rates: self.rate.read()?,
            only_if: fittings(&self.only_if)?,
            growth: meaning(&GROWTHS, &self.grows)?,
            shows: links(&self.shows, names.symptoms)?,
            overdue: items(&self.overdue, names.catalogue)?,
            touched: items(&self.touched, names.catalogue)?,
            found_by: links(&self.found_by, names.checks)?,
            mend: mend(&self.mend, names.catalogue)?,
            key: self.key,
        })
    }
}

impl RawRates {
    fn read(&self) -> Result<Rates, String> {
        let given = [self.petrol, self.diesel, self.hybrid, self.electric];
        if given.iter().flatten().any(|rate| !(*rate > 0.0 && *rate < 1000.0)) {
            return Err("a rate is above 0 and below 1000".to_owned());
        }
        if given.iter().all(Option::is_none) {
            return Err("a cause turns up in some engine".to_owned());
        }
        let RawRates { petrol, diesel, hybrid, electric } = *self;
        Ok(Rates { petrol, diesel, hybrid, electric })
    }
}

impl RawCheck {
    fn read(self, tools: &Places) -> Result<Check, String> {
        if !(1..=240).contains(&self.minutes) {
            return Err("a check takes from 1 to 240 minutes".to_owned());
        }
        if let Some(tool) = self.tools.iter().find(|tool| !tools.contains_key(*tool)) {
            return Err(format!("'{tool}' is no tool of the table"));
        }
        let opens = self.opens.iter().map(|word| opening(word)).collect::<Result<_, _>>()?;
        let mut check = Check {
            key: self.key,
            minutes: self.minutes,
            money: self.money,
            tools: self.tools,
            opens,
            runs: self.runs,
            cautions: Vec::new(),
        };
        let workshop = check.is_for_a_workshop().then_some(Ok(Caution::Workshop));
        // A check may ask for hands on what only the car makes dangerous elsewhere.
        let words = [&CAUTIONS[..], &ONLY_OF_CHECKS[..]].concat();
        let named = self.cautions.iter().map(|word| meaning(&words, word));
        check.cautions = workshop.into_iter().chain(named).collect::<Result<_, _>>()?;
        Ok(check)
    }
}

impl RawTool {
    fn read(self) -> Tool {
        Tool { key: self.key, minutes: self.minutes, usual: self.usual }
    }
}

impl RawBands {
    fn read(&self) -> Result<Bands, String> {
        Ok(Bands { age: bands(&self.age)?, distance: bands(&self.distance)? })
    }
}

fn bands(raw: &[RawBand]) -> Result<Vec<Band>, String> {
    let rise = raw.windows(2).all(|pair| {
        pair[0].to.is_some_and(|to| pair[1].to.is_none_or(|next| to < next)) && pair[0].times > 0.0
    });
    match raw.last() {
        Some(last) if last.to.is_none() && last.times > 0.0 && rise => {
            Ok(raw.iter().map(|band| Band { to: band.to, times: band.times }).collect())
        }
        _ => Err("bands rise, multiply by something above 0, and only the last has no end".to_owned()),
    }
}

/// The minutes of each opening, in the order of [`Opening::ALL`].
fn minutes(raw: &[RawOpening]) -> Result<Vec<f64>, RulesError> {
    let mut given = BTreeMap::new();
    for row in raw {
        let known = opening(&row.key).map_err(|problem| wrong("checks, openings", &problem))?;
        given.insert(known, f64::from(row.minutes));
    }
    let minutes = |opening: Opening| {
        let missing = || wrong("checks, openings", &format!("'{}' is missing", opening.key()));
        given.get(&opening).copied().ok_or_else(missing)
    };
    Opening::ALL.into_iter().map(minutes).collect()
}

/// Reads the rows of a table; the error names the row.
fn rows<R, T>(
    raw: Vec<R>,
    table: &str,
    key: impl Fn(&R) -> String,
    read: impl Fn(R) -> Result<T, String>,
) -> Result<Vec<T>, RulesError> {
    let row = |row: R| {
        let place = format!("{table}, {}", key(&row));
        read(row).map_err(|problem| wrong(&place, &problem))
    };
    raw.into_iter().map(row).collect()
}

/// Where each key of a table stands.
fn places<'a>(table: &str, keys: impl Iterator<Item = &'a String>) -> Result<Places, RulesError> {
    let mut places = Places::new();
    for (place, key) in keys.enumerate() {
        if !is_key(key) {
            return Err(wrong(&format!("{table}, {key}"), "keys have small letters, digits and dashes"));
        }
        if places.insert(key.clone(), place).is_some() {
            return Err(wrong(&format!("{table}, {key}"), "another row has this key"));
        }
    }
    Ok(places)
}

/// Links to the rows of another table: `rough-idle 0.5`.
fn links(listed: &[String], places: &Places) -> Result<Vec<(usize, f64)>, String> {
    let mut seen = BTreeSet::new();
    let mut link = |text: &String| {
        let (key, number) = text.split_once(' ').ok_or_else(|| format!("'{text}' lacks its chance"))?;
        let place = *places.get(key).ok_or_else(|| format!("'{key}' is the key of no row"))?;
        if !seen.insert(place) {
            return Err(format!("'{key}' is named twice"));
        }
        let number = number.parse().map_err(|_| format!("'{number}' is no chance"))?;
        Ok((place, chance(number)?))
    };
    listed.iter().map(&mut link).collect()
}

fn chance(value: f64) -> Result<f64, String> {
    if value > 0.0 && value < 1.0 { Ok(value) } else { Err("a chance is above 0 and below 1".to_owned()) }
}

fn mend(listed: &[String], catalogue: &Catalogue) -> Result<Mend, String> {
    match listed {
        [word] if word == "owner" => Ok(Mend::Owner),
        [word] if word == "workshop" => Ok(Mend::Workshop),
        [] => Err("something mends it: catalogue items, 'owner' or 'workshop'".to_owned()),
        keys => items(keys, catalogue).map(Mend::Items),
    }
}

/// The numbers of catalogue items, named by their keys.
fn items(keys: &[String], catalogue: &Catalogue) -> Result<Vec<u32>, String> {
    let number = |key: &String| {
        let item = catalogue.by_key(key).ok_or_else(|| format!("'{key}' is the key of no catalogue item"))?;
        Ok(item.number)
    };
    keys.iter().map(number).collect()
}

fn opening(word: &str) -> Result<Opening, String> {
    Opening::from_key(&dashed(word)).ok_or_else(|| format!("'{word}' is nothing that is opened"))
}

fn about(word: &str) -> Result<About, String> {
    let found = About::ALL.into_iter().find(|about| about.key() == dashed(word));
    found.ok_or_else(|| format!("'{word}' is no heading"))
}
