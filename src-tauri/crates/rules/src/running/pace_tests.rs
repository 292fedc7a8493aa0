//! Where the odometer stands on a day without a reading, and when it reaches a distance.
#![allow(clippy::unwrap_used)]

use proptest::prelude::*;

use super::*;
use crate::running::Reading;
use crate::testing::{car, day, km, new_car, read};

fn pace(vehicle: &Vehicle, readings: &[Reading]) -> Pace {
    Pace::new(vehicle, &Track::new(vehicle, readings, &[]))
}

fn stated(yearly: i64) -> Vehicle {
    Vehicle { yearly: Some(km(yearly)), ..car() }
}

#[test]
fn without_a_reading_nothing_is_said() {
    assert_eq!(pace(&stated(12_000), &[]).on(day("2024-01-01")), None);
    assert_eq!(pace(&stated(12_000), &[]).reaches(Travelled(km(1))), None);
}

#[test]
fn one_reading_says_nothing_of_later_days_unless_the_owner_states_a_distance() {
    let alone = pace(&car(), &[read("2024-01-01", 50_000)]);
    assert_eq!(alone.on(day("2024-01-01")).unwrap().likely, Travelled(km(50_000)));
    assert_eq!(alone.on(day("2024-01-02")), None);
    assert_eq!(alone.reaches(Travelled(km(50_001))), None);

    // 36 524.25 km a year of 365.2425 days are 100 km a day.
    let vehicle = Vehicle { yearly: Some(Distance::from_millimetres(36_524_250_000)), ..car() };
    let stated = pace(&vehicle, &[read("2024-01-01", 50_000)]);
    let gone = |days: i32| {
        let Estimate { low, likely, high } = stated.on(day("2024-01-01").plus_days(days)).unwrap();
        [low, likely, high].map(|at| at.since(Travelled(km(50_000))).round(units::DistanceUnit::Kilometre))
    };
    // Noise of 150 km for the square root of the days, and drift of 39 km a day for the statement and 25 for the
    // seasons.
    assert_eq!(gone(10), [304, 1_000, 1_961]);
    assert_eq!(gone(365), [18_493, 36_500, 61_367], "about half as much either way");
}

#[test]
fn the_rate_is_that_of_the_last_year_or_so() {
    // 10 km a day for years, then 40 km a day.
    let readings = [read("2020-01-01", 0), read("2023-01-01", 10_960), read("2024-01-01", 25_560)];
    assert_eq!(pace(&car(), &readings).per_day(), Some(km(40)));
}

#[test]
fn readings_of_a_few_days_are_no_habit() {
    // A holiday at the end of a year at 20 km a day; the last readings alone would make it 1 000.
    let readings = [read("2022-01-01", 0), read("2024-01-01", 14_600), read("2024-01-02", 15_600)];
    assert_eq!(pace(&car(), &readings).per_day().unwrap().floor(units::DistanceUnit::Kilometre), 21);
    let week = [read("2024-01-01", 0), read("2024-01-08", 7_000)];
    assert_eq!(pace(&car(), &week).per_day(), None);
}

#[test]
fn the_stated_distance_is_blended_away_as_readings_come() {
    let vehicle = stated(18_262); // 50 km a day
    let at = |days: i32| {
        let start = day("2023-01-01");
        let last = Reading { day: start.plus_days(days), ..read("2023-01-01", i64::from(days) * 10) };
        pace(&vehicle, &[read("2023-01-01", 0), last])
            .per_day()
            .unwrap()
            .round(units::DistanceUnit::Kilometre)
    };
    assert_eq!(at(10), 50, "ten days are no habit");
    assert_eq!(at(73), 42, "a fifth of a year: four fifths of what was stated");
    assert_eq!(at(365), 10);
}

