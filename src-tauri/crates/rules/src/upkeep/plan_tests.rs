//! How the plan of one car comes about.
#![allow(clippy::unwrap_used)]

use units::HalfMonths;

use super::*;
use crate::testing::plain_car;
use crate::upkeep::OwnName;
use crate::vehicle::{Condition, EngineKind, Equipment, Fitting};

const OIL: ItemRef = ItemRef::Catalogue(1);

fn plan(vehicle: &Vehicle, changes: &[PlanChange]) -> Plan<'static> {
    Plan::new(Catalogue::shipped().unwrap(), vehicle, changes)
}

fn every(distance: &str, months: u16) -> Schedule {
    Schedule::every(Interval::new(Some(distance.parse().unwrap()), Some(HalfMonths::months(months))).unwrap())
}

fn driven(conditions: &[Condition]) -> Vehicle {
    Vehicle { conditions: conditions.iter().copied().collect(), ..plain_car() }
}

fn oil(vehicle: &Vehicle, changes: &[PlanChange]) -> PlannedItem<'static> {
    plan(vehicle, changes).item(&OIL).unwrap().clone()
}

fn change(item: &ItemRef, setting: Setting) -> PlanChange {
    PlanChange { item: item.clone(), setting }
}

/// Common practice: engine oil 10 000 to 15 000 km; mostly short town trips or towing: 10 000.
#[test]
fn the_long_end_holds_unless_something_tightens_it() {
    let gentle = oil(&plain_car(), &[]);
    assert_eq!(gentle.timing, Timing::Every(every("15000 km", 12)));
    assert!(gentle.tightened_by.is_empty());

    let hard = oil(&driven(&[Condition::Towing, Condition::Dust, Condition::ShortTrips]), &[]);
    assert_eq!(hard.timing, Timing::Every(every("10000 km", 12)));
    let by = [Condition::ShortTrips, Condition::Towing].map(Tightener::Driven);
    assert_eq!(hard.tightened_by, by, "dust does nothing to the oil");
}

/// Common practice: a turbocharged engine never gets the long end. What nobody said may be so.
#[test]
fn an_engine_that_may_be_turbocharged_gets_the_short_end_until_someone_says() {
    let with = |has| Vehicle { equipment: Equipment::default().with(Fitting::Turbo, has), ..plain_car() };
    let by = |vehicle: &Vehicle| {
        let planned = oil(vehicle, &[]);
        (planned.timing, planned.tightened_by)
    };
    let short = Timing::Every(every("10000 km", 12));
    assert_eq!(by(&with(None)), (short.clone(), vec![Tightener::MaybeTurbo]));
    assert_eq!(by(&with(Some(true))), (short.clone(), vec![Tightener::Turbo]));
    assert_eq!(by(&with(Some(false))), (Timing::Every(every("15000 km", 12)), vec![]));
    let towing = Vehicle { conditions: [Condition::Towing].into_iter().collect(), ..with(None) };
    assert_eq!(
        by(&towing),
        (short, vec![Tightener::Driven(Condition::Towing)]),
        "it adds nothing to what is known"
    );
}

#[test]
fn the_handbook_wins_and_nothing_tightens_it() {
    let handbook = every("7500 mi", 6);
    let planned = oil(&driven(&[Condition::Towing]), &[change(&OIL, Setting::Interval(handbook))]);
    assert_eq!(planned.timing, Timing::Every(handbook));
    assert_eq!(planned.authority, Authority::Handbook);
    assert!(planned.tightened_by.is_empty());
}

#[test]
fn the_last_change_of_an_item_holds() {
    let handbook = change(&OIL, Setting::Interval(every("7500 mi", 6)));
    let off = change(&OIL, Setting::Off);
    let back = change(&OIL, Setting::Catalogue);
    assert_eq!(oil(&plain_car(), &[handbook.clone(), off.clone()]).standing, Standing::Off);
    assert_eq!(oil(&plain_car(), &[off.clone(), handbook.clone()]).standing, Standing::Active);
    assert_eq!(oil(&plain_car(), &[handbook, off, back]), oil(&plain_car(), &[]));
}

#[test]
fn what_an_engine_does_not_have_is_not_for_this_car_unless_the_owner_says_so() {
    let electric = Vehicle { engine: EngineKind::Electric, ..plain_car() };
    assert_eq!(oil(&electric, &[]).standing, Standing::NotForThisCar);
    let stated = change(&OIL, Setting::Interval(every("30000 km", 24)));
    assert_eq!(oil(&electric, &[stated]).standing, Standing::Active);
}

