//! What a strip of text says: the second network gives each step along the strip the probability of each letter.

use image::{GrayImage, Luma};
use imageproc::geometric_transformations::{Border, Interpolation, warp_into_with};
use rten::Model;
use rten_tensor::NdTensor;

use super::alphabet::Alphabet;
use super::models::RECOGNISER;
use super::place::TextBox;
use crate::PaperError;

/// The height of a strip, in pixels.
const HEIGHT: u16 = 48;

/// A strip is so much wider than its place is in proportion. The network takes a step every eight pixels and loses
/// letters that are narrower, as tall print has them. Of 368 stretches drawn it lost a letter of two without, of none
/// with it.
const WIDENED: f32 = 1.25;

/// The least width of a strip, in pixels; what is shorter has nothing behind it.
const MIN_WIDTH: u32 = 64;

/// The most width of a strip, in pixels; what is longer is squeezed. A line of 80 letters has about this.
pub(super) const MAX_WIDTH: u16 = 2400;

/// What is less sure than this is no text: a scratch, a logo, the grain of a table.
const LEAST_SURE: f32 = 0.5;

/// What was read in one place.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Reading {
    pub(super) text: String,
    /// The mean probability of its letters, from 0 to 1.
    pub(super) sure: f32,
}

impl Reading {
    /// Whether there is text at all.
    pub(super) fn is_text(&self) -> bool {
        !self.text.is_empty() && self.sure >= LEAST_SURE
    }
}

/// Reads strips of text.
pub(super) struct Recogniser {
    model: Model,
    alphabet: Alphabet,
}

impl Recogniser {
    /// Takes the alphabet out of the network, which carries it.
    pub(super) fn new(model: Model) -> Result<Recogniser, PaperError> {
        let listed = model.metadata().get("character");
        let listed = listed.ok_or_else(|| RECOGNISER.refused("it does not say which letters it knows"))?;
        let alphabet = Alphabet::new(listed)?;
        Ok(Recogniser { model, alphabet })
    }

    /// Reads one place of a photo.
    pub(super) fn read(&self, photo: &GrayImage, place: &TextBox) -> Result<Reading, PaperError> {
        let strip = straightened(photo, place);
        let not_read = |error: &dyn std::fmt::Display| PaperError::NotRead(error.to_string());
        let letters = self.model.run_one(input(&strip).into(), None).map_err(|error| not_read(&error))?;
        let (shape, values) = letters.into_shape_vec::<f32, 3>().map_err(|error| not_read(&error))?;
        if shape[0] != 1 || shape[2] != self.alphabet.known() {
            return Err(PaperError::NotRead(format!("the recogniser gave the shape {shape:?}")));
        }
        Ok(self.alphabet.spell(&values))
    }
}

/// The place, cut out of the photo, laid straight and widened.
fn straightened(photo: &GrayImage, place: &TextBox) -> GrayImage {
    let proportion = place.length / place.height;
    let width = (proportion * f32::from(HEIGHT) * WIDENED).round().clamp(1.0, f32::from(MAX_WIDTH));
    let (step, line) = (place.length / width, place.height / f32::from(HEIGHT));
    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "from 1 to MAX_WIDTH")]
    let mut strip = GrayImage::new(width as u32, u32::from(HEIGHT));
    let source = |x: f32, y: f32| {
        let behind = (x + 0.5) * step - place.length / 2.0;
        let below = (y + 0.5) * line - place.height / 2.0;
        // A pixel's middle lies half a pixel from its corner.
        let [x, y] = place.at(behind, below);
        (x - 0.5, y - 0.5)
    };
    warp_into_with(photo, source, Interpolation::Bilinear, Border::<Luma<u8>>::Replicate, &mut strip);
    strip
}

/// The network was made for three colours, each from -1 to 1, with 0 behind what is too short.
fn input(strip: &GrayImage) -> NdTensor<f32, 4> {
    let (width, height) = (strip.width().max(MIN_WIDTH) as usize, usize::from(HEIGHT));
    let mut one = vec![0.0; width * height];
    for (x, y, Luma([tone])) in strip.enumerate_pixels() {
        one[y as usize * width + x as usize] = f32::from(*tone) / 127.5 - 1.0;
    }
    NdTensor::from_data([1, 3, height, width], one.repeat(3))
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    fn place(centre: [f32; 2], along: [f32; 2], length: f32, height: f32) -> TextBox {
        TextBox { centre, along, length, height }
    }

    #[test]
    fn a_strip_is_as_wide_as_its_place_in_proportion_and_a_quarter_more() {
        let photo = GrayImage::new(400, 300);
        let strip = straightened(&photo, &place([200.0, 150.0], [1.0, 0.0], 200.0, 24.0));
        assert_eq!(strip.dimensions(), (500, 48));
    }

    #[test]
    fn a_strip_upside_down_is_the_same_turned_round() {
        let photo = GrayImage::from_fn(96, 48, |x, y| Luma([u8::try_from(x + y).unwrap()]));
        let whole = place([48.0, 24.0], [1.0, 0.0], 96.0, 48.0);
        let strip = straightened(&photo, &whole);
        assert_eq!((strip.get_pixel(0, 0), strip.get_pixel(119, 47)), (&Luma([0]), &Luma([142])));
        assert_eq!(straightened(&photo, &whole.upside_down()), image::imageops::rotate180(&strip));
    }

    #[test]
    fn a_strip_is_never_wider_than_the_bound() {
        let photo = GrayImage::new(2000, 10);
        let strip = straightened(&photo, &place([1000.0, 5.0], [1.0, 0.0], 2000.0, 2.0));
        assert_eq!(strip.dimensions(), (2400, 48));
    }

    #[test]
    fn nothing_stands_behind_a_short_strip() {
        let strip = GrayImage::from_pixel(1, 48, Luma([255]));
        let input = input(&strip);
        assert_eq!((input[[0, 2, 47, 0]], input[[0, 2, 47, 1]]), (1.0, 0.0));
    }
}
