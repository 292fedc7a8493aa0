//! The planner against an exhaustive search, and what must hold of every plan.
#![allow(clippy::unwrap_used)]

use proptest::prelude::*;

use super::exhaustive::{exhaustive, own_days, visit_on};
use super::*;

const TODAY: &str = "2026-05-04";

fn today() -> Day {
    TODAY.parse().unwrap()
}

fn on(days: i32) -> Day {
    today().plus_days(days)
}

/// A yearly job of unknown price that needs nothing opened up.
fn job(due: i32, stakes: Stakes) -> Job {
    Job {
        item: ItemRef::Catalogue(1),
        turn: 0,
        due: on(due),
        stakes,
        site: Site::Home,
        access: None,
        price: None,
        life: 365,
        most_early: None,
        pinned: None,
    }
}

fn plan(jobs: &[Job]) -> VisitPlan {
    plan_visits(jobs, &ASSUMED, today())
}

fn any_stakes() -> impl Strategy<Value = Stakes> {
    use Stakes::{Breakdown, Comfort, Economy, Engine, Repair, Safety};
    prop::sample::select(vec![Comfort, Economy, Repair, Breakdown, Engine, Safety])
}

fn any_access() -> impl Strategy<Value = Option<Access>> {
    use Access::{AirPath, Bonnet, Lifted, WheelsOff};
    prop::sample::select(vec![None, Some(Lifted), Some(Lifted), Some(WheelsOff), Some(AirPath), Some(Bonnet)])
}

prop_compose! {
    fn any_job(far: i32)(
        due in -60..far,
        stakes in any_stakes(),
        access in any_access(),
        price in prop::option::weighted(0.8, 0_i64..30_000),
        life in prop::sample::select(vec![40_u32, 183, 365, 548, 730, 1_461, 3_653]),
        most_early in prop::option::weighted(0.15, prop::sample::select(vec![1_u32, 14, 30, 120, 700])),
        pin in prop::option::weighted(0.15, -20..far),
        site in prop::sample::select(vec![Site::Home, Site::Home, Site::Workshop]),
    ) -> Job {
        Job { site, access, price, life, most_early, pinned: pin.map(on), ..job(due, stakes) }
    }
}

