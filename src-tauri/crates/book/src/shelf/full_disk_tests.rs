//! A full disk is told, and nothing is half written.
#![allow(clippy::unwrap_used)]

use rules::running::OdometerStatus;
use units::{Day, Distance, DistanceUnit};

use super::{Change, Shelf, Stamp};
use crate::BookError;
use crate::content::{Content, ReadingContent};
use crate::testing::vehicle;

fn stamp(now: u64) -> Stamp {
    Stamp { now, random: [3; 10] }
}

fn reading(count: i64) -> Change {
    Change::Begin(Content::Reading(ReadingContent {
        day: Day::from_ymd(2023, 1, 2).unwrap(),
        shown: Distance::whole(count, DistanceUnit::Mile),
        status: OdometerStatus::Actual,
        fuel: None,
        papers: Vec::new(),
    }))
}

/// The database is held to the size that it has, and `SQLite` answers as it does when the disk is full.
#[test]
fn the_entry_that_does_not_fit_is_refused_and_all_others_stay() {
    let folder = tempfile::tempdir().unwrap();
    let mut shelf = Shelf::open(folder.path(), || [7; 32]).unwrap();
    let book = shelf.begin(stamp(0), vehicle()).unwrap().book;
    let pages: i64 = shelf.connection.pragma_query_value(None, "page_count", |row| row.get(0)).unwrap();
    shelf.connection.pragma_update_and_check(None, "max_page_count", pages + 2, |_| Ok(())).unwrap();

    let mut written = 1;
    let refused = (1..5_000).find_map(|count| {
        let result = shelf.append(stamp(count), book, reading(98_420));
        written += usize::from(result.is_ok());
        result.err()
    });
    assert!(matches!(refused, Some(BookError::DiskFull)), "{refused:?}");
    assert_eq!(shelf.count(book).unwrap(), written);
    assert!(shelf.verify().unwrap().faults.is_empty());

    let pages = shelf.dump_pages().unwrap();
    drop(shelf);
    let mut shelf = Shelf::open(folder.path(), || unreachable!("the key is kept")).unwrap();
    assert_eq!(shelf.dump_pages().unwrap(), pages);
    shelf.append(stamp(9_000), book, reading(98_421)).unwrap();
}
