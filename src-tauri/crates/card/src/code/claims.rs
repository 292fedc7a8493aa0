//! What a card says: the claims, typed.
//!
//! Readings are in whole units of [`Claims::unit`]. Bounds: a day lies in the years 1900 to 2199, a reading
//! and a number of the catalogue within 32 bits; what is read from outside these is refused.

use std::fmt;
use std::ops::{BitOr, BitOrAssign};

use units::{Day, DistanceUnit, Hash};

/// How many lines of what comes next a card carries at most.
pub const NEXT_MAX: usize = 6;

/// Everything that a history card says.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Claims {
    /// The day on which the card was issued, 1970-01-01 or later.
    pub issued: Day,
    /// Which car.
    pub vehicle: Vehicle,
    /// The unit in which all readings of this card count.
    pub unit: DistanceUnit,
    /// The latest reading of the odometer.
    pub latest: OdometerReading,
    /// The visits that the card carries, oldest first. Writing sorts them by day.
    pub visits: Vec<Visit>,
    /// How many older visits the book holds beyond [`Claims::visits`].
    pub left_out: u32,
    /// The head of the book at the day of issue.
    pub head: Option<HeadPrefix>,
    /// What comes next, the most urgent first; a card carries the first [`NEXT_MAX`].
    pub next: Vec<NextDue>,
    /// When instruments were replaced.
    pub instruments: Vec<InstrumentChange>,
}

/// Which car the card speaks of.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Vehicle {
    /// The owner's name for it.
    pub name: String,
    /// The vehicle identification number, absent where the owner hides it.
    pub vin: Option<String>,
    /// What drives it.
    pub engine: Option<Engine>,
    /// Make, model and year in one text.
    pub description: Option<String>,
    /// The day of first use.
    pub first_use: Option<Day>,
}

/// What drives a car.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Engine {
    /// Petrol.
    Petrol,
    /// Diesel.
    Diesel,
    /// Petrol with an electric motor.
    PetrolHybrid,
    /// Diesel with an electric motor.
    DieselHybrid,
    /// Liquefied or compressed gas.
    Gas,
    /// Electric only.
    Electric,
    /// Anything else.
    Other,
}

/// What an odometer showed on a day.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct OdometerReading {
    /// The day.
    pub day: Day,
    /// The reading in whole units of the card.
    pub reading: i32,
}

/// One visit: when, at what reading, what was done.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Visit {
    /// The day.
    pub day: Day,
    /// The reading in whole units of the card.
    pub reading: i32,
    /// By whom, and how well it is recorded.
    pub flags: Flags,
    /// What was done.
    pub items: Vec<Item>,
}

/// A thing that was or will be done.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Item {
    /// The stable number of an item in the catalogue; numbers are never reused.
    Catalogue(u32),
    /// An item of the owner's own, by its name.
    Own(String),
}

/// By whom a visit was done, and how well it is recorded: a set of the constants below.
///
/// Bits that this version does not know are kept.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Hash)]
pub struct Flags(u32);

/// What comes next: an item with the day or reading at which it falls due.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct NextDue {
    /// What will be due.
    pub item: Item,
    /// The day by which it is due.
    pub day: Option<Day>,
    /// The reading by which it is due, in whole units of the card.
    pub reading: Option<i32>,
}

/// A replaced odometer.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct InstrumentChange {
    /// The day of the change.
    pub day: Day,
    /// What the old one showed last, in whole units of the card.
    pub old: i32,
    /// What the new one showed first, in whole units of the card.
    pub new: i32,
}

/// The first 16 bytes of the SHA-256 value that is the head of a book.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct HeadPrefix(pub [u8; 16]);

impl Claims {
    /// How many visits the book holds, carried or not.
    pub fn visits_in_book(&self) -> u32 {
        u32::try_from(self.visits.len()).unwrap_or(u32::MAX).saturating_add(self.left_out)
    }
}

impl Flags {
    /// Nothing said.
    pub const NONE: Flags = Flags(0);
    /// Done by the owner.
    pub const BY_OWNER: Flags = Flags(1);
    /// Done by a workshop.
    pub const BY_WORKSHOP: Flags = Flags(2);
    /// A receipt is in the book.
    pub const RECEIPT: Flags = Flags(4);
    /// A photo is in the book.
    pub const PHOTO: Flags = Flags(8);
    /// Written down more than 30 days after the day it names.
    pub const WRITTEN_LATE: Flags = Flags(16);
    /// Amended since it was written.
    pub const AMENDED: Flags = Flags(32);

    /// The set with this sum.
    pub const fn from_bits(bits: u32) -> Flags {
        Flags(bits)
    }

    /// The sum that stands for the set.
    pub const fn bits(self) -> u32 {
        self.0
    }

    /// Whether all of `other` is in the set.
    pub const fn contains(self, other: Flags) -> bool {
        self.0 & other.0 == other.0
    }

    /// The set with `other` added if `condition` holds.
    #[must_use]
    pub const fn with(self, other: Flags, condition: bool) -> Flags {
        if condition { Flags(self.0 | other.0) } else { self }
    }
}

impl BitOr for Flags {
    type Output = Flags;
    fn bitor(self, other: Flags) -> Flags {
        Flags(self.0 | other.0)
    }
}

impl BitOrAssign for Flags {
    fn bitor_assign(&mut self, other: Flags) {
        self.0 |= other.0;
    }
}

/// In hexadecimal.
impl fmt::Display for HeadPrefix {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.iter().try_for_each(|byte| write!(f, "{byte:02x}"))
    }
}

impl From<&Hash> for HeadPrefix {
    fn from(hash: &Hash) -> HeadPrefix {
        let mut prefix = [0; 16];
        prefix.copy_from_slice(&hash.0[..16]);
        HeadPrefix(prefix)
    }
}
