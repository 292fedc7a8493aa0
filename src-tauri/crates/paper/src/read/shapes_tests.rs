//! Numbers of parts, and what only looks like them.

use super::*;
use crate::read::page::Page;
use crate::read::read;
use crate::read::tests::{nothing, text};

fn stands(text_of_number: &str) -> bool {
    let page = Page::new(&text(text_of_number));
    let line = &page.lines[0];
    is_number(line, &(0..line.chars.len()), text_of_number)
}

#[test]
fn shapes_that_makers_use() {
    for number in [
        "QV 7120 z",
        "QV7120Z",
        "0 773 458 126",
        "5512-030-05",
        "BR 4410.22",
        "SC-99-1200/3",
        "7Z4.118.220QX",
        "V 812/97",
        "71204-KXQD3",
        "07P 118 220 N",
        "6X0 118 220 JS",
        "20415.AH",
        "20415118CL",
        "TQHE2W-11",
    ] {
        assert!(stands(number), "{number}");
    }
}

#[test]
fn what_only_looks_like_a_number() {
    // GTIN: the example of the GS1 General Specifications, 9506000134352. IBAN: the examples of the SWIFT registry of
    // ISO 13616. Card: the example number of ISO/IEC 7812 checks in common use, 4111 1111 1111 1111. From memory.
    for other in [
        "9506000134352",
        "DE89370400440532013000",
        "GB29 NWBK 6016 1331 9268 19",
        "FR14 2004 1010 0505 0001 3M02 606",
        "4111 1111 1111 1111",
        "27.11.2026",
        "2026-11-27",
        "2019-2023",
        "5W-30",
        "75W90",
        "205/55R16",
        "205/55 R16",
        "P21/5W",
        "PY21W",
        "12V55W",
        "500ml",
        "74Ah",
        "M12x1,5",
        "12x17",
        "1.6TDI",
        "R1234yf",
        "504.00/507.00",
        "229.51",
        "WSS-M2C913-D",
        "14h55",
        "A14x20 CU",
        "PX26d",
        "W2.1x9.5d",
        "1.829/L",
        "3.459/gal",
        "50Oml",
        "**** **** 1234",
        "DE123456789",
        "ATU12345678",
        "GB123456789",
        "CHE123456789",
    ] {
        assert!(!stands(other), "{other}");
    }
}

#[test]
fn check_digits_are_checked() {
    assert!(is_gtin("9506000134352") && !is_gtin("9506000134353"));
    assert!(is_iban("DE89370400440532013000") && !is_iban("DE88370400440532013000"));
    assert!(is_card("4111111111111111") && !is_card("4111111111111112"));
}

#[test]
fn only_goods_and_labels_give_numbers() {
    let receipt = read(
        &text(
            "
            Laden Muster GmbH
            Filiale A4471B Kasse 3 Bon-Nr. X99812
            USt-IdNr. DE123456789
            Kunden-Nr. KD-88123
            Ölfilter QV 7120 z 4 x 8,00 | 32,00
            Öl ACEA C3 API SN 5W-30 | 40,00
            9506000134352 Lampe H7 12V 55W | 5,00
            Bremsbelag OE: 44.10-77 B | 20,00
            Summe | 97,00
            Terminal T1234567 Trace-Nr. 445566 AID A0000000990001
            IBAN DE89 3704 0044 0532 0130 00
            Kennzeichen XY-AB 1234 Fahrgestell-Nr. WXXZZZ1KZ8W000001
            ",
        ),
        &nothing(),
    );
    let numbers: Vec<&str> = receipt.numbers.iter().map(|number| number.value.as_str()).collect();
    assert_eq!(numbers, ["QV 7120 z", "44.10-77 B"]);
}

#[track_caller]
fn numbers_on(row: &str) -> Vec<String> {
    let receipt = read(&text(&format!("Laden Muster\n{row} | 32,50\nSumme | 32,50")), &nothing());
    receipt.numbers.into_iter().map(|number| number.value).collect()
}

#[test]
fn behind_the_grade_and_the_size_of_a_can_a_number_may_follow() {
    for (row, number) in [
        ("OEL 5W30 4L TX-4410", "TX-4410"),
        ("5W-30 4L TX-4410", "TX-4410"),
        ("Motoröl 5W-30 C3 5 Liter TX 4410 B", "TX 4410 B"),
        ("Aceite 5W-40 4x1L 4410-22", "4410-22"),
        ("Huile ACEA C3 5W-30 5000ml 0 773 458 126", "0 773 458 126"),
        ("Oil 5W-30 4L 0W-44107", "0W-44107"),
        ("TX-4410 Motoröl 5W-30 4L", "TX-4410"),
    ] {
        assert_eq!(numbers_on(row), [number], "{row}");
    }
}

#[test]
fn a_grade_and_what_it_meets_are_no_numbers() {
    for row in [
        "Motoröl 5W-30 4L 0W-16",
        "Motoröl SAE 75W-90 GL-4 1 L",
        "Motoröl 5W-30 VW 504.00/507.00 5L",
        "Motoröl 5W-30 5L VW 504.00/507.00",
        "Motoröl 5W-30 5L RN0720",
        "Motoröl 5W-30 5L WSS-M2C913-D",
        "Motoröl 5W-30 5L ACEA A12345",
        "Motoröl 0W20 B71 2290 5L",
    ] {
        assert_eq!(numbers_on(row), [""; 0], "{row}");
    }
}

#[test]
fn a_day_with_its_time_glued_on_is_no_number() {
    for row in [
        "12.03.202614:55",
        "12/03/2026-14:55:10",
        "12.03.202614.55",
        "12-03-202614h55",
        "12MAR202614:55",
        "2026-03-1214:55",
        "14:5512.03.2026",
        "12.03.2026 14:55Uhr",
        "12.03.202614:55Uhr",
    ] {
        let rows =
            format!("Laden Muster\nÖlfilter QV 7120 z | 12,50\n{row} | K2\nFett | 2,50\nSumme | 15,00");
        let receipt = read(&text(&rows), &nothing());
        let numbers: Vec<&str> = receipt.numbers.iter().map(|number| number.value.as_str()).collect();
        assert_eq!(numbers, ["QV 7120 z"], "{row}");
        assert_eq!(crate::read::tests::one_day(&receipt), "2026-03-12", "{row}");
    }
}
