//! Plans: what they offer, in which order, why, and what each answer does to them.
#![allow(clippy::unwrap_used)]

use std::sync::OnceLock;

use super::*;
use crate::testing::{car, day};
use crate::trouble::order::overlooked::Place;
use crate::trouble::{Answered, Symptom, Worked};
use crate::upkeep::Catalogue;
use crate::vehicle::{EngineKind, Vehicle};

fn table() -> &'static Trouble {
    Trouble::shipped().unwrap()
}

fn complaint<'a>(vehicle: &'a Vehicle, shown: &[&str]) -> Complaint<'a> {
    let shown = shown.iter().map(|&key| key.to_owned()).collect();
    Complaint { shown, ..Complaint::of(vehicle, day("2024-06-01")) }
}

fn keys(plan: &Plan<'_>) -> Vec<String> {
    plan.rows.iter().map(|row| row.check.key.clone()).collect()
}

fn answer(check: &str, answer: Answer) -> Answered {
    Answered { check: check.to_owned(), answer }
}

/// The plan for every symptom by itself, on each engine of which the causes differ, worked out once.
fn every_plan() -> &'static [Plan<'static>] {
    static PLANS: OnceLock<Vec<Plan<'static>>> = OnceLock::new();
    PLANS.get_or_init(|| {
        let engines = [EngineKind::Petrol, EngineKind::Diesel, EngineKind::Electric];
        let plans = engines.map(|engine| {
            let vehicle = Vehicle { engine, ..car() };
            let plan = |symptom: &Symptom| table().plan(&complaint(&vehicle, &[&symptom.key]));
            table().symptoms_of(&vehicle).map(plan).collect::<Vec<_>>()
        });
        plans.into_iter().flatten().collect()
    })
}

#[test]
fn every_symptom_leads_to_checks_and_each_says_why() {
    assert!(every_plan().len() > 200);
    for plan in every_plan() {
        assert!(!plan.rows.is_empty());
        for row in &plan.rows {
            assert!(matches!(row.why.first(), Some(Why::LooksFor { .. })), "{row:?}");
            assert!(row.chance > 0.0 && row.chance <= 1.0 && row.cost > 0.0, "{row:?}");
            let sum: f64 = row.finds.iter().map(|suspect| suspect.chance).sum();
            assert!((sum - row.chance).abs() < 1e-12);
        }
    }
}

/// Whatever turns up most often, a check stands in a list only for a cause that can bring about what was told.
#[test]
fn every_check_looks_for_something_that_was_told() {
    let engines = [EngineKind::Petrol, EngineKind::Diesel, EngineKind::PetrolHybrid, EngineKind::Electric];
    for engine in engines {
        let vehicle = Vehicle { engine, ..car() };
        for symptom in table().symptoms_of(&vehicle) {
            let brings = |cause: &crate::trouble::Cause| {
                table().shown_by(cause).any(|(shown, _)| shown.key == symptom.key)
            };
            for row in table().plan(&complaint(&vehicle, &[&symptom.key])).rows {
                let finds = row.finds.iter().all(|suspect| brings(suspect.cause));
                assert!(finds, "{}: {}", symptom.key, row.check.key);
            }
        }
        for known in crate::trouble::codes::Codes::shipped().unwrap().rows() {
            let codes = vec![crate::trouble::CodeSign::of(known)];
            let asked = Complaint { codes, ..Complaint::of(&vehicle, day("2024-06-01")) };
            for row in table().plan(&asked).rows {
                let finds = row.finds.iter().all(|suspect| known.causes.contains(&suspect.cause.key));
                assert!(finds, "{}: {}", known.code, row.check.key);
            }
        }
    }
}

#[test]
fn the_rows_add_up_to_the_cost_and_the_plan_keeps_its_bounds() {
    for plan in every_plan() {
        let (mut nothing, mut cost) = (1.0, 0.0);
        for row in &plan.rows {
            cost += nothing * row.cost;
            nothing *= 1.0 - row.chance;
        }
        assert!((cost - plan.cost).abs() < 1e-6 * cost, "{cost} {}", plan.cost);
        assert!((nothing - plan.left).abs() < 1e-9, "{nothing} {}", plan.left);
        assert!(plan.at_least <= plan.cost && plan.cost <= plan.by_ratio * (1.0 + 1e-9));
        assert!(!plan.exact || plan.rows.len() <= crate::trouble::order::EXACT);
    }
}

/// What is measured of the plans of single symptoms, the hardest to order: how many are exact, and how far
/// the others can be from the best.
#[test]
fn the_bound_of_a_plan_says_how_far_off_it_can_be() {
    let exact = every_plan().iter().filter(|plan| plan.exact).count();
    let off = every_plan().iter().map(|plan| plan.cost / plan.at_least).fold(1.0, f64::max);
    let rows = every_plan().iter().map(|plan| plan.rows.len()).max();
    println!(
        "{exact} of {} exact, at most {rows:?} rows, at most {off:.3} times the bound",
        every_plan().len()
    );
    assert!(exact * 4 > every_plan().len() * 3 && off < 1.4, "{exact} {off}");
}

#[test]
fn an_opening_is_paid_once_and_said_to_be_shared() {
    for plan in every_plan() {
        let mut open = Vec::new();
        for row in &plan.rows {
            for opening in row.check.opens.iter() {
                let shared = row.why.contains(&Why::Shares { opening });
                assert_eq!(shared, open.contains(&opening), "{row:?}");
                assert_eq!(row.opens.contains(&opening), !shared);
            }
            open.extend(row.opens.iter().copied());
        }
    }
}

