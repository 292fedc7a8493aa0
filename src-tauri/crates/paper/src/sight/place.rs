//! A place on a photo with text in it: a rectangle at any angle, and in which direction it is read.

use crate::Area;

/// The network marks the core of a text. The box around it grows on every side by this much of area / perimeter.
const GROWTH: f32 = 1.6;

/// From this ratio of length to height on, a box shows by itself in which direction it is read.
const LONG: f32 = 2.5;

/// A place's edges run through the middles of points, which are not to fall out of it by rounding.
const TOLERANCE: f32 = 0.125;

/// A point or a direction on the photo, in pixels to the right and down.
pub(super) type Vector = [f32; 2];

/// A rectangle of the photo at any angle, in pixels, with text in it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct TextBox {
    pub(super) centre: Vector,
    /// The direction in which the text is read, of length 1.
    pub(super) along: Vector,
    pub(super) length: f32,
    pub(super) height: f32,
}

impl TextBox {
    /// The direction from the text's head to its foot, of length 1.
    pub(super) fn down(&self) -> Vector {
        [-self.along[1], self.along[0]]
    }

    /// The place on the photo of a point that is so many pixels behind the box's middle, and so many below.
    pub(super) fn at(&self, behind: f32, below: f32) -> Vector {
        let down = self.down();
        [0, 1].map(|axis| self.centre[axis] + behind * self.along[axis] + below * down[axis])
    }

    /// The same box for text that is read the other way.
    pub(super) fn upside_down(&self) -> TextBox {
        TextBox { along: self.along.map(|part| -part), ..*self }
    }

    /// The upright rectangle around it, as shares of a photo of this size and never beyond it.
    #[expect(clippy::cast_precision_loss, reason = "a photo has at most 65 535 pixels a side")]
    pub(super) fn area(&self, (width, height): (u32, u32)) -> Area {
        let corners = [(-0.5, -0.5), (0.5, -0.5), (0.5, 0.5), (-0.5, 0.5)]
            .map(|(behind, below)| self.at(behind * self.length, below * self.height));
        let span = |axis: usize, side: u32| {
            let share = |corner: Vector| (corner[axis] / side as f32).clamp(0.0, 1.0);
            let least = corners.iter().map(|&corner| share(corner)).fold(1.0, f32::min);
            (least, corners.iter().map(|&corner| share(corner)).fold(0.0, f32::max) - least)
        };
        let ((left, width), (top, height)) = (span(0, width), span(1, height));
        Area { left, top, width, height }
    }

    /// Grown on every side, so that the text's edges are inside.
    pub(super) fn grown(&self) -> TextBox {
        let by = self.length * self.height * GROWTH / (2.0 * (self.length + self.height));
        TextBox { length: self.length + 2.0 * by, height: self.height + 2.0 * by, ..*self }
    }

    /// Whether a point of the photo lies in it.
    pub(super) fn holds(&self, place: Vector) -> bool {
        let from = [place[0] - self.centre[0], place[1] - self.centre[1]];
        2.0 * dot(from, self.along).abs() <= self.length + TOLERANCE
            && 2.0 * dot(from, self.down()).abs() <= self.height + TOLERANCE
    }

    pub(super) fn is_long(&self) -> bool {
        self.length >= LONG * self.height
    }
}

pub(super) fn dot(one: Vector, other: Vector) -> f32 {
    one[0] * other[0] + one[1] * other[1]
}

pub(super) fn length(vector: Vector) -> f32 {
    dot(vector, vector).sqrt()
}
