//! Stretches put into rows.

#![allow(clippy::cast_precision_loss)]

use super::*;

/// A stretch of that text about a middle, lying at that angle, of 12 pixels a letter and 20 in height.
fn stretch(text: &str, middle: Vector, degrees: f32) -> (TextBox, Reading) {
    let (sine, cosine) = degrees.to_radians().sin_cos();
    let place =
        TextBox { centre: middle, along: [cosine, sine], length: 12.0 * text.len() as f32, height: 20.0 };
    (place, Reading { text: text.to_owned(), sure: 0.9 })
}

/// The rows, with a bar between stretches.
fn read(found: &[(TextBox, Reading)]) -> Vec<String> {
    let row = |row: &Row| row.0.iter().map(|stretch| stretch.text.as_str()).collect::<Vec<_>>().join("|");
    rows(found, (1000, 1000)).0.iter().map(row).collect()
}

/// Three rows of a label and an amount, turned about the photo's middle by that angle.
fn slip(degrees: f32) -> Vec<(TextBox, Reading)> {
    let (sine, cosine) = degrees.to_radians().sin_cos();
    let turned = |text, [x, y]: Vector| {
        let (x, y) = (x - 500.0, y - 500.0);
        stretch(text, [500.0 + x * cosine - y * sine, 500.0 + x * sine + y * cosine], degrees)
    };
    vec![
        turned("TOTAL", [230.0, 560.0]),
        turned("18.95", [770.0, 530.0]),
        turned("oil filter", [260.0, 500.0]),
        turned("sump washer", [266.0, 530.0]),
        turned("30.90", [770.0, 560.0]),
        turned("11.95", [770.0, 500.0]),
    ]
}

#[test]
fn amounts_meet_their_labels_at_any_angle() {
    for degrees in [0.0, 4.0, -11.0, 30.0, 90.0, 180.0, 270.0] {
        let rows = read(&slip(degrees));
        assert_eq!(rows, ["oil filter|11.95", "sump washer|18.95", "TOTAL|30.90"], "{degrees} degrees");
    }
}

#[test]
fn rows_that_part_like_a_fan_are_followed() {
    // Seen from the side, lines that are parallel on paper converge.
    let line = |label, amount, level: f32, degrees: f32| {
        let drop = 600.0 * degrees.to_radians().tan();
        [stretch(label, [200.0, level], degrees), stretch(amount, [800.0, level + drop], degrees)]
    };
    let lines = [
        line("first label", "1.00", 300.0, 4.0),
        line("second label", "2.00", 360.0, 2.5),
        line("third label", "3.00", 420.0, 1.0),
        line("fourth label", "4.00", 480.0, -0.5),
    ];
    let rows = read(&lines.concat());
    assert_eq!(rows, ["first label|1.00", "second label|2.00", "third label|3.00", "fourth label|4.00"]);
}

#[test]
fn boxes_that_lie_a_little_askew_do_not_lead_to_the_row_beside() {
    // Boxes of short words are found a degree or two off, by turns up and down, and the amounts are far away.
    let askew = [2.5, -2.0, 1.5, -2.5, 2.0, -1.5];
    let labels = ["gallons", "price/gal", "sub-total", "mileage", "discount", "coolant"];
    let amounts = ["12.323 gal", "3.539 gal", "143.61", "151,075 mi", "121.84", "143.45 B"];
    let mut found = Vec::new();
    let mut level = 200.0;
    for ((label, amount), off) in labels.iter().zip(amounts).zip(askew) {
        found.push(stretch(label, [150.0, level], off));
        found.push(stretch(amount, [850.0, level], off));
        level += 26.0;
    }
    found.push(stretch("a long line that shows how all of it lies", [400.0, level], 0.0));
    let rows = read(&found);
    let wanted: Vec<String> =
        labels.iter().zip(amounts).map(|(label, amount)| format!("{label}|{amount}")).collect();
    assert_eq!(rows[..6], wanted);
}

#[test]
fn a_stamp_across_the_paper_turns_no_row() {
    let mut found = slip(3.0);
    found.push(stretch("paid with many thanks on this very day", [900.0, 800.0], 35.0));
    assert_eq!(read(&found)[..3], ["oil filter|11.95", "sump washer|18.95", "TOTAL|30.90"]);
}

#[test]
fn what_stands_one_above_the_other_is_two_rows() {
    assert_eq!(
        read(&[stretch("below", [100.0, 112.0], 0.0), stretch("above", [110.0, 100.0], 0.0)]),
        ["above", "below"]
    );
}

#[test]
fn no_text_is_no_row() {
    assert_eq!(rows(&[], (10, 10)), Text::default());
}

#[test]
fn areas_are_shares_of_the_photo() {
    let text = rows(&[stretch("12345", [500.0, 250.0], 0.0)], (1000, 1000));
    let area = text.0[0].0[0].area;
    assert!((area.left - 0.47).abs() < 1e-6 && (area.top - 0.24).abs() < 1e-6, "{area:?}");
    assert!((area.width - 0.06).abs() < 1e-6 && (area.height - 0.02).abs() < 1e-6, "{area:?}");
}
