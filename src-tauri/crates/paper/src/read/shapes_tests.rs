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
