//! What the Today screen costs: both cars of the demo household, nine years each, through the door and warm.
//!
//! Beside it, the rows of both books are read from a copy of the same shelf, without a rule or a screen; and a
//! table says how Today, and what is due with the visits alone, grow with the entries of one of the books.
#![allow(clippy::unwrap_used, missing_docs)]

use std::hint::black_box;
use std::path::Path;
use std::time::{Duration, Instant};

use book::content::{Content, ContentKind, ReadingContent};
use book::{Change, Shelf, Stamp};
use criterion::Criterion;
use door::{Clock, Day, Door, Request, Response};
use rules::running::OdometerStatus;

const TODAY: &str = "2026-06-01";

/// The demo household, told once with all its receipts drawn: that takes far longer than what is measured.
fn household(folder: &Path) -> (Door, Vec<String>) {
    let today: Day = TODAY.parse().unwrap();
    let mut door = Door::open(folder, Clock::Fixed(today)).unwrap();
    door.ask(Request::Demo).unwrap();
    let Response::Shelf(shelf) = door.ask(Request::Shelf).unwrap() else { panic!("no shelf") };
    let books: Vec<String> = shelf.vehicles.into_iter().map(|vehicle| vehicle.book).collect();
    assert_eq!(books.len(), 2);
    (door, books)
}

/// All due lines, and the visits planned of them.
fn visits(door: &mut Door, books: &[String]) {
    for book in books {
        black_box(door.ask(Request::Visits { book: book.clone() }).unwrap());
    }
}

fn today(door: &mut Door, books: &[String]) {
    for book in books {
        black_box(door.ask(Request::Today { book: book.clone() }).unwrap());
    }
}

/// Reads every row from which Today is worked out; answers how many there are.
fn raw(shelf: &Shelf) -> usize {
    let rows = |book| {
        let kinds = [ContentKind::Visit, ContentKind::Plan, ContentKind::Instrument];
        let lines = kinds.map(|kind| black_box(shelf.lines_of(book, kind).unwrap()).len());
        let readings = black_box(shelf.readings(book).unwrap()).len();
        let done = black_box(shelf.done(book).unwrap()).len();
        let papers = black_box(shelf.papers(book).unwrap()).len();
        lines.iter().sum::<usize>() + readings + done + papers
    };
    shelf.books().unwrap().into_iter().map(rows).sum()
}

/// A copy of a folder of files and of folders of files.
fn copy(from: &Path, to: &Path) {
    std::fs::create_dir_all(to).unwrap();
    for entry in std::fs::read_dir(from).unwrap() {
        let entry = entry.unwrap();
        if entry.file_type().unwrap().is_dir() {
            copy(&entry.path(), &to.join(entry.file_name()));
        } else {
            std::fs::copy(entry.path(), to.join(entry.file_name())).unwrap();
        }
    }
}

/// Reads the instrument of the first car again and again, on the days on which it was read already, until the shelf
/// holds this many entries in all.
fn pad(folder: &Path, entries: u64) {
    let mut shelf = Shelf::open(folder, || [1; 32]).unwrap();
    let book = shelf.books().unwrap()[0];
    let held: usize = shelf.books().unwrap().into_iter().map(|book| shelf.count(book).unwrap()).sum();
    let rows = shelf.readings(book).unwrap();
    let mut random = [0; 10];
    for (count, row) in (u64::try_from(held).unwrap()..entries).zip(rows.iter().cycle()) {
        random[..8].copy_from_slice(&count.to_be_bytes());
        let content = Content::Reading(ReadingContent {
            day: row.reading.day,
            shown: row.reading.shown,
            status: OdometerStatus::Actual,
            fuel: None,
            papers: Vec::new(),
        });
        shelf.append(Stamp { now: 0, random }, book, Change::Begin(content)).unwrap();
    }
}

/// The median of 200 times.
fn median(mut work: impl FnMut()) -> Duration {
    let one_time = |_| {
        let start = Instant::now();
        work();
        start.elapsed()
    };
    let mut times: Vec<_> = (0..200).map(one_time).collect();
    times.sort_unstable();
    times[times.len() / 2]
}

fn milliseconds(time: Duration) -> f64 {
    time.as_secs_f64() * 1e3
}

fn main() {
    let folder = tempfile::tempdir_in(env!("CARGO_TARGET_TMPDIR")).unwrap();
    let (mut door, books) = household(folder.path());
    let copied = tempfile::tempdir_in(env!("CARGO_TARGET_TMPDIR")).unwrap();
    copy(folder.path(), copied.path());
    let shelf = Shelf::open(copied.path(), || [1; 32]).unwrap();

    let mut criterion = Criterion::default().configure_from_args();
    let mut group = criterion.benchmark_group("today");
    group.bench_function("rows of both cars, raw", |bencher| bencher.iter(|| raw(&shelf)));
    group.bench_function("both cars", |bencher| bencher.iter(|| today(&mut door, &books)));
    group.finish();
    criterion.final_summary();

    let both = milliseconds(median(|| today(&mut door, &books)));
    let rows = milliseconds(median(|| {
        black_box(raw(&shelf));
    }));
    let count = raw(&shelf);
    println!(
        "today: {both:.2} ms for both cars (wanted: under 5), {:.1} x reading their {count} rows raw",
        both / rows
    );
    drop((door, shelf));
    let mut least = None;
    for entries in [1_000, 10_000, 100_000] {
        pad(copied.path(), entries);
        let mut door = Door::open(copied.path(), Clock::Fixed(TODAY.parse().unwrap())).unwrap();
        let now = [visits, today].map(|ask| milliseconds(median(|| ask(&mut door, &books))));
        let first = *least.get_or_insert(now);
        let [visits, today] = [0, 1].map(|at| format!("{:.2} ms, {:.2} x", now[at], now[at] / first[at]));
        println!("{entries:>7} entries, both cars: due lines and visits {visits}; today {today}");
    }
}
