//! Boxes around what is drawn on a map.

use super::*;

/// A map of 200 x 100 points, each two pixels of the photo, certain where `is_text`.
fn map(is_text: impl Fn(f32, f32) -> bool) -> TextMap {
    let point = |at: usize| is_text((at % 200) as f32 + 0.5, (at / 200) as f32 + 0.5);
    let values = (0..20_000).map(|at| if point(at) { 0.9 } else { 0.0 }).collect();
    TextMap { width: 200, height: 100, values, photo: (400, 200) }
}

/// Whether a point lies in a bar of that size, in points, about a middle and at an angle in degrees.
fn bar(middle: Vector, size: Vector, degrees: f32) -> impl Fn(f32, f32) -> bool {
    let across = [degrees.to_radians().cos(), degrees.to_radians().sin()];
    move |x, y| {
        let from = [x - middle[0], y - middle[1]];
        2.0 * dot(from, across).abs() <= size[0] && 2.0 * dot(from, [-across[1], across[0]]).abs() <= size[1]
    }
}

fn degrees(place: &TextBox) -> f32 {
    place.along[1].atan2(place.along[0]).to_degrees()
}

fn near(one: f32, other: f32, by: f32) -> bool {
    (one - other).abs() <= by
}

#[test]
fn a_box_grows_by_the_stated_share() {
    let boxes = find(&map(bar([100.0, 50.0], [80.0, 10.0], 0.0)));
    let [place] = boxes[..] else { panic!("{boxes:?}") };
    assert_eq!((place.centre, place.along), ([200.0, 100.0], [1.0, 0.0]));
    // The outline runs through the middles of the outermost points: 79 x 9 points, 158 x 18 pixels.
    let by = 158.0 * 18.0 * 1.6 / (2.0 * (158.0 + 18.0));
    assert!(
        near(place.length, 158.0 + 2.0 * by, 0.1) && near(place.height, 18.0 + 2.0 * by, 0.1),
        "{place:?}"
    );
}

#[test]
fn a_slanting_line_has_a_slanting_box() {
    for angle in [-30.0, -5.0, 12.0, 44.0] {
        let boxes = find(&map(bar([100.0, 50.0], [80.0, 10.0], angle)));
        let [place] = boxes[..] else { panic!("{boxes:?}") };
        assert!(near(degrees(&place), angle, 1.5), "{angle}: {place:?}");
        assert!(near(place.centre[0], 200.0, 2.0) && near(place.centre[1], 100.0, 2.0), "{place:?}");
    }
}

#[test]
fn a_single_letter_lies_along_the_lines_around_it() {
    let (line, letter) = (bar([90.0, 40.0], [80.0, 8.0], 8.0), bar([20.0, 80.0], [9.0, 9.0], 45.0));
    let boxes = find(&map(|x, y| line(x, y) || letter(x, y)));
    let [line, letter] = boxes[..] else { panic!("{boxes:?}") };
    assert!(near(degrees(&line), 8.0, 1.5));
    assert!(near(degrees(&letter), degrees(&line), 0.1));
}

#[test]
fn sideways_lines_are_all_read_the_same_way() {
    let (one, other) = (bar([60.0, 50.0], [80.0, 8.0], 88.0), bar([120.0, 50.0], [70.0, 8.0], -89.0));
    let boxes = find(&map(|x, y| one(x, y) || other(x, y)));
    let [one, other] = boxes[..] else { panic!("{boxes:?}") };
    assert!(dot(one.along, other.along) > 0.9);
}

#[test]
fn what_is_faint_or_tiny_is_no_text() {
    let mut faint = map(bar([100.0, 50.0], [80.0, 10.0], 0.0));
    faint.values.iter_mut().for_each(|value| *value /= 2.0);
    assert_eq!(find(&faint), []);
    assert_eq!(find(&map(|x, y| (x, y) == (100.5, 50.5))), []);
    assert_eq!(find(&map(bar([100.0, 50.0], [80.0, 2.0], 0.0))), []);
}

#[test]
fn no_map_is_too_wild() {
    assert_eq!(find(&map(|_, _| false)), []);
    assert_eq!(find(&map(|_, _| true)).len(), 1);
    // Crossing lines of one point, which an outline follows there and back.
    find(&map(|x, y| x % 5.0 < 1.0 || y % 7.0 < 1.0));
    let mut noise = 1_u32;
    for _ in 0..20 {
        let values = (0..20_000).map(|_| {
            noise = noise.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
            (noise >> 16) as f32 / 65_535.0
        });
        let map = TextMap { width: 200, height: 100, values: values.collect(), photo: (3, 1) };
        assert!(find(&map).len() <= MAX_BOXES);
    }
}

#[test]
fn values_that_are_no_numbers_are_no_text() {
    let mut map = map(|_, _| true);
    map.values.fill(f32::NAN);
    assert_eq!(find(&map), []);
}

#[test]
fn only_the_longest_are_kept() {
    let values = (0..1_000_000).map(|at| {
        let (x, y) = (at % 1000, at / 1000);
        if x % 20 < 12 && y % 8 < 4 || y < 4 { 1.0 } else { 0.0 }
    });
    let map = TextMap { width: 1000, height: 1000, values: values.collect(), photo: (1000, 1000) };
    let boxes = find(&map);
    assert_eq!(boxes.len(), MAX_BOXES);
    assert!(boxes[0].length > 900.0 && boxes[1].length < 50.0);
}

#[test]
fn an_area_is_upright_and_stays_on_the_photo() {
    let parts = |place: TextBox| {
        let area = place.area((200, 100));
        [area.left, area.top, area.width, area.height].map(|share| (share * 1000.0).round() as i32)
    };
    let place = TextBox { centre: [100.0, 50.0], along: [0.0, 1.0], length: 40.0, height: 20.0 };
    assert_eq!(parts(place), [450, 300, 100, 400]);
    assert_eq!(parts(TextBox { centre: [0.0, 100.0], ..place }), [0, 800, 50, 200]);
}

#[test]
fn text_at_the_very_edge_is_found() {
    for middle in [[10.0, 50.0], [190.0, 50.0], [100.0, 4.0], [100.0, 96.0]] {
        assert_eq!(find(&map(bar(middle, [20.0, 8.0], 0.0))).len(), 1, "{middle:?}");
    }
}
