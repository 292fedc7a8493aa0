//! The square as one shape for Typst, so that PDF and SVG alike carry it as a single filled path.
//!
//! Typst would make an element of each corner of a curve, ten thousand of them, and look at each again and again. So
//! it is handed the runs of dark modules as bytes, and the path is made of them when it comes to laying them out.

use typst::diag::{At, SourceResult};
use typst::engine::Engine;
use typst::foundations::{Bytes, Content, IntoValue, NativeElement, Packed, StyleChain, Value};
use typst::introspection::{Locator, MetadataElem};
use typst::layout::{Abs, BlockElem, Frame, FrameItem, Point, Region, Size};
use typst::syntax::Span;
use typst::visualize::{Color, Curve, Geometry};

use crate::{QUIET_ZONE, Square};

/// A number as it stands in the bytes.
const NUMBER: usize = size_of::<u32>();

/// Draws the dark modules, `module` micrometres each, with the quiet zone on all four sides.
pub fn draw(square: &Square, module: u32) -> Content {
    let runs = square.runs().into_iter().flat_map(|(column, row, length)| [column, row, length]);
    let numbers = [module, square.side()].into_iter().chain(runs);
    let bytes: Vec<u8> = numbers.flat_map(u32::to_le_bytes).collect();
    let carried = Packed::new(MetadataElem::new(Bytes::new(bytes).into_value()));
    BlockElem::single_layouter(carried, lay_out).pack()
}

fn lay_out(
    carried: &Packed<MetadataElem>,
    _: &mut Engine,
    _: Locator,
    _: StyleChain,
    _: Region,
) -> SourceResult<Frame> {
    let (module, side, runs) = carried_runs(&carried.value).ok_or("this is no square").at(Span::detached())?;
    let mut frame = Frame::soft(Size::splat(length(side + 2 * QUIET_ZONE, module)));
    let path = Geometry::Curve(path(runs, module)).filled(Color::BLACK);
    frame.push(Point::zero(), FrameItem::Shape(path, Span::detached()));
    Ok(frame)
}

/// The width of a module, how many a side has, and the numbers of the runs.
fn carried_runs(value: &Value) -> Option<(u32, u32, impl Iterator<Item = u32>)> {
    let Value::Bytes(bytes) = value else { return None };
    let (numbers, _) = bytes.as_chunks::<NUMBER>();
    let mut numbers = numbers.iter().map(|number| u32::from_le_bytes(*number));
    Some((numbers.next()?, numbers.next()?, numbers))
}

/// One rectangle for each run: its column, its row and its length.
fn path(mut numbers: impl Iterator<Item = u32>, module: u32) -> Curve {
    let at = |x: u32, y: u32| Point::new(length(x, module), length(y, module));
    let mut path = Curve::new();
    while let (Some(column), Some(row), Some(length)) = (numbers.next(), numbers.next(), numbers.next()) {
        let (left, top) = (column + QUIET_ZONE, row + QUIET_ZONE);
        path.move_(at(left, top));
        path.line(at(left + length, top));
        path.line(at(left + length, top + 1));
        path.line(at(left, top + 1));
        path.close();
    }
    path
}

fn length(modules: u32, module: u32) -> Abs {
    Abs::mm(f64::from(modules * module) / 1000.0)
}
