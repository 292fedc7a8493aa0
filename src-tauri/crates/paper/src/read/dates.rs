//! Days as receipts print them, in every usual order.

use std::ops::Range;
use std::sync::LazyLock;

use units::Day;

use super::figures::meant;
use super::fold::{key, plain, within_one};
use super::page::Line;
use super::place::Place;
use super::receipt::{Country, Known};
use super::stamp;
use super::words::MONTHS;

/// A receipt that is older is not read by the one who just paid; more years make misread ones plausible.
const OLDEST_YEARS: i32 = 12;
/// Three numbers that may be a day, and where they stand.
pub(super) struct Found {
    /// Where they stand.
    pub at: Range<usize>,
    /// Every way to read them, the likelier first.
    pub readings: Vec<Day>,
    /// The year has four digits, or the order of day and month is beyond doubt.
    pub complete: bool,
    /// Letters or signs were taken for others than those that were read.
    pub mended: bool,
}

/// All days of a line.
pub(super) fn find(line: &Line, known: &Known<'_>, place: &Place) -> Vec<Found> {
    let parts = parts(line);
    let mut found: Vec<Found> = compact(line, known).collect();
    let mut next = 0;
    while next + 2 < parts.len() {
        let day = Triple::of(line, &parts[next..next + 3]).and_then(|triple| triple.read(known, place));
        next += if day.is_some() { 3 } else { 1 };
        found.extend(day);
    }
    found
}

/// Days in the basic form of ISO 8601, `20260312`. Only a time behind them tells them from numbers of eight digits.
fn compact(line: &Line, known: &Known<'_>) -> impl Iterator<Item = Found> {
    let starts = (0..line.chars.len()).filter(|&at| begins(line, at) && line.at(at).is_ascii_digit());
    starts.filter_map(|start| {
        let at = start..start + 8;
        let digits = line.text(at.clone());
        let alone = digits.len() == 8 && digits.bytes().all(|byte| byte.is_ascii_digit());
        let gap = usize::from(matches!(line.at(at.end), ' ' | 'T' | '-'));
        if !alone || gap == 0 || stamp::time(line, at.end + gap).is_none() {
            return None;
        }
        let (year, month, day) = (&digits[..4], &digits[4..6], &digits[6..]);
        let day = Day::from_ymd(year.parse().ok()?, month.parse().ok()?, day.parse().ok()?);
        let day = day.ok().filter(|day| is_plausible(*day, known))?;
        Some(Found { at, readings: vec![day], complete: true, mended: false })
    })
}

/// Whether a receipt that someone photographs may be of this day.
fn is_plausible(day: Day, known: &Known<'_>) -> bool {
    (-400..OLDEST_YEARS * 366).contains(&known.today.days_since(day))
}

/// A part of a day: a number, or the name of a month.
#[derive(Clone)]
struct Part {
    at: Range<usize>,
    number: u32,
    month: bool,
    mended: bool,
}

/// Runs of digits and names of months, in order; other words break what they stand between.
fn parts(line: &Line) -> Vec<Part> {
    let mut parts = Vec::new();
    let mut index = 0;
    while index < line.chars.len() {
        let class = |at: usize| line.at(at).is_alphabetic() && !digit_like(line, at);
        let numeric = line.at(index).is_ascii_digit() || digit_like(line, index);
        let start = index;
        while index < line.chars.len()
            && numeric
            && (line.at(index).is_ascii_digit() || digit_like(line, index))
        {
            index += 1;
        }
        while index < line.chars.len() && !numeric && class(index) {
            index += 1;
        }
        // A first letter that was read as a digit, `0ktober`, or a last one: `JUNI0`.
        if let Some(end) = (numeric && index == start + 1).then(|| misread_month(line, start)).flatten() {
            parts.extend(part(line, start..end, false));
            index = end;
            continue;
        }
        let slip = !numeric && index >= start + 3 && line.at(index).is_ascii_digit();
        if slip && !line.at(index + 1).is_alphanumeric() && month(&line.text(start..index + 1)).is_some() {
            index += 1;
        }
        parts.extend(part(line, start..index, numeric));
        index = index.max(start + 1);
    }
    parts
}

/// Where the name of a month ends whose first letter was read as the digit that stands here.
fn misread_month(line: &Line, start: usize) -> Option<usize> {
    let end = start + 1 + (start + 1..line.chars.len()).take_while(|at| line.at(*at).is_alphabetic()).count();
    named_exactly(&line.text(start..end)).map(|_| end)
}

