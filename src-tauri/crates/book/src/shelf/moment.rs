//! Holding an old head against a book: was there a moment at which the book had this head?
//!
//! The head of a book is SHA-256 over the `(key, last hash)` pairs of its writers, so it stands for one number of
//! entries of each chain, and through the hashes for every entry before them. Which entries a device held when it
//! printed a head is not written anywhere. It is found by trying:
//!
//! 1. The book as it grew: after each entry in the order of the fold. This is the answer wherever one device wrote,
//!    or several one after the other, which is what handing a book over gives.
//! 2. Where two devices wrote at the same time and met later, the order of the fold is not the order of arrival. Then
//!    every combination of chain lengths is tried, no entry being newer than the head, up to [`MOST_TRIES`].
//!
//! **Found** proves, as far as SHA-256 goes, that every entry that stood in the book at that moment stands in it still,
//! unchanged. It proves nothing of what was written later, nor that what was written was true.
//! **Not found** says that at least one of those entries is missing or another one, that the head is another book's,
//! or that it was never the head of this one.

use rusqlite::params;
use units::{BookId, Hash, WriterKey};

use super::Shelf;
use crate::BookError;
use crate::content::ChainEnd;
use crate::entry::{Millis, sha256};

/// How many heads are tried before the search gives up.
pub const MOST_TRIES: u64 = 4_000_000;

/// What the search for a head came to.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Searched {
    /// The book had this head.
    Found(Moment),
    /// It never had it.
    NotFound,
    /// Its writers wrote too much at the same time for every combination to be tried.
    TooMany,
}

/// A moment of a book.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Moment {
    /// The last entry of each writer that had written, in ascending order of their keys.
    pub ends: Vec<ChainEnd>,
    /// How many entries stood in the book.
    pub entries: u64,
    /// The time of the newest of them.
    pub newest: Millis,
    /// How many entries of today's book bear a time before that and did not stand in it then: they came in later, by a
    /// merge or because somebody set his clock back.
    pub late: u64,
}

/// A writer's chain: the time and the hash of each entry.
struct Chain {
    writer: WriterKey,
    entries: Vec<(Millis, Hash)>,
}

impl Shelf {
    /// Looks for the moment at which a book had a head that begins with `prefix`; `until` bounds the times of the
    /// entries that stood in it, where chains have to be combined.
    pub fn moment(&self, book: BookId, prefix: &[u8], until: Millis) -> Result<Searched, BookError> {
        let chains = self.chains(book)?;
        let search = Search { chains: &chains, prefix };
        let found = match search.as_it_grew() {
            Some(lengths) => Some(lengths),
            None => match search.combined(until) {
                Ok(found) => found,
                Err(TooMany) => return Ok(Searched::TooMany),
            },
        };
        Ok(found.map_or(Searched::NotFound, |lengths| Searched::Found(search.moment(&lengths))))
    }

    fn chains(&self, book: BookId) -> Result<Vec<Chain>, BookError> {
        let mut statement = self
            .connection
            .prepare_cached("SELECT writer, time, hash FROM entry WHERE book = ?1 ORDER BY writer, number")?;
        let mut rows = statement.query(params![book.0])?;
        let mut chains: Vec<Chain> = Vec::new();
        while let Some(row) = rows.next()? {
            let writer = WriterKey(row.get(0)?);
            if chains.last().is_none_or(|chain| chain.writer != writer) {
                chains.push(Chain { writer, entries: Vec::new() });
            }
            if let Some(chain) = chains.last_mut() {
                chain.entries.push((row.get(1)?, Hash(row.get(2)?)));
            }
        }
        Ok(chains)
    }
}

/// More combinations than are tried.
struct TooMany;

/// The chains of a book, in ascending order of their keys, and the head that is looked for.
struct Search<'a> {
    chains: &'a [Chain],
    prefix: &'a [u8],
}

impl Search<'_> {
    /// The lengths of the chains at the first moment with this head, in the order of the fold.
    fn as_it_grew(&self) -> Option<Vec<usize>> {
        let mut order: Vec<(Millis, usize, usize)> = Vec::new();
        for (at, chain) in self.chains.iter().enumerate() {
            order.extend(chain.entries.iter().enumerate().map(|(number, (time, _))| (*time, at, number)));
        }
        // Chains stand in the order of their keys, so this is the order (time, writer, number).
        order.sort_unstable();
        let mut lengths = vec![0; self.chains.len()];
        for (_, at, number) in order {
            // A chain whose times run backwards, which no device of ours writes, is still followed by its numbers.
            lengths[at] = lengths[at].max(number + 1);
            if self.is_head(&lengths) {
                return Some(lengths);
            }
        }
        None
    }

    /// The same with every combination of chain lengths whose entries are no newer than `until`.
    fn combined(&self, until: Millis) -> Result<Option<Vec<usize>>, TooMany> {
        if self.chains.len() < 2 {
            return Ok(None);
        }
        let most: Vec<usize> = self
            .chains
            .iter()
            .map(|chain| chain.entries.iter().filter(|(time, _)| *time <= until).count())
            .collect();
        let tries = most.iter().try_fold(1_u64, |product, most| product.checked_mul(*most as u64 + 1));
        if tries.is_none_or(|tries| tries > MOST_TRIES) {
            return Err(TooMany);
        }
        let mut lengths = vec![0; most.len()];
        loop {
            if self.is_head(&lengths) {
                return Ok(Some(lengths));
            }
            if !count_up(&mut lengths, &most) {
                return Ok(None);
            }
        }
    }

    fn is_head(&self, lengths: &[usize]) -> bool {
        let mut pairs = Vec::with_capacity(64 * self.chains.len());
        for (chain, length) in self.chains.iter().zip(lengths) {
            if let Some((_, hash)) = length.checked_sub(1).and_then(|last| chain.entries.get(last)) {
                pairs.extend_from_slice(&chain.writer.0);
                pairs.extend_from_slice(&hash.0);
            }
        }
        sha256(&pairs).0.starts_with(self.prefix)
    }

    fn moment(&self, lengths: &[usize]) -> Moment {
        let held = || self.chains.iter().zip(lengths);
        let ends = held().filter_map(|(chain, length)| {
            let number = length.checked_sub(1)?;
            let (_, hash) = chain.entries.get(number)?;
            Some(ChainEnd { writer: chain.writer, number: number as u64, hash: *hash })
        });
        let newest =
            held().flat_map(|(chain, length)| &chain.entries[..*length]).map(|(time, _)| *time).max();
        let newest = newest.unwrap_or_default();
        let later = held().flat_map(|(chain, length)| &chain.entries[*length..]);
        Moment {
            ends: ends.collect(),
            entries: lengths.iter().map(|length| *length as u64).sum(),
            newest,
            late: later.filter(|(time, _)| *time < newest).count() as u64,
        }
    }
}

/// The next combination, like the next number on an odometer; no more after the last.
fn count_up(lengths: &mut [usize], most: &[usize]) -> bool {
    for (length, most) in lengths.iter_mut().zip(most) {
        if *length < *most {
            *length += 1;
            return true;
        }
        *length = 0;
    }
    false
}
