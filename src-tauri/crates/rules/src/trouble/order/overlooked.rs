//! Where to look next when a look can overlook what is there.
//!
//! The thing is in one place. A look there costs something and overlooks it with some chance, each time anew.
//! The least cost until it is found, on the average, comes of looking next where `p * a^m * (1 - a) / c` is
//! largest: `p` the chance that it is there, `a` of overlooking it, `c` the cost and `m` the looks already
//! made there (Blackwell's rule; Chew, A sequential search procedure, Annals of Mathematical Statistics
//! 38(2), 1967).
//!
//! The list of checks keeps it: an answer 'not found' lowers the chances of what the check looks for by `a`,
//! and the check stays in the list with what that leaves, `p * a^m`.

/// A place in which the thing may be.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Place {
    /// The chance that it is there, 0 to 1.
    pub chance: f64,
    /// The chance that one look overlooks it, 0 to below 1.
    pub overlooks: f64,
    /// What one look costs, above 0.
    pub cost: f64,
}

impl Place {
    /// What the next look is worth after so many: chance over cost.
    pub fn worth(&self, looks: u32) -> f64 {
        self.chance * self.overlooks.powi(looks.cast_signed()) * (1.0 - self.overlooks) / self.cost
    }
}

/// Where to look next after so many looks at each place, the first of equals; `None` when there is no place.
pub fn next(places: &[Place], looks: &[u32]) -> Option<usize> {
    let worth = |place: usize| places[place].worth(looks.get(place).copied().unwrap_or(0));
    (0..places.len()).reduce(|best, place| if worth(place) > worth(best) { place } else { best })
}