/// A letter that stands for a digit: one with a digit or a sign of a day on one side and a digit on the other.
fn digit_like(line: &Line, at: usize) -> bool {
    let near = |c: char| c.is_ascii_digit() || matches!(c, '.' | '/' | '-');
    let (before, after) = (at.checked_sub(1).map_or(' ', |at| line.at(at)), line.at(at + 1));
    let digit = before.is_ascii_digit() || after.is_ascii_digit();
    let ends = after == ' ' && before.is_ascii_digit();
    meant(line.at(at)).is_some()
        && digit
        && ((near(before) && near(after)) || (before == ' ' && near(after)) || ends)
}

fn part(line: &Line, at: Range<usize>, numeric: bool) -> Option<Part> {
    if at.is_empty() {
        return None;
    }
    let at = if numeric { without_time(line, at) } else { at };
    let text = line.text(at.clone());
    if !numeric {
        return month(&text).map(|number| Part { at, number, month: true, mended: false });
    }
    let digits: String = text.chars().map(|c| meant(c).unwrap_or(c)).collect();
    let number = digits.parse().ok().filter(|_| digits.len() <= 4)?;
    Some(Part { at, number, month: false, mended: digits != text })
}

/// Digits without the hour that follows, or the minutes that come before, when the space between day and time got
/// lost: `14.11.202611:20`, `11:2014.11.2026`.
fn without_time(line: &Line, at: Range<usize>) -> Range<usize> {
    if at.len() > 2 && stamp::day_behind_time(line, at.start + 2) {
        return at.start + 2..at.end;
    }
    let signed = at.start.checked_sub(1).is_some_and(|before| matches!(line.at(before), '.' | '/' | '-'));
    let century = line.text(at.start..at.start + 2) == "20";
    let glued = (at.len() == 6 && century) || (at.len() == 4 && signed && !century);
    let time = at.end.checked_sub(2).is_some_and(|hour| stamp::time(line, hour).is_some());
    if time && glued { at.start..at.end - 2 } else { at }
}

/// The names of all months by their keys.
static NAMES: LazyLock<Vec<(Vec<char>, u32)>> = LazyLock::new(|| {
    let months = (1..).zip(&MONTHS);
    let names = months.flat_map(|(month, columns)| {
        columns.iter().flat_map(|names| names.iter()).map(move |name| (name, month))
    });
    names.map(|(name, month)| (key(name).chars().collect(), month)).collect()
});

/// The month that a word names, with one slip forgiven in a long one.
pub(super) fn month(word: &str) -> Option<u32> {
    if word.len() > 24 {
        return None;
    }
    let nearly = || {
        let word: Vec<char> = key(word).chars().collect();
        NAMES.iter().find(|(name, _)| name.len() > 5 && within_one(name, &word)).map(|(_, month)| *month)
    };
    named_exactly(word).or_else(nearly)
}

/// The month that a word names but for letters and digits that look alike.
fn named_exactly(word: &str) -> Option<u32> {
    let word: Vec<char> = key(word).chars().take(25).collect();
    NAMES.iter().find(|(name, _)| *name == word).map(|(_, month)| *month)
}

/// Three parts in a row.
struct Triple<'a> {
    parts: [&'a Part; 3],
    sign: char,
    four_digit_years: [bool; 3],
    mended: bool,
}

