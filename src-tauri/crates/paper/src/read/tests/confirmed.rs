//! What makes a total sure, and what keeps it from being so.

use super::*;

#[track_caller]
fn total_of(rows: &str) -> (String, Sure) {
    let known = Known { currency: "EUR".parse().ok(), ..nothing() };
    let receipt = read(&text(&format!("Laden Muster\n27.11.2026\n{rows}")), &known);
    let total = receipt.total.unwrap_or_else(|| panic!("no total in {receipt:#?}"));
    (total.value.number(), total.sure)
}

#[test]
fn nothing_is_sure_that_is_printed_once() {
    assert_eq!(total_of("Summe EUR | 12,50"), ("12.50".into(), Sure::Likely));
    assert_eq!(total_of("Irgendwas | 12,50"), ("12.50".into(), Sure::Doubtful));
}

#[test]
fn two_figures_that_agree_are_sure() {
    for rows in [
        "Teil | 12,50\nSumme EUR | 12,50",
        "Summe EUR | 12,50\nGirocard | 12,50",
        "Summe EUR | 12,50\nGegeben | 20,00\nRückgeld | 7,50",
        "Netto | 10,50\nMwSt 19% | 2,00\nGesamtbetrag | 12,50",
        "Summe EUR | 12,50\nenthaltene MwSt 19% | 2,00",
        "Summe | 12,50\nZu zahlen | 12,50",
    ] {
        assert_eq!(total_of(rows), ("12.50".into(), Sure::Sure), "{rows}");
    }
}

#[test]
fn figures_that_disagree_are_not() {
    for rows in [
        "Teil | 11,50\nSumme EUR | 12,50",
        "Teil | 12,50\nSumme EUR | 12,50\nGirocard | 13,50",
        "Teil | 12,50\nSumme | 12,50\nGesamtbetrag | 14,88",
        "Netto | 10,50\nMwSt 19% | 2,00\nGesamtbetrag | 13,50",
    ] {
        assert!(total_of(rows).1 < Sure::Sure, "{rows}");
    }
}

#[test]
fn a_mismatch_is_told_with_both_figures() {
    let receipt = read(
        &text("Laden\nTeil A | 11,50\nTeil B | 3,00\nSumme EUR | 15,50\nBar | 20,00\nRückgeld | 5,50"),
        &nothing(),
    );
    assert_eq!(check(&receipt, CheckKind::Lines), Some((false, "14.50".into(), "15.50".into())));
    assert_eq!(check(&receipt, CheckKind::Paid), Some((false, "14.50".into(), "15.50".into())));
}

#[test]
fn other_sums_are_no_total() {
    for rows in [
        "Teil | 12,50\nZwischensumme | 12,50\nVersand | 4,00\nGesamtbetrag | 16,50",
        "Sous-total | 12,50\nPort | 4,00\nTotal TTC | 16,50",
        "Total HT | 13,75\nTVA 20% | 2,75\nTotal TTC | 16,50",
        "Base imponible | 13,64\nIVA 21% | 2,86\nTotal | 16,50",
        "Subtotal | 15.00\nTax | 1.50\nTotal | 16.50\nYou saved | 20.00",
        "Total items: 3\nTotal | 16.50\nChange | 3.50\nTotal savings | 1.00",
        "TOTAL (3 ITEMS) | 16.50",
        "Total incl. 19% MwSt | 16,50",
        "Total CHF | 16.50\nTotal EUR | 17.10",
        "Betrag | 16,50\nPunktestand | 99,00",
        "Montant dû | 16,50",
        "Suma | 16,50",
    ] {
        assert_eq!(total_of(rows).0, "16.50", "{rows}");
    }
}

#[test]
fn currencies_are_read_by_sign_and_letters() {
    for (rows, code, minor) in [
        ("Razem\nTotal 45,00 PLN", "PLN", 4500),
        ("Total 45,00 zł\nCard 45,00 zł", "PLN", 4500),
        ("Total 1 245,00 Kč", "CZK", 124_500),
        ("Total SEK 245", "SEK", 24_500),
        ("Total $12.50", "USD", 1250),
        ("Total £12.50", "GBP", 1250),
        ("Total Fr. 12.50", "CHF", 1250),
        ("Total CHF 12.-", "CHF", 1200),
        ("Total 12,50€", "EUR", 1250),
    ] {
        let receipt = read(&text(&format!("Laden\n{rows}")), &nothing());
        let total = receipt.total.unwrap_or_else(|| panic!("{rows}"));
        assert_eq!((total.value.currency.code(), total.value.minor), (code, minor), "{rows}");
    }
    // A crown is the household's, and so is a dollar.
    for (own, rows) in [("NOK", "Sum 45,00 kr"), ("CAD", "Total $45.00")] {
        let known = Known { currency: Some(own.parse().unwrap()), ..nothing() };
        let receipt = read(&text(rows), &known);
        assert_eq!(receipt.total.unwrap().value.currency.code(), own);
    }
}

/// Sums bear out prices, and no number of a part.
#[test]
fn sums_that_agree_make_no_number_sure() {
    let rows = "Laden\nÖlfilter ZF 2217 | 12,50\nSumme EUR | 12,50\nGirocard | 12,50";
    let receipt = read(&text(rows), &nothing());
    let [item] = receipt.items.as_slice() else { panic!("{receipt:#?}") };
    assert_eq!(item.sure, Sure::Sure, "its price");
    assert_eq!(item.number.as_ref().map(|number| number.sure), Some(Sure::Likely));
}
