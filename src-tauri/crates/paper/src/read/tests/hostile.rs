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
fn marks_that_nobody_sees_and_wide_letters_change_nothing() {
    let plain =
        "Teilehaus Muster\n12.03.2026 14:55\nÖlfilter QV 7120 | 12,50\nSumme | 12,50 EUR\nBar | 12,50";
    let marked = "\u{202e}Teile\u{200b}haus Muster\u{202c}\n\u{200f}12.\u{ad}03.2026 14:55\n\
        \u{2066}Ölfilter Q\u{200d}V 7120\u{2069} | \u{feff}12\u{200e},50\nSum\u{ad}me | １２，５０ EUR\nBar | 12,５0";
    let (plain, marked) = (read(&text(plain), &nothing()), read(&text(marked), &nothing()));
    let fields = |receipt: &Receipt| {
        let numbers: Vec<String> = receipt.numbers.iter().map(|number| number.value.clone()).collect();
        let shop = receipt.shop.as_ref().map(|shop| shop.value.clone());
        (shop, one_day(receipt), receipt.total.map(|total| (total.value, total.sure)), numbers)
    };
    assert_eq!(fields(&marked), fields(&plain));
    assert_eq!(total_sure(&plain), Some(Sure::Sure));
}

#[test]
fn where_nothing_was_to_be_paid_no_other_amount_is_offered() {
    let rows = "Laden Muster\n12.03.2026 14:55\nÖlfilter QV 7120";
    for end in [
        "-12,50\nSumme | -12,50 EUR\nAuszahlung bar | 12,50",
        "-12,50\nTOTAL | -£12.50\nREFUND TO CARD | £12.50",
        "12,50\nGutschein | -12,50\nSumme | 0,00 EUR\nBar | 0,00",
    ] {
        assert_eq!(read(&text(&format!("{rows} | {end}")), &nothing()).total, None, "{end}");
    }
    let partly = format!("{rows} | 32,50\nRetoure | -12,50\nSumme | 20,00 EUR\nBar | 20,00");
    assert_eq!(amount(read(&text(&partly), &nothing()).total.map(|total| total.value)), "20.00 EUR");
}

#[test]
fn two_totals_or_two_days_are_not_sure() {
    let rows = "Laden Muster\n12.03.2026 14:55\nÖlfilter QV 7120 | 12,50\nSumme | 12,50 EUR";
    let two = read(&text(&format!("{rows}\nSumme | 13,50")), &nothing());
    assert_eq!(total_sure(&two), Some(Sure::Likely));
    let days = read(&text(&format!("{rows}\n14.03.2026 09:10")), &nothing());
    assert_eq!((one_day(&days).as_str(), days.day.unwrap().sure), ("2026-03-12", Sure::Doubtful));
    let slip = "girocard\n12.03.2026 14:57:33\nBetrag EUR 12,50\nTerminal 1234";
    let slipped = read(&text(&format!("{rows}\n{slip}")), &nothing());
    assert_eq!((one_day(&slipped).as_str(), slipped.day.unwrap().sure), ("2026-03-12", Sure::Sure));
    assert_eq!((slipped.total.unwrap().value.minor, total_sure(&slipped)), (1_250, Some(Sure::Sure)));
}

#[test]
fn an_hour_that_no_day_has_makes_no_time() {
    for (row, sure) in [("12.03.2026 23:59", Sure::Sure), ("12.03.2026 24:00", Sure::Likely)] {
        assert_eq!(read(&text(&format!("Laden Muster\n{row}")), &nothing()).day.unwrap().sure, sure, "{row}");
    }
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
        "12.03.202614:55:10".repeat(3_000),
        "Rabatt -9999999999,99\n".repeat(2_000),
        "Säule 1 Diesel 42,15 l 1,789 EUR/l 75,41 -9999999999,99\n".repeat(1_000),
        "Netto 9999999999,99 MwSt 19% 9999999999,99\nBar 9999999999,99\nRückgeld 0,01\n".repeat(600),
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
