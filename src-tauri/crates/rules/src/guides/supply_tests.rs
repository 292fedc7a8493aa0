//! What a guide uses up, and how much of it.
#![allow(clippy::unwrap_used)]

use super::*;

#[test]
fn every_supply_that_is_sorted_is_one_of_a_guide() {
    let guides = Guides::shipped().unwrap();
    let used = |key: &str| guides.guides().iter().any(|guide| guide.supplies.iter().any(|one| one == key));
    for key in RENEWED.iter().chain(HOUSEHOLD).chain(VOLUMES.iter().map(|(key, _)| key)) {
        assert!(used(key), "{key}");
    }
    for (_, value) in VOLUMES {
        assert!(guides.values().iter().any(|known| known.key == *value), "{value}");
    }
    assert_eq!(Supply::of("drain-washer"), Supply::Beside);
}

#[test]
fn a_volume_is_read_as_owners_write_it_and_nothing_is_guessed() {
    for text in ["4.3", "4,3", " 4.3 l ", "4,3 L", "4.3 litres"] {
        assert_eq!(litres(text).map(Quantity::number).as_deref(), Some("4.3"), "{text}");
    }
    for text in ["", "about 4", "4.0-4.3", "4.5 qt", "4.3 l with filter", "0", "l"] {
        assert_eq!(litres(text), None, "{text}");
    }
}
