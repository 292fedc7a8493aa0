//! Which readings are believed: mistyped ones in the middle, at either end, and what only looks like one.
#![allow(clippy::unwrap_used)]

use super::*;
use crate::running::{OdometerStatus, Reading, Track};
use crate::testing::{car, day, km};

/// Readings of a car that goes 40 km a day, every two weeks from 100 000 km on, some of them replaced.
fn readings(count: i32, instead: &[(i32, i64)]) -> Vec<Point> {
    let read = |number: i32| {
        let right = 100_000 + i64::from(number) * 14 * 40;
        let shown = instead.iter().find(|(at, _)| *at == number).map_or(right, |&(_, shown)| shown);
        Reading {
            day: day("2024-01-01").plus_days(number * 14),
            shown: km(shown),
            status: OdometerStatus::Actual,
        }
    };
    Track::new(&car(), &(0..count).map(read).collect::<Vec<_>>(), &[]).points().to_vec()
}

/// Which of the readings are left out.
fn left_out(points: &[Point]) -> Vec<usize> {
    let trusted = trust(points).believed;
    (0..points.len()).filter(|&index| !trusted.contains(&points[index])).collect()
}

#[test]
fn regular_readings_are_believed() {
    assert_eq!(left_out(&readings(20, &[])), [0; 0]);
    assert_eq!(left_out(&readings(1, &[])), [0; 0]);
    assert_eq!(left_out(&[]), [0; 0]);
}

#[test]
fn a_mistyped_reading_in_the_middle_is_left_out() {
    assert_eq!(left_out(&readings(20, &[(10, 150_600)])), [10], "too high");
    assert_eq!(left_out(&readings(20, &[(10, 15_600)])), [10], "a digit was forgotten");
    assert_eq!(left_out(&readings(20, &[(3, 110_680), (12, 176_720)])), [3, 12]);
}

#[test]
fn a_mistyped_reading_at_either_end_is_left_out() {
    assert_eq!(left_out(&readings(20, &[(19, 119_640)])), [19], "9 000 km too far");
    assert_eq!(left_out(&readings(20, &[(19, 106_410)])), [19], "lower than the one before it");
    assert_eq!(left_out(&readings(20, &[(0, 10_000)])), [0]);
}

#[test]
fn a_long_trip_is_believed() {
    let trip: Vec<_> = [(19, 100_000 + 19 * 560 + 2_000)].into();
    assert_eq!(left_out(&readings(20, &trip)), [0; 0]);
}

#[test]
fn what_another_reading_bears_out_is_believed() {
    // The car was lent out and came back 9 000 km on.
    let gone = |number: i32| (number, 109_000 + i64::from(number) * 14 * 40);
    assert_eq!(left_out(&readings(19, &[gone(18)])), [18]);
    assert_eq!(left_out(&readings(20, &[gone(18), gone(19)])), [0; 0]);
}

#[test]
fn a_new_habit_is_no_mistake() {
    // From 40 km a day to four times as many.
    let faster: Vec<_> =
        (15..20).map(|number| (number, 108_400 + i64::from(number - 15) * 14 * 160)).collect();
    for count in 16..20 {
        assert_eq!(left_out(&readings(count, &faster)), [0; 0], "{count} readings");
    }
}

#[test]
fn of_two_readings_the_newer_one_counts_when_they_contradict_each_other() {
    assert_eq!(left_out(&readings(2, &[(1, 90_000)])), [0]);
}

/// An instrument was replaced and nobody said so: all later readings are lower than all earlier ones.
#[test]
fn the_greater_part_is_believed_when_readings_fall_for_good() {
    let after = |number: i32| (number, i64::from(number - 16) * 14 * 40);
    let fallen: Vec<_> = (16..40).map(after).collect();
    assert_eq!(left_out(&readings(19, &fallen)), [16, 17, 18]);
    let trusted = trust(&readings(40, &fallen)).believed;
    assert_eq!(trusted.last(), readings(40, &fallen).last(), "in time the new ones are more");
}
