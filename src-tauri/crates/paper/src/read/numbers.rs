//! Numbers of parts: by their label, by their column, by their shape, and by those that are known.

use std::collections::HashMap;
use std::ops::Range;

use crate::text::Area;

use super::fold::{lookalike, number};
use super::page::{Line, Page};
use super::receipt::{Field, Known, Sure};
use super::shapes::{self, Shape};
use super::words::{PIECES, Role, SETS};
use super::zone::is_heading;

/// A receipt has no more of them.
const MOST: usize = 200;
/// A number is printed in at most as many groups.
const GROUPS: usize = 6;

/// A number on a line, and the line.
pub(super) struct OnLine {
    /// The line.
    pub line: usize,
    /// The number.
    pub field: Field<String>,
}

struct Found {
    at: Range<usize>,
    text: String,
    sure: Sure,
    labelled: bool,
}

/// All numbers of parts, and the same with their lines. `goods` are the rows where a number needs no label; with one
/// it may stand a little above them. Elsewhere the same labels name receipts, orders and payments.
pub(super) fn find(
    page: &Page,
    goods: &Range<usize>,
    known: &Known<'_>,
) -> (Vec<Field<String>>, Vec<OnLine>) {
    let known = Index::new(known);
    let column = column(page, goods);
    let named = if goods.is_empty() { 0..page.lines.len() } else { goods.start.saturating_sub(2)..goods.end };
    let mut all: Vec<(usize, Found)> = Vec::new();
    for (index, line) in page.lines.iter().enumerate() {
        let goods = goods.contains(&index) && !is_heading(line);
        let place = Place { goods, labels: named.contains(&index), column: column.filter(|_| goods) };
        all.extend(on_line(line, &place, &known).into_iter().map(|found| (index, found)));
        if all.len() >= MOST {
            break;
        }
    }
    let counts: Vec<usize> =
        all.iter().map(|(_, one)| all.iter().filter(|(_, other)| same(one, other)).count()).collect();
    let mut rows: Vec<OnLine> = Vec::new();
    for ((index, found), count) in all.into_iter().zip(counts) {
        let Some(line) = page.line(index) else { continue };
        // Printed twice, and once with a label.
        let sure = if count > 1 && found.labelled { Sure::Sure } else { found.sure };
        rows.push(OnLine {
            line: index,
            field: Field { value: found.text, sure, area: line.area(&found.at) },
        });
    }
    let mut fields: Vec<Field<String>> = Vec::new();
    for row in &rows {
        match fields.iter_mut().find(|field| number(&field.value) == number(&row.field.value)) {
            Some(field) if field.sure < row.field.sure => *field = row.field.clone(),
            Some(_) => {}
            None => fields.push(row.field.clone()),
        }
    }
    (fields, rows)
}

/// The number of the thing that stands on these rows: the one that is believed most, of equals the first.
pub(super) fn of_rows(numbers: &[OnLine], rows: &[usize]) -> Option<Field<String>> {
    let here = numbers.iter().filter(|number| rows.contains(&number.line)).map(|number| &number.field);
    here.fold(None, |best: Option<&Field<String>>, field| match best {
        Some(best) if best.sure >= field.sure => Some(best),
        _ => Some(field),
    })
    .cloned()
}

fn same(one: &Found, other: &Found) -> bool {
    number(&one.text) == number(&other.text)
}

/// Where the head of a table says that numbers of parts stand: from its left edge to the next head's.
///
/// `Article`, `Item` and the like head descriptions as well as numbers. Of two such heads the one counts under which
/// more rows begin with digits.
fn column(page: &Page, goods: &Range<usize>) -> Option<Area> {
    // A head that is too wide for its row goes on below it.
    let heads =
        (1..=2).filter_map(|up| page.line(goods.start.checked_sub(up)?)).take_while(|line| is_heading(line));
    let head = heads.filter(|line| line.labels.has(Role::Part)).last()?;
    let labels = head.labels.all.iter().filter(|label| label.role == Role::Part);
    let areas = labels.map(|label| {
        let area = head.area(&label.at);
        let next = head.labels.all.iter().find(|other| other.at.start >= label.at.end);
        let right = next.map_or(area.left + area.width, |next| head.area(&next.at).left);
        Area { width: (right - area.left).max(area.width), ..area }
    });
    let numbered = |area: &Area| {
        let rows = page.lines.get(goods.clone()).unwrap_or_default().iter();
        rows.filter(|line| tokens(line).iter().any(|token| under(line, token, *area))).count()
    };
    areas.rev().max_by_key(numbered)
}

