//! How guides are read, and tables that cannot be so. What the ones that come with the program say is checked in
//! `content_tests` and `figures_tests`.
#![allow(clippy::unwrap_used)]

use super::*;
use crate::guides::Part;

const GUIDE: &str = r#"
[[guide]]
key = "wipers"
engines = "any"
does = ["wipers"]
finds = ["lamps"]
minutes = 10
tools = ["gloves"]
hazards = ["raised-car"]
cautions = ["jacking", "chocks"]
not = ["arm"]
steps = [{ key = "lift", only_if = ["turbo"], engines = "diesel", values = ["wheel-torque"] }]
look = ["click"]
after = ["smear"]
disposal = ["household"]
"#;

fn catalogue() -> &'static Catalogue {
    Catalogue::shipped().unwrap()
}

fn parse(guides: &[&str]) -> Result<Guides, RulesError> {
    Guides::parse(&Tables { guides, ..Tables::SHIPPED }, catalogue())
}

fn refused(result: Result<Guides, RulesError>) -> String {
    match result {
        Err(error @ RulesError::Catalogue { .. }) => error.to_string(),
        other => panic!("{other:?}"),
    }
}

#[test]
fn a_guide_is_read_as_it_stands() {
    let read = parse(&[GUIDE]).unwrap();
    let guide = read.by_key("wipers").unwrap();
    let number = |key: &str| catalogue().by_key(key).unwrap().number;
    assert_eq!(
        (guide.does.as_slice(), guide.finds.as_slice()),
        (&[number("wipers")][..], &[number("lamps")][..])
    );
    assert_eq!(guide.hazards, [Hazard::RaisedCar]);
    assert_eq!(guide.word(Part::Step, "lift"), "guide-wipers-step-lift");
    assert_eq!(read.value(guide.steps[0].values[0]).unwrap().key, "wheel-torque");
    assert_eq!(read.by_key("wiper"), None);
    let said: Vec<_> = read.cautions_of(guide).map(|caution| caution.key.as_str()).collect();
    assert_eq!(said, ["high-voltage", "jacking", "chocks", "handbook"]);
}

#[test]
fn guides_that_cannot_be_so_are_refused_by_name() {
    for (right, wrong) in [
        ("\"any\"", "\"steam\""),
        ("key = \"wipers\"", "key = \"Wipers\""),
        ("does = [\"wipers\"]", "does = [\"wings\"]"),
        ("does = [\"wipers\"]\nfinds = [\"lamps\"]", ""),
        ("minutes = 10", "minutes = 4"),
        ("minutes = 10", "minutes = 481"),
        ("[\"gloves\"]", "[]"),
        ("[\"gloves\"]", "[\"gloves\", \"gloves\"]"),
        ("\"raised-car\"", "\"bad luck\""),
        ("\"chocks\"", "\"courage\""),
        ("\"chocks\"]", "\"chocks\", \"courage\"]"),
        ("[\"arm\"]", "[]"),
        ("\"turbo\"", "\"wings\""),
        ("\"diesel\"", "\"coal\""),
        ("\"wheel-torque\"", "\"horse-power\""),
        ("key = \"lift\",", "key = \"lift\", colour = \"red\","),
        ("[\"click\"]", "[]"),
        ("disposal", "then = [\"wipers\"]\ndisposal"),
        ("disposal", "then = [\"nobody\"]\ndisposal"),
    ] {
        assert_ne!(GUIDE.replace(right, wrong), GUIDE, "{right}");
        assert!(!refused(parse(&[&GUIDE.replace(right, wrong)])).is_empty(), "{wrong}");
    }
    assert!(refused(parse(&[GUIDE, GUIDE])).contains("this key"));
}

/// Of every guide that comes with the program, take any one caution that a hazard calls for: it is refused.
#[test]
fn no_guide_can_lose_a_caution_that_its_hazards_call_for() {
    let shipped = Guides::shipped().unwrap();
    let mut tried = 0;
    for (at, guide) in shipped.guides().iter().enumerate() {
        for key in guide.hazards.iter().flat_map(|&hazard| shipped.called_for(hazard)) {
            let mut changed = shipped.clone();
            changed.all[at].cautions.retain(|own| own != key);
            let problem = changed.check().unwrap_err().to_string();
            assert!(problem.contains(&guide.key) && problem.contains(key), "{problem}");
            tried += 1;
        }
    }
    assert!(tried >= shipped.guides().len(), "{tried}");
}

#[test]
fn cautions_and_hazards_that_cannot_be_so_are_refused() {
    let table = Tables::SHIPPED.cautions;
    for (right, wrong) in [
        ("key = \"springs\"", "key = \"jacking\""),
        ("sources = [\"common practice\"]", "sources = []"),
        ("sources = [\"common practice\"]", "sources = [\"hearsay\"]"),
        ("engines = \"diesel\"", "engines = \"steam\""),
        ("[[hazard]]\nkey = \"heavy\"", "[[hazard]]\nkey = \"light\""),
        ("[[hazard]]\nkey = \"heavy\"", "[[hazard]]\nkey = \"dirt\""),
        ("[[hazard]]\nkey = \"heavy\"\ncautions = [\"lifting\"]\n", ""),
        ("cautions = [\"lifting\"]", "cautions = []"),
        ("cautions = [\"lifting\"]", "cautions = [\"courage\"]"),
    ] {
        let changed = table.replacen(right, wrong, 1);
        assert_ne!(changed, table, "{right}");
        refused(Guides::parse(&Tables { cautions: &changed, ..Tables::SHIPPED }, catalogue()));
    }
}

#[test]
fn values_that_cannot_be_so_are_refused() {
    let table = Tables::SHIPPED.values;
    for (right, wrong) in [
        ("number = 2\n", "number = 1\n"),
        ("number = 2\n", "number = 0\n"),
        ("key = \"oil-grade\"", "key = \"oil-volume\""),
        ("case = \"plug-taper\"", "case = \"Plug taper\""),
        ("high = 45.0", "high = 15.0"),
        ("\"regulation: 49 CFR 571.116 (FMVSS 116)\"", "\"somebody\""),
    ] {
        let changed = table.replacen(right, wrong, 1);
        assert_ne!(changed, table, "{right}");
        refused(Guides::parse(&Tables { values: &changed, ..Tables::SHIPPED }, catalogue()));
    }
}
