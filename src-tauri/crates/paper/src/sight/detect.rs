//! Where there is text on a photo: one network gives each point its probability.

use image::GrayImage;
use rten::Model;
use rten_tensor::NdTensor;

use super::boxes::{self, TextMap};
use super::place::TextBox;
use super::{resized, scaled};
use crate::PaperError;

/// The network sees the photo with this long side, in pixels.
const LONG_SIDE: u32 = 736;

/// It halves what it sees five times over, so both sides have to be multiples of this.
const STEP: u32 = 32;

/// Finds text on photos.
pub(super) struct Detector(Model);

impl Detector {
    pub(super) fn new(model: Model) -> Detector {
        Detector(model)
    }

    /// The places with text on a photo that has at least one pixel, in no order.
    pub(super) fn find(&self, photo: &GrayImage) -> Result<Vec<TextBox>, PaperError> {
        let (width, height) = photo.dimensions();
        let (across, down) = seen_size(width, height);
        let seen = resized(photo, across, down)?;
        let marked = self.0.run_one(input(&seen).into(), None).map_err(|error| not_read(&error))?;
        let (shape, values) = marked.into_shape_vec::<f32, 4>().map_err(|error| not_read(&error))?;
        if shape != [1, 1, down as usize, across as usize] {
            return Err(PaperError::NotRead(format!("the detector gave the shape {shape:?}")));
        }
        Ok(boxes::find(&TextMap { width: across, height: down, values, photo: (width, height) }))
    }
}

/// The size in which a photo is seen.
fn seen_size(width: u32, height: u32) -> (u32, u32) {
    let longest = width.max(height).max(1);
    // The long side is a multiple of STEP already, so rounding up exceeds it nowhere.
    let side = |side| scaled(side, LONG_SIDE, longest).div_ceil(STEP).max(1) * STEP;
    (side(width), side(height))
}

/// The network was made for three colours, each from -1 to 1; a grey picture gives it the same three times.
fn input(seen: &GrayImage) -> NdTensor<f32, 4> {
    let one: Vec<f32> = seen.iter().map(|&tone| f32::from(tone) / 127.5 - 1.0).collect();
    NdTensor::from_data([1, 3, seen.height() as usize, seen.width() as usize], one.repeat(3))
}

fn not_read(error: &dyn std::fmt::Display) -> PaperError {
    PaperError::NotRead(error.to_string())
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use rten_tensor::prelude::*;

    use super::*;

    #[test]
    fn a_photo_is_seen_in_multiples_of_the_step() {
        assert_eq!(seen_size(2000, 1500), (736, 576));
        assert_eq!(seen_size(1500, 2000), (576, 736));
        assert_eq!(seen_size(100, 100), (736, 736));
    }

    #[test]
    fn a_mere_line_is_seen_too() {
        assert_eq!(seen_size(2000, 1), (736, 32));
        assert_eq!(seen_size(1, u32::MAX), (32, 736));
    }

    #[test]
    fn the_darkest_is_minus_one_and_the_brightest_one() {
        let seen = GrayImage::from_raw(2, 1, vec![0, 255]).unwrap();
        assert_eq!(input(&seen).to_vec(), [-1.0, 1.0, -1.0, 1.0, -1.0, 1.0]);
    }
}
