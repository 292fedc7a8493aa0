//! Numbers as receipts print them: `1.234,56`, `1,234.56`, `1 234,56`, `1'234.56`, `12,50-`, `12.-`, `12 , 50`.

use std::ops::Range;

use super::fold::plain;
use super::page::Line;
use super::words::{GALLONS, KILOGRAMS, KILOMETRES, LITRES, METRES, MILES, SIZES};

/// A number on a line.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Figure {
    /// All its digits, negative where a minus stands before or behind them.
    pub digits: i64,
    /// How many of the digits stand behind the decimal sign.
    pub places: u32,
    /// Where in the line it stands, signs and currency left out.
    pub at: Range<usize>,
    /// Its three decimals may as well be a group of thousands: `1.234`.
    pub grouped: bool,
    /// Letters or signs were taken for others than those that were read.
    pub mended: bool,
    /// The word or sign that follows, folded.
    pub unit: String,
    /// What stands around it.
    pub beside: Beside,
}

/// What stands around a number and says that it is no amount of money.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Beside {
    /// Nothing says so.
    Nothing,
    /// A unit of length, volume, mass or the like follows.
    Unit,
    /// A percent sign follows.
    Percent,
    /// It is a part of something longer, such as a number of a part or a time.
    Code,
}

impl Figure {
    /// Whether it may be an amount of money.
    pub fn is_amount(&self) -> bool {
        self.places == 2 && self.beside == Beside::Nothing
    }

    /// Whether a percent sign follows.
    pub fn is_percent(&self) -> bool {
        self.beside == Beside::Percent
    }

    /// Whether it may count something: it is no percentage and no part of something longer.
    pub fn may_count(&self) -> bool {
        matches!(self.beside, Beside::Nothing | Beside::Unit)
    }

    /// The number in thousandths, when it has at most three decimals.
    pub fn thousandths(&self) -> Option<i64> {
        let scale = 10_i64.pow(3_u32.checked_sub(self.places)?);
        self.digits.checked_mul(scale)
    }

    /// The number without decimals, when it has none, or when they may be a group of thousands.
    pub fn whole(&self) -> Option<i64> {
        (self.places == 0 || self.grouped).then_some(self.digits)
    }
}

/// All numbers of a line, from left to right.
pub(super) fn find(line: &Line) -> Vec<Figure> {
    let (chars, mended) = mend(line);
    let mut figures = Vec::new();
    let mut index = 0;
    while index < chars.len() {
        let begins = chars[index].is_ascii_digit() || point_first(&chars, index);
        if !begins {
            index += 1;
            continue;
        }
        let run = Run::at(&chars, index, line);
        index = run.end.max(index + 1);
        figures.extend(run.figure(&chars, &mended));
    }
    figures
}

/// `.50`, as printed where the whole is nothing.
fn point_first(chars: &[char], index: usize) -> bool {
    let digit = |at: usize| chars.get(at).is_some_and(char::is_ascii_digit);
    let before = index.checked_sub(1).map_or(' ', |at| chars[at]);
    matches!(chars[index], '.' | ',')
        && digit(index + 1)
        && digit(index + 2)
        && !digit(index + 3)
        && !before.is_alphanumeric()
        && !is_sign(before)
}

/// The line with letters that were read in place of digits put right, in words that look like amounts or days; and
/// where that was done.
fn mend(line: &Line) -> (Vec<char>, Vec<bool>) {
    let (mut chars, mut mended) = (line.chars.clone(), vec![false; line.chars.len()]);
    for word in &line.words {
        let trimmed = trim(&chars, word.clone());
        if !looks_numeric(&chars[trimmed.clone()]) {
            continue;
        }
        for at in trimmed {
            if let Some(digit) = meant(chars[at]) {
                (chars[at], mended[at]) = (digit, true);
            }
        }
    }
    (chars, mended)
}

/// The word without currency signs, brackets and the like at its ends.
fn trim(chars: &[char], word: Range<usize>) -> Range<usize> {
    let loose = |c: char| !c.is_alphanumeric() && c != '|';
    let start = word.clone().find(|at| !loose(chars[*at])).unwrap_or(word.end);
    let end = word.clone().rev().find(|at| !loose(chars[*at])).map_or(start, |at| at + 1);
    start..end.max(start)
}

/// The digit that a letter was probably meant to be.
pub(super) fn meant(c: char) -> Option<char> {
    match c {
        'O' | 'o' | 'Q' | 'D' => Some('0'),
        'l' | 'I' | '|' | 'i' => Some('1'),
        'Z' | 'z' => Some('2'),
        'S' | 's' => Some('5'),
        'B' => Some('8'),
        _ => None,
    }
}

