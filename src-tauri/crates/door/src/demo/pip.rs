//! What is done to Pip, the small petrol car that Oskar has had from new.

use super::jobs::By::{Insurer, Office, Owner, Tyres, Workshop};
use super::jobs::Do::{Item, Own};
use super::jobs::When::{After, Around, Every, Once, Yearly};
use super::jobs::{Job, finding, job};
use super::looks::{CHARGE, FROST, Look, WATER, lining, tread};
use super::parts;

/// What the car has, of that on which its plan depends.
pub(super) const HAS: &[&str] =
    &["timing-chain", "manual-gearbox", "electronic-throttle", "air-conditioning"];
/// What it lacks.
pub(super) const LACKS: &[&str] = &[
    "turbo",
    "particulate-filter",
    "timing-belt",
    "automatic-gearbox",
    "driven-rear-axle",
    "cable-throttle",
    "hydraulic-steering",
    "ignition-leads",
];

/// The numbers that its owner took from the handbook, as invented as the car.
pub(super) const VALUES: &[(&str, &str)] = &[
    ("oil-volume", "3.6"),
    ("oil-grade", "5W-30"),
    ("drain-plug-torque", "27"),
    ("wheel-torque", "105"),
    ("tyre-pressure-front", "2.3"),
    ("tyre-pressure-rear", "2.1"),
];

/// Both sets of tyres together wear by this much in 1 000 km, in thousandths of a millimetre.
const TREAD: Look = tread(115);

pub(super) const JOBS: &[Job] = &[
    job(
        &[Item(1), Item(18)],
        parts::PETROL_OIL_WIPERS,
        Owner,
        Every { months: 12, last: 347 },
        "Old oil to the recycling yard.",
    ),
    job(&[Item(2), Item(36)], parts::PETROL_AIR, Owner, Every { months: 12, last: 344 }, ""),
    job(&[Item(3)], parts::PETROL_CABIN, Owner, Every { months: 24, last: 768 }, ""),
    job(&[Item(65)], parts::GREASE, Owner, Yearly, ""),
    finding(
        &[lining(51, 130), lining(53, 80), WATER, Look::Word(41, "within-limits")],
        job(
            &[
                Item(16),
                Item(50),
                Item(55),
                Item(56),
                Item(59),
                Item(24),
                Item(47),
                Item(48),
                Item(23),
                Item(25),
                Item(12),
                Item(13),
                Item(34),
            ],
            &[],
            Workshop(8_900),
            Every { months: 12, last: 280 },
            "Wheel nuts checked again after the test drive. Nothing found that could not wait.",
        ),
    ),
    job(&[Item(10)], parts::BRAKE_FLUID, Workshop(4_800), Every { months: 24, last: 650 }, ""),
    job(&[Item(59)], &[], Owner, After(5), ""),
    job(&[Item(26)], &[], Workshop(6_500), Every { months: 24, last: 642 }, "Refrigerant complete."),
    finding(
        &[TREAD, CHARGE],
        job(
            &[Item(58), Item(15), Item(19), Item(14), Item(66)],
            &[],
            Owner,
            Around { month: 4, day: 12 },
            "Summer wheels on.",
        ),
    ),
    job(&[Item(59), Item(57), Item(60)], &[], Owner, After(6), ""),
    finding(
        &[TREAD, CHARGE, FROST],
        job(
            &[Item(58), Item(15), Item(19), Item(14), Item(38)],
            &[],
            Owner,
            Around { month: 10, day: 27 },
            "Winter wheels on.",
        ),
    ),
    job(&[Item(59), Item(57), Item(28), Item(60)], &[], Owner, After(6), "Washer fluid against frost."),
    job(
        &[Item(5)],
        parts::PETROL_PLUGS,
        Owner,
        Once(1_190),
        "Torque from the handbook. Old ones light brown.",
    ),
    job(&[Item(9)], parts::PETROL_COOLANT, Workshop(5_200), Once(1_540), ""),
    job(
        &[Item(4), Item(31), Item(20), Item(42)],
        &[],
        Workshop(11_800),
        Once(1_260),
        "Idle is smooth again.",
    ),
    job(&[Item(17)], parts::PETROL_GEARBOX, Workshop(6_900), Once(430), ""),
    job(&[Item(61)], parts::PETROL_BATTERY, Owner, Once(1_410), "The old one went back to the counter."),
    job(&[Item(51), Item(52)], parts::PETROL_BRAKES, Workshop(11_200), Once(905), ""),
    job(&[Item(27)], parts::PETROL_TYRES, Tyres(9_600), Once(1_640), "Both sets, at the end of the winter."),
    finding(
        &[Look::Word(13, "cracked")],
        job(&[Item(28)], &[], Owner, Once(352), "Fine cracks in the upper coolant hose, dry so far."),
    ),
    job(&[Item(13)], parts::PETROL_HOSE, Workshop(3_400), Once(340), ""),
    job(
        &[Own("Instrument cluster")],
        &[],
        Workshop(24_500),
        Once(1_003),
        "The display had gone dark; the new one begins at 0.",
    ),
    job(&[Item(68)], &[], Insurer(31_400), Every { months: 12, last: 299 }, ""),
    job(&[Item(69)], &[], Office(9_600), Every { months: 12, last: 296 }, ""),
    job(&[Item(67)], &[], Office(5_400), Every { months: 24, last: 655 }, "Passed without a remark."),
];
