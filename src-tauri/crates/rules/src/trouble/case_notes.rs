//! The order of checks against invented case notes with a known cause (`cases.toml`).
#![allow(clippy::unwrap_used, clippy::cast_precision_loss)]

use serde::Deserialize;
use units::Distance;

use super::codes::{Code, Codes};
use super::stop::COOLANT;
use super::trial::{Trial, mean, off_by_two, others};
use super::{Answer, Answered, CodeSign, Complaint, Danger, Trouble, Worked};
use crate::statistics::chance::Chance;
use crate::testing::{car, day, km};
use crate::upkeep::Catalogue;
use crate::vehicle::{EngineKind, Fitting, Vehicle};

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Notes {
    case: Vec<Note>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Note {
    #[serde(rename = "note")]
    said: String,
    engine: String,
    #[serde(default)]
    fitted: Vec<String>,
    years: i32,
    km: i64,
    shown: Vec<String>,
    #[serde(default)]
    absent: Vec<String>,
    #[serde(default)]
    codes: Vec<String>,
    #[serde(default)]
    overdue: Vec<String>,
    #[serde(default)]
    touched: Vec<(String, u32)>,
    #[serde(default)]
    before: Vec<String>,
    cause: String,
}

fn notes() -> Vec<Note> {
    toml::from_str::<Notes>(include_str!("cases.toml")).unwrap().case
}

fn table() -> &'static Trouble {
    Trouble::shipped().unwrap()
}

impl Note {
    fn vehicle(&self) -> Vehicle {
        let engine = match self.engine.as_str() {
            "petrol" => EngineKind::Petrol,
            "diesel" => EngineKind::Diesel,
            "petrol hybrid" => EngineKind::PetrolHybrid,
            "diesel hybrid" => EngineKind::DieselHybrid,
            "electric" => EngineKind::Electric,
            other => panic!("{other} is no engine"),
        };
        let fitted = self.fitted.iter().map(|key| Fitting::from_key(key).unwrap());
        let equipment =
            fitted.fold(car().equipment, |equipment, fitting| equipment.with(fitting, Some(true)));
        Vehicle {
            engine,
            equipment,
            first_use: Some(day("2025-01-01").plus_days(-self.years * 365)),
            ..car()
        }
    }

    fn complaint<'a>(&self, vehicle: &'a Vehicle) -> Complaint<'a> {
        let number = |key: &String| Catalogue::shipped().unwrap().by_key(key).unwrap().number;
        let worked = |(key, days): &(String, u32)| Worked { item: number(key), days: *days };
        Complaint {
            distance: Some::<Distance>(km(self.km)),
            shown: self.shown.clone(),
            absent: self.absent.clone(),
            codes: self.codes.iter().filter_map(|code| sign(code)).collect(),
            overdue: self.overdue.iter().map(number).collect(),
            worked: self.touched.iter().map(worked).collect(),
            before: self.before.clone(),
            ..Complaint::of(vehicle, day("2025-01-01"))
        }
    }
}

/// What a code points at; `None` for one without a row in the table of codes, such as a maker's own.
fn sign(text: &str) -> Option<CodeSign> {
    let known = Codes::shipped().unwrap().get(Code::parse(text)?)?;
    Some(CodeSign::of(known))
}

/// A case is judged from when every check of its own may be made: an engine that overheated only after its coolant was
/// looked at and is there, except where that is where the fault lies.
fn of(table: &Trouble, note: &Note) -> Trial {
    let vehicle = note.vehicle();
    let mut complaint = note.complaint(&vehicle);
    let cause = table.cause(&note.cause).unwrap();
    let hot = table.stop_first(&complaint).iter().any(|stop| stop.danger == Danger::Overheating);
    if hot && table.finding(cause).all(|(check, _)| check.key != COOLANT) {
        complaint.answers.push(Answered { check: COOLANT.to_owned(), answer: Answer::NotFound });
    }
    Trial::of(table, &complaint, &note.cause)
}

#[test]
fn there_are_at_least_sixty_case_notes_of_many_causes_and_every_key_is_known() {
    let notes = notes();
    let causes: std::collections::BTreeSet<_> = notes.iter().map(|note| &note.cause).collect();
    assert!(notes.len() >= 60 && causes.len() >= 50, "{} notes of {} causes", notes.len(), causes.len());
    for note in &notes {
        let vehicle = note.vehicle();
        assert!(
            table().cause(&note.cause).is_some_and(|cause| cause.rate(&vehicle).is_some()),
            "{}",
            note.said
        );
        for key in note.shown.iter().chain(&note.absent) {
            assert!(
                table().symptom(key).is_some_and(|symptom| symptom.is_for(&vehicle)),
                "{}: {key}",
                note.said
            );
        }
        assert!(note.before.iter().all(|key| table().cause(key).is_some()), "{}", note.said);
    }
}

