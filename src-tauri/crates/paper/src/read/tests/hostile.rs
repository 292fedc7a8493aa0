//! Texts that no receipt has: nothing panics, and nothing takes long.

use super::*;

#[test]
fn nothing_gives_nothing() {
    for text in [Text::default(), Text(vec![Row(Vec::new())]), text("   "), text("|"), text("\u{0}\u{1}")] {
        let receipt = read(&text, &nothing());
        assert_eq!((receipt.shop, receipt.day, receipt.total), (None, None, None));
        assert!(receipt.items.is_empty() && receipt.numbers.is_empty() && receipt.checks.is_empty());
    }
}

#[test]
fn areas_and_confidences_that_are_no_numbers_do_no_harm() {
    let area = Area { left: f32::NAN, top: f32::INFINITY, width: f32::NEG_INFINITY, height: f32::NAN };
    let row = |text: &str| Row(vec![Stretch { text: text.to_owned(), sure: f32::NAN, area }]);
    let receipt =
        read(&Text(vec![row("Laden"), row("27.11.2026"), row("Teil 12,50"), row("Summe 12,60")]), &nothing());
    assert_eq!(receipt.total.unwrap().sure, Sure::Doubtful);
}

#[test]
fn what_lies_beyond_the_bounds_is_not_looked_at() {
    let mut rows = "x\n".repeat(2_000);
    rows.push_str("Summe EUR 12,50");
    assert_eq!(read(&text(&rows), &nothing()).total, None);
    let long = format!("{}\nSumme EUR 12,50", "x ".repeat(32 * 1024));
    assert_eq!(read(&text(&long), &nothing()).total, None);
}

#[test]
fn large_texts_are_read_within_bounds() {
    let samples = [
        "Summe 12,50 ".repeat(5_000),
        "1,11\n".repeat(2_000),
        "Teil 2 x 1,11 2,22\n".repeat(2_000),
        "27.11.2026 ".repeat(6_000),
        "27.11.2026 14:05\n".repeat(2_000),
        "QV 7120 z | 0 773 458 | ".repeat(2_000),
        "Art.-Nr. QV 7120 z 12,50\n".repeat(2_000),
        "Diesel 42,15 l 1,789 75,41\n".repeat(2_000),
        "MwSt 19% 1,00 2,00 3,00\n".repeat(2_000),
        "Gesamtbetrug Rechnungsbetrug ".repeat(2_000),
        "a ".repeat(32_000),
        "9".repeat(65_000),
        "9.".repeat(32_000),
        "Summe\n".repeat(2_000),
    ];
    for sample in samples {
        // Work that grew with the square of a text would not end here before anyone looked for the reason.
        let receipt = read(&text_of(&sample), &nothing());
        assert!(receipt.items.len() <= 2_000, "{} lines of {}", receipt.items.len(), &sample[..20]);
    }
}

fn text_of(sample: &str) -> Text {
    let area = Area { left: 0.0, top: 0.0, width: 1.0, height: 0.1 };
    let stretch = |text: &str| Stretch { text: text.to_owned(), sure: 0.9, area };
    Text(sample.lines().map(|row| Row(row.split('|').map(stretch).collect())).collect())
}
