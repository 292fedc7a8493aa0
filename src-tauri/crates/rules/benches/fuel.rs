//! Twenty years of weekly fills: spans, figures, plot data, watch, a comparison and costs; beside the mere reading of
//! the numbers out of text, and beside the pace of the same car.
#![allow(missing_docs, clippy::unwrap_used)]

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use rules::costs::{Cost, CostClass, by_month, by_year, per_distance};
use rules::fuel::{
    Fill, Level, Question, Swing, Taken, by_year as use_by_year, figures, helped, spans, watch,
};
use rules::running::{OdometerStatus, Pace, Reading, Track, Travelled};
use rules::vehicle::{Conditions, EngineKind, Equipment, Vehicle};
use units::{ConsumptionUnit, Day, Distance, DistanceUnit, Money, Volume, VolumeUnit};

const WEEKS: i32 = 20 * 52;

fn texts() -> Vec<(String, String, String)> {
    let line = |week: i32| {
        let millilitres = 32_000 + i64::from((week * 37) % 7) * 411;
        let cents = millilitres * 17 / 100;
        (
            (10_000 + i64::from(week) * 480 + i64::from((week * 31) % 11)).to_string(),
            format!("{}.{:03}", millilitres / 1_000, millilitres % 1_000),
            format!("{}.{:02}", cents / 100, cents % 100),
        )
    };
    (0..WEEKS).map(line).collect()
}

fn fills(texts: &[(String, String, String)], start: Day) -> Vec<Fill> {
    let currency = "EUR".parse().unwrap();
    let fill = |(week, (odometer, volume, total)): (i32, &(String, String, String))| Fill {
        day: start.plus_days(week * 7),
        travelled: Travelled(Distance::parse_reading(odometer, DistanceUnit::Kilometre).unwrap()),
        taken: Taken::Petrol(Volume::parse(volume, VolumeUnit::Litre).unwrap()),
        level: if week % 9 == 4 { Level::Part } else { Level::Full },
        cost: Some(Money::parse(total, currency).unwrap()),
    };
    (0..).zip(texts).map(fill).collect()
}

fn vehicle(start: Day) -> Vehicle {
    Vehicle {
        engine: EngineKind::Petrol,
        first_use: Some(start),
        known_from_new: false,
        kept_since: None,
        unit: DistanceUnit::Kilometre,
        equipment: Equipment::default(),
        conditions: Conditions::default(),
        yearly: None,
    }
}

/// All that a page on fuel and money shows, in numbers.
fn everything(fills: &[Fill], track: &Track, today: Day) -> usize {
    let (series, warnings) = spans(fills);
    let spans = &series[0].spans;
    let found = figures(spans).unwrap();
    let points: Vec<_> =
        spans.iter().map(|span| (span.to, span.used.number(ConsumptionUnit::LitresPer100Km, 1))).collect();
    let watched = watch(spans);
    let visit =
        Question { spans, day: today.plus_days(-300), not_before: None, not_after: None, swing: Swing::Fuel };
    let answer = helped(&visit);
    let costs: Vec<Cost> = fills
        .iter()
        .filter_map(|fill| Some(Cost { day: fill.day, class: CostClass::Fuel, money: fill.cost? }))
        .collect();
    let years = by_year(&costs, today);
    let months = by_month(&costs, today);
    let each: usize = years
        .iter()
        .map(|bill| per_distance(&costs, (bill.from, bill.to), today, |day| track.on(day)).len())
        .sum();
    black_box((found, answer, use_by_year(spans)));
    points.len() + warnings.len() + watched.alarms.len() + months.len() + each
}

fn bench(criterion: &mut Criterion) {
    let start = Day::from_ymd(2006, 3, 6).unwrap();
    let today = start.plus_days(WEEKS * 7);
    let texts = texts();
    let taken = fills(&texts, start);
    let readings: Vec<Reading> = taken
        .iter()
        .map(|fill| Reading { day: fill.day, shown: fill.travelled.0, status: OdometerStatus::Actual })
        .collect();
    let car = vehicle(start);
    let track = Track::new(&car, &readings, &[]);

    criterion.bench_function("20 years of weekly fills: every figure", |bencher| {
        bencher.iter(|| everything(black_box(&taken), &track, today));
    });
    criterion.bench_function("20 years of weekly fills: spans alone", |bencher| {
        bencher.iter(|| spans(black_box(&taken)).0.len());
    });
    let (series, _) = spans(&taken);
    criterion.bench_function("20 years of weekly fills: watch alone", |bencher| {
        bencher.iter(|| watch(black_box(&series[0].spans)).alarms.len());
    });
    criterion.bench_function("20 years of weekly fills: reading them out of text", |bencher| {
        bencher.iter(|| fills(black_box(&texts), start).len());
    });
    criterion.bench_function("20 years of weekly readings: the pace", |bencher| {
        bencher.iter(|| Pace::new(&car, &Track::new(&car, black_box(&readings), &[])).per_day());
    });
}

criterion_group!(benches, bench);
criterion_main!(benches);
