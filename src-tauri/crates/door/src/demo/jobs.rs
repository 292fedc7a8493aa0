//! What is done to each car, how often, by whom.
//!
//! The last time of each job is counted back from today, so that on any day something is overdue, something is
//! due, something soon, and some of the diesel's items nobody ever recorded.

use super::parts::{self, Part};

/// A job that comes back, or was done once.
#[derive(Debug)]
pub(super) struct Job {
    pub(super) items: &'static [Do],
    pub(super) parts: &'static [Part],
    pub(super) by: By,
    pub(super) when: When,
    pub(super) note: &'static str,
}

/// An item of a job.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Do {
    /// The number of a catalogue item.
    Item(u32),
    /// An item of the owner's own.
    Own(&'static str),
}

/// Who does a job.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum By {
    Owner,
    /// The workshop of the place, for this much labour in minor units in the first year.
    Workshop(i64),
    /// The tyre shop, likewise.
    Tyres(i64),
}

/// When a job is done.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum When {
    /// Every so many months, the last time so many days ago.
    Every { months: u16, last: i32 },
    /// Twelve months ago to the day, and every year before.
    Yearly,
    /// Every year around this day.
    Around { month: u32, day: u32 },
    /// Once, so many days ago.
    Once(i32),
}

use By::{Owner, Tyres, Workshop};
use Do::{Item, Own};
use When::{Around, Every, Once, Yearly};

const fn job(items: &'static [Do], parts: &'static [Part], by: By, when: When, note: &'static str) -> Job {
    Job { items, parts, by, when, note }
}

pub(super) const PETROL_JOBS: &[Job] = &[
    job(
        &[Item(1), Item(12), Item(13)],
        parts::PETROL_OIL,
        Owner,
        Every { months: 12, last: 341 },
        "Old oil to the recycling yard.",
    ),
    job(&[Item(2)], parts::PETROL_AIR, Owner, Every { months: 14, last: 398 }, ""),
    job(&[Item(3)], parts::PETROL_CABIN, Owner, Every { months: 18, last: 205 }, ""),
    job(&[Item(18)], parts::PETROL_WIPERS, Owner, Yearly, ""),
    job(
        &[Item(16), Item(24), Item(23), Item(25)],
        &[],
        Workshop(5_900),
        Every { months: 12, last: 190 },
        "Nothing found that could not wait.",
    ),
    job(&[Item(10)], parts::BRAKE_FLUID, Workshop(4_800), Every { months: 24, last: 792 }, ""),
    job(&[Item(26)], &[], Workshop(6_500), Every { months: 24, last: 712 }, "Refrigerant complete."),
    job(
        &[Own("Summer wheels on"), Item(15), Item(19), Item(14), Own("Hinges and locks, oiling")],
        &[],
        Owner,
        Around { month: 4, day: 12 },
        "",
    ),
    job(
        &[Own("Winter wheels on"), Item(15), Item(14), Item(19)],
        &[],
        Owner,
        Around { month: 10, day: 27 },
        "",
    ),
    job(
        &[Item(5)],
        parts::PETROL_PLUGS,
        Owner,
        Once(1_190),
        "Torque from the handbook. Old ones light brown.",
    ),
    job(&[Item(9)], parts::COOLANT, Workshop(5_200), Once(1_540), ""),
    job(&[Item(4), Item(20)], &[], Workshop(7_800), Once(1_260), "Idle is smooth again."),
    job(&[Item(17)], parts::PETROL_GEARBOX, Workshop(6_900), Once(430), ""),
    job(
        &[Own("Battery")],
        parts::PETROL_BATTERY,
        Owner,
        Once(1_410),
        "The old one went back to the counter.",
    ),
    job(&[Own("Brake pads and discs, front")], parts::PETROL_PADS, Workshop(11_200), Once(905), ""),
    job(
        &[Own("Instrument cluster")],
        &[],
        Workshop(24_500),
        Once(1_003),
        "The display had gone dark; the new one begins at 0.",
    ),
];

pub(super) const DIESEL_JOBS: &[Job] = &[
    job(
        &[Item(1), Item(8), Item(12), Item(13)],
        parts::DIESEL_OIL,
        Owner,
        Every { months: 9, last: 168 },
        "Old oil and filter to the recycling yard.",
    ),
    job(&[Item(2), Item(18)], parts::DIESEL_AIR_WIPERS, Owner, Every { months: 12, last: 342 }, ""),
    job(&[Item(3)], parts::DIESEL_CABIN, Owner, Every { months: 24, last: 768 }, "Leaves in the blower."),
    job(
        &[Item(16), Item(24), Item(23), Item(25)],
        &[],
        Workshop(7_400),
        Every { months: 12, last: 118 },
        "Surface rust on the rear axle treated.",
    ),
    job(&[Item(7)], parts::DIESEL_FUEL, Workshop(5_600), Every { months: 24, last: 655 }, ""),
    job(&[Item(10), Item(9)], parts::DIESEL_BRAKES, Workshop(9_800), Every { months: 24, last: 431 }, ""),
    job(
        &[Item(14), Item(15), Item(19)],
        &[],
        Owner,
        Around { month: 11, day: 8 },
        "Trailer lamps checked too.",
    ),
    job(&[Item(11)], parts::DIESEL_BELT, Workshop(38_900), Once(1_490), "Belt, rollers and pump together."),
    job(&[Item(6)], parts::DIESEL_GLOW, Workshop(14_500), Once(1_655), "One had failed; all four changed."),
    job(&[Item(27)], parts::DIESEL_TYRES, Tyres(7_200), Once(1_275), "Old tyres left at the shop."),
    job(&[Own("Battery")], parts::DIESEL_BATTERY, Owner, Once(2_110), ""),
    job(&[Own("Brake pads, front")], parts::DIESEL_PADS, Workshop(8_300), Once(1_020), ""),
    job(&[Own("Tow bar electrics, repair")], &[], Workshop(6_300), Once(760), "Green corrosion in the plug."),
];
