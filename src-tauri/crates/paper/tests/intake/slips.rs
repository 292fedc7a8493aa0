//! Draws photos of slips of paper on tables, of which it is known where the corners lie.

use std::f64::consts::PI;

use image::{Rgb, RgbImage};
use paper::Point;

/// The size of a scene. A photo of it has two thirds as many pixels across and down.
pub const WIDTH: u32 = 1200;
pub const HEIGHT: u32 = 900;

/// Numbers that look random and are the same every time (the multiplier of Knuth's MMIX generator).
pub struct Chance(u64);

impl Chance {
    pub fn of(seed: u64) -> Chance {
        let mut chance = Chance(seed.wrapping_mul(0x9E37_79B9_7F4A_7C15) | 1);
        for _ in 0..4 {
            chance.between(0.0, 1.0);
        }
        chance
    }

    pub fn between(&mut self, from: f64, to: f64) -> f64 {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        from + (to - from) * f64::from(u32::try_from(self.0 >> 33).unwrap()) / f64::from(1u32 << 31)
    }

    fn one_in(&mut self, count: f64) -> bool {
        self.between(0.0, count) < 1.0
    }
}

/// What lies under the paper.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Table {
    DarkWood,
    PaleWood,
    Grey,
    Stripes,
    Checks,
    Cloth,
    Seat,
    /// Nearly as white as the paper.
    White,
}

pub const TABLES: [Table; 8] = [
    Table::DarkWood,
    Table::PaleWood,
    Table::Grey,
    Table::Stripes,
    Table::Checks,
    Table::Cloth,
    Table::Seat,
    Table::White,
];

/// What makes a photo hard.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Trouble {
    /// Even light that fades a little.
    None,
    /// The hard edge of a shadow falls across paper and table.
    Shadow,
    /// A fold across, beyond which the paper is darker.
    Fold,
    /// A black frame is printed on the paper, with nothing outside it.
    Frame,
    /// The paper reaches beyond the picture.
    Leaves,
    /// Another slip lies beside it.
    Second,
    /// Its long sides bend.
    Curl,
    /// A thumb holds it, over one of its sides.
    Thumb,
}

pub const TROUBLES: [Trouble; 8] = [
    Trouble::None,
    Trouble::Shadow,
    Trouble::Fold,
    Trouble::Frame,
    Trouble::Leaves,
    Trouble::Second,
    Trouble::Curl,
    Trouble::Thumb,
];

/// One photo that is drawn.
pub struct Scene {
    table: Table,
    trouble: Trouble,
    /// The paper's corners in pixels, clockwise from its upper left.
    corners: [Point; 4],
    to_paper: [f64; 8],
    light: (f64, f64, f64),
    shadow: (f64, f64, f64),
    seed: u64,
    rows: f64,
    bend: f64,
    grain: f64,
}

impl Scene {
    pub fn new(table: Table, trouble: Trouble, seed: u64) -> Scene {
        let mut chance = Chance::of(seed);
        let corners = corners(trouble, &mut chance);
        let direction = chance.between(0.0, 2.0 * PI);
        Scene {
            table,
            trouble,
            to_paper: to_square(&corners),
            corners,
            light: (direction.cos(), direction.sin(), chance.between(0.0, 0.25)),
            shadow: (chance.between(-0.5, 0.5), chance.between(0.35, 0.65), chance.between(0.4, 0.75)),
            seed,
            rows: chance.between(14.0, 40.0).floor(),
            bend: chance.between(0.008, 0.03),
            grain: chance.between(2.0, 9.0),
        }
    }

    /// Where the paper's corners lie, in shares of the picture's sides.
    pub fn corners(&self) -> [Point; 4] {
        self.corners.map(|at| Point { x: at.x / f64::from(WIDTH), y: at.y / f64::from(HEIGHT) })
    }

