//! Points, lines and quadrilaterals in a picture: x to the right, y downwards.

use std::ops::{Add, Mul, Sub};

/// A place in a picture, or a step from one place to another.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Point {
    /// To the right.
    pub x: f64,
    /// Downwards.
    pub y: f64,
}

impl Add for Point {
    type Output = Point;
    fn add(self, other: Point) -> Point {
        Point { x: self.x + other.x, y: self.y + other.y }
    }
}

impl Sub for Point {
    type Output = Point;
    fn sub(self, other: Point) -> Point {
        Point { x: self.x - other.x, y: self.y - other.y }
    }
}

impl Mul<f64> for Point {
    type Output = Point;
    fn mul(self, factor: f64) -> Point {
        Point { x: self.x * factor, y: self.y * factor }
    }
}

impl Point {
    pub(super) fn dot(self, other: Point) -> f64 {
        self.x * other.x + self.y * other.y
    }

    /// Positive when `other` turns off clockwise, as it is looked at.
    pub(super) fn cross(self, other: Point) -> f64 {
        self.x * other.y - self.y * other.x
    }

    pub(super) fn length(self) -> f64 {
        self.x.hypot(self.y)
    }

    /// The same direction at length one; nothing when there is none.
    pub(super) fn direction(self) -> Option<Point> {
        let length = self.length();
        (length > 1e-9).then(|| self * (1.0 / length))
    }

    /// A quarter turn clockwise.
    pub(super) fn turned(self) -> Point {
        Point { x: -self.y, y: self.x }
    }
}

/// A straight line without end: a point on it, and its direction of length one.
#[derive(Debug, Clone, Copy)]
pub(super) struct Line {
    through: Point,
    along: Point,
}

impl Line {
    pub(super) fn between(from: Point, to: Point) -> Option<Line> {
        Some(Line { through: from, along: (to - from).direction()? })
    }

    /// The line from which the points lie least far, in squares and at right angles, in the direction of `like`.
    pub(super) fn fitted(points: &[Point], like: Line) -> Option<Line> {
        let count = f64::from(u32::try_from(points.len()).ok().filter(|count| *count > 1)?);
        let sum = points.iter().fold(Point { x: 0.0, y: 0.0 }, |sum, point| sum + *point);
        let centre = sum * (1.0 / count);
        let (mut xx, mut xy, mut yy) = (0.0, 0.0, 0.0);
        for step in points.iter().map(|point| *point - centre) {
            xx += step.x * step.x;
            xy += step.x * step.y;
            yy += step.y * step.y;
        }
        let angle = (2.0 * xy).atan2(xx - yy) / 2.0;
        let along = Point { x: angle.cos(), y: angle.sin() };
        let along = if along.dot(like.along) < 0.0 { along * -1.0 } else { along };
        Some(Line { through: centre, along })
    }

    /// How far a point lies beside the line.
    pub(super) fn distance(&self, point: Point) -> f64 {
        self.along.cross(point - self.through).abs()
    }

    /// Where two lines meet, unless they are nearly parallel.
    pub(super) fn crossing(&self, other: &Line) -> Option<Point> {
        let turn = self.along.cross(other.along);
        let step = (other.through - self.through).cross(other.along);
        (turn.abs() > 1e-3).then(|| self.through + self.along * (step / turn))
    }
}

/// A quadrilateral, its corners clockwise as it is looked at.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Quad(pub [Point; 4]);

impl Quad {
    /// Each side from its first corner to its second: upper, right, lower, left.
    pub(super) fn sides(&self) -> [(Point, Point); 4] {
        let [a, b, c, d] = self.0;
        [(a, b), (b, c), (c, d), (d, a)]
    }

    pub(super) fn area(&self) -> f64 {
        let [a, b, c, d] = self.0;
        (c - a).cross(d - b) / 2.0
    }

    pub(super) fn centre(&self) -> Point {
        let [a, b, c, d] = self.0;
        (a + b + c + d) * 0.25
    }

    /// The sine of the turn at each corner: 1 where it is square, not above 0 where the shape is not convex.
    pub(super) fn turns(&self) -> [f64; 4] {
        let [a, b, c, d] = self.0;
        [(d, a, b), (a, b, c), (b, c, d), (c, d, a)].map(|(before, at, after)| {
            let steps = (at - before).direction().zip((after - at).direction());
            steps.map_or(0.0, |(first, second)| first.cross(second))
        })
    }

    /// Whether the point is within, or on a side.
    pub(super) fn holds(&self, point: Point) -> bool {
        self.sides().iter().all(|(from, to)| (*to - *from).cross(point - *from) >= 0.0)
    }

    /// Each corner moved, away from the centre where `factor` is above 1.
    pub(super) fn grown(&self, factor: f64) -> Quad {
        let centre = self.centre();
        Quad(self.0.map(|corner| centre + (corner - centre) * factor))
    }

    pub(super) fn scaled(&self, x: f64, y: f64) -> Quad {
        Quad(self.0.map(|corner| Point { x: corner.x * x, y: corner.y * y }))
    }

    /// The farthest that a corner lies from its like in `other`.
    pub(super) fn apart(&self, other: &Quad) -> f64 {
        self.0.iter().zip(other.0).map(|(one, two)| (*one - two).length()).fold(0.0, f64::max)
    }

    /// The same shape, begun at the corner that lies farthest to the upper left.
    pub(super) fn begun_upper_left(self) -> Quad {
        let mut corners = self.0;
        let sum = |at: usize| corners[at].x + corners[at].y;
        let first = (1..4).fold(0, |best, at| if sum(at) < sum(best) { at } else { best });
        corners.rotate_left(first);
        Quad(corners)
    }
}
