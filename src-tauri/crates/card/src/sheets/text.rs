//! Making any text printable: only characters that our fonts have, and no stretch too long to be broken.
//!
//! PDF/A-2b (ISO 19005-2, section 6.2.11.8) forbids a character without a glyph, and a card must come out
//! whatever an owner calls his car.

use std::sync::LazyLock;

use serde_json::Value;
use typst::foundations::Bytes;
use typst::text::{Coverage, Font};

/// Stands for a character that the fonts do not have.
const MISSING: char = '?';
/// A place where a line may break without a hyphen.
const BREAK: char = '\u{200b}';
/// The longest stretch of a word, in characters, that may stay without a place to break.
const STRETCH: usize = 12;
/// A word up to this many characters fits every column unbroken.
const SHORT: usize = 18;
/// The least number of characters that a hyphen leaves at the start and end of a word.
const EDGE: usize = 3;

/// Both weights cover the same characters.
static COVERAGE: LazyLock<Option<Coverage>> = LazyLock::new(|| {
    let font = Font::new(Bytes::new(super::world::REGULAR), 0)?;
    Some(font.info().coverage.clone())
});

/// Makes every text in a model printable.
pub fn make_printable(value: &mut Value, lang: &str) {
    match value {
        Value::String(text) => *text = printable(text, lang),
        Value::Array(values) => values.iter_mut().for_each(|value| make_printable(value, lang)),
        Value::Object(fields) => fields.values_mut().for_each(|value| make_printable(value, lang)),
        Value::Null | Value::Bool(_) | Value::Number(_) => {}
    }
}

/// The primary language of an IETF tag in the form that Typst takes: two or three small letters, else English.
pub fn primary_language(tag: &str) -> String {
    let primary = tag.split(['-', '_']).next().unwrap_or_default().to_ascii_lowercase();
    let known = (2..=3).contains(&primary.len()) && primary.bytes().all(|byte| byte.is_ascii_lowercase());
    if known { primary } else { "en".to_owned() }
}

/// Replaces what cannot be printed and makes long words breakable.
pub(super) fn printable(text: &str, lang: &str) -> String {
    let shown: String = text.chars().filter_map(shown).collect();
    let language = language(lang);
    let words = shown.split(' ').map(|word| breakable(word, language));
    words.collect::<Vec<_>>().join(" ")
}

/// The character as printed: spaces are one kind, controls and direction marks vanish, the unknown is `?`.
fn shown(c: char) -> Option<char> {
    match c {
        '\u{202f}' | '\u{2009}' | '\u{2007}' => Some('\u{a0}'),
        c if c.is_whitespace() && c != '\u{a0}' => Some(' '),
        c if c.is_control() || is_format(c) => None,
        c if has_glyph(c) => Some(c),
        _ => Some(MISSING),
    }
}

/// Soft hyphens, joiners, direction marks and overrides, variation selectors: characters that only steer setting.
fn is_format(c: char) -> bool {
    matches!(c,
        '\u{ad}' | '\u{61c}' | '\u{180e}' | '\u{200b}'..='\u{200f}' | '\u{2028}'..='\u{202e}'
        | '\u{2060}'..='\u{206f}' | '\u{fe00}'..='\u{fe0f}' | '\u{feff}' | '\u{e0000}'..='\u{e0fff}')
}

fn has_glyph(c: char) -> bool {
    COVERAGE.as_ref().is_some_and(|coverage| coverage.contains(u32::from(c)))
}

fn language(tag: &str) -> Option<hypher::Lang> {
    let code: [u8; 2] = primary_language(tag).into_bytes().try_into().ok()?;
    hypher::Lang::from_iso(code)
}

/// Puts places to break into stretches of a long word that hyphenation would leave whole.
fn breakable(word: &str, language: Option<hypher::Lang>) -> String {
    if word.chars().count() <= SHORT {
        return word.to_owned();
    }
    let mut broken = String::with_capacity(word.len() + word.len() / STRETCH * BREAK.len_utf8());
    for part in parts(word) {
        // What a mark joins may be parted after it.
        if broken.chars().next_back().is_some_and(is_joint) && !part.starts_with(is_joint) {
            broken.push(BREAK);
        }
        for stretch in stretches(part, language) {
            push_with_breaks(&mut broken, &stretch);
        }
    }
    broken
}

fn push_with_breaks(broken: &mut String, stretch: &str) {
    for (at, c) in stretch.chars().enumerate() {
        if at > 0 && at % STRETCH == 0 {
            broken.push(BREAK);
        }
        broken.push(c);
    }
}

/// A mark that joins two words, as a hyphen does.
fn is_joint(c: char) -> bool {
    matches!(c, '-' | '–' | '/' | '_' | '+' | '&' | '=' | '.' | ',' | ';' | ':')
}

/// The words that marks join in a long one, and the marks between them.
fn parts(word: &str) -> impl Iterator<Item = &str> {
    let mut rest = word;
    std::iter::from_fn(move || {
        let joint = rest.chars().next().map(is_joint)?;
        let end = rest.find(|c| is_joint(c) != joint).unwrap_or(rest.len());
        let (part, after) = rest.split_at(end);
        rest = after;
        Some(part)
    })
}

/// The stretches of a part between which a line may break anyway: its syllables, if it is made of letters only.
fn stretches(part: &str, language: Option<hypher::Lang>) -> Vec<String> {
    match language {
        Some(language) if part.chars().all(char::is_alphabetic) => {
            hypher::hyphenate_bounded(part, language, EDGE, EDGE).map(str::to_owned).collect()
        }
        _ => vec![part.to_owned()],
    }
}
