//! What waits is filed once and then deleted, kept where a book may take it later, and said where it is none.
#![allow(clippy::unwrap_used)]

use std::fs;
use std::path::PathBuf;
use std::sync::Mutex;

use door::{Clock, Door, FiledView, Intakes, Refusal, Request, VehicleForm};

use super::{Copied, Shared, Tray};
use crate::Opened;

/// A real picture; what is on it does not matter here.
const PICTURE: &[u8] = include_bytes!("../../icons/128x128.png");
/// The Java that writes the folder.
const JAVA: &str = include_str!("../gen/android/app/src/main/java/app/wellkept/book/SharedFolder.java");

struct House {
    folder: tempfile::TempDir,
    opened: Opened,
    intakes: Intakes,
    book: String,
}

impl House {
    fn new() -> House {
        let folder = tempfile::tempdir().unwrap();
        let mut door = Door::open(folder.path(), Clock::Device).unwrap();
        let vehicle =
            VehicleForm { name: "Thistle".into(), engine: "petrol".into(), ..VehicleForm::default() };
        let door::Response::Written(written) = door.ask(Request::AddVehicle { vehicle }).unwrap() else {
            panic!("a car was not written");
        };
        fs::create_dir(folder.path().join("shared")).unwrap();
        House {
            folder,
            opened: Opened(Mutex::new(Ok(door))),
            intakes: Intakes::default(),
            book: written.book,
        }
    }

    fn lay(&self, name: &str, bytes: &[u8]) -> PathBuf {
        let path = self.folder.path().join("shared").join(name);
        fs::write(&path, bytes).unwrap();
        path
    }

    fn shared(&self, named: Vec<PathBuf>) -> Shared {
        Shared::new(self.folder.path(), named)
    }

    fn take(&self, shared: &Shared, id: &str) -> Result<FiledView, Refusal> {
        self.take_into(&self.book, shared, id)
    }

    fn take_into(&self, book: &str, shared: &Shared, id: &str) -> Result<FiledView, Refusal> {
        shared.take_in(&Tray { opened: &self.opened, book, begun: self.intakes.begin("ticket") }, id)
    }

    /// The names in the folder.
    fn left(&self) -> Vec<String> {
        let entries = fs::read_dir(self.folder.path().join("shared")).unwrap();
        entries.map(|entry| entry.unwrap().file_name().into_string().unwrap()).collect()
    }
}

fn ids(shared: &Shared) -> Vec<String> {
    shared.waiting().into_iter().map(|waiting| waiting.id).collect()
}

#[test]
fn copies_wait_in_their_order_and_what_is_half_copied_does_not() {
    let house = House::new();
    for name in ["2.paper", "1.not-copied", "3.part", "zz.too-many", "note.txt"] {
        house.lay(name, b"");
    }
    assert_eq!(ids(&house.shared(Vec::new())), ["1", "2", "zz"]);
}

#[test]
fn nothing_waits_where_there_is_no_folder() {
    let empty = tempfile::tempdir().unwrap();
    assert_eq!(ids(&Shared::new(empty.path(), Vec::new())), [""; 0]);
}

#[test]
fn a_copy_is_filed_once_and_then_deleted() {
    let house = House::new();
    house.lay("1.paper", PICTURE);
    let shared = house.shared(Vec::new());
    assert_eq!(house.take(&shared, "1").unwrap().papers.len(), 1);
    assert_eq!(house.left(), [""; 0]);
    assert_eq!(house.take(&shared, "1").unwrap().papers, [""; 0]);
}

#[test]
fn what_is_no_paper_is_refused_and_deleted() {
    let house = House::new();
    house.lay("1.paper", b"no picture");
    for (name, code) in [
        ("2.too-large", "file-too-large"),
        ("3.not-copied", "shared-not-copied"),
        ("4.begun", "shared-begun"),
        ("zz.too-many", "shared-too-many"),
    ] {
        house.lay(name, b"");
        let (id, _) = name.split_once('.').unwrap();
        let refusal = house.take(&house.shared(Vec::new()), id).unwrap_err();
        assert_eq!(refusal.code, code);
    }
    let refusal = house.take(&house.shared(Vec::new()), "1").unwrap_err();
    assert_eq!(refusal.code, "not-an-image");
    assert_eq!(house.left(), [""; 0]);
}

#[test]
fn a_copy_that_a_book_does_not_take_waits_on() {
    let house = House::new();
    house.lay("1.paper", PICTURE);
    let shared = house.shared(Vec::new());
    let elsewhere = "0".repeat(32);
    house.take_into(&elsewhere, &shared, "1").unwrap_err();
    assert_eq!(house.left(), ["1.paper"]);
    house.take(&shared, "1").unwrap();
    assert_eq!(house.left(), [""; 0]);
}

#[test]
fn what_is_stopped_waits_on() {
    let house = House::new();
    let path = house.lay("1.paper", PICTURE);
    let shared = house.shared(vec![path]);
    for id in ["1", "named-0"] {
        house.intakes.stop("ticket");
        assert_eq!(house.take(&shared, id).unwrap_err().code, "intake-stopped");
    }
    assert_eq!(house.left(), ["1.paper"]);
    assert_eq!(ids(&shared), ["1", "named-0"]);
    assert_eq!(house.take(&shared, "1").unwrap().papers.len(), 1);
}

#[test]
fn no_word_of_the_ui_becomes_a_path() {
    let house = House::new();
    let shared = house.shared(Vec::new());
    fs::write(house.folder.path().join("1.paper"), PICTURE).unwrap();
    for id in ["../1", "..", "", "../device"] {
        assert_eq!(house.take(&shared, id).unwrap().papers, [""; 0]);
        shared.leave_out(id).unwrap();
    }
    assert!(house.folder.path().join("1.paper").exists());
    assert!(house.folder.path().join("device.key").exists());
}

#[test]
fn what_is_left_out_is_deleted() {
    let house = House::new();
    house.lay("1.paper", PICTURE);
    house.lay("2.paper", PICTURE);
    house.shared(Vec::new()).leave_out("1").unwrap();
    assert_eq!(house.left(), ["2.paper"]);
}

#[test]
fn a_file_that_was_named_is_read_once_and_stays_where_it_is() {
    let house = House::new();
    let outside = tempfile::tempdir().unwrap();
    let path = outside.path().join("receipt.png");
    fs::write(&path, PICTURE).unwrap();
    let shared = house.shared(vec![path.clone(), outside.path().to_owned()]);
    assert_eq!(shared.waiting()[0].name, "receipt.png");
    assert_eq!(house.take(&shared, "named-0").unwrap().papers.len(), 1);
    let refusal = house.take(&shared, "named-1").unwrap_err();
    assert_eq!(refusal.code, "no-plain-file");
    assert_eq!(ids(&shared), [""; 0]);
    assert!(path.exists());
}

#[test]
fn the_java_knows_the_same_endings_and_the_same_limit() {
    for (ending, copied) in Copied::ENDINGS {
        assert_eq!(JAVA.contains(&format!(".{ending}\"")), copied != Copied::Begun, "{ending}");
    }
    let (_, product) = JAVA.split_once("MOST_BYTES = ").unwrap();
    let (product, _) = product.split_once(';').unwrap();
    let most: u64 = product
        .split('*')
        .map(|factor| factor.trim().trim_end_matches('L').parse::<u64>().unwrap())
        .product();
    assert!(door::check_file_size(most).is_ok());
    assert!(door::check_file_size(most + 1).is_err());
}
