//! Spans from full to full: worked by hand, and 500 logs against pandas.
#![allow(clippy::unwrap_used)]

use proptest::prelude::*;
use units::{DistanceUnit, Energy, Money, Volume, VolumeUnit};

use super::super::{Level, Taken, by_year, figures};
use super::*;
use crate::testing::{day, km};
use ConsumptionUnit::{
    KmPerLitre, KwhPer100Km, LitresPer100Km, MilesPerImperialGallon, MilesPerKwh, MilesPerUsGallon,
};

/// Written by `tests/references/fill_vectors.py`, where a test asks pandas again.
const LOGS: &str = include_str!("../../../../../tests/references/data/fills.txt");

fn fill(on: &str, at: i64, litres: &str, level: Level) -> Fill {
    let volume = Volume::parse(litres, VolumeUnit::Litre).unwrap();
    Fill {
        day: day(on),
        travelled: Travelled(km(at)),
        taken: Taken::Petrol(volume),
        level,
        cost: None::<Money>,
    }
}

fn only(fills: &[Fill]) -> Series {
    let (mut series, _) = spans(fills);
    assert_eq!(series.len(), 1);
    series.remove(0)
}

fn litres(used: Consumption) -> String {
    used.number(LitresPer100Km, 2).unwrap()
}

/// The method of the government of Quebec's page, with fills in part: 45 L over 600 km, and nothing at 10 300 km.
#[test]
fn fills_in_part_go_to_the_next_full_tank() {
    let series = only(&[
        fill("2024-01-01", 10_000, "40", Level::Full),
        fill("2024-01-08", 10_300, "20", Level::Part),
        fill("2024-01-15", 10_600, "25", Level::Full),
    ]);
    let [span] = series.spans[..] else { panic!("{series:?}") };
    assert_eq!((litres(span.used), span.fills), ("7.50".to_owned(), 2));
    assert_eq!((span.from, span.to), (day("2024-01-01"), day("2024-01-15")));
    assert_eq!(series.unused, []);
}

#[test]
fn what_lies_before_the_first_full_tank_and_after_the_last_counts_for_nothing() {
    let part = only(&[
        fill("2024-01-01", 9_000, "10", Level::Part),
        fill("2024-01-02", 10_000, "40", Level::Full),
        fill("2024-01-09", 10_500, "30", Level::Full),
        fill("2024-01-16", 10_900, "15", Level::Part),
    ]);
    assert_eq!(part.spans.len(), 1);
    assert_eq!(litres(part.spans[0].used), "6.00");
    assert_eq!(only(&[fill("2024-01-01", 9_000, "10", Level::Full)]).spans, []);
}

#[test]
fn a_missed_fill_voids_its_span_and_begins_another() {
    let series = only(&[
        fill("2024-01-01", 10_000, "40", Level::Full),
        fill("2024-02-01", 12_000, "30", Level::MissedBefore),
        fill("2024-02-08", 12_500, "35", Level::Full),
    ]);
    assert_eq!(series.spans.len(), 1);
    assert_eq!(litres(series.spans[0].used), "7.00");
    assert_eq!(series.unused.len(), 1);
    assert_eq!((series.unused[0].why, series.unused[0].distance), (Apart::Missed, km(2_000)));
}

#[test]
fn a_fill_missed_before_a_part_fill_voids_the_span_of_both() {
    let series = only(&[
        fill("2024-01-01", 10_000, "40", Level::Full),
        fill("2024-01-15", 11_200, "20", Level::MissedBefore.in_part()),
        fill("2024-02-01", 12_000, "30", Level::Full),
        fill("2024-02-08", 12_500, "35", Level::Full),
    ]);
    assert_eq!(series.spans.len(), 1);
    assert_eq!(litres(series.spans[0].used), "7.00");
    let apart: Vec<_> = series.unused.iter().map(|unused| (unused.why, unused.distance)).collect();
    assert_eq!(apart, [(Apart::Missed, km(2_000))]);
}

