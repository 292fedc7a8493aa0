//! Receipts from France, Belgium and French-speaking Switzerland.

use super::*;

#[test]
fn a_french_till_receipt() {
    let receipt = reads(
        "
        PIECES AUTO DU MOULIN SARL
        12 rue de l'Exemple 99000 Essai
        SIRET 123 456 789 00012
        N° TVA FR 12 345678901
        Ticket n° 4521 Caisse 2
        le 27/11/2026 à 15:42
        FILTRE A HUILE | 11,90
        Réf. PM 8120 k
        PLAQUETTES AVANT | 34,50
        Réf : PL-2201/4
        TOTAL TTC | 46,40 €
        Dont TVA 20,00% | 7,73
        CB | 46,40
        Merci de votre visite
        ",
        &nothing(),
        &Expected {
            shop: "PIECES AUTO DU MOULIN SARL",
            day: "2026-11-27",
            total: "46.40 EUR",
            taxes: &[(2000, "7.73")],
            items: &[
                ("FILTRE A HUILE", "", "", "11.90", "PM 8120 k"),
                ("PLAQUETTES AVANT", "", "", "34.50", "PL-2201/4"),
            ],
            numbers: &["PM 8120 k", "PL-2201/4"],
            ..Expected::default()
        },
    );
    assert_eq!(total_sure(&receipt), Some(Sure::Sure));
}

#[test]
fn a_french_invoice_with_spaces_between_thousands() {
    reads(
        "
        Garage de la Fontaine
        Facture n° F2026-118
        Date : 3 février 2026
        Échéance : 5 mars 2026
        Kilométrage : 142 318 km
        Référence | Désignation | Qté | P.U. HT | Montant HT
        EM 30-4410 | Kit d'embrayage | 1 | 640,00 | 640,00
        Main d'oeuvre | | 5,5 | 72,00 | 396,00
        Total HT | 1 036,00
        TVA 20 % | 207,20
        Net à payer | 1 243,20 €
        ",
        &nothing(),
        &Expected {
            shop: "Garage de la Fontaine",
            day: "2026-02-03",
            total: "1243.20 EUR",
            taxes: &[(2000, "207.20")],
            items: &[
                ("EM 30-4410 Kit d'embrayage", "1", "640.00", "640.00", "EM 30-4410"),
                ("Main d'oeuvre", "5.5", "72.00", "396.00", ""),
            ],
            numbers: &["EM 30-4410"],
            odometer: "142318 km",
        },
    );
}

#[test]
fn a_belgian_receipt() {
    reads(
        "
        Accessoires Auto Val-Dormant SPRL
        TVA BE 0123.456.789
        01/03/26 12:10
        2 x Essuie-glace EG-600 | 29,80
        Huile 10W40 5L | 31,50
        Sous-total | 61,30
        Remise | -6,13
        À payer | 55,17 EUR
        Espèces | 60,00
        Rendu | 4,83
        TVA 21% 45,60 | 9,57
        ",
        &nothing(),
        &Expected {
            shop: "Accessoires Auto Val-Dormant SPRL",
            day: "2026-03-01",
            total: "55.17 EUR",
            taxes: &[(2100, "9.57")],
            items: &[
                ("Essuie-glace EG-600", "2", "", "29.80", "EG-600"),
                ("Huile 10W40 5L", "", "", "31.50", ""),
            ],
            numbers: &["EG-600"],
            ..Expected::default()
        },
    );
}

#[test]
fn a_swiss_receipt_in_french() {
    reads(
        "
        Garage du Vieux-Pont Sàrl
        CHE-987.654.321 TVA
        15 janv. 2026
        Batterie 12V 74Ah réf. BT-074-680 | CHF 189.00
        Montage batterie | CHF 25.00
        Total à payer | CHF 214.00
        TVA 8.1% incluse | CHF 16.04
        Carte | CHF 214.00
        ",
        &nothing(),
        &Expected {
            shop: "Garage du Vieux-Pont Sàrl",
            day: "2026-01-15",
            total: "214.00 CHF",
            taxes: &[(810, "16.04")],
            items: &[
                ("Batterie 12V 74Ah réf. BT-074-680", "", "", "189.00", "BT-074-680"),
                ("Montage batterie", "", "", "25.00", ""),
            ],
            numbers: &["BT-074-680"],
            ..Expected::default()
        },
    );
}
