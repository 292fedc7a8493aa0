//! A byte that is changed behind the program's back is found, and its entry is named.
#![allow(clippy::unwrap_used)]

mod support;

use book::{Change, Fault, Shelf};
use rusqlite::{Connection, params};
use support::{every_kind, handover, reading, stamp, vehicle, writer};

/// A shelf on disk with every kind of entry, closed again.
fn on_disk() -> (tempfile::TempDir, std::path::PathBuf) {
    let folder = tempfile::tempdir().unwrap();
    let (memory, book) = every_kind();
    let mut shelf = Shelf::open(folder.path(), || [1; 32]).unwrap();
    shelf.merge(&memory.entries(book).unwrap()).unwrap();
    drop(shelf);
    let database = folder.path().join("wellkept.db");
    (folder, database)
}

fn faults(folder: &tempfile::TempDir) -> Vec<Fault> {
    Shelf::open(folder.path(), || unreachable!("the key is there")).unwrap().verify().unwrap().faults
}

#[test]
fn an_untouched_shelf_verifies() {
    let (folder, _) = on_disk();
    assert_eq!(faults(&folder), []);
}

/// Every byte of every entry, and of every signature, one at a time.
#[test]
fn any_changed_byte_is_found_and_its_entry_named() {
    let (memory, book) = every_kind();
    let mut shelf = Shelf::in_memory(writer(2)).unwrap();
    shelf.merge(&memory.entries(book).unwrap()).unwrap();
    for (index, signed) in memory.entries(book).unwrap().iter().enumerate() {
        for at in 0..signed.bytes.len() {
            let mut changed = signed.clone();
            changed.bytes[at] ^= 1;
            assert!(changed.open().is_err(), "byte {at} of entry {index}");
        }
        for at in 0..64 {
            let mut changed = signed.clone();
            changed.signature[at] ^= 1;
            assert!(changed.open().is_err(), "byte {at} of the signature of entry {index}");
        }
    }
}

#[test]
fn the_fault_names_the_row_and_the_hash_and_no_other_row() {
    let (folder, database) = on_disk();
    let connection = Connection::open(&database).unwrap();
    let places: Vec<(i64, Vec<u8>, Vec<u8>)> = connection
        .prepare("SELECT place, bytes, hash FROM entry ORDER BY place")
        .unwrap()
        .query_map([], |row| Ok((row.get(0)?, row.get(1)?, row.get(2)?)))
        .unwrap()
        .collect::<Result<_, _>>()
        .unwrap();
    for (place, bytes, hash) in places {
        for at in [0, bytes.len() / 2, bytes.len() - 1] {
            let mut changed = bytes.clone();
            changed[at] ^= 0x10;
            let update = "UPDATE entry SET bytes = ?2 WHERE place = ?1";
            connection.execute(update, params![place, changed]).unwrap();
            let hash = hash.iter().fold(String::new(), |text, byte| text + &format!("{byte:02x}"));
            assert_eq!(faults_of(&database), [Fault::Changed { place, hash }], "byte {at}");
            connection.execute(update, params![place, bytes]).unwrap();
        }
    }
    drop(connection);
    assert_eq!(faults(&folder), []);
}

/// Verifies a copy, since the test holds the database itself open.
fn faults_of(database: &std::path::Path) -> Vec<Fault> {
    let copy = tempfile::tempdir().unwrap();
    let connection = Connection::open(database).unwrap();
    connection.execute("VACUUM INTO ?1", [copy.path().join("wellkept.db").to_str().unwrap()]).unwrap();
    Shelf::open(copy.path(), || [1; 32]).unwrap().verify().unwrap().faults
}

#[test]
fn a_removed_or_misfiled_entry_is_found() {
    let (folder, database) = on_disk();
    let change = |sql: &str| Connection::open(&database).unwrap().execute(sql, []).unwrap();
    change("UPDATE entry SET time = time + 1 WHERE number = 3");
    assert!(matches!(faults(&folder)[..], [Fault::Misfiled { .. }]));
    change("UPDATE entry SET time = time - 1 WHERE number = 3");
    change("DELETE FROM entry WHERE number = 3");
    assert!(matches!(faults(&folder)[..], [Fault::Unchained { .. }]));
}

/// Whoever cuts the end off an earlier owner's chain leaves a chain that is whole in itself; the handover tells.
#[test]
fn a_chain_that_is_cut_short_behind_a_handover_is_found() {
    let folder = tempfile::tempdir().unwrap();
    let mut first = Shelf::in_memory(writer(1)).unwrap();
    let book = first.begin(stamp(0), vehicle("Thistle")).unwrap().book;
    for count in 1..4 {
        first.append(stamp(count), book, Change::Begin(reading("2023-01-02", 100))).unwrap();
    }
    let mut second = Shelf::open(folder.path(), || [2; 32]).unwrap();
    let sold = first.sign_handover(stamp(5), book, handover("2023-06-01", 900)).unwrap();
    first.merge(&[sold]).unwrap();
    second.merge(&first.entries(book).unwrap()).unwrap();
    // The second owner sells it on, and his handover names the end of the first one's chain: its handover.
    let sold = second.sign_handover(stamp(9), book, handover("2024-06-01", 1_900)).unwrap();
    second.merge(&[sold]).unwrap();
    assert_eq!(second.verify().unwrap().faults, []);
    let hash = second.entries(book).unwrap().last().unwrap().hash().to_string();
    drop(second);
    let database = Connection::open(folder.path().join("wellkept.db")).unwrap();
    let cut = database.execute("DELETE FROM entry WHERE number = 4", []).unwrap();
    assert_eq!(cut, 1);
    drop(database);
    let found = faults(&folder);
    assert!(matches!(&found[..], [Fault::CutShort { hash: named, .. }] if *named == hash), "{found:?}");
}
