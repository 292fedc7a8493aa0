//! What fills a place in a message.

use std::borrow::Cow;

use fluent_bundle::FluentValue;

/// What fills a place in a message.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Arg<'a> {
    /// A text, said as it is.
    Text(Cow<'a, str>),
    /// A count, which also chooses between the forms for one and many; exact below 2^53.
    Count(i64),
}

impl<'a> From<&'a str> for Arg<'a> {
    fn from(text: &'a str) -> Arg<'a> {
        Arg::Text(Cow::Borrowed(text))
    }
}

impl<'a> From<&'a String> for Arg<'a> {
    fn from(text: &'a String) -> Arg<'a> {
        Arg::Text(Cow::Borrowed(text))
    }
}

impl From<String> for Arg<'_> {
    fn from(text: String) -> Self {
        Arg::Text(Cow::Owned(text))
    }
}

impl From<i64> for Arg<'_> {
    fn from(count: i64) -> Self {
        Arg::Count(count)
    }
}

impl From<u32> for Arg<'_> {
    fn from(count: u32) -> Self {
        Arg::Count(count.into())
    }
}

impl From<usize> for Arg<'_> {
    fn from(count: usize) -> Self {
        Arg::Count(i64::try_from(count).unwrap_or(i64::MAX))
    }
}

impl<'a> From<&'a Arg<'_>> for FluentValue<'a> {
    fn from(arg: &'a Arg<'_>) -> FluentValue<'a> {
        match arg {
            Arg::Text(text) => FluentValue::from(text.as_ref()),
            Arg::Count(count) => FluentValue::from(*count),
        }
    }
}
