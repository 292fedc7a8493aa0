//! The outlines of a text in a font, as a path that can be filled.

use tiny_skia::{Path, PathBuilder};
use ttf_parser::{Face, OutlineBuilder};

/// The outlines of a text that stands at the origin, and its width.
pub(super) fn outlines(face: &Face<'_>, text: &str, size: f32) -> (Option<Path>, f32) {
    let mut pen = Pen { path: PathBuilder::new(), at: 0.0, scale: size / f32::from(face.units_per_em()) };
    for glyph in text.chars().filter_map(|c| face.glyph_index(c)) {
        face.outline_glyph(glyph, &mut pen);
        pen.at += f32::from(face.glyph_hor_advance(glyph).unwrap_or(0)) * pen.scale;
    }
    (pen.path.finish(), pen.at)
}

/// Takes the outline of a glyph, whose y runs upwards, into a path, whose y runs downwards.
struct Pen {
    path: PathBuilder,
    at: f32,
    scale: f32,
}

impl Pen {
    fn x(&self, x: f32) -> f32 {
        self.at + x * self.scale
    }

    fn y(&self, y: f32) -> f32 {
        -y * self.scale
    }
}

impl OutlineBuilder for Pen {
    fn move_to(&mut self, x: f32, y: f32) {
        self.path.move_to(self.x(x), self.y(y));
    }

    fn line_to(&mut self, x: f32, y: f32) {
        self.path.line_to(self.x(x), self.y(y));
    }

    fn quad_to(&mut self, x1: f32, y1: f32, x: f32, y: f32) {
        self.path.quad_to(self.x(x1), self.y(y1), self.x(x), self.y(y));
    }

    fn curve_to(&mut self, x1: f32, y1: f32, x2: f32, y2: f32, x: f32, y: f32) {
        self.path.cubic_to(self.x(x1), self.y(y1), self.x(x2), self.y(y2), self.x(x), self.y(y));
    }

    fn close(&mut self) {
        self.path.close();
    }
}