impl<'a> Triple<'a> {
    /// Parts that nothing but the signs of a day stands between, and no further digit beside.
    fn of(line: &Line, parts: &'a [Part]) -> Option<Triple<'a>> {
        let [first, second, third] = parts else { return None };
        let named = first.month || second.month;
        let (one, two) = (between(line, first, second, named)?, between(line, second, third, named)?);
        let mended = one.1 || two.1 || parts.iter().any(|part| part.mended);
        let same = one.0 == two.0 || named || (one.0 != ' ' && two.0 != ' ');
        let after = line.at(third.at.end);
        // 27.11.2026-4 is a number, 27.11.2026-14:05 a day. Digits that follow at once are the hour that was cut off.
        let ended = (after != '/' || stamp::time(line, third.at.end + 1).is_some())
            && !(after.is_alphabetic() && after != 'T')
            && !(after == '.' && line.at(third.at.end + 1).is_ascii_digit());
        let year = |part: &Part| part.at.len() == 4;
        (same && begins(line, first.at.start) && ended).then_some(Triple {
            parts: [first, second, third],
            sign: if named { 'm' } else { one.0 },
            four_digit_years: [year(first), year(second), year(third)],
            mended: mended || (!named && one.0 != two.0),
        })
    }

    fn read(&self, known: &Known<'_>, place: &Place) -> Option<Found> {
        let [a, b, c] = self.parts.map(|part| part.number);
        let plausible = |day: &Day| is_plausible(*day, known);
        let day = |year: u32, four: bool, month: u32, day: u32| {
            let year = if four { year } else { Some(year).filter(|year| *year < 100)? + 2000 };
            Day::from_ymd(i32::try_from(year).ok()?, month, day).ok().filter(plausible)
        };
        let [year_first, _, year_last] = self.four_digit_years;
        let mut readings = match self.parts.map(|part| part.month) {
            [false, _, false] if year_first => vec![day(a, true, b, c)],
            [false, true, false] => vec![day(c, year_last, b, a)],
            [true, false, false] => vec![day(c, year_last, a, b)],
            [false, false, false] => {
                self.numbers(known, place, day(c, year_last, b, a), day(c, year_last, a, b), || {
                    day(a, false, b, c)
                })
            }
            _ => return None,
        }
        .into_iter()
        .flatten()
        .collect::<Vec<Day>>();
        readings.dedup();
        let at = self.parts[0].at.start..self.parts[2].at.end;
        let complete = year_first || year_last || self.sign == 'm';
        (!readings.is_empty()).then_some(Found { at, readings, complete, mended: self.mended })
    }

    /// Three numbers with the year last, or first in two digits when nothing else makes sense.
    ///
    /// Points are never printed with the month first. Of two readings one that lies ahead is no reading.
    fn numbers(
        &self,
        known: &Known<'_>,
        place: &Place,
        day_first: Option<Day>,
        month_first: Option<Day>,
        year_first: impl Fn() -> Option<Day>,
    ) -> Vec<Option<Day>> {
        let past = |day: Option<Day>| day.filter(|day| day.days_since(known.today) <= 1);
        if self.sign == '.' {
            return vec![day_first];
        }
        let order = place.month_first();
        match (past(day_first), past(month_first), order) {
            (Some(first), Some(second), None) if first != second => {
                let dollars = place.currency.is_some_and(|currency| currency.value.code() == "USD");
                let own = dollars || matches!(known.country.as_ref().map(Country::code), Some("US" | "PH"));
                if own { vec![Some(second), Some(first)] } else { vec![Some(first), Some(second)] }
            }
            (None, None, _) => vec![past(year_first()).or(day_first).or(month_first)],
            (first, second, Some(true)) => vec![second.or(first)],
            (first, second, _) => vec![first.or(second)],
        }
    }
}

/// Whether a day can begin here: behind a space, a sign, or a word that lost its space, and in no longer number.
fn begins(line: &Line, at: usize) -> bool {
    let back = |by: usize| at.checked_sub(by).map_or(' ', |at| line.at(at));
    match back(1) {
        '.' | '/' | '-' | ':' => !back(2).is_ascii_digit(),
        '+' => false,
        c if c.is_alphabetic() => back(2).is_alphabetic() && back(3).is_alphabetic(),
        c => !c.is_alphanumeric() || stamp::day_behind_time(line, at),
    }
}

/// The sign between two parts of a day, and whether it was misread; `None` when they do not belong together.
fn between(line: &Line, one: &Part, other: &Part, named: bool) -> Option<(char, bool)> {
    let gap: String = line.text(one.at.end..other.at.start);
    let gap = plain(&gap);
    let bare: String = gap.chars().filter(|c| *c != ' ').collect();
    let word = matches!(
        bare.as_str(),
        "de" | "del"
            | "th"
            | "st"
            | "nd"
            | "rd"
            | "er"
            | ","
            | "th,"
            | ".,"
            | "o"
            | "st,"
            | "nd,"
            | "rd,"
            | "."
    );
    match (named, bare.as_str()) {
        (true, "" | "-" | "/") => Some(('m', false)),
        (true, _) => word.then_some(('m', false)),
        (false, "." | "/" | "-") => bare.chars().next().map(|sign| (sign, false)),
        (false, "\u{2010}" | "\u{2011}" | "\u{2012}" | "\u{2013}") => Some(('-', false)),
        (false, ",") if gap.len() == 1 => Some(('.', true)),
        _ => None,
    }
}