/// Whether a token with several digits begins under the head of a column.
fn under(line: &Line, token: &Range<usize>, column: Area) -> bool {
    Shape::of(&line.text(token.clone())).digits >= 3 && begins_in(line.area(token), column)
}

/// The numbers that are known, by what is left of them when letters and digits that look alike are one.
struct Index(HashMap<String, Vec<String>>);

impl Index {
    fn new(known: &Known<'_>) -> Index {
        let mut index: HashMap<String, Vec<String>> = HashMap::new();
        for written in known.numbers {
            let bare = number(written);
            if bare.chars().count() >= 4 {
                index.entry(lookalike(&bare)).or_default().push((*written).to_owned());
            }
        }
        Index(index)
    }

    /// The known number that a text is, as it was written before when only letters that look alike differ.
    fn get(&self, text: &str) -> Option<(String, Sure)> {
        let bare = number(text);
        let known = self.0.get(&lookalike(&bare))?;
        if known.iter().any(|known| number(known) == bare) {
            return Some((text.to_owned(), Sure::Sure));
        }
        known.first().map(|known| (known.clone(), Sure::Likely))
    }
}

/// The pieces of a line that may begin or continue a number: its words, cut at the signs that set off a label.
fn tokens(line: &Line) -> Vec<Range<usize>> {
    let ends: Vec<usize> =
        line.labels.all.iter().filter(|label| label.role == Role::Part).map(|label| label.at.end).collect();
    let cuts = |at: usize| {
        matches!(line.at(at), ':' | '#' | '(' | ')' | '[' | ']' | ';' | '=' | '"' | '*' | '°' | 'º')
    };
    let mut tokens = Vec::new();
    for word in &line.words {
        let mut start = word.start;
        for at in word.clone() {
            if ends.contains(&at) {
                tokens.push(start..at);
                start = at;
            }
            if cuts(at) {
                tokens.push(start..at);
                start = at + 1;
            }
        }
        tokens.push(start..word.end);
    }
    tokens.into_iter().map(|token| trimmed(line, token)).filter(|token| !token.is_empty()).collect()
}

/// A token without the signs at its ends that belong to the sentence.
fn trimmed(line: &Line, token: Range<usize>) -> Range<usize> {
    let part = |at: &usize| line.at(*at).is_alphanumeric();
    let start = token.clone().find(part).unwrap_or(token.end);
    let end = token.clone().rev().find(part).map_or(start, |at| at + 1);
    start..end
}

/// In which ways a row may name a part.
struct Place {
    /// It describes goods, so that a shape is enough.
    goods: bool,
    /// A label is enough.
    labels: bool,
    /// The column in which numbers stand.
    column: Option<Area>,
}

fn on_line(line: &Line, place: &Place, known: &Index) -> Vec<Found> {
    let tokens = tokens(line);
    let mut found = Vec::new();
    let mut next = 0;
    while next < tokens.len() {
        let rest = &tokens[next..];
        let one = by_known(line, rest, known)
            .or_else(|| place.labels.then(|| by_label(line, rest, place.column)).flatten())
            .or_else(|| place.goods.then(|| by_shape(line, rest)).flatten());
        next += one.as_ref().map_or(1, |(count, _)| *count);
        found.extend(one.map(|(_, found)| found));
    }
    found
}

fn span(tokens: &[Range<usize>]) -> Range<usize> {
    tokens.first().map_or(0, |first| first.start)..tokens.last().map_or(0, |last| last.end)
}

/// The most tokens that together are a known number.
fn by_known(line: &Line, tokens: &[Range<usize>], known: &Index) -> Option<(usize, Found)> {
    if known.0.is_empty() {
        return None;
    }
    (1..=GROUPS.min(tokens.len())).rev().find_map(|count| {
        let at = span(&tokens[..count]);
        let (text, sure) = known.get(&line.text(at.clone()))?;
        Some((count, Found { at, text, sure, labelled: true }))
    })
}

