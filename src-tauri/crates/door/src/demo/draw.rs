//! Drawing a receipt so that it looks like a photo of one: paper on a table, a little askew, in uneven light.

use image::{DynamicImage, RgbaImage};
use tiny_skia::{
    Color, FillRule, GradientStop, LinearGradient, Paint, Path, PathBuilder, Pixmap, Point, Rect, Shader,
    SpreadMode, Transform,
};
use ttf_parser::Face;

use super::chance::Chance;
use super::outlines::outlines;
use super::receipt::{Line, Receipt};

const WIDTH: u32 = 900;
const HEIGHT: u32 = 1_400;
/// The left, upper and right edge of the paper on the table, in pixels; it is as long as what is printed on it.
const PAPER: (f32, f32, f32) = (95.0, 70.0, 805.0);
/// How far its shadow falls to the right and down.
const SHADOW: f32 = 14.0;
/// Where the first line is printed.
const FIRST: f32 = 356.0;
/// Where text begins and ends on the paper.
const LEFT: f32 = 145.0;
const RIGHT: f32 = 755.0;

static REGULAR: &[u8] = include_bytes!("../../../card/sheets/fonts/AtkinsonHyperlegibleNext-Regular.ttf");
static BOLD: &[u8] = include_bytes!("../../../card/sheets/fonts/AtkinsonHyperlegibleNext-Bold.ttf");

/// A picture of a receipt as a JPEG, the same bytes every time.
///
/// No bytes at all if the fonts in the program can not be read, which whoever takes in a photo refuses.
pub(crate) fn draw(receipt: &Receipt) -> Vec<u8> {
    photo(receipt).unwrap_or_default()
}

fn photo(receipt: &Receipt) -> Option<Vec<u8>> {
    let mut chance = Chance::of(&receipt.number);
    let tilt = [-1.6, -0.9, 0.7, 1.3].get(usize::try_from(chance.between(0, 3)).ok()?).copied()?;
    let mut photo = Photo {
        pixels: Pixmap::new(WIDTH, HEIGHT)?,
        askew: Transform::from_rotate_at(tilt, 450.0, 700.0),
        regular: Face::parse(REGULAR, 0).ok()?,
        bold: Face::parse(BOLD, 0).ok()?,
    };
    photo.table();
    photo.paper(length(receipt))?;
    photo.print(receipt);
    jpeg(photo.pixels)
}

/// The lower edge of the paper.
fn length(receipt: &Receipt) -> f32 {
    let lines: f32 = receipt.lines.iter().map(height).sum();
    (FIRST + lines + 300.0).min(1_330.0)
}

/// How far a line is from the next.
fn height(line: &Line) -> f32 {
    if line.detail.is_empty() { 54.0 } else { 92.0 }
}

/// The table covers all, so that no pixel is transparent and none is multiplied by its alpha.
fn jpeg(pixels: Pixmap) -> Option<Vec<u8>> {
    let rgba = RgbaImage::from_raw(WIDTH, HEIGHT, pixels.take())?;
    paper::encode(&DynamicImage::ImageRgba8(rgba).into_rgb8()).ok()
}

/// The picture while it is drawn.
struct Photo {
    pixels: Pixmap,
    askew: Transform,
    regular: Face<'static>,
    bold: Face<'static>,
}

/// Where a text stands on its line.
#[derive(Clone, Copy)]
enum Stand {
    Left,
    Middle,
    Right,
}

impl Photo {
    fn table(&mut self) {
        self.pixels.fill(Color::from_rgba8(104, 84, 66, 255));
        let light = light(
            (0.0, 0.0),
            (900.0, 1_400.0),
            Color::from_rgba8(176, 144, 112, 150),
            Color::from_rgba8(40, 30, 24, 110),
        );
        if let Some(all) = Rect::from_xywh(0.0, 0.0, 900.0, 1_400.0) {
            self.pixels.fill_rect(all, &light, Transform::identity(), None);
        }
        let grain = solid(60, 46, 36, 40);
        let mut chance = Chance::of("grain");
        for top in (0_i16..1_400).step_by(28) {
            let top = f32::from(top) + f32::from(i8::try_from(chance.between(-9, 9)).unwrap_or(0));
            if let Some(stripe) = Rect::from_xywh(0.0, top, 900.0, 2.0) {
                self.pixels.fill_rect(stripe, &grain, Transform::from_rotate_at(-0.8, 450.0, 700.0), None);
            }
        }
    }

