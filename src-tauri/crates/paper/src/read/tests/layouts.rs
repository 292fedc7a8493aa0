//! The same things printed in other places: quantities above, below and beside, numbers before and behind.

use super::*;

#[test]
fn quantities_and_numbers_before_the_description() {
    reads(
        "
        SUNDOWN AUTO SUPPLY
        4410 W EXAMPLE BLVD
        SPRINGDALE, AR 00000 | 555-010-0123
        11/14/26 17:22:08
        QTY 2 PART# AB-12340 OIL FLTR @ 12.99 | 25.98
        1 BELT DAYLINE | 31.49
        SUBTOTAL | 57.47
        TAX 9.75% | 5.60
        TOTAL | 63.07
        VISA ************4417 | 63.07
        AUTH 044121 REF 19238841
        ITEMS 3
        ",
        &nothing(),
        &Expected {
            shop: "SUNDOWN AUTO SUPPLY",
            day: "2026-11-14",
            total: "63.07 USD",
            taxes: &[(975, "5.60")],
            items: &[
                ("QTY PART# AB-12340 OIL FLTR", "2", "12.99", "25.98", "AB-12340"),
                ("BELT DAYLINE", "1", "", "31.49", ""),
            ],
            numbers: &["AB-12340"],
            ..Expected::default()
        },
    );
}

#[test]
fn figures_above_their_description() {
    reads(
        "
        AUTOPIECES CENTRE ROUVRAY
        TEL: 04 00 00 00 00
        QTE DESIGNATION MONTANT
        2 X 12,50 | 25,00
        BOUGIE REF BGX-4471
        1 X 89,90 | 89,90
        BATTERIE 70AH REF: BAT70-640A
        NB ARTICLES : 3
        TOTAL EUR | 114,90
        CARTE BLEUE EUR | 114,90
        TVA HT TTC
        20,00% 19,15 95,75 114,90
        27-11-26 10:41 CAISSE 01 TICKET 00451
        ",
        &nothing(),
        &Expected {
            shop: "AUTOPIECES CENTRE ROUVRAY",
            day: "2026-11-27",
            total: "114.90 EUR",
            taxes: &[(2000, "19.15")],
            items: &[
                ("BOUGIE REF BGX-4471", "2", "12.50", "25.00", "BGX-4471"),
                ("BATTERIE 70AH REF: BAT70-640A", "1", "89.90", "89.90", "BAT70-640A"),
            ],
            numbers: &["BGX-4471", "BAT70-640A"],
            ..Expected::default()
        },
    );
}

#[test]
fn a_discount_among_the_lines() {
    reads(
        "
        AUTORECAMBIOS PUENTE VIEJO SL
        NIF B-00000000
        27/11/2026 12:31
        2 UD FILTRO HABITACULO | 9,90 | 19,80
        REF: FH.2201/K
        1 UD ACEITE 5W30 5L | 32,50 | 32,50
        Dto. 10% | -5,23
        TOTAL € | 47,07
        TARJETA | 47,07
        IVA 21% s/ 38,90 | 8,17
        ",
        &nothing(),
        &Expected {
            shop: "AUTORECAMBIOS PUENTE VIEJO SL",
            day: "2026-11-27",
            total: "47.07 EUR",
            taxes: &[(2100, "8.17")],
            items: &[
                ("FILTRO HABITACULO", "2", "9.90", "19.80", "FH.2201/K"),
                ("ACEITE 5W30 5L", "1", "32.50", "32.50", ""),
                ("Dto. 10%", "", "", "-5.23", ""),
            ],
            numbers: &["FH.2201/K"],
            ..Expected::default()
        },
    );
}

#[test]
fn hours_and_parts_of_a_garage() {
    reads(
        "
        Hollowbrook Garage
        Unit 4 Nowhere Trading Estate
        INVOICE 44182
        Date: 03/02/2026
        Reg: XX00 XXX | Mileage: 64,210
        Description | Qty | Price | Total
        Labour 1.5 hrs @ 60.00 | 90.00
        Front brake pads BP-7731 | 1 | 34.20 | 34.20
        Brake cleaner 500ml | 1 | 4.80 | 4.80
        Net | 129.00
        VAT @ 20.00% | 25.80
        Gross | 154.80
        Balance Due | £154.80
        ",
        &nothing(),
        &Expected {
            shop: "Hollowbrook Garage",
            day: "2026-02-03",
            total: "154.80 GBP",
            taxes: &[(2000, "25.80")],
            items: &[
                ("Labour hrs", "1.5", "60.00", "90.00", ""),
                ("Front brake pads BP-7731", "1", "34.20", "34.20", "BP-7731"),
                ("Brake cleaner 500ml", "1", "4.80", "4.80", ""),
            ],
            numbers: &["BP-7731"],
            odometer: "64210 mi",
        },
    );
}