#[test]
fn what_cannot_be_is_set_apart_with_its_reason() {
    let start = fill("2024-01-01", 10_000, "40", Level::Full);
    for (at, litres, why) in [
        (10_000, "30", Apart::NoDistance),
        (9_000, "30", Apart::NoDistance),
        (20_000, "30", Apart::TooLittle),
        (10_040, "30", Apart::TooMuch),
    ] {
        let series = only(&[start, fill("2024-01-08", at, litres, Level::Full)]);
        assert_eq!(series.spans, [], "{at}");
        assert_eq!(series.unused[0].why, why, "{at}");
    }
    let edges = [("5.00", 500), ("300", 500)];
    for (litres, way) in edges {
        let series = only(&[start, fill("2024-01-08", 10_000 + way, litres, Level::Full)]);
        assert_eq!(series.spans.len(), 1, "{litres}");
    }
}

/// A plug-in car burns next to nothing on some tanks, and its two kinds never meet.
#[test]
fn kinds_are_kept_apart() {
    let charge = |on: &str, at, kwh: &str| Fill {
        taken: Taken::Electric(Energy::parse(kwh).unwrap()),
        ..fill(on, at, "1", Level::Full)
    };
    let (series, _) = spans(&[
        fill("2024-01-01", 10_000, "30", Level::Full),
        charge("2024-01-01", 10_000, "9"),
        charge("2024-01-03", 10_060, "9"),
        fill("2024-02-01", 11_000, "4", Level::Full),
    ]);
    let kinds: Vec<_> = series.iter().map(|series| (series.kind, series.spans.len())).collect();
    assert_eq!(kinds, [(FuelKind::Petrol, 1), (FuelKind::Electric, 1)]);
    assert_eq!(litres(series[0].spans[0].used), "0.40");
    assert_eq!(series[1].spans[0].used.number(KwhPer100Km, 1).unwrap(), "15.0");
}

#[test]
fn odd_fills_are_remarked_on() {
    let mut fills: Vec<Fill> = (0..6)
        .map(|week| Fill {
            day: day("2024-01-01").plus_days(week * 7),
            ..fill("2024-01-01", 10_000 + i64::from(week) * 500, "40", Level::Full)
        })
        .collect();
    assert_eq!(spans(&fills).1, []);
    fills.push(fill("2024-03-01", 13_500, "48.01", Level::Full));
    fills.push(fill("2024-03-02", 13_400, "10", Level::Part));
    let amount = |litres| Amount::Volume(Volume::parse(litres, VolumeUnit::Litre).unwrap());
    assert_eq!(
        spans(&fills).1,
        [
            Warning::ReadingFalls { day: day("2024-03-02") },
            Warning::LargerThanEver {
                kind: FuelKind::Petrol,
                day: day("2024-03-01"),
                amount: amount("48.01"),
                before: amount("40"),
            },
        ]
    );
    assert_eq!(spans(&fills[3..]).1.len(), 1, "too few before it to say so");
}

/// 20 and 40 mpg over equal distances: 26.67 mpg, and not 30.
#[test]
fn figures_are_means_over_the_distance() {
    let series = only(&[
        fill("2022-01-01", 10_000, "40", Level::Full),
        fill("2022-12-31", 10_400, "40", Level::Full),
        fill("2023-12-30", 10_800, "20", Level::Full),
        fill("2023-12-31", 11_000, "12", Level::Full),
    ]);
    let found = figures(&series.spans).unwrap();
    assert_eq!([found.least.used, found.most.used, found.last.used].map(litres), ["5.00", "10.00", "6.00"]);
    assert_eq!(litres(found.overall), "7.20", "72 L over 1 000 km");
    assert_eq!(litres(found.last_year), "5.33", "the span that ended 365 days before is not in it");
    let years: Vec<_> = by_year(&series.spans).into_iter().map(|(year, used)| (year, litres(used))).collect();
    assert_eq!(years, [(2022, "10.00".to_owned()), (2023, "5.33".to_owned())]);
    assert_eq!(figures(&[]), None);
}

fn parsed(unit: DistanceUnit, words: &[&str]) -> Fill {
    let &[on, at, amount_unit, amount, level] = words else { panic!("{words:?}") };
    let volume = |unit| Taken::Petrol(Volume::parse(amount, unit).unwrap());
    Fill {
        day: day(on),
        travelled: Travelled(Distance::parse_reading(at, unit).unwrap()),
        taken: match amount_unit {
            "L" => volume(VolumeUnit::Litre),
            "gal-us" => volume(VolumeUnit::UsGallon),
            "gal-imp" => volume(VolumeUnit::ImperialGallon),
            _ => Taken::Electric(Energy::parse(amount).unwrap()),
        },
        level: match level {
            "full" => Level::Full,
            "part" => Level::Part,
            _ => Level::MissedBefore,
        },
        cost: None,
    }
}

