//! The table of codes: how it is read, and what the one that comes with the program says.
#![allow(clippy::unwrap_used)]

use std::collections::BTreeSet;

use super::*;
use crate::trouble::codes::System;

fn shipped() -> &'static Codes {
    Codes::shipped().unwrap()
}

fn code(text: &str) -> Code {
    Code::parse(text).unwrap()
}

#[test]
fn the_shipped_table_knows_more_than_350_codes_of_every_letter() {
    assert!(shipped().rows().count() >= 350);
    let systems: BTreeSet<_> = shipped().rows().map(|known| known.code.system()).collect();
    assert_eq!(systems.len(), System::ALL.len());
}

/// The keys of the causes as they stand in their own table, read here without its own reader.
#[test]
fn every_cause_exists() {
    let causes: toml::Table = toml::from_str(include_str!("../../../data/causes.toml")).unwrap();
    let rows = causes["cause"].as_array().unwrap();
    let keys: BTreeSet<_> = rows.iter().map(|row| row["key"].as_str().unwrap()).collect();
    for known in shipped().rows() {
        for cause in &known.causes {
            assert!(keys.contains(cause.as_str()), "{} points at {cause}", known.code);
        }
    }
}

#[test]
fn a_row_is_found_by_its_code_and_others_have_none() {
    let lean = shipped().get(code("P0171")).unwrap();
    assert_eq!((lean.code, lean.urgency), (code("P0171"), Urgency::Soon));
    assert!(lean.points().contains(&("vacuum-leak".to_owned(), 0.5)));
    for none in ["P1171", "P0000", "P3000", "U1000", "B0FFF"] {
        assert_eq!(shipped().get(code(none)), None, "{none}");
    }
}

/// What a code alone calls to stop for: no oil pressure, overheating, fuel running out, a throttle that stays
/// open, and high voltage where it must not be. A code that stops a car is a decision; this list makes it
/// one.
#[test]
fn the_codes_that_stop_a_car_are_these() {
    let stop = shipped().rows().filter(|known| known.urgency == Urgency::Stop);
    let stop: Vec<_> = stop.map(|known| known.code.to_string()).collect();
    let wanted = [
        "P0093", "P0217", "P0218", "P0298", "P0524", "P0A0C", "P0A0D", "P0AA1", "P0AA4", "P0AA6", "P2105",
        "P2111",
    ];
    assert_eq!(stop, wanted);
}

/// Families of which every member must be there: a car has up to eight cylinders here.
#[test]
fn families_are_whole() {
    let missing = |pattern: &str, digits: std::ops::RangeInclusive<u32>| -> Vec<String> {
        let all = digits.map(|digit| pattern.replace('n', &digit.to_string()));
        all.filter(|text| shipped().get(code(text)).is_none()).collect()
    };
    for (pattern, digits) in [
        ("P030n", 0..=8),
        ("P020n", 0..=8),
        ("P035n", 0..=8),
        ("P067n", 1..=8),
        ("P013n", 0..=9),
        ("P015n", 0..=9),
        ("P016n", 0..=7),
        ("P003n", 0..=2),
        ("P073n", 0..=6),
        ("P045n", 0..=9),
    ] {
        assert_eq!(missing(pattern, digits), Vec::<String>::new());
    }
}

const ROW: &str =
    "[code]\nP0171 = { urgency = \"soon\", causes = [\"vacuum-leak 0.5\", \"bad-fuel 0.1\"] }\n";

#[test]
fn a_row_is_read_as_it_stands() {
    let table = Codes::parse(ROW).unwrap();
    let row = table.get(code("P0171")).unwrap();
    assert_eq!((row.code, row.urgency, table.rows().count()), (code("P0171"), Urgency::Soon, 1));
    assert_eq!(row.causes, ["vacuum-leak", "bad-fuel"]);
    assert_eq!(row.points(), [("vacuum-leak".to_owned(), 0.5), ("bad-fuel".to_owned(), 0.1)]);
}

#[test]
fn rows_that_cannot_be_so_are_refused_by_name() {
    for (right, wrong) in [
        ("P0171", "P171"),
        ("P0171", "p0171"),
        ("P0171", "P1171"),
        ("P0171", "B3000"),
        ("soon", "someday"),
        ("urgency", "urgent"),
        ("urgency = \"soon\"", "urgency = \"stop\""),
        ("urgency = \"soon\"", "urgency = \"soon\", stop = \"overheating\""),
        ("urgency = \"soon\"", "urgency = \"stop\", stop = \"boredom\""),
        ("vacuum-leak 0.5", "Vacuum leak"),
        ("vacuum-leak 0.5", "vacuum-leak"),
        ("vacuum-leak 0.5", "vacuum-leak 0"),
        ("vacuum-leak 0.5", "vacuum-leak 1"),
        ("vacuum-leak 0.5", "vacuum-leak -0.5"),
        ("vacuum-leak 0.5", "vacuum-leak NaN"),
        ("vacuum-leak 0.5", "vacuum-leak 0.05"),
        ("bad-fuel", "vacuum-leak"),
        ("\"vacuum-leak 0.5\", \"bad-fuel 0.1\"", ""),
    ] {
        let refused = Codes::parse(&ROW.replace(right, wrong));
        assert!(matches!(refused, Err(RulesError::Catalogue { .. })), "{wrong}: {refused:?}");
    }
    let twice = format!("{ROW}{}", ROW.replace("[code]\n", ""));
    assert!(matches!(Codes::parse(&twice), Err(RulesError::Catalogue { .. })));
    let said = Codes::parse(&ROW.replace("soon", "someday")).unwrap_err().to_string();
    assert!(said.contains("P0171"), "{said}");
}
