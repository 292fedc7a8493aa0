//! Numbers that look like chance and are the same every time.

/// A small generator: `SplitMix64` (Steele, Lea and Flood, 'Fast splittable pseudorandom number generators', 2014).
#[derive(Debug, Clone)]
pub(super) struct Chance(u64);

impl Chance {
    /// A generator that always gives the same numbers for the same text.
    pub(super) fn of(text: &str) -> Chance {
        Chance(text.bytes().fold(0, |state: u64, byte| state.wrapping_mul(257).wrapping_add(byte.into())))
    }

    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut mixed = self.0;
        mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        mixed ^ (mixed >> 31)
    }

    /// A number from `low` to `high`, both included; `low` when `high` is not above it.
    pub(super) fn between(&mut self, low: i64, high: i64) -> i64 {
        let span = u64::try_from(high - low).unwrap_or(0) + 1;
        low + i64::try_from(self.next() % span).unwrap_or(0)
    }

    /// True this many times in a hundred.
    pub(super) fn percent(&mut self, percent: i64) -> bool {
        self.between(1, 100) <= percent
    }
}
