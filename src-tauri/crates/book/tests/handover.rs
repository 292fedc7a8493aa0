//! A book goes from hand to hand: who may write, and what a later owner can not make undone.
#![allow(clippy::unwrap_used)]

mod support;

use book::content::{Content, ContentKind, HandoverContent};
use book::entry::{Body, Entry, Signed};
use book::{BookError, Change, LineFilter, MOST_TRIES, Moment, Searched, Shelf};
use sha2::{Digest, Sha256};
use support::{handover, km, paper, reading, sign, stamp, vehicle, visit, writer};
use units::{BookId, EntryId, SubjectId};

const LATER: u64 = 1_800_000_000_000;

fn write(shelf: &mut Shelf, book: BookId, count: u64, content: Content) -> SubjectId {
    shelf.append(stamp(count), book, Change::Begin(content)).unwrap().subject
}

/// Hands the book over, and puts it on the shelf of the device with this seed.
fn hand_on(from: &mut Shelf, book: BookId, count: u64, to: u8) -> Shelf {
    let entry = from.sign_handover(stamp(count), book, handover("2024-01-01", 1_000)).unwrap();
    from.merge(&[entry]).unwrap();
    let mut shelf = Shelf::in_memory(writer(to)).unwrap();
    shelf.merge(&from.entries(book).unwrap()).unwrap();
    shelf
}

fn first_owner() -> (Shelf, BookId) {
    let mut shelf = Shelf::in_memory(writer(1)).unwrap();
    let book = shelf.begin(stamp(0), vehicle("Thistle")).unwrap().book;
    for count in 1..6 {
        write(&mut shelf, book, count, reading("2023-01-02", 100 * i64::try_from(count).unwrap()));
    }
    (shelf, book)
}

fn head(shelf: &Shelf, book: BookId) -> [u8; 16] {
    shelf.head(book).unwrap().0[..16].try_into().unwrap()
}

fn found(shelf: &Shelf, book: BookId, head: [u8; 16]) -> Moment {
    match shelf.moment(book, &head, LATER).unwrap() {
        Searched::Found(moment) => moment,
        other => panic!("{other:?}"),
    }
}

#[test]
fn a_signed_handover_changes_nothing_until_it_is_written() {
    let (mut shelf, book) = first_owner();
    let before = shelf.dump_pages().unwrap();
    let entry = shelf.sign_handover(stamp(10), book, handover("2024-01-01", 1_000)).unwrap();
    assert_eq!(shelf.dump_pages().unwrap(), before);
    write(&mut shelf, book, 11, reading("2023-02-02", 900));
    // The owner has written meanwhile, so the entry has lost its place.
    assert!(matches!(shelf.merge(&[entry]), Err(BookError::Fork { .. })));
    assert!(shelf.handed_over(book).unwrap().is_none());
}

#[test]
fn whoever_handed_a_book_over_writes_no_more_until_he_takes_it_back() {
    let (mut shelf, book) = first_owner();
    hand_on(&mut shelf, book, 10, 2);
    let line = shelf.handed_over(book).unwrap().unwrap().subject;
    let changes = || {
        [
            Change::Begin(reading("2024-02-02", 1_100)),
            Change::ChangeVehicle(vehicle("Nettle")),
            Change::Amend { subject: line, content: reading("2024-02-02", 1), why: String::new() },
            Change::StrikeOut { subject: book.into(), why: String::new() },
        ]
    };
    for change in changes() {
        let refused = shelf.append(stamp(11), book, change);
        assert!(matches!(refused, Err(BookError::HandedOver { subject, .. }) if subject == line));
    }
    assert!(matches!(
        shelf.sign_handover(stamp(11), book, handover("2024-01-02", 1)),
        Err(BookError::HandedOver { .. })
    ));
    // Another book of the same household is not concerned.
    let other = shelf.begin(stamp(12), vehicle("Other")).unwrap().book;
    write(&mut shelf, other, 13, reading("2024-02-02", 5));

    shelf.append(stamp(14), book, Change::StrikeOut { subject: line, why: "no sale".to_owned() }).unwrap();
    assert!(shelf.handed_over(book).unwrap().is_none());
    write(&mut shelf, book, 15, reading("2024-02-02", 1_100));
    let struck = shelf.handovers(book).unwrap().remove(0);
    assert_eq!(struck.struck.as_deref(), Some("no sale"), "it stays readable");
    let pages = shelf.dump_pages().unwrap();
    shelf.rebuild().unwrap();
    assert_eq!(shelf.dump_pages().unwrap(), pages);
}

/// The same through `append`, which every test and a newer program may use.
#[test]
fn a_handover_that_is_appended_holds_at_once() {
    let (mut shelf, book) = first_owner();
    write(&mut shelf, book, 10, Content::Handover(handover("2024-01-01", 1_000)));
    let refused = shelf.append(stamp(11), book, Change::Begin(paper(1)));
    assert!(matches!(refused, Err(BookError::HandedOver { .. })));
}

