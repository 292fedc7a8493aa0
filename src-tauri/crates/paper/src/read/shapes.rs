//! What numbers of parts look like, and what looks like them and is something else.

use std::ops::Range;

use super::dates::month;
use super::fold::{number, plain};
use super::page::Line;
use super::place::vat_country;
use super::stamp;
use super::words::{GALLONS, LITRES, PIECES, Role, SETS, SIZES};

/// What a text is made of.
pub(super) struct Shape {
    /// Letters.
    pub letters: usize,
    /// Digits.
    pub digits: usize,
    /// Signs and spaces.
    pub signs: usize,
    /// The longest run of letters of which one is small.
    pub longest_word: usize,
}

impl Shape {
    /// Counts.
    pub fn of(text: &str) -> Shape {
        let count = |is: fn(char) -> bool| text.chars().filter(|c| is(*c)).count();
        let words =
            text.split(|c: char| !c.is_alphabetic()).filter(|word| word.chars().any(char::is_lowercase));
        Shape {
            letters: count(char::is_alphabetic),
            digits: count(|c| c.is_ascii_digit()),
            signs: count(|c| !c.is_alphanumeric()),
            longest_word: words.map(|word| word.chars().count()).max().unwrap_or(0),
        }
    }
}

/// How many of these tokens belong to one number, which begins with the first.
pub(super) fn reach(line: &Line, tokens: &[Range<usize>]) -> usize {
    let mut count = 1;
    while count < tokens.len().min(6) && goes_on(line, &tokens[..count], &tokens[count..]) {
        count += 1;
    }
    count
}

/// Whether the next token belongs to the number so far: `QV` `7120` `z`, `0` `773` `458`, but no quantity, no price.
fn goes_on(line: &Line, so_far: &[Range<usize>], rest: &[Range<usize>]) -> bool {
    let (Some(first), Some(last), Some(next)) = (so_far.first(), so_far.last(), rest.first()) else {
        return false;
    };
    let text = line.text(next.clone());
    let before = line.text(last.clone());
    let shape = Shape::of(&text);
    let close = next.start == last.end + 1
        && line.at(last.end) == ' '
        && line.in_one_stretch(&(first.start..next.end));
    let long = number(&line.text(first.start..next.end)).len() > 20;
    let prefix = so_far.len() == 1 && leads(line, last);
    let amount = is_amount(line, next) && (!prefix || is_last_amount(line, next));
    let measure = is_measure(&text) && !(prefix && is_series(&before, &text));
    let labelled = line.labels.all.iter().any(|label| {
        label.role != Role::Filler && label.at.contains(&next.start) && label.at.end >= next.end
    });
    let time = stamp::time(line, next.start).is_some_and(|end| end > next.end);
    if !close || long || amount || labelled || is_quantity(line, next) || measure || is_day(&text) || time {
        return false;
    }
    let ends_in_digit = before.ends_with(|c: char| c.is_ascii_digit());
    let numeric = shape.letters == 0;
    match () {
        () if Shape::of(&before).digits == 0 => prefix && shape.digits >= 1,
        // A letter or two behind the digits.
        () if shape.digits == 0 => ends_in_digit && is_suffix(line, so_far, next),
        // Groups of digits: two or more of them, or the last would be a quantity.
        () if numeric && Shape::of(&before).letters == 0 => {
            text.len() >= 2 || stands_within(line, so_far, rest)
        }
        () if numeric => text.len() >= 2 && shape.signs <= 1,
        () => text.len() <= 6 && shape.longest_word < 4 && !is_unit(&plain(&text)),
    }
}

/// A letter or two that end a number and are no word and no unit. Behind three groups a capital is no unit either, and
/// behind a maker's letters an `x` multiplies nothing as long as no number follows.
fn is_suffix(line: &Line, so_far: &[Range<usize>], next: &Range<usize>) -> bool {
    let text = line.text(next.clone());
    let capitals = text.chars().all(char::is_uppercase);
    let behind = next.end..next.end + 2;
    let follows = line.in_one_stretch(&(next.start..behind.end))
        && behind.clone().any(|at| line.at(at).is_ascii_digit());
    let multiplies = text == "x" && (so_far.len() != 2 || follows);
    let unit = is_unit(&text) && text != "x" && !(capitals && so_far.len() >= 3);
    (capitals || text.len() == 1) && text.len() <= 2 && !unit && !multiplies
}

