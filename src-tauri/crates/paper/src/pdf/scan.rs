//! Words, names and values in the bytes of a PDF, wherever they stand (ISO 32000-1, 7.2 and 7.3).

/// How many brackets may be open at once. Honest files have a dozen; but brackets also stand in packed pictures by
/// chance, as a random walk that reaches this depth in gigabytes only. The stack that pages are set on is enough for it.
const MAX_DEPTH: u32 = 10_000;

/// What follows a key.
#[derive(Debug, PartialEq)]
pub(super) enum Value<'a> {
    /// A name, or an array of nothing but names.
    Names(Vec<&'a [u8]>),
    /// A whole number; more than it can hold is its greatest.
    Number(u32),
    /// A reference to another object.
    Elsewhere,
    /// Anything else.
    Other,
}

/// Every value that follows the key, wherever it does.
pub(super) fn values<'a>(bytes: &'a [u8], key: &'a [u8]) -> impl Iterator<Item = Value<'a>> {
    let keys = places(bytes, b"/").filter_map(move |at| bytes[at + 1..].strip_prefix(key));
    keys.filter(|rest| rest.first().is_none_or(|next| !is_regular(*next))).map(value)
}

fn value(bytes: &[u8]) -> Value<'_> {
    let bytes = skip_space(bytes);
    match bytes.first() {
        Some(b'/') => Value::Names(vec![word(&bytes[1..])]),
        Some(b'[') => names(&bytes[1..]),
        Some(b'0'..=b'9' | b'+') => number(bytes),
        _ => Value::Other,
    }
}

fn names(mut bytes: &[u8]) -> Value<'_> {
    let mut names = Vec::new();
    loop {
        bytes = skip_space(bytes);
        match bytes.first() {
            Some(b'/') => {
                let name = word(&bytes[1..]);
                names.push(name);
                bytes = &bytes[1 + name.len()..];
            }
            Some(b']') => return Value::Names(names),
            _ => return Value::Elsewhere,
        }
        if names.len() > 8 {
            return Value::Elsewhere;
        }
    }
}

/// A number; two of them and an R are a reference.
fn number(bytes: &[u8]) -> Value<'_> {
    let digits = word(bytes);
    let second = skip_space(&bytes[digits.len()..]);
    let generation = word(second);
    let is_whole = |digits: &[u8]| !digits.is_empty() && digits.iter().all(u8::is_ascii_digit);
    if is_whole(generation) && word(skip_space(&second[generation.len()..])) == b"R" {
        return Value::Elsewhere;
    }
    let whole = digits.iter().skip_while(|digit| **digit == b'+').take_while(|digit| digit.is_ascii_digit());
    Value::Number(
        whole.fold(0u32, |sum, digit| sum.saturating_mul(10).saturating_add(u32::from(digit - b'0'))),
    )
}

/// The characters up to the next that separates.
fn word(bytes: &[u8]) -> &[u8] {
    let end = bytes.iter().position(|next| !is_regular(*next)).unwrap_or(bytes.len());
    &bytes[..end]
}

fn is_regular(byte: u8) -> bool {
    !is_space(byte) && !b"()<>[]{}/%".contains(&byte)
}

fn is_space(byte: u8) -> bool {
    matches!(byte, 0 | b'\t' | b'\n' | 0x0C | b'\r' | b' ')
}

/// What follows white space and comments.
fn skip_space(mut bytes: &[u8]) -> &[u8] {
    loop {
        let start = bytes.iter().position(|next| !is_space(*next)).unwrap_or(bytes.len());
        bytes = &bytes[start..];
        if bytes.first() != Some(&b'%') {
            return bytes;
        }
        let end = bytes.iter().position(|next| matches!(next, b'\n' | b'\r')).unwrap_or(bytes.len());
        bytes = &bytes[end..];
    }
}

/// Everywhere that `wanted` stands.
pub(super) fn places<'a>(bytes: &'a [u8], wanted: &'a [u8]) -> impl Iterator<Item = usize> + 'a {
    let starts = bytes.iter().enumerate().filter(|(_, byte)| wanted.first() == Some(*byte));
    starts.map(|(at, _)| at).filter(|at| bytes[*at..].starts_with(wanted))
}

/// The bytes with each `#` and two hexadecimal digits as the character that they stand for in a name.
pub(super) fn unescaped(bytes: &[u8]) -> Vec<u8> {
    let digit = |at: usize| bytes.get(at).and_then(|byte| char::from(*byte).to_digit(16));
    let mut plain = Vec::with_capacity(bytes.len());
    let mut at = 0;
    while let Some(byte) = bytes.get(at) {
        if let (b'#', Some(high), Some(low)) = (byte, digit(at + 1), digit(at + 2)) {
            plain.push(u8::try_from(high * 16 + low).unwrap_or(b'#'));
            at += 3;
        } else {
            plain.push(*byte);
            at += 1;
        }
    }
    plain
}

/// Whether brackets are nested so deep that the stack of a reader that follows them ends.
pub(super) fn is_deep(bytes: &[u8]) -> bool {
    let mut depth = 0u32;
    for byte in bytes {
        match byte {
            b'[' | b'<' | b'{' => depth += 1,
            b']' | b'>' | b'}' => depth = depth.saturating_sub(1),
            _ => {}
        }
        if depth > MAX_DEPTH {
            return true;
        }
    }
    false
}

/// What the letters stand for, if these are letters of ASCII85 (7.4.3) up to `~>`.
pub(super) fn ascii85(bytes: &[u8]) -> Option<Vec<u8>> {
    let mut decoded = Vec::new();
    let mut group = Vec::with_capacity(5);
    for byte in bytes.iter().copied().filter(|byte| !is_space(*byte)) {
        match byte {
            b'~' => {
                let kept = group.len().saturating_sub(1);
                group.resize(5, b'u' - b'!');
                decoded.extend(&four(&group)[..kept]);
                return Some(decoded);
            }
            b'z' if group.is_empty() => decoded.extend([0; 4]),
            b'!'..=b'u' => group.push(byte - b'!'),
            _ => return None,
        }
        if group.len() == 5 {
            decoded.extend(four(&group));
            group.clear();
        }
    }
    None
}

/// Five digits of base 85 as four bytes.
fn four(group: &[u8]) -> [u8; 4] {
    group.iter().fold(0u32, |sum, digit| sum.wrapping_mul(85).wrapping_add(u32::from(*digit))).to_be_bytes()
}
