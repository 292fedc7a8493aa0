//! Receipts of pumps.

use units::VolumeUnit;

use super::*;
use crate::read::FuelKind;

struct Filled<'a> {
    volume: &'a str,
    unit: VolumeUnit,
    thousandths: i64,
    total: &'a str,
    kind: FuelKind,
    product: &'a str,
    day: &'a str,
}

#[track_caller]
fn fills(rows: &str, known: &Known<'_>, filled: &Filled<'_>) -> Receipt {
    let receipt = read(&text(rows), known);
    let fuel = receipt.fuel.clone().unwrap_or_else(|| panic!("no fill in {receipt:#?}"));
    let volume = fuel.volume.unwrap();
    assert_eq!(
        (volume.value.0.number(volume.value.1).as_str(), volume.value.1),
        (filled.volume, filled.unit)
    );
    let price = fuel.price.unwrap();
    assert_eq!((price.value.thousandths, price.value.per), (filled.thousandths, filled.unit));
    assert_eq!(amount(fuel.total.map(|total| total.value)), filled.total);
    assert_eq!(amount(receipt.total.map(|total| total.value)), filled.total);
    assert_eq!(fuel.kind.map(|kind| kind.value), Some(filled.kind));
    assert_eq!(fuel.product.map(|product| product.value).as_deref(), Some(filled.product));
    assert_eq!(one_day(&receipt), filled.day);
    assert_eq!(receipt.numbers, []);
    receipt
}

#[test]
fn a_german_pump() {
    let receipt = fills(
        "
        Tankstelle Am Heidekrug
        Inh. A. Beispiel
        Beleg-Nr. 1234/005/00001
        27.11.2026 07:55
        * Zapfsäule 04
        * Super E10 | 75,41 EUR A
        42,15 l x 1,789 EUR/l
        Gesamtbetrag | 75,41 EUR
        Typ Netto USt Brutto
        A 19,00% 63,37 12,04 75,41
        girocard | 75,41 EUR
        Terminal-ID 65432109
        ",
        &nothing(),
        &Filled {
            volume: "42.150",
            unit: VolumeUnit::Litre,
            thousandths: 1789,
            total: "75.41 EUR",
            kind: FuelKind::Petrol,
            product: "Super E10",
            day: "2026-11-27",
        },
    );
    assert_eq!(total_sure(&receipt), Some(Sure::Sure));
    assert_eq!(receipt.fuel.unwrap().price.unwrap().sure, Sure::Sure);
    assert_eq!(receipt.taxes.len(), 1);
}

#[test]
fn a_british_pump_in_pence() {
    fills(
        "
        FOXGLOVE SERVICE STATION
        VAT NO 123 4567 89
        26/11/2026 18:31:09
        PUMP 6
        UNLEADED
        LITRES | 42.15
        PPL | 145.9
        TOTAL | £61.50
        VAT 20% | £10.25
        VISA CONTACTLESS | £61.50
        ",
        &nothing(),
        &Filled {
            volume: "42.150",
            unit: VolumeUnit::Litre,
            thousandths: 1459,
            total: "61.50 GBP",
            kind: FuelKind::Petrol,
            product: "UNLEADED",
            day: "2026-11-26",
        },
    );
}

#[test]
fn an_american_pump_in_gallons() {
    fills(
        "
        Mesa Verde Quick Stop
        Nov 20, 2026 6:12 AM
        PUMP# 3 REGULAR
        GALLONS | 10.234
        PRICE/GAL | $3.459
        FUEL TOTAL | $35.40
        DEBIT | $35.40
        ",
        &nothing(),
        &Filled {
            volume: "10.234",
            unit: VolumeUnit::UsGallon,
            thousandths: 3459,
            total: "35.40 USD",
            kind: FuelKind::Petrol,
            product: "REGULAR",
            day: "2026-11-20",
        },
    );
}

#[test]
fn a_french_pump() {
    fills(
        "
        STATION DES TILLEULS
        le 24/11/26 19:08
        POMPE 2
        GAZOLE
        VOLUME : 38,52 L
        PRIX/L : 1,699 EUR
        TOTAL TTC : 65,45 EUR
        DONT TVA 20,00% : 10,91 EUR
        CARTE BANCAIRE 65,45 EUR
        ",
        &nothing(),
        &Filled {
            volume: "38.520",
            unit: VolumeUnit::Litre,
            thousandths: 1699,
            total: "65.45 EUR",
            kind: FuelKind::Diesel,
            product: "GAZOLE",
            day: "2026-11-24",
        },
    );
}

#[test]
fn a_spanish_pump() {
    fills(
        "
        E.S. LOS ALMENDROS
        NIF B87654321
        Fecha 22/11/2026 Hora 09:44
        Surtidor 5
        Producto | Litros | Precio/L | Importe
        GASÓLEO A | 35,21 | 1,549 | 54,54
        Total EUR | 54,54
        IVA 21% | 9,47
        Tarjeta | 54,54
        ",
        &nothing(),
        &Filled {
            volume: "35.210",
            unit: VolumeUnit::Litre,
            thousandths: 1549,
            total: "54.54 EUR",
            kind: FuelKind::Diesel,
            product: "GASÓLEO A",
            day: "2026-11-22",
        },
    );
}

