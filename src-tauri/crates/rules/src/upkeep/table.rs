//! The catalogue's table as it is written, and the meaning of its words.

use std::collections::BTreeMap;
use std::str::FromStr;

use serde::Deserialize;
use units::HalfMonths;

use super::interval::parse_time;
use super::{
    Access, Action, Finding, Gauge, Interval, Item, Kind, Measured, PrintedDistance, Range, Schedule, Source,
    Tightener, Timing,
};
use crate::RulesError;
use crate::rows::{CAUTIONS, ENGINES, dashed, fittings, is_key, meaning, meanings, milli, wrong};
use crate::vehicle::Condition;

/// The table as it is written.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct RawTable {
    pub item: Vec<RawItem>,
}

/// A row as it is written.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct RawItem {
    pub number: u32,
    pub key: String,
    engines: String,
    #[serde(default)]
    only_if: Vec<String>,
    action: String,
    #[serde(default)]
    resets: Vec<String>,
    #[serde(default)]
    answers: Vec<String>,
    follows: Option<String>,
    stakes: String,
    access: Option<String>,
    minutes: u16,
    most_early: Option<u32>,
    #[serde(default)]
    workshop: bool,
    first: Option<RawRange>,
    every: Option<RawRange>,
    after: Option<RawAfter>,
    #[serde(default)]
    cautions: Vec<String>,
    #[serde(default)]
    tightened_by: Vec<String>,
    #[serde(default)]
    due_when: Vec<String>,
    #[serde(default)]
    calls: BTreeMap<String, String>,
    measured: Option<RawGauge>,
    source: String,
    #[serde(default)]
    kind: Vec<RawKind>,
}

/// A range as it is written: `10000 to 15000 km`, `12 months`.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawRange {
    distance: Option<String>,
    time: Option<String>,
}

/// What an item follows, as it is written.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawAfter {
    items: Vec<String>,
    distance: Option<String>,
    time: Option<String>,
}

/// A measurement as it is written.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawGauge {
    what: String,
    unit: String,
    limit: f64,
    fresh: f64,
    source: String,
}

/// A kind of part or fluid as it is written.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawKind {
    key: String,
    every: RawRange,
    source: String,
}

const ACTIONS: [(&str, Action); 7] = [
    ("inspect", Action::Inspect),
    ("clean", Action::Clean),
    ("top up", Action::TopUp),
    ("drain", Action::Drain),
    ("test", Action::Test),
    ("replace", Action::Replace),
    ("attend", Action::Attend),
];

const STAKES: [(&str, super::Stakes); 6] = [
    ("comfort", super::Stakes::Comfort),
    ("economy", super::Stakes::Economy),
    ("repair", super::Stakes::Repair),
    ("breakdown", super::Stakes::Breakdown),
    ("engine", super::Stakes::Engine),
    ("safety", super::Stakes::Safety),
];

const TIGHTENERS: [(&str, Tightener); 5] = [
    ("short trips", Tightener::Driven(Condition::ShortTrips)),
    ("towing", Tightener::Driven(Condition::Towing)),
    ("dust", Tightener::Driven(Condition::Dust)),
    ("standing traffic", Tightener::Driven(Condition::StandingTraffic)),
    ("turbo", Tightener::Turbo),
];

const ACCESS: [(&str, Access); 11] = [
    ("lifted", Access::Lifted),
    ("wheels off", Access::WheelsOff),
    ("air path", Access::AirPath),
    ("ignition", Access::Ignition),
    ("front belt", Access::FrontBelt),
    ("cooling", Access::Cooling),
    ("fuel", Access::Fuel),
    ("cabin", Access::Cabin),
    ("bonnet", Access::Bonnet),
    ("battery", Access::Battery),
    ("papers", Access::Papers),
];

impl RawItem {
    /// What the row means; `numbers` leads from the keys of the table to its numbers.
    pub fn read(self, numbers: &BTreeMap<String, u32>) -> Result<Item, RulesError> {
        let key = self.key.clone();
        self.meaning(numbers).map_err(|problem| wrong(&key, &problem))
    }

    fn meaning(self, numbers: &BTreeMap<String, u32>) -> Result<Item, String> {
        if self.number == 0 || !is_key(&self.key) {
            return Err("numbers count from 1, and keys have small letters, digits and dashes".to_owned());
        }
        if !(5..=480).contains(&self.minutes) {
            return Err("the work takes from 5 to 480 minutes".to_owned());
        }
        if self.most_early.is_some_and(|days| !(1..=366).contains(&days)) {
            return Err("the most days before its day are from 1 to 366".to_owned());
        }
        let timing = self.timing(numbers)?;
        let source = read_source(&self.source)?;
        if (source == Source::Owner) != (timing == Timing::Unset) {
            return Err("the source is 'owner' where there is no interval, and only there".to_owned());
        }
        Ok(Item {
            number: self.number,
            engines: meaning(&ENGINES, &self.engines)?,
            only_if: fittings(&self.only_if)?,
            action: meaning(&ACTIONS, &self.action)?,
            resets: others(&self.resets, &self.key, numbers)?,
            answers: others(&self.answers, &self.key, numbers)?,
            follows: others(self.follows.as_slice(), &self.key, numbers)?.first().copied(),
            stakes: meaning(&STAKES, &self.stakes)?,
            access: self.access.as_deref().map(|word| meaning(&ACCESS, word)).transpose()?,
            minutes: self.minutes,
            most_early: self.most_early,
            workshop: self.workshop,
            cautions: meanings(&CAUTIONS, &self.cautions)?,
            timing,
            tightened_by: meanings(&TIGHTENERS, &self.tightened_by)?,
            due_when: self.due_when.iter().map(|word| finding(word)).collect::<Result<_, _>>()?,
            calls: self.calls(numbers)?,
            gauge: self.measured.as_ref().map(RawGauge::read).transpose()?,
            limit_source: self.measured.as_ref().map(|gauge| read_source(&gauge.source)).transpose()?,
            kinds: self.kind.into_iter().map(RawKind::read).collect::<Result<_, _>>()?,
            source,
            key: self.key,
        })
    }

