//! Arbitrary texts: nothing panics, the same text reads the same, and nothing that cannot be is marked sure.

use proptest::prelude::*;

use super::*;
use crate::read::{Field, KnownShop};

/// Words that the reader knows, figures, and anything else.
fn word() -> impl Strategy<Value = String> {
    let words = [
        "Summe",
        "TOTAL",
        "TTC",
        "EUR",
        "€",
        "$",
        "MwSt",
        "19%",
        "Art.-Nr.",
        "Datum",
        "27.11.2026",
        "03/04/26",
        "12,50",
        "1.234,56",
        "1'2",
        "2 x",
        "x",
        "l",
        "1,789",
        "Diesel",
        "Liter",
        "km-Stand",
        "Bar",
        "Rückgeld",
        "-",
        "12.-",
        ".50",
        "QV",
        "7120",
        "z",
        "5W-30",
        "Subtotal",
        "Rundung",
        "Rabatt",
        "Pos",
        "Menge",
        "Preis",
        "GmbH",
        "DE123456789",
        "9999999999999999999",
        "Nov",
        "0",
        "/",
        ":",
    ];
    prop_oneof![4 => proptest::sample::select(words.to_vec()).prop_map(str::to_owned), 1 => ".{0,12}", 1 => "[0-9OlSB.,'/ -]{1,14}"]
}

fn any_text() -> impl Strategy<Value = Text> {
    let area = (any::<f32>(), any::<f32>(), any::<f32>(), any::<f32>())
        .prop_map(|(left, top, width, height)| Area { left, top, width, height });
    let stretch = (proptest::collection::vec(word(), 0..6), any::<f32>(), area)
        .prop_map(|(words, sure, area)| Stretch { text: words.join(" "), sure, area });
    let row = proptest::collection::vec(stretch, 0..4).prop_map(Row);
    proptest::collection::vec(row, 0..14).prop_map(Text)
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(400))]

    #[test]
    fn no_text_makes_it_panic_and_the_same_text_reads_the_same(text in any_text()) {
        let shops = [KnownShop { name: "Summe Diesel", country: None }];
        let known = Known { currency: "JPY".parse().ok(), shops: &shops, numbers: &["QV 7120", "7120z", ""], ..nothing() };
        let (one, other) = (read(&text, &known), read(&text, &known));
        prop_assert_eq!(format!("{one:?}"), format!("{other:?}"));
    }

    #[test]
    fn nothing_is_sure_of_a_day_ahead(text in any_text()) {
        let receipt = read(&text, &nothing());
        if let Some(Field { value: DayRead::One(day), sure: Sure::Sure, .. }) = receipt.day {
            prop_assert!(day.days_since(today()) <= 1);
        }
    }
}
