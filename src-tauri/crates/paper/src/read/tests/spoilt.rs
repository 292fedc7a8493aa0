//! Receipts with letters misread at random: what is marked sure must be right all the same.

use super::*;

/// Receipts whose fields are known from the tests beside this file, in four languages and several layouts.
const RECEIPTS: &[&str] = &[
    "TEILEMARKT NORDHOF GMBH\nDatum 27.10.2026 | 14:32\nÖlfilter | 8,90 A\nArt.-Nr. QV 7120 z\nMotoröl 5W-30 5 L | 42,50 A\n\
     Dichtring 2 x 0,80 | 1,60 A\nSumme EUR | 53,00\nGegeben bar | 60,00\nRückgeld | 7,00\n\
     MwSt 19,00% | Netto 44,54 | MwSt 8,46 | Brutto 53,00",
    "Autoteile Birkenau KG\nRechnungsdatum: 03.04.2026\nFällig am: 17.04.2026\n\
     Pos | Art.-Nr. | Bezeichnung | Menge | Einzelpreis | Gesamt\n1 | BR 4410.22 | Bremsbelagsatz | 1 | 32,69 | 32,69\n\
     2 | SC-99-1200/3 | Bremsscheibe | 2 | 34,66 | 69,32\nNettobetrag | 102,01\nMwSt. 19 % | 19,38\nGesamtbetrag EUR | 121,39",
    "BRAMBLE MOTOR FACTORS LTD\n27/10/2026 10:22 | Till 2\n1 OIL FILTER ZF2217 | £7.49\n2 WIPER BLADE WB-240 @ 8.50 | £17.00\n\
     TOTAL | £24.49\nVISA DEBIT | £24.49\nVAT @ 20% included | £4.08",
    "PRAIRIE FLATS AUTO PARTS\n11/25/2026 04:45 PM\nPFA 8817 SPARK PLUG\n4 @ 7.99 | 31.96 T\nSHOP TOWELS | 5.49 T\n\
     SUBTOTAL | 37.45\nSALES TAX 8.25% | 3.09\nTOTAL | $40.54\nCASH | 60.00\nCHANGE | 19.46",
    "Garage de la Fontaine\nDate : 3 février 2026\nKit d'embrayage EM 30-4410 | 640,00\nMain d'oeuvre | 396,00\n\
     Total HT | 1 036,00\nTVA 20 % | 207,20\nNet à payer | 1 243,20 €",
    "RECAMBIOS EL OLIVAR S.L.\nFecha: 27/10/2026 Hora: 18:05\nFiltro de aceite | 9,95\nRef. OL-7714 M\nAceite 5W-40 5 L | 38,00\n\
     Total a pagar | 47,95 €\nEntregado | 50,00\nCambio | 2,05\nBase imponible | 39,63\nIVA 21% | 8,32",
    "Tankstelle Am Heidekrug\n27.10.2026 07:55\nSäule 4 Super E10 | 75,41 EUR A\n42,15 l x 1,789 EUR/l\n\
     Gesamtbetrag | 75,41 EUR\nA 19,00% 63,37 12,04 75,41\ngirocard | 75,41 EUR",
    "FOXGLOVE SERVICE STATION\n26/10/2026 18:31:09\nPUMP 6\nUNLEADED\nLITRES | 42.15\nPPL | 145.9\nTOTAL | £61.50\nVISA | £61.50",
];

/// Letters that readers of letters put in each other's place, from memory.
const ALIKE: &[&str] =
    &["0OQ8", "1lI7", "5S6", "8B3", "2Z7", "6G8", "38", "49", ".,", "ec", "nh", "vu", "rt", "069", "17"];

/// A small generator of numbers, so that every run spoils alike: Knuth's MMIX constants.
struct Chance(u64);

impl Chance {
    fn below(&mut self, end: usize) -> usize {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        usize::try_from(self.0 >> 33).unwrap() % end
    }
}

/// One letter in a hundred or so misread, and one space in a hundred lost.
fn spoil(receipt: &str, chance: &mut Chance) -> String {
    let mut out = String::new();
    for c in receipt.chars() {
        if chance.below(100) > 0 || c == '\n' || c == '|' {
            out.push(c);
            continue;
        }
        let others: Vec<char> =
            ALIKE.iter().filter(|alike| alike.contains(c)).flat_map(|alike| alike.chars()).collect();
        let others: Vec<char> = others.into_iter().filter(|other| *other != c).collect();
        if c != ' ' {
            out.push(if others.is_empty() { c } else { others[chance.below(others.len())] });
        }
    }
    out
}

/// Every field that is marked sure, as text, by name.
fn sure_fields(receipt: &Receipt) -> Vec<(&'static str, String)> {
    let mut fields = Vec::new();
    let mut push = |name, sure: Sure, value: String| {
        if sure == Sure::Sure {
            fields.push((name, value));
        }
    };
    receipt.day.iter().for_each(|field| push("day", field.sure, one_day(receipt)));
    receipt.total.iter().for_each(|field| push("total", field.sure, field.value.number()));
    receipt.currency.iter().for_each(|field| push("currency", field.sure, field.value.code().to_owned()));
    receipt.numbers.iter().for_each(|field| push("number", field.sure, field.value.clone()));
    receipt.taxes.iter().for_each(|field| push("tax", field.sure, field.value.amount.number()));
    receipt.items.iter().for_each(|item| push("item", item.sure, item.price.number()));
    if let Some(fuel) = &receipt.fuel {
        fuel.volume.iter().for_each(|field| push("volume", field.sure, field.value.0.number(field.value.1)));
        fuel.price.iter().for_each(|field| push("price", field.sure, field.value.thousandths.to_string()));
        fuel.total.iter().for_each(|field| push("fuel", field.sure, field.value.number()));
    }
    fields
}

/// The target is at most one in a hundred; every letter is misread with the same confidence, which is the worst case.
#[test]
fn of_the_fields_marked_sure_at_most_one_in_a_hundred_is_wrong() {
    let mut chance = Chance(4);
    let (mut right, mut wrong) = (0_usize, Vec::new());
    for receipt in RECEIPTS {
        let clean = read(&text(receipt), &nothing());
        let truth: Vec<(&str, String)> = all_fields(&clean);
        for _ in 0..250 {
            let spoilt = spoil(receipt, &mut chance);
            for field in sure_fields(&read(&text(&spoilt), &nothing())) {
                if truth.contains(&field) { right += 1 } else { wrong.push((field, spoilt.clone())) }
            }
        }
    }
    println!("{right} right, {} wrong", wrong.len());
    wrong.iter().take(12).for_each(|(field, spoilt)| println!("{field:?} in\n{spoilt}\n"));
    assert!(right > 4_000, "{right} right");
    assert!(wrong.len() * 100 <= right + wrong.len(), "{} wrong, {right} right", wrong.len());
}

/// What a clean receipt says, with every field taken as sure.
fn all_fields(clean: &Receipt) -> Vec<(&'static str, String)> {
    let mut believed = clean.clone();
    believed.day.iter_mut().for_each(|field| field.sure = Sure::Sure);
    believed.total.iter_mut().for_each(|field| field.sure = Sure::Sure);
    believed.numbers.iter_mut().for_each(|field| field.sure = Sure::Sure);
    believed.taxes.iter_mut().for_each(|field| field.sure = Sure::Sure);
    believed.items.iter_mut().for_each(|item| item.sure = Sure::Sure);
    sure_fields(&believed)
}