/// A single digit between groups of digits, the next of at least three: `31 24 7 550 118`.
fn stands_within(line: &Line, so_far: &[Range<usize>], rest: &[Range<usize>]) -> bool {
    let [one, next, ..] = rest else { return false };
    let digits = |at: &Range<usize>| at.clone().all(|at| line.at(at).is_ascii_digit());
    let close =
        next.start == one.end + 1 && line.at(one.end) == ' ' && line.in_one_stretch(&(one.start..next.end));
    so_far.len() >= 2 && close && digits(next) && next.len() >= 3 && !is_amount(line, next)
}

/// A letter with two groups of digits, `V 812/97`, which without the letter would look like a size of tyre. A tyre may
/// have a `P` or `LT` before it (ISO 4000-1, the Tire and Rim Association's prefixes).
fn is_series(letters: &str, digits: &str) -> bool {
    !matches!(letters, "P" | "LT" | "T" | "ST") && is_tyre(digits)
}

/// Whether a number may begin with this token: it has digits of its own or leads some, and is nothing else.
pub(super) fn begins(line: &Line, token: &Range<usize>) -> bool {
    let text = line.text(token.clone());
    let digits = Shape::of(&text).digits > 0;
    if stamp::is_stamp(line, token.start) || stamp::is_rest_of_time(line, token) {
        return false;
    }
    if digits { !(is_amount(line, token) || is_day(&text) || is_measure(&text)) } else { leads(line, token) }
}

/// Letters that makers put before digits; one that is also a unit only where nothing that it could be the unit of
/// stands before it, and a long number behind.
fn leads(line: &Line, token: &Range<usize>) -> bool {
    let text = line.text(token.clone());
    if !matches!(text.as_str(), "W" | "V" | "L" | "X") {
        return is_prefix(&text);
    }
    let behind: String = line.text(token.end..token.end + 4).chars().skip(1).collect();
    let digits = line.at(token.end) == ' ' && behind.len() == 3 && behind.chars().all(|c| c.is_ascii_digit());
    let counted = token
        .start
        .checked_sub(2)
        .is_some_and(|at| line.at(at).is_ascii_digit() && line.in_one_stretch(&(at..token.end)));
    digits && !counted
}

fn is_amount(line: &Line, token: &Range<usize>) -> bool {
    line.amounts().any(|figure| figure.at.start < token.end && token.start < figure.at.end)
}

fn is_last_amount(line: &Line, token: &Range<usize>) -> bool {
    line.amounts().next_back().is_some_and(|last| last.at.start < token.end)
}

/// One to four capitals before the digits, as makers put them; no word of the trade.
fn is_prefix(text: &str) -> bool {
    const WORDS: &[&str] = &[
        "OIL", "AIR", "SET", "KIT", "PAD", "FUEL", "BELT", "CAP", "LED", "BULB", "DISC", "DISK", "PLUG",
        "HOSE", "FOR", "OEL", "ÖL", "SATZ", "FÜR", "LUFT", "VORN", "VA", "HA", "VR", "HR", "VL", "HL",
        "FILT", "MIT", "TYP", "PKW", "AV", "AR", "JEU", "FILTRE", "PNEU", "POUR", "EAU", "BAR", "PARA",
        "DEL", "TRAS", "JGO", "BOMB", "AUTO", "CAR", "RH", "LH", "FR", "RR", "VAN", "ART", "POS", "QTY",
        "STK", "DE", "LA", "EL", "UN", "UD", "EUR", "GBP", "USD", "CHF", "REF", "NR", "NO", "PN", "ACEA",
        "API", "SAE", "DOT", "ATF", "EURO", "TYRE", "TIRE", "RIM", "NUT", "BOLT", "SEAL", "RING", "HUB",
        "WAX", "TOP", "PRO", "MAX", "NEW", "ALT", "NEU", "MM", "ML", "CL", "KG", "W", "V", "L", "X",
    ];
    let capitals = text.chars().all(char::is_uppercase) && (1..=4).contains(&text.chars().count());
    capitals && !WORDS.contains(&text) && month(text).is_none()
}

/// A number before a sign of multiplication, or before the word for pieces.
fn is_quantity(line: &Line, token: &Range<usize>) -> bool {
    let text = plain(&line.text(token.clone()));
    let digits = |rest: &str| !rest.is_empty() && rest.chars().all(|c| c.is_ascii_digit());
    let times = text.strip_suffix('x').is_some_and(digits)
        || text.strip_prefix('x').is_some_and(|rest| rest.len() == 1 && digits(rest));
    let figure =
        line.figures.iter().find(|figure| figure.at.start == token.start && figure.at.end <= token.end);
    let counted = figure.is_some_and(|figure| {
        let of = |units: &[&str]| units.contains(&figure.unit.as_str());
        let near = line.in_one_stretch(&(figure.at.start..figure.at.end + 2));
        // Nobody buys a hundred of them.
        near && figure.at.len() <= 2 && (of(PIECES) || of(SETS) || of(LITRES))
    });
    (times || counted) && !leading_nought(&text)
}

