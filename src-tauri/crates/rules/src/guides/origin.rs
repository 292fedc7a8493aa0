//! Where a caution or a typical value comes from.

use std::str::FromStr;

/// Where a caution or a typical value comes from.
#[derive(Debug, Clone, PartialEq, Eq, Hash)]
pub enum Origin {
    /// A regulation or a law, named.
    Regulation(String),
    /// A publication, named.
    Published(String),
    /// Known of somebody, named, and not read again when it was written down.
    FromMemory(String),
    /// What the trade goes by, without one source.
    CommonPractice,
}

/// Reads it as the tables write it; the error says what would be right.
impl FromStr for Origin {
    type Err = String;

    fn from_str(text: &str) -> Result<Origin, String> {
        let named = text.split_once(": ").filter(|(_, name)| !name.trim().is_empty());
        match named {
            Some(("regulation", name)) => Ok(Origin::Regulation(name.to_owned())),
            Some(("published", name)) => Ok(Origin::Published(name.to_owned())),
            Some(("from memory", name)) => Ok(Origin::FromMemory(name.to_owned())),
            None if text == "common practice" => Ok(Origin::CommonPractice),
            _ => Err(format!(
                "'{text}' is no source; write 'published: WHERE', 'regulation: WHICH', 'from memory: WHO' or \
                 'common practice'"
            )),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_source_is_named_or_common_practice() {
        let named = |text: &str| text.parse::<Origin>();
        assert_eq!(named("regulation: 49 CFR 571.116"), Ok(Origin::Regulation("49 CFR 571.116".to_owned())));
        assert_eq!(named("published: a leaflet"), Ok(Origin::Published("a leaflet".to_owned())));
        assert_eq!(named("from memory: makers"), Ok(Origin::FromMemory("makers".to_owned())));
        assert_eq!(named("common practice"), Ok(Origin::CommonPractice));
        for wrong in ["", "published", "published: ", "hearsay: a friend", "common practice: mine"] {
            assert!(named(wrong).is_err(), "{wrong:?}");
        }
    }
}
