//! Travelled distance across new instruments, full turns and readings that do not count.
#![allow(clippy::unwrap_used)]

use proptest::collection::vec;
use proptest::prelude::*;

use super::*;
use crate::testing::{car, day, km, mi, new_car, read};

fn changed(on: &str, old: i64, new: i64) -> Instrument {
    Instrument { day: day(on), old: km(old), new: km(new) }
}

fn travelled(track: &Track) -> Vec<i64> {
    track.points().iter().map(|point| point.travelled.0.floor(DistanceUnit::Kilometre)).collect()
}

#[test]
fn what_was_read_wrongly_counts_for_nothing_that_was_done() {
    let start = day("2026-01-05");
    let on = |days: i32, count| Reading { day: start.plus_days(days), ..read("2026-01-05", count) };
    let mut readings: Vec<_> = (0..20).map(|week| on(week * 7, 40_000 + i64::from(week) * 280)).collect();
    // A digit too many a day after the eleventh week.
    readings.push(on(78, 433_120));
    let track = Track::new(&car(), &readings, &[]);
    let believed = track.believed();
    assert_eq!((track.points().len(), believed.points().len()), (21, 20));
    assert_eq!(believed.counted(start.plus_days(78), km(433_120)), None);
    assert_eq!(believed.counted(start.plus_days(77), km(43_080)), Some(Travelled(km(43_080))));
    assert_eq!(believed.on(start.plus_days(78)), Some(Travelled(km(43_120))));
}

#[test]
fn without_a_new_instrument_the_car_has_gone_what_is_shown() {
    let track = Track::new(&car(), &[read("2021-05-01", 52_000), read("2020-05-01", 40_000)], &[]);
    assert_eq!(travelled(&track), [40_000, 52_000]);
    assert_eq!(track.shown(Travelled(km(60_000))), km(60_000));
}

#[test]
fn a_new_instrument_goes_on_where_the_old_one_stopped() {
    let readings = [read("2020-01-01", 149_000), read("2021-01-01", 5_000), read("2023-01-01", 120_300)];
    let instruments = [changed("2020-03-01", 150_000, 0), changed("2022-01-01", 12_000, 110_000)];
    let track = Track::new(&car(), &readings, &instruments);
    // 150 000 + 5 000; then 162 000 at the second change, and 10 300 on an instrument that began at 110 000.
    assert_eq!(travelled(&track), [149_000, 155_000, 172_300]);
    assert_eq!(track.shown(Travelled(km(172_300))), km(120_300));
}

#[test]
fn on_the_day_of_the_change_a_reading_belongs_to_the_nearer_instrument() {
    let track = Track::new(&car(), &[], &[changed("2020-03-01", 150_000, 0)]);
    let on = |shown| track.travelled(day("2020-03-01"), km(shown)).0;
    assert_eq!(on(149_990), km(149_990));
    assert_eq!(on(12), km(150_012));
    assert_eq!(on(75_000), km(225_000), "equally near: the new instrument");
    assert_eq!(track.travelled(day("2020-02-29"), km(12)).0, km(12));
    assert_eq!(track.travelled(day("2020-03-02"), km(12)).0, km(150_012));
}

#[test]
fn two_changes_on_one_day_leave_three_instruments_to_choose_from() {
    let both = [changed("2020-03-01", 150_000, 0), changed("2020-03-01", 3, 80_000)];
    let track = Track::new(&car(), &[], &both);
    let on = |shown| track.travelled(day("2020-03-01"), km(shown)).0;
    assert_eq!(on(149_900), km(149_900));
    assert_eq!(on(80_010), km(150_013));
    assert_eq!(track.travelled(day("2021-03-01"), km(81_000)).0, km(151_003));
}

/// 49 CFR 580: a reading in excess of the mechanical limits. Six digits run over from 999 999 to 000 012.
#[test]
fn a_full_turn_is_added_when_the_owner_says_that_the_limit_was_passed() {
    let over =
        |on: &str, shown| Reading { status: OdometerStatus::ExceedsMechanicalLimits, ..read(on, shown) };
    let readings = [read("2020-01-01", 999_999), over("2020-01-02", 12), over("2021-01-01", 9_000)];
    let track = Track::new(&car(), &readings, &[]);
    assert_eq!(travelled(&track), [999_999, 1_000_012, 1_009_000]);
    assert_eq!(track.shown(Travelled(km(1_009_500))), km(9_500));

    let five_digits = [read("2020-01-01", 99_500), over("2020-06-01", 700)];
    assert_eq!(travelled(&Track::new(&car(), &five_digits, &[])), [99_500, 100_700]);
}