fn is_unit(text: &str) -> bool {
    let text = plain(text);
    let text = text.as_str();
    [SIZES, PIECES, SETS, LITRES].iter().any(|units| units.contains(&text)) || text == "eur" || text == "bar"
}

/// Whether a grade of oil or a standard stands before this on the line: what follows is its class and no number, until
/// the size of the can ends it. `5W-30 C3 4L TX-4410` has a number, and `5W-30 4L ACEA C3` has none.
pub(super) fn after_grade(line: &Line, position: usize) -> bool {
    let before = |word: &&Range<usize>| word.end <= position;
    let graded = line.words.iter().filter(before).filter(|word| is_oil_grade(&line.text((*word).clone())));
    let standards =
        line.labels.all.iter().filter(|label| label.role == Role::Grade && label.at.end <= position);
    let last = graded.map(|word| word.end).chain(standards.map(|label| label.at.end)).max();
    last.is_some_and(|last| !sized(line, last..position))
}

/// Whether a volume stands within this part of the line.
fn sized(line: &Line, within: Range<usize>) -> bool {
    line.figures.iter().any(|figure| {
        let volume = LITRES.contains(&figure.unit.as_str()) || matches!(figure.unit.as_str(), "ml" | "cl");
        volume && figure.at.start >= within.start && figure.at.end < within.end
    })
}

/// Whether a text that has the shape of a number is none of the things that have it too.
pub(super) fn is_number(line: &Line, at: &Range<usize>, text: &str) -> bool {
    let bare = number(text);
    let amount =
        line.figures.iter().any(|figure| figure.at == *at && (figure.is_amount() || figure.is_percent()));
    let ean = bare.len() >= 12 && is_gtin(&bare);
    let day = is_day(text);
    let vat = vat_country(&bare).is_some()
        && bare.starts_with(|c: char| c.is_ascii_alphabetic())
        && bare.len() >= 10;
    let masked = text.contains("**") || bare.contains("XXXX");
    let plus = at.start.checked_sub(1).is_some_and(|before| line.at(before) == '+');
    !(amount || ean || day || vat || masked || plus || is_iban(&bare) || is_card(&bare) || is_measure(text))
}

/// A day, or a span of years.
fn is_day(text: &str) -> bool {
    let parts: Vec<&str> = text.split(['.', '/', '-']).collect();
    let numbers: Vec<Option<u32>> =
        parts.iter().map(|part| part.parse().ok().or_else(|| month(part))).collect();
    let year = |number: u32| (1950..2100).contains(&number);
    match numbers.as_slice() {
        [Some(a), Some(b), Some(c)] => {
            let named = parts[1].starts_with(char::is_alphabetic);
            let lengths =
                parts[0].len() <= 2 && (parts[1].len() <= 2 || named) && matches!(parts[2].len(), 2 | 4);
            (lengths && *a <= 31 && *b <= 31) || (year(*a) && *b <= 12 && *c <= 31)
        }
        [Some(a), Some(b)] => (year(*a) && year(*b)) || (*a <= 12 && year(*b) && parts[0].len() <= 2),
        _ => false,
    }
}

/// GTIN of 12, 13 or 14 digits with its check digit: GS1 General Specifications, section 7.9.
fn is_gtin(bare: &str) -> bool {
    let digits: Option<Vec<u32>> = bare.chars().map(|c| c.to_digit(10)).collect();
    let Some(digits) = digits.filter(|digits| (12..=14).contains(&digits.len())) else { return false };
    // Weights 3 and 1 in turn, from the digit before the check digit to the left.
    let sum: u32 =
        digits.iter().rev().enumerate().map(|(at, digit)| digit * if at % 2 == 1 { 3 } else { 1 }).sum();
    sum.is_multiple_of(10)
}

/// An IBAN with its check digits: ISO 13616, by ISO/IEC 7064 MOD 97-10.
fn is_iban(bare: &str) -> bool {
    let bytes = bare.as_bytes();
    let form = (15..=34).contains(&bytes.len())
        && bytes[..2].iter().all(u8::is_ascii_uppercase)
        && bytes[2..4].iter().all(u8::is_ascii_digit);
    if !form || !bare.is_ascii() {
        return false;
    }
    let (head, tail) = bare.split_at(4);
    let rest = tail.chars().chain(head.chars()).filter_map(|c| c.to_digit(36)).fold(0_u32, |rest, value| {
        if value < 10 { (rest * 10 + value) % 97 } else { (rest * 100 + value) % 97 }
    });
    rest == 1
}