#[test]
fn an_item_of_ones_own_comes_goes_and_can_be_switched_off() {
    let hinge = ItemRef::Own(OwnName::parse("Roof hinge, grease").unwrap());
    let begin = change(&hinge, Setting::Interval(every("20000 km", 24)));
    let off = change(&hinge, Setting::Off);
    let out = change(&hinge, Setting::Catalogue);

    let planned = plan(&plain_car(), std::slice::from_ref(&begin)).item(&hinge).unwrap().clone();
    assert_eq!((planned.standing, planned.authority), (Standing::Active, Authority::Owner));
    assert_eq!(planned.timing, Timing::Every(every("20000 km", 24)));

    let switched_off = plan(&plain_car(), &[begin.clone(), off.clone()]).item(&hinge).unwrap().clone();
    assert_eq!(
        (switched_off.standing, switched_off.timing),
        (Standing::Off, Timing::Every(every("20000 km", 24)))
    );
    assert_eq!(plan(&plain_car(), &[begin, out]).item(&hinge), None);
    assert_eq!(plan(&plain_car(), &[off]).item(&hinge), None, "it never had an interval");
}

#[test]
fn the_owner_says_how_much_an_item_of_his_own_matters() {
    let hinge = ItemRef::Own(OwnName::parse("Roof hinge, grease").unwrap());
    let schedule = every("20000 km", 24);
    let stakes = |changes: &[Setting]| {
        let changes: Vec<_> = changes.iter().map(|&setting| change(&hinge, setting)).collect();
        plan(&plain_car(), &changes).item(&hinge).unwrap().stakes
    };
    let safety = Setting::Own(schedule, Stakes::Safety);
    assert_eq!(stakes(&[Setting::Interval(schedule)]), Stakes::Repair);
    assert_eq!(stakes(&[safety]), Stakes::Safety);
    assert_eq!(stakes(&[safety, Setting::Interval(schedule)]), Stakes::Safety, "another interval");
    assert_eq!(stakes(&[safety, Setting::Own(schedule, Stakes::Comfort)]), Stakes::Comfort);
    let anew = [safety, Setting::Catalogue, Setting::Interval(schedule)];
    assert_eq!(stakes(&anew), Stakes::Repair, "taken out, it begins anew");
    let of_the_catalogue = change(&OIL, Setting::Own(schedule, Stakes::Comfort));
    assert_eq!(oil(&plain_car(), &[of_the_catalogue]).stakes, Stakes::Engine, "the catalogue says that");
}

#[test]
fn a_catalogue_item_of_a_newer_version_is_passed_over() {
    let unknown = ItemRef::Catalogue(4_000_000);
    let changed = plan(&plain_car(), &[change(&unknown, Setting::Interval(every("1000 km", 1)))]);
    assert_eq!(changed, plan(&plain_car(), &[]));
}

/// Numbers of the drive belt and the coolant hoses, which are looked at, and of the water that is drained, with the oil.
const WITH_THE_OIL: [u32; 3] = [8, 12, 13];

fn goes_with_oil(number: u32, changes: &[PlanChange]) -> (Timing<Interval>, Option<u32>) {
    let diesel = Vehicle { engine: EngineKind::Diesel, ..plain_car() };
    let planned = plan(&diesel, changes).item(&ItemRef::Catalogue(number)).unwrap().clone();
    (planned.timing, planned.goes_with)
}

/// Common practice: water is drained and belts and hoses are looked at with each oil service.
#[test]
fn what_is_done_with_the_oil_comes_round_as_often_as_it() {
    for number in WITH_THE_OIL {
        let by = |schedule| goes_with_oil(number, &[change(&OIL, Setting::Interval(schedule))]);
        let usual = Timing::Every(every("15000 km", 12));
        assert_eq!(goes_with_oil(number, &[]), (usual.clone(), None));
        assert_eq!(by(every("8000 km", 6)), (Timing::Every(every("8000 km", 6)), Some(1)));
        assert_eq!(by(every("5000 mi", 24)), (Timing::Every(every("5000 mi", 12)), Some(1)));
        assert_eq!(by(every("30000 km", 24)), (usual.clone(), None), "never seldomer than by itself");
        let months = Interval::new(None, Some(HalfMonths::months(6))).unwrap();
        assert_eq!(by(Schedule::every(months)), (Timing::Every(every("15000 km", 6)), Some(1)));
        let off = goes_with_oil(number, &[change(&OIL, Setting::Off)]);
        assert_eq!(off, (usual, None));
    }
}

#[test]
fn the_owners_own_interval_follows_nothing() {
    let oil = change(&OIL, Setting::Interval(every("8000 km", 6)));
    for number in WITH_THE_OIL {
        let own = change(&ItemRef::Catalogue(number), Setting::Interval(every("20000 km", 24)));
        let set = goes_with_oil(number, &[oil.clone(), own]);
        assert_eq!(set, (Timing::Every(every("20000 km", 24)), None));
    }
}
