//! What is asked of one paper costs the same among few papers and among thousands.
#![allow(clippy::unwrap_used)]

use rusqlite::{StatementStatus, params};
use units::{BookId, Hash, SubjectId};

use super::{IS_KEPT, IS_TIED};
use crate::content::{Content, PaperContent};
use crate::entry::Writer;
use crate::testing::vehicle;
use crate::{Change, Shelf, Stamp};

fn stamp(count: u64) -> Stamp {
    let mut random = [0; 10];
    random[..8].copy_from_slice(&count.to_be_bytes());
    Stamp { now: count, random }
}

fn hash(count: u64) -> Hash {
    let mut hash = [0; 32];
    hash[..8].copy_from_slice(&count.wrapping_mul(0x9E37_79B9_7F4A_7C15).to_be_bytes());
    Hash(hash)
}

fn paper(count: u64) -> PaperContent {
    PaperContent { photo: hash(count), width: 3, height: 4, whole: None, page: None }
}

/// A book with so many papers, and the line of the one in the middle.
fn shelf(papers: u64) -> (Shelf, BookId, SubjectId) {
    let mut shelf = Shelf::in_memory(Writer::from_secret(&[7; 32])).unwrap();
    let book = shelf.begin(stamp(0), vehicle()).unwrap().book;
    let begin = |count| (stamp(count), Change::Begin(Content::Paper(paper(count))));
    let written = shelf.append_all(book, (1..=papers).map(begin).collect()).unwrap();
    let middle = usize::try_from(papers / 2).unwrap() - 1;
    (shelf, book, written[middle].subject)
}

/// The steps that the database takes to answer a question, and to write as a paper is thrown away.
fn steps(papers: u64) -> Vec<i32> {
    let (shelf, book, subject) = shelf(papers);
    let taken = hash(papers / 2);
    assert!(shelf.is_kept(taken).unwrap() && !shelf.is_kept(hash(papers + 1)).unwrap());
    assert_eq!(shelf.paper_of(book, taken).unwrap(), Some(subject));
    assert!(!shelf.is_tied(book, subject).unwrap());
    let count = |sql: &str, values: &[&dyn rusqlite::ToSql]| {
        let mut statement = shelf.connection().prepare(sql).unwrap();
        let mut rows = statement.query(values).unwrap();
        while rows.next().unwrap().is_some() {}
        drop(rows);
        statement.get_status(StatementStatus::VmStep)
    };
    let of_line = params![book.0, subject.0];
    vec![
        count(IS_KEPT, params![taken.0]),
        count(IS_TIED, of_line),
        count(include_str!("paper_of.sql"), params![book.0, taken.0]),
        count(include_str!("versions.sql"), of_line),
        count("DELETE FROM kept WHERE book = ?1 AND subject = ?2", of_line),
        count("DELETE FROM paper WHERE book = ?1 AND subject = ?2", of_line),
    ]
}

#[test]
fn one_paper_among_thousands_costs_what_one_among_few_does() {
    let (few, many) = (steps(20), steps(2_000));
    assert!(few.iter().all(|steps| *steps > 0), "{few:?}");
    assert_eq!(few, many);
}

#[test]
fn what_any_version_names_is_kept_until_the_line_is_struck_out() {
    let (mut shelf, book, subject) = shelf(4);
    let (first, second) = (hash(2), hash(50));
    let cut = PaperContent { photo: second, whole: Some(first), ..paper(2) };
    let back = |content| Change::Amend { subject, content: Content::Paper(content), why: String::new() };
    shelf.append(stamp(10), book, back(cut)).unwrap();
    shelf.append(stamp(11), book, back(paper(2))).unwrap();
    assert!(shelf.is_kept(first).unwrap() && shelf.is_kept(second).unwrap());
    assert_eq!(shelf.paper_of(book, second).unwrap(), None, "it was never taken as its own cutting");
    let pages = shelf.dump_pages().unwrap();
    shelf.rebuild().unwrap();
    assert_eq!(shelf.dump_pages().unwrap(), pages);
    shelf.append(stamp(12), book, Change::StrikeOut { subject, why: String::new() }).unwrap();
    assert!(!shelf.is_kept(first).unwrap() && !shelf.is_kept(second).unwrap());
}
