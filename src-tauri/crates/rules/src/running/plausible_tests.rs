//! What is asked about a reading, and what is not.
//!
//! The rules are worked out from what a trustworthy record needs; the bound of 2 500 km a day is common
//! practice. The statuses are those of 49 CFR 580, appendix B.
#![allow(clippy::unwrap_used)]

use super::Plausibility::{Fine, Higher, Lower, TooFast};
use super::*;
use crate::running::Instrument;
use crate::testing::{car, day, km, read};

fn track() -> Track {
    Track::new(&car(), &[read("2024-01-01", 50_000), read("2024-03-01", 53_000)], &[])
}

#[test]
fn an_equal_or_moderately_higher_reading_is_fine() {
    assert_eq!(track().plausibility(read("2024-03-09", 53_000)), Fine);
    assert_eq!(track().plausibility(read("2024-03-09", 53_400)), Fine);
}

#[test]
fn the_first_reading_is_fine() {
    assert_eq!(Track::new(&car(), &[], &[]).plausibility(read("2024-03-09", 812_345)), Fine);
}

#[test]
fn a_lower_reading_on_a_later_day_is_asked_about() {
    let asked = track().plausibility(read("2024-03-02", 52_999));
    assert_eq!(asked, Lower { than: km(53_000), on: day("2024-03-01") });
}

#[test]
fn faster_than_2500_km_a_day_is_asked_about() {
    assert_eq!(track().plausibility(read("2024-03-03", 58_000)), Fine, "exactly 2 500 km a day");
    let asked = track().plausibility(read("2024-03-03", 58_002));
    assert_eq!(asked, TooFast { per_day: km(2_501), from: day("2024-03-01"), to: day("2024-03-03") });
}

#[test]
fn a_reading_put_in_afterwards_is_held_against_later_ones() {
    assert_eq!(track().plausibility(read("2024-02-01", 51_500)), Fine);
    let higher = track().plausibility(read("2024-02-01", 53_001));
    assert_eq!(higher, Higher { than: km(53_000), on: day("2024-03-01") });
    let earliest = track().plausibility(read("2023-12-31", 40_000));
    assert_eq!(earliest, TooFast { per_day: km(10_000), from: day("2023-12-31"), to: day("2024-01-01") });
    assert_eq!(track().plausibility(read("2023-06-01", 40_000)), Fine);
}

#[test]
fn a_lower_reading_on_the_same_day_is_asked_about() {
    let asked = track().plausibility(read("2024-03-01", 52_900));
    assert_eq!(asked, Lower { than: km(53_000), on: day("2024-03-01") });
    assert_eq!(track().plausibility(read("2024-03-01", 53_000)), Fine);
    assert_eq!(track().plausibility(read("2024-03-01", 53_100)), Fine);
}

#[test]
fn it_is_held_against_the_highest_of_the_day_and_one_that_was_kept_asks_no_more_of_those_above_both() {
    let kept = track().with(read("2024-03-01", 52_900));
    let asked = kept.plausibility(read("2024-03-01", 52_950));
    assert_eq!(asked, Lower { than: km(53_000), on: day("2024-03-01") });
    assert_eq!(kept.plausibility(read("2024-03-01", 53_010)), Fine);
}

#[test]
fn readings_of_one_day_do_not_lie_far_apart() {
    let apart = track().plausibility(read("2024-03-01", 56_000));
    assert_eq!(apart, TooFast { per_day: km(3_000), from: day("2024-03-01"), to: day("2024-03-01") });
    let between = track().with(read("2024-03-01", 55_000)).plausibility(read("2024-03-01", 56_000));
    assert_eq!(between, apart, "held against the lowest of the day");
}

#[test]
fn what_the_owner_marks_as_not_actual_is_not_asked_about_nor_held_against_others() {
    let not_actual = Reading { status: OdometerStatus::NotActual, ..read("2024-03-02", 7) };
    assert_eq!(track().plausibility(not_actual), Fine);
    assert_eq!(track().with(not_actual).plausibility(read("2024-03-03", 53_100)), Fine);
}

#[test]
fn a_full_turn_is_asked_about_unless_the_owner_says_so() {
    let track = Track::new(&car(), &[read("2024-03-01", 999_999)], &[]);
    let reading = read("2024-03-02", 12);
    assert!(matches!(track.plausibility(reading), Lower { .. }));
    let over = Reading { status: OdometerStatus::ExceedsMechanicalLimits, ..reading };
    assert_eq!(track.plausibility(over), Fine);
}

#[test]
fn a_new_instrument_may_show_less() {
    let fitted = Instrument { day: day("2024-03-05"), old: km(53_100), new: km(0) };
    let readings = [read("2024-01-01", 50_000), read("2024-03-01", 53_000)];
    let track = Track::new(&car(), &readings, &[fitted]);
    assert_eq!(track.plausibility(read("2024-03-05", 3)), Fine);
    assert_eq!(track.with(read("2024-03-05", 53_100)).plausibility(read("2024-03-05", 3)), Fine);
    assert_eq!(track.plausibility(read("2024-04-05", 900)), Fine);
    assert!(matches!(track.plausibility(read("2024-03-06", 54_000)), TooFast { .. }));
}
