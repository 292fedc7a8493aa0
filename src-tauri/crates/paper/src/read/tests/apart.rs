//! What stands close together and must be kept apart: the fuel and the total, net and tax, a number and a quantity.

use super::*;
use crate::read::{Fuel, Item};

fn total_and_sure(rows: &str) -> (String, Option<Sure>) {
    let receipt = read(&text(rows), &nothing());
    (amount(receipt.total.map(|total| total.value)), total_sure(&receipt))
}

fn prices(receipt: &Receipt) -> Vec<(String, String)> {
    let quantity = |item: &Item| item.quantity.map(units::Quantity::number).unwrap_or_default();
    receipt.items.iter().map(|item| (quantity(item), item.price.number())).collect()
}

#[track_caller]
fn has_prices(receipt: &Receipt, expected: &[(&str, &str)]) {
    let read = prices(receipt);
    let read: Vec<(&str, &str)> = read.iter().map(|(many, price)| (many.as_str(), price.as_str())).collect();
    assert_eq!(read, expected, "{receipt:#?}");
}

fn numbers(receipt: &Receipt) -> Vec<&str> {
    receipt.numbers.iter().map(|number| number.value.as_str()).collect()
}

#[test]
fn what_the_fuel_cost_is_no_total_where_more_was_bought() {
    let rows = "
        Tankhof Fuchsbau
        USt-IdNr. DE000000000
        27.11.2026 08:10
        Säule 2 | Super E10
        Menge | 40,00 L
        Preis/L | 1,759
        Betrag | 70,36
        2 x Tee | 5,00
        Brezel | 1,90
        Summe | EUR 77,26
        Bar | 80,00
        Rückgeld | 2,74
        MwSt % | Netto | MwSt | Brutto
        19% | 59,13 | 11,23 | 70,36
        7% | 6,45 | 0,45 | 6,90
        ";
    assert_eq!(total_and_sure(rows), ("77.26 EUR".into(), Some(Sure::Sure)));
    let receipt = read(&text(rows), &nothing());
    assert_eq!(check(&receipt, CheckKind::Paid), Some((true, "77.26".into(), "77.26".into())));
    assert_eq!(check(&receipt, CheckKind::Lines), Some((true, "77.26".into(), "77.26".into())));
    let Some(Fuel { total: Some(fuel), .. }) = receipt.fuel.clone() else {
        panic!("no fill in {receipt:#?}")
    };
    assert_eq!(fuel.value.number(), "70.36");
}

/// The row of the fuel is no line of goods here, and its amount stands on it all the same.
#[test]
fn the_lines_and_the_fuel_together_come_to_the_total() {
    let rows = "
        Tankhof Fuchsbau
        27.11.2026 08:10
        * Säule 3 Super E10
        30,00 L x 1,700/L | 51,00
        Brezel | 1,90
        Tee | 2,50
        Summe | EUR 55,40
        Bar | 60,00
        Rückgeld | 4,60
        ";
    assert_eq!(total_and_sure(rows), ("55.40 EUR".into(), Some(Sure::Sure)));
    let receipt = read(&text(rows), &nothing());
    assert_eq!(check(&receipt, CheckKind::Lines), Some((true, "55.40".into(), "55.40".into())));
    assert_eq!(receipt.items.len(), 2);
}

/// Where there is no smaller coin than five hundredths, the step to it is printed and is no disagreement.
#[test]
fn net_and_tax_agree_with_a_total_that_was_rounded_to_a_coin() {
    let rows = "
        Garage Fuchsbau
        Rechnung 27.11.2026
        Thermostat | 45.75
        Bremsbeläge vorn | 39.95
        Netto | 85.70
        MWST 8.1 % | 6.94
        Rundung | 0.01
        Gesamt inkl. Steuer | CHF 92.65
        ";
    let receipt = read(&text(rows), &nothing());
    assert_eq!(total_and_sure(rows), ("92.65 CHF".into(), Some(Sure::Sure)));
    assert_eq!(check(&receipt, CheckKind::NetAndTax), Some((true, "92.65".into(), "92.65".into())));
    let off = read(&text(&rows.replace("6.94", "6.49")), &nothing());
    assert_eq!(check(&off, CheckKind::NetAndTax).map(|told| told.0), Some(false));
}

/// The net that stands beside a rate is what was taxed, which labour is not everywhere.
#[test]
fn a_tax_on_the_parts_alone_is_no_disagreement() {
    let rows = "
        Otter Bend Garage
        Odometer 32,267
        Diagnostic check | 55.20
        Brake disc | 150.00
        Battery 12V | 100.00
        Rate | Net | Sales Tax
        7.25 % | 250.00 | 18.13
        Total inc. tax | USD 323.33
        ";
    let receipt = read(&text(rows), &nothing());
    assert_eq!(check(&receipt, CheckKind::Lines).map(|told| told.0), Some(true));
    assert_eq!(check(&receipt, CheckKind::NetAndTax), None);
    let off = read(&text(&rows.replace("55.20", "52.20")), &nothing());
    assert_eq!(check(&off, CheckKind::NetAndTax), Some((false, "268.13".into(), "323.33".into())));
}

