//! Two devices write in one book: the union is the same whatever arrives first.
#![allow(clippy::unwrap_used)]

mod support;

use book::content::{Content, ContentKind};
use book::entry::Signed;
use book::{BookError, Change, Shelf};
use proptest::prelude::*;
use rules::upkeep::Setting;
use support::{paper, plan, reading, stamp, vehicle, visit, writer};
use units::BookId;

/// What a device does next: writes a line, or corrects the line with this index.
#[derive(Debug, Clone)]
enum Step {
    Reading(u8),
    Visit(u8),
    Paper(u8),
    Plan(u32),
    Vehicle(u8),
    Amend(usize, u8),
    StrikeOut(usize),
}

fn step() -> impl Strategy<Value = Step> {
    prop_oneof![
        any::<u8>().prop_map(Step::Reading),
        any::<u8>().prop_map(Step::Visit),
        any::<u8>().prop_map(Step::Paper),
        (1_u32..20).prop_map(Step::Plan),
        any::<u8>().prop_map(Step::Vehicle),
        (any::<usize>(), any::<u8>()).prop_map(|(line, seed)| Step::Amend(line, seed)),
        any::<usize>().prop_map(Step::StrikeOut),
    ]
}

/// Takes a step; corrections choose among the visits of the book, and may be refused.
fn take(shelf: &mut Shelf, book: BookId, count: u64, step: &Step) {
    let visits = shelf.lines_of(book, ContentKind::Visit).unwrap();
    let line = |index: usize| visits.get(index % visits.len().max(1)).map(|line| line.subject);
    let again = |seed: u8| Content::Visit(visit("2023-05-05", i64::from(seed), vec![]));
    let change = match step {
        Step::Reading(seed) => Some(Change::Begin(reading("2023-01-02", i64::from(*seed)))),
        Step::Visit(seed) => Some(Change::Begin(again(*seed))),
        Step::Paper(seed) => Some(Change::Begin(paper(*seed))),
        Step::Plan(item) => Some(Change::Begin(plan(*item, Setting::Off))),
        Step::Vehicle(seed) => Some(Change::ChangeVehicle(vehicle(&format!("car {seed}")))),
        Step::Amend(index, seed) => line(*index).map(|subject| Change::Amend {
            subject,
            content: again(seed.wrapping_add(1)),
            why: String::new(),
        }),
        Step::StrikeOut(index) => {
            line(*index).map(|subject| Change::StrikeOut { subject, why: String::new() })
        }
    };
    if let Some(change) = change {
        shelf.append(stamp(count), book, change).unwrap();
    }
}

/// A book that two devices began together and then wrote in apart, and all its entries.
fn two_devices(steps: &[(bool, Step)]) -> (Shelf, Shelf, BookId) {
    let mut first = Shelf::in_memory(writer(1)).unwrap();
    let book = first.begin(stamp(0), vehicle("rusty")).unwrap().book;
    first.append(stamp(1), book, Change::Begin(Content::Visit(visit("2023-02-03", 1, vec![])))).unwrap();
    let mut second = Shelf::in_memory(writer(2)).unwrap();
    second.merge(&first.entries(book).unwrap()).unwrap();
    for (count, (on_first, step)) in (2_u64..).zip(steps) {
        let shelf = if *on_first { &mut first } else { &mut second };
        take(shelf, book, count, step);
    }
    (first, second, book)
}

fn shuffled(mut entries: Vec<Signed>, seed: u64) -> Vec<Signed> {
    let mut state = seed | 1;
    for index in (1..entries.len()).rev() {
        state = state.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        entries.swap(index, usize::try_from(state >> 33).unwrap() % (index + 1));
    }
    entries
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(48))]

    #[test]
    fn the_union_gives_the_same_pages_in_any_order(
        steps in proptest::collection::vec((any::<bool>(), step()), 0..24),
        seed in any::<u64>(),
        cut in any::<prop::sample::Index>(),
    ) {
        let (mut first, mut second, book) = two_devices(&steps);
        let theirs = second.entries(book).unwrap();
        let ours = first.entries(book).unwrap();
        first.merge(&theirs).unwrap();
        second.merge(&ours).unwrap();
        let pages = first.dump_pages().unwrap();
        prop_assert_eq!(&second.dump_pages().unwrap(), &pages);

        // Any interleaving at once, and in two parts that each hold whole chains up to a point.
        let all = first.entries(book).unwrap();
        let mut third = Shelf::in_memory(writer(3)).unwrap();
        third.merge(&shuffled(all.clone(), seed)).unwrap();
        prop_assert_eq!(&third.dump_pages().unwrap(), &pages);
        let mut fourth = Shelf::in_memory(writer(4)).unwrap();
        let part = &all[..cut.index(all.len() + 1)];
        fourth.merge(&shuffled(part.to_vec(), seed)).unwrap();
        fourth.merge(&shuffled(all, !seed)).unwrap();
        prop_assert_eq!(&fourth.dump_pages().unwrap(), &pages);

        third.rebuild().unwrap();
        prop_assert_eq!(&third.dump_pages().unwrap(), &pages);
        prop_assert_eq!(third.head(book).unwrap(), first.head(book).unwrap());
        prop_assert!(third.verify().unwrap().faults.is_empty());
    }
}

#[test]
fn a_gap_a_fork_and_a_forged_entry_refuse_the_whole() {
    let (first, _, book) = two_devices(&[]);
    let entries = first.entries(book).unwrap();
    let mut shelf = Shelf::in_memory(writer(9)).unwrap();
    assert!(matches!(shelf.merge(&entries[1..]), Err(BookError::Gap(_))));
    assert!(shelf.books().unwrap().is_empty(), "nothing of a refused merge stays");

    let mut forged = entries.clone();
    forged[1].signature[5] ^= 1;
    assert!(matches!(shelf.merge(&forged), Err(BookError::Signature(_))));

    // The same writer tells another story from the second entry on.
    let mut rewritten = Shelf::in_memory(writer(1)).unwrap();
    rewritten.merge(&entries[..1]).unwrap();
    let other = rewritten.append(stamp(1), book, Change::Begin(paper(3))).unwrap();
    shelf.merge(&entries).unwrap();
    let refused = shelf.merge(&rewritten.entries(book).unwrap());
    assert!(matches!(refused, Err(BookError::Fork { hash, number: 1, .. }) if hash == other.hash));
}

/// What a shelf remembers of its clock from its own writing must not outlive a merge.
#[test]
fn after_a_merge_the_clock_is_later_than_what_came_in() {
    let (mut first, mut second, book) = two_devices(&[]);
    let write = |shelf: &mut Shelf, count, seed| shelf.append(stamp(count), book, Change::Begin(paper(seed)));
    write(&mut first, 2, 1).unwrap();
    write(&mut second, 1_000_000, 2).unwrap();
    first.merge(&second.entries(book).unwrap()).unwrap();
    let last = write(&mut first, 3, 3).unwrap();
    let entries = first.entries(book).unwrap();
    let times: Vec<_> = entries.iter().map(|signed| signed.open().unwrap().time).collect();
    assert!(times.is_sorted_by(|a, b| a < b), "{times:?}");
    assert_eq!(entries.last().map(Signed::hash), Some(last.hash));
    let pages = first.dump_pages().unwrap();
    first.rebuild().unwrap();
    assert_eq!(first.dump_pages().unwrap(), pages);
    assert!(first.verify().unwrap().faults.is_empty());
}