/// A payment card's number: sixteen digits or so with the check digit of ISO/IEC 7812-1, annex B.
fn is_card(bare: &str) -> bool {
    let digits: Option<Vec<u32>> = bare.chars().map(|c| c.to_digit(10)).collect();
    let Some(digits) = digits.filter(|digits| (15..=19).contains(&digits.len())) else { return false };
    let doubled =
        |(at, digit): (usize, &u32)| if at % 2 == 1 { digit * 2 / 10 + digit * 2 % 10 } else { *digit };
    digits.iter().rev().enumerate().map(doubled).sum::<u32>().is_multiple_of(10)
}

/// Sizes, powers, grades and the like.
fn is_measure(text: &str) -> bool {
    let bare: String = plain(text).chars().filter(|c| *c != ' ').collect();
    is_oil_grade(&bare)
        || is_tyre(&bare)
        || is_bulb(&bare)
        || is_cap(&bare)
        || is_thread_or_size(&bare)
        || ((with_units(&bare) || with_units(&bare.replace('o', "0"))) && !leading_nought(&bare))
        || is_price_of_one(&bare)
        || is_engine(&bare)
        || is_refrigerant(&bare)
        || is_approval(&bare)
        || is_clock(&bare)
}

/// `504.00/507.00`, `229.51`, `wss-m2c913-d`, `rn0720`: approvals as makers of cars write them on cans of oil.
fn is_approval(text: &str) -> bool {
    let digits =
        |part: &str, count: usize| part.len() == count && part.bytes().all(|byte| byte.is_ascii_digit());
    let sheet = |part: &str| {
        part.split_once('.')
            .is_some_and(|(group, sheet)| digits(group, 3) && (digits(sheet, 1) || digits(sheet, 2)))
    };
    text.split('/').all(sheet)
        || text.starts_with("wss-m2c")
        || text.strip_prefix("rn").is_some_and(|rest| digits(rest, 4))
}

/// `14h55`: a time.
fn is_clock(text: &str) -> bool {
    text.split_once('h').is_some_and(|(hour, minutes)| {
        let below = |part: &str, below: u32| {
            (1..=2).contains(&part.len()) && part.parse().is_ok_and(|number: u32| number < below)
        };
        minutes.len() == 2 && below(hour, 24) && below(minutes, 60)
    })
}

/// `05P`, as parts are numbered: nothing is counted or measured with a nought in front.
fn leading_nought(text: &str) -> bool {
    let mut chars = text.chars();
    chars.next() == Some('0') && chars.next().is_some_and(|c| c.is_ascii_digit())
}

/// `1.829/L`, `3.459/gal`, `Fr.1.729`: the price of a litre or gallon.
fn is_price_of_one(text: &str) -> bool {
    let (number, unit) = text.rsplit_once('/').unwrap_or((text, ""));
    let volume = LITRES.contains(&unit) || GALLONS.contains(&unit);
    let currency = ["fr", "chf", "eur", "gbp", "usd"].iter().find_map(|code| number.strip_prefix(code));
    let decimal = |number: &str| {
        number.contains(['.', ',']) && number.chars().all(|c| c.is_ascii_digit() || matches!(c, '.' | ','))
    };
    (volume && decimal(number)) || currency.is_some_and(|number| decimal(number.trim_start_matches('.')))
}

/// `PX26d`, `BA15s`, `P14.5s`, `W2.1x9.5d`: lamp caps, IEC 60061-1.
fn is_cap(text: &str) -> bool {
    let letters = text.chars().take_while(char::is_ascii_alphabetic).count();
    let (kind, rest) = text.split_at(letters);
    let kinds =
        ["p", "px", "py", "pg", "pk", "pgj", "pgu", "ba", "bay", "bau", "baw", "bax", "w", "sv", "e", "g"];
    let size = rest.trim_end_matches(|c: char| c.is_ascii_alphabetic());
    let sizes = |part: &str| {
        !part.is_empty()
            && part.len() <= 4
            && part.chars().all(|c| c.is_ascii_digit() || matches!(c, '.' | ','))
    };
    let contacts = rest.get(size.len()..).unwrap_or_default();
    kinds.contains(&kind) && size.split('x').all(sizes) && matches!(contacts, "s" | "d" | "t" | "q")
}

