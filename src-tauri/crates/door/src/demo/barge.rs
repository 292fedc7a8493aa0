//! What is done to The Barge, the diesel estate that Tamsin bought used.

use super::jobs::By::{Insurer, Office, Owner, Tyres, Workshop};
use super::jobs::Do::{Item, Own};
use super::jobs::When::{After, Every, Once};
use super::jobs::{Job, finding, job};
use super::looks::{CHARGE, FROST, Look, WATER, lining, tread};
use super::parts;

/// What the car has, of that on which its plan depends.
pub(super) const HAS: &[&str] = &[
    "turbo",
    "particulate-filter",
    "timing-belt",
    "manual-gearbox",
    "hydraulic-steering",
    "air-conditioning",
];
/// What it lacks.
pub(super) const LACKS: &[&str] =
    &["timing-chain", "automatic-gearbox", "driven-rear-axle", "cable-throttle"];

/// The owner's own item.
pub(super) const TOW_BALL: &str = "Tow bar ball, grease";

/// So many days ago a rear brake began to drag, and so many days ago it was freed.
pub(super) const DRAGS_SINCE: i32 = 650;
pub(super) const FREED: i32 = 410;

pub(super) const JOBS: &[Job] = &[
    finding(
        &[Look::Word(41, "within-limits")],
        job(
            &[Item(1), Item(8), Item(12), Item(13), Item(22), Item(28), Item(37)],
            parts::DIESEL_OIL,
            Owner,
            Every { months: 9, last: 130 },
            "Old oil and filter to the recycling yard.",
        ),
    ),
    job(&[Item(2), Item(18)], parts::DIESEL_AIR_WIPERS, Owner, Every { months: 12, last: 342 }, ""),
    job(&[Item(3)], parts::DIESEL_CABIN, Owner, Every { months: 24, last: 768 }, "Leaves in the blower."),
    job(&[Item(65)], &[], Owner, Every { months: 12, last: 230 }, ""),
    finding(
        &[lining(51, 120), lining(53, 80), WATER],
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
                Item(34),
                Item(35),
            ],
            &[],
            Workshop(9_400),
            Every { months: 12, last: 118 },
            "Wheel nuts checked again after the test drive. Surface rust on the rear axle treated.",
        ),
    ),
    job(&[Item(7)], parts::DIESEL_FUEL, Workshop(5_600), Every { months: 24, last: 700 }, ""),
    job(&[Item(10), Item(9)], parts::DIESEL_BRAKES, Workshop(9_800), Every { months: 24, last: 431 }, ""),
    job(&[Item(59), Item(57)], &[], Owner, After(5), ""),
    finding(
        &[tread(70), CHARGE, FROST],
        job(
            &[Item(15), Item(19), Item(14), Item(38), Item(57), Item(60), Item(66), Own(TOW_BALL)],
            &[],
            Owner,
            Every { months: 6, last: 95 },
            "Trailer lamps checked too.",
        ),
    ),
    job(
        &[Item(39), Item(43)],
        &[],
        Workshop(6_800),
        Every { months: 22, last: 400 },
        "No oil on the belt. The filter burns free as it should.",
    ),
    job(
        &[Item(11), Item(41)],
        parts::DIESEL_BELTS,
        Workshop(38_900),
        Once(1_490),
        "Belts, rollers and pump together.",
    ),
    job(&[Item(6)], parts::DIESEL_GLOW, Workshop(14_500), Once(1_450), "One had failed; all four changed."),
    job(&[Item(27)], parts::DIESEL_TYRES, Tyres(7_200), Once(1_275), "Old tyres left at the shop."),
    job(&[Item(27)], parts::DIESEL_TYRES, Workshop(7_200), Once(2_560), "A nail in the side of one."),
    job(&[Item(61)], parts::DIESEL_BATTERY, Owner, Once(1_500), ""),
    job(&[Item(51), Item(52)], parts::DIESEL_BRAKES_FRONT, Workshop(10_300), Once(1_020), ""),
    job(&[Item(51)], parts::DIESEL_PADS_FRONT, Workshop(8_300), Once(2_130), ""),
    job(&[Item(53)], parts::DIESEL_PADS_REAR, Workshop(8_900), Once(1_700), "Discs left as they were."),
    job(&[Item(42), Item(20)], &[], Workshop(13_600), Once(540), "Pulls evenly again."),
    finding(
        &[Look::Word(22, "leaking")],
        job(&[Item(28)], &[], Owner, Once(520), "Damp under the steering pump."),
    ),
    job(
        &[Item(49), Item(22)],
        parts::DIESEL_STEERING,
        Workshop(7_700),
        Once(508),
        "Return hose renewed; dry since.",
    ),
    job(
        &[Own("Rear brake calliper, freed")],
        &[],
        Workshop(11_800),
        Once(FREED),
        "It dragged; the wheel was hot after every drive. Runs cool since.",
    ),
    job(&[Own("Tow bar electrics, repair")], &[], Workshop(6_300), Once(760), "Green corrosion in the plug."),
    job(&[Item(68)], &[], Insurer(42_800), Every { months: 12, last: 305 }, ""),
    job(&[Item(69)], &[], Office(18_200), Every { months: 12, last: 301 }, ""),
    job(
        &[Item(67)],
        &[],
        Office(5_400),
        Every { months: 24, last: 560 },
        "Passed; the rear discs to be watched.",
    ),
];
