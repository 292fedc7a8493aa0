//! Reading the catalogue: a plain table under `data/`, checked row by row.

use std::collections::BTreeSet;
use std::str::FromStr;
use std::sync::OnceLock;

use serde::Deserialize;
use units::HalfMonths;

use super::interval::parse_time;
use super::{Action, Caution, Engines, Interval, Item, PrintedDistance, Range, Schedule, Source, Stakes};
use crate::RulesError;
use crate::vehicle::Condition;

/// What the trade knows of: every item of upkeep, in ascending order of number.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Catalogue {
    items: Vec<Item>,
}

/// The table as it is written.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawTable {
    item: Vec<RawItem>,
}

/// A row as it is written.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawItem {
    number: u32,
    key: String,
    engines: String,
    action: String,
    stakes: String,
    #[serde(default)]
    workshop: bool,
    first: Option<RawRange>,
    every: RawRange,
    #[serde(default)]
    cautions: Vec<String>,
    #[serde(default)]
    tightened_by: Vec<String>,
    source: String,
}

/// A range as it is written: `10000 to 15000 km`, `12 months`.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawRange {
    distance: Option<String>,
    time: Option<String>,
}

const ENGINES: [(&str, Engines); 4] = [
    ("any", Engines::Any),
    ("combustion", Engines::Combustion),
    ("spark ignition", Engines::SparkIgnition),
    ("diesel", Engines::Diesel),
];

const CAUTIONS: [(&str, Caution); 9] = [
    ("hot engine", Caution::HotEngine),
    ("jacking", Caution::Jacking),
    ("fuel", Caution::Fuel),
    ("battery", Caution::Battery),
    ("pressure", Caution::Pressure),
    ("moving parts", Caution::MovingParts),
    ("fumes", Caution::Fumes),
    ("brake dust", Caution::BrakeDust),
    ("used fluids", Caution::UsedFluids),
];

const ACTIONS: [(&str, Action); 6] = [
    ("inspect", Action::Inspect),
    ("clean", Action::Clean),
    ("top up", Action::TopUp),
    ("drain", Action::Drain),
    ("test", Action::Test),
    ("replace", Action::Replace),
];

const STAKES: [(&str, Stakes); 6] = [
    ("comfort", Stakes::Comfort),
    ("economy", Stakes::Economy),
    ("repair", Stakes::Repair),
    ("breakdown", Stakes::Breakdown),
    ("engine", Stakes::Engine),
    ("safety", Stakes::Safety),
];

const CONDITIONS: [(&str, Condition); 4] = [
    ("short trips", Condition::ShortTrips),
    ("towing", Condition::Towing),
    ("dust", Condition::Dust),
    ("standing traffic", Condition::StandingTraffic),
];

impl Catalogue {
    /// The catalogue that comes with the program, read once.
    pub fn shipped() -> Result<&'static Catalogue, RulesError> {
        static SHIPPED: OnceLock<Result<Catalogue, RulesError>> = OnceLock::new();
        let shipped = SHIPPED.get_or_init(|| Catalogue::parse(include_str!("../../data/catalogue.toml")));
        shipped.as_ref().map_err(Clone::clone)
    }

    /// Reads a catalogue; [`RulesError::Catalogue`] names the row that is wrong.
    pub fn parse(text: &str) -> Result<Catalogue, RulesError> {
        let table: RawTable = toml::from_str(text).map_err(|error| wrong("the table", error.message()))?;
        let mut items = table.item.into_iter().map(RawItem::read).collect::<Result<Vec<_>, _>>()?;
        items.sort_by_key(|item| item.number);
        let mut numbers = BTreeSet::new();
        let mut keys = BTreeSet::new();
        for item in &items {
            if !numbers.insert(item.number) {
                return Err(wrong(&item.key, "another item has this number"));
            }
            if !keys.insert(&item.key) {
                return Err(wrong(&item.key, "another item has this key"));
            }
        }
        Ok(Catalogue { items })
    }

    /// Every item, in ascending order of number.
    pub fn items(&self) -> &[Item] {
        &self.items
    }

    /// The item with this number.
    pub fn item(&self, number: u32) -> Option<&Item> {
        let at = self.items.binary_search_by_key(&number, |item| item.number).ok()?;
        self.items.get(at)
    }

    /// The item with this key.
    pub fn by_key(&self, key: &str) -> Option<&Item> {
        self.items.iter().find(|item| item.key == key)
    }
}

