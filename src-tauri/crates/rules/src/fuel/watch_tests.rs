//! How often the watch is wrong and how soon it is right, on simulated logs.
#![allow(clippy::unwrap_used, clippy::cast_precision_loss)]

use super::super::simulated::{Log, log, one};
use super::*;
use crate::running::Travelled;
use crate::statistics::chance::Chance;

const CARS: usize = 100;
const WEEKS: usize = 5 * 52 + 1;
const STEP: f64 = 0.095_310_179_804_325;

/// Scatter from tank to tank, and half of the way from summer to winter.
const LIVES: [(f64, f64); 6] =
    [(0.03, 0.05), (0.03, 0.10), (0.04, 0.05), (0.04, 0.10), (0.05, 0.05), (0.05, 0.10)];

fn life(noise: f64, season: f64) -> Log {
    Log { weeks: WEEKS, noise, season, step: None, short_of_full: 50 }
}

/// Alarms of five years in which nothing happens, a car.
fn false_alarms(of: &Log, chance: &mut Chance) -> f64 {
    let alarms: usize = (0..CARS).map(|_| watch(&log(of, chance)).alarms.len()).sum();
    alarms as f64 / CARS as f64
}

/// The share of steps that are found within so many tanks, somewhere after the first year; how far off the day of
/// the step is told in the middle case, in weeks; and how many of the sizes hold the true one.
fn found(of: &Log, size: f64, within: usize, chance: &mut Chance) -> (f64, f64, f64) {
    let (mut soon, mut held, mut off) = (0, 0, Vec::new());
    for _ in 0..CARS {
        let at = 60 + chance.below(WEEKS - 70);
        let spans = log(&Log { step: Some((at, size)), ..*of }, chance);
        let alarms = watch(&spans).alarms;
        let hit = alarms.iter().find(|alarm| {
            alarm.raised >= spans[at].to
                && alarm.raised <= spans[at + within - 1].to
                && alarm.likely > PerMille(0)
        });
        soon += u32::from(hit.is_some());
        if let Some(alarm) = hit {
            off.push(f64::from(alarm.since.days_since(spans[at].from)).abs() / 7.0);
            let truth = PerMille::near(size);
            held += u32::from((alarm.size.low..=alarm.size.high).contains(&truth));
        }
    }
    let share = |count: u32| f64::from(count) / CARS as f64;
    let held = f64::from(held) / f64::from(soon.max(1));
    (share(soon), crate::statistics::median(&mut off).unwrap_or(f64::NAN), held)
}

#[test]
fn at_most_one_false_alarm_in_five_years_and_a_tenth_more_found_within_six_tanks() {
    let mut chance = Chance(1);
    println!("scatter season | false alarms in 5 years | +10 % within 6 tanks, weeks off, size held");
    for (noise, season) in LIVES {
        let of = life(noise, season);
        let wrong = false_alarms(&of, &mut chance);
        let (soon, off, held) = found(&of, STEP, 6, &mut chance);
        println!(
            "{:6.0}% {:5.0}% | {wrong:5.2} | {:4.0}% {off:4.1} {:4.0}%",
            noise * 100.0,
            season * 100.0,
            soon * 100.0,
            held * 100.0
        );
        assert!(wrong <= 1.0, "{noise} {season}: {wrong} false alarms");
        assert!(soon >= 0.8, "{noise} {season}: {soon} found");
        assert!(off <= 2.0, "{noise} {season}: {off} weeks off");
        assert!(held >= 0.7, "{noise} {season}: {held} of the sizes hold");
    }
}

/// A drift of 8 % in the course of a year, as of a brake that comes to bind: it is told, if later.
#[test]
fn a_slow_drift_is_told() {
    let mut chance = Chance(2);
    let mut weeks = Vec::new();
    for _ in 0..CARS {
        let of = life(0.04, 0.07);
        let spans: Vec<Span> = log(&of, &mut chance).into_iter().zip(0_u32..).map(drifting).collect();
        let told = watch(&spans)
            .alarms
            .into_iter()
            .find(|alarm| alarm.raised > spans[130].to && alarm.likely > PerMille(0));
        weeks.push(
            told.map_or(f64::INFINITY, |alarm| f64::from(alarm.raised.days_since(spans[130].to)) / 7.0),
        );
    }
    let within_a_year = weeks.iter().filter(|&&weeks| weeks <= 52.0).count() as f64 / CARS as f64;
    let middle = crate::statistics::median(&mut weeks).unwrap();
    println!(
        "a drift of 8 % in a year: told within the year in {within_a_year}, after {middle} weeks in the middle case"
    );
    assert!(within_a_year >= 0.5, "{within_a_year}");
}

/// From week 130 on by as much more every week as makes 8 % in a year.
fn drifting((span, week): (Span, u32)) -> Span {
    let part = f64::from(week.saturating_sub(130).min(52)) / 52.0;
    let kilometres = span.used.distance().millimetres() as f64 / 1e6;
    let start = Travelled(span.end.0 - span.used.distance());
    one(span.from, start, kilometres, span.used.per_100_km() * (part * 0.08_f64.ln_1p()).exp())
}

#[test]
fn what_stands_is_undone_by_the_way_back() {
    let steady = Log { weeks: 260, noise: 0.03, season: 0.05, step: Some((120, STEP)), short_of_full: 1_000 };
    let spans = log(&steady, &mut Chance(5));
    let alarm = watch(&spans).standing().unwrap();
    assert!(alarm.since.days_since(spans[120].from).abs() <= 14, "{alarm:?}");
    assert!((PerMille(70)..PerMille(130)).contains(&alarm.likely), "{alarm:?}");

    let back = spans.iter().zip(0..).map(|(span, week)| {
        let kilometres = span.used.distance().millimetres() as f64 / 1e6;
        let per_100_km = span.used.per_100_km() / if week >= 180 { 1.1 } else { 1.0 };
        one(span.from, Travelled(span.end.0 - span.used.distance()), kilometres, per_100_km)
    });
    let watched = watch(&back.collect::<Vec<_>>());
    assert_eq!((watched.alarms.len(), watched.standing()), (2, None), "{watched:?}");
}

#[test]
fn nothing_is_said_in_the_first_year() {
    let of = Log { weeks: 50, step: Some((30, 0.3)), ..life(0.03, 0.05) };
    let watched = watch(&log(&of, &mut Chance(6)));
    assert_eq!(watched, Watched { alarms: Vec::new(), learnt: false });
    assert!(!watch(&[]).learnt);
    assert!(watch(&log(&Log { weeks: 54, ..of }, &mut Chance(6))).learnt);
}

/// A car that scatters by 1 % alone: what is off by 12 % is off by so many deviations that the allowance is, too.
#[test]
fn a_step_is_found_in_a_car_that_hardly_scatters() {
    let quiet =
        Log { weeks: 150, noise: 0.01, season: 0.05, step: Some((120, 0.113)), short_of_full: u64::MAX };
    let spans = log(&quiet, &mut Chance(5));
    let watched = watch(&spans);
    let [alarm] = watched.alarms[..] else { panic!("{watched:?}") };
    let raised = spans.iter().position(|span| span.to == alarm.raised).unwrap();
    assert!((120..126).contains(&raised), "{raised}");
    assert!(alarm.size.low < PerMille(120) && PerMille(110) < alarm.size.high, "{alarm:?}");
}
