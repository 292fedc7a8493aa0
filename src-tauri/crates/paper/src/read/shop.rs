//! Whose receipt it is.

use std::ops::Range;

use super::fold::{key, within_one};
use super::labels::Label;
use super::page::{Line, Page};
use super::receipt::{Field, Known, KnownShop, Sure};
use super::words::Role;

/// A name stands among the first rows.
const HEAD: usize = 10;
/// A known shop is looked for on this many rows from above, and as many from below.
const AROUND: usize = 25;
/// A name of fewer letters is found in too many words.
const SHORTEST: usize = 4;

/// The shop that the household knows, where its name is printed.
pub(super) fn known<'a>(page: &Page, known: &'a Known<'_>) -> Option<(&'a KnownShop<'a>, Field<String>)> {
    let count = page.lines.len();
    let near = page.lines.iter().enumerate().filter(|(index, _)| *index < AROUND || index + AROUND >= count);
    let lines: Vec<(&Line, String)> =
        near.map(|(_, line)| (line, key(&line.text(0..line.chars.len())))).collect();
    let named = |shop: &'a KnownShop<'_>, exact: bool| {
        let name = key(shop.name);
        let long = name.chars().count() >= SHORTEST;
        let holds = |line: &&(&Line, String)| {
            if exact {
                whole_words(line.0, &name)
            } else {
                line.1.chars().count() < 60
                    && name.chars().count() >= 7
                    && within_one(&letters(&line.1), &letters(&name))
            }
        };
        let (line, _) = lines.iter().filter(|_| long).find(holds)?;
        let sure = if exact { Sure::Sure } else { Sure::Likely };
        Some((shop, Field { value: shop.name.to_owned(), sure, area: line.whole() }))
    };
    let exact =
        known.shops.iter().filter_map(|shop| named(shop, true)).max_by_key(|(shop, _)| shop.name.len());
    exact.or_else(|| known.shops.iter().find_map(|shop| named(shop, false)))
}

fn letters(text: &str) -> Vec<char> {
    text.chars().collect()
}

/// Whether some words of the line, taken together, are this name.
fn whole_words(line: &Line, name: &str) -> bool {
    (0..line.words.len()).any(|first| {
        let mut so_far = String::new();
        line.words[first..].iter().take(8).any(|word| {
            so_far.push_str(&line.text(word.clone()));
            key(&so_far) == name
        })
    })
}

/// The name that is printed at the head: the first row that may be one, or a better one close below it.
pub(super) fn printed(page: &Page) -> Option<Field<String>> {
    let rows = page.lines.iter().take(HEAD).enumerate();
    let tallest = page.lines.iter().take(HEAD).map(|line| line.whole().height).fold(0.0_f32, f32::max);
    let mut best: Option<(i32, usize, Range<usize>)> = None;
    for (index, line) in rows {
        let Some(at) = name(line) else { continue };
        let below = page.line(index + 1).is_some_and(|below| only_form(below, &(0..below.chars.len())));
        let form = line.labels.has(Role::LegalForm) || below;
        let tall = line.area(&at).height > tallest * 0.8;
        let early = 6 - i32::try_from(index).unwrap_or(6);
        let score = early + 4 * i32::from(form) + 3 * i32::from(tall) - 3 * i32::from(address(line));
        if best.as_ref().is_none_or(|(most, ..)| score > *most) {
            best = Some((score, index, at));
        }
    }
    let (score, index, at) = best?;
    let line = page.line(index)?;
    let sure = if score >= 6 && line.letters(&at) >= 0.85 { Sure::Likely } else { Sure::Doubtful };
    let text = line.text(at.clone());
    let value =
        text.trim_matches(|c: char| !c.is_alphanumeric() && !matches!(c, '.' | ')' | '(' | '!')).to_owned();
    Some(Field { value, sure, area: line.area(&at) })
}

/// The part of a row that may be a name: its stretches from the first with letters on, as long as they are no label.
fn name(line: &Line) -> Option<Range<usize>> {
    let stands = |at: &Range<usize>| {
        let text = line.text(at.clone());
        let letters = text.chars().filter(|c| c.is_alphabetic()).count();
        let digits = text.chars().filter(char::is_ascii_digit).count();
        let web = text.contains("www") || text.contains('@') || text.contains("://");
        letters >= 3 && letters > 2 * digits && !web && !only_labels(line, at) && !only_form(line, at)
    };
    let mut at: Option<Range<usize>> = None;
    for stretch in line.stretches() {
        match (stands(&stretch), at.as_mut()) {
            (true, None) => at = Some(stretch),
            (true, Some(so_far)) if close(line, so_far, &stretch) => so_far.end = stretch.end,
            (false, Some(_)) => break,
            _ => {}
        }
    }
    at
}

/// Whether two stretches stand as close as words do: no further apart than they are high, on a photo that is upright
/// or lies by at most a factor of two.
fn close(line: &Line, one: &Range<usize>, other: &Range<usize>) -> bool {
    let (one, other) = (line.area(one), line.area(other));
    other.left - (one.left + one.width) <= 2.0 * one.height.max(other.height)
}

/// Whether it is nothing but the legal form of the firm that the row above names.
fn only_form(line: &Line, at: &Range<usize>) -> bool {
    let forms =
        line.labels.all.iter().filter(|label| label.role == Role::LegalForm && at.contains(&label.at.start));
    let letters = line.text(at.clone()).chars().filter(|c| c.is_alphanumeric()).count();
    forms.map(|label| label.at.len()).sum::<usize>() >= letters
}

/// Whether labels take all of it but a few letters: `RECHNUNG Nr.`, `Welcome to`.
fn only_labels(line: &Line, at: &Range<usize>) -> bool {
    let inside = |role: Role| {
        !matches!(role, Role::LegalForm | Role::Plain | Role::Filler | Role::Petrol | Role::Diesel)
    };
    let labels = line.labels.all.iter().filter(|label| at.contains(&label.at.start));
    // A word that announces a number, such as `Station`, may as well be part of a name where no digit follows.
    let digits = line.text(at.clone()).contains(|c: char| c.is_ascii_digit());
    let weight = |label: &Label| if label.role == Role::OtherNumber && !digits { 1 } else { 2 };
    let named: usize =
        labels.clone().filter(|label| inside(label.role)).map(|label| label.at.len() * weight(label)).sum();
    let quiet: usize = labels.filter(|label| label.role == Role::Filler).map(|label| label.at.len()).sum();
    let letters = line.text(at.clone()).chars().filter(|c| c.is_alphanumeric()).count();
    named > 0 && named + quiet >= letters
}

/// Whether the row looks like an address: it has a number of a house or a postal code.
fn address(line: &Line) -> bool {
    line.figures.iter().any(|figure| figure.places == 0) || line.text(0..line.chars.len()).contains(',')
}
