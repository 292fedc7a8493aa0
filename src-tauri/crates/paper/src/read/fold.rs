//! Texts without what a printer, a hurry or a misread letter changes, so that they can be compared.

/// Lower case without accents: `Réf` becomes `ref`, `Größe` becomes `grosse`. Other signs stay.
pub(super) fn plain(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in text.chars().flat_map(char::to_lowercase) {
        match c {
            'à' | 'á' | 'â' | 'ã' | 'ä' | 'å' | 'ą' => out.push('a'),
            'ç' | 'ć' | 'č' => out.push('c'),
            'è' | 'é' | 'ê' | 'ë' | 'ę' | 'ě' => out.push('e'),
            'ì' | 'í' | 'î' | 'ï' | 'ı' => out.push('i'),
            'ñ' | 'ń' | 'ň' => out.push('n'),
            'ò' | 'ó' | 'ô' | 'õ' | 'ö' | 'ø' | 'º' | '°' => out.push('o'),
            'ù' | 'ú' | 'û' | 'ü' | 'ů' => out.push('u'),
            'ý' | 'ÿ' => out.push('y'),
            'ł' => out.push('l'),
            'ś' | 'š' => out.push('s'),
            'ź' | 'ż' | 'ž' => out.push('z'),
            'ß' => out.push_str("ss"),
            'æ' => out.push_str("ae"),
            'œ' => out.push_str("oe"),
            // The combining marks, which is all that is left of an accent that was written apart.
            '\u{300}'..='\u{36f}' => {}
            other => out.push(other),
        }
    }
    out
}

/// The letters and digits of a text in lower case without accents, and each that is easily mistaken for another
/// (0 and O, 1 and I and l, 5 and S, 8 and B, rn and m) written as one of them.
pub(super) fn key(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in plain(text).chars() {
        match c {
            '0' => out.push('o'),
            '1' | 'l' | '|' | '!' => out.push('i'),
            '5' => out.push('s'),
            '8' => out.push('b'),
            'n' if out.ends_with('r') => {
                out.pop();
                out.push('m');
            }
            'v' if out.ends_with('v') => {
                out.pop();
                out.push('w');
            }
            c if c.is_alphanumeric() => out.push(c),
            _ => {}
        }
    }
    out
}

/// What is left of a number when spaces, dots, dashes, slashes and case do not count.
pub(super) fn number(text: &str) -> String {
    text.chars().filter(|c| c.is_alphanumeric()).flat_map(char::to_uppercase).collect()
}

/// The same, with letters and digits that are mistaken for each other as one.
pub(super) fn lookalike(number: &str) -> String {
    number
        .chars()
        .map(|c| match c {
            'O' | 'Q' | 'D' => '0',
            'I' | 'L' | '|' => '1',
            'S' => '5',
            'B' => '8',
            'Z' => '2',
            'G' => '6',
            other => other,
        })
        .collect()
}

/// Whether one text becomes the other by at most one letter put in, left out or changed.
pub(super) fn within_one(one: &[char], other: &[char]) -> bool {
    let (short, long) = if one.len() <= other.len() { (one, other) } else { (other, one) };
    if long.len() - short.len() > 1 {
        return false;
    }
    let same = short.iter().zip(long).take_while(|(a, b)| a == b).count();
    if same == short.len() {
        return true;
    }
    let rest = if short.len() == long.len() { &short[same + 1..] } else { &short[same..] };
    rest == &long[same + 1..]
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn accents_and_case_do_not_count() {
        assert_eq!(plain("Réf. GRÖSSE Größe Nº"), "ref. grosse grosse no");
        assert_eq!(plain("e\u{301}"), "e");
    }

    #[test]
    fn letters_that_look_alike_have_one_key() {
        assert_eq!(key("T0TAL"), key("total"));
        assert_eq!(key("TOTAI"), key("Total"));
        assert_eq!(key("5umme"), key("Summe"));
        assert_eq!(key("Betrag"), key("8etrag"));
        assert_ne!(key("Total"), key("Totem"));
    }

    #[test]
    fn one_slip_is_forgiven() {
        let letters = |text: &str| text.chars().collect::<Vec<char>>();
        let within_one = |one: &str, other: &str| within_one(&letters(one), &letters(other));
        for (one, other) in
            [("betrag", "betrog"), ("betrag", "betrg"), ("betrag", "bettrag"), ("a", ""), ("", "")]
        {
            assert!(within_one(one, other) && within_one(other, one), "{one} {other}");
        }
        for (one, other) in [("betrag", "bterag"), ("betrag", "betr"), ("ab", "ba"), ("abc", "")] {
            assert!(!within_one(one, other) && !within_one(other, one), "{one} {other}");
        }
    }
}