#[test]
fn what_is_taxed_at_no_rate_belongs_to_the_total() {
    let rows = "
        Larkrise Fuel Stop
        VAT No GB 000 0000 00
        27/11/2026 08:10
        Pump 3 | Unleaded E10
        Litres | 30.00 L
        Price/L | GBP 1.459
        Total | £43.77
        Roll with egg | £3.20
        TOTAL | £46.97
        VAT % | Net | VAT | Gross
        20% | 36.48 | 7.29 | 43.77
        0% | 3.20 | 0.00 | 3.20
        Card | £46.97
        ";
    assert_eq!(total_and_sure(rows), ("46.97 GBP".into(), Some(Sure::Sure)));
}

#[test]
fn the_total_is_the_sum_after_rounding() {
    let rows = "
        Tankstelle Murmelgrund
        MWST-Nr. CHE-000.000.000 MWST
        27.11.2026 08:10
        Säule 1 | Diesel
        Menge | 31.17 L
        Preis/L | 1.799
        Total | 56.07
        Rundung | -0.02
        Zu bezahlen | CHF 56.05
        Bar | 60.00
        Rückgeld | 3.95
        ";
    assert_eq!(total_and_sure(rows), ("56.05 CHF".into(), Some(Sure::Sure)));
}

#[test]
fn two_sums_for_which_as_much_speaks_are_no_certainty() {
    let rows = "
        Laden Muster
        27.11.2026
        Summe | 12,50 EUR
        Gesamtbetrag | 14,90 EUR
        Summe | 12,50 EUR
        Gesamtbetrag | 14,90 EUR
        ";
    let (_, sure) = total_and_sure(rows);
    assert!(sure < Some(Sure::Sure), "{sure:?}");
}

#[test]
fn the_table_of_taxes_may_stand_above_the_total() {
    let receipt = reads(
        "
        Werkstatt Amselrain
        Rechnung | Datum 27.11.2026
        Bezeichnung | Anz. | Einzel | EUR
        Wischerblatt | 2 | 9,20 | 18,40
        Satz | Netto | USt
        19 % | 18,40 | 3,50
        Gesamt inkl. Steuer | 21,90 EUR
        ",
        &nothing(),
        &Expected {
            shop: "Werkstatt Amselrain",
            day: "2026-11-27",
            total: "21.90 EUR",
            taxes: &[(1900, "3.50")],
            items: &[("Wischerblatt", "2", "9.20", "18.40", "")],
            ..Expected::default()
        },
    );
    assert_eq!(total_sure(&receipt), Some(Sure::Sure));
    assert_eq!(receipt.taxes[0].sure, Sure::Sure);
}

#[test]
fn a_tax_of_a_few_cents_counts_where_its_row_adds_up() {
    let taxes = |rows: &str| {
        let receipt = read(&text(rows), &nothing());
        receipt.taxes.iter().map(|tax| tax.value.amount.number()).collect::<Vec<_>>()
    };
    let head = "Station Aubépine\n27/11/2026\nThé | 1,20\nTotal TTC | 1,20 €\nTVA % | HT | TVA | TTC\n";
    assert_eq!(taxes(&format!("{head}5,5% | 1,14 | 0,06 | 1,20")), ["0.06"]);
}

#[test]
fn what_excludes_tax_is_no_tax() {
    let rows = "
        Dunmoss Motor Spares
        27/11/2026
        Hose clip | 10.00
        Excl. tax | 10.00
        VAT 20 % | 2.00
        Total inc. tax GBP | 12.00
        ";
    let receipt = read(&text(rows), &nothing());
    let taxes: Vec<String> = receipt.taxes.iter().map(|tax| tax.value.amount.number()).collect();
    assert_eq!(taxes, ["2.00"]);
    assert_eq!(
        (amount(receipt.total.map(|total| total.value)), total_sure(&receipt)),
        ("12.00 GBP".into(), Some(Sure::Sure))
    );
}

#[test]
fn the_price_of_a_line_may_slip_below_it() {
    let receipt = read(
        &text(
            "
            Werkstatt Amselrain
            Bezeichnung | Anz. | Einzel | EUR
            Bremsen vorn erneuern | 1,5 h | 80,00
            EUR 120,00
            Reifen 195/65 R15 91H | 2 | 61,00
            EUR 122,00
            Deckel | 1 | 4,00
            EUR 4,00
            Summe | EUR 246,00
            ",
        ),
        &nothing(),
    );
    has_prices(&receipt, &[("1.5", "120.00"), ("2", "122.00"), ("1", "4.00")]);
    assert_eq!(check(&receipt, CheckKind::Lines), Some((true, "246.00".into(), "246.00".into())));
}