#[test]
fn the_reading_of_a_handover_counts() {
    let (mut shelf, book) = first_owner();
    hand_on(&mut shelf, book, 10, 2);
    assert_eq!(shelf.readings(book).unwrap().last().unwrap().reading.shown, km(1_000));
}

#[test]
fn the_next_owner_goes_on_and_can_not_undo_the_handover() {
    let (mut first, book) = first_owner();
    let mut second = hand_on(&mut first, book, 10, 2);
    let line = second.handovers(book).unwrap().remove(0).subject;
    assert!(second.handed_over(book).unwrap().is_none(), "it is not his handover");
    write(&mut second, book, 20, reading("2024-03-01", 1_200));
    let strike = Change::StrikeOut { subject: line, why: String::new() };
    assert!(matches!(second.append(stamp(21), book, strike), Err(BookError::OthersHandover(_))));
    let other = HandoverContent { words: "never mine".to_owned(), ..handover("2020-01-01", 1) };
    let amend = Change::Amend { subject: line, content: Content::Handover(other), why: String::new() };
    assert!(matches!(second.append(stamp(22), book, amend), Err(BookError::OtherKind(_))));
}

/// A program that has no such rule may sign what it likes; the pages do not follow it.
#[test]
fn a_forged_undoing_of_a_handover_has_no_effect() {
    let (mut first, book) = first_owner();
    let second = hand_on(&mut first, book, 10, 2);
    let row = second.handovers(book).unwrap().remove(0);
    let seller = writer(2);
    let said = Content::Handover(HandoverContent { papers: false, ..row.content.clone() });
    let bodies = [
        Body::StrikeOut { subject: row.subject, why: "never".to_owned() },
        Body::Amend { subject: row.subject, content: said.clone(), why: String::new() },
        Body::Begin { subject: row.subject, content: said },
    ];
    let mut previous = None;
    let mut entries = second.entries(book).unwrap();
    for (number, body) in (0..).zip(bodies) {
        let (id, time) = (EntryId::new(row.written + 1, [7; 10]), row.written + 1 + number);
        let entry = Entry { id, book, writer: seller.key(), number, previous, time, body };
        let signed = sign(&seller, &entry);
        previous = Some(signed.hash());
        entries.push(signed);
    }
    let mut third = Shelf::in_memory(writer(3)).unwrap();
    third.merge(&entries).unwrap();
    assert_eq!(third.handovers(book).unwrap(), [row]);
}

#[test]
fn a_book_that_comes_back_can_be_written_in_again() {
    let (mut first, book) = first_owner();
    let mut second = hand_on(&mut first, book, 10, 2);
    write(&mut second, book, 20, reading("2024-03-01", 1_200));
    let entry = second.sign_handover(stamp(21), book, handover("2024-04-01", 1_300)).unwrap();
    second.merge(&[entry]).unwrap();
    first.merge(&second.entries(book).unwrap()).unwrap();
    assert!(first.handed_over(book).unwrap().is_none());
    write(&mut first, book, 30, reading("2024-05-01", 1_400));
    assert!(second.handed_over(book).unwrap().is_some());
}

#[test]
fn spans_say_who_wrote_from_when_to_when() {
    let (mut first, book) = first_owner();
    let mut second = hand_on(&mut first, book, 10, 2);
    write(&mut second, book, 20, reading("2024-03-01", 1_200));
    let third = hand_on(&mut second, book, 21, 3);
    let times = |count: u64| stamp(count).now;
    let spans: Vec<_> = third
        .spans(book)
        .unwrap()
        .into_iter()
        .map(|span| (span.writer, span.first, span.last, span.entries))
        .collect();
    let expected = [(writer(1).key(), times(0), times(10), 7), (writer(2).key(), times(20), times(21), 2)];
    assert_eq!(spans, expected, "the third has written nothing yet");
    assert_eq!(Shelf::in_memory(writer(4)).unwrap().spans(book).unwrap(), []);
}

/// The heads are worked out here from the entries alone, by the rule in the head of `entry`.
#[test]
fn every_head_that_a_book_ever_had_is_found_again() {
    let (mut first, book) = first_owner();
    let mut second = hand_on(&mut first, book, 10, 2);
    write(&mut second, book, 20, reading("2024-03-01", 1_200));
    write(&mut second, book, 21, reading("2024-03-02", 1_201));
    let entries = second.entries(book).unwrap();
    let mut last = std::collections::BTreeMap::new();
    for (count, signed) in (1..).zip(&entries) {
        let entry = signed.open().unwrap();
        last.insert(entry.writer.0, Sha256::digest(&signed.bytes));
        let pairs: Vec<u8> =
            last.iter().flat_map(|(writer, hash)| [writer.as_slice(), hash.as_slice()].concat()).collect();
        let head: [u8; 16] = Sha256::digest(pairs)[..16].try_into().unwrap();
        let moment = found(&second, book, head);
        assert_eq!((moment.entries, moment.newest, moment.late), (count, entry.time, 0));
    }
    assert_eq!(second.moment(book, &[0; 16], LATER).unwrap(), Searched::NotFound);
}