    pub fn draw(&self) -> RgbImage {
        let mut noise = Chance::of(self.seed ^ 0xABCD);
        RgbImage::from_fn(WIDTH / 3 * 2, HEIGHT / 3 * 2, |x, y| {
            let mut sum = [0.0; 3];
            for (right, down) in [(0.25, 0.25), (0.75, 0.25), (0.25, 0.75), (0.75, 0.75)] {
                let at = Point { x: f64::from(x) + right, y: f64::from(y) + down };
                let seen = self.seen(at * 1.5);
                (0..3).for_each(|channel| sum[channel] += seen[channel] / 4.0);
            }
            let grain = noise.between(-self.grain, self.grain);
            Rgb(sum.map(|tone| tone_of(tone + grain)))
        })
    }

    fn seen(&self, at: Point) -> [f64; 3] {
        let on_paper = self.on_paper(at);
        let (x, y) = (at.x / f64::from(WIDTH) - 0.5, at.y / f64::from(HEIGHT) - 0.5);
        let mut light = 1.0 - self.light.2 * (0.5 + x * self.light.0 + y * self.light.1);
        if self.trouble == Trouble::Shadow && y + 0.5 > self.shadow.1 + self.shadow.0 * x {
            light *= self.shadow.2;
        }
        let thumb = Point { x: self.corners[1].x, y: f64::midpoint(self.corners[1].y, self.corners[2].y) };
        let off = (at.x - thumb.x).hypot((at.y - thumb.y) * 2.0);
        let colour = match on_paper {
            _ if self.trouble == Trouble::Thumb && off < 140.0 => [205.0, 150.0, 125.0],
            Some((u, v)) => self.print(u, v),
            None => self.under(at),
        };
        colour.map(|tone| tone * light)
    }

    /// Where on the paper a place lies, in shares of its width and height.
    fn on_paper(&self, at: Point) -> Option<(f64, f64)> {
        let [across @ .., to_x, to_y] = self.to_paper;
        let under = to_x * at.x + to_y * at.y + 1.0;
        let share = |row: &[f64]| (row[0] * at.x + row[1] * at.y + row[2]) / under;
        let (mut u, v) = (share(&across[..3]), share(&across[3..]));
        if self.trouble == Trouble::Curl {
            u += self.bend * (v * PI).sin();
        }
        let inside = |share: f64| (0.0..=1.0).contains(&share);
        let second = self.trouble == Trouble::Second && (1.06..=1.5).contains(&u) && (0.1..=0.8).contains(&v);
        (inside(u) && inside(v) || second).then_some((u, v))
    }

    fn print(&self, u: f64, v: f64) -> [f64; 3] {
        let white = if self.trouble == Trouble::Fold && v > 0.55 { 0.82 } else { 1.0 };
        let edge = u.min(1.0 - u).min((v).min(1.0 - v));
        if self.trouble == Trouble::Frame && (0.06..0.07).contains(&edge) {
            return [30.0; 3];
        }
        let row = v * self.rows;
        let cell =
            (u * 40.0).floor() + row.floor() * 41.0 + f64::from(u32::try_from(self.seed % 97).unwrap());
        let inked = (cell * 12.9898).sin() * 43_758.545;
        let stroke = (inked - inked.floor() < 0.45) && (u * 200.0).fract() < 0.55;
        let printed = (0.05..0.95).contains(&u) && (0.04..0.93).contains(&v) && row.fract() < 0.5 && stroke;
        if printed { [70.0, 72.0, 80.0] } else { [238.0 * white, 237.0 * white, 232.0 * white] }
    }