/// A number behind a label or under the head of a column.
fn by_label(line: &Line, tokens: &[Range<usize>], column: Option<Area>) -> Option<(usize, Found)> {
    let first = tokens.first()?;
    let label = line.labels.before(first.start);
    let near = |label: &super::labels::Label| {
        // A description may stand between the label and something else, which then is not what it names.
        let between = line.text(label.at.end..first.start);
        between.chars().filter(|c| c.is_alphanumeric()).count() <= 3
    };
    let labelled =
        label.is_some_and(|label| label.role == Role::Part && near(label) && !foreign(line, label.at.start));
    let below = column.is_some_and(|column| begins_in(line.area(first), column));
    if !(labelled || below) || inside_label(line, first) || !shapes::begins(line, first) {
        return None;
    }
    let count = shapes::reach(line, tokens);
    let at = span(&tokens[..count]);
    let text = line.text(at.clone());
    let shape = Shape::of(&text);
    let sound = shapes::is_number(line, &at, &text) && number(&text).len() >= 4 && shape.digits > 0;
    let crisp = line.letters(&at) >= 0.85;
    let sure = if crisp { Sure::Likely } else { Sure::Doubtful };
    sound.then_some((count, Found { at, text, sure, labelled: true }))
}

/// Whether the row is about a receipt, an order or a payment before it comes to this place.
fn foreign(line: &Line, position: usize) -> bool {
    let other = |role: Role| matches!(role, Role::OtherNumber | Role::TaxNumber | Role::Paid);
    line.amounts().next().is_none() && line.labels.before(position).is_some_and(|label| other(label.role))
}

/// Whether a token is a word of a label, and so no part of what it names.
fn inside_label(line: &Line, token: &Range<usize>) -> bool {
    let word = |label: &super::labels::Label| label.role != Role::Filler && label.at.contains(&token.start);
    line.labels.all.iter().any(|label| word(label) && label.at.end >= token.end)
}

/// Whether something begins under the head of a column.
fn begins_in(area: Area, column: Area) -> bool {
    let slack = 0.5 * area.height.max(column.height);
    area.left >= column.left - slack && area.left + area.width * 0.5 < column.left + column.width
}

/// A number by its shape alone, in a row that describes goods.
fn by_shape(line: &Line, tokens: &[Range<usize>]) -> Option<(usize, Found)> {
    let first = tokens.first().filter(|first| shapes::begins(line, first))?;
    if inside_label(line, first) {
        return None;
    }
    let other = |role: Role| {
        matches!(
            role,
            Role::OtherNumber
                | Role::TaxNumber
                | Role::Shelf
                | Role::SaleDay
                | Role::OtherDay
                | Role::Odometer
                | Role::Saved
                | Role::Paid
                | Role::Tax
                | Role::NextReading
        )
    };
    if line.labels.before(first.start).is_some_and(|label| other(label.role))
        || shapes::after_grade(line, first.start)
    {
        return None;
    }
    let count = shapes::reach(line, tokens);
    let at = span(&tokens[..count]);
    let text = line.text(at.clone());
    let bare = number(&text);
    let shape = Shape::of(&text);
    let led =
        first.start == 0 || line.text(0..first.start).chars().filter(|c| c.is_alphanumeric()).count() == 0;
    // Digits alone are a number only where they lead a row and are long, and even so they may be the shop's own.
    let mixed = shape.letters > 0 && shape.digits >= 2 && shape.longest_word < 4;
    let signed = shape.letters == 0 && shape.digits >= 6 && shape.signs > 0;
    // Thirteen digits in one are a bar code also where one of them was misread (GS1 General Specifications: GTIN-13).
    let gtin = shape.letters == 0 && shape.signs == 0 && shape.digits == 13;
    let plain = shape.letters == 0 && shape.digits >= 6 && led && !gtin;
    let sound =
        (5..=20).contains(&bare.len()) && (mixed || signed || plain) && shapes::is_number(line, &at, &text);
    let known_word = PIECES.contains(&text.as_str()) || SETS.contains(&text.as_str());
    let strong = mixed && shape.digits >= 3 && line.letters(&at) >= 0.85;
    let sure = if strong { Sure::Likely } else { Sure::Doubtful };
    (sound && !known_word).then_some((count, Found { at, text, sure, labelled: false }))
}
