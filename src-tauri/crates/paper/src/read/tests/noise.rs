//! Receipts as a reader of letters leaves them: letters for digits, lost and added spaces, lost signs.

use super::*;
use crate::read::KnownShop;

#[test]
fn letters_in_place_of_digits() {
    let receipt = reads(
        "
        TEILEHAUS SANDBERG
        Datum 14.O7.2026 16:2O
        Bremsfl0ssigkeit BF-4410 | l2,5O
        T0TAL EUR | l2,5O
        EC-KARTE | 12,50
        ",
        &nothing(),
        &Expected {
            shop: "TEILEHAUS SANDBERG",
            day: "2026-07-14",
            total: "12.50 EUR",
            items: &[("Bremsfl0ssigkeit BF-4410", "", "", "12.50", "BF-4410")],
            numbers: &["BF-4410"],
            ..Expected::default()
        },
    );
    assert!(receipt.day.unwrap().sure < Sure::Sure);
}

#[test]
fn amounts_with_spaces_around_their_sign() {
    reads(
        "
        Autoteile Kiefernweg
        03.06.2026
        Glühlampe | 3 , 50
        Sicherung | 2, 40
        GESAMTBETRAG | 5 ,90
        Bar | 10,00
        Rückgeld | 4,10
        ",
        &nothing(),
        &Expected {
            shop: "Autoteile Kiefernweg",
            day: "2026-06-03",
            total: "5.90 EUR",
            items: &[("Glühlampe", "", "", "3.50", ""), ("Sicherung", "", "", "2.40", "")],
            ..Expected::default()
        },
    );
}

#[test]
fn words_that_lost_their_space_or_a_letter() {
    reads(
        "
        Recambios La Vega
        Fecha:05/10/2026
        Correa trapecial CT-1830 | 14,20
        TOTALAPAGAR 14,20EUR
        TARJETA 14,20
        ",
        &nothing(),
        &Expected {
            shop: "Recambios La Vega",
            day: "2026-10-05",
            total: "14.20 EUR",
            items: &[("Correa trapecial CT-1830", "", "", "14.20", "CT-1830")],
            numbers: &["CT-1830"],
            ..Expected::default()
        },
    );
    for label in ["Gesamtbetrog", "GESAMTBETRA6 EUR", "Gesamt betrag", "GesamtbetragEUR", "Rechnungsbetrsg"] {
        let receipt = read(&text(&format!("Laden\nÖlfilter | 8,00\n{label} 9,99\nBar 9,99")), &nothing());
        assert_eq!(amount(receipt.total.map(|total| total.value)), "9.99 EUR", "{label}");
    }
}

#[test]
fn a_lost_decimal_sign_is_found_again_only_where_the_lines_say_so() {
    for total in ["4250", "42 50"] {
        let rows = format!("Laden\n27.11.2026\nÖlfilter | 12,50\nMotoröl | 30,00\nSUMME EUR | {total}");
        let receipt = read(&text(&rows), &nothing());
        assert_eq!(amount(receipt.total.map(|total| total.value)), "42.50 EUR", "{total}");
        assert_eq!(total_sure(&receipt), Some(Sure::Likely));
    }
    let receipt =
        read(&text("Laden\n27.11.2026\nÖlfilter | 12,50\nMotoröl | 31,00\nSUMME EUR | 4250"), &nothing());
    assert_ne!(total_sure(&receipt), Some(Sure::Sure));
}

#[test]
fn a_misread_total_gives_way_to_a_confirmed_payment() {
    let receipt = read(
        &text("Laden\n27.11.2026\nÖlfilter | 12,50\nMotoröl | 30,00\nSUMME EUR | 48,50\nGirocard | 42,50"),
        &nothing(),
    );
    assert_eq!(amount(receipt.total.map(|total| total.value)), "42.50 EUR");
    assert_eq!(total_sure(&receipt), Some(Sure::Likely));
}

#[test]
fn numbers_that_are_known_are_found_through_confusions() {
    let numbers = ["OJ 7120-D1", "0 773 4B7"];
    let known = Known { numbers: &numbers, ..nothing() };
    let receipt =
        read(&text("Laden\nÖlfilter 0J7120DI | 8,00\nPumpe 0773.4B7 | 9,00\nSumme | 17,00"), &known);
    let found: Vec<(&str, Sure)> = receipt.numbers.iter().map(|n| (n.value.as_str(), n.sure)).collect();
    // One that differs in letters that look alike is offered as it was known, and one that is the same as printed.
    assert_eq!(found, [("OJ 7120-D1", Sure::Likely), ("0773.4B7", Sure::Sure)]);
}

#[test]
fn a_known_shop_is_named_as_the_household_names_it() {
    let shops = [KnownShop { name: "Teilehaus Sandberg", country: Some(country("DE")) }];
    let known = Known { shops: &shops, ..nothing() };
    for (printed, sure) in [
        ("TEILEHAUS SANDBERG GmbH", Sure::Sure),
        ("TEILEHAUSSANDBERG", Sure::Sure),
        ("Tellehaus Sandborg", Sure::Likely),
    ] {
        let receipt = read(&text(&format!("Willkommen\n{printed}\n27.11.2026")), &known);
        let shop = receipt.shop.unwrap();
        assert_eq!((shop.value.as_str(), shop.sure), ("Teilehaus Sandberg", sure), "{printed}");
    }
}

#[test]
fn low_confidence_is_carried_on() {
    let rows = "Laden\n27.11.2026\nÖlfilter QV 7120 | 12,50\nSUMME EUR | 12,90";
    let receipt = read(&text_as_sure_as(rows, 0.6), &nothing());
    assert_eq!(total_sure(&receipt), Some(Sure::Doubtful));
    assert_eq!(receipt.numbers[0].sure, Sure::Doubtful);
}

#[test]
fn a_field_says_where_it_stands() {
    let receipt = read(&text("Laden\n27.11.2026 14:05\nÖlfilter | 12,50\nSUMME EUR 12,50"), &nothing());
    let area = receipt.total.unwrap().area;
    // Row 3 of the drawing, letters 10 to 15 of the row, each 1/60 wide.
    assert!((area.top - 3.0 / 60.0).abs() < 1e-6 && (area.left - 10.0 / 60.0).abs() < 1e-6, "{area:?}");
    assert!((area.width - 5.0 / 60.0).abs() < 1e-6, "{area:?}");
}

#[test]
fn a_sign_of_multiplication_is_an_x_wherever_it_stands() {
    let rows = "Laden Muster\n2 × 4,00 Ölfilter HU 0151 × | 8,00\nSumme | 8,00";
    let receipt = read(&text(rows), &nothing());
    assert_eq!(receipt.items[0].quantity.map(units::Quantity::number).as_deref(), Some("2"));
    assert_eq!(receipt.numbers[0].value, "HU 0151 x");
}