#[test]
fn a_swiss_pump_with_francs() {
    fills(
        "
        Tankshop Musterkreuz AG
        21.11.2026 20:15
        ZP 3 Bleifrei 95
        40,12 Liter
        CHF/L 1.859
        Total CHF 74.58
        ",
        &nothing(),
        &Filled {
            volume: "40.120",
            unit: VolumeUnit::Litre,
            thousandths: 1859,
            total: "74.58 CHF",
            kind: FuelKind::Petrol,
            product: "Bleifrei 95",
            day: "2026-11-21",
        },
    );
}

/// How far volume, price and amount are believed.
fn each_sure(fuel: &crate::read::Fuel) -> [Option<Sure>; 3] {
    let sures = (fuel.volume.map(|v| v.sure), fuel.price.map(|p| p.sure), fuel.total.map(|t| t.sure));
    [sures.0, sures.1, sures.2]
}

#[track_caller]
fn fill_is_sure(rows: &str, sure: [Option<Sure>; 3]) {
    let rows = format!("Tankstelle Probeheim\n27.11.2026 08:00\nSäule 1 Diesel\n{rows}");
    let fuel = read(&text(&rows), &nothing()).fuel.unwrap_or_else(|| panic!("no fill in {rows}"));
    assert_eq!(each_sure(&fuel), sure, "{rows}");
}

#[test]
fn each_figure_of_a_fill_is_as_sure_as_what_bears_it_out() {
    let (sure, likely) = (Some(Sure::Sure), Some(Sure::Likely));
    fill_is_sure("42,15 l\n1,799 EUR/l\nSumme 75,83 EUR", [sure; 3]);
    // A letter was mended in the volume alone.
    fill_is_sure("42,l5 l\n1,799 EUR/l\nSumme 75,83 EUR", [likely, sure, sure]);
    // No unit and no label, but nothing costs forty a litre.
    fill_is_sure("42,15\n1,799\nSumme 75,83 EUR", [sure; 3]);
    // Either of the two may be the volume, and one thing at 1.799 would come to the same.
    fill_is_sure("2,500\n1,600\nSumme 4,00 EUR", [likely; 3]);
    fill_is_sure("1,00\n1,799\nSumme 1,80 EUR", [likely; 3]);
    fill_is_sure("1,00 l\n1,799\nSumme 1,80 EUR", [sure; 3]);
    // Two of the three, and nothing to hold them against.
    fill_is_sure("1,799 EUR/l\nSumme 75,83 EUR", [None, likely, likely]);
    fill_is_sure("42,15 l\nSumme 75,83 EUR", [likely, None, likely]);
    fill_is_sure("42,15 l\n1,799 EUR/l", [likely, likely, None]);
}

#[test]
fn a_fill_of_which_something_was_taken_off_agrees() {
    let rows = "Tankstelle Probeheim\n27.11.2026 08:00\nSäule 1 Diesel\n42,15 l\n1,799 EUR/l\nRabatt -1,26\nSumme 74,57 EUR";
    let receipt = read(&text(rows), &nothing());
    assert_eq!(check(&receipt, CheckKind::Fuel), Some((true, "74.57".into(), "74.57".into())));
    assert_eq!(each_sure(&receipt.fuel.unwrap()), [Some(Sure::Sure); 3]);
}

#[test]
fn a_fill_whose_figures_do_not_agree_is_offered_with_both() {
    let receipt = read(
        &text(
            "
            Tankstelle Probeheim
            27.11.2026 08:00
            Säule 1 Diesel
            42,15 l
            1,799 EUR/l
            Summe 75,41 EUR
            ",
        ),
        &nothing(),
    );
    // 42.15 times 1.799 is 75.828, worked out by hand.
    assert_eq!(check(&receipt, CheckKind::Fuel), Some((false, "75.83".into(), "75.41".into())));
    let fuel = receipt.fuel.unwrap();
    // Nothing says which of the three was misread.
    assert_eq!(each_sure(&fuel), [Some(Sure::Doubtful); 3]);
    assert_eq!(receipt.total.unwrap().sure, Sure::Doubtful);
}

#[test]
fn a_total_that_a_payment_confirms_and_the_fill_does_not_is_not_sure() {
    let rows = "Tankstelle Probeheim\n27.11.2026 08:00\nSäule 1 Diesel\n42,15 l\n1,799 EUR/l";
    let receipt = read(&text(&format!("{rows}\nSumme 75,41 EUR\ngirocard 75,41 EUR")), &nothing());
    assert_eq!(check(&receipt, CheckKind::Fuel), Some((false, "75.83".into(), "75.41".into())));
    assert_eq!(total_sure(&receipt), Some(Sure::Likely));
    let agreeing = read(&text(&format!("{rows}\nSumme 75,83 EUR\ngirocard 75,83 EUR")), &nothing());
    assert_eq!(total_sure(&agreeing), Some(Sure::Sure));
}

#[test]
fn oil_with_the_price_of_a_litre_is_no_fill() {
    let receipt = read(
        &text(
            "Teilemarkt\n27.11.2026\nMotoröl Diesel 5W-30 5 L | 45,00\nGrundpreis 9,00 EUR/l\nSumme | 45,00",
        ),
        &nothing(),
    );
    assert_eq!(receipt.fuel, None);
}
