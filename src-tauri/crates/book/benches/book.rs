//! What the book costs, each beside something real in the same run.
//!
//! - `append`: one entry with `synchronous=FULL`, beside a bare one-row insert with the same settings.
//! - `rebuild`: entries folded a second.
//! - `verify`: entries verified a second.
#![allow(clippy::unwrap_used, missing_docs)]

#[path = "../tests/support/mod.rs"]
mod support;

use std::hint::black_box;

use book::content::Content;
use book::entry::{Body, Entry, Signed};
use book::{Change, Shelf};
use criterion::{BatchSize, Criterion, Throughput, criterion_group, criterion_main};
use rusqlite::{Connection, params};
use support::{day, fill, sign, stamp, vehicle, visit, writer};
use units::{BookId, EntryId};

fn append(criterion: &mut Criterion) {
    let mut group = criterion.benchmark_group("append");
    let folder = tempfile::tempdir_in(env!("CARGO_TARGET_TMPDIR")).unwrap();
    let bare = Connection::open(folder.path().join("bare.db")).unwrap();
    bare.pragma_update(None, "journal_mode", "WAL").unwrap();
    bare.pragma_update(None, "synchronous", "FULL").unwrap();
    bare.execute("CREATE TABLE t (a INTEGER PRIMARY KEY, b BLOB) STRICT", []).unwrap();
    let row = vec![7_u8; 300];
    group.bench_function("bare insert", |bencher| {
        bencher.iter(|| bare.execute("INSERT INTO t (b) VALUES (?1)", params![row]).unwrap());
    });

    let mut shelf = Shelf::open(&folder.path().join("shelf"), || [1; 32]).unwrap();
    let book = shelf.begin(stamp(0), vehicle("rusty")).unwrap().book;
    let mut count = 0;
    group.bench_function("entry", |bencher| {
        bencher.iter(|| {
            count += 1;
            shelf.append(stamp(count), book, Change::Begin(fill(day("2023-01-02"), 98_420))).unwrap()
        });
    });
    group.finish();
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

fn rebuild(criterion: &mut Criterion) {
    let mut group = criterion.benchmark_group("rebuild");
    group.sample_size(10);
    for count in [1_000, 100_000] {
        let mut shelf = Shelf::in_memory(writer(2)).unwrap();
        shelf.merge(&long_book(count)).unwrap();
        group.throughput(Throughput::Elements(count));
        group.bench_function(format!("{count} entries"), |bencher| {
            bencher.iter(|| black_box(shelf.rebuild().unwrap()));
        });
    }
    group.finish();
}

fn verify(criterion: &mut Criterion) {
    let mut group = criterion.benchmark_group("verify");
    group.sample_size(10).throughput(Throughput::Elements(1_000));
    let entries = long_book(1_000);
    let shelf = || {
        let mut shelf = Shelf::in_memory(writer(2)).unwrap();
        shelf.merge(&entries).unwrap();
        shelf
    };
    group.bench_function("1000 entries", |bencher| {
        bencher.iter_batched_ref(shelf, |shelf| black_box(shelf.verify().unwrap()), BatchSize::LargeInput);
    });
    group.finish();
}

criterion_group!(benches, append, rebuild, verify);
criterion_main!(benches);
