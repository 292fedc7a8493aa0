//! Which of the days on a receipt is the day of the sale.

use std::ops::Range;

use units::Day;

use super::dates::{Found, find};
use super::page::{Line, Page};
use super::place::Place;
use super::receipt::{DayRead, Field, Known, Sure};
use super::stamp;
use super::words::Role;

/// A day within this many of today is believed with less.
const RECENT_DAYS: i32 = 3 * 366;
/// Letters of this confidence, 0 to 1, are taken as well read.
const CRISP: f32 = 0.9;

/// No receipt prints as many days; the first ones are looked at.
const MOST: usize = 200;

/// The day of the sale.
pub(super) fn day(page: &Page, known: &Known<'_>, place: &Place) -> Option<Field<DayRead>> {
    let mut candidates: Vec<Candidate> = Vec::new();
    for (index, line) in page.lines.iter().enumerate() {
        let above = index.checked_sub(1).and_then(|index| page.line(index));
        let found = find(line, known, place);
        candidates.extend(found.into_iter().filter_map(|found| Candidate::new(&found, line, above, known)));
    }
    candidates.truncate(MOST);
    let all: Vec<DayRead> = candidates.iter().map(|candidate| candidate.read).collect();
    for candidate in &mut candidates {
        let again = all.iter().filter(|read| **read == candidate.read).count() > 1;
        candidate.named |= again;
        candidate.score += i32::from(again);
    }
    // The first of the best.
    let best = candidates.iter().map(|candidate| candidate.score).max()?;
    let chosen = candidates.iter().find(|candidate| candidate.score == best)?;
    let rivals = candidates.iter().any(|other| other.score == best && other.read != chosen.read);
    Some(chosen.field(rivals, known))
}

/// A day with what speaks for it.
struct Candidate {
    read: DayRead,
    score: i32,
    /// A label, a time beside it, or the same day once more says that it is the day of the sale.
    named: bool,
    crisp: bool,
    area: crate::text::Area,
}

impl Candidate {
    fn new(found: &Found, line: &Line, above: Option<&Line>, known: &Known<'_>) -> Option<Candidate> {
        let read = match *found.readings.as_slice() {
            [] => return None,
            [day] => DayRead::One(day),
            [likelier, other, ..] => DayRead::Either { likelier, other },
        };
        let role = announced(line, above, &found.at);
        let (labelled, timed) = (role == Some(Role::SaleDay), has_time(line));
        let other = matches!(role, Some(Role::OtherDay | Role::TaxNumber | Role::NextReading));
        let age = known.today.days_since(likeliest(read));
        let score = 3 * i32::from(labelled) + 2 * i32::from(timed) - 6 * i32::from(other)
            + i32::from((-1..RECENT_DAYS).contains(&age))
            - 4 * i32::from(age < -1)
            - i32::from(found.mended);
        let crisp = line.letters(&found.at) >= CRISP && !found.mended && found.complete;
        Some(Candidate { read, score, named: labelled || timed, crisp, area: line.area(&found.at) })
    }

    /// Sure is a recent day, well read and without a rival, that a label or a time beside it names or that stands
    /// there twice.
    fn field(&self, rivals: bool, known: &Known<'_>) -> Field<DayRead> {
        let age = known.today.days_since(likeliest(self.read));
        let recent = (-1..RECENT_DAYS).contains(&age);
        let one = matches!(self.read, DayRead::One(_));
        let sure = match (one && recent && self.score > 0, self.named && self.crisp && !rivals) {
            (true, true) => Sure::Sure,
            (true, false) if !rivals => Sure::Likely,
            _ => Sure::Doubtful,
        };
        Field { value: self.read, sure, area: self.area }
    }
}

fn likeliest(read: DayRead) -> Day {
    match read {
        DayRead::One(day) | DayRead::Either { likelier: day, .. } => day,
    }
}

/// What announces a day: the label to its left, else the head of the column above it.
fn announced(line: &Line, above: Option<&Line>, at: &Range<usize>) -> Option<Role> {
    let day = |role| matches!(role, Role::SaleDay | Role::OtherDay | Role::TaxNumber | Role::NextReading);
    let left = line.labels.before(at.start).map(|label| label.role);
    if left.is_some_and(day) {
        return left;
    }
    let place = line.area(at);
    let over =
        |area: crate::text::Area| area.left < place.left + place.width && place.left < area.left + area.width;
    let above = above.filter(|above| above.figures.is_empty())?;
    above
        .labels
        .all
        .iter()
        .filter(|label| day(label.role))
        .find(|label| over(above.area(&label.at)))
        .map(|label| label.role)
}

/// `14:05`, `14:05:33`, `2:05 PM`, `14h05`; a point alone makes no time.
fn has_time(line: &Line) -> bool {
    let digit = |at: usize| line.at(at).is_ascii_digit();
    let sign = |at: usize| matches!(line.at(at), ':' | 'h' | 'H');
    let hour = |at: usize| match at.checked_sub(1) {
        // What goes before two digits of an hour may be the year that they are glued to.
        Some(before) => sign(at + 2) || (sign(at + 1) && !digit(before) && line.at(before) != ':'),
        None => sign(at + 1) || sign(at + 2),
    };
    (0..line.chars.len()).any(|at| digit(at) && hour(at) && stamp::time(line, at).is_some())
}
