//! What the words of the tables under `data/` stand for, the same in every one of them.

use crate::RulesError;
use crate::upkeep::{Caution, Engines, Milli};
use crate::vehicle::Fitting;

/// The kinds of engine for which a row is.
pub(crate) const ENGINES: [(&str, Engines); 5] = [
    ("any", Engines::Any),
    ("combustion", Engines::Combustion),
    ("spark ignition", Engines::SparkIgnition),
    ("diesel", Engines::Diesel),
    ("high voltage", Engines::HighVoltage),
];

/// The cautions that a row names. Those for a workshop and for high voltage follow from the work and the car.
pub(crate) const CAUTIONS: [(&str, Caution); 9] = [
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

/// What a word stands for.
pub(crate) fn meaning<T: Copy>(words: &[(&str, T)], word: &str) -> Result<T, String> {
    let found = words.iter().find(|(candidate, _)| *candidate == word).map(|&(_, meaning)| meaning);
    found.ok_or_else(|| {
        let known: Vec<_> = words.iter().map(|&(word, _)| word).collect();
        format!("'{word}' is none of {}", known.join(", "))
    })
}

/// What each word of a list stands for.
pub(crate) fn meanings<T: Copy>(words: &[(&str, T)], listed: &[String]) -> Result<Vec<T>, String> {
    listed.iter().map(|word| meaning(words, word)).collect()
}

/// What a car must have.
pub(crate) fn fittings(words: &[String]) -> Result<Vec<Fitting>, String> {
    let fitting = |word: &String| {
        Fitting::from_key(&dashed(word)).ok_or_else(|| format!("'{word}' is nothing that a car has"))
    };
    words.iter().map(fitting).collect()
}

/// The words of a row have spaces where keys have dashes.
pub(crate) fn dashed(word: &str) -> String {
    word.replace(' ', "-")
}

/// Whether a text is a key: small letters, digits and dashes.
pub(crate) fn is_key(key: &str) -> bool {
    let allowed = |byte: u8| byte.is_ascii_lowercase() || byte.is_ascii_digit() || byte == b'-';
    !key.is_empty() && key.bytes().all(allowed)
}

/// A value in thousandths, which a table gives with up to three decimals; `None` for what is no number.
pub(crate) fn milli(value: f64) -> Option<Milli> {
    format!("{:.0}", value * 1_000.0).parse().ok().map(Milli)
}

/// What is wrong with a row.
pub(crate) fn wrong(place: &str, problem: &str) -> RulesError {
    RulesError::Catalogue { place: place.to_owned(), problem: problem.to_owned() }
}