#[test]
fn a_target_that_was_reached_has_an_exact_day_and_a_car_that_stands_reaches_none() {
    let standing = pace(&car(), &[read("2023-01-01", 5_000), read("2024-01-01", 5_000)]);
    assert_eq!(standing.on(day("2025-01-01")).unwrap().high, Travelled(km(5_000)));
    assert_eq!(standing.reaches(Travelled(km(5_000))), Some(DaySpan::exact(day("2024-01-01"))));
    assert_eq!(standing.reaches(Travelled(km(5_001))), None);
}

#[test]
fn a_new_car_is_paced_from_its_first_day() {
    let vehicle = new_car("2024-01-01");
    assert_eq!(pace(&vehicle, &[read("2024-04-10", 3_000)]).per_day(), Some(km(30)));
}

#[test]
fn a_last_reading_far_off_counts_for_nothing_until_another_bears_it_out() {
    let mut readings: Vec<_> = (0..10)
        .map(|month| Reading {
            day: day("2024-01-01").plus_days(month * 30),
            ..read("2024-01-01", 50_000 + i64::from(month) * 1_200)
        })
        .collect();
    let right = pace(&car(), &readings);
    assert_eq!((right.doubtful(), right.per_day()), (None, Some(km(40))));

    // 61 996 km with the first two digits swapped.
    readings.push(read("2024-10-08", 16_996));
    let low = pace(&car(), &readings);
    assert_eq!(low.doubtful().unwrap().shown, km(16_996));
    readings.pop();
    readings.push(read("2024-10-08", 71_996));
    let high = pace(&car(), &readings);
    assert_eq!(high.doubtful().unwrap().shown, km(71_996));
    for doubted in [low, high] {
        assert_eq!(doubted.last(), right.last());
        assert_eq!(doubted.on(day("2024-12-01")), right.on(day("2024-12-01")));
    }

    readings.push(read("2024-10-22", 72_560));
    let borne_out = pace(&car(), &readings);
    assert_eq!((borne_out.doubtful(), borne_out.last().unwrap().shown), (None, km(72_560)));
}

#[test]
fn months_without_a_reading_change_nothing() {
    let week = |number: i32| Reading {
        day: day("2024-01-01").plus_days(number * 7),
        ..read("2024-01-01", i64::from(number) * 280)
    };
    let gap: Vec<_> = (0..50).filter(|number| !(20..37).contains(number)).map(week).collect();
    assert_eq!(pace(&car(), &gap).per_day(), Some(km(40)));
}

#[test]
fn two_readings_of_one_day_are_both_right() {
    let readings = [read("2024-01-01", 0), read("2024-04-10", 4_000), read("2024-04-10", 4_050)];
    let pace = pace(&car(), &readings);
    assert_eq!((pace.last().unwrap().shown, pace.doubtful()), (km(4_050), None));
    assert_eq!(pace.per_day().unwrap().floor(units::DistanceUnit::Kilometre), 40);
}

/// A new job half a year ago: the rate is on its way from the old one to the new one, and the span knows.
#[test]
fn a_new_habit_shows_in_the_rate_and_in_the_span() {
    let readings = |later: i64| -> Vec<_> {
        (0..14_i32)
            .map(|month| {
                let (before, after) = (i64::from(month.min(7)), i64::from((month - 7).max(0)));
                let shown = before * 600 + after * later;
                Reading { day: day("2024-01-01").plus_days(month * 30), ..read("2024-01-01", shown) }
            })
            .collect()
    };
    let (same, changed) = (pace(&car(), &readings(600)), pace(&car(), &readings(1_800)));
    assert_eq!(same.per_day(), Some(km(20)));
    assert!(changed.per_day() > Some(km(40)), "{:?}", changed.per_day());
    let share = |pace: &Pace| {
        let Estimate { low, likely, high } = pace.on(day("2025-06-01")).unwrap();
        let gone = likely.since(pace.last().unwrap().travelled);
        high.since(low).millimetres() * 100 / gone.millimetres()
    };
    assert!(share(&changed) > 2 * share(&same), "{} and {}", share(&changed), share(&same));
}

