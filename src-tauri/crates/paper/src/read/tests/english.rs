//! Receipts from the United Kingdom, Ireland and the United States.

use super::*;

#[test]
fn a_british_till_receipt() {
    let receipt = reads(
        "
        BRAMBLE MOTOR FACTORS LTD
        14 Example Lane, Sampleton, ZZ9 9ZZ
        VAT Reg No GB 123 4567 89
        27/11/2026 10:22 | Till 2
        1 OIL FILTER ZF2217 | £7.49
        2 WIPER BLADE WB-24 @ 8.50 | £17.00
        BULB H7 12V 55W | £4.25
        TOTAL | £28.74
        Total items 4
        VISA DEBIT | £28.74
        VAT @ 20% included | £4.79
        Thank you for shopping
        ",
        &nothing(),
        &Expected {
            shop: "BRAMBLE MOTOR FACTORS LTD",
            day: "2026-11-27",
            total: "28.74 GBP",
            taxes: &[(2000, "4.79")],
            items: &[
                ("OIL FILTER ZF2217", "1", "", "7.49", "ZF2217"),
                ("WIPER BLADE WB-24", "2", "8.50", "17.00", ""),
                ("BULB H7 12V 55W", "", "", "4.25", ""),
            ],
            numbers: &["ZF2217"],
            ..Expected::default()
        },
    );
    assert_eq!(total_sure(&receipt), Some(Sure::Sure));
    assert_eq!(check(&receipt, CheckKind::Lines), Some((true, "28.74".into(), "28.74".into())));
}

#[test]
fn a_british_invoice_net_of_tax() {
    reads(
        "
        Invoice | Thistledown Autoparts
        Invoice No: 100234 | Invoice Date: 5 Mar 2026
        Due Date: 4 Apr 2026
        Qty | Part No | Description | Unit Price | Amount
        1 | TD-4471-B | Timing belt kit | 86.00 | 86.00
        1 | WP 2093 | Water pump | 41.50 | 41.50
        Subtotal | 127.50
        VAT 20% | 25.50
        Total Due | £153.00
        Sort code 00-00-00 Account 12345678
        ",
        &nothing(),
        &Expected {
            shop: "Thistledown Autoparts",
            day: "2026-03-05",
            total: "153.00 GBP",
            taxes: &[(2000, "25.50")],
            items: &[
                ("TD-4471-B Timing belt kit", "1", "86.00", "86.00", "TD-4471-B"),
                ("WP 2093 Water pump", "1", "41.50", "41.50", "WP 2093"),
            ],
            numbers: &["TD-4471-B", "WP 2093"],
            ..Expected::default()
        },
    );
}

#[test]
fn an_american_receipt_with_sales_tax_and_the_month_first() {
    let receipt = reads(
        "
        PRAIRIE FLATS AUTO PARTS
        100 Sample Rd, Nowhere, KS 00000
        (555) 010-0199
        STORE 0042 REG 03 TRAN 7781
        11/05/2026 04:45 PM
        PFA 8817 SPARK PLUG
        4 @ 7.99 | 31.96 T
        CORE CHARGE | 12.00
        SKU 445566 SHOP TOWELS | 5.49 T
        SUBTOTAL | 49.45
        SALES TAX 8.25% | 3.09
        TOTAL | $52.54
        CASH | 60.00
        CHANGE | 7.46
        RETURN BY 02/03/2027
        ",
        &nothing(),
        &Expected {
            shop: "PRAIRIE FLATS AUTO PARTS",
            day: "2026-11-05",
            total: "52.54 USD",
            taxes: &[(825, "3.09")],
            items: &[
                ("PFA 8817 SPARK PLUG", "4", "7.99", "31.96", "PFA 8817"),
                ("CORE CHARGE", "", "", "12.00", ""),
                ("SKU 445566 SHOP TOWELS", "", "", "5.49", ""),
            ],
            numbers: &["PFA 8817"],
            ..Expected::default()
        },
    );
    assert_eq!(total_sure(&receipt), Some(Sure::Sure));
    assert_eq!(check(&receipt, CheckKind::Lines), Some((true, "49.45".into(), "49.45".into())));
}

