//! Numbers as they are printed: thousands apart by a thin space, which reads the same in every language, and the
//! decimal mark of the language of the sheet.

use units::{DistanceUnit, Money};
use words::Words;

/// A reading, and its unit behind it where it is named.
pub(super) fn reading(count: i64, unit: Option<DistanceUnit>) -> String {
    let number = signed(count < 0, &count.unsigned_abs().to_string());
    unit.map_or(number.clone(), |unit| format!("{number}\u{a0}{unit}"))
}

/// What was written with a point: `-1234.50` is `−1 234,50` in German.
pub(super) fn decimal(number: &str, words: &Words) -> String {
    let (negative, number) = number.strip_prefix('-').map_or((false, number), |rest| (true, rest));
    let (whole, decimals) = number.split_once('.').unwrap_or((number, ""));
    let whole = signed(negative, whole);
    if decimals.is_empty() {
        return whole;
    }
    format!("{whole}{}{decimals}", words.say("card-decimal-mark", &[]))
}

/// A sum with its currency.
pub(super) fn money(money: Money, words: &Words) -> String {
    format!("{} {}", decimal(&money.number(), words), money.currency)
}

fn signed(negative: bool, digits: &str) -> String {
    let sign = if negative { "\u{2212}" } else { "" };
    format!("{sign}{}", grouped(digits))
}

/// Digits with thin spaces between groups of three.
fn grouped(digits: &str) -> String {
    let digits: Vec<char> = digits.chars().collect();
    let groups = digits.rchunks(3).rev().map(String::from_iter);
    groups.collect::<Vec<_>>().join("\u{202f}")
}

#[cfg(test)]
mod tests {
    use words::Face;

    use super::*;

    #[test]
    fn thousands_stand_apart_and_a_minus_is_a_minus() {
        let said = [0, 999, 1_000, -98_420, 1_234_567].map(|count| reading(count, None));
        assert_eq!(said, ["0", "999", "1\u{202f}000", "\u{2212}98\u{202f}420", "1\u{202f}234\u{202f}567"]);
        assert_eq!(reading(980, Some(DistanceUnit::Mile)), "980\u{a0}mi");
    }

    /// Unicode CLDR, decimal separators, from memory.
    #[test]
    fn each_language_has_its_decimal_mark() {
        for (lang, expected) in [
            ("en", ["\u{2212}1\u{202f}234.50", "0.05", "172"]),
            ("de", ["\u{2212}1\u{202f}234,50", "0,05", "172"]),
            ("fr", ["\u{2212}1\u{202f}234,50", "0,05", "172"]),
            ("es", ["\u{2212}1\u{202f}234,50", "0,05", "172"]),
        ] {
            let words = Words::load_for(Face::Card, lang);
            assert_eq!(["-1234.50", "0.05", "172"].map(|number| decimal(number, &words)), expected, "{lang}");
        }
    }
}
