//! How likely causes are, by hand and by the rules that the numbers have to obey.
#![allow(clippy::unwrap_used)]

use proptest::prelude::*;

use super::*;
use crate::testing::{car, day};
use crate::trouble::Answered;
use crate::upkeep::Catalogue;
use crate::vehicle::{EngineKind, Fitting, Vehicle};

fn table() -> &'static Trouble {
    Trouble::shipped().unwrap()
}

fn complaint<'a>(vehicle: &'a Vehicle, shown: &[&str]) -> Complaint<'a> {
    let shown = shown.iter().map(|&key| key.to_owned()).collect();
    Complaint { shown, ..Complaint::of(vehicle, day("2024-06-01")) }
}

fn chance(complaint: &Complaint<'_>, cause: &str) -> f64 {
    table().suspects(complaint).chance(cause)
}

fn item(key: &str) -> u32 {
    Catalogue::shipped().unwrap().by_key(key).unwrap().number
}

/// The chances of one, two and something else, given their weights.
fn same(suspects: &Suspects<'_>, one: f64, two: f64, other: f64) {
    for (got, want) in [(suspects.chance("one"), one), (suspects.chance("two"), two), (suspects.other, other)]
    {
        assert!((got - want / (one + two + other)).abs() < 1e-12, "{got} {want}");
    }
}

/// The model once more by hand, on a table small enough for it.
#[test]
fn the_chances_are_those_of_the_formula() {
    let symptoms = "[[symptom]]\nkey = 'shakes'\nabout = 'running'\nengines = 'any'\nanyway = 0.1\n\
                    [[symptom]]\nkey = 'smokes'\nabout = 'smoke'\nengines = 'any'\nanyway = 0.2\n";
    let causes = "[bands]\nage = [{ to = 5, times = 0.5 }, { times = 2.0 }]\ndistance = [{ times = 1.0 }]\n\
        [[cause]]\nkey = 'one'\nrate = { petrol = 10 }\ngrows = 'steady'\nshows = ['shakes 0.5']\n\
        found_by = ['look 0.8']\nmend = ['spark-plugs']\n\
        [[cause]]\nkey = 'two'\nrate = { petrol = 20 }\ngrows = 'age'\nshows = ['smokes 0.6']\n\
        found_by = ['look 0.4']\nmend = ['workshop']\n";
    let minute = |opening: crate::trouble::Opening| {
        format!("[[opening]]\nkey = '{}'\nminutes = 1\n", opening.key().replace('-', " "))
    };
    let openings: Vec<_> = crate::trouble::Opening::ALL.into_iter().map(minute).collect();
    let checks = format!("tool = []\n[[check]]\nkey = 'look'\nminutes = 5\n{}", openings.concat());
    let table = Trouble::parse(symptoms, causes, &checks, Catalogue::shipped().unwrap()).unwrap();
    let vehicle = Vehicle { first_use: Some(day("2010-06-01")), ..car() };
    let mut asked = complaint(&vehicle, &["shakes"]);
    asked.absent = vec!["smokes".to_owned()];
    let answer = Answered { check: "look".to_owned(), answer: Answer::NotFound };
    asked.answers = vec![answer.clone(), answer];
    let other = 50.0 * 0.05 / 0.95 * 0.1;
    // One: 10 * (1 - 0.9 * 0.5 - 0.1 * 0.5) * 0.8 * 0.2 * 0.2. Two does not shake, however often it turns up.
    same(&table.suspects(&asked), 10.0 * 0.5 * 0.8 * 0.04, 0.0, other * 0.9);
    // Both told. One: 10 * (0.55 * 0.2 - 0.1 * 0.5 * 0.2) * 0.04.
    // Two, an old car: 20 * 2 * (0.1 * (1 - 0.8 * 0.4) - 0.1 * 0.2 * 0.4) * 0.6 * 0.6.
    asked.shown.push("smokes".to_owned());
    same(&table.suspects(&asked), 10.0 * 0.1 * 0.04, 40.0 * 0.06 * 0.36, other * 0.1);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    #[test]
    fn the_chances_sum_to_one_whatever_is_known(
        engine in prop::sample::select(EngineKind::ALL.to_vec()),
        shown in prop::collection::vec(0_usize..95, 0..8),
        absent in prop::collection::vec(0_usize..95, 0..8),
        found in prop::collection::vec((0_usize..120, 0_usize..3), 0..6),
    ) {
        let vehicle = Vehicle { engine, ..car() };
        let key = |&place: &usize| table().symptoms()[place].key.clone();
        let answers = found.iter().map(|&(check, answer)| Answered {
            check: table().checks()[check].key.clone(),
            answer: [Answer::Found, Answer::NotFound, Answer::Skipped][answer],
        });
        let complaint = Complaint {
            shown: shown.iter().map(key).collect(),
            absent: absent.iter().map(key).collect(),
            answers: answers.collect(),
            ..Complaint::of(&vehicle, day("2024-06-01"))
        };
        let suspects = table().suspects(&complaint);
        let sum = suspects.other + suspects.causes.iter().map(|suspect| suspect.chance).sum::<f64>();
        prop_assert!((sum - 1.0).abs() < 1e-9);
        let possible = |suspect: &Suspect<'_>| suspect.chance >= 0.0 && suspect.cause.rate(&vehicle).is_some();
        prop_assert!(suspects.causes.iter().all(possible));
        prop_assert!(suspects.causes.windows(2).all(|pair| pair[0].chance >= pair[1].chance));
    }
}

