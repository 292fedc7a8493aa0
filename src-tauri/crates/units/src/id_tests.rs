//! Ids and hashes as they are written and read.
#![allow(clippy::unwrap_used)]

use proptest::prelude::*;

use super::*;
use crate::{Hash, WriterKey};

/// RFC 9562, appendix A.6: its example of version 7, of 1 645 557 742 000 ms since 1970.
#[test]
fn ids_are_uuids_of_version_7() {
    // The example's rand_a is 0xCC3 and its rand_b 0x18C4DC0C0C07398F; version and variant lie over these bytes.
    let random = [0x0c, 0xc3, 0x18, 0xc4, 0xdc, 0x0c, 0x0c, 0x07, 0x39, 0x8f];
    let id = EntryId::new(1_645_557_742_000, random);
    assert_eq!(id.to_string(), "017f22e2-79b0-7cc3-98c4-dc0c0c07398f");
}

#[test]
fn ids_are_read_with_or_without_dashes() {
    let id = BookId([0xab; 16]);
    assert_eq!("abababab-abab-abab-abab-abababababab".parse(), Ok(id));
    assert_eq!("ABABABABABABABABABABABABABABABAB".parse(), Ok(id));
    for text in ["", "ab", "+bababab-abab-abab-abab-abababababab", &"ab".repeat(17), &"é".repeat(16)] {
        assert!(matches!(text.parse::<BookId>(), Err(UnitError::Id(_))), "{text}");
    }
}

#[test]
fn later_ids_come_later() {
    assert!(EntryId::new(1, [0xff; 10]) < EntryId::new(2, [0; 10]));
}

/// FIPS 180-4's example: the SHA-256 of 'abc'.
#[test]
fn hashes_are_hexadecimal() {
    let text = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";
    let hash: Hash = text.parse().unwrap();
    assert_eq!(hash.0[..4], [0xba, 0x78, 0x16, 0xbf]);
    assert_eq!(hash.to_string(), text);
    assert!(matches!(text[1..].parse::<WriterKey>(), Err(UnitError::Hash(_))));
}

proptest! {
    #[test]
    fn ids_and_hashes_come_back(id in any::<[u8; 16]>(), hash in any::<[u8; 32]>()) {
        prop_assert_eq!(SubjectId(id).to_string().parse(), Ok(SubjectId(id)));
        prop_assert_eq!(Hash(hash).to_string().parse(), Ok(Hash(hash)));
    }

    #[test]
    fn whatever_is_typed_is_taken_or_refused(text in ".{0,70}") {
        if let Ok(id) = text.parse::<EntryId>() {
            prop_assert_eq!(id.to_string().replace('-', ""), text.replace('-', "").to_lowercase());
        }
        let _ = text.parse::<Hash>();
    }
}
