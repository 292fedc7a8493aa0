//! Numbers by chance from a fixed seed, so that a simulation gives the same figures on every machine.

/// `SplitMix64` (Steele, Lea and Flood, Fast splittable pseudorandom number generators, 2014).
pub(crate) struct Chance(pub u64);

impl Chance {
    fn bits(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mixed = (self.0 ^ (self.0 >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        let mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        mixed ^ (mixed >> 31)
    }

    /// Evenly between the two.
    #[allow(clippy::cast_precision_loss)]
    pub fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * (self.bits() >> 11) as f64 / (1_u64 << 53) as f64
    }

    /// A whole number below `count`.
    #[allow(clippy::cast_possible_truncation)]
    pub fn below(&mut self, count: usize) -> usize {
        (self.bits() % count as u64) as usize
    }

    pub fn one_in(&mut self, count: u64) -> bool {
        self.bits().is_multiple_of(count)
    }

    /// Normally distributed about 0 (Box and Muller's method).
    pub fn normal(&mut self, deviation: f64) -> f64 {
        let radius = (-2.0 * self.between(f64::MIN_POSITIVE, 1.0).ln()).sqrt();
        deviation * radius * self.between(0.0, std::f64::consts::TAU).cos()
    }
}
