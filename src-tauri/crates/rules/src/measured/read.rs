//! Reading lines that were copied from a scan tool: a name, a number, perhaps a unit.
//!
//! The names are the abbreviations of SAE J1930 and J1979 and what is usually written in their place: `STFT1 2.3 %`,
//! `LTFT B1: -4,7`, `Short term fuel trim - bank 2 = 0.8 %`, `ECT 88 C`, `MAF 2.9 g/s`, `Battery 12.48 V`. What names
//! no bank is of the first one.

use super::Parameter;
use crate::upkeep::Milli;

/// What pasted lines say.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Pasted {
    /// The values, in their order; where a line repeats a parameter, the later value counts.
    pub values: Vec<(Parameter, Milli)>,
    /// The lines of which nothing is kept.
    pub unread: Vec<String>,
}

/// The longest text that is read, in characters; more than any screen of a scan tool holds.
const LONGEST: usize = 20_000;

/// The longest line that is given back as unread, in characters.
const LONGEST_LINE: usize = 120;

/// Reads pasted lines, at most 20 000 characters of them. Lines and semicolons part them.
pub fn read(text: &str) -> Pasted {
    let end = text.char_indices().nth(LONGEST).map_or(text.len(), |(at, _)| at);
    let mut pasted = Pasted::default();
    for line in text[..end].split(['\n', '\r', ';']).map(str::trim).filter(|line| !line.is_empty()) {
        match read_line(line) {
            Some((parameter, value)) => {
                pasted.values.retain(|(known, _)| *known != parameter);
                pasted.values.push((parameter, value));
            }
            None => pasted.unread.push(line.chars().take(LONGEST_LINE).collect()),
        }
    }
    pasted
}

fn read_line(line: &str) -> Option<(Parameter, Milli)> {
    let words = words(line);
    let at = words.iter().rposition(|word| is_number(word))?;
    let value: Milli = words[at].replace('\u{2212}', "-").trim_start_matches('+').parse().ok()?;
    let unit = words.get(at + 1).map_or("", String::as_str);
    let parameter = named(&words[..at])?;
    Some((parameter, converted(parameter, value, unit)?))
}

/// The words of a line in small letters. A number is parted from the letters of a unit behind it, and a sign stays
/// with its number; the digit of a bank stays with its letters.
fn words(line: &str) -> Vec<String> {
    let mut words: Vec<String> = Vec::new();
    let text = line.to_lowercase();
    for word in
        text.split(|c: char| c.is_whitespace() || matches!(c, ':' | '=' | '_' | '(' | ')' | '|' | '/' | '\t'))
    {
        let unit =
            word.find(|c: char| !(c.is_ascii_digit() || matches!(c, '.' | ',' | '-' | '+' | '\u{2212}')));
        match unit {
            Some(at) if at > 0 && is_number(&word[..at]) => {
                words.extend([word[..at].to_owned(), word[at..].to_owned()]);
            }
            _ => words.push(word.trim_matches(',').to_owned()),
        }
    }
    words.retain(|word| !matches!(word.as_str(), "" | "-" | "."));
    words
}

fn is_number(word: &str) -> bool {
    let digits = word.trim_start_matches(['-', '+', '\u{2212}']);
    digits.starts_with(|c: char| c.is_ascii_digit())
        && digits.chars().all(|c| c.is_ascii_digit() || matches!(c, '.' | ','))
}

fn named(words: &[String]) -> Option<Parameter> {
    let has = |known: &[&str]| words.iter().any(|word| known.contains(&word.as_str()));
    let starts = |head: &str| words.iter().any(|word| word.starts_with(head));
    let trim = has(&["trim", "trims", "ft"]);
    if starts("stft") || starts("shrtft") || (trim && has(&["short", "short-term"])) {
        return Some(if second_bank(words)? { Parameter::ShortTrim2 } else { Parameter::ShortTrim1 });
    }
    if starts("ltft") || starts("longft") || (trim && has(&["long", "long-term"])) {
        return Some(if second_bank(words)? { Parameter::LongTrim2 } else { Parameter::LongTrim1 });
    }
    if has(&["ect", "coolant", "clt"]) {
        return Some(Parameter::Coolant);
    }
    if has(&["maf"]) || (starts("air") && has(&["flow", "mass"])) || has(&["airflow"]) {
        return Some(Parameter::IdleAir);
    }
    has(&["battery", "batt", "vbat"]).then_some(Parameter::RestVoltage)
}

/// Whether the words name the second bank; `None` where they name one that there is not.
fn second_bank(words: &[String]) -> Option<bool> {
    let bank = |word: &String| {
        let head = ["shrtft", "longft", "stft", "ltft", "bank", "b"];
        head.iter()
            .find_map(|head| word.strip_prefix(head))
            .and_then(|rest| rest.trim_start_matches(['b', '-']).parse::<u8>().ok())
    };
    let after_bank = |pair: &[String]| (pair[0] == "bank").then(|| pair[1].parse::<u8>().ok()).flatten();
    let named = words.iter().find_map(bank).or_else(|| words.windows(2).find_map(after_bank));
    // STFT11 and LTFT21 are bank and sensor.
    match named.unwrap_or(1) {
        1 | 11 | 12 => Some(false),
        2 | 21 | 22 => Some(true),
        _ => None,
    }
}

/// The value in the parameter's own unit; `None` for a unit that is not of this parameter.
fn converted(parameter: Parameter, value: Milli, unit: &str) -> Option<Milli> {
    let unit = unit.trim_start_matches(['\u{b0}', '\u{ba}']);
    match (parameter, unit) {
        // NIST SP 811, appendix B.8: t/°C = (t/°F - 32)/1.8.
        (Parameter::Coolant, "f" | "degf") => Some(Milli((value.0 - 32_000) * 5 / 9)),
        (_, "")
        | (Parameter::Coolant, "c" | "celsius" | "degc")
        | (Parameter::IdleAir, "g" | "gs" | "g/s")
        | (Parameter::RestVoltage, "v" | "volt" | "volts")
        | (
            Parameter::ShortTrim1 | Parameter::LongTrim1 | Parameter::ShortTrim2 | Parameter::LongTrim2,
            "%",
        ) => Some(value),
        _ => None,
    }
}

#[cfg(test)]
#[path = "read_tests.rs"]
mod tests;
