//! The paper's corners on photos of which it is known where they lie.

use image::{ImageFormat, Rgb, RgbImage};
use paper::{Corners, PaperError, Point, find_corners, prepare, straighten};

use crate::draw::{pixels, png};
use crate::slips::{HEIGHT, Scene, TABLES, TROUBLES, Table, Trouble, WIDTH};

/// How many photos of each trouble on each table.
const EACH: u64 = 3;

/// As a telephone writes it: JPEG at quality 80.
fn photo(scene: &Scene) -> RgbImage {
    let mut bytes = Vec::new();
    let encoder = image::codecs::jpeg::JpegEncoder::new_with_quality(&mut bytes, 80);
    scene.draw().write_with_encoder(encoder).unwrap();
    image::load_from_memory_with_format(&bytes, ImageFormat::Jpeg).unwrap().into_rgb8()
}

fn in_pixels(at: Point) -> (f64, f64) {
    (at.x * f64::from(WIDTH), at.y * f64::from(HEIGHT))
}

/// How far each found corner lies from the true one, in pixels, once the margin of 1 % is taken off again.
fn error(found: Corners, scene: &Scene) -> f64 {
    let points = found.points().map(in_pixels);
    let middle =
        (points.iter().map(|at| at.0).sum::<f64>() / 4.0, points.iter().map(|at| at.1).sum::<f64>() / 4.0);
    let shrunk = points.map(|at| (middle.0 + (at.0 - middle.0) / 1.02, middle.1 + (at.1 - middle.1) / 1.02));
    let off = shrunk
        .iter()
        .zip(scene.corners().map(in_pixels))
        .map(|(one, two)| (one.0 - two.0).hypot(one.1 - two.1));
    off.fold(0.0, f64::max)
}

/// How far outside what was found the paper reaches at most, in pixels.
fn cut(found: Corners, scene: &Scene) -> f64 {
    let points = found.points().map(in_pixels);
    let sides = (0..4).map(|at| (points[at], points[(at + 1) % 4]));
    let beyond = |(from, to): ((f64, f64), (f64, f64)), at: (f64, f64)| {
        let (x, y) = (to.0 - from.0, to.1 - from.1);
        -(x * (at.1 - from.1) - y * (at.0 - from.0)) / x.hypot(y)
    };
    sides.flat_map(|side| scene.corners().map(|at| beyond(side, in_pixels(at)))).fold(f64::MIN, f64::max)
}

#[test]
fn what_it_is_sure_of_is_the_paper() {
    let mut wrong = Vec::new();
    let mut errors = Vec::new();
    let mut photos = 0;
    for trouble in TROUBLES {
        let mut rates = Vec::new();
        for table in TABLES {
            let mut sure = 0;
            for seed in 0..EACH {
                photos += 1;
                let scene = Scene::new(table, trouble, photos);
                let Some(found) = find_corners(&photo(&scene)) else { continue };
                sure += 1;
                let (error, cut) = (error(found, &scene), cut(found, &scene));
                errors.push(error);
                if cut > 0.0 || error > 12.0 || matches!(trouble, Trouble::Leaves | Trouble::Second) {
                    wrong.push(format!("{trouble:?} on {table:?} {seed}: error {error:.1}, cut {cut:.1}"));
                }
            }
            rates.push(format!("{table:?} {sure}/{EACH}"));
        }
        println!("{trouble:?}: {}", rates.join(" "));
    }
    errors.sort_unstable_by(f64::total_cmp);
    println!(
        "{} of {photos} sure, median error {:.2} px, worst {:.2} px",
        errors.len(),
        errors[errors.len() / 2],
        errors[errors.len() - 1]
    );
    assert!(wrong.is_empty(), "{wrong:#?}");
}

#[test]
fn what_is_straightened_is_all_there() {
    // Its four corners are black; none of them may be cut off or bent.
    let mark = |x: u32, y: u32| !(20..380).contains(&x) && !(20..280).contains(&y);
    let picture = RgbImage::from_fn(800, 600, |x, y| {
        let on_slip = (200..600).contains(&x) && (150..450).contains(&y);
        Rgb([if on_slip && !mark(x - 200, y - 150) { 240 } else { 60 }; 3])
    });
    let corner = |x: f64, y: f64| Point { x: x / 800.0, y: y / 600.0 };
    let corners = Corners::new([
        corner(200.0, 150.0),
        corner(600.0, 150.0),
        corner(600.0, 450.0),
        corner(200.0, 450.0),
    ]);
    let paper = straighten(&png(&picture.into()), corners.unwrap()).unwrap();
    assert_eq!((paper.photo().width, paper.photo().height), (400, 300));
    assert!(paper.whole().is_none());
    let seen = pixels(paper.jpeg());
    for (x, y) in [(10, 10), (389, 10), (389, 289), (10, 289)] {
        assert!(seen.get_pixel(x, y).0[0] < 80, "{x} {y}");
    }
    for (x, y) in [(40, 40), (360, 40), (200, 150), (40, 10), (10, 40), (360, 289)] {
        assert!(seen.get_pixel(x, y).0[0] > 220, "{x} {y}");
    }
}

