//! The least that puts a row on the disk: what a bench holds a change of the shelf against.
#![allow(clippy::unwrap_used)]

use std::path::Path;

use rusqlite::{Connection, params};

/// What one entry is held against: the least that puts a row of an entry's size on the disk, with a statement that
/// is prepared once, as those of the shelf are.
pub struct Bare(Connection);

impl Bare {
    pub fn new(folder: &Path) -> Bare {
        let connection = Connection::open(folder.join("bare.db")).unwrap();
        connection.pragma_update(None, "journal_mode", "WAL").unwrap();
        connection.pragma_update(None, "synchronous", "FULL").unwrap();
        connection.execute("CREATE TABLE t (a INTEGER PRIMARY KEY, b BLOB) STRICT", []).unwrap();
        Bare(connection)
    }

    pub fn insert(&self) {
        let mut statement = self.0.prepare_cached("INSERT INTO t (b) VALUES (?1)").unwrap();
        statement.execute(params![[7_u8; 300]]).unwrap();
    }
}