    fn under(&self, at: Point) -> [f64; 3] {
        let wave = (at.x * 0.011 + (at.y * 0.05).sin() * 2.0).sin() * 0.5 + 0.5;
        let band = |size: f64| (at.x * 0.7 + at.y * 0.7).rem_euclid(2.0 * size) < size;
        let check = |size: f64| (at.x.rem_euclid(2.0 * size) < size) != (at.y.rem_euclid(2.0 * size) < size);
        match self.table {
            Table::DarkWood => [95.0 + 25.0 * wave, 62.0 + 18.0 * wave, 40.0 + 12.0 * wave],
            Table::PaleWood => [214.0 + 10.0 * wave, 186.0 + 12.0 * wave, 146.0 + 14.0 * wave],
            Table::Grey => [168.0, 170.0, 172.0],
            Table::Stripes if band(34.0) => [200.0, 60.0, 60.0],
            Table::Stripes => [222.0, 220.0, 214.0],
            Table::Checks if check(52.0) => [60.0, 90.0, 150.0],
            Table::Checks => [150.0, 165.0, 190.0],
            Table::Cloth => [60.0 + 20.0 * wave, 80.0, 120.0 + 20.0 * (at.y * 0.9).sin()],
            Table::Seat => [34.0 + 8.0 * (at.x * 0.8).sin(), 34.0 + 8.0 * (at.y * 0.8).sin(), 36.0],
            Table::White => [228.0, 228.0, 226.0],
        }
    }
}

#[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "held within a byte before")]
fn tone_of(tone: f64) -> u8 {
    tone.round().clamp(0.0, 255.0) as u8
}

/// A rectangle, seen from a little aslant, turned by up to 20 degrees, somewhere on the picture.
fn corners(trouble: Trouble, chance: &mut Chance) -> [Point; 4] {
    let tall = chance.one_in(2.0);
    let (half_width, half_height) = match trouble {
        Trouble::Second => (chance.between(170.0, 200.0), chance.between(280.0, 330.0)),
        _ if tall => (chance.between(160.0, 260.0), chance.between(300.0, 370.0)),
        _ => (chance.between(300.0, 470.0), chance.between(220.0, 320.0)),
    };
    let turn = chance.between(-20.0, 20.0) * PI / 180.0;
    let (lean_x, lean_y) = (chance.between(-0.12, 0.12), chance.between(-0.12, 0.12));
    let shift = if trouble == Trouble::Second { -170.0 } else { chance.between(-40.0, 40.0) };
    let down = if trouble == Trouble::Leaves { 260.0 } else { chance.between(-15.0, 15.0) };
    [(-1.0, -1.0), (1.0, -1.0), (1.0, 1.0), (-1.0, 1.0)].map(|(right, below): (f64, f64)| {
        let depth = 1.0 + lean_x * right + lean_y * below;
        let (x, y) = (right * half_width / depth, below * half_height / depth);
        Point {
            x: f64::from(WIDTH) / 2.0 + shift + x * turn.cos() - y * turn.sin(),
            y: f64::from(HEIGHT) / 2.0 + down + x * turn.sin() + y * turn.cos(),
        }
    })
}

/// The projection that takes four corners to those of the unit square (Heckbert 1989, inverse of its section 2.2.3
/// solved as eight linear equations).
fn to_square(corners: &[Point; 4]) -> [f64; 8] {
    let targets = [(0.0, 0.0), (1.0, 0.0), (1.0, 1.0), (0.0, 1.0)];
    let mut rows: Vec<[f64; 9]> = Vec::new();
    for (at, (u, v)) in corners.iter().zip(targets) {
        rows.push([at.x, at.y, 1.0, 0.0, 0.0, 0.0, -u * at.x, -u * at.y, u]);
        rows.push([0.0, 0.0, 0.0, at.x, at.y, 1.0, -v * at.x, -v * at.y, v]);
    }
    for column in 0..8 {
        let pivot =
            (column..8).max_by(|a, b| rows[*a][column].abs().total_cmp(&rows[*b][column].abs())).unwrap();
        rows.swap(column, pivot);
        let leading = rows[column].map(|value| value / rows[column][column]);
        rows[column] = leading;
        for other in (0..8).filter(|other| *other != column) {
            let factor = rows[other][column];
            (0..9).for_each(|place| rows[other][place] -= factor * leading[place]);
        }
    }
    std::array::from_fn(|row| rows[row][8])
}