/// `5W-30`, `75W90`: SAE J300 and J306.
fn is_oil_grade(text: &str) -> bool {
    let bytes: Vec<u8> = text.bytes().map(|byte| byte.to_ascii_lowercase()).collect();
    let digit = |at: usize| bytes.get(at).is_some_and(u8::is_ascii_digit);
    (1..bytes.len()).any(|at| {
        let behind = at + 1 + usize::from(bytes.get(at + 1) == Some(&b'-'));
        let lead = digit(at - 1) && !(at >= 3 && digit(at - 2) && digit(at - 3));
        // A letter before the digits makes it something longer, but for the standard's own name.
        let first = if at >= 2 && digit(at - 2) { at - 2 } else { at - 1 };
        let lead = lead
            && (first == 0 || !bytes[first - 1].is_ascii_alphabetic() || bytes[..first].ends_with(b"sae"));
        bytes[at] == b'w' && lead && digit(behind) && digit(behind + 1) && !digit(behind + 3)
    })
}

/// `205/55R16`, `205/55ZR1691V`, `225/45`: ISO 4000-1.
fn is_tyre(text: &str) -> bool {
    let mut parts = text.split('/');
    let (Some(width), Some(rest)) = (parts.next(), parts.next()) else { return false };
    let digits = rest.chars().take_while(char::is_ascii_digit).count();
    let behind = rest.get(digits..).unwrap_or_default();
    let wide = width.len() == 3 && width.chars().all(|c| c.is_ascii_digit());
    wide && digits == 2 && (behind.is_empty() || behind.starts_with('r') || behind.starts_with("zr"))
}

/// `P21/5W`, `PY21W`, `H7`: categories of UN Regulation No. 37.
fn is_bulb(text: &str) -> bool {
    let letters = text.chars().take_while(char::is_ascii_alphabetic).count();
    let rest = text.get(letters..).unwrap_or_default();
    let form =
        rest.chars().all(|c| c.is_ascii_digit() || matches!(c, '/' | 'w' | 'b')) && rest.ends_with('w');
    (1..=3).contains(&letters) && form && text.len() <= 6
}

/// `M12x1,5`, `12x17`, `4x100`, and washers of DIN 7603 in form A or C, `A14x20`, with what they are made of.
fn is_thread_or_size(text: &str) -> bool {
    let body = text.strip_prefix(['m', 'a', 'c']).unwrap_or(text).trim_end_matches("mm");
    let body = ["cu", "al", "st", "fe"].iter().find_map(|metal| body.strip_suffix(metal)).unwrap_or(body);
    let parts: Vec<&str> = body.split('x').collect();
    let number = |part: &&str| {
        !part.is_empty()
            && part.len() <= 4
            && part.chars().all(|c| c.is_ascii_digit() || matches!(c, '.' | ','))
            && !(part.starts_with('0') && part.bytes().all(|byte| byte.is_ascii_digit()))
    };
    parts.len() >= 2 && parts.iter().all(number)
}

/// Nothing but numbers with units: `12V55W`, `500ml`, `74Ah`.
fn with_units(text: &str) -> bool {
    let mut rest = text;
    let mut any = false;
    while !rest.is_empty() {
        let digits =
            rest.find(|c: char| !c.is_ascii_digit() && !matches!(c, '.' | ',')).unwrap_or(rest.len());
        let behind = rest.get(digits..).unwrap_or_default();
        let letters = behind.find(|c: char| !c.is_alphabetic()).unwrap_or(behind.len());
        let unit = behind.get(..letters).unwrap_or_default();
        let number = rest.get(..digits).unwrap_or_default();
        if digits == 0
            || (digits > 4 && !matches!(unit, "km" | "mi"))
            || number.ends_with(['.', ','])
            || !(is_unit(unit)
                || matches!(unit, "a" | "km" | "mi" | "kg" | "g" | "m" | "en" | "gal" | "p" | "pc"))
        {
            return false;
        }
        any = true;
        rest = behind.get(letters..).unwrap_or_default().trim_start_matches('/');
    }
    any
}

/// `1.6TDI`, `2,0i`: a displacement with letters.
fn is_engine(text: &str) -> bool {
    let bytes = text.as_bytes();
    let lead = bytes.len() >= 4
        && bytes[0].is_ascii_digit()
        && matches!(bytes[1], b'.' | b',')
        && bytes[2].is_ascii_digit();
    lead && bytes[3..].iter().all(u8::is_ascii_alphabetic)
}

/// `R134a`, `R1234yf`: ISO 817.
fn is_refrigerant(text: &str) -> bool {
    matches!(text, "r134a" | "r1234yf" | "r744" | "r12")
}

#[cfg(test)]
#[path = "shapes_tests.rs"]
mod tests;