impl RawItem {
    fn read(self) -> Result<Item, RulesError> {
        let at = |problem: String| wrong(&self.key, &problem);
        if self.number == 0 || !is_key(&self.key) {
            return Err(
                at("numbers count from 1, and keys have small letters, digits and dashes".to_owned()),
            );
        }
        let every = self.every.read().map_err(at)?;
        let first = self.first.as_ref().map(RawRange::read).transpose().map_err(at)?;
        let conditions = self.tightened_by.iter().map(|word| meaning(&CONDITIONS, word));
        let cautions = self.cautions.iter().map(|word| meaning(&CAUTIONS, word));
        Ok(Item {
            number: self.number,
            engines: meaning(&ENGINES, &self.engines).map_err(at)?,
            action: meaning(&ACTIONS, &self.action).map_err(at)?,
            stakes: meaning(&STAKES, &self.stakes).map_err(at)?,
            workshop: self.workshop,
            cautions: cautions.collect::<Result<_, _>>().map_err(at)?,
            schedule: Schedule { first, every },
            tightened_by: conditions.collect::<Result<_, _>>().map_err(at)?,
            source: read_source(&self.source).map_err(at)?,
            key: self.key,
        })
    }
}

impl RawRange {
    fn read(&self) -> Result<Range, String> {
        let distance =
            self.distance.as_deref().map(|text| ends(text, PrintedDistance::from_str)).transpose()?;
        let time: Option<(HalfMonths, HalfMonths)> =
            self.time.as_deref().map(|text| ends(text, parse_time)).transpose()?;
        let short = Interval::new(distance.map(|ends| ends.0), time.map(|ends| ends.0));
        let long = Interval::new(distance.map(|ends| ends.1), time.map(|ends| ends.1));
        let range = short.and_then(|short| Range::new(short, long?));
        range.map_err(|error| error.to_string())
    }
}

/// Both ends of a range: `10000 to 15000 km` names its unit once, `15000 km` is both ends.
fn ends<T: Copy>(text: &str, parse: impl Fn(&str) -> Result<T, RulesError>) -> Result<(T, T), String> {
    let parse = |text: &str| parse(text).map_err(|error| error.to_string());
    let Some((short, long)) = text.split_once(" to ") else {
        return parse(text).map(|end| (end, end));
    };
    let unit = long.trim_start_matches(|c: char| c.is_ascii_digit() || c == '.');
    Ok((parse(&format!("{short}{unit}"))?, parse(long)?))
}

/// What a word of the table stands for.
fn meaning<T: Copy>(words: &[(&str, T)], word: &str) -> Result<T, String> {
    let found = words.iter().find(|(candidate, _)| *candidate == word).map(|&(_, meaning)| meaning);
    found.ok_or_else(|| {
        let known: Vec<_> = words.iter().map(|&(word, _)| word).collect();
        format!("'{word}' is none of {}", known.join(", "))
    })
}

fn read_source(text: &str) -> Result<Source, String> {
    match text.split_once(": ") {
        Some(("published", publication)) => Ok(Source::Published(publication.to_owned())),
        Some(("regulation", regulation)) => Ok(Source::Regulation(regulation.to_owned())),
        None if text == "common practice" => Ok(Source::CommonPractice),
        _ => Err(format!(
            "'{text}' is no source; write 'common practice', 'published: WHERE' or 'regulation: WHICH'"
        )),
    }
}

fn is_key(key: &str) -> bool {
    let allowed = |byte: u8| byte.is_ascii_lowercase() || byte.is_ascii_digit() || byte == b'-';
    !key.is_empty() && key.bytes().all(allowed)
}

fn wrong(place: &str, problem: &str) -> RulesError {
    RulesError::Catalogue { place: place.to_owned(), problem: problem.to_owned() }
}

#[cfg(test)]
#[path = "catalogue_tests.rs"]
mod tests;
