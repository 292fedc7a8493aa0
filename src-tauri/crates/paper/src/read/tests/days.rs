//! Days in every usual order, and which of several is the day of the sale.

use super::*;
use crate::read::KnownShop;

#[track_caller]
fn reads_as(row: &str, day: &str) {
    let receipt = read(&text(&format!("Teilehaus Muster\n{row}")), &nothing());
    assert_eq!(one_day(&receipt), day, "{row}: {:?}", receipt.day);
}

#[test]
fn every_usual_form_is_read() {
    for row in [
        "27.11.2026",
        "27/11/26",
        "11/27/2026",
        "2026-11-27",
        "27-NOV-2026",
        "27 nov. 2026",
        "Nov 27, 2026",
        "27. November 2026",
        "27 novembre 2026",
        "27 de noviembre de 2026",
        "27.11.26",
        "27-11-2026",
        "2026/11/27",
        "27 . 11 . 2026",
        "27. 11. 2026",
        "November 27th, 2026",
        "27th November 2026",
        "27NOV2026",
        "27.11.2026 14:05",
        "27.11.2026-14:05",
        "27.11.2026-14:05:10",
        "27.11.202614:05",
        "27.11.202614.05",
        "27.11.202614:05:104/71",
        "27.11.2614:05",
        "27.11.2026/14:05",
        "27.11.2026,14:05",
        "27-11-202614h05",
        "27NOV202614:05",
        "2026-11-2714:05",
        "14:0527.11.2026",
        "2026-11-27T14:05:00",
        "Fr 27.11.2026",
        "Datum:27.11.2026",
        "vom 27.11.2026",
        "Fecha 27-11-26",
        "27/nov/2026",
        "27.Nov.2026",
        "2026.11.27",
        "20261127 14:05",
        "20261127T14:05:00",
        "Datum 20261127 14:05:10",
    ] {
        reads_as(row, "2026-11-27");
    }
    reads_as("13. 0ktober 2026", "2026-10-13");
    reads_as("13-5EP-2026", "2026-09-13");
    reads_as("3novembre 2026", "2026-11-03");
    reads_as("1er mars 2026", "2026-03-01");
    reads_as("3 août 2026", "2026-08-03");
    reads_as("9 de enero de 2026", "2026-01-09");
    reads_as("5. März 2026", "2026-03-05");
    reads_as("5 Mrz 2026", "2026-03-05");
    reads_as("14 Dez 2025", "2025-12-14");
    reads_as("14 dic. 2025", "2025-12-14");
}

#[test]
fn misread_letters_are_mended_and_never_sure() {
    for row in ["27.11.2O26", "Z7.11.2026", "27.l1.2026", "27.11,2026", "27 Novernber 2026"] {
        reads_as(row, "2026-11-27");
    }
    let receipt = read(&text("Shop\nDatum 27.11.2O26 14:05"), &nothing());
    assert!(receipt.day.unwrap().sure < Sure::Sure);
}

#[test]
fn what_is_no_day_is_none() {
    for row in [
        "99.99.2026",
        "31.02.2026",
        "1.234.567",
        "12:30:45",
        "Tel 01 23 45 67 89",
        "205/55 R16",
        "+49 27 11 2026",
        "27.11.1926",
        "27.11.2026/14",
        "4:0527.11.2",
        "20261127",
        "20261327 14:05",
        "4420261127 14:05",
        "44-20261127 14:05",
    ] {
        reads_as(row, "");
    }
}

#[test]
fn a_day_in_eight_digits_is_no_part_number() {
    let receipt = read(&text("Teilehaus Muster\nBon 20261127 14:05\nOelfilter OF 12-44 8,90"), &nothing());
    let numbers: Vec<&str> = receipt.numbers.iter().map(|read| read.value.as_str()).collect();
    assert_eq!((one_day(&receipt).as_str(), numbers.as_slice()), ("2026-11-27", &["OF 12-44"][..]));
}

#[test]
fn an_ambiguous_day_is_asked_about() {
    let receipt = read(&text("Corner Shop\nSale 03/04/26 10:12"), &nothing());
    assert_eq!(one_day(&receipt), "2026-04-03 or 2026-03-04");
    assert_eq!(receipt.day.unwrap().sure, Sure::Doubtful);
    // The household's own order is offered first.
    let known = Known { country: Some(country("US")), ..nothing() };
    assert_eq!(one_day(&read(&text("Corner Shop\nSale 03/04/26 10:12"), &known)), "2026-03-04 or 2026-04-03");
    // Of two readings one lies ahead.
    reads_as("Sale 03/12/26", "2026-03-12");
    reads_as("04/04/26", "2026-04-04");
}

#[test]
fn the_shops_country_decides_an_ambiguous_day() {
    for (code, day) in
        [("US", "2026-03-04"), ("GB", "2026-04-03"), ("DE", "2026-04-03"), ("CA", "2026-04-03 or 2026-03-04")]
    {
        let shops = [KnownShop { name: "Corner Shop", country: Some(country(code)) }];
        let receipt = read(&text("CORNER SHOP\n03/04/26 10:12"), &Known { shops: &shops, ..nothing() });
        assert_eq!(one_day(&receipt), day, "{code}");
        assert_eq!(receipt.shop.unwrap().sure, Sure::Sure);
    }
}

