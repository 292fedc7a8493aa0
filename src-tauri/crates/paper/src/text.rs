//! The text on a photo, as it was found: rows of stretches, each with its place and how sure its letters are.

/// Where something stands on a photo: an upright rectangle, in shares of the photo's width and height from its
/// upper left corner, each from 0 to 1.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Area {
    /// From the photo's left edge to the rectangle's.
    pub left: f32,
    /// From the photo's upper edge to the rectangle's.
    pub top: f32,
    /// How wide the rectangle is.
    pub width: f32,
    /// How high the rectangle is.
    pub height: f32,
}

impl Area {
    /// The smallest rectangle that holds both.
    #[must_use]
    pub fn with(self, other: Area) -> Area {
        let (left, top) = (self.left.min(other.left), self.top.min(other.top));
        let right = (self.left + self.width).max(other.left + other.width);
        let bottom = (self.top + self.height).max(other.top + other.height);
        Area { left, top, width: right - left, height: bottom - top }
    }
}

/// Words that stand close together on one row, read in one go.
#[derive(Debug, Clone, PartialEq)]
pub struct Stretch {
    /// What was read.
    pub text: String,
    /// How sure the letters are, from 0 to 1: the mean of the reader's own figures. It is no proof.
    pub sure: f32,
    /// Where it stands.
    pub area: Area,
}

/// What stands on one row, from left to right; never empty.
#[derive(Debug, Clone, PartialEq)]
pub struct Row(pub Vec<Stretch>);

/// All rows, from top to bottom.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Text(pub Vec<Row>);