    fn calls(&self, numbers: &BTreeMap<String, u32>) -> Result<Vec<(Finding, u32)>, String> {
        let read = |(word, key): (&String, &String)| Ok((finding(word)?, other(key, &self.key, numbers)?));
        self.calls.iter().map(read).collect()
    }

    fn timing(&self, numbers: &BTreeMap<String, u32>) -> Result<Timing<Range>, String> {
        let first = self.first.as_ref().map(RawRange::read).transpose()?;
        match (&self.every, &self.after) {
            (Some(every), None) => Ok(Timing::Every(Schedule { first, every: every.read()? })),
            (None, Some(after)) if first.is_none() => Ok(Timing::After {
                items: others(&after.items, &self.key, numbers)?,
                within: read_range(after.distance.as_deref(), after.time.as_deref())?,
            }),
            (None, None) if first.is_none() => Ok(Timing::Unset),
            _ => Err("a row has 'every', with 'first' or without it, or 'after', or none of them".to_owned()),
        }
    }
}

impl RawRange {
    fn read(&self) -> Result<Range, String> {
        read_range(self.distance.as_deref(), self.time.as_deref())
    }
}

impl RawGauge {
    fn read(&self) -> Result<Gauge, String> {
        let what = Measured::ALL.into_iter().find(|what| what.key().replace('-', " ") == self.what);
        let what = what.ok_or_else(|| format!("'{}' is nothing that is measured", self.what))?;
        if what.unit() != self.unit {
            return Err(format!("{} is measured in {}", self.what, what.unit()));
        }
        let read = |value: f64| milli(value).ok_or_else(|| format!("{value} is no measurement"));
        let (limit, fresh) = (read(self.limit)?, read(self.fresh)?);
        if limit == fresh {
            return Err("what is new cannot be at its limit".to_owned());
        }
        Ok(Gauge { what, limit, fresh })
    }
}

impl RawKind {
    fn read(self) -> Result<Kind, String> {
        if !is_key(&self.key) {
            return Err(format!("'{}' is no key of a kind", self.key));
        }
        Ok(Kind { every: self.every.read()?, source: read_source(&self.source)?, key: self.key })
    }
}

/// The numbers of other rows, named by their keys.
fn others(keys: &[String], own: &str, numbers: &BTreeMap<String, u32>) -> Result<Vec<u32>, String> {
    keys.iter().map(|key| other(key, own, numbers)).collect()
}

/// The number of another row, named by its key.
fn other(key: &str, own: &str, numbers: &BTreeMap<String, u32>) -> Result<u32, String> {
    let number = numbers.get(key).filter(|_| key != own);
    number.copied().ok_or_else(|| format!("'{key}' is the key of no other row"))
}

fn read_range(distance: Option<&str>, time: Option<&str>) -> Result<Range, String> {
    let distance = distance.map(|text| ends(text, PrintedDistance::from_str)).transpose()?;
    let time: Option<(HalfMonths, HalfMonths)> = time.map(|text| ends(text, parse_time)).transpose()?;
    let short = Interval::new(distance.map(|ends| ends.0), time.map(|ends| ends.0));
    let long = Interval::new(distance.map(|ends| ends.1), time.map(|ends| ends.1));
    let range = short.and_then(|short| Range::new(short, long?));
    range.map_err(|error| error.to_string())
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

/// A finding, written with spaces where its key has dashes.
fn finding(word: &str) -> Result<Finding, String> {
    let finding = Finding::from_key(&dashed(word)).filter(|&found| found != Finding::WithinLimits);
    finding.ok_or_else(|| format!("'{word}' is no finding that calls for work"))
}

fn read_source(text: &str) -> Result<Source, String> {
    match text.split_once(": ") {
        Some(("published", publication)) => Ok(Source::Published(publication.to_owned())),
        Some(("regulation", regulation)) => Ok(Source::Regulation(regulation.to_owned())),
        None if text == "common practice" => Ok(Source::CommonPractice),
        None if text == "owner" => Ok(Source::Owner),
        _ => Err(format!(
            "'{text}' is no source; write 'common practice', 'published: WHERE', 'regulation: WHICH' or 'owner'"
        )),
    }
}
