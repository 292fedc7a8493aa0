//! What stands in ink: every kind of entry, corrections that stay readable, pages that can be rebuilt.
#![allow(clippy::unwrap_used)]

mod support;

use book::content::{Content, ContentKind};
use book::entry::{Body, Entry};
use book::{BookError, Change, LineFilter, Shelf};
use rules::fuel::FuelKind;
use rules::measured::Parameter;
use rules::upkeep::{ItemRef, Milli, Setting};
use support::{day, every_kind, km, paper, plan, reading, stamp, vehicle, visit, writer};

#[test]
fn a_rebuild_gives_the_very_same_pages() {
    let (mut shelf, book) = every_kind();
    let before = shelf.dump_pages().unwrap();
    assert_eq!(shelf.rebuild().unwrap(), shelf.count(book).unwrap());
    assert_eq!(shelf.dump_pages().unwrap(), before);
    assert!(before.lines().count() > 10, "the pages hold rows:\n{before}");
}

#[test]
fn every_content_comes_back_as_it_was_written() {
    let (shelf, book) = every_kind();
    for signed in shelf.entries(book).unwrap() {
        let entry = signed.open().unwrap();
        assert!(!matches!(entry.body, Body::Newer { .. }), "{entry:?}");
        assert_eq!(entry.encode(), signed.bytes);
    }
}

#[test]
fn an_amended_line_shows_the_new_content_and_keeps_the_old() {
    let (shelf, book) = every_kind();
    let line = shelf.lines_of(book, ContentKind::Visit).unwrap().remove(0);
    assert_eq!((line.day, line.amended), (day("2023-02-04"), 1));
    let versions = shelf.versions(book, line.subject).unwrap();
    let days: Vec<_> =
        versions.iter().map(|version| version.content.as_ref().and_then(Content::day)).collect();
    assert_eq!(days, [Some(day("2023-02-03")), Some(day("2023-02-04"))]);
    assert_eq!(versions[1].why, "the day was wrong");
}

#[test]
fn a_struck_out_line_counts_no_more_and_stays_readable() {
    let (shelf, book) = every_kind();
    let struck: Vec<_> = shelf
        .lines(book, &LineFilter::default())
        .unwrap()
        .into_iter()
        .filter(|line| line.struck.is_some())
        .collect();
    assert_eq!(struck.len(), 2, "a reading, and a handover that was taken back");
    assert_eq!(struck[1].content, reading("2023-01-02", 98_420));
    assert!(shelf.readings(book).unwrap().iter().all(|row| row.reading.shown != km(98_420)));
}

#[test]
fn a_line_is_amended_by_its_own_kind_and_struck_out_once() {
    let (mut shelf, book) = every_kind();
    let line = shelf.lines_of(book, ContentKind::Visit).unwrap().remove(0).subject;
    let amend = |content| Change::Amend { subject: line, content, why: String::new() };
    let other = shelf.append(stamp(50), book, amend(paper(1)));
    assert!(matches!(other, Err(BookError::OtherKind(subject)) if subject == line));
    let strike = || Change::StrikeOut { subject: line, why: String::new() };
    shelf.append(stamp(51), book, strike()).unwrap();
    assert!(matches!(shelf.append(stamp(52), book, strike()), Err(BookError::Struck(_))));
    let again = amend(Content::Visit(visit("2023-02-05", 99_000, vec![])));
    assert!(matches!(shelf.append(stamp(53), book, again), Err(BookError::Struck(_))));
    let vehicle = Change::StrikeOut { subject: book.into(), why: String::new() };
    assert!(matches!(shelf.append(stamp(54), book, vehicle), Err(BookError::OtherKind(_))));
}

