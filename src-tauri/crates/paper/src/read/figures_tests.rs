//! Numbers in every usual way of writing them.
#![allow(clippy::unwrap_used)]

use super::*;
use crate::read::page::Page;
use crate::read::tests::text;

fn figures(row: &str) -> Vec<Figure> {
    Page::new(&text(row)).lines.remove(0).figures
}

/// The only amount of a row, in hundredths.
#[track_caller]
fn amount(row: &str) -> i64 {
    let all: Vec<Figure> = figures(row).into_iter().filter(Figure::is_amount).collect();
    assert_eq!(all.len(), 1, "{row}: {all:?}");
    all[0].digits
}

#[test]
fn every_usual_way_of_writing_an_amount() {
    for row in [
        "1.234,56",
        "1,234.56",
        "1 234,56",
        "1'234.56",
        "1’234.56",
        "1234,56",
        "1234.56",
        "€1,234.56",
        "1.234,56€",
        "EUR1.234,56",
        "1.234,56 A",
        "1.234,56A",
        "*1.234,56",
        "1.234.56",
        "1,234,56",
        "1234 ,56",
        "1234, 56",
        "1234 , 56",
        "1.Z34,56",
        "I.234,S6",
        "Fr1'234.56",
        "$ 1,234.56 T",
        "1\u{a0}234,56",
    ] {
        assert_eq!(amount(row), 123_456, "{row}");
    }
}

#[test]
fn negative_amounts_and_dashes() {
    for row in ["-12,50", "12,50-", "\u{2212}12.50", "€-12.50", "-€12.50", "12,50- A"] {
        assert_eq!(amount(row), -1250, "{row}");
    }
    for row in ["12.-", "12,-", "12.–", "CHF 12.--"] {
        assert_eq!(amount(row), 1200, "{row}");
    }
    assert_eq!(amount(".50"), 50);
}

#[test]
fn what_is_no_amount() {
    for row in [
        "27.11.26",
        "27.11.2026",
        "12:30",
        "19,00%",
        "19.00 %",
        "42,15 l",
        "12.50mm",
        "HX12.50",
        "1.2.3.4",
        "12,5",
        "1,789",
        "12",
        "99-12.50",
        "1.23,45",
        "12.50/3",
        "01.23.45.67.89",
    ] {
        assert_eq!(
            figures(row).iter().filter(|figure| figure.is_amount()).count(),
            0,
            "{row}: {:?}",
            figures(row)
        );
    }
}

#[test]
fn a_quantity_before_a_price_is_no_group_of_thousands() {
    let two: Vec<i64> = figures("2 | 234,50").iter().map(|figure| figure.digits).collect();
    assert_eq!(two, [2, 23_450]);
    let two: Vec<i64> =
        figures("2x12,50 25,00").iter().filter(|figure| figure.is_amount()).map(|f| f.digits).collect();
    assert_eq!(two, [1250, 2500]);
}

#[test]
fn three_decimals_may_be_thousands() {
    let figure = &figures("123.456 km")[0];
    assert_eq!(
        (figure.thousandths(), figure.whole(), figure.unit.as_str()),
        (Some(123_456), Some(123_456), "km")
    );
    let figure = &figures("0,789")[0];
    assert_eq!((figure.thousandths(), figure.whole()), (Some(789), None));
    assert_eq!(figures("1.234.567")[0].whole(), Some(1_234_567));
    assert_eq!(figures("98'420")[0].whole(), Some(98_420));
}

#[test]
fn mended_figures_say_so() {
    assert!(figures("l2,5O")[0].mended && figures("12 , 50")[0].mended && figures("1.234.56")[0].mended);
    assert!(!figures("12,50")[0].mended);
}