/// Two devices of one household write apart and meet later; a card was printed before they met.
#[test]
fn a_head_from_before_a_merge_is_found_among_the_combinations() {
    let (mut first, book) = first_owner();
    let mut second = Shelf::in_memory(writer(2)).unwrap();
    second.merge(&first.entries(book).unwrap()).unwrap();
    write(&mut first, book, 10, reading("2023-03-01", 700));
    write(&mut second, book, 11, reading("2023-03-02", 701));
    write(&mut first, book, 12, reading("2023-03-03", 702));
    let printed = head(&first, book);
    write(&mut second, book, 13, reading("2023-03-04", 703));
    first.merge(&second.entries(book).unwrap()).unwrap();
    let moment = found(&first, book, printed);
    assert_eq!((moment.entries, moment.ends.len(), moment.late), (8, 1, 1));
    // An entry newer than the card can not have stood in the book.
    let early = first.moment(book, &printed, stamp(11).now).unwrap();
    assert_eq!(early, Searched::NotFound);
}

#[test]
fn more_combinations_than_are_tried_are_said_to_be_too_many() {
    let (mut first, book) = first_owner();
    let mut others = [2, 3, 4].map(|seed| Shelf::in_memory(writer(seed)).unwrap());
    let begun = first.entries(book).unwrap();
    for (shelf, at) in others.iter_mut().zip(0..) {
        shelf.merge(&begun).unwrap();
        for count in 0..170 {
            write(shelf, book, 100 + 3 * count + at, reading("2023-03-01", 700));
        }
    }
    assert!(171_u64.pow(3) > MOST_TRIES);
    for shelf in &others {
        first.merge(&shelf.entries(book).unwrap()).unwrap();
    }
    assert_eq!(first.moment(book, &[0; 16], LATER).unwrap(), Searched::TooMany);
}

/// The second owner's three ways to rewrite the first one's years, each held against the head that the first printed.
#[test]
fn a_rewritten_past_no_longer_has_the_head_of_the_first_owner() {
    let (mut first, book) = first_owner();
    let printed = head(&first, book);
    let mut second = hand_on(&mut first, book, 10, 2);
    write(&mut second, book, 20, Content::Visit(visit("2024-03-01", 1_200, vec![])));
    assert_eq!(found(&second, book, printed).entries, 6);
    let all = second.entries(book).unwrap();
    let of = |seed: u8, entries: &[Signed]| -> Vec<Signed> {
        let key = writer(seed).key();
        entries.iter().filter(|signed| signed.open().unwrap().writer == key).cloned().collect()
    };

    // He leaves one out: the chain has a gap, and nothing is taken in.
    let mut third = Shelf::in_memory(writer(3)).unwrap();
    let left_out = [&all[..3], &all[4..]].concat();
    assert!(matches!(third.merge(&left_out), Err(BookError::Gap(_))));

    // He drops the end of the chain, the handover with it: it verifies, and has no moment with that head.
    let cut = [&of(1, &all)[..4], &of(2, &all)[..]].concat();
    third.merge(&cut).unwrap();
    assert_eq!(third.moment(book, &printed, LATER).unwrap(), Searched::NotFound);
    assert!(third.handovers(book).unwrap().is_empty());

    // He writes the same years under a key of his own making.
    let mut forger = Shelf::in_memory(writer(9)).unwrap();
    let wrong_book = forger.begin(stamp(0), vehicle("Thistle")).unwrap().book;
    write(&mut forger, wrong_book, 1, reading("2023-01-02", 50));
    assert_eq!(forger.moment(wrong_book, &printed, LATER).unwrap(), Searched::NotFound);
    assert!(forger.spans(wrong_book).unwrap().iter().all(|span| span.writer != writer(1).key()));
}

/// A third owner's file from which the second has cut the end of the first's chain, and then handed over in good form.
#[test]
fn a_handover_vouches_for_the_chains_of_all_writers_before_it() {
    let (mut first, book) = first_owner();
    let mut second = hand_on(&mut first, book, 10, 2);
    write(&mut second, book, 20, reading("2024-03-01", 1_200));
    let third = hand_on(&mut second, book, 21, 3);
    let own = writer(1).key();
    let cut: Vec<Signed> = third
        .entries(book)
        .unwrap()
        .into_iter()
        .filter(|signed| {
            let entry = signed.open().unwrap();
            entry.writer != own || entry.number < 4
        })
        .collect();
    let mut fourth = Shelf::in_memory(writer(4)).unwrap();
    let refused = fourth.merge(&cut);
    assert!(matches!(refused, Err(BookError::LeftOut { writer, number: 6, .. }) if writer == own));
    assert!(fourth.books().unwrap().is_empty());
}

#[test]
fn a_handover_is_a_line_like_any_other() {
    let (mut shelf, book) = first_owner();
    hand_on(&mut shelf, book, 10, 2);
    let lines = shelf.lines(book, &LineFilter::default()).unwrap();
    let said = lines.iter().filter(|line| line.content.kind() == ContentKind::Handover);
    assert_eq!(said.count(), 1);
    assert_eq!(ContentKind::from_number(14), Some(ContentKind::Handover));
}
