//! What has to be opened before a check, once for all checks that share it.

use crate::upkeep::Access;

/// What has to be opened, lifted, plugged in or gone to, once for all checks that share it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Opening {
    /// A group of the catalogue.
    Access(Access),
    /// A drive on the road.
    Drive,
    /// A code reader plugged in.
    Reader,
    /// The car brought to a workshop.
    Workshop,
}

/// A set of openings.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub struct Openings(pub(super) u16);

impl Opening {
    /// Every opening, in the order of its bits in [`Openings`].
    pub const ALL: [Opening; 13] = [
        Opening::Access(Access::Bonnet),
        Opening::Access(Access::AirPath),
        Opening::Access(Access::Ignition),
        Opening::Access(Access::FrontBelt),
        Opening::Access(Access::Cooling),
        Opening::Access(Access::Fuel),
        Opening::Access(Access::Cabin),
        Opening::Access(Access::Battery),
        Opening::Access(Access::Lifted),
        Opening::Access(Access::WheelsOff),
        Opening::Drive,
        Opening::Reader,
        Opening::Workshop,
    ];

    /// Its name in the words: that of the catalogue's group under `access-KEY`, the others under
    /// `opening-KEY`.
    pub const fn key(self) -> &'static str {
        match self {
            Opening::Access(access) => access.key(),
            Opening::Drive => "drive",
            Opening::Reader => "reader",
            Opening::Workshop => "workshop",
        }
    }

    /// The opening with this key.
    pub fn from_key(key: &str) -> Option<Opening> {
        Opening::ALL.into_iter().find(|opening| opening.key() == key)
    }

    fn bit(self) -> u16 {
        Opening::ALL.iter().position(|&other| other == self).map_or(0, |place| 1 << place)
    }
}

impl Openings {
    /// Whether this one is among them.
    pub fn contain(self, opening: Opening) -> bool {
        self.0 & opening.bit() != 0
    }

    /// Those of the set, in the order of [`Opening::ALL`].
    pub fn iter(self) -> impl Iterator<Item = Opening> {
        Opening::ALL.into_iter().filter(move |&opening| self.contain(opening))
    }
}

impl FromIterator<Opening> for Openings {
    fn from_iter<I: IntoIterator<Item = Opening>>(openings: I) -> Openings {
        Openings(openings.into_iter().fold(0, |set, opening| set | opening.bit()))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_set_holds_what_was_put_in_and_keys_lead_back() {
        let set: Openings = [Opening::Drive, Opening::Access(Access::Bonnet)].into_iter().collect();
        for opening in Opening::ALL {
            assert_eq!(Opening::from_key(opening.key()), Some(opening));
            let held = matches!(opening, Opening::Drive | Opening::Access(Access::Bonnet));
            assert_eq!(set.contain(opening), held, "{opening:?}");
        }
        assert_eq!(set.iter().count(), 2);
    }
}
