//! The work of a car as a buyer asks for it: last done, next due, and who wrote it down.

use std::collections::BTreeMap;

use card::{Claims, WorkGroup, WorkLine, WriterLine};
use rules::upkeep::{Asked, Catalogue, DueLine, ItemRef};
use words::{Arg, Words};

use super::claims::{count, item};
use super::numbers::reading;
use super::sheet::item_name;
use crate::WriterView;

/// When an item was done last, and what is due of it.
#[derive(Default)]
struct Work<'a> {
    last: Option<&'a card::Visit>,
    due: Option<&'a DueLine>,
}

/// What the work is told from.
pub(super) struct Record<'a> {
    /// With all visits of the book, oldest first.
    pub claims: &'a Claims,
    pub items: &'a [&'a [ItemRef]],
    pub due: &'a [DueLine],
    pub catalogue: &'a Catalogue,
    pub words: &'a Words,
}

impl Record<'_> {
    /// The groups that have something to say, each with at most `most` lines.
    pub fn groups(&self, most: usize) -> Vec<WorkGroup> {
        let mut groups: BTreeMap<Asked, Vec<(&ItemRef, Work<'_>)>> = BTreeMap::new();
        for (item, work) in self.work() {
            if let Some(asked) = Asked::about(item, self.catalogue) {
                groups.entry(asked).or_default().push((item, work));
            }
        }
        let groups = groups.into_iter().map(|(asked, work)| self.group(asked, work, most));
        groups.filter(|group| !group.lines.is_empty()).collect()
    }

    /// Every item that was done, and every one of the plan that renews something.
    fn work(&self) -> BTreeMap<&ItemRef, Work<'_>> {
        let mut work: BTreeMap<&ItemRef, Work<'_>> = BTreeMap::new();
        for (visit, items) in self.claims.visits.iter().zip(self.items) {
            for item in *items {
                work.entry(item).or_default().last = Some(visit);
            }
        }
        for line in self.due {
            if line.renews || work.contains_key(&line.item) {
                work.entry(&line.item).or_default().due = Some(line);
            }
        }
        work
    }

    /// What is recorded comes first, the weightiest item before the others; of repairs the latest one, and none that was
    /// never made.
    fn group(&self, asked: Asked, mut work: Vec<(&ItemRef, Work<'_>)>, most: usize) -> WorkGroup {
        if asked == Asked::Repairs {
            work.retain(|(_, work)| work.last.is_some());
        }
        work.sort_by_cached_key(|(item, work)| {
            let day = work.last.map(|visit| std::cmp::Reverse(visit.day));
            (work.last.is_none(), asked.rank(item, self.catalogue), day)
        });
        let more = work.len().saturating_sub(most);
        let say = |more: usize| self.words.say("card-more", &[("count", more.into())]);
        WorkGroup {
            name: self.words.say(&format!("card-asked-{}", asked.key()), &[]),
            lines: work.iter().take(most).map(|(item, work)| self.line(item, work)).collect(),
            more: if more > 0 { say(more) } else { String::new() },
        }
    }

    fn line(&self, done: &ItemRef, work: &Work<'_>) -> WorkLine {
        WorkLine {
            item: item_name(&item(done), self.catalogue, self.words),
            day: work.last.map(|visit| visit.day.to_string()),
            reading: work.last.map(|visit| reading(i64::from(visit.reading), None)),
            next: work.due.map(|line| self.next(line)).unwrap_or_default(),
        }
    }

    /// The likely day already is that of whichever limit comes first.
    fn next(&self, line: &DueLine) -> String {
        let unit = self.claims.unit;
        let at = line.due_shown.map(|shown| reading(i64::from(count(shown, unit)), Some(unit)));
        line.due.map(|due| due.likely.to_string()).or(at).unwrap_or_default()
    }
}

/// How many of the visits have a receipt, in words; empty where there is no visit.
pub(super) fn receipts(claims: &Claims, words: &Words) -> String {
    let of = claims.visits.len();
    let with = claims.visits.iter().filter(|visit| visit.flags.contains(card::Flags::RECEIPT)).count();
    let say = || words.say("card-receipts", &[("count", with.into()), ("of", of.into())]);
    if of == 0 { String::new() } else { say() }
}

/// How many owners the book has had, in words: it changes hands with each handover that stands.
pub(super) fn owners(writers: &[WriterView], words: &Words) -> String {
    let handed: Vec<&String> = writers.iter().flat_map(|writer| &writer.handed_over).collect();
    let since = handed.iter().max().map(|day| day.as_str()).unwrap_or_default();
    words.say("card-owners", &[("count", (handed.len() + 1).into()), ("since", since.into())])
}

/// Who wrote in the book, and how many more than the `named` ones.
pub(super) fn writers(writers: &[WriterView], named: usize, words: &Words) -> (Vec<WriterLine>, String) {
    let lines = writers.iter().take(named).map(|writer| writer_line(writer, words)).collect();
    let more = writers.len().saturating_sub(named);
    let say = || words.say("card-more-writers", &[("count", more.into())]);
    (lines, if more > 0 { say() } else { String::new() })
}

fn writer_line(writer: &WriterView, words: &Words) -> WriterLine {
    let say = |id: &str, args: &[(&str, Arg<'_>)]| words.say(id, args);
    let span = [("from", Arg::from(&writer.from)), ("to", Arg::from(&writer.to))];
    let handed = writer.handed_over.last();
    WriterLine {
        span: if writer.from == writer.to { writer.from.clone() } else { say("card-span", &span) },
        key: writer.fingerprint.clone(),
        handed_over: handed.map(|day| say("card-handed-over", &[("day", day.into())])).unwrap_or_default(),
    }
}
