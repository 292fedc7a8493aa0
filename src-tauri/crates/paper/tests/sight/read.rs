//! A slip is read whichever way it was photographed, and reading can be watched and stopped.

use std::ops::ControlFlow;

use image::RgbImage;
use image::imageops::{rotate90, rotate180, rotate270};
use paper::{Area, PaperError, Progress, Text, encode};

use crate::draw::{ALMOST_LEVEL, Line, SLANTING, SLIP, photo, slip};
use crate::{READER, read};

/// What a record would be made of.
const WANTED: &[&str] = &["2026-03-14", "QX-4471-B", "£11.95", "£38.40", "TOTAL£74.30", "Odometer98420mi"];

/// The rows, each without its spaces: whether there is one before an amount is hardly to be seen.
fn rows(text: &Text) -> Vec<String> {
    let row = |row: &paper::Row| row.0.iter().map(|stretch| stretch.text.replace(' ', "")).collect();
    text.0.iter().map(row).collect()
}

fn drawn(corners: [(f32, f32); 4]) -> RgbImage {
    photo(&slip(SLIP), (1512, 2016), corners)
}

/// All that a record is made of is there, and hardly a row has a letter wrong.
fn assert_read(text: &Text) {
    let rows = rows(text);
    for wanted in WANTED {
        assert!(rows.iter().any(|row| row.contains(wanted)), "{wanted} is missing in {rows:#?}");
    }
    let row = |(left, right): &Line| format!("{left}{right}").replace(' ', "");
    let printed: Vec<String> = SLIP.iter().map(row).filter(|row| !row.is_empty()).collect();
    assert_eq!(rows.len(), printed.len(), "{rows:#?}");
    let exact = rows.iter().zip(&printed).filter(|(row, printed)| row == printed).count();
    assert!(exact + 1 >= printed.len(), "{rows:#?}");
}

/// The area of what was read as this.
fn area(text: &Text, wanted: &str) -> Area {
    text.0.iter().flat_map(|row| &row.0).find(|stretch| stretch.text == wanted).unwrap().area
}

#[test]
fn upright() {
    let text = read(&drawn(ALMOST_LEVEL));
    assert_read(&text);
    let total = area(&text, "TOTAL");
    assert!((0.17..0.22).contains(&total.left) && (0.5..0.6).contains(&total.top), "{total:?}");
    assert!(text.0.iter().flat_map(|row| &row.0).all(|stretch| stretch.sure > 0.8), "{text:?}");
}

#[test]
fn upside_down() {
    let text = read(&rotate180(&drawn(ALMOST_LEVEL)));
    assert_read(&text);
    let total = area(&text, "TOTAL");
    assert!((0.65..0.75).contains(&total.left) && (0.4..0.5).contains(&total.top), "{total:?}");
}

#[test]
fn sideways() {
    assert_read(&read(&rotate90(&drawn(ALMOST_LEVEL))));
    assert_read(&read(&rotate270(&drawn(ALMOST_LEVEL))));
}

#[test]
fn slanting() {
    assert_read(&read(&drawn(SLANTING)));
}

#[test]
fn a_photo_without_text_has_no_rows() {
    assert_eq!(read(&RgbImage::from_pixel(800, 600, image::Rgb([200, 190, 180]))), Text::default());
}

#[test]
fn each_stretch_is_announced() {
    let jpeg = encode(&drawn(ALMOST_LEVEL)).unwrap();
    let mut heard = Vec::new();
    let text = READER.read(&jpeg, &mut |progress| {
        heard.push(progress);
        ControlFlow::Continue(())
    });
    let of = text.unwrap().0.iter().map(|row| row.0.len()).sum::<usize>();
    let each = (0..of).map(|done| Progress::Reading { done, of });
    assert_eq!(heard, [Progress::Looking].into_iter().chain(each).collect::<Vec<_>>());
}

#[test]
fn reading_stops_when_it_is_told_to() {
    let jpeg = encode(&drawn(ALMOST_LEVEL)).unwrap();
    for at in [Progress::Looking, Progress::Reading { done: 1, of: 23 }] {
        let mut last = None;
        let stopped = READER.read(&jpeg, &mut |progress| {
            last = Some(progress);
            if progress == at { ControlFlow::Break(()) } else { ControlFlow::Continue(()) }
        });
        assert!(matches!(stopped, Err(PaperError::Stopped)), "{stopped:?}");
        assert_eq!(last, Some(at));
    }
}
