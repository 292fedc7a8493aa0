//! What the book costs, each beside something real in the same run.
//!
//! - `append`: one entry with `synchronous=FULL`, beside a bare one-row insert with the same settings.
//! - `rebuild`: entries folded a second.
//! - `verify`: entries verified a second.
#![allow(clippy::unwrap_used, missing_docs)]

#[path = "../tests/support/bare.rs"]
mod bare;
#[path = "../tests/support/mod.rs"]
mod support;

use std::hint::black_box;
use std::path::Path;
use std::time::{Duration, Instant};

use bare::Bare;
use book::content::Content;
use book::entry::{Body, Entry, Signed};
use book::{Change, Shelf};
use criterion::{BatchSize, Criterion, Throughput};
use support::{day, fill, sign, stamp, vehicle, visit, writer};
use units::{BookId, EntryId};

/// A shelf on the disk, in whose one book a tank is filled again and again.
struct Fills {
    shelf: Shelf,
    book: BookId,
    count: u64,
}

impl Fills {
    fn new(folder: &Path) -> Fills {
        let mut shelf = Shelf::open(&folder.join("shelf"), || [1; 32]).unwrap();
        let book = shelf.begin(stamp(0), vehicle("rusty")).unwrap().book;
        Fills { shelf, book, count: 0 }
    }

    fn append(&mut self) {
        self.count += 1;
        let change = Change::Begin(fill(day("2023-01-02"), 98_420));
        self.shelf.append(stamp(self.count), self.book, change).unwrap();
    }
}

fn append(criterion: &mut Criterion) -> String {
    let folder = tempfile::tempdir_in(env!("CARGO_TARGET_TMPDIR")).unwrap();
    let bare = Bare::new(folder.path());
    let mut fills = Fills::new(folder.path());
    let mut group = criterion.benchmark_group("append");
    group.bench_function("bare insert", |bencher| bencher.iter(|| bare.insert()));
    group.bench_function("entry", |bencher| bencher.iter(|| fills.append()));
    group.finish();

    // By turns of fifty, so that whatever else the machine has to do is in the way of both.
    let (mut inserts, mut entries) = (Vec::new(), Vec::new());
    for _ in 0..40 {
        inserts.extend((0..50).map(|_| timed(|| bare.insert())));
        entries.extend((0..50).map(|_| timed(|| fills.append())));
    }
    let (insert, entry) = (median(inserts).as_secs_f64() * 1e6, median(entries).as_secs_f64() * 1e6);
    format!("append: {:.2} x a bare insert ({entry:.0} us, {insert:.0} us)", entry / insert)
}

fn timed<T>(work: impl FnOnce() -> T) -> Duration {
    let start = Instant::now();
    black_box(work());
    start.elapsed()
}

fn median(mut times: Vec<Duration>) -> Duration {
    times.sort_unstable();
    times[times.len() / 2]
}

/// `count` things in the median of five times, a second.
fn rate(count: u64, mut work: impl FnMut()) -> f64 {
    let times = (0..5).map(|_| timed(&mut work)).collect();
    f64::from(u32::try_from(count).unwrap()) / median(times).as_secs_f64()
}

/// A book of many fills with a visit every tenth entry, signed without a shelf.
fn long_book(entries: u64) -> Vec<Signed> {
    let writer = writer(1);
    let book = BookId([5; 16]);
    let mut signed: Vec<Signed> = Vec::new();
    for number in 0..entries {
        let id = EntryId::new(number, stamp(number).random);
        let content = match number {
            0 => Content::Vehicle(vehicle("rusty")),
            number if number % 10 == 0 => Content::Visit(visit("2023-02-03", 99_000, vec![])),
            _ => fill(day("2023-01-02"), 98_420),
        };
        let subject = if number == 0 { book.into() } else { id.into() };
        let body = Body::Begin { subject, content };
        let previous = signed.last().map(Signed::hash);
        let entry = Entry { id, book, writer: writer.key(), number, previous, time: number, body };
        signed.push(sign(&writer, &entry));
    }
    signed
}

fn rebuild(criterion: &mut Criterion) -> String {
    const MOST: u64 = 100_000;
    let mut group = criterion.benchmark_group("rebuild");
    group.sample_size(10);
    let mut shelf = Shelf::in_memory(writer(2)).unwrap();
    for count in [1_000, MOST] {
        shelf = Shelf::in_memory(writer(2)).unwrap();
        shelf.merge(&long_book(count)).unwrap();
        group.throughput(Throughput::Elements(count));
        group.bench_function(format!("{count} entries"), |bencher| {
            bencher.iter(|| black_box(shelf.rebuild().unwrap()));
        });
    }
    group.finish();
    let rate = rate(MOST, || assert_eq!(shelf.rebuild().unwrap(), 100_000));
    format!("rebuild: {rate:.0} entries a second at {MOST}")
}

fn verify(criterion: &mut Criterion) -> String {
    const COUNT: u64 = 1_000;
    let mut group = criterion.benchmark_group("verify");
    group.sample_size(10).throughput(Throughput::Elements(COUNT));
    let entries = long_book(COUNT);
    let shelf = || {
        let mut shelf = Shelf::in_memory(writer(2)).unwrap();
        shelf.merge(&entries).unwrap();
        shelf
    };
    group.bench_function(format!("{COUNT} entries"), |bencher| {
        bencher.iter_batched_ref(shelf, |shelf| black_box(shelf.verify().unwrap()), BatchSize::LargeInput);
    });
    group.finish();
    let shelf = shelf();
    let rate = rate(COUNT, || assert!(shelf.verify().unwrap().faults.is_empty()));
    format!("verify: {rate:.0} entries a second at {COUNT}")
}

fn main() {
    let mut criterion = Criterion::default().configure_from_args();
    let summary = [append(&mut criterion), rebuild(&mut criterion), verify(&mut criterion)];
    criterion.final_summary();
    for line in summary {
        println!("{line}");
    }
}
