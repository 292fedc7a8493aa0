//! Cutting a line into runs of letters and digits, and telling which of them are bytes.

use super::Code;

/// A run of letters and digits, with what stands between it and the one before.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Run<'a> {
    /// Where in the line it begins.
    pub at: usize,
    pub gap: &'a str,
    pub text: &'a str,
}

/// The runs of a line, in their order.
pub(super) fn runs(line: &str) -> Vec<Run<'_>> {
    let mut runs = Vec::new();
    let mut rest = line;
    while let Some(start) = rest.find(char::is_alphanumeric) {
        let (gap, from) = rest.split_at(start);
        let end = from.find(|c: char| !c.is_alphanumeric()).unwrap_or(from.len());
        let (text, after) = from.split_at(end);
        runs.push(Run { at: line.len() - from.len(), gap, text });
        rest = after;
    }
    runs
}

/// The hexadecimal digits of a run that may be bytes, or the identifier in front of them; `None` for codes,
/// numbers of an odd length, and words that happen to be made of these letters, such as 'added'.
pub(super) fn hex_digits(text: &str) -> Option<&str> {
    let digits = text.strip_prefix("0x").or_else(|| text.strip_prefix("0X")).unwrap_or(text);
    let hex = !digits.is_empty() && digits.bytes().all(|byte| byte.is_ascii_hexdigit());
    let even = digits.len().is_multiple_of(2);
    let identifier_in_front = !even && digits.starts_with('7') && digits.len() != 5;
    let is_word = digits.len() != 2 && !digits.bytes().any(|byte| byte.is_ascii_digit());
    (hex && (even || identifier_in_front) && !is_word && Code::parse(text).is_none()).then_some(digits)
}

impl Run<'_> {
    /// Where in the line it ends.
    pub fn end(&self) -> usize {
        self.at + self.text.len()
    }
}

/// Whether what stands between two runs may stand between two bytes.
pub(super) fn joins_bytes(gap: &str) -> bool {
    gap.chars().all(|c| c.is_whitespace() || matches!(c, ',' | ';' | '-' | '$'))
}

/// Bytes from hexadecimal digits of an even number.
pub(super) fn bytes(digits: &str) -> Option<Vec<u8>> {
    let digit = |byte: u8| char::from(byte).to_digit(16).and_then(|digit| u8::try_from(digit).ok());
    let (pairs, rest) = digits.as_bytes().as_chunks::<2>();
    let bytes = pairs.iter().map(|&[high, low]| Some(digit(high)? << 4 | digit(low)?));
    bytes.collect::<Option<_>>().filter(|_| rest.is_empty())
}
