//! The text of a photo as lines of letters, each of which still knows where it stands and how sure it is.

use std::ops::Range;

use crate::text::{Area, Row, Text};

use super::figures::{self, Figure};
use super::fold::plain;
use super::labels::{self, Label, Labels};
use super::words::{KILOMETRES, MILES, Role};

/// Rows beyond this one are not looked at.
pub(super) const MAX_ROWS: usize = 2_000;
/// Text beyond this many bytes is not looked at.
pub(super) const MAX_BYTES: usize = 64 * 1024;

/// Letters of a row beyond this one are not looked at: no till prints as many.
const MAX_LETTERS: usize = 1_000;

/// What is looked at of a photo's text, from top to bottom.
pub(super) struct Page {
    /// Every row on which anything stands.
    pub lines: Vec<Line>,
}

/// One stretch of text within its line.
#[derive(Clone)]
struct Piece {
    at: Range<usize>,
    letters: f32,
    area: Area,
}

/// One row: its letters, and what was made out among them. Every position counts letters from the row's left.
pub(super) struct Line {
    /// The letters, with one space between stretches and in place of anything that is not printed.
    pub chars: Vec<char>,
    /// The words: what stands between spaces.
    pub words: Vec<Range<usize>>,
    /// The labels.
    pub labels: Labels,
    /// The numbers.
    pub figures: Vec<Figure>,
    pieces: Vec<Piece>,
}

impl Page {
    /// The rows of a text, up to [`MAX_ROWS`] and [`MAX_BYTES`].
    pub fn new(text: &Text) -> Page {
        let mut left = MAX_BYTES;
        let lines = text.0.iter().take(MAX_ROWS).filter_map(|row| Line::new(row, &mut left)).collect();
        Page { lines }
    }

    /// The line with this number from above, if there is one.
    pub fn line(&self, index: usize) -> Option<&Line> {
        self.lines.get(index)
    }
}

impl Line {
    /// The row's letters, as long as there are bytes `left` to look at; `None` when nothing is printed on it.
    fn new(row: &Row, left: &mut usize) -> Option<Line> {
        let (mut chars, mut pieces) = (Vec::new(), Vec::new());
        for stretch in &row.0 {
            if stretch.text.len() > *left {
                break;
            }
            *left -= stretch.text.len();
            if !chars.is_empty() {
                chars.push(' ');
            }
            let start = chars.len();
            let letters = stretch.text.trim().chars().filter(|c| !is_unseen(*c)).map(printed);
            chars.extend(letters.take(MAX_LETTERS.saturating_sub(start)));
            if chars.len() > start {
                let letters = if stretch.sure.is_nan() { 0.0 } else { stretch.sure };
                pieces.push(Piece { at: start..chars.len(), letters, area: stretch.area });
            }
        }
        let words = words(&chars);
        if words.is_empty() {
            return None;
        }
        let labels = labels::find(&chars);
        let mut line = Line { chars, words, labels, figures: Vec::new(), pieces };
        line.figures = figures::find(&line);
        line.drop_makers_letters();
        Some(line)
    }

    /// Takes `KM` for a label no longer where it is the letters that a maker puts before his numbers: the digits
    /// behind it go on as no reading does, or they stand on a row that describes and prices a thing.
    fn drop_makers_letters(&mut self) {
        let priced = self.describes() >= 3 && self.amounts().next().is_some();
        let begins = |label: &Label| label.role == Role::Odometer && self.is_makers(&label.at, priced);
        let makers: Vec<_> = self.labels.all.iter().map(begins).collect();
        let mut makers = makers.into_iter();
        let mut letters = 0;
        self.labels.all.retain(|label| {
            let is_makers = makers.next().unwrap_or(false);
            letters += if is_makers { label.at.len() } else { 0 };
            !is_makers
        });
        self.labels.strange += letters;
    }

    /// Whether a bare unit stands directly before the number of a part.
    fn is_makers(&self, label: &Range<usize>, priced: bool) -> bool {
        let unit = plain(&self.text(label.clone()));
        let behind = label.end + usize::from(self.at(label.end) == ' ');
        let Some(figure) = self.figures.iter().find(|figure| figure.at.start == behind) else { return false };
        let (sign, next) = (self.at(figure.at.end), self.at(figure.at.end + 1));
        let unit_behind = [KILOMETRES, MILES].iter().any(|units| units.contains(&figure.unit.as_str()));
        let goes_on = match sign {
            '-' | '/' => next.is_alphanumeric(),
            sign => sign.is_alphabetic() && !unit_behind,
        };
        KILOMETRES.contains(&unit.as_str()) && (goes_on || (priced && figure.places == 0 && !unit_behind))
    }