#[test]
fn a_slip_seen_aslant_becomes_a_rectangle() {
    let scene = Scene::new(Table::DarkWood, Trouble::None, 7);
    let paper = prepare(&png(&photo(&scene).into())).unwrap();
    let (found, whole) = (paper.corners().unwrap(), paper.whole().unwrap());
    assert!(error(found, &scene) < 3.0);
    let again = straighten(whole.jpeg(), found).unwrap();
    assert_eq!((again.photo().width, again.photo().height), (paper.photo().width, paper.photo().height));
    // Its edges are paper all the way, but for the margin of 1 %.
    let seen = pixels(paper.jpeg());
    let (width, height) = seen.dimensions();
    for step in 5..95 {
        let (x, y) = (width * step / 100, height * step / 100);
        let (right, down) = (width / 40, height / 40);
        for (x, y) in [(x, down), (x, height - down), (right, y), (width - right, y)] {
            assert!(seen.get_pixel(x, y).0[0] > 140, "{x} {y}");
        }
    }
}

#[test]
fn the_owner_draws_corners_that_can_be_a_paper() {
    let points = |shares: [(f64, f64); 4]| shares.map(|(x, y)| Point { x, y });
    let good = [(0.1, 0.1), (0.9, 0.2), (0.8, 0.9), (0.0, 1.0)];
    assert_eq!(Corners::new(points(good)).unwrap().points(), points(good));
    let bad = [
        // Anticlockwise, crossed, with a corner pushed in, on one line, too small, beyond the photo, no number.
        [(0.1, 0.1), (0.1, 0.9), (0.9, 0.9), (0.9, 0.1)],
        [(0.1, 0.1), (0.9, 0.9), (0.9, 0.1), (0.1, 0.9)],
        [(0.1, 0.1), (0.9, 0.1), (0.3, 0.3), (0.1, 0.9)],
        [(0.1, 0.5), (0.4, 0.5), (0.6, 0.5), (0.9, 0.5)],
        [(0.1, 0.1), (0.1, 0.1), (0.9, 0.9), (0.1, 0.9)],
        [(0.1, 0.1), (0.15, 0.1), (0.15, 0.15), (0.1, 0.15)],
        [(-0.1, 0.1), (0.9, 0.1), (0.9, 0.9), (0.1, 0.9)],
        [(0.1, 0.1), (f64::NAN, 0.1), (0.9, 0.9), (0.1, 0.9)],
        [(0.1, 0.1), (0.9, f64::INFINITY), (0.9, 0.9), (0.1, 0.9)],
    ];
    for corners in bad {
        assert!(matches!(Corners::new(points(corners)), Err(PaperError::Corners)), "{corners:?}");
    }
    let corners = Corners::new(points(good)).unwrap();
    assert!(matches!(straighten(b"no photo", corners), Err(PaperError::Unknown)));
}

#[test]
fn what_is_straightened_is_no_larger_than_a_photo() {
    let wide = RgbImage::from_pixel(2400, 2400, Rgb([200; 3]));
    let corners = [(0.5, 0.0), (1.0, 0.5), (0.5, 1.0), (0.0, 0.5)].map(|(x, y)| Point { x, y });
    let paper = straighten(&png(&wide.into()), Corners::new(corners).unwrap()).unwrap().photo();
    assert_eq!((paper.width, paper.height), (1697, 1697));
    let thin = RgbImage::from_pixel(2400, 1, Rgb([200; 3]));
    let all = [(0.0, 0.0), (1.0, 0.0), (1.0, 1.0), (0.0, 1.0)].map(|(x, y)| Point { x, y });
    assert!(matches!(straighten(&png(&thin.into()), Corners::new(all).unwrap()), Err(PaperError::Corners)));
}

#[test]
fn what_shows_no_paper_is_left_alone() {
    let plain = RgbImage::from_pixel(800, 600, Rgb([240; 3]));
    let noise =
        RgbImage::from_fn(800, 600, |x, y| Rgb([u8::try_from((x * 7919 + y * 104_729) % 251).unwrap(); 3]));
    let small =
        RgbImage::from_fn(800, 600, |x, y| Rgb([if x / 100 == 3 && y / 100 == 3 { 240 } else { 50 }; 3]));
    let tiny = RgbImage::from_fn(40, 30, |x, y| Rgb([if x / 20 == 0 && y / 15 == 0 { 240 } else { 50 }; 3]));
    for picture in [plain, noise, small, tiny] {
        assert_eq!(find_corners(&picture), None);
        let prepared = prepare(&png(&picture.into())).unwrap();
        assert!(prepared.whole().is_none() && prepared.corners().is_none());
    }
}

#[test]
fn a_photo_is_stopped_after_any_step_whether_it_holds_a_paper_or_not() {
    use std::ops::ControlFlow;
    use std::sync::atomic::{AtomicU32, Ordering};

    let sheet = |x: u32, y: u32| (120..480).contains(&x) && (160..640).contains(&y);
    let on_a_table = RgbImage::from_fn(600, 800, |x, y| Rgb([if sheet(x, y) { 240 } else { 40 }; 3]));
    let plain = RgbImage::from_pixel(60, 80, Rgb([200; 3]));
    for (picture, steps) in [(on_a_table, 8), (plain, 5)] {
        let bytes = png(&picture.into());
        let last = AtomicU32::new(0);
        let watched = paper::prepare_while(&bytes, &|step| {
            last.fetch_max(step.done, Ordering::Relaxed);
            if step.of == 8 { ControlFlow::Continue(()) } else { ControlFlow::Break(()) }
        });
        assert_eq!(watched.unwrap(), prepare(&bytes).unwrap());
        assert_eq!(last.into_inner(), steps);
        for wanted in 0..=steps {
            let stop = |step: paper::Step| {
                if step.done >= wanted { ControlFlow::Break(()) } else { ControlFlow::Continue(()) }
            };
            let stopped = paper::prepare_while(&bytes, &stop);
            assert!(matches!(stopped, Err(PaperError::IntakeStopped)), "{wanted}: {stopped:?}");
        }
    }
}
