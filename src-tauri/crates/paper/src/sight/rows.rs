//! From stretches of text to rows, so that an amount stands behind what it is for.
//!
//! On a photo taken by hand rows are neither level nor parallel. So a stretch joins the row whose end points at it. Where
//! a row points is told by all stretches around: the box of a short word is off by a pixel, which over the gap to an
//! amount at the other edge is half a row.

use super::place::{TextBox, Vector, dot};
use super::recognise::Reading;
use crate::{Row, Stretch, Text};

/// What is carried on meets when it misses by at most this share of the lesser height.
const MISS: f32 = 0.5;

/// A stretch may begin this share of its height before the row's end.
const OVERLAP: f32 = 0.7;

/// From this ratio of length to height on, a stretch shows the direction of its row by itself.
const SHOWS_SLOPE: f32 = 4.0;

/// A stretch that lies steeper than this against the rest is no row of it, as a stamp is none.
const STEEPEST: f32 = 0.25;

/// Stretches so many heights away, up or down, tell half as much about the slope of a row as those on it.
const REACH: f32 = 6.0;

/// A place seen in reading direction: to the right, and down.
#[derive(Debug, Clone, Copy)]
struct Laid {
    /// Which of the stretches it is.
    which: usize,
    left: f32,
    right: f32,
    /// Of its middle, downwards.
    level: f32,
    height: f32,
    /// Down for each to the right.
    slope: f32,
    /// It is long enough to show its slope by itself.
    shows: bool,
}

/// Puts what was read on a photo of this size, in pixels, into rows.
pub(super) fn rows(found: &[(TextBox, Reading)], photo: (u32, u32)) -> Text {
    let right = heading(found);
    let laid: Vec<Laid> =
        found.iter().enumerate().map(|(which, (place, _))| laid(which, place, right)).collect();
    let mut rows = chained(sloped(&laid));
    rows.sort_by(|one, other| level(one).total_cmp(&level(other)));
    let stretch = |place: &Laid| {
        let (place, reading) = &found[place.which];
        Stretch { text: reading.text.clone(), sure: reading.sure, area: place.area(photo) }
    };
    Text(rows.iter().map(|row| Row(row.iter().map(stretch).collect())).collect())
}

/// The mean direction in which the text is read, of length 1.
fn heading(found: &[(TextBox, Reading)]) -> Vector {
    let sum = found.iter().fold([0.0, 0.0], |sum: Vector, (place, _)| {
        [0, 1].map(|axis| sum[axis] + place.length * place.along[axis])
    });
    let length = dot(sum, sum).sqrt();
    if length > 0.0 { sum.map(|part| part / length) } else { [1.0, 0.0] }
}

fn laid(which: usize, place: &TextBox, right: Vector) -> Laid {
    let down = [-right[1], right[0]];
    let (middle, ahead) = (dot(place.centre, right), dot(place.along, right));
    let half = place.length * ahead.abs() / 2.0;
    let shows = place.length >= SHOWS_SLOPE * place.height && ahead > 0.5;
    Laid {
        which,
        left: middle - half,
        right: middle + half,
        level: dot(place.centre, down),
        height: place.height,
        slope: if shows { dot(place.along, down) / ahead } else { 0.0 },
        shows,
    }
}

/// The same places, each with the slope that the stretches around it show.
fn sloped(laid: &[Laid]) -> Vec<Laid> {
    let mut slopes: Vec<f32> = laid.iter().filter(|place| place.shows).map(|place| place.slope).collect();
    slopes.sort_by(f32::total_cmp);
    let median = slopes.get(slopes.len() / 2).copied().unwrap_or(0.0);
    let steep = |place: &Laid| place.shows && (place.slope - median).abs() > STEEPEST;
    let showing: Vec<&Laid> = laid.iter().filter(|place| place.shows && !steep(place)).collect();
    let slope = |place: &Laid| if steep(place) { place.slope } else { slope_at(place, &showing) };
    laid.iter().map(|place| Laid { slope: slope(place), ..*place }).collect()
}

/// The slope at a place: the line of least squares through those of all others by how far down they lie, of which the
/// longer and the nearer count more. A line and no mean, because seen from the side rows part like a fan.
fn slope_at(place: &Laid, showing: &[&Laid]) -> f32 {
    let mut sums = Sums::default();
    for other in showing {
        let off = (other.level - place.level) / (REACH * place.height);
        // The end of a box is off by a pixel however long it is, so the error of its slope falls with its length.
        let weight = (other.right - other.left).powi(2) / (1.0 + off.powi(2));
        sums.add(weight, off, other.slope);
    }
    sums.at_nothing()
}

/// What a line of least squares is worked out from.
#[derive(Default)]
struct Sums {
    weight: f32,
    off: f32,
    off_squared: f32,
    slope: f32,
    off_slope: f32,
}

impl Sums {
    fn add(&mut self, weight: f32, off: f32, slope: f32) {
        self.weight += weight;
        self.off += weight * off;
        self.off_squared += weight * off.powi(2);
        self.slope += weight * slope;
        self.off_slope += weight * off * slope;
    }

    /// The line's value where nothing is off; the mean where all lie on one level, and 0 where there are none.
    fn at_nothing(&self) -> f32 {
        if self.weight <= 0.0 {
            return 0.0;
        }
        let spread = self.weight * self.off_squared - self.off.powi(2);
        if spread > f32::EPSILON.sqrt() * self.weight.powi(2) {
            (self.off_squared * self.slope - self.off * self.off_slope) / spread
        } else {
            self.slope / self.weight
        }
    }
}

/// Joins each place, from left to right, to the row that points at it, or begins a row with it.
fn chained(mut laid: Vec<Laid>) -> Vec<Vec<Laid>> {
    laid.sort_by(|one, other| one.left.total_cmp(&other.left));
    let mut rows: Vec<Vec<Laid>> = Vec::new();
    for place in laid {
        let pointing = rows.iter_mut().filter_map(|row| miss(row.last()?, &place).map(|miss| (miss, row)));
        match pointing.min_by(|(one, _), (other, _)| one.total_cmp(other)) {
            Some((_, row)) => row.push(place),
            None => rows.push(vec![place]),
        }
    }
    rows
}

/// By which share of their height the end of a row and a place miss each other; nothing when they do not belong
/// together.
fn miss(end: &Laid, place: &Laid) -> Option<f32> {
    let height = end.height.min(place.height);
    let gap = f32::midpoint(place.left, place.right) - f32::midpoint(end.left, end.right);
    let met = end.level + gap * f32::midpoint(end.slope, place.slope);
    let miss = (place.level - met).abs() / height;
    (place.left >= end.right - OVERLAP * height && miss <= MISS).then_some(miss)
}

/// How far down a row begins.
fn level(row: &[Laid]) -> f32 {
    row.first().map_or(0.0, |first| first.level)
}

#[cfg(test)]
#[path = "rows_tests.rs"]
mod tests;