#[test]
fn a_car_has_only_the_causes_that_it_can_have() {
    let electric = Vehicle { engine: EngineKind::Electric, ..car() };
    let chain = Vehicle { equipment: car().equipment.with(Fitting::TimingChain, Some(true)), ..car() };
    let diesel_hybrid = Vehicle { engine: EngineKind::DieselHybrid, ..car() };
    for (vehicle, cause, possible) in [
        (&car(), "spark-plug-worn", true),
        (&car(), "glow-plug-faulty", false),
        (&car(), "inverter-faulty", false),
        (&electric, "spark-plug-worn", false),
        (&electric, "inverter-faulty", true),
        (&electric, "brake-pads-worn", true),
        (&chain, "timing-belt-slipped", false),
        (&chain, "timing-chain-stretched", true),
        (&diesel_hybrid, "spark-plug-worn", false),
        (&diesel_hybrid, "glow-plug-faulty", true),
        (&diesel_hybrid, "inverter-faulty", true),
    ] {
        let shown: Vec<_> =
            table().shown_by(table().cause(cause).unwrap()).map(|(shown, _)| &*shown.key).collect();
        assert_eq!(
            chance(&complaint(vehicle, &shown), cause) > 0.0,
            possible,
            "{:?} {cause}",
            vehicle.engine
        );
    }
}

#[test]
fn each_kind_of_evidence_moves_its_cause_the_right_way() {
    let vehicle = car();
    let base = complaint(&vehicle, &["misfires-under-load", "rough-idle"]);
    let plugs = |complaint: &Complaint<'_>| chance(complaint, "spark-plug-worn");
    let coil = |complaint: &Complaint<'_>| chance(complaint, "ignition-coil-faulty");
    let with = |change: &dyn Fn(&mut Complaint<'_>)| {
        let mut changed = base.clone();
        change(&mut changed);
        changed
    };
    let overdue = with(&|it| it.overdue.push(item("spark-plugs")));
    assert!(plugs(&overdue) > plugs(&base));
    let renewed = with(&|it| it.worked.push(Worked { item: item("spark-plugs"), days: 200 }));
    assert!(plugs(&renewed) < plugs(&base));
    let yesterday = with(&|it| it.worked.push(Worked { item: item("spark-plugs"), days: 1 }));
    assert!(coil(&yesterday) > coil(&base) && plugs(&yesterday) > plugs(&renewed));
    let before = with(&|it| it.before.push("ignition-coil-faulty".to_owned()));
    assert!(coil(&before) > coil(&base));
    let points = vec![("ignition-coil-faulty".to_owned(), 0.6)];
    let code = with(&|it| {
        it.codes.push(CodeSign { code: "P0351".to_owned(), points: points.clone(), danger: None });
    });
    assert!(coil(&code) > coil(&base) && plugs(&code) < plugs(&base));
    let answer = |answer| with(&|it| it.answers.push(Answered { check: "look-at-plugs".to_owned(), answer }));
    assert!(plugs(&answer(Answer::Found)) > plugs(&base));
    assert!(plugs(&answer(Answer::NotFound)) < plugs(&base));
    assert!((plugs(&answer(Answer::Skipped)) - plugs(&base)).abs() < 1e-12);
}

#[test]
fn what_a_car_cannot_show_and_what_no_table_knows_says_nothing() {
    let vehicle = car();
    let base = complaint(&vehicle, &["rough-idle"]);
    let mut odd = complaint(&vehicle, &["rough-idle", "rough-idle", "glow-lamp-flashing", "sings"]);
    odd.absent = vec!["rough-idle".to_owned()];
    odd.before = vec!["gremlins".to_owned()];
    odd.answers = vec![Answered { check: "ask-the-stars".to_owned(), answer: Answer::Found }];
    odd.codes =
        vec![CodeSign { code: "P1234".to_owned(), points: vec![("gremlins".to_owned(), 0.9)], danger: None }];
    assert_eq!(table().suspects(&base), table().suspects(&odd));
}

#[test]
fn age_and_distance_raise_what_wears() {
    let young = Vehicle { first_use: Some(day("2023-01-01")), ..car() };
    let old = Vehicle { first_use: Some(day("2004-01-01")), ..car() };
    let shown = ["squeal-when-braking", "vibration-at-speed", "oil-spots"];
    assert!(chance(&complaint(&old, &shown), "oil-leak") > chance(&complaint(&young, &shown), "oil-leak"));
    let mut far = complaint(&young, &shown);
    far.distance = Some(crate::testing::km(200_000));
    assert!(chance(&far, "brake-pads-worn") > chance(&complaint(&young, &shown), "brake-pads-worn"));
}

#[test]
fn nothing_is_suspected_before_anything_was_told() {
    let vehicle = car();
    let suspects = table().suspects(&complaint(&vehicle, &[]));
    assert!(suspects.other >= 1.0 && suspects.causes.iter().all(|suspect| suspect.chance <= 0.0));
    assert!(table().plan(&complaint(&vehicle, &[])).rows.is_empty());
}