/// Digits and letters like them around a decimal sign with two behind it, or between the two signs of a day.
fn looks_numeric(word: &[char]) -> bool {
    let digits = word.iter().filter(|c| c.is_ascii_digit()).count();
    let wrong = word.iter().filter(|c| meant(**c).is_some()).count();
    let signs = word.iter().filter(|c| matches!(c, '.' | ',' | '/' | '-' | '\'')).count();
    if wrong == 0 || wrong > digits.max(1) || digits + wrong + signs != word.len() {
        return false;
    }
    let behind = word.iter().rev().take_while(|c| !matches!(c, '.' | ',')).count();
    (behind == 2 && word.len() > 3) || (signs == 2 && digits >= 4)
}

fn is_sign(c: char) -> bool {
    matches!(c, '.' | ',' | '\'' | '’' | '‘' | '`' | '´')
}

/// Groups of digits with the signs between them.
struct Run {
    start: usize,
    end: usize,
    groups: Vec<(char, Range<usize>)>,
    /// A space beside the decimal sign had to be overlooked.
    loose: bool,
}

impl Run {
    fn at(chars: &[char], start: usize, line: &Line) -> Run {
        let digits = |from: usize| from + chars[from..].iter().take_while(|c| c.is_ascii_digit()).count();
        let mut run =
            Run { start, end: digits(start), groups: vec![(' ', start..digits(start))], loose: false };
        loop {
            let sign = chars.get(run.end).copied().unwrap_or(' ');
            let after = run.end + 1;
            let next = if after <= chars.len() { digits(after) } else { after };
            if is_sign(sign) && next > after {
                run.push(sign, after..next);
            } else if sign == ' ' && run.takes_thousands(chars, after..next, line) {
                run.push(' ', after..next);
            } else if let Some((sign, group)) = run.split_decimals(chars, line) {
                run.push(sign, group);
                run.loose = true;
                break;
            } else {
                break;
            }
        }
        run
    }

    fn push(&mut self, sign: char, group: Range<usize>) {
        self.end = group.end;
        self.groups.push((sign, group));
    }

    /// `1 234,56`: three digits behind a space, then decimals, within one stretch.
    fn takes_thousands(&self, chars: &[char], group: Range<usize>, line: &Line) -> bool {
        let digit = |at: usize| chars.get(at).is_some_and(char::is_ascii_digit);
        let spaced = self.groups.iter().skip(1).all(|(sign, _)| *sign == ' ');
        let decimals = matches!(chars.get(group.end), Some('.' | ','))
            && digit(group.end + 1)
            && digit(group.end + 2)
            && !digit(group.end + 3);
        spaced
            && group.len() == 3
            && self.groups[0].1.len() <= 3
            && decimals
            && line.in_one_stretch(&(self.start..group.end))
    }

    /// `12 , 50`, `12, 50`, `12 ,50`: two digits behind a decimal sign with a space beside it, and nothing more.
    fn split_decimals(&self, chars: &[char], line: &Line) -> Option<(char, Range<usize>)> {
        let skip = |at: usize| at + usize::from(chars.get(at) == Some(&' '));
        let sign_at = skip(self.end);
        let sign = *chars.get(sign_at).filter(|c| matches!(c, '.' | ','))?;
        let start = skip(sign_at + 1);
        let end = start + chars.get(start..)?.iter().take_while(|c| c.is_ascii_digit()).count();
        let beyond = chars.get(end).copied().unwrap_or(' ');
        let alone = self.groups.len() == 1 && self.groups[0].1.len() <= 4;
        let closed = !matches!(beyond, '.' | ',' | '/' | '-' | ':') && !beyond.is_alphanumeric();
        // In two stretches the sign must cling to one of the numbers, or it is a full stop.
        let near = line.in_one_stretch(&(self.start..end)) || (sign_at == self.end) != (start == sign_at + 1);
        (alone && end - start == 2 && start > self.end + 1 && closed && near).then_some((sign, start..end))
    }

    /// What the groups say, if they are a number at all.
    fn figure(&self, chars: &[char], mended: &[bool]) -> Option<Figure> {
        let lengths: Vec<usize> = self.groups.iter().map(|(_, group)| group.len()).collect();
        let (places, grouped) = self.point(&lengths)?;
        let text: String = self.groups.iter().flat_map(|(_, group)| &chars[group.clone()]).collect();
        let digits: i64 = text.parse().ok().filter(|digits| *digits < 1_000_000_000_000)?;
        let whole = places == 0 && dash_for_nothing(chars, self.end);
        let (digits, places) = if whole { (digits * 100, 2) } else { (digits, places) };
        let end = if whole { self.end + 2 } else { self.end };
        let around = Around::of(chars, self.start, end);
        Some(Figure {
            digits: if around.negative && !whole { -digits } else { digits },
            places,
            at: self.start..end,
            // A number that begins with nothing, as 0.789 does, has no thousands.
            grouped: grouped && chars[self.start] != '0',
            mended: self.loose || mended[self.start..self.end].contains(&true) || self.mixed(),
            unit: around.unit,
            beside: around.beside,
        })
    }

