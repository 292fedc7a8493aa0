//! What the terminal says of parts: what is left to buy, what is at home, other numbers, warnings, and for which item.
#![allow(clippy::unwrap_used)]

mod terminal;

use terminal::run;

#[test]
fn buy_and_parts_say_what_the_screen_shows() {
    let folder = tempfile::tempdir().unwrap();
    let shelf = folder.path();
    let ask = |request: serde_json::Value| -> serde_json::Value {
        serde_json::from_str(&run(shelf, &["ask"], &request.to_string())).unwrap()
    };
    let vehicle = serde_json::json!({
        "name": "Thistle", "engine": "petrol", "unit": "km", "first_use": "2020-06-01"
    });
    let book = ask(serde_json::json!({ "ask": "add-vehicle", "vehicle": vehicle }))["book"].clone();
    let filter = ["--part", "Quarrel;OF 12-44;Oil filter;2"];
    run(shelf, &[&["visit", "--item", "engine-oil", "--on", "2025-06-08"], &filter[..]].concat(), "");
    let parts =
        serde_json::json!([{ "number": "OF1244", "name": "Oil filter", "quantity": "1", "price": "8.90" }]);
    let bought =
        serde_json::json!({ "day": "2026-05-20", "shop": "Fairlead", "currency": "EUR", "parts": parts });
    ask(serde_json::json!({ "ask": "write-bought", "book": book, "bought": bought }));
    let same = serde_json::json!([{ "maker": "Merle", "number": "M 7" }]);
    let note = serde_json::json!({ "number": "OF 12-44", "same": same });
    ask(serde_json::json!({ "ask": "note-part", "book": book, "note": note }));
    let pin = serde_json::json!({ "to": "day", "day": "2026-06-08" });
    let item = serde_json::json!({ "catalogue": 1 });
    ask(serde_json::json!({ "ask": "change-plan", "book": book, "item": item, "change": pin }));

    // The row and what is told under it, in one line; no line is wider than a window of 80 characters.
    let row = |words: &str| {
        let said = run(shelf, &[words], "");
        assert!(said.lines().all(|line| line.chars().count() <= 80), "{said}");
        let said = said.replace("\n    ", " ");
        said.lines().find(|row| row.contains("OF 12-44")).unwrap().to_owned()
    };
    for part in ["buy 1 pc", "at home: 1 pc", "also as M 7  Merle", "8.90 EUR on 2026-05-20, Fairlead"] {
        assert!(row("buy").contains(part), "{part}: {}", row("buy"));
    }
    assert!(run(shelf, &["buy"], "").contains("washer for the drain plug"));
    let listed = row("parts");
    assert!(listed.contains("for Engine oil") && listed.contains("also as M 7"), "{listed}");

    let note = serde_json::json!({ "number": "OF 12-44", "mark": "superseded", "instead": "OF 12-45" });
    ask(serde_json::json!({ "ask": "note-part", "book": book, "note": note }));
    for words in ["buy", "parts"] {
        assert!(row(words).contains("superseded: ask for OF 12-45"), "{}", row(words));
    }
    assert!(row("buy").contains("buy 2 pc"), "what is marked at home meets no need: {}", row("buy"));
    let fitted = run(shelf, &[&["visit", "--item", "engine-oil"], &filter[..]].concat(), "");
    assert!(fitted.contains("noted as superseded"), "{fitted}");
}