    /// What stands in this part of the line.
    pub fn text(&self, at: Range<usize>) -> String {
        self.chars.get(at).map(|chars| chars.iter().collect()).unwrap_or_default()
    }

    /// The letter at this position, or a space beyond the end.
    pub fn at(&self, index: usize) -> char {
        self.chars.get(index).copied().unwrap_or(' ')
    }

    /// The stretches that this part of the line touches.
    fn touched(&self, at: &Range<usize>) -> &[Piece] {
        let first = self.pieces.partition_point(|piece| piece.at.end <= at.start);
        let beyond = self.pieces.partition_point(|piece| piece.at.start < at.end);
        self.pieces.get(first..beyond.max(first)).unwrap_or_default()
    }

    /// Whether this part of the line was read in one go.
    pub fn in_one_stretch(&self, at: &Range<usize>) -> bool {
        self.touched(at).len() <= 1
    }

    /// How sure the letters of this part of the line are: as sure as its least sure stretch.
    pub fn letters(&self, at: &Range<usize>) -> f32 {
        self.touched(at).iter().map(|piece| piece.letters).reduce(f32::min).unwrap_or(0.0)
    }

    /// Where this part of the line stands, taking the letters of a stretch as equally wide.
    pub fn area(&self, at: &Range<usize>) -> Area {
        let nowhere = Area { left: 0.0, top: 0.0, width: 0.0, height: 0.0 };
        let cut = |piece: &Piece| {
            let (from, to) = (at.start.max(piece.at.start), at.end.min(piece.at.end));
            let share = |letters: usize| part_of(letters, piece.at.len()) * piece.area.width;
            Area {
                left: piece.area.left + share(from - piece.at.start),
                width: share(to - from),
                ..piece.area
            }
        };
        self.touched(at).iter().map(cut).reduce(Area::with).unwrap_or(nowhere)
    }

    /// The whole line's place.
    pub fn whole(&self) -> Area {
        self.area(&(0..self.chars.len()))
    }

    /// The stretches, each as the part of the line that it is.
    pub fn stretches(&self) -> impl Iterator<Item = Range<usize>> + '_ {
        self.pieces.iter().map(|piece| piece.at.clone())
    }

    /// Amounts of money: numbers with two decimals that nothing marks as anything else.
    pub fn amounts(&self) -> impl DoubleEndedIterator<Item = &Figure> {
        self.figures.iter().filter(|figure| figure.is_amount())
    }

    /// Whether the line says this, and little else.
    pub fn says_only(&self, role: Role) -> bool {
        self.labels.has(role) && self.labels.strange <= 2
    }

    /// Letters that belong to no unit, currency or label that accompanies figures: what may describe a thing.
    pub fn describes(&self) -> usize {
        self.labels.strange + self.labels.plain
    }
}

/// Anything that is not printed is as good as a space, and so is every kind of space. A sign of multiplication is read
/// for an x, and an x for the sign; wide forms are those of an alphabet with wide letters.
fn printed(c: char) -> char {
    match c {
        c if c.is_control() || c.is_whitespace() => ' ',
        '×' => 'x',
        '\u{ff01}'..='\u{ff5e}' => char::from_u32(u32::from(c) - 0xfee0).unwrap_or(c),
        c => c,
    }
}

/// Marks that take no room on paper: soft hyphens, joiners, and those that turn the direction of reading.
fn is_unseen(c: char) -> bool {
    matches!(c, '\u{ad}' | '\u{61c}' | '\u{200b}'..='\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2060}'..='\u{2069}' | '\u{feff}')
}

fn words(chars: &[char]) -> Vec<Range<usize>> {
    let mut words = Vec::new();
    let mut start = None;
    for (index, c) in chars.iter().chain([&' ']).enumerate() {
        match (start, *c == ' ') {
            (None, false) => start = Some(index),
            (Some(from), true) => {
                words.push(from..index);
                start = None;
            }
            _ => {}
        }
    }
    words
}

/// `part` of `whole` letters as a share; lines are bounded, so that both are small.
fn part_of(part: usize, whole: usize) -> f32 {
    let small = |count: usize| u16::try_from(count).map_or(f32::from(u16::MAX), f32::from);
    if whole == 0 { 0.0 } else { small(part) / small(whole) }
}