#[test]
fn papers_wait_in_the_tray_until_a_visit_takes_them() {
    let (mut shelf, book) = every_kind();
    assert_eq!(shelf.papers(book).unwrap().len(), 3);
    let tray = shelf.tray(book).unwrap();
    assert_eq!(tray.len(), 1);
    let content = Content::Visit(visit("2023-06-01", 101_000, vec![tray[0].subject]));
    let taken = shelf.append(stamp(60), book, Change::Begin(content)).unwrap();
    assert!(shelf.tray(book).unwrap().is_empty());
    let strike = Change::StrikeOut { subject: taken.subject, why: String::new() };
    shelf.append(stamp(61), book, strike).unwrap();
    assert_eq!(shelf.tray(book).unwrap(), tray, "a paper of a struck-out visit waits again");
}

#[test]
fn lines_are_found_by_item_and_by_day() {
    let (shelf, book) = every_kind();
    let found = |filter| shelf.lines(book, &filter).unwrap().len();
    assert_eq!(found(LineFilter { item: Some(ItemRef::Catalogue(1)), ..LineFilter::default() }), 1);
    assert_eq!(found(LineFilter { item: Some(ItemRef::Catalogue(2)), ..LineFilter::default() }), 0);
    let own = Some(ItemRef::Own("roof hinge".parse().unwrap()));
    assert_eq!(found(LineFilter { item: own, ..LineFilter::default() }), 1);
    let february = LineFilter { from: Some(day("2023-02-01")), to: Some(day("2023-02-28")), item: None };
    assert_eq!(found(february), 1);
}

#[test]
fn fills_and_measured_values_stand_in_order_and_a_struck_one_counts_no_more() {
    let (mut shelf, book) = every_kind();
    let other = shelf.append(stamp(60), book, Change::Begin(support::measured("2023-04-05"))).unwrap();
    assert_eq!(shelf.measured(book).unwrap().len(), 4);
    let strike = Change::StrikeOut { subject: other.subject, why: "another car".to_owned() };
    shelf.append(stamp(61), book, strike).unwrap();
    let readings = shelf.readings(book).unwrap();
    let fills: Vec<_> = readings.iter().filter_map(|row| Some((row.reading.shown, row.fuel?))).collect();
    let kinds: Vec<_> = fills.iter().map(|(_, fuel)| fuel.filled.kind(FuelKind::Petrol)).collect();
    assert_eq!(kinds, [FuelKind::Electric, FuelKind::Gas]);
    assert_eq!(fills[0].0, km(30));
    let measured = shelf.measured(book).unwrap();
    let told: Vec<_> = measured.iter().map(|row| (row.parameter, row.measurement.value)).collect();
    assert_eq!(told, [(Parameter::LongTrim1, Milli(-4_700)), (Parameter::RestVoltage, Milli(12_480))]);
    assert!(measured.iter().all(|row| row.measurement.day == day("2023-04-04")));
}

/// The columns in which fuel is read hold what its line says, whatever was said of it, amended or not.
#[test]
fn fuel_is_read_from_its_columns_as_its_line_says_it() {
    let mut shelf = Shelf::in_memory(writer(1)).unwrap();
    let book = shelf.begin(stamp(1), vehicle("a")).unwrap().book;
    let on = day("2023-04-01");
    let contents = [support::fill(on, 40), support::charge(on, 30), support::gas(on, 20)];
    let lines = contents.map(|content| shelf.append(stamp(2), book, Change::Begin(content)).unwrap().subject);
    let plain = reading("2023-04-01", 10);
    let amended = Change::Amend { subject: lines[0], content: support::charge(on, 50), why: String::new() };
    let emptied = Change::Amend { subject: lines[2], content: plain.clone(), why: String::new() };
    shelf.append(stamp(3), book, Change::Begin(plain)).unwrap();
    let read = |shelf: &Shelf| {
        let readings = shelf.readings(book).unwrap();
        assert!(readings.is_sorted_by_key(|row| (row.reading.day, row.reading.shown)), "{readings:?}");
        for row in &readings {
            let Content::Reading(said) = shelf.line(book, row.subject).unwrap().content else { panic!() };
            assert_eq!((said.facts(), said.fuel), (row.reading, row.fuel));
        }
        readings.iter().filter(|row| row.fuel.is_some()).count()
    };
    assert_eq!(read(&shelf), 3);
    shelf.append(stamp(4), book, amended).unwrap();
    shelf.append(stamp(5), book, emptied).unwrap();
    assert_eq!(read(&shelf), 2);
}

