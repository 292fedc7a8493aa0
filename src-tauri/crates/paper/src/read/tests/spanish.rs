//! Receipts from Spain.

use super::*;

#[test]
fn a_spanish_till_receipt() {
    let receipt = reads(
        "
        RECAMBIOS EL OLIVAR S.L.
        C/ Ejemplo 5 - 00999 Muestra
        CIF: B12345678
        Factura simplificada: 2026/0481
        Fecha: 27/11/2026 Hora: 18:05
        Filtro de aceite | 9,95
        Ref. OL-7714 M
        Aceite 5W-40 5 L | 38,00
        Ref. 40.5544/5
        Total a pagar | 47,95 €
        Entregado | 50,00
        Cambio | 2,05
        Base imponible | 39,63
        IVA 21% | 8,32
        ",
        &nothing(),
        &Expected {
            shop: "RECAMBIOS EL OLIVAR S.L.",
            day: "2026-11-27",
            total: "47.95 EUR",
            taxes: &[(2100, "8.32")],
            items: &[
                ("Filtro de aceite", "", "", "9.95", "OL-7714 M"),
                ("Aceite 5W-40 5 L", "", "", "38.00", "40.5544/5"),
            ],
            numbers: &["OL-7714 M", "40.5544/5"],
            ..Expected::default()
        },
    );
    assert_eq!(total_sure(&receipt), Some(Sure::Sure));
}

#[test]
fn a_spanish_invoice_with_points_between_thousands() {
    reads(
        "
        Talleres Peñagrande
        Factura nº 26/311
        Fecha de emisión: 8 de octubre de 2026
        Vencimiento: 8 de noviembre de 2026
        Kilómetros: 187.250
        Cant | Descripción | Precio | Importe
        1 | Turbo reconstruido TR-5303-970 | 890,00 | 890,00
        6 | Mano de obra | 45,00 | 270,00
        Base imponible | 1.160,00
        IVA 21% | 243,60
        TOTAL FACTURA | 1.403,60 €
        ",
        &nothing(),
        &Expected {
            shop: "Talleres Peñagrande",
            day: "2026-10-08",
            total: "1403.60 EUR",
            taxes: &[(2100, "243.60")],
            items: &[
                ("Turbo reconstruido TR-5303-970", "1", "890.00", "890.00", "TR-5303-970"),
                ("Mano de obra", "6", "45.00", "270.00", ""),
            ],
            numbers: &["TR-5303-970"],
            odometer: "187250 km",
        },
    );
}

#[test]
fn a_change_of_oil_is_no_change_handed_back() {
    reads(
        "
        Taller Las Encinas
        12-03-2026 13:40
        Cambio de aceite | 35,00
        Código FA-3320 Filtro de aire | 12,00
        Importe total | 47,00 €
        Tarjeta | 47,00 €
        ",
        &nothing(),
        &Expected {
            shop: "Taller Las Encinas",
            day: "2026-03-12",
            total: "47.00 EUR",
            items: &[
                ("Cambio de aceite", "", "", "35.00", ""),
                ("Código FA-3320 Filtro de aire", "", "", "12.00", "FA-3320"),
            ],
            numbers: &["FA-3320"],
            ..Expected::default()
        },
    );
}