fn tenths(used: Consumption) -> String {
    let fuel =
        [LitresPer100Km, KmPerLitre, MilesPerUsGallon, MilesPerImperialGallon, KwhPer100Km, MilesPerKwh];
    let tenths = fuel.iter().filter_map(|&unit| used.scaled(unit, 1));
    tenths.map(|tenths| tenths.to_string()).collect::<Vec<_>>().join(" ")
}

/// What this program makes of a log, in the form of the file.
fn said(fills: &[Fill]) -> Vec<String> {
    let mut lines = Vec::new();
    for series in spans(fills).0 {
        let kind = series.kind.key();
        let mut own: Vec<(Day, String)> = Vec::new();
        for Span { from, to, used, .. } in &series.spans {
            let (distance, base) = (used.distance().millimetres(), used.amount().base());
            own.push((*to, format!("span {kind} {from} {to} {distance} {base} {}", tenths(*used))));
        }
        for Unused { from, to, why, .. } in &series.unused {
            let why = match why {
                Apart::Missed => "missed",
                Apart::NoDistance => "no-distance",
                Apart::TooLittle => "too-little",
                Apart::TooMuch => "too-much",
            };
            own.push((*to, format!("apart {kind} {from} {to} {why}")));
        }
        lines.extend(own.into_iter().map(|(_, line)| line));
        let mean = Consumption::mean(series.spans.iter().map(|span| span.used));
        lines.extend(mean.map(|mean| format!("mean {kind} {}", tenths(mean))));
    }
    lines.sort();
    lines
}

#[test]
fn five_hundred_logs_come_to_what_pandas_makes_of_them() {
    let mut logs = 0;
    for log in LOGS.split("log ").skip(1) {
        let mut lines = log.lines();
        let unit =
            if lines.next().unwrap().ends_with("mi") { DistanceUnit::Mile } else { DistanceUnit::Kilometre };
        let words = lines.map(|line| line.split(' ').collect::<Vec<_>>());
        let (fills, rest): (Vec<_>, Vec<_>) = words.partition(|words| words[0] == "fill");
        let fills: Vec<Fill> = fills.iter().map(|words| parsed(unit, &words[1..])).collect();
        let mut expected: Vec<String> = rest.iter().map(|words| words.join(" ")).collect();
        expected.sort();
        assert_eq!(said(&fills), expected, "log {log}");
        logs += 1;
    }
    assert_eq!(logs, 500);
}

proptest! {
    /// However a tank is filled in parts, the sum over the full tanks is the same, and no fill counts twice.
    #[test]
    fn every_litre_between_full_tanks_counts_once(
        fills in prop::collection::vec((1_i64..900, 1_i64..80_000, 0_usize..4), 2..40),
    ) {
        let mut at = 10_000;
        let fills: Vec<Fill> = (0_i32..).zip(&fills).map(|(week, &(way, millilitres, level))| {
            at += way;
            Fill {
                day: day("2020-01-01").plus_days(week * 7),
                travelled: Travelled(km(at)),
                taken: Taken::Petrol(Volume::from_picolitres(millilitres * 1_000_000_000)),
                level: [Level::Full, Level::Part, Level::MissedBefore, Level::PartMissedBefore][level],
                cost: None,
            }
        }).collect();
        let full: Vec<usize> = (0..fills.len()).filter(|&at| fills[at].level.is_full()).collect();
        let (series, _) = spans(&fills);
        let counted: i64 = series[0].spans.iter().map(|span| span.used.amount().base()).sum::<i64>()
            + series[0].unused.iter().map(|unused| unused.amount.base()).sum::<i64>();
        let expected: i64 = match (full.first(), full.last()) {
            (Some(&first), Some(&last)) => fills[first + 1..=last].iter().map(|fill| fill.taken.amount().base()).sum(),
            _ => 0,
        };
        prop_assert_eq!(counted, expected);
        prop_assert_eq!(series[0].spans.len() + series[0].unused.len(), full.len().saturating_sub(1));
    }
}