fn any_jobs(most: usize, far: i32) -> impl Strategy<Value = Vec<Job>> {
    prop::collection::vec(any_job(far), 0..=most)
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(30) })]

    /// More jobs than the planner can be sure about: it still finds the best plan nearly always.
    #[test]
    fn little_is_lost_where_ways_are_dropped(jobs in prop::collection::vec(any_job(730), 40)) {
        let (plan, best) = (plan(&jobs), plan_within(&jobs, &ASSUMED, today(), usize::MAX));
        prop_assert!(best.proven);
        prop_assert!(plan.cost.total() >= best.cost.total());
        prop_assert!(plan.cost.total() * 100 <= best.cost.total() * 105, "at most 5 % dearer");
        prop_assert!(!plan.proven || plan.cost.total() == best.cost.total());
    }
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(400) })]

    #[test]
    fn no_plan_is_cheaper(jobs in any_jobs(8, 730)) {
        let plan = plan(&jobs);
        prop_assert!(plan.proven);
        prop_assert_eq!(plan.cost.total(), exhaustive(&jobs, today(), |here| own_days(here, today())));
    }

    /// Where no job is kept from being early or late, no other day has anything to offer.
    #[test]
    fn no_other_day_is_cheaper(jobs in any_jobs(4, 150)) {
        let jobs: Vec<_> = jobs.into_iter().map(|job| Job { life: job.life.max(365), ..job }).collect();
        prop_assert_eq!(plan(&jobs).cost.total(), exhaustive(&jobs, today(), |_| (0..150).collect()));
    }

    #[test]
    fn a_plan_adds_up_and_holds_every_job_once(jobs in any_jobs(40, 730)) {
        let (plan, usual) = (plan(&jobs), usual_price(&jobs));
        for visit in &plan.visits {
            let done: Vec<_> = visit.jobs.iter().map(|place| &jobs[*place]).collect();
            let cost = visit_on(&done, usual, today(), visit.day.days_since(today()));
            prop_assert_eq!(Some(visit.cost.total()), cost, "and a pin holds");
        }
        prop_assert_eq!(plan.cost, plan.visits.iter().map(|visit| visit.cost).sum());
        prop_assert!(plan.visits.is_sorted_by(|one, next| (one.day, one.site) < (next.day, next.site)));
        prop_assert!(plan.visits.iter().all(|visit| visit.jobs.iter().all(|place| jobs[*place].site == visit.site)));
        let mut places: Vec<_> = plan.visits.iter().flat_map(|visit| visit.jobs.clone()).collect();
        places.sort_unstable();
        prop_assert_eq!(places, (0..jobs.len()).collect::<Vec<_>>());
    }

    #[test]
    fn the_order_of_the_jobs_changes_no_cost(
        (jobs, shuffled) in any_jobs(12, 730).prop_flat_map(|jobs| (Just(jobs.clone()), Just(jobs).prop_shuffle())),
    ) {
        prop_assert_eq!(plan(&jobs).cost.total(), plan(&shuffled).cost.total());
    }

    /// Onto a day, that is, that is its own of some job even while this one is left to the planner.
    #[test]
    fn moving_a_job_to_the_day_of_another_never_saves_anything(
        jobs in prop::collection::vec(any_job(730), 1..=10),
        which in any::<prop::sample::Index>(),
        onto in any::<prop::sample::Index>(),
    ) {
        let (which, onto) = (which.index(jobs.len()), onto.index(jobs.len()));
        prop_assume!(jobs[which].site == jobs[onto].site);
        let days = own_days(&[&jobs[which], &jobs[onto]], today());
        let (due, to) = (days[0], days[1]);
        // Less than half a life to either side, where the planner may put it itself.
        prop_assume!(i64::from(to - due).abs() * 2 < i64::from(jobs[which].life) - 1);
        prop_assume!(jobs[which].most_early.is_none_or(|days| i64::from(due - to) <= i64::from(days)));
        prop_assert!(cost_of_moving(&jobs, &ASSUMED, today(), which, on(to)).total() >= 0);
    }

    #[test]
    fn moving_a_job_to_where_it_is_costs_nothing(jobs in any_jobs(10, 730)) {
        let jobs: Vec<_> = jobs.into_iter().map(|job| Job { pinned: None, ..job }).collect();
        for visit in plan(&jobs).visits {
            let moved = cost_of_moving(&jobs, &ASSUMED, today(), visit.jobs[0], visit.day);
            prop_assert_eq!(moved.total(), 0);
        }
    }

    /// What falls due at a visit that opens its group anyway comes free.
    #[test]
    fn a_job_that_falls_due_at_a_visit_joins_it(jobs in any_jobs(10, 730), stakes in any_stakes()) {
        let before = plan(&jobs);
        for visit in &before.visits {
            // What falls due on a weekend is due on the Friday, even where another job is pinned to the weekend.
            if visit.site == Site::Workshop && visit.day.is_weekend() {
                continue;
            }
            let access = jobs[visit.jobs[0]].access;
            let more = Job { site: visit.site, due: visit.day, access, ..job(0, stakes) };
            let jobs: Vec<_> = jobs.iter().cloned().chain([more]).collect();
            prop_assert_eq!(plan(&jobs).cost.total(), before.cost.total());
        }
    }

    #[test]
    fn all_that_is_overdue_is_done_today(jobs in prop::collection::vec(any_job(0), 1..20)) {
        let jobs: Vec<_> = jobs.into_iter().map(|job| Job { pinned: None, ..job }).collect();
        let plan = plan(&jobs);
        prop_assert!(plan.visits.iter().all(|visit| visit.day == today()));
        prop_assert_eq!((plan.cost.wasted, plan.cost.late), (0, 0));
    }

    #[test]
    fn what_is_grave_does_not_wait(jobs in any_jobs(10, 730)) {
        for visit in plan(&jobs).visits {
            for job in visit.jobs.iter().map(|place| &jobs[*place]).filter(|job| job.pinned.is_none()) {
                let overdue = job.due < today();
                prop_assert!(!(overdue && job.stakes.are_grave()) || visit.day == today());
                prop_assert!(job.stakes != Stakes::Safety || visit.day <= job.due.max(today()));
            }
        }
    }

    #[test]
    fn two_turns_of_an_item_keep_apart(
        due in 0..300,
        price in 0_i64..30_000,
        stakes in any_stakes(),
        others in any_jobs(6, 730),
    ) {
        let turn = |turn: i32| {
            let due = on(due + turn * 365);
            Job { item: ItemRef::Catalogue(9), due, price: Some(price), ..job(0, stakes) }
        };
        let jobs: Vec<_> = [turn(0), turn(1)].into_iter().chain(others).collect();
        for visit in plan(&jobs).visits {
            prop_assert!(!(visit.jobs.contains(&0) && visit.jobs.contains(&1)));
        }
    }
}

#[test]
fn nothing_to_do_calls_for_no_visit() {
    let plan = plan(&[]);
    assert_eq!((plan.visits, plan.cost, plan.proven), (vec![], VisitCost::default(), true));
}