#[test]
fn tenths_are_counted_as_well() {
    let rows = "
        Werkstatt Amselrain
        0,4 Fehler suchen | 36,00
        Unterboden | 1,5 h | 120,00
        Bremsen
        2,5x | 50,00
        Summe | EUR 206,00
        ";
    has_prices(&read(&text(rows), &nothing()), &[("0.4", "36.00"), ("1.5", "120.00"), ("2.5", "50.00")]);
}

#[test]
fn quantity_and_price_of_one_may_announce_the_line_below() {
    let rows = "Pièces du Marais\nJoint | 8,00\nHK-20415\n3 x 4,10\nCollier | 12,30\nTotal | 20,30 EUR";
    has_prices(&read(&text(rows), &nothing()), &[("", "8.00"), ("3", "12.30")]);
}

#[test]
fn a_number_above_its_description_belongs_to_it() {
    let rows = "
        Pièces du Marais
        7Q0 118 220 KL
        Filtre
        1 pce x 8,00 | 8,00
        Réf. HK-20415
        Collier
        2 pce x 4,10 | 8,20
        Total | 16,20 EUR
        ";
    let receipt = read(&text(rows), &nothing());
    let of_items: Vec<_> =
        receipt.items.iter().map(|item| item.number.clone().map(|number| number.value)).collect();
    assert_eq!(of_items, [Some("7Q0 118 220 KL".to_owned()), Some("HK-20415".to_owned())]);
}

#[test]
fn numbers_are_read_whole_and_count_nothing() {
    let receipt = read(
        &text(
            "
            Teilehof Amselrain
            Luftfilter 07P 118 220 N | 20,00
            Ölfilter W 9402/5 | 9,00
            Sensor 41 12 7 660 118 | 30,00
            Kolben 0 773 L65 829 | 40,00
            Pumpe QV 7120 x | 50,00
            6PK1144 | 1x | 7,00
            27 44 118 220 Stab | 8,00
            Dichtring A12x16 CU | 1,00
            Lampe H7 12V 55W PX26d | 3,00
            4098765432109 Schraube | 2,00
            Summe | EUR 170,00
            ",
        ),
        &nothing(),
    );
    assert_eq!(
        numbers(&receipt),
        [
            "07P 118 220 N",
            "W 9402/5",
            "41 12 7 660 118",
            "0 773 L65 829",
            "QV 7120 x",
            "6PK1144",
            "27 44 118 220"
        ]
    );
    assert!(
        prices(&receipt).iter().all(|(many, _)| many.is_empty() || many == "1"),
        "{:?}",
        prices(&receipt)
    );
}

#[test]
fn of_two_heads_the_one_with_numbers_below_counts() {
    let receipt = read(
        &text(
            "
            Werkstatt Amselrain
            Artikel              | Art.-Nr.  | Anz. | Einzel | EUR
            Wischerblatt hinten  | 118220    | 1    | 9,20   | 9,20
            Deckel               | 204157    | 1    | 4,00   | 4,00
            Summe | EUR 13,20
            ",
        ),
        &nothing(),
    );
    assert_eq!(numbers(&receipt), ["118220", "204157"]);
}

#[test]
fn what_has_a_currency_is_no_volume() {
    let receipt = read(
        &text(
            "
            Sagebrush Fill-Up
            11/14/2026 05:22 PM
            Unleaded 87
            Pump | Gallons | Price/Gal | Total
            02   | 9.104   | $3.459    | $31.49
            TOTAL | $31.49
            ",
        ),
        &nothing(),
    );
    let fuel = receipt.fuel.unwrap();
    assert_eq!(fuel.volume.map(|volume| volume.value.0.number(volume.value.1)).as_deref(), Some("9.104"));
    assert_eq!(fuel.price.map(|price| price.value.thousandths), Some(3459));
}

#[test]
fn the_legal_form_below_a_name_is_no_name() {
    let shop = |rows: &str| read(&text(rows), &nothing()).shop.map(|shop| shop.value);
    assert_eq!(shop("Dunmoss Motor Spares\nLtd\n4 Fen Row").as_deref(), Some("Dunmoss Motor Spares"));
    assert_eq!(shop("Station du Marais\nChemin Creux\nDiesel").as_deref(), Some("Station du Marais"));
}

#[test]
fn the_currency_beside_the_amounts_outweighs_that_of_a_head() {
    let rows =
        "Werkstatt Murmelgrund\nBezeichnung | Anz. | Einzel | EUR\nDeckel | 1 | 4.00 | 4.00\nTotal\nCHF 4.00";
    let currency = read(&text(rows), &nothing()).currency.unwrap();
    assert_eq!(currency.value.code(), "CHF");
}