#[test]
fn the_clock_of_a_book_never_goes_back() {
    let mut shelf = Shelf::in_memory(writer(1)).unwrap();
    let book = shelf.begin(stamp(1_000), vehicle("a")).unwrap().book;
    shelf.append(stamp(1), book, Change::Begin(reading("2023-01-01", 10))).unwrap();
    let times: Vec<_> =
        shelf.entries(book).unwrap().iter().map(|signed| signed.open().unwrap().time).collect();
    assert!(times.is_sorted_by(|a, b| a < b), "{times:?}");
}

#[test]
fn a_kind_of_a_later_version_is_kept_chained_and_carried() {
    let (mut shelf, book) = every_kind();
    let signed = shelf.entries(book).unwrap();
    let last = signed.iter().max_by_key(|signed| signed.open().unwrap().number).unwrap();
    let before = last.open().unwrap();
    let later = Entry {
        id: units::EntryId([9; 16]),
        number: before.number + 1,
        previous: Some(last.hash()),
        time: before.time + 1,
        body: Body::Newer {
            kind: 4_711,
            subject: book.into(),
            content: units::cbor::CborValue::from("more"),
        },
        ..before
    };
    assert_eq!(shelf.papers_named().unwrap().map(|named| named.is_empty()), Some(false));
    let newer = support::sign(&writer(1), &later);
    assert_eq!(shelf.merge(std::slice::from_ref(&newer)).unwrap().new, 1);
    assert_eq!(shelf.newer(book).unwrap().len(), 1);
    assert_eq!(shelf.papers_named().unwrap(), None, "it may name a photo that only a newer version knows of");
    assert!(shelf.verify().unwrap().faults.is_empty());
    assert!(shelf.entries(book).unwrap().contains(&newer), "it is carried as it was signed");
    shelf.append(stamp(900), book, Change::Begin(plan(2, Setting::Off))).unwrap();
    let mut other = Shelf::in_memory(writer(2)).unwrap();
    other.merge(&shelf.entries(book).unwrap()).unwrap();
    assert_eq!(other.dump_pages().unwrap(), shelf.dump_pages().unwrap());
    assert_eq!(other.head(book).unwrap(), shelf.head(book).unwrap());
}

#[test]
fn changes_that_belong_together_are_written_all_or_not_at_all() {
    let (mut shelf, book) = every_kind();
    let visit = shelf.lines_of(book, ContentKind::Visit).unwrap().remove(0).subject;
    let (before, entries) = (shelf.dump_pages().unwrap(), shelf.count(book).unwrap());
    let begin = |count, seed| (stamp(count), Change::Begin(paper(seed)));
    let wrong = Change::Amend { subject: visit, content: paper(9), why: String::new() };
    let refused = shelf.append_all(book, vec![begin(70, 70), begin(71, 71), (stamp(72), wrong)]);
    assert!(matches!(refused, Err(BookError::OtherKind(subject)) if subject == visit));
    assert_eq!((shelf.dump_pages().unwrap(), shelf.count(book).unwrap()), (before, entries));

    let written = shelf.append_all(book, vec![begin(73, 70), begin(74, 71)]).unwrap();
    let papers: Vec<_> = shelf.papers(book).unwrap().into_iter().map(|row| row.subject).collect();
    assert!(written.iter().all(|one| papers.contains(&one.subject)), "{written:?} {papers:?}");
    // The chain goes on behind the last of them, and where the refused ones would have stood there is no gap.
    shelf.append(stamp(75), book, Change::Begin(paper(72))).unwrap();
    assert_eq!(shelf.count(book).unwrap(), entries + 3);
    assert_eq!(shelf.verify().unwrap().faults, []);
    let folded = shelf.dump_pages().unwrap();
    shelf.rebuild().unwrap();
    assert_eq!(shelf.dump_pages().unwrap(), folded);
}
