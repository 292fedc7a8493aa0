//! From claims to paper and back: the printed card is read again by this crate's own reader.

#![allow(clippy::unwrap_used)]

mod demo;

use std::fs;
use std::path::Path;

use card::{SheetPaper, SheetSize, SheetSquare, read, scan};

/// Leaves the sheet beside the build, for whoever wants to look at it.
fn keep(name: &str, bytes: &[u8]) {
    fs::write(Path::new(env!("CARGO_TARGET_TMPDIR")).join(name), bytes).unwrap();
}

#[test]
fn a_printed_card_is_read_back() {
    for visits in [0, 9, 120] {
        let pdf = card::pdf(&demo::sheet(visits), &demo::options()).unwrap();
        keep(&format!("card-{visits}.pdf"), &pdf);
        let texts = scan(&pdf).unwrap();
        assert_eq!(texts.len(), 1, "{visits} visits");
        assert!(texts[0].starts_with("https://card.example/#"));
        assert_eq!(read(&texts[0]).unwrap().claims, demo::claims(visits));
    }
}

#[test]
fn a_card_without_an_address_holds_plain_text() {
    let pdf = card::pdf(&demo::plain_sheet(9), &demo::options()).unwrap();
    keep("card-plain.pdf", &pdf);
    assert!(scan(&pdf).unwrap()[0].starts_with("Wellkept card without an address: Heron"));
}

#[test]
fn the_largest_square_is_read_back_from_the_sheet() {
    let mut sheet = demo::plain_sheet(3);
    let limit = SheetSize::A5.square_limit();
    assert_eq!(limit.version(), 40);
    let square = card::Square::plain(&"Heron 0123456789 ".repeat(136), limit).unwrap();
    assert_eq!(square.version(), 40);
    let SheetSquare::Plain { square: slot, .. } = &mut sheet.square else { panic!() };
    *slot = square;
    let pdf = card::pdf(&sheet, &demo::options()).unwrap();
    keep("card-largest.pdf", &pdf);
    assert_eq!(scan(&pdf).unwrap()[0], "Heron 0123456789 ".repeat(136));
}

const COUNTS: [usize; 5] = [0, 1, 10, 120, 400];

#[test]
fn every_size_holds_a_history_with_modules_large_enough_and_tells_what_it_leaves_out() {
    for (size, visits) in SheetSize::ALL.into_iter().flat_map(|size| COUNTS.map(|visits| (size, visits))) {
        let claims = demo::claims(visits);
        let fitted = card::fit(&claims, &demo::key(), &demo::viewer(), size.square_limit()).unwrap();
        let side = fitted.square.side() + 2 * card::QUIET_ZONE;
        assert!(size.square_width_um() / side >= card::MODULE_MIN_UM, "{size:?}, {visits} visits");
        let kept = fitted.claims.visits.len();
        println!("{size:?}, {visits} visits: {kept} in {:?}", fitted.square);
        assert!(kept >= visits.min(100), "{size:?}, {visits} visits");
        assert_eq!(fitted.claims.visits, claims.visits[visits - kept..], "{size:?}, {visits} visits");
        assert_eq!(fitted.claims.visits_in_book() as usize, visits, "{size:?}, {visits} visits");
    }
}

/// The fullest square of the two-sided sizes and a full one of the others, a common one amid the marks on A4, and one
/// without a visit.
#[test]
fn cards_of_every_size_are_read_back() {
    for size in SheetSize::ALL {
        let many = if size.lists_visits() { 120 } else { 400 };
        for (visits, paper) in [(many, SheetPaper::Own), (10, SheetPaper::A4), (0, SheetPaper::Letter)] {
            let pdf = card::pdf(&demo::sized(visits, size), &demo::printed(size, paper)).unwrap();
            keep(&format!("card-{size:?}-{visits}.pdf"), &pdf);
            let claims = read(&scan(&pdf).unwrap()[0]).unwrap().claims;
            assert_eq!(claims.visits_in_book() as usize, visits, "{size:?} on {paper:?}");
        }
    }
}

/// Long names, long German words and a text that would be code if it were markup, for the eye as much as for the test.
#[test]
fn a_card_with_long_german_texts_is_read_back() {
    let mut sheet = demo::sheet(9);
    sheet.lang = "de".into();
    sheet.car.name = "Großmutters Kombi mit der Anhängerkupplung *und* #panic()".into();
    sheet.car.description = Some("Marrow Heron 1.4 Kombi, Baujahr 2016".into());
    sheet.words.vin = "Fahrzeugidentifizierungsnummer".into();
    sheet.words.first_use = "Erstzulassung".into();
    sheet.next[0].item = "Bremsflüssigkeitswechsel mit Entlüftung und Hauptbremszylinderprüfung".into();
    sheet.visits[0].items = vec!["Klimaanlagenkondensatorkühlrippenreinigung".into(), "Ölwechsel".into()];
    sheet.visits[1].who = "Kraftfahrzeugmeisterbetrieb Ärmelschlupf".into();
    let pdf = card::pdf(&sheet, &demo::options()).unwrap();
    keep("card-german.pdf", &pdf);
    assert_eq!(read(&scan(&pdf).unwrap()[0]).unwrap().claims, demo::claims(9));
}