#[test]
fn an_american_invoice_with_a_mileage() {
    reads(
        "
        Coyote Creek Service LLC
        Date: Nov 27, 2026
        Mileage: 98,420
        Next service at 103,420
        Oil change 5W-30 synthetic | 49.95
        Cabin filter part no. CF40718-X | 18.50
        Labor | 25.00
        Sub-total | 93.45
        Tax | 4.20
        Amount Due | $97.65
        Paid by card | $97.65
        ",
        &nothing(),
        &Expected {
            shop: "Coyote Creek Service LLC",
            day: "2026-11-27",
            total: "97.65 USD",
            taxes: &[(0, "4.20")],
            items: &[
                ("Oil change 5W-30 synthetic", "", "", "49.95", ""),
                ("Cabin filter part no. CF40718-X", "", "", "18.50", "CF40718-X"),
                ("Labor", "", "", "25.00", ""),
            ],
            numbers: &["CF40718-X"],
            odometer: "98420 mi",
        },
    );
}

#[test]
fn an_irish_receipt_in_euro() {
    reads(
        "
        Clover Hill Motor Supplies
        VAT No. IE1234567T
        Date 03/04/2026 Time 16:20
        Antifreeze G12 5L | €24.95
        Part No: AF-0512-5
        Brake fluid DOT 4 1L | €9.99
        Part No: BF.04.100
        Balance due | €34.94
        Cash | €40.00
        Change due | €5.06
        VAT 23% | €6.53
        ",
        &nothing(),
        &Expected {
            shop: "Clover Hill Motor Supplies",
            day: "2026-04-03",
            total: "34.94 EUR",
            taxes: &[(2300, "6.53")],
            items: &[
                ("Antifreeze G12 5L", "", "", "24.95", "AF-0512-5"),
                ("Brake fluid DOT 4 1L", "", "", "9.99", "BF.04.100"),
            ],
            numbers: &["AF-0512-5", "BF.04.100"],
            ..Expected::default()
        },
    );
}

#[test]
fn a_receipt_without_any_currency_is_in_the_households() {
    let known = Known { currency: Some("GBP".parse().unwrap()), ..nothing() };
    let receipt = reads(
        "
        Hedgerow Spares
        21-NOV-2026 11:02
        Fan belt FB6PK1835 | 12.40
        TOTAL | 12.40
        CASH | 20.00
        CHANGE | 7.60
        ",
        &known,
        &Expected {
            shop: "Hedgerow Spares",
            day: "2026-11-21",
            total: "12.40 GBP",
            items: &[("Fan belt FB6PK1835", "", "", "12.40", "FB6PK1835")],
            numbers: &["FB6PK1835"],
            ..Expected::default()
        },
    );
    assert_eq!(receipt.currency.map(|currency| currency.sure), Some(Sure::Likely));
}

#[test]
fn a_makers_letters_are_no_unit_of_a_reading() {
    for number in ["KM 4471-B", "KM4471-B", "KM 4471", "MI 4471-B", "KMS 44718"] {
        let rows =
            format!("BRAMBLE MOTOR FACTORS LTD\n27/11/2026\nOil filter {number} | 9.65\nTOTAL | £9.65");
        let receipt = read(&text(&rows), &nothing());
        assert_eq!(receipt.odometer, None, "{number}");
        let prices: Vec<_> = receipt.items.iter().map(|item| item.price.number()).collect();
        assert_eq!(prices, ["9.65"], "{number}");
        let numbers: Vec<_> = receipt.numbers.iter().map(|field| field.value.as_str()).collect();
        assert_eq!(numbers, [number]);
    }
    let above = read(&text("Shop\n27/11/2026\nKM 4471-B\nOil filter | 9.65\nTOTAL | £9.65"), &nothing());
    assert_eq!(above.odometer, None);
}

#[test]
fn a_label_or_a_unit_behind_makes_a_reading() {
    for row in [
        "KM 84120",
        "KM: 84120",
        "km 84.120",
        "Oil change at 84120 km | 49.95",
        "Mileage 84120 km",
        "84120KM",
    ] {
        let receipt = read(&text(&format!("Shop\n27/11/2026\n{row}\nTOTAL | £49.95")), &nothing());
        let count = receipt.odometer.map(|field| field.value.0.floor(field.value.1));
        assert_eq!(count, Some(84_120), "{row}");
    }
}