/// Measured on the 84 notes: 98.8 in a hundred have a check for the true cause among the first three, which find it
/// with 85.9 in a hundred; it costs 94.2 minutes on the average, against 122.0 in order of likelihood, 107.0 in order of
/// cost, and 185.0 at random. The plain order by ratio costs 93.8 on these notes, and more than ours in
/// `drawn_cases.rs`. 81 of the 84 orders are known to be the best.
///
/// No number was tuned to the notes. Before the model asked that something of what was told comes of the cause, the
/// first figures were 97.6, 83.3 and 93.7. Since the notes were written, links and rates were added where a rule of
/// `content_tests.rs` found a symptom with fewer than three causes, and what must not be tried with the engine running
/// has become a workshop's.
///
/// The notes and the tables come from one hand, so these figures flatter: on real cars they will be lower, as
/// they are below for a complaint of one symptom and for tables that are off.
#[test]
fn the_order_finds_the_true_cause_early_and_cheaply() {
    let trials: Vec<_> = notes().iter().map(|note| of(table(), note)).collect();
    let mut chance = Chance(84);
    let ours = mean(&trials.iter().map(Trial::best).collect::<Vec<_>>());
    let [ratio, likely, cheap, random] = others(&trials, &mut chance);
    println!("ratio  {ratio:?}\nours   {ours:?}\nlikely {likely:?}\ncheap  {cheap:?}\nrandom {random:?}");
    let exact = trials.iter().filter(|trial| trial.is_exact()).count();
    println!("{exact} of {} orders are known to be the best", trials.len());
    for (note, trial) in notes().iter().zip(&trials) {
        let best = trial.best();
        if best.looked_for < 1.0 {
            println!("late: {} ({}), cost {:.0}", note.cause, note.said, best.cost);
        }
    }
    assert!(ours.looked_for >= 0.95 && ours.found >= 0.80, "{ours:?}");
    assert!(ours.cost < 0.55 * random.cost, "{ours:?} against {random:?}");
    assert!(ours.cost < likely.cost && ours.cost < cheap.cost, "{ours:?}, {likely:?}, {cheap:?}");
}

/// What is left of the figures when the complaint is one symptom, and nothing of the book and no code is
/// known.
#[test]
fn a_complaint_of_one_symptom_is_harder() {
    let vague = |mut note: Note| {
        note.shown.truncate(1);
        note.absent.clear();
        note.codes.clear();
        note.overdue.clear();
        note.touched.clear();
        note.before.clear();
        of(table(), &note)
    };
    let trials: Vec<_> = notes().into_iter().map(vague).collect();
    let mut chance = Chance(1);
    let ours = mean(&trials.iter().map(Trial::best).collect::<Vec<_>>());
    let [ratio, likely, cheap, random] = others(&trials, &mut chance);
    println!(
        "vague: ratio  {ratio:?}
vague: ours   {ours:?}
vague: likely {likely:?}"
    );
    println!(
        "vague: cheap  {cheap:?}
vague: random {random:?}"
    );
    assert!(ours.looked_for >= 0.7 && ours.cost < 0.55 * random.cost, "{ours:?} {random:?}");
}

/// What is left of the figures when every rate and every link of the tables is off by a factor of about two
/// (a normal error of the logarithm, of `ln 2`; of a link's odds), while the checks stay as they are.
#[test]
fn the_order_bears_tables_that_are_off_by_a_factor_of_two() {
    let mut chance = Chance(2);
    let outcomes: Vec<_> = (0..4)
        .map(|_| {
            let table = off_by_two(table(), &mut chance);
            let best = |note: &Note| of(&table, note).best();
            mean(&notes().iter().map(best).collect::<Vec<_>>())
        })
        .collect();
    let ours = mean(&outcomes);
    println!("off by two: {ours:?}");
    assert!(ours.looked_for >= 0.9, "{ours:?}");
}

#[test]
fn the_true_cause_is_among_the_likeliest() {
    let ranks: Vec<_> = notes()
        .iter()
        .map(|note| {
            let vehicle = note.vehicle();
            let suspects = table().suspects(&note.complaint(&vehicle));
            suspects.causes.iter().position(|suspect| suspect.cause.key == note.cause).unwrap()
        })
        .collect();
    let within = |rank: usize| ranks.iter().filter(|&&at| at < rank).count() as f64 / ranks.len() as f64;
    println!("first {:.3}, in three {:.3}, in five {:.3}", within(1), within(3), within(5));
    assert!(within(3) >= 0.95, "{}", within(3));
}
