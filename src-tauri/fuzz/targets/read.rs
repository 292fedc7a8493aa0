//! Any text at all is a receipt of some kind: rows by line, stretches by tab, each where its letters would stand.
#![no_main]

use paper::read::{Country, Known, read};
use paper::{Area, Row, Stretch, Text};
use units::Day;

/// How wide and high a letter is, in shares of the photo.
const LETTER: (f32, f32) = (0.02, 0.02);

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| {
    let Some((kind, letters)) = bytes.split_first() else { return };
    let Ok(today) = Day::from_ymd(2026, 6, 1) else { return };
    let country = ["DE", "GB", "US", "FR"].get(usize::from(kind % 5)).and_then(|code| Country::new(code));
    let currency = ["EUR", "GBP", "USD"].get(usize::from(kind / 5 % 4)).and_then(|code| code.parse().ok());
    let known = Known { currency, country, numbers: &["HU 718/1k", "0986 AF 1041"], ..Known::nothing(today) };
    let sure = if kind & 128 == 0 { 0.98 } else { 0.6 };
    let text = String::from_utf8_lossy(letters);
    let rows = (0u16..).zip(text.lines()).filter_map(|(at, line)| row(line, f32::from(at) * LETTER.1, sure));
    let receipt = read(&Text(rows.collect()), &known);
    assert!(receipt.items.len() <= 2_000);
});

fn row(line: &str, top: f32, sure: f32) -> Option<Row> {
    let mut left = 0.0;
    let mut stretches = Vec::new();
    for part in line.split('\t') {
        let width = part.chars().count().min(1_000);
        let width = LETTER.0 * f32::from(u16::try_from(width).unwrap_or(u16::MAX));
        if !part.is_empty() {
            let area = Area { left, top, width, height: LETTER.1 * 0.8 };
            stretches.push(Stretch { text: part.to_owned(), sure, area });
        }
        left += width + LETTER.0;
    }
    (!stretches.is_empty()).then_some(Row(stretches))
}
