//! The questions of invented histories: as written down by hand, as bounded by the catalogue, and as the file has them
//! to which the viewer is held too.

#![allow(clippy::unwrap_used)]

mod histories;

use std::fmt::Write;
use std::path::Path;

use card::{Claims, Item, Place, QUESTIONS_MAX, Question, questions, timeline};
use histories::History;
use rules::running::FASTEST_PER_DAY;
use rules::upkeep::{Catalogue, PrintedDistance, Range, Timing};
use serde_json::{Value, json};
use units::{DistanceUnit, HalfMonths};

#[test]
fn every_history_is_asked_what_a_person_would_ask() {
    let mut wrong = Vec::new();
    for History { name, claims, today, asked } in histories::all() {
        let keys: Vec<_> = questions(&claims, today).iter().map(Question::key).collect();
        assert!(keys.len() <= QUESTIONS_MAX, "{name}");
        assert!(Claims::from_cbor(&claims.to_cbor()).is_ok(), "{name}");
        let keys = keys.join(" ");
        if asked.is_some_and(|asked| asked != keys) {
            wrong.push(format!("{name}: {keys}, not {}", asked.unwrap_or_default()));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn every_kind_of_question_is_asked_somewhere_by_hand() {
    let asked: Vec<_> = histories::all().into_iter().filter_map(|history| history.asked).collect();
    let asked = asked.join(" ");
    for key in KEYS {
        assert!(asked.split(' ').any(|one| one == key), "{key}");
    }
}

const KEYS: [&str; 15] = [
    "no-visits",
    "lower",
    "jump",
    "ahead",
    "gap",
    "before",
    "unrecorded",
    "passed",
    "old-card",
    "clock",
    "instruments",
    "receipts",
    "late",
    "amended",
    "left-out",
];

/// What fills the sentences, of a few histories, worked out by hand.
#[test]
fn questions_name_the_day_and_reading_that_show_it_most() {
    let asked = |name: &str, key: &str| {
        let all = histories::all();
        let History { claims, today, .. } = all.iter().find(|history| history.name == name).unwrap();
        let asked = questions(claims, *today);
        values(asked.iter().find(|question| question.key() == key).unwrap())
    };
    assert_eq!(
        asked("two readings fall", "lower"),
        json!({"kind": "lower", "count": 2, "day": 19_783, "reading": 72_000, "then": 20_144, "shown": 70_500})
    );
    assert_eq!(
        asked("two gaps, the longer by time", "gap"),
        json!({"kind": "gap", "count": 2, "day": 18_312, "reading": 24_000, "then": 19_425, "shown": 60_000})
    );
    assert_eq!(
        asked("two gaps, the longer by distance", "gap"),
        json!({"kind": "gap", "count": 2, "day": 19_783, "reading": 72_000, "then": 20_593, "shown": 200_000})
    );
    assert_eq!(asked("written late", "late"), json!({"kind": "late", "count": 2, "of": 8, "day": 19_037}));
    assert_eq!(
        asked("work due before it", "passed"),
        json!({"kind": "passed", "items": [1, "Tow bar wiring"]})
    );
}

/// What is drawn as a gap is what is asked about, no more and no less, and no visit is missing from the line.
#[test]
fn the_line_has_the_gaps_of_the_questions() {
    for History { name, claims, today, .. } in histories::all() {
        let line = timeline(&claims);
        let asked = questions(&claims, today);
        let gap = asked.iter().find(|question| question.key() == "gap").map(Question::values);
        let first = claims.visits.iter().map(|visit| visit.day).min();
        let (before, between): (Vec<&[Place; 2]>, Vec<&[Place; 2]>) =
            line.gaps.iter().partition(|gap| Some(gap[0].day) < first);
        assert_eq!(between.len(), gap.as_ref().and_then(|gap| gap.count).unwrap_or(0) as usize, "{name}");
        if let Some(gap) = gap {
            let drawn =
                between.iter().any(|[from, to]| Some(from.day) == gap.day && Some(to.day) == gap.then);
            assert!(drawn, "{name}");
        }
        let asks_before = asked.iter().any(|question| question.key() == "before");
        assert!(before.len() <= usize::from(asks_before), "{name}");
        for visit in &claims.visits {
            let mut places = line.runs.iter().flatten().chain(line.gaps.iter().flatten());
            assert!(places.any(|place| place.day == visit.day), "{name}: {}", visit.day);
        }
        assert!(line.runs.iter().all(|run| run.len() > 1), "{name}");
    }
}

/// The file that holds the viewer to the same answers. With `WELLKEPT_WRITE_VECTORS` set it is written.
#[test]
fn the_vector_is_fresh() {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/questions-vector.json");
    let text = vector();
    if std::env::var_os("WELLKEPT_WRITE_VECTORS").is_some() {
        std::fs::write(&path, &text).unwrap();
    }
    let there = std::fs::read_to_string(&path).unwrap_or_default();
    assert!(
        there == text,
        "questions-vector.json is stale; run this test with WELLKEPT_WRITE_VECTORS=1, then the viewer's tests"
    );
}

/// A history a line, so that a change shows which.
fn vector() -> String {
    let lines = histories::all().into_iter().map(|History { name, claims, today, .. }| {
        let asked: Vec<Value> = questions(&claims, today).iter().map(values).collect();
        let line = json!({"name": name, "today": today.epoch(), "claims": hex(&claims), "questions": asked});
        line.to_string()
    });
    format!("[\n{}\n]\n", lines.collect::<Vec<_>>().join(",\n"))
}

fn hex(claims: &Claims) -> String {
    claims.to_cbor().iter().fold(String::new(), |mut hex, byte| {
        write!(hex, "{byte:02x}").unwrap();
        hex
    })
}

/// A question as the viewer makes it: its kind, and what fills its sentence under the names of the places.
fn values(question: &Question) -> Value {
    let values = question.values();
    let items: Vec<Value> = values.items.iter().map(item).collect();
    let places = [
        ("count", values.count.map(Value::from)),
        ("of", values.of.map(Value::from)),
        ("day", values.day.map(|day| day.epoch().into())),
        ("reading", values.reading.map(Value::from)),
        ("then", values.then.map(|day| day.epoch().into())),
        ("shown", values.shown.map(Value::from)),
        ("items", (!items.is_empty()).then(|| Value::from(items))),
    ];
    let places = places.into_iter().filter_map(|(name, value)| Some((name.to_owned(), value?)));
    Value::Object([("kind".to_owned(), question.key().into())].into_iter().chain(places).collect())
}

fn item(item: &Item) -> Value {
    match item {
        Item::Catalogue(number) => (*number).into(),
        Item::Own(name) => name.as_str().into(),
    }
}

/// The longest interval that the catalogue gives an item, over all kinds of part: whole units and half months.
fn longest(number: u32) -> (Option<PrintedDistance>, Option<HalfMonths>) {
    let item = Catalogue::shipped().unwrap().item(number).unwrap();
    let Timing::Every(schedule) = &item.timing else { panic!("item {number} does not come again and again") };
    let ranges = item.kinds.iter().map(|kind| kind.every).chain([schedule.every]);
    let longest: Vec<_> = ranges.map(Range::long).collect();
    let distance = longest.iter().filter_map(|interval| interval.distance()).max_by_key(|one| one.distance());
    (distance, longest.iter().filter_map(|interval| interval.time()).max())
}

/// The bounds are those of the catalogue and of the rules of running: 24 months and 30 000 km for oil, and so on.
#[test]
fn the_bounds_are_those_of_the_rules() {
    let longest = |number| {
        let (distance, time) = longest(number);
        (distance.map(|one| one.distance().floor(DistanceUnit::Kilometre)), time.map(|time| time.0 / 2))
    };
    assert_eq!(longest(1), (Some(30_000), Some(24)));
    assert_eq!(longest(11), (Some(120_000), Some(84)));
    assert_eq!(longest(10), (None, Some(24)));
    assert_eq!(longest(9).1, Some(60));
    assert_eq!(FASTEST_PER_DAY.floor(DistanceUnit::Kilometre), 2_500);
    assert_eq!(FASTEST_PER_DAY.floor(DistanceUnit::Mile), 1_553);
}
