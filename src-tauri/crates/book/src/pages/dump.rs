//! All pages as text, to hold a rebuild against.

use std::fmt::Write;

use rusqlite::Connection;
use rusqlite::types::ValueRef;

use super::TABLES;
use crate::BookError;

/// Every row of every page, in the order of its key.
pub(crate) fn dump(connection: &Connection) -> Result<String, BookError> {
    let mut text = String::new();
    for table in TABLES {
        let mut statement = connection.prepare(&format!("SELECT * FROM {table} ORDER BY 1, 2, 3"))?;
        let columns = statement.column_count();
        let mut rows = statement.query([])?;
        while let Some(row) = rows.next()? {
            text.push_str(table);
            for column in 0..columns {
                text.push(' ');
                write_value(&mut text, row.get_ref(column)?);
            }
            text.push('\n');
        }
    }
    Ok(text)
}

fn write_value(text: &mut String, value: ValueRef<'_>) {
    // Writing into a string has no way to fail.
    let _ = match value {
        ValueRef::Null => write!(text, "-"),
        ValueRef::Integer(integer) => write!(text, "{integer}"),
        ValueRef::Real(real) => write!(text, "{real}"),
        ValueRef::Text(bytes) => write!(text, "{:?}", String::from_utf8_lossy(bytes)),
        ValueRef::Blob(bytes) => bytes.iter().try_for_each(|byte| write!(text, "{byte:02x}")),
    };
}
