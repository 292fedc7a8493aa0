//! What is said of work that helped, of work that did not, and how often that is right.
#![allow(clippy::unwrap_used, clippy::cast_precision_loss)]

use super::super::simulated::{Log, log};
use super::*;
use crate::statistics::chance::Chance;
use crate::testing::day;

const CARS: u32 = 200;

fn life(weeks: usize, season: f64, step: Option<(usize, f64)>) -> Log {
    Log { weeks, noise: 0.04, season, step, short_of_full: 1_000 }
}

fn ask(spans: &[Span], week: usize) -> Answer {
    let day = spans.get(week).map_or_else(|| spans[week - 1].to, |span| span.from);
    helped(&Question { spans, day, not_before: None, not_after: None, swing: Swing::Fuel })
}

fn percent(log: f64) -> PerMille {
    PerMille::near(log)
}

/// How often the interval holds the true change, for work done in week `at` of so many.
fn held(weeks: usize, at: usize, season: f64, truth: f64, chance: &mut Chance) -> f64 {
    let right = (0..CARS).filter(|_| {
        let spans = log(&life(weeks, season, Some((at, truth))), chance);
        let Share { low, high } = ask(&spans, at).change.unwrap();
        (low..=high).contains(&percent(truth))
    });
    right.count() as f64 / f64::from(CARS)
}

#[test]
fn the_interval_holds_the_truth_nineteen_times_in_twenty() {
    let mut chance = Chance(11);
    println!("weeks before and after, season, change: interval held");
    for (before, after) in [(104, 12), (104, 52), (60, 30), (40, 12), (20, 10)] {
        for (season, change) in [(0.05, 0.0), (0.10, -0.05)] {
            let share = held(before + after, before, season, change, &mut chance);
            println!("{before:3} {after:3} {season:.2} {change:5.2}: {:.1} %", share * 100.0);
            assert!(share >= 0.9, "{before} {after} {season} {change}: {share}");
        }
    }
}

#[test]
fn the_verdict_is_hardly_ever_the_wrong_way_round() {
    let mut chance = Chance(12);
    let mut tally = [0_u32; 4];
    for _ in 0..CARS {
        let spans = log(&life(156, 0.08, Some((104, -0.08))), &mut chance);
        let answer = ask(&spans, 104);
        assert_eq!(answer.season, Season::Fitted);
        tally[match answer.verdict {
            Verdict::Better { low, high } => {
                assert!(low <= high && low > PerMille(0));
                0
            }
            Verdict::Worse { .. } => 1,
            Verdict::NoLargerThan(_) => 2,
            Verdict::CannotTellYet { .. } => 3,
        }] += 1;
    }
    println!("8 % better after a year: better, worse, no difference, cannot tell: {tally:?} of {CARS}");
    assert_eq!(tally[1], 0);
    assert!(tally[0] >= CARS * 9 / 10, "{tally:?}");
}

/// Half a year of tanks: the season could have done all of it.
#[test]
fn without_a_year_a_season_is_not_taken_for_help() {
    let mut chance = Chance(13);
    let mut wrong = 0;
    for _ in 0..CARS {
        let spans = log(&life(26, 0.08, None), &mut chance);
        let answer = ask(&spans, 14);
        assert!(matches!(answer.season, Season::MayBe(by) if by > PerMille(30)), "{answer:?}");
        wrong += u32::from(matches!(answer.verdict, Verdict::Better { .. } | Verdict::Worse { .. }));
        if let Verdict::CannotTellYet { more } = answer.verdict {
            assert!(more.is_none_or(|more| more >= 26), "as many as fill up the year: {more:?}");
        }
    }
    println!("a season taken for help in {wrong} of {CARS}");
    assert!(wrong * 20 <= CARS, "{wrong}");
}

#[test]
fn as_many_tanks_as_were_asked_for_are_enough_in_most_cases() {
    let mut chance = Chance(14);
    let (mut asked, mut found) = (0_u32, 0_u32);
    let mut counts = Vec::new();
    for _ in 0..CARS {
        let spans = log(&life(104 + 300, 0.05, Some((104, -0.030_459))), &mut chance);
        let Verdict::CannotTellYet { more: Some(more) } = ask(&spans[..104 + 6], 104).verdict else {
            continue;
        };
        asked += 1;
        counts.push(f64::from(more));
        let later = 104 + 6 + usize::try_from(more).unwrap();
        found += u32::from(matches!(ask(&spans[..later], 104).verdict, Verdict::Better { .. }));
    }
    let middle = crate::statistics::median(&mut counts).unwrap();
    println!(
        "3 % better: told in {found} of {asked} after as many tanks as asked for, {middle} in the middle case"
    );
    assert!(asked > CARS / 4, "{asked}");
    assert!(found * 10 >= asked * 6, "{found} of {asked}");
}

#[test]
fn too_few_tanks_say_nothing_and_say_how_many_are_wanted() {
    let mut chance = Chance(15);
    let spans = log(&life(60, 0.05, None), &mut chance);
    let none_after = ask(&spans, 60);
    assert_eq!((none_after.before, none_after.after, none_after.change), (60, 0, None));
    assert!(
        matches!(none_after.verdict, Verdict::CannotTellYet { more: Some(more) } if more > 3),
        "{none_after:?}"
    );
    let none_before = ask(&spans, 0);
    assert_eq!((none_before.before, none_before.verdict), (0, Verdict::CannotTellYet { more: None }));
    let nothing = helped(&Question {
        spans: &[],
        day: day("2024-01-01"),
        not_before: None,
        not_after: None,
        swing: Swing::Fuel,
    });
    assert_eq!(nothing.verdict, Verdict::CannotTellYet { more: None });
}

#[test]
fn the_span_of_the_day_and_those_beyond_other_work_do_not_count() {
    let spans = log(&life(104, 0.05, None), &mut Chance(16));
    let question = Question {
        spans: &spans,
        day: spans[50].from.plus_days(3),
        not_before: None,
        not_after: None,
        swing: Swing::Fuel,
    };
    let all = helped(&question);
    assert_eq!((all.before, all.after), (50, 53), "the span of the day is of both sides");
    let some =
        helped(&Question { not_before: Some(spans[30].from), not_after: Some(spans[60].to), ..question });
    assert_eq!((some.before, some.after), (20, 10));
}

/// Steady tanks are what lets a car say that nothing has changed.
#[test]
fn a_steady_car_is_told_that_there_is_no_difference() {
    let steady = Log { noise: 0.01, ..life(208, 0.02, None) };
    let answer = ask(&log(&steady, &mut Chance(17)), 104);
    assert!(matches!(answer.verdict, Verdict::NoLargerThan(most) if most <= PerMille(30)), "{answer:?}");
}
