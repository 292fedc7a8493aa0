//! Receipts from Germany, Austria and Switzerland.

use super::*;

#[test]
fn a_till_receipt_with_labelled_numbers_below_the_articles() {
    let receipt = reads(
        "
        TEILEMARKT NORDHOF GMBH
        Musterweg 12
        99998 Beispielstadt
        Tel. 01234 / 567890
        USt-IdNr. DE123456789
        Datum 27.11.2026 | 14:32
        Bon-Nr. 004711 Kasse 3
        EUR
        Ölfilter | 8,90 A
        Art.-Nr. QV 7120 z
        Motoröl 5W-30 5 L | 42,50 A
        Art.-Nr. 5512-030-05
        Dichtring 2 x 0,80 | 1,60 A
        Summe EUR | 53,00
        Gegeben bar | 60,00
        Rückgeld | 7,00
        MwSt 19,00% | Netto 44,54 | MwSt 8,46 | Brutto 53,00
        Vielen Dank für Ihren Einkauf
        ",
        &nothing(),
        &Expected {
            shop: "TEILEMARKT NORDHOF GMBH",
            day: "2026-11-27",
            total: "53.00 EUR",
            taxes: &[(1900, "8.46")],
            items: &[
                ("Ölfilter", "", "", "8.90", "QV 7120 z"),
                ("Motoröl 5W-30 5 L", "", "", "42.50", "5512-030-05"),
                ("Dichtring", "2", "0.80", "1.60", ""),
            ],
            numbers: &["QV 7120 z", "5512-030-05"],
            ..Expected::default()
        },
    );
    assert_eq!(total_sure(&receipt), Some(Sure::Sure));
    assert_eq!(receipt.day.map(|day| day.sure), Some(Sure::Sure));
    assert_eq!(check(&receipt, CheckKind::Lines), Some((true, "53.00".into(), "53.00".into())));
    assert_eq!(check(&receipt, CheckKind::Paid), Some((true, "53.00".into(), "53.00".into())));
    assert_eq!(check(&receipt, CheckKind::NetAndTax), Some((true, "53.00".into(), "53.00".into())));
}

#[test]
fn an_invoice_with_a_table() {
    let receipt = reads(
        "
        Autoteile Birkenau KG
        Rechnung | Nr. 2026-00417
        Rechnungsdatum: 03.04.2026
        Fällig am: 17.04.2026
        Kunden-Nr.: 10822
        Pos | Art.-Nr.     | Bezeichnung        | Menge | Einzelpreis | Gesamt
        1   | BR 4410.22   | Bremsbelagsatz     | 1     | 38,90       | 38,90
        2   | SC-99-1200/3 | Bremsscheibe       | 2     | 41,25       | 82,50
        3   | 770411       | Bremsenreiniger    | 3     | 3,49        | 10,47
        Nettobetrag | 110,81
        MwSt. 19 % | 21,06
        Gesamtbetrag | 131,87
        Zahlbar bis 17.04.2026 ohne Abzug
        IBAN DE89 3704 0044 0532 0130 00
        ",
        &Known { currency: "EUR".parse().ok(), ..nothing() },
        &Expected {
            shop: "Autoteile Birkenau KG",
            day: "2026-04-03",
            total: "131.87 EUR",
            taxes: &[(1900, "21.06")],
            items: &[
                ("BR 4410.22 Bremsbelagsatz", "1", "38.90", "38.90", "BR 4410.22"),
                ("SC-99-1200/3 Bremsscheibe", "2", "41.25", "82.50", "SC-99-1200/3"),
                ("770411 Bremsenreiniger", "3", "3.49", "10.47", "770411"),
            ],
            numbers: &["BR 4410.22", "SC-99-1200/3", "770411"],
            ..Expected::default()
        },
    );
    assert_eq!(total_sure(&receipt), Some(Sure::Sure));
    // The lines include the tax: 38.90 + 82.50 + 10.47 = 131.87.
    assert_eq!(check(&receipt, CheckKind::Lines), Some((true, "131.87".into(), "131.87".into())));
}