#[test]
fn one_job_is_done_on_its_day() {
    let plan = plan(&[job(40, Stakes::Comfort)]);
    let cost = VisitCost { visits: 1_000_000, ..VisitCost::default() };
    assert_eq!(plan.visits, [PlannedVisit { site: Site::Home, day: on(40), jobs: vec![0], cost }]);
}

/// Worked by hand: a week early throws away 7 of 365 days, 2739 millionths each. That is less than the 10 x 33 333
/// of waiting for a repair, let alone a second visit.
#[test]
fn neighbours_share_a_visit_and_the_cheaper_of_two_ways_to_meet() {
    let jobs = [job(100, Stakes::Breakdown), job(107, Stakes::Comfort)];
    let plan = plan(&jobs);
    assert_eq!(plan.visits.len(), 1);
    assert_eq!(plan.visits[0].day, on(100));
    assert_eq!(plan.cost.wasted, 7 * 2_739);
}

/// 4 May 2026 is a Monday.
#[test]
fn a_workshop_is_closed_on_weekends() {
    let at = |due: i32, site| plan(&[Job { site, ..job(due, Stakes::Safety) }]).visits[0].day;
    assert_eq!([at(4, Site::Home), at(5, Site::Home), at(6, Site::Home)], [on(4), on(5), on(6)]);
    for site in [Site::Workshop, Site::Office] {
        assert_eq!([at(4, site), at(5, site), at(6, site), at(7, site)], [on(4), on(4), on(4), on(7)]);
    }
    let saturday = on(5);
    let overdue = [Job { site: Site::Workshop, ..job(-9, Stakes::Safety) }];
    assert_eq!(plan_visits(&overdue, &ASSUMED, saturday).visits[0].day, on(7));
    let pinned = [Job { site: Site::Workshop, pinned: Some(saturday), ..job(3, Stakes::Comfort) }];
    assert_eq!(plan(&pinned).visits[0].day, saturday);
}

/// By their price alone, which is that of the work, a change of wheels would come months early to save a visit.
#[test]
fn what_a_season_calls_for_waits_for_it() {
    let wheels = Job { most_early: Some(30), life: 183, price: Some(0), ..job(120, Stakes::Safety) };
    let oil = Job { price: Some(8_000), ..job(60, Stakes::Engine) };
    let days = |wheels: &Job| -> Vec<Day> {
        plan(&[oil.clone(), wheels.clone()]).visits.into_iter().map(|visit| visit.day).collect()
    };
    assert_eq!(days(&Job { most_early: None, ..wheels.clone() }), [on(60)]);
    assert_eq!(days(&wheels), [on(60), on(120)]);
    // An oil change that is due a little before the season opens waits for it rather than making two visits.
    let oil = Job { due: on(88), stakes: Stakes::Comfort, ..oil };
    let plan = plan(&[oil, wheels]);
    assert_eq!(plan.visits.iter().map(|visit| visit.day).collect::<Vec<_>>(), [on(90)]);
}

#[test]
fn what_the_owner_does_and_what_a_workshop_does_are_two_visits() {
    let jobs = [Site::Workshop, Site::Home, Site::Home].map(|site| Job { site, ..job(30, Stakes::Repair) });
    let visits: Vec<_> = plan(&jobs).visits.into_iter().map(|visit| (visit.site, visit.jobs)).collect();
    assert_eq!(visits, [(Site::Home, vec![1, 2]), (Site::Workshop, vec![0])]);
}

#[test]
fn papers_wait_for_their_own_days() {
    let paper = |due| Job { site: Site::Office, access: Some(Access::Papers), ..job(due, Stakes::Comfort) };
    let days: Vec<_> = plan(&[paper(30), paper(31), paper(30)]).visits.into_iter().map(|it| it.day).collect();
    assert_eq!(days, [on(30), on(31)]);
}

#[test]
fn a_pin_that_is_past_stands_for_today() {
    let pinned = Job { pinned: Some(on(-3)), ..job(50, Stakes::Comfort) };
    assert_eq!(plan(&[pinned]).visits[0].day, today());
}

#[test]
fn prices_count_against_the_one_in_the_middle() {
    let priced = |price| Job { price, ..job(0, Stakes::Comfort) };
    let jobs = [Some(9_000), None, Some(0), Some(2_000), Some(4_000)].map(priced);
    assert_eq!(usual_price(&jobs), Some(4_000));
    assert_eq!(usual_price(&jobs[1..3]), None);
    let insurance = Job { site: Site::Office, ..priced(Some(50_000)) };
    assert_eq!(
        usual_price(&[insurance.clone(), priced(Some(2_000)), insurance]),
        Some(2_000),
        "no work on the car"
    );
}
