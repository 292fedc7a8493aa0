//! The visits of ten cars with sixty jobs each in the next two years.
#![allow(missing_docs, clippy::unwrap_used)]

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use rules::upkeep::{ASSUMED, Access, ItemRef, Job, Site, Stakes, plan_visits};
use units::Day;

const CARS: u32 = 10;
const JOBS: usize = 60;

/// How long things last, in days, what they cost in minor units, and what must be opened up for them: invented, but
/// in the proportions of a car.
const LIVES: [u32; 9] = [365, 730, 1_460, 365, 1_095, 2_190, 730, 365, 3_650];
const PRICES: [Option<i64>; 7] =
    [Some(0), Some(2_500), Some(6_000), None, Some(12_000), Some(4_000), Some(45_000)];
const ACCESS: [Option<Access>; 8] = [
    Some(Access::Bonnet),
    Some(Access::Lifted),
    Some(Access::WheelsOff),
    None,
    Some(Access::AirPath),
    Some(Access::Lifted),
    Some(Access::Cooling),
    Some(Access::Bonnet),
];
const SITES: [Site; 3] = [Site::Home, Site::Home, Site::Workshop];
const STAKES: [Stakes; 6] =
    [Stakes::Repair, Stakes::Economy, Stakes::Safety, Stakes::Breakdown, Stakes::Engine, Stakes::Comfort];

/// Every turn of the items of one car, first to last, until there are enough.
fn jobs(car: u32, today: Day) -> Vec<Job> {
    let turns = (0..).flat_map(|number: u32| {
        // Steps that have no factor in common with the lengths of the tables mix them.
        let mixed = (car * 31 + number) * 7_919 % 10_007;
        let pick = mixed as usize;
        let life = LIVES[pick % LIVES.len()];
        (0_u32..3).map(move |turn| Job {
            item: ItemRef::Catalogue(number),
            turn,
            due: today.plus_days(i32::try_from(mixed * 13 % (life + 30) + turn * life).unwrap() - 30),
            stakes: STAKES[pick % STAKES.len()],
            site: SITES[pick % SITES.len()],
            access: ACCESS[pick % ACCESS.len()],
            price: PRICES[pick % PRICES.len()],
            life,
            most_early: None,
            pinned: None,
        })
    });
    let horizon = today.plus_days(730);
    turns.filter(|job| job.due < horizon).take(JOBS).collect()
}

fn visits(criterion: &mut Criterion) {
    let today = Day::from_ymd(2026, 5, 4).unwrap();
    let cars: Vec<_> = (0..CARS).map(|car| jobs(car, today)).collect();
    criterion.bench_function("visits of 10 cars x 60 jobs", |bench| {
        bench.iter(|| {
            let plans = cars.iter().map(|jobs| plan_visits(black_box(jobs), &ASSUMED, today));
            plans.map(|plan| plan.visits.len()).sum::<usize>()
        });
    });
}

criterion_group!(benches, visits);
criterion_main!(benches);