#[test]
fn a_check_that_found_nothing_leaves_the_rest_of_the_order_but_for_a_second_look() {
    let vehicle = car();
    let mut asked = complaint(&vehicle, &["hiss-at-idle", "high-idle"]);
    let first = table().plan(&asked);
    assert!(first.exact, "the rest is the same only where the order is the best");
    let made = first.rows[0].check;
    asked.answers.push(answer(&made.key, Answer::NotFound));
    let second = table().plan(&asked);
    let again = second.rows.iter().find(|row| row.check.key == made.key);
    if let Some(row) = again {
        assert!(row.look == 2 && row.why.contains(&Why::SecondLook));
    }
    asked.answers.push(answer(&made.key, Answer::NotFound));
    let third = table().plan(&asked);
    assert!(third.rows.iter().all(|row| row.check.key != made.key), "a check is made twice at most");
    assert!(third.left > second.left || third.rows.len() <= second.rows.len());
}

/// The list of checks keeps the rule for overlooked faults (Chew 1967): after a look that found nothing, a
/// check is worth just what the rule says of a second look there.
#[test]
fn a_second_look_is_worth_what_the_rule_for_overlooked_faults_says() {
    let vehicle = car();
    let mut asked = complaint(&vehicle, &["jerky-throttle"]);
    let cause = table().cause("throttle-cable-worn").unwrap();
    let (check, finds) = table().finding(cause).next().unwrap();
    let chance = |asked: &Complaint<'_>| table().suspects(asked).chance(&cause.key);
    let cost = f64::from(check.minutes);
    let place = Place { chance: chance(&asked), overlooks: 1.0 - finds, cost };
    let nothing = 1.0 - place.chance * finds;
    asked.answers = vec![answer(&check.key, Answer::NotFound)];
    let second = chance(&asked) * nothing * finds / cost;
    assert!((second - place.worth(1)).abs() < 1e-12, "{second} {}", place.worth(1));
}

#[test]
fn what_was_skipped_or_found_something_does_not_come_again() {
    let vehicle = car();
    let mut asked = complaint(&vehicle, &["rough-idle", "misfires-under-load"]);
    assert!(keys(&table().plan(&asked)).contains(&"look-at-plugs".to_owned()));
    for said in [Answer::Skipped, Answer::Found] {
        asked.answers = vec![answer("look-at-plugs", said)];
        assert!(!keys(&table().plan(&asked)).contains(&"look-at-plugs".to_owned()), "{said:?}");
    }
}

#[test]
fn each_answer_can_reorder_the_rest() {
    let vehicle = car();
    let mut asked = complaint(&vehicle, &["uses-coolant", "white-smoke"]);
    let before = table().suspects(&asked).chance("head-gasket-failed");
    asked.answers = vec![answer("test-coolant-gas", Answer::Found)];
    assert!(table().suspects(&asked).chance("head-gasket-failed") > before.max(0.9));
}

#[test]
fn the_book_and_the_codes_are_named_as_reasons() {
    let vehicle = car();
    let catalogue = Catalogue::shipped().unwrap();
    let number = |key: &str| catalogue.by_key(key).unwrap().number;
    let mut asked = complaint(&vehicle, &["misfires-under-load"]);
    asked.overdue = vec![number("ignition-coils")];
    asked.worked = vec![Worked { item: number("spark-plugs"), days: 3 }];
    asked.before = vec!["ignition-coil-faulty".to_owned()];
    let points = vec![("ignition-coil-faulty".to_owned(), 0.7)];
    asked.codes = vec![crate::trouble::CodeSign { code: "P0351".to_owned(), points, danger: None }];
    let plan = table().plan(&asked);
    let why = &plan.rows.iter().find(|row| row.check.key == "swap-coil").unwrap().why;
    let cause = || "ignition-coil-faulty".to_owned();
    for reason in [
        Why::LooksFor { cause: cause() },
        Why::Symptom { symptom: "misfires-under-load".to_owned(), cause: cause() },
        Why::Code { code: "P0351".to_owned(), cause: cause() },
        Why::Overdue { item: number("ignition-coils"), cause: cause() },
        Why::Touched { item: number("spark-plugs"), days: 3, cause: cause() },
        Why::Before { cause: cause() },
    ] {
        assert!(why.contains(&reason), "{reason:?} is not among {why:?}");
    }
}

#[test]
fn a_tool_that_the_owner_lacks_costs_and_one_that_he_has_does_not() {
    let vehicle = car();
    let mut asked = complaint(&vehicle, &["uses-coolant", "white-smoke"]);
    let cost = |asked: &Complaint<'_>| {
        let plan = table().plan(asked);
        let row = plan.rows.iter().find(|row| row.check.key == "test-coolant-gas").unwrap();
        (row.cost, row.lacks.is_empty())
    };
    let (dear, has) = cost(&asked);
    assert!(!has);
    asked.owned.insert("combustion-gas-tester".to_owned());
    let (cheap, has) = cost(&asked);
    assert!(has && cheap < dear);
    asked.owned.clear();
    asked.lacking.insert("torch".to_owned());
    let plan = table().plan(&asked);
    assert!(plan.rows.iter().any(|row| row.lacks == ["torch"]));
}
