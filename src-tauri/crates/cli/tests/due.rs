//! What the terminal says of what is due: a table that fits 80 characters, and what is not for this car.
#![allow(clippy::unwrap_used)]

mod terminal;

use serde_json::{Value, json};
use terminal::{refused, run};

/// A petrol car with a timing chain and no turbocharger, new on the first of June 2024, whose tyres have 6 mm left after 24 000 km.
fn shelf() -> tempfile::TempDir {
    let folder = tempfile::tempdir().unwrap();
    let vehicle = json!({
        "name": "Thistle", "engine": "petrol", "unit": "km", "first_use": "2024-06-01", "bought_new": true,
        "reading": "24000", "fitted": { "timing-chain": true, "turbo": false },
    });
    run(folder.path(), &["ask"], &json!({ "ask": "add-vehicle", "vehicle": vehicle }).to_string());
    let tread = ["visit", "--reading", "24000", "--found", "tyres;within-limits;6.0"];
    run(folder.path(), &tread, "");
    folder
}

/// The line of an item and the reasons under it, as one line.
fn row(table: &str, item: &str) -> String {
    let lines: Vec<&str> = table.lines().collect();
    let at = lines.iter().position(|line| line.contains(item)).unwrap();
    let reasons = lines[at + 1..].iter().take_while(|line| line.starts_with("    "));
    [lines[at]].into_iter().chain(reasons.copied()).map(str::trim).collect::<Vec<_>>().join(" ")
}

/// From 8 mm when new, 2 mm in 24 000 km: the 3 mm of the catalogue are reached after 60 000 km, three years from now.
#[test]
fn the_table_tells_span_phase_and_measured_limit_within_80_characters() {
    let shelf = shelf();
    let table = run(shelf.path(), &["due"], "");
    for line in table.lines() {
        assert!(line.chars().count() <= 80, "{line}");
    }
    let tyres = row(&table, "Tyres");
    assert!(tyres.starts_with("ahead"), "{tyres}");
    assert!(tyres.contains("60000 km between 2") && tyres.contains(" and 20"), "{tyres}");
    assert!(tyres.ends_with("on 2026-06-01, 6 mm, so that the limit of 3 mm comes first"), "{tyres}");
    let chain = row(&table, "Timing chain");
    assert!(chain.contains("the first time after 100000 km (common practice)"), "{chain}");
    let oil = row(&table, "Engine oil and filter");
    assert!(oil.contains("every 15000 km / 12 months (common practice); counted from first use"), "{oil}");
}

#[test]
fn what_is_not_for_this_car_is_listed_when_asked_for() {
    let shelf = shelf();
    let path = shelf.path();
    let table = run(path, &["due"], "");
    assert!(!table.contains("not for this car") && !table.contains("Timing belt"), "{table}");
    let all = run(path, &["due", "--all"], "");
    assert!(all.starts_with(&table), "it comes after what is on the plan");
    assert_eq!(
        row(&all, "not for this car: Timing belt, look"),
        "not for this car: Timing belt, look it does not have: Timing belt"
    );
    assert!(row(&all, "Glow plugs").ends_with("no car with this engine has it"));

    let states = |words: &[&str]| -> Vec<String> {
        let lines: Vec<Value> = serde_json::from_str(&run(path, words, "")).unwrap();
        lines.iter().map(|line| line["state"].as_str().unwrap().to_owned()).collect()
    };
    let missing = |states: &[String]| states.iter().filter(|state| *state == "not-for-this-car").count();
    assert_eq!(missing(&states(&["due", "--json"])), 0);
    let listed = all.lines().filter(|line| line.starts_with("not for this car: ")).count();
    assert_eq!(missing(&states(&["due", "--all", "--json"])), listed);
}

/// 190.00 less the 40.00 for the oil leaves 150.00 over 60 and 15 minutes: 160.00 for the oil, 30.00 for the filter.
/// Both fall due once within the year, after twelve months on its last day.
#[test]
fn the_money_ahead_says_what_it_rests_on() {
    let shelf = shelf();
    let path = shelf.path();
    let oil = json!({ "name": "Oil", "price": "40", "item": { "catalogue": 1 } });
    let visit = json!({
        "day": "2026-06-01", "reading": "24000", "workshop": "Larch Garage", "cost": "190", "currency": "EUR",
        "items": [{ "catalogue": 1 }, { "catalogue": 2 }], "parts": [oil],
    });
    run(path, &["visit", "--stdin"], &visit.to_string());
    let said = run(path, &["visits"], "");
    assert!(said.lines().all(|line| line.chars().count() <= 80), "{said}");
    assert!(said.contains("190.00 EUR  (estimated from a bill for several jobs)"), "{said}");
    let said = said.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(said.contains("The next 12 months: 190.00 EUR to 190.00 EUR"), "{said}");
    assert!(said.ends_with("2 prices are estimated from bills for several jobs."), "{said}");
    let json: Value = serde_json::from_str(&run(path, &["visits", "--json"], "")).unwrap();
    let priced = json.as_array().unwrap().iter().find(|visit| !visit["cost"].is_null()).unwrap();
    assert_eq!((&priced["cost"]["number"], &priced["estimated"]), (&json!("190.00"), &json!(2)));
}

/// An oil change under a name of its own would be lost to the plan.
#[test]
fn what_is_nearly_the_key_of_an_item_is_asked_about() {
    let shelf = shelf();
    let said = refused(shelf.path(), &["visit", "--item", "engine-oill"]);
    assert!(said.contains("‘engine-oill’") && said.contains("‘engine-oil’"), "{said}");
    assert!(refused(shelf.path(), &["visit", "--found", "brake-chek;worn"]).contains("‘brake-check’"));
    run(shelf.path(), &["visit", "--item", "Engine sound, listening"], "");
}
