//! A card in each of its languages: the same claims under the same signature, in other words.
#![allow(clippy::unwrap_used)]

use door::{
    CardLang, CardOptions, CardSize, Clock, Day, Door, ItemForm, Request, Response, VehicleForm, VisitForm,
};
use words::Face;

const ADDRESS: &str = "https://card.example/";

/// A shelf with one car and one visit: engine oil, and an item of the owner's own.
struct Shelf {
    _folder: tempfile::TempDir,
    door: Door,
    book: String,
}

impl Shelf {
    fn new() -> Shelf {
        let folder = tempfile::tempdir().unwrap();
        let today: Day = "2026-06-01".parse().unwrap();
        let mut door = Door::open(folder.path(), Clock::Fixed(today)).unwrap();
        let vehicle = VehicleForm {
            name: "Thistle".to_owned(),
            engine: "petrol".to_owned(),
            unit: "km".to_owned(),
            reading: "98 420".to_owned(),
            ..VehicleForm::default()
        };
        let Response::Written(written) = door.ask(Request::AddVehicle { vehicle }).unwrap() else { panic!() };
        let book = written.book;
        let visit = VisitForm {
            day: "2026-05-20".to_owned(),
            reading: "98300".to_owned(),
            items: vec![ItemForm::Catalogue(1), ItemForm::Own("tow bar wiring".to_owned())],
            ..VisitForm::default()
        };
        door.ask(Request::RecordVisit { book: book.clone(), visit, keep: false }).unwrap();
        Shelf { _folder: folder, door, book }
    }

    /// What the square holds when the card is printed in a language, read off the paper.
    fn square(&self, lang: CardLang, viewer: Option<&str>) -> String {
        let options = CardOptions { lang, viewer: viewer.map(str::to_owned), ..CardOptions::default() };
        let pdf = self.door.card(&self.book, &options).unwrap().pdf().unwrap();
        door::scan_card(&pdf).unwrap().remove(0)
    }
}

#[test]
fn the_languages_of_card_and_report_are_those_that_their_words_are_whole_in() {
    let mut tags = CardLang::ALL.map(CardLang::tag);
    tags.sort_unstable();
    for face in [Face::Card, Face::Report] {
        assert_eq!(words::languages_of(face).collect::<Vec<_>>(), tags, "{face:?}");
    }
    for lang in CardLang::ALL {
        assert_eq!(serde_json::to_value(lang).unwrap(), lang.tag());
    }
}

/// Ed25519 is deterministic (RFC 8032, section 5.1.6), so that the same claims give the same text.
#[test]
fn what_is_signed_knows_no_language() {
    let shelf = Shelf::new();
    let english = shelf.square(CardLang::En, Some(ADDRESS));
    assert!(english.starts_with(ADDRESS));
    for lang in CardLang::ALL {
        assert_eq!(shelf.square(lang, Some(ADDRESS)), english, "{lang:?}");
    }
}

#[test]
fn plain_text_follows_the_language_and_leaves_the_owners_words_alone() {
    let shelf = Shelf::new();
    let expected = [
        (CardLang::En, "History card 2026-06-01", "Engine oil and filter"),
        (CardLang::De, "Fahrzeughistorie 2026-06-01", "Motoröl und Filter"),
        (CardLang::Fr, "Historique du véhicule 2026-06-01", "Vidange et filtre à huile"),
        (CardLang::Es, "Historial del vehículo 2026-06-01", "Aceite de motor y filtro"),
    ];
    for (lang, title, item) in expected {
        let text = shelf.square(lang, None);
        assert!(text.starts_with(title), "{text}");
        assert!(text.contains(&format!("{item}, tow bar wiring")), "{text}");
    }
}

/// Words of any length leave the two small cards their two sides.
#[test]
fn a_small_card_has_two_sides_in_every_language() {
    let mut shelf = Shelf::new();
    let book = shelf.book.clone();
    for (lang, size) in
        CardLang::ALL.into_iter().flat_map(|lang| [(lang, CardSize::Id1), (lang, CardSize::A6)])
    {
        for viewer in [None, Some(ADDRESS.to_owned())] {
            let options = CardOptions { lang, size, viewer, ..CardOptions::default() };
            let asked = shelf.door.ask(Request::Card { book: book.clone(), options });
            let Response::Card(card) = asked.unwrap() else { panic!() };
            assert_eq!(card.pages.len(), 2, "{lang:?} {size:?}");
        }
    }
}