    fn paper(&mut self, bottom: f32) -> Option<()> {
        let (left, top, right) = PAPER;
        let shadow = solid(20, 14, 10, 30);
        for spread in [-8.0, -1.0, 6.0, 13.0] {
            let (near, far) = (SHADOW - spread, SHADOW + spread);
            let soft = Rect::from_ltrb(left + near, top + near, right + far, bottom + far)?;
            self.fill(&PathBuilder::from_rect(soft), &shadow);
        }
        let sheet = PathBuilder::from_rect(Rect::from_ltrb(left, top, right, bottom)?);
        self.fill(&sheet, &solid(248, 243, 230, 255));
        let uneven = light(
            (left, top),
            (right, bottom),
            Color::from_rgba8(255, 255, 250, 130),
            Color::from_rgba8(150, 130, 100, 60),
        );
        self.fill(&sheet, &uneven);
        // The fold of a paper that lay in a pocket.
        let middle = f32::midpoint(top, bottom) - 40.0;
        self.fill(
            &PathBuilder::from_rect(Rect::from_ltrb(left, middle, right, middle + 3.0)?),
            &solid(130, 112, 90, 46),
        );
        self.fill(
            &PathBuilder::from_rect(Rect::from_ltrb(left, middle + 3.0, right, middle + 6.0)?),
            &solid(255, 255, 252, 120),
        );
        Some(())
    }

    fn print(&mut self, receipt: &Receipt) {
        self.text(receipt.shop.name, 150.0, 44.0, true, Stand::Middle);
        self.text(
            &format!("{}, {}", receipt.shop.street, receipt.shop.town),
            196.0,
            26.0,
            false,
            Stand::Middle,
        );
        self.rule(226.0);
        self.text(&format!("Receipt {}", receipt.number), 272.0, 27.0, false, Stand::Left);
        self.text(&receipt.day.to_string(), 272.0, 27.0, false, Stand::Right);
        self.rule(300.0);
        let mut at = FIRST;
        for line in &receipt.lines {
            at = self.line(receipt, line, at);
        }
        self.rule(at);
        self.text("Total", at + 62.0, 40.0, true, Stand::Left);
        self.text(&receipt.total().to_string(), at + 62.0, 40.0, true, Stand::Right);
        self.text("Tax included. Paid by card.", at + 120.0, 25.0, false, Stand::Left);
        self.text("Thank you, and good roads", at + 210.0, 27.0, false, Stand::Middle);
    }

    /// Prints a line and says where the next one goes.
    fn line(&mut self, receipt: &Receipt, line: &Line, at: f32) -> f32 {
        self.text(&line.name, at, 30.0, false, Stand::Left);
        self.text(&receipt.money(line.minor).number(), at, 30.0, false, Stand::Right);
        self.text(&line.detail, at + 38.0, 26.0, false, Stand::Left);
        at + height(line)
    }

    fn rule(&mut self, at: f32) {
        if let Some(rule) = Rect::from_ltrb(LEFT, at, RIGHT, at + 2.0) {
            self.fill(&PathBuilder::from_rect(rule), &solid(70, 66, 62, 255));
        }
    }

    /// Prints text with its foot at `at`, `size` pixels high.
    fn text(&mut self, text: &str, at: f32, size: f32, bold: bool, stand: Stand) {
        let face = if bold { &self.bold } else { &self.regular };
        let (path, wide) = outlines(face, text, size);
        let from = match stand {
            Stand::Left => LEFT,
            Stand::Middle => f32::midpoint(LEFT, RIGHT) - wide / 2.0,
            Stand::Right => RIGHT - wide,
        };
        if let Some(path) = path.and_then(|path| path.transform(Transform::from_translate(from, at))) {
            self.fill(&path, &solid(44, 42, 46, 255));
        }
    }

    fn fill(&mut self, path: &Path, paint: &Paint<'_>) {
        self.pixels.fill_path(path, paint, FillRule::Winding, self.askew, None);
    }
}

fn solid(red: u8, green: u8, blue: u8, alpha: u8) -> Paint<'static> {
    let shader = Shader::SolidColor(Color::from_rgba8(red, green, blue, alpha));
    Paint { shader, anti_alias: true, ..Paint::default() }
}

/// Light that falls from one corner to the other; nothing is painted where it has no length.
fn light(from: (f32, f32), to: (f32, f32), bright: Color, dark: Color) -> Paint<'static> {
    let stops = vec![GradientStop::new(0.0, bright), GradientStop::new(1.0, dark)];
    let (from, to) = (Point::from_xy(from.0, from.1), Point::from_xy(to.0, to.1));
    let shader = LinearGradient::new(from, to, stops, SpreadMode::Pad, Transform::identity());
    Paint { shader: shader.unwrap_or(Shader::SolidColor(Color::TRANSPARENT)), ..Paint::default() }
}
