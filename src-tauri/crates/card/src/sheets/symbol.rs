//! The square as one shape for Typst, so that PDF and SVG alike carry it as a single filled path.

use typst::foundations::{Content, NativeElement, Packed};
use typst::layout::{Abs, Axes, Em, Length, Rel};
use typst::visualize::{
    CloseMode, Color, CurveClose, CurveComponent, CurveElem, CurveLine, CurveMove, Paint,
};

use crate::{QUIET_ZONE, Square};

/// Draws the dark modules, `module` micrometres each, with the quiet zone on all four sides.
pub fn draw(square: &Square, module: u32) -> Content {
    let mut components = Vec::new();
    for (column, row, length) in square.runs() {
        let (left, top) = (column + QUIET_ZONE, row + QUIET_ZONE);
        let corner = |x, y| line(at(x, y, module));
        components.push(start(at(left, top, module)));
        components.push(corner(left + length, top));
        components.push(corner(left + length, top + 1));
        components.push(corner(left, top + 1));
        components.push(close());
    }
    // The far corner of the quiet zone belongs to the shape, so that nothing is set within it.
    let far = square.side() + 2 * QUIET_ZONE;
    components.push(start(at(far, far, module)));
    CurveElem::new(components).with_fill(Some(Paint::Solid(Color::BLACK))).pack()
}

fn at(x: u32, y: u32, module: u32) -> Axes<Rel<Length>> {
    let length = |modules: u32| {
        let abs = Abs::mm(f64::from(modules * module) / 1000.0);
        Rel::from(Length { abs, em: Em::zero() })
    };
    Axes::new(length(x), length(y))
}

fn start(point: Axes<Rel<Length>>) -> CurveComponent {
    CurveComponent::Move(Packed::new(CurveMove::new(point)))
}

fn line(point: Axes<Rel<Length>>) -> CurveComponent {
    CurveComponent::Line(Packed::new(CurveLine::new(point)))
}

fn close() -> CurveComponent {
    CurveComponent::Close(Packed::new(CurveClose::new().with_mode(CloseMode::Straight)))
}