    /// How many decimals there are, and whether three of them may be a group; `None` for what is no number.
    fn point(&self, lengths: &[usize]) -> Option<(u32, bool)> {
        let (first, last) = (*lengths.first()?, *lengths.last()?);
        let middle = &lengths[1..lengths.len().max(2) - 1];
        let groups =
            |middle: &[usize]| middle.iter().all(|length| *length == 3) && (middle.is_empty() || first <= 3);
        let sign = self.groups.last()?.0;
        match (lengths.len(), last) {
            (1, _) => Some((0, false)),
            (2, 3) if sign == '\'' || sign == '’' => Some((0, false)),
            (2, 3) => Some((3, (1..=3).contains(&first))),
            (_, 3) if groups(&lengths[1..]) && self.groups[1].0 == sign => Some((0, false)),
            (_, 1..=4) if groups(middle) => Some((u32::try_from(last).ok()?, false)),
            _ => None,
        }
    }

    /// Thousands and decimals set off by the same sign: one of the two was misread.
    fn mixed(&self) -> bool {
        self.groups.len() > 2
            && self.groups.last().is_some_and(|(_, group)| group.len() == 2)
            && self.groups[1].0 == self.groups[self.groups.len() - 1].0
    }
}

/// `12.-` and `12,–`: a dash in place of two noughts.
fn dash_for_nothing(chars: &[char], end: usize) -> bool {
    let beyond = chars.get(end + 2).copied().unwrap_or(' ');
    matches!(chars.get(end), Some('.' | ','))
        && chars.get(end + 1).is_some_and(|c| is_dash(*c))
        && !beyond.is_alphanumeric()
}

fn is_dash(c: char) -> bool {
    matches!(c, '-' | '\u{2010}'..='\u{2015}' | '\u{2212}')
}

/// What stands beside a number.
struct Around {
    negative: bool,
    beside: Beside,
    unit: String,
}

impl Around {
    fn of(chars: &[char], start: usize, end: usize) -> Around {
        let at = |index: Option<usize>| index.and_then(|index| chars.get(index)).copied().unwrap_or(' ');
        let (before, after) = (at(start.checked_sub(1)), at(Some(end)));
        let (ahead, beyond) = (at(start.checked_sub(2)), at(Some(end + 1)));
        let behind: String = chars[end..].iter().skip_while(|c| **c == ' ').take(12).collect();
        let unit: String = behind.chars().take_while(|c| c.is_alphabetic() || "€$£".contains(*c)).collect();
        // Letters right before digits, `6PK1144`, `0 773 L65`, are part of a number and no unit.
        let within =
            !unit.is_empty() && unit != "x" && behind[unit.len()..].starts_with(|c: char| c.is_ascii_digit());
        let unit = if within { String::new() } else { plain(&unit) };
        let currency_ahead = before == '€' || before == '$' || before == '£';
        let minus_ahead = is_dash(before) && !ahead.is_alphanumeric();
        let negative = minus_ahead
            || (currency_ahead && is_dash(ahead))
            || (is_dash(after) && !beyond.is_alphanumeric());
        let code = (is_dash(before) && !minus_ahead)
            || (is_dash(after) && beyond.is_alphanumeric())
            || (matches!(before, '/' | ':' | '+' | '#') && ahead.is_alphanumeric())
            || (matches!(after, '/' | ':') && beyond.is_ascii_digit())
            || (matches!(before, '.' | ',') && ahead.is_ascii_digit());
        let code = code || (before.is_alphabetic() && (after.is_alphabetic() || part_of_code(chars, start)));
        let beside = match () {
            () if behind.starts_with('%') => Beside::Percent,
            () if code => Beside::Code,
            () if measures(&unit) => Beside::Unit,
            () => Beside::Nothing,
        };
        Around { negative, beside, unit }
    }
}

/// Letters before the number that are no currency and no word, as in `HX12.50`.
fn part_of_code(chars: &[char], start: usize) -> bool {
    let letters: String = chars[..start].iter().rev().take_while(|c| c.is_alphabetic()).take(4).collect();
    letters.chars().count() < 3 && !matches!(letters.as_str(), "x" | "X" | "à" | "a" | "rF" | "rk")
}

/// Whether a unit measures a thing and no money. A single letter may as well be the mark of a tax rate, but l.
fn measures(unit: &str) -> bool {
    let known = [SIZES, LITRES, GALLONS, KILOGRAMS, METRES, KILOMETRES, MILES];
    (unit == "l" || unit.len() > 1) && known.iter().any(|units| units.contains(&unit))
}

#[cfg(test)]
#[path = "figures_tests.rs"]
mod tests;
