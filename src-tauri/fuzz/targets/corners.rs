//! Any picture and any four points: corners that are found or accepted are a paper on the picture.
#![no_main]

use image::{Rgb, RgbImage};
use paper::{Corners, Point, find_corners};

libfuzzer_sys::fuzz_target!(|input: (u8, [u8; 16], [u16; 8])| {
    let (kind, tones, ends) = input;
    let share = |at: usize| f64::from(ends[at]) / 65_000.0;
    let points = [0, 2, 4, 6].map(|at| Point { x: share(at), y: share(at + 1) });
    // Tiles of 16 tones, or the four points joined, bright on dark.
    let picture = RgbImage::from_fn(320, 200 + u32::from(kind), |x, y| {
        let tile = tones[((x / 80 + y / 80 * 4) % 16) as usize];
        let place = Point { x: f64::from(x) / 320.0, y: f64::from(y) / (200.0 + f64::from(kind)) };
        let within = (0..4).all(|at| {
            let (from, to) = (points[at], points[(at + 1) % 4]);
            (to.x - from.x) * (place.y - from.y) >= (to.y - from.y) * (place.x - from.x)
        });
        Rgb([if within { 200 | tile } else { tile / 2 }; 3])
    });
    for corners in [find_corners(&picture), Corners::new(points).ok()].into_iter().flatten() {
        assert!(corners.points().iter().all(|at| (0.0..=1.0).contains(&at.x) && (0.0..=1.0).contains(&at.y)));
        assert!(Corners::new(corners.points()).is_ok());
        if let Ok(jpeg) = paper::encode(&picture) {
            assert!(paper::straighten(&jpeg, corners).is_ok());
        }
    }
});
