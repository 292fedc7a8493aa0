//! Whether a guess is the paper, beyond doubt. A wrong yes would hide part of a receipt, a wrong no costs the owner a
//! moment of dragging, so every doubt is a no.

use image::GrayImage;

use super::geometry::{Point, Quad};
use super::outline::LEAST_AREA;
use super::sides::{Side, find, goes_on, strip};

/// The least share of each side at which its edge is seen.
const LEAST_SUPPORT: f64 = 0.85;
/// The least by which the paper is brighter than what lies beside it, of 255, close by and farther off.
const LEAST_CONTRAST: f64 = 18.0;
/// The least that a side may differ from its surroundings, as a share of what all four do in the middle: the edge of a
/// shadow across the paper is fainter than those of the paper.
const LEAST_LIKENESS: f64 = 0.3;
/// The sine of 60 degrees: corners from 60 to 120 degrees.
const LEAST_TURN: f64 = 0.866;
/// How far from the picture's edges a corner must lie, as a share of the longer side.
const LEAST_MARGIN: f64 = 0.008;
/// How much longer a side may be than the one opposite.
const MOST_TAPER: f64 = 1.8;
/// The most of the picture, as a share of the paper, that may be as bright as the paper and lie outside.
const MOST_STRAY: f64 = 0.05;
/// The share of the places behind a corner at which an edge may go on by chance.
const MOST_GOING_ON: f64 = 0.4;

/// The quadrilateral drawn exactly, when it is the paper beyond doubt.
pub(super) fn sure(light: &GrayImage, guess: &Quad) -> Option<Quad> {
    let [upper, right, lower, left] = guess.sides().map(|(from, to)| find(light, from, to));
    let sides = [upper?, right?, lower?, left?];
    if sides.iter().any(|side| side.support < LEAST_SUPPORT) {
        return None;
    }
    let quad = crossings(&sides)?;
    (is_paper_shaped(light, &quad) && ends_at_its_corners(light, &quad) && stands_out(light, &quad))
        .then_some(quad)
}

fn crossings([upper, right, lower, left]: &[Side; 4]) -> Option<Quad> {
    let corner = |one: &Side, two: &Side| one.line.crossing(&two.line);
    Some(Quad([corner(left, upper)?, corner(upper, right)?, corner(right, lower)?, corner(lower, left)?]))
}

fn is_paper_shaped(light: &GrayImage, quad: &Quad) -> bool {
    let (width, height) = (f64::from(light.width()), f64::from(light.height()));
    let margin = LEAST_MARGIN * width.max(height);
    let inside =
        |at: &Point| at.x >= margin && at.y >= margin && at.x <= width - margin && at.y <= height - margin;
    let [upper, right, lower, left] = quad.sides().map(|(from, to)| (to - from).length());
    let taper = |one: f64, two: f64| one.max(two) / one.min(two).max(1.0);
    quad.turns().iter().all(|turn| *turn >= LEAST_TURN)
        && quad.area() >= LEAST_AREA * width * height
        && quad.0.iter().all(inside)
        && taper(upper, lower) <= MOST_TAPER
        && taper(left, right) <= MOST_TAPER
}

fn ends_at_its_corners(light: &GrayImage, quad: &Quad) -> bool {
    quad.sides().iter().all(|(from, to)| goes_on(light, *from, *to) <= MOST_GOING_ON)
}

/// Whether the paper is brighter than what lies round it, on each side and on the whole.
fn stands_out(light: &GrayImage, quad: &Quad) -> bool {
    let bands = quad.sides().map(|(from, to)| {
        let [paper, close, far] =
            [(3, 10), (-8, -3), (-20, -10)].map(|distance| strip(light, from, to, distance));
        (paper, close.max(far))
    });
    let contrasts = sorted(bands.map(|(paper, table)| paper - table));
    let usual = f64::midpoint(contrasts[1], contrasts[2]);
    if contrasts[0] < LEAST_CONTRAST.max(LEAST_LIKENESS * usual) {
        return false;
    }
    let [_, paper, _, _] = sorted(bands.map(|(paper, _)| paper));
    let [_, _, _, table] = sorted(bands.map(|(_, table)| table));
    stray(light, quad, f64::midpoint(paper, table)) <= MOST_STRAY
}

fn sorted(mut values: [f64; 4]) -> [f64; 4] {
    values.sort_unstable_by(f64::total_cmp);
    values
}

/// What is brighter than `level` and lies outside, as a share of what lies inside. Every third row and column is
/// looked at.
fn stray(light: &GrayImage, quad: &Quad, level: f64) -> f64 {
    let grown = quad.grown(1.03);
    let (mut inside, mut outside) = (1.0, 0.0);
    for y in (1..light.height()).step_by(3) {
        for x in (1..light.width()).step_by(3) {
            if grown.holds(Point { x: f64::from(x), y: f64::from(y) }) {
                inside += 1.0;
            } else if f64::from(light.get_pixel(x, y).0[0]) > level {
                outside += 1.0;
            }
        }
    }
    outside / inside
}
