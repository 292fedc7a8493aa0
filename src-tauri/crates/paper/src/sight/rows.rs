//! From stretches of text to rows, so that an amount stands behind what it is for.
//!
//! On a photo taken by hand rows are neither level nor parallel. So a stretch joins the row whose end points at it, by
//! the mean of the directions in which the two lie.

use super::place::{TextBox, Vector, dot};
use super::recognise::Reading;
use crate::{Row, Stretch, Text};

/// What is carried on meets when it misses by at most this share of the lesser height.
const MISS: f32 = 0.5;

/// A stretch may begin this share of its height before the row's end.
const OVERLAP: f32 = 0.7;

/// From this ratio of length to height on, a stretch shows the direction of its row by itself.
const SHOWS_SLOPE: f32 = 4.0;

/// What a guessed slope counts against one that is shown: only where both are guessed does it tell.
const GUESSED: f32 = 0.001;

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
    /// How much its slope counts against another's.
    weight: f32,
}

/// Puts what was read on a photo of this size, in pixels, into rows.
pub(super) fn rows(found: &[(TextBox, Reading)], photo: (u32, u32)) -> Text {
    let right = heading(found);
    let mut laid: Vec<Laid> =
        found.iter().enumerate().map(|(which, (place, _))| laid(which, place, right)).collect();
    level_the_short(&mut laid);
    let mut rows = chained(laid);
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
        weight: if shows { 1.0 } else { GUESSED },
    }
}

/// Gives a stretch that is too short to show the slope of its row that of the nearest stretch above or below.
fn level_the_short(laid: &mut [Laid]) {
    let showing: Vec<Laid> = laid.iter().copied().filter(|place| place.weight > GUESSED).collect();
    for place in laid.iter_mut().filter(|place| place.weight <= GUESSED) {
        let distance = |other: &Laid| (other.level - place.level).abs();
        let nearest = showing.iter().min_by(|one, other| distance(one).total_cmp(&distance(other)));
        place.slope = nearest.map_or(0.0, |nearest| nearest.slope);
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
    let slope = (end.slope * end.weight + place.slope * place.weight) / (end.weight + place.weight);
    let met = end.level + gap * slope;
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