#[test]
fn five_digits_of_miles_turn_over_at_a_hundred_thousand_miles() {
    let vehicle = Vehicle { unit: DistanceUnit::Mile, ..car() };
    let reading = |on: &str, shown, status| Reading { day: day(on), shown: mi(shown), status };
    let readings = [
        reading("1990-01-01", 99_900, OdometerStatus::Actual),
        reading("1990-02-01", 400, OdometerStatus::ExceedsMechanicalLimits),
    ];
    let track = Track::new(&vehicle, &readings, &[]);
    assert_eq!(track.points()[1].travelled.0, mi(100_400));
}

#[test]
fn a_lower_reading_alone_is_no_full_turn_and_one_that_is_not_actual_counts_for_nothing() {
    let not_actual = Reading { status: OdometerStatus::NotActual, ..read("2020-06-01", 3) };
    let track =
        Track::new(&car(), &[read("2020-01-01", 90_000), not_actual, read("2021-01-01", 80_000)], &[]);
    assert_eq!(travelled(&track), [90_000, 80_000]);
}

#[test]
fn a_car_known_from_new_starts_at_zero() {
    let track = Track::new(&new_car("2020-01-01"), &[read("2020-01-11", 1_000)], &[]);
    assert_eq!(travelled(&track), [0, 1_000]);
    assert_eq!(track.on(day("2020-01-06")), Some(Travelled(km(500))));
    let on_the_first_day = Track::new(&new_car("2020-01-01"), &[read("2020-01-01", 8)], &[]);
    assert_eq!(travelled(&on_the_first_day), [8]);
}

#[test]
fn between_readings_the_car_goes_evenly_and_outside_them_nothing_is_said() {
    let track = Track::new(&car(), &[read("2020-01-01", 1_000), read("2020-01-11", 2_000)], &[]);
    assert_eq!(track.on(day("2020-01-04")), Some(Travelled(km(1_300))));
    assert_eq!(track.on(day("2019-12-31")), None);
    assert_eq!(track.on(day("2020-01-11")), Some(Travelled(km(2_000))));
    assert_eq!(track.on(day("2020-01-12")), None);

    assert_eq!(track.reached(Travelled(km(500))), Some(day("2020-01-01")));
    assert_eq!(
        track.reached(Travelled(km(1_301))),
        Some(day("2020-01-05")),
        "rounded up to the day it is passed"
    );
    assert_eq!(track.reached(Travelled(km(2_000))), Some(day("2020-01-11")));
    assert_eq!(track.reached(Travelled(km(2_001))), None);
}

#[test]
fn one_reading_mistyped_too_high_passes_nothing() {
    let readings = [read("2020-01-01", 98_000), read("2020-06-01", 984_200), read("2021-01-01", 101_000)];
    let track = Track::new(&car(), &readings, &[]);
    assert_eq!(track.reached(Travelled(km(110_000))), None);
}

proptest! {
    /// Found by halving, the day on which the car had gone so far is that after the last reading that falls short, as
    /// looking at every reading from the last one back tells.
    #[test]
    fn the_last_reading_that_falls_short_is_found_among_mistyped_ones(
        shown in vec(0_i64..2_000, 1..40),
        target in 0_i64..2_000,
    ) {
        let readings: Vec<_> = (0..).zip(&shown).map(|(n, &shown)| Reading { day: day("2020-01-01").plus_days(n), ..read("2020-01-01", shown) }).collect();
        let track = Track::new(&car(), &readings, &[]);
        let target = Travelled(km(target));
        let short = track.points().iter().rposition(|point| point.travelled < target);
        let after = short.map_or(0, |short| short + 1);
        prop_assert_eq!(track.reached(target), track.points().get(after).map(|point| point.day));
    }

    /// Whatever was replaced, an instrument's own readings keep their differences, and `shown` undoes
    /// `travelled` for the last instrument.
    #[test]
    fn the_last_instrument_shows_what_was_read(
        changes in vec((0_i32..3_000, 0_i64..400_000, 0_i64..400_000), 0..5),
        shown in 0_i64..400_000,
    ) {
        let start = day("2010-01-01");
        let instruments: Vec<_> = changes
            .into_iter()
            .map(|(on, old, new)| Instrument { day: start.plus_days(on), old: km(old), new: km(new) })
            .collect();
        let track = Track::new(&car(), &[], &instruments);
        let later = start.plus_days(3_001);
        prop_assert_eq!(track.shown(track.travelled(later, km(shown))), km(shown));
        let farther = track.travelled(later, km(shown + 7)).since(track.travelled(later, km(shown)));
        prop_assert_eq!(farther, km(7));
    }
}