#[test]
fn an_austrian_receipt_with_quantity_rows_below() {
    reads(
        "
        Ersatzteilhandel Almgrund GesmbH
        Beispielgasse 7, 1999 Probestadt
        UID: ATU12345678
        Beleg-Nr: 88123
        27.11.26 09:15
        Zündkerze NX-6071
        4 Stk x 6,90 | 27,60 B
        Luftfilter LQ 33812
        1 Stk x 14,20 | 14,20 B
        Zwischensumme | 41,80
        Rabatt 10% | -4,18
        Zu zahlen EUR | 37,62
        Bankomat Karte | 37,62
        B 20% MwSt von 31,35 | 6,27
        ",
        &nothing(),
        &Expected {
            shop: "Ersatzteilhandel Almgrund GesmbH",
            day: "2026-11-27",
            total: "37.62 EUR",
            taxes: &[(2000, "6.27")],
            items: &[
                ("Zündkerze NX-6071", "4", "6.90", "27.60", "NX-6071"),
                ("Luftfilter LQ 33812", "1", "14.20", "14.20", "LQ 33812"),
            ],
            numbers: &["NX-6071", "LQ 33812"],
            ..Expected::default()
        },
    );
}

#[test]
fn a_swiss_receipt_with_apostrophes_and_rounding() {
    let receipt = reads(
        "
        Garage Musterfluh AG
        CHE-123.456.789 MWST
        Datum: 12. Oktober 2026
        Km-Stand: 98'420
        Winterreifen 205/55 R16 91V
        4 x 289.90 | 1'159.60
        Montage | 80.02
        Total | 1'239.62
        Rundung | -0.02
        Total CHF | 1'239.60
        TWINT | 1'239.60
        inkl. 8.1% MWST | 92.88
        ",
        &nothing(),
        &Expected {
            shop: "Garage Musterfluh AG",
            day: "2026-10-12",
            total: "1239.60 CHF",
            taxes: &[(810, "92.88")],
            items: &[
                ("Winterreifen 205/55 R16 91V", "4", "289.90", "1159.60", ""),
                ("Montage", "", "", "80.02", ""),
            ],
            odometer: "98420 km",
            ..Expected::default()
        },
    );
    assert_eq!(receipt.currency.map(|currency| currency.value.code()), Some("CHF"));
}

#[test]
fn an_amount_on_the_row_below_its_label() {
    let receipt = reads(
        "
        KFZ-BEDARF LINDENECK
        14.09.2026 17:41
        Scheibenwischer WB-550
        | 19,95
        ZU ZAHLEN
        | 19,95 €
        EC-Karte
        | 19,95 €
        ",
        &nothing(),
        &Expected {
            shop: "KFZ-BEDARF LINDENECK",
            day: "2026-09-14",
            total: "19.95 EUR",
            items: &[("Scheibenwischer WB-550", "", "", "19.95", "WB-550")],
            numbers: &["WB-550"],
            ..Expected::default()
        },
    );
    assert_eq!(total_sure(&receipt), Some(Sure::Sure));
}

#[test]
fn a_workshop_invoice_with_a_reading_and_the_next_service() {
    reads(
        "
        Werkstatt Rosenau
        Rechnung Nr. 5521 vom 02.02.2026
        Kennzeichen XX-YY 123
        Kilometerstand: 123.456 km
        Nächster Service bei 138.456 km
        Arbeitslohn Inspektion | 120,00
        Pollenfilter CF-2210K | 24,00
        Summe netto | 144,00
        19% MwSt | 27,36
        Rechnungsbetrag | 171,36 EUR
        ",
        &nothing(),
        &Expected {
            shop: "Werkstatt Rosenau",
            day: "2026-02-02",
            total: "171.36 EUR",
            taxes: &[(1900, "27.36")],
            items: &[
                ("Arbeitslohn Inspektion", "", "", "120.00", ""),
                ("Pollenfilter CF-2210K", "", "", "24.00", "CF-2210K"),
            ],
            numbers: &["CF-2210K"],
            odometer: "123456 km",
        },
    );
}
