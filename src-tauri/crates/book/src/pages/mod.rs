//! Pages: what the screens read, worked out from the entries.
//!
//! [`fold`] brings the pages up to date with an entry that is the last of its book in the order of the fold.
//! Whatever arrives in another order is answered by [`rebuild_book`].

mod dump;
mod fill;
mod fold;
mod handovers;
mod kept;
mod lines;
mod rows;

use rusqlite::{Connection, Transaction, params};
use units::{BookId, Hash};

use crate::BookError;
use crate::entry::Entry;

pub(crate) use dump::dump;
pub(crate) use fold::fold;
pub use handovers::HandoverRow;
pub(crate) use handovers::writer_of;
pub(crate) use lines::line;
pub use lines::{LineFilter, LineRow, NewerRow, VersionRow};
pub use rows::{DoneRow, MeasuredRow, PaperRow, ReadingRow};

/// The version of the pages. Raise it whenever their tables or their meaning change: the next start throws
/// them away and works them out anew, and there is no other migration.
pub(crate) const PAGES: &str = "9";

/// The tables of the pages, in the order in which a dump writes them.
const TABLES: [&str; 8] = ["line", "version", "done", "measured", "paper", "kept", "tied", "newer"];

/// Throws all pages away and folds every entry on the shelf anew; answers how many there were.
pub(crate) fn rebuild(transaction: &Transaction<'_>) -> Result<usize, BookError> {
    for table in laid(transaction)? {
        transaction.execute_batch(&format!("DROP TABLE \"{table}\""))?;
    }
    transaction.execute_batch(include_str!("pages.sql"))?;
    let mut statement =
        transaction.prepare("SELECT bytes, hash FROM entry ORDER BY book, time, writer, number")?;
    fold_all(transaction, &mut statement.query([])?)
}

/// The tables that this or another version has laid for its pages: all but those of the ink and of the device.
fn laid(connection: &Connection) -> Result<Vec<String>, BookError> {
    let mut statement = connection.prepare(include_str!("laid.sql"))?;
    let names = statement.query_map([], |row| row.get(0))?;
    Ok(names.collect::<Result<_, _>>()?)
}

/// The same for one book.
pub(crate) fn rebuild_book(transaction: &Transaction<'_>, book: BookId) -> Result<usize, BookError> {
    for table in TABLES {
        transaction.execute(&format!("DELETE FROM {table} WHERE book = ?1"), params![book.0])?;
    }
    let mut statement =
        transaction.prepare("SELECT bytes, hash FROM entry WHERE book = ?1 ORDER BY time, writer, number")?;
    fold_all(transaction, &mut statement.query(params![book.0])?)
}

fn fold_all(connection: &Connection, rows: &mut rusqlite::Rows<'_>) -> Result<usize, BookError> {
    let mut count = 0;
    while let Some(row) = rows.next()? {
        let bytes = row.get_ref(0)?.as_bytes().map_err(rusqlite::Error::from)?;
        let entry = Entry::decode_kept(bytes)?;
        fold(connection, &entry, Hash(row.get(1)?))?;
        count += 1;
    }
    Ok(count)
}
