//! The address of the page that shows a scanned card.

use std::fmt;
use std::str::FromStr;

use super::CodeError;

/// An `https:` address without `#`, of at most 120 characters that RFC 3986 allows in an address.
///
/// Kept as the owner wrote it; the card's digits follow it after a `#` and are never sent to it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ViewerAddress(String);

impl ViewerAddress {
    /// How many characters an address has at most.
    pub const LONGEST: usize = 120;

    /// The address as written.
    pub fn as_str(&self) -> &str {
        &self.0
    }
}

impl fmt::Display for ViewerAddress {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

impl FromStr for ViewerAddress {
    type Err = CodeError;

    fn from_str(text: &str) -> Result<ViewerAddress, CodeError> {
        let text = text.trim();
        let fits = text.len() <= Self::LONGEST && text.bytes().all(is_address_byte);
        let host =
            text.strip_prefix("https://").map(|rest| rest.split(['/', '?']).next().unwrap_or_default());
        if fits && host.is_some_and(is_host) {
            Ok(ViewerAddress(text.to_owned()))
        } else {
            Err(CodeError::Address(text.chars().take(60).collect()))
        }
    }
}

/// Unreserved, percent, and reserved characters of RFC 3986, section 2, without `#`.
fn is_address_byte(byte: u8) -> bool {
    byte.is_ascii_alphanumeric() || b"-._~%:/?[]@!$&'()*+,;=".contains(&byte)
}

/// A name or address with an optional port; no user name, which would only serve to mislead.
fn is_host(host: &str) -> bool {
    let starts = host.bytes().next().is_some_and(|byte| byte.is_ascii_alphanumeric() || byte == b'[');
    starts && host.bytes().all(|byte| byte.is_ascii_alphanumeric() || b"-.:[]".contains(&byte))
}
