//! The folder of a shelf: one program at a time, newer forms refused, damage set aside.
#![allow(clippy::unwrap_used)]

mod support;

use std::fs;
use std::path::Path;

use book::{BookError, Shelf};
use rusqlite::Connection;
use support::{stamp, vehicle};

fn open(folder: &Path) -> Result<Shelf, BookError> {
    Shelf::open(folder, || [7; 32])
}

#[test]
fn what_was_written_is_there_after_closing() {
    let folder = tempfile::tempdir().unwrap();
    let mut shelf = open(folder.path()).unwrap();
    let book = shelf.begin(stamp(0), vehicle("rusty")).unwrap().book;
    let key = shelf.writer().key();
    drop(shelf);
    let shelf = Shelf::open(folder.path(), || unreachable!("the key is kept")).unwrap();
    assert_eq!(shelf.vehicle(book).unwrap().name, "rusty");
    assert_eq!(shelf.writer().key(), key);
}

#[test]
fn a_second_copy_of_the_program_is_refused_and_harms_nothing() {
    let folder = tempfile::tempdir().unwrap();
    let shelf = open(folder.path()).unwrap();
    assert!(matches!(open(folder.path()), Err(BookError::InUse)));
    drop(shelf);
    assert!(open(folder.path()).is_ok());
}

#[test]
fn a_shelf_of_a_newer_version_is_refused_and_left_as_it_is() {
    let folder = tempfile::tempdir().unwrap();
    drop(open(folder.path()).unwrap());
    let database = folder.path().join("wellkept.db");
    Connection::open(&database).unwrap().pragma_update(None, "user_version", 99).unwrap();
    let before = fs::read(&database).unwrap();
    assert!(matches!(open(folder.path()), Err(BookError::Newer)));
    assert_eq!(fs::read(&database).unwrap(), before);
}

#[test]
fn a_damaged_database_is_set_aside_whole_and_a_new_one_begins() {
    let folder = tempfile::tempdir().unwrap();
    drop(open(folder.path()).unwrap());
    let database = folder.path().join("wellkept.db");
    fs::write(&database, b"this is no database, whatever its name says").unwrap();
    fs::write(folder.path().join("wellkept.db-wal"), b"companion").unwrap();
    let Err(BookError::Damaged(aside)) = open(folder.path()) else { panic!("damage must be told") };
    assert_eq!(fs::read(aside.join("wellkept.db")).unwrap(), b"this is no database, whatever its name says");
    assert_eq!(fs::read(aside.join("wellkept.db-wal")).unwrap(), b"companion");
    assert!(open(folder.path()).unwrap().books().unwrap().is_empty());
}

#[test]
fn a_damaged_key_is_told_and_not_replaced() {
    let folder = tempfile::tempdir().unwrap();
    drop(open(folder.path()).unwrap());
    let key = folder.path().join("device.key");
    fs::write(&key, "half a k").unwrap();
    assert!(matches!(open(folder.path()), Err(BookError::Key(_))));
    assert_eq!(fs::read_to_string(&key).unwrap(), "half a k");
}

#[cfg(unix)]
#[test]
fn nobody_else_may_read_the_key() {
    use std::os::unix::fs::PermissionsExt;
    let folder = tempfile::tempdir().unwrap();
    drop(open(folder.path()).unwrap());
    let mode = fs::metadata(folder.path().join("device.key")).unwrap().permissions().mode();
    assert_eq!(mode & 0o777, 0o600);
}

#[test]
fn pages_of_an_older_version_are_thrown_away_and_worked_out_anew() {
    let folder = tempfile::tempdir().unwrap();
    let mut shelf = open(folder.path()).unwrap();
    shelf.begin(stamp(0), vehicle("rusty")).unwrap();
    let pages = shelf.dump_pages().unwrap();
    drop(shelf);
    let connection = Connection::open(folder.path().join("wellkept.db")).unwrap();
    connection.execute_batch("UPDATE setting SET value = '0' WHERE name = 'pages'").unwrap();
    connection.execute_batch("DELETE FROM line; CREATE TABLE \"an old page\" (book BLOB)").unwrap();
    assert_eq!(open(folder.path()).unwrap().dump_pages().unwrap(), pages);
    let old = "SELECT count(*) FROM sqlite_schema WHERE name = 'an old page'";
    assert_eq!(connection.query_row(old, [], |row| row.get::<_, u32>(0)).unwrap(), 0);
}