#[test]
fn what_is_printed_on_it_decides_as_well() {
    for (rows, day) in [
        ("Shop\n03/04/26\nTOTAL | £12.00\nCARD | £12.00", "2026-04-03"),
        ("Shop\n03/04/26\nTOTAL | 12,00 €\nCB | 12,00 €", "2026-04-03"),
        ("Shop\nVAT No IE1234567T\n03/04/26", "2026-04-03"),
        ("Shop\nwww.example.co.uk\n03/04/26", "2026-04-03"),
        ("Shop\n+33 1 23 45 67 89\n03/04/26", "2026-04-03"),
        ("Shop\n03.04.26", "2026-04-03"),
        ("Shop\nNowhere, KS 00000\n03/04/26", "2026-03-04"),
        ("Shop\n03/04/26\nSALES TAX | 0.80\nTOTAL | $12.00", "2026-03-04"),
        ("MOTOR SHOP\n03/04/26\nOil filter | $12.50\nTOTAL | $12.50", "2026-03-04 or 2026-04-03"),
        ("MOTOR SHOP\n03/04/26\nOil filter | 12.50\nTOTAL | 12.50", "2026-04-03 or 2026-03-04"),
        ("Filter shop\n03/04/26\nUSt-IdNr. DE123456789\nTotal | 12.50", "2026-04-03"),
        // A dollar alone may be another country's, and only says which reading is the likelier.
        ("Shop\n03/04/26\nTOTAL | $12.00", "2026-03-04 or 2026-04-03"),
    ] {
        let receipt = read(&text(rows), &nothing());
        assert_eq!(one_day(&receipt), day, "{rows}");
    }
}

#[test]
fn the_day_of_the_sale_is_told_from_others() {
    for (rows, day) in [
        ("Lieferdatum 20.11.2026\nRechnungsdatum 25.11.2026\nFällig am 09.12.2026", "2026-11-25"),
        ("Warranty until 25/11/2027\n25/11/2026 14:01\nReturns until 25/12/2026", "2026-11-25"),
        ("Garantie jusqu'au 25/11/2027\nle 25/11/2026", "2026-11-25"),
        ("Imprimé le 27/11/2026\nDate facture 25/11/2026", "2026-11-25"),
        ("Fecha de vencimiento 25/12/2026\nFecha 25/11/2026", "2026-11-25"),
        ("Rechnungsdatum 25.11.2026 | Lieferdatum 24.11.2026", "2026-11-25"),
        ("Datum      | Fällig am\n25.11.2026 | 09.12.2026", "2026-11-25"),
        ("Order date 20 Nov 2026\nInvoice date 25 Nov 2026", "2026-11-25"),
        ("Nächste HU 11/2027\n25.11.2026 11:30", "2026-11-25"),
    ] {
        assert_eq!(one_day(&read(&text(&format!("Muster\n{rows}")), &nothing())), day, "{rows}");
    }
}

#[test]
fn a_day_ahead_is_never_sure() {
    let receipt = read(&text("Muster\nDatum 05.12.2026 14:05"), &nothing());
    assert_eq!(one_day(&receipt), "2026-12-05");
    assert_eq!(receipt.day.unwrap().sure, Sure::Doubtful);
    // Tomorrow is only a difference of time zones.
    let receipt = read(&text("Muster\nDatum 28.11.2026 01:05"), &nothing());
    assert_eq!(receipt.day.unwrap().sure, Sure::Sure);
}

#[test]
fn two_days_without_a_label_are_a_doubt() {
    let receipt = read(&text("Muster\n25.11.2026\n24.11.2026"), &nothing());
    assert_eq!(receipt.day.unwrap().sure, Sure::Doubtful);
    // The same day twice is none, and letters of little confidence keep a lone one from being sure.
    let receipt = read(&text("Muster\n25.11.2026\nKarte 25.11.2026"), &nothing());
    assert_eq!(receipt.day.unwrap().sure, Sure::Sure);
    let receipt = read(&text_as_sure_as("Muster\nDatum 25.11.2026", 0.7), &nothing());
    assert_eq!(receipt.day.unwrap().sure, Sure::Likely);
}

#[test]
fn a_lost_space_before_the_time_and_a_digit_in_a_month_are_no_matter() {
    let day = |row: &str| one_day(&read(&text(&format!("Laden\nSumme | 1,00 EUR\n{row}")), &nothing()));
    assert_eq!(day("14.11.202611:20"), "2026-11-14");
    assert_eq!(day("14.11.2611:20"), "2026-11-14");
    assert_eq!(day("14 NOV 202610:53:39"), "2026-11-14");
    assert_eq!(day("14 de JUNI0 de 2026 15:36"), "2026-06-14");
}