/// Half a year at 10 km a day and half a year at 50: where the slow half comes next the car may fall short by more
/// than it may go beyond, and the other way round.
#[test]
fn the_season_to_come_widens_the_span_on_its_own_side() {
    let half_year = 182;
    let readings = |last: i32| -> Vec<_> {
        let shown = |day: i32| -> i64 {
            let (halves, rest) = (i64::from(day / half_year), i64::from(day % half_year));
            let whole = i64::from(half_year) * (halves / 2 * 60 + halves % 2 * 10);
            whole + rest * if halves % 2 == 0 { 10 } else { 50 }
        };
        let days = (0..=last).rev().step_by(13);
        days.map(|days| Reading { day: day("2020-01-01").plus_days(days), ..read("2020-01-01", shown(days)) })
            .collect()
    };
    let sides = |halves: i32| {
        let pace = pace(&car(), &readings(halves * half_year));
        let Estimate { low, likely, high } = pace.on(pace.last().unwrap().day.plus_days(90)).unwrap();
        // In standard deviations, of which the span takes 1.05 below and 1.45 above.
        [likely.since(low).millimetres() / 105, high.since(likely).millimetres() / 145]
    };
    let [[slow_below, slow_above], [fast_below, fast_above]] = [sides(4), sides(5)];
    assert!(10 * slow_below > 11 * slow_above, "{slow_below} and {slow_above}");
    assert!(10 * fast_above > 13 * fast_below, "{fast_above} and {fast_below}");
}

proptest! {
    /// The span is in order, never narrows with time, and `on` and `reaches` agree with each other.
    #[test]
    fn spans_are_ordered_and_widen(
        steps in prop::collection::vec((1_i32..200, 0_i64..6_000), 0..12),
        yearly in prop::option::of(0_i64..60_000),
        ahead in 1_i32..2_000,
        farther in 1_i64..50_000,
    ) {
        let vehicle = Vehicle { yearly: yearly.map(km), ..car() };
        let (mut on, mut shown) = (day("2015-01-01"), 10_000);
        let mut readings = vec![Reading { day: on, ..read("2015-01-01", shown) }];
        for (days, gone) in steps {
            (on, shown) = (on.plus_days(days), shown + gone);
            readings.push(Reading { day: on, ..read("2015-01-01", shown) });
        }
        let pace = pace(&vehicle, &readings);
        let width = |days: i32| pace.on(on.plus_days(days)).map(|e| e.high.since(e.low));
        if let Some(estimate) = pace.on(on.plus_days(ahead)) {
            prop_assert!(estimate.low <= estimate.likely && estimate.likely <= estimate.high);
            prop_assert!(width(ahead) <= width(ahead + 1));
        }
        let target = Travelled(km(shown + farther));
        if let Some(DaySpan { early, likely, late }) = pace.reaches(target) {
            prop_assert!(early <= likely && likely <= late && early > on);
            if likely < day("2199-12-31") {
                prop_assert!(pace.on(likely).unwrap().likely >= target);
                prop_assert!(pace.on(likely.plus_days(-1)).unwrap().likely < target);
            }
        }
    }

    /// More readings on the same exact line never change the rate, whatever of them is taken.
    #[test]
    fn readings_on_one_line_give_its_rate(
        per_day in 0_i64..400,
        mut days in prop::collection::btree_set(0_i32..900, 0..120),
        end in 30_i32..900,
    ) {
        days.extend([0, end]);
        let readings: Vec<_> = days
            .into_iter()
            .map(|days| Reading {
                day: day("2015-01-01").plus_days(days),
                ..read("2015-01-01", 1_000 + i64::from(days) * per_day)
            })
            .collect();
        for count in 2..=readings.len() {
            let pace = pace(&car(), &readings[..count]);
            prop_assert_eq!(pace.doubtful(), None);
            prop_assert!(pace.per_day().is_none_or(|rate| rate == km(per_day)));
        }
        prop_assert_eq!(pace(&car(), &readings).per_day(), Some(km(per_day)));
    }
}
